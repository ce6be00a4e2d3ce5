//! Any of a few words.

use yew::prelude::*;

use crate::platform::field;

/// A box to tick.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tick {
    /// Its name.
    pub key: &'static str,
    /// What is true if it is ticked.
    pub label: &'static str,
    /// It is ticked.
    pub ticked: bool,
}

/// What a list of boxes is made of.
#[derive(Clone, Debug, PartialEq, Properties)]
pub struct Props {
    /// Its id.
    pub id: AttrValue,
    /// The question.
    pub ask: AttrValue,
    /// Why it is asked.
    #[prop_or_default]
    pub why: AttrValue,
    /// The boxes.
    pub ticks: Vec<Tick>,
    /// What is wrong.
    #[prop_or_default]
    pub fault: Option<AttrValue>,
    /// A box was ticked or cleared.
    pub on_tick: Callback<(&'static str, bool)>,
}

/// A group of boxes to tick.
#[component]
pub fn Ticks(props: &Props) -> Html {
    let Props { id, ask, why, ticks, fault, on_tick } = props;
    let tile = |tick: &Tick| {
        let (key, on_tick) = (tick.key, on_tick.clone());
        let change = Callback::from(move |event: Event| {
            if let Some(ticked) = field::ticked(&event) {
                on_tick.emit((key, ticked));
            }
        });
        html! {
            <label class="tile" key={key}>
                <input type="checkbox" name={id.clone()} value={key} checked={tick.ticked} onchange={change} />
                <span>{ tick.label }</span>
            </label>
        }
    };
    let said = super::described(id, &[("why", !why.is_empty()), ("fault", fault.is_some())]);
    html! {
        <fieldset class={classes!("field", fault.is_some().then_some("wrong"))} id={id.clone()} aria-describedby={said}>
            <legend>{ ask }</legend>
            { super::note(id, "why", why) }
            { super::fault(id, fault.as_ref()) }
            <div class="tiles">{ for ticks.iter().map(tile) }</div>
        </fieldset>
    }
}
