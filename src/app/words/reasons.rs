//! Why this string: what the choice weighed, as sentences.
//!
//! A sentence always shows both numbers. That an elastic core gives more colour is the trade's judgement, so no
//! sentence here says that stretch causes it.

use catalogue::Word;
use protocol::reply::{Comparison, FittedString, Reason};
use strings::fit::desirability::{
    BREAKING_ENDS, DRIFT_ENDS, RING_ENDS, SETTLING_ENDS, STRETCH_ENDS, TUNING_ENDS,
};

use super::naming;
use super::property;
use super::speech;
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
    match key {
        "feel" => "feel under the hand",
        "elasticity" => "elasticity",
        "settling" => "quick settling",
        "drift" => "steadiness against the room",
        "fitters-judgement" => "steadiness, by what fitters say",
        "response" => "quickness under the bow",
        "power" => "power",
        "brightness" => "brightness",
        "ring" => "ring",
        "durability" => "reserve to breaking",
        "care" => "bearing hands and sweat",
        "price" => "price",
        "availability" => "ease of buying",
        "tuning" => "fine tuning",
        other => other,
    }
}

/// Why an attribute counts at all, for the table of what counted.
#[must_use]
pub fn attribute_means(key: &str) -> &str {
    match key {
        "feel" => "tension near what hand and bow are used to",
        "elasticity" => "the trade hears more colour in an elastic core; that is its judgement",
        "settling" => "few days until a night costs no more than five cents",
        "drift" => "little computed drift as the room changes",
        "fitters-judgement" => "how such cores behave in a changing room, from experience",
        "response" => "the bow may set off briskly",
        "power" => "a push on the bridge near what is wanted",
        "brightness" => "brightness near what is wanted",
        "ring" => "how long a plucked note rings on",
        "durability" => "reserve to breaking",
        "care" => "an outside that wears slowly under the fingers",
        "price" => "within what may be spent",
        "availability" => "any shop has it",
        "tuning" => "the peg, or a fine tuner, moves the pitch in small steps",
        _ => "",
    }
}

/// From where to where a wish can swing: the ends between which it is met not at all and wholly.
#[must_use]
pub fn swing(key: &str) -> String {
    let turned = |(best, worst): (f64, f64)| (worst, best);
    let percent = |(from, to): (f64, f64)| (from * 100.0, to * 100.0);
    let (from, to) = match key {
        "elasticity" => percent(STRETCH_ENDS),
        "settling" => turned(SETTLING_ENDS),
        "drift" => turned(DRIFT_ENDS),
        "durability" => turned(percent(BREAKING_ENDS)),
        "tuning" => turned(TUNING_ENDS),
        "ring" => RING_ENDS,
        _ => return speech::of_or_key("swing", key).to_owned(),
    };
    let end = |value: f64| Word::from(units::significant(value, 2));
    speech::of_filled("swing", key, &[("from", end(from)), ("to", end(to))]).unwrap_or_default()
}

/// The answer from which a factor on a weight comes.
#[must_use]
pub fn because(key: &str) -> &str {
    match key {
        "wishes.colour" => "what you said of colour and steadiness",
        "wishes.brightness" => "what you said of brightness",
        "wishes.power" => "what you said of power",
        "wishes.feel" => "what you said of the feel",
        "wishes.response" => "what you said of quickness",
        "set_up" => "the set-up",
        "level" => "how far along the player is",
        "who_tunes" => "nobody tunes between lessons",
        "room" => "where it lives",
        "concert_days" => "the day is near",
        "budget" => "the budget",
        "music" => "the music",
        "bothers" => "strings break",
        "acid_sweat" => "sweat that eats metal",
        "hand_pain" => "the hand hurts",
        other => other,
    }
}

/// How likely a comparative word is, on the page's scale.
#[must_use]
pub fn likely(chance: f64) -> &'static str {
    if chance >= 0.85 {
        "computed, very likely"
    } else if chance >= 0.65 {
        "computed, likely"
    } else {
        "computed, a close call"
    }
}

