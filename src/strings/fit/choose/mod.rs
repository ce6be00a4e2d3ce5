//! Which set is best? Of every kind of set the best there is in the whole space, proven as far as the work goes; then
//! the kinds are ranked.
//!
//! The worth of a set is the sum of its strings' scores and of a term for every pair of neighbours, never positive,
//! under a limit of total tension; what speaks against its kind ([`kinds`]) is taken off when kinds are ranked. Each
//! string's search leaves out what no better set could hold: a string that scores less than the best of its position
//! by more than the sum of the best scores exceeds the worth of a set of its kind already found. If the gap that was
//! searched turns out too narrow for that, it is widened and searched again.
//! Where the load limit decides, tension has a price (a Lagrange multiplier), in the search and in the bound.
//! Over what is left, a branch and bound finds the best set ([`branches`]).
//!
//! Weights are fixed and not normalised. Under a weighted mean, raising one weight would lower what all others count, and
//! a wish could be met worse for being weighted more.
//!
//! All of it counts its work: where the load decides, or weights make everything alike, sets can be nearly equal by the
//! million, and no request may hold up the page for a proof. Where that runs out, the best set met is returned with an
//! upper bound: of every string that was not followed, what it could be worth with the best of all other positions.
//!
//! [`kinds`]: super::kinds

mod lists;
mod offer;

use crate::construction::{CoreType, CoreTypes, Family};
use crate::precedent::kinds::SetKind;

use super::admission::Exclusion;
use super::branches::{self, DEAREST_NEWTON, Optimum, Wanted};
use super::candidates::{self, Candidate, Found};
use super::kinds::KindHere;
use super::neighbours::{self, Step};
use super::problem::Problem;
use super::search::{Best, Contender, Counts, Floor, Look, ROUNDING};
use super::work::Work;
use lists::Lists;
use offer::LOOK_STEPS;
pub use offer::{FIRST_GAP, Offer, offers};

/// A set: one candidate a string.
#[derive(Clone, Debug, PartialEq)]
pub struct Choice {
    /// Which kind of set it is: an index into those of the problem.
    pub kind: usize,
    /// The candidates, highest string first.
    pub strings: Vec<Candidate>,
    /// Sum of scores and pair terms.
    pub worth: f64,
    /// What speaks against its kind: never positive.
    pub usual: f64,
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
    /// The best set, and the best of every other kind, the better ones first.
    Set {
        /// The best set.
        best: Choice,
        /// The best set of every other kind of which there is one.
        others: Vec<Choice>,
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

/// A kind of set that is not possible here.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RuledOut {
    /// Which.
    pub kind: &'static SetKind,
    /// At which string, 0 the highest; none where it is the load of all together.
    pub string: Option<usize>,
    /// What left most of its strings out there.
    pub limit: Option<Exclusion>,
}

/// How far behind the best set those of other kinds are looked for with a proof, in units of the sum of scores. A set
/// further behind is never shown as an equal, and to prove it the best would mean keeping tens of thousands of strings
/// a position.
const REACH: f64 = 0.05;
/// How many strings of each family are told of.
const TOLD_OF_A_FAMILY: usize = 8;
/// Steps of work that the choice among the positions may take after that: mostly little, but where the load decides, a
/// price has to be found for it, and every core of every position is bounded anew.
const CHOICE_STEPS: u64 = 25_000_000;
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
    /// The kinds of set of which nothing is possible, though each of its cores is made.
    pub ruled_out: Vec<RuledOut>,
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
    let lists = Lists::of(0.0, FIRST_GAP, searched);
    let mut choosing = Choosing { problem, offers, lists, best: None, ruled_out: Vec::new() };
    let outcome = choosing.outcome(found, &mut work);
    let told = told(offers, &choosing.lists.of);
    let Choosing { lists, ruled_out, .. } = choosing;
    Chosen { told, counts: lists.counts, outcome, ruled_out, work: looked + work.taken() }
}

/// A choice on its way through the kinds.
struct Choosing<'a, 'b> {
    problem: &'a Problem,
    offers: &'a [Offer<'b>],
    /// The strings that count where tension costs nothing.
    lists: Lists,
    /// The most that a set of those met is worth, what speaks against its kind taken off.
    best: Option<f64>,
    ruled_out: Vec<RuledOut>,
}

