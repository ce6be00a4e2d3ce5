//! May this string be recommended here? The one test that both the search and the sample of what is made apply.
//!
//! The bands come from [`crate::precedent`], the limits of the process from [`makeable`]; the rest from the answers:
//! what a person, an instrument or a day rules out, whatever the wishes.

use crate::construction::{Construction, Family};
use crate::makeable::{self, Limit};
use crate::material::{Class, Metal};
use crate::precedent::{self, Bands, Grade, SetUp};
use crate::report::{Lean, LeanCore};

use super::flaw::Numbers;
use super::problem::{Problem, StringProblem};

/// Why a construction was left out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Exclusion {
    /// Cannot be made.
    NotMakeable(Limit),
    /// Gut, and nothing from animals is wished.
    Animal,
    /// Nickel under the fingers.
    Nickel,
    /// No steel in the core for a magnetic pickup.
    Pickup,
    /// Another family was asked for.
    OtherFamily,
    /// Nobody we know of makes the family here.
    NobodyMakesIt,
    /// Tension outside what is made.
    Tension,
    /// Gauge outside what is made, and what grooves take.
    Gauge,
    /// Stretch outside what is made.
    Stretch,
    /// Winding share outside what is made.
    WindingShare,
    /// Too near to breaking.
    Breaking,
    /// Not surely settled by the day on which it must be.
    NotSettled,
    /// At fault in the same way as the string that bothers.
    SameFault,
    /// Cannot be tuned on the peg alone, and there is no fine tuner.
    NeedsFineTuner,
}

impl Exclusion {
    /// The key by which replies name it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::NotMakeable(_) => "not-makeable",
            Self::Animal => "animal",
            Self::Nickel => "nickel",
            Self::Pickup => "pickup",
            Self::OtherFamily => "other-family",
            Self::NobodyMakesIt => "nobody-makes-it",
            Self::Tension => "tension",
            Self::Gauge => "gauge",
            Self::Stretch => "stretch",
            Self::WindingShare => "winding-share",
            Self::Breaking => "breaking",
            Self::NotSettled => "not-settled",
            Self::SameFault => "same-fault",
            Self::NeedsFineTuner => "needs-fine-tuner",
        }
    }
}

/// Chance of having settled in time that is asked of a string where the person insists.
pub const SURE_CHANCE: f64 = 0.80;

/// Cents for a degree of peg that no hand sets on a wooden peg alone: a degree is about its finest step, and half a
/// dozen cents to either side are heard. A judgement, no source; plain gut violin D strings stand near 10, steel
/// ones at 15 and over.
pub const MOST_ON_A_PEG: f64 = 12.0;

/// What rules out every string on a core of that class. Gut is the one that comes from an animal.
#[must_use]
pub fn of_class(problem: &Problem, class: Class) -> Option<Exclusion> {
    match class {
        Class::Gut if problem.animal_free => Some(Exclusion::Animal),
        Class::Gut | Class::Polymer if problem.magnetic => Some(Exclusion::Pickup),
        Class::Gut | Class::Polymer | Class::Steel => None,
    }
}

/// Whether a string on that core, under that tension, may not have settled by the day on which the person insists.
#[must_use]
pub fn of_settling(string: &StringProblem, core: &LeanCore, tension: f64) -> Option<Exclusion> {
    let day = string.settled_by?;
    let chance = core.settling.chance(&core.pull(tension), day);
    (chance < SURE_CHANCE).then_some(Exclusion::NotSettled)
}

/// What rules out every string whose outermost metal is this one.
#[must_use]
pub fn of_metal(problem: &Problem, outer: &Metal) -> Option<Exclusion> {
    (problem.nickel_free && !outer.nickel_free).then_some(Exclusion::Nickel)
}

/// How commonly a family is made here under that outermost metal, if it is.
///
/// # Errors
/// An unusual metal on a family that is itself made only sometimes: nobody we know of makes that.
pub fn grade(
    string: &StringProblem,
    family: Family,
    bands: &Bands,
    outer: Option<&Metal>,
) -> Result<Grade, Exclusion> {
    let covered = outer
        .map_or(Grade::Everyday, |metal| precedent::metal_grade(string.position, family, metal));
    if bands.grade == Grade::Sometimes && covered == Grade::Sometimes {
        return Err(Exclusion::NobodyMakesIt);
    }
    Ok(bands.grade.max(covered))
}

/// What the bands limit in a string.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Banded {
    /// Outer gauge, metres.
    pub gauge: f64,
    /// Tension, newtons.
    pub tension: f64,
    /// Stretch at pitch.
    pub stretch: f64,
    /// Share of the mass that is winding.
    pub winding_share: f64,
    /// Share of breaking strength.
    pub breaking_share: f64,
}

/// Which band a string lies outside, if any.
#[must_use]
pub fn of_bands(bands: &Bands, string: &Banded) -> Option<Exclusion> {
    let outside = |value: f64, band: (f64, f64)| value < band.0 || value > band.1;
    // Gauges stand on hundredths of a millimetre: a nanometre tells them apart from rounding.
    if outside(string.gauge, (bands.gauge.0 - 1e-9, bands.gauge.1 + 1e-9)) {
        Some(Exclusion::Gauge)
    } else if outside(string.tension, bands.tension) {
        Some(Exclusion::Tension)
    } else if outside(string.stretch, bands.stretch) {
        Some(Exclusion::Stretch)
    } else if outside(string.winding_share, bands.winding_share) {
        Some(Exclusion::WindingShare)
    } else if string.breaking_share > bands.breaking_share {
        Some(Exclusion::Breaking)
    } else {
        None
    }
}

/// What the answers rule out in a string: a flaw that it has to be free of, or how it tunes, for a historical
/// tailpiece takes no fine tuner. Most questions ask nothing of single strings; then its numbers are not computed.
#[must_use]
pub fn of_answers(string: &StringProblem, numbers: impl FnOnce() -> Numbers) -> Option<Exclusion> {
    let on_the_peg = string.conditions.set_up == SetUp::Historical && !string.fine_tuner;
    if string.flaws.is_empty() && !on_the_peg {
        return None;
    }
    let numbers = numbers();
    if string.flaws.iter().any(|flaw| flaw.is_in(&numbers)) {
        return Some(Exclusion::SameFault);
    }
    (on_the_peg && numbers.peg > MOST_ON_A_PEG).then_some(Exclusion::NeedsFineTuner)
}

/// What rules out a string whose numbers are all known: its bands, the process, or the answers.
#[must_use]
pub fn of_made(
    string: &StringProblem,
    bands: &Bands,
    construction: &Construction,
    (core, lean): (&LeanCore, &Lean),
) -> Option<Exclusion> {
    let Lean { gauge, tension, stretch, winding_share, breaking_share, .. } = *lean;
    of_bands(bands, &Banded { gauge, tension, stretch, winding_share, breaking_share })
        .or_else(|| makeable::broken(construction).map(Exclusion::NotMakeable))
        .or_else(|| of_settling(string, core, tension))
        .or_else(|| of_answers(string, || Numbers::of(construction, lean)))
}
