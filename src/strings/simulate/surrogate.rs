//! What would the simulation say, without simulating? Few numbers fitted to it, for where thousands of strings are compared.
//!
//! Ring time is a formula with nothing fitted, brightness one with a single number; response and the two forces are
//! linear in a few logarithms of what physics names. Rank by it; for a number to show, simulate.

use core::f64::consts::PI;

use super::body::Body;
use super::friction::Law;
use super::gesture::Gesture;
use super::map::{closed_limits, window_about};
use super::sounding::Sounding;
use super::strung::Strung;
use super::{note, player, sharpness, sound, spectrum};
use crate::instrument::Kind;

/// Place of the bow, of the length from the bridge.
pub const PLACE: f64 = 0.108;
/// Speed of the bow for the window, m/s.
pub const SPEED: f64 = 0.1;
/// Force at which brightness is taken, of the greatest by formula.
const PRESSED: f64 = 0.15;
/// Level at which brightness is taken, dB.
const LEVEL: f64 = 70.0;
/// Place of the pluck.
const PLUCKED_AT: f64 = 0.23;
/// How long a plucked string is watched, s.
const RINGING: f64 = 16.0;

/// What is said of a string on a body.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Verdict {
    /// How soon it speaks, s: mean over a player's strokes. See [`player::Tried::periods`].
    pub response: f64,
    /// Least force of the bow, N.
    pub least: f64,
    /// Greatest force of the bow, N.
    pub greatest: f64,
    /// Sharpness, acum.
    pub brightness: f64,
    /// Seconds in which it falls by 60 dB when plucked.
    pub ring: f64,
}

impl Verdict {
    /// Room between the two forces, dB.
    #[must_use]
    pub fn window(&self) -> f64 {
        20.0 * libm::log10(self.greatest / self.least)
    }
}

/// The verdict of the simulation itself: about a second a string. None where it never speaks or never dies away.
#[must_use]
pub fn simulated(string: &Sounding, body: &Body, kind: &Kind) -> Option<Verdict> {
    let arm = 0.2 * (string.length / 0.328).sqrt();
    let tried = player::tries(string, body, Law::Thermal, arm, PLACE);
    let window = window_about(string, body, Law::Hyperbolic, SPEED, PLACE)?;
    let strung = Strung::new(string, body, string.rate(PLACE, Law::Hyperbolic));
    let plucked = note::plucked(&strung, PLUCKED_AT, 1.0, sound::letting_go(string), RINGING);
    Some(Verdict {
        response: tried.periods / string.pitch,
        least: window.least,
        greatest: window.greatest,
        brightness: brightness(string, &strung, kind),
        ring: note::ring(&plucked.bridge_speed, plucked.rate)?,
    })
}

/// Sharpness of a bowed string's steady sound at 70 dB, acum.
fn brightness(string: &Sounding, strung: &Strung, kind: &Kind) -> f64 {
    let (most, _) = closed_limits(string, 1.0, SPEED, PLACE);
    let gesture = Gesture::steady(SPEED, PRESSED * most, PLACE);
    let seconds = note::PERIODS / string.pitch;
    let played = note::kept_moving(strung, Law::Hyperbolic, &gesture, seconds);
    let heard = sound::heard(&played, kind);
    let flat = libm::exp2(played.judgement.cents / 1200.0);
    let period = sound::RATE as f64 / (string.pitch * flat);
    let last = &heard[heard.len().saturating_sub((20.0 * period) as usize)..];
    let harmonics = spectrum::harmonics(last, period, (12_500.0 / string.pitch) as usize);
    let levels = sharpness::third_octaves(&harmonics, string.pitch, LEVEL);
    sharpness::sharpness(&sharpness::loudness(&levels))
}

/// What the fitted answers rest on, each held within what was seen when they were fitted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Features {
    /// ln pitch over 220 Hz.
    pub pitch: f64,
    /// ln impedance, kg/s.
    pub impedance: f64,
    /// ln of impedance times what the bridge gives at the first partial: how much the body takes.
    pub taken: f64,
    /// ln of impedance times what the bridge gives at nine partials, each over its number.
    pub taken_in_all: f64,
    /// Hundred times the impedance times what the bridge springs at the first partial.
    pub springs: f64,
    /// ln of the share of its resistance that twist leaves: Zₜ/(Z₀ + Zₜ).
    pub twist: f64,
    /// ln inharmonicity over 6e-5.
    pub stiff: f64,
}

impl Features {
    /// Of a string on a body.
    #[must_use]
    pub fn of(string: &Sounding, body: &Body) -> Self {
        let z = string.impedance;
        let (re, im) = body.admittance_at(string.pitch);
        let all: f64 =
            (1..=9).map(|n| body.admittance_at(string.pitch * f64::from(n)).0 / f64::from(n)).sum();
        let ratio = string.torsion_impedance / z;
        let share = if ratio.is_finite() { ratio / (1.0 + ratio) } else { 1.0 };
        Self {
            pitch: libm::log(string.pitch / 220.0),
            impedance: libm::log(z),
            taken: libm::log((z * re).max(1e-6)).clamp(-6.0, -3.0),
            taken_in_all: libm::log((z * all).max(1e-6)).clamp(-6.0, -2.0),
            springs: (100.0 * z * im).clamp(-0.5, 2.5),
            // Where the square would turn, it is held.
            twist: libm::log(share).max(-0.70),
            stiff: libm::log(string.inharmonicity.max(1e-8) / 6e-5).clamp(-2.7, 3.0),
        }
    }

