//! What is fitted in common practice, situation by situation: `practice.tsv` says which family stands on which string,
//! `practice.json` what a person in that situation answers, and here each goes through the door.
//!
//! Agreement is counted over the rows in which practice is "nearly all" or "most": the family is the one named first or
//! second on every string of the row. Tags in brackets are checked where the reply tells of them and counted apart.

use std::collections::BTreeMap;

use protocol::reply::{Fit, FittedString, Report};
use serde_json::Value;
use strings::instrument::{Kind, VIOLIN};

use crate::fit_of;

const PRACTICE: &str = include_str!("practice.tsv");
const POSED: &str = include_str!("practice.json");

/// The least agreement, in percent.
const FLOOR: usize = 95;

/// A family as practice names it, with what is said of it in brackets.
#[derive(Clone, Debug, PartialEq)]
struct Named<'a> {
    family: &'a str,
    tags: Vec<&'a str>,
}

/// A row of the table.
struct Row<'a> {
    id: &'a str,
    situation: &'a str,
    positions: &'a str,
    expected: Vec<Named<'a>>,
    expected_text: &'a str,
    acceptable: Vec<Named<'a>>,
    refused: Vec<Named<'a>>,
    is_sure: bool,
}

/// What became of a string, from the best to the worst.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Met {
    First,
    Second,
    Acceptable,
    Other,
    Refused,
    Empty,
}

const ALL: [Met; 6] =
    [Met::First, Met::Second, Met::Acceptable, Met::Other, Met::Refused, Met::Empty];

/// Splits at commas and signs of rank that stand outside brackets.
fn named(text: &str) -> Vec<Named<'_>> {
    let mut depth = 0;
    let outside = |letter: char| {
        match letter {
            '[' => depth += 1,
            ']' => depth -= 1,
            _ => {}
        }
        depth == 0 && (letter == ',' || letter == '>')
    };
    let parts = text.split(outside).filter(|part| !part.is_empty());
    let one = |part| {
        let (family, tags) = str::split_once(part, '[').unwrap_or((part, ""));
        let tags = tags.trim_end_matches(']').split(',').filter(|tag| !tag.is_empty()).collect();
        Named { family, tags }
    };
    parts.map(one).collect()
}

fn rows() -> Vec<Row<'static>> {
    let lines = PRACTICE.lines().filter(|line| !line.starts_with('#')).skip(1);
    let row = |line: &'static str| {
        let cells: Vec<&str> = line.split('\t').collect();
        let [id, _, _, situation, positions, expected, acceptable, refused, _, sureness, _] =
            cells[..]
        else {
            panic!("{line}")
        };
        Row {
            id: id.split_once('.').unwrap().0,
            situation,
            positions,
            expected: named(expected),
            expected_text: expected,
            acceptable: named(acceptable),
            refused: named(refused),
            is_sure: matches!(sureness, "nearly_all" | "most"),
        }
    };
    lines.map(row).collect()
}

/// Which strings a row is about, 0 the highest, by the letters of their places.
pub(crate) fn strings_of(answers: &Value, positions: &str) -> Vec<usize> {
    let kind = answers["instrument"].as_str().and_then(Kind::of).unwrap_or(&VIOLIN);
    let tuning = answers["tuning"].as_str().and_then(|key| kind.tuning(key));
    let places = tuning.unwrap_or(&kind.tunings[0]).strings;
    let middle = places.len().div_ceil(2);
    match positions {
        "all" => return (0..places.len()).collect(),
        "upper" => return (0..middle).collect(),
        "lower" => return (middle..places.len()).collect(),
        _ => {}
    }
    // What a string is tuned to besides stands in round brackets.
    let letters: Vec<&str> =
        positions.split(',').map(|name| name.split('(').next().unwrap_or(name)).collect();
    if letters.len() == places.len() {
        return (0..places.len()).collect();
    }
    let of = |letter: &&str| {
        let ends = |place: &str| {
            place.rsplit('-').next().is_some_and(|end| end.eq_ignore_ascii_case(letter))
        };
        places.iter().position(|(_, place)| ends(place))
    };
    letters
        .iter()
        .map(|letter| of(letter).unwrap_or_else(|| panic!("{positions}: {letter}")))
        .collect()
}

