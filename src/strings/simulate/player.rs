//! Which stroke would a player choose? The one of a few that speaks soonest; and how readily the string speaks at all.

use super::body::Body;
use super::friction::Law;
use super::gesture::{Gesture, Track};
use super::judge::{Judgement, Regime};
use super::map::{closed_attack, closed_limits};
use super::note::{PERIODS, judged, judged_within};
use super::sounding::Sounding;
use super::strung::Strung;
use crate::lanes::LANES;

/// Forces that are tried, of the greatest by formula.
const FORCES: [f64; 6] = [0.05, 0.08, 0.12, 0.18, 0.27, 0.4];
/// Accelerations that are tried, of the briskest clean one by formula for the force.
const ACCELERATIONS: [f64; 4] = [0.2, 0.4, 0.65, 0.9];

/// A stroke from rest, and what becomes of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stroke {
    /// Force of the bow, N.
    pub force: f64,
    /// How it gains speed, m/s².
    pub acceleration: f64,
    /// What sort of note it makes.
    pub judgement: Judgement,
}

/// Strokes tried on one string.
#[derive(Clone, Debug, PartialEq)]
pub struct Tried {
    /// The one that speaks soonest; of those that never do, the middle one.
    pub best: Stroke,
    /// Periods until a clean note, in the mean over all strokes; one that never becomes clean counts as [`PERIODS`].
    pub periods: f64,
    /// How many of all strokes become clean.
    pub clean: f64,
}

/// The strokes that are tried up to `speed` at `place`: force and acceleration.
fn plans(string: &Sounding, speed: f64, place: f64) -> Vec<(f64, f64)> {
    let (greatest, _) = closed_limits(string, 1.0, speed, place);
    let (_, for_one) = closed_attack(string, place, 1.0);
    FORCES
        .iter()
        .flat_map(|force| ACCELERATIONS.map(|a| (force * greatest, a * force * greatest / for_one)))
        .collect()
}

fn gestures(plans: &[(f64, f64)], speed: f64, place: f64) -> Vec<Gesture> {
    plans
        .iter()
        .map(|&(force, acceleration)| Gesture {
            speed: Track::rising(acceleration, speed),
            ..Gesture::steady(0.0, force, place)
        })
        .collect()
}

fn strokes(plans: &[(f64, f64)], judged: Vec<Judgement>) -> Vec<Stroke> {
    plans
        .iter()
        .zip(judged)
        .map(|(&(force, acceleration), judgement)| Stroke { force, acceleration, judgement })
        .collect()
}

impl Stroke {
    /// Periods until a clean note; one that never becomes clean takes [`PERIODS`].
    fn taken(&self) -> f64 {
        self.judgement.periods_to_helmholtz.min(PERIODS)
    }

    fn is_clean(&self) -> bool {
        self.judgement.regime == Regime::Helmholtz
    }
}

/// The stroke that speaks soonest; of those that never do, the middle one.
fn soonest(strokes: &[Stroke]) -> Stroke {
    let middle = strokes[strokes.len() / 2];
    let clean = strokes.iter().filter(|stroke| stroke.is_clean());
    clean.fold(middle, |best, stroke| if stroke.taken() < best.taken() { *stroke } else { best })
}

/// Tries two dozen strokes up to `speed` at `place` and chooses.
#[must_use]
pub fn tries(string: &Sounding, body: &Body, law: Law, speed: f64, place: f64) -> Tried {
    let strung = Strung::new(string, body, string.rate(place, law));
    let plans = plans(string, speed, place);
    let strokes = strokes(&plans, judged(&strung, law, &gestures(&plans, speed, place), None));
    let count = strokes.len() as f64;
    Tried {
        best: soonest(&strokes),
        periods: strokes.iter().map(Stroke::taken).sum::<f64>() / count,
        clean: strokes.iter().filter(|stroke| stroke.is_clean()).count() as f64 / count,
    }
}

/// The best of [`tries`] alone: strokes that can no longer be sooner than one before are given up.
#[must_use]
pub fn chosen(string: &Sounding, body: &Body, law: Law, speed: f64, place: f64) -> Stroke {
    let strung = Strung::new(string, body, string.rate(place, law));
    let plans = plans(string, speed, place);
    let mut played = Vec::with_capacity(plans.len());
    let mut best = PERIODS;
    for some in plans.chunks(LANES) {
        let judged = judged_within(best, &strung, law, &gestures(some, speed, place));
        played.extend(strokes(some, judged));
        let clean = played.iter().filter(|stroke| stroke.is_clean());
        best = clean.map(Stroke::taken).fold(PERIODS, f64::min);
    }
    soonest(&played)
}
