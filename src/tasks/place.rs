//! Where things are kept: the root of the repository, the build directory, the tools in it and the built page.

use std::env;
use std::path::{Path, PathBuf};

/// The root of the repository.
#[must_use]
pub fn root() -> PathBuf {
    let package = Path::new(env!("CARGO_MANIFEST_DIR"));
    package.ancestors().nth(2).unwrap_or(package).to_path_buf()
}

/// The build directory: the one this program was built into, so that a changed `CARGO_TARGET_DIR` is followed.
#[must_use]
pub fn target() -> PathBuf {
    // Cargo marks the directory with this file.
    env::current_exe()
        .ok()
        .and_then(|program| {
            program
                .ancestors()
                .find(|place| place.join("CACHEDIR.TAG").is_file())
                .map(Path::to_path_buf)
        })
        .unwrap_or_else(|| root().join("target"))
}

/// The tools that the commands install for this repository alone.
#[must_use]
pub fn tools() -> PathBuf {
    target().join("tools")
}

/// The built page.
#[must_use]
pub fn dist() -> PathBuf {
    target().join("dist")
}

/// Pictures and prints that the end-to-end tests make.
#[must_use]
pub fn screens() -> PathBuf {
    target().join("screens")
}

/// The accessibility checker that the end-to-end tests put into the page.
#[must_use]
pub fn axe() -> PathBuf {
    tools().join("node_modules/axe-core/axe.min.js")
}

/// The Python of the repository's own environment, in which numpy, scipy and mpmath are installed.
#[must_use]
pub fn python() -> PathBuf {
    tools().join(if cfg!(windows) { "python/Scripts/python.exe" } else { "python/bin/python" })
}

/// The folders in which programs are sought: the repository's own tools first, so that a pinned version wins.
#[must_use]
pub fn search_path() -> Vec<PathBuf> {
    let own = [tools().join("bin"), tools().join("node_modules/.bin"), tools().join("python/bin")];
    let cargo = env::var_os("CARGO_HOME")
        .map(PathBuf::from)
        .or_else(|| Some(env::home_dir()?.join(".cargo")));
    let usual = env::var_os("PATH").unwrap_or_default();
    own.into_iter()
        .chain(cargo.map(|home| home.join("bin")))
        .chain(env::split_paths(&usual))
        .collect()
}

/// A program on the search path.
#[must_use]
pub fn program(name: &str) -> Option<PathBuf> {
    let file = format!("{name}{}", env::consts::EXE_SUFFIX);
    search_path().into_iter().map(|place| place.join(&file)).find(|path| path.is_file())
}

/// The browser: the one named by `CHROMIUM`, or Chromium or Chrome under any of its usual names.
#[must_use]
pub fn chromium() -> Option<PathBuf> {
    if let Some(path) = env::var_os("CHROMIUM") {
        return Some(PathBuf::from(path)).filter(|path| path.is_file());
    }
    let bundle = Path::new("/Applications/Google Chrome.app/Contents/MacOS/Google Chrome");
    ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome"]
        .into_iter()
        .find_map(program)
        .or_else(|| bundle.is_file().then(|| bundle.to_path_buf()))
}

/// The browser's driver: the one named by `CHROMEDRIVER`, or the one on the search path.
#[must_use]
pub fn chromedriver() -> Option<PathBuf> {
    if let Some(path) = env::var_os("CHROMEDRIVER") {
        return Some(PathBuf::from(path)).filter(|path| path.is_file());
    }
    program("chromedriver")
}
