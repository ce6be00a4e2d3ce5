//! What can the strings on a core be worth at most? Upper bounds by the tensions that the core may have.

use core::cell::OnceCell;

use crate::construction::{Construction, Core, CoreType};
use crate::makeable;
use crate::physics::tension;
use crate::quantity::{KilogramPerMetre, Metre};

use super::offered::Making;
use crate::fit::neighbours::Staying;
use crate::fit::score::{Arrangement, Judge, JudgedCore};
use crate::fit::space;

/// In how many cells of tension a core is bounded before it is wound.
pub(super) const CELLS: usize = 10;
/// A core and the tensions it may have.
pub(super) struct Bounded {
    pub(super) arrangement: usize,
    pub(super) making: usize,
    pub(super) core_type: CoreType,
    pub(super) diameter: Metre,
    pub(super) tension: (f64, f64),
    /// The most that it can be worth, whatever is wound round it and however it answers the bow.
    pub(super) top: f64,
    /// The most that the bow can make of it, known once it has been met in every draw.
    pub(super) bowed: OnceCell<f64>,
    /// The most that it can be worth in each cell of its tensions, known once it has been wound.
    pub(super) cells: OnceCell<Cells>,
}

/// Every core whose bands leave it a tension, bounded from above, in falling order.
pub(super) fn bounded(
    judge: &Judge,
    makings: &[Making],
    arrangements: &[(usize, Arrangement)],
) -> Vec<Bounded> {
    let mut cores = Vec::new();
    for (index, (making, arrangement)) in arrangements.iter().enumerate() {
        let bands = &arrangement.bands;
        let dearest = makings[*making].dearest();
        let family = makings[*making].family;
        for diameter in space::core_gauges(family, bands.gauge) {
            let Arrangement { material, build, .. } = *arrangement;
            if makeable::broken(&Construction::of(Core { material, build, diameter }, &[]))
                .is_some()
            {
                continue;
            }
            let core = judge.core(arrangement, diameter);
            let Some(tension) = tensions(judge, &core, family.is_plain()) else { continue };
            let (slack, taut) = (core.row(tension.0), core.row(tension.1));
            let bright = core.most_bright(tension.0, tension.1, &[]);
            let top = core.most(&slack, &taut) + bright + dearest;
            let (bowed, cells) = (OnceCell::new(), OnceCell::new());
            cores.push(Bounded {
                arrangement: index,
                making: *making,
                core_type: CoreType::of(family, material),
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

/// No string of this core inside its bands is thinner.
pub(super) fn thinnest(core: &JudgedCore, plain: bool) -> f64 {
    let diameter = core.central.diameter;
    if plain {
        return diameter;
    }
    let ribbon = diameter + 2.0 * space::ribbon(0);
    // The bands allow a nanometre for rounding.
    ribbon.max(core.arrangement.bands.gauge.0 - 1e-9).max(diameter / makeable::CORE_SHARE.1)
}

/// The most that a core can be worth in each cell of its tensions, by what its pull and by what the bow decides.
#[derive(Clone, Debug)]
pub(super) struct Cells {
    /// The lowest tension of the first cell, and how wide each is.
    low: f64,
    width: f64,
    pub(super) pull: [f64; CELLS],
    pub(super) bowed: [f64; CELLS],
    /// What the brightness can be worth in any.
    pub(super) bright: f64,
}

impl Cells {
    pub(super) fn of(judge: &Judge, core: &JudgedCore, (low, high): (f64, f64)) -> Self {
        let width = (high - low) / CELLS as f64;
        let gauge = thinnest(core, false);
        let bright = core.most_bright(low, high, &[]);
        let mut cells = Self { low, width, pull: [0.0; CELLS], bowed: [0.0; CELLS], bright };
        let mut slack = core.row(low);
        for cell in 0..CELLS {
            let ends = cells.ends(cell);
            let taut = core.row(ends.1);
            cells.pull[cell] = core.most(&slack, &taut);
            cells.bowed[cell] = core.most_bowed(ends.0, ends.1, gauge, judge.stiffest_of_all());
            slack = taut;
        }
        cells
    }

    fn ends(&self, cell: usize) -> (f64, f64) {
        (self.low + self.width * cell as f64, self.low + self.width * (cell + 1) as f64)
    }

    /// The most of any cell, whatever it costs.
    pub(super) fn top(&self) -> f64 {
        self.pull.iter().zip(&self.bowed).map(|(a, b)| a + b).fold(f64::NEG_INFINITY, f64::max)
    }

    /// The most of any cell beside the strings that stay, less its price: of both together, and of the pull alone.
    pub(super) fn most(&self, price: f64, staying: &Staying) -> (f64, f64) {
        let (mut most, mut most_pull) = (f64::NEG_INFINITY, f64::NEG_INFINITY);
        for cell in 0..CELLS {
            let ends = self.ends(cell);
            let price = price * ends.0 - staying.most(ends.0, ends.1);
            most = most.max(self.pull[cell] + self.bowed[cell] - price);
            most_pull = most_pull.max(self.pull[cell] - price);
        }
        (most, most_pull)
    }
}
