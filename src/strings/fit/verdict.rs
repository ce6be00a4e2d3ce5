//! What to do? Often less than a new set: a fresh string of the same kind, one string, a luthier's look, or nothing.
//!
//! Every complaint is answered by its first cause; what the person wishes or rules out is answered by another string.
//! What has to be mended at the instrument comes first, for no string cures it; then the smallest change that helps.

use crate::construction::Construction;
use crate::material::Class;

use super::answers::Aim;
use super::choose::{Choice, Outcome};
use super::complaint::{Cause, Diagnosis, Remedy};
use super::neighbours;
use super::problem::{Problem, StringStatus};
use super::today::Today;

/// What to do.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Advice {
    /// Nothing to change.
    LeaveIt,
    /// A fresh string or set of the same kind.
    FreshSame,
    /// Another string in place of one.
    OneString,
    /// Another set.
    WholeSet,
    /// Someone who mends instruments, before anything is bought.
    LuthierFirst,
}

impl Advice {
    /// Every one.
    pub const ALL: &[Self] =
        &[Self::LeaveIt, Self::FreshSame, Self::OneString, Self::WholeSet, Self::LuthierFirst];

    /// The key by which replies name it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::LeaveIt => "leave-it",
            Self::FreshSame => "fresh-same",
            Self::OneString => "one-string",
            Self::WholeSet => "whole-set",
            Self::LuthierFirst => "luthier-first",
        }
    }
}

/// What led to an answer, besides the causes of complaints.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fact {
    /// A cause that comes first in a complaint.
    Cause(Cause),
    /// Today's string has been on for its life.
    Old,
    /// Nothing is old, as far as is known.
    NotOld,
    /// Nothing bothers, and nothing is wished.
    NothingBothers,
    /// Another sound or feel is wished.
    Wishes,
    /// Gut is on it, and nothing from animals is wanted.
    Animal,
    /// Nickel is under the fingers, and the skin cannot bear it.
    Nickel,
    /// The core is no steel, and the pickup needs it.
    Pickup,
    /// Another family is asked for.
    OtherFamily,
    /// Only some strings are tuned away from their note, and only sometimes.
    Retuned,
    /// A set was asked for.
    SetAskedFor,
    /// Nothing that fits is better than what is there.
    NoBetter,
    /// Nothing fits.
    NothingFits,
}

impl Fact {
    /// The key by which replies name it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Cause(cause) => cause.key(),
            Self::Old => "old",
            Self::NotOld => "not-old",
            Self::NothingBothers => "nothing-bothers",
            Self::Wishes => "wishes",
            Self::Animal => "animal",
            Self::Nickel => "nickel",
            Self::Pickup => "pickup",
            Self::OtherFamily => "other-family",
            Self::Retuned => "retuned",
            Self::SetAskedFor => "set-asked-for",
            Self::NoBetter => "no-better",
            Self::NothingFits => "nothing-fits",
        }
    }
}

/// What to do, and what led to it.
#[derive(Clone, Debug, PartialEq)]
pub struct Verdict {
    /// What to do.
    pub answer: Advice,
    /// With which string, 0 the highest, if it is about one.
    pub string: Option<usize>,
    /// What led to it.
    pub because: Vec<Fact>,
}

/// Lead of a set over today's under which it is not worth changing, as a ratio of desirabilities: a close call.
pub const WORTH_CHANGING: f64 = 1.05;

/// What calls for a change, and where: at one string, or (`None`) at all.
type Call = (Fact, Option<usize>);

/// What today's strings cannot be, for this person.
fn demands(problem: &Problem, today: &[Option<Today>]) -> Vec<Call> {
    let mut calls = Vec::new();
    for (i, string) in problem.strings.iter().enumerate() {
        if string.standing != StringStatus::Open {
            continue;
        }
        let Some(now) = &today[i] else {
            calls.extend(string.family.map(|_| (Fact::OtherFamily, Some(i))));
            continue;
        };
        let construction: &Construction = &now.string.construction;
        let class = now.string.family.class();
        let nickel = construction.outer_winding().is_some_and(|w| !w.metal.nickel_free);
        for (fact, calls_for) in [
            (Fact::OtherFamily, string.family.is_some_and(|family| family != now.string.family)),
            (Fact::Animal, problem.animal_free && class == Class::Gut),
            (Fact::Nickel, problem.nickel_free && nickel),
            (Fact::Pickup, problem.magnetic && class != Class::Steel),
        ] {
            if calls_for {
                calls.push((fact, Some(i)));
            }
        }
    }
    calls
}

/// The string of which all calls speak, if they speak of one.
fn only(calls: &[Call]) -> Option<usize> {
    let first = calls.first()?.1?;
    calls.iter().all(|(_, string)| *string == Some(first)).then_some(first)
}

