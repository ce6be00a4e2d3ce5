//! The part of the page's address after `#`.

use gloo::events::EventListener;

/// The part after `#`, with it; empty if there is none.
#[must_use]
pub fn hash() -> String {
    gloo::utils::window().location().hash().unwrap_or_default()
}

/// Goes to another address of the page; Back leads here again.
pub fn go(hash: &str) {
    // Setting the part after `#` of an address cannot fail.
    drop(gloo::utils::window().location().set_hash(hash));
}

/// Puts another address in place of this one; Back leads where it led before.
pub fn replace(hash: &str) {
    drop(gloo::utils::window().location().replace(hash));
}

/// Loads the page anew.
pub fn reload() {
    drop(gloo::utils::window().location().reload());
}

/// Tells of every new address, until the result is dropped.
#[must_use = "it listens only as long as it is kept"]
pub fn watch(report: impl Fn(String) + 'static) -> Watch {
    Watch(EventListener::new(&gloo::utils::window(), "hashchange", move |_| report(hash())))
}

/// Listens for new addresses while it is kept.
#[derive(Debug)]
pub struct Watch(#[expect(dead_code, reason = "it listens until it is dropped")] EventListener);
