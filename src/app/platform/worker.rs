//! The bridge to the worker that holds the model.
//!
//! One request is with the worker at a time and the others wait here in order, so that a request nobody waits for
//! any more costs nothing: dropping the future of [`Bridge::ask`] takes a waiting request out of the line.
//! A computation cannot be interrupted from outside; [`Bridge::cancel`] ends the worker and starts another.
//! A worker that breaks down or falls silent is replaced, and the question is put to the next one once more.
//!
//! A worker answers one message at a time, so there are several: one for reports and fits with a helper that searches
//! half of each fit, one for certainty, two for the rows of maps, one for sounds that stopping ends, and one for the
//! strings of kept sets, with ten seconds a set. Each is loaded when it is first asked, after the first screen is there:
//! they weigh two thirds of the page again.

use std::cell::RefCell;
use std::collections::VecDeque;
use std::error::Error;
use std::fmt;
use std::future::Future;
use std::mem;
use std::rc::Rc;

use super::audio::Samples;
use futures_channel::oneshot;
use gloo::timers::callback::Timeout;
use js_sys::{Object, Reflect};
use protocol::split_search::ALONE;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::spawn_local;
use web_sys::{ErrorEvent, Event, MessageEvent, Worker, WorkerOptions, WorkerType};

use crate::words::say;

/// The id of the model that this page was built with.
pub const MODEL: &str = env!("ROPEWALK_MODEL");

/// How long the worker may take to load. A slow phone compiles it in seconds; a lost file never arrives.
const START_LIMIT_MS: u32 = 30_000;

/// How long one answer may take. The longest map ends in seconds, so a minute of silence is a fault.
const ANSWER_LIMIT_MS: u32 = 60_000;

/// How long a set or a report may take. Usually it is a tenth of a second, and a slow phone takes ten times as long.
const FIT_LIMIT_MS: u32 = 30_000;

/// How long a set may take that nobody waits for.
const BACKGROUND_LIMIT_MS: u32 = 10_000;

/// Why there is no answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum BridgeError {
    /// The page asked to stop.
    Cancelled,
    /// The worker did not load, or broke down over this request.
    Failed(String),
    /// The worker said nothing for this many seconds and was ended.
    Silent(u32),
    /// The worker belongs to another build of the page.
    OtherBuild,
}

impl BridgeError {
    /// A word for programs that tell the cases apart.
    #[must_use]
    pub fn kind(&self) -> &'static str {
        match self {
            Self::Cancelled => "cancelled",
            Self::Failed(_) => "failed",
            Self::Silent(_) => "silent",
            Self::OtherBuild => "other-build",
        }
    }
}

impl fmt::Display for BridgeError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Cancelled => f.write_str(say!("worker-stopped")),
            Self::Failed(reason) => f.write_str(&say!("worker-failed", reason = reason)),
            Self::Silent(seconds) => {
                f.write_str(&say!("worker-silent", seconds = seconds.to_string()))
            }
            Self::OtherBuild => f.write_str(say!("worker-other-build")),
        }
    }
}

impl Error for BridgeError {}

type Outcome = Result<Replied, BridgeError>;

/// What came back: a text of JSON, and the samples of a sound beside it.
struct Replied {
    text: String,
    samples: Option<Samples>,
}

/// A request and whoever waits for its answer.
struct Question {
    request: String,
    answer: oneshot::Sender<Outcome>,
    /// Is told which share is done, where the worker says so.
    told: Option<Rc<dyn Fn(f64)>>,
    /// How often it may be asked of another worker, if one is lost over it.
    tries_left: u32,
}

/// A running worker with its listeners.
struct Live {
    worker: Worker,
    _on_message: Closure<dyn Fn(MessageEvent)>,
    _on_error: Closure<dyn Fn(Event)>,
}

impl Drop for Live {
    fn drop(&mut self) {
        self.worker.terminate();
    }
}

