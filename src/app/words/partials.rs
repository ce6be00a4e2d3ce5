//! How the partials of a string ring, in words.

use protocol::reply::Partial;

use super::naming::list;
use crate::units;

/// What takes most, in the legend.
#[must_use]
pub fn takes(most: &str) -> &str {
    match most {
        "bridge" => "the bridge takes most",
        "air" => "the air takes most",
        "bending" => "bending takes most",
        "string" => "the string’s own pull takes most",
        other => other,
    }
}

/// To what most of a partial goes, in a sentence.
fn goes(most: &str) -> &str {
    match most {
        "bridge" => "to the bridge",
        "air" => "to the air",
        "bending" => "into bending",
        "string" => "into the string’s own pull",
        other => other,
    }
}

/// The words at the end of a bar: `0.72 s, bridge`.
#[must_use]
pub fn label(p: &Partial) -> String {
    format!("{}, {}", units::with_unit(&units::significant(p.ring_s, 2), "s"), p.most)
}

/// How far a partial lies above its whole multiple, in cents.
#[must_use]
pub fn sharp(p: &Partial) -> String {
    if p.sharpness_cent < 0.05 { "under 0.1".to_owned() } else { units::fixed(p.sharpness_cent, 1) }
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
        [(most, ..)] => format!(
            "Each of the first {} partials of the {name} goes mostly {}",
            partials.len(),
            goes(most)
        ),
        runs if runs.len() <= 4 => {
            let parts: Vec<String> = runs
                .iter()
                .map(|(most, from, to)| {
                    let which =
                        if from == to { from.to_string() } else { format!("{from} to {to}") };
                    format!("{which} mostly {}", goes(most))
                })
                .collect();
            format!("Of the {name}’s partials go {}", list(&parts))
        }
        _ => {
            let count = |most: &str| partials.iter().filter(|p| p.most == most).count();
            let most = ["bridge", "air", "bending", "string"]
                .into_iter()
                .max_by_key(|most| count(most))
                .unwrap_or("bridge");
            format!(
                "Of the first {} partials of the {name}, {} go mostly {}",
                partials.len(),
                count(most),
                goes(most)
            )
        }
    }
}
