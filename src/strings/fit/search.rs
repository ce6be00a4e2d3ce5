//! Which strings of the whole space can be in the best set? A search that proves what it leaves out.
//!
//! Every core is met in every draw and bounded from above: by what its tension can decide at best, and by the
//! cheapest and most usual metals. Cores are then wound in falling order of their bounds. A stack of windings is
//! bounded once more, by the brightness that its thinnest form leaves; what remains is wound four thicknesses of the
//! outermost ribbon side by side, and judged in full only where its own bound could still count.

use core::f64::consts::PI;

use crate::construction::{Construction, Core, Family, Form, Winding};
use crate::makeable;
use crate::material::{self, Metal};
use crate::physics::tension;
use crate::precedent::{self, Bands, Grade, SetUp};
use crate::quantity::{KilogramPerMetre, Metre, Newton, Ratio};
use crate::report::{Four, LANES, Wound};

use super::candidates::{Candidate, Made, judged_on};
use super::limits;
use super::problem::{Problem, StringProblem};
use super::score::{Arrangement, Judge, JudgedCore};
use super::space::{self, Stack};

/// In how many cells of tension a core is bounded before it is wound.
const CELLS: usize = 10;
/// How many families there are.
pub const FAMILIES: usize = Family::ALL.len();
/// How far under the best of all a family's best is looked for. The second set is never far; a rival that is, is
/// found in the sample of what is made.
pub const SPAN: f64 = 0.10;
/// Bounds and scores sum in different orders; this is far above their rounding and far below any difference that counts.
pub const ROUNDING: f64 = 1e-9;

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
    /// Its tension at pitch, newtons.
    pub tension: f64,
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
        Self { score, tension, brightness, family, recipe: Recipe::default() }
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

/// What the search of one place found.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Best {
    /// Every string above the floor, the best first.
    pub contenders: Vec<Contender>,
    /// How much was looked at.
    pub counts: Counts,
}

/// A stack with what its metals are worth.
struct Covering {
    stack: Stack,
    grade: Grade,
    worth: f64,
}

/// A family at the place.
struct Making {
    family: Family,
    coverings: Vec<Covering>,
}

/// A core and the tensions it may have.
struct Bounded {
    arrangement: usize,
    making: usize,
    diameter: Metre,
    tension: (f64, f64),
    /// The most that it can be worth, whatever is wound round it and however it answers the bow.
    top: f64,
}

/// All that is made for one place, bounded and ready to be searched.
pub struct Space<'a> {
    judge: Judge<'a>,
    makings: Vec<Making>,
    arrangements: Vec<(usize, Arrangement)>,
    /// In falling order of what they can be worth.
    cores: Vec<Bounded>,
    size: u64,
}

/// What still counts while a search runs.
struct Standing {
    price: f64,
    floor: Floor,
    best: [f64; FAMILIES],
    kept: Vec<Contender>,
}

impl Standing {
    /// The least that a string of that family must be worth to count.
    fn least(&self, family: Family) -> f64 {
        let i = family as usize;
        let floor = match self.floor {
            Floor::Under(gap) => {
                let all = self.best.iter().fold(f64::NEG_INFINITY, |a, b| a.max(*b));
                (self.best[i] - gap).max(all - SPAN)
            }
            Floor::At(floors) => floors[i],
        };
        floor - ROUNDING
    }

    fn keep(&mut self, contender: Contender) {
        let worth = contender.score - self.price * contender.tension;
        let best = &mut self.best[contender.family as usize];
        *best = best.max(worth);
        if worth >= self.least(contender.family) {
            self.kept.push(contender);
        }
    }
}

impl<'a> Space<'a> {
    /// The space of a place.
    #[must_use]
    pub fn new(problem: &'a Problem, string: &'a StringProblem) -> Self {
        let judge = Judge::new(problem, string);
        let (makings, arrangements) = makings(problem, string, &judge);
        let cores = bounded(&judge, &makings, &arrangements);
        let size = size(string);
        Self { judge, makings, arrangements, cores, size }
    }

