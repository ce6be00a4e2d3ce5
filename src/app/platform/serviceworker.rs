//! Keeps the page on this machine: registers `sw.js` and tells how far it is.

use std::cell::Cell;
use std::rc::Rc;

use gloo::timers::callback::Timeout;
use js_sys::Reflect;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{
    ServiceWorker, ServiceWorkerContainer, ServiceWorkerRegistration, ServiceWorkerState,
};

use crate::words::say;

/// How long a build that waited since an earlier visit may take to take over as the page starts.
const TAKE_OVER_MS: u32 = 2_000;

/// How far the page is kept on this machine.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Offline {
    /// This browser, or the way in which the page was opened, does not allow it.
    Impossible,
    /// Everything is here: the page starts without a network.
    Ready,
    /// Everything is here, and a newer build waits to take over: see [`take_update`].
    UpdateWaiting,
    /// It was tried and failed, for this reason.
    Failed(String),
}

/// Registers the service worker and reports each change.
pub fn register(report: impl Fn(Offline) + 'static) {
    let report: Rc<dyn Fn(Offline)> = Rc::new(report);
    spawn_local(async move {
        let Some(container) = container() else {
            report(Offline::Impossible);
            return;
        };
        if let Err(error) = follow(&container, &report).await {
            let reason = error
                .dyn_ref::<js_sys::Error>()
                .map_or_else(|| say!("unknown-reason").to_owned(), |error| error.message().into());
            report(Offline::Failed(reason));
        }
    });
}

/// Lets the newer build take over, and reloads the page when it has.
pub fn take_update() {
    let Some(container) = container() else { return };
    spawn_local(async move {
        let Ok(ready) = container.ready() else { return };
        let Ok(registration) = JsFuture::from(ready).await else { return };
        let registration: ServiceWorkerRegistration = registration.unchecked_into();
        if let Some(waiting) = registration.waiting() {
            reload_when_replaced(&container);
            // A build that is gone meanwhile has taken over already.
            drop(waiting.post_message(&"take over".into()));
        }
    });
}

/// Reloads the page when another build takes charge of it.
fn reload_when_replaced(container: &ServiceWorkerContainer) {
    let reload = Closure::once_into_js(|| {
        // A page that cannot reload goes on with the build it has.
        drop(gloo::utils::window().location().reload());
    });
    container.set_oncontrollerchange(Some(reload.unchecked_ref()));
}

/// The browser's keeper of service workers; absent where the page may have none.
fn container() -> Option<ServiceWorkerContainer> {
    let navigator = gloo::utils::window().navigator();
    let container = Reflect::get(&navigator, &"serviceWorker".into()).ok()?;
    container.dyn_into().ok()
}

async fn follow(
    container: &ServiceWorkerContainer,
    report: &Rc<dyn Fn(Offline)>,
) -> Result<(), JsValue> {
    let registration: ServiceWorkerRegistration =
        JsFuture::from(container.register("./sw.js")).await?.unchecked_into();
    if let Some(waiting) = registration.waiting() {
        // It has waited since an earlier visit, and nothing has been done on this one that a reload could lose.
        // A second tab must not be reloaded behind a person's back, so this holds only for a moment.
        reload_when_replaced(container);
        waiting.post_message(&"take over if alone".into())?;
        let container = container.clone();
        Timeout::new(TAKE_OVER_MS, move || container.set_oncontrollerchange(None)).forget();
    }
    let report_now = {
        let (registration, report) = (registration.clone(), Rc::clone(report));
        Rc::new(move || {
            if registration.waiting().is_some() && registration.active().is_some() {
                report(Offline::UpdateWaiting);
            } else if registration.active().is_some() {
                report(Offline::Ready);
            }
        })
    };
    let watch = {
        let (report, report_now) = (Rc::clone(report), Rc::clone(&report_now));
        move |worker: ServiceWorker| {
            let (seen, report, report_now) =
                (worker.clone(), Rc::clone(&report), Rc::clone(&report_now));
            let installed = Cell::new(false);
            let changed = Closure::<dyn Fn()>::new(move || match seen.state() {
                // It could not fetch every file; an older build stays in charge if there is one.
                ServiceWorkerState::Redundant if !installed.get() => {
                    report(Offline::Failed(say!("offline-not-all").to_owned()));
                }
                _ => {
                    installed.set(true);
                    report_now();
                }
            });
            worker.set_onstatechange(Some(changed.as_ref().unchecked_ref()));
            // It listens as long as the page lives.
            changed.forget();
        }
    };
    if let Some(worker) = registration.installing() {
        watch(worker);
    }
    let found = {
        let registration = registration.clone();
        Closure::<dyn Fn()>::new(move || {
            if let Some(worker) = registration.installing() {
                watch(worker);
            }
        })
    };
    registration.set_onupdatefound(Some(found.as_ref().unchecked_ref()));
    found.forget();
    report_now();
    Ok(())
}
