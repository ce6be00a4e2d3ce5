//! What is made: for each position on an instrument and each family, how commonly, and within which bands.
//!
//! All of it is common practice from memory, widened, with no brand's data; the violin's tensions agree with
//! published ranges over sets on sale ([`crate::source::GUETTLER_PROPERTIES`]).
//! A family that is made only sometimes costs much in the score, for the set must be buyable.
//! There are no viols: which gauges are made for them is another trade's knowledge.
//! The bands stand for the full size at 440 Hz; [`bands`] carries them to other lengths and pitches.

pub mod kinds;
mod positions;

use crate::construction::Family;
use crate::instrument::{Kind, Size};
use crate::material::Metal;
use crate::pitch::Note;
use crate::quantity::{Hertz, Metre};

/// How commonly a family is made for a position.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Grade {
    /// Any shop has it.
    Everyday,
    /// Some makers make it.
    Sometimes,
    /// Nobody we know of.
    Nobody,
}

words! {
    /// How an instrument is set up.
    SetUp {
        /// Modern neck, bridge and tailpiece.
        Modern = "modern",
        /// Historical: made or set back for gut.
        Historical = "historical",
        /// Modern in shape, but old, light or valuable.
        Light = "light",
    }
}

/// A string's position in a tuning, with what holds for it whatever the family.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Position {
    /// The key by which tunings name it.
    pub key: &'static str,
    /// The note for which its bands stand.
    pub note: &'static str,
    /// Tension of strings made every day, newtons.
    pub tension: (f64, f64),
    /// Where brilliance ends, hertz: the dark end and the bright end of what is made. A judgement of scale.
    pub brilliance: (f64, f64),
    /// Metals with which its strings are covered every day.
    pub metals: Metals,
    /// Families made for it: how commonly, tension in newtons, outer gauge in millimetres.
    pub rows: &'static [Row],
}

impl Position {
    /// Where between dark (0) and bright (1) a string lies whose brilliance ends at that frequency, hertz.
    #[must_use]
    pub fn brightness_of(&self, brilliance: f64) -> f64 {
        let (dark, bright) = self.brilliance;
        libm::log(brilliance.max(1.0) / dark) / libm::log(bright / dark)
    }
}

/// Outermost metals used every day: on gut and polymer, and on steel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Metals {
    /// On gut and polymer cores.
    pub soft: &'static [&'static str],
    /// On steel cores.
    pub steel: &'static [&'static str],
}

/// One family at one position.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Row {
    /// The family.
    pub family: Family,
    /// How commonly it is made for a modern set-up.
    pub grade: Grade,
    /// How commonly it is made for a historical one.
    pub historical: Grade,
    /// Tension, newtons.
    pub tension: (f64, f64),
    /// Outer gauge, millimetres.
    pub gauge: (f64, f64),
}

/// The bands that a recommended string must lie in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bands {
    /// How commonly it is made.
    pub grade: Grade,
    /// Tension, newtons.
    pub tension: (f64, f64),
    /// Outer gauge, metres.
    pub gauge: (f64, f64),
    /// Stretch at pitch.
    pub stretch: (f64, f64),
    /// Share of the mass that is winding; zero to zero for a plain string.
    pub winding_share: (f64, f64),
    /// Largest share of the breaking strength.
    pub breaking_share: f64,
}

pub use positions::POSITIONS;

use Family::{PlainGut, PlainSteel, StrandedSteel, Synthetic, WoundGut, WoundSteel};
use Grade::{Everyday, Nobody, Sometimes};

/// The position of that key.
#[must_use]
pub fn position_of(key: &str) -> Option<&'static Position> {
    POSITIONS.iter().find(|p| p.key == key)
}

/// Widening of the bands on a fraction, where lengths and customs scatter more.
pub const FRACTION_WIDENING: f64 = 0.20;

/// Gut is not made for lengths under this share of the full one.
pub const SHORTEST_GUT: f64 = 0.90;