    /// Every string above the floor, where a newton of tension costs `price`.
    #[must_use]
    pub fn best(&self, price: f64, floor: Floor) -> Best {
        let mut counts = Counts { space: self.size, ..Counts::default() };
        let mut standing =
            Standing { price, floor, best: [f64::NEG_INFINITY; FAMILIES], kept: Vec::new() };
        for (index, core) in self.cores.iter().enumerate() {
            let making = &self.makings[core.making];
            if core.top - price * core.tension.0 < standing.least(making.family) {
                continue;
            }
            let judged = self.judged(core);
            let (slack, taut) = core.tension;
            let gauge = thinnest(&judged, making.family.is_plain());
            let bowed = judged.most_bowed(slack, taut, gauge, self.judge.stiffest_of_all());
            if core.top + bowed - price * slack < standing.least(making.family) {
                continue;
            }
            let mut winder = Winder {
                judge: &self.judge,
                core: &judged,
                bounded: core,
                // A space has a few thousand cores.
                index: index as u32,
                counts: &mut counts,
                standing: &mut standing,
            };
            if making.family.is_plain() { winder.plain(making) } else { winder.wound(making) }
        }
        let mut kept = core::mem::take(&mut standing.kept);
        let worth = |c: &Contender| c.score - price * c.tension;
        kept.retain(|c| worth(c) >= standing.least(c.family));
        kept.sort_by(|a, b| worth(b).total_cmp(&worth(a)).then(a.recipe.cmp(&b.recipe)));
        Best { contenders: kept, counts }
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
        let Making { family, coverings } = &makings[*making];
        let plain = family.is_plain();
        let (low, high) = if plain {
            bands.gauge
        } else {
            (bands.gauge.0 * makeable::CORE_SHARE.0, bands.gauge.1 * makeable::CORE_SHARE.1)
        };
        let dearest = coverings.first().map_or(0.0, |c| c.worth);
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
            cores.push(Bounded { arrangement: index, making: *making, diameter, tension, top });
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

/// No string of this core inside its bands is thinner.
fn thinnest(core: &JudgedCore, plain: bool) -> f64 {
    let diameter = core.central.diameter;
    if plain {
        return diameter;
    }
    let ribbon = diameter + 2.0 * space::ribbon(0);
    // The bands allow a nanometre for rounding.
    ribbon.max(core.arrangement.bands.gauge.0 - 1e-9).max(diameter / makeable::CORE_SHARE.1)
}

/// Stiffness of a layer as a tube for a modulus of one: π m³ t/8, m its mean diameter.
fn tube_of_one(under: f64, thickness: f64) -> f64 {
    let mean = under + thickness;
    PI * mean * mean * mean * thickness / 8.0
}

fn construction(core: Core, covering: &Covering, ribbon: u32) -> Construction {
    let close = |metal: usize, form, thickness| Winding {
        metal: &material::METALS[metal],
        form,
        thickness: Metre::new(thickness),
        bedding: Ratio::new(0.0),
        gap: Ratio::new(0.0),
    };
    if ribbon == PLAIN {
        return Construction::of(core, &[]);
    }
    let Stack { under, outer } = covering.stack;
    let outer = close(outer, Form::Flat, space::ribbon(ribbon));
    let inner = under.map(|u| (close(u.metal, u.form, u.thickness), u.layers));
    match inner {
        None => Construction::of(core, &[outer]),
        Some((inner, 1)) => Construction::of(core, &[inner, outer]),
        Some((inner, _)) => Construction::of(core, &[inner, inner, outer]),
    }
}

/// Stands for a ribbon where there is none.
const PLAIN: u32 = u32::MAX;

/// Winds one core.
struct Winder<'a> {
    judge: &'a Judge<'a>,
    core: &'a JudgedCore<'a>,
    bounded: &'a Bounded,
    index: u32,
    counts: &'a mut Counts,
    standing: &'a mut Standing,
}

/// The most that a core can be worth in each cell of its tensions, by what its pull and by what the bow decides.
struct Cells {
    pull: [f64; CELLS],
    bowed: [f64; CELLS],
    /// The most of any cell, less its price: of both together, and of the pull alone.
    most: (f64, f64),
}

/// Tubes of up to three layers for a modulus of one, each with its metal's place.
type Tubes = [(usize, f64); 3];

impl Winder<'_> {
    fn family(&self) -> Family {
        self.core.arrangement.family
    }

    /// The core as it is.
    fn plain(&mut self, making: &Making) {
        let gauge = self.core.central.diameter;
        let tension = self.bounded.tension.0;
        let Some(covering) = making.coverings.first() else { return };
        self.counts.wound += 1;
        let sound = self.core.central.sounding(&self.core.central.bare(), false);
        if !self.inside(tension, gauge, 0.0) || self.is_ruled_out(None, tension, sound.brilliance) {
            return;
        }
        self.counts.inside += 1;
        self.counts.judged += 1;
        let score = self.core.fixed()
            + covering.worth
            + self.core.pull(&self.core.row(tension))
            + self.core.bowed(tension, gauge, 0.0, &[])
            + self.core.bright(tension, &[])
            + self.core.rings(gauge, 0.0, &[]);
        let recipe = Recipe { core: self.index, covering: 0, ribbon: PLAIN };
        let brightness = self.judge.place(sound.brilliance);
        let family = self.family();
        self.standing.keep(Contender { score, tension, brightness, family, recipe });
    }

