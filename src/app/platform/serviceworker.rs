//! Keeps the page on this machine: registers `sw.js` and tells how far it is.
//!
//! That everything is kept is said only on the word of the service worker, which looks at every file when it is asked:
//! as the page starts, when another build has been fetched, when the network is back, and whenever it is to be shown.

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use gloo::events::EventListener;
use js_sys::Reflect;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{
    MessageEvent, ServiceWorker, ServiceWorkerContainer, ServiceWorkerRegistration,
    ServiceWorkerState,
};

use crate::words::say;

/// How long a build that waited since an earlier visit may take to take over as the page starts.
const TAKE_OVER_MS: u32 = 2_000;

/// How far the page is kept on this machine.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Offline {
    /// Whether it starts without a network.
    pub copy: LocalCopy,
    /// Whether there is a newer build.
    pub newer: Option<Newer>,
}

/// Whether the page starts without a network.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LocalCopy {
    /// This browser, or the way in which the page was opened, does not allow it.
    Impossible,
    /// Everything is here.
    Ready,
    /// Something is missing, for this reason.
    Failed(String),
}

/// A newer build than the one that runs here.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Newer {
    /// It waits to take over: see [`take_update`].
    Waits,
    /// It has taken over in another tab, and this one has what it needs of its own build until it is loaded anew.
    Elsewhere,
}

type Report = Rc<dyn Fn(Offline)>;

thread_local! {
    static KEEPER: RefCell<Option<Rc<Keeper>>> = const { RefCell::new(None) };
}

/// The browser's keeper of service workers, and what is known of this page's.
struct Keeper {
    registration: ServiceWorkerRegistration,
    report: Report,
    copy: RefCell<Option<LocalCopy>>,
    replaced: Cell<bool>,
}

/// Registers the service worker and reports each change.
pub fn register(report: impl Fn(Offline) + 'static) {
    let report: Report = Rc::new(report);
    spawn_local(async move {
        let Some(container) = container() else {
            report(Offline { copy: LocalCopy::Impossible, newer: None });
            return;
        };
        if let Err(error) = follow(&container, &report).await {
            let reason = error
                .dyn_ref::<js_sys::Error>()
                .map_or_else(|| say!("unknown-reason").to_owned(), |error| error.message().into());
            report(Offline { copy: LocalCopy::Failed(reason), newer: None });
        }
    });
}

/// Has the service worker look whether every file is here and right, and fetch what is not. What it finds is reported.
pub fn check() {
    if let Some(keeper) = KEEPER.with_borrow(Clone::clone) {
        keeper.check();
    }
}

/// Lets the newer build take over, and loads the page anew when it has.
pub fn take_update() {
    let (Some(container), Some(keeper)) = (container(), KEEPER.with_borrow(Clone::clone)) else {
        return;
    };
    match keeper.registration.waiting() {
        Some(waiting) => {
            reload_when_replaced(&container);
            // A build that is gone meanwhile has taken over already.
            drop(waiting.post_message(&"take over".into()));
        }
        None => super::address::reload(),
    }
}

/// Loads the page anew when another build takes charge of it.
fn reload_when_replaced(container: &ServiceWorkerContainer) {
    let reload = Closure::once_into_js(super::address::reload);
    container.set_oncontrollerchange(Some(reload.unchecked_ref()));
}

/// The browser's keeper of service workers; absent where the page may have none.
fn container() -> Option<ServiceWorkerContainer> {
    let navigator = gloo::utils::window().navigator();
    let container = Reflect::get(&navigator, &"serviceWorker".into()).ok()?;
    container.dyn_into().ok()
}

