//! The kinds of set: what each is called, how usual it is, and how its best set compares with the chosen one.

use protocol::reply::{KindDifference, OtherKind, RuledOut, Set};
use strings::fit::summary::CLOSE_CALL;

use super::naming::list;
use super::{plan, property, say, speech};
use crate::detail_level::DetailLevel;
use crate::units;

/// Up to which lead another kind is said to lie a little behind, and up to which clearly; a judgement of words.
const LITTLE: f64 = 1.15;
const CLEARLY: f64 = 1.4;

/// What a shop calls a kind of set.
#[must_use]
pub fn name(key: &str, set: &Set, names: &[String]) -> String {
    let is_steel = |position: &str| match position {
        "violin-e" => true,
        "viola-a" => key.starts_with("steel-over"),
        _ => false,
    };
    let top = set.strings.iter().zip(names).filter(|(string, _)| is_steel(&string.position));
    let top: Vec<&String> = top.map(|(_, name)| name).collect();
    let steel = if top.is_empty() { "none" } else { "top" };
    let words = [("steel", steel.into()), ("top", list(&top).into())];
    speech::of_filled("set-kind", key, &words).unwrap_or_else(|| key.to_owned())
}

/// The kind of the chosen set, and its gauge.
#[must_use]
pub fn chosen(set: &Set, names: &[String]) -> String {
    let gauge = super::set::gauges(&super::set::chosen_gauges(set), names);
    say!("kind-chosen", kind = name(&set.kind, set, names), gauge = gauge)
}

/// The best set of other families, as the kind that it is: the one to weigh this set against.
#[must_use]
pub fn rival(set: &Set) -> Option<&OtherKind> {
    let families = super::set::other_families(set);
    set.other_kinds.iter().find(|kind| kind.families == families)
}

/// The kind of the second of two sets, and its gauge.
#[must_use]
pub fn second(set: &Set, names: &[String]) -> Option<String> {
    let gauge = super::set::gauges(&super::set::other_gauges(set), names);
    let kind = name(&rival(set)?.kind, set, names);
    Some(say!("kind-second", kind = kind, gauge = gauge))
}

/// What is said of another kind: how usual it is, whether it is there now, in what it differs, and how far behind it is.
#[must_use]
pub fn about(other: &OtherKind, names: &[String], depth: DetailLevel) -> Vec<String> {
    let mut sentences = vec![usual(other.usual_of_hundred)];
    if other.is_now {
        sentences.push(say!("kind-now").to_owned());
    }
    sentences.push(differs(&other.differences, names));
    sentences.push(lead(other, depth));
    sentences
}

/// How usual a kind is. The estimates are round: what is more than ten of a hundred is told to five.
fn usual(of_hundred: f64) -> String {
    if of_hundred < 1.0 {
        return say!("kind-rare").to_owned();
    }
    let rounded = if of_hundred < 10.0 { of_hundred } else { 5.0 * (of_hundred / 5.0).round() };
    say!("kind-usual", number = units::fixed(rounded, 0))
}

/// In what a kind differs from the chosen set.
fn differs(differences: &[KindDifference], names: &[String]) -> String {
    let mut found = Vec::new();
    for difference in differences {
        let Some(property) = property::of(&difference.property) else { continue };
        let sides = [(&difference.above, property.more()), (&difference.below, property.less())];
        found.extend(sides.into_iter().filter(|(strings, _)| !strings.is_empty()));
    }
    if found.is_empty() {
        return say!("kind-alike").to_owned();
    }
    say!("kind-differs", parts = on_strings(found, names))
}

/// Words with the strings of which they are true; words of the same strings stand together.
pub(super) fn on_strings<'a>(
    found: impl IntoIterator<Item = (&'a Vec<usize>, &'a str)>,
    names: &[String],
) -> String {
    let mut groups: Vec<(&[usize], Vec<&str>)> = Vec::new();
    for (strings, word) in found {
        match groups.iter_mut().find(|(known, _)| *known == strings.as_slice()) {
            Some((_, words)) => words.push(word),
            None => groups.push((strings, vec![word])),
        }
    }
    let part = |(strings, words): &(&[usize], Vec<&str>)| {
        let words = list(words);
        if strings.len() == names.len() {
            return say!("kind-differs-all", words = words);
        }
        let strings: Vec<&String> = strings.iter().filter_map(|i| names.get(*i)).collect();
        say!("kind-differs-on", strings = list(&strings), words = words)
    };
    groups.iter().map(part).collect::<Vec<_>>().join("; ")
}

/// How far behind the chosen set a kind is.
pub(super) fn lead(other: &OtherKind, depth: DetailLevel) -> String {
    let how = match other.lead {
        lead if lead < CLOSE_CALL => "level",
        lead if lead < LITTLE => "little",
        lead if lead < CLEARLY => "clearly",
        _ => "far",
    };
    if depth == DetailLevel::Words {
        return say!("kind-lead", how = how);
    }
    let (decimals, steps) = if how == "level" { (1, 10.0) } else { (0, 1.0) };
    let percent = (other.lead - 1.0) * 100.0;
    // The most that it can be is rounded up.
    let percent = if other.proven { percent } else { (percent * steps).ceil() / steps };
    let by = units::fixed(percent, decimals);
    let proven = if other.proven { "yes" } else { "no" };
    say!("kind-lead-by", how = how, proven = proven, by = units::with_unit(&by, "%"))
}

/// How many more kinds are folded away.
#[must_use]
pub fn more(count: usize) -> String {
    say!("kinds-more", count = count)
}

/// Why a kind is not possible here.
#[must_use]
pub fn ruled_out(one: &RuledOut, set: &Set, names: &[String]) -> String {
    let kind = name(&one.kind, set, names);
    match (one.string.and_then(|i| names.get(i)), &one.limit) {
        (Some(string), Some(limit)) => {
            let why = plan::limit(limit);
            say!("kind-ruled-out", kind = kind, name = string, limit = limit, why = why)
        }
        _ => say!("kind-too-heavy", kind = kind),
    }
}
