//! The door: whatever comes, it answers, by its own schema, and takes nothing that the schema does not allow.

use std::panic;
use std::time::{Duration, Instant};

use boon::{Compiler, SchemaIndex};
use serde_json::Value;
use support::{Seeded, tell};

use crate::json::Json;
use crate::mutate::mutated;
use crate::{corpus, inputs};

/// Far longer than any answer takes here, also on a busy machine.
const HANGS: Duration = Duration::from_secs(60);

/// The published schemas of a request and a reply.
pub(crate) struct Schemas {
    compiled: boon::Schemas,
    request: SchemaIndex,
    reply: SchemaIndex,
}

impl Schemas {
    pub(crate) fn published() -> Self {
        let (mut compiler, mut compiled) = (Compiler::new(), boon::Schemas::new());
        let mut of = |part: &str| {
            let url = format!("http://door/{part}");
            compiler.add_resource(&url, protocol::schema()[part].clone()).unwrap();
            compiler.compile(&url, &mut compiled).unwrap_or_else(|error| panic!("{error:#}"))
        };
        let (request, reply) = (of("request"), of("reply"));
        Self { compiled, request, reply }
    }

    /// Asks the door, and holds it to the schemas; the reply.
    pub(crate) fn ask(&self, request: &[u8]) -> Value {
        let shown = || String::from_utf8_lossy(request).into_owned();
        let start = Instant::now();
        let answer = panic::catch_unwind(|| protocol::answer_bytes(request))
            .unwrap_or_else(|_| panic!("the door panics at {}", shown()));
        assert!(start.elapsed() < HANGS, "{:?} for {}", start.elapsed(), shown());
        let reply: Value = serde_json::from_str(&answer).unwrap();
        if let Err(error) = self.compiled.validate(&reply, self.reply) {
            panic!("{error:#}\nin the reply to {}", shown());
        }
        if reply["reply"] == "refused" {
            for fault in reply["faults"].as_array().unwrap() {
                for part in ["field", "value", "allowed"] {
                    let text = fault[part].as_str().unwrap();
                    assert!((1..2000).contains(&text.len()), "{part} of {fault} for {}", shown());
                }
            }
            assert_ne!(reply["faults"], Value::Array(Vec::new()), "{}", shown());
        } else {
            let request: Value = serde_json::from_slice(request).unwrap();
            if let Err(error) = self.compiled.validate(&request, self.request) {
                panic!("{error:#}\nand yet it is answered: {request}");
            }
        }
        reply
    }
}

/// What takes long, and of which a run takes only some.
struct Long {
    fits: u64,
    certainties: u64,
    sounds: u64,
}

impl Long {
    /// Whether this request is asked: each of those that take long only so often.
    fn takes(&mut self, request: &[u8]) -> bool {
        let Ok(text) = core::str::from_utf8(request) else { return true };
        let Ok(value) = serde_json::from_str::<Value>(text) else { return true };
        let left = match value["ask"].as_str() {
            Some("fit") => &mut self.fits,
            Some("certainty") => &mut self.certainties,
            Some("sound" | "bow-map") => {
                self.sounds = self.sounds.saturating_sub(1);
                return self.sounds > 0;
            }
            _ => return true,
        };
        // What is refused takes no time.
        let as_fit = text.replacen("certainty", "fit", 1);
        if protocol::split_search::asked(&as_fit).is_none() {
            return true;
        }
        *left = left.saturating_sub(1);
        *left > 0
    }
}

#[test]
fn whatever_comes_is_answered_by_the_schema_or_refused() {
    let (schemas, seeds, count) = (Schemas::published(), corpus("requests"), inputs());
    let mut long = Long { fits: count / 200, certainties: 2 + count / 10_000, sounds: count / 20 };
    let (mut answered, mut asked) = (0_u64, 0_u64);
    for seed in 0..count {
        let mut seeded = Seeded::new(seed);
        let text = &seeded.one_of(&seeds).1;
        let request = mutated(&mut seeded, text, &seeds);
        if long.takes(&request) {
            asked += 1;
            answered += u64::from(schemas.ask(&request)["reply"] != "refused");
        }
    }
    tell(&format!("    {asked} of {count} requests asked, {answered} of them answered"));
    // Both happen often, or the mutations are too wild or too tame.
    assert!(answered * 200 > asked && answered * 2 < asked, "{answered} of {asked}");
}

