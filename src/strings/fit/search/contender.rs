//! What the choice of a set needs of a string, and which strings still count while a search runs.

use crate::construction::{CORE_TYPES, CoreType, CoreTypes, Family};

use crate::fit::candidates::Candidate;
use crate::fit::neighbours::{Beside, Point, Staying};
use crate::fit::work::Work;

/// How far under the best of all a core type's best lies at most for more of it to be kept than that one: its kinds of
/// set are seldom among the best.
pub const SPAN: f64 = 0.10;
/// By how much the best of a type that lies further may be missed: it is told of, and hardly ever chosen.
pub const MISS: f64 = 0.02;
/// Bounds and scores sum in different orders; this is far above their rounding and far below any difference that counts.
pub const ROUNDING: f64 = 1e-9;

/// How many strings of a position are kept at most. An ordinary position keeps some hundreds; more come together only where
/// the weights make nearly everything alike.
const MOST_KEPT: usize = 1 << 14;
/// How many constructions there are, and how far each was followed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Counts {
    /// Makeable constructions of every family, from the thinnest to the thickest string that is made here.
    pub space: u64,
    /// Of these, wound on the lean path; the others were left out by a limit or by a bound.
    pub wound: u64,
    /// Of these, inside every band.
    pub inside: u64,
    /// Of these, judged in every draw.
    pub judged: u64,
}

/// How to make a string of a space: which core, which covering, which ribbon.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Recipe {
    /// Index of the core among those of the space.
    pub core: u32,
    /// Index of the covering among those of the family.
    pub covering: u32,
    /// Step of the outermost ribbon's thickness.
    pub ribbon: u32,
}

/// What the choice of a set needs of a string.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Contender {
    /// What it is worth to this person.
    pub score: f64,
    /// Its terms towards neighbours that stay: never positive, and 0 where none does.
    pub staying: f64,
    /// Its tension at pitch, newtons.
    pub tension: f64,
    /// ln of that, for the terms towards neighbours.
    pub ln_tension: f64,
    /// Where between dark (0) and bright (1) it lies.
    pub brightness: f64,
    /// Its core type.
    pub core_type: CoreType,
    /// How it is made.
    pub recipe: Recipe,
}

impl From<&Candidate> for Contender {
    fn from(c: &Candidate) -> Self {
        let Candidate { score, tension, brightness, .. } = *c;
        Self {
            score,
            staying: 0.0,
            tension,
            ln_tension: libm::log(tension),
            brightness,
            core_type: c.core_type(),
            recipe: Recipe::default(),
        }
    }
}

impl From<&Contender> for Beside {
    fn from(c: &Contender) -> Self {
        Self { tension: c.tension, brightness: c.brightness }
    }
}

impl Contender {
    /// Its family.
    #[must_use]
    pub const fn family(&self) -> Family {
        self.core_type.family()
    }

    /// What it is worth beside the neighbours that stay, where a newton costs so much.
    #[must_use]
    pub fn worth(&self, price: f64) -> f64 {
        self.score + self.staying - price * self.tension
    }

    /// Where its neighbours see it.
    #[must_use]
    pub fn point(&self) -> Point {
        Point::of(self.ln_tension, self.brightness)
    }

    /// With its terms towards neighbours that stay.
    #[must_use]
    pub fn beside(self, staying: &Staying) -> Self {
        Self { staying: staying.term(self.ln_tension, self.brightness), ..self }
    }
}

/// Down to which worth strings are kept.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Floor {
    /// So far under the best of each core type; where that lies further than [`SPAN`] under the best of all, one that
    /// is worth the best but for [`MISS`].
    Under(f64),
    /// At a worth.
    At(f64),
}

impl Floor {
    /// Whether nothing is kept but the best of each core type.
    pub(super) fn is_for_the_best(self) -> bool {
        self == Self::Under(0.0)
    }
}

/// Above which worth nothing of a core type is left out, as [`Floor::Under`] says.
#[must_use]
pub fn under(gap: f64, best: &[f64; CORE_TYPES]) -> [f64; CORE_TYPES] {
    let all = best.iter().fold(f64::NEG_INFINITY, |a, b| a.max(*b));
    best.map(|best| if best < all - SPAN { best + MISS } else { best - gap })
}