#[derive(Default)]
struct State {
    live: Option<Live>,
    /// The worker has said that it is ready.
    ready: bool,
    /// Counts workers, so that a late word of an ended one is told apart.
    generation: u32,
    /// Counts requests, so that an answer finds its question.
    id: u32,
    asked: Option<Question>,
    waiting: VecDeque<Question>,
    /// Runs while the worker owes something.
    limit: Option<Timeout>,
}

/// The bridge. Copies of it lead to the same worker.
#[derive(Clone)]
pub struct Bridge {
    url: Rc<str>,
    model: Rc<str>,
    /// The name of the worker, by which it knows how it is to work.
    name: &'static str,
    limits_ms: (u32, u32),
    /// How often a question is put to another worker, if one is lost over it.
    tries: u32,
    state: Rc<RefCell<State>>,
}

impl fmt::Debug for Bridge {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Bridge")
            .field("url", &self.url)
            .field("model", &self.model)
            .finish_non_exhaustive()
    }
}

fn to_worker() -> Bridge {
    let meta = gloo::utils::document().query_selector("meta[name=worker]").ok().flatten();
    let url = meta.and_then(|meta| meta.get_attribute("content")).unwrap_or_default();
    Bridge::new(&url, MODEL)
}

/// The bridge that the whole page shares.
#[must_use]
pub fn of_page() -> Bridge {
    thread_local! {
        static BRIDGE: Bridge = to_worker().with_limits_ms(START_LIMIT_MS, FIT_LIMIT_MS);
    }
    BRIDGE.with(Clone::clone)
}

/// Two more, for the rows of maps: they take seconds, and no other answer should wait for them.
#[must_use]
pub fn of_maps() -> [Bridge; 2] {
    thread_local! {
        static BRIDGES: [Bridge; 2] = [to_worker(), to_worker()];
    }
    BRIDGES.with(Clone::clone)
}

/// One more for sounds, which can be ended without ending anything else.
#[must_use]
pub fn of_sounds() -> Bridge {
    thread_local! {
        static BRIDGE: Bridge = to_worker();
    }
    BRIDGE.with(Clone::clone)
}

/// One more for how sure a set is: it takes as long as several sets, and the next set should not wait for it.
#[must_use]
pub fn of_certainty() -> Bridge {
    thread_local! {
        static BRIDGE: Bridge = to_worker();
    }
    BRIDGE.with(Clone::clone)
}

/// One more for the strings of kept sets, which nobody waits for: it takes one core and gives up soon.
#[must_use]
pub fn of_kept() -> Bridge {
    thread_local! {
        static BRIDGE: Bridge = to_worker().in_background(BACKGROUND_LIMIT_MS);
    }
    BRIDGE.with(Clone::clone)
}

impl Bridge {
    /// A bridge to the worker at `url`, which must hold the model of this id. Nothing is loaded yet.
    #[must_use]
    pub fn new(url: &str, model: &str) -> Self {
        Self {
            url: url.into(),
            model: model.into(),
            name: "",
            limits_ms: (START_LIMIT_MS, ANSWER_LIMIT_MS),
            tries: 1,
            state: Rc::default(),
        }
    }

    /// The same bridge with other limits, in milliseconds, for loading and for one answer.
    #[must_use]
    pub fn with_limits_ms(self, start: u32, answer: u32) -> Self {
        Self { limits_ms: (start, answer), ..self }
    }

    /// The same bridge for questions that nobody waits for: its worker has no helper, an answer must come within this
    /// limit, and nothing is asked twice.
    #[must_use]
    pub fn in_background(self, answer_limit_ms: u32) -> Self {
        Self { name: ALONE, limits_ms: (self.limits_ms.0, answer_limit_ms), tries: 0, ..self }
    }

