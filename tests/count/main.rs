//! How many outside values hold the model, and is every formula of it held by one?
//!
//! The published and the reference checks write down every row they compare: its source, its grade, the functions of the
//! model that were called for it, how tight it is and whether it holds. Nothing is counted by mention. A proof runs
//! these checks first and tells where the rows are; otherwise they are run from here.
//!
//! A row is *counted* if it holds, is printed, measured or independently computed (no identity, none of the model's own
//! constants, nothing remembered), is tighter than a fifth, and called a function on which a fit's reply rests.
//! Of one source no more than eight rows are counted.
#![allow(clippy::unwrap_used, reason = "in a test, a panic is how a failure is told")]
#![allow(clippy::print_stdout, reason = "the count is to be read")]

use std::collections::{BTreeMap, BTreeSet};
use std::ffi::OsStr;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::OnceLock;
use std::{env, fs};

use strings::unverified::UNVERIFIED;

/// The least that must hold: rows counted, sources, rows about strings in tension.
const LEAST: (usize, usize, usize) = (200, 32, 100);
/// Rows of one source that are counted.
const OF_ONE_SOURCE: usize = 8;
/// A looser comparison is not counted.
const TIGHTEST_NOT_COUNTED: f64 = 0.2;
/// How many functions are unverified; this may only fall.
const STILL_UNVERIFIED: usize = 2;

/// One comparison, as a check wrote it down.
#[derive(Debug)]
struct Row {
    source: String,
    grade: String,
    calls: Vec<String>,
    tightness: f64,
    holds: bool,
}

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap()
}

/// Runs the published and the reference checks, and returns what they write down.
fn run_checks() -> String {
    let file =
        Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("rows-{}.tsv", std::process::id()));
    let _ = fs::remove_file(&file);
    let mut cargo = Command::new(env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    cargo.current_dir(root()).env(support::ROWS, &file);
    cargo.args(["test", "--offline", "--quiet", "--package", "tests"]);
    cargo.args(["--test", "published", "--test", "reference"]);
    if !cfg!(debug_assertions) {
        cargo.arg("--release");
    }
    // The recomputation compares whole replies and writes no rows.
    let output = cargo.args(["--", "--skip", "recompute"]).output().unwrap();
    assert!(
        output.status.success(),
        "a check fails:\n{}\n{}",
        String::from_utf8_lossy(&output.stdout),
        String::from_utf8_lossy(&output.stderr)
    );
    let text = fs::read_to_string(&file).unwrap();
    let _ = fs::remove_file(&file);
    text
}

/// Every row of the published and the reference checks.
fn rows() -> &'static [Row] {
    static ROWS: OnceLock<Vec<Row>> = OnceLock::new();
    ROWS.get_or_init(|| {
        let text = match env::var_os(support::ROWS) {
            Some(file) => fs::read_to_string(file).unwrap(),
            None => run_checks(),
        };
        // Tests run in any order; the count must not depend on it.
        let mut lines: Vec<&str> = text.lines().collect();
        lines.sort_unstable();
        lines.into_iter().map(row).collect()
    })
}

fn row(line: &str) -> Row {
    let parts: Vec<&str> = line.split('\t').collect();
    let [source, grade, _, calls, tightness, holds] = parts[..] else {
        panic!("a row of {} parts: {line}", parts.len())
    };
    Row {
        source: source.to_owned(),
        grade: grade.to_owned(),
        calls: calls.split(',').filter(|call| !call.is_empty()).map(str::to_owned).collect(),
        tightness: tightness.parse().unwrap(),
        holds: holds == "true",
    }
}

fn rust_files(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(rust_files(&path));
        } else if path.extension() == Some(OsStr::new("rs")) {
            found.push(path);
        }
    }
    found.sort();
    found
}

/// The functions of the physics with their texts, each up to the next: `module::function`.
fn physics() -> BTreeMap<String, String> {
    let mut all = BTreeMap::new();
    for path in rust_files(&root().join("src/strings/physics")) {
        let module = path.file_stem().unwrap().to_str().unwrap().to_owned();
        let text = fs::read_to_string(&path).unwrap();
        for part in text.split("\npub fn ").skip(1) {
            let name = part.split(['(', '<']).next().unwrap();
            all.insert(format!("{module}::{name}"), part.to_owned());
        }
    }
    assert!(all.len() > 40, "the search for functions misses some: {:?}", all.keys());
    all
}

/// The functions on which a report rests: those its source calls, and those that these call.
fn of_the_reply(physics: &BTreeMap<String, String>) -> BTreeSet<String> {
    let mut text = String::new();
    for path in rust_files(&root().join("src/strings/report")) {
        text.push_str(&fs::read_to_string(path).unwrap());
    }
    let mut reached: BTreeSet<String> =
        physics.keys().filter(|name| text.contains(&format!("{name}("))).cloned().collect();
    reached.extend(
        // Given as a value, not called on the spot.
        physics.keys().filter(|name| text.contains(&format!("{name})"))).cloned(),
    );
    loop {
        let mut more = reached.clone();
        for name in &reached {
            let (module, _) = name.split_once("::").unwrap();
            for other in physics.keys() {
                let (its_module, its_name) = other.split_once("::").unwrap();
                let near = module == its_module && physics[name].contains(&format!(" {its_name}("))
                    || physics[name].contains(&format!("{other}("));
                if near && other != name {
                    more.insert(other.clone());
                }
            }
        }
        if more == reached {
            return reached;
        }
        reached = more;
    }
}

