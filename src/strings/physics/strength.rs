//! How near is the core to breaking?

use crate::quantity::{
    Degree, Hertz, KilogramPerMetre, Metre, Newton, NewtonSquareMetre, Pascal, Ratio,
};

/// Least strength of music wire, ksi, by its diameter in thousandths of an inch. Source: [`crate::source::ASTM_A228`].
const LEAST_STRENGTH: [(f64, f64); 14] = [
    (4.0, 439.0),
    (6.0, 415.0),
    (8.0, 399.0),
    (10.0, 387.0),
    (12.0, 377.0),
    (14.0, 369.0),
    (16.0, 362.0),
    (20.0, 350.0),
    (24.0, 341.0),
    (30.0, 330.0),
    (40.0, 315.0),
    (51.0, 303.0),
    (63.0, 293.0),
    (80.0, 282.0),
];

/// A thousand pounds-force a square inch, pascals: 4448.221 615 N over 645.16 mm².
const KSI: f64 = 4_448.221_615_260_5 / 645.16e-6;

/// Least strength of music wire at the diameter of the wire: the printed table, straight between its rows in the
/// logarithms of both.
///
/// Range 0.10 to 6.5 mm; outside it the diameter is clamped. Past 2.03 mm the slope of the last two rows goes on, 2 % high
/// at 6.35 mm. Source: [`crate::source::ASTM_A228`].
#[must_use]
pub fn music_wire(diameter: Metre) -> Pascal {
    let mil = diameter.mm().clamp(0.10, 6.5) / 0.0254;
    let above = LEAST_STRENGTH.iter().position(|row| row.0 > mil);
    let i = above.unwrap_or(LEAST_STRENGTH.len()).clamp(1, LEAST_STRENGTH.len() - 1);
    let (thin, thick) = (LEAST_STRENGTH[i - 1], LEAST_STRENGTH[i]);
    let slope = libm::log(thick.1 / thin.1) / libm::log(thick.0 / thin.0);
    Pascal::new(KSI * thin.1 * libm::pow(mil / thin.0, slope))
}

/// Factor on the strength of gut for its twist: cos α / cos α₀, 1 at the twist of the table.
///
/// That strength falls with twist is measured ([`crate::source::LYNCH_AIRD_TWIST`]); the form is a guess.
#[must_use]
pub fn gut_twist_factor(twist: Degree) -> Ratio {
    let c = libm::cos(twist.get().to_radians());
    Ratio::new(c / libm::cos(crate::material::GUT_TWIST_OF_TABLE.to_radians()))
}

/// Share of its strength at which the core works.
#[must_use]
pub fn share(stress: Pascal, strength: Pascal) -> Ratio {
    Ratio::new(stress.get() / strength.get())
}

/// Pitch at which the core breaks: f = √(F/μ₀) / 2L with the breaking force F and the unstretched mass.
///
/// By the trade's breaking index the stretch at break is left out, which errs on the low side by half of it.
#[must_use]
pub fn breaking_pitch(
    breaking_force: Newton,
    unstretched: KilogramPerMetre,
    length: Metre,
) -> Hertz {
    super::tension::fundamental(breaking_force, unstretched, length)
}

/// Breaking index L f of a plain string, whatever its diameter: ½ √(σ/ρ), in hertz metres.
///
/// Source: [`crate::source::WOODHOUSE_LYNCH_AIRD_2019`], eq. 19, solved for L f.
#[must_use]
pub fn breaking_index(strength: Pascal, density: crate::quantity::KilogramPerCubicMetre) -> f64 {
    0.5 * (strength.get() / density.get()).sqrt()
}

/// Bending stress over the nut, over the strength: E d/((2 R + d) σ_b). Above one a solid wire takes a set.
///
/// d is the diameter of one wire or filament: those of a strand or bundle slide; its middle lies on R + d/2. Textbook bending.
#[must_use]
pub fn over_the_nut(modulus: Pascal, filament: Metre, radius: Metre, strength: Pascal) -> Ratio {
    Ratio::new(
        modulus.get() * filament.get() / (2.0 * radius.get() + filament.get()) / strength.get(),
    )
}

/// Bending to and fro where a swinging string meets the bridge: E (d/2)(π a/L) √(T/EI).
///
/// a/L is the amplitude at mid-string over the length. Derived from the end layer of the stiff string.
#[must_use]
pub fn swing_stress(
    modulus: Pascal,
    filament: Metre,
    amplitude_share: Ratio,
    tension: Newton,
    bending: NewtonSquareMetre,
) -> Pascal {
    let curvature =
        core::f64::consts::PI * amplitude_share.get() * (tension.get() / bending.get()).sqrt();
    Pascal::new(modulus.get() * filament.get() / 2.0 * curvature)
}

/// Share of fatigue strength by Goodman: σ/σ_b + σ_a/(e σ_b), e the endurance.
///
/// Above one, endless hard playing breaks it in the end. Source: [`crate::source::SHIGLEY`], textbook form.
#[must_use]
pub fn fatigue(share: Ratio, alternating: Pascal, strength: Pascal, endurance: Ratio) -> Ratio {
    Ratio::new(share.get() + alternating.get() / (endurance.get() * strength.get()))
}
