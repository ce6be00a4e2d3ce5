//! A handle on the model, for components that ask it something.

use std::cell::Cell;
use std::error::Error;
use std::fmt;
use std::rc::Rc;

use gloo::timers::callback::Timeout;
use protocol::reply::Reply;
use protocol::request::{Answers, FitRequest, Request};
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::hooks::Store;
use crate::platform::audio::Samples;
use crate::platform::worker::{self, Bridge, BridgeError};
use crate::platform::{address, clock};
use crate::route::Route;
use crate::state::{Action, Found};
use crate::words::say;

/// Why the model gave no reply.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum AskError {
    /// The way to the worker, or the worker, failed.
    Bridge(BridgeError),
    /// The worker said something that this page does not understand.
    Unreadable(String),
}

impl fmt::Display for AskError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Bridge(error) => error.fmt(f),
            Self::Unreadable(reason) => f.write_str(&say!("answer-unreadable", reason = reason)),
        }
    }
}

impl Error for AskError {}

/// The model behind the worker. Copies lead to the same worker and cost nothing.
#[derive(Clone, Debug)]
pub struct Model(Bridge);

impl PartialEq for Model {
    fn eq(&self, _: &Self) -> bool {
        // There is one worker for the whole page, so a handle never is a reason to draw anew.
        true
    }
}

impl Model {
    /// The model behind another worker than the page's.
    #[must_use]
    pub fn of(bridge: Bridge) -> Self {
        Self(bridge)
    }

    /// Asks for a sound, is told which share is done, and waits for the reply with its samples.
    ///
    /// # Errors
    /// When there is no reply. That a request is refused is a reply.
    pub async fn ask_sound(
        &self,
        request: &Request,
        told: Rc<dyn Fn(f64)>,
    ) -> Result<(Reply, Option<Samples>), AskError> {
        let request =
            serde_json::to_string(request).map_err(|e| AskError::Unreadable(e.to_string()))?;
        let (reply, samples) = self.0.ask_sound(&request, told).await.map_err(AskError::Bridge)?;
        let reply = Reply::read(&reply).map_err(|e| AskError::Unreadable(e.to_string()))?;
        Ok((reply, samples))
    }

    /// Asks at once, and waits for the reply. Dropping the future before the worker has begun takes the question back.
    ///
    /// # Errors
    /// When there is no reply. That a request is refused is a reply.
    pub fn ask(&self, request: &Request) -> impl Future<Output = Result<Reply, AskError>> + use<> {
        let asked = serde_json::to_string(request).map(|request| self.0.ask(&request));
        async move {
            let asked = asked.map_err(|e| AskError::Unreadable(e.to_string()))?;
            let reply = asked.await.map_err(AskError::Bridge)?;
            Reply::read(&reply).map_err(|e| AskError::Unreadable(e.to_string()))
        }
    }

    /// Gives up everything that is not answered yet.
    pub fn cancel(&self) {
        self.0.cancel();
    }
}

/// The model that the whole page shares.
#[hook]
pub fn use_model() -> Model {
    Model(worker::of_page())
}

/// Asks for a set that nobody waits for: what has run before, a browser runs several times faster.
pub fn warm_model() {
    spawn_local(async {
        let request = Request::Fit(Box::new(FitRequest { answers: Answers::default() }));
        drop(Model(worker::of_page()).ask(&request).await);
    });
}

/// Asks for a set, and stops asking.
#[derive(Clone, Debug, PartialEq)]
pub struct Finder {
    /// Asks for the set that the answers lead to.
    pub find: Callback<()>,
    /// Gives the question up.
    pub stop: Callback<()>,
}

impl Finder {
    /// Goes to a room. Where that is the set's and the set is not known, it is asked for on the way and sooner there.
    pub fn go(&self, store: &Store, to: &Route) {
        if *to == Route::Set && store.wants_set() {
            self.find.emit(());
        }
        address::go(&to.to_string());
    }
}

/// How long a person must have let the answers be until their set is worked out ahead, in milliseconds.
pub const CALM_MS: u32 = 120;

/// Finds sets for the answers in the store. Once they have stood for a while the set is asked for unbidden: in a room
/// that leads to it, it is ready before anybody presses for it. Without a while it is asked for at once.
#[hook]
pub fn use_finder(store: &Store, calm_ms: Option<u32>) -> Finder {
    let model = use_model();
    let find = {
        let (store, model) = (store.clone(), model.clone());
        Callback::from(move |()| {
            let ask = next_ask();
            // A page left open past midnight counts the days to the performance from the new day.
            let today = clock::today();
            let answers = store.answers_on(today);
            let request = Request::Fit(Box::new(FitRequest { answers: answers.clone() }));
            // Before anything is drawn: the worker searches meanwhile.
            let reply = model.ask(&request);
            store.dispatch(Action::Today(today));
            store.dispatch(Action::Ask(ask));
            let dispatcher = store.dispatcher();
            spawn_local(async move {
                dispatcher.dispatch(match reply.await {
                    Ok(Reply::Fit(fit)) => {
                        let found = Found { answers: Rc::new(answers), fit: Rc::new(*fit) };
                        Action::Answered(ask, found)
                    }
                    Ok(Reply::Refused(refused)) => Action::Refused(ask, refused.faults),
                    Ok(_) => Action::Failed {
                        ask,
                        message: say!("answer-other").to_owned(),
                        reload: true,
                    },
                    Err(error) => Action::Failed {
                        ask,
                        reload: matches!(
                            error,
                            AskError::Bridge(BridgeError::OtherBuild) | AskError::Unreadable(_)
                        ),
                        message: error.to_string(),
                    },
                });
            });
        })
    };
    {
        let find = find.clone();
        let wanted = store.wants_set().then(|| store.answers());
        use_effect_with(wanted, move |wanted| {
            let clock = match (wanted, calm_ms) {
                (None, _) => None,
                (_, None) => {
                    find.emit(());
                    None
                }
                (_, Some(calm_ms)) => Some(Timeout::new(calm_ms, move || find.emit(()))),
            };
            move || drop(clock)
        });
    }
    let stop = {
        let dispatcher = store.dispatcher();
        Callback::from(move |()| {
            // First the word, so that the cancelled question is not told of as a failure.
            dispatcher.dispatch(Action::Stop);
            model.cancel();
        })
    };
    Finder { find, stop }
}

/// A number for a question that no earlier one has.
fn next_ask() -> u32 {
    thread_local! {
        static LAST: Cell<u32> = const { Cell::new(0) };
    }
    LAST.set(LAST.get().wrapping_add(1));
    LAST.get()
}
