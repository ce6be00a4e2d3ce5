//! Names of strings: which string of the set words mean.

use serde_json::Value;

use crate::claims::Check;
use crate::heard::{Agrees, Heard, holds, text};
use crate::marks::{Part, Said, all, flat, sole};

/// Names that say of which string the rest is.
#[rustfmt::skip]
pub(crate) const OF_NAMES: &[(&str, Check)] = &[
    ("note-*", a_name),
    ("the-string", a_name),
    ("a-letter", a_name),
    ("property-*", |h| holds(!h.tail("").ends_with(".more") && !h.tail("").ends_with(".less"))),
];

fn a_name(h: &mut Heard) -> Agrees {
    ["name", "letter", "first", "place", "octave"].into_iter().for_each(|place| h.skip(place));
    if h.strings().is_empty() {
        return Ok(());
    }
    let named = h.name(h.words)?;
    // Portraits stand in the order of the strings.
    let after = h.whose.filter(|_| h.place.within("portraits"));
    holds(after.is_none_or(|last| named > last) && h.at.is_none_or(|at| at == named))?;
    h.whose = Some(named);
    Ok(())
}

/// The name of a note's message, and its octave.
fn note(of: &Value) -> (String, &str) {
    let note = text(of);
    let end = note.find(|c: char| c == '-' || c.is_ascii_digit()).unwrap_or(note.len());
    let letter = note[..end].replace('#', "-sharp").replace('b', "-flat");
    (format!("note-{letter}"), &note[end..])
}

impl Heard<'_> {
    /// The name is that of the string that is told, where only its letter is said.
    pub(crate) fn own_letter(&self, words: &[Part]) -> Agrees {
        let letter = text(&self.string()?["note"]).chars().next();
        let told =
            all(words).into_iter().filter_map(|said| said.id.strip_prefix("note-")).next_back();
        holds(told.and_then(|id| id.chars().next()) == letter)
    }

    /// The string that words name: its letter, and where two share one, which of them it is.
    pub(crate) fn name(&self, words: &[Part]) -> Result<usize, String> {
        let strange = || format!("which string is {}?", flat(words));
        let mut said = sole(words).ok_or_else(strange)?;
        if let "the-string" | "a-letter" = said.id {
            let inside = said.place("name").or(said.place("letter"));
            said = sole(inside.unwrap_or_default()).ok_or_else(strange)?;
        }
        let notes: Vec<_> = self.strings().iter().map(|s| note(&s["note"])).collect();
        let of = |letter: &str| -> Vec<usize> {
            (0..notes.len()).filter(|i| notes[*i].0 == letter).collect()
        };
        if said.id != "note-of-several" {
            return match of(said.id)[..] {
                [only] => Ok(only),
                _ => Err(strange()),
            };
        }
        let letter = said.place("letter").and_then(sole).ok_or_else(strange)?;
        let among = of(letter.id);
        holds(among.len() > 1)?;
        let last = among.len() - 1;
        let found = match (said.choice("place"), said.place("octave").map(flat)) {
            (Some("high"), _) => among.first().copied(),
            (Some("low"), _) => among.last().copied(),
            (Some(_), _) => among.get(1).copied().filter(|_| last == 2),
            (_, Some(octave)) => among.into_iter().find(|i| notes[*i].1 == octave),
            _ => None,
        };
        found.ok_or_else(strange)
    }

    /// Every string that words name, in their order.
    pub(crate) fn names(&self, words: &[Part]) -> Result<Vec<usize>, String> {
        let mut told = Vec::new();
        for part in words {
            match part {
                Part::Said(said) if said.id.starts_with("note-") => {
                    told.push(self.name(std::slice::from_ref(part))?);
                }
                Part::Said(Said { parts, .. }) | Part::Place(_, parts) => {
                    told.extend(self.names(parts)?);
                }
                _ => {}
            }
        }
        Ok(told)
    }
}
