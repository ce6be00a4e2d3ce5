//! One note, played from beginning to end: what the bridge felt of it, and what sort of note it was.
//!
//! The loops over samples are made here for both laws of friction, so that they are compiled with the model's own
//! care for speed wherever they are called from.

use super::bowed::{Bowed, Moment};
use super::friction::{Friction, Hyperbolic, Law};
use super::gesture::Gesture;
use super::judge::{Judgement, Watch};
use super::strung::Strung;
use super::thermal::Thermal;
use crate::answer_to_bow::RING_ENDS;
use crate::lanes::{Four, Lanes};

/// Steps between two looks at whether notes are to be given up.
const LOOKS: usize = 64;
/// How long a note is watched when its regime is asked for, in periods.
pub const PERIODS: f64 = 60.0;

/// What the bridge felt, step by step.
#[derive(Clone, Debug, PartialEq)]
pub struct Note {
    /// Steps a second.
    pub rate: f64,
    /// Force of the string on the bridge, N.
    pub bridge_force: Vec<f64>,
    /// Speed of the bridge, m/s.
    pub bridge_speed: Vec<f64>,
    /// What sort of note it was.
    pub judgement: Judgement,
}

/// A string at rest, bowed for `seconds`.
#[must_use]
pub fn bowed(strung: &Strung, law: Law, gesture: &Gesture, seconds: f64) -> Note {
    by_law(strung, law, gesture, None, seconds)
}

/// A string in the ideal motion that the gesture's first moment asks for, bowed on for `seconds`.
#[must_use]
pub fn kept_moving(strung: &Strung, law: Law, gesture: &Gesture, seconds: f64) -> Note {
    by_law(strung, law, gesture, Some(gesture.speed.at(0.0)), seconds)
}

fn by_law(strung: &Strung, law: Law, gesture: &Gesture, moving: Option<f64>, seconds: f64) -> Note {
    match law {
        Law::Hyperbolic => one(strung, Hyperbolic::rosin(), gesture, moving, seconds),
        Law::Thermal => one(strung, Thermal::new(strung.rate()), gesture, moving, seconds),
    }
}

fn one<F: Friction<f64>>(
    strung: &Strung,
    friction: F,
    gesture: &Gesture,
    moving: Option<f64>,
    seconds: f64,
) -> Note {
    let steps = (seconds * strung.rate()) as usize;
    let place = gesture.place.at(0.0);
    let mut watch = Watch::new(strung.period(), steps as f64 / strung.period());
    let (mut force, mut speed) = (Vec::with_capacity(steps), Vec::with_capacity(steps));
    let see = |_: usize, moment: &Moment<f64>| {
        watch.see(0, moment);
        force.push(moment.bridge_force);
        speed.push(moment.bridge_speed);
    };
    let mut string = Bowed::new(strung, place, friction);
    if let Some(speed) = moving {
        string.set_moving(speed);
    }
    string.play(core::slice::from_ref(gesture), steps, see);
    Note {
        rate: strung.rate(),
        bridge_force: force,
        bridge_speed: speed,
        judgement: watch.judge(place),
    }
}

/// A string plucked at `place` with `pull` newtons, let go over `letting_go` seconds, and left to ring.
///
/// The force on the bridge is told without the still part that the finger's pull had.
#[must_use]
pub fn plucked(strung: &Strung, place: f64, pull: f64, letting_go: f64, seconds: f64) -> Note {
    let steps = (seconds * strung.rate()) as usize;
    let (mut force, mut speed) = (Vec::with_capacity(steps), Vec::with_capacity(steps));
    let mut string = Bowed::new(strung, place, Hyperbolic::rosin());
    // To let go of a string that is held is to push it back by as much: the two differ by what stands still.
    let going = (letting_go * strung.rate()).max(1.0);
    for k in 0..steps {
        let t = (k as f64 / going).min(1.0);
        let moment = string.pulled(-pull * t * t * (3.0 - 2.0 * t));
        force.push(moment.bridge_force);
        speed.push(moment.bridge_speed);
    }
    let judgement = Watch::new(strung.period(), 0.0).judge(place);
    Note { rate: strung.rate(), bridge_force: force, bridge_speed: speed, judgement }
}

