//! What are things called: notes, families, materials, constructions?

use protocol::request::{Construction, Core, Winding};

use super::say;
use super::speech;
use crate::components::section;
use crate::letters;
use crate::units;

/// A note as a player says it: `A` for `A4`, `F♯` for `F#2`.
#[must_use]
pub fn letter(note: &str) -> String {
    let name = note.trim_end_matches(|c: char| c.is_ascii_digit() || c == '-');
    let key = name.replace('#', "-sharp").replace('b', "-flat");
    speech::of_or_key("note", &key).to_owned()
}

/// What each string of a set is called: its letter, and where two share one, which of the two it is.
#[must_use]
pub fn letters<'a>(notes: impl IntoIterator<Item = &'a str>) -> Vec<String> {
    let notes: Vec<&str> = notes.into_iter().collect();
    let all: Vec<String> = notes.iter().map(|note| letter(note)).collect();
    all.iter()
        .enumerate()
        .map(|(i, own)| {
            let same: Vec<usize> = (0..all.len()).filter(|j| all[*j] == *own).collect();
            let place = same.iter().position(|j| *j == i).unwrap_or(0);
            let place = match (same.len(), place) {
                (1, _) => return own.clone(),
                (_, 0) => "high",
                (n, p) if p + 1 == n => "low",
                _ => "middle",
            };
            let octave = notes[i].trim_start_matches(|c: char| !c.is_ascii_digit());
            say!("note-of-several", place = place, letter = own, octave = octave)
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
            say!("list-and", first = first.join(", "), last = last.as_ref())
        }
    }
}

/// The first letter in upper case.
#[must_use]
pub fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| {
        [letters::capital(first)].into_iter().chain(chars).collect()
    })
}

/// The first letter in lower case, as within a list.
#[must_use]
pub fn within(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| {
        [letters::small(first)].into_iter().chain(chars).collect()
    })
}

/// A note's letter with the article that its name takes when spoken: an A, an E, an F; a D.
#[must_use]
pub fn a_letter(letter: &str) -> String {
    say!("a-letter", first = &letter[..letter.len().min(1)], letter = letter)
}

/// A sentence as the second part of another, after a colon.
#[must_use]
pub fn after_colon(sentence: &str) -> String {
    // English goes on small there, German begins anew.
    if say!("after-colon") == "small" { within(sentence) } else { sentence.to_owned() }
}

/// What a string is called within a sentence: `the A string`.
#[must_use]
pub fn the_string(name: &str) -> String {
    say!("the-string", name = name)
}

/// A family, as the word before the note: `a wound steel A`.
#[must_use]
pub fn family(key: &str) -> &str {
    speech::of_or_key("family", key)
}

/// What a family is, in a sentence's worth.
#[must_use]
pub fn family_is(key: &str) -> &str {
    speech::of_or_key("family-is", key)
}

/// A core's material.
#[must_use]
pub fn core_material(key: &str) -> &str {
    speech::of_or_key("material", key)
}

/// A winding's metal.
#[must_use]
pub fn metal(key: &str) -> &str {
    // What is bought has its metal in words, a construction by its key.
    speech::of("metal", &key.replace(' ', "-")).unwrap_or(key)
}

/// The core as one would describe it to a maker.
#[must_use]
pub fn core(core: &Core) -> String {
    let across = units::mm(core.diameter_m, 2 + i32::from(core.diameter_m < 1e-3));
    let material = core_material(&core.material);
    match core.build.as_str() {
        "strand" => {
            let (layout, in_wires) = match core.layout.as_deref() {
                Some("1x19") => ("nineteen", 5.0),
                Some("7x7") => ("rope", 9.0),
                _ => ("seven", 3.0),
            };
            let wire = units::mm(core.diameter_m / in_wires, 3);
            say!("core-strand", layout = layout, material = material, across = across, wire = wire)
        }
        "multifilament" => say!(
            "core-bundle",
            count = filaments(core),
            material = material,
            across = across,
            filament = units::mm(core.filament_m.unwrap_or(0.0), 3),
        ),
        "twisted" => {
            let twist = core.twist_deg.unwrap_or(0.0);
            say!(
                "core-twisted",
                material = material,
                across = across,
                twist = if twist >= 35.0 { "high" } else { "low" },
                degrees = units::fixed(twist, 0),
            )
        }
        _ => say!(
            "core-single",
            what = if core.material.contains("steel") { "wire" } else { "filament" },
            material = material,
            across = across,
        ),
    }
}

/// How many filaments a bundle has, to two digits: nobody counts them closer.
fn filaments(core: &Core) -> String {
    let count = section::filaments(core).0 as f64;
    let places = units::decimals(count, 2).unwrap_or(0).min(0);
    units::fixed(count, places)
}

/// One winding: `silver ribbon 0.050 mm thick`.
#[must_use]
pub fn winding(winding: &Winding) -> String {
    say!(
        "winding",
        metal = metal(&winding.metal),
        form = if winding.form == "round" { "round" } else { "flat" },
        thickness = units::mm(winding.thickness_m, 3),
    )
}

/// The windings from the inside out, or that there are none.
#[must_use]
pub fn windings(windings: &[Winding]) -> String {
    let all: Vec<String> = windings.iter().map(winding).collect();
    let joined = |inner: String, outer: String| say!("winding-then", inner = inner, outer = outer);
    all.into_iter().reduce(joined).unwrap_or_else(|| say!("winding-none").to_owned())
}

/// The string in short: `stranded steel, wound with silver`.
#[must_use]
pub fn short(family_key: &str, construction: &Construction) -> String {
    let outer = construction.windings.last().map(|w| metal(&w.metal));
    match outer {
        Some(metal) => say!("kind-outside", kind = family(family_key), metal = metal),
        None => family(family_key).to_owned(),
    }
}

/// What a portrait shows, for those who do not see it.
#[must_use]
pub fn portrait(name: &str, construction: &Construction) -> String {
    let across = units::mm(section::outer_mm(construction) / 1000.0, 2);
    let words = &construction.windings;
    let (core, note) = (core(&construction.core), picture_note(construction));
    if words.is_empty() {
        return say!("portrait-plain", name = name, across = across, core = core, note = note);
    }
    let wound = windings(words);
    say!("portrait-wound", name = name, across = across, core = core, wound = wound, note = note)
}

/// What in a portrait is a picture rather than a measure.
#[must_use]
pub fn picture_note(construction: &Construction) -> String {
    let core = &construction.core;
    match (core.build.as_str(), section::filaments(core).1) {
        ("multifilament", parts @ 2..) => format!(" {}", say!("portrait-part", parts = parts)),
        ("twisted", _) => format!(" {}", say!("portrait-gut")),
        _ => String::new(),
    }
}
