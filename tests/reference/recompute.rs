//! Every number of whole replies, against a program written from the documentation alone.
//!
//! `recompute.py` knows `src/strings/README.md` and the published tables and nothing of the source, so this holds the
//! model, the tables and the page against one another. It needs Python 3 and no package.

use std::io::Write as _;
use std::path::Path;
use std::process::{Command, Stdio};
use std::{env, thread};

use serde_json::{Value, json};

/// How many numbers the whole check compares at the least; fewer means that replies have lost something.
const AT_LEAST: u64 = 183_000;

/// What the program said.
struct Verdict {
    success: bool,
    checked: u64,
    misses: Vec<Value>,
    all: String,
}

/// Hands replies to the program.
#[track_caller]
fn recompute(replies: &[Value]) -> Verdict {
    let given = json!({ "tables": answer(&json!({ "ask": "tables" })), "replies": replies });
    let python = env::var("ROPEWALK_PYTHON").unwrap_or_else(|_| "python3".to_owned());
    let mut program = Command::new(&python)
        .current_dir(Path::new(env!("CARGO_MANIFEST_DIR")).join("reference"))
        .arg("recompute.py")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap_or_else(|error| {
            panic!(
                "{python} could not be started ({error}): recompute.py needs Python 3, ROPEWALK_PYTHON names the \
                 interpreter to use"
            )
        });
    let mut stdin = program.stdin.take().expect("stdin is piped");
    // A program that ends early closes the pipe; what it said then is more to the point than that the pipe is closed.
    let writer = thread::spawn(move || stdin.write_all(given.to_string().as_bytes()));
    let output = program.wait_with_output().expect("the program was started");
    let written = writer.join().expect("the writer does not panic");
    let said = String::from_utf8_lossy(&output.stdout);
    let complaint = String::from_utf8_lossy(&output.stderr);
    let summary: Value = serde_json::from_str(&said).unwrap_or_else(|error| {
        panic!(
            "{python} recompute.py printed no JSON ({error}; input {written:?}):\n{said}{complaint}"
        )
    });
    Verdict {
        success: output.status.success(),
        checked: summary["checked"].as_u64().expect("the program counts"),
        misses: summary["misses"].as_array().expect("the program lists what missed").clone(),
        all: said.into_owned(),
    }
}

fn answer(request: &Value) -> Value {
    serde_json::from_str(&protocol::answer(&request.to_string())).expect("the door answers in JSON")
}

/// One core of every build, of every material, and of every layout.
fn cores() -> Vec<Value> {
    let mut cores = vec![
        json!({ "material": "spring-steel", "build": "solid", "diameter_m": 0.000_25 }),
        json!({ "material": "stainless-steel", "build": "solid", "diameter_m": 0.000_6 }),
        json!({ "material": "polyamide", "build": "solid", "diameter_m": 0.000_9 }),
        json!({ "material": "polyester", "build": "solid", "diameter_m": 0.000_8 }),
        json!({ "material": "gut", "build": "twisted", "diameter_m": 0.000_75, "twist_deg": 25.0 }),
        json!({ "material": "gut", "build": "twisted", "diameter_m": 0.001_2, "twist_deg": 45.0 }),
    ];
    // The thinnest of these has wires under 0.10 mm, where the strength of steel no longer rises.
    for (layout, diameter, lay) in [
        ("1x7", 0.000_4, 12.0),
        ("1x19", 0.000_6, 15.0),
        ("7x7", 0.000_7, 18.0),
        ("7x7", 0.001_8, 0.0),
        ("1x19", 0.001, 28.0),
    ] {
        cores.push(json!({
            "material": "spring-steel", "build": "strand", "diameter_m": diameter, "layout": layout, "lay_deg": lay,
        }));
    }
    for (material, fill, twist) in [
        ("polyamide", 0.70, 12.0),
        ("polyester", 0.75, 20.0),
        ("high-modulus-polymer", 0.65, 0.0),
        ("aramid", 0.80, 8.0),
    ] {
        cores.push(json!({
            "material": material, "build": "multifilament", "diameter_m": 0.000_6, "filament_m": 0.000_025,
            "fill": fill, "twist_deg": twist,
        }));
    }
    cores
}

