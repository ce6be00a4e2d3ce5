//! What could be made for a position: every arrangement of a core, every gauge of it, every stack of windings.
//!
//! Sizes are those that are drawn and rolled. Which of it is made, and for whom, is the business of
//! [`super::admission`].

use crate::construction::{Build, Construction, Core, Family, Form, Layout, Winding};
use crate::makeable;
use crate::material::{self, CoreMaterial};
use crate::quantity::{Degree, Metre, Ratio};

/// Twists of gut, degrees: low and high.
const GUT_TWISTS: [f64; 2] = [25.0, 45.0];
/// What is free in the cores of strands and bundles.
#[derive(Clone, Copy, Debug)]
pub struct Grid {
    /// Lay of strands, degrees.
    lays: &'static [f64],
    /// Diameters of filaments, metres.
    filaments: &'static [f64],
    /// Twists of bundles, degrees: the more, the more elastic.
    twists: &'static [f64],
    /// Metals that go under another winding.
    pub inner_metals: &'static [&'static str],
}

/// What the search chooses from.
pub const SPACE: Grid = Grid {
    lays: &[10.0, 15.0],
    filaments: &[2.0e-5, 3.5e-5],
    twists: &[8.0, 18.0],
    inner_metals: &["chrome-steel", "copper", "tungsten"],
};

/// What the sample of all that is made takes ([`super::candidates`]): the middle of each, once.
pub const SAMPLE: Grid = Grid {
    lays: &[12.0],
    filaments: &[2.5e-5],
    twists: &[12.0],
    inner_metals: &["chrome-steel", "copper", "silver", "tungsten"],
};

/// Share of its circle that a bundle fills.
const BUNDLE_FILL: Ratio = Ratio::new(0.70);
/// Thicknesses of ribbon under another winding, millimetres.
const INNER_RIBBON_MM: [f64; 2] = [0.040, 0.090];
/// Diameters of wire under another winding, millimetres.
const INNER_WIRE_MM: [f64; 2] = [0.100, 0.250];

/// Core arrangements of a family: material and build, the gauge left open.
#[must_use]
pub fn arrangements(family: Family, grid: &Grid) -> Vec<(&'static CoreMaterial, Build)> {
    let gut = || {
        GUT_TWISTS
            .iter()
            .map(|t| (&material::GUT, Build::Twisted { twist: Degree::new(*t) }))
            .collect()
    };
    let solid =
        || vec![(&material::SPRING_STEEL, Build::Solid), (&material::STAINLESS, Build::Solid)];
    match family {
        Family::PlainGut | Family::WoundGut => gut(),
        Family::PlainSteel | Family::WoundSteel => solid(),
        Family::StrandedSteel => Layout::ALL
            .iter()
            .flat_map(|layout| grid.lays.iter().map(|lay| (*layout, Degree::new(*lay))))
            .map(|(layout, lay)| (&material::SPRING_STEEL, Build::Strand { layout, lay }))
            .collect(),
        Family::Synthetic => {
            let mut all = Vec::new();
            for material in [&material::POLYAMIDE, &material::POLYESTER, &material::HIGH_MODULUS] {
                for filament in grid.filaments.iter().copied().map(Metre::new) {
                    for twist in grid.twists.iter().copied().map(Degree::new) {
                        let fill = BUNDLE_FILL;
                        all.push((material, Build::Multifilament { filament, fill, twist }));
                    }
                }
            }
            all
        }
        Family::Monofilament => vec![(&material::POLYAMIDE, Build::Solid)],
    }
}

/// The thinnest and the thickest core under strings of a family, whose outer gauges lie in that band, metres.
#[must_use]
pub fn core_range(family: Family, (thin, thick): (f64, f64)) -> (f64, f64) {
    let (least, most) = if family.is_plain() { (1.0, 1.0) } else { makeable::CORE_SHARE };
    (thin * least, thick * most)
}

