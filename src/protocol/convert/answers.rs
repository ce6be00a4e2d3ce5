//! What a person says, from words and plain numbers to the model's types.

use strings::construction::Family;
use strings::error::{self, Fault};
use strings::fit::answers::{self as said, Answers};
use strings::fit::desirability::Attribute;
use strings::instrument::{Kind, VIOLIN};
use strings::material;
use strings::pitch::Note;
use strings::quantity::{Hertz, Metre};

use super::Faults;
use crate::allowed::{self, MOST_TUNINGS, one_of};
use crate::request;

/// Reads the questions with a plain answer.
macro_rules! read_plain {
    (
        words { $($(#[$about_word:meta])* $word:ident: $type:ident $odds:tt,)* }
        numbers { $($(#[$about_number:meta])* $number:ident: $bound:ident,)* }
        flags { $($(#[$about_flag:meta])* $flag:ident: $variant:ident,)* }
    ) => {
        fn plain(wire: &request::Answers, faults: &mut Faults) -> Answers {
            Answers {
                $($word: faults.word(concat!("answers.", stringify!($word)), wire.$word.as_ref(), said::$type::parse),)*
                $($number: faults.optional(concat!("answers.", stringify!($number)), wire.$number, error::$bound),)*
                $($flag: wire.$flag,)*
                ..Answers::default()
            }
        }
    };
}
strings::questions!(read_plain);

/// Reads the answers.
pub(crate) fn answers(wire: &request::Answers) -> Result<Answers, Vec<Fault>> {
    let mut faults = Faults::default();
    let r = &mut faults;
    let instrument = r.word("answers.instrument", wire.instrument.as_ref(), Kind::of);
    // Sizes and tunings belong to an instrument: the one that is assumed when none is named.
    let kind = instrument.unwrap_or(&VIOLIN);
    let size = r.text(
        "answers.size",
        wire.size.as_ref(),
        |key| kind.size(key),
        || one_of(&kind.sizes.iter().map(|s| s.key).collect::<Vec<_>>()),
    );
    let tuning = r.text(
        "answers.tuning",
        wire.tuning.as_ref(),
        |key| kind.tuning(key),
        || one_of(&kind.tunings.iter().map(|t| t.key).collect::<Vec<_>>()),
    );
    let plain = plain(wire, r);
    let most = tuning.unwrap_or(&kind.tunings[0]).strings.len();
    let given = r.list("answers.strings", &wire.strings, most, "strings in this tuning");
    let a4 = Hertz::new(wire.a4_hz.unwrap_or(440.0));
    let strings = given.iter().enumerate();
    let strings = strings.map(|(i, string)| self::string(r, i, string, a4, plain.now)).collect();
    let length =
        r.optional("answers.sounding_length_m", wire.sounding_length_m, kind.length_bound());
    let answers = Answers {
        instrument,
        size,
        sounding_length: length.map(Metre::new),
        tuning,
        a4: r.optional("answers.a4_hz", wire.a4_hz, error::A4).map(Hertz::new),
        also_tuned: also_tuned(r, &wire.also_tuned),
        strings,
        bothers: bothers(r, "answers.bothers", &wire.bothers),
        wishes: wishes(r, &wire.wishes),
        weights: weights(r, wire),
        ..plain
    };
    if faults.0.is_empty() { Ok(answers) } else { Err(in_order(faults.0)) }
}

/// Faults in the order in which a request has its members.
fn in_order(mut faults: Vec<Fault>) -> Vec<Fault> {
    faults.sort_by_key(|fault| {
        let member = fault.field.trim_start_matches("answers.");
        let member = member.split(['.', '[']).next().unwrap_or_default();
        request::Answers::MEMBERS.iter().position(|name| *name == member)
    });
    faults
}

/// Reads what is said of one string, 0 the highest.
fn string(
    r: &mut Faults,
    i: usize,
    wire: &request::StringAnswer,
    a4: Hertz,
    now: Option<said::Now>,
) -> said::StringAnswer {
    let field = |name: &str| format!("answers.strings[{i}].{name}");
    let note = r.text(&field("note"), wire.note.as_ref(), Note::parse, || {
        "a note in scientific pitch: A4, F#1, Bb3".to_owned()
    });
    if let Some(note) = note {
        r.number(&field("note"), note.frequency(a4).get(), error::PITCH);
    }
    let family = r.word(&field("family"), wire.family.as_ref(), Family::parse);
    let today = today(r, &field("today"), &wire.today);
    if wire.keep && today.family.is_none() && now.is_none() {
        r.0.push(Fault::new(
            field("today.family"),
            "nothing",
            "a family, or answers.now for the whole set: what is to stay must be known",
        ));
    }
    let bothers = bothers(r, &field("bothers"), &wire.bothers);
    let most_tension =
        r.optional(&field("most_tension_n"), wire.most_tension_n, error::MOST_TENSION);
    said::StringAnswer { note, family, today, bothers, keep: wire.keep, most_tension }
}

/// Reads what is known of the string that is there now.
fn today(r: &mut Faults, field: &str, wire: &request::Today) -> said::Today {
    let at = |name: &str| format!("{field}.{name}");
    said::Today {
        family: r.word(&at("family"), wire.family.as_ref(), Family::parse),
        gauge_class: r.word(&at("gauge_class"), wire.gauge_class.as_ref(), said::GaugeClass::parse),
        outer_metal: r.word(&at("outer_metal"), wire.outer_metal.as_ref(), material::metal_of),
        age_months: r.optional(&at("age_months"), wire.age_months, error::AGE_MONTHS),
    }
}

/// Reads a list of what bothers.
fn bothers(r: &mut Faults, field: &str, words: &[String]) -> Vec<said::Bother> {
    let mut read = Vec::new();
    for (i, word) in r.list(field, words, said::Bother::ALL.len(), "complaints").iter().enumerate()
    {
        let field = format!("{field}[{i}]");
        if words[..i].contains(word) {
            r.0.push(Fault::new(&field, format!("\"{word}\""), "each complaint once"));
        }
        read.extend(r.word(&field, Some(word), said::Bother::parse));
    }
    read
}

/// Reads the other pitches at which the same strings are used.
fn also_tuned(r: &mut Faults, wire: &[request::AlsoTuned]) -> Vec<said::AlsoTuned> {
    let mut read = Vec::new();
    let given = r.list("answers.also_tuned", wire, MOST_TUNINGS, "other tunings");
    for (i, tuned) in given.iter().enumerate() {
        let field = format!("answers.also_tuned[{i}]");
        if tuned.a4_hz.is_none() && tuned.semitones.is_none() {
            r.0.push(Fault::new(&field, "nothing", "a4_hz, semitones or both"));
        }
        let a4 = r.optional(&format!("{field}.a4_hz"), tuned.a4_hz, error::A4);
        let semitones = r.optional(&format!("{field}.semitones"), tuned.semitones, error::RETUNING);
        read.push(said::AlsoTuned { a4: a4.map(Hertz::new), semitones: semitones.unwrap_or(0.0) });
    }
    read
}

fn wishes(r: &mut Faults, wire: &request::Wishes) -> said::Wishes {
    let mut wish =
        |name: &str, value: f64| r.number(&format!("answers.wishes.{name}"), value, error::WISH);
    said::Wishes {
        colour: wish("colour", wire.colour),
        brightness: wish("brightness", wire.brightness),
        power: wish("power", wire.power),
        feel: wish("feel", wire.feel),
        response: wish("response", wire.response),
    }
}

fn weights(r: &mut Faults, wire: &request::Answers) -> Vec<(Attribute, f64)> {
    let mut weights = Vec::new();
    for (key, value) in &wire.weights {
        let value = r.number(&format!("answers.weights.{key}"), *value, error::WEIGHT);
        match Attribute::parse(key) {
            Some(attribute) => weights.push((attribute, value)),
            None => {
                let allowed = one_of(&allowed::words("attribute"));
                r.0.push(Fault::new("answers.weights", format!("\"{key}\""), allowed));
            }
        }
    }
    weights
}
