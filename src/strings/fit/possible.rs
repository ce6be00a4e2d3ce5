//! Which kinds of set are possible for this person, and what speaks for each before any string is known?
//!
//! What is on the instrument now is the zero of every wish: without a wish, the same kind. Where that is not known, the
//! most usual kind of the player's tradition stands for it. How usual a kind is counts like the logarithm of odds: a
//! term beside the scores of its strings, never positive.

use crate::construction::{CoreType, CoreTypes, Family};
use crate::precedent;
use crate::precedent::kinds::SetKind;

use super::admission::{self, Exclusion};
use super::answers::Bother;
use super::choose::RuledOut;
use super::kinds::KindHere;
use super::problem::{Problem, StringProblem, StringStatus};

/// What a kind e times less usual than another costs, in units of ln desirability of the set, as all that follow.
/// Judgements, set to round numbers on the trade's practice (`tests/expert/practice.rs`).
pub const USUAL: f64 = 0.10;
/// What it costs to leave the kind that is on the instrument, where something is wished.
pub const LEAVING: f64 = 0.40;
/// The same where something bothers.
pub const LEAVING_WHAT_BOTHERS: f64 = 0.10;
/// The same where nothing is wished and nothing bothers: then nobody changes the kind without need.
pub const LEAVING_FOR_NOTHING: f64 = 2.0;
/// The share of this that it costs to leave it for another kind that would also be what is known of it: another polymer.
pub const NEARLY_STAYING: f64 = 0.25;
/// What each string costs that stays, or was asked for, and does not belong to the kind.
pub const APART: f64 = 0.80;

/// The core types that may stand at each position, the highest first: made for it, and ruled out by no wish.
fn made(problem: &Problem) -> Vec<CoreTypes> {
    let at = |string: &StringProblem| {
        CoreTypes::that(|core| {
            precedent::bands(string.position, core.family(), &string.conditions).is_some()
                && string.family.is_none_or(|only| only == core.family())
                && barred(problem, core).is_none()
        })
    };
    problem.strings.iter().map(at).collect()
}

/// What a person rules out in a core, whatever it is under.
fn barred(problem: &Problem, core: CoreType) -> Option<Exclusion> {
    admission::of_class(problem, core.family().class())
}

/// The kinds that come into question, the most usual first; of kinds that come to the same here, the most usual.
#[must_use]
pub fn kinds(problem: &Problem) -> Vec<KindHere> {
    let made = made(problem);
    let mut all: Vec<KindHere> = SetKind::all_of(problem.kind)
        .map(|kind| {
            let cores = cores(problem, &made, kind);
            let usual = kind.usual_in(problem.tradition);
            let is_now = is_now(problem, kind);
            KindHere { kind, cores, usual, is_now, term: 0.0 }
        })
        .collect();
    // Where none is possible, what stands in the way is at the positions that are empty in all.
    let is_possible = |here: &KindHere| here.cores.iter().all(|cores| !cores.is_empty());
    if all.iter().any(is_possible) {
        all.retain(is_possible);
    }
    all.sort_by(|a, b| b.is_now.cmp(&a.is_now).then(b.usual.total_cmp(&a.usual)));
    let most = all.iter().map(|kind| kind.usual).fold(0.0, f64::max);
    let most_now = all.iter().filter(|kind| kind.is_now).map(|kind| kind.usual).fold(0.0, f64::max);
    let leaving = if most_now > 0.0 { leaving(problem) } else { 0.0 };
    for (i, here) in all.iter_mut().enumerate() {
        // Of the kinds that what is known could be, the most usual stands for it, as where its numbers are told.
        let (most, leaving) = match (i, here.is_now) {
            (0, true) => (most_now, 0.0),
            (_, true) => (most_now, NEARLY_STAYING * leaving),
            (_, false) => (most, leaving),
        };
        let apart = problem.strings.iter().filter(|string| stands_apart(here.kind, string)).count();
        // A set has at most five strings.
        here.term = USUAL * libm::log(here.usual / most) - leaving - APART * apart as f64;
    }
    let mut kept: Vec<KindHere> = Vec::new();
    for here in all {
        if kept.iter().all(|other| other.cores != here.cores) {
            kept.push(here);
        }
    }
    kept
}

