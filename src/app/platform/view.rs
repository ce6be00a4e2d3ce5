//! Where the person is on the page: its title, and what has the focus.

use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

/// Names the page in the window's title and in the history.
pub fn title(text: &str) {
    gloo::utils::document().set_title(text);
}

/// Moves the focus to the heading of the page, so that a screen reader begins there and Tab goes on from there.
pub fn focus_heading() {
    focus("main h1", true);
    gloo::utils::window().scroll_to_with_x_and_y(0.0, 0.0);
}

/// Moves the focus to the element with this id, or to the first field in it; without one, to the heading.
pub fn focus_id(id: &str) {
    let document = gloo::utils::document();
    let Some(element) = document.get_element_by_id(id) else {
        focus_heading();
        return;
    };
    // A list of faults is read as a whole; of a group of choices, the chosen one is where the keyboard enters it.
    let inside = |selector: &str| element.query_selector(selector).ok().flatten();
    let field = if element.has_attribute("tabindex") {
        None
    } else {
        inside("input:checked").or_else(|| inside("input, select, textarea, button"))
    };
    if let Some(target) = field.unwrap_or(element).dyn_ref::<HtmlElement>() {
        // An element that cannot have the focus leaves it where it is.
        drop(target.focus());
    }
}

/// Moves the focus to what a selector finds; `made` makes it able to have the focus.
pub fn focus(selector: &str, made: bool) {
    let found = gloo::utils::document().query_selector(selector).ok().flatten();
    let Some(element) = found.and_then(|found| found.dyn_into::<HtmlElement>().ok()) else {
        return;
    };
    if made {
        drop(element.set_attribute("tabindex", "-1"));
    }
    drop(element.focus());
}

/// Whether nobody sees the page, for another tab or window lies over it.
#[must_use]
pub fn is_hidden() -> bool {
    gloo::utils::document().hidden()
}