    /// Loads the worker, if none runs. A first question does so too; this only saves its time.
    pub fn start(&self) {
        if self.state.borrow().live.is_some() {
            return;
        }
        match self.spawn() {
            Ok(live) => {
                self.state.borrow_mut().live = Some(live);
                self.arm(self.limits_ms.0);
            }
            Err(error) => {
                let reason = say!("worker-no-start", reason = told(&error));
                self.fail_all(&BridgeError::Failed(reason));
            }
        }
    }

    /// Sends a request, a text of JSON, and waits for the reply.
    pub fn ask(&self, request: &str) -> impl Future<Output = Result<String, BridgeError>> + use<> {
        let replied = self.send(request, None);
        async { replied.await.map(|replied| replied.text) }
    }

    /// Sends a request for a sound, is told which share is done, and waits for the reply with its samples.
    pub fn ask_sound(
        &self,
        request: &str,
        told: Rc<dyn Fn(f64)>,
    ) -> impl Future<Output = Result<(String, Option<Samples>), BridgeError>> + use<> {
        let replied = self.send(request, Some(told));
        async { replied.await.map(|replied| (replied.text, replied.samples)) }
    }

    fn send(
        &self,
        request: &str,
        told: Option<Rc<dyn Fn(f64)>>,
    ) -> impl Future<Output = Outcome> + use<> {
        let (answer, reply) = oneshot::channel();
        let question =
            Question { request: request.to_owned(), answer, told, tries_left: self.tries };
        self.state.borrow_mut().waiting.push_back(question);
        self.start();
        self.next();
        // The sending half is dropped unanswered only together with the bridge.
        async { reply.await.unwrap_or(Err(BridgeError::Cancelled)) }
    }

    /// Gives up every request that is not answered yet, and makes a fresh worker ready for the next.
    pub fn cancel(&self) {
        // An idle worker has nothing to interrupt.
        if self.state.borrow().asked.is_some() {
            self.end();
        }
        self.fail_all(&BridgeError::Cancelled);
        self.start();
    }

    /// Gives up every request that is not answered yet, and ends the worker until the next is asked.
    pub fn close(&self) {
        self.end();
        self.fail_all(&BridgeError::Cancelled);
    }

