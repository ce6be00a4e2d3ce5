//! A chosen set as a whole: how far it leads, what its strings add up to, and the picture of what could be made.

use std::collections::BTreeSet;

use crate::construction::{Construction, Family};
use crate::report::{Estimate, Property, Report};

use super::candidates::{Candidate, Made};
use super::choose::Choice;
use super::problem::{Problem, StringProblem};
use super::score;

/// Lead of the best over the runner-up under which both are shown as equals, as a ratio of desirabilities.
pub const CLOSE_CALL: f64 = 1.05;

/// Worth of a set, over its strings, so that four and five of them are read alike.
#[must_use]
pub fn worth(choice: &Choice) -> f64 {
    choice.worth / choice.strings.len() as f64
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

/// A string in the picture of elasticity against steadiness.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Its family.
    pub family: Family,
    /// Stretch at pitch.
    pub stretch: f64,
    /// Steadiness, 0 to 1.
    pub steadiness: f64,
    /// Days until it has settled.
    pub settling: f64,
    /// Computed drift, in cents.
    pub drift: f64,
    /// What fitters say of its core, 0 to 1.
    pub judgement: f64,
}

impl Point {
    /// Where a candidate lies.
    #[must_use]
    pub fn of(c: &Candidate, problem: &Problem) -> Self {
        Self::at(c.family, (c.stretch, c.settling, c.drift), &c.construction, problem)
    }

    fn at(
        family: Family,
        (stretch, settling, drift): (f64, f64, f64),
        construction: &Construction,
        problem: &Problem,
    ) -> Self {
        let judgement = construction.core.material.climate_judgement;
        let steadiness = score::steadiness(&problem.weights, settling, drift, judgement);
        Self { family, stretch, steadiness, settling, drift, judgement }
    }
}

/// Cells to a side of the grid on which the picture is thinned; one point a cell and family.
const PICTURE_CELLS: f64 = 16.0;

/// What could be made at a place, thinned out.
#[must_use]
pub fn picture(made: &[Made], problem: &Problem) -> Vec<Point> {
    let mut seen = BTreeSet::new();
    let points = made.iter().map(|m| {
        let fast = (m.lean.stretch, m.lean.settling, m.lean.drift);
        Point::at(m.family, fast, &m.construction, problem)
    });
    points
        .filter(|p| {
            let across = (libm::log(p.stretch) * PICTURE_CELLS / 4.0).floor();
            let up = (p.steadiness * PICTURE_CELLS).floor();
            // The cells are small whole numbers.
            seen.insert((p.family, across as i32, up as i32))
        })
        .collect()
}