#[test]
fn the_corpus_is_answered_and_valid_by_the_schema() {
    let schemas = Schemas::published();
    for (name, text) in corpus("requests") {
        let reply = schemas.ask(text.as_bytes());
        assert_ne!(reply["reply"], "refused", "{name}: {reply}");
    }
}

#[test]
fn bytes_that_are_no_text_are_refused_as_such() {
    let schemas = Schemas::published();
    let reply = schemas.ask(b"{\"ask\":\"fit\",\"answers\":{\"size\":\"\xff\"}}");
    assert_eq!(reply["faults"][0]["value"], "byte 0xff at 32");
    assert!(reply["faults"][0]["allowed"].as_str().unwrap().contains("UTF-8"), "{reply}");
}

/// Something wrong with any value: what it is, how it is done, and which value the fault names, if any.
type Wrong = (&'static str, fn(&Json) -> Json, Option<&'static str>);

/// What is wrong wherever it stands.
const WRONGS: [Wrong; 6] = [
    ("a number too large", |_| Json::Raw("1e999".to_owned()), Some("1e999")),
    ("not a number", |_| Json::Raw("NaN".to_owned()), Some("NaN")),
    ("an infinity", |_| Json::Raw("-Infinity".to_owned()), Some("-Infinity")),
    ("a value in a list", |part| Json::List(vec![part.clone()]), None),
    ("an empty list in a list", |_| Json::List(vec![Json::List(Vec::new())]), None),
    ("a long text", |_| Json::Raw(format!("\"{}\"", "x".repeat(101))), None),
];

/// The field that a fault names and what stands inside it.
fn is_within(field: &Value, name: &str) -> bool {
    let field = field.as_str().unwrap();
    field.strip_prefix(name).is_some_and(|rest| rest.is_empty() || rest.starts_with(['.', '[']))
}

#[test]
fn what_is_wrong_is_refused_at_every_place_and_names_it() {
    let schemas = Schemas::published();
    let mut tried = 0;
    for (of, text) in corpus("requests") {
        let tree = Json::parse(&text).unwrap();
        for path in tree.paths().into_iter().filter(|path| !path.is_empty()) {
            let name = tree.name(&path);
            for (what, change, value) in WRONGS {
                let mut wrong = tree.clone();
                *wrong.at(&path) = change(wrong.at(&path));
                let reply = schemas.ask(wrong.text().as_bytes());
                let fault = &reply["faults"][0];
                assert!(is_within(&fault["field"], &name), "{what} at {name} of {of}: {reply}");
                if let Some(value) = value {
                    assert_eq!(fault["value"], value, "{what} at {name} of {of}");
                }
                tried += 1;
            }
        }
    }
    assert!(tried > 1000, "{tried}");
}

#[test]
fn members_that_are_unknown_or_given_twice_are_refused_at_every_place() {
    let schemas = Schemas::published();
    for (of, text) in corpus("requests") {
        let tree = Json::parse(&text).unwrap();
        for path in tree.paths() {
            let name = |member: &str| match tree.name(&path).as_str() {
                "" => member.to_owned(),
                of => format!("{of}.{member}"),
            };
            let mut changed = tree.clone();
            let Json::Object(members) = changed.at(&path) else { continue };
            // A weight of an unknown name is told with the names there are.
            let expected = if name("").ends_with("weights.") {
                "answers.weights".to_owned()
            } else {
                name("unheard_of")
            };
            members.push(("unheard_of".to_owned(), Json::Raw("1".to_owned())));
            let reply = schemas.ask(changed.text().as_bytes());
            assert_eq!(reply["faults"][0]["field"], expected.as_str(), "{of}: {reply}");

            let Json::Object(members) = changed.at(&path) else { continue };
            members.pop();
            for i in 0..members.len() {
                let Json::Object(members) = changed.at(&path) else { continue };
                let twice = members[i].clone();
                members.push(twice.clone());
                let reply = schemas.ask(changed.text().as_bytes());
                let fault = &reply["faults"][0];
                assert_eq!(fault["field"], name(&twice.0).as_str(), "{of}: {reply}");
                assert_eq!(fault["value"], "given twice", "{of}: {reply}");
                let Json::Object(members) = changed.at(&path) else { continue };
                members.pop();
            }
        }
    }
}

