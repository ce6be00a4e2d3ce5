//! Puts on a bare machine what building, serving and testing the page needs, and leaves alone what is already there.

use std::env;
use std::ffi::OsString;
use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};

use crate::place;

/// The bundler. 0.22 needs a newer compiler than the pinned one.
const TRUNK: &str = "0.21.14";
/// `wasm-opt`, which shrinks the WebAssembly after the compiler. Debian's is too old to read today's modules.
const BINARYEN: &str = "132.0.0";
/// The accessibility checker.
const AXE: &str = "4.14.1";
/// The Python packages with which reference values are recomputed.
const PYTHON: [&str; 4] = ["numpy", "scipy", "mpmath", "periodictable"];

/// What went wrong, in words for the person at the terminal.
pub type Fault = String;

/// A command that finds the repository's own tools first and builds into this program's build directory.
#[must_use]
pub fn command(program: &str) -> Command {
    let found = place::program(program).map_or_else(|| OsString::from(program), Into::into);
    let mut command = Command::new(found);
    command.current_dir(place::root()).env("CARGO_TARGET_DIR", place::target());
    // Trunk reads NO_COLOR as a switch of its own and refuses the usual value 1.
    command.env_remove("NO_COLOR");
    // The flags of .cargo/config.toml would be overridden, and the page would be another one.
    command.env_remove("RUSTFLAGS");
    // Debian's installer would ask questions of nobody.
    command.env("DEBIAN_FRONTEND", "noninteractive");
    if let Ok(path) = env::join_paths(place::search_path()) {
        command.env("PATH", path);
    }
    command
}

/// Runs a command and shows what it prints.
///
/// # Errors
/// When it cannot be started or does not succeed.
pub fn run(program: &str, arguments: &[&str]) -> Result<(), Fault> {
    succeed(command(program).args(arguments))
}

/// `cargo test` with these arguments, where tests that drive a browser find its driver.
#[must_use]
pub fn tests(arguments: &[&str]) -> Command {
    let mut command = command("cargo");
    command.arg("test").args(arguments);
    if let Some(driver) = place::chromedriver() {
        command.env("CHROMEDRIVER", driver);
    }
    command
}

/// Runs a command and shows what it prints.
///
/// # Errors
/// When it cannot be started or does not succeed.
pub fn succeed(command: &mut Command) -> Result<(), Fault> {
    let name = command.get_program().display().to_string();
    let arguments: Vec<_> =
        command.get_args().map(|argument| argument.display().to_string()).collect();
    match command.stdin(Stdio::null()).status() {
        Ok(status) if status.success() => Ok(()),
        Ok(status) => Err(format!("`{name} {}` ended with {status}", arguments.join(" "))),
        Err(error) => Err(format!("`{name}` could not be started: {error}")),
    }
}

/// What a command prints, when it succeeds.
#[must_use]
pub fn output(program: &str, arguments: &[&str]) -> Option<String> {
    let output = command(program)
        .args(arguments)
        .stdin(Stdio::null())
        .stderr(Stdio::null())
        .output()
        .ok()?;
    output.status.success().then(|| String::from_utf8_lossy(&output.stdout).trim().to_owned())
}

/// The version of `wasm-bindgen` that Cargo.lock pins; the tool must match the library to the last digit.
///
/// # Errors
/// When Cargo.lock cannot be read.
pub fn bindgen_version() -> Result<String, Fault> {
    let lock = fs::read_to_string(place::root().join("Cargo.lock"))
        .map_err(|error| format!("Cargo.lock: {error}"))?;
    locked_version(&lock, "wasm-bindgen")
        .ok_or_else(|| "Cargo.lock names no wasm-bindgen".to_owned())
}

fn locked_version(lock: &str, package: &str) -> Option<String> {
    let (_, after) = lock.split_once(&format!("name = \"{package}\"\nversion = \""))?;
    Some(after.split_once('"')?.0.to_owned())
}

/// Whether a program of exactly this version is there.
fn has(program: &str, version: &str) -> bool {
    output(program, &["--version"])
        .is_some_and(|line| line.split_whitespace().any(|word| word == version))
}

