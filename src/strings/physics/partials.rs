//! How far do stiffness and loss push the upper partials?

use core::f64::consts::PI;

use crate::quantity::{Cent, Hertz, Metre, Newton, NewtonSquareMetre, Pascal, Ratio};

/// Inharmonicity of a string with pinned ends: B = π² EI / (T L²), so that fₙ = n f₀ √(1 + B n²).
///
/// A bowed string locks to exact harmonics all the same: B then shows as a rounded corner and a slower
/// attack. Source: [`crate::source::FLETCHER_1964`].
#[must_use]
pub fn inharmonicity(bending: NewtonSquareMetre, tension: Newton, length: Metre) -> Ratio {
    let l = length.get();
    Ratio::new(PI * PI * bending.get() / (tension.get() * l * l))
}

/// How far partial `n` of a plucked string lies above n times the first: 600/ln 2 · ln((1 + B n²)/(1 + B)).
///
/// Source: [`crate::source::FLETCHER_1964`].
#[must_use]
pub fn sharpness_of_partial(b: Ratio, n: u32) -> Cent {
    let (b, n) = (b.get(), f64::from(n));
    Cent::new(crate::pitch::CENTS_PER_NEPER / 2.0 * (libm::log1p(b * n * n) - libm::log1p(b)))
}

/// Bending stiffness that a close winding would have as a solid tube of mean diameter D: E π D³ t / 8.
///
/// Only a small share of it turns into friction. Textbook thin tube.
#[must_use]
pub fn tube_stiffness(
    modulus: Pascal,
    mean_diameter: Metre,
    thickness: Metre,
) -> NewtonSquareMetre {
    let d = mean_diameter.get();
    NewtonSquareMetre::new(modulus.get() * PI * d * d * d * thickness.get() / 8.0)
}

/// Frequency at which the bending loss reaches `limit`: f₁ n with n² = limit · T L² / (π² Σ EI η).
///
/// From η_bend = (EI η / T)(n π / L)². Source: [`crate::source::EUPHONICS`], 7.2.2 eq. 1.
/// The winding's share of `lossy_stiffness` is a guess drawn from measured strings.
#[must_use]
pub fn brilliance(
    lossy_stiffness: NewtonSquareMetre,
    tension: Newton,
    length: Metre,
    pitch: Hertz,
    limit: Ratio,
) -> Hertz {
    let n2 = limit.get() / inharmonicity(lossy_stiffness, tension, length).get();
    Hertz::new(pitch.get() * n2.sqrt())
}
