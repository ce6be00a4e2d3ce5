//! The conventions of the repository, kept as tests. Each failure says what to do.
#![allow(clippy::unwrap_used, reason = "in a test, a panic is how a failure is told")]

mod contrast;
mod imports;

use std::env;
use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap()
}

/// The text of a file of the repository.
fn text(path: impl AsRef<Path>) -> String {
    let path = root().join(path);
    fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// Every Rust file, by its path from the root.
fn modules() -> Vec<PathBuf> {
    fn walk(folder: &Path, found: &mut Vec<PathBuf>) {
        for entry in fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                walk(&path, found);
            } else if path.extension() == Some(OsStr::new("rs")) {
                found.push(path.strip_prefix(root()).unwrap().to_path_buf());
            }
        }
    }
    let mut found = Vec::new();
    walk(&root().join("src"), &mut found);
    walk(&root().join("tests"), &mut found);
    found.sort();
    assert!(found.len() > 20, "the walk misses files: it found {}", found.len());
    found
}

/// The modules of which something is true.
fn which(is: impl Fn(&Path, &str) -> bool) -> Vec<PathBuf> {
    modules().into_iter().filter(|path| is(path, &text(path))).collect()
}

#[test]
fn every_module_says_what_it_is_for() {
    // A package may keep what it says of itself in a document beside it.
    let silent =
        which(|_, text| !text.starts_with("//!") && !text.starts_with("#![doc = include_str!("));
    assert!(
        silent.is_empty(),
        "begin these with a `//!` line that says what question they answer: {silent:#?}"
    );
}

#[test]
fn every_test_runs_and_none_hopes_for_a_panic() {
    // Put together here, so that this file is not found by its own search.
    let marks = ["ignore", "should_panic"].map(|mark| format!("#[{mark}"));
    let found = which(|_, text| marks.iter().any(|mark| text.contains(mark.as_str())));
    assert!(
        found.is_empty(),
        "a test either holds or is mended; a wrong input is an `Err` to look at: {found:#?}"
    );
}

#[test]
fn the_browser_is_named_only_where_it_is_met() {
    let allowed =
        ["src/app/platform", "src/app/api.rs", "src/worker", "tests/browser", "tests/house"];
    let found = which(|path, text| {
        text.contains("web_sys") && !allowed.iter().any(|place| path.starts_with(place))
    });
    assert!(
        found.is_empty(),
        "put what needs `web_sys` behind a function of src/app/platform: {found:#?}"
    );
}

#[test]
fn the_page_leaves_computing_to_the_worker() {
    let call = ["protocol", "answer"].join("::");
    let found = which(|path, text| path.starts_with("src/app") && text.contains(&call));
    assert!(
        found.is_empty(),
        "ask through `platform::worker`, so that the page never stands still: {found:#?}"
    );
}

#[test]
fn the_page_has_one_sort_and_no_great_tables() {
    let calls = [
        "sort(",
        "sort_by",
        "sort_unstable",
        "to_uppercase(",
        "to_lowercase(",
        "is_alphanumeric(",
        "parse::<f64>",
    ]
    .map(|call| [".", call].concat());
    let found = which(|path, text| {
        let text = text.split("#[cfg(test)]\nmod tests {").next().unwrap_or_default();
        path.starts_with("src/app")
            && !path.ends_with("order.rs")
            && !path.iter().any(|part| part == "tests" || part == "tests.rs")
            && calls.iter().any(|call| text.contains(call.as_str()))
    });
    assert!(
        found.is_empty(),
        "use `order::sorted` and what stands in `letters`: the page waits for its bytes: {found:#?}"
    );
}

#[test]
fn the_model_depends_on_pure_mathematics_alone() {
    let cargo = env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let mut tree = Command::new(cargo);
    tree.args([
        "tree",
        "--offline",
        "--package",
        "strings",
        "--edges",
        "normal,build",
        "--target",
        "all",
        "--prefix",
        "none",
        "--format",
        "{lib}",
    ]);
    let output = tree.current_dir(root()).output().unwrap();
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let packages = String::from_utf8(output.stdout).unwrap();
    assert!(packages.lines().any(|name| name == "strings"), "{packages}");
    for name in packages.lines() {
        let foreign =
            ["serde", "web_sys", "js_sys", "wasm_bindgen", "yew", "gloo", "tokio", "rand"];
        assert!(
            !foreign.iter().any(|start| name.starts_with(start)),
            "`strings` may not depend on {name}: convert in `protocol`"
        );
    }
}

#[test]
fn the_top_level_stays_short() {
    let known = [
        "Cargo.toml",
        "Cargo.lock",
        "README.md",
        "DEVELOPERS.md",
        "LICENSE",
        "Trunk.toml",
        "rust-toolchain.toml",
        "src",
        "tests",
        "www",
    ];
    // What the repository does not keep is nobody's business.
    let ignored = text(".gitignore");
    let ignored: Vec<_> = ignored.lines().filter_map(|line| line.strip_prefix('/')).collect();
    for entry in fs::read_dir(root()).unwrap() {
        let name = entry.unwrap().file_name().into_string().unwrap();
        let fine = name.starts_with('.')
            || known.contains(&name.as_str())
            || ignored.contains(&name.as_str());
        assert!(
            fine,
            "{name} stands at the top level: move it to where it belongs, in src, tests or www"
        );
    }
}

#[test]
fn the_commands_in_the_handbook_exist() {
    let builtin = [
        "add", "build", "check", "clippy", "doc", "fetch", "fmt", "install", "metadata", "run",
        "test", "tree", "update",
    ];
    let settings = text(".cargo/config.toml");
    let aliases = settings.split("[alias]").nth(1).unwrap().split("\n[").next().unwrap();
    let aliases: Vec<_> =
        aliases.lines().filter_map(|line| Some(line.split_once(" = ")?.0)).collect();
    for document in ["README.md", "DEVELOPERS.md"] {
        // Written last, and then held to its word.
        let Ok(document) = fs::read_to_string(root().join(document)) else { continue };
        for (at, _) in document.match_indices("cargo ") {
            // Where a command begins: at the start of a piece of code, or of a line.
            if !document[..at].ends_with(['`', '\n']) {
                continue;
            }
            let word: String = document[at + 6..]
                .chars()
                .take_while(|c| c.is_ascii_alphanumeric() || *c == '-')
                .collect();
            assert!(
                word.is_empty()
                    || builtin.contains(&word.as_str())
                    || aliases.contains(&word.as_str()),
                "`cargo {word}` is no command: add it to .cargo/config.toml, or correct the document"
            );
        }
    }
}

#[test]
fn no_merge_is_left_half_done() {
    fn walk(folder: &Path, found: &mut Vec<String>) {
        for entry in fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                walk(&path, found);
                continue;
            }
            // What is no text has no such lines.
            let Ok(text) = fs::read_to_string(&path) else { continue };
            let marks = ["<", "=", ">"].map(|mark| mark.repeat(7));
            let marked = |line: &str| marks.iter().any(|mark| line.starts_with(mark.as_str()));
            if text.lines().any(marked) {
                found.push(path.display().to_string());
            }
            // A browser reads on after a rule that is never closed, and drops what follows without a word.
            let style = path.extension() == Some(OsStr::new("css"));
            if style && text.matches('{').count() != text.matches('}').count() {
                found.push(path.display().to_string());
            }
        }
    }
    let mut found = Vec::new();
    for folder in ["src", "tests", "www"] {
        walk(&root().join(folder), &mut found);
    }
    assert!(found.is_empty(), "take one side of the merge, or close the brace: {found:#?}");
}