/// What is looked for at a position.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Look {
    /// What a newton of tension costs.
    pub price: f64,
    /// Down to which worth strings are kept.
    pub floor: Floor,
    /// Core types that are looked for.
    pub cores: CoreTypes,
}

impl Look {
    /// A look at these core types where tension costs nothing.
    #[must_use]
    pub const fn free(floor: Floor, cores: CoreTypes) -> Self {
        Self { price: 0.0, floor, cores }
    }
}

/// What the search of one position found.
#[derive(Clone, Debug, PartialEq)]
pub struct Best {
    /// Every string above the floor, the best first.
    pub contenders: Vec<Contender>,
    /// How much was looked at.
    pub counts: Counts,
    /// Upper bound of the worth of strings above the floor that are not here, because the work ran out or there are too
    /// many; minus infinity where nothing is missing.
    pub missing: f64,
    /// How many steps of work it took.
    pub work: u64,
}

impl Best {
    /// Of a position whose string stays.
    #[must_use]
    pub fn only(there: Contender) -> Self {
        let (counts, missing, work) = (Counts::default(), f64::NEG_INFINITY, 0);
        Self { contenders: vec![there], counts, missing, work }
    }
}

/// What still counts while a search runs.
pub(super) struct Incumbents {
    pub(super) price: f64,
    floor: Floor,
    /// Core types that are looked for.
    cores: CoreTypes,
    best: [f64; CORE_TYPES],
    pub(super) kept: Vec<Contender>,
    /// How many are kept at most.
    most_kept: usize,
    /// The most that a string was worth which was dropped because there were too many.
    pub(super) dropped: f64,
}

impl Incumbents {
    pub(super) fn new(known: &[Contender], look: &Look, work: &Work) -> Self {
        let Look { price, floor, cores } = *look;
        let mut best = [f64::NEG_INFINITY; CORE_TYPES];
        for c in known {
            let best = &mut best[c.core_type as usize];
            *best = best.max(c.worth(price));
        }
        let most_kept = if work.is_unlimited() { usize::MAX } else { MOST_KEPT };
        let (kept, dropped) = (Vec::new(), f64::NEG_INFINITY);
        Self { price, floor, cores, best, kept, most_kept, dropped }
    }

    /// The least that a string of that core type must be worth to count.
    pub(super) fn least(&self, core: CoreType) -> f64 {
        if !self.cores.has(core) {
            return f64::INFINITY;
        }
        let i = core as usize;
        let floor = match self.floor {
            Floor::Under(gap) => under(gap, &self.best)[i],
            Floor::At(worth) => worth,
        };
        // Of more strings than are kept, only those above what was dropped can still count.
        floor.max(self.dropped) - ROUNDING
    }

    /// Whether nothing is kept but the best of each core type.
    pub(super) fn is_for_the_best(&self) -> bool {
        self.floor.is_for_the_best()
    }

    pub(super) fn keep(&mut self, contender: Contender) {
        let worth = contender.worth(self.price);
        let i = contender.core_type as usize;
        self.best[i] = self.best[i].max(worth);
        if worth >= self.least(contender.core_type).min(self.best[i]) {
            self.kept.push(contender);
        }
        if self.kept.len() / 2 >= self.most_kept {
            self.thin_out();
        }
    }

    /// Leaves the strings above the floor in order, and the best of them where there are too many.
    pub(super) fn thin_out(&mut self) {
        let mut kept = core::mem::take(&mut self.kept);
        kept.retain(|c| {
            let least = self.least(c.core_type).min(self.best[c.core_type as usize]);
            c.worth(self.price) >= least
        });
        kept.sort_by(|a, b| {
            b.worth(self.price).total_cmp(&a.worth(self.price)).then(a.recipe.cmp(&b.recipe))
        });
        if let Some(dropped) = kept.get(self.most_kept) {
            self.dropped = self.dropped.max(dropped.worth(self.price));
            kept.truncate(self.most_kept);
        }
        self.kept = kept;
    }

    /// Whether the search of a core type may end for want of work: not before something is known to go on with.
    pub(super) fn is_out(&self, core: CoreType, work: &Work) -> bool {
        let any = self.best[core as usize] > f64::NEG_INFINITY;
        work.is_out() && (any || matches!(self.floor, Floor::At(_)))
    }
}
