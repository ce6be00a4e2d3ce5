//! Words for a string under the bow: its maps and its sound.

use protocol::reply::{BowMap, BowRow};

use crate::units;
use crate::words::naming::capital;
use crate::words::{say, speech};

/// A kind of note under the bow.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Regime {
    /// Its key in a reply.
    pub key: &'static str,
}

impl Regime {
    /// Short enough to stand in a drawing.
    #[must_use]
    pub fn label(self) -> &'static str {
        speech::of_or_key("regime", self.key)
    }

    /// What one hears.
    #[must_use]
    pub fn means(self) -> &'static str {
        speech::of("regime", &format!("{}.means", self.key)).unwrap_or_default()
    }
}

/// Every kind of note.
pub const REGIMES: [Regime; 6] = [
    Regime { key: "helmholtz" },
    Regime { key: "double-slip" },
    Regime { key: "raucous" },
    Regime { key: "anomalous-low" },
    Regime { key: "multiple-flyback" },
    Regime { key: "not-settled" },
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
    let name = capital(first);
    let own = match found.first().copied().flatten() {
        Some(width) => say!("window-clean", name = name, width = decibels(width)),
        None => say!("window-none", name = name),
    };
    match second.zip(found.get(1)) {
        None => own,
        Some((name, Some(width))) => {
            say!("window-other", own = own, name = name, width = units::fixed(*width, 0))
        }
        Some((name, None)) => say!("window-other-none", own = own, name = name),
    }
}

/// The takeaway of maps of acceleration: how many of the starts came clean.
#[must_use]
pub fn starts(first: &str, second: Option<&str>, found: &[f64]) -> String {
    let of_hundred = |share: f64| units::fixed(100.0 * share, 0);
    let count = of_hundred(found.first().copied().unwrap_or(0.0));
    let own = say!("starts-clean", name = capital(first), count = count);
    match second.zip(found.get(1)) {
        None => own,
        Some((name, share)) => {
            say!("starts-other", own = own, name = name, count = of_hundred(*share))
        }
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
    if map == "place" { say!("map-place-how") } else { say!("map-start-how") }
}

/// Pieces that can be played.
pub const PIECES: [&str; 4] = ["open-string", "scale", "swell", "pizzicato"];

/// What a piece is called.
#[must_use]
pub fn piece(key: &str) -> &str {
    speech::of_or_key("piece", key)
}
