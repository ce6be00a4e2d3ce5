//! Which set is best? A branch and bound over the shortlists of all strings, exact over them.
//!
//! The worth of a set is the sum of its strings' scores and of a term for every pair of neighbours, never
//! positive. Strings are taken in order; a branch ends when even the best scores of the strings to come,
//! with no pair term at all, could not lift it above the best set found: an admissible bound.

use std::collections::BTreeMap;

use crate::construction::Family;

use super::candidates::{Candidate, Exclusion, Found};
use super::problem::{Problem, Standing, StringProblem};

/// How many candidates of one kind (family, core material, winding metal, tension class) go to the shortlist.
const OF_A_KIND: usize = 2;
/// How many go to the shortlist in all; the search grows with its power in the worst case.
const SHORTLIST: usize = 48;
/// How many of one family go to the shortlist at least, so that a rival of another family is at hand.
const OF_A_FAMILY: usize = 6;

/// Ratio of neighbours' tensions, against the usual one, at which the pair term is one unit.
const TENSION_STEP: f64 = 1.30;
/// Difference of neighbours' places between dark and bright at which the pair term is one unit.
const BRIGHTNESS_STEP: f64 = 0.5;
/// What a unit of the pair term costs, in units of ln desirability.
const PAIR_WEIGHT: f64 = 0.15;

/// A set: one candidate a string, as indices into the shortlists.
#[derive(Clone, Debug, PartialEq)]
pub struct Choice {
    /// The candidates, highest string first.
    pub strings: Vec<Candidate>,
    /// Sum of scores and pair terms, over the number of strings.
    pub worth: f64,
    /// The pair terms, from the highest pair down.
    pub pairs: Vec<f64>,
}

/// The outcome of a choice.
#[derive(Clone, Debug, PartialEq)]
pub enum Outcome {
    /// The best set, and the best one in which some string is of another family, if there is one.
    Set {
        /// The best set.
        best: Choice,
        /// The best set with another family somewhere.
        runner_up: Option<Choice>,
    },
    /// Nothing fits.
    Nothing(Vec<Obstacle>),
}

/// What stands in the way when nothing fits.
#[derive(Clone, Debug, PartialEq)]
pub enum Obstacle {
    /// A string for which no construction is left: its index, and what left most of them out.
    String {
        /// Which string, 0 the highest.
        index: usize,
        /// Limits that left constructions out, the most active first.
        limits: Vec<(Exclusion, usize)>,
    },
    /// The lightest set there is, in newtons, still exceeds the largest load.
    Load {
        /// Total tension of the lightest set.
        lightest: f64,
        /// Largest total tension.
        most: f64,
    },
}

/// The best candidates of each kind, then the best of all, in falling order of score.
#[must_use]
pub fn shortlist(found: &Found) -> Vec<Candidate> {
    let mut order: Vec<(f64, usize)> =
        found.candidates.iter().enumerate().map(|(i, c)| (c.score, i)).collect();
    order.sort_unstable_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(&b.1)));
    // A tension class is four newtons wide: neighbours' steps are judged in tenths.
    let kind = |c: &Candidate| {
        (
            c.family,
            c.construction.core.material.key,
            c.construction.outer_winding().map(|w| w.metal.key),
            (c.tension / 4.0).round() as i64,
        )
    };
    let mut kinds: BTreeMap<(Family, &str, Option<&str>, i64), usize> = BTreeMap::new();
    let mut families: BTreeMap<Family, usize> = BTreeMap::new();
    let mut list: Vec<Candidate> = Vec::new();
    for c in order.into_iter().map(|(_, i)| &found.candidates[i]) {
        let of_family = families.entry(c.family).or_default();
        if list.len() >= SHORTLIST && *of_family >= OF_A_FAMILY {
            continue;
        }
        let of_kind = kinds.entry(kind(c)).or_default();
        if *of_kind < OF_A_KIND {
            *of_kind += 1;
            *of_family += 1;
            list.push(c.clone());
        }
    }
    lighten(found, &mut list);
    list.sort_by(|a, b| b.score.total_cmp(&a.score));
    list
}

/// Adds the lightest candidate, so that a set under the load limit is found if there is one.
fn lighten(found: &Found, list: &mut Vec<Candidate>) {
    if let Some(lightest) = found.candidates.iter().min_by(|a, b| a.tension.total_cmp(&b.tension))
        && !list.contains(lightest)
    {
        list.push(lightest.clone());
    }
}

/// The usual ratio of two neighbours' tensions.
#[must_use]
pub fn usual_step(above: &StringProblem, below: &StringProblem) -> f64 {
    let middle = |s: &StringProblem| (s.usual_tension.0 + s.usual_tension.1) / 2.0;
    middle(above) / middle(below)
}

