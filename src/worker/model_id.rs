//! Gives the worker and the page the same id when they are built from the same model, and different ones otherwise.
//!
//! The id is a hash of the sources that decide an answer, and both packages run this script (and the
//! end-to-end tests, which so find out that the built page is an old one). So an old worker that
//! a cache hands to a new page is found out, and a change of the page alone leaves the worker as it was.
#![allow(clippy::print_stdout, reason = "Cargo reads what this prints")]

use std::env;
use std::fs;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::io;
use std::path::{Path, PathBuf};

fn main() -> io::Result<()> {
    let package = PathBuf::from(env::var_os("CARGO_MANIFEST_DIR").ok_or(io::ErrorKind::NotFound)?);
    let root = package.ancestors().find(|place| place.join("Cargo.lock").is_file());
    let root = root.ok_or(io::ErrorKind::NotFound)?;
    // Paths from the root and not of the machine: the id must not tell where it was built.
    let mut hasher = DefaultHasher::new();
    for part in ["src/strings", "src/protocol", "src/worker", "Cargo.lock"] {
        hash(&root.join(part), part, &mut hasher)?;
        println!("cargo::rerun-if-changed={}", root.join(part).display());
    }
    println!("cargo::rustc-env=ROPEWALK_MODEL={:016x}", hasher.finish());
    Ok(())
}

fn hash(path: &Path, name: &str, hasher: &mut DefaultHasher) -> io::Result<()> {
    name.hash(hasher);
    if path.is_dir() {
        let mut entries = fs::read_dir(path)?
            .map(|entry| Ok(entry?.file_name()))
            .collect::<io::Result<Vec<_>>>()?;
        entries.sort();
        for entry in entries {
            hash(&path.join(&entry), &entry.to_string_lossy(), hasher)?;
        }
    } else {
        fs::read(path)?.hash(hasher);
    }
    Ok(())
}
