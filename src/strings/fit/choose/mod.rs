//! Which set is best? The best there is in the whole space, proven as far as the work goes.
//!
//! The worth of a set is the sum of its strings' scores and of a term for every pair of neighbours, never positive,
//! under a limit of total tension. Each string's search leaves out what no better set could hold: a string that
//! scores less than the best of its position by more than the sum of the best scores exceeds the worth of a set already
//! found. If the gap that was searched turns out too narrow for that, it is widened and searched again.
//! Where the load limit decides, tension has a price (a Lagrange multiplier), in the search and in the bound.
//! Over what is left, a branch and bound finds the best set ([`branches`]).
//!
//! Weights are fixed and not normalised. Under a weighted mean, raising one weight would lower what all others count, and
//! a wish could be met worse for being weighted more.
//!
//! All of it counts its work: where the load decides, or weights make everything alike, sets can be nearly equal by the
//! million, and no request may hold up the page for a proof. Where that runs out, the best set met is returned with an upper bound: of every string
//! that was not followed, what it could be worth with the best of all other positions.

mod lists;
mod offer;

use crate::construction::Family;

use super::admission::Exclusion;
use super::branches::{self, DEAREST_NEWTON, Optimum, Wanted};
use super::candidates::{Candidate, Found};
use super::neighbours::{self, Step};
use super::problem::Problem;
use super::search::{Best, Contender, Counts, FAMILIES, Floor, ROUNDING};
use super::work::Work;
use lists::{Lists, Tops, kept_at_first};
use offer::LOOK_STEPS;
pub use offer::{FIRST_GAP, Offer, offers};

