//! What is on the instrument now? The most usual string of what was named, among all that could be recommended.
//!
//! A person knows a family, perhaps whether it is light or heavy, perhaps the metal. What is not known is taken to be
//! the most usual; where nothing such is made, today's string stays unknown and nothing is said of it.

use crate::construction::Family;
use crate::material::Class;
use crate::precedent::{self, Grade, SetUp};
use crate::report::{self, Report};

use super::answers::{self, GaugeClass, Level, Now};
use super::candidates::{self, Candidate, Made};
use super::problem::{Problem, StringProblem};
use super::score::Judge;
use super::{shopping, usual};

/// The string that is on the instrument now.
#[derive(Clone, Debug, PartialEq)]
pub struct Today {
    /// What stands for it.
    pub string: Candidate,
    /// Its numbers.
    pub report: Report,
    /// Its age in months, where it is known.
    pub age_months: Option<f64>,
    /// Months after which such a string is old here.
    pub life_months: f64,
    /// Its family was named, not only the kind of the set.
    pub named: bool,
}

impl Today {
    /// Its age over its life, where its age is known.
    #[must_use]
    pub fn worn(&self) -> Option<f64> {
        self.age_months.map(|age| age / self.life_months)
    }
}

/// The kind of core that a family has.
#[must_use]
pub const fn class_of(family: Family) -> Class {
    match family {
        Family::PlainGut | Family::WoundGut => Class::Gut,
        Family::PlainSteel | Family::WoundSteel | Family::StrandedSteel => Class::Steel,
        Family::Synthetic | Family::Monofilament => Class::Polymer,
    }
}

/// Months in which a string of a class is worn out by an hour or two a day: common practice, no source.
#[must_use]
pub const fn life_months(class: Class) -> f64 {
    match class {
        Class::Gut => 6.0,
        Class::Polymer => 12.0,
        Class::Steel => 18.0,
    }
}

/// What several hours a day leave of that life: common practice, no source.
pub const LIFE_OF_A_PROFESSIONAL: f64 = 0.5;
/// How much longer the strings of a double bass are left on: common practice, no source.
pub const LIFE_ON_A_BASS: f64 = 2.0;

/// Months after which a string of that class is old in these hands.
#[must_use]
pub fn life(problem: &Problem, class: Class) -> f64 {
    let hours =
        if problem.level == Some(Level::Professional) { LIFE_OF_A_PROFESSIONAL } else { 1.0 };
    let bass = if problem.kind.key == "double-bass" { LIFE_ON_A_BASS } else { 1.0 };
    life_months(class) * hours * bass
}

/// The strings that are on the instrument now, highest first; none where nothing is known or nothing such is made.
#[must_use]
pub fn all(problem: &Problem) -> Vec<Option<Today>> {
    problem.strings.iter().map(|string| of(problem, string)).collect()
}

fn of(problem: &Problem, string: &StringProblem) -> Option<Today> {
    let now = &string.now;
    let family = now.family.or_else(|| usual_family(string, Some(class_of_now(problem.now?))))?;
    let found = most_usual(problem, string, family, now)?;
    Some(Today {
        report: report::report(&found.construction, &string.setting),
        age_months: now.age_months.or(problem.age_months),
        life_months: life(problem, class_of(found.family)),
        named: now.family.is_some(),
        string: found,
    })
}

/// The most usual string of a position, for one of which nothing is known.
#[must_use]
pub fn anything(problem: &Problem, string: &StringProblem) -> Option<Candidate> {
    let family = usual_family(string, None)?;
    most_usual(problem, string, family, &answers::Today::default())
}

/// The most usual string of every family that is made for a position, in the order in which the trade met them.
#[must_use]
pub fn of_families(problem: &Problem, string: &StringProblem) -> Vec<Candidate> {
    let known = answers::Today::default();
    Family::ALL
        .into_iter()
        .filter_map(|family| most_usual(problem, string, family, &known))
        .collect()
}

const fn class_of_now(now: Now) -> Class {
    match now {
        Now::Gut => Class::Gut,
        Now::Synthetic => Class::Polymer,
        Now::Steel => Class::Steel,
    }
}

/// The family that is most usual at a position, of that class if one is made: a set of synthetics has a steel top string
/// where no synthetic one is made.
fn usual_family(string: &StringProblem, class: Option<Class>) -> Option<Family> {
    let grade = |family: Family| {
        let at = &string.conditions;
        precedent::grade(string.position, family, at.kind, at.size, at.length, at.set_up)
    };
    let made = || {
        string
            .position
            .rows
            .iter()
            .map(|row| row.family)
            .filter(|family| grade(*family) != Grade::Nobody)
    };
    // Rows stand in the order in which they are common; the first of the best grade is meant.
    let of_class = made().filter(|family| class.is_none_or(|class| class_of(*family) == class));
    of_class
        .min_by_key(|family| grade(*family))
        .or_else(|| made().min_by_key(|family| grade(*family)))
}

/// The most usual string of a family at a position, whatever the person wants: it is there already.
fn most_usual(
    problem: &Problem,
    string: &StringProblem,
    family: Family,
    known: &answers::Today,
) -> Option<Candidate> {
    let mut anybody = problem.clone();
    (anybody.animal_free, anybody.nickel_free, anybody.magnetic) = (false, false, false);
    let mut relaxed = string.clone();
    (relaxed.family, relaxed.flaws, relaxed.settled_by) = (Some(family), Vec::new(), None);
    (relaxed.conditions.highest, relaxed.conditions.gut_to_its_limit) = (1.0, true);
    relaxed.conditions.most_tension = None;
    // Today's string may have needed the fine tuner that a historical tailpiece lacks.
    relaxed.fine_tuner = true;
    // Strings that are not made for a set-up are on it all the same, when it was another before.
    let set_ups = [string.conditions.set_up, SetUp::Modern];
    let made = set_ups.into_iter().find_map(|set_up| {
        relaxed.conditions.set_up = set_up;
        let found = candidates::look(&anybody, &relaxed).made;
        (!found.is_empty()).then_some(found)
    })?;
    let gauge = |m: &Made| {
        known.gauge_class.is_none_or(|class: GaugeClass| {
            shopping::gauge_class(m.lean.tension, &m.bands) == class
        })
    };
    let metal = |m: &Made| {
        known.outer_metal.is_none_or(|metal| {
            m.construction.outer_winding().is_some_and(|winding| winding.metal.key == metal.key)
        })
    };
    let usual =
        |fits: &dyn Fn(&Made) -> bool| usual::most_usual_of_space(&relaxed, made.iter(), fits);
    // What was said and is not made together is followed as far as it goes: the gauge before the metal.
    let usual =
        usual(&|m| gauge(m) && metal(m)).or_else(|| usual(&gauge)).or_else(|| usual(&|_| true))?;
    // Judged by this person's wishes, at this position as it is.
    Some(candidates::judged(&Judge::new(problem, string), &usual))
}
