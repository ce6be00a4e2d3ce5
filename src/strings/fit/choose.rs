//! Which set is best? The best there is in the whole space, proven.
//!
//! The worth of a set is the sum of its strings' scores and of a term for every pair of neighbours, never positive,
//! under a limit of total tension. Each string's search leaves out what no better set could hold: a string that
//! scores less than the best of its place by more than the sum of the best scores exceeds the worth of a set already
//! found. If the gap that was searched turns out too narrow for that, it is widened and searched again.
//! Where the load limit decides, tension has a price (a multiplier of Lagrange), in the search and in the bound.
//! Over what is left, the best completion of every string is computed from the lowest string up, and a branch and
//! bound follows the best completions first: exact, with the load carried as it is.

use core::cell::OnceCell;

use crate::construction::Family;

use super::candidates::{Candidate, Exclusion, Found};
use super::problem::{Problem, Standing, StringProblem};
use super::search::{Best, Contender, Counts, FAMILIES, Floor, ROUNDING, Recipe, SPAN, Space};

/// Ratio of neighbours' tensions, against the usual one, at which the pair term is one unit.
const TENSION_STEP: f64 = 1.30;
/// Difference of neighbours' places between dark and bright at which the pair term is one unit.
const BRIGHTNESS_STEP: f64 = 0.5;
/// What a unit of the pair term costs, in units of ln desirability.
const PAIR_WEIGHT: f64 = 0.15;

/// A set: one candidate a string.
#[derive(Clone, Debug, PartialEq)]
pub struct Choice {
    /// The candidates, highest string first.
    pub strings: Vec<Candidate>,
    /// Sum of scores and pair terms.
    pub worth: f64,
    /// Nothing better can be made; false where the proof took too long and was given up.
    pub proven: bool,
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

/// What a neighbour notices of a string.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Beside {
    /// Its tension, newtons.
    pub tension: f64,
    /// Where between dark (0) and bright (1) it lies.
    pub brightness: f64,
}

impl From<&Candidate> for Beside {
    fn from(c: &Candidate) -> Self {
        Self { tension: c.tension, brightness: c.brightness }
    }
}

impl From<&Contender> for Beside {
    fn from(c: &Contender) -> Self {
        Self { tension: c.tension, brightness: c.brightness }
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
pub fn pair(upper: Beside, lower: Beside, above: &StringProblem, below: &StringProblem) -> f64 {
    // Of a string that is not judged it is not known what it is, nor what it is to its neighbours.
    if [above, below].iter().any(|string| string.standing == Standing::NotJudged) {
        return 0.0;
    }
    let usual = libm::log(usual_step(above, below));
    let step = (libm::log(upper.tension / lower.tension) - usual) / libm::log(TENSION_STEP);
    let usual_shade = above.usual_brightness - below.usual_brightness;
    let shade = (upper.brightness - lower.brightness - usual_shade) / BRIGHTNESS_STEP;
    -PAIR_WEIGHT * (step * step + shade * shade)
}

/// How far under the best of its family a string is kept before a set is known.
pub const FIRST_GAP: f64 = 0.016;
/// How far behind the best set the second one is looked for with a proof, in units of the sum of scores; where the
/// load decides, it is told of as it is found.
const REACH: f64 = 0.05;
/// Steps after which a search for the best set of the lists gives up its proof.
const MOST_STEPS: u64 = 1_000_000;
/// How many strings of a place the second set is chosen from where the load decides.
const NEAR: usize = 200;
/// Price of a newton, in units of score, above which nothing but lightness would count.
const DEAREST_NEWTON: f64 = 4.0;
/// Where a search for the price begins.
const USUAL_PRICE: f64 = 4.0 / 1024.0;
/// Halvings by which the price of a newton is found within a factor of two.
const HALVINGS: u32 = 3;
/// How many strings of each family are told of.
const TOLD_OF_A_FAMILY: usize = 8;

/// What may be asked of a set beside its worth.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Wanted {
    /// Largest total tension, newtons.
    pub most_load: f64,
    /// Families that the set must not all repeat.
    pub not_all: Option<Vec<Family>>,
    /// Price of a newton in the bound where the load decides: any is right, a good one is quick.
    pub price: f64,
    /// A worth that is known to be reached; what cannot reach it is not followed.
    pub at_least: Option<f64>,
}

/// Where the set must still differ, or not.
const FREE: usize = 0;
const MUST_DIFFER: usize = 1;

/// Sums and loads with which a string was reached, none of them beaten by another.
type Reached = Vec<(f64, f64)>;

struct Branches<'a> {
    problem: &'a Problem,
    lists: &'a [Vec<Contender>],
    wanted: &'a Wanted,
    /// Price of a newton in the bound: any is right, a good one is quick.
    price: f64,
    /// For every place and both ways: each string with the most that it and all below it can be worth, best first.
    most: Vec<[Vec<(f64, usize)>; 2]>,
    lightest: Vec<f64>,
    /// For every string and both ways: sums and loads with which it was reached.
    reached: Vec<Vec<[Reached; 2]>>,
    best: Option<(f64, Vec<usize>)>,
    path: Vec<usize>,
    /// How many steps may still be tried.
    steps: u64,
}