    /// What both forces of the bow are made of.
    fn of_forces(&self) -> [f64; 10] {
        [
            1.0,
            self.impedance,
            self.taken,
            self.springs,
            self.twist,
            self.stiff,
            self.stiff * self.stiff,
            self.springs * self.springs,
            self.twist * self.twist,
            self.springs * self.taken_in_all,
        ]
    }
}

/// ln least force, N.
///
/// Like all numbers of this kind here fitted by least squares to 647 simulated strings, drawn as the tests draw theirs
/// but from other seeds.
const LEAST: [f64; 10] =
    [1.6177, 1.0335, 0.9144, -2.0938, -0.4269, 0.0045, 0.0449, 0.0487, -0.1495, -0.8110];
/// ln greatest force, N.
const GREATEST: [f64; 10] =
    [1.2478, 1.0344, -0.0553, 0.8085, 3.5703, 0.0942, 0.0104, -0.1090, 2.5267, 0.1884];
/// ln seconds of response: constant, and for pitch, impedance and twist.
const RESPONSE: [f64; 4] = [-1.9739, -0.9912, 0.4645, -0.7884];
/// Rounds of the string by which the corner is duller than the bow's pull keeps it sharp: the one number of brightness.
const ROUNDS: f64 = 3.0;

fn product(numbers: &[f64], of: &[f64]) -> f64 {
    numbers.iter().zip(of).map(|(a, b)| a * b).sum()
}

/// What the simulation would say, in some thirty microseconds.
///
/// Its window does not widen when the body takes more, its ring and brightness do not grow with loss.
#[must_use]
pub fn quick(string: &Sounding, body: &Body, kind: &Kind) -> Verdict {
    let features = Features::of(string, body);
    let forces = features.of_forces();
    let response = product(&RESPONSE, &[1.0, features.pitch, features.impedance, features.twist]);
    Verdict {
        response: libm::exp(response),
        least: libm::exp(product(&LEAST, &forces)),
        greatest: libm::exp(product(&GREATEST, &forces)),
        brightness: dullness(string, body, kind),
        ring: ring(string, body),
    }
}

/// Sharpness of a saw whose corner some rounds of the string have rounded, through the body: one number fitted.
fn dullness(string: &Sounding, body: &Body, kind: &Kind) -> f64 {
    let count = (12_500.0 / string.pitch) as usize;
    let middle = Body::between(kind);
    let harmonics: Vec<f64> = (1..=count)
        .map(|i| {
            let (n, frequency) = (i as f64, i as f64 * string.pitch);
            let eta = string.losses.get(i - 1).or(string.losses.last()).copied().unwrap_or(0.0);
            let (re, im) = body.admittance_at(frequency);
            let x = frequency / middle;
            let risen = x / (1.0 + x * x).sqrt();
            (re * re + im * im).sqrt() * risen / n * libm::exp(-ROUNDS * PI * n * eta)
        })
        .collect();
    let levels = sharpness::third_octaves(&harmonics, string.pitch, LEVEL);
    sharpness::sharpness(&sharpness::loudness(&levels))
}

/// Seconds in which the plucked string falls by 60 dB, as the sum of its partials: nothing fitted.
///
/// Each partial of the bridge's speed starts as abs(Y) sin(nπx)/n and loses η plus 2 Z₀ Re Y/(π n) ([`crate::source::EUPHONICS`], 5.1.1 eq. 8); six
/// times what the energy to come takes from −5 to −15 dB, as [`note::ring`] has it.
#[must_use]
pub fn ring(string: &Sounding, body: &Body) -> f64 {
    let partials: Vec<(f64, f64)> = string
        .losses
        .iter()
        .take(24)
        .enumerate()
        .map(|(i, eta)| {
            let n = (i + 1) as f64;
            let frequency = string.partial(n);
            let (re, im) = body.admittance_at(frequency);
            let rate = 2.0 * PI * frequency * (eta + 2.0 * string.impedance * re / (PI * n));
            let pulled = libm::sin(n * PI * PLUCKED_AT) / n;
            (pulled * pulled * (re * re + im * im) / rate, rate)
        })
        .collect();
    let whole: f64 = partials.iter().map(|p| p.0).sum();
    let left =
        |t: f64| partials.iter().map(|(e, rate)| e * libm::exp(-rate * t)).sum::<f64>() / whole;
    let when = |share: f64| {
        let (mut early, mut late) = (0.0, 1e3);
        for _ in 0..60 {
            let t = 0.5 * (early + late);
            if left(t) > share { early = t } else { late = t }
        }
        0.5 * (early + late)
    };
    6.0 * (when(note::RING_ENDS.1) - when(note::RING_ENDS.0))
}
