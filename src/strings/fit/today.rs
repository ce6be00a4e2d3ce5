//! What is on the instrument now? The most usual string of what was named, among all that could be recommended.
//!
//! A person knows a family, perhaps whether it is light or heavy, perhaps the metal. What is not known is taken to be
//! the most usual; where nothing such is made, today's string stays unknown and nothing is said of it.

use crate::construction::{CoreType, CoreTypes, Family};
use crate::material::Class;
use crate::precedent::{self, Grade, SetUp};
use crate::report::{self, Report};

use super::answers::{self, GaugeClass, Level};
use super::candidates::{self, Candidate, Made};
use super::kinds::KindHere;
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

/// What stands for the strings that are on the instrument now, highest first; none where nothing is known or nothing such
/// is made.
#[must_use]
pub fn known(problem: &Problem) -> Vec<Option<Made>> {
    let known = |(i, string): (usize, &StringProblem)| {
        let now = &string.now;
        let family = now.family.or_else(|| family_of_now(problem, i))?;
        most_usual(problem, string, cores_of_now(problem, string, family), now)
    };
    problem.strings.iter().enumerate().map(known).collect()
}

/// The strings that are on the instrument now, judged by this person's wishes.
#[must_use]
pub fn judged(problem: &Problem, known: Vec<Option<Made>>) -> Vec<Option<Today>> {
    let of = |(string, made): (&StringProblem, Option<Made>)| {
        let made = made?;
        Some(Today {
            report: report::report(&made.construction, &string.setting),
            age_months: string.now.age_months.or(problem.age_months),
            life_months: life(problem, made.family.class()),
            named: string.now.family.is_some(),
            string: candidates::judged(&Judge::new(problem, string), &made),
        })
    };
    problem.strings.iter().zip(known).map(of).collect()
}

/// The kind of set that is on the instrument now: the most usual of its class, or of what is known string by string.
fn kind_of_now(problem: &Problem) -> Option<&KindHere> {
    let is_it = |here: &&KindHere| match problem.now {
        Some(now) => here.kind.class == now.class(),
        None => here.is_now,
    };
    problem.kinds.iter().find(is_it)
}

/// The core types of a family that its strings have in the kind of set that is on the instrument: one polymer in all; any
/// of the family where the kind has none of it there.
fn cores_of_now(problem: &Problem, string: &StringProblem, family: Family) -> CoreTypes {
    let of_family = CoreTypes::of_family(family);
    let of_kind = kind_of_now(problem).map(|here| here.kind.cores_at(string.position));
    let both = of_kind.unwrap_or(CoreTypes::ALL).and(of_family);
    if both.is_empty() { of_family } else { both }
}

/// The family of a position in the kind of set that is on the instrument now.
fn family_of_now(problem: &Problem, i: usize) -> Option<Family> {
    let class = problem.now?.class();
    let string = &problem.strings[i];
    let of_kind = kind_of_now(problem).and_then(|here| {
        let cores = here.kind.cores_at(string.position);
        let mut made = made(string).map(|(family, _)| family);
        made.find(|family| !cores.and(CoreTypes::of_family(*family)).is_empty())
    });
    of_kind.or_else(|| usual_family(string, Some(class)))
}

/// The most usual string of a position, for one of which nothing is known.
#[must_use]
pub fn anything(problem: &Problem, string: &StringProblem) -> Option<Candidate> {
    let family = usual_family(string, None)?;
    let cores = cores_of_now(problem, string, family);
    let made = most_usual(problem, string, cores, &answers::Today::default())?;
    Some(candidates::judged(&Judge::new(problem, string), &made))
}

/// The most usual string of every family that is made for a position, in the order in which the trade met them.
#[must_use]
pub fn of_families(problem: &Problem, string: &StringProblem) -> Vec<Candidate> {
    let known = answers::Today::default();
    let judge = Judge::new(problem, string);
    Family::ALL
        .into_iter()
        .filter_map(|family| most_usual(problem, string, CoreTypes::of_family(family), &known))
        .map(|made| candidates::judged(&judge, &made))
        .collect()
}

/// The families that are made for a position, in the order in which they are common, and how commonly.
fn made(string: &StringProblem) -> impl Iterator<Item = (Family, Grade)> + '_ {
    let graded = |family| (family, precedent::grade(string.position, family, &string.conditions));
    let rows = string.position.rows.iter().map(|row| row.family);
    rows.map(graded).filter(|(_, grade)| *grade != Grade::Nobody)
}

/// The family that is most usual at a position, of that class if one is made: a set of synthetics has a steel top string
/// where no synthetic one is made.
fn usual_family(string: &StringProblem, class: Option<Class>) -> Option<Family> {
    let is_of = |family: Family| class.is_none_or(|class| family.class() == class);
    // The first of the best grade is meant.
    let of_class =
        made(string).filter(|(family, _)| is_of(*family)).min_by_key(|(_, grade)| *grade);
    let usual = of_class.or_else(|| made(string).min_by_key(|(_, grade)| *grade));
    usual.map(|(family, _)| family)
}

/// The most usual string of some core types, all of one family, at a position, whatever the person wants: it is there
/// already.
fn most_usual(
    problem: &Problem,
    string: &StringProblem,
    cores: CoreTypes,
    known: &answers::Today,
) -> Option<Made> {
    let family = CoreType::ALL.iter().find(|core| cores.has(**core))?.family();
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
        let mut found = candidates::look(&anybody, &relaxed).made;
        found.retain(|m| cores.has(CoreType::of(m.family, m.construction.core.material)));
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
    usual(&|m| gauge(m) && metal(m)).or_else(|| usual(&gauge)).or_else(|| usual(&|_| true))
}
