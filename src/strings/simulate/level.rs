//! How loud is a sound, and how is it brought to a loudness without a peak that is too high?

use std::collections::VecDeque;

/// Samples a second.
pub const RATE: usize = 48_000;
/// No sample is larger, of full scale: one decibel below it.
pub const PEAK: f64 = 0.891;
/// How far ahead and behind the limiter looks, samples: 5 ms. Shorter would be heard as a crackle.
const LOOK: usize = 240;
/// The limiter's gains are whole numbers of this part, so that their running sum is exact however long the sound.
const GRAIN: f64 = 1.0 / (1 << 30) as f64;

/// A sound brought to a loudness.
#[derive(Clone, Debug, PartialEq)]
pub struct Levelled {
    /// Samples at [`RATE`], full scale 1.
    pub samples: Vec<f64>,
    /// Loudness, LUFS.
    pub loudness: f64,
    /// Loudness before, LUFS.
    pub natural: f64,
}

/// A section of second order with its memory, for loudness.
struct Weighting {
    b: [f64; 3],
    a: [f64; 2],
    kept: [f64; 2],
}

impl Weighting {
    fn pass(&mut self, x: f64) -> f64 {
        let y = self.b[0] * x + self.kept[0];
        self.kept[0] = self.b[1] * x - self.a[0] * y + self.kept[1];
        self.kept[1] = self.b[2] * x - self.a[1] * y;
        y
    }
}

/// Loudness of one channel at [`RATE`], LUFS; minus infinity in silence.
///
/// Source: [`crate::source::BS_1770`]: two filters, blocks of 400 ms every 100 ms, gates at −70 and 10 below the mean.
#[must_use]
pub fn loudness(samples: &[f64]) -> f64 {
    let mut head = Weighting {
        b: [1.535_124_859_586_97, -2.691_696_189_406_38, 1.198_392_810_852_85],
        a: [-1.690_659_293_182_41, 0.732_480_774_215_85],
        kept: [0.0; 2],
    };
    let mut low = Weighting {
        b: [1.0, -2.0, 1.0],
        a: [-1.990_047_454_833_98, 0.990_072_250_366_21],
        kept: [0.0; 2],
    };
    let squares: Vec<f64> = samples
        .iter()
        .map(|x| {
            let y = low.pass(head.pass(*x));
            y * y
        })
        .collect();
    let tenth = RATE / 10;
    let tenths: Vec<f64> =
        squares.chunks(tenth).map(|part| part.iter().sum::<f64>() / tenth as f64).collect();
    let blocks: Vec<f64> = if tenths.len() < 4 {
        vec![squares.iter().sum::<f64>() / squares.len().max(1) as f64]
    } else {
        tenths.windows(4).map(|four| four.iter().sum::<f64>() / 4.0).collect()
    };
    let level = |power: f64| -0.691 + 10.0 * libm::log10(power);
    let mean_above = |gate: f64| {
        let above: Vec<f64> = blocks.iter().copied().filter(|b| level(*b) > gate).collect();
        above.iter().sum::<f64>() / above.len().max(1) as f64
    };
    let gate = level(mean_above(-70.0)) - 10.0;
    level(mean_above(gate.max(-70.0)))
}

/// The least of `values` within `reach` places of each, in one pass.
fn least_about(values: &[f64], reach: usize) -> Vec<f64> {
    // Places of values that may still be the least: one that a later value undercuts never is again.
    let mut standing = VecDeque::new();
    let mut least = Vec::with_capacity(values.len());
    for ahead in 0..values.len() + reach {
        if let Some(value) = values.get(ahead) {
            while standing.back().is_some_and(|last| values[*last] >= *value) {
                standing.pop_back();
            }
            standing.push_back(ahead);
        }
        if let Some(here) = ahead.checked_sub(reach) {
            while standing.front().is_some_and(|first| first + reach < here) {
                standing.pop_front();
            }
            least.extend(standing.front().map(|first| values[*first]));
        }
    }
    least
}

/// The mean of `values` within `reach` places of each, as far as there are any. Whole numbers of [`GRAIN`] add up exactly.
fn mean_about(values: &[f64], reach: usize) -> Vec<f64> {
    let mut sum: f64 = values.iter().take(reach).sum();
    (0..values.len())
        .map(|here| {
            sum += values.get(here + reach).unwrap_or(&0.0);
            if let Some(gone) = here.checked_sub(reach + 1) {
                sum -= values[gone];
            }
            let count = (here + reach + 1).min(values.len()) - here.saturating_sub(reach);
            sum / count as f64
        })
        .collect()
}

/// Turns down where a sample would be above [`PEAK`], smoothly, beginning before it and ending after.
fn limited(mut samples: Vec<f64>) -> Vec<f64> {
    if samples.iter().all(|x| x.abs() <= PEAK) {
        return samples;
    }
    let wanted: Vec<f64> = samples
        .iter()
        .map(|x| if x.abs() > PEAK { libm::floor(PEAK / x.abs() / GRAIN) * GRAIN } else { 1.0 })
        .collect();
    // The least over ±LOOK, then the mean over ±LOOK/2 of that: never above what is wanted.
    let gains = mean_about(&least_about(&wanted, LOOK), LOOK / 2);
    for (x, gain) in samples.iter_mut().zip(gains) {
        *x *= gain;
    }
    samples
}

/// Brings samples to a loudness, LUFS, with no peak above [`PEAK`].
#[must_use]
pub fn levelled(samples: &[f64], wanted: f64) -> Levelled {
    let peak = samples.iter().fold(0.0_f64, |most, x| most.max(x.abs()));
    let (mut gain, mut found, mut out) = (1.0, loudness(samples), samples.to_vec());
    let mut natural = found;
    if !found.is_finite() && peak > 0.0 {
        // All of it is under the gate for silence: it is turned up, measured, and the gain taken off again.
        gain = PEAK / peak;
        out = samples.iter().map(|x| x * gain).collect();
        found = loudness(&out);
        natural = found - 20.0 * libm::log10(gain);
    }
    // Turning peaks down takes loudness, which is given back: three rounds meet it to a hundredth of a decibel.
    for _ in 0..6 {
        if !found.is_finite() || (found - wanted).abs() < 0.01 {
            break;
        }
        gain *= libm::pow(10.0, (wanted - found) / 20.0);
        out = limited(samples.iter().map(|x| x * gain).collect());
        found = loudness(&out);
    }
    Levelled { samples: out, loudness: found, natural }
}
