//! What the page reads is what the model wrote, and what cannot be read is named by its place.

use std::collections::BTreeSet;

use protocol::document::{self, Document, Fitting, KeptString, Typed};
use protocol::reply::Reply;
use protocol::request::{AlsoTuned, Answers, FitRequest, Request, StringAnswer, Today, Wishes};
use serde_json::{Value, json};
use strings::fit::answers::WORD_QUESTIONS;

/// Requests whose replies hold every type of a reply.
fn requests() -> Vec<Value> {
    let plain =
        json!({ "core": { "material": "spring-steel", "build": "solid", "diameter_m": 0.00026 } });
    let wound = json!({
        "core": { "material": "polyamide", "build": "multifilament", "diameter_m": 0.00058, "filament_m": 0.000025,
            "fill": 0.7, "twist_deg": 12 },
        "windings": [{ "metal": "aluminium", "form": "flat", "thickness_m": 0.00007 }],
    });
    let setting = json!({ "sounding_length_m": 0.328, "pitch_hz": 659.26 });
    let player = json!([{ "construction": plain, "setting": setting }]);
    let bothered = json!({
        "now": "synthetic", "age_months": 14, "bothers": ["too-bright"], "wishes": { "colour": 1 }, "concert_days": 21,
        "strings": [{ "bothers": ["whistles"] }, { "today": { "family": "wound-gut" } }],
    });
    let impossible = json!({ "animal_free": true, "strings": [{ "family": "plain-gut" }] });
    vec![
        json!({ "ask": "report", "construction": wound, "setting": setting }),
        json!({ "ask": "compare", "this": wound, "other": plain, "setting": setting }),
        json!({ "ask": "stretch", "pull_m": 0.001, "strings": player }),
        json!({ "ask": "year", "strings": player }),
        json!({ "ask": "place", "answers": { "instrument": "cello" }, "string": 1 }),
        json!({ "ask": "fit", "answers": bothered }),
        json!({ "ask": "fit", "answers": {} }),
        json!({ "ask": "fit", "answers": impossible }),
        json!({ "ask": "certainty", "answers": { "instrument": "viola" } }),
        json!({ "ask": "tables" }),
        json!({ "ask": "bow-map", "map": "place", "instrument": "violin", "count": 4, "row": 2, "construction": plain,
            "setting": setting }),
        json!({ "ask": "bow-map", "map": "window", "instrument": "violin", "construction": plain, "setting": setting }),
        json!({ "ask": "sound", "piece": "pizzicato", "instrument": "violin", "strings": player }),
        json!({ "ask": "fit", "answers": { "a4_hz": 500 } }),
    ]
}

/// The replies; of a sound only the first samples, which are all alike.
fn replies() -> Vec<Value> {
    let shortened = |request: &Value| {
        let mut reply: Value =
            serde_json::from_str(&protocol::answer(&request.to_string())).unwrap();
        if let Some(samples) = reply.get_mut("samples").and_then(Value::as_array_mut) {
            assert!(samples.len() > 10_000 && samples.iter().any(|s| s.as_f64() > Some(0.01)));
            samples.drain(..samples.len() / 8);
            samples.truncate(8);
        }
        reply
    };
    requests().iter().map(shortened).collect()
}

/// The steps that lead to a value.
#[derive(Clone)]
enum Step {
    Member(String),
    Entry(usize),
}

/// Every value in a tree but the tree itself, by the steps that lead to it.
fn places(value: &Value, way: &mut Vec<Step>, found: &mut Vec<Vec<Step>>) {
    let steps: Vec<(Step, &Value)> = match value {
        Value::Object(members) => {
            members.iter().map(|(name, member)| (Step::Member(name.clone()), member)).collect()
        }
        Value::Array(list) => list.iter().enumerate().map(|(i, v)| (Step::Entry(i), v)).collect(),
        _ => return,
    };
    for (step, part) in steps {
        way.push(step);
        found.push(way.clone());
        places(part, way, found);
        way.pop();
    }
}

