//! What are things called: notes, families, materials, constructions?

use protocol::request::{Construction, Core, Winding};

use super::speech;
use crate::components::section::{CoreSection, section};
use crate::units;

/// A note as a player says it: `A` for `A4`, `F♯` for `F#2`.
#[must_use]
pub fn letter(note: &str) -> String {
    note.trim_end_matches(|c: char| c.is_ascii_digit() || c == '-')
        .replace('#', "♯")
        .replace('b', "♭")
}

/// What each string of a set is called: its letter, and where two share one, which of the two it is.
#[must_use]
pub fn letters<'a>(notes: impl IntoIterator<Item = &'a str>) -> Vec<String> {
    let all: Vec<String> = notes.into_iter().map(letter).collect();
    all.iter()
        .enumerate()
        .map(|(i, own)| {
            let same: Vec<usize> = (0..all.len()).filter(|j| all[*j] == *own).collect();
            let place = same.iter().position(|j| *j == i).unwrap_or(0);
            match (same.len(), place) {
                (1, _) => own.clone(),
                (_, 0) => format!("high {own}"),
                (n, p) if p + 1 == n => format!("low {own}"),
                _ => format!("middle {own}"),
            }
        })
        .collect()
}

/// Words joined as in a sentence: `A, D and G`.
#[must_use]
pub fn list<T: AsRef<str>>(words: &[T]) -> String {
    match words {
        [] => String::new(),
        [one] => one.as_ref().to_owned(),
        [first @ .., last] => {
            let first: Vec<&str> = first.iter().map(AsRef::as_ref).collect();
            format!("{} and {}", first.join(", "), last.as_ref())
        }
    }
}

/// The first letter in upper case.
#[must_use]
pub fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| first.to_uppercase().chain(chars).collect())
}

/// The first letter in lower case, as within a list.
#[must_use]
pub fn within(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| first.to_lowercase().chain(chars).collect())
}

/// `a` or `an`, and the word.
#[must_use]
pub fn a(word: &str) -> String {
    let vowel = word.starts_with(['a', 'e', 'i', 'o', 'u', 'A', 'E', 'I', 'O', 'U']);
    format!("{} {word}", if vowel { "an" } else { "a" })
}

/// A note's letter with the article that its name takes when spoken: an A, an E, an F; a D.
#[must_use]
pub fn a_letter(letter: &str) -> String {
    format!("{} {letter}", if letter.starts_with(['A', 'E', 'F']) { "an" } else { "a" })
}

/// A family, as the word before the note: `a wound steel A`.
#[must_use]
pub fn family(key: &str) -> &str {
    match key {
        "plain-gut" => "plain gut",
        "wound-gut" => "wound gut",
        "plain-steel" => "plain steel",
        "wound-steel" => "wound steel",
        "stranded-steel" => "stranded steel",
        "synthetic" => "synthetic",
        "monofilament" => "single-filament",
        other => other,
    }
}

/// What a family is, in a sentence's worth.
#[must_use]
pub fn family_is(key: &str) -> &str {
    match key {
        "plain-gut" => "twisted gut with nothing round it",
        "wound-gut" => "twisted gut wound with metal",
        "plain-steel" => "one steel wire with nothing round it",
        "wound-steel" => "one steel wire wound with metal",
        "stranded-steel" => "a strand of fine steel wires wound with metal",
        "synthetic" => "a bundle of fine synthetic filaments wound with metal",
        "monofilament" => "one thick synthetic filament",
        other => other,
    }
}

/// A core's material.
#[must_use]
pub fn core_material(key: &str) -> &str {
    match key {
        "gut" => "gut",
        "spring-steel" => "spring steel",
        "stainless-steel" => "stainless steel",
        "polyamide" => "polyamide (nylon)",
        "polyester" => "polyester",
        "high-modulus-polymer" => "stiff composite fibre",
        "aramid" => "aramid",
        other => other,
    }
}