/// What the first causes call for, by their remedy.
fn calls(findings: &[Diagnosis], remedy: Remedy) -> Vec<Call> {
    let mut calls: Vec<Call> = Vec::new();
    for diagnosis in findings {
        let Some(first) = diagnosis.causes.first().filter(|c| c.cause.remedy() == remedy) else {
            continue;
        };
        // A step between neighbours is mended at the one that stands out.
        let odd = first.numbers.first().map(|number| number.string);
        let string = if first.cause == Cause::OneStandsOut { odd } else { diagnosis.string };
        calls.push((Fact::Cause(first.cause), string));
    }
    calls
}

/// Strings that have been on for their life.
fn old(problem: &Problem, today: &[Option<Today>]) -> Vec<usize> {
    let worn = |i: &usize| {
        let open = problem.strings[*i].standing == StringStatus::Open;
        open && today[*i].as_ref().and_then(Today::worn).is_some_and(|worn| worn >= 1.0)
    };
    (0..today.len()).filter(worn).collect()
}

/// Whether a set is worth changing to from today's: by the same score, or not known.
fn is_better(problem: &Problem, today: &[Option<Today>], best: &Choice) -> Option<bool> {
    let now: Option<Vec<_>> = today.iter().map(|t| t.as_ref().map(|t| t.string.clone())).collect();
    let now = now?;
    let sum: f64 = now.iter().map(|c| c.score).sum::<f64>()
        + neighbours::pairs(problem, &now).iter().sum::<f64>();
    let of_best: f64 =
        best.strings.iter().map(|c| c.score).sum::<f64>() + best.pairs.iter().sum::<f64>();
    Some((of_best - sum) / now.len() as f64 > libm::log(WORTH_CHANGING))
}

/// What to do.
#[must_use]
pub fn verdict(
    problem: &Problem,
    today: &[Option<Today>],
    findings: &[Diagnosis],
    about: Option<usize>,
    outcome: &Outcome,
) -> Verdict {
    let facts = |calls: &[Call]| {
        let mut facts: Vec<Fact> = calls.iter().map(|(fact, _)| *fact).collect();
        facts.sort();
        facts.dedup();
        facts
    };
    let told = |answer, string, because| Verdict { answer, string, because };

    let luthier = calls(findings, Remedy::Luthier);
    if !luthier.is_empty() {
        return told(Advice::LuthierFirst, only(&luthier), facts(&luthier));
    }
    let mut other = calls(findings, Remedy::Other);
    other.extend(demands(problem, today));
    if problem.wishes_change {
        other.push((Fact::Wishes, None));
    }
    let fresh = calls(findings, Remedy::Fresh);
    let old = old(problem, today);
    let about = about.filter(|_| problem.aim == Aim::OneString);
    let Outcome::Set { best, .. } = outcome else {
        // What is there is all that is left, fresh or as it is.
        let answer = if fresh.is_empty() { Advice::LeaveIt } else { Advice::FreshSame };
        let mut because = facts(&fresh);
        because.push(Fact::NothingFits);
        return told(answer, only(&fresh), because);
    };
    if !other.is_empty() {
        let mut because = facts(&other);
        if let Some(i) = about.or_else(|| only(&other)) {
            return told(Advice::OneString, Some(i), because);
        }
        if problem.aim == Aim::IsItTime && is_better(problem, today, best) == Some(false) {
            because.push(Fact::NoBetter);
            return told(Advice::LeaveIt, None, because);
        }
        return told(Advice::WholeSet, None, because);
    }
    if !fresh.is_empty() {
        return told(Advice::FreshSame, only(&fresh).or(about), facts(&fresh));
    }
    if !findings.is_empty() {
        return told(Advice::LeaveIt, None, facts(&calls(findings, Remedy::Patience)));
    }
    if problem.only_retuned {
        let open = |i: &usize| problem.strings[*i].standing == StringStatus::Open;
        let open: Vec<usize> = (0..today.len()).filter(open).collect();
        return match open[..] {
            [i] => told(Advice::OneString, Some(i), vec![Fact::Retuned]),
            _ => told(Advice::WholeSet, None, vec![Fact::Retuned]),
        };
    }
    if problem.aim == Aim::WholeSet {
        return told(Advice::WholeSet, None, vec![Fact::SetAskedFor]);
    }
    match (about, old.as_slice()) {
        (Some(i), _) if old.contains(&i) => told(Advice::FreshSame, Some(i), vec![Fact::Old]),
        (None, [i]) => told(Advice::FreshSame, Some(*i), vec![Fact::Old]),
        (None, [_, ..]) => told(Advice::FreshSame, None, vec![Fact::Old]),
        _ => told(Advice::LeaveIt, None, vec![Fact::NothingBothers, Fact::NotOld]),
    }
}
