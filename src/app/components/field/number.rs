//! A number with its unit, and a line of text.
//!
//! The browser's own number field is not used: it drops what it cannot read, and a half-typed number must stay.

use yew::prelude::*;

use crate::fields::Unit;
use crate::platform::field;
use crate::words::say;

/// What a number's field is made of.
#[derive(Clone, Debug, PartialEq, Properties)]
pub struct NumberProps {
    /// Its id.
    pub id: AttrValue,
    /// The question.
    pub ask: AttrValue,
    /// Why it is asked.
    #[prop_or_default]
    pub why: AttrValue,
    /// How to answer it.
    #[prop_or_default]
    pub hint: AttrValue,
    /// What stands in it.
    pub text: AttrValue,
    /// The units it takes: with more than one, the person chooses.
    #[prop_or_default]
    pub units: Vec<Unit>,
    /// The unit in use.
    #[prop_or_default]
    pub unit: Option<Unit>,
    /// What is wrong.
    #[prop_or_default]
    pub fault: Option<AttrValue>,
    /// Something was typed.
    pub on_type: Callback<String>,
    /// Another unit was chosen.
    #[prop_or_default]
    pub on_unit: Callback<String>,
    /// The person left the field.
    #[prop_or_default]
    pub on_leave: Callback<()>,
}

/// A field for a number.
#[component]
pub fn NumberField(props: &NumberProps) -> Html {
    let NumberProps { id, ask, why, hint, text, units, unit, fault, on_type, on_unit, on_leave } =
        props;
    let typed = typed(on_type);
    let left = left(on_leave);
    let chosen = {
        let on_unit = on_unit.clone();
        Callback::from(move |event: Event| {
            if let Some(unit) = field::text(&event) {
                on_unit.emit(unit);
            }
        })
    };
    let beside = unit.map_or("", Unit::shown);
    let said = super::described(
        id,
        &[
            ("why", !why.is_empty()),
            ("hint", !hint.is_empty()),
            ("unit", units.len() == 1 && !beside.is_empty()),
            ("fault", fault.is_some()),
        ],
    );
    html! {
        <div class={classes!("field", fault.is_some().then_some("wrong"))}>
            <label class="ask" for={id.clone()}>{ ask }</label>
            { super::note(id, "why", why) }
            { super::fault(id, fault.as_ref()) }
            <div class="number">
                <input
                    type="text"
                    inputmode="decimal"
                    autocomplete="off"
                    id={id.clone()}
                    value={text.clone()}
                    aria-describedby={said}
                    aria-invalid={fault.is_some().then_some("true")}
                    oninput={typed}
                    onblur={left}
                />
                if units.len() > 1 {
                    <select aria-label={say!("unit-of", question = ask.as_str())} onchange={chosen}>
                        { for units.iter().map(|one| html! {
                            <option value={one.label} selected={*unit == Some(*one)}>{ one.shown() }</option>
                        }) }
                    </select>
                } else if !beside.is_empty() {
                    <span class="unit" id={format!("{id}-unit")}>{ beside }</span>
                }
            </div>
            { super::note(id, "hint", hint) }
        </div>
    }
}

/// What a line of text is made of.
#[derive(Clone, Debug, PartialEq, Properties)]
pub struct TextProps {
    /// Its id.
    pub id: AttrValue,
    /// What it is for.
    pub ask: AttrValue,
    /// How to answer it.
    #[prop_or_default]
    pub hint: AttrValue,
    /// The kind of field: `text` or `date`.
    #[prop_or(AttrValue::Static("text"))]
    pub kind: AttrValue,
    /// What stands in it.
    pub text: AttrValue,
    /// What is wrong.
    #[prop_or_default]
    pub fault: Option<AttrValue>,
    /// Something was typed.
    pub on_type: Callback<String>,
    /// The person left the field.
    #[prop_or_default]
    pub on_leave: Callback<()>,
}

/// A field for a line of text.
#[component]
pub fn TextField(props: &TextProps) -> Html {
    let TextProps { id, ask, hint, kind, text, fault, on_type, on_leave } = props;
    let said = super::described(id, &[("hint", !hint.is_empty()), ("fault", fault.is_some())]);
    html! {
        <div class={classes!("field", fault.is_some().then_some("wrong"))}>
            <label class="ask" for={id.clone()}>{ ask }</label>
            { super::note(id, "hint", hint) }
            { super::fault(id, fault.as_ref()) }
            <input
                type={kind.clone()}
                autocomplete="off"
                id={id.clone()}
                value={text.clone()}
                aria-describedby={said}
                aria-invalid={fault.is_some().then_some("true")}
                oninput={typed(on_type)}
                onblur={left(on_leave)}
            />
        </div>
    }
}

fn typed(on_type: &Callback<String>) -> Callback<InputEvent> {
    let on_type = on_type.clone();
    Callback::from(move |event: InputEvent| {
        if let Some(text) = field::text(&event) {
            on_type.emit(text);
        }
    })
}

fn left(on_leave: &Callback<()>) -> Callback<FocusEvent> {
    let on_leave = on_leave.clone();
    Callback::from(move |_: FocusEvent| on_leave.emit(()))
}
