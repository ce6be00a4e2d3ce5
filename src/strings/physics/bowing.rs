//! How briskly may the bow start it?

use crate::quantity::{Kilogram, KilogramPerMetre, Metre};

/// Highest bow acceleration, for each newton of bow force, from which clean motion grows at once.
///
/// a/F = β(1−β) [(3−4β)μs − μd − 2√((1−2β)(2(1−β)μs² − μs μd))] / [(1−2β) 2m], m the mass of the sounding string.
/// Lossless string, integer 1/β. Source: [`crate::source::GUETTLER_2002`], eq. 8b.
#[must_use]
pub fn attack(
    string_mass: Kilogram,
    beta: f64,
    static_friction: f64,
    sliding_friction: f64,
) -> f64 {
    let (b, s, d) = (beta, static_friction, sliding_friction);
    let root = ((1.0 - 2.0 * b) * (2.0 * (1.0 - b) * s * s - s * d)).sqrt();
    b * (1.0 - b) * ((3.0 - 4.0 * b) * s - d - 2.0 * root)
        / ((1.0 - 2.0 * b) * 2.0 * string_mass.get())
}

/// Lowest bow acceleration for each newton: β(1−β) [3μs − μd − 2√(2μs² − μs μd)] / 2m.
///
/// Source: [`crate::source::GUETTLER_2002`], eq. 8a.
#[must_use]
pub fn gentlest_attack(
    string_mass: Kilogram,
    beta: f64,
    static_friction: f64,
    sliding_friction: f64,
) -> f64 {
    let (b, s, d) = (beta, static_friction, sliding_friction);
    b * (1.0 - b) * (3.0 * s - d - 2.0 * (2.0 * s * s - s * d).sqrt()) / (2.0 * string_mass.get())
}

/// Mass of the sounding part of the string.
#[must_use]
pub fn sounding_mass(mass: KilogramPerMetre, length: Metre) -> Kilogram {
    Kilogram::new(mass.get() * length.get())
}
