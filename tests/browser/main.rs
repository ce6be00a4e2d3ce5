//! What the page asks of the browser, tried inside a real one.
//!
//! `cargo browser` runs these. They belong to the package `app`.
#![allow(clippy::unwrap_used, reason = "in a test, a panic is how a failure is told")]
#![cfg(target_arch = "wasm32")]

mod bowed;
mod bowpage;
mod class;
mod field;
mod files;
mod portrait;
mod questions;
mod serviceworker;
mod set;
mod storage;
mod table;
mod units;
mod worker;

use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
fn no_failure_is_planted() {
    assert_ne!(
        option_env!("ROPEWALK_PLANT"),
        Some("browser"),
        "planted, to see that it is counted"
    );
}
