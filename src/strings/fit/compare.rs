//! Is this string more so than that one? Paired, over shared constants.
//!
//! Both strings see the same draw: what they share cancels. A word such as "brighter" is earned when the difference
//! exceeds a just-noticeable one in four draws of five, and where the trade's own words were set beside the numbers
//! ([`link`]) one from which on the trade would say so too.

use crate::constant::DEVIATIONS;
use crate::construction::Construction;
use crate::draw::Draw;
use crate::report::{self, Property};
use crate::setting::Setting;

/// Chance above which a comparative word is earned.
pub const SURE: f64 = 0.80;

/// What can be said of two strings in one property.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// This one lies above the other, noticeably.
    Above,
    /// This one lies below the other, noticeably.
    Below,
    /// No difference between them is noticed.
    Alike,
    /// This one lies above the other, but perhaps not noticeably.
    RatherAbove,
    /// This one lies below the other, but perhaps not noticeably.
    RatherBelow,
    /// Not even which lies above is sure enough.
    Undecided,
}

impl Verdict {
    /// 1 where this one lies above noticeably, −1 where it lies below, 0 where neither is sure.
    #[must_use]
    pub const fn sign(self) -> i8 {
        match self {
            Self::Above => 1,
            Self::Below => -1,
            Self::Alike | Self::RatherAbove | Self::RatherBelow | Self::Undecided => 0,
        }
    }

    /// The key by which replies name it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Above => "above",
            Self::Below => "below",
            Self::Alike => "alike",
            Self::RatherAbove => "rather-above",
            Self::RatherBelow => "rather-below",
            Self::Undecided => "undecided",
        }
    }
}

/// How two strings compare in one property. Of a change of pitch its size is compared, whichever way it goes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Comparison {
    /// Which property.
    pub property: Property,
    /// Value of this string.
    pub this: f64,
    /// Value of the other.
    pub other: f64,
    /// Chance that this one lies above the other by a just-noticeable difference.
    pub chance_above: f64,
    /// Chance that it lies below by as much.
    pub chance_below: f64,
    /// Chance that it lies above by however little.
    pub chance_at_all: f64,
}

impl Comparison {
    /// Chance that they differ by less than is noticed.
    #[must_use]
    pub fn chance_alike(&self) -> f64 {
        1.0 - self.chance_above - self.chance_below
    }

    /// Whether the values that are told lie so; of a change of pitch, their sizes.
    fn is_above(&self) -> bool {
        if self.property.is_drift() {
            self.this.abs() > self.other.abs()
        } else {
            self.this > self.other
        }
    }

    /// What can be said of the two.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        if self.chance_above >= SURE {
            Verdict::Above
        } else if self.chance_below >= SURE {
            Verdict::Below
        } else if self.chance_alike() >= SURE {
            Verdict::Alike
        } else if self.chance_at_all >= SURE && self.is_above() {
            Verdict::RatherAbove
        } else if self.chance_at_all <= 1.0 - SURE && !self.is_above() {
            Verdict::RatherBelow
        } else {
            Verdict::Undecided
        }
    }
}

/// Just-noticeable difference of a property: a ratio, or for changes of pitch a difference in cents and for levels in
/// decibels. Days to settle are counted with the day of fitting, so that under a day nobody tells them apart.
///
/// Level 1 dB, spectral centroid 7.5 %, pitch 5 cents ([`crate::source::JND`]); the others are judgements.
#[must_use]
pub const fn just_noticeable(property: Property) -> f64 {
    match property {
        Property::Impedance => 1.122,
        Property::Brilliance => 1.075,
        Property::Feel | Property::Tension | Property::BreakingShare => 1.05,
        Property::Stretch | Property::Speaks | Property::Peg => 1.10,
        Property::SettlingDays => 1.50,
        Property::BowRoom => 1.0,
        _ if property.is_drift() => 5.0,
        _ => 1.05,
    }
}

/// The link from a number to the word that the trade has for it.
///
/// The odds that the trade calls one string more so than another go with e to the slope times their difference, in
/// just-noticeable ones. Fitted to the odd ones of the statements in `tests/expert/statements.tsv` (common practice, no
/// source); the even ones are held out there. One slope a word, none of it by family.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Link {
    /// The slope. Zero where the trade says the contrary as often: then no difference earns the word.
    pub slope: f64,
}

/// The links of the words for which there are statements; a word without any follows its number, and so does one with
/// which they all agree, as that of what a string loses by itself (the trade's "rings on longer").
///
/// How long it rings at the bridge agrees with none of them, and has no word; room for the bow hardly has one, with
/// which one of the four agrees that were fitted to ("forgiving").
#[must_use]
pub const fn link(property: Property) -> Link {
    Link {
        slope: match property {
            Property::Brilliance => 0.2405,
            Property::Speaks => 2.276,
            Property::BowRoom => 0.095,
            Property::RingsOn => 0.0,
            _ => f64::INFINITY,
        },
    }
}

impl Link {
    /// From how many just-noticeable differences on the trade would say the word in four cases of five; at least one.
    #[must_use]
    pub fn steps(&self) -> f64 {
        // The odds of four in five are four.
        (2.0 * core::f64::consts::LN_2 / self.slope).max(1.0)
    }
}

