//! Where does the string speak? Notes over a grid of bow place and force, or of acceleration and force, row by row.
//!
//! A row is a pure function of the map and its number, so that rows can be computed anywhere in any order and shown
//! as they come. The closed limits of the same string stand beside.

use super::body::Body;
use super::friction::Law;
use super::gesture::{Gesture, Track};
use super::judge::{Judgement, Regime};
use super::note::judged;
use super::sounding::Sounding;
use super::strung::Strung;
use crate::constant::{FRICTION_DROP, FRICTION_SPEED, SLIDING_FRICTION};
use crate::lanes::LANES;
use crate::physics::bowing;
use crate::quantity::{Kilogram, KilogramPerSecond};

/// Speed at which a bow that starts from rest stays, m/s.
const TOP_SPEED: f64 = 0.5;

/// From `first` to `last` in `count` equal ratios.
#[must_use]
pub fn ratios(first: f64, last: f64, count: usize) -> Vec<f64> {
    let whole = (count.max(2) - 1) as f64;
    (0..count).map(|i| first * libm::pow(last / first, i as f64 / whole)).collect()
}

/// The limits of bow force by formula, N: greatest and least, each with friction that falls with speed.
///
/// Source: [`crate::source::SCHOONDERWALDT_2008`], eqs. 4 and 5; the bridge as a resistance, kg/s.
#[must_use]
pub fn closed_limits(string: &Sounding, resistance: f64, speed: f64, place: f64) -> (f64, f64) {
    let z = KilogramPerSecond::new(string.impedance);
    let rest = SLIDING_FRICTION + FRICTION_DROP.value;
    let falling = bowing::effective_speed(speed, place, FRICTION_SPEED);
    let greatest = bowing::greatest_force(z, falling, place, rest, SLIDING_FRICTION);
    let least = bowing::least_force(
        z,
        KilogramPerSecond::new(resistance),
        falling,
        place,
        rest,
        SLIDING_FRICTION,
    );
    (greatest.get(), least.get())
}

/// Force against bow place: Schelleng's diagram. Each note starts in the ideal motion, and is judged by what becomes of it.
#[derive(Clone, Debug, PartialEq)]
pub struct PlaceMap {
    /// The string.
    pub string: Sounding,
    /// What it finds at the bridge.
    pub body: Body,
    /// How the hair holds.
    pub law: Law,
    /// Resistance of the bridge for the closed limits, kg/s.
    pub resistance: f64,
    /// Speed of the bow, m/s.
    pub speed: f64,
    /// Places of the bow, shares of the length from the bridge: one a row.
    pub places: Vec<f64>,
    /// Forces of the bow, N: one a column.
    pub forces: Vec<f64>,
}

/// One row of a map.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// The place or the acceleration of the row.
    pub at: f64,
    /// What is said of each note.
    pub cells: Vec<Judgement>,
    /// The upper and the lower limit by formula, in the unit of the columns.
    pub limits: (f64, f64),
}

impl PlaceMap {
    /// The map of a string over the usual places and forces, `count` by `count`.
    #[must_use]
    pub fn usual(string: Sounding, body: Body, resistance: f64, speed: f64, count: usize) -> Self {
        let places = ratios(0.02, 0.25, count);
        let (most, _) = closed_limits(&string, resistance, speed, 0.02);
        let (top, _) = closed_limits(&string, resistance, speed, 0.25);
        let forces = ratios(top / 40.0, most * 1.5, count);
        let law = Law::Hyperbolic;
        Self { string, body, law, resistance, speed, places, forces }
    }

    /// Row `i`: one place of the bow. None beyond the last.
    #[must_use]
    pub fn row(&self, i: usize) -> Option<Row> {
        let place = *self.places.get(i)?;
        let gestures: Vec<Gesture> =
            self.forces.iter().map(|force| Gesture::steady(self.speed, *force, place)).collect();
        let rate = self.string.rate(place, self.law);
        let strung = Strung::new(&self.string, &self.body, rate);
        let cells = judged(&strung, self.law, &gestures, Some(self.speed));
        let limits = closed_limits(&self.string, self.resistance, self.speed, place);
        Some(Row { at: place, cells, limits })
    }

    /// Every row, computed as it is asked for.
    pub fn rows(&self) -> impl Iterator<Item = Row> {
        (0..self.places.len()).filter_map(|i| self.row(i))
    }
}

/// Force against acceleration: Guettler's diagram. Each note starts from rest.
#[derive(Clone, Debug, PartialEq)]
pub struct AttackMap {
    /// The string.
    pub string: Sounding,
    /// What it finds at the bridge.
    pub body: Body,
    /// How the hair holds.
    pub law: Law,
    /// Place of the bow, a share of the length from the bridge.
    pub place: f64,
    /// Accelerations of the bow, m/s²: one a row.
    pub accelerations: Vec<f64>,
    /// Forces of the bow, N: one a column.
    pub forces: Vec<f64>,
}

/// The forces between which an acceleration starts a clean note at once, N, by formula: greatest and least.
///
/// Source: [`crate::source::GUETTLER_2002`], eq. 8.
#[must_use]
pub fn closed_attack(string: &Sounding, place: f64, acceleration: f64) -> (f64, f64) {
    // Twice the mass of the string is its period times its impedance.
    let mass = Kilogram::new(string.impedance / string.pitch / 2.0);
    let rest = SLIDING_FRICTION + FRICTION_DROP.value;
    (
        acceleration / bowing::gentlest_attack(mass, place, rest, SLIDING_FRICTION),
        acceleration / bowing::attack(mass, place, rest, SLIDING_FRICTION),
    )
}