/// Gauges of the cores under such strings.
#[must_use]
pub fn core_gauges(family: Family, band: (f64, f64)) -> Vec<Metre> {
    let (low, high) = core_range(family, band);
    gauges(low, high)
}

/// Smallest step from one gauge to the next, as a share: finer ones are not told apart under the hand.
const GAUGE_STEP: f64 = 0.04;

/// Gauges from `low` to `high`, metres, on half hundredths of a millimetre, at least 4 % apart.
fn gauges(low: f64, high: f64) -> Vec<Metre> {
    const HALF: f64 = 0.005;
    let (low, high) = (low * 1e3 / HALF, high * 1e3 / HALF);
    // Counted in whole half hundredths, so that every gauge is a round number of them.
    let mut steps = libm::ceil(low - 1e-6);
    let mut all = Vec::new();
    while steps <= high + 1e-6 {
        all.push(Metre::new(steps * HALF * 1e-3));
        steps = (steps + 1.0).max(libm::round(steps * (1.0 + GAUGE_STEP)));
    }
    all
}

/// Thickness of ribbon in steps of its rolling, from the thinnest to the thickest.
#[must_use]
pub fn ribbon(step: u32) -> f64 {
    (makeable::RIBBON_MM.0 + f64::from(step) * makeable::RIBBON_STEP_MM) * 1e-3
}

/// How many thicknesses of ribbon are rolled.
#[must_use]
pub fn ribbons() -> u32 {
    let (thin, thick) = makeable::RIBBON_MM;
    // A small whole number.
    libm::round((thick - thin) / makeable::RIBBON_STEP_MM) as u32 + 1
}

/// What lies under the outermost ribbon: nothing, one layer, or two alike.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Under {
    /// Its metal, as an index into [`material::METALS`].
    pub metal: usize,
    /// Wire or ribbon.
    pub form: Form,
    /// Thickness, metres.
    pub thickness: f64,
    /// One layer or two.
    pub layers: usize,
}

/// A stack of windings whose outermost ribbon has its thickness left open.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stack {
    /// What lies under the outermost layer.
    pub under: Option<Under>,
    /// Metal of the outermost ribbon, as an index into [`material::METALS`].
    pub outer: usize,
}

impl Stack {
    /// Number of layers, the outermost included.
    #[must_use]
    pub fn layers(&self) -> usize {
        1 + self.under.map_or(0, |under| under.layers)
    }

    /// This core under the stack, the outermost ribbon of that thickness, metres.
    #[must_use]
    pub fn round(&self, core: Core, ribbon: f64) -> Construction {
        let close = |metal: usize, form, thickness| Winding {
            metal: &material::METALS[metal],
            form,
            thickness: Metre::new(thickness),
            bedding: Ratio::new(0.0),
            gap: Ratio::new(0.0),
        };
        let outer = close(self.outer, Form::Flat, ribbon);
        let inner = self.under.map(|u| close(u.metal, u.form, u.thickness));
        match inner {
            None => Construction::of(core, &[outer]),
            Some(inner) if self.layers() == 2 => Construction::of(core, &[inner, outer]),
            Some(inner) => Construction::of(core, &[inner, inner, outer]),
        }
    }
}

/// Every stack: the outermost of any metal that goes there, over nothing, one layer or two alike.
#[must_use]
pub fn stacks() -> Vec<Stack> {
    let index = |key: &str| material::METALS.iter().position(|m| m.key == key);
    let mut unders = vec![None];
    for metal in SPACE.inner_metals.iter().filter_map(|key| index(key)) {
        for layers in [1, 2] {
            for (form, sizes) in [(Form::Flat, INNER_RIBBON_MM), (Form::Round, INNER_WIRE_MM)] {
                for mm in sizes {
                    unders.push(Some(Under { metal, form, thickness: mm * 1e-3, layers }));
                }
            }
        }
    }
    let outers = material::METALS.iter().enumerate().filter(|(_, m)| m.outer).map(|(i, _)| i);
    outers
        .flat_map(|outer| unders.iter().map(move |under| Stack { under: *under, outer }))
        .collect()
}
