//! When has it stopped giving?
//!
//! A string loses pitch by the logarithm of time: its core creeps, and what friction holds at nut, bridge and peg lets go.
//! Both are counted as cents a decade of time, and from their sum follows the day from which a day costs little.

use crate::constant::{EN_1992_CLASS_1, EN_1992_HOURS};
use crate::pitch::CENTS_PER_NEPER;
use crate::quantity::{Cent, Day, Degree, Metre, Newton, Pascal, Ratio};

/// Pitch lost in a decade of time at fixed length: (600/ln 2) · c, c the share of the tension that a decade takes.
///
/// Log-time law; derived from [`crate::pitch::CENTS_PER_NEPER`] and Hooke's law.
#[must_use]
pub fn loss_per_decade(relaxation: Ratio) -> Cent {
    Cent::new(CENTS_PER_NEPER / 2.0 * relaxation.get())
}

/// Tangent over secant modulus of a core whose modulus rises with stress: (1 + x) ln(1 + x)/x with x = slope·σ/E.
///
/// At fixed length a creep c of the stretch takes the share c times this of the tension; 1 for a linear core.
/// Derived from E + slope·σ; that the ratio counts is Baltussen and Northolt's ([`crate::source::BALTUSSEN_2003`]).
#[must_use]
pub fn tangent_over_secant(modulus: Pascal, slope: f64, stress: Pascal) -> Ratio {
    let x = slope * stress.get() / modulus.get();
    if x < 1e-6 {
        return Ratio::new(1.0 + x / 2.0);
    }
    Ratio::new((1.0 + x) * libm::log1p(x) / x)
}

/// Share of the tension that cold-drawn wire loses in the decade about the first day, at a share μ of its strength.
///
/// Slope at 24 h of 5.39 ρ e^(6.7 μ) (t/1000 h)^(0.75 (1 − μ)) 10⁻⁵ in log₁₀ t, with ρ = 8 %: EN 1992-1-1 eq. 3.28, class 1.
/// Source: [`crate::source::EN_1992`].
#[must_use]
pub fn steel_relaxation(breaking_share: Ratio) -> Ratio {
    let mu = breaking_share.get();
    let p = 0.75 * (1.0 - mu);
    let at_a_day = libm::exp(6.7 * mu + p * libm::log(24.0 / EN_1992_HOURS));
    Ratio::new(EN_1992_CLASS_1 * at_a_day * p * core::f64::consts::LN_10)
}

/// Share of its tension by which a string can differ over an edge, its friction locked: e^(μθ) − 1.
///
/// Source: [`crate::source::GROVES_KEMP_2019`], the capstan law.
#[must_use]
pub fn locked_over_an_edge(friction: Ratio, angle: Degree) -> Ratio {
    Ratio::new(libm::expm1(friction.get() * angle.get().to_radians()))
}

/// Share of the tension that is locked in the turns on a peg, over a string of that whole length: r/(μ L).
///
/// By the capstan law tension falls to 1/e over the length r/μ from where the string leaves the peg.
#[must_use]
pub fn locked_in_the_turns(friction: Ratio, peg: Metre, whole: Metre) -> Ratio {
    Ratio::new(peg.get() / 2.0 / friction.get() / whole.get())
}

/// Share of the tension that a string loses if an end gives by `slack`: (EA/T + 1) slack/L, `stiff` being EA/T.
///
/// Derived from Hooke's law at fixed length, the string's mass going with it.
#[must_use]
pub fn given(stiff: Ratio, slack: Metre, whole: Metre) -> Ratio {
    Ratio::new((stiff.get() + 1.0) * slack.get() / whole.get())
}

/// Days, counted from fitting and with retuning, until a day costs no more than `within`:
/// K log₁₀((t + 1)/t) = within, so t = 1/(10^(within/K) − 1).
#[must_use]
pub fn days(loss_per_decade: Cent, within: Cent) -> Day {
    let k = loss_per_decade.get();
    Day::new(if k > 0.0 {
        1.0 / libm::expm1(core::f64::consts::LN_10 * within.get() / k)
    } else {
        0.0
    })
}

/// Loss a decade at which a day costs `within` from that day on: the inverse of [`days`].
#[must_use]
pub fn decade_of(day: Day, within: Cent) -> Cent {
    Cent::new(within.get() / libm::log10((day.get() + 1.0) / day.get()))
}

/// Share of its tension that a string can lose in this formula at the most.
pub const NEARLY_SLACK: f64 = 0.95;

/// Pitch lost once while a strand's wires find their places: −(600/ln 2) ln(1 − x), x = (EA/T) times the stretch.
///
/// The string is not retuned meanwhile; x is held below [`NEARLY_SLACK`], where next to nothing of the tension is left.
/// It happens within hours and never again: no part of creep. Derived from Hooke's law at fixed length.
#[must_use]
pub fn constructional(axial_stiffness: Newton, tension: Newton, stretch: Ratio) -> Cent {
    let x = (axial_stiffness.get() / tension.get() * stretch.get()).min(NEARLY_SLACK);
    Cent::new(-CENTS_PER_NEPER / 2.0 * libm::log1p(-x))
}

/// Pitch lost in the day after `days` since fitting, retuned each evening: K log₁₀((t + 1)/t).
///
/// Within the first day, which has no beginning, the loss from the tenth of a day on is meant.
#[must_use]
pub fn lost_in_a_day(loss_per_decade: Cent, days: Day) -> Cent {
    let t = days.get().max(0.1);
    Cent::new(loss_per_decade.get() * libm::log10((t + 1.0) / t))
}