fn layer(metal: &str, form: &str, thickness: f64, bedding: f64, gap: f64) -> Value {
    json!({ "metal": metal, "form": form, "thickness_m": thickness, "bedding": bedding, "gap": gap })
}

/// No winding, one flat, one round and open, two of the same metal with bedding, and three of both forms, one of them
/// as open as can be.
fn windings() -> Vec<Value> {
    vec![
        json!([]),
        json!([layer("aluminium", "flat", 0.000_07, 0.0, 0.0)]),
        json!([layer("copper", "round", 0.000_12, 0.1, 0.6)]),
        json!([
            layer("silver", "flat", 0.000_05, 0.2, 0.0),
            layer("silver", "flat", 0.000_04, 0.0, 0.08),
        ]),
        json!([
            layer("tungsten", "round", 0.000_1, 0.15, 0.25),
            layer("chrome-steel", "flat", 0.000_05, 0.05, 0.0),
            layer("titanium", "flat", 0.000_03, 0.5, 1.0),
        ]),
    ]
}

/// What is filled in when nothing is said, then a dry room, a damp one and a hot one, on four instruments.
fn settings() -> Vec<Value> {
    vec![
        json!({ "sounding_length_m": 0.328, "pitch_hz": 440.0 }),
        json!({
            "sounding_length_m": 0.37, "pitch_hz": 220.0, "sounding_length_doubt_m": 0.004, "humidity": 0.10,
            "humidity_swing": 0.30, "week_humidity_swing": 0.22, "evening_humidity_swing": 0.05,
            "temperature_c": 5.0, "temperature_swing_k": 3.0, "week_temperature_swing_k": 8.0,
            "evening_temperature_swing_k": 0.0, "untuned": "week", "string_height_m": 0.005_5,
            "nut_radius_m": 0.001_5, "bridge_resistance_kg_s": 55.0, "peak_resistance_kg_s": 14.0,
            "body": "viola",
        }),
        json!({
            "sounding_length_m": 0.69, "pitch_hz": 98.0, "sounding_length_doubt_m": 0.01, "humidity": 0.90,
            "humidity_swing": 0.40, "temperature_c": 18.0, "afterlength_m": 0.12, "nut_to_peg_m": 0.09,
            "angle_over_bridge_deg": 152.0, "peg_diameter_m": 0.011, "string_height_m": 0.008,
            "nut_radius_m": 0.004, "bridge_resistance_kg_s": 200.0, "peak_resistance_kg_s": 5.0,
            "body": "cello",
        }),
        json!({
            "sounding_length_m": 1.06, "pitch_hz": 41.2, "humidity": 0.4, "humidity_swing": 0.0, "temperature_c": 40.0,
            "temperature_swing_k": 12.0, "untuned": "season", "angle_over_bridge_deg": 149.0, "peg_diameter_m": 0.012, "gear_ratio": 24.0,
            "string_height_m": 0.014, "nut_radius_m": 0.01, "bridge_resistance_kg_s": 1500.0,
            "peak_resistance_kg_s": 1500.0, "body": "double-bass",
        }),
    ]
}

/// The reply to one string.
#[track_caller]
fn report(core: &Value, windings: &Value, setting: &Value) -> Value {
    let construction = json!({ "core": core, "windings": windings });
    let request = json!({ "ask": "report", "construction": construction, "setting": setting });
    let reply = answer(&request);
    assert_eq!(reply["reply"], "report", "{request} gives {reply}");
    reply
}

/// The replies to every core under every winding in every setting.
fn reports() -> Vec<Value> {
    let mut replies = Vec::new();
    for core in cores() {
        for windings in windings() {
            for setting in settings() {
                replies.push(report(&core, &windings, &setting));
            }
        }
    }
    replies
}