/// The term for two neighbours: how far their steps in tension and brightness depart from the usual ones.
///
/// Core kind carries no penalty of its own.
#[must_use]
pub fn pair(
    upper: &Candidate,
    lower: &Candidate,
    above: &StringProblem,
    below: &StringProblem,
) -> f64 {
    // Of a string that is not judged it is not known what it is, nor what it is to its neighbours.
    if [above, below].iter().any(|string| string.standing == Standing::NotJudged) {
        return 0.0;
    }
    let usual = libm::log(usual_step(above, below));
    let step = (libm::log(upper.tension / lower.tension) - usual) / libm::log(TENSION_STEP);
    let shade = (upper.brightness - lower.brightness) / BRIGHTNESS_STEP;
    -PAIR_WEIGHT * (step * step + shade * shade)
}

struct Search<'a> {
    problem: &'a Problem,
    lists: &'a [Vec<Candidate>],
    /// Best sum of scores from string i down.
    bound: Vec<f64>,
    /// Least sum of tensions from string i down.
    lightest: Vec<f64>,
    /// Families that the set must not all repeat.
    not_all: Option<Vec<Family>>,
    best: Option<(f64, Vec<usize>)>,
    path: Vec<usize>,
}

impl Search<'_> {
    fn descend(&mut self, sum: f64, load: f64, differs: bool) {
        let i = self.path.len();
        if i == self.lists.len() {
            if (differs || self.not_all.is_none())
                && self.best.as_ref().is_none_or(|(worth, _)| sum > *worth)
            {
                self.best = Some((sum, self.path.clone()));
            }
            return;
        }
        let lists = self.lists;
        for (k, c) in lists[i].iter().enumerate() {
            if let Some((worth, _)) = &self.best
                && sum + c.score + self.bound[i + 1] <= *worth
            {
                // Scores fall along the list: no later candidate can do better either.
                break;
            }
            if load + c.tension + self.lightest[i + 1] > self.problem.most_load {
                continue;
            }
            let neighbour = match self.path.last() {
                Some(last) => pair(
                    &lists[i - 1][*last],
                    c,
                    &self.problem.strings[i - 1],
                    &self.problem.strings[i],
                ),
                None => 0.0,
            };
            let other =
                differs || self.not_all.as_ref().is_some_and(|families| families[i] != c.family);
            self.path.push(k);
            self.descend(sum + c.score + neighbour, load + c.tension, other);
            self.path.pop();
        }
    }
}

/// The best set of the shortlists under the load limit; with `not_all`, the best in which some family differs.
#[must_use]
pub fn best(
    problem: &Problem,
    lists: &[Vec<Candidate>],
    not_all: Option<Vec<Family>>,
) -> Option<Choice> {
    let suffix = |value: fn(&[Candidate]) -> f64| {
        let mut sums = vec![0.0; lists.len() + 1];
        for i in (0..lists.len()).rev() {
            sums[i] = sums[i + 1] + value(&lists[i]);
        }
        sums
    };
    let bound = suffix(|list| list.iter().map(|c| c.score).fold(f64::NEG_INFINITY, f64::max));
    let lightest = suffix(|list| list.iter().map(|c| c.tension).fold(f64::INFINITY, f64::min));
    let mut search =
        Search { problem, lists, bound, lightest, not_all, best: None, path: Vec::new() };
    search.descend(0.0, 0.0, false);
    let (sum, path) = search.best?;
    let strings: Vec<Candidate> =
        path.iter().zip(lists).map(|(k, list)| list[*k].clone()).collect();
    let pairs = pairs(problem, &strings);
    Some(Choice { worth: sum / strings.len() as f64, pairs, strings })
}

/// The pair terms of a set, from the highest pair down.
#[must_use]
pub fn pairs(problem: &Problem, strings: &[Candidate]) -> Vec<f64> {
    strings
        .windows(2)
        .zip(problem.strings.windows(2))
        .map(|(c, s)| pair(&c[0], &c[1], &s[0], &s[1]))
        .collect()
}

/// Chooses the set.
#[must_use]
pub fn choose(problem: &Problem, found: &[Found], lists: &[Vec<Candidate>]) -> Outcome {
    let obstacles: Vec<Obstacle> = found
        .iter()
        .enumerate()
        .filter(|(_, f)| f.candidates.is_empty())
        .map(|(index, f)| {
            let mut limits = f.excluded.clone();
            limits.sort_by_key(|limit| core::cmp::Reverse(limit.1));
            Obstacle::String { index, limits }
        })
        .collect();
    if !obstacles.is_empty() {
        return Outcome::Nothing(obstacles);
    }
    match best(problem, lists, None) {
        Some(best_set) => {
            let families = best_set.strings.iter().map(|c| c.family).collect();
            let runner_up = best(problem, lists, Some(families));
            Outcome::Set { best: best_set, runner_up }
        }
        None => {
            let lightest = lists
                .iter()
                .map(|list| list.iter().map(|c| c.tension).fold(f64::INFINITY, f64::min))
                .sum();
            Outcome::Nothing(vec![Obstacle::Load { lightest, most: problem.most_load }])
        }
    }
}
