//! The state of the page, kept in the browser with every change.

use std::rc::Rc;

use protocol::document::{self, Document};
use yew::prelude::*;

use crate::platform::storage::{self, StorageError};
use crate::platform::{clock, view};
use crate::state::{self, Action, Notice, State};
use crate::words::naming::capital;

/// The name under which the document is kept.
const NAME: &str = "fitting";

/// How long after the last change this tab counts as idle, so that another tab's change is taken over unasked.
const IDLE_MS: f64 = 10_000.0;

/// The state and the way to change it.
pub type Store = UseReducerHandle<State>;

impl Reducible for State {
    type Action = Action;

    fn reduce(self: Rc<Self>, action: Action) -> Rc<Self> {
        Rc::new(state::reduce(&self, action))
    }
}

/// The state of the page, for components inside [`crate::app::App`].
#[hook]
pub fn use_store() -> Store {
    let store = use_context::<Store>();
    // A component alone, as in a test, has a state of its own.
    let own = use_reducer(State::default);
    store.unwrap_or(own)
}

/// Restores the state, keeps it with every change, and follows other tabs. Used once, by the page as a whole.
#[hook]
pub fn use_store_of_page() -> Store {
    let store = use_reducer(start);
    let last_change = use_mut_ref(|| 0.0);
    let told = use_mut_ref(|| false);
    {
        let (dispatcher, last_change) = (store.dispatcher(), Rc::clone(&last_change));
        use_effect_with(store.document.clone(), move |document| {
            last_change.replace(clock::now_ms());
            match keep(document) {
                Ok(()) => drop(told.replace(false)),
                // Told once, not at every letter.
                Err(error) => {
                    if !told.replace(true) {
                        dispatcher.dispatch(Action::Tell(trouble(&error)));
                    }
                }
            }
        });
    }
    {
        let dispatcher = store.dispatcher();
        use_effect_with((), move |()| {
            let watch = storage::watch(NAME, move |text| {
                let document = text.map(|text| document::restore(&text).0).unwrap_or_default();
                let idle = view::is_hidden() || clock::now_ms() - *last_change.borrow() > IDLE_MS;
                dispatcher.dispatch(Action::Elsewhere { document: Box::new(document), idle });
            });
            move || drop(watch)
        });
    }
    store
}

/// Keeps the document at once: it is small, and a letter that waits for its turn can be lost with the tab.
fn keep(document: &Document) -> Result<(), StorageError> {
    let kept = storage::raw(NAME)?;
    let text = document::save(document);
    if kept.as_ref() == Some(&text) || (kept.is_none() && *document == Document::default()) {
        return Ok(());
    }
    storage::keep(NAME, &text)
}

/// The state with which the page starts: what was kept, and what there is to tell of it.
fn start() -> State {
    let mut mended = Document::default();
    let kept = storage::restore(NAME, |text| {
        let (document, lost) = state::read_kept(text);
        match lost {
            None => Ok(document),
            Some(reason) => {
                mended = document;
                Err(reason)
            }
        }
    });
    let (document, notice) = match kept {
        Ok(document) => (document.unwrap_or_default(), None),
        Err(error) => (mended, Some(trouble(&error))),
    };
    let mut state = State::of(document, clock::today());
    state.notice = notice;
    state
}

fn trouble(error: &StorageError) -> Notice {
    let text = error.to_string();
    Notice::grave(format!("{}.", capital(&text)))
}
