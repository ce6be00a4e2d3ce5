//! The names of the answers: what stands where in what a person says.

mod number;
mod unit;

use protocol::request::{Answers, StringAnswer, Wishes};
use strings::instrument::{Kind, Tuning, VIOLIN};
use strings::pitch::Note;
use strings::precedent;

pub use self::number::{Number, weight_key};
pub use self::unit::Unit;

/// The name that a field of a request's answers has on the page.
#[must_use]
pub fn on_page(field: &str) -> String {
    let field = field.strip_prefix("answers.").unwrap_or(field);
    let field = field.replace('[', ".").replace(']', "");
    // A list of boxes has one place for its faults.
    match field.split_once("bothers.") {
        Some((before, _)) => format!("{before}bothers"),
        None => field,
    }
}

/// An enum of answers of one kind, each by the member that holds it.
macro_rules! members {
    (
        $(#[$about:meta])*
        $name:ident of $holder:ident: $type:ty {
            $($(#[$note:meta])* $variant:ident $member:ident,)*
        }
    ) => {
        $(#[$about])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
        pub enum $name {
            $($(#[$note])* $variant,)*
        }

        impl $name {
            /// Every one, in the order of asking.
            pub const ALL: [Self; [$(Self::$variant),*].len()] = [$(Self::$variant),*];

            /// Its name in a request.
            #[must_use]
            pub const fn key(self) -> &'static str {
                match self { $(Self::$variant => stringify!($member)),* }
            }

            /// The one of that name.
            #[must_use]
            pub fn parse(key: &str) -> Option<Self> {
                Self::ALL.into_iter().find(|member| member.key() == key)
            }

            /// What holds it.
            const fn get(self, holder: &$holder) -> &$type {
                match self { $(Self::$variant => &holder.$member),* }
            }

            /// What holds it, to be changed.
            const fn get_mut(self, holder: &mut $holder) -> &mut $type {
                match self { $(Self::$variant => &mut holder.$member),* }
            }
        }
    };
}

macro_rules! plain_questions {
    (
        words { $($(#[$about_word:meta])* $word:ident: $type:ident $odds:tt,)* }
        numbers $numbers:tt
        flags { $($(#[$about_flag:meta])* $flag:ident: $variant:ident,)* }
    ) => {
        members! {
            /// An answer that is one word of a list.
            Word of Answers: Option<String> {
                /// Which instrument.
                Instrument instrument,
                /// Which size.
                Size size,
                /// How it is tuned.
                Tuning tuning,
                $($(#[$about_word])* $type $word,)*
            }
        }

        members! {
            /// An answer that is yes, or not.
            Flag of Answers: bool {
                $($(#[$about_flag])* $variant $flag,)*
            }
        }
    };
}
strings::questions!(plain_questions);

members! {
    /// A wish between two opposites.
    Wish of Wishes: f64 {
        /// Steady or colour.
        Colour colour,
        /// Dark or bright.
        Brightness brightness,
        /// Gentle or powerful.
        Power power,
        /// Soft or firm under the hand.
        Feel feel,
        /// Broad or quick to speak.
        Response response,
    }
}

impl Word {
    /// What was answered.
    #[must_use]
    pub fn of(self, answers: &Answers) -> Option<&str> {
        self.get(answers).as_deref()
    }

    /// Answers it.
    pub fn set(self, answers: &mut Answers, word: Option<String>) {
        *self.get_mut(answers) = word;
    }
}

impl Flag {
    /// What was answered.
    #[must_use]
    pub const fn of(self, answers: &Answers) -> bool {
        *self.get(answers)
    }

    /// Answers it.
    pub const fn set(self, answers: &mut Answers, yes: bool) {
        *self.get_mut(answers) = yes;
    }
}

/// Changes what is said of a string, 0 the highest; the list ends with the last string of which something is said.
pub fn of_string(answers: &mut Answers, i: usize, change: impl FnOnce(&mut StringAnswer)) {
    let strings = &mut answers.strings;
    if strings.len() <= i {
        strings.resize(i + 1, StringAnswer::default());
    }
    change(&mut strings[i]);
    while strings.last().is_some_and(|string| *string == StringAnswer::default()) {
        strings.pop();
    }
}

/// The instrument that was answered, or the one that is taken without an answer.
#[must_use]
pub fn kind(answers: &Answers) -> &'static Kind {
    answers.instrument.as_deref().and_then(Kind::of).unwrap_or(&VIOLIN)
}

/// How many strings the tuning has.
#[must_use]
pub fn string_count(answers: &Answers) -> usize {
    tuned(answers).len()
}

/// The notes of the tuning, highest first.
#[must_use]
pub fn tuned(answers: &Answers) -> Vec<&'static str> {
    tuning(answers).map_or_else(Vec::new, |t| t.strings.iter().map(|(note, _)| *note).collect())
}

/// Whether a string is tuned to another note than strings of its place are made for.
#[must_use]
pub fn is_retuned(answers: &Answers) -> bool {
    let Some(tuning) = tuning(answers) else { return false };
    tuning.strings.iter().enumerate().any(|(i, (note, place))| {
        let own = answers.strings.get(i).and_then(|string| string.note.as_deref());
        let usual = precedent::position_of(place).map_or(*note, |position| position.note);
        Note::parse(own.unwrap_or(note)) != Note::parse(usual)
    })
}

fn tuning(answers: &Answers) -> Option<&'static Tuning> {
    let kind = kind(answers);
    let tuning = answers.tuning.as_deref().and_then(|key| kind.tuning(key));
    tuning.or(kind.tunings.first())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_answer_is_where_it_was_put() {
        let mut answers = Answers::default();
        for word in Word::ALL {
            assert_eq!(word.of(&answers), None);
            word.set(&mut answers, Some(word.key().to_owned()));
        }
        for flag in Flag::ALL {
            assert!(!flag.of(&answers));
            flag.set(&mut answers, true);
        }
        let numbers = [
            Number::Length,
            Number::A4,
            Number::Age,
            Number::Days,
            Number::AlsoA4,
            Number::AlsoSemitones,
            Number::MostLoad,
            Number::AgeOf(2),
            Number::MostTension(2),
            Number::Weight(3),
        ];
        for number in numbers.into_iter().chain(Wish::ALL.map(Number::Wish)) {
            assert_eq!(number.of(&answers), None);
            number.set(&mut answers, Some(1.5));
        }
        // Each stands in the request under its own name, and nothing is left that has no question.
        let written = serde_json::to_value(&answers).unwrap();
        for word in Word::ALL {
            assert_eq!(written[word.key()], word.key());
        }
        for flag in Flag::ALL {
            assert_eq!(written[flag.key()], true);
        }
        for number in numbers.into_iter().chain(Wish::ALL.map(Number::Wish)) {
            let pointer = format!("/{}", number.key().replace('.', "/"));
            assert_eq!(written.pointer(&pointer), Some(&1.5.into()), "{pointer}");
        }
        assert_eq!(
            written.as_object().map(|o| o.len()),
            Some(Word::ALL.len() + Flag::ALL.len() + 5 + 4),
            "{written}"
        );
    }
}