    /// Winds the core with every covering that could still count.
    fn wound(&mut self, making: &Making) {
        let (low, high) = self.bounded.tension;
        let width = (high - low) / CELLS as f64;
        let gauge = thinnest(self.core, false);
        let mut cells = Cells { pull: [0.0; CELLS], bowed: [0.0; CELLS], most: (0.0, 0.0) };
        let none = f64::NEG_INFINITY;
        let (mut most, mut most_pull) = (none, none);
        let mut slack = self.core.row(low);
        for cell in 0..CELLS {
            let ends = (low + width * cell as f64, low + width * (cell + 1) as f64);
            let taut = self.core.row(ends.1);
            let pull = self.core.fixed() + self.core.most(&slack, &taut);
            let bowed = self.core.most_bowed(ends.0, ends.1, gauge, self.judge.stiffest_of_all());
            (cells.pull[cell], cells.bowed[cell]) = (pull, bowed);
            let price = self.standing.price * ends.0;
            most = most.max(pull + bowed - price);
            most_pull = most_pull.max(pull - price);
            slack = taut;
        }
        cells.most = (most, most_pull);
        let bright = self.core.most_bright(low, high, &[]);
        for (index, covering) in making.coverings.iter().enumerate() {
            if most + bright + covering.worth < self.standing.least(self.family()) {
                break;
            }
            // There are a few hundred coverings.
            self.thicknesses(covering, index as u32, &cells);
        }
    }

    /// Every thickness of the outermost ribbon that keeps to the bands, four at a time.
    fn thicknesses(&mut self, covering: &Covering, index: u32, cells: &Cells) {
        let lean = &self.core.central;
        let outer = &material::METALS[covering.stack.outer];
        let (under, mut tubes, layers) = self.under(covering);
        let Some((first, last)) = self.ribbons(&under, outer.density.value) else { return };
        let (low, high) = self.bounded.tension;
        // The thinnest ribbon leaves the most brightness.
        tubes[layers] = (covering.stack.outer, tube_of_one(under.gauge, space::ribbon(first)));
        let bright = self.core.most_bright(low, high, &tubes[..=layers]);
        let (most, most_pull) = cells.most;
        let least = self.standing.least(self.family());
        if most + bright + covering.worth < least {
            return;
        }
        let metals = tubes[..=layers].iter().map(|(metal, _)| *metal);
        let gauge = under.gauge + 2.0 * space::ribbon(first);
        let bowed = self.core.most_bowed(low, high, gauge, &self.judge.stiffest(metals));
        if most_pull + bowed + bright + covering.worth < least {
            return;
        }
        let (density, modulus) = (outer.density.value, outer.modulus.value);
        let lanes = under.in_lanes();
        let mut from = first;
        while from <= last {
            let thick: [f64; LANES] =
                core::array::from_fn(|lane| space::ribbon(from + lane as u32));
            let wound = lanes.under(Form::Flat, density, modulus, Four::from(thick));
            let sound = lean.sounding(&wound, true);
            let (tensions, gauges, masses) =
                (sound.tension.to_array(), wound.gauge.to_array(), wound.mass.to_array());
            let (brilliances, inertias) = (sound.brilliance.to_array(), wound.inertia.to_array());
            for lane in 0..LANES.min((last - from + 1) as usize) {
                self.counts.wound += 1;
                let (tension, gauge, mass) = (tensions[lane], gauges[lane], masses[lane]);
                if !self.inside(tension, gauge, mass)
                    || self.is_ruled_out(Some(outer), tension, brilliances[lane])
                {
                    continue;
                }
                self.counts.inside += 1;
                let least = self.standing.least(self.family()) + self.standing.price * tension;
                // A whole number from 0 on.
                let cell = ((tension - low) / (high - low) * CELLS as f64) as usize;
                let cell = cell.min(CELLS - 1);
                let pull = cells.pull[cell] + covering.worth;
                if pull + cells.bowed[cell].min(bowed) + bright < least {
                    continue;
                }
                tubes[layers] = (covering.stack.outer, tube_of_one(under.gauge, thick[lane]));
                let tubes = &tubes[..=layers];
                let bright = self.core.bright(tension, tubes);
                if pull + cells.bowed[cell].min(bowed) + bright < least {
                    continue;
                }
                let bowed = self.core.bowed(tension, gauge, inertias[lane], tubes);
                if pull + bowed + bright < least {
                    continue;
                }
                self.counts.judged += 1;
                let rest = self.core.fixed() + covering.worth + bowed + bright;
                let score = rest + self.core.pull(&self.core.row(tension));
                if score < least {
                    continue;
                }
                let score = score + self.core.rings(gauge, mass, tubes);
                let brightness = self.judge.place(brilliances[lane]);
                let ribbon = from + lane as u32;
                let recipe = Recipe { core: self.index, covering: index, ribbon };
                let family = self.family();
                self.standing.keep(Contender { score, tension, brightness, family, recipe });
            }
            from += LANES as u32;
        }
    }

