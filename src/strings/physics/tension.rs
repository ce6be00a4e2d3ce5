//! What tension brings the string to pitch, and how far does that stretch it?

use crate::quantity::{
    Hertz, KilogramPerMetre, KilogramPerSecond, Metre, Newton, NewtonPerMetre, Pascal, Ratio,
    SquareMetre,
};

/// Fundamental of an ideal flexible string: f = √(T/μ) / 2L.
///
/// Holds while bending stiffness is small; a violin string departs from it by less than 0.01 %.
/// Source: [`crate::source::MERSENNE`].
#[must_use]
pub fn fundamental(tension: Newton, mass: KilogramPerMetre, length: Metre) -> Hertz {
    Hertz::new((tension.get() / mass.get()).sqrt() / (2.0 * length.get()))
}

/// Tension that brings a string to pitch, its mass given at pitch: T = 4 L² f² μ.
///
/// Source: [`crate::source::MERSENNE`].
#[must_use]
pub fn rigid(mass: KilogramPerMetre, length: Metre, pitch: Hertz) -> Newton {
    let lf = length.get() * pitch.get();
    Newton::new(4.0 * lf * lf * mass.get())
}

/// Tension that brings an elastic string to pitch, its mass given unstretched.
///
/// The string thins as it stretches, so T (1 + T/EA) = 4 L² f² μ₀, whose positive root this is.
/// Linear elasticity; derived from [`rigid`] and [`super::mass::stretched`].
#[must_use]
pub fn at_pitch(
    unstretched: KilogramPerMetre,
    axial_stiffness: Newton,
    length: Metre,
    pitch: Hertz,
) -> Newton {
    let ea = axial_stiffness.get();
    let t0 = rigid(unstretched, length, pitch).get();
    // Written so that a stiff core (EA → ∞) loses no digits.
    Newton::new(2.0 * t0 / (1.0 + (1.0 + 4.0 * t0 / ea).sqrt()))
}

/// Mass a length, unstretched, that comes to pitch at the tension `wanted`: the inverse of [`at_pitch`].
#[must_use]
pub fn mass_for(
    wanted: Newton,
    axial_stiffness: Newton,
    length: Metre,
    pitch: Hertz,
) -> KilogramPerMetre {
    let lf = length.get() * pitch.get();
    let t = wanted.get();
    KilogramPerMetre::new(t * (1.0 + t / axial_stiffness.get()) / (4.0 * lf * lf))
}

/// Stretch at pitch: ε = T/EA.
///
/// Source: Hooke's law.
#[must_use]
pub fn stretch(tension: Newton, axial_stiffness: Newton) -> Ratio {
    Ratio::new(tension.get() / axial_stiffness.get())
}

/// Tension at a stretch: T = EA ε, the inverse of [`stretch`].
///
/// Source: Hooke's law.
#[must_use]
pub fn pull_of(stretch: Ratio, axial_stiffness: Newton) -> Newton {
    Newton::new(stretch.get() * axial_stiffness.get())
}

/// Stress in the most strained filament: T over the effective area, which is EA/E.
#[must_use]
pub fn stress(tension: Newton, effective: SquareMetre) -> Pascal {
    Pascal::new(tension.get() / effective.get())
}

/// Stress that pitch alone fixes in a plain string: σ = 4 ρ (L f)².
///
/// A thicker plain string is not safer from breaking. Source: [`crate::source::WOODHOUSE_LYNCH_AIRD_2019`], eq. 19.
#[must_use]
pub fn stress_of_plain(
    density: crate::quantity::KilogramPerCubicMetre,
    length: Metre,
    pitch: Hertz,
) -> Pascal {
    let lf = length.get() * pitch.get();
    Pascal::new(4.0 * density.get() * lf * lf)
}

/// Lateral stiffness at mid-string, what finger and bow feel: F/δ = 4T/L for a small pull.
///
/// Source: [`crate::source::WOODHOUSE_LYNCH_AIRD_2019`], eq. 10.
#[must_use]
pub fn lateral_stiffness(tension: Newton, length: Metre) -> NewtonPerMetre {
    NewtonPerMetre::new(4.0 * tension.get() / length.get())
}

/// Wave impedance: Z₀ = √(T μ).
///
/// Source: [`crate::source::WOODHOUSE_LYNCH_AIRD_2019`], eq. 8.
#[must_use]
pub fn impedance(tension: Newton, mass: KilogramPerMetre) -> KilogramPerSecond {
    KilogramPerSecond::new((tension.get() * mass.get()).sqrt())
}
