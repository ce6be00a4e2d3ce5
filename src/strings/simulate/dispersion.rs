//! How much sooner do the upper partials come round? A chain of equal all-passes, set by the stiffness.
//!
//! One round takes partial n the time n/fₙ: less the higher it is. An all-pass of first order is late by more at
//! low frequencies than at high ones, by a law that begins with the same square of the frequency; the chain is set so
//! that it and the loss filter together are right at one partial of the upper middle.

use core::f64::consts::PI;

use super::loss_filter::LossFilter;
use super::section::Section;
use super::sounding::Sounding;

/// All-passes in the chain: with more, more of the upper partials come right, and the shortest string grows longer.
pub const LINKS: usize = 4;
/// The partial at which the chain is right, unless it lies above [`HIGHEST`] of the rate.
const PARTIAL: f64 = 16.0;
/// Highest frequency at which it is set, over the rate: beyond, an all-pass of first order has no curvature left.
const HIGHEST: f64 = 0.15;
/// Of the period, the share that the chain may take.
const ROOM: f64 = 0.4;

/// The coefficient of each all-pass of the chain, at `rate` steps a second.
#[must_use]
pub fn coefficient(string: &Sounding, loss: &LossFilter, rate: f64) -> f64 {
    let n = PARTIAL.min(HIGHEST * rate / string.pitch).max(2.0);
    let period = rate / string.pitch;
    let (low, high) = (omega(string, 1.0, rate), omega(string, n, rate));
    // How much sooner partial n must come round, less what the loss filter brings along.
    let wanted =
        period - n * rate / string.partial(n) - (loss.steps_late(low) - loss.steps_late(high));
    let brings = |d: f64| {
        let link = Section::all_pass((1.0 - d) / (1.0 + d));
        LINKS as f64 * (link.steps_late(low) - link.steps_late(high))
    };
    let (mut least, mut most) = (1.0, (ROOM * period / LINKS as f64).max(1.0));
    if wanted <= 0.0 {
        return 0.0;
    }
    for _ in 0..60 {
        let middle = 0.5 * (least + most);
        if brings(middle) < wanted { least = middle } else { most = middle }
    }
    (1.0 - least) / (1.0 + least)
}

fn omega(string: &Sounding, n: f64, rate: f64) -> f64 {
    2.0 * PI * string.partial(n) / rate
}
