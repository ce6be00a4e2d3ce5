//! A second worker that the first one starts, to search half of a fit at the same time.
//!
//! It says `{ready}`, takes `{id, request}` and answers `{id, half}`, a `Float64Array`. Where it does not load, breaks
//! down, does not answer or is not ready yet, the first worker searches alone; for the next fit another helper is
//! started in its place.

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use futures_channel::oneshot;
use js_sys::{Array, Float64Array};
use protocol::split_search;
use strings::fit::answers::Answers;
use wasm_bindgen::prelude::*;
use web_sys::{Event, MessageEvent, Worker, WorkerOptions, WorkerType};

use crate::{field, hand_over, message, post, scope};

/// By this name a worker knows that it is the helper.
const NAME: &str = "helper";

/// How many helpers a worker starts, one after the other: where these are lost, so would be the next.
const STARTS: u32 = 3;

/// Whether this worker is the helper.
pub(crate) fn is_here() -> bool {
    scope().name() == NAME
}

/// Does the helper's work as long as it lives.
pub(crate) fn help() {
    let search = Closure::<dyn Fn(MessageEvent)>::new(|message: MessageEvent| {
        let data = message.data();
        let request = field(&data, "request").as_string().unwrap_or_default();
        let half = split_search::asked(&request).map(|answers| split_search::helped(&answers));
        let half = Float64Array::from(half.unwrap_or_default().as_slice());
        let fields = [("id", field(&data, "id")), ("half", half.clone().into())];
        hand_over(&fields, &Array::of1(&half.buffer()));
    });
    scope().set_onmessage(Some(search.as_ref().unchecked_ref()));
    search.forget();
    // What has run before, a browser runs several times faster.
    drop(split_search::helped(&Answers::default()));
    post(&[("ready", JsValue::TRUE)]);
}

/// The helper as the first worker sees it.
pub(crate) struct Helper {
    started: RefCell<Option<Started>>,
    starts_left: Cell<u32>,
}

struct Started {
    worker: Worker,
    state: Rc<State>,
    _on_message: Closure<dyn Fn(MessageEvent)>,
    _on_error: Closure<dyn Fn(Event)>,
}

impl Drop for Started {
    fn drop(&mut self) {
        self.worker.terminate();
    }
}

#[derive(Default)]
struct State {
    ready: Cell<bool>,
    /// It did not load, or has broken down.
    broken: Cell<bool>,
    /// Counts questions, so that an answer finds its own.
    last: Cell<u32>,
    waits: RefCell<Option<oneshot::Sender<Vec<f64>>>>,
}

impl Helper {
    /// The helper of a worker; none is ever started for one that searches alone.
    pub(crate) fn of(alone: bool) -> Self {
        let starts_left = Cell::new(if alone { 0 } else { STARTS });
        Self { started: RefCell::default(), starts_left }
    }

    /// Has the helper search its half of a fit, and starts one if there is none or the last one is lost. There is no
    /// half if it is not ready or comes to nothing.
    pub(crate) fn half(&self, request: &str) -> impl Future<Output = Option<Vec<f64>>> + use<> {
        let mut started = self.started.borrow_mut();
        if started.as_ref().is_some_and(|started| started.state.is_lost()) {
            *started = None;
        }
        if started.is_none() && self.starts_left.get() > 0 {
            self.starts_left.update(|left| left - 1);
            *started = Started::now().ok();
        }
        let waits = started.as_ref().and_then(|started| started.ask(request));
        async move { waits?.await.ok() }
    }
}

impl Started {
    fn now() -> Result<Self, JsValue> {
        let options = WorkerOptions::new();
        options.set_type(WorkerType::Module);
        options.set_name(NAME);
        let worker = Worker::new_with_options(&scope().location().href(), &options)?;
        let state = Rc::new(State::default());
        let heard = state.clone();
        let on_message = Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
            let data = event.data();
            if field(&data, "ready").is_truthy() {
                heard.ready.set(true);
            } else if let Ok(half) = field(&data, "half").dyn_into::<Float64Array>()
                && field(&data, "id").as_f64() == Some(f64::from(heard.last.get()))
                && let Some(waits) = heard.waits.take()
            {
                // Nobody may be waiting any more.
                drop(waits.send(half.to_vec()));
            } else if !field(&data, "failed").is_undefined() {
                heard.give_up();
            }
        });
        let heard = state.clone();
        let on_error = Closure::<dyn Fn(Event)>::new(move |event: Event| {
            // The search goes on without it, so the page need not hear of it.
            event.prevent_default();
            heard.give_up();
        });
        worker.set_onmessage(Some(on_message.as_ref().unchecked_ref()));
        worker.set_onerror(Some(on_error.as_ref().unchecked_ref()));
        Ok(Self { worker, state, _on_message: on_message, _on_error: on_error })
    }

    fn ask(&self, request: &str) -> Option<oneshot::Receiver<Vec<f64>>> {
        let State { ready, last, waits, .. } = &*self.state;
        if !ready.get() || waits.borrow().is_some() {
            return None;
        }
        last.set(last.get().wrapping_add(1));
        let fields = [
            ("id", JsValue::from_f64(f64::from(last.get()))),
            ("request", JsValue::from_str(request)),
        ];
        self.worker.post_message(&message(&fields)).ok()?;
        let (tells, told) = oneshot::channel();
        *waits.borrow_mut() = Some(tells);
        Some(told)
    }
}

impl State {
    /// Whoever waits searches alone.
    fn give_up(&self) {
        self.ready.set(false);
        self.broken.set(true);
        drop(self.waits.take());
    }

    /// It is broken, or still owes an answer that nobody waits for any more.
    fn is_lost(&self) -> bool {
        let owes = |tells: &oneshot::Sender<_>| tells.is_canceled();
        self.broken.get() || self.waits.borrow().as_ref().is_some_and(owes)
    }
}