/// Synthetic cores are made every day down to this share of the full length.
pub const SHORTEST_EVERYDAY_SYNTHETIC: f64 = 0.65;

/// How far from its usual note a string's bands follow the pitch, in semitones; beyond, they stay.
pub const PITCH_REACH: f64 = 2.2;

/// Tension of a historical set-up over a modern one: low end and high end.
pub const HISTORICAL_TENSION: (f64, f64) = (0.75, 0.97);

/// Share of breaking strength to which each family is worked.
///
/// Plain gut is worked hardest of all: a violin e″ at 440 Hz stands near 70 % and breaks often, at 415 Hz near 63 %. On a
/// historical set-up nothing else is there for it, so it is worked higher, with a caution.
#[must_use]
pub const fn working_share(family: Family, set_up: SetUp, gut_to_its_limit: bool) -> f64 {
    match (family, set_up) {
        (PlainGut, _) if gut_to_its_limit => 0.74,
        (PlainGut, SetUp::Historical) => 0.70,
        (PlainGut, SetUp::Modern | SetUp::Light) => 0.65,
        (WoundGut, _) => 0.60,
        (PlainSteel | WoundSteel, _) => 0.62,
        (StrandedSteel, _) => 0.50,
        (Synthetic | Family::Monofilament, _) => 0.70,
    }
}

/// Stretch at pitch within which each family is made.
#[must_use]
pub const fn stretch_band(family: Family) -> (f64, f64) {
    match family {
        PlainGut | WoundGut => (0.006, 0.055),
        PlainSteel | WoundSteel => (0.0015, 0.0085),
        StrandedSteel => (0.0015, 0.0075),
        Synthetic | Family::Monofilament => (0.006, 0.110),
    }
}

/// Share of the mass that is winding, within which each family is made.
#[must_use]
pub const fn winding_band(family: Family) -> (f64, f64) {
    match family {
        PlainGut | PlainSteel => (0.0, 0.0),
        WoundGut => (0.15, 0.90),
        WoundSteel => (0.05, 0.85),
        StrandedSteel => (0.05, 0.92),
        Synthetic | Family::Monofilament => (0.25, 0.95),
    }
}

/// Factor on tension bands for a sounding length: equal feel, so tension in proportion to length.
#[must_use]
pub fn length_factor(kind: &Kind, length: Metre) -> f64 {
    length.get() / kind.full_length
}

/// Factor on tension bands for a pitch: the same strings are tuned a little up or down, so its square.
#[must_use]
pub fn pitch_factor(position: &Position, pitch: Hertz) -> f64 {
    let Some(note) = Note::parse(position.note) else {
        return 1.0;
    };
    let usual = note.frequency(Hertz::new(440.0)).get();
    let reach = libm::exp2(PITCH_REACH / 12.0);
    let ratio = (pitch.get() / usual).clamp(1.0 / reach, reach);
    ratio * ratio
}

/// How commonly a family is made for a position on an instrument of that size and set-up.
#[must_use]
pub fn grade(position: &Position, family: Family, conditions: &Conditions) -> Grade {
    let Conditions { kind, size, length, set_up, .. } = *conditions;
    let Some(row) = position.rows.iter().find(|row| row.family == family) else {
        return Nobody;
    };
    let short = length_factor(kind, length);
    let gut = matches!(family, PlainGut | WoundGut);
    if size.fraction && gut && short < SHORTEST_GUT {
        return Nobody;
    }
    if size.fraction && family == Synthetic && short < SHORTEST_EVERYDAY_SYNTHETIC {
        return row.grade.max(Sometimes);
    }
    match set_up {
        SetUp::Historical => row.historical,
        SetUp::Modern | SetUp::Light => row.grade,
    }
}

