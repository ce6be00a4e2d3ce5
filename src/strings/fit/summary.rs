//! A chosen set as a whole: how far it leads, what its strings add up to, and the picture of what could be made.

use std::collections::BTreeSet;

use crate::construction::Family;
use crate::report::{Estimate, Property, Report};

use super::candidates::{Candidate, Made};
use super::choose::Choice;
use super::problem::StringProblem;

/// Lead of the best over the runner-up under which both are shown as equals, as a ratio of desirabilities: over four
/// strings as much as a kind counts that is twice as usual.
pub const CLOSE_CALL: f64 = 1.02;

/// Worth of a set among sets of other kinds, over its strings, so that four and five of them are read alike.
#[must_use]
pub fn worth(choice: &Choice) -> f64 {
    choice.total() / choice.strings.len() as f64
}

/// How much better one set is than another, as a ratio of desirabilities.
#[must_use]
pub fn lead(best: &Choice, other: &Choice) -> f64 {
    libm::exp(worth(best) - worth(other))
}

/// By which share a better set could be better at most.
#[must_use]
pub fn optimality_gap(best: &Choice) -> f64 {
    libm::exp(best.gap / best.strings.len() as f64) - 1.0
}

/// What a property of the strings adds up to. Ranges of one instrument move together (its length above all), so their
/// ends add.
#[must_use]
pub fn total(reports: &[Report], property: Property) -> Estimate {
    let all: Vec<Estimate> = reports.iter().map(|report| report.get(property)).collect();
    Estimate {
        value: all.iter().map(|e| e.value).sum(),
        low: all.iter().map(|e| e.low).sum(),
        high: all.iter().map(|e| e.high).sum(),
    }
}

/// The usual ratio of tensions of two neighbours, upper over lower.
#[must_use]
pub fn usual_step(upper: &StringProblem, lower: &StringProblem) -> f64 {
    let middle = |s: &StringProblem| (s.usual_tension.0 + s.usual_tension.1) / 2.0;
    middle(upper) / middle(lower)
}

/// A string in the picture of elasticity and what it costs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Its family.
    pub family: Family,
    /// Stretch at pitch.
    pub stretch: f64,
    /// Days until it has settled.
    pub settling: f64,
    /// How far warmth moves it while it goes untuned, cents.
    pub warmth: f64,
    /// How far damp moves it, cents.
    pub damp: f64,
}

impl Point {
    /// Where a candidate lies.
    #[must_use]
    pub fn of(c: &Candidate) -> Self {
        let Candidate { family, stretch, settling, warmth, damp, .. } = *c;
        Self { family, stretch, settling, warmth, damp }
    }

    fn of_made(made: &Made) -> Self {
        let lean = &made.lean;
        Self {
            family: made.family,
            stretch: lean.stretch,
            settling: lean.settling,
            warmth: lean.moved.warmth.abs(),
            damp: lean.damp(),
        }
    }
}

/// Cells for four nepers of stretch in the grid on which the picture is thinned; one point a cell and family.
const PICTURE_CELLS: f64 = 16.0;

/// Cells to a decade of days, and cents in a cell.
const DECADE_CELLS: f64 = 8.0;
const CENTS_A_CELL: f64 = 4.0;

/// What could be made at a place, thinned out.
#[must_use]
pub fn picture(made: &[Made]) -> Vec<Point> {
    let mut seen = BTreeSet::new();
    let points = made.iter().map(Point::of_made);
    points
        .filter(|p| {
            let cells = [
                libm::log(p.stretch) * PICTURE_CELLS / 4.0,
                libm::log10(p.settling.max(1e-3)) * DECADE_CELLS,
                p.warmth / CENTS_A_CELL,
                p.damp / CENTS_A_CELL,
            ];
            // The cells are small whole numbers.
            seen.insert((p.family, cells.map(|cell| cell.floor() as i32)))
        })
        .collect()
}
