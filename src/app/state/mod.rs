//! What the page knows, and how each thing a person does changes it.
//!
//! [`reduce`] is a plain function: the same state and action give the same state, without a browser. What it cannot
//! know, the time above all, comes with the action.
//!
//! What a person typed is kept as typed in [`Document::typed`], valid or not; only what is valid is an answer. The next
//! performance is kept as its date alone ([`dates`]).

mod action;
mod dates;
mod document;
mod reduce;
#[cfg(test)]
mod tests;
mod typed;
mod validate;

use std::collections::BTreeSet;
use std::rc::Rc;

use protocol::document::Document;
use protocol::reply::Fit;
use protocol::request::Answers;

use crate::day::Day;
use crate::records::{Shared, Undo};
use crate::words::fitting;

pub use action::{Action, StringAction};
pub use document::{read_file, read_kept};
pub use reduce::reduce;
pub use validate::{FieldError, screen_of};

/// What the page knows.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct State {
    /// What a person answered and kept; this is what is saved. Its answers hold no count of days: see [`State::answers`].
    pub document: Document,
    /// Today.
    pub today: Day,
    /// The days until the next performance as they were typed today; on another day they are counted from the date.
    typed_days: Option<String>,
    /// Fields whose errors are shown: the person has left them, or wanted to go on.
    pub shown: BTreeSet<String>,
    /// What the model refused.
    pub refused: Vec<FieldError>,
    /// Something to tell.
    pub notice: Option<Notice>,
    /// The way back from the last great change.
    pub undo: Option<Box<Undo>>,
    /// What the store is known to hold, and what other tabs have in it.
    pub shared: Shared,
    /// How far a question to the model is.
    pub asking: Asking,
    /// The last good answer of the model.
    pub found: Option<Found>,
}

/// Something to tell.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Notice {
    /// What happened.
    pub text: String,
    /// It went wrong.
    pub grave: bool,
    /// The person has gone to another room since.
    pub carried: bool,
    /// What happened can be undone.
    pub undoes: bool,
}

impl Notice {
    /// Something that went well.
    #[must_use]
    pub const fn good(text: String) -> Self {
        Self { text, grave: false, carried: false, undoes: false }
    }

    /// Something that went wrong.
    #[must_use]
    pub const fn grave(text: String) -> Self {
        Self { text, grave: true, carried: false, undoes: false }
    }

    /// Something that can be undone.
    #[must_use]
    pub const fn undoable(text: String) -> Self {
        Self { text, grave: false, carried: false, undoes: true }
    }
}

/// How far a question to the model is.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Asking {
    /// Nothing is asked.
    #[default]
    Idle,
    /// It computes; the number tells this question from an earlier one.
    Busy(u32),
    /// The person stopped it.
    Stopped,
    /// There is no answer, for this reason.
    Failed {
        /// The reason in words.
        message: String,
        /// Only reloading the page can help.
        reload: bool,
    },
}

/// An answer of the model, and what was asked.
#[derive(Clone, Debug)]
pub struct Found {
    /// The answers it was found for.
    pub answers: Rc<Answers>,
    /// The answer.
    pub fit: Rc<Fit>,
}

impl PartialEq for Found {
    fn eq(&self, other: &Self) -> bool {
        // An answer is large and never changes: the same one is the same one.
        Rc::ptr_eq(&self.answers, &other.answers) && Rc::ptr_eq(&self.fit, &other.fit)
    }
}

impl State {
    /// The state with which the page starts, on this day.
    #[must_use]
    pub fn of(document: Document, today: Day) -> Self {
        let mut state = Self { today, ..Self::default() };
        state.take_in(document);
        state
    }

    /// Whether the last answer belongs to the answers as they are now.
    #[must_use]
    pub fn is_found(&self) -> bool {
        self.found.as_ref().is_some_and(|found| *found.answers == self.answers())
    }

    /// Whether a set is to be asked for: it is not known, nothing stands in its way, and it was not asked for already.
    #[must_use]
    pub fn wants_set(&self) -> bool {
        !self.is_found() && self.asking == Asking::Idle && self.errors().is_empty()
    }

    /// Whether anything was answered.
    #[must_use]
    pub fn is_begun(&self) -> bool {
        self.own_answers() != Document::default()
    }

    /// What to call this fitting: its label, or the instrument.
    #[must_use]
    pub fn name(&self) -> String {
        fitting::name_of(&self.document.label, &self.document.answers)
    }
}
