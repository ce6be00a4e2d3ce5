//! Which set of some lists is the best? A branch and bound over the best completions, exact unless its work runs out.
//!
//! From the lowest position up, the most that every string and all below it can be worth is computed; the search then
//! follows the best completions first, with the load carried as it is. Where the load decides, tension has a price in
//! the bound (a Lagrange multiplier).

use core::cell::OnceCell;

use super::neighbours::{self, Step};
use super::partners::{Partner, Partners};
use super::problem::Problem;
use super::search::{Contender, ROUNDING};
use super::work::Work;

/// Price of a newton, in units of score, above which nothing but lightness would count.
pub const DEAREST_NEWTON: f64 = 4.0;
/// Where a search for the price begins.
const USUAL_PRICE: f64 = 4.0 / 1024.0;
/// Halvings by which the price of a newton is found within a factor of two.
const HALVINGS: u32 = 3;
/// Partners tried in falling order of worth before the others are arranged in a tree: for most strings one of the
/// first ends the search.
const TRIED: usize = 48;
/// Steps of a search for the best set of the lists, at most; beyond, a proof is hardly ever found.
const MOST_STEPS: u64 = 1_000_000;

/// What may be asked of a set beside its worth.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Wanted {
    /// Largest total tension, newtons.
    pub most_load: f64,
    /// Price of a newton in the bound where the load decides: any is right, a good one is quick.
    pub price: f64,
    /// A worth that is known to be reached; what cannot reach it is not followed.
    pub at_least: Option<f64>,
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
    /// Upper bound of what a set of the lists can be worth.
    pub bound: f64,
}

impl Optimum {
    /// A set that was met, with what it is worth.
    #[must_use]
    pub fn of(problem: &Problem, strings: Vec<Contender>) -> Self {
        let pairs = neighbours::pairs(problem, &strings);
        let terms = core::iter::once(0.0).chain(pairs);
        let worth = strings.iter().zip(terms).fold(0.0, |sum, (c, pair)| sum + c.score + pair);
        Self { worth, strings, proven: false, bound: f64::INFINITY }
    }

    /// Its total tension.
    #[must_use]
    pub fn load(&self) -> f64 {
        self.strings.iter().map(|c| c.tension).sum()
    }
}

/// The best set of the lists, as wanted: exact over them but where it says that the proof was given up. `None` if there
/// is none, or if the work ran out before one was met.
#[must_use]
pub fn best(
    problem: &Problem,
    lists: &[Vec<Contender>],
    wanted: &Wanted,
    work: &mut Work,
) -> Option<Optimum> {
    let found = search(&Step::all(problem), lists, wanted, work);
    let strings: Vec<Contender> = found.path?.iter().zip(lists).map(|(k, list)| list[*k]).collect();
    let met = Optimum::of(problem, strings);
    let bound = found.open.max(met.worth);
    Some(Optimum { proven: found.open == f64::NEG_INFINITY, bound, ..met })
}

/// The same by its index in each list, where `steps` are counted between neighbours.
#[must_use]
pub(super) fn best_path(
    steps: &[Step],
    lists: &[Vec<Contender>],
    wanted: &Wanted,
    work: &mut Work,
) -> Option<Vec<usize>> {
    search(steps, lists, wanted, work).path
}

fn search(steps: &[Step], lists: &[Vec<Contender>], wanted: &Wanted, work: &mut Work) -> Found {
    let open = Wanted { most_load: f64::INFINITY, ..wanted.clone() };
    let free = work.half(|work| Branches::new(lists, steps, &open, 0.0, work).search());
    // Where the work ran out, a set that is light enough may still be met below.
    if free.is_none() || free.load(lists).is_some_and(|load| load <= wanted.most_load) {
        return free;
    }
    let price = if wanted.price > 0.0 {
        wanted.price
    } else {
        work.half(|work| {
            cheapest(|price| {
                work.is_out() || {
                    let load = free_load(lists, steps, wanted, price, work);
                    load <= wanted.most_load
                }
            })
        })
    };
    Branches::new(lists, steps, wanted, price, work).search()
}

