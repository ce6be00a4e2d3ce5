//! Winds one core with every covering that could still count: what is left out is bounded, what remains is judged.
//!
//! The tensions that the core may have are cut into cells, in each of which what the pull and what the bow decide is
//! bounded. A stack of windings is bounded by the brightness that its thinnest form leaves; what remains is wound four
//! thicknesses of the outermost ribbon side by side, and judged in full only where its own bound could still count.

use core::f64::consts::PI;

use crate::construction::{Construction, Core, CoreType, Form};
use crate::makeable;
use crate::material::{self, Metal};
use crate::physics::tension;
use crate::quantity::Newton;
use crate::report::{Four, LANES, Wound};

use super::bounds::{Bounded, CELLS, Cells};
use super::contender::{Contender, Counts, Incumbents, Recipe};
use super::offered::{Covering, Making};
use crate::fit::admission::{self, Banded};
use crate::fit::flaw::Numbers;
use crate::fit::neighbours::Staying;
use crate::fit::score::{Judge, JudgedCore};
use crate::fit::space;
use crate::fit::work::Work;

/// Steps of work that it takes to wind four ribbons, and to judge a string in every draw.
const WINDING_STEPS: u64 = 6;
const JUDGING_STEPS: u64 = 40;
/// Steps of work that it takes to bound a core in its cells.
const CELL_STEPS: u64 = 300;

/// Stiffness of a layer as a tube for a modulus of one: π m³ t/8, m its mean diameter.
fn tube_of_one(under: f64, thickness: f64) -> f64 {
    let mean = under + thickness;
    PI * mean * mean * mean * thickness / 8.0
}

pub(super) fn construction(core: Core, covering: &Covering, ribbon: u32) -> Construction {
    if ribbon == PLAIN {
        return Construction::of(core, &[]);
    }
    covering.stack.round(core, space::ribbon(ribbon))
}

/// Stands for a ribbon where there is none.
const PLAIN: u32 = u32::MAX;

/// Winds one core.
pub(super) struct Winder<'a> {
    pub(super) judge: &'a Judge<'a>,
    pub(super) core: &'a JudgedCore<'a>,
    pub(super) bounded: &'a Bounded,
    pub(super) staying: &'a Staying,
    pub(super) index: u32,
    pub(super) counts: &'a mut Counts,
    pub(super) incumbents: &'a mut Incumbents,
    pub(super) work: &'a mut Work,
}

/// Tubes of up to three layers for a modulus of one, each with its metal's position.
type Tubes = [(usize, f64); 3];

