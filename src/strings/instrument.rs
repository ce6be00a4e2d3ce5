//! The instruments: sizes, lengths, angles, loads, and how their strings are tuned.
//!
//! Geometry is common practice and varies by a few per cent between makers; every value can be overridden
//! by a measurement. Loads for the modern violin are published, the others common practice.

use crate::error::{self, Bound};
use crate::pitch::Note;
use crate::quantity::{Hertz, Metre};
use crate::source::{self, Source};

/// A kind of instrument.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Kind {
    /// The key by which requests name it.
    pub key: &'static str,
    /// Its name on screen.
    pub name: &'static str,
    /// Sounding length for which the precedents are stated, in metres.
    pub full_length: f64,
    /// Angle over the bridge, degrees.
    pub angle: f64,
    /// Length from nut to peg, metres: the middle of what its pegs need.
    pub nut_to_peg: f64,
    /// Diameter of the peg where the string winds, metres.
    pub peg: f64,
    /// Height of the strings over the fingerboard at the octave, metres.
    pub height: f64,
    /// Radius of the nut's edge over which a string bends, metres.
    pub nut_radius: f64,
    /// Resistance of the bridge between strong notes, and at the strongest, kg/s.
    pub resistance: (f64, f64),
    /// Usual total tension of four strings on a modern set-up, newtons.
    pub usual_load: (f64, f64),
    /// Where that comes from.
    pub load_source: Source,
    /// Its sizes, the most common first.
    pub sizes: &'static [Size],
    /// Its tunings, the usual one first.
    pub tunings: &'static [Tuning],
}

/// A size of an instrument.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Size {
    /// The key by which requests name it.
    pub key: &'static str,
    /// Sounding length in millimetres: usual value, low and high end of the usual range.
    pub length_mm: (f64, f64, f64),
    /// Whether strings for it are made smaller than the full ones, with wider bands.
    pub fraction: bool,
}

/// A way to tune an instrument.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tuning {
    /// The key by which requests name it.
    pub key: &'static str,
    /// Its name on screen.
    pub name: &'static str,
    /// From the highest string to the lowest: the note, and the position whose precedents hold.
    pub strings: &'static [(&'static str, &'static str)],
    /// Whether the lowest string runs on over an extension, a quarter longer, and is stopped at the nut.
    pub extension: bool,
}

const fn size(key: &'static str, length_mm: (f64, f64, f64), fraction: bool) -> Size {
    Size { key, length_mm, fraction }
}

const fn tuning(
    key: &'static str,
    name: &'static str,
    strings: &'static [(&'static str, &'static str)],
) -> Tuning {
    Tuning { key, name, strings, extension: false }
}

/// The violin.
pub const VIOLIN: Kind = Kind {
    key: "violin",
    name: "violin",
    full_length: 0.328,
    angle: 158.0,
    nut_to_peg: 0.050,
    peg: 0.0070,
    height: 0.0040,
    nut_radius: 0.002,
    resistance: (30.0, 10.0),
    usual_load: (189.0, 265.0),
    load_source: source::GUETTLER_PROPERTIES,
    sizes: &[
        size("4/4", (328.0, 322.0, 332.0), false),
        size("7/8", (317.0, 312.0, 320.0), false),
        size("3/4", (309.0, 303.0, 315.0), true),
        size("1/2", (282.0, 275.0, 290.0), true),
        size("1/4", (255.0, 245.0, 265.0), true),
        size("1/8", (230.0, 222.0, 240.0), true),
        size("1/10", (217.0, 210.0, 225.0), true),
        size("1/16", (202.0, 195.0, 210.0), true),
        size("1/32", (188.0, 180.0, 195.0), true),
    ],
    tunings: &[
        tuning(
            "standard",
            "G D A E",
            &[("E5", "violin-e"), ("A4", "violin-a"), ("D4", "violin-d"), ("G3", "violin-g")],
        ),
        tuning(
            "five-string",
            "C G D A E",
            &[
                ("E5", "violin-e"),
                ("A4", "violin-a"),
                ("D4", "violin-d"),
                ("G3", "violin-g"),
                ("C3", "violin-c"),
            ],
        ),
        tuning(
            "cross-a",
            "A E A E (cross-tuned)",
            &[("E5", "violin-e"), ("A4", "violin-a"), ("E4", "violin-d"), ("A3", "violin-g")],
        ),
    ],
};

