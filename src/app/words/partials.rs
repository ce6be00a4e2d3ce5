//! How the partials of a string ring, in words.

use protocol::reply::Partial;

use super::naming::list;
use super::{say, speech};
use crate::units;

/// What takes most, in the legend.
#[must_use]
pub fn takes(most: &str) -> &str {
    speech::of_or_key("takes", most)
}

/// To what most of a partial goes, in a sentence.
fn goes(most: &str) -> &str {
    speech::of_or_key("goes", most)
}

/// The words at the end of a bar: `0.72 s, bridge`.
#[must_use]
pub fn label(p: &Partial) -> String {
    let seconds = units::with_unit(&units::significant(p.ring_s, 2), "s");
    format!("{seconds}, {}", speech::of_or_key("loses", &p.most))
}

/// How far a partial lies above its whole multiple, in cents.
#[must_use]
pub fn sharp(p: &Partial) -> String {
    if p.sharpness_cent < 0.05 {
        say!("under", number = units::fixed(0.1, 1))
    } else {
        units::fixed(p.sharpness_cent, 1)
    }
}

/// Neighbouring partials that lose most to the same.
fn runs(partials: &[Partial]) -> Vec<(&str, u32, u32)> {
    let mut runs: Vec<(&str, u32, u32)> = Vec::new();
    for p in partials {
        match runs.last_mut() {
            Some(last) if last.0 == p.most => last.2 = p.n,
            _ => runs.push((&p.most, p.n, p.n)),
        }
    }
    runs
}

/// The takeaway of the partials: what takes most of which.
#[must_use]
pub fn title(partials: &[Partial], name: &str) -> String {
    let runs = runs(partials);
    match runs.as_slice() {
        [(most, ..)] => {
            say!("partials-one", count = partials.len(), name = name, goes = goes(most))
        }
        runs if runs.len() <= 4 => {
            let parts: Vec<String> = runs
                .iter()
                .map(|(most, from, to)| {
                    let range = || say!("range-of", low = from.to_string(), high = to.to_string());
                    let which = if from == to { from.to_string() } else { range() };
                    say!("partials-part", which = which, goes = goes(most))
                })
                .collect();
            say!("partials-few", name = name, parts = list(&parts))
        }
        _ => {
            let count = |most: &str| partials.iter().filter(|p| p.most == most).count();
            let most = ["bridge", "air", "bending", "string"]
                .into_iter()
                .max_by_key(|most| count(most))
                .unwrap_or("bridge");
            say!(
                "partials-many",
                all = partials.len(),
                name = name,
                count = count(most),
                goes = goes(most),
            )
        }
    }
}