/// As an error names it; entries of a list by their number, or all alike.
fn name(way: &[Step], numbered: bool) -> String {
    let step = |step: &Step| match step {
        Step::Member(name) => format!(".{name}"),
        Step::Entry(i) if numbered => format!("[{i}]"),
        Step::Entry(_) => "[]".to_owned(),
    };
    way.iter().map(step).collect::<String>().trim_start_matches('.').to_owned()
}

fn at<'a>(tree: &'a mut Value, way: &[Step]) -> &'a mut Value {
    way.iter().fold(tree, |value, step| match step {
        Step::Member(name) => &mut value[name],
        Step::Entry(i) => &mut value[*i],
    })
}

/// What is written of what was read.
fn reread(tree: &Value) -> Result<Value, String> {
    let reply = Reply::read(&tree.to_string()).map_err(|e| e.to_string())?;
    Ok(serde_json::to_value(reply).unwrap())
}

#[test]
fn every_reply_reads_back_as_it_was_written() {
    for request in requests() {
        let text = protocol::answer(&request.to_string());
        let reply = Reply::read(&text).unwrap_or_else(|e| panic!("{request}: {e}"));
        assert!(serde_json::to_string(&reply).unwrap() == text, "{request} reads otherwise");
    }
}

#[test]
fn no_type_of_a_reply_is_missing_here() {
    fn objects(value: &Value, met: &mut Vec<BTreeSet<String>>) {
        match value {
            Value::Object(members) => {
                met.push(members.keys().cloned().collect());
                members.values().for_each(|member| objects(member, met));
            }
            Value::Array(list) => list.iter().for_each(|entry| objects(entry, met)),
            _ => {}
        }
    }
    let mut met = Vec::new();
    replies().iter().for_each(|reply| objects(reply, &mut met));
    let schema = protocol::schema();
    let types = schema["reply"]["$defs"].as_object().unwrap();
    assert!(types.len() > 50, "{} types", types.len());
    for (name, of) in types {
        let Some(members) = of["properties"].as_object() else { continue };
        let needed = of["required"].as_array().into_iter().flatten().filter_map(Value::as_str);
        let needed: Vec<_> = needed.collect();
        assert!(
            met.iter().any(|object| {
                needed.iter().all(|name| object.contains(*name))
                    && object.iter().all(|name| name == "reply" || members.contains_key(name))
            }),
            "no reply here holds a {name}: ask for one"
        );
    }
}

#[test]
fn what_is_missing_or_of_another_kind_is_named_by_its_place() {
    // What a request may leave out has a value in the schema, in a reply that repeats it as well.
    let schema = protocol::schema();
    let types = schema["reply"]["$defs"].as_object().unwrap().values();
    let members = types.filter_map(|of| of["properties"].as_object()).flatten();
    let may_lack: BTreeSet<_> = members
        .filter(|(_, of)| of.get("default").is_some())
        .map(|(name, _)| name.clone())
        .collect();
    let mut tried = 0;
    let mut seen = BTreeSet::new();
    for reply in replies() {
        let mut all = Vec::new();
        places(&reply, &mut Vec::new(), &mut all);
        // Strings are many and alike: of members of one name in members of one name, the last is broken.
        all.reverse();
        all.retain(|way| seen.insert(name(&way[way.len().saturating_sub(3)..], false)));
        for way in &all {
            let place = name(way, true);
            tried += 1;
            let mut broken = reply.clone();
            let value = at(&mut broken, way);
            // A reply that holds a list where it takes a word or a number, or a number where it takes more.
            *value = if value.is_object() || value.is_array() { json!(7) } else { json!([{}]) };
            let error = reread(&broken).expect_err(&place);
            assert!(error.starts_with(&place), "{place}: {error}");

            let (Step::Member(last), around) = way.split_last().unwrap() else { continue };
            let mut lacking = reply.clone();
            at(&mut lacking, around).as_object_mut().unwrap().remove(last);
            match reread(&lacking) {
                Err(error) => assert_eq!(error, format!("{place} is missing")),
                // A name in a table may be missing, and where nothing may stand, nothing does.
                Ok(read) => {
                    let mut empty = reply.clone();
                    *at(&mut empty, way) = Value::Null;
                    let is_known = read == lacking || read == empty || may_lack.contains(last);
                    assert!(is_known, "{place} was made up");
                }
            }
        }
    }
    assert!(tried > 500, "only {tried} places were broken");
    for foreign in ["", "[]", "{}", r#"{"reply":"tale"}"#] {
        assert!(Reply::read(foreign).is_err(), "{foreign}");
    }
}