impl<'a> Branches<'a> {
    fn new(
        problem: &'a Problem,
        lists: &'a [Vec<Contender>],
        wanted: &'a Wanted,
        price: f64,
    ) -> Self {
        let count = lists.len();
        let mut most: Vec<[Vec<(f64, usize)>; 2]> = vec![[Vec::new(), Vec::new()]; count];
        let mut lightest = vec![0.0; count + 1];
        let own = |c: &Contender| c.score - price * c.tension;
        let mut above = vec![0.0; count];
        for i in 1..count {
            let top = lists[i - 1].iter().map(own).fold(f64::NEG_INFINITY, f64::max);
            above[i] = above[i - 1] + top;
        }
        let paid = if price > 0.0 { price * wanted.most_load } else { 0.0 };
        let needed = wanted.at_least.map_or(f64::NEG_INFINITY, |worth| worth - paid - ROUNDING);
        for i in (0..count).rev() {
            let least = lists[i].iter().map(|c| c.tension).fold(f64::INFINITY, f64::min);
            lightest[i] = lightest[i + 1] + least;
            let mut ways = [Vec::new(), Vec::new()];
            for (k, c) in lists[i].iter().enumerate() {
                let own = own(c);
                // What lies under this could not reach what is needed, whatever stands above.
                let least = needed - above[i] - own;
                let differs = wanted.not_all.as_ref().is_some_and(|f| f[i] != c.family);
                for (way, list) in ways.iter_mut().enumerate() {
                    let rest = if way == MUST_DIFFER && !differs { MUST_DIFFER } else { FREE };
                    let below = if i + 1 == count {
                        if rest == FREE { 0.0 } else { continue }
                    } else {
                        let mut best = least;
                        for (worth, below) in &most[i + 1][rest] {
                            // No term of a pair is positive, so what follows cannot do better.
                            if *worth <= best {
                                break;
                            }
                            let lower = &lists[i + 1][*below];
                            let with = pair(
                                c.into(),
                                lower.into(),
                                &problem.strings[i],
                                &problem.strings[i + 1],
                            );
                            best = best.max(worth + with);
                        }
                        if best <= least {
                            continue;
                        }
                        best
                    };
                    if below >= least {
                        list.push((own + below, k));
                    }
                }
            }
            for list in &mut ways {
                list.sort_by(|a, b| b.0.total_cmp(&a.0));
            }
            most[i] = ways;
        }
        let reached = lists.iter().map(|list| vec![[Vec::new(), Vec::new()]; list.len()]).collect();
        Self {
            problem,
            lists,
            wanted,
            price,
            most,
            lightest,
            reached,
            best: None,
            path: Vec::new(),
            steps: MOST_STEPS,
        }
    }

