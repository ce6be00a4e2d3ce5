//! Fields of a form: each has a label, says why it is there, and shows its fault beside itself.

mod choices;
mod number;
mod scale;
mod ticks;

pub use choices::{Choices, Props as ChoicesProps};
pub use number::{NumberField, NumberProps, TextField, TextProps};
pub use scale::{Props as ScaleProps, Scale};
pub use ticks::{Props as TicksProps, Tick, Ticks};

use yew::prelude::*;

/// The fault of a field, under the id by which the field names it.
fn fault(id: &str, text: Option<&AttrValue>) -> Html {
    text.map_or_else(Html::default, |text| {
        html! { <p class="slip" id={format!("{id}-fault")}>{ text }</p> }
    })
}

/// A note of a field, such as why it is asked, under its id; nothing if there is none.
fn note(id: &str, part: &str, text: &AttrValue) -> Html {
    if text.is_empty() {
        return Html::default();
    }
    html! { <p class={part.to_owned()} id={format!("{id}-{part}")}>{ text }</p> }
}

/// The ids of what is said beside a field, for those who cannot see it.
fn described(id: &str, parts: &[(&str, bool)]) -> Option<AttrValue> {
    let ids: Vec<_> =
        parts.iter().filter(|(_, there)| *there).map(|(part, _)| format!("{id}-{part}")).collect();
    (!ids.is_empty()).then(|| ids.join(" ").into())
}
