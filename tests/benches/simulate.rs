//! How fast is the bowed string? One note against real time, cells of a map a second with so many notes side by side,
//! natively and in WebAssembly with vector instructions and without, pieces and whole maps. Numbers, no gates: machines
//! differ and are noisy. That all of them come to the same bits is checked.
#![allow(clippy::print_stdout, reason = "a bench prints what it measured")]
#![allow(clippy::unwrap_used, reason = "a bench that cannot run says so by a panic")]

#[path = "sweep/bowing.rs"]
mod bowing;
mod module;

use std::collections::BTreeMap;
use std::hint::black_box;
use std::path::Path;
use std::process::Command;
use std::time::Instant;

use bowing::{Bowing, NOTES, SECONDS};
use serde_json::Value;
use strings::simulate::note::PERIODS;
use strings::simulate::sound::Piece;

/// How often each thing is timed.
const ROUNDS: usize = 7;

/// The two maps, and whether it is that of starts.
const MAPS: [(&str, bool); 2] = [("places", false), ("starts", true)];

/// Seconds, and what it came to.
fn once(run: impl Fn() -> f64) -> (f64, f64) {
    let start = Instant::now();
    let value = black_box(run());
    (start.elapsed().as_secs_f64(), value)
}

/// The least seconds and the value of each run, all of them in turn.
type Told = BTreeMap<String, (f64, f64)>;

fn native() -> Told {
    let mut told = Told::new();
    for (instrument, bass) in [("violin", false), ("bass", true)] {
        for (law, warm) in [("speed", false), ("warm", true)] {
            let string = Bowing::new(bass, warm);
            for _ in 0..ROUNDS {
                let mut add = |what: &str, (seconds, value): (f64, f64)| {
                    let least = told
                        .entry(format!("{instrument} {law} native {what}"))
                        .or_insert((f64::INFINITY, value));
                    least.0 = least.0.min(seconds);
                };
                add("one", once(|| string.one()));
                add("alone", once(|| string.row(false)));
                add("lanes", once(|| string.row(true)));
            }
        }
    }
    for (instrument, bass) in [("violin", false), ("bass", true)] {
        let string = Bowing::new(bass, false);
        for (map, of_starts) in MAPS {
            told.insert(format!("{instrument} native {map}"), once(|| string.map(of_starts)));
        }
    }
    let set = Bowing::new(false, false);
    for (i, piece) in Piece::ALL.into_iter().enumerate() {
        let mut all: Vec<(f64, f64)> = (0..ROUNDS).map(|_| once(|| set.piece(piece))).collect();
        all.sort_by(|a, b| a.0.total_cmp(&b.0));
        told.insert(format!("native piece {i}"), all[ROUNDS / 2]);
    }
    told
}

/// The same in a JavaScript engine.
fn compiled() -> Told {
    let modules = [module::built("with", "+simd128"), module::built("without", "-simd128")];
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("benches/bowing.mjs");
    let Value::Object(all) = module::told(Command::new("node").arg(script).args(modules)) else {
        panic!("the script wrote no object")
    };
    let of = |told: &Value, name: &str| told[name].as_f64().unwrap();
    all.iter().map(|(key, v)| (key.clone(), (of(v, "seconds"), of(v, "value")))).collect()
}

fn main() {
    let (native, compiled) = (native(), compiled());
    for (instrument, bass) in [("violin", false), ("bass", true)] {
        for (law, warm) in [("speed", false), ("warm", true)] {
            let string = Bowing::new(bass, warm).strung;
            let of = |engine: &str, what: &str| {
                let table = if engine == "native" { &native } else { &compiled };
                table[&format!("{instrument} {law} {engine} {what}")]
            };
            for what in ["one", "alone", "lanes"] {
                let bits = |engine| of(engine, what).1.to_bits();
                assert!(bits("native") == bits("with") && bits("with") == bits("without"));
            }
            println!(
                "{instrument} {:.0} Hz, law of {}, {} steps a second",
                string.rate() / string.period(),
                if warm { "temperature" } else { "speed" },
                string.rate(),
            );
            let times = |engine| SECONDS / of(engine, "one").0;
            println!(
                "  one note, times real time: native {:.0}, WebAssembly {:.0}; without simd128 {:.0}; WebAssembly takes {:.2} times as long",
                times("native"),
                times("with"),
                times("without"),
                times("native") / times("with"),
            );
            for (engine, name) in [
                ("native", "native"),
                ("with", "WebAssembly, simd128"),
                ("without", "WebAssembly, without"),
            ] {
                let cells = |how| f64::from(NOTES) / of(engine, how).0;
                println!(
                    "  {name:20} cells a second: {:.0} four in lanes ({:.0} periods), {:.0} alone, ratio {:.2}",
                    cells("lanes"),
                    cells("lanes") * PERIODS,
                    cells("alone"),
                    cells("lanes") / cells("alone"),
                );
            }
            println!(
                "  in lanes, with simd128 over without {:.2}; WebAssembly takes {:.2} times as long as native code",
                of("without", "lanes").0 / of("with", "lanes").0,
                of("with", "lanes").0 / of("native", "lanes").0,
            );
        }
    }
    println!(
        "a map of {NOTES} by {NOTES} notes of {PERIODS} periods on one core, s: native, WebAssembly"
    );
    for instrument in ["violin", "bass"] {
        for (map, _) in MAPS {
            let of = |engine: &str| format!("{instrument} {engine} {map}");
            let (own, other) = (native[&of("native")], compiled[&of("with")]);
            assert_eq!(own.1.to_bits(), other.1.to_bits());
            println!("  {instrument:7} {map} {:5.2} {:5.2}", own.0, other.0);
        }
    }
    println!(
        "a piece on a violin's four strings, the median of {ROUNDS}, ms: native, WebAssembly, lasting"
    );
    for (i, piece) in Piece::ALL.into_iter().enumerate() {
        let (own, other) = (native[&format!("native piece {i}")], compiled[&format!("piece {i}")]);
        println!(
            "  {:12} {:5.0} {:5.0} {:6.0}",
            piece.key(),
            own.0 * 1e3,
            other.0 * 1e3,
            own.1 * 1e3
        );
    }
}
