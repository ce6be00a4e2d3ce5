//! Which stroke would a player choose? The one of a few that speaks soonest; and how readily the string speaks at all.

use super::body::Body;
use super::friction::Law;
use super::gesture::{Gesture, Track};
use super::judge::{Judgement, Regime};
use super::map::{closed_attack, closed_limits};
use super::note::{PERIODS, judged};
use super::sounding::Sounding;
use super::strung::Strung;

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

/// Tries two dozen strokes up to `speed` at `place` and chooses.
#[must_use]
pub fn tries(string: &Sounding, body: &Body, law: Law, speed: f64, place: f64) -> Tried {
    let strung = Strung::new(string, body, string.rate(place, law));
    let (greatest, _) = closed_limits(string, 1.0, speed, place);
    let (_, for_one) = closed_attack(string, place, 1.0);
    let plans: Vec<(f64, f64)> = FORCES
        .iter()
        .flat_map(|force| ACCELERATIONS.map(|a| (force * greatest, a * force * greatest / for_one)))
        .collect();
    let gestures: Vec<Gesture> = plans
        .iter()
        .map(|&(force, acceleration)| Gesture {
            speed: Track::rising(acceleration, speed),
            ..Gesture::steady(0.0, force, place)
        })
        .collect();
    let strokes: Vec<Stroke> = plans
        .iter()
        .zip(judged(&strung, law, &gestures, None))
        .map(|(&(force, acceleration), judgement)| Stroke { force, acceleration, judgement })
        .collect();
    let taken = |stroke: &Stroke| stroke.judgement.periods_to_helmholtz.min(PERIODS);
    let count = strokes.len() as f64;
    let clean = |stroke: &&Stroke| stroke.judgement.regime == Regime::Helmholtz;
    let middle = strokes[strokes.len() / 2];
    let best = strokes
        .iter()
        .filter(clean)
        .fold(middle, |best, stroke| if taken(stroke) < taken(&best) { *stroke } else { best });
    Tried {
        best,
        periods: strokes.iter().map(taken).sum::<f64>() / count,
        clean: strokes.iter().filter(clean).count() as f64 / count,
    }
}
