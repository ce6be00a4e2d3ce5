//! Where the doubt comes from, and the same ranges by sampling.

use super::{COUNT, Estimate, Moves, Property, Report, Values, values};
use crate::constant::Which;
use crate::construction::Construction;
use crate::draw::{self, Draw};
use crate::setting::Setting;

/// Every property of a string by sampling: the median, and the middle 90 % of `count` joint draws from `seed`.
///
/// Slower than [`report`] and free of its linearity: the two hold each other in check.
#[must_use]
pub fn sampled(construction: &Construction, setting: &Setting, seed: u64, count: usize) -> Report {
    let count = count.max(20);
    let draws: Vec<Values> = (0..count as u64)
        .map(|i| {
            let seed = seed.wrapping_add(i);
            let mut drawn = values(construction, setting, &Draw::sampled(seed));
            for property in Property::ALL {
                let Some(error) = property.error() else { continue };
                let miss = error.anywhere * draw::miss(seed, property.key());
                let value = drawn.get(*property);
                let missed =
                    if property.is_level() { value + miss } else { value * libm::exp(miss) };
                drawn.put(*property, missed);
            }
            drawn
        })
        .collect();
    let quantile =
        |sorted: &[f64], share: f64| sorted[((sorted.len() - 1) as f64 * share).round() as usize];
    Report(
        (0..COUNT)
            .map(|i| {
                let mut all: Vec<f64> = draws.iter().map(|v| v.0[i]).collect();
                all.sort_by(f64::total_cmp);
                Estimate {
                    value: quantile(&all, 0.5),
                    low: quantile(&all, 0.05),
                    high: quantile(&all, 0.95),
                }
            })
            .collect(),
    )
}

/// What the doubt about a property comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Doubt {
    /// Whose number: a material's key, or nothing.
    pub owner: draw::Owner,
    /// Which number.
    pub which: Which,
    /// Its share of the variance.
    pub share: f64,
}

impl Moves {
    /// What the doubt about a property comes from, the largest share first.
    #[must_use]
    pub fn doubts(&self, property: Property) -> Vec<Doubt> {
        let mut all: Vec<Doubt> = self
            .ends
            .iter()
            .map(|(owner, which, ends)| {
                let half = (ends[1].get(property) - ends[0].get(property)) / 2.0;
                Doubt { owner, which: *which, share: half * half }
            })
            .collect();
        let total: f64 = all.iter().map(|d| d.share).sum();
        if total > 0.0 {
            for doubt in &mut all {
                doubt.share /= total;
            }
        }
        all.retain(|d| d.share > 0.0);
        all.sort_by(|a, b| b.share.total_cmp(&a.share));
        all
    }
}