/// The viola.
pub const VIOLA: Kind = Kind {
    key: "viola",
    name: "viola",
    full_length: 0.372,
    angle: 157.0,
    nut_to_peg: 0.060,
    peg: 0.0075,
    height: 0.0045,
    nut_radius: 0.002,
    resistance: (40.0, 12.0),
    usual_load: (198.0, 300.0),
    load_source: source::PRACTICE,
    sizes: &[
        size("16 in", (372.0, 362.0, 380.0), false),
        size("17 in", (388.0, 375.0, 398.0), false),
        size("16.5 in", (380.0, 370.0, 386.0), false),
        size("15 in", (355.0, 345.0, 365.0), false),
        size("14 in", (338.0, 330.0, 345.0), true),
        size("13 in", (318.0, 310.0, 325.0), true),
        size("12 in", (295.0, 285.0, 305.0), true),
    ],
    tunings: &[
        tuning(
            "standard",
            "C G D A",
            &[("A4", "viola-a"), ("D4", "viola-d"), ("G3", "viola-g"), ("C3", "viola-c")],
        ),
        tuning(
            "half-tone-up",
            "a half tone up",
            &[("Bb4", "viola-a"), ("Eb4", "viola-d"), ("G#3", "viola-g"), ("C#3", "viola-c")],
        ),
    ],
};

/// The cello.
pub const CELLO: Kind = Kind {
    key: "cello",
    name: "cello",
    full_length: 0.692,
    angle: 152.0,
    nut_to_peg: 0.085,
    peg: 0.0110,
    height: 0.0065,
    nut_radius: 0.003,
    resistance: (60.0, 14.0),
    usual_load: (450.0, 640.0),
    load_source: source::PRACTICE,
    sizes: &[
        size("4/4", (692.0, 680.0, 700.0), false),
        size("7/8", (660.0, 650.0, 670.0), false),
        size("3/4", (617.0, 605.0, 630.0), true),
        size("1/2", (550.0, 535.0, 565.0), true),
        size("1/4", (485.0, 470.0, 500.0), true),
        size("1/8", (430.0, 415.0, 445.0), true),
    ],
    tunings: &[
        tuning(
            "standard",
            "C G D A",
            &[("A3", "cello-a"), ("D3", "cello-d"), ("G2", "cello-g"), ("C2", "cello-c")],
        ),
        tuning(
            "five-string",
            "C G D A E",
            &[
                ("E4", "cello-e"),
                ("A3", "cello-a"),
                ("D3", "cello-d"),
                ("G2", "cello-g"),
                ("C2", "cello-c"),
            ],
        ),
        tuning(
            "a-down",
            "C G D G (top string a tone down)",
            &[("G3", "cello-a"), ("D3", "cello-d"), ("G2", "cello-g"), ("C2", "cello-c")],
        ),
    ],
};

const BASS_ORCHESTRA: [(&str, &str); 4] =
    [("G2", "bass-g"), ("D2", "bass-d"), ("A1", "bass-a"), ("E1", "bass-e")];

/// The double bass. Its fractions are body sizes: 3/4 is the usual instrument.
pub const DOUBLE_BASS: Kind = Kind {
    key: "double-bass",
    name: "double bass",
    full_length: 1.060,
    angle: 152.0,
    nut_to_peg: 0.125,
    peg: 0.0120,
    height: 0.0100,
    nut_radius: 0.005,
    resistance: (150.0, 40.0),
    usual_load: (960.0, 1280.0),
    load_source: source::PRACTICE,
    sizes: &[
        size("3/4", (1060.0, 1035.0, 1075.0), false),
        size("4/4", (1110.0, 1090.0, 1130.0), false),
        size("1/2", (970.0, 950.0, 990.0), true),
        size("1/4", (895.0, 875.0, 915.0), true),
    ],
    tunings: &[
        tuning("orchestra", "E A D G", &BASS_ORCHESTRA),
        tuning(
            "solo",
            "F# B E A (solo)",
            &[
                ("A2", "bass-solo-a"),
                ("E2", "bass-solo-e"),
                ("B1", "bass-solo-b"),
                ("F#1", "bass-solo-f#"),
            ],
        ),
        tuning(
            "fifths",
            "C G D A (fifths)",
            &[("A2", "bass-solo-a"), ("D2", "bass-d"), ("G1", "bass-low-g"), ("C1", "bass-low-c")],
        ),
        Tuning {
            key: "c-extension",
            name: "E A D G with C extension",
            strings: &BASS_ORCHESTRA,
            extension: true,
        },
        tuning(
            "low-b",
            "B E A D G",
            &[
                ("G2", "bass-g"),
                ("D2", "bass-d"),
                ("A1", "bass-a"),
                ("E1", "bass-e"),
                ("B0", "bass-low-b"),
            ],
        ),
        tuning(
            "low-c",
            "C E A D G",
            &[
                ("G2", "bass-g"),
                ("D2", "bass-d"),
                ("A1", "bass-a"),
                ("E1", "bass-e"),
                ("C1", "bass-low-c"),
            ],
        ),
        tuning(
            "high-c",
            "E A D G C",
            &[
                ("C3", "bass-high-c"),
                ("G2", "bass-g"),
                ("D2", "bass-d"),
                ("A1", "bass-a"),
                ("E1", "bass-e"),
            ],
        ),
        tuning(
            "viennese",
            "A D F# A (Viennese)",
            &[
                ("A2", "bass-viennese-a"),
                ("F#2", "bass-viennese-f#"),
                ("D2", "bass-d"),
                ("A1", "bass-a"),
            ],
        ),
    ],
};

