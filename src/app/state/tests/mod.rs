//! The state without a browser: what is done to it, and what it then says.

mod documents;
mod typing;
mod version_1;

use std::rc::Rc;

use protocol::document::{self, Document};
use protocol::reply::Reply;
use protocol::request::{Answers, FitRequest, Request};

use super::*;
use crate::fields::Word;

const TODAY: Day = 20_000;

fn after(actions: impl IntoIterator<Item = Action>) -> State {
    actions
        .into_iter()
        .fold(State::of(Document::default(), TODAY), |state, action| reduce(&state, action))
}

fn text(text: &str) -> String {
    text.to_owned()
}

fn choose(word: Word, key: &str) -> Action {
    Action::Choose(word, Some(text(key)))
}

fn found() -> Found {
    let answers = Answers::default();
    let request = Request::Fit(Box::new(FitRequest { answers: answers.clone() }));
    let Reply::Fit(fit) = protocol::handle(&request) else { panic!("a set should come") };
    Found { answers: Rc::new(answers), fit: Rc::new(*fit) }
}

/// What is kept and opened again.
fn reopened(state: &State, today: Day) -> State {
    let (document, lost) = read_kept(&document::save(&state.document));
    assert_eq!(lost, None);
    State::of(document, today)
}