async fn follow(container: &ServiceWorkerContainer, report: &Report) -> Result<(), JsValue> {
    let registration: ServiceWorkerRegistration =
        JsFuture::from(container.register("./sw.js")).await?.unchecked_into();
    let keeper = Rc::new(Keeper {
        registration: registration.clone(),
        report: Rc::clone(report),
        copy: RefCell::default(),
        replaced: Cell::new(false),
    });
    KEEPER.set(Some(Rc::clone(&keeper)));
    keeper.listen(container);
    if let Some(waiting) = registration.waiting() {
        // It has waited since an earlier visit, and nothing has been done on this one that a reload could lose.
        // A second tab must not be reloaded behind a person's back, so this holds only for a moment.
        reload_when_replaced(container);
        waiting.post_message(&"take over if alone".into())?;
        let (keeper, container) = (Rc::clone(&keeper), container.clone());
        super::clock::after(TAKE_OVER_MS, move || keeper.tell_when_replaced(&container));
    } else {
        keeper.tell_when_replaced(container);
    }
    if let Some(worker) = registration.installing() {
        keeper.watch(worker);
    }
    let found = {
        let (keeper, registration) = (Rc::clone(&keeper), registration.clone());
        Closure::<dyn Fn()>::new(move || {
            if let Some(worker) = registration.installing() {
                keeper.watch(worker);
            }
        })
    };
    registration.set_onupdatefound(Some(found.as_ref().unchecked_ref()));
    found.forget();
    keeper.check();
    Ok(())
}

impl Keeper {
    /// Takes what the service worker says, and asks it anew when the network is back.
    fn listen(self: &Rc<Self>, container: &ServiceWorkerContainer) {
        let keeper = Rc::clone(self);
        let heard = Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
            let whole = Reflect::get(&event.data(), &"whole".into()).ok();
            if let Some(whole) = whole.and_then(|whole| whole.as_bool()) {
                let missing = || LocalCopy::Failed(say!("offline-not-all").to_owned());
                keeper.tell(Some(if whole { LocalCopy::Ready } else { missing() }));
            }
        });
        container.set_onmessage(Some(heard.as_ref().unchecked_ref()));
        heard.forget();
        let keeper = Rc::clone(self);
        // It listens as long as the page lives.
        EventListener::new(&gloo::utils::window(), "online", move |_| keeper.check()).forget();
    }

    /// From now on, another build that takes charge of the page was asked for in another tab.
    fn tell_when_replaced(self: &Rc<Self>, container: &ServiceWorkerContainer) {
        // The first build of a first visit takes charge of a page of its own.
        let own = Cell::new(container.controller().is_none());
        let keeper = Rc::clone(self);
        let changed = Closure::<dyn Fn()>::new(move || {
            if !own.take() {
                keeper.replaced.set(true);
                keeper.tell(None);
            }
        });
        container.set_oncontrollerchange(Some(changed.as_ref().unchecked_ref()));
        changed.forget();
    }

    /// Follows a build that is being fetched.
    fn watch(self: &Rc<Self>, worker: ServiceWorker) {
        let (keeper, seen) = (Rc::clone(self), worker.clone());
        let installed = Cell::new(false);
        let changed = Closure::<dyn Fn()>::new(move || match seen.state() {
            // It could not fetch every file; an older build stays in charge if there is one.
            ServiceWorkerState::Redundant if !installed.get() => {
                if keeper.registration.active().is_none() {
                    keeper.tell(Some(LocalCopy::Failed(say!("offline-not-all").to_owned())));
                }
            }
            _ => {
                installed.set(true);
                keeper.check();
                keeper.tell(None);
            }
        });
        worker.set_onstatechange(Some(changed.as_ref().unchecked_ref()));
        // It listens as long as the page lives.
        changed.forget();
    }

    fn check(&self) {
        if let Some(active) = self.registration.active() {
            // One that is gone meanwhile has no word to say.
            drop(active.post_message(&"check".into()));
        }
    }

    /// Reports what is known, with what was just found out.
    fn tell(&self, found: Option<LocalCopy>) {
        if found.is_some() {
            self.copy.replace(found);
        }
        let newer = if self.registration.waiting().is_some() {
            Some(Newer::Waits)
        } else {
            self.replaced.get().then_some(Newer::Elsewhere)
        };
        if let Some(copy) = self.copy.borrow().clone() {
            (self.report)(Offline { copy, newer });
        }
    }
}
