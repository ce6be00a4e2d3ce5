//! Running a reference program and reading what it prints.

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::{env, fs};

use serde_json::Value;

/// How far two runs of one program may lie apart, as a share: linear algebra rounds differently from machine to
/// machine, and the tightest comparison with the model is no tighter than this.
const RUNS: f64 = 1e-7;

/// The output of `NAME.py`, run now; fails unless it is what `NAME.json` holds.
#[track_caller]
pub(crate) fn output_of(name: &str) -> Value {
    let live = run(name);
    let path = folder().join(format!("{name}.json"));
    let text =
        fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    let stored: Value =
        serde_json::from_str(&text).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    let mut misses = Vec::new();
    compare(name, &live, &stored, &mut misses);
    assert!(
        misses.is_empty(),
        "{name}.py no longer prints what {name}.json holds:\n  {}\nif the program changed on purpose: \
         cd tests/reference && python3 {name}.py > {name}.json",
        misses.join("\n  ")
    );
    live
}

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("reference")
}

fn run(name: &str) -> Value {
    let python = env::var("ROPEWALK_PYTHON").unwrap_or_else(|_| "python3".to_owned());
    let remedy = "the reference programs need Python 3 with numpy, scipy, mpmath and periodictable; `cargo proof` \
                  installs them, ROPEWALK_PYTHON names the interpreter to use";
    let output = Command::new(&python)
        .current_dir(folder())
        .arg(format!("{name}.py"))
        .stdin(Stdio::null())
        .output()
        .unwrap_or_else(|error| panic!("{python} could not be started ({error}): {remedy}"));
    assert!(
        output.status.success(),
        "{python} {name}.py failed: {remedy}\n{}",
        String::from_utf8_lossy(&output.stderr)
    );
    serde_json::from_slice(&output.stdout)
        .unwrap_or_else(|error| panic!("{name}.py printed no JSON: {error}"))
}

fn compare(place: &str, live: &Value, stored: &Value, misses: &mut Vec<String>) {
    match (live, stored) {
        (Value::Number(a), Value::Number(b)) => {
            let (a, b) = (a.as_f64().unwrap_or(f64::NAN), b.as_f64().unwrap_or(f64::NAN));
            // Written so that a NaN misses.
            if (a - b).abs() <= RUNS * a.abs().max(b.abs()) {
                return;
            }
        }
        (Value::Array(a), Value::Array(b)) if a.len() == b.len() => {
            for (i, (a, b)) in a.iter().zip(b).enumerate() {
                compare(&format!("{place}[{i}]"), a, b, misses);
            }
            return;
        }
        (Value::Object(a), Value::Object(b)) if a.keys().eq(b.keys()) => {
            for (key, a) in a {
                compare(&format!("{place}.{key}"), a, &b[key], misses);
            }
            return;
        }
        _ if live == stored => return,
        _ => {}
    }
    misses.push(format!("{place}: printed {live}, stored {stored}"));
}

/// The list of that name; fails when it is missing or empty, as then nothing would be compared.
#[track_caller]
pub(crate) fn list<'a>(value: &'a Value, key: &str) -> &'a [Value] {
    let list = value[key].as_array().map(Vec::as_slice).unwrap_or_default();
    assert!(!list.is_empty(), "the program printed no {key}");
    list
}

/// The number of that name, whether it stands as a number or as a text with many digits.
#[track_caller]
pub(crate) fn number(value: &Value, key: &str) -> f64 {
    let member = &value[key];
    member
        .as_f64()
        .or_else(|| member.as_str()?.parse().ok())
        .unwrap_or_else(|| panic!("{key} is no number: {member}"))
}

/// The word of that name.
#[track_caller]
pub(crate) fn word<'a>(value: &'a Value, key: &str) -> &'a str {
    value[key].as_str().unwrap_or_else(|| panic!("{key} is no word: {}", value[key]))
}

#[test]
fn runs_that_differ_are_told_apart() {
    let read = |text: &str| serde_json::from_str::<Value>(text).expect("JSON in a test");
    let misses = |a: &str, b: &str| {
        let mut misses = Vec::new();
        compare("x", &read(a), &read(b), &mut misses);
        misses.len()
    };
    assert_eq!(misses(r#"{"a": [1.0, "2.5"]}"#, r#"{"a": [1.00000000001, "2.5"]}"#), 0);
    for other in [
        r#"{"a": [1.00001, "2.5"]}"#,
        r#"{"a": [1.0, "2.6"]}"#,
        r#"{"a": [1.0]}"#,
        r#"{"b": [1.0, "2.5"]}"#,
        r#"{"a": [null, "2.5"]}"#,
    ] {
        assert_eq!(misses(r#"{"a": [1.0, "2.5"]}"#, other), 1, "{other}");
    }
}
