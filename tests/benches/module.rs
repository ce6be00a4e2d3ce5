//! The package `sweep` as a module for Node, and what a program wrote.

use std::path::PathBuf;
use std::process::Command;

use serde_json::Value;
use tasks::place;

/// What a program wrote, which is JSON.
pub(crate) fn told(command: &mut Command) -> Value {
    let output = command.output().unwrap();
    assert!(output.status.success(), "{command:?}: {}", String::from_utf8_lossy(&output.stderr));
    serde_json::from_slice(&output.stdout).unwrap()
}

/// Builds the module with these features of the target and gives its path.
pub(crate) fn built(name: &str, features: &str) -> PathBuf {
    let folder = place::target().join("tmp/sweep").join(name);
    let succeed =
        |command: &mut Command| assert!(command.status().unwrap().success(), "{command:?}");
    let built = [
        "build",
        "--quiet",
        "--release",
        "--package",
        "sweep",
        "--target",
        "wasm32-unknown-unknown",
    ];
    // In place of the flags that the repository sets.
    let flags = format!("-C target-feature={features}");
    succeed(tasks::setup::command("cargo").args(built).env("RUSTFLAGS", flags));
    let wasm = place::target().join("wasm32-unknown-unknown/release/sweep.wasm");
    succeed(
        tasks::setup::command("wasm-bindgen")
            .args(["--target", "nodejs", "--out-dir"])
            .arg(&folder)
            .arg(wasm),
    );
    folder.join("sweep.js")
}
