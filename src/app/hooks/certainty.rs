//! Asks how sure a set is, after the set is there, and of another worker than the one that finds sets.

use std::rc::Rc;

use gloo::timers::callback::Timeout;
use protocol::reply::{Certainty, Reply};
use protocol::request::{FitRequest, Request};
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::hooks::{AskError, Model};
use crate::platform::worker::{self, BridgeError};
use crate::state::Found;

/// How long a set must have stood until it is asked about, in milliseconds: while a weight is being moved, each set
/// stands for less.
const CALM_MS: u32 = 150;

/// How far the question is.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Sureness {
    /// It is not answered yet.
    #[default]
    Asked,
    /// The answer.
    Known(Rc<Certainty>),
    /// There is none, for this reason.
    Failed(String),
}

/// How sure the set that was found is. What belongs to an earlier set is never shown beside a later one.
#[hook]
pub fn use_certainty(found: Option<&Found>) -> Sureness {
    let known = use_state(|| None::<(Found, Sureness)>);
    {
        let known = known.setter();
        use_effect_with(found.cloned(), move |found| {
            let found = found.clone().filter(|found| found.fit.set.is_some());
            let clock = found.map(|found| {
                Timeout::new(CALM_MS, move || {
                    let model = Model::of(worker::of_certainty());
                    // What is still worked out belongs to an earlier set.
                    model.cancel();
                    spawn_local(async move {
                        let answers = (*found.answers).clone();
                        let request = Request::Certainty(Box::new(FitRequest { answers }));
                        let sureness = match model.ask(&request).await {
                            Ok(Reply::Certainty(sure)) => Sureness::Known(Rc::new(*sure)),
                            // Another question has taken its place, and is answered instead.
                            Err(AskError::Bridge(BridgeError::Cancelled)) => return,
                            Ok(_) => Sureness::Failed(String::new()),
                            Err(error) => Sureness::Failed(error.to_string()),
                        };
                        known.set(Some((found, sureness)));
                    });
                })
            });
            move || drop(clock)
        });
    }
    match (&*known, found) {
        (Some((of, sureness)), Some(found)) if of == found => sureness.clone(),
        _ => Sureness::Asked,
    }
}