impl Choosing<'_, '_> {
    fn outcome(&mut self, found: &[Found], work: &mut Work) -> Outcome {
        let problem = self.problem;
        let obstacles = empty_positions(&self.lists.of, found);
        if !obstacles.is_empty() {
            return Outcome::Nothing(obstacles);
        }
        // The most promising first: what the others have to come near is known soon.
        let mut kinds: Vec<(f64, usize)> = Vec::new();
        for (k, here) in problem.kinds.iter().enumerate() {
            let tops = self.lists.of_cores(&here.cores).ceilings();
            kinds.push((tops.iter().sum::<f64>() + here.term, k));
        }
        kinds.sort_by(|a, b| b.0.total_cmp(&a.0));
        let (mut sets, mut obstacles) = (Vec::new(), Vec::new());
        for (most, k) in kinds {
            match work.half(|work| self.best_of_kind(&problem.kinds[k], found, work)) {
                Ok(set) => {
                    let total = set.worth + problem.kinds[k].term;
                    self.best = Some(self.best.map_or(total, |best| best.max(total)));
                    sets.extend(self.choice(set, k, most - problem.kinds[k].term));
                }
                Err(obstacle) => {
                    self.rule_out(&problem.kinds[k], obstacle.as_ref());
                    obstacles.extend(obstacle);
                }
            }
        }
        sets.sort_by(|a, b| b.total().total_cmp(&a.total()));
        if sets.is_empty() {
            return Outcome::Nothing(obstacles.into_iter().take(1).collect());
        }
        let mut best = sets.remove(0);
        // Another kind may hold a better set that was not met.
        let most = sets.iter().map(|set| set.total() + set.gap).fold(f64::NEG_INFINITY, f64::max);
        best.gap = best.gap.max(most - best.total());
        best.proven = best.gap < 4.0 * ROUNDING;
        if best.proven {
            best.gap = 0.0;
        }
        Outcome::Set { best, others: sets }
    }

    fn rule_out(&mut self, here: &KindHere, obstacle: Option<&Obstacle>) {
        let (string, limit) = match obstacle {
            Some(Obstacle::String { index, .. }) => {
                (Some(*index), self.limit_of(*index, here.cores[*index]))
            }
            Some(Obstacle::Load { .. }) | None => (None, None),
        };
        self.ruled_out.push(RuledOut { kind: here.kind, string, limit });
    }

    /// What leaves out most strings of these core types at a position.
    fn limit_of(&self, i: usize, cores: CoreTypes) -> Option<Exclusion> {
        let core = CoreType::ALL.iter().find(|core| cores.has(**core))?;
        let mut string = self.problem.strings[i].clone();
        string.family = Some(core.family());
        let excluded = candidates::look(self.problem, &string).excluded;
        let of_family = excluded.into_iter().filter(|(limit, _)| *limit != Exclusion::OtherFamily);
        of_family.max_by_key(|(_, count)| *count).map(|(limit, _)| limit)
    }

    /// The best set of a kind, or what stands in its way.
    fn best_of_kind(
        &mut self,
        here: &KindHere,
        found: &[Found],
        work: &mut Work,
    ) -> Result<Optimum, Option<Obstacle>> {
        let (problem, offers, cores) = (self.problem, self.offers, here.cores.as_slice());
        let free = self.lists.of_cores(cores);
        let mut obstacles = empty_positions(&free.of, found);
        if !obstacles.is_empty() {
            return Err(Some(obstacles.remove(0)));
        }
        if free.load() <= problem.most_load {
            // To fall back on, should a search that is widened not come to an end.
            let met = free.tops(problem);
            return self.proven(here, free, met, work).ok_or(None);
        }
        let most = problem.most_load;
        // A light set to fall back on, should the work run out before a better one is met.
        let light = Lists::search(offers, DEAREST_NEWTON, 0.0, cores, work);
        let lightest = light.load();
        if lightest > most {
            return Err(Some(Obstacle::Load { lightest, most }));
        }
        let found = work.most(|work| affordable(problem, offers, cores, &free, &light, work));
        let mut lists =
            work.most(|work| Lists::search(offers, found.price, FIRST_GAP, cores, work));
        lists.complete(found.known);
        // At this price the best strings keep to the load together, so there is a set.
        self.proven(here, lists, found.met, work).ok_or(None)
    }

