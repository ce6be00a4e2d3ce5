//! What does one ask for at the counter?

use crate::construction::Family;
use crate::material::Metal;
use crate::precedent::Bands;
use crate::quantity::Newton;

use super::answers::GaugeClass;
use super::candidates::Candidate;
use super::problem::Problem;

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

/// In which third of the tension band of its family a string lies.
#[must_use]
pub fn gauge_class(tension: f64, bands: &Bands) -> GaugeClass {
    let (low, high) = bands.tension;
    let third = (high - low) / 3.0;
    if tension < low + third {
        GaugeClass::Light
    } else if tension < low + 2.0 * third {
        GaugeClass::Medium
    } else {
        GaugeClass::Heavy
    }
}

/// The shopping description of a chosen string.
#[must_use]
pub fn describe(candidate: &Candidate, problem: &Problem, index: usize) -> Shopping {
    let (low, high) = candidate.bands.tension;
    let third = (high - low) / 3.0;
    let gauge_class = gauge_class(candidate.tension, &candidate.bands);
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
