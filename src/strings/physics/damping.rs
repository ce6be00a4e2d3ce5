//! How fast does a partial die away, and through what?
//!
//! Loss factors η = 1/Q, one a cause, added. A bowed string is driven all the time: there they round the
//! corner of its motion and raise the least bow force. A plucked or released one rings by them.

use core::f64::consts::PI;

use crate::quantity::{
    Hertz, KilogramPerCubicMetre, KilogramPerMetre, KilogramPerSecond, Metre, Newton,
    NewtonSquareMetre, Ratio,
};

/// Loss to the air: (ρₐ/ρ)(2√2 M + 1)/(2 M²) with M = (D/4) √(ω/νₐ) and ρ the string's mass over its volume.
///
/// Two terms of a series in the thickness of the layer of air: within 2 % of the exact solution for every
/// string of a bowed instrument. Source: [`crate::source::STOKES`].
#[must_use]
pub fn air(
    density_of_air: KilogramPerCubicMetre,
    viscosity: f64,
    mass: KilogramPerMetre,
    diameter: Metre,
    frequency: Hertz,
) -> Ratio {
    let d = diameter.get();
    let density = mass.get() / (PI * d * d / 4.0);
    let m = d / 4.0 * (2.0 * PI * frequency.get() / viscosity).sqrt();
    Ratio::new(
        density_of_air.get() / density * (2.0 * core::f64::consts::SQRT_2 * m + 1.0)
            / (2.0 * m * m),
    )
}

/// Loss in bending: (π n/L)² Σ EI η / T.
///
/// Source: [`crate::source::EUPHONICS`], 7.2.2 eq. 1; the winding's share is a guess drawn from measurements.
#[must_use]
pub fn bending(
    lossy_stiffness: NewtonSquareMetre,
    tension: Newton,
    length: Metre,
    n: u32,
) -> Ratio {
    let k = PI * f64::from(n) / length.get();
    Ratio::new(k * k * lossy_stiffness.get() / tension.get())
}

/// Loss to the instrument through the bridge: 2 Z₀ / (π n R), R the resistance of the bridge.
///
/// One end gives way, with the reflection −1 + 2 Z₀/R. Source: [`crate::source::EUPHONICS`], 5.1.1 eq. 8.
#[must_use]
pub fn bridge(impedance: KilogramPerSecond, resistance: KilogramPerSecond, n: u32) -> Ratio {
    Ratio::new(2.0 * impedance.get() / (PI * f64::from(n) * resistance.get()))
}

/// Loss of the string itself, on ends that do not give: (η_air + η_string + η_bending)/(1 + B n²).
///
/// Pull and bending share the energy as 1 to B n². Source: [`crate::source::WOODHOUSE_2004`], eq. 8.
#[must_use]
pub fn of_string(air: Ratio, string: Ratio, bending: Ratio, inharmonicity: Ratio, n: u32) -> Ratio {
    let n = f64::from(n);
    Ratio::new((air.get() + string.get() + bending.get()) / (1.0 + inharmonicity.get() * n * n))
}

/// Seconds until a partial has fallen by 60 dB: ln 1000/(π f η).
///
/// Source: definition of the loss factor.
#[must_use]
pub fn ring(frequency: Hertz, loss: Ratio) -> f64 {
    libm::log(1000.0) / (PI * frequency.get() * loss.get())
}
