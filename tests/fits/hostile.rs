//! Answers that make the search hard, drawn from a seed: strings that stay beside neighbours they suit badly, families
//! asked for where they do not belong, odd notes, other tunings, weights and lengths at their ends.

use protocol::request::{AlsoTuned, Answers, StringAnswer, Today};
use serde_json::Value;
use support::Seeded;

use crate::anybody::{anybody, one_in, texts};

/// Answers of somebody who asks for something hard.
pub(crate) fn hostile(seeded: &mut Seeded, tables: &Value) -> Answers {
    let mut answers = anybody(seeded, tables);
    let most = strings_of(&answers, tables);
    let families = texts(&tables["words"]["family"]);
    answers.strings = (0..most).map(|i| string(seeded, &families, tables, &answers, i)).collect();
    if one_in(seeded, 3) {
        let semitones = Some(seeded.between(0.0, 5.0));
        answers.also_tuned = vec![AlsoTuned { semitones, ..AlsoTuned::default() }];
    }
    if one_in(seeded, 3) {
        answers.set_up = Some("light".to_owned());
    }
    if one_in(seeded, 2) {
        answers.aim = Some("whole-set".to_owned());
    }
    let attributes = texts(&tables["words"]["attribute"]);
    match seeded.below(8) {
        0 => {
            let weight = *seeded.one_of(&[0.0, 0.01, 10.0]);
            answers.weights = attributes.iter().map(|a| (a.clone(), weight)).collect();
        }
        1 => {
            answers.weights = attributes.iter().map(|a| (a.clone(), 0.0)).collect();
            answers.weights.insert(seeded.one_of(&attributes).clone(), 10.0);
        }
        2 | 3 => {
            let some = attributes.iter().filter(|_| seeded.bits().is_multiple_of(2)).cloned();
            let some: Vec<String> = some.collect();
            let weight = |seeded: &mut Seeded| seeded.between(0.0, 10.0);
            answers.weights = some.into_iter().map(|a| (a, weight(seeded))).collect();
        }
        _ => {}
    }
    answers
}

/// How many strings the tuning has.
fn strings_of(answers: &Answers, tables: &Value) -> usize {
    let by_key = |list: &Value, key: Option<&String>| -> Value {
        let list = list.as_array().unwrap();
        let named = list.iter().find(|entry| key.is_some_and(|key| entry["key"] == key.as_str()));
        named.unwrap_or(&list[0]).clone()
    };
    let instrument = by_key(&tables["instruments"], answers.instrument.as_ref());
    by_key(&instrument["tunings"], answers.tuning.as_ref())["notes"].as_array().unwrap().len()
}

fn string(
    seeded: &mut Seeded,
    families: &[String],
    tables: &Value,
    answers: &Answers,
    place: usize,
) -> StringAnswer {
    let classes = texts(&tables["words"]["gauge_class"]);
    let today = Today {
        family: Some(seeded.one_of(families).clone()),
        gauge_class: one_in(seeded, 2).then(|| seeded.one_of(&classes).clone()),
        ..Today::default()
    };
    let mut string = StringAnswer::default();
    match seeded.below(4) {
        0 => (string.keep, string.today) = (true, today),
        1 if one_in(seeded, 3) => string.family = Some(seeded.one_of(families).clone()),
        2 if one_in(seeded, 4) => string.note = note_near(seeded, tables, answers, place),
        _ => {}
    }
    string
}

/// A note a few semitones from the one that the tuning says.
fn note_near(
    seeded: &mut Seeded,
    tables: &Value,
    answers: &Answers,
    place: usize,
) -> Option<String> {
    const NAMES: [&str; 12] = ["C", "C#", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B"];
    let instruments = tables["instruments"].as_array()?;
    let instrument =
        instruments.iter().find(|i| i["key"].as_str() == answers.instrument.as_deref())?;
    let tunings = instrument["tunings"].as_array()?;
    let named = tunings.iter().find(|t| t["key"].as_str() == answers.tuning.as_deref());
    let note = named.unwrap_or(&tunings[0])["notes"][place].as_str()?;
    let (name, octave) = note.split_at(note.len() - 1);
    let at = NAMES.iter().position(|n| *n == name)? as i32 + seeded.below(7) as i32 - 3;
    let octave = octave.parse::<i32>().ok()? + at.div_euclid(12);
    Some(format!("{}{octave}", NAMES[at.rem_euclid(12) as usize]))
}
