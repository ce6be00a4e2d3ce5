//! Prints the page.

/// Opens the browser's print dialogue; false when there is none.
#[must_use = "a browser without printing should be told of"]
pub fn print() -> bool {
    web_sys::window().is_some_and(|window| window.print().is_ok())
}