/// Judges any number of notes of [`PERIODS`] periods, [`LANES`](crate::lanes::LANES) at a time.
///
/// `moving` is the bow speed of the ideal motion from which they start, m/s; without it they start from rest.
#[must_use]
pub fn judged(
    strung: &Strung,
    law: Law,
    gestures: &[Gesture],
    moving: Option<f64>,
) -> Vec<Judgement> {
    abreast::<Four>(strung, law, gestures, moving, f64::INFINITY)
}

/// As [`judged`] from rest, but gives notes up together once none can still be clean within so many `periods`.
///
/// One that can be is judged as by [`judged`]; of the others no more is known than that they are not.
#[must_use]
pub fn judged_within(
    periods: f64,
    strung: &Strung,
    law: Law,
    gestures: &[Gesture],
) -> Vec<Judgement> {
    abreast::<Four>(strung, law, gestures, None, periods)
}

/// As [`judged`], one at a time: the answers are the same, only the time differs.
#[must_use]
pub fn judged_alone(
    strung: &Strung,
    law: Law,
    gestures: &[Gesture],
    moving: Option<f64>,
) -> Vec<Judgement> {
    abreast::<f64>(strung, law, gestures, moving, f64::INFINITY)
}

fn abreast<N: Lanes>(
    strung: &Strung,
    law: Law,
    gestures: &[Gesture],
    moving: Option<f64>,
    within: f64,
) -> Vec<Judgement> {
    let some = |some: &[Gesture]| match law {
        Law::Hyperbolic => few::<N, _>(strung, some, moving, within, Hyperbolic::rosin()),
        Law::Thermal => few::<N, _>(strung, some, moving, within, Thermal::new(strung.rate())),
    };
    gestures.chunks(N::COUNT).flat_map(some).collect()
}

/// With fewer gestures than lanes the last is played more than once and told once.
fn few<N: Lanes, F: Friction<N>>(
    strung: &Strung,
    gestures: &[Gesture],
    moving: Option<f64>,
    within: f64,
    friction: F,
) -> Vec<Judgement> {
    let Some(last) = gestures.last() else { return Vec::new() };
    let mut lanes = gestures.to_vec();
    lanes.resize(N::COUNT, last.clone());
    let mut bowed = Bowed::new(strung, N::each(|l| lanes[l].place.at(0.0)), friction);
    if let Some(speed) = moving {
        bowed.set_moving(N::all(speed));
    }
    let period = bowed.period();
    let mut watches = vec![Watch::new(period, PERIODS); N::COUNT];
    bowed.play_while(&lanes, (PERIODS * period) as usize, |k, moment| {
        for (l, watch) in watches.iter_mut().enumerate() {
            watch.see(l, moment);
        }
        k % LOOKS != 0 || watches.iter().any(|watch| watch.clean_from() <= within)
    });
    let judged = watches.into_iter().zip(gestures);
    judged.map(|(watch, gesture)| watch.judge(gesture.place.at(0.0))).collect()
}

/// Seconds in which a sound that dies away falls by 60 dB: six times what it takes from −5 to −15 dB.
///
/// Of the energy still to come (Schroeder 1965), so that beats do not count. None if it does not fall so far.
#[must_use]
pub fn ring(sound: &[f64], rate: f64) -> Option<f64> {
    let mut to_come: Vec<f64> = sound.iter().map(|x| x * x).collect();
    let mut sum = 0.0;
    for x in to_come.iter_mut().rev() {
        sum += *x;
        *x = sum;
    }
    let below = |share: f64| to_come.iter().position(|e| *e < share * sum);
    let (first, last) = (below(RING_ENDS.0)?, below(RING_ENDS.1)?);
    // Of a whole that is cut off, the end cannot be trusted.
    let near_the_end = to_come.get((0.8 * sound.len() as f64) as usize)?;
    (*near_the_end < RING_ENDS.1 * sum && last > first).then(|| 6.0 * (last - first) as f64 / rate)
}
