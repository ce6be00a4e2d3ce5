//! The state after each action.

use super::{Action, Asking, FieldError, Found, Notice, State, StringAction};
use crate::fields::{self, Number, Word};
use crate::order;
use crate::records::{Record, StoreError};
use crate::words::naming::capital;
use crate::words::questions::BOTHERS;
use crate::words::{fault, say};

/// The state after an action.
#[must_use]
pub fn reduce(state: &State, action: Action) -> State {
    let mut next = state.clone();
    next.apply(action);
    next
}

impl State {
    fn apply(&mut self, action: Action) {
        match action {
            Action::Choose(word, key) => self.choose(word, key),
            Action::Tick(flag, yes) => flag.set(&mut self.document.answers, yes),
            Action::Bother(key, yes) => self.bother(&key, yes),
            Action::BotherOnlyOn(i, key, yes) => self.bother_only_on(i, &key, yes),
            Action::Type(number, text) => self.type_number(number, text),
            Action::Unit(number, unit) => self.choose_unit(number, unit),
            Action::Date(text) => self.type_date(text),
            Action::Note(i, text) => self.type_note(i, text),
            Action::OfString(i, said) => self.of_string(i, said),
            Action::Label(label) => self.document.label = label,
            Action::Left(field) => drop(self.shown.insert(field)),
            Action::Show(fields) => self.shown.extend(fields),
            Action::Opened { name, text } => self.open(&name, &text),
            Action::Discard(kind, id) => self.discard(kind, &id),
            Action::StartOver => self.start_over(),
            Action::Reopen(identity) => self.reopen(identity),
            Action::Remove(identity) => self.remove(identity),
            Action::TakeOver(id) => self.take_over(&id),
            Action::Keep { at, strings, summary } => self.keep(at, strings, summary),
            Action::StringsKnown { fitting, strings } => self.complete(&fitting, strings),
            Action::AddInvented { at } => self.add_invented(&at),
            Action::RemoveInvented => self.remove_invented(),
            Action::Undo => self.undo(),
            Action::Tell(notice) => self.notice = Some(notice),
            Action::CloseNotice => self.notice = None,
            Action::Moved => self.moved(),
            Action::Read { records, session } => self.store_read(records, session),
            Action::Unsaved(document) => self.add_unsaved(*document),
            Action::Written(pending) => {
                self.written(&pending);
                self.tell_kept();
            }
            Action::NotWritten(error) => self.not_written(&error),
            Action::Ask(ask) => {
                self.asking = Asking::Busy(ask);
                self.refused.clear();
            }
            Action::Answered(ask, found) => self.answered(ask, found),
            Action::Refused(ask, faults) if self.asking == Asking::Busy(ask) => {
                self.asking = Asking::Idle;
                self.refused = faults.iter().map(FieldError::refused).collect();
                self.shown.extend(self.refused.iter().map(|error| error.field.clone()));
            }
            Action::Failed { ask, message, reload } if self.asking == Asking::Busy(ask) => {
                self.asking = Asking::Failed { message, reload };
            }
            // It belongs to an earlier question.
            Action::Refused(..) | Action::Failed { .. } => {}
            Action::Stop => self.asking = Asking::Stopped,
            Action::Today(today) => self.set_today(today),
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
        self.changed_field(word.key());
        // What was out of range for one instrument may be within it for another.
        if word == Word::Instrument {
            self.type_number(Number::Length, self.text(Number::Length));
            for field in ["size", "tuning"] {
                self.changed_field(field);
            }
        }
    }

    fn drop_strings(&mut self) {
        // Whatever bothered about one string still bothers.
        for string in std::mem::take(&mut self.document.answers.strings) {
            for key in &string.bothers {
                tick(&mut self.document.answers.bothers, key, true);
            }
        }
        self.document.typed.retain(|field, _| !field.starts_with("strings."));
        self.refused.retain(|error| !error.field.starts_with("strings"));
    }

    fn bother(&mut self, key: &str, yes: bool) {
        let answers = &mut self.document.answers;
        tick(&mut answers.bothers, key, yes);
        if !yes {
            for i in 0..answers.strings.len() {
                fields::of_string(answers, i, |string| tick(&mut string.bothers, key, false));
            }
        }
        self.changed_field("bothers");
    }

    fn bother_only_on(&mut self, i: usize, key: &str, yes: bool) {
        self.of_string(i, StringAction::Bother(key.to_owned(), yes));
        let answers = &mut self.document.answers;
        let on_one = answers.strings.iter().any(|string| string.bothers.iter().any(|b| b == key));
        tick(&mut answers.bothers, key, !on_one);
        self.changed_field("bothers");
    }

    fn of_string(&mut self, i: usize, said: StringAction) {
        fields::of_string(&mut self.document.answers, i, |string| match said {
            StringAction::Family(key) => string.family = key,
            StringAction::TodayFamily(key) => string.today.family = key,
            StringAction::TodayGauge(key) => string.today.gauge_class = key,
            StringAction::TodayMetal(key) => string.today.outer_metal = key,
            StringAction::Keep(yes) => string.keep = yes,
            StringAction::Bother(key, yes) => tick(&mut string.bothers, &key, yes),
        });
        // What is said of one string belongs together: a string that stays must be known.
        let of_string = format!("strings.{i}.");
        self.refused.retain(|error| !error.field.starts_with(&of_string));
    }

    fn moved(&mut self) {
        match &mut self.notice {
            // Good news is told in the room to which it leads, and once is enough.
            Some(notice) if notice.carried && !notice.grave => self.notice = None,
            Some(notice) => notice.carried = true,
            None => {}
        }
    }

    fn store_read(&mut self, records: Vec<Record>, session: Option<String>) {
        let first = self.shared.own.is_empty() && session.is_none();
        if self.merge(records, session) {
            self.notice = Some(Notice::good(say!("told-taken").to_owned()));
        }
        self.tell_kept();
        // Told at each visit, but not at each reload.
        if first && !self.shared.unreadable.is_empty() {
            self.notice = Some(Notice::grave(say!("told-unreadable").to_owned()));
        }
    }

    fn not_written(&mut self, error: &StoreError) {
        // Told once, not at every letter; but whoever waits for a set to be kept is told each time.
        if !self.shared.told || self.shared.awaited.is_some() {
            self.shared.told = true;
            let text = format!("{}.", capital(&fault::store(error)));
            self.notice = Some(Notice::grave(text));
        }
    }

    /// Tells that a set is kept, once it is on the disk.
    fn tell_kept(&mut self) {
        if self.shared.has_awaited() {
            self.notice = Some(Notice::good(say!("told-kept").to_owned()));
        }
    }

    fn answered(&mut self, ask: u32, found: Found) {
        // An answer to an earlier question comes too late.
        if self.asking == Asking::Busy(ask) {
            self.asking = Asking::Idle;
            self.found = Some(found);
        }
    }
}

/// Ticks or clears a complaint, and keeps the order of the list, so that the order of ticking is not an answer.
fn tick(bothers: &mut Vec<String>, key: &str, yes: bool) {
    bothers.retain(|other| other != key);
    if yes {
        bothers.push(key.to_owned());
        let index = |key: &String| BOTHERS.iter().position(|known| known == key);
        *bothers = order::sorted(bothers, |a, b| index(a).cmp(&index(b)));
    }
}