impl AttackMap {
    /// The map of a string over the usual accelerations and forces, `count` by `count`, at the place of the bow.
    #[must_use]
    pub fn usual(string: Sounding, body: Body, place: f64, count: usize) -> Self {
        let (most, _) = closed_limits(&string, 1.0, 0.1, place);
        let forces = ratios(most / 20.0, most * 2.0, count);
        let mass = Kilogram::new(string.impedance / string.pitch / 2.0);
        let rest = SLIDING_FRICTION + FRICTION_DROP.value;
        let slope = bowing::attack(mass, place, rest, SLIDING_FRICTION);
        let accelerations = ratios(slope * most / 20.0, slope * most * 1.5, count);
        // By the law of speed alone hardly any start is clean, by that of temperature those that are so in life.
        Self { string, body, law: Law::Thermal, place, accelerations, forces }
    }

    /// Row `i`: one acceleration. None beyond the last.
    #[must_use]
    pub fn row(&self, i: usize) -> Option<Row> {
        let acceleration = *self.accelerations.get(i)?;
        let gestures: Vec<Gesture> = self
            .forces
            .iter()
            .map(|force| Gesture {
                speed: Track::rising(acceleration, TOP_SPEED),
                ..Gesture::steady(0.0, *force, self.place)
            })
            .collect();
        let rate = self.string.rate(self.place, self.law);
        let strung = Strung::new(&self.string, &self.body, rate);
        let cells = judged(&strung, self.law, &gestures, None);
        let limits = closed_attack(&self.string, self.place, acceleration);
        Some(Row { at: acceleration, cells, limits })
    }

    /// Every row, computed as it is asked for.
    pub fn rows(&self) -> impl Iterator<Item = Row> {
        (0..self.accelerations.len()).filter_map(|i| self.row(i))
    }
}

/// Between which forces a bow at one place keeps a clean note.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Window {
    /// Least force, N.
    pub least: f64,
    /// Greatest force, N.
    pub greatest: f64,
}

impl Window {
    /// Its width in decibels: "speaks cleanly over a window of 12 dB".
    #[must_use]
    pub fn decibels(&self) -> f64 {
        20.0 * libm::log10(self.greatest / self.least)
    }
}

/// Forces tried for a window, in equal ratios over [`WINDOW_SPAN`]. Half as many miss narrow windows.
const TRIED: usize = 40;
/// Of the greatest force by formula: where the search for a window begins and ends.
const WINDOW_SPAN: (f64, f64) = (0.004, 4.0);

/// The window of a string at a place and speed of the bow; none where no force gives a clean note.
///
/// The longest run of clean notes over forces in equal ratios, where one note that fails among clean ones does not end
/// a run; each end then found anew between its neighbours, to a third of a decibel.
#[must_use]
pub fn window(string: &Sounding, body: &Body, law: Law, speed: f64, place: f64) -> Option<Window> {
    let (most, _) = closed_limits(string, 1.0, speed, place);
    let forces = ratios(most * WINDOW_SPAN.0, most * WINDOW_SPAN.1, TRIED);
    let strung = Strung::new(string, body, string.rate(place, law));
    let clean = |forces: &[f64]| -> Vec<bool> {
        let gestures: Vec<Gesture> =
            forces.iter().map(|force| Gesture::steady(speed, *force, place)).collect();
        judged(&strung, law, &gestures, Some(speed))
            .iter()
            .map(|note| note.regime == Regime::Helmholtz)
            .collect()
    };
    let (first, last) = longest(&clean(&forces))?;
    let ratio = forces[1] / forces[0];
    let finer = |from: f64| ratios(from, from * ratio, LANES + 2)[1..=LANES].to_vec();
    let (below, above) = (finer(forces[first] / ratio), finer(forces[last]));
    let (below_clean, above_clean) = (clean(&below), clean(&above));
    let least =
        (0..LANES).rev().take_while(|i| below_clean[*i]).last().map_or(forces[first], |i| below[i]);
    let greatest =
        (0..LANES).take_while(|i| above_clean[*i]).last().map_or(forces[last], |i| above[i]);
    Some(Window { least, greatest })
}

/// Places about the stated one over which [`window_about`] takes the mean: within an eighth of it either way.
const ABOUT: [f64; 5] = [0.885, 0.94, 1.0, 1.063, 1.13];

/// The window about a place: the geometric mean over five places within an eighth of it.
///
/// At one place alone a window hangs by several decibels on how near 1/β is to a whole number; no bow stays so exactly.
#[must_use]
pub fn window_about(
    string: &Sounding,
    body: &Body,
    law: Law,
    speed: f64,
    place: f64,
) -> Option<Window> {
    let windows: Vec<Window> =
        ABOUT.iter().filter_map(|near| window(string, body, law, speed, near * place)).collect();
    let mean = |part: fn(&Window) -> f64| {
        let logs: f64 = windows.iter().map(|window| libm::log(part(window))).sum();
        libm::exp(logs / windows.len() as f64)
    };
    (!windows.is_empty()).then(|| Window {
        least: mean(|window| window.least),
        greatest: mean(|window| window.greatest),
    })
}

/// The longest run of what holds, in which single gaps are allowed: its first and last.
fn longest(holds: &[bool]) -> Option<(usize, usize)> {
    let mut best: Option<(usize, usize)> = None;
    let mut run: Option<(usize, usize)> = None;
    for (i, _) in holds.iter().enumerate().filter(|(_, holds)| **holds) {
        run = match run {
            Some((first, last)) if i - last <= 2 => Some((first, i)),
            _ => Some((i, i)),
        };
        if let Some((first, last)) = run
            && best.is_none_or(|(f, l)| last - first > l - f)
        {
            best = run;
        }
    }
    best
}
