//! How sure is the choice? In how many worlds it stays the best.
//!
//! A world is one draw of all constants together with one scenario of what the answers could have meant, the same for every
//! string in it. In each the best set of the finalists is found anew, exactly; counted is which families and gauge
//! classes are in it. Worlds that share a scenario belong together: the error of a share is taken from scenario to scenario.

use crate::construction::Family;

use super::Fitting;
use super::answers::{Answers, GaugeClass};
use super::choose::Choice;
use super::finalists::Finalists;
use super::problem::Problem;
use super::scenarios;
use super::score::DRAWS;
use super::work::Work;

/// How many scenarios there are; each is combined with [`DRAWS`] draws of the constants. Twice as many take twice
/// as long and make the error of a share smaller by a third.
pub const SCENARIOS: u64 = 64;
/// Steps of work that the worlds may take: some ten times the usual.
pub const STEPS: u64 = 100_000_000;
/// Share from which on something is very likely.
pub const VERY_LIKELY: f64 = 0.85;
/// Share from which on it is likely; under it the call is close.
pub const LIKELY: f64 = 0.65;

words! {
    /// How sure something is, in a word.
    Sureness {
        /// From 85 in 100 on.
        VeryLikely = "very-likely",
        /// From 65 in 100 on.
        Likely = "likely",
        /// Under 65 in 100.
        CloseCall = "close-call",
    }
}

impl Sureness {
    /// The word for a share.
    #[must_use]
    pub fn of(share: f64) -> Self {
        if share >= VERY_LIKELY {
            Self::VeryLikely
        } else if share >= LIKELY {
            Self::Likely
        } else {
            Self::CloseCall
        }
    }
}

/// A share of the worlds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Share {
    /// The share, 0 to 1.
    pub share: f64,
    /// Its standard error, from scenario to scenario.
    pub error: f64,
}

/// What stands at a position, in what share of the worlds.
#[derive(Clone, Debug, PartialEq)]
pub struct OfString {
    /// Every family that is in a best set, the most frequent first.
    pub families: Vec<(Family, Share)>,
    /// The gauge classes, in the order of showing.
    pub classes: Vec<(GaugeClass, Share)>,
}

/// How sure the choice is.
#[derive(Clone, Debug, PartialEq)]
pub struct Certainty {
    /// How many worlds were looked at.
    pub worlds: usize,
    /// Share in which every string is of the chosen family.
    pub chosen: Share,
    /// Share in which the families are those of the second set.
    pub second: Share,
    /// The families most often best after the chosen ones, with their share.
    pub next: Option<(Vec<Family>, Share)>,
    /// String by string.
    pub strings: Vec<OfString>,
}

/// What is drawn: how many scenarios, or nothing at all.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Drawing {
    /// Constants and answers, in that many scenarios.
    Scenarios(u64),
    /// Nothing: the answers as taken, and the draws by which the set was chosen.
    Nothing,
}

/// The problem in every scenario.
#[must_use]
pub fn drawn(answers: &Answers, fitting: &Fitting, drawing: Drawing) -> Vec<Problem> {
    match drawing {
        Drawing::Scenarios(count) => {
            (0..count).map(|index| scenarios::meant(answers, &fitting.problem, index)).collect()
        }
        Drawing::Nothing => vec![fitting.problem.clone()],
    }
}

/// How sure the choice of a fitting is, over the scenarios that [`drawn`] gives. Where the work runs out, the later
/// ones are left out, and the errors of the shares say so.
#[must_use]
pub fn of(
    finalists: &Finalists,
    best: &Choice,
    second: Option<&Choice>,
    scenarios: &[Problem],
    drawing: Drawing,
    work: &mut Work,
) -> Certainty {
    let winners = winners(finalists, scenarios, drawing, work);
    let share = |is: &dyn Fn(&[usize]) -> bool| share(&winners, is);
    let families =
        |choice: &Choice| -> Vec<Family> { choice.strings.iter().map(|c| c.family).collect() };
    let chosen = families(best);
    let is_of = |families: &[Family]| {
        let families = families.to_vec();
        move |set: &[usize]| finalists.families(set) == families
    };
    let mut met: Vec<Vec<Family>> = Vec::new();
    for set in winners.iter().flatten() {
        let families = finalists.families(set);
        if families != chosen && !met.contains(&families) {
            met.push(families);
        }
    }
    let next = met
        .into_iter()
        .map(|families| (share(&is_of(&families)), families))
        .reduce(|most, other| if other.0.share > most.0.share { other } else { most })
        .map(|(share, families)| (families, share));
    let strings = (0..finalists.lists.len())
        .map(|i| {
            let list = &finalists.lists[i];
            let mut of: Vec<(Family, Share)> = Family::ALL
                .iter()
                .map(|f| (*f, share(&|set: &[usize]| list.strings[set[i]].family == *f)))
                .filter(|(_, share)| share.share > 0.0)
                .collect();
            of.sort_by(|a, b| b.1.share.total_cmp(&a.1.share));
            let classes = GaugeClass::ALL
                .iter()
                .map(|c| (*c, share(&|set: &[usize]| list.classes[set[i]] == *c)))
                .collect();
            OfString { families: of, classes }
        })
        .collect();
    Certainty {
        worlds: winners.iter().map(Vec::len).sum(),
        chosen: share(&is_of(&chosen)),
        second: second.map_or(Share { share: 0.0, error: 0.0 }, |s| share(&is_of(&families(s)))),
        next,
        strings,
    }
}

/// The best set in each draw of the constants, for each scenario.
fn winners(
    finalists: &Finalists,
    scenarios: &[Problem],
    drawing: Drawing,
    work: &mut Work,
) -> Vec<Vec<Vec<usize>>> {
    let most_load = finalists.fitting.problem.most_load;
    scenarios
        .iter()
        .enumerate()
        .map(|(index, problem)| {
            if index > 0 && work.is_out() {
                return Vec::new();
            }
            // The draws by which the set was chosen are not asked again: it was chosen to be good in them.
            let first = match drawing {
                Drawing::Scenarios(_) => (index + 1) * DRAWS,
                Drawing::Nothing => 0,
            };
            let logs = finalists.logs(problem, first as u64, work);
            let worlds = match drawing {
                Drawing::Scenarios(_) => finalists.drawn(&logs, problem),
                Drawing::Nothing => vec![finalists.expected(&logs, problem)],
            };
            worlds
                .iter()
                .filter_map(|scores| finalists.best(scores, &problem.kinds, most_load, work))
                .collect()
        })
        .collect()
}

/// The share of worlds whose best set is so, and its error from scenario to scenario.
fn share(winners: &[Vec<Vec<usize>>], is: &dyn Fn(&[usize]) -> bool) -> Share {
    let of_scenario: Vec<f64> = winners
        .iter()
        .filter(|sets| !sets.is_empty())
        .map(|sets| sets.iter().filter(|set| is(set)).count() as f64 / sets.len() as f64)
        .collect();
    let count = of_scenario.len() as f64;
    if of_scenario.is_empty() {
        return Share { share: 0.0, error: 0.0 };
    }
    let share = of_scenario.iter().sum::<f64>() / count;
    let squares: f64 = of_scenario.iter().map(|x| (x - share) * (x - share)).sum();
    let error =
        if of_scenario.len() > 1 { (squares / (count * (count - 1.0))).sqrt() } else { 0.0 };
    Share { share, error }
}
