//! Which question is asked where: the screens of the player's path, and the page with everything.

use super::Text;
use crate::fields::{Flag, Number, Word};
use crate::words::speech;

/// A question, however it is answered.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Question {
    /// One word of a list.
    Word(Word),
    /// A number.
    Number(Number),
    /// Days until it matters, or a date.
    Concert,
    /// What bothers: any of a list.
    Bothers,
    /// Five wishes.
    Wishes,
    /// Which of these hold.
    Flags(&'static [Flag]),
    /// Another pitch at which the same strings are used.
    AlsoTuned,
    /// Every string by itself: its note, its family, what is there now and what bothers.
    Strings,
    /// Weights set by hand.
    Weights,
}

/// A screen of the player's path, or a part of the page with everything.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Screen {
    /// The message that is its heading.
    heading: &'static str,
    /// What it asks.
    pub questions: &'static [Question],
}

impl Screen {
    /// Its heading.
    #[must_use]
    pub fn title(&self) -> &'static str {
        speech::plain(self.heading)
    }
}

/// The player's path.
pub const PATH: [Screen; crate::route::SCREENS] = [
    Screen {
        heading: "path-instrument",
        questions: &[
            Question::Word(Word::Aim),
            Question::Word(Word::Instrument),
            Question::Word(Word::Size),
            Question::Word(Word::SetUp),
        ],
    },
    Screen {
        heading: "path-strings",
        questions: &[Question::Word(Word::Now), Question::Number(Number::Age)],
    },
    Screen { heading: "path-wishes", questions: &[Question::Bothers, Question::Wishes] },
    Screen {
        heading: "path-player",
        questions: &[
            Question::Word(Word::Music),
            Question::Word(Word::Played),
            Question::Word(Word::Ring),
            Question::Word(Word::Level),
            Question::Word(Word::BelongsTo),
        ],
    },
    Screen {
        heading: "path-tuning",
        questions: &[
            Question::Word(Word::Pegs),
            Question::Word(Word::Tuners),
            Question::Word(Word::WhoTunes),
        ],
    },
    Screen { heading: "path-room", questions: &[Question::Word(Word::Room)] },
    Screen { heading: "path-concert", questions: &[Question::Concert] },
    Screen {
        heading: "path-needs",
        questions: &[Question::Word(Word::Budget), Question::Flags(PATH_FLAGS)],
    },
];

const PATH_FLAGS: &[Flag] = &[Flag::NickelAllergy, Flag::AcidSweat, Flag::AnimalFree];

/// Everything, for those who do this daily.
pub const EVERYTHING: &[Screen] = &[
    Screen {
        heading: "part-instrument",
        questions: &[
            Question::Word(Word::Aim),
            Question::Word(Word::Instrument),
            Question::Word(Word::Size),
            Question::Number(Number::Length),
            Question::Word(Word::SetUp),
            Question::Number(Number::MostLoad),
        ],
    },
    Screen {
        heading: "part-pitch",
        questions: &[
            Question::Word(Word::Tuning),
            Question::Number(Number::A4),
            Question::Word(Word::Temperament),
            Question::AlsoTuned,
        ],
    },
    Screen {
        heading: "part-now",
        questions: &[Question::Word(Word::Now), Question::Number(Number::Age), Question::Bothers],
    },
    Screen {
        heading: "part-strings",
        questions: &[Question::Strings, Question::Word(Word::TunedSo)],
    },
    Screen { heading: "part-wishes", questions: &[Question::Wishes] },
    Screen {
        heading: "part-player",
        questions: &[
            Question::Word(Word::Music),
            Question::Word(Word::Played),
            Question::Word(Word::Ring),
            Question::Word(Word::Amplified),
            Question::Word(Word::Level),
            Question::Word(Word::BelongsTo),
            Question::Word(Word::WhoTunes),
            Question::Concert,
            Question::Word(Word::Budget),
        ],
    },
    Screen {
        heading: "part-place",
        questions: &[
            Question::Word(Word::Pegs),
            Question::Word(Word::Tuners),
            Question::Word(Word::Room),
        ],
    },
    Screen { heading: "part-needs", questions: &[Question::Flags(&Flag::ALL)] },
    Screen { heading: "part-weights", questions: &[Question::Weights] },
];

impl Question {
    /// The name of its fields, which is also where the page finds it.
    #[must_use]
    pub fn key(self) -> String {
        match self {
            Self::Word(word) => word.key().to_owned(),
            Self::Number(number) => number.key(),
            Self::Concert => Number::Days.key(),
            Self::Bothers => "bothers".to_owned(),
            Self::Wishes => "wishes".to_owned(),
            Self::Flags(_) => "flags".to_owned(),
            Self::AlsoTuned => "also_tuned".to_owned(),
            Self::Strings => "strings".to_owned(),
            Self::Weights => "weights".to_owned(),
        }
    }

    /// Whether a field belongs to it.
    #[must_use]
    pub fn has(self, field: &str) -> bool {
        let key = self.key();
        match self {
            Self::Flags(flags) => flags.iter().any(|flag| flag.key() == field),
            _ => {
                field == key
                    || field.strip_prefix(&key).is_some_and(|rest| rest.starts_with(['.', '[']))
            }
        }
    }

    /// What it says.
    #[must_use]
    pub fn text(self) -> Text {
        let message = match self {
            Self::Word(word) => word.key(),
            Self::Number(Number::Length) => "length",
            Self::Number(Number::A4) => "a4",
            Self::Number(Number::Age) => "age",
            Self::Number(Number::Days) => "days",
            Self::Number(Number::AlsoA4) => "also-a4",
            Self::Number(Number::AlsoSemitones) => "also-semitones",
            Self::Number(Number::AgeOf(_)) => "age-of",
            Self::Number(Number::MostLoad) => "most-load",
            Self::Number(Number::MostTension(_)) => "most-tension",
            // A wish and a weight stand in a list, under a question of their own.
            Self::Number(Number::Wish(_)) | Self::Wishes => "wishes",
            Self::Number(Number::Weight(_)) | Self::Weights => "weights",
            Self::Concert => "concert",
            Self::Bothers => "bothers",
            Self::Flags(_) => "flags",
            Self::AlsoTuned => "also-tuned",
            Self::Strings => "strings",
        };
        let part =
            |part: &str| speech::of("question", &format!("{message}{part}")).unwrap_or_default();
        Text { name: part(".name"), ask: part(""), why: part(".why"), hint: part(".hint") }
    }
}