/// An answer to every question.
fn answered() -> Answers {
    let word = |word: &str| Some(word.to_owned());
    Answers {
        aim: word("whole-set"),
        instrument: word("violin"),
        size: word("4/4"),
        sounding_length_m: Some(0.328),
        tuning: word("usual"),
        a4_hz: Some(442.0),
        also_tuned: vec![AlsoTuned { a4_hz: Some(415.0), semitones: Some(-1.0) }],
        temperament: word("equal"),
        strings: vec![StringAnswer {
            note: word("E5"),
            family: word("plain-steel"),
            today: Today {
                family: word("plain-steel"),
                gauge_class: word("medium"),
                outer_metal: word("silver"),
                age_months: Some(3.0),
            },
            bothers: vec!["whistles".to_owned()],
            keep: true,
            most_tension_n: Some(80.0),
        }],
        set_up: word("modern"),
        now: word("synthetic"),
        age_months: Some(4.0),
        bothers: vec!["wolf".to_owned()],
        wishes: Wishes { colour: 1.0, brightness: -1.0, power: 0.5, feel: 2.0, response: -2.0 },
        music: word("early"),
        played: word("both"),
        ring: word("short"),
        amplified: word("magnet"),
        belongs_to: word("school"),
        tuned_so: word("sometimes"),
        most_load_n: Some(230.0),
        level: word("student"),
        pegs: word("friction"),
        tuners: word("top"),
        who_tunes: word("player"),
        room: word("damp"),
        concert_days: Some(20.0),
        must_settle: true,
        budget: word("modest"),
        nickel_allergy: true,
        acid_sweat: true,
        animal_free: true,
        hand_pain: true,
        gut_to_its_limit: true,
        weights: [("colour".to_owned(), 2.0)].into(),
    }
}

#[test]
fn a_saved_file_reads_back_whole_and_takes_no_member_it_does_not_know() {
    let typed = |text: &str, unit: &str| Typed { text: text.to_owned(), unit: unit.to_owned() };
    let document = Document {
        label: "Desk \"3\\\", {or} [4]: 𝄞, \\".to_owned(),
        answers: answered(),
        typed: [("a4_hz".to_owned(), typed("44x", ""))].into(),
        fittings: vec![Fitting {
            at: "2026-11-25T10:00:00Z".to_owned(),
            label: "before".to_owned(),
            answers: answered(),
            summary: vec!["E: plain steel".to_owned()],
            strings: Some(vec![KeptString {
                note: "E5".to_owned(),
                standing: "new".to_owned(),
                family: "plain-steel".to_owned(),
                gauge_class: "medium".to_owned(),
                tension_n: (76.0, 84.5),
            }]),
            typed: [("sounding_length_m".to_owned(), typed("12 7/8", "in"))].into(),
            invented: Some("teacher".to_owned()),
        }],
        ..Document::default()
    };
    let text = document::save(&document);
    assert_eq!(text, serde_json::to_string_pretty(&document).unwrap());
    let empty = Document::default();
    assert_eq!(document::save(&empty), serde_json::to_string_pretty(&empty).unwrap());
    assert_eq!(document::read(&text), Ok(document));
    let whole: Value = serde_json::from_str(&text).unwrap();
    // A request takes the same answers, so that nothing is kept that cannot be asked.
    let same = Answers::read(&whole["answers"]).unwrap();
    assert_eq!(same, answered());
    for way in ["", "wishes", "strings[0]", "strings[0].today", "also_tuned[0]"] {
        let mut other = whole["answers"].clone();
        let pointer = format!("/{way}").replace('.', "/").replace('[', "/").replace(']', "");
        let of = other.pointer_mut(pointer.trim_end_matches('/')).unwrap();
        of["never-heard-of"] = json!(1);
        let file = json!({ "format": document::FORMAT, "version": 1, "answers": other });
        let place = format!("answers.{way}").trim_end_matches('.').to_owned();
        let error = document::read(&file.to_string()).unwrap_err().to_string();
        assert_eq!(error, format!("{place}.never-heard-of is not known"));
        assert!(Answers::read(&other).is_err(), "{place} in a request");
    }
}