/// About the lowest price of a newton at which a set is light enough, always on the safe side of it.
pub(super) fn cheapest(mut is_light: impl FnMut(f64) -> bool) -> f64 {
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

/// Total tension of the set that is worth most where a newton costs so much and no load is too large.
fn free_load(
    lists: &[Vec<Contender>],
    steps: &[Step],
    wanted: &Wanted,
    price: f64,
    work: &mut Work,
) -> f64 {
    let open = Wanted { most_load: f64::INFINITY, at_least: None, ..wanted.clone() };
    let paid: Vec<Vec<Contender>> = lists
        .iter()
        .map(|list| {
            list.iter().map(|c| Contender { score: c.score - price * c.tension, ..*c }).collect()
        })
        .collect();
    Branches::new(&paid, steps, &open, 0.0, work).search().load(lists).unwrap_or_default()
}

/// What a search met.
struct Found {
    /// The best set, string by string as an index into its list.
    path: Option<Vec<usize>>,
    /// Upper bound of the sets that were not followed before the work ran out; minus infinity if there are none.
    open: f64,
}

impl Found {
    /// Whether there is no set.
    fn is_none(&self) -> bool {
        self.path.is_none() && self.open == f64::NEG_INFINITY
    }

    /// The total tension of the set, if one was found.
    fn load(&self, lists: &[Vec<Contender>]) -> Option<f64> {
        let path = self.path.as_ref()?;
        Some(path.iter().zip(lists).map(|(k, list)| list[*k].tension).sum())
    }
}

/// Sums and loads with which a string was fronts, none of them beaten by another.
type ParetoFront = Vec<(f64, f64)>;

struct Branches<'a> {
    lists: &'a [Vec<Contender>],
    steps: &'a [Step],
    wanted: &'a Wanted,
    /// Price of a newton in the bound: any is right, a good one is quick.
    price: f64,
    /// For every position: each string with the most that it and all below it can be worth, best first.
    bounds: Vec<Vec<(f64, usize)>>,
    lightest: Vec<f64>,
    /// For every string: sums and loads with which it was reached.
    fronts: Vec<Vec<ParetoFront>>,
    best: Option<(f64, Vec<usize>)>,
    path: Vec<usize>,
    /// What cannot be worth more is not followed.
    floor: f64,
    /// Upper bound of what was not followed because the work ran out.
    open: f64,
    /// How many steps may still be tried.
    left: u64,
    work: &'a mut Work,
}

impl<'a> Branches<'a> {
    fn new(
        lists: &'a [Vec<Contender>],
        steps: &'a [Step],
        wanted: &'a Wanted,
        price: f64,
        work: &'a mut Work,
    ) -> Self {
        let count = lists.len();
        let paid = if price > 0.0 { price * wanted.most_load } else { 0.0 };
        let needed = wanted.at_least.map_or(f64::NEG_INFINITY, |worth| worth - paid - ROUNDING);
        let mut above = vec![0.0; count];
        for i in 1..count {
            let top = lists[i - 1].iter().map(|c| c.worth(price)).fold(f64::NEG_INFINITY, f64::max);
            above[i] = above[i - 1] + top;
        }
        let mut lightest = vec![0.0; count + 1];
        let mut bounds: Vec<Vec<(f64, usize)>> = vec![Vec::new(); count];
        for i in (0..count).rev() {
            let least = lists[i].iter().map(|c| c.tension).fold(f64::INFINITY, f64::min);
            lightest[i] = lightest[i + 1] + least;
            let below = (i + 1 < count).then(|| Below {
                step: steps[i],
                list: &lists[i + 1],
                bounds: &bounds[i + 1],
            });
            bounds[i] = completions(&lists[i], price, below.as_ref(), needed - above[i], work);
        }
        let fronts = lists.iter().map(|list| vec![Vec::new(); list.len()]).collect();
        Self {
            lists,
            steps,
            wanted,
            price,
            bounds,
            lightest,
            fronts,
            best: None,
            path: Vec::new(),
            floor: wanted.at_least.map_or(f64::NEG_INFINITY, |worth| worth - ROUNDING),
            open: f64::NEG_INFINITY,
            left: MOST_STEPS,
            work,
        }
    }

    /// The best set, and what was not followed.
    fn search(mut self) -> Found {
        let unlimited = self.wanted.most_load == f64::INFINITY;
        // Where no load decides and every completion is exact, the best one is known; it only has to be read off.
        if unlimited && !self.work.is_out() {
            let top = self.bounds.first().and_then(|bounds| bounds.first());
            self.floor = top.map_or(self.floor, |(bound, _)| self.floor.max(bound - ROUNDING));
        }
        self.descend(0.0, 0.0);
        Found { path: self.best.map(|(_, path)| path), open: self.open }
    }

