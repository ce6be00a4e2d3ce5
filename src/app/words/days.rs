//! How a string settles from day to day, in words.

use protocol::reply::{Night, Range};

use super::naming::capital;
use super::say;
use crate::units;

/// From here a chance is called very likely.
pub const VERY_LIKELY: f64 = 0.85;
/// From here it is called likely; under it, and as far above its opposite, it is a close call.
pub const LIKELY: f64 = 0.65;

/// How likely something is, on the page's scale.
#[must_use]
pub fn likely(chance: f64) -> &'static str {
    if chance >= VERY_LIKELY {
        say!("very-likely")
    } else if chance >= LIKELY {
        say!("likely")
    } else if chance > 1.0 - LIKELY {
        say!("close-call")
    } else if chance > 1.0 - VERY_LIKELY {
        say!("unlikely")
    } else {
        say!("very-unlikely")
    }
}

/// Neighbouring days whose chances have one word: the word, the first day and the last.
#[must_use]
pub fn runs(nights: &[Night]) -> Vec<(&'static str, u32, u32)> {
    let mut runs: Vec<(&'static str, u32, u32)> = Vec::new();
    for night in nights {
        let word = likely(night.chance);
        match runs.last_mut() {
            Some(last) if last.0 == word => last.2 = night.day,
            _ => runs.push((word, night.day, night.day)),
        }
    }
    runs
}

/// A chance as so many of a hundred: never nought and never all.
#[must_use]
pub fn of_hundred(chance: f64) -> String {
    if chance >= 0.995 {
        say!("over-of-hundred", number = "99")
    } else if chance < 0.005 {
        say!("under-of-hundred", number = "1")
    } else {
        say!("of-hundred", number = units::of_hundred(chance))
    }
}

/// A chance in per cent, where there is no room for words.
#[must_use]
pub fn percent(chance: f64) -> String {
    let number = if chance >= 0.995 {
        say!("over", number = "99")
    } else if chance < 0.005 {
        say!("under", number = "1")
    } else {
        units::of_hundred(chance)
    };
    units::with_unit(&number, "%")
}

/// What a day costs, in cents.
#[must_use]
pub fn cents(range: &Range) -> units::Written {
    units::write(range.value, (range.low, range.high), say!("cents"), 0, 2)
}

/// What a day costs, with its range.
#[must_use]
pub fn lost(range: &Range) -> String {
    cents(range).within()
}

/// A day, in words: what it costs, and how likely it is that the string has settled.
#[must_use]
pub fn point(night: &Night) -> String {
    let (lost, likely) = (lost(&night.lost_cent), likely(night.chance));
    say!("nights-point", day = night.day, lost = lost, likely = likely)
}

/// The takeaway of the days: from which one on the string has settled, and how likely.
#[must_use]
pub fn title(nights: &[Night], name: &str) -> String {
    let first = |chance: f64| nights.iter().find(|n| n.chance >= chance).map(|n| n.day);
    let within = nights.len();
    let on = |day: u32| say!("on-day", day = day);
    let said = match (first(LIKELY), first(VERY_LIKELY)) {
        (Some(likely), Some(very)) if likely == very => {
            say!("days-very", name = name, day = on(very))
        }
        (Some(likely), Some(very)) => {
            say!("days-both", name = name, day = on(likely), later = on(very))
        }
        (Some(likely), None) => {
            say!("days-likely", name = name, day = on(likely), days = within)
        }
        (None, _) => {
            let likely = nights.last().map_or(units::not_known(), |n| likely(n.chance));
            say!("days-unlikely", name = name, days = within, likely = likely)
        }
    };
    capital(&said)
}
