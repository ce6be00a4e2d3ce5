//! How bright does it sound? Sharpness by DIN 45692 from specific loudness by ISO 532-1 (Zwicker, stationary, free field).
//!
//! Tables and steps are those of the standard's program, as in Zwicker and Fastl 1991, read in [`crate::source::MOSQITO`].

/// Third-octave bands of the method, 25 Hz to 12.5 kHz.
pub const BANDS: usize = 28;

/// Levels at which the low bands' reduction changes, dB.
const RANGE: [f64; 8] = [45.0, 55.0, 65.0, 71.0, 80.0, 90.0, 100.0, 120.0];
/// Reduction of the eleven lowest bands in each range, dB.
const REDUCTION: [[f64; 11]; 8] = [
    [-32.0, -24.0, -16.0, -10.0, -5.0, 0.0, -7.0, -3.0, 0.0, -2.0, 0.0],
    [-29.0, -22.0, -15.0, -10.0, -4.0, 0.0, -7.0, -2.0, 0.0, -2.0, 0.0],
    [-27.0, -19.0, -14.0, -9.0, -4.0, 0.0, -6.0, -2.0, 0.0, -2.0, 0.0],
    [-25.0, -17.0, -12.0, -9.0, -3.0, 0.0, -5.0, -2.0, 0.0, -2.0, 0.0],
    [-23.0, -16.0, -11.0, -7.0, -3.0, 0.0, -4.0, -1.0, 0.0, -1.0, 0.0],
    [-20.0, -14.0, -10.0, -6.0, -3.0, 0.0, -4.0, -1.0, 0.0, -1.0, 0.0],
    [-18.0, -12.0, -9.0, -6.0, -2.0, 0.0, -3.0, -1.0, 0.0, -1.0, 0.0],
    [-15.0, -10.0, -8.0, -4.0, -2.0, 0.0, -3.0, -1.0, 0.0, -1.0, 0.0],
];
/// Threshold in quiet of the twenty critical bands, dB.
const QUIET: [f64; 20] = [
    30.0, 18.0, 12.0, 8.0, 7.0, 6.0, 5.0, 4.0, 3.0, 3.0, 3.0, 3.0, 3.0, 3.0, 3.0, 3.0, 3.0, 3.0,
    3.0, 3.0,
];
/// What the ear takes on the way in, dB.
const WAY_IN: [f64; 20] = [
    0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, -0.5, -1.6, -3.2, -5.4, -5.6, -4.0, -1.5,
    2.0, 5.0, 12.0,
];
/// From third octaves to critical bands, dB.
const TO_CRITICAL: [f64; 20] = [
    -0.25, -0.6, -0.8, -0.8, -0.5, 0.0, 0.5, 1.1, 1.5, 1.7, 1.8, 1.8, 1.7, 1.6, 1.4, 1.2, 0.8, 0.5,
    0.0, -0.5,
];
/// Upper ends of the critical bands, Bark.
const UPPER: [f64; 21] = [
    0.9, 1.8, 2.8, 3.5, 4.4, 5.4, 6.6, 7.9, 9.2, 10.6, 12.3, 13.8, 15.2, 16.7, 18.1, 19.3, 20.6,
    21.8, 22.7, 23.6, 24.0,
];
/// Specific loudnesses at which the upper slope changes.
const STEP: [f64; 18] = [
    21.5, 18.0, 15.1, 11.5, 9.0, 6.1, 4.4, 3.1, 2.13, 1.36, 0.82, 0.42, 0.30, 0.22, 0.15, 0.10,
    0.035, 0.0,
];
/// The upper slope by step and critical band, from the eighth band on the same.
const SLOPE: [[f64; 8]; 18] = [
    [13.0, 8.2, 6.3, 5.5, 5.5, 5.5, 5.5, 5.5],
    [9.0, 7.5, 6.0, 5.1, 4.5, 4.5, 4.5, 4.5],
    [7.8, 6.7, 5.6, 4.9, 4.4, 3.9, 3.9, 3.9],
    [6.2, 5.4, 4.6, 4.0, 3.5, 3.2, 3.2, 3.2],
    [4.5, 3.8, 3.6, 3.2, 2.9, 2.7, 2.7, 2.7],
    [3.7, 3.0, 2.8, 2.35, 2.2, 2.2, 2.2, 2.2],
    [2.9, 2.3, 2.1, 1.9, 1.8, 1.7, 1.7, 1.7],
    [2.4, 1.7, 1.5, 1.35, 1.3, 1.3, 1.3, 1.3],
    [1.95, 1.45, 1.3, 1.15, 1.1, 1.1, 1.1, 1.1],
    [1.5, 1.2, 0.94, 0.86, 0.82, 0.82, 0.82, 0.82],
    [0.72, 0.67, 0.64, 0.63, 0.62, 0.62, 0.62, 0.62],
    [0.59, 0.53, 0.51, 0.50, 0.42, 0.42, 0.42, 0.42],
    [0.40, 0.33, 0.26, 0.24, 0.24, 0.22, 0.22, 0.22],
    [0.27, 0.21, 0.20, 0.18, 0.17, 0.17, 0.17, 0.17],
    [0.16, 0.15, 0.14, 0.12, 0.11, 0.11, 0.11, 0.11],
    [0.12, 0.11, 0.10, 0.08, 0.08, 0.08, 0.08, 0.08],
    [0.09, 0.08, 0.07, 0.06, 0.06, 0.06, 0.06, 0.05],
    [0.06, 0.05, 0.03, 0.02, 0.02, 0.02, 0.02, 0.02],
];

