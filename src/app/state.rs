//! What the page knows, and how each thing a person does changes it.
//!
//! [`reduce`] is a plain function: the same state and action give the same state, without a browser. What it cannot
//! know, the time above all, comes with the action.

use std::collections::BTreeSet;
use std::rc::Rc;

use protocol::document::{self, Document, Fitting, KeptString, Note};
use protocol::reply::{Fault, Fit};
use protocol::request::{Answers, StringAnswer};
use strings::pitch;

use crate::day::{self, Day};
use crate::fields::{self, Flag, Number, Word};
use crate::habits;
use crate::invented;
use crate::order;
use crate::records::{Kind, Pending, Record, Shared, StoreError, Undo, identity, newest_first};
use crate::words::fault;
use crate::words::naming::{capital, metal, within};
use crate::words::questions::{self, BOTHERS, EVERYTHING, PATH, Question};
use crate::words::say;

/// Under this name the date of the next performance is kept, from which its days follow on any later day.
const DATE: &str = "concert_date";

/// What the page knows.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct State {
    /// What a person answered and kept; this is what is saved.
    pub document: Document,
    /// Today.
    pub today: Day,
    /// Fields whose faults are shown: the person has left them, or wanted to go on.
    pub shown: BTreeSet<String>,
    /// What the model refused.
    pub refused: Vec<Slip>,
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

