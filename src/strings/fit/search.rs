//! Which strings of the whole space can be in the best set? A search that proves what it leaves out.
//!
//! Every core is met in every draw and bounded from above: by what its tension can decide at best, and by the
//! cheapest and most usual metals. Cores are then wound in falling order of their bounds ([`super::winding`]).

use core::cell::OnceCell;

use crate::construction::{Construction, Core, Family, Winding};
use crate::makeable;
use crate::material;
use crate::physics::tension;
use crate::precedent::{self, Bands, Grade};
use crate::quantity::{KilogramPerMetre, Metre};

use super::candidates::{Candidate, Made, judged_on};
use super::limits;
use super::neighbours::{Point, Staying};
use super::problem::{Problem, StringProblem};
use super::score::{Arrangement, Judge, JudgedCore};
use super::space::{self, Stack};
use super::winding::{Cells, Winder, construction, thinnest};
use super::work::Work;

/// How many families there are.
pub const FAMILIES: usize = Family::ALL.len();
/// How far under the best of all a family's best is looked for. The second set is never far; a rival that is, is
/// found in the sample of what is made.
pub const SPAN: f64 = 0.10;
/// Bounds and scores sum in different orders; this is far above their rounding and far below any difference that counts.
pub const ROUNDING: f64 = 1e-9;

/// How many strings of a place are kept at most. An ordinary place keeps some hundreds; more come together only where
/// the weights make nearly everything alike.
const MOST_KEPT: usize = 1 << 14;
/// Steps of work that it takes to meet a core in every draw, and to look up its bounds.
const CORE_STEPS: u64 = 300;
const LOOKING_UP_STEPS: u64 = 5;

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
    /// Place of the core among those of the space.
    pub core: u32,
    /// Place of the covering among those of the family.
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
    /// Its family.
    pub family: Family,
    /// How it is made.
    pub recipe: Recipe,
}

impl From<&Candidate> for Contender {
    fn from(c: &Candidate) -> Self {
        let Candidate { score, tension, brightness, family, .. } = *c;
        Self {
            score,
            staying: 0.0,
            tension,
            ln_tension: libm::log(tension),
            brightness,
            family,
            recipe: Recipe::default(),
        }
    }
}

impl Contender {
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
    /// So far under the best of each family, unless that lies further than [`SPAN`] under the best of all.
    Under(f64),
    /// At a worth for each family, in the order of [`Family::ALL`].
    At([f64; FAMILIES]),
}

impl Floor {
    /// Whether nothing is kept but the best of each family.
    fn is_for_the_best(self) -> bool {
        self == Self::Under(0.0)
    }
}

/// What the search of one place found.
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
    /// Of a place whose string stays.
    #[must_use]
    pub fn only(there: Contender) -> Self {
        let (counts, missing, work) = (Counts::default(), f64::NEG_INFINITY, 0);
        Self { contenders: vec![there], counts, missing, work }
    }
}

/// A stack with what its metals are worth.
pub(super) struct Covering {
    pub(super) stack: Stack,
    pub(super) grade: Grade,
    pub(super) worth: f64,
}

/// A family at the place.
pub(super) struct Making {
    pub(super) family: Family,
    pub(super) coverings: Vec<Covering>,
}

impl Making {
    /// What the covering that is worth most is worth.
    fn dearest(&self) -> f64 {
        self.coverings.first().map_or(0.0, |covering| covering.worth)
    }
}

/// A core and the tensions it may have.
pub(super) struct Bounded {
    arrangement: usize,
    making: usize,
    diameter: Metre,
    pub(super) tension: (f64, f64),
    /// The most that it can be worth, whatever is wound round it and however it answers the bow.
    top: f64,
    /// The most that the bow can make of it, known once it has been met in every draw.
    bowed: OnceCell<f64>,
    /// The most that it can be worth in each cell of its tensions, known once it has been wound.
    pub(super) cells: OnceCell<Cells>,
}