/// The ratio from which on the trade would say the word of a property, and not only notice the difference.
#[must_use]
pub fn said(property: Property) -> f64 {
    libm::pow(just_noticeable(property), link(property).steps())
}

/// By how many just-noticeable differences the first of two values lies above the second.
#[must_use]
pub fn steps(property: Property, first: f64, second: f64) -> f64 {
    (scaled(property, first) - scaled(property, second)) / noticed(property)
}

/// The scale on which a property is compared: as it is in cents and decibels, by its logarithm elsewhere.
fn scaled(property: Property, value: f64) -> f64 {
    match property {
        Property::SettlingDays => libm::log1p(value),
        _ if property.is_signed() => value,
        _ => libm::log(value.max(1e-12)),
    }
}

/// The just-noticeable difference on that scale.
fn noticed(property: Property) -> f64 {
    let by = just_noticeable(property);
    if property.is_signed() { by } else { libm::log(by) }
}

/// What moving the shared constants does to two strings' values of one property: its variances and what they share.
#[derive(Clone, Copy, Debug, Default)]
struct Spread {
    this: f64,
    other: f64,
    both: f64,
}

/// Compares two strings at one place in each of `properties`.
#[must_use]
pub fn paired(
    this: &Construction,
    other: &Construction,
    setting: &Setting,
    properties: &[Property],
) -> Vec<Comparison> {
    let central = [this, other].map(|c| report::values(c, setting, &Draw::CENTRAL));
    let of = |c, draw: &Draw, like| report::values_like(c, setting, draw, Some(like));
    let mut shared = report::uncertain(this);
    for of_other in report::uncertain(other) {
        if !shared.contains(&of_other) {
            shared.push(of_other);
        }
    }
    let mut spreads = vec![Spread::default(); properties.len()];
    for (owner, which) in shared {
        let ends = [-1.0, 1.0].map(|t| {
            let draw = Draw::shifted(owner, which, t);
            [of(this, &draw, &central[0]), of(other, &draw, &central[1])]
        });
        for (spread, p) in spreads.iter_mut().zip(properties) {
            let [a, b] = [0, 1].map(|string| {
                let [low, high] = [0, 1].map(|end| scaled(*p, ends[end][string].get(*p)));
                (high - low) / 2.0 / DEVIATIONS
            });
            spread.this += a * a;
            spread.other += b * b;
            spread.both += a * b;
        }
    }
    properties
        .iter()
        .zip(spreads)
        .map(|(p, spread)| {
            let noticed = noticed(*p) * link(*p).steps();
            let [a, b] = [0, 1].map(|string: usize| scaled(*p, central[string].get(*p)));
            let [chance_above, chance_below, chance_at_all] = if p.is_drift() {
                let (above, below) = chances_of_sizes((a, b), &spread, noticed);
                [above, below, chances_of_sizes((a, b), &spread, 0.0).0]
            } else {
                // What was fitted to the simulation misses it for each of the two by itself.
                let missed = p.error().map_or(0.0, |e| 2.0 * e.at_one_place * e.at_one_place);
                let variance = spread.this + spread.other - 2.0 * spread.both + missed;
                let deviation = variance.max(0.0).sqrt();
                [a - b - noticed, b - a - noticed, a - b].map(|by| chance(by, deviation))
            };
            Comparison {
                property: *p,
                this: central[0].get(*p),
                other: central[1].get(*p),
                chance_above,
                chance_below,
                chance_at_all,
            }
        })
        .collect()
}

/// Steps of the sum over which [`chances_of_sizes`] runs, from −4 to 4 deviations.
const STEPS: i32 = 80;

/// Chances that the size of the first of two joint normal numbers exceeds that of the second by more than is noticed,
/// and the other way round: a sum over the first, closed over the second.
fn chances_of_sizes((a, b): (f64, f64), spread: &Spread, noticed: f64) -> (f64, f64) {
    let Spread { this, other, both } = *spread;
    let deviation = this.sqrt();
    let slope = if this > 0.0 { both / this } else { 0.0 };
    let left = (other - slope * both).max(0.0).sqrt();
    // Chance that the second, a normal number about `mean`, has a size below `limit`.
    let within = |mean: f64, limit: f64| {
        if limit <= 0.0 { 0.0 } else { chance(limit - mean, left) - chance(-limit - mean, left) }
    };
    let (mut above, mut below, mut total) = (0.0, 0.0, 0.0);
    for step in 0..=STEPS {
        let z = 8.0 * (f64::from(step) / f64::from(STEPS) - 0.5);
        let weight = libm::exp(-z * z / 2.0);
        let first = a + z * deviation;
        let mean = b + slope * z * deviation;
        above += weight * within(mean, first.abs() - noticed);
        below += weight * (1.0 - within(mean, first.abs() + noticed));
        total += weight;
    }
    (above / total, below / total)
}

/// Chance that a normal variable with that mean and deviation is positive.
fn chance(mean: f64, deviation: f64) -> f64 {
    if deviation > 0.0 {
        0.5 * (1.0 + libm::erf(mean / (deviation * core::f64::consts::SQRT_2)))
    } else if mean > 0.0 {
        1.0
    } else {
        0.0
    }
}
