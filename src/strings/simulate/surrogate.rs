//! What does the simulation say of a string, in five numbers? And what do the numbers fitted to it?
//!
//! The fitted ones are those of [`crate::answer_to_bow`]; here they stand beside the simulation itself.

use super::body::Body;
use super::friction::Law;
use super::gesture::Gesture;
use super::map::{closed_limits, window_about};
use super::sounding::Sounding;
use super::strung::Strung;
use super::{level, note, player, sharpness, sound, spectrum};
use crate::answer_to_bow::{self, BowResponse, BridgeLoad, PLACE, PLUCKED_AT, SPEED};
use crate::body::skeleton;
use crate::instrument::Kind;

/// Force at which brightness is taken, of the greatest by formula.
const PRESSED: f64 = 0.15;
/// Level at which brightness is taken, dB.
const LEVEL: f64 = 70.0;
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
    let period = level::RATE as f64 / (string.pitch * flat);
    let last = &heard[heard.len().saturating_sub((20.0 * period) as usize)..];
    let harmonics = spectrum::harmonics(last, period, (12_500.0 / string.pitch) as usize);
    let levels = sharpness::third_octaves(&harmonics, string.pitch, LEVEL);
    sharpness::sharpness(&sharpness::loudness(&levels))
}

/// What the numbers fitted to the simulation say, in some microseconds.
///
/// The room between the forces does not widen when the body takes more; the ring does not grow with loss.
#[must_use]
pub fn quick(string: &Sounding, body: &Body, kind: &Kind) -> Verdict {
    let ln = libm::log;
    let bridge_load = BridgeLoad::of(body, skeleton(kind.key), string.pitch);
    let ratio = string.torsion_impedance / string.impedance;
    let share = if ratio.is_finite() { ratio / (1.0 + ratio) } else { 1.0 };
    let z = (ln(string.impedance), string.impedance);
    let answer = BowResponse::new(&bridge_load, z, ln(share), ln(string.inharmonicity.max(1e-8)));
    let (least, greatest) = answer.forces();
    Verdict {
        response: libm::exp(answer.response()),
        least: libm::exp(least),
        greatest: libm::exp(greatest),
        brightness: libm::exp(answer.sharpness()),
        ring: ring(string, body),
    }
}

/// Seconds in which the plucked string falls by 60 dB, as the sum of its partials: nothing fitted.
#[must_use]
pub fn ring(string: &Sounding, body: &Body) -> f64 {
    let partials = string.losses.iter().enumerate();
    let partials = partials.map(|(i, eta)| (string.partial((i + 1) as f64), *eta));
    answer_to_bow::ring(string.impedance, partials, body)
}