/// All that is made for one place, bounded and ready to be searched.
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

/// What still counts while a search runs.
pub(super) struct Standing {
    pub(super) price: f64,
    floor: Floor,
    best: [f64; FAMILIES],
    kept: Vec<Contender>,
    /// How many are kept at most.
    most_kept: usize,
    /// The most that a string was worth which was dropped because there were too many.
    dropped: f64,
}

impl Standing {
    fn new(known: &[Contender], price: f64, floor: Floor, work: &Work) -> Self {
        let mut best = [f64::NEG_INFINITY; FAMILIES];
        for c in known {
            let best = &mut best[c.family as usize];
            *best = best.max(c.worth(price));
        }
        let most_kept = if work.is_unlimited() { usize::MAX } else { MOST_KEPT };
        Self { price, floor, best, kept: Vec::new(), most_kept, dropped: f64::NEG_INFINITY }
    }

    /// The least that a string of that family must be worth to count.
    pub(super) fn least(&self, family: Family) -> f64 {
        let i = family as usize;
        let floor = match self.floor {
            Floor::Under(gap) => {
                let all = self.best.iter().fold(f64::NEG_INFINITY, |a, b| a.max(*b));
                (self.best[i] - gap).max(all - SPAN)
            }
            Floor::At(floors) => floors[i],
        };
        // Of more strings than are kept, only those above what was dropped can still count.
        floor.max(self.dropped) - ROUNDING
    }

    /// Whether nothing is kept but the best of each family.
    pub(super) fn is_for_the_best(&self) -> bool {
        self.floor.is_for_the_best()
    }

    pub(super) fn keep(&mut self, contender: Contender) {
        let worth = contender.worth(self.price);
        let best = &mut self.best[contender.family as usize];
        *best = best.max(worth);
        if worth >= self.least(contender.family) {
            self.kept.push(contender);
        }
        if self.kept.len() / 2 >= self.most_kept {
            self.thin_out();
        }
    }

    /// Leaves the strings above the floor in order, and the best of them where there are too many.
    fn thin_out(&mut self) {
        let mut kept = core::mem::take(&mut self.kept);
        kept.retain(|c| c.worth(self.price) >= self.least(c.family));
        kept.sort_by(|a, b| {
            b.worth(self.price).total_cmp(&a.worth(self.price)).then(a.recipe.cmp(&b.recipe))
        });
        if let Some(dropped) = kept.get(self.most_kept) {
            self.dropped = self.dropped.max(dropped.worth(self.price));
            kept.truncate(self.most_kept);
        }
        self.kept = kept;
    }

    /// Whether a search may end here for want of work: not before something is known to go on with.
    pub(super) fn is_out(&self, work: &Work) -> bool {
        let any = self.best.iter().any(|best| *best > f64::NEG_INFINITY);
        work.is_out() && (any || matches!(self.floor, Floor::At(_)))
    }
}

impl<'a> Space<'a> {
    /// The space of a place, and the strings that stay beside it.
    #[must_use]
    pub fn new(problem: &'a Problem, string: &'a StringProblem, staying: Staying) -> Self {
        let judge = Judge::new(problem, string);
        let (makings, arrangements) = makings(problem, string, &judge);
        let cores = bounded(&judge, &makings, &arrangements);
        let size = size(string);
        Self { judge, makings, arrangements, cores, size, staying }
    }

    /// Every string above the floor, where a newton of tension costs `price`: what it is worth includes its terms towards
    /// the strings that stay beside it.
    #[must_use]
    pub fn best(&self, price: f64, floor: Floor, work: &mut Work) -> Best {
        self.better(&[], price, floor, work)
    }

