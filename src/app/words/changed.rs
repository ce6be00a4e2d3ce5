//! What changed from one set to the next, string by string.

use protocol::reply::Set;

use super::say;
use super::set::names;
use crate::units;

/// What changed: every string that is another one now, or that none is.
#[must_use]
pub fn told(before: &Set, now: &Set) -> Vec<String> {
    let names = names(now);
    let others = (0..now.strings.len().min(before.strings.len()))
        .filter(|i| before.strings[*i].report.construction != now.strings[*i].report.construction);
    let told: Vec<String> = others
        .map(|i| {
            say!(
                "changed-string",
                name = &names[i],
                family = &now.strings[i].report.family,
                stretch = stretch(before, i),
                stretch_then = stretch(now, i),
                days = days(before, i),
                days_then = days(now, i),
            )
        })
        .collect();
    if told.is_empty() { vec![say!("changed-none").to_owned()] } else { told }
}

fn stretch(set: &Set, i: usize) -> String {
    let stretch = set.strings[i].report.numbers.get("stretch").map_or(f64::NAN, |q| q.value);
    units::with_unit(&units::significant(100.0 * stretch, 2), "%")
}

fn days(set: &Set, i: usize) -> String {
    units::days(set.plan.settled_d.get(i).map_or(f64::NAN, |(likely, _)| *likely))
}
