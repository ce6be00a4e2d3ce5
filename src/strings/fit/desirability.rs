//! How well does a string meet a wish? Derringer and Suich's desirabilities, with absolute end points.
//!
//! Every attribute has one property under it, a named curve and end points that belong to the instrument and the
//! position, never to the candidates at hand, so that an answer does not shift with the space that was searched.
//! The score is the weighted mean of ln d, each d floored: the logarithm of the weighted geometric mean.
//! Source: [`crate::source::DERRINGER_SUICH_1980`].

use crate::construction::Construction;
use crate::precedent::Grade;
use crate::report::{Lean, Property};

use super::problem::{Problem, StringProblem};

/// What a wish can be about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Attribute {
    /// Lateral stiffness under finger and bow: two-sided.
    Feel,
    /// Stretch at pitch.
    Elasticity,
    /// Days until settled: first part of steadiness.
    Settling,
    /// Computed drift over the room's swing: second part of steadiness.
    Drift,
    /// What fitters say of the core in a changing room: third part of steadiness, a judgement.
    FittersJudgement,
    /// How briskly the bow may start it.
    Response,
    /// Wave impedance: two-sided.
    Power,
    /// Where bending loss ends the brilliance: two-sided.
    Brightness,
    /// Reserve to breaking, and wear.
    Durability,
    /// Price against budget.
    Price,
    /// How easily it is bought: a judgement.
    Availability,
    /// How finely it tunes with what the instrument has.
    Tuning,
}

impl Attribute {
    /// Every attribute.
    pub const ALL: &[Self] = &[
        Self::Feel,
        Self::Elasticity,
        Self::Settling,
        Self::Drift,
        Self::FittersJudgement,
        Self::Response,
        Self::Power,
        Self::Brightness,
        Self::Durability,
        Self::Price,
        Self::Availability,
        Self::Tuning,
    ];

    /// The key by which replies name it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Feel => "feel",
            Self::Elasticity => "elasticity",
            Self::Settling => "settling",
            Self::Drift => "drift",
            Self::FittersJudgement => "fitters-judgement",
            Self::Response => "response",
            Self::Power => "power",
            Self::Brightness => "brightness",
            Self::Durability => "durability",
            Self::Price => "price",
            Self::Availability => "availability",
            Self::Tuning => "tuning",
        }
    }

    /// The attribute of that key.
    #[must_use]
    pub fn parse(key: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|a| a.key() == key)
    }

    /// The property under it, where it is a computed one.
    #[must_use]
    pub const fn property(self) -> Option<Property> {
        match self {
            Self::Feel => Some(Property::Feel),
            Self::Elasticity => Some(Property::Stretch),
            Self::Settling => Some(Property::SettlingDays),
            Self::Drift => Some(Property::Drift),
            Self::Response => Some(Property::Attack),
            Self::Power => Some(Property::Impedance),
            Self::Brightness => Some(Property::Brilliance),
            Self::Durability => Some(Property::BreakingShare),
            Self::Tuning => Some(Property::Peg),
            Self::FittersJudgement | Self::Price | Self::Availability => None,
        }
    }
}

/// How many attributes there are.
pub const COUNT: usize = Attribute::ALL.len();

/// A desirability for each attribute.
pub type Desirabilities = [f64; COUNT];

/// No desirability counts less than this: one bad property spoils a string, but does not hide the others.
pub const FLOOR: f64 = 0.02;

/// Stretch at which elasticity is worth nothing and everything; a judgement of scale.
pub const STRETCH_ENDS: (f64, f64) = (0.001, 0.08);
/// Days to settle worth everything and nothing.
pub const SETTLING_ENDS: (f64, f64) = (0.1, 14.0);
/// Drift in cents worth everything and nothing.
pub const DRIFT_ENDS: (f64, f64) = (4.0, 80.0);
/// Share of breaking strength worth everything and nothing.
pub const BREAKING_ENDS: (f64, f64) = (0.25, 0.75);
/// Cents for a degree at the button worth everything and nothing, without a fine tuner.
pub const TUNING_ENDS: (f64, f64) = (2.0, 30.0);
/// What "made sometimes" is worth against "made every day".
pub const SOMETIMES: f64 = 0.30;
/// How far beyond the usual tension a two-sided target still has any worth, as a share of the band's width.
pub const TARGET_REACH: f64 = 0.6;

