//! What is made: for each position on an instrument and each family, how commonly, and within which bands.
//!
//! All of it is common practice from memory, widened, with no brand's data; the violin's tensions agree with
//! published ranges over sets on sale ([`crate::source::GUETTLER_PROPERTIES`]).
//! The bands stand for the full size at 440 Hz; [`bands`] carries them to other lengths and pitches.

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

/// How an instrument is set up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SetUp {
    /// Modern neck, bridge and tailpiece.
    Modern,
    /// Historical: made or set back for gut.
    Historical,
    /// Modern in shape, but old, light or valuable.
    Light,
}

/// A string's place in a tuning, with what holds for it whatever the family.
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
    pub fn place(&self, brilliance: f64) -> f64 {
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

use Family::{PlainGut, PlainSteel, StrandedSteel, Synthetic, WoundGut, WoundSteel};
use Grade::{Everyday, Nobody, Sometimes};

/// A row; on a historical set-up plain gut is the everyday string, and other gut and synthetics are rare.
const fn row(family: Family, grade: Grade, tension: (f64, f64), gauge: (f64, f64)) -> Row {
    let historical = match family {
        PlainGut => Everyday,
        WoundGut | Synthetic => Sometimes,
        _ => Nobody,
    };
    Row { family, grade, historical, tension, gauge }
}

/// A row whose place on a historical set-up is not the rule's.
const fn with_historical(historical: Grade, row: Row) -> Row {
    Row { historical, ..row }
}

const fn position(
    key: &'static str,
    note: &'static str,
    tension: (f64, f64),
    brilliance: (f64, f64),
    metals: Metals,
    rows: &'static [Row],
) -> Position {
    Position { key, note, tension, brilliance, metals, rows }
}

/// Every position of every tuning.
pub const POSITIONS: &[Position] = &[
    position(
        "violin-e",
        "E5",
        (70.0, 90.0),
        (10.0e3, 200.0e3),
        Metals { soft: &[], steel: &["aluminium"] },
        &[
            row(PlainSteel, Everyday, (70.0, 90.0), (0.25, 0.28)),
            row(WoundSteel, Sometimes, (70.0, 90.0), (0.25, 0.36)),
            row(PlainGut, Sometimes, (58.0, 92.0), (0.56, 0.68)),
        ],
    ),
    position(
        "violin-a",
        "A4",
        (48.0, 63.0),
        (8.0e3, 80.0e3),
        Metals { soft: &["aluminium"], steel: &["chrome-steel", "aluminium"] },
        &[
            row(Synthetic, Everyday, (48.0, 63.0), (0.58, 0.82)),
            row(WoundSteel, Everyday, (48.0, 66.0), (0.40, 0.62)),
            row(StrandedSteel, Sometimes, (48.0, 66.0), (0.40, 0.66)),
            row(WoundGut, Sometimes, (42.0, 63.0), (0.60, 0.86)),
            row(PlainGut, Sometimes, (40.0, 65.0), (0.70, 0.86)),
        ],
    ),
    position(
        "violin-d",
        "D4",
        (38.0, 60.0),
        (4.0e3, 40.0e3),
        Metals { soft: &["aluminium", "silver"], steel: &["chrome-steel", "aluminium", "silver"] },
        &[
            row(Synthetic, Everyday, (38.0, 60.0), (0.66, 1.00)),
            row(WoundSteel, Everyday, (38.0, 60.0), (0.48, 0.82)),
            row(StrandedSteel, Sometimes, (38.0, 60.0), (0.48, 0.82)),
            row(WoundGut, Sometimes, (34.0, 56.0), (0.70, 1.05)),
            row(PlainGut, Sometimes, (30.0, 56.0), (0.90, 1.20)),
        ],
    ),
    position(
        "violin-g",
        "G3",
        (35.0, 51.0),
        (2.5e3, 25.0e3),
        Metals { soft: &["silver"], steel: &["silver", "tungsten", "chrome-steel"] },
        &[
            row(Synthetic, Everyday, (35.0, 51.0), (0.70, 1.00)),
            row(StrandedSteel, Everyday, (35.0, 51.0), (0.60, 0.90)),
            row(WoundSteel, Sometimes, (35.0, 51.0), (0.58, 0.90)),
            with_historical(Everyday, row(WoundGut, Sometimes, (32.0, 50.0), (0.74, 1.05))),
            with_historical(Sometimes, row(PlainGut, Sometimes, (28.0, 48.0), (1.25, 1.65))),
        ],
    ),
    position(
        "violin-c",
        "C3",
        (36.0, 54.0),
        (1.5e3, 15.0e3),
        Metals { soft: &["silver", "tungsten"], steel: &["tungsten", "silver", "chrome-steel"] },
        &[
            row(Synthetic, Sometimes, (36.0, 54.0), (0.90, 1.40)),
            row(StrandedSteel, Sometimes, (36.0, 54.0), (0.78, 1.25)),
        ],
    ),
    position(
        "viola-a",
        "A4",
        (65.0, 100.0),
        (8.0e3, 80.0e3),
        Metals { soft: &["aluminium"], steel: &["chrome-steel", "aluminium"] },
        &[
            row(WoundSteel, Everyday, (65.0, 100.0), (0.42, 0.72)),
            row(Synthetic, Everyday, (65.0, 90.0), (0.60, 0.92)),
            row(StrandedSteel, Sometimes, (65.0, 100.0), (0.42, 0.76)),
            row(WoundGut, Sometimes, (55.0, 85.0), (0.64, 0.95)),
            row(PlainGut, Sometimes, (50.0, 88.0), (0.70, 0.92)),
        ],
    ),
    position(
        "viola-d",
        "D4",
        (45.0, 70.0),
        (4.0e3, 40.0e3),
        Metals { soft: &["aluminium", "silver"], steel: &["chrome-steel", "silver"] },
        &[
            row(Synthetic, Everyday, (45.0, 70.0), (0.68, 1.05)),
            row(WoundSteel, Everyday, (45.0, 70.0), (0.50, 0.86)),
            row(StrandedSteel, Everyday, (45.0, 70.0), (0.52, 0.88)),
            row(WoundGut, Sometimes, (42.0, 66.0), (0.72, 1.15)),
            row(PlainGut, Sometimes, (38.0, 66.0), (0.90, 1.25)),
        ],
    ),
    position(
        "viola-g",
        "G3",
        (45.0, 65.0),
        (2.5e3, 25.0e3),
        Metals { soft: &["silver"], steel: &["silver", "tungsten", "chrome-steel"] },
        &[
            row(Synthetic, Everyday, (45.0, 65.0), (0.74, 1.10)),
            row(StrandedSteel, Everyday, (45.0, 65.0), (0.62, 1.00)),
            row(WoundSteel, Sometimes, (45.0, 65.0), (0.60, 0.98)),
            with_historical(Everyday, row(WoundGut, Sometimes, (40.0, 62.0), (0.78, 1.20))),
        ],
    ),
    position(
        "viola-c",
        "C3",
        (43.0, 65.0),
        (1.5e3, 15.0e3),
        Metals { soft: &["silver", "tungsten"], steel: &["tungsten", "silver"] },
        &[
            row(Synthetic, Everyday, (43.0, 65.0), (0.90, 1.50)),
            row(StrandedSteel, Everyday, (43.0, 65.0), (0.80, 1.35)),
            with_historical(Everyday, row(WoundGut, Sometimes, (40.0, 62.0), (0.92, 1.60))),
        ],
    ),
    position(
        "cello-e",
        "E4",
        (110.0, 160.0),
        (8.0e3, 120.0e3),
        Metals { soft: &[], steel: &["chrome-steel", "aluminium"] },
        &[
            row(PlainSteel, Sometimes, (110.0, 160.0), (0.28, 0.38)),
            row(WoundSteel, Sometimes, (110.0, 160.0), (0.30, 0.55)),
        ],
    ),
    position(
        "cello-a",
        "A3",
        (140.0, 185.0),
        (3.0e3, 30.0e3),
        Metals { soft: &["aluminium"], steel: &["chrome-steel"] },
        &[
            row(WoundSteel, Everyday, (140.0, 185.0), (0.50, 0.90)),
            row(StrandedSteel, Everyday, (140.0, 185.0), (0.54, 0.98)),
            row(Synthetic, Sometimes, (130.0, 180.0), (0.80, 1.35)),
            row(WoundGut, Sometimes, (110.0, 165.0), (0.90, 1.45)),
            row(PlainGut, Sometimes, (90.0, 155.0), (1.00, 1.35)),
        ],
    ),
    position(
        "cello-d",
        "D3",
        (115.0, 155.0),
        (1.8e3, 18.0e3),
        Metals { soft: &["aluminium", "silver"], steel: &["chrome-steel"] },
        &[
            row(WoundSteel, Everyday, (115.0, 155.0), (0.66, 1.15)),
            row(StrandedSteel, Everyday, (115.0, 155.0), (0.70, 1.25)),
            row(Synthetic, Sometimes, (110.0, 150.0), (1.00, 1.60)),
            row(WoundGut, Sometimes, (95.0, 145.0), (1.10, 1.75)),
            row(PlainGut, Sometimes, (80.0, 135.0), (1.40, 1.80)),
        ],
    ),
    position(
        "cello-g",
        "G2",
        (112.0, 155.0),
        (1.2e3, 12.0e3),
        Metals { soft: &["silver"], steel: &["tungsten", "chrome-steel", "silver"] },
        &[
            row(StrandedSteel, Everyday, (112.0, 155.0), (0.85, 1.45)),
            row(WoundSteel, Sometimes, (112.0, 155.0), (0.85, 1.40)),
            row(Synthetic, Sometimes, (108.0, 150.0), (1.15, 1.80)),
            with_historical(Everyday, row(WoundGut, Sometimes, (95.0, 145.0), (1.20, 2.00))),
        ],
    ),
    position(
        "cello-c",
        "C2",
        (112.0, 162.0),
        (0.7e3, 7.0e3),
        Metals { soft: &["silver", "tungsten"], steel: &["tungsten", "silver", "chrome-steel"] },
        &[
            row(StrandedSteel, Everyday, (112.0, 162.0), (1.15, 2.00)),
            row(Synthetic, Sometimes, (108.0, 155.0), (1.45, 2.40)),
            with_historical(Everyday, row(WoundGut, Sometimes, (95.0, 150.0), (1.50, 2.60))),
        ],
    ),
    position(
        "bass-high-c",
        "C3",
        (230.0, 300.0),
        (1.2e3, 12.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[row(StrandedSteel, Sometimes, (230.0, 300.0), (0.75, 1.25))],
    ),
    position(
        "bass-g",
        "G2",
        (240.0, 320.0),
        (0.8e3, 8.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (0.95, 1.60)),
            row(WoundSteel, Sometimes, (240.0, 320.0), (0.92, 1.50)),
            row(Synthetic, Sometimes, (190.0, 290.0), (1.40, 2.50)),
            row(WoundGut, Sometimes, (170.0, 280.0), (1.50, 2.60)),
            row(PlainGut, Sometimes, (150.0, 270.0), (1.85, 2.50)),
        ],
    ),
    position(
        "bass-d",
        "D2",
        (240.0, 320.0),
        (0.6e3, 6.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (1.20, 2.10)),
            row(Synthetic, Sometimes, (190.0, 290.0), (1.65, 2.90)),
            with_historical(Everyday, row(WoundGut, Sometimes, (170.0, 280.0), (1.80, 3.20))),
            row(PlainGut, Sometimes, (150.0, 265.0), (2.45, 3.25)),
        ],
    ),
    position(
        "bass-a",
        "A1",
        (240.0, 320.0),
        (0.4e3, 4.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (1.50, 2.70)),
            row(Synthetic, Sometimes, (190.0, 290.0), (2.00, 3.40)),
            with_historical(Everyday, row(WoundGut, Sometimes, (170.0, 280.0), (2.20, 3.80))),
        ],
    ),
    position(
        "bass-e",
        "E1",
        (240.0, 320.0),
        (0.3e3, 3.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (1.90, 3.50)),
            row(Synthetic, Sometimes, (190.0, 290.0), (2.40, 4.20)),
            with_historical(Everyday, row(WoundGut, Sometimes, (170.0, 280.0), (2.60, 4.60))),
        ],
    ),
    position(
        "bass-solo-a",
        "A2",
        (240.0, 320.0),
        (0.9e3, 9.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (0.85, 1.45)),
            row(WoundSteel, Sometimes, (240.0, 320.0), (0.82, 1.40)),
            row(Synthetic, Sometimes, (190.0, 290.0), (1.25, 2.25)),
        ],
    ),
    position(
        "bass-solo-e",
        "E2",
        (240.0, 320.0),
        (0.7e3, 7.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (1.08, 1.90)),
            row(Synthetic, Sometimes, (190.0, 290.0), (1.50, 2.60)),
        ],
    ),
    position(
        "bass-solo-b",
        "B1",
        (240.0, 320.0),
        (0.5e3, 5.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (1.35, 2.45)),
            row(Synthetic, Sometimes, (190.0, 290.0), (1.80, 3.10)),
        ],
    ),
    position(
        "bass-solo-f#",
        "F#1",
        (240.0, 320.0),
        (0.35e3, 3.5e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(StrandedSteel, Everyday, (240.0, 320.0), (1.70, 3.15)),
            row(Synthetic, Sometimes, (190.0, 290.0), (2.15, 3.80)),
        ],
    ),
    position(
        "bass-low-g",
        "G1",
        (240.0, 320.0),
        (0.35e3, 3.5e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[row(StrandedSteel, Sometimes, (240.0, 320.0), (1.65, 3.00))],
    ),
    position(
        "bass-low-c",
        "C1",
        (240.0, 320.0),
        (0.25e3, 2.5e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[row(StrandedSteel, Sometimes, (240.0, 320.0), (2.30, 4.20))],
    ),
    position(
        "bass-low-b",
        "B0",
        (240.0, 320.0),
        (0.2e3, 2.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[row(StrandedSteel, Everyday, (240.0, 320.0), (2.40, 4.40))],
    ),
    position(
        "bass-viennese-a",
        "A2",
        (170.0, 280.0),
        (0.9e3, 9.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(PlainGut, Sometimes, (150.0, 280.0), (1.60, 2.30)),
            row(WoundGut, Sometimes, (170.0, 280.0), (1.40, 2.40)),
            row(Synthetic, Sometimes, (190.0, 290.0), (1.25, 2.25)),
        ],
    ),
    position(
        "bass-viennese-f#",
        "F#2",
        (170.0, 280.0),
        (0.8e3, 8.0e3),
        Metals { soft: &["silver", "aluminium"], steel: &["chrome-steel", "nickel", "tungsten"] },
        &[
            row(PlainGut, Sometimes, (150.0, 275.0), (1.90, 2.70)),
            row(WoundGut, Sometimes, (170.0, 280.0), (1.60, 2.80)),
            row(Synthetic, Sometimes, (190.0, 290.0), (1.40, 2.50)),
        ],
    ),
];

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
/// Plain gut is worked hardest of all: a violin e″ at 440 Hz stands near 70 % and breaks often, at 415 Hz near 63 %.
#[must_use]
pub const fn working_share(family: Family, gut_to_its_limit: bool) -> f64 {
    match family {
        PlainGut if gut_to_its_limit => 0.74,
        PlainGut => 0.65,
        WoundGut => 0.60,
        PlainSteel | WoundSteel => 0.62,
        StrandedSteel => 0.50,
        Synthetic | Family::Monofilament => 0.70,
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
pub fn grade(
    position: &Position,
    family: Family,
    kind: &Kind,
    size: &Size,
    length: Metre,
    set_up: SetUp,
) -> Grade {
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
/// `None` where nobody makes it.
#[must_use]
pub fn bands(position: &Position, family: Family, place: &Place) -> Option<Bands> {
    let row = position.rows.iter().find(|row| row.family == family)?;
    let grade = grade(position, family, place.kind, place.size, place.length, place.set_up);
    if grade == Nobody {
        return None;
    }
    let scale = length_factor(place.kind, place.length);
    let widen = if place.size.fraction { FRACTION_WIDENING } else { 0.0 };
    let factor = scale * pitch_factor(position, place.pitch);
    let thin = 1.0 / scale.sqrt();
    Some(Bands {
        grade,
        tension: (row.tension.0 * factor * (1.0 - widen), row.tension.1 * factor * (1.0 + widen)),
        gauge: (
            row.gauge.0 * 1e-3 * thin * (1.0 - widen / 2.0),
            row.gauge.1 * 1e-3 * thin * (1.0 + widen / 2.0),
        ),
        stretch: stretch_band(family),
        winding_share: winding_band(family),
        // Stress goes with the square of pitch, and what must hold is held at the highest.
        breaking_share: working_share(family, place.gut_to_its_limit)
            / (place.highest * place.highest),
    })
}

/// Where a string stands: what the bands depend on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
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
}

/// Tension of everyday strings at a position, carried like [`bands`]; lower on a historical set-up.
#[must_use]
pub fn usual_tension(position: &Position, place: &Place) -> (f64, f64) {
    let factor = length_factor(place.kind, place.length) * pitch_factor(position, place.pitch);
    let (low, high) = match place.set_up {
        SetUp::Historical => HISTORICAL_TENSION,
        SetUp::Modern | SetUp::Light => (1.0, 1.0),
    };
    (position.tension.0 * factor * low, position.tension.1 * factor * high)
}