/// Functions that speak of a string in tension, not of a material, a section or a wire.
fn in_tension(call: &str) -> bool {
    let module = call.split("::").next().unwrap();
    ["tension", "partials", "bowing", "damping", "stopping", "tuning", "load", "report"]
        .contains(&module)
        || ["torsion::speed", "strength::swing_stress", "settling::given"].contains(&call)
        || ["climate::by_body", "climate::by_warmth", "climate::by_swelling"].contains(&call)
}

#[test]
fn outside_values_are_counted() {
    let physics = physics();
    let mut reply = of_the_reply(&physics);
    reply.insert("report::values".to_owned());
    // The area of a circle is no formula of strings.
    reply.remove("mass::circle");
    let mut by_source: BTreeMap<&str, (usize, usize)> = BTreeMap::new();
    let mut uncounted = 0;
    let mut why: BTreeMap<&str, usize> = BTreeMap::new();
    for row in rows() {
        let reason = if !row.holds {
            Some("does not hold")
        } else if !["printed", "measured", "independent"].contains(&row.grade.as_str()) {
            Some(row.grade.as_str())
        } else if !row.calls.iter().any(|call| reply.contains(call)) {
            Some("calls nothing on which a reply rests")
        } else if row.tightness.is_nan() || row.tightness > TIGHTEST_NOT_COUNTED {
            Some("too loose")
        } else if by_source.get(row.source.as_str()).is_some_and(|n| n.0 >= OF_ONE_SOURCE) {
            Some("more than eight of one source")
        } else {
            None
        };
        if let Some(reason) = reason {
            uncounted += 1;
            *why.entry(reason).or_default() += 1;
            continue;
        }
        let of_source = by_source.entry(&row.source).or_default();
        of_source.0 += 1;
        of_source.1 += usize::from(row.calls.iter().any(|c| reply.contains(c) && in_tension(c)));
    }
    let counted: usize = by_source.values().map(|n| n.0).sum();
    let tight: usize = by_source.values().map(|n| n.1).sum();
    for (source, (n, of_tension)) in &by_source {
        println!("  {source}: {n}, {of_tension} of them about strings in tension");
    }
    for (reason, n) in &why {
        println!("  uncounted, {reason}: {n}");
    }
    support::tell(&format!(
        "counted {counted} values from {} sources ({tight} about strings in tension); uncounted {uncounted}",
        by_source.len()
    ));
    assert!(
        counted >= LEAST.0 && by_source.len() >= LEAST.1 && tight >= LEAST.2,
        "fewer outside values than before: {counted}, {}, {tight}, at least {LEAST:?} are wanted",
        by_source.len()
    );
}

#[test]
fn every_formula_is_held_by_a_check_or_is_said_not_to_be() {
    let physics = physics();
    let held: BTreeSet<&str> = rows()
        .iter()
        .filter(|row| row.holds && row.grade != "hearsay")
        .flat_map(|row| row.calls.iter().map(String::as_str))
        .collect();
    let unverified: BTreeSet<&str> = UNVERIFIED.iter().map(|(function, _)| *function).collect();
    assert_eq!(unverified.len(), UNVERIFIED.len(), "a function stands on the list twice");
    let free: Vec<_> = physics
        .keys()
        .filter(|name| !held.contains(name.as_str()) && !unverified.contains(name.as_str()))
        .collect();
    assert!(
        free.is_empty(),
        "call these in a check against a source, or put them on the list in src/strings/unverified.rs: {free:#?}"
    );
    let gone: Vec<_> = unverified.iter().filter(|name| !physics.contains_key(**name)).collect();
    assert!(gone.is_empty(), "no such functions, take them off the list: {gone:#?}");
    // What a source outside the model holds is verified.
    let outside: BTreeSet<&str> = rows()
        .iter()
        .filter(|row| {
            row.holds
                && row.tightness <= TIGHTEST_NOT_COUNTED
                && ["printed", "measured", "independent"].contains(&row.grade.as_str())
        })
        .flat_map(|row| row.calls.iter().map(String::as_str))
        .collect();
    let verified: Vec<_> = unverified.intersection(&outside).collect();
    assert!(verified.is_empty(), "checked by now, take them off the list: {verified:#?}");
    for name in physics.keys().filter(|name| !outside.contains(name.as_str())) {
        println!("held by identities or the model's own numbers alone: {name}");
    }
    for (function, why) in UNVERIFIED {
        support::tell(&format!("unverified: {function}: {why}"));
    }
    assert_eq!(
        UNVERIFIED.len(),
        STILL_UNVERIFIED,
        "the list may only become shorter; when it does, write the new number here"
    );
}

#[test]
fn what_a_reply_rests_on_is_found() {
    let reply = of_the_reply(&physics());
    for name in
        ["tension::at_pitch", "tension::rigid", "damping::air", "strand::area", "mass::circle"]
    {
        assert!(reply.contains(name), "{name} is not found: {reply:?}");
    }
    for name in ["strand::area_by_cosine", "tension::stress_of_plain"] {
        assert!(!reply.contains(name), "{name} is found, and no report calls it");
    }
}