/// Rises from 0 at `none` to 1 at `all`, straight in the logarithm; falls if `all` is the smaller.
#[must_use]
pub fn one_sided(value: f64, none: f64, all: f64) -> f64 {
    let share =
        (libm::log(value.max(1e-12)) - libm::log(none)) / (libm::log(all) - libm::log(none));
    share.clamp(0.0, 1.0)
}

/// 1 at `target`, falling straight to 0 at `low` and at `high`.
#[must_use]
pub fn two_sided(value: f64, low: f64, target: f64, high: f64) -> f64 {
    let share = if value < target {
        (value - low) / (target - low)
    } else {
        (high - value) / (high - target)
    };
    share.clamp(0.0, 1.0)
}

/// Every desirability of one string at its place.
#[must_use]
pub fn of(
    construction: &Construction,
    grade: Grade,
    lean: &Lean,
    problem: &Problem,
    string: &StringProblem,
) -> Desirabilities {
    let mut d = [1.0; COUNT];
    let mut put = |attribute: Attribute, worth: f64| d[attribute as usize] = worth.max(FLOOR);
    let tension = lean.tension;
    let ends = &string.ends;

    put(
        Attribute::Feel,
        two_sided(tension, ends.tension_low, ends.tension_target, ends.tension_high),
    );
    // At one pitch and length impedance goes with tension: its target is stated as the tension that gives it.
    let loud = lean.impedance / ends.impedance_per_tension;
    put(Attribute::Power, two_sided(loud, ends.tension_low, ends.power_target, ends.tension_high));
    put(Attribute::Response, one_sided(lean.attack, ends.attack.0, ends.attack.1));
    put(Attribute::Elasticity, one_sided(lean.stretch, STRETCH_ENDS.0, STRETCH_ENDS.1));
    put(Attribute::Settling, one_sided(lean.settling, SETTLING_ENDS.1, SETTLING_ENDS.0));
    put(Attribute::Drift, one_sided(lean.drift, DRIFT_ENDS.1, DRIFT_ENDS.0));
    put(Attribute::FittersJudgement, construction.core.material.climate_judgement);
    let (dark, bright) = string.position.brilliance;
    let logs = [lean.brilliance, dark, bright].map(|f| libm::log(f.max(1.0)));
    let place = (logs[0] - logs[1]) / (logs[2] - logs[1]);
    put(
        Attribute::Brightness,
        two_sided(
            place,
            string.brightness_target - 1.0,
            string.brightness_target,
            string.brightness_target + 1.0,
        ),
    );
    let reserve = one_sided(lean.breaking_share, BREAKING_ENDS.1, BREAKING_ENDS.0);
    put(Attribute::Durability, reserve * wear(construction, problem.acid_sweat));
    put(Attribute::Price, price_worth(price(construction), problem.price_wish));
    put(Attribute::Availability, if grade == Grade::Everyday { 1.0 } else { SOMETIMES });
    let fine = string.fine_tuner;
    put(
        Attribute::Tuning,
        if fine { 1.0 } else { one_sided(lean.peg, TUNING_ENDS.1, TUNING_ENDS.0) },
    );
    d
}

fn wear(construction: &Construction, acid_sweat: bool) -> f64 {
    let metal = construction.outer_winding().map_or(1.0, |w| w.metal.wear);
    if acid_sweat { metal } else { 0.7 + 0.3 * metal }
}

/// Price class of a string, 1 modest to 4 costly: that of its dearest metal, one more for gut. A judgement.
#[must_use]
pub fn price(construction: &Construction) -> u8 {
    let metal = construction.windings().map(|w| w.metal.price).max().unwrap_or(1);
    let core = match construction.family() {
        crate::construction::Family::PlainSteel => 1,
        crate::construction::Family::PlainGut | crate::construction::Family::WoundGut => 3,
        _ => 2,
    };
    metal.max(core)
}

/// What a price class is worth against a wish: all of it up to the wish, a third less for each class above.
fn price_worth(price: u8, wish: u8) -> f64 {
    1.0 - f64::from(price.saturating_sub(wish)) / 3.0
}

/// Weighted mean of ln d over the attributes.
#[must_use]
pub fn score(d: &Desirabilities, weights: &[f64; COUNT]) -> f64 {
    let (mut sum, mut total) = (0.0, 0.0);
    for (d, w) in d.iter().zip(weights) {
        sum += w * libm::log(*d);
        total += w;
    }
    if total > 0.0 { sum / total } else { 0.0 }
}
