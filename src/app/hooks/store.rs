//! The state of the page, kept in the browser's store with every change.

use std::cell::RefCell;
use std::rc::Rc;

use futures_channel::oneshot;
use protocol::document::Document;
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::platform::clock;
use crate::platform::storage::{self, Database, texts};
use crate::records::{self, Backend, Change, Loaded, Pending, Shared, StoreError};
use crate::state::{self, Action, State};

/// How long the first drawing waits for the store, in milliseconds. A browser that takes longer is in trouble.
const PATIENCE_MS: u32 = 1000;

thread_local! {
    /// The page's database.
    static DATABASE: Database = Database::default();
    /// What was read before the first drawing.
    static LOADED: RefCell<Option<Loaded>> = const { RefCell::new(None) };
}

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

/// Reads the store before the first drawing if it holds anything, so that nothing on the page moves when it comes.
pub async fn load_first() {
    if !texts::expects_records() {
        return;
    }
    let (done, is_done) = oneshot::channel();
    let done = Rc::new(RefCell::new(Some(done)));
    let finish = move || {
        if let Some(done) = done.take() {
            // Nobody waits any more once the patience was over.
            done.send(()).ok();
        }
    };
    {
        let finish = finish.clone();
        spawn_local(async move {
            let loaded = load(&DATABASE.with(Clone::clone)).await;
            LOADED.set(Some(loaded));
            finish();
        });
    }
    clock::after(PATIENCE_MS, finish);
    is_done.await.ok();
}

/// Restores the state, keeps it with every change, and follows other tabs. Used once, by the page as a whole.
#[hook]
pub fn use_store_of_page() -> Store {
    let store = use_reducer(start);
    let keeper = use_mut_ref(|| Keeper::of(store.shared.own.is_empty()));
    {
        let (store, keeper) = (store.clone(), Rc::clone(&keeper));
        // After every drawing, for every drawing may show something new.
        use_effect(move || {
            keeper.borrow_mut().latest = Some(store.clone());
            Keeper::go_on(&keeper);
        });
    }
    {
        let dispatcher = store.dispatcher();
        use_effect_with((), move |()| {
            let database = keeper.borrow().database.clone();
            database.when_later(move || dispatcher.dispatch(Action::NotWritten(StoreError::Later)));
            let watch = storage::watch(move |_| {
                keeper.borrow_mut().unread = true;
                Keeper::go_on(&keeper);
            });
            move || drop(watch)
        });
    }
    store
}

/// Writes to the store and reads from it, one after the other.
struct Keeper {
    database: Database,
    latest: Option<Store>,
    /// The record that the tab is known to have.
    tab: String,
    /// It is writing or reading.
    busy: bool,
    /// The store has not been read since something in it changed.
    unread: bool,
    /// What the store has refused, and would refuse again.
    refused: Option<Vec<Change>>,
}

impl Keeper {
    fn of(unread: bool) -> Self {
        let (latest, tab) = (None, String::new());
        let database = DATABASE.with(Clone::clone);
        Self { database, latest, tab, busy: false, unread, refused: None }
    }

    /// Does what is to be done next, if anything is.
    fn go_on(keeper: &Rc<RefCell<Self>>) {
        let mut this = keeper.borrow_mut();
        let Some(store) = this.latest.clone().filter(|_| !this.busy) else { return };
        if this.tab != store.shared.own {
            this.tab.clone_from(&store.shared.own);
            texts::set_tab(&this.tab);
        }
        if std::mem::take(&mut this.unread) {
            this.busy = true;
            spawn_local(Self::read(Rc::clone(keeper), store));
        } else if let Some(pending) = store.pending()
            && this.refused.as_ref() != Some(&pending.changes)
        {
            this.busy = true;
            spawn_local(Self::write(Rc::clone(keeper), store, pending));
        }
    }

    async fn read(keeper: Rc<RefCell<Self>>, store: Store) {
        let database = keeper.borrow().database.clone();
        let loaded = load(&database).await;
        keeper.borrow_mut().busy = false;
        for action in actions(loaded, store.shared.own.is_empty()) {
            store.dispatch(action);
        }
    }

    async fn write(keeper: Rc<RefCell<Self>>, store: Store, pending: Pending) {
        let database = keeper.borrow().database.clone();
        let result = database.commit(&pending.changes).await;
        {
            let mut this = keeper.borrow_mut();
            this.busy = false;
            this.refused = None;
            match result {
                Err(StoreError::Changed) => this.unread = true,
                Err(_) => {
                    this.refused = Some(pending.changes.clone());
                    // Whether it was written after all is known when it is read back.
                    this.unread = true;
                }
                Ok(()) => {}
            }
        }
        match result {
            Ok(()) => store.dispatch(Action::Written(pending)),
            Err(StoreError::Changed) => Self::go_on(&keeper),
            Err(fault) => store.dispatch(Action::NotWritten(fault)),
        }
    }
}

/// Reads the store, and takes over what earlier builds kept.
async fn load(database: &Database) -> Loaded {
    let old = texts::old();
    let mut loaded = records::load(database, &old).await;
    for old in old.iter().filter(|old| loaded.done.contains(&old.name)) {
        texts::forget(&old.name, &old.text);
    }
    if database.is_later() {
        loaded.fault = Some(StoreError::Later);
    }
    loaded
}

/// What follows from what was read.
fn actions(loaded: Loaded, first: bool) -> Vec<Action> {
    let Loaded { records, unsaved, fault, .. } = loaded;
    let mut actions = Vec::new();
    // What could not be read says nothing about what stands there.
    if first || fault.is_none() || !records.is_empty() {
        actions.push(Action::Read { records, session: texts::tab() });
    }
    actions.extend(unsaved.filter(|_| first).map(|old| Action::Unsaved(Box::new(old))));
    actions.extend(fault.filter(|fault| *fault == StoreError::Later).map(Action::NotWritten));
    actions
}

/// The state with which the page starts.
fn start() -> State {
    let mut state = State::of(Document::default(), clock::today());
    state.shared = Shared::of(clock::unique());
    let loaded = LOADED.take();
    for action in loaded.into_iter().flat_map(|loaded| actions(loaded, true)) {
        state = state::reduce(&state, action);
    }
    state
}
