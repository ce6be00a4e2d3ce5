//! How many constructions a second does the lean path meet: native, in WebAssembly, in plain JavaScript and in NumPy,
//! side by side in one run? Numbers, no gates; that all four do the same sums is checked.
#![allow(clippy::print_stdout, reason = "a bench prints what it measured")]
#![allow(clippy::unwrap_used, reason = "a bench that cannot run says so by a panic")]

mod module;

use std::fs;
use std::hint::black_box;
use std::path::Path;
use std::process::Command;
use std::time::Instant;

use serde_json::Value;
use strings::fit::answers::Answers;
use strings::fit::problem;
use strings::report;
use tasks::place;

/// Median seconds of one sweep.
fn native(setting: &strings::setting::Setting, lanes: bool) -> f64 {
    const TIMES: u32 = 20;
    let mut all: Vec<f64> = (0..99)
        .map(|_| {
            let start = Instant::now();
            for _ in 0..TIMES {
                black_box(report::sweep(black_box(setting), lanes));
            }
            start.elapsed().as_secs_f64() / f64::from(TIMES)
        })
        .collect();
    all.sort_by(f64::total_cmp);
    all[49]
}

fn main() {
    let posed = problem::pose(&Answers::default());
    let setting = &posed.strings[1].setting;
    let numbers: serde_json::Map<String, Value> =
        report::swept(setting).into_iter().map(|(name, x)| (name.to_owned(), x.into())).collect();
    let (sum, strings) = report::sweep(setting, false);
    let module = module::built("with", "+simd128");
    let file = place::target().join("tmp/sweep.json");
    fs::write(&file, Value::Object(numbers).to_string()).unwrap();
    let here = Path::new(env!("CARGO_MANIFEST_DIR")).join("benches");
    let script =
        module::told(Command::new("node").arg(here.join("sweep.mjs")).arg(&file).arg(module));
    let array = module::told(Command::new(place::python()).arg(here.join("sweep.py")).arg(&file));
    for other in [&script, &array] {
        let other = other["sum"].as_f64().unwrap();
        assert!(((other - sum) / sum).abs() < 1e-12, "{other} is not {sum}");
    }
    let (alone, lanes) = (native(setting, false), native(setting, true));
    let of = |told: &Value, name: &str| told[name].as_f64().unwrap();
    println!(
        "lean path, millions of constructions a second, and how much longer one takes than native in lanes"
    );
    for (name, seconds) in [
        ("native, four in lanes", lanes),
        ("native, alone", alone),
        ("WebAssembly, four in lanes", of(&script, "lanes")),
        ("WebAssembly, alone", of(&script, "alone")),
        ("plain JavaScript", of(&script, "plain")),
        ("NumPy", of(&array, "numpy")),
    ] {
        println!("  {name:28} {:7.1}  {:5.2}", f64::from(strings) / seconds / 1e6, seconds / lanes);
    }
    println!(
        "WebAssembly over native: {:.2} in lanes, {:.2} alone",
        of(&script, "lanes") / lanes,
        of(&script, "alone") / alone
    );
}
