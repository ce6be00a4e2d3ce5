//! The lean path as a module for a JavaScript engine, to be timed beside other languages.

use strings::fit::answers::Answers;
use strings::fit::problem;
use strings::report;
use wasm_bindgen::prelude::wasm_bindgen;

/// Runs the sweep so many times and gives the sum of all of them.
#[wasm_bindgen]
#[must_use]
pub fn sweep(lanes: bool, times: u32) -> f64 {
    let posed = problem::pose(&Answers::default());
    let setting = &posed.strings[1].setting;
    (0..times).map(|_| report::sweep(std::hint::black_box(setting), lanes).0).sum()
}
