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
const AT_LEAST: u64 = 35_000;

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

fn layer(metal: &str, form: &str, thickness: f64, bedding: f64) -> Value {
    json!({ "metal": metal, "form": form, "thickness_m": thickness, "bedding": bedding })
}

/// No winding, one flat, one round, two of the same metal with bedding, and three of both forms.
fn windings() -> Vec<Value> {
    vec![
        json!([]),
        json!([layer("aluminium", "flat", 0.000_07, 0.0)]),
        json!([layer("copper", "round", 0.000_12, 0.1)]),
        json!([layer("silver", "flat", 0.000_05, 0.2), layer("silver", "flat", 0.000_04, 0.0)]),
        json!([
            layer("tungsten", "round", 0.000_1, 0.15),
            layer("chrome-steel", "flat", 0.000_05, 0.05),
            layer("titanium", "flat", 0.000_03, 0.5),
        ]),
    ]
}

/// The room that is filled in when nothing is said, then a dry one, a damp one and a hot one, on four instruments.
fn settings() -> Vec<Value> {
    vec![
        json!({ "sounding_length_m": 0.328, "pitch_hz": 440.0 }),
        json!({
            "sounding_length_m": 0.37, "pitch_hz": 220.0, "sounding_length_doubt_m": 0.004, "humidity": 0.10,
            "humidity_swing": 0.30, "temperature_c": 5.0, "temperature_swing_k": 3.0,
        }),
        json!({
            "sounding_length_m": 0.69, "pitch_hz": 98.0, "sounding_length_doubt_m": 0.01, "humidity": 0.90,
            "humidity_swing": 0.40, "temperature_c": 18.0, "afterlength_m": 0.12, "nut_to_peg_m": 0.09,
            "angle_over_bridge_deg": 152.0, "peg_diameter_m": 0.011,
        }),
        json!({
            "sounding_length_m": 1.06, "pitch_hz": 41.2, "humidity": 0.4, "humidity_swing": 0.0, "temperature_c": 40.0,
            "temperature_swing_k": 12.0, "angle_over_bridge_deg": 149.0, "peg_diameter_m": 0.012, "gear_ratio": 24.0,
        }),
    ]
}

/// The replies to every core under every winding in every setting.
fn reports() -> Vec<Value> {
    let mut replies = Vec::new();
    for core in cores() {
        for windings in windings() {
            for setting in settings() {
                let construction = json!({ "core": core, "windings": windings });
                let request =
                    json!({ "ask": "report", "construction": construction, "setting": setting });
                let reply = answer(&request);
                assert_eq!(reply["reply"], "report", "{request} gives {reply}");
                replies.push(reply);
            }
        }
    }
    replies
}

/// The replies to people of every instrument; the last one has strings now, and a damp room.
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

#[test]
fn the_program_sees_any_number_that_is_off_by_a_fifth_of_a_per_cent() {
    let request = json!({
        "ask": "report",
        "construction": { "core": cores()[10], "windings": windings()[4] },
        "setting": settings()[1],
    });
    let sound = answer(&request);
    let verdict = recompute(std::slice::from_ref(&sound));
    assert!(verdict.success && verdict.misses.is_empty(), "{}", verdict.all);

    let mut corrupted = Vec::new();
    let mut what = Vec::new();
    for (name, quantity) in sound["numbers"].as_object().expect("a report has numbers") {
        for end in ["value", "low", "high"] {
            let number = quantity[end].as_f64().expect("a quantity is of numbers");
            let off = if number == 0.0 { 1e-9 } else { number * 1.002 };
            let mut reply = sound.clone();
            reply["numbers"][name][end] = json!(off);
            corrupted.push(reply);
            what.push(format!("{name} {end}"));
        }
        let unknown = quantity["unknown"].as_bool().expect("a quantity is unknown or not");
        let mut reply = sound.clone();
        reply["numbers"][name]["unknown"] = json!(!unknown);
        corrupted.push(reply);
        what.push(format!("{name} unknown"));
    }
    let verdict = recompute(&corrupted);
    assert!(!verdict.success, "nothing was seen of {what:?}");
    let missed: Vec<_> = verdict.misses.iter().map(|miss| miss["what"].as_str()).collect();
    let expected: Vec<_> =
        what.iter().enumerate().map(|(i, what)| format!("reply {i} (report): {what}")).collect();
    assert_eq!(missed, expected.iter().map(|what| Some(what.as_str())).collect::<Vec<_>>());
}

#[test]
fn the_program_sees_a_set_whose_load_or_bands_are_wrong() {
    let sound = answer(&json!({ "ask": "fit", "answers": {} }));
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
        ("/set/plan/fit_before_d/1", 1.002),
        ("/set/strings/2/chosen_point/drift_cent", 1.002),
        ("/set/strings/2/shopping/pitch_hz", 1.002),
        ("/set/strings/2/bands/tension_n/1", 0.1),
        ("/set/strings/2/bands/breaking_share", 0.1),
        ("/set/runner_up/strings/0/numbers/stretch/value", 0.998),
    ] {
        let verdict = spoil(pointer, factor);
        assert!(!verdict.success, "{pointer} times {factor} was not seen");
        assert_eq!(verdict.misses.len(), 1, "{pointer} times {factor}: {}", verdict.all);
    }
}
