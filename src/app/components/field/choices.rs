//! One of a few words, with "I don't know" among them, which takes an answer back. A question that was not answered looks
//! so, and can be passed over.

use yew::prelude::*;

use crate::words::questions::Choice;
use crate::words::say;

/// What a list of choices is made of.
#[derive(Clone, Debug, PartialEq, Properties)]
pub struct Props {
    /// Its id, which is also the name of its buttons.
    pub id: AttrValue,
    /// The question.
    pub ask: AttrValue,
    /// Why it is asked.
    #[prop_or_default]
    pub why: AttrValue,
    /// The words.
    pub choices: Vec<Choice>,
    /// Whether the few more words beside each are shown.
    #[prop_or_default]
    pub hints: bool,
    /// The one chosen; none for "I don't know".
    pub value: Option<AttrValue>,
    /// What is wrong.
    #[prop_or_default]
    pub fault: Option<AttrValue>,
    /// Another was chosen.
    pub on_choose: Callback<Option<String>>,
}

/// A group of radio buttons.
#[component]
pub fn Choices(props: &Props) -> Html {
    let Props { id, ask, why, choices, hints, value, fault, on_choose } = props;
    let tile = |key: Option<&'static str>, label: &str, hint: &str| {
        let choose = {
            let on_choose = on_choose.clone();
            Callback::from(move |_: Event| on_choose.emit(key.map(str::to_owned)))
        };
        html! {
            <label class="tile">
                <input
                    type="radio"
                    name={id.clone()}
                    value={key.unwrap_or_default()}
                    checked={key.is_some() && value.as_deref() == key}
                    onchange={choose}
                />
                <span>
                    { label }
                    if *hints && !hint.is_empty() {
                        <small>{ format!(" {hint}") }</small>
                    }
                </span>
            </label>
        }
    };
    let said = super::described(id, &[("why", !why.is_empty()), ("fault", fault.is_some())]);
    html! {
        <fieldset class={classes!("field", fault.is_some().then_some("wrong"))} id={id.clone()} aria-describedby={said}>
            <legend>{ ask }</legend>
            { super::note(id, "why", why) }
            { super::fault(id, fault.as_ref()) }
            <div class="tiles">
                { for choices.iter().map(|c| tile(Some(c.key), &c.label, &c.hint)) }
                { tile(None, say!("unknown"), "") }
            </div>
        </fieldset>
    }
}