/// The replies to people of every instrument; the last two have strings now, one a damp room and one pure fifths.
fn fits() -> Vec<Value> {
    [
        json!({ "instrument": "violin", "size": "4/4", "set_up": "modern" }),
        json!({ "instrument": "violin", "set_up": "historical", "a4_hz": 415, "music": "early" }),
        json!({ "instrument": "viola", "size": "15 in" }),
        json!({ "instrument": "cello", "music": "classical" }),
        json!({ "instrument": "double-bass", "music": "jazz" }),
        json!({ "instrument": "violin", "size": "1/4", "level": "beginner" }),
        json!({}),
        json!({ "instrument": "viola", "tuning": "half-tone-up", "now": "steel", "room": "damp" }),
        json!({ "instrument": "cello", "temperament": "pure-fifths", "now": "gut" }),
    ]
    .iter()
    .map(|answers| {
        let reply = answer(&json!({ "ask": "fit", "answers": answers }));
        assert!(reply["set"].is_object(), "{answers} gives no set: {reply}");
        reply
    })
    .collect()
}

#[test]
fn every_number_follows_from_the_page_and_the_tables() {
    let mut replies = fits();
    replies.extend(reports());
    let verdict = recompute(&replies);
    assert!(verdict.success && verdict.misses.is_empty(), "{}", verdict.all);
    assert!(verdict.checked >= AT_LEAST, "only {} numbers were compared", verdict.checked);
}

/// Every core under nothing and under three windings in every setting, as `stretch` and `year` take them, eight at a time.
fn players() -> Vec<Value> {
    let mut all = Vec::new();
    for core in cores() {
        for windings in [&windings()[0], &windings()[4]] {
            for setting in settings() {
                let reply = report(&core, windings, &setting);
                all.push(
                    json!({ "construction": reply["construction"], "setting": reply["setting"] }),
                );
            }
        }
    }
    all
}

/// The reply to a request about strings, with the strings that were asked about beside it.
#[track_caller]
fn asked(mut request: Value, strings: &[Value]) -> Value {
    request["strings"] = json!(strings);
    let mut reply = answer(&request);
    assert_eq!(reply["reply"], request["ask"], "{reply}");
    assert_eq!(reply["strings"].as_array().map(Vec::len), Some(strings.len()));
    reply["asked"] = json!(strings);
    reply
}

#[test]
fn strings_stretched_and_through_a_year_follow_from_the_page_and_the_tables() {
    let players = players();
    let mut replies = Vec::new();
    for strings in players.chunks(8) {
        // Slack all of them, some of them, none; a whole turn up.
        for pull in [-0.4, -0.003, 0.000_1, 0.001, 0.02] {
            replies.push(asked(json!({ "ask": "stretch", "pull_m": pull }), strings));
        }
        replies.push(asked(json!({ "ask": "year" }), strings));
    }
    let slack = |reply: &&Value| reply["strings"][0]["above_cent"].is_null();
    assert!(replies.iter().any(|reply| slack(&reply)), "nothing was slack");
    let verdict = recompute(&replies);
    assert!(verdict.success && verdict.misses.is_empty(), "{}", verdict.all);
    assert!(verdict.checked >= 15_000, "only {} numbers were compared", verdict.checked);
    // A number that is a little off is found.
    for (reply, pointer) in [
        (3, "/strings/1/above_cent/value"),
        (3, "/strings/1/tension_n/low"),
        (5, "/strings/0/months/6/above_cent/high"),
    ] {
        let mut spoiled = replies[reply].clone();
        let number = spoiled.pointer(pointer).and_then(Value::as_f64).expect("a number");
        *spoiled.pointer_mut(pointer).expect("a place") = json!(number * 1.002);
        let verdict = recompute(&[spoiled]);
        assert_eq!(verdict.misses.len(), 1, "{pointer}: {}", verdict.all);
    }
}

