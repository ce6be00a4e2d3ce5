//! What was wrong with today's string, where its successor has to be different.

use crate::construction::{Construction, Family};
use crate::report::{Lean, Property};

use super::compare;

/// What was wrong with today's string.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Flaw {
    /// Its family.
    Family(Family),
    /// The metal under the fingers.
    Metal(&'static str),
    /// It pulls that hard, newtons, or harder.
    Tension(f64),
    /// It pulls with that little, newtons, or less.
    Slackness(f64),
    /// It is brilliant up to that frequency, hertz, or higher.
    Shine(f64),
    /// It is brilliant only up to that frequency, hertz, or lower.
    Dullness(f64),
    /// It is worked to that share of its strength, or more.
    Work(f64),
}

/// What flaws and limits ask of a string.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Numbers {
    /// Its family.
    pub family: Family,
    /// Key of its outermost metal.
    pub metal: Option<&'static str>,
    /// Tension, newtons.
    pub tension: f64,
    /// Where brilliance ends, hertz.
    pub brilliance: f64,
    /// Share of breaking strength.
    pub breaking_share: f64,
    /// Cents per degree of peg.
    pub peg: f64,
}

impl Numbers {
    /// Those of a string that is known.
    #[must_use]
    pub fn of(construction: &Construction, lean: &Lean) -> Self {
        Self {
            family: construction.family(),
            metal: construction.outer_winding().map(|w| w.metal.key),
            tension: lean.tension,
            brilliance: lean.brilliance,
            breaking_share: lean.breaking_share,
            peg: lean.peg,
        }
    }
}

impl Flaw {
    /// Whether a string has the flaw too, or is not noticeably better.
    #[must_use]
    pub fn is_in(self, string: &Numbers) -> bool {
        let noticed = compare::just_noticeable;
        // Of brightness, of which players speak in large steps, a difference that is hardly noticed mends nothing.
        let clearly = |property| noticed(property) * noticed(property);
        match self {
            Self::Family(family) => string.family == family,
            Self::Metal(key) => string.metal == Some(key),
            Self::Tension(most) => string.tension > most / noticed(Property::Tension),
            Self::Slackness(least) => string.tension < least * noticed(Property::Tension),
            Self::Shine(most) => string.brilliance > most / clearly(Property::Brilliance),
            Self::Dullness(least) => string.brilliance < least * clearly(Property::Brilliance),
            Self::Work(most) => string.breaking_share > most / noticed(Property::BreakingShare),
        }
    }
}
