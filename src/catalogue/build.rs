//! Makes of the messages of each language one text that the page reads without a parser.
//!
//! The page's module carries the English messages that its first screens use, a fifth of all; the others are fetched
//! once the first screen is there. Tests carry every message (the feature `every-word`).
#![allow(clippy::print_stdout, reason = "Cargo reads what this prints")]

use std::env;
use std::fs;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::io;
use std::path::{Path, PathBuf};

use base64::Engine;
use base64::prelude::BASE64_STANDARD;
use sha2::{Digest, Sha256};

mod compile;

fn main() -> io::Result<()> {
    let package = PathBuf::from(env::var_os("CARGO_MANIFEST_DIR").ok_or(io::ErrorKind::NotFound)?);
    let out = PathBuf::from(env::var_os("OUT_DIR").ok_or(io::ErrorKind::NotFound)?);
    for language in ["en", "de"] {
        let compact = compile::compile(&messages(&package.join(language))?)
            .map_err(|fault| io::Error::other(format!("src/catalogue/{language}: {fault}")))?;
        // The name changes with the text, so that no kept file meets another build.
        let mut hasher = DefaultHasher::new();
        compact.hash(&mut hasher);
        let variable = format!("ROPEWALK_WORDS_{}", language.to_uppercase());
        println!("cargo::rustc-env={variable}=words-{language}-{:016x}.txt", hasher.finish());
        // A browser that fetches the file finds out by this whether it is whole.
        let integrity = BASE64_STANDARD.encode(Sha256::digest(&compact));
        println!("cargo::rustc-env={variable}_INTEGRITY=sha256-{integrity}");
        fs::write(out.join(format!("{language}.txt")), &compact)?;
        if language == "en" {
            let texts = EARLY.map(|name| fs::read_to_string(package.join(language).join(name)));
            let early = texts.into_iter().collect::<io::Result<Vec<_>>>()?.join("\n");
            fs::write(out.join("early.txt"), compile::only(&compact, &early))?;
        }
    }
    Ok(())
}

/// The files that hold what the first screens say.
const EARLY: [&str; 6] =
    ["page.ftl", "questions.ftl", "naming.ftl", "measures.ftl", "trouble.ftl", "days.ftl"];

/// The messages of one language: its files one after the other.
fn messages(folder: &Path) -> io::Result<String> {
    println!("cargo::rerun-if-changed={}", folder.display());
    let mut files =
        fs::read_dir(folder)?.map(|entry| Ok(entry?.path())).collect::<io::Result<Vec<_>>>()?;
    files.retain(|file| file.extension().is_some_and(|extension| extension == "ftl"));
    files.sort();
    let texts = files.iter().map(fs::read_to_string).collect::<io::Result<Vec<_>>>()?;
    Ok(texts.join("\n"))
}