#[test]
fn too_much_of_anything_is_refused_by_name() {
    let schemas = Schemas::published();
    let list = |entry: &str, count: usize| format!("[{}]", vec![entry; count].join(","));
    let fit = |member: &str| format!("{{\"ask\":\"fit\",\"answers\":{{{member}}}}}");
    let deep = |open: &str, close: &str| {
        fit(&format!("\"strings\":{}{}", open.repeat(4000), close.repeat(4000)))
    };
    let cases = [
        (
            fit(&format!("\"strings\":{}", list("{}", 9))),
            "answers.strings",
            "9 entries",
            "at most 4",
        ),
        (
            fit(&format!("\"strings\":{}", list("{}", 20_000))),
            "answers.strings[",
            "more values",
            "at most 1000",
        ),
        (
            fit(&format!("\"bothers\":{}", list("\"thin\"", 40))),
            "answers.bothers",
            "40 entries",
            "at most 15",
        ),
        (fit("\"bothers\":[\"thin\",\"wolf\",\"thin\"]"), "answers.bothers[2]", "thin", "once"),
        (
            fit(&format!("\"also_tuned\":{}", list("{\"semitones\":1}", 9))),
            "answers.also_tuned",
            "9 entries",
            "at most 8",
        ),
        (deep("[", "]"), "answers.strings[0][0]", "deeper nesting", "at most 16"),
        (deep("{\"a\":", "}"), "answers.strings.a.a", "deeper nesting", "at most 16"),
        (fit(&" ".repeat(70_000)), "request", "70026 bytes", "at most 65536 bytes"),
        (fit("\"size\":\"4/4\",\"tuning\":9e-400000"), "answers.tuning", "0.0", "a text"),
    ];
    for (request, field, value, allowed) in cases {
        let reply = schemas.ask(request.as_bytes());
        let fault = &reply["faults"][0];
        let says = |part: &str, what: &str| fault[part].as_str().unwrap_or_default().contains(what);
        assert!(
            says("field", field) && says("value", value) && says("allowed", allowed),
            "{reply}"
        );
    }
}

#[test]
fn a_member_that_means_nothing_where_it_stands_is_refused_by_name() {
    let schemas = Schemas::published();
    let texts = corpus("requests");
    let with = |of: &str, at: &[&str], value: &str| {
        let text = &texts.iter().find(|(name, _)| name == of).unwrap().1;
        let mut request: Value = serde_json::from_str(text).unwrap();
        let pointer: String = at[..at.len() - 1].iter().map(|step| format!("/{step}")).collect();
        request.pointer_mut(&pointer).unwrap()[at[at.len() - 1]] =
            serde_json::from_str(value).unwrap();
        let reply = schemas.ask(request.to_string().as_bytes());
        let fault = &reply["faults"][0];
        assert_eq!(fault["field"], at.join(".").as_str(), "{reply}");
        assert_eq!(fault["value"], value, "{reply}");
        assert!(fault["allowed"].as_str().unwrap().starts_with("nothing: "), "{reply}");
    };
    let core = |member| ["construction", "core", member];
    with("report-wire", &core("lay_deg"), "-9e99");
    with("report-wire", &core("layout"), "\"1x7\"");
    with("report-strand", &core("twist_deg"), "12");
    with("report-strand", &core("fill"), "0.7");
    with("report-strand", &core("filament_m"), "0.00002");
    with("compare", &["other", "core", "lay_deg"], "3");
    with("bow-window", &["row"], "3");
    with("bow-window", &["count"], "24");
}

#[test]
fn the_quietest_sounds_have_a_loudness() {
    let schemas = Schemas::published();
    let texts = corpus("requests");
    let text = &texts.iter().find(|(name, _)| name == "sound").unwrap().1;
    for instrument in ["violin", "double-bass"] {
        let mut request: Value = serde_json::from_str(text).unwrap();
        request["instrument"] = instrument.into();
        let setting = &mut request["strings"][0]["setting"];
        setting["bridge_resistance_kg_s"] = 5000.into();
        setting["peak_resistance_kg_s"] = 5000.into();
        setting["pitch_hz"] = 25.into();
        setting["sounding_length_m"] = 0.15.into();
        let reply = schemas.ask(request.to_string().as_bytes());
        assert!(
            (reply["loudness_lufs"].as_f64().unwrap() + 23.0).abs() < 0.1,
            "{}",
            reply["loudness_lufs"]
        );
        assert!(reply["natural_lufs"].as_f64().unwrap() < -70.0, "{}", reply["natural_lufs"]);
    }
}
