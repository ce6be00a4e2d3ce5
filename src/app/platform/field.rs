//! Reads what a person put into a field, from the event that tells of it.

use wasm_bindgen::JsCast;
use web_sys::{Event, HtmlInputElement, HtmlSelectElement, HtmlTextAreaElement};

/// The text of the field, list or text area that an event comes from.
#[must_use]
pub fn text(event: &Event) -> Option<String> {
    let target = event.target()?;
    if let Some(field) = target.dyn_ref::<HtmlInputElement>() {
        return Some(field.value());
    }
    if let Some(list) = target.dyn_ref::<HtmlSelectElement>() {
        return Some(list.value());
    }
    target.dyn_ref::<HtmlTextAreaElement>().map(HtmlTextAreaElement::value)
}

/// Whether the box or button that an event comes from is ticked.
#[must_use]
pub fn ticked(event: &Event) -> Option<bool> {
    event.target()?.dyn_ref::<HtmlInputElement>().map(HtmlInputElement::checked)
}