/// Whether what is on the instrument stays at that place.
fn stays(fit: &Fit, i: usize) -> bool {
    let verdict = &fit.verdict;
    match verdict.answer.as_str() {
        "leave-it" | "fresh-same" | "luthier-first" => true,
        "one-string" if verdict.string.is_some() => verdict.string != Some(i),
        _ => fit.set.as_ref().is_some_and(|set| set.strings[i].standing != "new"),
    }
}

/// The string that is there afterwards: today's, as far as it is known, where it stays.
pub(crate) fn after(fit: &Fit, i: usize) -> Option<&Report> {
    let string: &FittedString = fit.set.as_ref()?.strings.get(i)?;
    Some(string.today.as_ref().filter(|_| stays(fit, i)).unwrap_or(&string.report))
}

fn is_of(report: &Report, named: &Named) -> bool {
    match named.family {
        "solid_steel" => matches!(report.family.as_str(), "plain-steel" | "wound-steel"),
        "rope_steel" => report.family == "stranded-steel",
        "synthetic" => matches!(report.family.as_str(), "synthetic" | "monofilament"),
        "plain_gut" => report.family == "plain-gut",
        "wound_gut" => report.family == "wound-gut",
        other => panic!("{other} is no family of common practice"),
    }
}

/// Whether a string is what a tag says; none where the reply does not tell, or where the tag names strings.
fn holds(tag: &str, string: &FittedString, report: &Report) -> Option<bool> {
    let class = string.shopping.gauge_class.as_str();
    let metal = report.construction.windings.last().map_or("", |winding| winding.metal.as_str());
    if let Some(metals) = tag.strip_suffix("_wound").filter(|metals| *metals != "open") {
        return Some(match metals.strip_prefix("not_") {
            Some(other) => !metal.contains(other),
            None => metals.split("_or_").any(|one| metal.contains(one)),
        });
    }
    match tag {
        "wound" => Some(report.family == "wound-steel"),
        "plain" | "plain_other_gauge" => Some(report.family == "plain-steel"),
        "light" | "low_tension" => Some(class == "light"),
        "heavy" => Some(class == "heavy"),
        _ => None,
    }
}

/// Whether a named family is meant for this string: a tag of capitals names the strings.
fn is_meant(named: &Named, answers: &Value, i: usize) -> bool {
    let is_place = |tag: &&&str| tag.chars().all(|letter| letter.is_ascii_uppercase());
    let mut places = named.tags.iter().filter(is_place).peekable();
    places.peek().is_none() || places.any(|place| strings_of(answers, place).contains(&i))
}

/// What became of one string of a row, and whether the tags that can be checked hold.
fn met(row: &Row, answers: &Value, fit: &Fit, i: usize) -> (Met, Option<bool>) {
    let report = after(fit, i);
    let is = |named: &Named| match named.family {
        "keep_current" => stays(fit, i),
        _ => is_meant(named, answers, i) && report.is_some_and(|report| is_of(report, named)),
    };
    let tags = |named: &Named| -> Vec<bool> {
        let string = fit.set.as_ref().map(|set| &set.strings[i]);
        let told = string.zip(report);
        let told =
            told.map(|(s, r)| named.tags.iter().filter_map(|tag| holds(tag, s, r)).collect());
        told.unwrap_or_default()
    };
    if let Some(rank) = row.expected.iter().position(is) {
        let told: Vec<Vec<bool>> = row.expected.iter().filter(|n| is(n)).map(tags).collect();
        let checked = told.iter().any(|tags| !tags.is_empty());
        let all = told.iter().any(|tags| tags.iter().all(|held| *held));
        return (if rank == 0 { Met::First } else { Met::Second }, checked.then_some(all));
    }
    let met = if row.acceptable.iter().any(is) {
        Met::Acceptable
    } else if report.is_none() {
        Met::Empty
    } else if row.refused.iter().any(|named| {
        // A tag that cannot be checked refuses nothing.
        is(named) && tags(named).len() == named.tags.len() && tags(named).iter().all(|held| *held)
    }) {
        Met::Refused
    } else {
        Met::Other
    };
    (met, None)
}

/// What stands over the rows that the page shows.
const PAGE_HEAD: &str = "# Golden file, our own output: ROPEWALK_WRITE=1 cargo test -p tests --test expert common_practice\n\
    # situation, strings, what common practice fits (no source), what is told, how it was met\n";

