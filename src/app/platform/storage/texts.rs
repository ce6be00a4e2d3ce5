//! Small texts in the browser's `localStorage` and, for one tab alone, its `sessionStorage`.
//!
//! Records belong into the [`super::Database`]. Here are the preferences, which the first drawing needs, and what earlier
//! builds kept.

use web_sys::Storage;

use crate::records::OldText;

/// What stands before every name, for the browser's store belongs to the host and may hold more than this page.
const PREFIX: &str = "ropewalk/";

/// The names under which earlier builds kept the document and texts that they could not read.
const DOCUMENT: &str = "fitting";
const ASIDE: &str = "fitting/aside-";

/// The name of the mark that the database holds something.
const STORED: &str = "stored";

/// In the `sessionStorage`: the record of the tab's answers.
const TAB: &str = "tab";

/// Keeps a text under a name, in place of what was there. Says whether it did: a browser may be told to keep nothing.
pub fn keep(name: &str, text: &str) -> bool {
    local().is_some_and(|store| store.set_item(&key(name), text).is_ok())
}

/// The text under a name.
#[must_use]
pub fn raw(name: &str) -> Option<String> {
    local()?.get_item(&key(name)).ok().flatten()
}

/// Forgets what is under a name, if it still is this text.
pub fn forget(name: &str, text: &str) {
    if let Some(store) = local().filter(|_| raw(name).as_deref() == Some(text)) {
        // Where the browser refuses, it stays, and is tried again at the next start.
        drop(store.remove_item(&key(name)));
    }
}

/// What earlier builds kept.
#[must_use]
pub fn old() -> Vec<OldText> {
    let Some(store) = local() else { return Vec::new() };
    let count = store.length().unwrap_or(0);
    let names = (0..count).filter_map(|i| store.key(i).ok().flatten());
    let names = names.filter_map(|key| key.strip_prefix(PREFIX).map(str::to_owned));
    let names = names.filter(|name| is_old(name));
    names.filter_map(|name| Some(OldText { text: raw(&name)?, name })).collect()
}

/// Whether earlier builds used a name, with what stands before it.
pub(super) fn is_old_key(key: &str) -> bool {
    key.strip_prefix(PREFIX).is_some_and(is_old)
}

fn is_old(name: &str) -> bool {
    name == DOCUMENT || name.starts_with(ASIDE)
}

/// Whether something is kept here that the first drawing should wait for.
#[must_use]
pub fn expects_records() -> bool {
    raw(STORED).is_some() || raw(DOCUMENT).is_some()
}

/// Marks that the database holds something.
pub fn mark_stored() {
    if raw(STORED).is_none() {
        keep(STORED, "1");
    }
}

/// The record of this tab's answers, if the tab has been here before.
#[must_use]
pub fn tab() -> Option<String> {
    session()?.get_item(&key(TAB)).ok().flatten()
}

/// Remembers the record of this tab's answers until the tab is closed.
pub fn set_tab(id: &str) {
    if let Some(session) = session() {
        // Without it, a tab that is loaded anew takes up the answers that were written last.
        drop(session.set_item(&key(TAB), id));
    }
}

fn key(name: &str) -> String {
    format!("{PREFIX}{name}")
}

fn local() -> Option<Storage> {
    gloo::utils::window().local_storage().ok().flatten()
}

fn session() -> Option<Storage> {
    gloo::utils::window().session_storage().ok().flatten()
}
