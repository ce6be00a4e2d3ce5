//! The next performance. It is kept as its date, because a count of days is wrong tomorrow; the days are counted when
//! the model is asked.
//!
//! Everything that is known of it is one entry of [`Document::typed`]: a date, in the unit [`DATE`], or a count of days
//! that cannot be read yet, as it was typed.

use protocol::document::{Document, Typed};
use protocol::request::Answers;

use super::State;
use crate::day::{self, Day};
use crate::fields::Number;
use crate::words::questions::{self, Question};
use crate::words::say;

/// The unit of an entry that is a date.
const DATE: &str = "date";

impl State {
    /// The answers as the model is asked today.
    #[must_use]
    pub fn answers(&self) -> Answers {
        self.answers_on(self.today)
    }

    /// The answers as the model is asked on this day.
    #[must_use]
    pub fn answers_on(&self, today: Day) -> Answers {
        let concert_days = self.read_days(today).ok().flatten();
        Answers { concert_days, ..self.document.answers.clone() }
    }

    /// The days until the next performance, if they are known.
    #[must_use]
    pub fn days(&self) -> Option<f64> {
        self.read_days(self.today).ok().flatten()
    }

    /// The date of the next performance as a date field takes it; empty if there is none.
    #[must_use]
    pub fn date_text(&self) -> String {
        date_of(&self.document).unwrap_or_default().to_owned()
    }

    /// What stands in the field of the days.
    pub(super) fn days_text(&self) -> String {
        let unread = || match date_of(&self.document) {
            Some(_) => Some(Number::Days.unit(None).typed(self.days()?)),
            None => self.document.typed.get(&key()).map(|entry| entry.text.clone()),
        };
        self.typed_days.clone().or_else(unread).unwrap_or_default()
    }

    pub(super) fn type_days(&mut self, text: String) {
        match entry(&text, self.today) {
            Some(entry) => self.document.typed.insert(key(), entry),
            None => self.document.typed.remove(&key()),
        };
        // Until the day is over, the text stays as it is being typed.
        self.typed_days = date_of(&self.document).is_some().then_some(text);
        self.changed_field(&key());
    }

    pub(super) fn type_date(&mut self, text: String) {
        self.typed_days = None;
        if text.trim().is_empty() {
            self.document.typed.remove(&key());
        } else {
            self.document.typed.insert(key(), Typed { text, unit: DATE.to_owned() });
        }
        self.changed_field(&key());
    }

    pub(super) fn set_today(&mut self, today: Day) {
        if self.today != today {
            self.typed_days = None;
        }
        self.today = today;
        drop_past(&mut self.document, today);
    }

    /// The days from this day until the performance, or what is wrong with what was typed.
    pub(super) fn read_days(&self, today: Day) -> Result<Option<f64>, String> {
        let name = Question::Concert.text().name;
        let Some(text) = date_of(&self.document) else {
            let typed = self.document.typed.get(&key());
            return read(typed.map_or("", |entry| entry.text.as_str()));
        };
        let Some(date) = day::read(text) else {
            let such = day::written(today);
            return Err(say!("fault-date", name = name, typed = text, date = such));
        };
        let last = today + whole(bound().max);
        if date < today {
            Err(say!("fault-past", name = name, date = day::spoken(date)))
        } else if date > last {
            let last = day::spoken(last);
            Err(say!("fault-far", name = name, date = day::spoken(date), last = last))
        } else {
            // Days within the bound are small numbers.
            Ok(Some((date - today) as f64))
        }
    }
}

/// A document whose next performance, if it is a count of days, is the date that this means today. One that is over is
/// no answer any more.
pub(super) fn dated(mut document: Document, today: Day) -> Document {
    let counted = document.answers.concert_days.take();
    if date_of(&document).is_none() {
        let typed = document.typed.remove(&key()).map(|entry| entry.text);
        let typed = typed.filter(|text| !text.trim().is_empty());
        let counted = || Some(Number::Days.unit(None).typed(counted?));
        if let Some(entry) = typed.or_else(counted).and_then(|text| entry(&text, today)) {
            document.typed.insert(key(), entry);
        }
    }
    drop_past(&mut document, today);
    document
}

fn drop_past(document: &mut Document, today: Day) {
    if date_of(document).and_then(day::read).is_some_and(|date| date < today) {
        document.typed.remove(&key());
    }
}

/// What is kept of a count of days typed today: the date, or the text if it cannot be read.
fn entry(text: &str, today: Day) -> Option<Typed> {
    match read(text) {
        Ok(days) => Some(Typed { text: day::written(today + whole(days?)), unit: DATE.to_owned() }),
        Err(_) => Some(Typed { text: text.to_owned(), unit: String::new() }),
    }
}

fn read(days: &str) -> Result<Option<f64>, String> {
    let name = questions::number_name(Number::Days);
    Number::Days.read(days, Number::Days.unit(None), bound(), &name)
}

fn bound() -> strings::error::Bound {
    Number::Days.bound(&Answers::default())
}

fn key() -> String {
    Number::Days.key()
}

fn date_of(document: &Document) -> Option<&str> {
    let entry = document.typed.get(&key()).filter(|entry| entry.unit == DATE)?;
    Some(&entry.text)
}

/// The whole part of a count of days, which is far from any limit.
#[expect(clippy::cast_possible_truncation, reason = "bounded to ten years")]
fn whole(days: f64) -> Day {
    days.clamp(0.0, 4000.0).floor() as Day
}
