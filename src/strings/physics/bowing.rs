//! How briskly may the bow start it?

use crate::quantity::{Kilogram, KilogramPerMetre, KilogramPerSecond, Metre, Newton, Ratio};

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

/// Largest bow force for clean motion: 2 Z₀ v/(β (μs − μd)).
///
/// Source: [`crate::source::SCHELLENG_1973`].
#[must_use]
pub fn greatest_force(
    impedance: KilogramPerSecond,
    speed: f64,
    beta: f64,
    static_friction: f64,
    sliding_friction: f64,
) -> Newton {
    Newton::new(2.0 * impedance.get() * speed / (beta * (static_friction - sliding_friction)))
}

/// Least bow force by Raman and Schelleng: Z₀² v/(2 β² R (μs − μd)), R the resistance of the bridge.
///
/// Disputed: see [`least_force_as_measured`]. Source: [`crate::source::SCHELLENG_1973`].
#[must_use]
pub fn least_force(
    impedance: KilogramPerSecond,
    resistance: KilogramPerSecond,
    speed: f64,
    beta: f64,
    static_friction: f64,
    sliding_friction: f64,
) -> Newton {
    let z = impedance.get();
    Newton::new(
        z * z * speed
            / (2.0 * beta * beta * resistance.get() * (static_friction - sliding_friction)),
    )
}

/// Least bow force as measured, at any bow speed: k Z₀²/β².
///
/// Source: [`crate::source::SCHOONDERWALDT_2008`], one string; that it goes with Z₀² is taken from the theory.
#[must_use]
pub fn least_force_as_measured(
    coefficient: f64,
    impedance: KilogramPerSecond,
    beta: f64,
) -> Newton {
    let z = impedance.get();
    Newton::new(coefficient * z * z / (beta * beta))
}

/// The largest and the least force with friction that falls with speed: v becomes v + β v₀ in both.
///
/// Hyperbolic friction with the speed constant v₀. Source: [`crate::source::SCHOONDERWALDT_2008`], eqs. 4 and 5.
#[must_use]
pub fn effective_speed(speed: f64, beta: f64, friction_speed: f64) -> f64 {
    speed + beta * friction_speed
}

/// Room between the two forces in decibels: 20 log₁₀ of their ratio, 4 β R/Z₀ by Schelleng.
#[must_use]
pub fn window(greatest: Newton, least: Newton) -> f64 {
    20.0 * libm::log10(greatest.get() / least.get())
}

/// Least over largest force at the strongest note of the body: Z₀/(4 β R). Near one, no force is right: a wolf.
///
/// Source: [`crate::source::SCHELLENG_1973`]; the resistance there is a guess.
#[must_use]
pub fn wolf(impedance: KilogramPerSecond, peak_resistance: KilogramPerSecond, beta: f64) -> Ratio {
    Ratio::new(impedance.get() / (4.0 * beta * peak_resistance.get()))
}
