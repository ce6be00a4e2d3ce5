//! What outlives a reload of this tab, and nothing else: a draft that is no answer and is not kept.

use web_sys::Storage;

fn storage() -> Option<Storage> {
    gloo::utils::window().session_storage().ok().flatten()
}

/// What was put by under that name; none where nothing was, or where the browser keeps nothing.
#[must_use]
pub fn recall(name: &str) -> Option<String> {
    storage()?.get_item(name).ok().flatten()
}

/// Puts a text by. Where the browser keeps nothing, it is gone after a reload, and nothing else is lost.
pub fn put_by(name: &str, text: &str) {
    if let Some(storage) = storage() {
        let _ = storage.set_item(name, text);
    }
}
