//! What a person answered, in words.

use protocol::request::{Answers, StringAnswer};
use strings::fit::desirability;

use super::naming::{capital, metal};
use super::questions::{self, Question};
use super::say;
use crate::day;
use crate::fields::{self, Number, Wish};
use crate::state::State;

/// An answer in words; none where the question is not answered.
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
        Question::Number(number) => typed_number(state, number),
        Question::Concert => {
            let days = state.days()?;
            let number = Number::Days.unit(None).typed(days);
            let date = day::spoken(day::read(&state.date_text())?);
            Some(say!("said-concert", days = days, number = number, date = date))
        }
        Question::Bothers => {
            let all = questions::complaints(answers);
            let unknown = answers.bothers.iter().filter(|key| !all.contains(key));
            joined(all.iter().chain(unknown).map(|key| complaint(answers, key)), ", ")
        }
        Question::Wishes => {
            let words = Wish::ALL.into_iter().filter_map(|wish| {
                let value = Number::Wish(wish).of(answers)?;
                let number = Number::Wish(wish).unit(None).typed(value).replace('-', "−");
                Some(format!("{} ({number})", questions::wish_word(wish, value)))
            });
            joined(words, ", ").map(|words| capital(&words))
        }
        Question::Flags(flags) => {
            let ticked = flags.iter().filter(|flag| flag.of(answers));
            joined(ticked.map(|flag| questions::flag_name(*flag)), ", ")
        }
        Question::AlsoTuned => {
            let numbers = [Number::AlsoA4, Number::AlsoSemitones].into_iter();
            joined(numbers.filter_map(|number| typed_number(state, number)), ", ")
        }
        Question::Strings => {
            let tuned = fields::tuned(answers);
            let each = answers.strings.iter().enumerate().filter_map(|(i, string)| {
                let name = tuned.get(i).copied().unwrap_or("?");
                joined(said_of(string), ", ").map(|words| format!("{name}: {words}"))
            });
            joined(each, "; ")
        }
        Question::Weights => {
            let each = (0..desirability::COUNT).filter_map(|i| {
                let value = answers.weights.get(fields::weight_key(i))?;
                let number = Number::Weight(i).unit(None).typed(*value);
                Some(format!("{} {number}", questions::weight_name(i)))
            });
            joined(each, ", ").map(|words| capital(&words))
        }
    }
}

/// Everything that is said of one string.
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
    let force = Number::MostTension(0).unit(None);
    let most = string.most_tension_n.map(|most| format!("{} {}", force.typed(most), force.shown()));
    words.extend(most.map(|most| say!("said-most", most = most)));
    words
}

/// A complaint, and the strings that it is about where these are not all.
fn complaint(answers: &Answers, key: &str) -> String {
    let tuned = fields::tuned(answers);
    let of = answers.strings.iter().enumerate().filter(|(_, s)| s.bothers.iter().any(|b| b == key));
    let label = questions::bother_label(key);
    match joined(of.map(|(i, _)| tuned.get(i).copied().unwrap_or("?")), ", ") {
        Some(strings) => format!("{label} ({strings})"),
        None => label.to_owned(),
    }
}

/// A number as it was typed, with its unit.
fn typed_number(state: &State, number: Number) -> Option<String> {
    number.of(&state.document.answers)?;
    let said = format!("{} {}", state.text(number), state.unit(number).shown());
    Some(said.trim_end().to_owned())
}

/// Words in a row; none if there are none.
fn joined<T: AsRef<str>>(words: impl IntoIterator<Item = T>, between: &str) -> Option<String> {
    let mut row = String::new();
    for word in words {
        if !row.is_empty() {
            row += between;
        }
        row += word.as_ref();
    }
    (!row.is_empty()).then_some(row)
}
