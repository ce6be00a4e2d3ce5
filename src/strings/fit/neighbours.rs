//! What do neighbouring strings make of each other? A term for every pair, never positive: how far their steps in tension
//! and brightness depart from the usual ones.
//!
//! The term is a squared distance in the plane of ln tension and brightness. Towards a string that stays it depends on
//! one string alone, so it is added to what that string is worth by itself ([`Staying`]): the search of its position then
//! looks for what goes with its neighbours, and the pair is out of the choice of the set.

use super::candidates::Candidate;
use super::problem::{Problem, StringProblem, StringStatus};

/// Ratio of neighbours' tensions, against the usual one, at which the pair term is one unit.
const TENSION_STEP: f64 = 1.30;
/// Difference of neighbours' positions between dark and bright at which the pair term is one unit.
const BRIGHTNESS_STEP: f64 = 0.5;
/// What a unit of the pair term costs, in units of ln desirability.
const PAIR_WEIGHT: f64 = 0.15;

/// What a neighbour notices of a string.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Beside {
    /// Its tension, newtons.
    pub tension: f64,
    /// Where between dark (0) and bright (1) it lies.
    pub brightness: f64,
}

impl From<&Candidate> for Beside {
    fn from(c: &Candidate) -> Self {
        Self { tension: c.tension, brightness: c.brightness }
    }
}

/// The usual ratio of two neighbours' tensions.
#[must_use]
pub fn usual_step(above: &StringProblem, below: &StringProblem) -> f64 {
    let middle = |s: &StringProblem| (s.usual_tension.0 + s.usual_tension.1) / 2.0;
    middle(above) / middle(below)
}

/// The term for two neighbours: how far their steps in tension and brightness depart from the usual ones.
///
/// Core kind carries no penalty of its own.
#[must_use]
pub fn pair(upper: Beside, lower: Beside, above: &StringProblem, below: &StringProblem) -> f64 {
    // Of a string that is not judged it is not known what it is, nor what it is to its neighbours.
    if [above, below].iter().any(|string| string.standing == StringStatus::NotJudged) {
        return 0.0;
    }
    let usual = libm::log(usual_step(above, below));
    let step = (libm::log(upper.tension / lower.tension) - usual) / libm::log(TENSION_STEP);
    let usual_shade = above.usual_brightness - below.usual_brightness;
    let shade = (upper.brightness - lower.brightness - usual_shade) / BRIGHTNESS_STEP;
    -PAIR_WEIGHT * (step * step + shade * shade)
}

/// The pair terms of a set, from the highest pair down.
#[must_use]
pub fn pairs<'a, C>(problem: &Problem, strings: &'a [C]) -> Vec<f64>
where
    Beside: From<&'a C>,
{
    strings
        .windows(2)
        .zip(problem.strings.windows(2))
        .map(|(c, s)| pair((&c[0]).into(), (&c[1]).into(), &s[0], &s[1]))
        .collect()
}

/// A point in the plane in which the term of a pair is a squared distance.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Point {
    /// ln tension, in units of the step that costs one.
    pub tension: f64,
    /// Brightness, in units of the step that costs one.
    pub brightness: f64,
}

impl Point {
    /// Of a string of that ln tension and brightness.
    #[must_use]
    pub fn of(ln_tension: f64, brightness: f64) -> Self {
        Self { tension: ln_tension / LN_TENSION_STEP, brightness: brightness / BRIGHTNESS_STEP }
    }

    /// This point moved by another.
    #[must_use]
    pub fn plus(self, by: Self) -> Self {
        Self { tension: self.tension + by.tension, brightness: self.brightness + by.brightness }
    }

    fn minus(self, by: Self) -> Self {
        Self { tension: self.tension - by.tension, brightness: self.brightness - by.brightness }
    }

    /// The term of a pair whose points, the usual step apart, are these.
    #[must_use]
    pub fn term(self, other: Self) -> f64 {
        let (step, shade) = (self.tension - other.tension, self.brightness - other.brightness);
        -PAIR_WEIGHT * (step * step + shade * shade)
    }
}

