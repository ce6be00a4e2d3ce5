//! Why this string rather than that one? What the choice weighed, read back.
//!
//! What was asked for comes first, how easily a string is bought last; between them, what weighs most.
//! A reason is an attribute in which the chosen string is worth more than its rival, times its weight. A computed
//! one counts only if the strings differ noticeably in four draws of five; a judgement counts as a judgement. A cost is
//! always given.

use crate::report::Property;
use crate::setting::Untuned;

use super::candidates::Candidate;
use super::choose::Choice;
use super::compare::{self, Comparison, Verdict};
use super::desirability::{Attribute, Desirabilities};
use super::problem::{Problem, StringProblem, WeightStep};
use super::score;

/// The most reasons given for one string.
pub const MOST_REASONS: usize = 3;

/// One thing the choice weighed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reason {
    /// What it is about.
    pub attribute: Attribute,
    /// How much it adds to the chosen string's score over its rival's; negative for a cost.
    pub gain: f64,
    /// The comparison under it, where the attribute is computed.
    pub comparison: Option<Comparison>,
    /// Worth to this string and to its rival.
    pub worth: (f64, f64),
}

/// Reasons for a string, and what it costs.
#[derive(Clone, Debug, PartialEq)]
pub struct Case {
    /// Up to three reasons for it.
    pub reasons: Vec<Reason>,
    /// At least one cost.
    pub costs: Vec<Reason>,
}

/// The properties that a player notices who leaves strings untuned so long, and in which strings are compared.
#[must_use]
pub fn properties(untuned: Untuned) -> Vec<Property> {
    let mut all = vec![Property::Feel, Property::Stretch, Property::SettlingDays];
    all.extend([Attribute::Warmth, Attribute::Damp].iter().filter_map(|a| a.property(untuned)));
    all.extend([
        Property::Speaks,
        Property::BowRoom,
        Property::Impedance,
        Property::Brilliance,
        Property::RingsOn,
        Property::BreakingShare,
        Property::Peg,
    ]);
    all
}

/// The case for a string against a rival at the same place.
#[must_use]
pub fn case(
    chosen: &Candidate,
    rival: &Candidate,
    problem: &Problem,
    string: &StringProblem,
) -> Case {
    let untuned = string.setting.untuned;
    let properties = properties(untuned);
    let comparisons =
        compare::paired(&chosen.construction, &rival.construction, &string.setting, &properties);
    let total = score::total_weight();
    let mut all: Vec<Reason> = Vec::new();
    for attribute in Attribute::ALL {
        let i = *attribute as usize;
        let worth = (chosen.desirabilities[i], rival.desirabilities[i]);
        let gain = problem.weights[i] * (libm::log(worth.0) - libm::log(worth.1)) / total;
        let comparison = attribute
            .property(untuned)
            .and_then(|p| comparisons.iter().find(|c| c.property == p).copied());
        let holds = comparison
            .is_none_or(|c| c.verdict().sign() != 0 && agrees(problem, *attribute, gain, &c));
        if holds && gain.abs() > 1e-9 {
            all.push(Reason { attribute: *attribute, gain, comparison, worth });
        }
    }
    all.sort_by(|a, b| b.gain.total_cmp(&a.gain));
    let mut reasons: Vec<Reason> = all.iter().filter(|r| r.gain > 0.0).copied().collect();
    reasons.sort_by_key(|reason| rank(problem, reason.attribute));
    reasons.truncate(MOST_REASONS);
    let mut costs: Vec<Reason> =
        all.iter().rev().filter(|r| r.gain < 0.0).take(2).copied().collect();
    if costs.is_empty() {
        costs.push(weakest(&chosen.desirabilities, problem));
    }
    Case { reasons, costs }
}

/// In which order reasons are given: first what was asked for, last how easily it is bought.
fn rank(problem: &Problem, attribute: Attribute) -> u8 {
    let is_asked_for = |step: &WeightStep| {
        step.attribute == attribute && step.factor > 1.0 && step.because.starts_with("wishes")
    };
    if attribute == Attribute::Availability {
        2
    } else {
        u8::from(!problem.weight_steps.iter().any(is_asked_for))
    }
}

/// Whether a gain lies on the side of the comparison under it. The choice weighs the ring by the closed form of its
/// first partial, and tells of it by the simulation: the two rank alike, but for hairs.
fn agrees(problem: &Problem, attribute: Attribute, gain: f64, comparison: &Comparison) -> bool {
    let better = if problem.ring_short { Verdict::Below } else { Verdict::Above };
    attribute != Attribute::Ring || (gain > 0.0) == (comparison.verdict() == better)
}

/// Where a string is worth least to this person, whatever its rival.
#[must_use]
pub fn weakest(d: &Desirabilities, problem: &Problem) -> Reason {
    let total = score::total_weight();
    let loss = |a: &Attribute| problem.weights[*a as usize] * libm::log(d[*a as usize]);
    let mut worst = Attribute::Feel;
    for attribute in Attribute::ALL {
        if loss(attribute) < loss(&worst) {
            worst = *attribute;
        }
    }
    Reason {
        attribute: worst,
        gain: loss(&worst) / total,
        comparison: None,
        worth: (d[worst as usize], 1.0),
    }
}

/// A property in which the strings of two sets differ noticeably.
#[derive(Clone, Debug, PartialEq)]
pub struct Difference {
    /// Which.
    pub property: Property,
    /// The strings of which the other set's have more of it, 0 the highest.
    pub above: Vec<usize>,
    /// The strings of which they have less.
    pub below: Vec<usize>,
}

/// In what the strings of another set differ noticeably from those of the chosen one.
#[must_use]
pub fn differences(problem: &Problem, best: &Choice, other: &Choice) -> Vec<Difference> {
    let mut all: Vec<Difference> = Vec::new();
    for (i, string) in problem.strings.iter().enumerate() {
        let (this, that) = (&other.strings[i], &best.strings[i]);
        if this.construction == that.construction {
            continue;
        }
        for change in changes(this, that, string) {
            let sign = change.verdict().sign();
            if sign == 0 {
                continue;
            }
            let at = all.iter().position(|d| d.property == change.property).unwrap_or_else(|| {
                let property = change.property;
                all.push(Difference { property, above: Vec::new(), below: Vec::new() });
                all.len() - 1
            });
            if sign > 0 { all[at].above.push(i) } else { all[at].below.push(i) }
        }
    }
    all
}

/// What changes from today's string: every comparable property that a player notices.
#[must_use]
pub fn changes(chosen: &Candidate, today: &Candidate, string: &StringProblem) -> Vec<Comparison> {
    // How near it is to breaking, and how it tunes, nobody notices at once.
    let properties = properties(string.setting.untuned);
    let noticed = &properties[..properties.len() - 2];
    compare::paired(&chosen.construction, &today.construction, &string.setting, noticed)
}
