//! Keeps texts under names on this machine, in the browser's `localStorage`.
//!
//! A text that cannot be understood later is never lost: [`restore`] moves it aside under another name.
//! While even that is impossible, for the disk is full, [`keep`] refuses to write over it.

use std::cell::RefCell;
use std::collections::BTreeSet;
use std::error::Error;
use std::fmt;

use gloo::events::EventListener;
use wasm_bindgen::JsCast;
use web_sys::{DomException, Storage, StorageEvent};

use crate::words::say;

/// What stands before every name, for the browser's store belongs to the host and may hold more than this page.
const PREFIX: &str = "ropewalk/";

/// What stands between the name of a text that was moved aside and its number.
const ASIDE: &str = "/aside-";

/// Why a text could not be kept or restored.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum StorageError {
    /// The browser keeps nothing: a private window, or a setting.
    Disabled,
    /// There is no room left.
    Full,
    /// What was kept cannot be understood. It is still there, under this name, word for word.
    Broken {
        /// The name under which [`raw`] finds it.
        kept_under: String,
        /// What is wrong with it.
        reason: String,
    },
}

impl fmt::Display for StorageError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Disabled => f.write_str(say!("storage-disabled")),
            Self::Full => f.write_str(say!("storage-full")),
            Self::Broken { kept_under, reason } => {
                f.write_str(&say!("storage-broken", reason = reason, name = kept_under))
            }
        }
    }
}

impl Error for StorageError {}

thread_local! {
    /// Names whose text is broken and could not be moved aside.
    static GUARDED: RefCell<BTreeSet<String>> = const { RefCell::new(BTreeSet::new()) };
}

/// Keeps a text under a name, in place of what was there.
///
/// # Errors
/// [`StorageError::Disabled`] or [`StorageError::Full`]; what was there is then still there.
pub fn keep(name: &str, text: &str) -> Result<(), StorageError> {
    if GUARDED.with_borrow(|guarded| guarded.contains(name)) {
        move_aside(name)?;
        GUARDED.with_borrow_mut(|guarded| guarded.remove(name));
    }
    write(name, text)
}

/// The text under a name, as it is.
///
/// # Errors
/// [`StorageError::Disabled`].
pub fn raw(name: &str) -> Result<Option<String>, StorageError> {
    store()?.get_item(&key(name)).map_err(|_| StorageError::Disabled)
}

/// Restores what was kept under a name, with a reader that says what is wrong if it cannot.
///
/// # Errors
/// [`StorageError::Disabled`], or [`StorageError::Broken`] when the reader fails.
pub fn restore<T>(
    name: &str,
    read: impl FnOnce(&str) -> Result<T, String>,
) -> Result<Option<T>, StorageError> {
    let Some(text) = raw(name)? else {
        return Ok(None);
    };
    match read(&text) {
        Ok(value) => Ok(Some(value)),
        Err(reason) => {
            let kept_under = move_aside(name).unwrap_or_else(|_| {
                GUARDED.with_borrow_mut(|guarded| guarded.insert(name.to_owned()));
                name.to_owned()
            });
            Err(StorageError::Broken { kept_under, reason })
        }
    }
}

/// Forgets what is under a name.
///
/// # Errors
/// [`StorageError::Disabled`].
pub fn forget(name: &str) -> Result<(), StorageError> {
    GUARDED.with_borrow_mut(|guarded| guarded.remove(name));
    store()?.remove_item(&key(name)).map_err(|_| StorageError::Disabled)
}

/// The names under which texts of this name were moved aside, oldest first.
///
/// # Errors
/// [`StorageError::Disabled`].
pub fn set_aside(name: &str) -> Result<Vec<String>, StorageError> {
    let mut names = Vec::new();
    let mut number = 1;
    loop {
        let aside = format!("{name}{ASIDE}{number}");
        if raw(&aside)?.is_none() {
            return Ok(names);
        }
        names.push(aside);
        number += 1;
    }
}

/// Tells of changes that another tab of the page makes under a name, until the result is dropped.
/// The new text is given, or none if it was forgotten.
#[must_use = "it listens only as long as it is kept"]
pub fn watch(name: &str, report: impl Fn(Option<String>) + 'static) -> Watch {
    let key = key(name);
    Watch(EventListener::new(&gloo::utils::window(), "storage", move |event| {
        let Some(event) = event.dyn_ref::<StorageEvent>() else {
            return;
        };
        match event.key() {
            Some(changed) if changed == key => report(event.new_value()),
            Some(_) => {}
            // Without a name, everything was forgotten at once.
            None => report(None),
        }
    }))
}

/// Listens for changes of another tab while it is kept.
#[derive(Debug)]
pub struct Watch(#[expect(dead_code, reason = "it listens until it is dropped")] EventListener);

/// Moves a text to a free name and returns that.
fn move_aside(name: &str) -> Result<String, StorageError> {
    let Some(text) = raw(name)? else {
        return Ok(name.to_owned());
    };
    let aside = format!("{name}{ASIDE}{}", set_aside(name)?.len() + 1);
    // Copied first: at no moment is it nowhere.
    write(&aside, &text)?;
    store()?.remove_item(&key(name)).map_err(|_| StorageError::Disabled)?;
    Ok(aside)
}

fn write(name: &str, text: &str) -> Result<(), StorageError> {
    store()?.set_item(&key(name), text).map_err(|error| match error.dyn_ref::<DomException>() {
        Some(error) if error.name() == "QuotaExceededError" => StorageError::Full,
        _ => StorageError::Disabled,
    })
}

fn key(name: &str) -> String {
    format!("{PREFIX}{name}")
}

fn store() -> Result<Storage, StorageError> {
    gloo::utils::window().local_storage().ok().flatten().ok_or(StorageError::Disabled)
}