/// A reason or a cost as a sentence about `string`.
#[must_use]
pub fn sentence(reason: &Reason, is_cost: bool, string: &FittedString) -> Sentence {
    if reason.judged {
        return Sentence { text: judged(reason, is_cost), rests_on: "judgement" };
    }
    match &reason.comparison {
        Some(comparison) => Sentence {
            text: compared(&reason.attribute, comparison, is_cost),
            rests_on: likely(comparison.chance_above.max(comparison.chance_below)),
        },
        None => Sentence { text: weakest(reason, string), rests_on: "computed" },
    }
}

fn judged(reason: &Reason, is_cost: bool) -> String {
    match (reason.attribute.as_str(), is_cost) {
        ("availability", false) => {
            "Easier to buy: it is made every day, the other only sometimes.".to_owned()
        }
        ("availability", true) => {
            "Harder to buy: it is made only sometimes, and may have to be ordered.".to_owned()
        }
        ("price", false) => "Its materials cost less.".to_owned(),
        ("price", true) => "Its materials cost more.".to_owned(),
        ("fitters-judgement", is_cost) => {
            let own = units::of_hundred(reason.worth);
            // No core has full marks from fitters: then there is no other string behind the number.
            if reason.rival_worth >= 0.999 {
                format!("Fitters give such cores {own} of 100 for holding their pitch.")
            } else {
                format!(
                    "{} by what fitters say of such cores: {own} of 100, the other {}.",
                    if is_cost { "Less steady" } else { "Steadier" },
                    units::of_hundred(reason.rival_worth)
                )
            }
        }
        (other, true) => format!("Less good in {}.", attribute(other)),
        (other, false) => format!("Better in {}.", attribute(other)),
    }
}

/// Above this pitch nobody hears, in hertz.
const HEARING: f64 = 20_000.0;

fn compared(attribute_key: &str, c: &Comparison, is_cost: bool) -> String {
    let (this, other) = units::pair(&c.property, c.this, c.other);
    let above = c.verdict == "above";
    let word =
        property::of(&c.property).map_or("different", |p| if above { p.more } else { p.less });
    let word = naming::capital(word);
    let wanted = if is_cost { "further from what is wanted" } else { "nearer to what is wanted" };
    match attribute_key {
        "elasticity" => format!("{word}: it stretches by {this} at pitch, the other by {other}."),
        "settling" => format!("{word}: after {this}, the other after {other}."),
        "drift" => format!("{word} in this room: {this}, the other {other}."),
        "response" => format!("{word}: {this}, the other {other}."),
        "feel" => format!("{word} under the hand, and {wanted}: {this}, the other {other}."),
        "power" => format!("{word}, and {wanted}: {this} at the bridge, the other {other}."),
        "brightness" => {
            let both = if c.this.min(c.other) > HEARING { ", both above hearing" } else { "" };
            format!(
                "{word}, and {wanted}: its shine ends at {this}, that of the other at {other}{both}."
            )
        }
        "tuning" => {
            let cents = |text: &str| text.replace("cents/degree", "cents");
            format!(
                "{word}: a degree of peg changes it by {}, the other by {}.",
                cents(&this),
                cents(&other)
            )
        }
        "ring" => format!("{word}: {this} until a plucked note has faded, the other {other}."),
        "durability" => format!("{word}: at {this} of its strength, the other at {other}."),
        _ => format!("{word}: {this}, the other {other}."),
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
        .and_then(|key| string.report.numbers.get(key).map(|q| (key, units::plainly(key, q))));
    match (reason.attribute.as_str(), number) {
        ("durability", Some((_, number))) => {
            format!("Its weakest point is its reserve: in tune it is at {number} of its strength.")
        }
        ("elasticity", Some((_, number))) => {
            format!("Its weakest point is elasticity: it stretches by only {number} at pitch.")
        }
        (key, Some((property, number))) => format!(
            "Its weakest point is {}. {}: {number}.",
            attribute(key),
            property::name(property)
        ),
        (key, None) => format!("Its weakest point is {}.", attribute(key)),
    }
}

/// The word for a comparison with another string.
#[must_use]
pub fn verdict(comparison: &Comparison) -> &'static str {
    let words = property::of(&comparison.property);
    match (comparison.verdict.as_str(), words) {
        ("above", Some(p)) => p.more,
        ("below", Some(p)) => p.less,
        ("above", None) => "more",
        ("below", None) => "less",
        _ => "no difference we can compute",
    }
}
