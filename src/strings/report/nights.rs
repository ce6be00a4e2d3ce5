//! The days after fitting: what each costs in pitch, and how likely it is little.

use super::at_pitch::seating;
use super::{Estimate, Property, Report};
use crate::constant::{DEVIATIONS, SETTLED_WITHIN};
use crate::construction::{Construction, Core};
use crate::physics::settling;
use crate::quantity::{Cent, Day, Ratio};

/// A day after fitting.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Night {
    /// Which, from 1.
    pub day: u32,
    /// Pitch lost in it, retuned the evening before.
    pub lost: Estimate,
    /// Chance that it costs no more than five cents, and that everything has seated.
    pub chance: f64,
}

/// Chance that a number of that range lies under `limit`: normal in the logarithm, or straight where the range touches zero.
fn chance_under(estimate: &Estimate, limit: f64) -> f64 {
    let normal = |z: f64| 0.5 * (1.0 + libm::erf(z / core::f64::consts::SQRT_2));
    if estimate.high <= estimate.low {
        return f64::from(u8::from(estimate.value <= limit));
    }
    if estimate.low > 0.0 && limit > 0.0 {
        let deviation = libm::log(estimate.high / estimate.low) / (2.0 * DEVIATIONS);
        normal((libm::log(limit) - libm::log(estimate.value)) / deviation)
    } else {
        normal((limit - estimate.value) * 2.0 * DEVIATIONS / (estimate.high - estimate.low))
    }
}

/// Chance that a string on that core, fitted today and retuned, loses no more than five cents in the day after
/// `days`, and that everything has seated. Neither pitch nor thickness counts.
#[must_use]
pub fn chance_settled(core: &Core, wound: bool, days: Day) -> f64 {
    let creep = &core.material.creep;
    let lost = |creep: f64| {
        settling::lost_in_a_day(settling::loss_per_decade(Ratio::new(creep)), days).get()
    };
    let lost = Estimate { value: lost(creep.value), low: lost(creep.low), high: lost(creep.high) };
    let seat = seating(core, wound);
    let seated = Estimate { value: seat.value, low: seat.low, high: seat.high };
    chance_under(&lost, SETTLED_WITHIN) * chance_under(&seated, days.get())
}

/// The days after fitting, each with what it costs in pitch: log-time creep, retuned every evening.
#[must_use]
pub fn nights(construction: &Construction, report: &Report, days: u32) -> Vec<Night> {
    let loss = report.get(Property::LossPerDecade);
    let seat = seating(&construction.core, construction.is_wound());
    let seated = Estimate { value: seat.value, low: seat.low, high: seat.high };
    (1..=days)
        .map(|day| {
            let at = Day::new(f64::from(day));
            let lost = |k: f64| settling::lost_in_a_day(Cent::new(k), at).get();
            let lost =
                Estimate { value: lost(loss.value), low: lost(loss.low), high: lost(loss.high) };
            Night {
                day,
                chance: chance_under(&lost, SETTLED_WITHIN) * chance_under(&seated, f64::from(day)),
                lost,
            }
        })
        .collect()
}
