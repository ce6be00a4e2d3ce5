//! What is wrong with the answers, field by field and in words.

use protocol::reply::Fault;
use strings::fit::desirability;

use super::State;
use super::typed::{note_key, read_note};
use crate::fields::{self, Number, Wish, Word};
use crate::words::questions::{self, EVERYTHING, PATH, Question};
use crate::words::{fault, say};

/// What is wrong with a field, in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FieldError {
    /// The field.
    pub field: String,
    /// What was typed and what is allowed.
    pub message: String,
}

impl FieldError {
    /// What the model refused, by the name of the field on the page.
    pub(super) fn refused(fault: &Fault) -> Self {
        let field = fields::on_page(&fault.field);
        let message = fault::refused(questions::name_of_field(&field).unwrap_or(&field), fault);
        Self { field, message }
    }
}

impl State {
    /// Every error, in the order of the questions.
    #[must_use]
    pub fn errors(&self) -> Vec<FieldError> {
        let questions = EVERYTHING.iter().flat_map(|screen| screen.questions);
        let mut errors: Vec<_> = questions.flat_map(|question| self.check(*question)).collect();
        // What belongs to no question is told all the same.
        for refused in &self.refused {
            if !errors.iter().any(|error| error.field == refused.field) {
                errors.push(refused.clone());
            }
        }
        errors
    }

    /// Errors that stand in the way of going on from these questions.
    #[must_use]
    pub fn errors_in(&self, questions: &[Question]) -> Vec<FieldError> {
        let mut errors = self.errors();
        errors.retain(|error| questions.iter().any(|question| question.has(&error.field)));
        errors
    }

    /// The error of a field, if it is to be shown.
    #[must_use]
    pub fn error_of(&self, field: &str) -> Option<String> {
        if !self.shown.contains(field) {
            return None;
        }
        self.errors().into_iter().find(|error| error.field == field).map(|error| error.message)
    }

    /// A field has changed: what the model said of it holds no more.
    pub(super) fn changed_field(&mut self, field: &str) {
        self.refused.retain(|error| error.field != field);
    }

    /// The errors of one question.
    fn check(&self, question: Question) -> Vec<FieldError> {
        let numbers = |numbers: &mut dyn Iterator<Item = Number>| -> Vec<FieldError> {
            numbers.filter_map(|number| self.check_number(number)).collect()
        };
        let answers = &self.document.answers;
        match question {
            Question::Word(word) => self.check_word(word).into_iter().collect(),
            Question::Number(number) => numbers(&mut [number].into_iter()),
            Question::Concert => {
                let error = self.read_days(self.today).err();
                let field = Number::Days.key();
                error.map(|message| FieldError { field, message }).into_iter().collect()
            }
            Question::Wishes => numbers(&mut Wish::ALL.map(Number::Wish).into_iter()),
            Question::Weights => numbers(&mut (0..desirability::COUNT).map(Number::Weight)),
            Question::AlsoTuned => {
                numbers(&mut [Number::AlsoA4, Number::AlsoSemitones].into_iter())
            }
            Question::Strings => {
                let each = 0..fields::string_count(answers);
                let own = |i| [Number::AgeOf(i), Number::MostTension(i)];
                let mut errors = numbers(&mut each.flat_map(own));
                let tuned = fields::tuned(answers).into_iter().enumerate();
                errors.extend(tuned.filter_map(|(i, tuned)| self.check_note(i, tuned)));
                errors
            }
            Question::Bothers | Question::Flags(_) => Vec::new(),
        }
    }

    fn check_word(&self, word: Word) -> Option<FieldError> {
        let answers = &self.document.answers;
        let key = word.of(answers)?;
        let choices = questions::choices(word, answers);
        if choices.iter().any(|choice| choice.key == key) {
            return None;
        }
        let labels: Vec<_> = choices.into_iter().map(|choice| choice.label).collect();
        let name = Question::Word(word).text().name;
        let message = say!("fault-choice", name = name, typed = key, choices = labels.join(", "));
        Some(FieldError { field: word.key().to_owned(), message })
    }

    fn check_number(&self, number: Number) -> Option<FieldError> {
        let answers = &self.document.answers;
        let typed = self.typed(&number.key()).is_some();
        // A file may hold a number that nobody could have typed here.
        let bound = number.bound(answers);
        let outside = |value: f64| value < bound.min || value > bound.max;
        if !typed && !number.of(answers).is_some_and(outside) {
            return None;
        }
        let message = self.read(number, &self.text(number)).err()?;
        Some(FieldError { field: number.key(), message })
    }

    fn check_note(&self, i: usize, tuned: &str) -> Option<FieldError> {
        let typed = read_note(&self.note_text(i)).err()?;
        let message = say!("fault-note", note = tuned, typed = typed);
        Some(FieldError { field: note_key(i), message })
    }
}

/// The screen of the path, from 1, that asks for a field; none if only the page with everything does.
#[must_use]
pub fn screen_of(field: &str) -> Option<usize> {
    PATH.iter()
        .position(|screen| screen.questions.iter().any(|question| question.has(field)))
        .map(|i| i + 1)
}
