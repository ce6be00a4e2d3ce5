//! How sure a choice is, and what would turn it.

use strings::fit;
use strings::fit::answers::Answers;
use strings::fit::certainty::{self as model, Drawing, SCENARIOS, Share, Sureness};
use strings::fit::choose::{self, Outcome};
use strings::fit::finalists::Finalists;
use strings::fit::turning::{self, Turned, TurningPoint, Value};
use strings::fit::work::Work;

use crate::reply::{
    AnswerValue, Certainty, KeyShare, NextFamilies, SureShare, SureString, TurnedString,
    TurningPointTold,
};

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
pub(crate) fn certainty_of(answers: &Answers) -> Certainty {
    let fitting = fit::fit(answers);
    let Outcome::Set { best, others } = &fitting.outcome else { return Certainty::default() };
    let drawing = Drawing::Scenarios(SCENARIOS);
    let ways = model::drawn(answers, &fitting, drawing);
    let mut work = Work::of(model::STEPS);
    let finalists = Finalists::of(&fitting, best, &ways, &mut work);
    let sure =
        model::of(&finalists, best, choose::rather_than(best, others), &ways, drawing, &mut work);
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