    /// The thinnest and the thickest step of the outermost ribbon that keep to the bands.
    fn ribbons(&self, under: &Wound<f64>, density: f64) -> Option<(u32, u32)> {
        let lean = &self.core.central;
        let bands = &self.core.arrangement.bands;
        let setting = &self.judge.string.setting;
        // From tensions to masses to thicknesses: each step is monotone.
        let thickness = |tension: f64| {
            let wanted = Newton::new(tension);
            let whole =
                tension::mass_for(wanted, lean.axial, setting.sounding_length, setting.pitch).get();
            let area = (whole - lean.mass - under.mass) / (density * PI);
            // π t (u + t) = area, without a difference of near equals.
            let root = (under.gauge * under.gauge + 4.0 * area).max(0.0).sqrt();
            2.0 * area / (under.gauge + root)
        };
        let (low, high) = self.bounded.tension;
        let (least, most) = makeable::CORE_SHARE;
        let thin = thickness(low)
            .max((bands.gauge.0 - under.gauge) / 2.0)
            .max((lean.diameter / most - under.gauge) / 2.0);
        let thick = thickness(high)
            .min((bands.gauge.1 - under.gauge) / 2.0)
            .min((lean.diameter / least - under.gauge) / 2.0);
        let step = |t: f64| (t * 1e3 - makeable::RIBBON_MM.0) / makeable::RIBBON_STEP_MM;
        let first = libm::ceil(step(thin) - 1e-6).max(0.0);
        let last = libm::floor(step(thick) + 1e-6).min(f64::from(space::ribbons() - 1));
        // Whole numbers between 0 and the count of ribbons.
        (first <= last).then_some((first as u32, last as u32))
    }

    /// The core under all but the outermost layer, the tubes of these layers, and how many they are.
    fn under(&self, covering: &Covering) -> (Wound<f64>, Tubes, usize) {
        let mut tubes = [(0, 0.0); 3];
        let mut wound = self.core.central.bare();
        let Some(u) = covering.stack.under else { return (wound, tubes, 0) };
        let metal = &material::METALS[u.metal];
        for tube in tubes.iter_mut().take(u.layers) {
            *tube = (u.metal, tube_of_one(wound.gauge, u.thickness));
            wound = wound.under(u.form, metal.density.value, metal.modulus.value, u.thickness);
        }
        (wound, tubes, u.layers)
    }

    /// Whether the person, the instrument or the day rules it out.
    fn is_ruled_out(&self, outer: Option<&Metal>, tension: f64, brilliance: f64) -> bool {
        let string = self.judge.string;
        // Most questions rule nothing out string by string.
        if string.faults.is_empty() && string.place.set_up != SetUp::Historical {
            return false;
        }
        let pulled = self.core.central.pulled(tension);
        let numbers = limits::Numbers {
            family: self.family(),
            metal: outer.map(|metal| metal.key),
            tension,
            brilliance,
            breaking_share: pulled.breaking_share,
            peg: pulled.peg,
        };
        limits::of_string(string, &numbers).is_some()
    }

    fn inside(&self, tension: f64, gauge: f64, mass: f64) -> bool {
        let bands = &self.core.arrangement.bands;
        let lean = &self.core.central;
        let within = |x: f64, band: (f64, f64)| x >= band.0 && x <= band.1;
        // Gauges stand on hundredths of a millimetre: a nanometre tells them apart from rounding.
        within(gauge, (bands.gauge.0 - 1e-9, bands.gauge.1 + 1e-9))
            && within(tension, bands.tension)
            && within(tension / lean.axial.get(), bands.stretch)
            && within(mass / (mass + lean.mass), bands.winding_share)
            && tension <= bands.breaking_share * lean.breaking_force()
            && (mass <= 0.0 || within(lean.diameter / gauge, makeable::CORE_SHARE))
    }
}
