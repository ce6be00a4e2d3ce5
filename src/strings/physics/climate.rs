//! How far does the room move its pitch?
//!
//! Drift has five parts: the string's own warmth and moisture, the body, the creep of gut that gets damper than
//! ever before, the hours before tension has followed moisture, and what pegs and knots give.
//! The first two have formulas; of the others only the size is judged.

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

/// Pitch change for a rise of temperature: −(600/ln 2)·((EA/T)(α − α_body) + s) Δθ.
///
/// s is the softening of the core, a share a kelvin. Derived; steel's first term alone is −1.45 cents/K for a violin E.
#[must_use]
pub fn by_warmth(
    axial_stiffness: Newton,
    tension: Newton,
    expansion: f64,
    body_expansion: f64,
    softening: f64,
    rise: f64,
) -> Cent {
    let rate = axial_stiffness.get() / tension.get() * (expansion - body_expansion) + softening;
    Cent::new(-CENTS_PER_NEPER / 2.0 * rate * rise)
}

/// How far a swing of temperature moves pitch, whichever way: the size of [`by_warmth`].
#[must_use]
pub fn from_temperature(
    axial_stiffness: Newton,
    tension: Newton,
    expansion: f64,
    body_expansion: f64,
    softening: f64,
    swing: f64,
) -> Cent {
    let rise = by_warmth(axial_stiffness, tension, expansion, body_expansion, softening, swing);
    Cent::new(rise.get().abs())
}

/// Water in a polymer at a relative humidity: in proportion to it, from one known point.
///
/// Source: [`crate::source::RESIN_MAKER`] for the point; straight proportion is a simplification.
#[must_use]
pub fn polymer_water(at_point: Ratio, humidity: Ratio) -> Ratio {
    Ratio::new(at_point.get() * humidity.get() / crate::constant::WATER_HUMIDITY)
}

/// Pitch change that a gain of water would make by its mass alone: (600/ln 2) ΔX/(1 + X).
///
/// `water` gives X at a humidity; ΔX runs over the swing about `humidity`, both ends held between 5 and 95 %.
/// What tension does not give back of it is a judgement. Near-cancellation: [`crate::source::LYNCH_AIRD_2018`].
#[must_use]
pub fn from_water(water: impl Fn(Ratio) -> Ratio, humidity: Ratio, swing: Ratio) -> Cent {
    let end = |h: f64| water(Ratio::new(h.clamp(0.05, 0.95))).get();
    let (h, half) = (humidity.get(), swing.get() / 2.0);
    let change = end(h + half) - end(h - half);
    Cent::new(CENTS_PER_NEPER / 2.0 * change / (1.0 + water(humidity).get()))
}

/// The same with its sign, from one humidity to another: −(600/ln 2) ΔX/(1 + X).
///
/// X is the water at the first of the two; the second is held between 5 and 95 %. A gain of water is a fall of pitch.
#[must_use]
pub fn by_water(water: impl Fn(Ratio) -> Ratio, humidity: Ratio, then: Ratio) -> Cent {
    let before = water(humidity).get();
    let after = water(Ratio::new(then.get().clamp(0.05, 0.95))).get();
    Cent::new(-CENTS_PER_NEPER / 2.0 * (after - before) / (1.0 + before))
}

/// Pitch change when the body moves the string's ends apart: (600/ln 2)(EA/T − 1) ε.
///
/// A stiff string is the more sensitive one; ends that come together make the pitch fall. Source: derived; cf. [`crate::source::ANDERSON_2024`].
#[must_use]
pub fn from_body(axial_stiffness: Newton, tension: Newton, movement: Ratio) -> Cent {
    Cent::new(
        CENTS_PER_NEPER / 2.0
            * (axial_stiffness.get() / tension.get() - 1.0).abs()
            * movement.get(),
    )
}
