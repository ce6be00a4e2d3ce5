//! What does a person, an instrument or a day rule out, whatever the wishes?
//!
//! Limits of the trade, what can be made and what is made, are elsewhere; these come from the answers.

use crate::construction::{Build, Construction, Core, Family};
use crate::material::{Class, CoreMaterial};
use crate::precedent::SetUp;
use crate::quantity::{Day, Metre};
use crate::report::{self, Lean, Property};

use super::candidates::Exclusion;
use super::compare;
use super::problem::{Problem, StringProblem};

/// Chance of having settled in time under which a string is ruled out, where the person insists.
pub const LEAST_CHANCE: f64 = 0.20;
/// Chance of having settled in time under which it is warned of, where the person insists.
pub const SURE_CHANCE: f64 = 0.80;

/// Cents for a degree of peg that no hand sets on a wooden peg alone: a degree is about its finest step, and half a
/// dozen cents to either side are heard. A judgement, no source; plain gut violin D strings stand near 10, steel
/// ones at 15 and over.
pub const MOST_ON_A_PEG: f64 = 12.0;

/// Chance that a string on this core has settled by the day on which the person insists; none if none does.
#[must_use]
pub fn chance_of_settling(problem: &Problem, core: &Core, wound: bool) -> Option<f64> {
    problem.settled_by.map(|days| report::chance_settled(core, wound, days))
}

/// What rules out every string on that core.
#[must_use]
pub fn of_core(
    problem: &Problem,
    material: &'static CoreMaterial,
    build: Build,
    wound: bool,
) -> Option<Exclusion> {
    if problem.animal_free && material.animal {
        return Some(Exclusion::Animal);
    }
    if problem.magnetic && material.class != Class::Steel {
        return Some(Exclusion::Pickup);
    }
    // How soon it settles does not depend on how thick it is.
    let core = Core { material, build, diameter: Metre::new(0.0) };
    let chance = chance_of_settling(problem, &core, wound);
    chance.is_some_and(|chance| chance < LEAST_CHANCE).then_some(Exclusion::NotSettled)
}

/// What was at fault with today's string: what comes in its place has to be other in that.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Fault {
    /// Being of that family.
    Family(Family),
    /// The metal under the fingers.
    Metal(&'static str),
    /// Pulling that hard, newtons, or more.
    Tension(f64),
    /// Pulling with so little, newtons, or less.
    Slackness(f64),
    /// Brilliance up to there, hertz, or beyond.
    Shine(f64),
    /// Brilliance only up to there, hertz, or less.
    Dullness(f64),
    /// Being worked to that share of its strength, or more.
    Work(f64),
}

/// What limits ask of a string.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Numbers {
    /// Its family.
    pub family: Family,
    /// Key of its outermost metal.
    pub metal: Option<&'static str>,
    /// Tension, newtons.
    pub tension: f64,
    /// Where brilliance ends, hertz.
    pub brilliance: f64,
    /// Share of breaking strength.
    pub breaking_share: f64,
    /// Cents a degree of peg.
    pub peg: f64,
}

impl Numbers {
    /// Those of a string that is known.
    #[must_use]
    pub fn of(construction: &Construction, lean: &Lean) -> Self {
        Self {
            family: construction.family(),
            metal: construction.outer_winding().map(|w| w.metal.key),
            tension: lean.tension,
            brilliance: lean.brilliance,
            breaking_share: lean.breaking_share,
            peg: lean.peg,
        }
    }
}

impl Fault {
    /// Whether a string has the fault too, or is not noticeably better.
    #[must_use]
    pub fn is_in(self, string: &Numbers) -> bool {
        let noticed = compare::just_noticeable;
        match self {
            Self::Family(family) => string.family == family,
            Self::Metal(key) => string.metal == Some(key),
            Self::Tension(most) => string.tension > most / noticed(Property::Tension),
            Self::Slackness(least) => string.tension < least * noticed(Property::Tension),
            Self::Shine(most) => string.brilliance > most / noticed(Property::Brilliance),
            Self::Dullness(least) => string.brilliance < least * noticed(Property::Brilliance),
            Self::Work(most) => string.breaking_share > most / noticed(Property::BreakingShare),
        }
    }
}

/// What rules out one string: a fault that is to be mended, or how it tunes, for a historical tailpiece takes no fine
/// tuner.
#[must_use]
pub fn of_string(string: &StringProblem, numbers: &Numbers) -> Option<Exclusion> {
    if string.faults.iter().any(|fault| fault.is_in(numbers)) {
        return Some(Exclusion::SameFault);
    }
    let alone = string.place.set_up == SetUp::Historical && !string.fine_tuner;
    (alone && numbers.peg > MOST_ON_A_PEG).then_some(Exclusion::NeedsFineTuner)
}

/// The day by which the set must have settled, if the person insists and says when.
#[must_use]
pub fn settled_by(must_settle: bool, concert_days: Option<f64>) -> Option<Day> {
    concert_days.filter(|_| must_settle).map(Day::new)
}
