//! Drives the built page in a real browser, as a person would, and watches that nothing leaves the machine.
//!
//! `cargo e2e` builds the page and runs these. After a first build, `cargo test -p e2e NAME` runs some of them.
#![allow(clippy::unwrap_used, reason = "in a test, a panic is how a failure is told")]

mod access;
mod advice;
mod bowed;
mod class;
mod german;
mod ground;
mod input;
mod keyboard;
mod kills;
mod offline;
mod path;
mod recovery;
mod situations;
mod start;
mod stored;
mod support;
mod sure;
mod tree;
mod updates;
mod workers;