    fn spawn(&self) -> Result<Live, JsValue> {
        let generation = {
            let mut state = self.state.borrow_mut();
            state.generation += 1;
            state.ready = false;
            state.generation
        };
        let options = WorkerOptions::new();
        options.set_type(WorkerType::Module);
        options.set_name(self.name);
        let worker = Worker::new_with_options(&self.url, &options)?;
        let bridge = self.clone();
        let on_message = Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
            if bridge.state.borrow().generation == generation {
                bridge.hear(&event.data());
            }
        });
        let bridge = self.clone();
        let on_error = Closure::<dyn Fn(Event)>::new(move |event: Event| {
            // The page has heard of it, so it need not be told a second time in the console.
            event.prevent_default();
            if bridge.state.borrow().generation == generation {
                let message = event
                    .dyn_ref::<ErrorEvent>()
                    .map(ErrorEvent::message)
                    .filter(|message| !message.is_empty());
                bridge.broke(message.unwrap_or_else(|| say!("worker-no-load").to_owned()));
            }
        });
        worker.set_onmessage(Some(on_message.as_ref().unchecked_ref()));
        worker.set_onerror(Some(on_error.as_ref().unchecked_ref()));
        Ok(Live { worker, _on_message: on_message, _on_error: on_error })
    }

    /// Takes a message of the worker.
    fn hear(&self, data: &JsValue) {
        let field =
            |name: &str| Reflect::get(data, &JsValue::from_str(name)).unwrap_or(JsValue::UNDEFINED);
        if let Some(model) = field("ready").as_string() {
            if *model == *self.model {
                let mut state = self.state.borrow_mut();
                state.ready = true;
                state.limit = None;
                drop(state);
                self.next();
            } else {
                self.end();
                self.fail_all(&BridgeError::OtherBuild);
            }
        } else if let Some(reply) = field("reply").as_string() {
            let mut state = self.state.borrow_mut();
            if field("id").as_f64() != Some(f64::from(state.id)) {
                return;
            }
            state.limit = None;
            let asked = state.asked.take();
            drop(state);
            if let Some(question) = asked {
                // Nobody may be waiting any more.
                let samples = field("samples").dyn_into().ok().map(Samples);
                drop(question.answer.send(Ok(Replied { text: reply, samples })));
            }
            self.next();
        } else if let Some(share) = field("done").as_f64() {
            let state = self.state.borrow();
            let current = field("id").as_f64() == Some(f64::from(state.id));
            let asked = state.asked.as_ref().filter(|_| current);
            let told = asked.and_then(|question| question.told.clone());
            drop(state);
            if let Some(told) = told {
                // It is not silent.
                self.arm(self.limits_ms.1);
                told(share);
            }
        } else if let Some(reason) = field("failed").as_string() {
            self.broke(reason);
        }
    }

    /// Sends the next request, if the worker is free for it.
    fn next(&self) {
        let mut state = self.state.borrow_mut();
        if !state.ready || state.asked.is_some() {
            return;
        }
        let question = loop {
            match state.waiting.pop_front() {
                Some(question) if question.answer.is_canceled() => {}
                Some(question) => break question,
                None => return,
            }
        };
        state.id += 1;
        let message = Object::new();
        // Setting a field of an empty object cannot fail, and numbers and text can always be sent.
        drop(Reflect::set(&message, &"id".into(), &f64::from(state.id).into()));
        drop(Reflect::set(&message, &"request".into(), &question.request.as_str().into()));
        if let Some(live) = &state.live {
            drop(live.worker.post_message(&message));
        }
        state.asked = Some(question);
        drop(state);
        self.arm(self.limits_ms.1);
    }

    /// The worker is of no more use. The request it broke over is asked once more, of a fresh one; whoever waits for it
    /// is told if that breaks too. If it broke while loading, the next would too, and all are told.
    fn broke(&self, reason: String) {
        self.lost(BridgeError::Failed(reason));
    }

    fn lost(&self, error: BridgeError) {
        let was_ready = self.state.borrow().ready;
        self.end();
        if !was_ready {
            self.fail_all(&error);
            return;
        }
        let asked = self.state.borrow_mut().asked.take();
        match asked {
            Some(question) if question.tries_left > 0 => {
                let again = Question { tries_left: question.tries_left - 1, ..question };
                self.state.borrow_mut().waiting.push_front(again);
            }
            Some(question) => drop(question.answer.send(Err(error))),
            None => {}
        }
        if !self.state.borrow().waiting.is_empty() {
            self.start();
        }
    }

    /// Starts the clock for what the worker owes.
    fn arm(&self, limit_ms: u32) {
        let bridge = self.clone();
        let clock = Timeout::new(limit_ms, move || {
            bridge.lost(BridgeError::Silent(limit_ms.div_ceil(1000)));
        });
        self.state.borrow_mut().limit = Some(clock);
    }

    /// Ends the worker.
    fn end(&self) {
        let mut state = self.state.borrow_mut();
        state.ready = false;
        state.generation += 1;
        let clock = state.limit.take();
        let live = state.live.take();
        drop(state);
        if let Some(live) = &live {
            live.worker.terminate();
        }
        // This may run inside one of the listeners or the clock, which must not be dropped while they run.
        spawn_local(async move { drop((live, clock)) });
    }

    fn fail_all(&self, error: &BridgeError) {
        let mut state = self.state.borrow_mut();
        let lost: Vec<_> =
            state.asked.take().into_iter().chain(mem::take(&mut state.waiting)).collect();
        drop(state);
        for question in lost {
            drop(question.answer.send(Err(error.clone())));
        }
    }
}

/// What a thrown value says of itself.
fn told(error: &JsValue) -> String {
    error
        .dyn_ref::<js_sys::Error>()
        .map_or_else(|| say!("unknown-reason").to_owned(), |error| error.message().into())
}
