//! A year in a room, in words.

use protocol::reply::{Drifting, MonthDrift, Range};

use super::naming::capital;
use super::{say, speech};
use crate::units;

/// A month by its number.
#[must_use]
pub fn month(number: usize) -> &'static str {
    speech::of("month", &number.to_string()).unwrap_or_default()
}

/// The letter by which a month stands under an axis.
#[must_use]
pub fn initial(number: usize) -> &'static str {
    let end = month(number).chars().next().map_or(0, char::len_utf8);
    &month(number)[..end]
}

/// A number with its sign, for pitches that go up and down.
#[must_use]
pub fn signed(value: f64, places: i32) -> String {
    let text = units::fixed(value, places);
    if value > 0.0 && text.chars().any(|c| ('1'..='9').contains(&c)) {
        format!("+{text}")
    } else {
        text
    }
}

/// The share of its reach up to which the other side of nought counts for nothing.
const NEXT_TO_NOUGHT: f64 = 0.1;

/// Whether not even the direction is known.
fn either_way(range: &Range) -> bool {
    let (up, down) = (range.high.max(0.0), (-range.low).max(0.0));
    up.min(down) > NEXT_TO_NOUGHT * up.max(down)
}

/// A month's drift as a table has it: the value, and within what.
#[must_use]
pub fn cell(range: &Range) -> String {
    let places = units::decimals((range.high - range.low) / 2.0, 1).unwrap_or(0).max(0);
    let between =
        say!("range-of", low = signed(range.low, places), high = signed(range.high, places));
    say!("value-within", value = signed(range.value, places), range = between)
}

/// How far a string wanders between the two ends of the year, as a range of sizes.
#[must_use]
pub fn reach(string: &Drifting) -> Range {
    let far = |m: &&MonthDrift| m.above_cent.value.abs();
    let ends = [0, string.months.len() / 2].map(|i| string.months.get(i));
    let nothing = Range { value: 0.0, low: 0.0, high: 0.0 };
    let [Some(january), Some(july)] = ends else { return nothing };
    // What is uncertain is the same in both, so the ends move apart together.
    let furthest = if far(&january) > far(&july) { january } else { july };
    let apart = (july.above_cent.value - january.above_cent.value).abs();
    let scale = if furthest.above_cent.value.abs() > 0.0 { apart / far(&furthest) } else { 2.0 };
    let (low, high) = (furthest.above_cent.low.abs(), furthest.above_cent.high.abs());
    let nought = furthest.above_cent.low < 0.0 && furthest.above_cent.high > 0.0;
    let least = if nought { 0.0 } else { low.min(high) };
    Range { value: apart, low: scale * least, high: scale * low.max(high) }
}

/// The takeaway: which string wanders furthest, and within what.
#[must_use]
pub fn title(strings: &[Drifting], names: &[String]) -> String {
    let reaches: Vec<Range> = strings.iter().map(reach).collect();
    let order = |i: &usize, j: &usize| reaches[*i].high.total_cmp(&reaches[*j].high);
    let Some(most) = (0..reaches.len()).max_by(order) else { return String::new() };
    let reach = &reaches[most];
    let cents = |x: f64| units::fixed(x, 0);
    let july = strings.get(most).and_then(|s| s.months.get(s.months.len() / 2));
    let known = july.is_some_and(|m| !either_way(&m.above_cent));
    capital(&say!(
        "year-title",
        known = if known { "yes" } else { "no" },
        name = names.get(most).map_or("", String::as_str),
        low = cents(reach.low),
        high = cents(reach.high),
    ))
}

/// How the chart is read, and what its year is.
#[must_use]
pub fn how(string: &Drifting) -> String {
    let end = |i: usize| string.months.get(i).map_or((0.0, 0.0), |m| (m.temperature_c, m.humidity));
    let (january, july) = (end(0), end(6));
    let percent = |share: f64| units::with_unit(&units::of_hundred(share), "%");
    say!(
        "year-how",
        cold = units::warmth(january.0),
        dry = percent(january.1),
        warm = units::warmth(july.0),
        damp = percent(july.1),
    )
}

/// A month: its air, and where every string stands.
#[must_use]
pub fn point(strings: &[Drifting], names: &[String], i: usize) -> String {
    let Some(m) = strings.first().and_then(|s| s.months.get(i)) else { return String::new() };
    let all: Vec<String> = strings
        .iter()
        .zip(names)
        .filter_map(|(s, name)| {
            let range = &s.months.get(i)?.above_cent;
            Some(say!("year-stands", name = name, cents = cell(range)))
        })
        .collect();
    say!(
        "year-point",
        month = month(m.month),
        warmth = units::warmth(m.temperature_c),
        damp = units::with_unit(&units::of_hundred(m.humidity), "%"),
        strings = all.join("; "),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn through(ends: (f64, f64, f64)) -> Drifting {
        let (value, low, high) = ends;
        let month = |month: usize| {
            let s = if month < 4 { -1.0 } else { 1.0 };
            let above_cent = if s > 0.0 {
                Range { value, low, high }
            } else {
                Range { value: -value, low: -high, high: -low }
            };
            MonthDrift { month, temperature_c: 20.0, humidity: 0.5, above_cent }
        };
        Drifting { months: (1..=12).map(month).collect() }
    }

    #[test]
    fn the_one_that_may_wander_furthest_is_named_and_a_direction_only_where_there_is_one() {
        let reach = reach(&through((10.0, 4.0, 30.0)));
        assert_eq!((reach.value, reach.low, reach.high), (20.0, 8.0, 60.0));
        let names = ["A".to_owned(), "D".to_owned()];
        let known = title(&[through((10.0, 4.0, 30.0)), through((2.0, 1.0, 3.0))], &names);
        assert!(known.contains('A') && known.contains('8') && known.contains("60"), "{known}");
        // A hair over nought is no other direction.
        let nearly = title(&[through((10.0, -0.3, 30.0))], &names);
        assert!(nearly.contains("0 to 60"), "{nearly}");
        let unknown = title(&[through((2.0, 1.0, 3.0)), through((5.0, -20.0, 40.0))], &names);
        assert!(unknown.contains('D') && unknown.contains("80"), "{unknown}");
    }

    #[test]
    fn a_sign_stands_before_what_is_not_nought() {
        assert_eq!(signed(3.2, 0), "+3");
        assert_eq!(signed(-3.2, 0), "−3");
        assert_eq!(signed(0.2, 0), "0");
        assert_eq!((month(1), initial(12)), ("January", "D"));
    }
}