/// What building the page needs.
///
/// # Errors
/// When something is missing that cannot be installed; the message says what to do.
pub fn for_building() -> Result<(), Fault> {
    // A pinned toolchain does not bring its wasm target along when rustup may not install by itself.
    let target = "wasm32-unknown-unknown";
    if output("rustup", &["target", "list", "--installed"])
        .is_some_and(|list| !list.lines().any(|line| line == target))
    {
        run("rustup", &["target", "add", target])?;
    }
    run("cargo", &["fetch", "--locked"])?;

    let fast =
        [("CARGO_PROFILE_RELEASE_LTO", "off"), ("CARGO_PROFILE_RELEASE_CODEGEN_UNITS", "16")];
    if !has("trunk", TRUNK) {
        println!("Installing trunk {TRUNK} (about four minutes, once) ...");
        let mut install = install("trunk", TRUNK);
        // Unoptimised it builds three times as fast, and it has little to compute itself.
        install.args(["--locked"]).envs(fast);
        install
            .env("CARGO_PROFILE_RELEASE_OPT_LEVEL", "0")
            .env("CARGO_PROFILE_RELEASE_PANIC", "unwind");
        succeed(&mut install)?;
    }
    let version = bindgen_version()?;
    if !has("wasm-bindgen", &version) || !has("wasm-bindgen-test-runner", &version) {
        println!("Installing wasm-bindgen {version} (about two minutes, once) ...");
        // Not `--locked`: its lock file names a package version that the registry lacks.
        let mut install = install("wasm-bindgen-cli", &version);
        install.args(["--bin", "wasm-bindgen", "--bin", "wasm-bindgen-test-runner"]);
        install.env("CARGO_PROFILE_RELEASE_OPT_LEVEL", "1");
        succeed(&mut install)?;
    }
    if !has_optimiser() && place::program("npm").is_some() {
        // Without it the page works as well and is only larger, so a failure here is told and not fatal.
        if let Err(fault) = npm() {
            println!("{fault}");
        }
    }
    Ok(())
}

/// `cargo install` where the machine keeps its programs; beside this repository if another version is kept there.
fn install(package: &str, version: &str) -> Command {
    let mut command = command("cargo");
    // From elsewhere than the repository, whose settings are not meant for it.
    command.current_dir(env::temp_dir()).env_remove("CARGO_TARGET_DIR");
    command.args(["install", package, "--version", version, "--no-default-features", "--force"]);
    let program = if package == "trunk" { "trunk" } else { "wasm-bindgen" };
    if place::program(program).is_some() {
        command.arg("--root").arg(place::tools());
    }
    command
}

/// Whether the WebAssembly can be shrunk.
#[must_use]
pub fn has_optimiser() -> bool {
    output("wasm-opt", &["--version"]).is_some_and(|line| {
        // 116 is the first that reads what the pinned compiler and wasm-bindgen write.
        line.split_whitespace()
            .find_map(|word| word.parse::<u32>().ok())
            .is_some_and(|version| version >= 116)
    })
}

/// Builds the optimised page.
///
/// # Errors
/// When it does not build.
pub fn build() -> Result<(), Fault> {
    fs::create_dir_all(place::target()).map_err(|error| format!("the build directory: {error}"))?;
    let lock = fs::File::create(place::target().join("dist.lock"))
        .map_err(|error| format!("the build directory: {error}"))?;
    // Two builds into one folder at once would mix their files.
    lock.lock().map_err(|error| format!("the build directory: {error}"))?;
    let mut trunk = command("trunk");
    trunk.args(["build", "--offline", "true", "--dist"]).arg(place::dist());
    if has_optimiser() {
        trunk.arg("--release");
    } else {
        println!(
            "wasm-opt is not here (it comes with npm), so the page is built without it: the same page, somewhat larger."
        );
        trunk.args(["--cargo-profile", "release"]);
    }
    succeed(&mut trunk)
}

/// What testing the page needs beyond building it. Every fault is reported, not only the first.
#[must_use]
pub fn for_testing() -> Vec<Fault> {
    let mut faults = Vec::new();
    let missing = debian_packages();
    if !missing.is_empty() {
        let root = output("id", &["-u"]).as_deref() == Some("0");
        if root && place::program("apt-get").is_some() {
            let mut arguments = vec!["install", "-y", "--no-install-recommends"];
            arguments.extend(&missing);
            if run("apt-get", &arguments).is_err() {
                // A fresh machine may not have its lists of packages yet.
                faults.extend(
                    run("apt-get", &["update"]).and_then(|()| run("apt-get", &arguments)).err(),
                );
            }
        }
    }
    if place::chromium().is_none() {
        faults.push("no Chromium or Chrome: install it (Debian: `apt-get install chromium`), or name it in CHROMIUM".to_owned());
    }
    if place::chromedriver().is_none() {
        faults.push(
            "no chromedriver: install the one of the browser's version (Debian: `apt-get install chromium-driver`), or name it in CHROMEDRIVER"
                .to_owned(),
        );
    }
    faults.extend(npm().err());
    faults.extend(python().err());
    faults
}