#[test]
fn a_setting_is_filled_in_as_the_page_says() {
    let length = 0.328;
    let reply = report(
        &cores()[0],
        &windings()[0],
        &json!({ "sounding_length_m": length, "pitch_hz": 440.0 }),
    );
    let expected = json!({
        "sounding_length_m": length, "pitch_hz": 440.0, "sounding_length_doubt_m": 0.0, "afterlength_m": length / 6.0,
        "nut_to_peg_m": 0.05, "angle_over_bridge_deg": 158.0, "peg_diameter_m": 0.007, "gear_ratio": 1.0,
        "string_height_m": 0.004, "nut_radius_m": 0.002, "bridge_resistance_kg_s": 30.0,
        "peak_resistance_kg_s": 10.0, "body": "violin", "temperature_c": 20.0, "humidity": 0.5, "temperature_swing_k": 6.0,
        "humidity_swing": 0.25, "week_temperature_swing_k": 5.0, "week_humidity_swing": 0.12,
        "evening_temperature_swing_k": 4.0, "evening_humidity_swing": 0.08, "untuned": "evening",
    });
    assert_eq!(reply["setting"], expected);
}

/// Spoils one value after the other of a sound reply, and keeps what the program must say of each.
struct Spoiler {
    sound: Value,
    spoiled: Vec<Value>,
    what: Vec<String>,
}

impl Spoiler {
    /// Puts something else where the pointer points.
    fn put(&mut self, pointer: &str, other: Value, what: String) {
        let mut reply = self.sound.clone();
        *reply.pointer_mut(pointer).unwrap_or_else(|| panic!("no {pointer}")) = other;
        self.what.push(format!("reply {} (report): {what}", self.spoiled.len()));
        self.spoiled.push(reply);
    }

    /// Moves a number by a fifth of a per cent, a zero by next to nothing.
    fn nudge(&mut self, pointer: &str, what: String) {
        let number = self.sound.pointer(pointer).and_then(Value::as_f64);
        let number = number.unwrap_or_else(|| panic!("no number at {pointer}"));
        self.put(pointer, json!(if number == 0.0 { 1e-9 } else { number * 1.002 }), what);
    }

    fn numbers(&mut self) {
        for name in names(&self.sound["numbers"]) {
            for end in ["value", "low", "high"] {
                self.nudge(&format!("/numbers/{name}/{end}"), format!("{name} {end}"));
            }
        }
    }

    fn partials(&mut self) {
        for i in 0..length(&self.sound["partials"]) {
            for name in names(&self.sound["partials"][i]) {
                let pointer = format!("/partials/{i}/{name}");
                let what = format!("partial {}, {name}", i + 1);
                if name == "most" {
                    self.put(&pointer, json!("nothing"), what);
                } else {
                    self.nudge(&pointer, what);
                }
            }
        }
    }

    fn nights(&mut self) {
        for i in 0..length(&self.sound["nights"]) {
            let day = i + 1;
            self.put(&format!("/nights/{i}/day"), json!(day + 1), format!("night {day}, day"));
            for end in ["value", "low", "high"] {
                let pointer = format!("/nights/{i}/lost_cent/{end}");
                self.nudge(&pointer, format!("night {day}, lost_cent {end}"));
            }
            let chance = self.sound["nights"][i]["chance"].as_f64().expect("a chance is a number");
            let pointer = format!("/nights/{i}/chance");
            self.put(&pointer, json!(chance + 2e-4), format!("night {day}, chance"));
        }
    }

    fn doubts(&mut self) {
        for name in names(&self.sound["doubts"]) {
            for i in 0..length(&self.sound["doubts"][&name]) {
                let pointer = format!("/doubts/{name}/{i}");
                self.nudge(&format!("{pointer}/share"), format!("doubts of {name}, share {i}"));
                for whose in ["owner", "which"] {
                    let what = format!("doubts of {name}, constant {i}");
                    self.put(&format!("{pointer}/{whose}"), json!("nobody"), what);
                }
            }
        }
    }