/// Every kind of instrument.
pub const ALL: &[&Kind] = &[&VIOLIN, &VIOLA, &CELLO, &DOUBLE_BASS];

/// Length that a string runs on past the nut over a C extension, as a share of the sounding length:
/// four semitones, 2^(4/12) − 1.
pub const EXTENSION: f64 = 0.259_921;

/// Length behind the bridge over sounding length: common practice for the violin, taken for all.
pub const AFTERLENGTH_SHARE: f64 = 1.0 / 6.0;

impl Kind {
    /// The kind of that key.
    #[must_use]
    pub fn of(key: &str) -> Option<&'static Self> {
        ALL.iter().copied().find(|kind| kind.key == key)
    }

    /// The size of that key.
    #[must_use]
    pub fn size(&self, key: &str) -> Option<&'static Size> {
        self.sizes.iter().find(|size| size.key == key)
    }

    /// The tuning of that key.
    #[must_use]
    pub fn tuning(&self, key: &str) -> Option<&'static Tuning> {
        self.tunings.iter().find(|tuning| tuning.key == key)
    }

    /// Sounding lengths that are believed: its smallest and largest size, and a tenth beyond.
    #[must_use]
    pub fn length_bound(&self) -> Bound {
        let ends = self.sizes.iter().fold((f64::INFINITY, 0.0_f64), |(low, high), size| {
            (low.min(size.length_mm.1), high.max(size.length_mm.2))
        });
        Bound {
            min: (ends.0 * 0.9).floor() / 1000.0,
            max: (ends.1 * 1.1).ceil() / 1000.0,
            ..error::SOUNDING_LENGTH
        }
    }
}

impl Size {
    /// Usual sounding length.
    #[must_use]
    pub fn length(&self) -> Metre {
        Metre::from_mm(self.length_mm.0)
    }

    /// Half the usual range of the sounding length.
    #[must_use]
    pub fn length_doubt(&self) -> Metre {
        Metre::from_mm((self.length_mm.2 - self.length_mm.1) / 2.0)
    }
}

words! {
    /// How the strings are tuned to each other.
    Temperament {
        /// Twelve equal semitones.
        Equal = "equal",
        /// Pure fifths (3:2) up and down from A.
        PureFifths = "pure-fifths",
    }
}

/// Frequency of a note: equal temperament, or pure fifths counted from A.
///
/// A note that lies within five fifths of A on either side is reached by that many factors of 3/2, and octaves.
#[must_use]
pub fn frequency(note: Note, a4: Hertz, temperament: Temperament) -> Hertz {
    let equal = note.frequency(a4).get();
    if temperament == Temperament::Equal {
        return Hertz::new(equal);
    }
    let semitones = note.0 - Note::A4.0;
    // Seven is its own inverse modulo twelve: the number of fifths is seven times the semitones.
    let fifths = (7 * semitones + 6).rem_euclid(12) - 6;
    // A pure fifth exceeds a tempered one by 1.955 cents, and so many of them by so many times that.
    let excess = 1.5 / libm::exp2(7.0 / 12.0);
    debug_assert!(
        (7 * fifths - semitones).rem_euclid(12) == 0,
        "fifths reach the note but for octaves"
    );
    Hertz::new(equal * libm::pow(excess, f64::from(fifths)))
}
