//! Prints the page.

use gloo::events::EventListener;
use yew::{Html, create_portal};

/// Opens the browser's print dialogue; false when there is none.
#[must_use = "a browser without printing should be told of"]
pub fn print() -> bool {
    web_sys::window().is_some_and(|window| window.print().is_ok())
}

/// Hangs what is meant for paper beside the page, where printing finds it alone.
///
/// Outside a browser, where a test reads the page as text, there is no beside: it stands at the end of the page.
pub fn on_paper(paper: Html) -> Html {
    if cfg!(target_arch = "wasm32") {
        create_portal(paper, gloo::utils::body().into())
    } else {
        paper
    }
}

/// Tells when printing is over, until the result is dropped.
#[must_use = "it listens only as long as it is kept"]
pub fn watch_end(report: impl Fn() + 'static) -> Watch {
    Watch(EventListener::new(&gloo::utils::window(), "afterprint", move |_| report()))
}

/// Listens for the end of printing while it is kept.
#[derive(Debug)]
pub struct Watch(#[expect(dead_code, reason = "it listens until it is dropped")] EventListener);
