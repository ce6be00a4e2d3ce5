//! What can happen to the state.

use protocol::document::{Document, Fitting, KeptString};
use protocol::reply::Fault;

use super::{Found, Notice};
use crate::day::Day;
use crate::fields::{Flag, Number, Word};
use crate::records::{Kind, Pending, Record, StoreError};

/// Something that happened.
#[derive(Clone, Debug)]
pub enum Action {
    /// A word was chosen, or "I don't know".
    Choose(Word, Option<String>),
    /// A box was ticked or cleared.
    Tick(Flag, bool),
    /// A complaint was ticked or cleared.
    Bother(String, bool),
    /// A complaint is about this string, 0 the highest, or not; about all where it is about none by itself.
    BotherOnlyOn(usize, String, bool),
    /// A text was typed into a number's field.
    Type(Number, String),
    /// Another unit was chosen for a number.
    Unit(Number, String),
    /// A date was given for the next performance.
    Date(String),
    /// A note was typed for a string, 0 the highest.
    Note(usize, String),
    /// Something was said of a string, 0 the highest.
    OfString(usize, StringAction),
    /// A label was typed.
    Label(String),
    /// The person left a field.
    Left(String),
    /// The person wanted to go on, and these fields are in the way.
    Show(Vec<String>),
    /// A file was opened.
    Opened {
        /// Its name.
        name: String,
        /// What is in it.
        text: String,
    },
    /// Delete a record that cannot be read.
    Discard(Kind, String),
    /// Start with empty answers.
    StartOver,
    /// Open the kept set of this identity again.
    Reopen(u128),
    /// Remove the kept set of this identity.
    Remove(u128),
    /// Take over the answers that another tab has under this id.
    TakeOver(String),
    /// Keep the set.
    Keep {
        /// Now, in ISO 8601.
        at: String,
        /// The strings of the set.
        strings: Vec<KeptString>,
        /// The set in words.
        summary: Vec<String>,
    },
    /// The strings of a kept fitting are known.
    StringsKnown {
        /// The fitting as it was asked for.
        fitting: Box<Fitting>,
        /// Its strings; none where the model makes no set of its answers.
        strings: Vec<KeptString>,
    },
    /// Add the invented fittings.
    AddInvented {
        /// Now, in ISO 8601.
        at: String,
    },
    /// Remove the invented sets.
    RemoveInvented,
    /// Bring back what was replaced.
    Undo,
    /// Tell something.
    Tell(Notice),
    /// The person has read it.
    CloseNotice,
    /// The person has gone to another room.
    Moved,
    /// The store was read.
    Read {
        /// What stands in it.
        records: Vec<Record>,
        /// The record of this tab's answers before it was reloaded.
        session: Option<String>,
    },
    /// These sets and answers are not in the store yet, for it could not be written when the page started.
    Unsaved(Box<Document>),
    /// Changes are on the disk.
    Written(Pending),
    /// They are not.
    NotWritten(StoreError),
    /// A question goes to the model.
    Ask(u32),
    /// The model has answered that question.
    Answered(u32, Found),
    /// The model has refused it.
    Refused(u32, Vec<Fault>),
    /// There is no answer to it.
    Failed {
        /// Which question.
        ask: u32,
        /// The reason in words.
        message: String,
        /// Only reloading the page can help.
        reload: bool,
    },
    /// The person stops the computation.
    Stop,
    /// The day it is.
    Today(Day),
}

/// Something that can be said of one string.
#[derive(Clone, Debug)]
pub enum StringAction {
    /// It must be of this family.
    Family(Option<String>),
    /// What is there now is of this family.
    TodayFamily(Option<String>),
    /// It is light, medium or heavy.
    TodayGauge(Option<String>),
    /// The metal under the fingers.
    TodayMetal(Option<String>),
    /// It stays, or not.
    Keep(bool),
    /// A complaint was ticked or cleared.
    Bother(String, bool),
}
