//! Anybody: answers drawn from a seed, each question answered or not.

use protocol::request::{AlsoTuned, Answers, StringAnswer, Today, Wishes};
use serde_json::Value;
use support::Seeded;

/// The tables, as the door gives them.
pub(crate) fn tables() -> Value {
    serde_json::from_str(&protocol::answer(r#"{"ask":"tables"}"#)).unwrap()
}

/// Half the time one of the words, else "I don't know".
fn perhaps(seeded: &mut Seeded, words: &[String]) -> Option<String> {
    seeded.bits().is_multiple_of(2).then(|| seeded.one_of(words).clone())
}

pub(crate) fn one_in(seeded: &mut Seeded, count: u64) -> bool {
    seeded.bits().is_multiple_of(count)
}

pub(crate) fn texts(value: &Value) -> Vec<String> {
    value.as_array().unwrap().iter().map(|v| v.as_str().unwrap().to_owned()).collect()
}

/// Answers of a random person with a random instrument: every word that the tables list can come up.
pub(crate) fn anybody(seeded: &mut Seeded, tables: &Value) -> Answers {
    let word = |question: &str| texts(&tables["words"][question]);
    let instruments = tables["instruments"].as_array().unwrap();
    let instrument = &instruments[seeded.below(instruments.len())];
    let keys = |list: &Value| -> Vec<String> {
        list.as_array()
            .unwrap()
            .iter()
            .map(|entry| entry["key"].as_str().unwrap().to_owned())
            .collect()
    };
    let size = seeded.below(instrument["sizes"].as_array().unwrap().len());
    let range = &instrument["sizes"][size]["range_m"];
    let load = instrument["usual_load_n"][1].as_f64().unwrap();
    let tuning = perhaps(seeded, &keys(&instrument["tunings"]));
    let wish =
        |seeded: &mut Seeded| if one_in(seeded, 2) { 0.0 } else { seeded.between(-2.0, 2.0) };
    let families = word("family");
    let mut strings = Vec::new();
    if one_in(seeded, 12) {
        strings.push(StringAnswer {
            family: Some(seeded.one_of(&families).clone()),
            ..StringAnswer::default()
        });
    }
    if one_in(seeded, 3) {
        let more = 1 + seeded.below(4);
        strings.extend((0..more).map(|_| string_of(seeded, tables)));
        strings.truncate(3);
    }
    // These are drawn by themselves, so that who was asked before is asked the rest as before.
    let more = &mut Seeded::new(seeded.clone().bits());
    for string in &mut strings {
        string.most_tension_n = one_in(more, 20).then(|| more.between(20.0, 300.0));
    }
    let also_tuned = one_in(seeded, 8).then(|| AlsoTuned {
        a4_hz: one_in(seeded, 2).then(|| seeded.between(392.0, 466.0)),
        semitones: Some(seeded.between(-3.0, 3.0)),
    });
    Answers {
        aim: perhaps(seeded, &word("aim")),
        also_tuned: also_tuned.into_iter().collect(),
        must_settle: one_in(seeded, 8),
        instrument: Some(instrument["key"].as_str().unwrap().to_owned()),
        size: Some(instrument["sizes"][size]["key"].as_str().unwrap().to_owned()),
        sounding_length_m: one_in(seeded, 3)
            .then(|| seeded.between(range[0].as_f64().unwrap(), range[1].as_f64().unwrap())),
        tuning,
        a4_hz: one_in(seeded, 3).then(|| seeded.between(392.0, 466.0)),
        temperament: perhaps(seeded, &word("temperament")),
        strings,
        set_up: perhaps(seeded, &word("set_up")),
        now: perhaps(seeded, &word("now")),
        age_months: one_in(seeded, 2).then(|| seeded.between(0.0, 60.0)),
        bothers: perhaps(seeded, &word("bothers")).into_iter().collect(),
        wishes: Wishes {
            colour: wish(seeded),
            brightness: wish(seeded),
            power: wish(seeded),
            feel: wish(seeded),
            response: wish(seeded),
        },
        music: perhaps(seeded, &word("music")),
        played: perhaps(more, &word("played")),
        ring: perhaps(more, &word("ring")),
        amplified: one_in(more, 4).then(|| more.one_of(&word("amplified")).clone()),
        belongs_to: perhaps(more, &word("belongs_to")),
        tuned_so: perhaps(more, &word("tuned_so")),
        most_load_n: one_in(more, 10).then(|| load * more.between(0.8, 1.3)),
        level: perhaps(seeded, &word("level")),
        pegs: perhaps(seeded, &word("pegs")),
        tuners: perhaps(seeded, &word("tuners")),
        who_tunes: perhaps(seeded, &word("who_tunes")),
        room: perhaps(seeded, &word("room")),
        concert_days: one_in(seeded, 2).then(|| seeded.between(0.0, 90.0)),
        budget: perhaps(seeded, &word("budget")),
        nickel_allergy: one_in(seeded, 6),
        acid_sweat: one_in(seeded, 6),
        animal_free: one_in(seeded, 6),
        hand_pain: one_in(seeded, 8),
        gut_to_its_limit: one_in(seeded, 10),
        weights: std::collections::BTreeMap::new(),
    }
}

/// What a random person says of one string.
fn string_of(seeded: &mut Seeded, tables: &Value) -> StringAnswer {
    let word = |question: &str| texts(&tables["words"][question]);
    let metals: Vec<String> = tables["winding_metals"]
        .as_array()
        .unwrap()
        .iter()
        .map(|metal| metal["key"].as_str().unwrap().to_owned())
        .collect();
    let today = Today {
        family: perhaps(seeded, &word("family")),
        gauge_class: perhaps(seeded, &word("gauge_class")),
        outer_metal: perhaps(seeded, &metals),
        age_months: one_in(seeded, 2).then(|| seeded.between(0.0, 60.0)),
    };
    StringAnswer {
        keep: today.family.is_some() && one_in(seeded, 3),
        bothers: perhaps(seeded, &word("bothers")).into_iter().collect(),
        today,
        ..StringAnswer::default()
    }
}