/// A set: one candidate a string.
#[derive(Clone, Debug, PartialEq)]
pub struct Choice {
    /// The candidates, highest string first.
    pub strings: Vec<Candidate>,
    /// Sum of scores and pair terms.
    pub worth: f64,
    /// Nothing better can be made; false where the proof took too much work and was given up.
    pub proven: bool,
    /// How much more than this a set can be worth at most: 0 where it is proven, infinite where nothing is known.
    pub gap: f64,
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

/// How far behind the best set the second one is looked for with a proof, in units of the sum of scores; where the
/// load decides, it is told of as it is found. A set further behind is never shown as an equal, and to prove it the
/// best would mean keeping tens of thousands of strings a position.
const REACH: f64 = 0.05;
/// How many strings of a position the second set is chosen from where the load decides.
const NEAR: usize = 200;
/// How many strings of each family are told of.
const TOLD_OF_A_FAMILY: usize = 8;
/// Steps of work that the choice among the positions may take after that: mostly little, but where the load decides, a
/// price has to be found for it, and every core of every position is bounded anew.
const CHOICE_STEPS: u64 = 60_000_000;
/// Rounds in which a set is bettered string by string where the work has run out; the second changes hardly anything.
const ROUNDS: usize = 3;

/// Everything a choice looked at, and what came of it.
pub struct Chosen {
    /// The best of each family, string by string, the best first.
    pub told: Vec<Vec<Candidate>>,
    /// How much was looked at, string by string.
    pub counts: Vec<Counts>,
    /// What came of it.
    pub outcome: Outcome,
    /// How many steps of work it took.
    pub work: u64,
}

/// Chooses the set.
#[must_use]
pub fn choose(problem: &Problem, found: &[Found], fixed: &[Option<Candidate>]) -> Chosen {
    within(problem, found, fixed, LOOK_STEPS, CHOICE_STEPS)
}

/// Chooses the set with so many steps of work for the first look into each position, and for the choice after them.
#[must_use]
pub fn within(
    problem: &Problem,
    found: &[Found],
    fixed: &[Option<Candidate>],
    look: u64,
    choice: u64,
) -> Chosen {
    let offers = offers(problem, fixed);
    let searched = offers.iter().map(|offer| offer.look(look)).collect();
    among_within(problem, found, &offers, searched, choice)
}

/// Chooses the set among `offers`, after the first look into each.
#[must_use]
pub fn among(problem: &Problem, found: &[Found], offers: &[Offer], searched: Vec<Best>) -> Chosen {
    among_within(problem, found, offers, searched, CHOICE_STEPS)
}

fn among_within(
    problem: &Problem,
    found: &[Found],
    offers: &[Offer],
    searched: Vec<Best>,
    steps: u64,
) -> Chosen {
    let looked: u64 = searched.iter().map(|best| best.work).sum();
    let mut work = Work::of(steps);
    let mut lists = Lists::of(0.0, searched);
    let outcome = chosen(problem, found, offers, &mut lists, &mut work);
    let told = told(offers, &lists.of);
    Chosen { told, counts: lists.counts, outcome, work: looked + work.taken() }
}

fn chosen(
    problem: &Problem,
    found: &[Found],
    offers: &[Offer],
    lists: &mut Lists,
    work: &mut Work,
) -> Outcome {
    let obstacles = empty_positions(&lists.of, found);
    if !obstacles.is_empty() {
        return Outcome::Nothing(obstacles);
    }
    let most_load = problem.most_load;
    // No set is worth more than the best strings together, whatever it weighs.
    let most = lists.ceilings().iter().sum::<f64>();
    // A light set to fall back on, should the work run out before a better one is met.
    let mut met = None;
    if lists.load() > most_load {
        let light = Lists::search(offers, DEAREST_NEWTON, |_| Floor::Under(0.0), work);
        let lightest = light.load();
        if lightest > most_load {
            return Outcome::Nothing(vec![Obstacle::Load { lightest, most: most_load }]);
        }
        let found = work.most(|work| affordable(problem, offers, lists, &light, work));
        let first = |_| Floor::Under(FIRST_GAP);
        *lists = work.most(|work| Lists::search(offers, found.price, first, work));
        lists.complete(found.known);
        met = found.met;
    }
    let Some((first, second)) = best_two(problem, offers, lists, met, work) else {
        // At this price the best strings keep to the load together, so there is a set.
        return Outcome::Nothing(Vec::new());
    };
    let choice = |of: Optimum| -> Option<Choice> {
        let strings = of.strings.iter().zip(offers).map(|(c, offer)| offer.candidate(c.recipe));
        let strings = strings.collect::<Option<Vec<Candidate>>>()?;
        let pairs = neighbours::pairs(problem, &strings);
        let gap = of.bound.min(most) - of.worth;
        // Sums in another order differ by their rounding.
        let proven = of.proven || gap < 4.0 * ROUNDING;
        let gap = if proven { 0.0 } else { gap };
        Some(Choice { worth: of.worth, proven, gap, pairs, strings })
    };
    match choice(first) {
        Some(best) => Outcome::Set { best, runner_up: second.and_then(choice) },
        None => Outcome::Nothing(Vec::new()),
    }
}

/// A price of a newton, and what was met on the way to it.
struct Affordable {
    /// The price at which the best strings, each for itself, are light enough together.
    price: f64,
    /// The best strings of every family at any price that was tried, position by position.
    known: Vec<Vec<Contender>>,
    /// The best set of them that is light enough.
    met: Option<Optimum>,
}

/// About the lowest price of a newton at which the best strings are light enough; or, if the work runs out, the lowest
/// that was found to be so.
fn affordable(
    problem: &Problem,
    offers: &[Offer],
    heavy: &Lists,
    light: &Lists,
    work: &mut Work,
) -> Affordable {
    let ends = heavy.best_of_families().into_iter().zip(light.best_of_families());
    let known = ends.map(|(heavy, light)| [heavy, light].concat()).collect();
    let mut found = Affordable { price: DEAREST_NEWTON, known, met: light.tops(problem) };
    let price = branches::cheapest(|price| {
        if work.is_out() {
            return false;
        }
        // What is worth less than a string that is known already need not be looked at.
        let look = |(offer, known): (&Offer, &Vec<Contender>)| {
            offer.better(known, price, Floor::Under(0.0), work)
        };
        let mut near = Lists::of(price, offers.iter().zip(&found.known).map(look).collect());
        for (known, best) in found.known.iter_mut().zip(near.best_of_families()) {
            known.extend(best);
        }
        near.complete(found.known.clone());
        let set = near.tops(problem);
        let is_light = set.is_some();
        if is_light && !work.is_out() {
            found.price = found.price.min(price);
        }
        let worth = |set: &Option<Optimum>| set.as_ref().map_or(f64::NEG_INFINITY, |s| s.worth);
        if worth(&set) > worth(&found.met) {
            found.met = set;
        }
        is_light
    });
    if !work.is_out() {
        found.price = price;
    }
    found
}

/// The best set of all that is made, and the best one with another family somewhere; the search is widened until they
/// are proven, or the work has run out.
fn best_two(
    problem: &Problem,
    offers: &[Offer],
    lists: &mut Lists,
    met: Option<Optimum>,
    work: &mut Work,
) -> Option<(Optimum, Option<Optimum>)> {
    let (most_load, price) = (problem.most_load, lists.price);
    let paid = price * most_load;
    let tops = Tops::of(lists);
    let mut kept: Vec<[f64; FAMILIES]> = tops.of_family.iter().map(kept_at_first).collect();
    let mut known: (Option<f64>, Option<(f64, Vec<Family>)>) = (None, None);
    loop {
        let wanted = Wanted { most_load, price, not_all: None, at_least: known.0 };
        let first = work.half(|work| branches::best(problem, &lists.of, &wanted, work));
        let first = match first {
            Some(first) if first.proven => first,
            other => best_met(problem, lists, [other, met.clone()])?,
        };
        let families: Vec<Family> = first.strings.iter().map(|c| c.family).collect();
        let at_least = known.1.filter(|(_, f)| *f == families).map(|(w, _)| w);
        let other = Wanted { most_load, price, not_all: Some(families.clone()), at_least };
        let second = work.half(|work| {
            if price > 0.0 {
                let near = lists.of.iter().map(|list| list.iter().take(NEAR).copied().collect());
                branches::best(problem, &near.collect::<Vec<_>>(), &other, work)
            } else {
                branches::best(problem, &lists.of, &other, work)
            }
        });
        let worth = first.worth;
        known = (Some(worth), second.as_ref().map(|second| (second.worth, families.clone())));
        // A second set further behind is told of as it is found, without a proof.
        let reach = if price > 0.0 { 0.0 } else { REACH };
        let against =
            second.as_ref().map_or(worth - reach, |second| second.worth.max(worth - reach));
        let needed = tops.floors(worth - paid, against - paid, &families);
        let enough = needed.iter().zip(&kept).zip(&tops.of_family).all(|((needed, kept), best)| {
            (0..FAMILIES).all(|f| needed[f] >= kept[f] - ROUNDING || needed[f] > best[f])
        });
        if enough || !first.proven || work.is_out() {
            let bound = first.bound.max(lists.bound(offers, &kept, paid));
            // Sums in another order differ by their rounding.
            let proven = bound - worth < 4.0 * ROUNDING;
            let bound = if proven { worth } else { bound };
            return Some((Optimum { proven, bound, ..first }, second));
        }
        for (kept, needed) in kept.iter_mut().zip(&needed) {
            for (kept, needed) in kept.iter_mut().zip(needed) {
                *kept = kept.min(*needed);
            }
        }
        let wider = Lists::search(offers, price, |i| Floor::At(kept[i]), work);
        lists.widen(wider);
    }
}

/// The best of some sets and of what is found by bettering the best strings one by one.
fn best_met(problem: &Problem, lists: &Lists, sets: [Option<Optimum>; 2]) -> Option<Optimum> {
    let bettered = lists.tops(problem).map(|set| bettered(problem, lists, set));
    // What a search of the lists said of them holds for whichever set is taken.
    let bound = sets[0].as_ref().map_or(f64::INFINITY, |set| set.bound);
    let all = sets.into_iter().flatten().chain(bettered);
    let best = all.max_by(|a, b| a.worth.total_cmp(&b.worth))?;
    let ceiling = lists.ceilings().iter().sum::<f64>() + lists.price * problem.most_load;
    Some(Optimum { proven: false, bound: bound.min(ceiling).max(best.worth), ..best })
}

/// A set bettered by exchanging one string at a time.
fn bettered(problem: &Problem, lists: &Lists, mut set: Optimum) -> Optimum {
    let steps = Step::all(problem);
    for _ in 0..ROUNDS {
        for (i, list) in lists.of.iter().enumerate() {
            let rest = set.load() - set.strings[i].tension;
            let worth = |c: &Contender| {
                let above = i
                    .checked_sub(1)
                    .map_or(0.0, |u| steps[u].term(set.strings[u].point(), c.point()));
                let below =
                    set.strings.get(i + 1).map_or(0.0, |l| steps[i].term(c.point(), l.point()));
                c.worth(0.0) + above + below
            };
            let light = list.iter().filter(|c| rest + c.tension <= problem.most_load);
            if let Some(best) = light.max_by(|a, b| worth(a).total_cmp(&worth(b))).copied()
                && worth(&best) > worth(&set.strings[i])
            {
                set.strings[i] = best;
            }
        }
    }
    Optimum::of(problem, set.strings)
}

/// The positions at which nothing is left, and what left most of it out.
fn empty_positions(lists: &[Vec<Contender>], found: &[Found]) -> Vec<Obstacle> {
    lists
        .iter()
        .zip(found)
        .enumerate()
        .filter(|(_, (list, _))| list.is_empty())
        .map(|(index, (_, found))| {
            let mut limits = found.excluded.clone();
            limits.sort_by_key(|limit| core::cmp::Reverse(limit.1));
            Obstacle::String { index, limits }
        })
        .collect()
}

/// The best few of each family, with all their numbers.
fn told(offers: &[Offer], lists: &[Vec<Contender>]) -> Vec<Vec<Candidate>> {
    let of_position = |(offer, list): (&Offer, &Vec<Contender>)| {
        let mut of_family = [0_usize; FAMILIES];
        list.iter()
            .filter(|c| {
                let count = &mut of_family[c.family as usize];
                *count += 1;
                *count <= TOLD_OF_A_FAMILY
            })
            .filter_map(|c| offer.candidate(c.recipe))
            .collect()
    };
    offers.iter().zip(lists).map(of_position).collect()
}
