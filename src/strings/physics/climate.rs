//! How far does the room move its pitch?
//!
//! Three of the five parts of drift have a formula here: the string's warmth, its moisture, the body.
//! The creep of gut above its wettest state, seating and pegs have none and stay a judgement.

use crate::pitch::CENTS_PER_NEPER;
use crate::quantity::{Cent, Newton, Ratio};

/// Water in collagen, as a share of its dry mass, at a relative humidity.
///
/// X = Xm C K a / ((1 − K a)(1 − K a + C K a)). Source: [`crate::source::HERITAGE_2013`], fitted;
/// largest error 0.95 points of per cent between 5 and 95 %.
#[must_use]
pub fn collagen_water(humidity: Ratio) -> Ratio {
    let (xm, c, k) = crate::constant::COLLAGEN_GAB;
    let ka = k * humidity.get();
    Ratio::new(xm * c * ka / ((1.0 - ka) * (1.0 - ka + c * ka)))
}

/// Pitch change for a change of temperature: (600/ln 2)·|(EA/T)(α − α_body) + s| Δθ.
///
/// s is the softening of the core, a share a kelvin. Derived; steel's first term alone is −1.45 cents/K for a violin E.
#[must_use]
pub fn from_temperature(
    axial_stiffness: Newton,
    tension: Newton,
    expansion: f64,
    body_expansion: f64,
    softening: f64,
    swing: f64,
) -> Cent {
    let rate = axial_stiffness.get() / tension.get() * (expansion - body_expansion) + softening;
    Cent::new(CENTS_PER_NEPER / 2.0 * rate.abs() * swing)
}

/// Pitch change that moisture leaves: (600/ln 2) · ΔX/(1 + X) · the share that tension does not give back.
///
/// ΔX runs over the swing about `humidity`, both ends clamped to 5 and 95 %.
/// Near-cancellation: [`crate::source::LYNCH_AIRD_2018`].
#[must_use]
pub fn from_moisture(humidity: Ratio, swing: Ratio, left: Ratio) -> Cent {
    let end = |h: f64| collagen_water(Ratio::new(h.clamp(0.05, 0.95))).get();
    let (h, half) = (humidity.get(), swing.get() / 2.0);
    let change = end(h + half) - end(h - half);
    let middle = collagen_water(humidity).get();
    Cent::new(CENTS_PER_NEPER / 2.0 * change / (1.0 + middle) * left.get())
}

/// Pitch change when the body moves the string's ends apart: (600/ln 2)(EA/T − 1) ε.
///
/// A stiff string is the more sensitive one. Source: derived; cf. [`crate::source::ANDERSON_2024`].
#[must_use]
pub fn from_body(axial_stiffness: Newton, tension: Newton, movement: Ratio) -> Cent {
    Cent::new(
        CENTS_PER_NEPER / 2.0
            * (axial_stiffness.get() / tension.get() - 1.0).abs()
            * movement.get(),
    )
}
