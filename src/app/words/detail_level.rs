//! A reason at three levels of detail: in plain words, with what makes its numbers stick, and with formula, weight and source.

use protocol::reply::{Comparison, FittedString, Reason};
use strings::answer_to_bow::HELD_OUT;
use strings::fit::compare;
use strings::report::Property;

use super::naming::capital;
use super::{property, reasons, say};
use crate::detail_level::DetailLevel;
use crate::units;

/// What stands under a reason at the bench.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MakerDetails {
    /// What it moves in the score.
    pub carries: String,
    /// The formula of the property under it; none for a judgement.
    pub formula: Option<&'static str>,
    /// The key of its source.
    pub source: Option<String>,
    /// How well a formula that was fitted to the simulation ranks strings as that does.
    pub ranks: Option<String>,
}

/// A reason or a cost as a sentence at a depth, and what makes its numbers stick, where there is such a thing.
#[must_use]
pub fn sentence(
    reason: &Reason,
    is_cost: bool,
    string: &FittedString,
    depth: DetailLevel,
) -> (reasons::Sentence, Option<String>) {
    let numbers = reasons::sentence(reason, is_cost, string);
    if depth == DetailLevel::Words {
        let text = plain(reason, is_cost).unwrap_or(numbers.text);
        return (reasons::Sentence { text, rests_on: numbers.rests_on }, None);
    }
    let sticks = reason.comparison.as_ref().filter(|_| !reason.judged).and_then(sticks);
    (numbers, sticks)
}

/// A reason without a number; none where it has none anyway.
fn plain(reason: &Reason, is_cost: bool) -> Option<String> {
    match (reason.attribute.as_str(), &reason.comparison) {
        _ if reason.judged => None,
        (key, Some(comparison)) => {
            let word = capital(&reasons::verdict(comparison));
            Some(match key {
                "feel" | "elasticity" | "power" | "brightness" if !is_cost => {
                    say!("reason-plain-wanted", word = word)
                }
                _ => say!("reason-plain", word = word),
            })
        }
        (key, None) => Some(say!("reason-plain-weakest", what = reasons::attribute(key))),
    }
}

/// From this ratio on one says so many times as much.
const TIMES: f64 = 1.95;

/// By how much two strings differ, beside what is noticed at all.
fn sticks(comparison: &Comparison) -> Option<String> {
    let property = Property::ALL.iter().find(|p| p.key() == comparison.property)?;
    let least = compare::just_noticeable(*property);
    let (this, other) = (comparison.this, comparison.other);
    if property.is_drift() {
        let (this, other) = (this.abs(), other.abs());
        let cents = units::fixed((this - other).abs(), 0);
        let by = if this > other {
            say!("reason-cents-more", cents = cents)
        } else {
            say!("reason-cents-less", cents = cents)
        };
        return Some(say!("reason-noticed-cents", by = by, least = units::fixed(least, 0)));
    }
    // Days are told apart with the day of fitting counted, so that a share of them says little.
    let is_share = !property.is_level() && *property != Property::SettlingDays;
    if !is_share || this <= 0.0 || other <= 0.0 {
        return None;
    }
    let ratio = this / other;
    let percent = || units::fixed((ratio - 1.0).abs() * 100.0, 0);
    let by = if ratio >= TIMES {
        say!("reason-times", times = units::significant(ratio, 2))
    } else if ratio <= 1.0 / TIMES {
        say!("reason-times-other", times = units::significant(1.0 / ratio, 2))
    } else if ratio > 1.0 {
        say!("reason-more", percent = percent())
    } else {
        say!("reason-less", percent = percent())
    };
    let least = units::significant((least - 1.0) * 100.0, 2);
    Some(say!("reason-noticed", by = by, least = least))
}

/// What stands under a reason at the bench.
#[must_use]
pub fn maker_details(reason: &Reason, string: &FittedString) -> MakerDetails {
    let of = string.attributes.iter().find(|a| a.attribute == reason.attribute);
    let key = of.and_then(|a| a.property.as_deref());
    MakerDetails {
        carries: say!(
            "reason-carries",
            what = reasons::attribute(&reason.attribute),
            gain = units::fixed(reason.gain, 4),
            weight = units::fixed(of.map_or(0.0, |a| a.weight), 2)
        ),
        formula: key.and_then(property::of).map(|p| p.formula()),
        source: key.and_then(|key| string.report.numbers.get(key)).map(|q| q.source.clone()),
        ranks: key.and_then(ranks),
    }
}

/// How well a property that was fitted to the simulation ranks strings as that does; none for any other.
fn ranks(key: &str) -> Option<String> {
    let (all, place) = Property::ALL.iter().find(|p| p.key() == key)?.error()?.ranks;
    Some(say!(
        "reason-ranks",
        count = units::fixed(HELD_OUT as f64, 0),
        all = units::fixed(all, 2),
        place = units::fixed(place, 2)
    ))
}