/// A fault in a field, in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Slip {
    /// The field.
    pub field: String,
    /// What was typed and what is allowed.
    pub message: String,
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
    /// Something that went wrong.
    #[must_use]
    pub const fn grave(text: String) -> Self {
        Self { text, grave: true, carried: false, undoes: false }
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
        /// Only loading the page anew can mend it.
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

/// Something that happened.
#[derive(Clone, Debug)]
pub enum Action {
    /// A word was chosen, or "I don't know".
    Choose(Word, Option<String>),
    /// A box was ticked or cleared.
    Tick(Flag, bool),
    /// A complaint was ticked or cleared.
    Bother(String, bool),
    /// A text was typed into a number's field.
    Type(Number, String),
    /// Another unit was chosen for a number.
    Unit(Number, String),
    /// A date was given for the next performance.
    Date(String),
    /// A note was typed for a string, 0 the highest.
    Note(usize, String),
    /// Something was said of a string, 0 the highest.
    OfString(usize, OfString),
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
    /// A record that cannot be read is let go.
    Discard(Kind, String),
    /// The answers are to be given anew.
    Afresh,
    /// The kept set of this identity is opened again.
    Reopen(u128),
    /// The kept set of this identity is let go.
    Remove(u128),
    /// The answers that another tab has under this id are taken over.
    Claim(String),
    /// The set is to be kept.
    Keep {
        /// Now, in ISO 8601.
        at: String,
        /// The strings of the set.
        strings: Vec<KeptString>,
        /// The set in words.
        summary: Vec<String>,
    },
    /// The strings of a kept fitting are known.
    Known {
        /// The fitting as it was asked for.
        fitting: Box<Fitting>,
        /// Its strings; none where the model makes no set of its answers.
        strings: Vec<KeptString>,
    },
    /// Invented fittings are to stand beside one's own.
    Invent {
        /// Now, in ISO 8601.
        at: String,
    },
    /// They are to go again.
    Uninvent,
    /// What was replaced is to come back.
    Undo,
    /// Something is to be told.
    Tell(Notice),
    /// It has been read.
    Heard,
    /// The person has gone to another room.
    Moved,
    /// The store was read.
    Read {
        /// What stands in it.
        records: Vec<Record>,
        /// The record of this tab's answers before it was loaded anew.
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
        /// Only loading the page anew can mend it.
        reload: bool,
    },
    /// The person stops the computation.
    Stop,
    /// The day it is.
    Today(Day),
}

/// Something that can be said of one string.
#[derive(Clone, Debug)]
pub enum OfString {
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

/// The state after an action.
#[must_use]
pub fn reduce(state: &State, action: Action) -> State {
    let mut next = state.clone();
    next.apply(action);
    next
}

impl State {
    /// The state with which the page starts, on this day.
    #[must_use]
    pub fn of(document: Document, today: Day) -> Self {
        let mut state = Self { document, ..Self::default() };
        state.apply(Action::Today(today));
        // Half a number that was typed on another day is told of at once.
        state.shown = state.slips().into_iter().map(|slip| slip.field).collect();
        state
    }

    fn apply(&mut self, action: Action) {
        match action {
            Action::Choose(word, key) => self.choose(word, key),
            Action::Tick(flag, yes) => flag.set(&mut self.document.answers, yes),
            Action::Bother(key, yes) => self.bother(&key, yes),
            Action::Type(number, text) => self.type_number(number, text),
            Action::Unit(number, label) => {
                let text = self.text(number);
                self.document.drafts.insert(unit_key(number), label);
                self.type_number(number, text);
            }
            Action::Date(text) => self.date(text),
            Action::Note(i, text) => self.note(i, text),
            Action::OfString(i, said) => {
                fields::of_string(&mut self.document.answers, i, |string| match said {
                    OfString::Family(key) => string.family = key,
                    OfString::TodayFamily(key) => string.today.family = key,
                    OfString::TodayGauge(key) => string.today.gauge_class = key,
                    OfString::TodayMetal(key) => string.today.outer_metal = key,
                    OfString::Keep(yes) => string.keep = yes,
                    OfString::Bother(key, yes) => tick(&mut string.bothers, &key, yes),
                });
                // What is said of one string belongs together: a string that stays must be known.
                let of_string = format!("strings.{i}.");
                self.refused.retain(|slip| !slip.field.starts_with(&of_string));
            }
            Action::Label(label) => self.document.label = label,
            Action::Left(field) => drop(self.shown.insert(field)),
            Action::Show(fields) => self.shown.extend(fields),
            Action::Opened { name, text } => self.open(&name, &text),
            Action::Afresh => {
                let fittings = self.document.fittings.clone();
                self.replace(Document { fittings, ..Document::default() });
                self.tell_undoable(say!("told-empty").to_owned());
            }
            Action::Reopen(identity) => self.reopen(identity),
            Action::Remove(identity) => {
                if let Some(i) = self.place_of(identity) {
                    let mut left = self.document.clone();
                    let gone = left.fittings.remove(i);
                    self.replace(left);
                    self.tell_undoable(say!("told-removed", name = fitting_name(&gone)));
                }
            }
            Action::Claim(id) => {
                if let Some(document) = self.claim(&id) {
                    let (fittings, put_by) = self.put_by(&document);
                    self.replace(Document { fittings, ..document });
                    self.tell_undoable(told_reopened(put_by));
                }
            }
            Action::Keep { at, strings, summary } => self.keep(at, strings, summary),
            Action::Known { fitting, strings } => {
                let fittings = &mut self.document.fittings;
                if let Some(known) = fittings.iter_mut().find(|kept| **kept == *fitting) {
                    known.strings = Some(strings);
                }
            }
            Action::Invent { at } => {
                self.document.fittings.retain(|fitting| fitting.invented.is_none());
                self.document.fittings.extend(invented::fittings(&at));
                self.document.fittings = newest_first(&self.document.fittings);
                self.tell(say!("told-invented").to_owned());
            }
            Action::Uninvent => {
                let mut left = self.document.clone();
                let invented = |fitting: &Fitting| fitting.invented.is_some();
                // An example that was opened and left as it is goes too; one that was changed is the person's own.
                if self.kept_as().is_some_and(invented) {
                    left = Document { fittings: left.fittings, ..Document::default() };
                }
                left.fittings.retain(|fitting| !invented(fitting));
                self.replace(left);
                self.tell_undoable(say!("told-uninvented").to_owned());
            }
            Action::Undo => {
                if let Some(undo) = self.undo.take() {
                    // What was typed since comes back by undoing once more.
                    let before = undo.applied_to(&self.document);
                    self.replace(before);
                    self.tell_undoable(say!("told-undone").to_owned());
                }
            }
            Action::Tell(notice) => self.notice = Some(notice),
            Action::Heard => self.notice = None,
            Action::Moved => match &mut self.notice {
                // Good news is told in the room to which it leads, and once is enough.
                Some(notice) if notice.carried && !notice.grave => self.apply(Action::Heard),
                Some(notice) => notice.carried = true,
                None => {}
            },
            Action::Discard(kind, id) => self.discard(kind, &id),
            Action::Read { records, session } => {
                let first = self.shared.own.is_empty() && session.is_none();
                if self.merge(records, session) {
                    self.tell(say!("told-taken").to_owned());
                }
                self.tell_kept();
                // Told at each visit, but not each time that it is loaded anew.
                if first && !self.shared.unreadable.is_empty() {
                    self.notice = Some(Notice::grave(say!("told-unreadable").to_owned()));
                }
            }
            Action::Unsaved(document) => {
                for fitting in &document.fittings {
                    if self.place_of(identity(fitting)).is_none() {
                        self.document.fittings.push(fitting.clone());
                    }
                }
                self.document.fittings = newest_first(&self.document.fittings);
                if !self.is_begun() {
                    self.show(*document);
                }
            }
            Action::Written(pending) => {
                self.written(&pending);
                self.tell_kept();
            }
            Action::NotWritten(error) => {
                // Told once, not at every letter; but whoever waits for a set to be kept is told each time.
                if !self.shared.told || self.shared.awaited.is_some() {
                    self.shared.told = true;
                    self.notice =
                        Some(Notice::grave(format!("{}.", capital(&fault::store(&error)))));
                }
            }
            Action::Ask(ask) => {
                self.asking = Asking::Busy(ask);
                self.refused.clear();
            }
            // An answer to an earlier question comes too late.
            Action::Answered(ask, found) if self.asking == Asking::Busy(ask) => {
                self.asking = Asking::Idle;
                self.found = Some(found);
            }
            Action::Refused(ask, faults) if self.asking == Asking::Busy(ask) => {
                self.asking = Asking::Idle;
                self.refused = faults.iter().map(slip).collect();
                self.shown.extend(self.refused.iter().map(|slip| slip.field.clone()));
            }
            Action::Failed { ask, message, reload } if self.asking == Asking::Busy(ask) => {
                self.asking = Asking::Failed { message, reload };
            }
            Action::Answered(..) | Action::Refused(..) | Action::Failed { .. } => {}
            Action::Stop => self.asking = Asking::Stopped,
            Action::Today(today) => {
                self.today = today;
                self.count_days();
            }
        }
    }

    fn choose(&mut self, word: Word, key: Option<String>) {
        let answers = &mut self.document.answers;
        if word.of(answers) != key.as_deref() {
            match word {
                // Sizes, tunings and strings belong to an instrument.
                Word::Instrument => {
                    answers.size = None;
                    answers.tuning = None;
                    self.drop_strings();
                }
                Word::Tuning => self.drop_strings(),
                _ => {}
            }
        }
        word.set(&mut self.document.answers, key);
        self.mended(word.key());
        // What was out of range for one instrument may be within it for another.
        if word == Word::Instrument {
            self.type_number(Number::Length, self.text(Number::Length));
            for field in ["size", "tuning"] {
                self.mended(field);
            }
        }
    }

    fn drop_strings(&mut self) {
        self.document.answers.strings.clear();
        self.document.drafts.retain(|field, _| !field.starts_with("strings."));
        self.refused.retain(|slip| !slip.field.starts_with("strings"));
    }

    fn bother(&mut self, key: &str, yes: bool) {
        tick(&mut self.document.answers.bothers, key, yes);
        self.mended("bothers");
    }

    fn type_number(&mut self, number: Number, text: String) {
        let key = number.key();
        let value = self.read(number, &text).unwrap_or_default();
        if let Some(own) = own_unit(number).filter(|own| self.unit(number).label == *own) {
            // A unit by habit stays with the number, for habits change and what was typed does not.
            if text.trim().is_empty() {
                self.document.drafts.remove(&unit_key(number));
            } else {
                self.document.drafts.insert(unit_key(number), own.to_owned());
            }
        }
        number.set(&mut self.document.answers, value);
        if number == Number::Days {
            // A count of days is wrong tomorrow; the date that it means is not.
            match value {
                Some(days) => {
                    let date = day::written(self.today + whole(days));
                    drop(self.document.drafts.insert(DATE.to_owned(), date));
                }
                None => drop(self.document.drafts.remove(DATE)),
            }
        }
        if text.trim().is_empty() {
            self.document.drafts.remove(&key);
        } else {
            self.document.drafts.insert(key.clone(), text);
        }
        self.mended(&key);
    }

    fn date(&mut self, text: String) {
        self.document.drafts.remove(&Number::Days.key());
        self.document.answers.concert_days = None;
        if text.trim().is_empty() {
            self.document.drafts.remove(DATE);
        } else {
            self.document.drafts.insert(DATE.to_owned(), text);
        }
        if let Ok(days) = self.read_date() {
            self.document.answers.concert_days = days;
        }
        self.mended(&Number::Days.key());
    }

    /// Days until the date that was given.
    fn read_date(&self) -> Result<Option<f64>, String> {
        let Some(text) = self.document.drafts.get(DATE) else { return Ok(None) };
        let name = Question::Concert.text().name;
        let Some(date) = day::read(text) else {
            let such = day::written(self.today);
            return Err(say!("fault-date", name = name, typed = text, date = such));
        };
        let days = date - self.today;
        let bound = Number::Days.bound(&self.document.answers);
        if days < 0 {
            return Err(say!("fault-past", name = name, date = day::spoken(date)));
        }
        if days > whole(bound.max) {
            let last = day::spoken(self.today + whole(bound.max));
            return Err(say!("fault-far", name = name, date = day::spoken(date), last = last));
        }
        // Days within the bound are small numbers.
        Ok(Some(days as f64))
    }

    /// Counts the days until the date of the performance anew. One that is over is no answer any more.
    fn count_days(&mut self) {
        let Some(date) = self.document.drafts.get(DATE).and_then(|text| day::read(text)) else {
            return;
        };
        self.document.drafts.remove(&Number::Days.key());
        if date < self.today {
            self.document.drafts.remove(DATE);
            self.document.answers.concert_days = None;
        } else if let Ok(days) = self.read_date() {
            self.document.answers.concert_days = days;
        }
    }

    fn note(&mut self, i: usize, text: String) {
        let key = format!("strings.{i}.note");
        let note = read_note(&text).unwrap_or_default();
        fields::of_string(&mut self.document.answers, i, |string| string.note = note);
        if text.trim().is_empty() {
            self.document.drafts.remove(&key);
        } else {
            self.document.drafts.insert(key.clone(), text);
        }
        self.mended(&key);
    }

    /// A field has changed: what the model said of it holds no more.
    fn mended(&mut self, field: &str) {
        self.refused.retain(|slip| slip.field != field);
    }

    fn open(&mut self, name: &str, text: &str) {
        match read_file(text) {
            Ok((opened, notes)) => {
                let (mut fittings, put_by) = self.put_by(&opened);
                let had = fittings.len();
                for fitting in &opened.fittings {
                    let same = |other: &Fitting| match &fitting.invented {
                        Some(_) => other.invented == fitting.invented,
                        None => identity(other) == identity(fitting),
                    };
                    if !fittings.iter().any(same) {
                        fittings.push(fitting.clone());
                    }
                }
                let added = fittings.len() - had;
                self.replace(Document { fittings: newest_first(&fittings), ..opened });
                let mut told = if notes.is_empty() {
                    say!("told-open", name = name)
                } else {
                    say!("told-half-open", name = name, notes = notes.join("; "))
                };
                if added > 0 {
                    told = format!("{told} {}", say!("told-added", count = added));
                }
                if put_by {
                    told = format!("{told} {}", say!("told-had"));
                }
                self.tell_undoable(told);
                if let Some(notice) = self.notice.as_mut().filter(|_| !notes.is_empty()) {
                    notice.grave = true;
                }
            }
            Err(reason) => {
                let text = say!("told-not-open", name = name, reason = reason);
                self.notice = Some(Notice::grave(text));
            }
        }
    }

    /// Puts another document in place, from which one can come back.
    fn replace(&mut self, document: Document) {
        let before = std::mem::replace(&mut self.document, document);
        self.undo = Some(Box::new(Undo::between(&before, &self.document)));
        self.changed();
    }

    /// Shows other answers in place of those in hand, as another tab or an earlier visit left them.
    pub(crate) fn show(&mut self, document: Document) {
        let fittings = std::mem::take(&mut self.document.fittings);
        self.document = Document { fittings, ..document };
        self.changed();
    }

    /// The answers are others than before.
    fn changed(&mut self) {
        self.refused.clear();
        self.count_days();
        self.shown = self.slips().into_iter().map(|slip| slip.field).collect();
    }

    fn keep(&mut self, at: String, strings: Vec<KeptString>, summary: Vec<String>) {
        let Some(found) = &self.found else { return };
        let fittings = &mut self.document.fittings;
        let label = self.document.label.clone();
        let of = |fitting: &Fitting| fitting.is_of(&label, &found.answers);
        // What was invented stays invented, however often it is kept.
        let invented = fittings.iter().find(|fitting| of(fitting)).and_then(|f| f.invented.clone());
        // The same set for the same person is kept once, under its latest date.
        fittings.retain(|fitting| !of(fitting));
        let fitting = Fitting {
            at,
            label,
            answers: (*found.answers).clone(),
            summary,
            strings: Some(strings),
            invented,
            ..Fitting::default()
        };
        self.shared.awaited = Some(identity(&fitting));
        fittings.insert(0, fitting);
        *fittings = newest_first(fittings);
        // That it is kept is told once it is.
        self.notice = None;
    }

    /// Tells that a set is kept, once it is on the disk.
    fn tell_kept(&mut self) {
        if self.shared.has_awaited() {
            self.tell(say!("told-kept").to_owned());
        }
    }

    /// Opens a kept set. What was being answered is kept beside it, or it would be lost once one has gone on.
    fn reopen(&mut self, identity: u128) {
        let Some(fitting) = self.place_of(identity).map(|i| self.document.fittings[i].clone())
        else {
            return;
        };
        let Fitting { answers, drafts, label, invented, .. } = fitting;
        let mut next = Document { label, answers, drafts, ..Document::default() };
        let (mut fittings, put_by) = self.put_by(&next);
        if let Some(name) = invented.as_deref().and_then(invented::name) {
            // By this name it is found again when the examples go.
            for same in fittings.iter_mut().filter(|other| other.invented == invented) {
                name.clone_into(&mut same.label);
            }
            name.clone_into(&mut next.label);
        }
        self.replace(Document { fittings: newest_first(&fittings), ..next });
        self.tell_undoable(told_reopened(put_by));
    }

    /// The kept sets, with the answers in hand among them if these would be lost to the next, and whether they would.
    fn put_by(&self, next: &Document) -> (Vec<Fitting>, bool) {
        let mut fittings = self.document.fittings.clone();
        let Document { label, answers, drafts, .. } = self.own_answers();
        let is_next = (&label, &answers, &drafts) == (&next.label, &next.answers, &next.drafts);
        let is_kept = self.kept_as().is_some() && self.slips().is_empty();
        let put_by = self.is_begun() && !is_next && !is_kept;
        if put_by {
            let at = day::written(self.today);
            fittings.insert(0, Fitting { at, label, answers, drafts, ..Fitting::default() });
        }
        (newest_first(&fittings), put_by)
    }

    /// The place of the kept set of this identity.
    fn place_of(&self, wanted: u128) -> Option<usize> {
        self.document.fittings.iter().position(|fitting| identity(fitting) == wanted)
    }

    /// The kept fitting that the answers are, as they stand.
    fn kept_as(&self) -> Option<&Fitting> {
        let document = &self.document;
        document.fittings.iter().find(|kept| kept.is_of(&document.label, &document.answers))
    }

    fn tell(&mut self, text: String) {
        self.notice = Some(Notice { text, grave: false, carried: false, undoes: false });
    }

    /// Tells of something that can be undone.
    fn tell_undoable(&mut self, text: String) {
        self.notice = Some(Notice { text, grave: false, carried: false, undoes: true });
    }

    /// The unit in which a number is typed.
    #[must_use]
    pub fn unit(&self, number: Number) -> fields::Unit {
        let chosen = self.document.drafts.get(&unit_key(number)).map(String::as_str);
        // What was typed before a habit changed was typed in the usual unit.
        let typed = self.document.drafts.contains_key(&number.key());
        number.unit(chosen.or_else(|| own_unit(number).filter(|_| !typed)))
    }

    /// What stands in a number's field.
    #[must_use]
    pub fn text(&self, number: Number) -> String {
        let typed = self.document.drafts.get(&number.key()).cloned();
        typed
            .or_else(|| Some(self.unit(number).typed(number.of(&self.document.answers)?)))
            .unwrap_or_default()
    }

    /// The date of the next performance as a date field takes it; empty if there is none.
    #[must_use]
    pub fn date_text(&self) -> String {
        self.document.drafts.get(DATE).cloned().unwrap_or_default()
    }

    /// What stands in the field of a string's note.
    #[must_use]
    pub fn note_text(&self, i: usize) -> String {
        let typed = self.document.drafts.get(&format!("strings.{i}.note")).cloned();
        typed.or_else(|| self.document.answers.strings.get(i)?.note.clone()).unwrap_or_default()
    }

    fn read(&self, number: Number, text: &str) -> Result<Option<f64>, String> {
        let bound = number.bound(&self.document.answers);
        number.read(text, self.unit(number), bound, &questions::number_name(number))
    }

    /// Every fault, in the order of the questions.
    #[must_use]
    pub fn slips(&self) -> Vec<Slip> {
        let mut slips = Vec::new();
        for screen in EVERYTHING {
            for question in screen.questions {
                self.slips_of(*question, &mut slips);
            }
        }
        // What belongs to no question is told all the same.
        for refused in &self.refused {
            if !slips.iter().any(|slip| slip.field == refused.field) {
                slips.push(refused.clone());
            }
        }
        slips
    }

    fn slips_of(&self, question: Question, slips: &mut Vec<Slip>) {
        let answers = &self.document.answers;
        let mut number = |number: Number| {
            let typed = self.document.drafts.contains_key(&number.key());
            // A file may hold a number that nobody could have typed here.
            let bound = number.bound(answers);
            let far = |value: f64| value < bound.min || value > bound.max;
            if (typed || number.of(answers).is_some_and(far))
                && let Err(message) = self.read(number, &self.text(number))
            {
                slips.push(Slip { field: number.key(), message });
            }
        };
        match question {
            Question::Word(word) => {
                if let Some(key) = word.of(answers) {
                    let choices = questions::choices(word, answers);
                    if !choices.iter().any(|choice| choice.key == key) {
                        let labels: Vec<_> = choices.into_iter().map(|c| c.label).collect();
                        slips.push(Slip {
                            field: word.key().to_owned(),
                            message: say!(
                                "fault-choice",
                                name = question.text().name,
                                typed = key,
                                choices = labels.join(", "),
                            ),
                        });
                    }
                }
            }
            Question::Number(one) => number(one),
            Question::Concert => {
                number(Number::Days);
                if !self.document.drafts.contains_key(&Number::Days.key())
                    && let Err(message) = self.read_date()
                {
                    slips.push(Slip { field: Number::Days.key(), message });
                }
            }
            Question::Wishes => fields::Wish::ALL.map(Number::Wish).into_iter().for_each(number),
            Question::Weights => {
                (0..strings::fit::desirability::COUNT).map(Number::Weight).for_each(number);
            }
            Question::AlsoTuned => {
                [Number::AlsoA4, Number::AlsoSemitones].into_iter().for_each(number);
            }
            Question::Strings => {
                (0..fields::string_count(answers)).map(Number::AgeOf).for_each(number);
                for (i, tuned) in fields::tuned(answers).iter().enumerate() {
                    if let Err(typed) = read_note(&self.note_text(i)) {
                        slips.push(Slip {
                            field: format!("strings.{i}.note"),
                            message: say!("fault-note", note = *tuned, typed = typed),
                        });
                    }
                }
            }
            Question::Bothers | Question::Flags(_) => {}
        }
    }

    /// Faults that stand in the way of going on from these questions.
    #[must_use]
    pub fn slips_in(&self, questions: &[Question]) -> Vec<Slip> {
        let mut slips = self.slips();
        slips.retain(|slip| questions.iter().any(|question| question.has(&slip.field)));
        slips
    }

    /// The fault of a field, if it is to be shown.
    #[must_use]
    pub fn shown(&self, field: &str) -> Option<String> {
        if !self.shown.contains(field) {
            return None;
        }
        self.slips().into_iter().find(|slip| slip.field == field).map(|slip| slip.message)
    }

    /// Whether the last answer belongs to the answers as they are now.
    #[must_use]
    pub fn is_found(&self) -> bool {
        self.found.as_ref().is_some_and(|found| *found.answers == self.document.answers)
    }

    /// Whether a set is to be asked for: it is not known, nothing stands in its way, and it was not asked for already.
    #[must_use]
    pub fn wants_set(&self) -> bool {
        !self.is_found() && self.asking == Asking::Idle && self.slips().is_empty()
    }

    /// Whether anything was answered.
    #[must_use]
    pub fn is_begun(&self) -> bool {
        self.own_answers() != Document::default()
    }

    /// What to call this fitting: its label, or the instrument.
    #[must_use]
    pub fn name(&self) -> String {
        name_of(&self.document.label, &self.document.answers)
    }
}

/// What to call a kept fitting.
#[must_use]
pub fn fitting_name(fitting: &Fitting) -> String {
    let example = fitting.invented.as_deref().and_then(invented::name);
    example.map_or_else(|| name_of(&fitting.label, &fitting.answers), str::to_owned)
}

/// What is told when other answers are in hand.
fn told_reopened(put_by: bool) -> String {
    if put_by { say!("told-put-by").to_owned() } else { say!("told-reopened").to_owned() }
}

/// What to call answers: their label, or the instrument.
#[must_use]
pub fn name_of(label: &str, answers: &Answers) -> String {
    if !label.trim().is_empty() {
        return label.trim().to_owned();
    }
    let kind = fields::kind(answers);
    let size = answers.size.as_deref().or(kind.sizes.first().map(|size| size.key));
    format!(
        "{} {}",
        capital(questions::instrument_name(kind.key)),
        questions::size_name(size.unwrap_or_default())
    )
}

/// Ticks or clears a complaint, and keeps the order of the list, so that the order of ticking is not an answer.
fn tick(bothers: &mut Vec<String>, key: &str, yes: bool) {
    bothers.retain(|other| other != key);
    if yes {
        bothers.push(key.to_owned());
        let place = |key: &String| BOTHERS.iter().position(|known| known == key);
        *bothers = order::sorted(bothers, |a, b| place(a).cmp(&place(b)));
    }
}

/// What bothers, in words.
fn complaints(bothers: &[String]) -> String {
    bothers.iter().map(|key| questions::bother_label(key)).collect::<Vec<_>>().join(", ")
}

/// Everything that is said of one string, in words.
fn said_of(string: &StringAnswer) -> Vec<String> {
    let today = &string.today;
    let mut words = Vec::new();
    words.extend(string.note.as_deref().map(|note| say!("said-tuned", note = note)));
    words.extend(string.family.as_deref().map(|key| questions::family_listed(key).to_owned()));
    let mut now = Vec::new();
    now.extend(today.gauge_class.as_deref().map(|key| questions::gauge_listed(key).to_owned()));
    now.extend(today.family.as_deref().map(|key| questions::family_listed(key).to_owned()));
    now.extend(today.outer_metal.as_deref().map(|key| say!("said-under", metal = metal(key))));
    let age = Number::AgeOf(0).unit(None);
    now.extend(today.age_months.map(|months| say!("said-age", months = age.typed(months))));
    if !now.is_empty() {
        words.push(say!("said-now", what = now.join(" ")));
    }
    if string.keep {
        words.push(say!("said-stays").to_owned());
    }
    if !string.bothers.is_empty() {
        words.push(
            string
                .bothers
                .iter()
                .map(|key| within(questions::bother_label(key)))
                .collect::<Vec<_>>()
                .join(", "),
        );
    }
    words
}

/// The screen of the path, from 1, that asks for a field; none if only the page with everything does.
#[must_use]
pub fn screen_of(field: &str) -> Option<usize> {
    PATH.iter()
        .position(|screen| screen.questions.iter().any(|question| question.has(field)))
        .map(|i| i + 1)
}

/// A fault of the model by the name of the field on the page.
fn slip(fault: &Fault) -> Slip {
    let field = fields::on_page(&fault.field);
    let message = fault::refused(questions::name_of_field(&field).unwrap_or(&field), fault);
    Slip { field, message }
}

/// The name under which the unit of a number's field is kept.
fn unit_key(number: Number) -> String {
    format!("{}.unit", number.key())
}

/// The unit in which a person types a number by habit; none where it is the usual one.
fn own_unit(number: Number) -> Option<&'static str> {
    let inches = habits::now().length == habits::Length::Inch;
    (number == Number::Length && inches).then_some(habits::Length::Inch.key())
}

/// Reads a note as people write it: `bb3` and `B♭3` are `Bb3`. None for an empty text.
fn read_note(text: &str) -> Result<Option<String>, String> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(None);
    }
    let plain = text.replace('♭', "b").replace('♯', "#");
    let mut letters = plain.chars();
    let first = letters.next().map(|letter| letter.to_ascii_uppercase());
    let note: String = first.into_iter().chain(letters).collect();
    if pitch::Note::parse(&note).is_some() { Ok(Some(note)) } else { Err(text.to_owned()) }
}

