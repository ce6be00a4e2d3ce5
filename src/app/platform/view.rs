//! Where the person is on the page: its title, and what has the focus.

use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{CssStyleRule, CssStyleSheet, HtmlElement};

/// Names the page in the window's title and in the history.
pub fn title(text: &str) {
    gloo::utils::document().set_title(text);
}

/// Does something so many milliseconds after what was just drawn is on the screen. A page that nobody sees has time
/// until somebody does.
pub fn once_seen(after_ms: u32, then: impl FnOnce() + 'static) {
    // The frame is painted after its tasks, and should not wait for what comes then.
    let frame = Closure::once_into_js(move || super::clock::after(after_ms, then));
    drop(gloo::utils::window().request_animation_frame(frame.unchecked_ref()));
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
    // What is folded away cannot have the focus.
    if let Ok(Some(folded)) = element.closest("details:not([open])") {
        drop(folded.set_attribute("open", ""));
    }
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

/// The tokens of the page, as its first style sheet names them, each with what it is worth here and now.
#[must_use]
pub fn tokens() -> Vec<(String, String)> {
    let (document, window) = (gloo::utils::document(), gloo::utils::window());
    let root = document.document_element();
    let Some(now) = root.and_then(|root| window.get_computed_style(&root).ok().flatten()) else {
        return Vec::new();
    };
    let sheets = document.style_sheets();
    let mut found: Vec<(String, String)> = Vec::new();
    for sheet in (0..sheets.length()).filter_map(|i| sheets.get(i)) {
        // Only sheets of this page can be read, and only rules at their top are the tokens' own.
        let Some(rules) = sheet.dyn_ref::<CssStyleSheet>().and_then(|s| s.css_rules().ok()) else {
            continue;
        };
        for rule in (0..rules.length()).filter_map(|i| rules.get(i)) {
            let Some(rule) = rule.dyn_ref::<CssStyleRule>() else { continue };
            if rule.selector_text() != ":root" {
                continue;
            }
            let style = rule.style();
            for name in (0..style.length()).map(|i| style.item(i)) {
                if let Some(short) = name.strip_prefix("--") {
                    let value = now.get_property_value(&name).unwrap_or_default();
                    found.push((short.to_owned(), value.trim().to_owned()));
                }
            }
        }
    }
    found
}
