//! `cargo proof`: everything that must hold before a change is accepted, in stages, with one line of counts at the end.

use std::fs;
use std::io::{BufRead, BufReader};
use std::path::PathBuf;
use std::process::{Command, Stdio};
use std::time::Instant;

use tasks::place;
use tasks::setup::{self, Fault};
use tasks::tally::Tally;

/// The stages, in the order in which they run.
const STAGES: [&str; 6] = ["format", "native", "clippy", "tools", "browser", "end-to-end"];

/// What is asked of the proof.
#[derive(Debug, Default)]
pub(crate) struct Wish {
    /// Run this stage alone.
    only: Option<String>,
    /// Make this stage fail, to see that the last line and the exit code tell.
    plant: Option<String>,
}

impl Wish {
    /// Reads the words after `cargo proof`.
    pub(crate) fn read(words: &[String]) -> Result<Self, Fault> {
        let mut wish = Self::default();
        for pair in words.chunks(2) {
            let stage = pair.get(1).filter(|stage| STAGES.contains(&stage.as_str()));
            let stage = stage.ok_or_else(|| {
                format!("{} needs one of the stages {}", pair[0], STAGES.join(", "))
            })?;
            match pair[0].as_str() {
                "--only" => wish.only = Some(stage.clone()),
                "--plant" => wish.plant = Some(stage.clone()),
                other => return Err(format!("{other} is neither --only nor --plant")),
            }
        }
        Ok(wish)
    }
}

/// Runs the stages and returns the sum of their counts.
pub(crate) fn prove(wish: &Wish) -> Tally {
    let runs = |stage: &str| wish.only.as_deref().is_none_or(|only| only == stage);
    let planted = |stage: &str| wish.plant.as_deref() == Some(stage);

    // First, because tests of any stage may use what it installs. Its faults count in the stage that names the tools.
    let mut faults = Vec::new();
    if wish.only.as_deref().is_none_or(|only| !matches!(only, "format" | "native" | "clippy")) {
        let start = Instant::now();
        println!("== set-up ==");
        faults.extend(setup::for_building().err());
        faults.extend(setup::for_testing());
        for fault in &faults {
            println!("{fault}");
        }
        println!("== set-up: {:.1} s ==", start.elapsed().as_secs_f64());
    }

    let mut sum = Tally::default();
    for stage in STAGES.into_iter().filter(|stage| runs(stage)) {
        let start = Instant::now();
        println!("\n== {stage} ==");
        let plant = planted(stage);
        let tally = match stage {
            "format" => whole(format(plant)),
            "native" => native(plant),
            "clippy" => whole(clippy(plant)),
            "tools" => whole(tools(&faults, plant)),
            "browser" => {
                tests(&[&["--target", "wasm32-unknown-unknown", "-p", "app"]], stage, plant)
            }
            _ => match setup::build() {
                Ok(()) => {
                    sizes();
                    tests(&[&["-p", "e2e"]], stage, plant)
                }
                Err(fault) => whole(Err(fault)),
            },
        };
        println!("== {stage}: {tally}, {:.1} s ==", start.elapsed().as_secs_f64());
        sum = sum.and(tally);
    }
    sum
}

/// A stage that is one check.
fn whole(result: Result<(), Fault>) -> Tally {
    match result {
        Ok(()) => Tally::PASS,
        Err(fault) => {
            println!("{fault}");
            Tally::FAIL
        }
    }
}

/// The file in which the checks against outside sources write down what they compared.
fn rows() -> PathBuf {
    place::target().join("rows.tsv")
}

/// Everything that needs no browser.
fn native(plant: bool) -> Tally {
    drop(fs::remove_file(rows()));
    let checks: &[&[&str]] = &[
        &[],
        // What the checks of the first command wrote down.
        &["-p", "tests", "--test", "count"],
        // Together, so that what the page is made of is compiled once for both.
        &["-p", "app", "-p", "reader", "--lib", "--test", "reader"],
    ];
    tests(checks, "native", plant)
}

/// A stage of tests: shows what the commands print, and sums the closing lines of the harness.
fn tests(commands: &[&[&str]], stage: &str, plant: bool) -> Tally {
    let mut sum = Tally::default();
    let mut succeeded = true;
    for arguments in commands {
        let mut command = setup::tests(&[&["--no-fail-fast"], *arguments].concat());
        command.env_remove("ROPEWALK_PLANT").env("ROPEWALK_ROWS", rows());
        if plant {
            // Each of these stages holds a test that fails when it reads its own name here.
            command.env("ROPEWALK_PLANT", stage);
        }
        let (tally, success) = count(&mut command);
        sum = sum.and(tally);
        succeeded &= success;
    }
    sum.of_stage(succeeded)
}