    fn shortened(&mut self) {
        for (pointer, what) in [
            ("/partials", "number of partials"),
            ("/nights", "number of nights"),
            ("/doubts/tension_n", "doubts of tension_n, how many"),
        ] {
            let mut list = self.sound.pointer(pointer).cloned().expect("a list");
            let _ = list.as_array_mut().expect("a list").pop();
            self.put(pointer, list, what.to_owned());
        }
    }
}

/// The names of an object, in the order of the alphabet, as the program goes through them.
fn names(object: &Value) -> Vec<String> {
    let mut names: Vec<_> = object.as_object().expect("an object").keys().cloned().collect();
    names.sort();
    names
}

fn length(list: &Value) -> usize {
    list.as_array().expect("a list").len()
}

#[test]
fn the_program_sees_any_number_that_is_off_by_a_fifth_of_a_per_cent() {
    let core_of = |material: &str, build: &str| {
        let wanted = |core: &Value| core["material"] == material && core["build"] == build;
        cores().into_iter().find(wanted).expect("a core of every build")
    };
    // Between them these have every number that is zero for some string.
    for (core, winding) in [
        (core_of("polyamide", "multifilament"), 4),
        (core_of("gut", "twisted"), 1),
        (core_of("spring-steel", "strand"), 2),
    ] {
        let sound = report(&core, &windings()[winding], &settings()[1]);
        let verdict = recompute(std::slice::from_ref(&sound));
        assert!(verdict.success && verdict.misses.is_empty(), "{}", verdict.all);

        let mut spoiler = Spoiler { sound, spoiled: Vec::new(), what: Vec::new() };
        spoiler.numbers();
        spoiler.partials();
        spoiler.nights();
        spoiler.doubts();
        spoiler.shortened();
        let verdict = recompute(&spoiler.spoiled);
        assert!(!verdict.success, "nothing was seen of {:?}", spoiler.what);
        let missed: Vec<_> = verdict.misses.iter().map(|miss| miss["what"].as_str()).collect();
        let expected: Vec<_> = spoiler.what.iter().map(|what| Some(what.as_str())).collect();
        assert_eq!(missed, expected);
    }
}

#[test]
fn the_program_sees_a_set_whose_load_or_bands_are_wrong() {
    let sound = answer(&json!({ "ask": "fit", "answers": {} }));
    let second = sound["set"]["runner_up"]["strings"].as_array().expect("a list");
    let own = second.iter().position(|own| !own.is_null()).expect("a string of its own");
    let own = format!("/set/runner_up/strings/{own}");
    let spoil = |pointer: &str, factor: f64| {
        let mut reply = sound.clone();
        let number = reply.pointer_mut(pointer).unwrap_or_else(|| panic!("no {pointer}"));
        *number = json!(number.as_f64().expect("a number") * factor);
        recompute(&[reply])
    };
    for (pointer, factor) in [
        ("/set/total_tension_n/high", 1.002),
        ("/set/downforce_n/value", 0.998),
        ("/set/steps/1/impedance_ratio", 1.002),
        ("/set/steps/1/tension_ratio", 1.002),
        ("/set/steps/1/usual_ratio", 1.002),
        ("/set/plan/fit_before_d/1", 1.002),
        ("/set/strings/2/chosen_point/damp_cent", 1.002),
        ("/set/strings/2/shopping/pitch_hz", 1.002),
        ("/set/strings/2/bands/tension_n/1", 0.1),
        ("/set/strings/2/bands/breaking_share", 0.1),
        (&format!("{own}/numbers/stretch/value"), 0.998),
        ("/set/strings/1/report/partials/3/loss_air", 1.002),
        ("/set/strings/1/rival/nights/2/lost_cent/high", 1.002),
        (&format!("{own}/doubts/tension_n/0/share"), 0.998),
    ] {
        let verdict = spoil(pointer, factor);
        assert!(!verdict.success, "{pointer} times {factor} was not seen");
        assert_eq!(verdict.misses.len(), 1, "{pointer} times {factor}: {}", verdict.all);
    }
}
