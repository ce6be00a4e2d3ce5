//! Changes to a text: of its bytes, and of its tree.

use support::Seeded;

use crate::json::Json;

/// Values that no member expects, or that lie at an edge.
const VALUES: [&str; 34] = [
    "null",
    "true",
    "false",
    "0",
    "-0.0",
    "1",
    "-1",
    "0.5",
    "2",
    "3",
    "24",
    "1000000",
    "-9e99",
    "1e308",
    "1e999",
    "-1e999",
    "5e-324",
    "9007199254740993",
    "18446744073709551616",
    "NaN",
    "Infinity",
    "-Infinity",
    "\"\"",
    "\"0\"",
    "\"NaN\"",
    "\"\\u0000\"",
    "\"\\ud834\\udd1e\"",
    "[]",
    "{}",
    "[[]]",
    "[{}]",
    "[null]",
    "{\"ask\":\"fit\"}",
    "\"gut\"",
];

/// A text with one to four changes.
pub(crate) fn mutated(seeded: &mut Seeded, text: &str, others: &[(String, String)]) -> Vec<u8> {
    let mut tree = Json::parse(text);
    for _ in 0..=seeded.below(3) {
        if let Some(tree) = &mut tree {
            change_tree(seeded, tree, others);
        }
    }
    let mut bytes = tree.map_or_else(|| text.to_owned(), |tree| tree.text()).into_bytes();
    if seeded.below(4) == 0 {
        change_bytes(seeded, &mut bytes);
    }
    bytes
}

fn any_value(seeded: &mut Seeded) -> &'static str {
    VALUES[seeded.below(VALUES.len())]
}

fn change_tree(seeded: &mut Seeded, tree: &mut Json, others: &[(String, String)]) {
    let paths = tree.paths();
    let path = seeded.one_of(&paths).clone();
    let part = tree.at(&path);
    let raw = |raw: &str| Json::Raw(raw.to_owned());
    match (seeded.below(9), part) {
        (0, part) => *part = raw(any_value(seeded)),
        (1, part) => *part = Json::List(vec![part.clone()]),
        (2, part) => {
            // A part of another text.
            let mut other = Json::parse(&seeded.one_of(others).1).unwrap_or(raw("0"));
            let from = seeded.one_of(&other.paths()).clone();
            *part = other.at(&from).clone();
        }
        (3, Json::Object(members)) => {
            let name = seeded.one_of(&[
                "ask", "strings", "lay_deg", "colour", "keep", "x", "row", "weights", "",
            ]);
            members.push(((*name).to_owned(), raw(any_value(seeded))));
        }
        (4, Json::Object(members)) if !members.is_empty() => {
            let at = seeded.below(members.len());
            let member = members[at].clone();
            members.push(member);
        }
        (5, Json::Object(members)) if !members.is_empty() => {
            members.remove(seeded.below(members.len()));
        }
        (6, Json::List(entries)) if !entries.is_empty() => {
            let entry = seeded.one_of(entries).clone();
            let times = *seeded.one_of(&[1, 5, 100, 3000]);
            entries.extend(std::iter::repeat_n(entry, times));
        }
        (7, part) => {
            for _ in 0..*seeded.one_of(&[1, 3, 20, 200]) {
                let inner = std::mem::replace(part, raw("0"));
                *part = match seeded.below(2) {
                    0 => Json::List(vec![inner]),
                    _ => Json::Object(vec![("a".to_owned(), inner)]),
                };
            }
        }
        (_, Json::Raw(scalar)) => change_scalar(seeded, scalar),
        (_, part) => *part = raw(any_value(seeded)),
    }
}

fn change_scalar(seeded: &mut Seeded, scalar: &mut String) {
    if let Ok(number) = scalar.parse::<f64>() {
        let factor = *seeded.one_of(&[0.0, -1.0, 0.5, 0.999, 1.001, 2.0, 10.0, 1e-3, 1e300]);
        *scalar = format!("{:e}", number * factor);
    } else if scalar.starts_with('"') && seeded.below(8) == 0 {
        *scalar = format!("\"{}\"", "ä".repeat(*seeded.one_of(&[1, 100, 101, 20_000])));
    } else {
        *scalar = any_value(seeded).to_owned();
    }
}

fn change_bytes(seeded: &mut Seeded, bytes: &mut Vec<u8>) {
    let at = seeded.below(bytes.len());
    match seeded.below(5) {
        0 => bytes.truncate(at),
        1 => bytes[at] = seeded.below(256) as u8,
        2 => bytes.insert(at, seeded.below(256) as u8),
        3 => drop(bytes.remove(at)),
        _ => {
            let end = (at + seeded.below(40)).min(bytes.len());
            let slice = bytes[at..end].to_vec();
            bytes.splice(at..at, slice);
        }
    }
}