    /// Whether a string was reached before with no smaller sum and no larger load; if not, it has been now.
    fn is_beaten(&mut self, place: usize, k: usize, way: usize, sum: f64, load: f64) -> bool {
        let reached = &mut self.reached[place][k][way];
        if reached.iter().any(|(s, l)| *s >= sum && *l <= load) {
            return true;
        }
        reached.retain(|(s, l)| !(*s <= sum && *l >= load));
        reached.push((sum, load));
        false
    }

    fn descend(&mut self, sum: f64, load: f64, way: usize) {
        let i = self.path.len();
        if i == self.lists.len() {
            if way == FREE && self.best.as_ref().is_none_or(|(worth, _)| sum > *worth) {
                self.best = Some((sum, self.path.clone()));
            }
            return;
        }
        // At no price an open load is worth nothing.
        let left = if self.price > 0.0 { self.price * (self.wanted.most_load - load) } else { 0.0 };
        for n in 0..self.most[i][way].len() {
            let (most, k) = self.most[i][way][n];
            let worth = self.best.as_ref().map_or(f64::NEG_INFINITY, |(worth, _)| *worth);
            if sum + most + left <= worth || self.steps == 0 {
                break;
            }
            self.steps -= 1;
            let c = &self.lists[i][k];
            if load + c.tension + self.lightest[i + 1] > self.wanted.most_load {
                continue;
            }
            let neighbour = self.path.last().map_or(0.0, |last| {
                let upper = &self.lists[i - 1][*last];
                pair(upper.into(), c.into(), &self.problem.strings[i - 1], &self.problem.strings[i])
            });
            if sum + neighbour + most + left <= worth {
                continue;
            }
            let differs = self.wanted.not_all.as_ref().is_some_and(|f| f[i] != c.family);
            let rest = if way == MUST_DIFFER && !differs { MUST_DIFFER } else { FREE };
            let (sum, load) = (sum + c.score + neighbour, load + c.tension);
            if self.is_beaten(i, k, rest, sum, load) {
                continue;
            }
            self.path.push(k);
            self.descend(sum, load, rest);
            self.path.pop();
        }
    }
}

/// Total tension of the set that is worth most where a newton costs so much and no load is too large.
fn free_load(
    problem: &Problem,
    lists: &[Vec<Contender>],
    wanted: &Wanted,
    way: usize,
    price: f64,
) -> f64 {
    let open = Wanted { most_load: f64::INFINITY, at_least: None, ..wanted.clone() };
    let paid: Vec<Vec<Contender>> = lists
        .iter()
        .map(|list| {
            list.iter().map(|c| Contender { score: c.score - price * c.tension, ..*c }).collect()
        })
        .collect();
    let mut free = Branches::new(problem, &paid, &open, 0.0);
    free.descend(0.0, 0.0, way);
    let path = free.best.map(|(_, path)| path).unwrap_or_default();
    path.iter().zip(lists).map(|(k, list)| list[*k].tension).sum()
}

/// The best set of some lists.
#[derive(Clone, Debug, PartialEq)]
pub struct Optimum {
    /// Sum of scores and pair terms.
    pub worth: f64,
    /// Its strings, the highest first.
    pub strings: Vec<Contender>,
    /// Nothing better is in the lists; false where the proof took too long and was given up.
    pub proven: bool,
}

