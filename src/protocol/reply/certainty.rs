//! How sure a choice is, and what would turn it.

use schemars::JsonSchema;
use serde::Serialize;
use serde_json::Value;

use crate::read::{Read, Reader, is_nothing};
use crate::wire::wire;

wire! {
    /// How sure the choice is that a fit of the same answers makes, and what would turn it.
    #[derive(Default)]
    pub struct Certainty {
        /// In how many worlds the best set was found anew: each a draw of every constant, and a way in which the answers
        /// could be meant. None where nothing fits.
        pub worlds: usize,
        /// In which of them every string is of the chosen family.
        pub chosen: SureShare,
        /// In which of them the families are those of the fit's second set.
        pub second: SureShare,
        /// The families that are best most often after the chosen ones.
        pub next: Option<NextFamilies>,
        /// String by string, highest first.
        pub strings: Vec<SureString>,
        /// What would turn the choice: at most three, the nearest first, each confirmed by whole fits.
        pub turning_points: Vec<TurningPointTold>,
        /// How many answers and weights were changed, each by itself, to find them.
        pub tried: usize,
        /// How many of these turned something among the finalists.
        pub turned: usize,
    }

    /// A share of the worlds.
    pub struct SureShare {
        /// The share, 0 to 1.
        pub share: f64,
        /// Its standard error.
        pub error: f64,
        /// `very-likely` (0.85 and over), `likely` (0.65 and over) or `close-call`.
        pub word: String,
    }

    /// Families that are best in some of the worlds.
    pub struct NextFamilies {
        /// String by string, highest first.
        pub families: Vec<String>,
        /// In which of the worlds.
        pub share: SureShare,
    }

    /// How sure one string is.
    pub struct SureString {
        /// The share of the chosen family.
        pub family: SureShare,
        /// The share of the chosen gauge class, of whatever family.
        pub gauge_class: SureShare,
        /// The share of every family that is ever best here, the most frequent first.
        pub families: Vec<KeyShare>,
        /// The share of every gauge class.
        pub gauge_classes: Vec<KeyShare>,
    }

    /// A share of the worlds, and of what.
    pub struct KeyShare {
        /// Of what.
        pub key: String,
        /// The share, 0 to 1.
        pub share: f64,
        /// Its standard error.
        pub error: f64,
    }

    /// The smallest change of one answer that turns the choice.
    pub struct TurningPointTold {
        /// Which answer, as a request names it: `wishes.colour`, `weights.response`, `room`.
        pub answer: String,
        /// What it is, or is taken to be; null where it is not answered.
        pub from: AnswerValue,
        /// The last value on the way at which the choice holds.
        pub holds_at: AnswerValue,
        /// The value at which it turns.
        pub turns_at: AnswerValue,
        /// The strings that are others then.
        pub strings: Vec<TurnedString>,
    }

    /// What a change does to one string.
    pub struct TurnedString {
        /// Which string, 0 the highest.
        pub string: usize,
        /// Its family now.
        pub family: String,
        /// Its family then.
        pub family_then: String,
        /// Its gauge class now.
        pub gauge_class: String,
        /// Its gauge class then.
        pub gauge_class_then: String,
    }
}

/// A number, a word, yes or no, or null for no answer.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(untagged)]
pub enum AnswerValue {
    /// Yes or no.
    Flag(bool),
    /// A number.
    Number(f64),
    /// A word.
    Word(String),
    /// No answer.
    Nothing,
}

impl Read for AnswerValue {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        match value {
            Value::Bool(flag) => Self::Flag(*flag),
            Value::Number(_) => Self::Number(reader.number(value)),
            Value::String(word) => Self::Word(word.clone()),
            Value::Null if !is_nothing(value) => Self::Nothing,
            _ => {
                reader.not(value, "a number, a word, true, false or null");
                Self::Nothing
            }
        }
    }
}
