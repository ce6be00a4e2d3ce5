//! What a string maker can make: process limits, each common practice unless it says otherwise.

use crate::construction::{Build, Construction, Form, Layout};
use crate::material::Class;
use crate::quantity::Metre;

/// A limit of the process that a construction breaks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Limit {
    /// Ribbon thinner or thicker than it is rolled.
    Ribbon,
    /// Winding wire thinner or thicker than it is drawn.
    Wire,
    /// Wire of a strand finer than it is drawn.
    StrandWire,
    /// Core too thin or too thick for its kind.
    CoreSize,
    /// Core too thin or too thick against the outer diameter.
    CoreShare,
    /// Filaments packed more loosely or tightly than a bundle holds.
    Fill,
    /// Twist that gut is not given.
    GutTwist,
    /// A metal that does not go outermost.
    OuterMetal,
}

/// Thickness of rolled ribbon, millimetres.
pub const RIBBON_MM: (f64, f64) = (0.020, 0.200);
/// Diameter of winding wire, millimetres.
pub const WIRE_MM: (f64, f64) = (0.040, 0.600);
/// Finest wire of a strand, millimetres.
pub const FINEST_STRAND_WIRE_MM: f64 = 0.030;
/// Coarsest wire of a strand that still bends like one, millimetres.
pub const COARSEST_STRAND_WIRE_MM: f64 = 0.45;
/// Solid steel wire for bowed strings, millimetres.
pub const SOLID_STEEL_MM: (f64, f64) = (0.20, 1.20);
/// Gut, millimetres.
pub const GUT_MM: (f64, f64) = (0.38, 4.00);
/// Bundle of filaments, millimetres.
pub const BUNDLE_MM: (f64, f64) = (0.25, 3.50);
/// Single filament, millimetres.
pub const MONOFILAMENT_MM: (f64, f64) = (0.30, 2.50);
/// Core diameter over outer diameter, wound.
pub const CORE_SHARE: (f64, f64) = (0.35, 0.95);
/// Share of its circle that a twisted bundle fills.
pub const FILL: (f64, f64) = (0.60, 0.75);
/// Twist of gut, degrees: measured on strings of every kind ([`crate::source::LYNCH_AIRD_TWIST`]).
pub const GUT_TWIST: (f64, f64) = (23.5, 58.3);
/// Step in which ribbon is rolled, millimetres.
pub const RIBBON_STEP_MM: f64 = 0.005;

/// The thinnest ribbon that goes outermost over what is so thick, both in millimetres: a thinner one wears through under
/// finger and bow, and only the finest strings, the wound top string of a violin, have one (common practice, no source).
#[must_use]
pub fn thinnest_outer_ribbon_mm(under_mm: f64) -> f64 {
    if under_mm < 0.34 { RIBBON_MM.0 } else { 0.045 }
}

/// Whether ribbon of that thickness goes outermost over what is so thick, both in millimetres.
#[must_use]
pub fn outer_ribbon_is_makeable(thickness_mm: f64, under_mm: f64) -> bool {
    within(thickness_mm, (thinnest_outer_ribbon_mm(under_mm), RIBBON_MM.1))
}

fn within(value: f64, range: (f64, f64)) -> bool {
    value >= range.0 - 1e-9 && value <= range.1 + 1e-9
}

/// The first limit that a construction breaks, if any.
#[must_use]
pub fn broken(construction: &Construction) -> Option<Limit> {
    let core = &construction.core;
    let d = core.diameter.mm();
    let size = match (core.material.class, core.build) {
        (Class::Gut, Build::Twisted { twist }) => {
            if !within(twist.get(), GUT_TWIST) {
                return Some(Limit::GutTwist);
            }
            GUT_MM
        }
        (Class::Steel, Build::Strand { layout, .. }) => {
            if !strand_wire_is_makeable(core.diameter, layout) {
                return Some(Limit::StrandWire);
            }
            (0.0, f64::INFINITY)
        }
        (Class::Steel, _) => SOLID_STEEL_MM,
        (_, Build::Multifilament { fill, .. }) => {
            if !within(fill.get(), FILL) {
                return Some(Limit::Fill);
            }
            BUNDLE_MM
        }
        _ => MONOFILAMENT_MM,
    };
    if !within(d, size) {
        return Some(Limit::CoreSize);
    }
    for winding in construction.windings() {
        let t = winding.thickness.mm();
        match winding.form {
            Form::Flat if !within(t, RIBBON_MM) => return Some(Limit::Ribbon),
            Form::Round if !within(t, WIRE_MM) => return Some(Limit::Wire),
            _ => {}
        }
    }
    if let Some(outer) = construction.outer_winding() {
        if !outer.metal.outer {
            return Some(Limit::OuterMetal);
        }
        let thickness = outer.thickness.mm();
        let under = construction.outer_diameter().mm() - 2.0 * thickness;
        if outer.form == Form::Flat && !outer_ribbon_is_makeable(thickness, under) {
            return Some(Limit::Ribbon);
        }
        if !core_share_is_makeable(core.diameter.get(), construction.outer_diameter().get()) {
            return Some(Limit::CoreShare);
        }
    }
    None
}

/// Whether a core of that diameter is neither too thin nor too thick under windings up to that outer diameter.
#[must_use]
pub fn core_share_is_makeable(diameter: f64, outer: f64) -> bool {
    within(diameter / outer, CORE_SHARE)
}

/// Whether a strand of that diameter and layout has wires that are drawn.
#[must_use]
pub fn strand_wire_is_makeable(diameter: Metre, layout: Layout) -> bool {
    within(
        diameter.mm() / layout.diameter_in_wires(),
        (FINEST_STRAND_WIRE_MM, COARSEST_STRAND_WIRE_MM),
    )
}