/// The best set of the lists, as wanted, and its worth; exact over them but where it says that the proof was given up.
#[must_use]
pub fn best(problem: &Problem, lists: &[Vec<Contender>], wanted: &Wanted) -> Option<Optimum> {
    let way = if wanted.not_all.is_some() { MUST_DIFFER } else { FREE };
    let open = Wanted { most_load: f64::INFINITY, ..wanted.clone() };
    let mut free = Branches::new(problem, lists, &open, 0.0);
    free.descend(0.0, 0.0, way);
    let (worth, path) = free.best?;
    let chosen = |path: &[usize]| -> Vec<Contender> {
        path.iter().zip(lists).map(|(k, list)| list[*k]).collect()
    };
    let strings = chosen(&path);
    if strings.iter().map(|c| c.tension).sum::<f64>() <= wanted.most_load {
        return Some(Optimum { worth, strings, proven: true });
    }
    let price = if wanted.price > 0.0 {
        wanted.price
    } else {
        cheapest(|price| free_load(problem, lists, wanted, way, price) <= wanted.most_load)
    };
    let mut branches = Branches::new(problem, lists, wanted, price);
    branches.descend(0.0, 0.0, way);
    let proven = branches.steps > 0;
    let (worth, path) = branches.best?;
    Some(Optimum { worth, strings: chosen(&path), proven })
}

/// The pair terms of a set, from the highest pair down.
#[must_use]
pub fn pairs(problem: &Problem, strings: &[Candidate]) -> Vec<f64> {
    strings
        .windows(2)
        .zip(problem.strings.windows(2))
        .map(|(c, s)| pair((&c[0]).into(), (&c[1]).into(), &s[0], &s[1]))
        .collect()
}

/// What a place offers: everything that can be made for it, or the one string that stays.
pub struct Spot<'a> {
    problem: &'a Problem,
    string: &'a StringProblem,
    fixed: Option<&'a Candidate>,
    /// What can be made, laid out when it is first asked for.
    space: OnceCell<Box<Space<'a>>>,
}

impl<'a> Spot<'a> {
    /// The first search of it, before a set is known.
    #[must_use]
    pub fn first_look(&self) -> Best {
        self.best(0.0, Floor::Under(FIRST_GAP))
    }

    fn best(&self, price: f64, floor: Floor) -> Best {
        match self.fixed {
            Some(there) => Best { contenders: vec![there.into()], counts: Counts::default() },
            None => self.space().best(price, floor),
        }
    }

    fn candidate(&self, recipe: Recipe) -> Option<Candidate> {
        match self.fixed {
            Some(there) => Some(there.clone()),
            None => self.space().candidate(recipe),
        }
    }

    fn space(&self) -> &Space<'a> {
        self.space.get_or_init(|| Box::new(Space::new(self.problem, self.string)))
    }
}

/// What each place offers, where some strings stay.
#[must_use]
pub fn spots<'a>(problem: &'a Problem, fixed: &'a [Option<Candidate>]) -> Vec<Spot<'a>> {
    let spot = |(string, fixed): (&'a StringProblem, &'a Option<Candidate>)| Spot {
        problem,
        string,
        fixed: fixed.as_ref(),
        space: OnceCell::new(),
    };
    problem.strings.iter().zip(fixed).map(spot).collect()
}

/// Everything a choice looked at, and what came of it.
pub struct Chosen {
    /// The best of each family, string by string, the best first.
    pub told: Vec<Vec<Candidate>>,
    /// How much was looked at, string by string.
    pub counts: Vec<Counts>,
    /// What came of it.
    pub outcome: Outcome,
}

/// Chooses the set.
#[must_use]
pub fn choose(problem: &Problem, found: &[Found], fixed: &[Option<Candidate>]) -> Chosen {
    let spots = spots(problem, fixed);
    let searched = spots.iter().map(Spot::first_look).collect();
    among(problem, found, &spots, searched)
}