#[test]
fn the_flag_of_a_magnetic_pickup_says_how_it_is_amplified() {
    let answers = |pickup: Value| json!({ "instrument": "violin", "magnetic_pickup": pickup });
    for (pickup, amplified) in [(true, Some("magnet")), (false, None)] {
        for version in [1, 2] {
            let answers = answers(pickup.into());
            let fitting = json!({ "at": "2026-11-25T10:00:00Z", "answers": answers });
            let file = json!({
                "format": document::FORMAT, "version": version, "answers": answers, "fittings": [fitting],
            });
            let opened = document::read(&file.to_string()).unwrap();
            assert_eq!(opened.answers.amplified.as_deref(), amplified);
            assert_eq!(opened.fittings[0].answers.amplified.as_deref(), amplified);
            assert_eq!(document::restore(&file.to_string()), (opened, vec![]));
        }
    }
    // What is no yes and no no is refused as anything else would be.
    let odd = json!({ "format": document::FORMAT, "version": 2, "answers": answers(json!(3)) });
    assert!(document::read(&odd.to_string()).is_err());
}

#[test]
fn words_of_a_newer_version_survive_an_older_one() {
    let mut answers = json!({
        "bothers": ["rattles"],
        "strings": [{ "family": "spun", "today": { "gauge_class": "featherweight" } }],
    });
    for question in ["instrument", "size", "tuning"].iter().chain(WORD_QUESTIONS) {
        answers[question] = json!("not yet invented");
    }
    let fitting = json!({ "at": "2026-11-25T10:00:00Z", "answers": answers });
    let file = json!({
        "format": document::FORMAT, "version": 1, "answers": answers, "fittings": [fitting],
    });
    let (document, notes) = document::restore(&file.to_string());
    assert_eq!(notes, []);
    let saved: Value = serde_json::from_str(&document::save(&document)).unwrap();
    assert_eq!(saved["answers"], answers);
    assert_eq!(saved["fittings"][0]["answers"], answers);
    // The model does not take one for another: it names every such word.
    let answers = document.answers;
    let Reply::Refused(refused) = protocol::handle(&Request::Fit(Box::new(FitRequest { answers })))
    else {
        panic!("words that the model does not know are answered")
    };
    let fields: Vec<&str> = refused.faults.iter().map(|fault| fault.field.as_str()).collect();
    for question in WORD_QUESTIONS {
        assert!(fields.contains(&format!("answers.{question}").as_str()), "{question}: {fields:?}");
    }
}

#[test]
fn faults_come_in_the_order_in_which_answers_are_declared() {
    let answers = Answers {
        budget: Some("x".to_owned()),
        a4_hz: Some(1.0),
        aim: Some("x".to_owned()),
        wishes: Wishes { feel: 9.0, ..Wishes::default() },
        ..Answers::default()
    };
    let Reply::Refused(refused) = protocol::handle(&Request::Fit(Box::new(FitRequest { answers })))
    else {
        panic!("nonsense is answered")
    };
    let fields: Vec<&str> = refused.faults.iter().map(|fault| fault.field.as_str()).collect();
    assert_eq!(fields, ["answers.aim", "answers.a4_hz", "answers.wishes.feel", "answers.budget"]);
}

#[test]
fn the_schema_says_of_every_member_of_a_request_what_it_takes() {
    let schema = protocol::schema();
    let mut members = 0;
    for (name, of) in schema["request"]["$defs"].as_object().unwrap() {
        for (member, of) in of["properties"].as_object().unwrap() {
            members += 1;
            let is = |kind: &str| of["type"] == kind || of["type"][0] == kind;
            let says = |key: &str| of.get(key).is_some();
            let limited = if is("number") {
                says("minimum") && says("maximum")
            } else if is("string") {
                says("enum") || says("maxLength")
            } else if is("array") {
                says("maxItems")
            } else {
                true
            };
            assert!(limited, "{name}.{member}: {of}");
        }
    }
    assert!(members > 60, "{members}");
}
