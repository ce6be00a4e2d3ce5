//! How far does a swing of the room move a string's pitch, and which way?

use protocol::reply::Quantity;
use strings::report::{Estimate, Property};

use super::say;
use crate::units;
use crate::words::year::signed;

/// Below this a string is said to hardly move, in cents.
const HARDLY: f64 = 1.0;

/// Whether a property is such a move: cents up or down.
#[must_use]
pub fn is_drift(key: &str) -> bool {
    Property::ALL.iter().any(|p| p.key() == key && p.is_drift())
}

/// A number as it is compared with others: a move of the pitch by its size, whichever way it goes.
#[must_use]
pub fn sized(key: &str, q: &Quantity) -> Quantity {
    if !is_drift(key) {
        return q.clone();
    }
    let Estimate { value, low, high } =
        Estimate { value: q.value, low: q.low, high: q.high }.size();
    Quantity { value, low, high, ..q.clone() }
}

/// What the pitch does: `falls 4 cents`, `hardly moves`; a wide range stands with it.
#[must_use]
pub fn moves(key: &str, q: &Quantity) -> String {
    let both_ways = q.low < 0.0 && q.high > 0.0;
    let range = || {
        let places = units::decimals((q.high - q.low) / 2.0, 1).unwrap_or(0).max(0);
        let end = |cents: f64| signed(cents, units::not_nought(cents, places));
        say!("range-of", low = end(q.low), high = end(q.high))
    };
    if q.value.abs() < HARDLY && (q.low < -HARDLY || q.high > HARDLY) {
        return say!("moves-hardly-within", range = units::with_unit(&range(), say!("cents")));
    }
    let cents = if both_ways {
        let value = units::bare(key, q.value.abs(), 1);
        say!("value-about", value = value, range = range())
    } else {
        units::plainly(key, &sized(key, q))
    };
    towards(q.value, &cents)
}

/// Which way it goes, and by how much.
fn towards(value: f64, cents: &str) -> String {
    if value.abs() < HARDLY {
        say!("moves-hardly").to_owned()
    } else if value < 0.0 {
        say!("moves-falls", cents = cents)
    } else {
        say!("moves-rises", cents = cents)
    }
}

/// A number without its range, which stands beside it.
#[must_use]
pub fn alone(key: &str, q: &Quantity) -> String {
    let value = units::size_alone(key, q);
    if is_drift(key) { towards(q.value, &value) } else { value }
}

/// A number for plain words: what the pitch does, where it is a move of it.
#[must_use]
pub fn plainly(key: &str, q: &Quantity) -> String {
    if is_drift(key) { moves(key, q) } else { units::plainly(key, q) }
}

/// Which swing of the room a person meets who leaves strings untuned so long: the property that warmth moves, or damp.
#[must_use]
pub fn met(untuned: &str, by: &str) -> String {
    format!("{untuned}_{by}_cent")
}