/// A row as the page shows it: families once each, without what is said of them in brackets.
fn for_the_page(row: &Row, got: &[&str], worst: Met) -> String {
    fn once<'a>(words: impl Iterator<Item = &'a str>) -> String {
        let mut once: Vec<&str> = Vec::new();
        words.for_each(|word| {
            if !once.contains(&word) {
                once.push(word);
            }
        });
        once.join(" ")
    }
    let practice = once(row.expected.iter().map(|named| named.family));
    let told = once(got.iter().copied().filter(|family| *family != "-"));
    let met = format!("{worst:?}").to_lowercase();
    let strings = row.positions.replace(',', ", ");
    format!("{}\t{strings}\t{practice}\t{told}\t{met}\n", row.situation)
}

#[test]
fn common_practice_is_met() {
    let file: Value = serde_json::from_str(POSED).unwrap();
    let (posed, left) = (&file["posed"], &file["not_posed"]);
    let rows = rows();
    let mut fits: BTreeMap<&str, Fit> = BTreeMap::new();
    for row in &rows {
        let is_left = left[row.id].as_str().is_some_and(|why| !why.is_empty());
        assert_ne!(posed[row.id].is_object(), is_left, "{}: posed, or said why not", row.id);
        if !is_left {
            fits.entry(row.id).or_insert_with(|| fit_of(&posed[row.id]));
        }
    }
    let (mut sure, mut all) = (BTreeMap::new(), BTreeMap::new());
    let mut page = PAGE_HEAD.to_owned();
    let (mut tags_held, mut tags_checked) = (0, 0);
    for row in rows.iter().filter(|row| fits.contains_key(row.id)) {
        let (answers, fit) = (&posed[row.id], &fits[row.id]);
        let strings = strings_of(answers, row.positions);
        let each: Vec<_> = strings.iter().map(|i| met(row, answers, fit, *i)).collect();
        let worst = each.iter().map(|(met, _)| *met).max().unwrap();
        let tags: Vec<bool> = each.iter().filter_map(|(_, tags)| *tags).collect();
        tags_checked += usize::from(!tags.is_empty());
        tags_held += usize::from(!tags.is_empty() && tags.iter().all(|held| *held));
        *all.entry(worst).or_insert(0) += 1;
        if row.is_sure {
            *sure.entry(worst).or_insert(0) += 1;
        }
        let got: Vec<&str> =
            strings.iter().map(|i| after(fit, *i).map_or("-", |r| r.family.as_str())).collect();
        if row.is_sure {
            page += &for_the_page(row, &got, worst);
        }
        support::tell(&format!(
            "{:4} {:60.60} {:8.8} {:40.40} {:50} {:14} {worst:?}{}{}",
            row.id,
            row.situation,
            row.positions,
            row.expected_text,
            got.join(","),
            fit.verdict.answer,
            if row.is_sure { "" } else { " (divided)" },
            if tags.contains(&false) { " (not as tagged)" } else { "" },
        ));
    }
    let line = |counts: &BTreeMap<Met, usize>| {
        let count = |met: &Met| counts.get(met).copied().unwrap_or_default();
        ALL.iter().map(|met| format!("{met:?} {}", count(met))).collect::<Vec<_>>().join(", ")
    };
    let agreed = [Met::First, Met::Second].iter().filter_map(|met| sure.get(met)).sum::<usize>();
    let of: usize = sure.values().sum();
    support::tell(&format!("where practice is sure: {}", line(&sure)));
    support::tell(&format!("everywhere: {}; tags {tags_held} of {tags_checked}", line(&all)));
    support::tell(&format!("{agreed} of {of} sure rows agree, {} of 100", 100 * agreed / of));
    assert!(100 * agreed >= FLOOR * of, "{agreed} of {of} rows agree");
    assert_eq!(sure.get(&Met::Refused), None, "practice refuses what is told");
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../src/app/words/practice.tsv");
    if std::env::var_os("ROPEWALK_WRITE").is_some() {
        std::fs::write(path, &page).unwrap();
    }
    let shown = std::fs::read_to_string(path).unwrap();
    assert!(shown == page, "the page shows other rows: ROPEWALK_WRITE=1 writes them anew");
}
