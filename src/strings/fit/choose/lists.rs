//! The strings of every position that could be in the best set, and what those that are not listed could be worth.

use crate::construction::{CORE_TYPES, CoreType, CoreTypes};

use super::offer::Offer;
use crate::fit::branches::Optimum;
use crate::fit::problem::Problem;
use crate::fit::search::{Best, Contender, Counts, Floor, Look, ROUNDING, under};
use crate::fit::work::Work;

/// A worth for each core type.
pub(super) type OfCores = [f64; CORE_TYPES];

/// A look into every position at one price of a newton.
pub(super) struct Lists {
    pub(super) price: f64,
    pub(super) of: Vec<Vec<Contender>>,
    pub(super) counts: Vec<Counts>,
    /// Upper bounds of the worth of strings that belong in the lists but are missing.
    missing: Vec<f64>,
    /// Down to which worth the strings of each core type are listed.
    kept: Vec<OfCores>,
}

impl Lists {
    /// The lists of a look that keeps what lies so far under the best of its core type.
    pub(super) fn of(price: f64, gap: f64, all: Vec<Best>) -> Self {
        let mut lists = Self {
            price,
            of: Vec::new(),
            counts: Vec::new(),
            missing: Vec::new(),
            kept: Vec::new(),
        };
        for best in all {
            lists.of.push(best.contenders);
            lists.counts.push(best.counts);
            lists.missing.push(best.missing);
        }
        lists.kept = lists.tops_of_cores().iter().map(|best| under(gap, best)).collect();
        lists
    }

    /// Looks into every position for the core types of a kind.
    pub(super) fn search(
        offers: &[Offer],
        price: f64,
        gap: f64,
        cores: &[CoreTypes],
        work: &mut Work,
    ) -> Self {
        let floor = Floor::Under(gap);
        let look = |(offer, cores): (&Offer, &CoreTypes)| {
            offer.best(&Look { price, floor, cores: *cores }, work)
        };
        Self::of(price, gap, offers.iter().zip(cores).map(look).collect())
    }

    /// The lists of the core types of a kind alone.
    pub(super) fn of_cores(&self, cores: &[CoreTypes]) -> Self {
        let of = |(list, cores): (&Vec<Contender>, &CoreTypes)| {
            list.iter().filter(|c| cores.has(c.core_type)).copied().collect()
        };
        Self {
            price: self.price,
            of: self.of.iter().zip(cores).map(of).collect(),
            counts: self.counts.clone(),
            missing: self.missing.clone(),
            kept: self.kept.clone(),
        }
    }

    /// Widens the lists down to a worth for the core types of each position.
    pub(super) fn widen(
        &mut self,
        offers: &[Offer],
        needed: &[f64],
        cores: &[CoreTypes],
        work: &mut Work,
    ) {
        for (i, offer) in offers.iter().enumerate() {
            let lacks = CoreTypes::that(|core| {
                cores[i].has(core) && needed[i] < self.kept[i][core as usize] - ROUNDING
            });
            if lacks.is_empty() {
                continue;
            }
            let floor = Floor::At(needed[i]);
            let best = offer.best(&Look { price: self.price, floor, cores: lacks }, work);
            let list = &mut self.of[i];
            if best.missing == f64::NEG_INFINITY {
                list.retain(|c| !lacks.has(c.core_type));
            }
            list.extend(best.contenders);
            self.missing[i] = self.missing[i].max(best.missing);
            self.put_in_order(i);
            for core in CoreType::ALL.iter().filter(|core| lacks.has(**core)) {
                self.kept[i][*core as usize] = needed[i];
            }
        }
    }

    /// Adds strings that are known otherwise to the lists from which something is missing.
    pub(super) fn complete(&mut self, known: Vec<Vec<Contender>>) {
        for (i, known) in known.into_iter().enumerate() {
            if self.missing[i] > f64::NEG_INFINITY {
                self.of[i].extend(known);
                self.put_in_order(i);
            }
        }
    }

    fn put_in_order(&mut self, i: usize) {
        let worth = |c: &Contender| c.worth(self.price);
        let list = &mut self.of[i];
        list.sort_by(|a, b| worth(b).total_cmp(&worth(a)).then(a.recipe.cmp(&b.recipe)));
        list.dedup_by_key(|c| c.recipe);
    }

    /// The best strings, each for itself.
    pub(super) fn best_strings(&self) -> Vec<Contender> {
        let worth = |c: &Contender| c.worth(self.price);
        let best = |list: &Vec<Contender>| {
            list.iter().max_by(|a, b| worth(a).total_cmp(&worth(b))).copied()
        };
        self.of.iter().filter_map(best).collect()
    }

    /// Total tension of the best strings.
    pub(super) fn load(&self) -> f64 {
        self.best_strings().iter().map(|c| c.tension).sum()
    }

    /// The best strings as a set, if there is one of each and they are light enough.
    pub(super) fn tops(&self, problem: &Problem) -> Option<Optimum> {
        if self.of.iter().any(Vec::is_empty) {
            return None;
        }
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

    /// The best of each core type at each position, tension paid for.
    fn tops_of_cores(&self) -> Vec<OfCores> {
        let of_list = |list: &Vec<Contender>| {
            let mut best = [f64::NEG_INFINITY; CORE_TYPES];
            for c in list {
                let best = &mut best[c.core_type as usize];
                *best = best.max(c.worth(self.price));
            }
            best
        };
        self.of.iter().map(of_list).collect()
    }

    /// What a string must be worth at each position to be in a set worth more than `worth`, tension paid for.
    pub(super) fn needed(&self, worth: f64) -> Vec<f64> {
        let ceilings = self.ceilings();
        let all: f64 = ceilings.iter().sum();
        ceilings.iter().map(|top| worth - (all - top)).collect()
    }

    /// Whether every string of these core types that is worth so much is listed, but for those that are missing.
    pub(super) fn has_all(&self, needed: &[f64], cores: &[CoreTypes]) -> bool {
        let holds = |i: usize| {
            CoreType::ALL.iter().filter(|core| cores[i].has(**core)).all(|core| {
                let kept = self.kept[i][*core as usize];
                needed[i] >= kept - ROUNDING || kept == f64::NEG_INFINITY
            })
        };
        (0..needed.len()).all(holds)
    }

    /// Upper bound of the worth of a set of these core types in which some string is not in the lists: it was left out as
    /// worth less than what was kept, or is missing.
    pub(super) fn bound(&self, offers: &[Offer], cores: &[CoreTypes], paid: f64) -> f64 {
        let ceilings = self.ceilings();
        let all: f64 = ceilings.iter().sum();
        let open = (0..offers.len()).filter(|i| offers[*i].fixed.is_none());
        let with = |i: usize| {
            let kept = CoreType::ALL.iter().filter(|core| cores[i].has(**core));
            let kept = kept.map(|core| self.kept[i][*core as usize]);
            all - ceilings[i] + kept.fold(self.missing[i], f64::max) + paid
        };
        open.map(with).fold(f64::NEG_INFINITY, f64::max)
    }
}