impl Winder<'_> {
    fn core_type(&self) -> CoreType {
        self.bounded.core_type
    }

    /// The core as it is.
    pub(super) fn plain(&mut self, making: &Making) {
        let gauge = self.core.central.diameter;
        let tension = self.bounded.tension.0;
        let Some(covering) = making.coverings.first() else { return };
        self.counts.wound += 1;
        let sound = self.core.central.sounding(&self.core.central.bare(), false);
        if !self.is_admitted(None, (tension, sound.brilliance), gauge, 0.0) {
            return;
        }
        self.counts.inside += 1;
        self.counts.judged += 1;
        let score = covering.worth
            + self.core.pull(&self.core.row(tension))
            + self.core.bowed(tension, gauge, 0.0, &[])
            + self.core.bright(tension, &[])
            + self.core.rings(gauge, 0.0, &[]);
        self.work.take(JUDGING_STEPS);
        let recipe = Recipe { core: self.index, covering: 0, ribbon: PLAIN };
        self.keep(score, tension, self.judge.brightness_of(sound.brilliance), recipe);
    }

    fn keep(&mut self, score: f64, tension: f64, brightness: f64, recipe: Recipe) {
        let (ln_tension, core_type) = (libm::log(tension), self.core_type());
        let alone =
            Contender { score, staying: 0.0, tension, ln_tension, brightness, core_type, recipe };
        self.incumbents.keep(alone.beside(self.staying));
    }

    /// Winds the core with every covering that could still count.
    pub(super) fn wound(&mut self, making: &Making) {
        let cells = self.bounded.cells.get_or_init(|| {
            self.work.take(CELL_STEPS);
            Cells::of(self.judge, self.core, self.bounded.tension)
        });
        let most = cells.most(self.incumbents.price, self.staying);
        for (index, covering) in making.coverings.iter().enumerate() {
            if most.0 + cells.bright + covering.worth < self.incumbents.least(self.core_type()) {
                break;
            }
            if self.incumbents.is_out(self.core_type(), self.work) {
                break;
            }
            // There are a few hundred coverings.
            self.thicknesses(covering, index as u32, cells, most);
        }
    }

    /// Every thickness of the outermost ribbon that keeps to the bands, four at a time.
    fn thicknesses(&mut self, covering: &Covering, index: u32, cells: &Cells, most: (f64, f64)) {
        let lean = &self.core.central;
        let outer = &material::METALS[covering.stack.outer];
        let (under, mut tubes, layers) = self.under(covering);
        let (low, high) = self.bounded.tension;
        let taut = self.tautest(covering, cells);
        if taut < low {
            return;
        }
        let Some((first, last)) = self.ribbons(&under, outer.density.value, taut) else { return };
        // The thinnest ribbon leaves the most brightness.
        tubes[layers] = (covering.stack.outer, tube_of_one(under.gauge, space::ribbon(first)));
        self.work.take(WINDING_STEPS);
        let bright = self.core.most_bright(low, high, &tubes[..=layers]);
        let (most, most_pull) = most;
        let least = self.incumbents.least(self.core_type());
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
            self.work.take(WINDING_STEPS);
            let wound = lanes.under(Form::Flat, density, modulus, Four::from(thick));
            let sound = lean.sounding(&wound, true);
            let (tensions, gauges, masses) =
                (sound.tension.to_array(), wound.gauge.to_array(), wound.mass.to_array());
            let (brilliances, inertias) = (sound.brilliance.to_array(), wound.inertia.to_array());
            for lane in 0..LANES.min((last - from + 1) as usize) {
                self.counts.wound += 1;
                let (tension, gauge, mass) = (tensions[lane], gauges[lane], masses[lane]);
                if !self.is_admitted(Some(outer), (tension, brilliances[lane]), gauge, mass) {
                    continue;
                }
                self.counts.inside += 1;
                let staying = || {
                    let brightness = self.judge.brightness_of(brilliances[lane]);
                    self.staying.term(libm::log(tension), brightness)
                };
                let staying = if self.staying.are_none() { 0.0 } else { staying() };
                let least = self.incumbents.least(self.core_type())
                    + self.incumbents.price * tension
                    - staying;
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
                self.work.take(JUDGING_STEPS);
                let rest = covering.worth + bowed + bright;
                let score = rest + self.core.pull(&self.core.row(tension));
                if score < least {
                    continue;
                }
                let score = score + self.core.rings(gauge, mass, tubes);
                let ribbon = from + lane as u32;
                let recipe = Recipe { core: self.index, covering: index, ribbon };
                self.keep(score, tension, self.judge.brightness_of(brilliances[lane]), recipe);
            }
            from += LANES as u32;
        }
    }

    /// The highest tension that could still count: where the best at some price is looked for, what pulls more costs more
    /// than it could be worth.
    fn tautest(&self, covering: &Covering, cells: &Cells) -> f64 {
        let (_, high) = self.bounded.tension;
        let price = self.incumbents.price;
        if price <= 0.0 || !self.incumbents.is_for_the_best() {
            return high;
        }
        let top = cells.top() + cells.bright + covering.worth;
        high.min((top - self.incumbents.least(self.core_type())) / price)
    }

    /// The thinnest and the thickest step of the outermost ribbon that keep to the bands and pull no more than `taut`.
    fn ribbons(&self, under: &Wound<f64>, density: f64, taut: f64) -> Option<(u32, u32)> {
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
        let (low, _) = self.bounded.tension;
        let (least, most) = makeable::CORE_SHARE;
        let thin = thickness(low)
            .max((bands.gauge.0 - under.gauge) / 2.0)
            .max((lean.diameter / most - under.gauge) / 2.0);
        let thick = thickness(taut)
            .min((bands.gauge.1 - under.gauge) / 2.0)
            .min((lean.diameter / least - under.gauge) / 2.0);
        let thin = thin.max(makeable::thinnest_outer_ribbon_mm(under.gauge * 1e3) * 1e-3);
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

    /// Whether the string may be recommended; of its windings nothing else is open once they are rolled and drawn.
    fn is_admitted(
        &self,
        outer: Option<&Metal>,
        (tension, brilliance): (f64, f64),
        gauge: f64,
        mass: f64,
    ) -> bool {
        let lean = &self.core.central;
        let banded = Banded {
            gauge,
            tension,
            stretch: tension / lean.axial.get(),
            winding_share: mass / (mass + lean.mass),
            breaking_share: tension / lean.breaking_force(),
        };
        let numbers = || {
            let pulled = lean.pulled(tension);
            Numbers {
                family: self.core.arrangement.family,
                metal: outer.map(|metal| metal.key),
                tension,
                brilliance,
                breaking_share: pulled.breaking_share,
                peg: pulled.peg,
            }
        };
        admission::of_bands(&self.core.arrangement.bands, &banded).is_none()
            && (mass <= 0.0 || makeable::core_share_is_makeable(lean.diameter, gauge))
            && admission::of_settling(self.judge.string, lean, tension).is_none()
            && admission::of_answers(self.judge.string, numbers).is_none()
    }
}
