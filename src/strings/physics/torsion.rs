//! How does the string twist under the bow?

use core::f64::consts::PI;

use crate::quantity::{KilogramPerSecond, Metre, Pascal};

/// Torsional stiffness of a full round core: G π d⁴/32, in newton metres squared.
#[must_use]
pub fn solid(shear: Pascal, diameter: Metre) -> f64 {
    let d2 = diameter.get() * diameter.get();
    shear.get() * PI * d2 * d2 / 32.0
}

/// Torsional stiffness that a close winding would have as a solid tube: G π D³ t/4, D its mean diameter.
///
/// Only a small share of it acts: turns slide on each other. Textbook thin tube.
#[must_use]
pub fn tube(shear: Pascal, mean_diameter: Metre, thickness: Metre) -> f64 {
    let d = mean_diameter.get();
    shear.get() * PI * d * d * d * thickness.get() / 4.0
}

/// Speed of torsional waves: √(K/P), K the torsional stiffness and P the polar inertia a length.
///
/// For a bare round wire it is √(G/ρ). Source: [`crate::source::EUPHONICS`], 9.5.3.
#[must_use]
pub fn speed(stiffness: f64, inertia: f64) -> f64 {
    (stiffness / inertia).sqrt()
}

/// Torsional impedance at the surface: √(K P)/a², a the string's radius.
///
/// Source: [`crate::source::EUPHONICS`], 9.5.3.
#[must_use]
pub fn impedance(stiffness: f64, inertia: f64, radius: Metre) -> KilogramPerSecond {
    let a = radius.get();
    KilogramPerSecond::new((stiffness * inertia).sqrt() / (a * a))
}