    /// The best set of a kind, whose lists these are; the search is widened until it is proven, lies too far behind, or the
    /// work has run out.
    fn proven(
        &mut self,
        here: &KindHere,
        mut lists: Lists,
        met: Option<Optimum>,
        work: &mut Work,
    ) -> Option<Optimum> {
        let (problem, offers, cores) = (self.problem, self.offers, here.cores.as_slice());
        let mut at_least = None;
        loop {
            let (most_load, price) = (problem.most_load, lists.price);
            let paid = price * most_load;
            let wanted = Wanted { most_load, price, at_least };
            let first = work.half(|work| branches::best(problem, &lists.of, &wanted, work));
            let first = match first {
                Some(first) if first.proven => first,
                other => best_met(problem, &lists, [other, met.clone()])?,
            };
            let worth = first.worth;
            at_least = Some(worth);
            // What lies further behind the best of all is told of as it is found.
            let near = self.best.map_or(worth, |best| worth.max(best - REACH - here.term));
            let needed = lists.needed(near - paid);
            if lists.has_all(&needed, cores) || !first.proven || work.is_out() {
                let bound = first.bound.max(lists.bound(offers, cores, paid));
                // Sums in another order differ by their rounding.
                let proven = bound - worth < 4.0 * ROUNDING;
                let bound = if proven { worth } else { bound };
                return Some(Optimum { proven, bound, ..first });
            }
            if price > 0.0 {
                lists.widen(offers, &needed, cores, work);
            } else {
                // What is found where tension costs nothing serves the other kinds too.
                self.lists.widen(offers, &needed, cores, work);
                lists = self.lists.of_cores(cores);
            }
        }
    }

    fn choice(&self, of: Optimum, kind: usize, most: f64) -> Option<Choice> {
        let strings =
            of.strings.iter().zip(self.offers).map(|(c, offer)| offer.candidate(c.recipe));
        let strings = strings.collect::<Option<Vec<Candidate>>>()?;
        let pairs = neighbours::pairs(self.problem, &strings);
        // No set is worth more than the best strings together, whatever it weighs.
        let gap = of.bound.min(most) - of.worth;
        // Sums in another order differ by their rounding.
        let proven = of.proven || gap < 4.0 * ROUNDING;
        let gap = if proven { 0.0 } else { gap };
        let usual = self.problem.kinds[kind].term;
        Some(Choice { kind, worth: of.worth, usual, proven, gap, pairs, strings })
    }
}

/// Of the best sets of other kinds, the one to weigh the best against: the first that has another family somewhere. Kinds
/// that differ only in their polymer are hardly told apart by what a shop calls them.
#[must_use]
pub fn rather_than<'a>(best: &Choice, others: &'a [Choice]) -> Option<&'a Choice> {
    let families = |set: &Choice| set.strings.iter().map(|c| c.family).collect::<Vec<_>>();
    others.iter().find(|other| families(other) != families(best))
}

impl Choice {
    /// What it is worth among sets of other kinds.
    #[must_use]
    pub fn total(&self) -> f64 {
        self.worth + self.usual
    }
}

/// A price of a newton, and what was met on the way to it.
struct Affordable {
    /// The price at which the best strings, each for itself, are light enough together.
    price: f64,
    /// The best strings at any price that was tried, position by position.
    known: Vec<Vec<Contender>>,
    /// The best set of them that is light enough.
    met: Option<Optimum>,
}

/// About the lowest price of a newton at which the best strings are light enough; or, if the work runs out, the lowest
/// that was found to be so.
fn affordable(
    problem: &Problem,
    offers: &[Offer],
    cores: &[CoreTypes],
    heavy: &Lists,
    light: &Lists,
    work: &mut Work,
) -> Affordable {
    let ends = heavy.best_strings().into_iter().zip(light.best_strings());
    let known = ends.map(|(heavy, light)| vec![heavy, light]).collect();
    let mut found = Affordable { price: DEAREST_NEWTON, known, met: light.tops(problem) };
    let price = branches::cheapest(|price| {
        if work.is_out() {
            return false;
        }
        // What is worth less than a string that is known already need not be looked at.
        let look = |((offer, known), cores): ((&Offer, &Vec<Contender>), &CoreTypes)| {
            offer.better(known, &Look { price, floor: Floor::Under(0.0), cores: *cores }, work)
        };
        let looks = offers.iter().zip(&found.known).zip(cores).map(look).collect();
        let mut near = Lists::of(price, 0.0, looks);
        for (known, best) in found.known.iter_mut().zip(near.best_strings()) {
            known.push(best);
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
        let mut of_family = [0_usize; Family::ALL.len()];
        list.iter()
            .filter(|c| {
                let count = &mut of_family[c.family() as usize];
                *count += 1;
                *count <= TOLD_OF_A_FAMILY
            })
            .filter_map(|c| offer.candidate(c.recipe))
            .collect()
    };
    offers.iter().zip(lists).map(of_position).collect()
}