    /// As [`Self::best`], where some strings of the space are known: what is worth less than they are is left out at once.
    #[must_use]
    pub fn better(&self, known: &[Contender], price: f64, floor: Floor, work: &mut Work) -> Best {
        let mut counts = Counts { space: self.size, ..Counts::default() };
        let mut standing = Standing::new(known, price, floor, work);
        let mut missing = f64::NEG_INFINITY;
        let before = work.taken();
        work.take(self.cores.len() as u64 / 2);
        let mut cores = self.in_order(price, floor).into_iter();
        for index in cores.by_ref() {
            let core = &self.cores[index];
            let making = &self.makings[core.making];
            let most = self.most(core, price);
            if most < standing.least(making.family) {
                continue;
            }
            work.take(LOOKING_UP_STEPS);
            if self.most_known(core, price) < standing.least(making.family) {
                continue;
            }
            work.take(CORE_STEPS);
            let judged = self.judged(core);
            let bowed = core.bowed.get_or_init(|| {
                let (slack, taut) = core.tension;
                let gauge = thinnest(&judged, making.family.is_plain());
                judged.most_bowed(slack, taut, gauge, self.judge.stiffest_of_all())
            });
            if most + bowed < standing.least(making.family) {
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
                standing: &mut standing,
                work: &mut *work,
            };
            if making.family.is_plain() {
                winder.plain(making);
            } else {
                winder.wound(making);
            }
            if standing.is_out(work) {
                // Of this core not everything may have been wound.
                missing = self.most_known(core, price);
                break;
            }
        }
        let rest = cores.map(|index| self.most_known(&self.cores[index], price));
        let missing = rest.fold(missing, f64::max);
        standing.thin_out();
        let missing = missing.max(standing.dropped);
        Best { contenders: standing.kept, counts, missing, work: work.taken() - before }
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

/// The families made here, each with its coverings, and the core arrangements of each.
fn makings(
    problem: &Problem,
    string: &StringProblem,
    judge: &Judge,
) -> (Vec<Making>, Vec<(usize, Arrangement)>) {
    let stacks = space::stacks();
    let (mut makings, mut arrangements) = (Vec::new(), Vec::new());
    for family in Family::ALL {
        if string.family.is_some_and(|only| only != family) {
            continue;
        }
        let Some(bands) = precedent::bands(string.position, family, &string.place) else {
            continue;
        };
        let mut coverings: Vec<Covering> = if family.is_plain() {
            let worth = judge.metals(family, bands.grade, &[]);
            vec![Covering { stack: Stack { under: None, outer: 0 }, grade: bands.grade, worth }]
        } else {
            stacks.iter().filter_map(|s| covering(problem, judge, family, &bands, s)).collect()
        };
        coverings.sort_by(|a, b| b.worth.total_cmp(&a.worth));
        for (material, build) in space::arrangements(family) {
            let barred = limits::of_core(problem, material, build, !family.is_plain()).is_some();
            if !barred && !coverings.is_empty() {
                let arrangement = judge.arrangement(family, bands, material, build);
                arrangements.push((makings.len(), arrangement));
            }
        }
        makings.push(Making { family, coverings });
    }
    (makings, arrangements)
}

fn covering(
    problem: &Problem,
    judge: &Judge,
    family: Family,
    bands: &Bands,
    stack: &Stack,
) -> Option<Covering> {
    let outer = &material::METALS[stack.outer];
    let covers = precedent::metal_grade(judge.string.position, family, outer);
    // An unusual metal on a family that is itself made only sometimes: nobody we know of makes that.
    let nobody = bands.grade == Grade::Sometimes && covers == Grade::Sometimes;
    if nobody || problem.nickel_free && !outer.nickel_free {
        return None;
    }
    let grade = bands.grade.max(covers);
    let worth = match stack.under.map(|u| (&material::METALS[u.metal], u.layers)) {
        None => judge.metals(family, grade, &[outer]),
        Some((inner, 1)) => judge.metals(family, grade, &[inner, outer]),
        Some((inner, _)) => judge.metals(family, grade, &[inner, inner, outer]),
    };
    Some(Covering { stack: *stack, grade, worth })
}

/// How many makeable constructions there are, of whatever family, from the thinnest to the thickest string made here.
fn size(string: &StringProblem) -> u64 {
    let made =
        || Family::ALL.iter().filter_map(|f| precedent::bands(string.position, *f, &string.place));
    let thin = made().map(|b| b.gauge.0).fold(f64::INFINITY, f64::min);
    let thick = made().map(|b| b.gauge.1).fold(0.0, f64::max);
    let stacks = space::stacks().len() as u64 * u64::from(space::ribbons());
    let mut size = 0;
    for family in Family::ALL {
        let (low, high, each) = if family.is_plain() {
            (thin, thick, 1)
        } else {
            (thin * makeable::CORE_SHARE.0, thick * makeable::CORE_SHARE.1, stacks)
        };
        for (material, build) in space::arrangements(family) {
            let makeable = space::gauges(low, high).into_iter().filter(|diameter| {
                let core = Core { material, build, diameter: *diameter };
                makeable::broken(&Construction::of(core, &[])).is_none()
            });
            size += makeable.count() as u64 * each;
        }
    }
    size
}

/// Every core whose bands leave it a tension, bounded from above, in falling order.
fn bounded(
    judge: &Judge,
    makings: &[Making],
    arrangements: &[(usize, Arrangement)],
) -> Vec<Bounded> {
    let mut cores = Vec::new();
    for (index, (making, arrangement)) in arrangements.iter().enumerate() {
        let bands = &arrangement.bands;
        let dearest = makings[*making].dearest();
        let plain = makings[*making].family.is_plain();
        let (low, high) = if plain {
            bands.gauge
        } else {
            (bands.gauge.0 * makeable::CORE_SHARE.0, bands.gauge.1 * makeable::CORE_SHARE.1)
        };
        for diameter in space::gauges(low, high) {
            let Arrangement { material, build, .. } = *arrangement;
            if makeable::broken(&Construction::of(Core { material, build, diameter }, &[]))
                .is_some()
            {
                continue;
            }
            let core = judge.core(arrangement, diameter);
            let Some(tension) = tensions(judge, &core, plain) else { continue };
            let (slack, taut) = (core.row(tension.0), core.row(tension.1));
            let bright = core.most_bright(tension.0, tension.1, &[]);
            let top = core.fixed() + core.most(&slack, &taut) + bright + dearest;
            let (bowed, cells) = (OnceCell::new(), OnceCell::new());
            cores.push(Bounded {
                arrangement: index,
                making: *making,
                diameter,
                tension,
                top,
                bowed,
                cells,
            });
        }
    }
    cores.sort_by(|a: &Bounded, b| b.top.total_cmp(&a.top));
    cores
}

/// The tensions at which a core keeps to its bands, whatever is wound round it; `None` if there are none.
fn tensions(judge: &Judge, core: &JudgedCore, plain: bool) -> Option<(f64, f64)> {
    let bands = &core.arrangement.bands;
    let setting = &judge.string.setting;
    let lean = &core.central;
    let ea = lean.axial.get();
    let of_mass = |whole: f64| {
        let whole = KilogramPerMetre::new(whole);
        tension::at_pitch(whole, lean.axial, setting.sounding_length, setting.pitch).get()
    };
    let mut low = bands.tension.0.max(bands.stretch.0 * ea);
    let mut high =
        bands.tension.1.min(bands.stretch.1 * ea).min(bands.breaking_share * lean.breaking_force());
    if plain {
        let own = of_mass(lean.mass);
        return (own >= low && own <= high).then_some((own, own));
    }
    low = low.max(of_mass(lean.mass / (1.0 - bands.winding_share.0)));
    high = high.min(of_mass(lean.mass / (1.0 - bands.winding_share.1)));
    (low < high).then_some((low, high))
}
