//! Remembers how far the page is kept on this machine, for whoever shows it.
//!
//! The service worker is registered once, as the page starts; what shows its state comes and goes.

use std::cell::RefCell;

use yew::Callback;

use super::serviceworker::Offline;

thread_local! {
    static LAST: RefCell<Option<Offline>> = const { RefCell::new(None) };
    static LISTENER: RefCell<Option<Callback<Offline>>> = const { RefCell::new(None) };
}

/// Takes a report of [`super::serviceworker::register`].
pub fn report(offline: Offline) {
    LAST.set(Some(offline.clone()));
    let listener = LISTENER.with_borrow(Clone::clone);
    if let Some(listener) = listener {
        listener.emit(offline);
    }
}

/// The last report, if there was one.
#[must_use]
pub fn last() -> Option<Offline> {
    LAST.with_borrow(Clone::clone)
}

/// Tells of every further report, in place of whoever was told before.
pub fn watch(listener: Option<Callback<Offline>>) {
    LISTENER.set(listener);
}
