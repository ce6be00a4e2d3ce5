//! How well does a string meet a wish? Derringer and Suich's desirabilities, with absolute end points.
//!
//! Every attribute has one property under it, a named curve and end points that belong to the instrument and the
//! position, never to the candidates at hand, so that an answer does not shift with the space that was searched.
//! The score is the weighted mean of ln d, each d floored: the logarithm of the weighted geometric mean.
//! Source: [`crate::source::DERRINGER_SUICH_1980`].
//!
//! Tension, feel and power are nearly one number: at one pitch and length, mass follows from tension, and all three from
//! it. They stand apart because players speak of them apart. Brightness and ring are judged by their closed forms and
//! not by the simulation: ring ranks the strings of a position the same at a hundredth of the cost, and simulated
//! sharpness does not rank them as the trade does.

use crate::constant::SETTLED_WITHIN;
use crate::construction::Family;
use crate::material::Metal;
use crate::physics::settling;
use crate::quantity::{Cent, Day};
use crate::report::Property;
use crate::setting::Untuned;

/// What a wish can be about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Attribute {
    /// Lateral stiffness under finger and bow: two-sided.
    Feel,
    /// Stretch at pitch: two-sided.
    Elasticity,
    /// Days until settled: first part of steadiness.
    Settling,
    /// How far warmth moves it while it goes untuned: second part of steadiness.
    Warmth,
    /// How far damp moves it while it goes untuned: third part of steadiness.
    Damp,
    /// How soon it speaks.
    Response,
    /// Room between the least force of the bow and the greatest.
    BowRoom,
    /// Wave impedance: two-sided.
    Power,
    /// Where bending loss ends the brilliance: two-sided.
    Brightness,
    /// How many times the first partial swings until it has faded.
    Ring,
    /// Reserve to breaking.
    Durability,
    /// How the outside bears hands and sweat: a judgement.
    Care,
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
        Self::Warmth,
        Self::Damp,
        Self::Response,
        Self::BowRoom,
        Self::Power,
        Self::Brightness,
        Self::Ring,
        Self::Durability,
        Self::Care,
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
            Self::Warmth => "warmth",
            Self::Damp => "damp",
            Self::Response => "response",
            Self::BowRoom => "bow-room",
            Self::Power => "power",
            Self::Brightness => "brightness",
            Self::Ring => "ring",
            Self::Durability => "durability",
            Self::Care => "care",
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

    /// The property under it, where it is a computed one, for a string that goes untuned so long.
    #[must_use]
    pub const fn property(self, untuned: Untuned) -> Option<Property> {
        match self {
            Self::Feel => Some(Property::Feel),
            Self::Elasticity => Some(Property::Stretch),
            Self::Settling => Some(Property::SettlingDays),
            Self::Warmth => Some(match untuned {
                Untuned::Evening => Property::EveningWarmth,
                Untuned::Week => Property::WeekWarmth,
                Untuned::Season => Property::SeasonWarmth,
            }),
            Self::Damp => Some(match untuned {
                Untuned::Evening => Property::EveningDamp,
                Untuned::Week => Property::WeekDamp,
                Untuned::Season => Property::SeasonDamp,
            }),
            Self::Response => Some(Property::Speaks),
            Self::BowRoom => Some(Property::BowRoom),
            Self::Power => Some(Property::Impedance),
            Self::Brightness => Some(Property::Brilliance),
            Self::Ring => Some(Property::RingsOn),
            Self::Durability => Some(Property::BreakingShare),
            Self::Tuning => Some(Property::Peg),
            Self::Care | Self::Price | Self::Availability => None,
        }
    }
}

/// How many attributes there are.
pub const COUNT: usize = Attribute::ALL.len();

/// A desirability for each attribute.
pub type Desirabilities = [f64; COUNT];

/// No desirability counts less than this: one bad property spoils a string, but does not hide the others.
pub const FLOOR: f64 = 0.02;