/// The whole part of a count of days, which is far from any limit.
#[expect(clippy::cast_possible_truncation, reason = "bounded to ten years")]
fn whole(days: f64) -> i64 {
    days.clamp(0.0, 4000.0).floor() as i64
}

/// Reads a saved file, and says what it had to mend.
///
/// # Errors
/// When nothing of it can be read, with the reason.
pub fn read_file(text: &str) -> Result<(Document, Vec<String>), String> {
    let (document, notes) = document::restore(text);
    let told: Vec<String> = notes.iter().map(fault::note).collect();
    let unread = |note: &Note| matches!(note, Note::NotJson(_) | Note::NotOurs | Note::Later(_));
    if notes.iter().any(unread) { Err(told.join("; ")) } else { Ok((document, told)) }
}

/// Reads what this browser kept: the document, and what could not be read of it, if some of it would be lost.
#[must_use]
pub fn read_kept(text: &str) -> (Document, Option<String>) {
    let (document, notes) = document::restore(text);
    let whole = document::read(text).is_ok_and(|strict| strict == document);
    let told = || notes.iter().map(fault::note).collect::<Vec<_>>().join("; ");
    (document, (!whole).then(told))
}

/// The answers in words, for the list of answers: none where a question is not answered.
#[must_use]
pub fn said(state: &State, question: Question) -> Option<String> {
    let answers = &state.document.answers;
    match question {
        Question::Word(word) => {
            let key = word.of(answers)?;
            let choices = questions::choices(word, answers);
            let label = choices.into_iter().find(|choice| choice.key == key).map(|c| c.label);
            Some(label.unwrap_or_else(|| key.to_owned()))
        }
        Question::Number(number) => {
            number.of(answers)?;
            Some(
                format!("{} {}", state.text(number), state.unit(number).shown())
                    .trim_end()
                    .to_owned(),
            )
        }
        Question::Concert => {
            let days = answers.concert_days?;
            let number = Number::Days.unit(None).typed(days);
            let count = whole(days) as f64;
            Some(match day::read(&state.date_text()).map(day::spoken) {
                Some(date) => say!("said-concert-date", days = count, number = number, date = date),
                None => say!("said-concert", days = count, number = number),
            })
        }
        Question::Bothers => (!answers.bothers.is_empty()).then(|| complaints(&answers.bothers)),
        Question::Wishes => {
            let words: Vec<_> = fields::Wish::ALL
                .into_iter()
                .filter_map(|wish| {
                    let value = Number::Wish(wish).of(answers)?;
                    Some(format!(
                        "{} ({})",
                        questions::wish_word(wish, value),
                        Number::Wish(wish).unit(None).typed(value).replace('-', "−")
                    ))
                })
                .collect();
            (!words.is_empty()).then(|| capital(&words.join(", ")))
        }
        Question::Flags(flags) => {
            let ticked: Vec<_> = flags
                .iter()
                .filter(|flag| flag.of(answers))
                .map(|flag| questions::flag_name(*flag))
                .collect();
            (!ticked.is_empty()).then(|| ticked.join(", "))
        }
        Question::AlsoTuned => {
            let each = [Number::AlsoA4, Number::AlsoSemitones].into_iter().filter_map(|number| {
                number.of(answers)?;
                Some(format!("{} {}", state.text(number), state.unit(number).shown()))
            });
            let each: Vec<_> = each.collect();
            (!each.is_empty()).then(|| each.join(", "))
        }
        Question::Strings => {
            let tuned = fields::tuned(answers);
            let each = answers.strings.iter().enumerate().filter_map(|(i, string)| {
                let words = said_of(string);
                let name = tuned.get(i).copied().unwrap_or("?");
                (!words.is_empty()).then(|| format!("{name}: {}", words.join(", ")))
            });
            let each: Vec<_> = each.collect();
            (!each.is_empty()).then(|| each.join("; "))
        }
        Question::Weights => {
            let each: Vec<_> = (0..strings::fit::desirability::COUNT)
                .filter_map(|i| {
                    let value = answers.weights.get(fields::weight_key(i))?;
                    Some(format!(
                        "{} {}",
                        questions::weight_name(i),
                        Number::Weight(i).unit(None).typed(*value)
                    ))
                })
                .collect();
            (!each.is_empty()).then(|| capital(&each.join(", ")))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fields::Wish;
    use protocol::reply::Reply;
    use protocol::request::{FitRequest, Request};

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

    #[test]
    fn half_a_number_stays_as_typed_and_is_told_of() {
        let state = after([Action::Type(Number::Length, text("32o,5"))]);
        assert_eq!(state.document.answers.sounding_length_m, None);
        assert_eq!(state.text(Number::Length), "32o,5");
        // While it is being typed, nothing is said.
        assert_eq!(state.shown("sounding_length_m"), None);
        assert_eq!(state.slips().len(), 1);
        let left = reduce(&state, Action::Left(text("sounding_length_m")));
        let told = left.shown("sounding_length_m").unwrap();
        assert!(told.starts_with("Sounding length: “32o,5” is not a number"), "{told}");
        let again = reopened(&state, TODAY);
        assert_eq!(again.text(Number::Length), "32o,5");
        assert_eq!(again.shown("sounding_length_m"), Some(told));
        let mended = reduce(&again, Action::Type(Number::Length, text("320,5")));
        assert_eq!(mended.document.answers.sounding_length_m, Some(0.3205));
        assert!(mended.slips().is_empty());
    }

    #[test]
    fn a_stale_number_never_stays_behind_a_text_that_cannot_be_read() {
        let state =
            after([Action::Type(Number::A4, text("415")), Action::Type(Number::A4, text("41x"))]);
        assert_eq!(state.document.answers.a4_hz, None);
        assert_eq!(
            after([Action::Type(Number::A4, text("415")), Action::Type(Number::A4, text(" "))])
                .document,
            Document::default()
        );
    }

    #[test]
    fn a_unit_by_habit_stays_with_what_was_typed() {
        let in_mm = after([Action::Type(Number::Length, text("328"))]);
        habits::take(habits::Habits::read("in"));
        let still_mm = in_mm.unit(Number::Length).label;
        let typed = after([Action::Type(Number::Length, text("12 7/8"))]);
        let emptied = reduce(&typed, Action::Type(Number::Length, text("")));
        habits::take(habits::Habits::default());
        assert_eq!(still_mm, "mm");
        assert_eq!(typed.document.answers.sounding_length_m, Some(12.875 * 0.0254));
        assert_eq!(typed.unit(Number::Length).label, "in");
        assert_eq!(emptied.document, Document::default());
    }

    #[test]
    fn a_unit_is_kept_with_its_number() {
        let state = after([
            Action::Unit(Number::Length, text("in")),
            Action::Type(Number::Length, text("12 7/8")),
        ]);
        assert_eq!(state.document.answers.sounding_length_m, Some(12.875 * 0.0254));
        let again = reopened(&state, TODAY);
        assert_eq!(
            (again.text(Number::Length), again.unit(Number::Length).label),
            (text("12 7/8"), "in")
        );
        assert_eq!(said(&again, Question::Number(Number::Length)), Some(text("12 7/8 in")));
    }

    #[test]
    fn another_instrument_has_other_sizes_and_strings() {
        let state = after([
            choose(Word::Instrument, "violin"),
            choose(Word::Size, "1/2"),
            choose(Word::Tuning, "five-string"),
            Action::Note(4, text("B2")),
            Action::OfString(0, OfString::Family(Some(text("plain-gut")))),
            Action::Type(Number::Length, text("320")),
            choose(Word::Instrument, "cello"),
        ]);
        let answers = &state.document.answers;
        assert_eq!((&answers.size, &answers.tuning, answers.strings.len()), (&None, &None, 0));
        // The length stays as typed; that it is no cello's is told.
        assert_eq!((state.text(Number::Length), answers.sounding_length_m), (text("320"), None));
        assert_eq!(state.slips().len(), 1);
        let back = reduce(&state, choose(Word::Instrument, "violin"));
        assert_eq!(back.document.answers.sounding_length_m, Some(0.32));
        // The same instrument once more changes nothing.
        let once = after([choose(Word::Instrument, "viola"), choose(Word::Size, "15 in")]);
        assert_eq!(reduce(&once, choose(Word::Instrument, "viola")), once);
    }

    #[test]
    fn notes_are_read_as_people_write_them() {
        let state = after([
            Action::Note(1, text(" b♭3")),
            Action::Note(3, text("H3")),
            Action::OfString(2, OfString::Family(Some(text("synthetic")))),
        ]);
        let notes: Vec<_> =
            state.document.answers.strings.iter().map(|s| s.note.as_deref()).collect();
        // What cannot be read is no answer, and no answer takes no place.
        assert_eq!(notes, [None, Some("Bb3"), None]);
        let slips = state.slips();
        assert_eq!(slips.len(), 1);
        assert!(
            slips[0].message.starts_with("Note of the G3 string: “H3” is not a note"),
            "{slips:?}"
        );
        let empty = [
            Action::Note(1, String::new()),
            Action::Note(3, String::new()),
            Action::OfString(2, OfString::Family(None)),
        ];
        let state = empty.into_iter().fold(state, |state, action| reduce(&state, action));
        assert_eq!(state.document, Document::default());
    }

    #[test]
    fn complaints_stand_in_the_order_of_the_list() {
        let state = after(
            ["wolf", "too-bright", "wolf", "uneven"].map(|key| Action::Bother(text(key), true)),
        );
        assert_eq!(state.document.answers.bothers, ["too-bright", "wolf", "uneven"]);
        let state = reduce(&state, Action::Bother(text("wolf"), false));
        assert_eq!(said(&state, Question::Bothers), Some(text("Too bright, Uneven strings")));
    }

    #[test]
    fn days_are_counted_from_the_day_it_is() {
        let typed = after([Action::Type(Number::Days, text("10"))]);
        assert_eq!(typed.date_text(), day::written(TODAY + 10));
        let dated = after([Action::Date(day::written(TODAY + 10))]);
        for state in [typed, dated] {
            assert_eq!(state.document.answers.concert_days, Some(10.0));
            assert_eq!(state.text(Number::Days), "10");
            let later = reopened(&state, TODAY + 4);
            assert_eq!(later.document.answers.concert_days, Some(6.0));
            assert_eq!(later.text(Number::Days), "6");
            assert!(reopened(&state, TODAY + 10).document.answers.concert_days.is_some());
            // Once it is over, it is no question any more.
            let over = reopened(&state, TODAY + 11);
            assert_eq!(
                (over.document.answers.concert_days, over.date_text()),
                (None, String::new())
            );
        }
    }

    #[test]
    fn a_day_that_will_not_do_is_told_of() {
        let fault = |date: &str| {
            let state = after([Action::Date(text(date))]);
            assert_eq!(state.document.answers.concert_days, None);
            state.slips().first().map(|slip| slip.message.clone()).unwrap_or_default()
        };
        assert!(fault(&day::written(TODAY - 1)).contains("is past"));
        assert!(fault(&day::written(TODAY + 4000)).contains("is too far off"));
        assert!(fault("2030-02-30").contains("“2030-02-30” is not a date"));
        assert_eq!(fault(""), "");
        // A number of days in its place mends it.
        let state = after([Action::Date(text("nonsense")), Action::Type(Number::Days, text("3"))]);
        assert!(state.slips().is_empty());
    }

    #[test]
    fn a_file_comes_back_word_for_word() {
        let state = after([
            choose(Word::Instrument, "viola"),
            choose(Word::Size, "15 in"),
            Action::Type(Number::Wish(Wish::Feel), text("-1,5")),
            Action::Type(Number::Age, text("eight")),
            Action::Tick(Flag::AnimalFree, true),
            Action::Label(text("Desk 3 viola, 15 in")),
            Action::Date(day::written(TODAY + 30)),
        ]);
        let opened = after([Action::Opened {
            name: text("viola.json"),
            text: document::save(&state.document),
        }]);
        assert_eq!(opened.document, state.document);
        assert_eq!(
            opened.notice.as_ref().map(|n| (n.text.as_str(), n.grave)),
            Some(("viola.json is open.", false))
        );
        assert!(opened.shown("age_months").is_some());
        assert_eq!(reduce(&opened, Action::Undo).document, Document::default());
    }

    #[test]
    fn good_news_goes_along_once_and_bad_news_stays() {
        let good = after([Action::Afresh, Action::Moved]);
        assert!(good.notice.is_some());
        let gone = reduce(&good, Action::Moved);
        // The way back stays, for the first page offers it.
        assert!(gone.notice.is_none() && gone.undo.is_some());
        let bad =
            after([Action::Tell(Notice::grave(text("No room"))), Action::Moved, Action::Moved]);
        assert!(bad.notice.is_some());
    }

    #[test]
    fn a_file_that_is_not_ours_changes_nothing() {
        let before = after([choose(Word::Room, "damp")]);
        for wrong in [
            "",
            "null",
            "[]",
            "{}",
            "{\"format\": \"other\"}",
            "half a fi",
            "{\"format\": \"ropewalk-fitting\", \"version\": 99}",
        ] {
            let after = reduce(&before, Action::Opened { name: text("x"), text: text(wrong) });
            assert_eq!(after.document, before.document);
            let notice = after.notice.unwrap();
            assert!(notice.grave && notice.text.contains("Nothing has changed"), "{}", notice.text);
        }
    }

    #[test]
    fn a_file_that_can_be_read_in_part_says_so() {
        let part = "{\"format\": \"ropewalk-fitting\", \"version\": 1, \"answers\": {\"room\": \"damp\", \"budget\": 7, \"instrument\": \"lute\"}}";
        let state = after([Action::Opened { name: text("x"), text: text(part) }]);
        assert_eq!(state.document.answers.room.as_deref(), Some("damp"));
        let notice = state.notice.as_ref().unwrap();
        assert!(notice.grave && notice.text.to_lowercase().contains("budget"), "{notice:?}");
        // A word that is not one of the answers stays, and its question tells of it.
        assert_eq!(state.document.answers.instrument.as_deref(), Some("lute"));
        assert!(state.shown("instrument").unwrap().contains("“lute” is not one of the answers"));
        assert!(read_kept(part).1.is_some());
    }

    #[test]
    fn a_number_in_a_file_that_nobody_could_type_is_told_of_at_its_field() {
        let far = "{\"format\": \"ropewalk-fitting\", \"version\": 1, \"answers\": {\"a4_hz\": 500, \"weights\": {\"feel\": 40}}}";
        let state = after([Action::Opened { name: text("x"), text: text(far) }]);
        assert_eq!(state.document.answers.a4_hz, Some(500.0));
        assert!(!state.notice.as_ref().unwrap().grave);
        let fields: Vec<_> = state.slips().into_iter().map(|slip| slip.field).collect();
        assert_eq!(fields, ["a4_hz", "weights.feel"]);
        assert_eq!(read_kept(far), (state.document, None));
    }

    /// The identity of a kept set.
    fn nth(state: &State, n: usize) -> u128 {
        identity(&state.document.fittings[n])
    }

    /// The identity of the kept set that was put by today.
    fn put_by(state: &State) -> u128 {
        let today = day::written(TODAY);
        identity(state.document.fittings.iter().find(|fitting| fitting.at == today).unwrap())
    }

    #[test]
    fn fittings_are_kept_once_and_all_of_them() {
        let mut state = after([Action::Ask(1), Action::Answered(1, found())]);
        let keep = |at: &str| Action::Keep {
            at: text(at),
            strings: Vec::new(),
            summary: vec![text("E5: steel")],
        };
        for at in ["2026-01-01", "2026-01-02"] {
            state = reduce(&state, keep(at));
        }
        assert_eq!(state.document.fittings.len(), 1);
        assert_eq!(state.document.fittings[0].at, "2026-01-02");
        for i in 0..30 {
            state = reduce(&state, Action::Label(format!("Desk {i}")));
            state = reduce(&state, keep(&format!("2026-02-{i:02}")));
        }
        assert_eq!(state.document.fittings.len(), 31);
        assert_eq!(state.document.fittings[0].label, "Desk 29");
        let removed = reduce(&state, Action::Remove(nth(&state, 3)));
        assert_eq!(removed.document.fittings[3].label, "Desk 25");
        assert_eq!(reduce(&removed, Action::Undo).document, state.document);
        let reopened = reduce(&state, Action::Reopen(nth(&state, 4)));
        assert_eq!(reopened.document.label, "Desk 25");
        assert_eq!(reopened.document.fittings, state.document.fittings);
        for nowhere in [Action::Remove(99), Action::Reopen(99)] {
            assert_eq!(reduce(&state, nowhere), state);
        }
    }

    #[test]
    fn invented_fittings_come_and_go_and_touch_nothing_of_ones_own() {
        let invent = || Action::Invent { at: text("2026-01-02T03:04:05Z") };
        let own = after([
            Action::Ask(1),
            Action::Answered(1, found()),
            Action::Keep { at: text("2026-01-01"), strings: Vec::new(), summary: Vec::new() },
            choose(Word::Room, "dry"),
            Action::Type(Number::Age, text("ten")),
        ]);
        let with = reduce(&own, invent());
        assert_eq!(with.document.fittings.len(), 1 + invented::fittings("").len());
        assert_eq!(with.document.answers, own.document.answers);
        // Twice is once.
        assert_eq!(reduce(&with, invent()).document, with.document);
        assert_eq!(reduce(&with, Action::Uninvent).document, own.document);

        // One of them is opened: what was half typed is kept, and comes back word for word.
        let viola =
            with.document.fittings.iter().find(|f| f.invented.as_deref() == Some("desk-3-viola"));
        let opened = reduce(&with, Action::Reopen(identity(viola.unwrap())));
        assert_eq!(opened.name(), "Desk 3 viola, 15\u{a0}in (invented)");
        let gone = reduce(&opened, Action::Uninvent);
        assert!(!gone.is_begun(), "an example that was only looked at goes with the others");
        assert_eq!(gone.document.fittings.len(), 2);
        let back = reduce(&gone, Action::Reopen(put_by(&gone)));
        assert_eq!(back.text(Number::Age), "ten");
        assert_eq!(back.document.answers, own.document.answers);
        assert_eq!(reduce(&gone, Action::Undo).document, opened.document);

        // What a person made of an example is their own; what they kept as it was is still invented.
        let changed = reduce(&opened, choose(Word::Room, "travelling"));
        let stays = reduce(&changed, Action::Uninvent);
        assert_eq!(stays.document.answers, changed.document.answers);
        let found = Found { answers: Rc::new(opened.document.answers.clone()), ..found() };
        let kept = [
            Action::Ask(2),
            Action::Answered(2, found),
            Action::Keep { at: text("2026-01-03"), strings: Vec::new(), summary: Vec::new() },
            Action::Uninvent,
        ];
        let kept = kept.into_iter().fold(opened, |state, action| reduce(&state, action));
        assert_eq!(kept.document.fittings, gone.document.fittings);
    }

    #[test]
    fn opening_a_fitting_loses_nothing_that_was_being_answered() {
        let state = after([
            Action::Ask(1),
            Action::Answered(1, found()),
            Action::Keep { at: text("2026-01-01"), strings: Vec::new(), summary: Vec::new() },
        ]);
        // What is kept as it stands is not kept twice.
        let kept = Action::Reopen(nth(&state, 0));
        let same = reduce(&state, kept.clone());
        assert_eq!(same.document.fittings.len(), 1);
        let other = reduce(&reduce(&same, choose(Word::Room, "dry")), kept);
        assert_eq!(other.document.fittings.len(), 2);
        let back = reduce(&other, Action::Reopen(put_by(&other)));
        assert_eq!(back.document.answers.room.as_deref(), Some("dry"));
        assert_eq!(back.document.fittings.len(), 2);
    }

    #[test]
    fn the_strings_of_a_kept_fitting_are_told_once_they_are_known() {
        let state = after([Action::Invent { at: text("2026-01-02") }]);
        let fitting = state.document.fittings[2].clone();
        let known = Action::Known { fitting: Box::new(fitting), strings: Vec::new() };
        let state = reduce(&state, known.clone());
        let strings: Vec<_> = state.document.fittings.iter().map(|f| f.strings.is_some()).collect();
        assert_eq!(strings, [false, false, true]);
        // A fitting that has gone meanwhile is nobody's.
        let gone = reduce(&state, Action::Uninvent);
        assert_eq!(reduce(&gone, known), gone);
    }

    #[test]
    fn starting_afresh_leaves_what_was_kept_and_can_be_undone() {
        let state = after([
            Action::Ask(1),
            Action::Answered(1, found()),
            Action::Keep { at: text("2026-01-01"), strings: Vec::new(), summary: Vec::new() },
            choose(Word::Room, "dry"),
        ]);
        let fresh = reduce(&state, Action::Afresh);
        assert!(!fresh.is_begun() && state.is_begun());
        assert_eq!(fresh.document.fittings.len(), 1);
        assert_eq!(reduce(&fresh, Action::Undo).document, state.document);
    }

    #[test]
    fn an_answer_that_comes_too_late_is_left_out() {
        let state = after([Action::Ask(1), Action::Ask(2), Action::Answered(1, found())]);
        assert_eq!((state.asking.clone(), state.found.clone()), (Asking::Busy(2), None));
        let stopped = reduce(&state, Action::Stop);
        let late = Action::Failed { ask: 2, message: text("stopped"), reload: false };
        assert_eq!(reduce(&stopped, late).asking, Asking::Stopped);
        let done = reduce(&state, Action::Answered(2, found()));
        assert!(done.is_found());
        // The last good answer stays while the next is worked out.
        let more = reduce(&reduce(&done, choose(Word::Room, "dry")), Action::Ask(3));
        assert!(more.found.is_some() && !more.is_found());
    }

    #[test]
    fn what_the_model_refuses_finds_its_field() {
        let fault = |field: &str| Fault {
            field: text(field),
            value: text("7"),
            allowed: text("less"),
            range: None,
            message: String::new(),
        };
        let refused =
            ["answers.strings[2].note", "answers.bothers[0]", "answers.room", "answers.odd"];
        let state = after([Action::Ask(1), Action::Refused(1, refused.map(fault).to_vec())]);
        assert_eq!(state.asking, Asking::Idle);
        for field in ["strings.2.note", "bothers", "room", "odd"] {
            assert!(state.shown(field).is_some(), "{field}");
        }
        assert_eq!(
            state.shown("room").unwrap(),
            "Where it lives: 7 is not allowed. It takes less."
        );
        let mended = reduce(&state, choose(Word::Room, "dry"));
        assert_eq!(mended.shown("room"), None);
        assert_eq!(mended.slips().len(), 3);
    }

    #[test]
    fn a_fault_leads_to_the_screen_that_asks() {
        assert_eq!(screen_of("instrument"), Some(1));
        assert_eq!(screen_of("wishes.feel"), Some(3));
        assert_eq!(screen_of("concert_days"), Some(7));
        assert_eq!(screen_of("nickel_allergy"), Some(8));
        assert_eq!(screen_of("hand_pain"), None);
        assert_eq!(screen_of("a4_hz"), None);
    }

    #[test]
    fn everything_that_was_answered_can_be_said() {
        let mut state = after([]);
        for question in EVERYTHING.iter().flat_map(|part| part.questions) {
            assert_eq!(said(&state, *question), None, "{question:?}");
            let taken = questions::usual(*question, &state.document.answers);
            assert!(taken.is_some_and(|taken| !taken.is_empty()), "{question:?}");
        }
        for word in Word::ALL {
            let key = questions::choices(word, &state.document.answers)[0].key;
            state = reduce(&state, choose(word, key));
        }
        for flag in Flag::ALL {
            state = reduce(&state, Action::Tick(flag, true));
        }
        for action in [
            Action::Type(Number::Length, text("328,5")),
            Action::Type(Number::A4, text("442")),
            Action::Type(Number::Age, text("8")),
            Action::Type(Number::Days, text("1")),
            Action::Type(Number::Wish(Wish::Power), text("1")),
            Action::Type(Number::Weight(0), text("3")),
            Action::Bother(text("wolf"), true),
            Action::Note(0, text("D5")),
            Action::Type(Number::AlsoSemitones, text("2")),
            Action::Type(Number::AgeOf(1), text("9")),
            Action::OfString(1, OfString::TodayFamily(Some(text("synthetic")))),
            Action::OfString(1, OfString::TodayGauge(Some(text("light")))),
            Action::OfString(1, OfString::TodayMetal(Some(text("silver")))),
            Action::OfString(1, OfString::Keep(true)),
            Action::OfString(2, OfString::Bother(text("thin"), true)),
        ] {
            state = reduce(&state, action);
        }
        for question in EVERYTHING.iter().flat_map(|part| part.questions) {
            assert!(said(&state, *question).is_some_and(|said| !said.is_empty()), "{question:?}");
        }
        assert_eq!(
            said(&state, Question::Concert),
            Some(format!("In 1 day, {}", day::spoken(TODAY + 1)))
        );
        assert_eq!(said(&state, Question::Wishes), Some(text("More powerful (1)")));
        assert_eq!(said(&state, Question::AlsoTuned), Some(text("2 semitones")));
        let each = said(&state, Question::Strings).unwrap();
        for part in
            ["tuned to D5", "now light synthetic under silver 9 months old", "it stays", "thin"]
        {
            assert!(each.contains(part), "{part}: {each}");
        }
        assert!(state.slips().is_empty());
    }
}
