//! Asks what the strings of kept fittings are, where they were kept without them: invented ones, those of earlier builds,
//! and answers that were put by before a set was found.

use protocol::reply::Reply;
use protocol::request::{FitRequest, Request};
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::hooks::{Store, use_model};
use crate::state::Action;
use crate::words::summary;

/// Asks for one after the other, so that a person who goes on meanwhile waits for one at most.
#[hook]
pub fn use_kept(store: &Store) {
    let model = use_model();
    let next = store.document.fittings.iter().find(|fitting| fitting.strings.is_none()).cloned();
    let dispatcher = store.dispatcher();
    use_effect_with(next, move |next| {
        let Some(fitting) = next.clone() else { return };
        spawn_local(async move {
            let answers = fitting.answers.clone();
            let request = Request::Fit(Box::new(FitRequest { answers }));
            let strings = match model.ask(&request).await {
                Ok(Reply::Fit(fit)) => summary::strings(&fit),
                // Refused: the words in which it was kept are all there is.
                Ok(_) => Vec::new(),
                // It is asked again on another visit.
                Err(_) => return,
            };
            dispatcher.dispatch(Action::Known { fitting: Box::new(fitting), strings });
        });
    });
}