/// The kinds that do not come into question, for at some position none of their cores is made, or a wish rules it out.
pub(super) fn ruled_out(problem: &Problem) -> Vec<RuledOut> {
    let made = made(problem);
    SetKind::all_of(problem.kind)
        .filter_map(|kind| {
            let string = cores(problem, &made, kind).iter().position(|at| at.is_empty())?;
            let cores = kind.cores_at(problem.strings[string].position);
            let mut of_kind = CoreType::ALL.iter().filter(|core| cores.has(**core));
            let wish = of_kind.find_map(|core| barred(problem, *core));
            let limit = Some(wish.unwrap_or(Exclusion::NobodyMakesIt));
            Some(RuledOut { kind, string: Some(string), limit })
        })
        .collect()
}

/// What it costs to leave the kind that is on the instrument.
fn leaving(problem: &Problem) -> f64 {
    let at_one = problem.strings.iter().any(|string| !string.bothers.is_empty());
    if at_one || !problem.bothers.is_empty() {
        LEAVING_WHAT_BOTHERS
    } else if problem.wishes_change {
        LEAVING
    } else {
        LEAVING_FOR_NOTHING
    }
}

/// Which of the cores that are made a kind may have at each position: a string that stays or whose family was asked for
/// is what it is.
fn cores(problem: &Problem, made: &[CoreTypes], kind: &SetKind) -> Vec<CoreTypes> {
    let at = |(string, made): (&StringProblem, &CoreTypes)| match string.standing {
        StringStatus::Kept | StringStatus::NotJudged => CoreTypes::ALL,
        StringStatus::Open if string.family.is_some() => *made,
        StringStatus::Open => kind.cores_at(string.position).and(*made),
    };
    problem.strings.iter().zip(made).map(at).collect()
}

/// Whether a string that stays, or whose family was asked for, does not belong to the kind.
fn stands_apart(kind: &SetKind, string: &StringProblem) -> bool {
    let family = match string.standing {
        StringStatus::Kept => string.now.family,
        StringStatus::Open => string.family,
        StringStatus::NotJudged => None,
    };
    family.is_some_and(|family| !has_family(kind, string, family))
}

fn has_family(kind: &SetKind, string: &StringProblem, family: Family) -> bool {
    !kind.cores_at(string.position).and(CoreTypes::of_family(family)).is_empty()
}

/// Whether a complaint is about what the strings are, and not about the instrument, their age or how they were fitted.
const fn is_about_the_kind(bother: Bother) -> bool {
    match bother {
        Bother::TooBright
        | Bother::Thin
        | Bother::TooDull
        | Bother::TooQuiet
        | Bother::SlowToSpeak
        | Bother::Chokes
        | Bother::Whistles
        | Bother::OutOfTune
        | Bother::GoesFlat
        | Bother::HardOnTheHand => true,
        Bother::Wolf | Bother::Breaks | Bother::BreaksAtThePeg | Bother::False | Bother::Uneven => {
            false
        }
    }
}

/// Whether what is known to be on the instrument belongs to that kind, and is to stay as it is: what bothers is not.
fn is_now(problem: &Problem, kind: &SetKind) -> bool {
    if problem.bothers.iter().any(|bother| is_about_the_kind(*bother)) {
        return false;
    }
    let content = problem.strings.iter().filter(|string| string.bothers.is_empty());
    let mut known = content.filter_map(|s| s.now.family.map(|family| (s, family)));
    let of_class = problem.now.is_none_or(|now| now.class() == kind.class);
    let anything = problem.now.is_some() || problem.strings.iter().any(|s| s.now.family.is_some());
    anything && of_class && known.all(|(string, family)| has_family(kind, string, family))
}
