//! What the answers were taken to mean, and what came of them: a set, or what stands in the way.

use std::rc::Rc;

use super::set::Set;
use crate::wire::wire;

wire! {
    /// The answer to a fitting.
    pub struct Fit {
        /// What the answers were taken to mean.
        pub problem: Problem,
        /// The set, when something fits.
        pub set: Option<Rc<Set>>,
        /// What stands in the way, when nothing does; else empty.
        pub obstacles: Vec<Obstacle>,
        /// What to do, which is often less than a new set, and why it bothers.
        pub verdict: Verdict,
    }

    /// What to do, and why it bothers.
    pub struct Verdict {
        /// `leave-it`, `fresh-same` (a fresh string or set of the same kind), `one-string`, `whole-set` or `luthier-first`.
        pub answer: String,
        /// Which string, 0 the highest, if it is about one.
        pub string: Option<usize>,
        /// What led to it: first causes of the findings, and other facts by their keys.
        pub because: Vec<String>,
        /// Every complaint with its causes.
        pub findings: Vec<Finding>,
    }

    /// A complaint.
    pub struct Finding {
        /// What bothers.
        pub bother: String,
        /// About which string, 0 the highest; none for the whole set.
        pub string: Option<usize>,
        /// Its causes, the most plausible first.
        pub causes: Vec<Cause>,
    }

    /// A cause of a complaint.
    pub struct Cause {
        /// Which.
        pub cause: String,
        /// `likely`, `possible` or `unlikely`.
        pub likely: String,
        /// No number speaks of it: a judgement alone.
        pub judged: bool,
        /// The numbers it was checked against.
        pub numbers: Vec<CauseNumber>,
        /// What to look at for it.
        pub look: String,
    }

    /// A number of today's string, against which a cause was checked.
    pub struct CauseNumber {
        /// A property of a report, or `age_months`, or `tension_step` (the step between neighbours over the usual one).
        pub property: String,
        /// Of which string, 0 the highest.
        pub string: usize,
        /// The number.
        pub value: f64,
        /// Lower end of its range.
        pub low: Option<f64>,
        /// Upper end of its range.
        pub high: Option<f64>,
        /// The limit with which it was compared.
        pub limit: Option<f64>,
    }

    /// What the answers were taken to mean.
    pub struct Problem {
        /// Key of the instrument.
        pub instrument: String,
        /// Its name.
        pub instrument_name: String,
        /// Size.
        pub size: String,
        /// Key of the tuning.
        pub tuning: String,
        /// Its name.
        pub tuning_name: String,
        /// `modern`, `historical` or `light`.
        pub set_up: String,
        /// Pitch of a′.
        pub a4_hz: f64,
        /// `equal` or `pure-fifths`.
        pub temperament: String,
        /// Usual total tension here.
        pub usual_load_n: (f64, f64),
        /// Largest total tension recommended here.
        pub most_load_n: f64,
        /// What was taken for granted because it was not answered.
        pub assumed: Vec<Assumed>,
        /// What counted, and how much.
        pub weights: Vec<Weight>,
        /// How far from the usual towards bright the wish lies, on a scale from dark (0) to bright (1).
        pub brightness_shift: f64,
        /// Days until it matters.
        pub concert_days: Option<f64>,
        /// The highest pitch at which the set is used, over its main one: at least 1. Tension goes with its square.
        pub highest_ratio: f64,
        /// What is on it now.
        pub now: Option<String>,
    }

    /// Something taken for granted.
    pub struct Assumed {
        /// The question.
        pub field: String,
        /// What was taken.
        pub value: String,
    }

    /// How much an attribute counted.
    pub struct Weight {
        /// Which attribute.
        pub attribute: String,
        /// Its weight before any answer.
        pub base: f64,
        /// Its weight here.
        pub weight: f64,
        /// Factors on it, and the answer each comes from.
        pub steps: Vec<WeightStep>,
    }

    /// A factor on a weight.
    pub struct WeightStep {
        /// By how much.
        pub factor: f64,
        /// From which answer.
        pub because: String,
    }

    /// What stands in the way.
    pub struct Obstacle {
        /// Which string, 0 the highest; none for the whole set.
        pub string: Option<usize>,
        /// Its note.
        pub note: Option<String>,
        /// Limits that left constructions out, the most active first.
        pub limits: Vec<LimitCount>,
        /// For the load: total tension of the lightest set there is.
        pub lightest_n: Option<f64>,
        /// For the load: largest total tension.
        pub most_n: Option<f64>,
        /// Wishes that, given up alone, would leave something that fits.
        pub relax: Vec<String>,
    }

    /// How many constructions a limit left out.
    pub struct LimitCount {
        /// Which limit.
        pub limit: String,
        /// How many.
        pub count: usize,
    }
}
