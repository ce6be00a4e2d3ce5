//! The days after fitting: what each costs in pitch, and how likely it is little.

use super::{Estimate, Property, Report};
use crate::constant::{DEVIATIONS, SETTLED_WITHIN};
use crate::physics::settling;
use crate::quantity::{Cent, Day};

/// A day after fitting.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Night {
    /// Which, from 1.
    pub day: u32,
    /// Pitch lost in it, retuned the evening before.
    pub lost: Estimate,
    /// Chance that it costs no more than five cents.
    pub chance: f64,
}

/// Chance that a normal number lies under so many standard deviations above its mean.
pub(super) fn normal_under(deviations: f64) -> f64 {
    0.5 * (1.0 + libm::erf(deviations / core::f64::consts::SQRT_2))
}

/// Chance that a number of that range lies under `limit`: normal in the logarithm, or straight where the range touches zero.
fn chance_under(estimate: &Estimate, limit: f64) -> f64 {
    if estimate.high <= estimate.low {
        return f64::from(u8::from(estimate.value <= limit));
    }
    if estimate.low > 0.0 && limit > 0.0 {
        let deviation = libm::log(estimate.high / estimate.low) / (2.0 * DEVIATIONS);
        normal_under((libm::log(limit) - libm::log(estimate.value)) / deviation)
    } else {
        normal_under((limit - estimate.value) * 2.0 * DEVIATIONS / (estimate.high - estimate.low))
    }
}

/// Chance that a string, fitted today and retuned, loses no more than five cents in the day after `day`.
#[must_use]
pub fn chance_settled(report: &Report, day: Day) -> f64 {
    let most = settling::decade_of(day, Cent::new(SETTLED_WITHIN));
    chance_under(&report.get(Property::LossPerDecade), most.get())
}

/// The days after fitting, each with what it costs in pitch: by the logarithm of time, retuned every evening.
#[must_use]
pub fn nights(report: &Report, days: u32) -> Vec<Night> {
    let decade = report.get(Property::LossPerDecade);
    (1..=days)
        .map(|day| {
            let at = Day::new(f64::from(day));
            let lost = |k: f64| settling::lost_in_a_day(Cent::new(k), at).get();
            Night {
                day,
                lost: Estimate {
                    value: lost(decade.value),
                    low: lost(decade.low),
                    high: lost(decade.high),
                },
                chance: chance_settled(report, at),
            }
        })
        .collect()
}
