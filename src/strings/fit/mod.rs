//! The choice of a set: questions → problem → candidates → set → reasons.
//!
//! Data goes one way. [`answers`] is what a person said; [`problem`] is what that means in numbers, with every
//! assumption written down; [`candidates`] are the makeable strings of each position; [`desirability`] says how
//! well one meets the wishes; [`choose`] finds the best set among them; [`compare`] and [`reasons`] say why it and
//! not another; [`plan`] says what to do with it.

pub mod answers;
pub mod candidates;
pub mod choose;
pub mod compare;
pub mod desirability;
pub mod plan;
pub mod problem;
pub mod reasons;
pub mod shopping;

use answers::Answers;
use candidates::{Candidate, Found};
use choose::Outcome;
use problem::Problem;

/// Everything a fitting found.
#[derive(Clone, Debug, PartialEq)]
pub struct Fitting {
    /// What the answers were taken to mean.
    pub problem: Problem,
    /// What could stand at each place.
    pub found: Vec<Found>,
    /// The best of that, string by string.
    pub shortlists: Vec<Vec<Candidate>>,
    /// The set, or why there is none.
    pub outcome: Outcome,
}

/// Finds a set for what a person said.
#[must_use]
pub fn fit(answers: &Answers) -> Fitting {
    let problem = problem::pose(answers);
    let found: Vec<Found> =
        problem.strings.iter().map(|string| candidates::search(&problem, string)).collect();
    let shortlists: Vec<Vec<Candidate>> = found.iter().map(choose::shortlist).collect();
    let outcome = choose::choose(&problem, &found, &shortlists);
    Fitting { problem, found, shortlists, outcome }
}

/// Limits that a person set and could give up, by the name of the answer.
pub const RELAXABLE: [&str; 5] =
    ["animal_free", "nickel_allergy", "magnetic_pickup", "strings", "gut_to_its_limit"];

/// The wishes that, given up alone, would leave something that fits; for when nothing does.
#[must_use]
pub fn relaxations(answers: &Answers) -> Vec<&'static str> {
    let fits = |a: &Answers| matches!(fit(a).outcome, Outcome::Set { .. });
    RELAXABLE
        .into_iter()
        .filter(|wish| {
            let mut relaxed = answers.clone();
            match *wish {
                "animal_free" => relaxed.animal_free = false,
                "nickel_allergy" => relaxed.nickel_allergy = false,
                "magnetic_pickup" => relaxed.magnetic_pickup = false,
                "strings" => relaxed.strings.clear(),
                _ => relaxed.gut_to_its_limit = true,
            }
            relaxed != *answers && fits(&relaxed)
        })
        .collect()
}

impl Fitting {
    /// The best string of another family at place `i`, the rest of the set staying as chosen.
    #[must_use]
    pub fn rival(&self, best: &choose::Choice, i: usize) -> Option<&Candidate> {
        let strings = &self.problem.strings;
        let worth = |c: &Candidate| {
            let above = if i > 0 {
                choose::pair(&best.strings[i - 1], c, &strings[i - 1], &strings[i])
            } else {
                0.0
            };
            let below = if i + 1 < strings.len() {
                choose::pair(c, &best.strings[i + 1], &strings[i], &strings[i + 1])
            } else {
                0.0
            };
            c.score + above + below
        };
        self.shortlists[i]
            .iter()
            .filter(|c| c.family != best.strings[i].family)
            .max_by(|a, b| worth(a).total_cmp(&worth(b)))
    }

    /// What stands in for today's string at place `i`: the most usual one of the family that was named.
    #[must_use]
    pub fn today(&self, i: usize) -> Option<&Candidate> {
        use crate::material::Class;
        let class = match self.problem.now? {
            answers::Now::Gut => Class::Gut,
            answers::Now::Synthetic => Class::Polymer,
            answers::Now::Steel => Class::Steel,
        };
        let all = &self.found[i].candidates;
        let of_class = || all.iter().filter(move |c| c.construction.core.material.class == class);
        // A set of synthetics has a steel top string where no synthetic one is made.
        let usual = reasons::most_usual(of_class(), &self.problem.strings[i]);
        usual.or_else(|| reasons::most_usual(all.iter(), &self.problem.strings[i]))
    }
}
