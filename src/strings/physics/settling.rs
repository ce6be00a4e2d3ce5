//! When has it stopped giving?
//!
//! If creep goes with stress, the cents that a string loses in a decade of time do not depend on how far its material is
//! stretched. So elasticity is not in the formula; where the trade says otherwise, the page says that the two disagree.

use crate::pitch::CENTS_PER_NEPER;
use crate::quantity::{Cent, Day, Newton, Ratio};

/// Pitch lost in a decade of time at fixed length: (600/ln 2) · c, c the creep a decade over the stretch.
///
/// If creep is proportional to stress the stretch drops out: within one material a more elastic string
/// settles no later. Log-time law; Derived from [`crate::pitch::CENTS_PER_NEPER`] and Hooke's law.
#[must_use]
pub fn loss_per_decade(creep: Ratio) -> Cent {
    Cent::new(CENTS_PER_NEPER / 2.0 * creep.get())
}

/// Days, counted from fitting and with retuning, until a day costs no more than `within`:
/// K log₁₀((t + 1)/t) = within, so t = 1/(10^(within/K) − 1); never before the windings have seated.
#[must_use]
pub fn days(loss_per_decade: Cent, within: Cent, seated: Day) -> Day {
    let k = loss_per_decade.get();
    let creep =
        if k > 0.0 { 1.0 / libm::expm1(core::f64::consts::LN_10 * within.get() / k) } else { 0.0 };
    Day::new(creep.max(seated.get()))
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
