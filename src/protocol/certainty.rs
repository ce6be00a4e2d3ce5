//! How sure a choice is, and what would turn it, at the door.

use schemars::JsonSchema;
use serde::Serialize;
use strings::fit;
use strings::fit::answers::Answers;
use strings::fit::certainty::{self as model, Drawing, Share, Sureness, WAYS};
use strings::fit::choose::Outcome;
use strings::fit::finalists::Finalists;
use strings::fit::turning::{self, Turned, TurningPoint, Value};
use strings::fit::work::Work;

/// How sure the choice is that a fit of the same answers makes, and what would turn it.
#[derive(Clone, Debug, Default, PartialEq, Serialize, JsonSchema)]
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
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct SureShare {
    /// The share, 0 to 1.
    pub share: f64,
    /// Its standard error.
    pub error: f64,
    /// `very-likely` (0.85 and over), `likely` (0.65 and over) or `close-call`.
    pub word: String,
}

impl Default for SureShare {
    fn default() -> Self {
        Share { share: 0.0, error: 0.0 }.into()
    }
}

impl From<Share> for SureShare {
    fn from(share: Share) -> Self {
        let word = Sureness::of(share.share).key().to_owned();
        Self { share: share.share, error: share.error, word }
    }
}

/// Families that are best in some of the worlds.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct NextFamilies {
    /// String by string, highest first.
    pub families: Vec<String>,
    /// In which of the worlds.
    pub share: SureShare,
}

/// How sure one string is.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
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
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct KeyShare {
    /// Of what.
    pub key: String,
    /// The share, 0 to 1.
    pub share: f64,
    /// Its standard error.
    pub error: f64,
}

/// The smallest change of one answer that turns the choice.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
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

impl From<Value> for AnswerValue {
    fn from(value: Value) -> Self {
        match value {
            Value::Flag(flag) => Self::Flag(flag),
            Value::Number(number) => Self::Number(number),
            Value::Word(word) => Self::Word(word.to_owned()),
            Value::Nothing => Self::Nothing,
        }
    }
}

/// What a change does to one string.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
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

impl From<&Turned> for TurnedString {
    fn from(turned: &Turned) -> Self {
        Self {
            string: turned.string,
            family: turned.family.0.key().to_owned(),
            family_then: turned.family.1.key().to_owned(),
            gauge_class: turned.class.0.key().to_owned(),
            gauge_class_then: turned.class.1.key().to_owned(),
        }
    }
}

impl From<&TurningPoint> for TurningPointTold {
    fn from(point: &TurningPoint) -> Self {
        Self {
            answer: point.input.clone(),
            from: point.from.into(),
            holds_at: point.holds_at.into(),
            turns_at: point.turns_at.into(),
            strings: point.strings.iter().map(TurnedString::from).collect(),
        }
    }
}

/// Fits again, and asks the finalists.
pub(crate) fn certainty(answers: &Answers) -> Certainty {
    let fitting = fit::fit(answers);
    let Outcome::Set { best, runner_up } = &fitting.outcome else { return Certainty::default() };
    let drawing = Drawing::Ways(WAYS);
    let ways = model::drawn(answers, &fitting, drawing);
    let mut work = Work::of(model::STEPS);
    let finalists = Finalists::of(&fitting, best, &ways, &mut work);
    let sure = model::of(&finalists, best, runner_up.as_ref(), &ways, drawing, &mut work);
    let turning = turning::of(answers, &finalists, best, &mut Work::of(turning::STEPS));
    let key = |key: &str, share: &Share| KeyShare {
        key: key.to_owned(),
        share: share.share,
        error: share.error,
    };
    let strings = sure
        .strings
        .iter()
        .enumerate()
        .map(|(i, of)| {
            let (list, chosen) = (&finalists.lists[i], &best.strings[i]);
            let none = Share { share: 0.0, error: 0.0 };
            let family = of.families.iter().find(|(f, _)| *f == chosen.family);
            // The chosen string stands first in its list.
            let class = of.classes.iter().find(|(c, _)| Some(c) == list.classes.first());
            SureString {
                family: family.map_or(none, |(_, share)| *share).into(),
                gauge_class: class.map_or(none, |(_, share)| *share).into(),
                families: of.families.iter().map(|(f, share)| key(f.key(), share)).collect(),
                gauge_classes: of.classes.iter().map(|(c, share)| key(c.key(), share)).collect(),
            }
        })
        .collect();
    Certainty {
        worlds: sure.worlds,
        chosen: sure.chosen.into(),
        second: sure.second.into(),
        next: sure.next.map(|(families, share)| NextFamilies {
            families: families.iter().map(|f| f.key().to_owned()).collect(),
            share: share.into(),
        }),
        strings,
        turning_points: turning.points.iter().map(TurningPointTold::from).collect(),
        tried: turning.tried,
        turned: turning.turned,
    }
}
