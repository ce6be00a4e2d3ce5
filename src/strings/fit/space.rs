//! What could be made for a place: every arrangement of a core, every gauge of it, every stack of windings.
//!
//! Sizes are those that are drawn and rolled. Which of it is made, and for whom, is the search's business.

use crate::construction::{Build, Family, Form, Layout};
use crate::makeable;
use crate::material::{self, CoreMaterial};
use crate::quantity::{Degree, Metre, Ratio};

/// Twists of gut, degrees: low and high.
const GUT_TWISTS: [f64; 2] = [25.0, 45.0];
/// Lay of strands, degrees.
const LAYS: [f64; 2] = [10.0, 15.0];
/// Diameters of filaments, metres.
const FILAMENTS: [f64; 2] = [2.0e-5, 3.5e-5];
/// Twists of bundles, degrees: the more, the more elastic.
const BUNDLE_TWISTS: [f64; 2] = [8.0, 18.0];
/// Share of its circle that a bundle fills.
const BUNDLE_FILL: Ratio = Ratio::new(0.70);
/// Metals that go under another winding.
pub const INNER_METALS: [&str; 3] = ["chrome-steel", "copper", "tungsten"];
/// Thicknesses of ribbon under another winding, millimetres.
const INNER_RIBBON_MM: [f64; 2] = [0.040, 0.090];
/// Diameters of wire under another winding, millimetres.
const INNER_WIRE_MM: [f64; 2] = [0.100, 0.250];

/// Core arrangements of a family: material and build, the gauge left open.
#[must_use]
pub fn arrangements(family: Family) -> Vec<(&'static CoreMaterial, Build)> {
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
            .flat_map(|layout| LAYS.iter().map(|lay| (*layout, Degree::new(*lay))))
            .map(|(layout, lay)| (&material::SPRING_STEEL, Build::Strand { layout, lay }))
            .collect(),
        Family::Synthetic => {
            let mut all = Vec::new();
            for material in [&material::POLYAMIDE, &material::POLYESTER, &material::HIGH_MODULUS] {
                for filament in FILAMENTS.map(Metre::new) {
                    for twist in BUNDLE_TWISTS.map(Degree::new) {
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

/// Smallest step from one gauge to the next, as a share: finer ones are not told apart under the hand.
const GAUGE_STEP: f64 = 0.04;

/// Gauges from `low` to `high`, metres, on half hundredths of a millimetre, at least 4 % apart.
#[must_use]
pub fn gauges(low: f64, high: f64) -> Vec<Metre> {
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
    /// Its metal, as a place in [`material::METALS`].
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
    /// Metal of the outermost ribbon, as a place in [`material::METALS`].
    pub outer: usize,
}

/// Every stack: the outermost of any metal that goes there, over nothing, one layer or two alike.
#[must_use]
pub fn stacks() -> Vec<Stack> {
    let place = |key: &str| material::METALS.iter().position(|m| m.key == key);
    let mut unders = vec![None];
    for metal in INNER_METALS.iter().filter_map(|key| place(key)) {
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
