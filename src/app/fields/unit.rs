//! The units in which numbers are typed.

use strings::error::Bound;

use crate::units;
use crate::words::{say, speech};

/// A unit in which a number can be typed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unit {
    /// The name under which it is chosen and kept, whatever the language.
    pub label: &'static str,
    /// One of it in the unit of the request is `times / over`: two factors, so that both are exact in binary or whole.
    times: f64,
    over: f64,
    /// Decimals that are worth showing.
    decimals: usize,
    /// Other ways in which people write it.
    pub(super) also: &'static [&'static str],
}

const fn unit(label: &'static str, decimals: usize, also: &'static [&'static str]) -> Unit {
    Unit { label, times: 1.0, over: 1.0, decimals, also }
}

pub(super) const LENGTH: &[Unit] = &[
    Unit { over: 1000.0, ..unit("mm", 1, &["millimetres"]) },
    Unit { times: 0.0254, ..unit("in", 2, &["inches", "inch", "\"", "″"]) },
];
pub(super) const AGE: &[Unit] =
    &[unit("months", 1, &["month"]), Unit { times: 12.0, ..unit("years", 1, &["year"]) }];
pub(super) const PITCH: &[Unit] = &[unit("Hz", 1, &["hz", "Hertz", "hertz"])];
pub(super) const SEMITONES: &[Unit] = &[unit("semitones", 1, &["semitone"])];
pub(super) const DAYS: &[Unit] = &[unit("days", 0, &["day", "d"])];
pub(super) const FORCE: &[Unit] = &[
    unit("N", 0, &["newtons", "newton"]),
    Unit { times: 9.80665, ..unit("kg", 1, &["kgf", "kilos"]) },
    Unit { times: 4.448_221_615_260_5, ..unit("lb", 1, &["lbs", "pounds"]) },
];
pub(super) const PURE: &[Unit] = &[unit("", 2, &[])];

impl Unit {
    /// What stands beside the number.
    #[must_use]
    pub fn shown(self) -> &'static str {
        if self.label.is_empty() { "" } else { speech::of_or_key("unit-typed", self.label) }
    }

    pub(super) fn to_si(self, value: f64) -> f64 {
        value * self.times / self.over
    }

    fn of_si(self, value: f64) -> f64 {
        value * self.over / self.times
    }

    /// A number of the request as one would type it.
    #[must_use]
    pub fn typed(self, si: f64) -> String {
        plain(self.of_si(si), self.decimals)
    }

    /// The bounds as one would say them: rounded inwards, so that whoever types an end is let in.
    pub(super) fn range(self, bound: Bound) -> String {
        // Tens to so few decimals are exact.
        let scale: f64 = (0..self.decimals).map(|_| 10.0).product();
        // What the factors leave behind the last digit must not push a whole number to the next.
        let (low, high) = (self.of_si(bound.min) * scale, self.of_si(bound.max) * scale);
        let (low, high) = ((low - 1e-6).ceil() / scale, (high + 1e-6).floor() / scale);
        let (low, high) = (plain(low, self.decimals), plain(high, self.decimals));
        let range = say!("range-of", low = low, high = high);
        format!("{range} {}", self.shown()).trim_end().to_owned()
    }
}

/// A number with at most so many decimals, and none that say nothing.
fn plain(value: f64, decimals: usize) -> String {
    let text = format!("{value:.decimals$}");
    let short =
        if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    if short == "-0" { "0".to_owned() } else { short.replace('.', units::point()) }
}
