//! What is typed: kept word for word, and an answer where it can be read.

use protocol::document::Typed;
use strings::pitch;

use super::State;
use crate::fields::{self, Number, Unit};
use crate::preferences;
use crate::words::questions;

impl State {
    pub(super) fn type_number(&mut self, number: Number, text: String) {
        if number == Number::Days {
            return self.type_days(text);
        }
        let key = number.key();
        let value = self.read(number, &text).unwrap_or_default();
        number.set(&mut self.document.answers, value);
        let unit = self.unit(number).label;
        // Preferences change, what was typed does not: its unit is kept with it.
        let usual = if text.trim().is_empty() { default_unit(number) } else { number.unit(None) };
        let unit = if unit == usual.label { "" } else { unit };
        self.keep_typed(&key, text, unit);
        self.changed_field(&key);
    }

    pub(super) fn choose_unit(&mut self, number: Number, unit: String) {
        let text = self.text(number);
        self.document.typed.insert(number.key(), Typed { text: text.clone(), unit });
        self.type_number(number, text);
    }

    pub(super) fn type_note(&mut self, i: usize, text: String) {
        let key = note_key(i);
        let note = read_note(&text).unwrap_or_default();
        fields::of_string(&mut self.document.answers, i, |string| string.note = note);
        self.keep_typed(&key, text, "");
        self.changed_field(&key);
    }

    fn keep_typed(&mut self, key: &str, text: String, unit: &str) {
        let text = if text.trim().is_empty() { String::new() } else { text };
        let entry = Typed { text, unit: unit.to_owned() };
        if entry == Typed::default() {
            self.document.typed.remove(key);
        } else {
            self.document.typed.insert(key.to_owned(), entry);
        }
    }

    /// The unit in which a number is typed.
    #[must_use]
    pub fn unit(&self, number: Number) -> Unit {
        match self.document.typed.get(&number.key()) {
            Some(entry) => number.unit(Some(&entry.unit)),
            None => default_unit(number),
        }
    }

    /// What stands in a number's field.
    #[must_use]
    pub fn text(&self, number: Number) -> String {
        if number == Number::Days {
            return self.days_text();
        }
        let answer = || {
            let value = number.of(&self.document.answers);
            value.map(|value| self.unit(number).typed(value)).unwrap_or_default()
        };
        self.typed(&number.key()).map_or_else(answer, str::to_owned)
    }

    /// What stands in the field of a string's note.
    #[must_use]
    pub fn note_text(&self, i: usize) -> String {
        let answer = || self.document.answers.strings.get(i)?.note.clone();
        let typed = self.typed(&note_key(i)).map(str::to_owned);
        typed.or_else(answer).unwrap_or_default()
    }

    /// What was typed into a field.
    pub(super) fn typed(&self, field: &str) -> Option<&str> {
        let entry = self.document.typed.get(field)?;
        (!entry.text.is_empty()).then_some(&entry.text)
    }

    /// Reads a text typed for a number.
    pub(super) fn read(&self, number: Number, text: &str) -> Result<Option<f64>, String> {
        let bound = number.bound(&self.document.answers);
        number.read(text, self.unit(number), bound, &questions::number_name(number))
    }
}

/// The field of a string's note.
pub(super) fn note_key(i: usize) -> String {
    format!("strings.{i}.note")
}

/// The unit of a number as long as nothing is typed: the preferred one, or the usual one.
fn default_unit(number: Number) -> Unit {
    let preferences = preferences::now();
    let inches = number == Number::Length && preferences.length == preferences::Length::Inch;
    match number {
        Number::MostLoad | Number::MostTension(_) => number.unit(Some(preferences.force.key())),
        _ => number.unit(inches.then_some(preferences::Length::Inch.key())),
    }
}

/// Reads a note as people write it: `bb3` and `B♭3` are `Bb3`. None for an empty text.
pub(super) fn read_note(text: &str) -> Result<Option<String>, String> {
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