/// By which ratio stretch has to miss what is looked for to be worth nothing; a judgement of scale.
pub const STRETCH_REACH: f64 = 40.0;
/// Days to settle worth everything and nothing.
pub const SETTLING_ENDS: (f64, f64) = (0.1, 14.0);
/// Cents of a decade of time at which a string settles in the days of [`SETTLING_ENDS`].
#[must_use]
pub fn decade_ends() -> (f64, f64) {
    let at = |day| settling::decade_of(Day::new(day), Cent::new(SETTLED_WITHIN)).get();
    (at(SETTLING_ENDS.0), at(SETTLING_ENDS.1))
}
/// Cents by which warmth or damp moves a string worth everything and nothing.
pub const DRIFT_ENDS: (f64, f64) = (2.0, 60.0);
/// Share of breaking strength worth everything and nothing.
pub const BREAKING_ENDS: (f64, f64) = (0.25, 0.75);
/// Cents for a degree at the button worth everything and nothing, without a fine tuner.
pub const TUNING_ENDS: (f64, f64) = (2.0, 30.0);
/// What "made sometimes" is worth against "made every day".
pub const SOMETIMES: f64 = 0.30;
/// How far beyond the usual tension a two-sided target still has any worth, as a share of the band's width.
pub const TARGET_REACH: f64 = 0.6;

/// Room for the bow, dB, worth nothing and everything: one force alone, and a hundred times it. A judgement of scale.
pub const ROOM_ENDS: (f64, f64) = (0.0, 40.0);
/// Swings of the first partial, until it has fallen by 60 dB, worth nothing and everything.
pub const RING_ENDS: (f64, f64) = (60.0, 1200.0);
/// What each winding beyond the first takes from the worth of the price: one more pass at the machine.
pub const ANOTHER_LAYER: f64 = 0.03;

/// Rises from 0 at `none` to 1 at `all`, straight in the logarithm; falls if `all` is the smaller.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OneSided {
    none: f64,
    slope: f64,
}

impl OneSided {
    /// A curve between these ends.
    #[must_use]
    pub fn new(none: f64, all: f64) -> Self {
        Self { none: libm::log(none), slope: 1.0 / (libm::log(all) - libm::log(none)) }
    }

    /// The value's logarithm at which it is worth nothing, and the slope from there.
    #[must_use]
    pub fn line(&self) -> (f64, f64) {
        (self.none, self.slope)
    }

    /// The worth, 0 to 1, of a value whose natural logarithm this is.
    #[must_use]
    pub fn of_log(&self, log: f64) -> f64 {
        ((log - self.none) * self.slope).clamp(0.0, 1.0)
    }
}

/// A value that is looked for: worth 1, and how much less for each unit of the scale below and above it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Target {
    /// The value.
    pub at: f64,
    /// What a unit below it takes.
    pub below: f64,
    /// What a unit above it takes.
    pub above: f64,
}

impl Target {
    /// The same to both sides where nothing is wished. So many steps of a wish up (or down, below zero) take as many times
    /// more on the side from which the person wishes away, and as many times less on the other. A judgement.
    #[must_use]
    pub fn wished(at: f64, slope: f64, steps: f64) -> Self {
        let times = 1.0 + steps.abs();
        let (towards, away) = (slope / times, slope * times);
        let (below, above) = if steps < 0.0 { (towards, away) } else { (away, towards) };
        Self { at, below, above }
    }

    /// The worth of a value; below zero where it misses by too much.
    #[must_use]
    pub fn worth(&self, value: f64) -> f64 {
        1.0 - (self.below * (self.at - value)).max(self.above * (value - self.at))
    }
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

/// What a winding's metal is worth under these hands; gut itself bears them worst. A judgement.
#[must_use]
pub fn care(outer: Option<&Metal>, family: Family, acid_sweat: bool) -> f64 {
    let bare = if family == Family::PlainGut { 0.5 } else { 1.0 };
    let metal = outer.map_or(bare, |m| m.wear);
    if acid_sweat { metal } else { 0.7 + 0.3 * metal }
}

/// Price class of a string, 1 modest to 4 costly: that of its dearest metal, one more for gut. A judgement.
#[must_use]
pub fn price(family: Family, metals: impl Iterator<Item = &'static Metal>) -> u8 {
    let core = match family {
        Family::PlainSteel => 1,
        Family::PlainGut | Family::WoundGut => 3,
        _ => 2,
    };
    metals.map(|m| m.price).max().unwrap_or(1).max(core)
}

/// What a price class is worth against a wish: all of it up to the wish, a third less for each class above.
#[must_use]
pub fn price_worth(price: u8, wish: u8, layers: usize) -> f64 {
    // A string has at most three windings.
    let more = layers.saturating_sub(1) as f64;
    1.0 - f64::from(price.saturating_sub(wish)) / 3.0 - ANOTHER_LAYER * more
}
