//! Prints the page.

use gloo::events::EventListener;

/// Opens the browser's print dialogue; false when there is none.
#[must_use = "a browser without printing should be told of"]
pub fn print() -> bool {
    web_sys::window().is_some_and(|window| window.print().is_ok())
}

/// Tells when printing is over, until the result is dropped.
#[must_use = "it listens only as long as it is kept"]
pub fn watch_end(report: impl Fn() + 'static) -> Watch {
    Watch(EventListener::new(&gloo::utils::window(), "afterprint", move |_| report()))
}

/// Listens for the end of printing while it is kept.
#[derive(Debug)]
pub struct Watch(#[expect(dead_code, reason = "it listens until it is dropped")] EventListener);
