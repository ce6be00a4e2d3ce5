//! Asks what the strings of kept fittings are, where they were kept without them: invented ones, those of earlier builds,
//! and answers that were put by before a set was found.

use protocol::document::Fitting;
use protocol::reply::Reply;
use protocol::request::{FitRequest, Request};
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::hooks::{Model, Store};
use crate::platform::worker;
use crate::state::Action;
use crate::words::summary;

/// Asks for one after the other, of a worker of their own, which is ended with the last of them or with the room.
#[hook]
pub fn use_kept(store: &Store) {
    // Those that got no answer on this visit: they are asked again on another.
    let unanswered = use_state(Vec::<Fitting>::new);
    let known = |fitting: &&Fitting| fitting.strings.is_some() || unanswered.contains(fitting);
    let next = store.document.fittings.iter().find(|fitting| !known(fitting)).cloned();
    use_effect_with((), |()| || worker::of_kept().close());
    let (dispatcher, unanswered) = (store.dispatcher(), unanswered.clone());
    use_effect_with(next, move |next| {
        let Some(fitting) = next.clone() else {
            worker::of_kept().close();
            return;
        };
        spawn_local(async move {
            let answers = fitting.answers.clone();
            let request = Request::Fit(Box::new(FitRequest { answers }));
            let strings = match Model::of(worker::of_kept()).ask(&request).await {
                Ok(Reply::Fit(fit)) => summary::strings(&fit),
                // Refused: the words in which it was kept are all there is.
                Ok(_) => Vec::new(),
                Err(_) => {
                    let mut all = (*unanswered).clone();
                    all.push(fitting);
                    unanswered.set(all);
                    return;
                }
            };
            dispatcher.dispatch(Action::StringsKnown { fitting: Box::new(fitting), strings });
        });
    });
}