/// A winding's metal.
#[must_use]
pub fn metal(key: &str) -> &str {
    speech::of_or_key("metal", key)
}

/// The core as one would describe it to a maker.
#[must_use]
pub fn core(core: &Core) -> String {
    let across = units::mm(core.diameter_m, 2 + i32::from(core.diameter_m < 1e-3));
    let material = core_material(&core.material);
    match core.build.as_str() {
        "strand" => {
            let (layout, in_wires, laid) = match core.layout.as_deref() {
                Some("1x19") => ("19 wires", 5.0, "a strand of"),
                Some("7x7") => ("7 strands of 7 wires", 9.0, "a rope of"),
                _ => ("7 wires", 3.0, "a strand of"),
            };
            let wire = units::mm(core.diameter_m / in_wires, 3);
            format!("{laid} {layout}, {material}, {across} across, each wire {wire}")
        }
        "multifilament" => {
            let filament = units::mm(core.filament_m.unwrap_or(0.0), 3);
            let count = filaments(core);
            format!(
                "a bundle of about {count} filaments, {material}, {across} across, each filament {filament}"
            )
        }
        "twisted" => {
            let twist = core.twist_deg.unwrap_or(0.0);
            let how = if twist >= 35.0 { "high twist" } else { "low twist" };
            format!("twisted {material}, {across} across, {how} ({twist:.0}° at the surface)")
        }
        _ if core.material.contains("steel") => format!("one wire, {material}, {across} across"),
        _ => format!("one filament, {material}, {across} across"),
    }
}

/// How many filaments a bundle has, to two digits: nobody counts them closer.
fn filaments(core: &Core) -> String {
    let bare = Construction { core: core.clone(), windings: Vec::new() };
    match section(&bare).core {
        CoreSection::Filaments { count, .. } => {
            let count = count as f64;
            let places = units::decimals(count, 2).unwrap_or(0).min(0);
            units::fixed(count, places)
        }
        _ => "0".to_owned(),
    }
}

/// One winding: `silver ribbon 0.050 mm thick`.
#[must_use]
pub fn winding(winding: &Winding) -> String {
    let form = if winding.form == "round" { "round wire" } else { "flat ribbon" };
    format!("{} {form} {} thick", metal(&winding.metal), units::mm(winding.thickness_m, 3))
}

/// The windings from the inside out, or that there are none.
#[must_use]
pub fn windings(windings: &[Winding]) -> String {
    let all: Vec<String> = windings.iter().map(winding).collect();
    if all.is_empty() { "nothing".to_owned() } else { all.join(", then ") }
}

/// The string in short: `stranded steel, wound with silver`.
#[must_use]
pub fn short(family_key: &str, construction: &Construction) -> String {
    let outer = construction.windings.last().map(|w| metal(&w.metal));
    match outer {
        Some(metal) => format!("{}, {metal} outside", family(family_key)),
        None => family(family_key).to_owned(),
    }
}

/// What a portrait shows, for those who do not see it.
#[must_use]
pub fn portrait(name: &str, construction: &Construction) -> String {
    let across = units::mm(crate::components::section::outer_mm(construction) / 1000.0, 2);
    let wound = if construction.windings.is_empty() {
        "with nothing wound round it".to_owned()
    } else {
        format!("wound with {}", windings(&construction.windings))
    };
    format!(
        "Cross-section of {name}, to scale, {across} across. Core: {}; {wound}.{}",
        core(&construction.core),
        picture_note(construction)
    )
}

/// What in a portrait is a picture rather than a measure.
#[must_use]
pub fn picture_note(construction: &Construction) -> String {
    match section(construction).core {
        CoreSection::Filaments { parts, .. } if parts > 1 => {
            format!(" One part in {parts} of the filaments is drawn; the rest is alike.")
        }
        CoreSection::Gut { .. } => " The ribbons of gut are drawn by eye, not counted.".to_owned(),
        _ => String::new(),
    }
}
