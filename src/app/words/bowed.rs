//! Words for a string under the bow: its maps and its sound.

use protocol::reply::{BowMap, BowRow};

use crate::units;
use crate::words::naming::capital;

/// What a note under the bow is called, and what stands for it in a drawing.
pub struct Regime {
    /// Its key in a reply.
    pub key: &'static str,
    /// Short enough to stand in a drawing.
    pub label: &'static str,
    /// What one hears.
    pub means: &'static str,
}

/// Every kind of note.
pub const REGIMES: [Regime; 6] = [
    Regime { key: "helmholtz", label: "clean", means: "one slip in each swing: a clean note" },
    Regime {
        key: "double-slip",
        label: "surface",
        means: "two slips or more in each swing: a thin sound on the surface",
    },
    Regime { key: "raucous", label: "crunch", means: "slips at odd times: a crunch" },
    Regime {
        key: "anomalous-low",
        label: "too low",
        means: "slips too far apart: a note below the string’s own",
    },
    Regime {
        key: "multiple-flyback",
        label: "hoarse",
        means: "one slip in each swing, but cut short: hoarse",
    },
    Regime {
        key: "not-settled",
        label: "late",
        means: "not clean after 60 swings, or hardly held by the bow",
    },
];

/// The kind of note of that key.
#[must_use]
pub fn regime(key: &str) -> &'static Regime {
    REGIMES.iter().find(|regime| regime.key == key).unwrap_or(&REGIMES[5])
}

/// A window in decibels, whole: more digits would not hold.
fn decibels(width: f64) -> String {
    units::with_unit(&units::fixed(width, 0), "dB")
}

/// The takeaway of maps of bow place: how wide the window of each string is. The second of two is named.
///
/// A window is none where no force gives a clean note.
#[must_use]
pub fn windows(first: &str, second: Option<&str>, found: &[Option<f64>]) -> String {
    let own = match found.first().copied().flatten() {
        Some(width) => {
            format!("{} speaks cleanly over a window of {}", capital(first), decibels(width))
        }
        None => format!("{} speaks cleanly at no force that was tried", capital(first)),
    };
    match second.zip(found.get(1)) {
        None => own,
        Some((name, Some(width))) => {
            format!("{own}; {name} gave {}", units::fixed(*width, 0))
        }
        Some((name, None)) => format!("{own}; {name} gave none"),
    }
}

/// The takeaway of maps of acceleration: how many of the starts came clean.
#[must_use]
pub fn starts(first: &str, second: Option<&str>, found: &[f64]) -> String {
    let of_hundred = |share: f64| units::fixed(100.0 * share, 0);
    let own = format!(
        "{} started cleanly {} times of 100",
        capital(first),
        of_hundred(found.first().copied().unwrap_or(0.0))
    );
    match second.zip(found.get(1)) {
        None => own,
        Some((name, share)) => format!("{own}; {name} {}", of_hundred(*share)),
    }
}

/// Which share of a map is clean.
#[must_use]
pub fn clean_share(map: &BowMap) -> f64 {
    let cells = || map.rows.iter().flat_map(|row| &row.cells);
    cells().filter(|cell| cell.regime == "helmholtz").count() as f64 / cells().count().max(1) as f64
}

/// The longest run of clean notes of a row, by its first and last column.
#[must_use]
pub fn clean_run(row: &BowRow) -> Option<(usize, usize)> {
    let mut best: Option<(usize, usize)> = None;
    let mut from = None;
    for (i, cell) in row.cells.iter().enumerate() {
        if cell.regime == "helmholtz" {
            let first = *from.get_or_insert(i);
            if best.is_none_or(|(a, b)| i - first > b - a) {
                best = Some((first, i));
            }
        } else {
            from = None;
        }
    }
    best
}

/// How to read a map of this kind.
#[must_use]
pub fn how_to_read(map: &str) -> &'static str {
    if map == "place" {
        "Across: where the bow is, the bridge on the left. Up: how hard it presses. Each field is one note that was played and judged. The two lines are the limits by formula, for the same string. In a window of 6 dB the hardest press is twice the softest; in one of 20 dB, ten times. One field more or less means little."
    } else {
        "Across: how briskly the bow starts. Up: how hard it presses. Each field is one note from rest. The two lines are the limits by formula, between which a start should be clean from its first slip on. One field more or less means little."
    }
}

/// What is said beside everything that sounds.
pub const COMPARISON: &str = "The body is a plain one of its family, not yours, and there is no room around it. So it is a comparison of strings and not a prediction of what yours will sound like.";

/// Pieces that can be played: key and name.
pub const PIECES: [(&str, &str); 4] = [
    ("open-string", "Open strings, bowed"),
    ("scale", "A scale from the lowest string"),
    ("swell", "A slow swell on each string"),
    ("pizzicato", "Open strings, plucked"),
];