/// Chooses the set among `spots`, after the first look into each.
#[must_use]
pub fn among(problem: &Problem, found: &[Found], spots: &[Spot], searched: Vec<Best>) -> Chosen {
    let split = |all: Vec<Best>| -> (Vec<Vec<Contender>>, Vec<Counts>) {
        all.into_iter().map(|best| (best.contenders, best.counts)).unzip()
    };
    let search = |price: f64, floors: &dyn Fn(usize) -> Floor| {
        split(spots.iter().enumerate().map(|(i, spot)| spot.best(price, floors(i))).collect())
    };
    let near = |price: f64, gap: f64| search(price, &|_| Floor::Under(gap));
    let (mut lists, mut counts) = split(searched);
    let obstacles = empty_places(&lists, found);
    if !obstacles.is_empty() {
        return Chosen { told: told(spots, &lists), counts, outcome: Outcome::Nothing(obstacles) };
    }
    let most_load = problem.most_load;
    let mut price = 0.0;
    if load(&lists, price) > most_load {
        let lightest = load(&near(DEAREST_NEWTON, 0.0).0, DEAREST_NEWTON);
        if lightest > most_load {
            let outcome = Outcome::Nothing(vec![Obstacle::Load { lightest, most: most_load }]);
            return Chosen { told: told(spots, &lists), counts, outcome };
        }
        price = cheapest(|price| load(&near(price, 0.0).0, price) <= most_load);
        (lists, counts) = near(price, FIRST_GAP);
    }
    let tops = Tops::of(&lists, price);
    let mut kept: Vec<[f64; FAMILIES]> = tops.of_family.iter().map(kept_at_first).collect();
    let mut known: (Option<f64>, Option<(f64, Vec<Family>)>) = (None, None);
    loop {
        let wanted = Wanted { most_load, price, not_all: None, at_least: known.0 };
        // At this price the best strings keep to the load together, so there is a set.
        let Some(first) = best(problem, &lists, &wanted) else {
            return Chosen {
                told: told(spots, &lists),
                counts,
                outcome: Outcome::Nothing(Vec::new()),
            };
        };
        let (worth, proven) = (first.worth, first.proven);
        let families: Vec<Family> = first.strings.iter().map(|c| c.family).collect();
        let not_all = Some(families.clone());
        let other = Wanted {
            most_load,
            price,
            not_all,
            at_least: known.1.filter(|(_, f)| *f == families).map(|(w, _)| w),
        };
        let second = if price > 0.0 {
            let near: Vec<Vec<Contender>> =
                lists.iter().map(|list| list.iter().take(NEAR).copied().collect()).collect();
            best(problem, &near, &other)
        } else {
            best(problem, &lists, &other)
        };
        known = (Some(worth), second.as_ref().map(|second| (second.worth, families.clone())));
        // A second set further behind is told of as it is found, without a proof.
        let reach = if price > 0.0 { 0.0 } else { REACH };
        let against =
            second.as_ref().map_or(worth - reach, |second| second.worth.max(worth - reach));
        let needed = tops.floors(worth - price * most_load, against - price * most_load, &families);
        let enough = needed.iter().zip(&kept).zip(&tops.of_family).all(|((needed, kept), best)| {
            (0..FAMILIES).all(|f| needed[f] >= kept[f] - ROUNDING || needed[f] > best[f])
        });
        if enough || !proven {
            let choice = |of: Optimum| -> Option<Choice> {
                let strings: Option<Vec<Candidate>> = of
                    .strings
                    .iter()
                    .zip(spots)
                    .map(|(c, spot)| spot.candidate(c.recipe))
                    .collect();
                let strings = strings?;
                let pairs = pairs(problem, &strings);
                Some(Choice { worth: of.worth, proven: of.proven, pairs, strings })
            };
            let outcome = match choice(first) {
                Some(best) => Outcome::Set { best, runner_up: second.and_then(choice) },
                None => Outcome::Nothing(Vec::new()),
            };
            return Chosen { told: told(spots, &lists), counts, outcome };
        }
        for (kept, needed) in kept.iter_mut().zip(&needed) {
            for (kept, needed) in kept.iter_mut().zip(needed) {
                *kept = kept.min(*needed);
            }
        }
        (lists, counts) = search(price, &|i| Floor::At(kept[i]));
    }
}