/// ln [`TENSION_STEP`], to the last digit: a constant needs no logarithm for every string.
const LN_TENSION_STEP: f64 = 0.262_364_264_467_491_06;

/// The usual step from a position to the next lower one, where both are to be found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Step {
    /// The pair counts; the usual step in the plane of [`Point`].
    Usual(Point),
    /// The pair does not count here: one of the two stays, or is not judged.
    Uncounted,
}

impl Step {
    /// The steps between the positions of a problem at which a string is to be found, from the highest pair down: what
    /// stays counts in the string beside it ([`Staying`]).
    #[must_use]
    pub fn all(problem: &Problem) -> Vec<Self> {
        Self::between(problem, |string| string.standing == StringStatus::Open)
    }

    /// The steps between all positions that are judged, those of strings that stay included.
    #[must_use]
    pub fn with_kept(problem: &Problem) -> Vec<Self> {
        Self::between(problem, |string| string.standing != StringStatus::NotJudged)
    }

    fn between(problem: &Problem, counts: impl Fn(&StringProblem) -> bool) -> Vec<Self> {
        let of = |pair: &[StringProblem]| {
            if pair.iter().all(&counts) {
                Self::Usual(usual_point(&pair[0], &pair[1]))
            } else {
                Self::Uncounted
            }
        };
        problem.strings.windows(2).map(of).collect()
    }

    /// The term of two neighbours.
    #[must_use]
    pub fn term(self, upper: Point, lower: Point) -> f64 {
        match self {
            Self::Usual(step) => upper.term(lower.plus(step)),
            Self::Uncounted => 0.0,
        }
    }
}

fn usual_point(above: &StringProblem, below: &StringProblem) -> Point {
    Point::of(libm::log(usual_step(above, below)), above.usual_brightness - below.usual_brightness)
}

/// The strings that stay beside a position: where a string would have to lie to lose nothing by them.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Staying {
    above: Option<Point>,
    below: Option<Point>,
}

impl Staying {
    /// Beside position `i`. Two neighbours that both stay are counted once, with the lower of them.
    #[must_use]
    pub fn beside(problem: &Problem, fixed: &[Option<Candidate>], i: usize) -> Self {
        let kept = |k: usize| {
            let judged = problem.strings.get(k)?.standing != StringStatus::NotJudged;
            fixed.get(k)?.as_ref().filter(|_| judged)
        };
        let strings = &problem.strings;
        if strings.get(i).is_none_or(|string| string.standing == StringStatus::NotJudged) {
            return Self::default();
        }
        let at = |c: &Candidate| Point::of(libm::log(c.tension), c.brightness);
        let above = i.checked_sub(1).and_then(|upper| {
            let step = usual_point(&strings[upper], &strings[i]);
            kept(upper).map(|c| at(c).minus(step))
        });
        let below = kept(i + 1).filter(|_| fixed[i].is_none()).map(|c| {
            let step = usual_point(&strings[i], &strings[i + 1]);
            at(c).plus(step)
        });
        Self { above, below }
    }

    /// The terms of a string towards them.
    #[must_use]
    pub fn term(&self, ln_tension: f64, brightness: f64) -> f64 {
        let own = Point::of(ln_tension, brightness);
        let toward = |there: Option<Point>| there.map_or(0.0, |there| own.term(there));
        toward(self.above) + toward(self.below)
    }

    /// An upper bound of the terms of a string between two tensions, newtons.
    #[must_use]
    pub fn most(&self, slack: f64, taut: f64) -> f64 {
        if self.are_none() {
            return 0.0;
        }
        let ends = [slack, taut].map(|tension| Point::of(libm::log(tension), 0.0).tension);
        let toward = |there: Option<Point>| {
            there.map_or(0.0, |there| {
                let nearest = there.tension.clamp(ends[0].min(ends[1]), ends[0].max(ends[1]));
                Point { tension: nearest, ..there }.term(there)
            })
        };
        toward(self.above) + toward(self.below)
    }

    /// Whether nothing stays beside the position.
    #[must_use]
    pub fn are_none(&self) -> bool {
        self.above.is_none() && self.below.is_none()
    }
}
