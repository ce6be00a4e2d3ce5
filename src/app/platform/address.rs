//! The part of the page's address after `#`.

use gloo::events::EventListener;
use wasm_bindgen::JsValue;
use web_sys::Event;

/// The part after `#`, with it; empty if there is none.
#[must_use]
pub fn hash() -> String {
    gloo::utils::window().location().hash().unwrap_or_default()
}

/// Goes to another address of the page; Back leads here again.
///
/// A browser that is told of the address alone lays the page out to look for a place of that name. Rooms are no places
/// in a page, so it is told of a step in its history, and everybody else as if it had told them.
pub fn go(hash: &str) {
    let window = gloo::utils::window();
    if hash == self::hash() {
        return;
    }
    let stepped =
        window.history().and_then(|all| all.push_state_with_url(&JsValue::NULL, "", Some(hash)));
    match stepped.and_then(|()| Event::new("hashchange")) {
        Ok(changed) => drop(window.dispatch_event(&changed)),
        // Setting the part after `#` of an address cannot fail.
        Err(_) => drop(window.location().set_hash(hash)),
    }
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