/// About the lowest price of a newton at which a set is light enough, always on the safe side of it.
fn cheapest(is_light: impl Fn(f64) -> bool) -> f64 {
    let mut dear = USUAL_PRICE;
    while dear < DEAREST_NEWTON && !is_light(dear) {
        dear *= 2.0;
    }
    let mut cheap = dear / 2.0;
    while cheap > USUAL_PRICE / 64.0 && is_light(cheap) {
        (dear, cheap) = (cheap, cheap / 2.0);
    }
    for _ in 0..HALVINGS {
        let between = (cheap * dear).sqrt();
        if is_light(between) { dear = between } else { cheap = between }
    }
    dear
}

/// The places at which nothing is left, and what left most of it out.
fn empty_places(lists: &[Vec<Contender>], found: &[Found]) -> Vec<Obstacle> {
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

/// Total tension of the strings that are best, each for itself, where a newton costs so much.
fn load(lists: &[Vec<Contender>], price: f64) -> f64 {
    let worth = |c: &Contender| c.score - price * c.tension;
    lists
        .iter()
        .filter_map(|list| list.iter().max_by(|a, b| worth(a).total_cmp(&worth(b))))
        .map(|c| c.tension)
        .sum()
}

/// The best of each family at each place, tension paid for.
struct Tops {
    of_family: Vec<[f64; FAMILIES]>,
}

impl Tops {
    fn of(lists: &[Vec<Contender>], price: f64) -> Self {
        let of_list = |list: &Vec<Contender>| {
            let mut best = [f64::NEG_INFINITY; FAMILIES];
            for c in list {
                let best = &mut best[c.family as usize];
                *best = best.max(c.score - price * c.tension);
            }
            // A family of which nothing was kept may lie just under the span.
            let all = best.iter().fold(f64::NEG_INFINITY, |a, b| a.max(*b));
            best.map(|b| b.max(all - SPAN))
        };
        Self { of_family: lists.iter().map(of_list).collect() }
    }

    /// What a string must be worth, at each place and of each family, to be in a set worth more than `first`, or in one
    /// worth more than `second` that is not all of `families`.
    fn floors(&self, first: f64, second: f64, families: &[Family]) -> Vec<[f64; FAMILIES]> {
        let most = |of: &[f64; FAMILIES]| of.iter().fold(f64::NEG_INFINITY, |a, b| a.max(*b));
        let tops: Vec<f64> = self.of_family.iter().map(most).collect();
        // The best of any other family than the chosen one.
        let others: Vec<f64> = self
            .of_family
            .iter()
            .zip(families)
            .map(|(of, chosen)| {
                let mut of = *of;
                of[*chosen as usize] = f64::NEG_INFINITY;
                most(&of)
            })
            .collect();
        let sum: f64 = tops.iter().sum();
        (0..tops.len())
            .map(|i| {
                let rest = sum - tops[i];
                core::array::from_fn(|f| {
                    let to_win = first - rest;
                    let to_be_second = if families[i] as usize == f {
                        let differs = (0..tops.len())
                            .filter(|l| *l != i)
                            .map(|l| rest - tops[l] + others[l])
                            .fold(f64::NEG_INFINITY, f64::max);
                        second - differs
                    } else {
                        second - rest
                    };
                    to_win.min(to_be_second)
                })
            })
            .collect()
    }
}

/// Down to which worth each family was kept at first.
fn kept_at_first(best: &[f64; FAMILIES]) -> [f64; FAMILIES] {
    let all = best.iter().fold(f64::NEG_INFINITY, |a, b| a.max(*b));
    best.map(|b| (b - FIRST_GAP).max(all - SPAN))
}

/// The best few of each family, with all their numbers.
fn told(spots: &[Spot], lists: &[Vec<Contender>]) -> Vec<Vec<Candidate>> {
    let of_place = |(spot, list): (&Spot, &Vec<Contender>)| {
        let mut of_family = [0_usize; FAMILIES];
        list.iter()
            .filter(|c| {
                let count = &mut of_family[c.family as usize];
                *count += 1;
                *count <= TOLD_OF_A_FAMILY
            })
            .filter_map(|c| spot.candidate(c.recipe))
            .collect()
    };
    spots.iter().zip(lists).map(of_place).collect()
}
