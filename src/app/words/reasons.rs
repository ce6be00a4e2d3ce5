//! Why this string: what the choice weighed, as sentences.
//!
//! A sentence always shows both numbers. That an elastic core gives more colour is the trade's judgement, so no
//! sentence here says that stretch causes it.

use std::borrow::Cow;

use catalogue::Word;
use protocol::reply::{Comparison, FittedString, Reason};
use strings::fit::desirability::{
    BREAKING_ENDS, DRIFT_ENDS, RING_ENDS, ROOM_ENDS, SETTLING_ENDS, STRETCH_REACH, TUNING_ENDS,
};

use super::{drift, naming, property, say, speech};
use crate::units;

/// A sentence and what it rests on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sentence {
    /// The sentence.
    pub text: String,
    /// `judgement`, or that it is computed and how likely it is.
    pub rests_on: &'static str,
}

/// What an attribute is called.
#[must_use]
pub fn attribute(key: &str) -> &str {
    speech::of_or_key("attribute", key)
}

/// Why an attribute counts at all, for the table of what counted.
#[must_use]
pub fn attribute_means(key: &str) -> &str {
    speech::of("attribute", &format!("{key}.means")).unwrap_or_default()
}

/// From where to where a wish can swing: the ends between which it is met not at all and wholly.
#[must_use]
pub fn swing(key: &str) -> String {
    let turned = |(best, worst): (f64, f64)| (worst, best);
    let percent = |(from, to): (f64, f64)| (from * 100.0, to * 100.0);
    let end = |value: f64| Word::from(units::significant(value, 2));
    let (from, to) = match key {
        // What is looked for is a stretch, not an end of the scale.
        "elasticity" => {
            let times = [("times", end(STRETCH_REACH))];
            return speech::of_filled("swing", key, &times).unwrap_or_default();
        }
        "settling" => turned(SETTLING_ENDS),
        "warmth" | "damp" => turned(DRIFT_ENDS),
        "durability" => turned(percent(BREAKING_ENDS)),
        "tuning" => turned(TUNING_ENDS),
        "ring" => RING_ENDS,
        "bow-room" => ROOM_ENDS,
        _ => return speech::of_or_key("swing", key).to_owned(),
    };
    speech::of_filled("swing", key, &[("from", end(from)), ("to", end(to))]).unwrap_or_default()
}

/// The answer from which a factor on a weight comes.
#[must_use]
pub fn because(key: &str) -> &str {
    speech::of("because", &key.replace('.', "-")).unwrap_or(key)
}

/// How likely a comparative word is, on the page's scale.
#[must_use]
pub fn likely(chance: f64) -> &'static str {
    if chance >= 0.85 {
        say!("computed-very-likely")
    } else if chance >= 0.65 {
        say!("computed-likely")
    } else {
        say!("computed-close-call")
    }
}

/// A reason or a cost as a sentence about `string`.
#[must_use]
pub fn sentence(reason: &Reason, is_cost: bool, string: &FittedString) -> Sentence {
    if reason.judged {
        return Sentence { text: judged(reason, is_cost, string), rests_on: say!("judgement") };
    }
    match &reason.comparison {
        Some(comparison) => Sentence {
            text: compared(&reason.attribute, comparison, is_cost),
            rests_on: likely(comparison.chance_above.max(comparison.chance_below)),
        },
        None => Sentence { text: weakest(reason, string), rests_on: say!("computed") },
    }
}

fn judged(reason: &Reason, is_cost: bool, string: &FittedString) -> String {
    let cost = if is_cost { "yes" } else { "no" };
    match reason.attribute.as_str() {
        // Of two that are made as often, the one with the more usual metal or core is bought more easily.
        "availability" if is_cost == (string.grade == "everyday") => {
            say!("judged-buying", cost = cost)
        }
        "availability" => say!("judged-availability", cost = cost),
        "price" => say!("judged-price", cost = cost),
        other => say!("judged-other", cost = cost, attribute = attribute(other)),
    }
}

/// Above this pitch nobody hears, in hertz.
pub(super) const HEARING: f64 = 20_000.0;

fn compared(attribute_key: &str, c: &Comparison, is_cost: bool) -> String {
    let (this, other) = if drift::is_drift(&c.property) {
        units::pair(&c.property, c.this.abs(), c.other.abs())
    } else {
        units::pair(&c.property, c.this, c.other)
    };
    let above = c.verdict == "above";
    let word = property::of(&c.property)
        .map_or(say!("different"), |p| if above { p.more() } else { p.less() });
    let word = naming::capital(word);
    let wanted = if is_cost { say!("further-from-wanted") } else { say!("nearer-to-wanted") };
    match attribute_key {
        "elasticity" => {
            say!("compared-elasticity", word = word, wanted = wanted, this = this, other = other)
        }
        "settling" => say!("compared-settling", word = word, this = this, other = other),
        "warmth" => say!("compared-warmth", word = word, this = this, other = other),
        "damp" => say!("compared-damp", word = word, this = this, other = other),
        "feel" => say!("compared-feel", word = word, wanted = wanted, this = this, other = other),
        "power" => {
            say!("compared-power", word = word, wanted = wanted, this = this, other = other)
        }
        "brightness" => say!(
            "compared-brightness",
            word = word,
            wanted = wanted,
            this = this,
            other = other,
            heard = if c.this.min(c.other) > HEARING { "no" } else { "yes" },
        ),
        "tuning" => {
            let cents = |text: &str| text.replace(units::scale("peg_cent_deg").unit, say!("cents"));
            say!("compared-tuning", word = word, this = cents(&this), other = cents(&other))
        }
        "response" => say!("compared-response", word = word, this = this, other = other),
        // Of both numbers the bridge is the doubt; their difference does without it.
        "bow-room" => {
            let apart = units::significant((c.this - c.other).abs(), 2);
            let by = if above { "more" } else { "less" };
            say!("compared-bow-room", word = word, apart = apart, by = by)
        }
        "ring" => say!("compared-ring", word = word, this = this, other = other),
        "durability" => say!("compared-durability", word = word, this = this, other = other),
        _ => say!("compared", word = word, this = this, other = other),
    }
}

/// Where a string is worth least, when its rival is better in nothing that can be told apart.
fn weakest(reason: &Reason, string: &FittedString) -> String {
    let property = string
        .attributes
        .iter()
        .find(|a| a.attribute == reason.attribute)
        .and_then(|a| a.property.as_deref());
    let number = property
        .and_then(|key| string.report.numbers.get(key).map(|q| (key, drift::plainly(key, q))));
    match (reason.attribute.as_str(), number) {
        ("durability", Some((_, number))) => say!("weakest-durability", number = number),
        ("elasticity", Some((_, number))) => say!("weakest-elasticity", number = number),
        (key, Some((property, number))) => say!(
            "weakest-of",
            attribute = attribute(key),
            property = property::name(property),
            number = number,
        ),
        (key, None) => say!("weakest", attribute = attribute(key)),
    }
}

/// The word for a comparison with another string.
#[must_use]
pub fn verdict(comparison: &Comparison) -> Cow<'static, str> {
    let words = property::of(&comparison.property);
    let (more, less) = words.map_or((say!("more"), say!("less")), |p| (p.more(), p.less()));
    match comparison.verdict.as_str() {
        "above" => more.into(),
        "below" => less.into(),
        "rather-above" => say!("rather", word = more).into(),
        "rather-below" => say!("rather", word = less).into(),
        "alike" => say!("alike").into(),
        _ => say!("undecided").into(),
    }
}