/// Runs one command and shows what it prints: the sum of its closing lines, and whether it succeeded.
fn count(command: &mut Command) -> (Tally, bool) {
    let mut sum = Tally::default();
    let Ok(mut child) = command.stdin(Stdio::null()).stdout(Stdio::piped()).spawn() else {
        return (sum, false);
    };
    if let Some(output) = child.stdout.take() {
        for line in BufReader::new(output).split(b'\n').map_while(Result::ok) {
            let line = String::from_utf8_lossy(&line);
            println!("{line}");
            sum = sum.and(Tally::of_line(&line).unwrap_or_default());
        }
    }
    (sum, child.wait().is_ok_and(|status| status.success()))
}

fn format(plant: bool) -> Result<(), Fault> {
    setup::run("cargo", &["fmt", "--all", "--check"])?;
    if plant {
        let file = place::target().join("planted.rs");
        fs::write(&file, "fn  main( ) { }\n").map_err(|error| error.to_string())?;
        setup::run("rustfmt", &["--check", &file.display().to_string()])?;
    }
    Ok(())
}

fn clippy(plant: bool) -> Result<(), Fault> {
    // The plant is a lint that every Rust program in the usual style breaks.
    let deny: &[&str] = if plant {
        &["-D", "warnings", "-D", "clippy::implicit_return"]
    } else {
        &["-D", "warnings"]
    };
    let native =
        ["clippy", "--workspace", "--exclude", "app", "--exclude", "worker", "--all-targets", "--"];
    let web = [
        "clippy",
        "--target",
        "wasm32-unknown-unknown",
        "-p",
        "app",
        "-p",
        "worker",
        "--all-targets",
        "--",
    ];
    setup::run("cargo", &[&native, deny].concat())?;
    setup::run("cargo", &[&web, deny].concat())
}

fn tools(faults: &[Fault], plant: bool) -> Result<(), Fault> {
    let mut missing = faults.to_vec();
    for tool in setup::inventory() {
        match tool {
            Ok(line) => println!("{line}"),
            Err(fault) => missing.push(fault),
        }
    }
    if plant {
        missing.push("a tool that is not there (planted)".to_owned());
    }
    if missing.is_empty() { Ok(()) } else { Err(missing.join("\n")) }
}

/// Shows what a visitor's browser fetches.
fn sizes() {
    let Ok(entries) = fs::read_dir(place::dist()) else {
        return;
    };
    let mut files: Vec<_> = entries
        .flatten()
        .filter_map(|entry| {
            Some((entry.metadata().ok().filter(fs::Metadata::is_file)?.len(), entry.file_name()))
        })
        .collect();
    files.sort();
    for (bytes, name) in files.iter().rev().take(6) {
        println!("{:>9} bytes  {}", bytes, name.display());
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn words(text: &str) -> Vec<String> {
        text.split_whitespace().map(str::to_owned).collect()
    }

    #[test]
    fn a_wish_names_known_stages() {
        let wish = Wish::read(&words("--only browser --plant browser")).unwrap();
        assert_eq!(
            (wish.only.as_deref(), wish.plant.as_deref()),
            (Some("browser"), Some("browser"))
        );
        for wrong in ["--only", "--only everything", "--twice native", "native"] {
            assert!(Wish::read(&words(wrong)).is_err(), "{wrong}");
        }
    }

    #[test]
    fn no_failure_is_planted() {
        assert_ne!(
            std::env::var("ROPEWALK_PLANT").as_deref(),
            Ok("native"),
            "planted, to see that it is counted"
        );
    }

    #[test]
    fn a_command_that_cannot_run_or_fails_has_not_succeeded() {
        assert_eq!(count(&mut Command::new("there-is-no-such-program")), (Tally::default(), false));
        assert_eq!(count(&mut Command::new("false")), (Tally::default(), false));
        assert_eq!(count(&mut Command::new("true")), (Tally::default(), true));
    }

    #[test]
    fn what_a_command_prints_is_counted() {
        let mut shell = Command::new("sh");
        shell.args([
            "-c",
            "echo 'test result: FAILED. 3 passed; 2 failed; 1 ignored; 0 measured'; exit 101",
        ]);
        assert_eq!(count(&mut shell), (Tally { passed: 3, failed: 2, skipped: 1 }, false));
    }
}
