//! What does one ask for at the counter?

use crate::construction::Family;
use crate::material::Metal;
use crate::precedent;
use crate::quantity::Newton;

use super::answers::GaugeClass;
use super::candidates::Candidate;
use super::problem::{Problem, StringProblem};

/// How the string ends at the tailpiece.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum End {
    /// A ball.
    Ball,
    /// A loop, for a hook-shaped fine tuner; a ball will do elsewhere.
    LoopOrBall,
    /// A knot the fitter ties.
    Knot,
}

/// A string as one asks for it, without a maker's name.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shopping {
    /// Family.
    pub family: Family,
    /// Metal under the fingers, if wound.
    pub outer_metal: Option<&'static Metal>,
    /// Light, medium or heavy.
    pub gauge_class: GaugeClass,
    /// Tension to look for on the packet, at this pitch and length: a third of the band.
    pub tension: (Newton, Newton),
    /// Its end.
    pub end: End,
    /// Needs the longer string of a C extension.
    pub extension: bool,
}

/// Low end of the tension band of a string's family at a place, and a third of the band.
fn thirds(candidate: &Candidate, string: &StringProblem) -> (f64, f64) {
    let (low, high) = precedent::bands(string.position, candidate.family, &string.place)
        .map_or(string.usual_tension, |b| b.tension);
    (low, (high - low) / 3.0)
}

/// In which third of the band of its family a string lies.
#[must_use]
pub fn gauge_class(candidate: &Candidate, string: &StringProblem) -> GaugeClass {
    let (low, third) = thirds(candidate, string);
    if candidate.tension < low + third {
        GaugeClass::Light
    } else if candidate.tension < low + 2.0 * third {
        GaugeClass::Medium
    } else {
        GaugeClass::Heavy
    }
}

/// The shopping description of a chosen string.
#[must_use]
pub fn describe(
    candidate: &Candidate,
    problem: &Problem,
    index: usize,
    string: &StringProblem,
) -> Shopping {
    let (low, third) = thirds(candidate, string);
    let gauge_class = gauge_class(candidate, string);
    let start = match gauge_class {
        GaugeClass::Light => low,
        GaugeClass::Medium => low + third,
        GaugeClass::Heavy => low + 2.0 * third,
    };
    Shopping {
        family: candidate.family,
        outer_metal: candidate.construction.outer_winding().map(|w| w.metal),
        gauge_class,
        tension: (Newton::new(start), Newton::new(start + third)),
        end: match (candidate.family, problem.kind.key) {
            (Family::PlainGut, _) => End::Knot,
            (Family::PlainSteel, "violin") => End::LoopOrBall,
            _ => End::Ball,
        },
        extension: problem.tuning.extension && index + 1 == problem.strings.len(),
    }
}