/// Loudness of a sound and how it is spread.
#[derive(Clone, Debug, PartialEq)]
pub struct Loudness {
    /// In sone.
    pub sone: f64,
    /// Specific loudness, sone a Bark, at 0.1, 0.2 … 24.0 Bark.
    pub specific: Vec<f64>,
}

fn power(decibels: f64) -> f64 {
    libm::pow(10.0, decibels / 10.0)
}

/// Weight of sharpness at `z` Bark: 1 up to 15.8, 0.15 e^(0.42 (z − 15.8)) + 0.85 above.
///
/// Source: DIN 45692:2009, [`crate::source::DIN_45692`].
#[must_use]
pub fn weight(z: f64) -> f64 {
    if z > 15.8 { 0.15 * libm::exp(0.42 * (z - 15.8)) + 0.85 } else { 1.0 }
}

/// Sharpness in acum: 0.11 ∫ N′ g z dz / N. Zero in silence.
///
/// Source: DIN 45692:2009, [`crate::source::DIN_45692`].
#[must_use]
pub fn sharpness(loudness: &Loudness) -> f64 {
    if loudness.sone <= 0.0 {
        return 0.0;
    }
    let weighed: f64 = loudness
        .specific
        .iter()
        .enumerate()
        .map(|(i, n)| {
            let z = (i + 1) as f64 / 10.0;
            n * weight(z) * z * 0.1
        })
        .sum();
    0.11 * weighed / loudness.sone
}

/// Loudness of the twenty critical bands, from levels in third octaves from 25 Hz, dB.
fn main_loudness(levels: &[f64; BANDS]) -> [f64; 21] {
    let mut intensity = [0.0; 11];
    for (i, value) in intensity.iter_mut().enumerate() {
        let range = (0..7).find(|r| levels[i] <= RANGE[*r] - REDUCTION[*r][i]).unwrap_or(7);
        *value = power(levels[i] + REDUCTION[range][i]);
    }
    let low = [&intensity[0..6], &intensity[6..9], &intensity[9..11]];
    let mut loudness = [0.0; 21];
    for band in 0..20 {
        let level = if band < 3 {
            10.0 * libm::log10(low[band].iter().sum::<f64>().max(1e-30))
        } else {
            levels[band + 8]
        };
        let inner = level - WAY_IN[band];
        if inner > QUIET[band] {
            let over = inner - TO_CRITICAL[band] - QUIET[band];
            let core = libm::pow(1.0 - 0.25 + 0.25 * power(over), 0.25) - 1.0;
            loudness[band] = (0.0635 * libm::pow(10.0, 0.025 * QUIET[band]) * core).max(0.0);
        }
    }
    // The threshold varies within the lowest band.
    loudness[0] *= (0.4 + 0.32 * libm::pow(loudness[0], 0.2)).min(1.0);
    loudness
}

/// Loudness of a lasting sound from its levels in third octaves from 25 Hz to 12.5 kHz, dB, in a free field from the front.
///
/// Source: [`crate::source::ISO_532`].
#[must_use]
pub fn loudness(levels: &[f64; BANDS]) -> Loudness {
    let bands = main_loudness(levels);
    let (mut sone, mut specific) = (0.0, Vec::with_capacity(240));
    // Where the pattern has come to, in Bark and loudness, and on which step of the slopes it is.
    let (mut z1, mut n1, mut step) = (0.0, 0.0, 0_usize);
    for (band, &n) in bands.iter().enumerate() {
        let column = band.saturating_sub(1).min(7);
        while z1 < UPPER[band] {
            let (z2, n2, slope);
            if n1 <= n {
                if n1 < n {
                    step = STEP.iter().position(|s| *s <= n).unwrap_or(17);
                }
                (z2, n2, slope) = (UPPER[band], n, 0.0);
                sone += n2 * (z2 - z1);
                n1 = n;
            } else {
                let steep = SLOPE[step][column];
                let lower = STEP[step].max(n);
                let z = z1 + (n1 - lower) / steep;
                if z > UPPER[band] {
                    (z2, n2) = (UPPER[band], n1 - (UPPER[band] - z1) * steep);
                } else {
                    (z2, n2) = (z, lower);
                }
                slope = steep;
                sone += (z2 - z1) * (n1 + n2) / 2.0;
            }
            // Counted in whole tenths, so that no tenth is lost to rounding.
            while (specific.len() + 1) as f64 / 10.0 <= z2 + 1e-9 && specific.len() < 240 {
                let z = (specific.len() + 1) as f64 / 10.0;
                specific.push((n1 - (z - z1) * slope).max(0.0));
            }
            while step < 17 && n2 <= STEP[step] {
                step += 1;
            }
            (z1, n1) = (z2, n2);
        }
    }
    specific.resize(240, 0.0);
    Loudness { sone, specific }
}

/// Levels in third octaves of a sound of harmonics of `pitch` hertz with these amplitudes, at `level` dB in all.
///
/// Bands about 1000 · 2^(k/3) Hz; what lies outside them is left out.
#[must_use]
pub fn third_octaves(harmonics: &[f64], pitch: f64, level: f64) -> [f64; BANDS] {
    let mut intensity = [0.0; BANDS];
    for (i, a) in harmonics.iter().enumerate() {
        let octaves = libm::log2((i + 1) as f64 * pitch / 1000.0);
        let band = libm::floor(3.0 * octaves + 16.5);
        if (0.0..BANDS as f64).contains(&band) {
            intensity[band as usize] += a * a;
        }
    }
    let all: f64 = intensity.iter().sum();
    intensity
        .map(|i| if all > 0.0 && i > 0.0 { level + 10.0 * libm::log10(i / all) } else { -60.0 })
}
