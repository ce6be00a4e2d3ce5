//! The strings of every position that could be in the best set, and what those that are not listed could be worth.

use crate::construction::Family;

use super::offer::{FIRST_GAP, Offer};
use crate::fit::branches::Optimum;
use crate::fit::problem::Problem;
use crate::fit::search::{Best, Contender, Counts, FAMILIES, Floor, SPAN};
use crate::fit::work::Work;

/// A look into every position at one price of a newton.
pub(super) struct Lists {
    pub(super) price: f64,
    pub(super) of: Vec<Vec<Contender>>,
    pub(super) counts: Vec<Counts>,
    /// Upper bounds of the worth of strings that belong in the lists but are missing.
    missing: Vec<f64>,
}

impl Lists {
    pub(super) fn of(price: f64, all: Vec<Best>) -> Self {
        let mut lists = Self { price, of: Vec::new(), counts: Vec::new(), missing: Vec::new() };
        for best in all {
            lists.of.push(best.contenders);
            lists.counts.push(best.counts);
            lists.missing.push(best.missing);
        }
        lists
    }

    pub(super) fn search(
        offers: &[Offer],
        price: f64,
        floor: impl Fn(usize) -> Floor,
        work: &mut Work,
    ) -> Self {
        let all = offers.iter().enumerate().map(|(i, offer)| offer.best(price, floor(i), work));
        Self::of(price, all.collect())
    }

    /// Takes the lists of a wider search, and keeps what an interrupted one did not come to.
    pub(super) fn widen(&mut self, wider: Self) {
        let before = core::mem::replace(self, wider);
        self.complete(before.of);
    }

    /// Adds strings that are known otherwise to the lists from which something is missing.
    pub(super) fn complete(&mut self, known: Vec<Vec<Contender>>) {
        let worth = |c: &Contender| c.worth(self.price);
        for (i, known) in known.into_iter().enumerate() {
            if self.missing[i] > f64::NEG_INFINITY {
                let list = &mut self.of[i];
                list.extend(known);
                list.sort_by(|a, b| worth(b).total_cmp(&worth(a)).then(a.recipe.cmp(&b.recipe)));
                list.dedup_by_key(|c| c.recipe);
            }
        }
    }

    /// The best strings, each for itself.
    pub(super) fn best_strings(&self) -> Vec<Contender> {
        let worth = |c: &Contender| c.worth(self.price);
        let best = |list: &Vec<Contender>| {
            list.iter().max_by(|a, b| worth(a).total_cmp(&worth(b))).copied()
        };
        self.of.iter().filter_map(best).collect()
    }

    /// The best string of each family, position by position.
    pub(super) fn best_of_families(&self) -> Vec<Vec<Contender>> {
        let worth = |c: &Contender| c.worth(self.price);
        let of_position = |list: &Vec<Contender>| {
            let best = |family: &Family| {
                let of_family = list.iter().filter(|c| c.family == *family);
                of_family.max_by(|a, b| worth(a).total_cmp(&worth(b))).copied()
            };
            Family::ALL.iter().filter_map(best).collect()
        };
        self.of.iter().map(of_position).collect()
    }

    /// Total tension of the best strings.
    pub(super) fn load(&self) -> f64 {
        self.best_strings().iter().map(|c| c.tension).sum()
    }

    /// The best strings as a set, if they are light enough.
    pub(super) fn tops(&self, problem: &Problem) -> Option<Optimum> {
        let set = Optimum::of(problem, self.best_strings());
        (set.load() <= problem.most_load).then_some(set)
    }

    /// Upper bounds of what the strings of each position can be worth, those that are missing included.
    pub(super) fn ceilings(&self) -> Vec<f64> {
        let top = |list: &Vec<Contender>| {
            list.iter().map(|c| c.worth(self.price)).fold(f64::NEG_INFINITY, f64::max)
        };
        self.of.iter().zip(&self.missing).map(|(list, missing)| top(list).max(*missing)).collect()
    }

    /// Upper bound of the worth of a set in which some string is not in the lists: it was left out as worth less than
    /// what was kept, or is missing.
    pub(super) fn bound(&self, offers: &[Offer], kept: &[[f64; FAMILIES]], paid: f64) -> f64 {
        let ceilings = self.ceilings();
        let all: f64 = ceilings.iter().sum();
        let open = (0..offers.len()).filter(|i| offers[*i].fixed.is_none());
        let with = |i: usize| {
            let unlisted = kept[i].iter().fold(self.missing[i], |a, b| a.max(*b));
            all - ceilings[i] + unlisted + paid
        };
        open.map(with).fold(f64::NEG_INFINITY, f64::max)
    }
}

/// The best of each family at each position, tension paid for.
pub(super) struct Tops {
    pub(super) of_family: Vec<[f64; FAMILIES]>,
}

impl Tops {
    pub(super) fn of(lists: &Lists) -> Self {
        let of_list = |list: &Vec<Contender>| {
            let mut best = [f64::NEG_INFINITY; FAMILIES];
            for c in list {
                let best = &mut best[c.family as usize];
                *best = best.max(c.worth(lists.price));
            }
            // A family of which nothing was kept may lie just under the span.
            let all = best.iter().fold(f64::NEG_INFINITY, |a, b| a.max(*b));
            best.map(|b| b.max(all - SPAN))
        };
        Self { of_family: lists.of.iter().map(of_list).collect() }
    }

    /// What a string must be worth, at each position and of each family, to be in a set worth more than `first`, or in one
    /// worth more than `second` that is not all of `families`.
    pub(super) fn floors(
        &self,
        first: f64,
        second: f64,
        families: &[Family],
    ) -> Vec<[f64; FAMILIES]> {
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
pub(super) fn kept_at_first(best: &[f64; FAMILIES]) -> [f64; FAMILIES] {
    let all = best.iter().fold(f64::NEG_INFINITY, |a, b| a.max(*b));
    best.map(|b| (b - FIRST_GAP).max(all - SPAN))
}
