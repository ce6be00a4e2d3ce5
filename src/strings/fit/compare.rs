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

/// How two strings compare in one property.
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
}

impl Comparison {
    /// 1 if surely above, −1 if surely below, 0 if no difference can be computed.
    #[must_use]
    pub fn verdict(&self) -> i8 {
        if self.chance_above >= SURE {
            1
        } else if self.chance_below >= SURE {
            -1
        } else {
            0
        }
    }
}

/// Just-noticeable difference of a property: a ratio, or for drift a difference in cents and for levels in decibels.
///
/// Level 1 dB, spectral centroid 7.5 %, pitch 5 cents ([`crate::source::JND`]); the others are judgements.
#[must_use]
pub const fn just_noticeable(property: Property) -> f64 {
    match property {
        Property::Impedance => 1.122,
        Property::Brilliance => 1.075,
        Property::Feel | Property::Tension | Property::BreakingShare => 1.05,
        Property::Stretch | Property::Speaks | Property::Peg => 1.10,
        Property::SettlingDays => 1.30,
        Property::Drift => 5.0,
        Property::BowRoom => 1.0,
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
/// How long it rings at the bridge agrees with none of them, and has no word; nor has room for the bow, with which one
/// of the four agrees that were fitted to ("forgiving").
#[must_use]
pub const fn link(property: Property) -> Link {
    Link {
        slope: match property {
            Property::Brilliance => 0.2494,
            Property::Speaks => 1.298,
            Property::BowRoom => 0.0,
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

/// By how many just-noticeable differences the first of two values lies above the second.
#[must_use]
pub fn steps(property: Property, first: f64, second: f64) -> f64 {
    (scaled(property, first) - scaled(property, second))
        / scaled(property, just_noticeable(property))
}

/// Whether a property is compared as it is, in cents or decibels, and not by its logarithm.
fn as_it_is(property: Property) -> bool {
    property == Property::Drift || property.is_level()
}

/// The scale on which a property is compared.
fn scaled(property: Property, value: f64) -> f64 {
    if as_it_is(property) { value } else { libm::log(value.max(1e-12)) }
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
    let both = |draw: &Draw| {
        let of = |c, like| report::values_like(c, setting, draw, Some(like));
        [of(this, &central[0]), of(other, &central[1])]
    };
    let difference = |pair: &[report::Values; 2], p: Property| {
        scaled(p, pair[0].get(p)) - scaled(p, pair[1].get(p))
    };
    let mut shared = report::uncertain(this);
    for of_other in report::uncertain(other) {
        if !shared.contains(&of_other) {
            shared.push(of_other);
        }
    }
    let mut variance = vec![0.0; properties.len()];
    for (owner, which) in shared {
        let ends = [-1.0, 1.0].map(|t| both(&Draw::shifted(owner, which, t)));
        for (v, p) in variance.iter_mut().zip(properties) {
            let half = (difference(&ends[1], *p) - difference(&ends[0], *p)) / 2.0;
            *v += half * half;
        }
    }
    properties
        .iter()
        .zip(variance)
        .map(|(p, v)| {
            let jnd = scaled(*p, just_noticeable(*p)) * link(*p).steps();
            // What was fitted to the simulation misses it for each of the two by itself.
            let missed = p.error().map_or(0.0, |e| 2.0 * e.at_one_place * e.at_one_place);
            let deviation = (v / (DEVIATIONS * DEVIATIONS) + missed).sqrt();
            let by = difference(&central, *p);
            Comparison {
                property: *p,
                this: central[0].get(*p),
                other: central[1].get(*p),
                chance_above: chance(by - jnd, deviation),
                chance_below: chance(-by - jnd, deviation),
            }
        })
        .collect()
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