/// How commonly a family is made at a position beside the others of its class: a plain steel E is everyday, a wound one is
/// not; which class is usual is a question of the kind of set ([`kinds`]).
#[must_use]
pub fn grade_in_class(position: &Position, family: Family, conditions: &Conditions) -> Grade {
    let of = |family| grade(position, family, conditions);
    let same = position.rows.iter().map(|row| row.family).filter(|f| f.class() == family.class());
    let best = same.map(of).min().unwrap_or(Nobody);
    if of(family) > best { of(family) } else { Everyday }
}

/// How commonly a family is covered with that metal at a position.
#[must_use]
pub fn metal_grade(position: &Position, family: Family, metal: &Metal) -> Grade {
    let usual = match family {
        WoundSteel | StrandedSteel | PlainSteel => position.metals.steel,
        PlainGut | WoundGut | Synthetic | Family::Monofilament => position.metals.soft,
    };
    if usual.contains(&metal.key) { Everyday } else { Sometimes }
}

/// The bands of a family at a position, carried to the instrument's length and the string's pitch.
///
/// Tension goes with length (equal feel) and with the square of pitch within [`PITCH_REACH`]; gauge goes
/// with the inverse root of length, which is what that tension asks for. Fractions are widened by 20 %.
/// What the person lets the string pull, at the highest pitch at which it is used, cuts the band of tension off.
/// `None` where nobody makes it, or nothing of it pulls so little.
#[must_use]
pub fn bands(position: &Position, family: Family, conditions: &Conditions) -> Option<Bands> {
    let row = position.rows.iter().find(|row| row.family == family)?;
    let grade = grade(position, family, conditions);
    if grade == Nobody {
        return None;
    }
    let scale = length_factor(conditions.kind, conditions.length);
    let widen = if conditions.size.fraction { FRACTION_WIDENING } else { 0.0 };
    let factor = scale * pitch_factor(position, conditions.pitch);
    let thin = 1.0 / scale.sqrt();
    let tension = (row.tension.0 * factor * (1.0 - widen), row.tension.1 * factor * (1.0 + widen));
    let most = conditions
        .most_tension
        .map_or(f64::INFINITY, |most| most / (conditions.highest * conditions.highest));
    if most < tension.0 {
        return None;
    }
    Some(Bands {
        grade,
        tension: (tension.0, tension.1.min(most)),
        gauge: (
            row.gauge.0 * 1e-3 * thin * (1.0 - widen / 2.0),
            row.gauge.1 * 1e-3 * thin * (1.0 + widen / 2.0),
        ),
        stretch: stretch_band(family),
        winding_share: winding_band(family),
        // Stress goes with the square of pitch, and what must hold is held at the highest.
        breaking_share: working_share(family, conditions.set_up, conditions.gut_to_its_limit)
            / (conditions.highest * conditions.highest),
    })
}

/// Where a string stands: what the bands depend on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Conditions {
    /// The instrument.
    pub kind: &'static Kind,
    /// Its size.
    pub size: &'static Size,
    /// Its sounding length.
    pub length: Metre,
    /// How it is set up.
    pub set_up: SetUp,
    /// The string's pitch.
    pub pitch: Hertz,
    /// Whether the person asked for a plain gut top string in spite of its breaking.
    pub gut_to_its_limit: bool,
    /// The highest pitch at which the string is used, over its main one: at least 1.
    pub highest: f64,
    /// The most the person lets it pull, newtons.
    pub most_tension: Option<f64>,
}

/// Tension of everyday strings at a position, carried like [`bands`]; lower on a historical set-up.
#[must_use]
pub fn usual_tension(position: &Position, conditions: &Conditions) -> (f64, f64) {
    let factor = length_factor(conditions.kind, conditions.length)
        * pitch_factor(position, conditions.pitch);
    let (low, high) = match conditions.set_up {
        SetUp::Historical => HISTORICAL_TENSION,
        SetUp::Modern | SetUp::Light => (1.0, 1.0),
    };
    (position.tension.0 * factor * low, position.tension.1 * factor * high)
}