    /// Whether a string was reached before with no smaller sum and no larger load; if not, it has been now.
    fn is_dominated(&mut self, position: usize, k: usize, sum: f64, load: f64) -> bool {
        let front = &mut self.fronts[position][k];
        self.work.take(1 + front.len() as u64 / 8);
        if front.iter().any(|(s, l)| *s >= sum && *l <= load) {
            return true;
        }
        front.retain(|(s, l)| !(*s <= sum && *l >= load));
        front.push((sum, load));
        false
    }

    fn descend(&mut self, sum: f64, load: f64) {
        let i = self.path.len();
        if i == self.lists.len() {
            if self.best.as_ref().is_none_or(|(worth, _)| sum > *worth) {
                self.best = Some((sum, self.path.clone()));
            }
            return;
        }
        // At no price an open load is worth nothing.
        let left = if self.price > 0.0 { self.price * (self.wanted.most_load - load) } else { 0.0 };
        for n in 0..self.bounds[i].len() {
            let (bound, k) = self.bounds[i][n];
            let worth = self.best.as_ref().map_or(self.floor, |(worth, _)| *worth);
            if sum + bound + left <= worth {
                break;
            }
            if self.left == 0 || self.work.is_out() {
                self.open = self.open.max(sum + bound + left);
                break;
            }
            self.left -= 1;
            self.work.take(1);
            let c = &self.lists[i][k];
            if load + c.tension + self.lightest[i + 1] > self.wanted.most_load {
                continue;
            }
            let neighbour = self.path.last().map_or(0.0, |last| {
                self.steps[i - 1].term(self.lists[i - 1][*last].point(), c.point())
            });
            if sum + neighbour + bound + left <= worth {
                continue;
            }
            let (sum, load) = (sum + c.worth(0.0) + neighbour, load + c.tension);
            if self.is_dominated(i, k, sum, load) {
                continue;
            }
            self.path.push(k);
            self.descend(sum, load);
            self.path.pop();
        }
    }
}

/// The position below: its strings, and what each and all below it can be worth.
struct Below<'a> {
    step: Step,
    list: &'a [Contender],
    bounds: &'a [(f64, usize)],
}

/// Each string of a position with the most that it and all below it can be worth, best first. Strings that with all
/// above them could not reach `needed` are left out.
fn completions(
    list: &[Contender],
    price: f64,
    below: Option<&Below>,
    needed: f64,
    work: &mut Work,
) -> Vec<(f64, usize)> {
    let tree = OnceCell::new();
    let mut completed = Vec::new();
    work.take(list.len() as u64);
    for (k, c) in list.iter().enumerate() {
        let own = c.worth(price);
        // What lies under this could not reach what is needed, whatever stands above.
        let least = needed - own;
        let bound = match below {
            None => 0.0,
            Some(below) => {
                let bound = below.best(c, least, &tree, work);
                if bound <= least {
                    continue;
                }
                bound
            }
        };
        if bound >= least {
            completed.push((own + bound, k));
        }
    }
    completed.sort_by(|a, b| b.0.total_cmp(&a.0));
    completed
}

impl Below<'_> {
    /// The most that a string of it, all below that, and its term towards `upper` make; `least` if that is more. Once
    /// the work has run out, an upper bound.
    fn best(
        &self,
        upper: &Contender,
        least: f64,
        tree: &OnceCell<Partners>,
        work: &mut Work,
    ) -> f64 {
        let bounds = self.bounds;
        if work.is_out() {
            return bounds.first().map_or(least, |(worth, _)| worth.max(least));
        }
        let mut best = least;
        for (tried, (worth, k)) in bounds.iter().enumerate() {
            // No term of a pair is positive, so what follows cannot do better.
            if *worth <= best {
                work.take(tried as u64 / 4);
                return best;
            }
            if tried == TRIED {
                break;
            }
            best = best.max(worth + self.step.term(upper.point(), self.list[*k].point()));
        }
        let Step::Usual(step) = self.step else { return best };
        let tree = tree.get_or_init(|| {
            let partner = |(worth, k): &(f64, usize)| Partner {
                point: self.list[*k].point().plus(step),
                worth: *worth,
            };
            Partners::new(bounds.iter().map(partner).collect(), work)
        });
        tree.best(upper.point(), best, work)
    }
}
