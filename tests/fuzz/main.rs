//! Requests and saved files as a hostile world would write them: no panic, no silent nonsense, and every reply valid by
//! the published schema.
//!
//! Inputs are mutations of a small corpus (`corpus/`), drawn from a seed, so that a run can be repeated. A proof tries
//! 20,000, `cargo campaign fuzz` a million. An input that failed once is kept in the corpus.
#![allow(clippy::unwrap_used, reason = "in a test, a panic is how a failure is told")]

mod door;
mod files;
mod json;
mod mutate;

use std::fs;
use std::path::Path;

/// The texts of a corpus, with their names.
fn corpus(folder: &str) -> Vec<(String, String)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("fuzz/corpus").join(folder);
    let mut texts: Vec<(String, String)> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| {
            let path = entry.unwrap().path();
            let name = path.file_stem().unwrap().to_string_lossy().into_owned();
            (name, fs::read_to_string(path).unwrap())
        })
        .collect();
    texts.sort();
    assert!(texts.len() > 2, "the corpus is incomplete");
    texts
}

/// How many inputs are tried.
fn inputs() -> u64 {
    support::cases("ROPEWALK_FUZZ", 20_000) as u64
}
