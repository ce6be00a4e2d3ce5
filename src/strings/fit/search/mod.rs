//! Which strings of the whole space can be in the best set? A search that proves what it leaves out.
//!
//! Every core is met in every draw and bounded from above: by what its tension can decide at best, and by the
//! cheapest and most usual metals. Cores are then wound in falling order of their bounds ([`super::winding`]).

mod bounds;
mod contender;
mod offered;
mod winding;

use crate::construction::Winding;

use super::candidates::{Candidate, Made, judged_on};
use super::neighbours::Staying;
use super::problem::{Problem, StringProblem};
use super::score::{Arrangement, Judge, JudgedCore};
use super::work::Work;
use bounds::{Bounded, bounded, thinnest};
use contender::Incumbents;
pub use contender::{Best, Contender, Counts, Floor, Look, MISS, ROUNDING, Recipe, SPAN, under};
use offered::{Making, makings, size};
use winding::{Winder, construction};

/// Steps of work that it takes to meet a core in every draw, and to look up its bounds.
const CORE_STEPS: u64 = 300;
const LOOKING_UP_STEPS: u64 = 5;

/// All that is made for one position, bounded and ready to be searched.
pub struct Space<'a> {
    judge: Judge<'a>,
    makings: Vec<Making>,
    arrangements: Vec<(usize, Arrangement)>,
    /// In falling order of what they can be worth.
    cores: Vec<Bounded>,
    size: u64,
    /// The strings that stay beside it.
    staying: Staying,
}

impl<'a> Space<'a> {
    /// The space of a position, and the strings that stay beside it.
    #[must_use]
    pub fn new(problem: &'a Problem, string: &'a StringProblem, staying: Staying) -> Self {
        let judge = Judge::new(problem, string);
        let (makings, arrangements) = makings(problem, string, &judge);
        let cores = bounded(&judge, &makings, &arrangements);
        let size = size(string);
        Self { judge, makings, arrangements, cores, size, staying }
    }

    /// Every string above the floor: what it is worth includes its terms towards the strings that stay beside it.
    #[must_use]
    pub fn best(&self, look: &Look, work: &mut Work) -> Best {
        self.better(&[], look, work)
    }

    /// As [`Self::best`], where some strings of the space are known: what is worth less than they are is left out at once.
    #[must_use]
    pub fn better(&self, known: &[Contender], look: &Look, work: &mut Work) -> Best {
        let Look { price, floor, .. } = *look;
        let mut counts = Counts { space: self.size, ..Counts::default() };
        let mut incumbents = Incumbents::new(known, look, work);
        let mut missing = f64::NEG_INFINITY;
        let before = work.taken();
        work.take(self.cores.len() as u64 / 2);
        for index in self.in_order(price, floor) {
            let core = &self.cores[index];
            let making = &self.makings[core.making];
            let most = self.most(core, price);
            if most < incumbents.least(core.core_type) {
                continue;
            }
            if incumbents.is_out(core.core_type, work) {
                missing = missing.max(self.most_known(core, price));
                continue;
            }
            work.take(LOOKING_UP_STEPS);
            if self.most_known(core, price) < incumbents.least(core.core_type) {
                continue;
            }
            work.take(CORE_STEPS);
            let judged = self.judged(core);
            let bowed = core.bowed.get_or_init(|| {
                let (slack, taut) = core.tension;
                let gauge = thinnest(&judged, making.family.is_plain());
                judged.most_bowed(slack, taut, gauge, self.judge.stiffest_of_all())
            });
            if most + bowed < incumbents.least(core.core_type) {
                continue;
            }
            let mut winder = Winder {
                judge: &self.judge,
                core: &judged,
                bounded: core,
                staying: &self.staying,
                // A space has a few thousand cores.
                index: index as u32,
                counts: &mut counts,
                incumbents: &mut incumbents,
                work: &mut *work,
            };
            if making.family.is_plain() {
                winder.plain(making);
            } else {
                winder.wound(making);
            }
            if incumbents.is_out(core.core_type, work) {
                // Of this core not everything may have been wound.
                missing = missing.max(self.most_known(core, price));
            }
        }
        incumbents.thin_out();
        let missing = missing.max(incumbents.dropped);
        Best { contenders: incumbents.kept, counts, missing, work: work.taken() - before }
    }

    /// The cores in the order in which they are searched: as they are, or, where a price is looked for and the best
    /// alone counts, by what they can be worth at that price.
    fn in_order(&self, price: f64, floor: Floor) -> Vec<usize> {
        let mut order: Vec<usize> = (0..self.cores.len()).collect();
        if price > 0.0 && floor.is_for_the_best() {
            let most: Vec<f64> =
                self.cores.iter().map(|core| self.most_known(core, price)).collect();
            order.sort_by(|a, b| most[*b].total_cmp(&most[*a]));
        }
        order
    }

    /// The most that a core can be worth, whatever is wound round it.
    fn most(&self, core: &Bounded, price: f64) -> f64 {
        let (slack, taut) = core.tension;
        core.top - price * slack + self.staying.most(slack, taut)
    }

    /// As [`Self::most`], and less where more is known of the core.
    fn most_known(&self, core: &Bounded, price: f64) -> f64 {
        let most = self.most(core, price) + core.bowed.get().unwrap_or(&0.0);
        core.cells.get().map_or(most, |cells| {
            let dearest = self.makings[core.making].dearest();
            most.min(cells.most(price, &self.staying).0 + cells.bright + dearest)
        })
    }

    fn judged<'b>(&'b self, core: &Bounded) -> JudgedCore<'b> {
        self.judge.core(&self.arrangements[core.arrangement].1, core.diameter)
    }

    /// The string of a recipe, with all its numbers. `None` if this space has no such recipe.
    #[must_use]
    pub fn candidate(&self, recipe: Recipe) -> Option<Candidate> {
        let core = self.cores.get(recipe.core as usize)?;
        let covering = self.makings[core.making].coverings.get(recipe.covering as usize)?;
        let judged_core = self.judged(core);
        let construction = construction(judged_core.core, covering, recipe.ribbon);
        let windings: Vec<Winding> = construction.windings().copied().collect();
        let made = Made {
            construction,
            family: judged_core.arrangement.family,
            grade: covering.grade,
            bands: judged_core.arrangement.bands,
            lean: judged_core.central.wound(&windings),
        };
        Some(judged_on(&self.judge, &judged_core, &made))
    }
}
