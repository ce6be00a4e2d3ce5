//! How strong is each harmonic? Of a steady sound, by its own period.

/// The amplitude of harmonics 1 to `count` of a sound whose period is `period` steps.
///
/// Over as many whole periods as there are, under a window of Hann; a sine of amplitude 1 gives 1.
#[must_use]
pub fn harmonics(sound: &[f64], period: f64, count: usize) -> Vec<f64> {
    let periods = libm::floor(sound.len() as f64 / period);
    let steps = ((periods * period) as usize).min(sound.len());
    let sound = &sound[sound.len() - steps..];
    let mean = sound.iter().sum::<f64>() / steps.max(1) as f64;
    (1..=count)
        .map(|n| {
            let omega = 2.0 * core::f64::consts::PI * n as f64 / period;
            if omega >= core::f64::consts::PI || steps < 3 {
                return 0.0;
            }
            let bell = 2.0 * core::f64::consts::PI / steps as f64;
            let (mut re, mut im) = (0.0, 0.0);
            // Two turning pointers, so that no sine is computed for each sample.
            let (turn, slow) = (turning(omega), turning(bell));
            let (mut at, mut window) = ((1.0, 0.0), (1.0, 0.0));
            for x in sound {
                let y = (x - mean) * (1.0 - window.0);
                re += y * at.0;
                im += y * at.1;
                at = turned(at, turn);
                window = turned(window, slow);
            }
            2.0 * (re * re + im * im).sqrt() / steps as f64
        })
        .collect()
}

fn turning(omega: f64) -> (f64, f64) {
    (libm::cos(omega), libm::sin(omega))
}

fn turned(at: (f64, f64), by: (f64, f64)) -> (f64, f64) {
    (at.0 * by.0 - at.1 * by.1, at.0 * by.1 + at.1 * by.0)
}

/// The middle of a spectrum, in harmonics: Σ n a / Σ a.
///
/// Source: definition of the spectral centroid.
#[must_use]
pub fn centroid(harmonics: &[f64]) -> f64 {
    let sum: f64 = harmonics.iter().sum();
    if sum > 0.0 {
        harmonics.iter().enumerate().map(|(i, a)| (i + 1) as f64 * a).sum::<f64>() / sum
    } else {
        0.0
    }
}
