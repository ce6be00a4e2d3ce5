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

/// The shopping description of a chosen string.
#[must_use]
pub fn describe(
    candidate: &Candidate,
    problem: &Problem,
    index: usize,
    string: &StringProblem,
) -> Shopping {
    let (low, high) = precedent::bands(string.position, candidate.family, &string.place)
        .map_or(string.usual_tension, |b| b.tension);
    let third = (high - low) / 3.0;
    let (gauge_class, start) = if candidate.tension < low + third {
        (GaugeClass::Light, low)
    } else if candidate.tension < low + 2.0 * third {
        (GaugeClass::Medium, low + third)
    } else {
        (GaugeClass::Heavy, low + 2.0 * third)
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
