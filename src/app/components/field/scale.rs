//! A wish between two opposites: a slider, never without its number and its word.

use yew::prelude::*;

use crate::fields::Wish;
use crate::platform::field;
use crate::words::questions::{like_now, wish_word, wish_words};
use crate::words::say;

/// What a scale is made of.
#[derive(Clone, Debug, PartialEq, Properties)]
pub struct Props {
    /// The id of its number.
    pub id: AttrValue,
    /// Which wish.
    pub wish: Wish,
    /// Where between the ends, −2 to 2.
    pub value: f64,
    /// What stands in the number's field.
    pub text: AttrValue,
    /// What is wrong.
    #[prop_or_default]
    pub fault: Option<AttrValue>,
    /// A number was typed, or the slider moved.
    pub on_type: Callback<String>,
    /// The person left the number's field.
    #[prop_or_default]
    pub on_leave: Callback<()>,
}

/// A slider with a number and a word.
#[component]
pub fn Scale(props: &Props) -> Html {
    let Props { id, wish, value, text, fault, on_type, on_leave } = props;
    let words = wish_words(*wish);
    let typed = {
        let on_type = on_type.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(text) = field::text(&event) {
                on_type.emit(text);
            }
        })
    };
    let left = {
        let on_leave = on_leave.clone();
        Callback::from(move |_: FocusEvent| on_leave.emit(()))
    };
    let word = wish_word(*wish, *value);
    let number = format!("{id}-number");
    html! {
        <fieldset class={classes!("wish", fault.is_some().then_some("wrong"))}>
            <legend>{ say!("wish-ends", low = words.low, high = words.high) }</legend>
            <p class="end low" id={format!("{id}-low")}>
                <b>{ words.low }</b>
                <q>{ words.low_said }</q>
            </p>
            <p class="end high" id={format!("{id}-high")}>
                <b>{ words.high }</b>
                <q>{ words.high_said }</q>
            </p>
            <div class="slide">
                <input
                    type="range"
                    min="-2"
                    max="2"
                    step="0.5"
                    value={value.to_string()}
                    aria-label={say!("wish-slider", low = words.low, high = words.high)}
                    aria-valuetext={word.clone()}
                    aria-describedby={format!("{id}-low {id}-high")}
                    oninput={typed.clone()}
                />
            </div>
            { super::fault(id, fault.as_ref()) }
            <p class="said">
                <input
                    type="text"
                    autocomplete="off"
                    id={id.clone()}
                    class="small"
                    value={text.clone()}
                    placeholder="0"
                    aria-label={say!("wish-number", low = words.low, high = words.high)}
                    aria-describedby={fault.as_ref().map(|_| format!("{id}-fault"))}
                    aria-invalid={fault.is_some().then_some("true")}
                    oninput={typed}
                    onblur={left}
                />
                <output id={number} for={id.clone()} class={(word == like_now()).then_some("middle")}>{ word }</output>
            </p>
        </fieldset>
    }
}
