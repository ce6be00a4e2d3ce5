//! The choice of language and units, at the foot of every page.

use catalogue::Language;
use yew::prelude::*;

use crate::platform::field;
use crate::preferences::{Force, Length, Preferences, Warmth};
use crate::words::{say, speech};

/// Properties of [`PreferencesChoice`].
#[derive(Clone, PartialEq, Properties)]
pub struct PreferencesProps {
    /// The preferences as they are.
    pub preferences: Preferences,
    /// Others were chosen, in the list of that name.
    pub on_change: Callback<(Preferences, &'static str)>,
}

/// The id of the list of languages.
pub const LANGUAGE: &str = "language";

/// The lists.
#[component]
pub fn PreferencesChoice(props: &PreferencesProps) -> Html {
    let preferences = props.preferences;
    let list = |id: &'static str,
                label: &'static str,
                now: &'static str,
                options: Vec<(&'static str, &'static str, Option<&'static str>)>| {
        let change = props.on_change.clone();
        let onchange = Callback::from(move |event: Event| {
            if let Some(word) = field::text(&event) {
                change.emit((preferences.with(&word), id));
            }
        });
        html! {
            <p class="habit">
                <label for={id}>{ label }</label>
                <select {id} {onchange}>
                    { for options.into_iter().map(|(key, words, lang)| html! {
                        <option value={key} {lang} selected={key == now}>{ words }</option>
                    }) }
                </select>
            </p>
        }
    };
    let named = |key: &'static str| (key, speech::of_or_key("habit", key), None);
    let languages = Language::ALL.map(|one| (one.tag(), one.own_name(), Some(one.tag())));
    html! {
        <div class="habits">
            { list(LANGUAGE, say!("language-label"), speech::language().tag(), languages.to_vec()) }
            { list("unit-length", say!("length-label"), preferences.length.key(), Length::ALL.map(|one| named(one.key())).to_vec()) }
            { list("unit-force", say!("force-label"), preferences.force.key(), Force::ALL.map(|one| named(one.key())).to_vec()) }
            { list("unit-warmth", say!("warmth-label"), preferences.warmth.key(), Warmth::ALL.map(|one| named(one.key())).to_vec()) }
        </div>
    }
}