/// The Debian packages of what is not here.
fn debian_packages() -> Vec<&'static str> {
    let mut packages = Vec::new();
    if place::chromium().is_none() {
        packages.push("chromium");
    }
    if place::chromedriver().is_none() {
        packages.push("chromium-driver");
    }
    if place::program("npm").is_none() {
        packages.push("npm");
    }
    if place::program("python3").is_none() {
        packages.extend(["python3", "python3-venv"]);
    }
    packages
}

/// The optimiser and the accessibility checker, in the tool folder of this repository.
fn npm() -> Result<(), Fault> {
    let has = |package: &str, version: &str| {
        let about = place::tools().join("node_modules").join(package).join("package.json");
        fs::read_to_string(about)
            .is_ok_and(|text| text.contains(&format!("\"version\": \"{version}\"")))
    };
    if has("binaryen", BINARYEN) && has("axe-core", AXE) {
        return Ok(());
    }
    if place::program("npm").is_none() {
        return Err("no npm: install Node.js with npm (Debian: `apt-get install npm`)".to_owned());
    }
    let tools = place::tools();
    fs::create_dir_all(&tools).map_err(|error| format!("{}: {error}", tools.display()))?;
    let (binaryen, axe) = (format!("binaryen@{BINARYEN}"), format!("axe-core@{AXE}"));
    let mut install = command("npm");
    install.args([
        "install",
        "--no-audit",
        "--no-fund",
        "--no-package-lock",
        "--ignore-scripts",
        "--loglevel",
        "error",
        "--prefix",
    ]);
    succeed(install.arg(&tools).args([binaryen, axe]))
}

/// The Python environment of this repository.
fn python() -> Result<(), Fault> {
    let python = place::python();
    let imports = format!("import {}", PYTHON.join(", "));
    let works = |python: &Path| {
        let mut check = Command::new(python);
        check
            .args(["-c", &imports])
            .stderr(Stdio::null())
            .status()
            .is_ok_and(|status| status.success())
    };
    if works(&python) {
        return Ok(());
    }
    let fault = |fault: Fault| {
        format!("the Python packages {} cannot be installed: {fault}", PYTHON.join(", "))
    };
    let folder = place::tools().join("python");
    // `--clear` also mends a half-made environment.
    succeed(command("python3").args(["-m", "venv", "--clear"]).arg(&folder)).map_err(fault)?;
    let mut install = Command::new(&python);
    install.args(["-m", "pip", "install", "--quiet", "--disable-pip-version-check"]).args(PYTHON);
    succeed(&mut install).map_err(fault)?;
    if works(&python) {
        Ok(())
    } else {
        Err(fault("they are installed but cannot be imported".to_owned()))
    }
}

/// The name and version of every tool, or what is missing.
#[must_use]
pub fn inventory() -> Vec<Result<String, Fault>> {
    let show = |name: &str, program: Option<&Path>, arguments: &[&str]| {
        let missing = || format!("{name} is missing or does not start");
        let found = output(program.and_then(Path::to_str).ok_or_else(missing)?, arguments)
            .ok_or_else(missing)?;
        Ok(format!("{name}: {}", found.lines().next().unwrap_or_default()))
    };
    let on_path = |name: &str| show(name, place::program(name).as_deref(), &["--version"]);
    let axe = || {
        if place::axe().is_file() {
            Ok(format!("axe-core: {AXE}"))
        } else {
            Err("axe-core is missing".to_owned())
        }
    };
    let versions = format!(
        "import {0}; print(*(f'{{m.__name__}} {{m.__version__}}' for m in ({0})), sep=', ')",
        PYTHON.join(", ")
    );
    vec![
        on_path("rustc"),
        on_path("trunk"),
        on_path("wasm-bindgen"),
        on_path("wasm-bindgen-test-runner"),
        on_path("wasm-opt"),
        axe(),
        show("browser", place::chromium().as_deref(), &["--version"]),
        show("driver", place::chromedriver().as_deref(), &["--version"]),
        show("python", Some(&place::python()), &["-c", &versions]),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_version_is_read_from_the_lock_file() {
        let lock = "[[package]]\nname = \"wasm-bindgen-futures\"\nversion = \"0.4.80\"\n\n[[package]]\nname = \"wasm-bindgen\"\nversion = \"0.2.130\"\n";
        assert_eq!(locked_version(lock, "wasm-bindgen").as_deref(), Some("0.2.130"));
        assert_eq!(locked_version(lock, "yew"), None);
    }
}
