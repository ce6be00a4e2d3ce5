//! The browser, behind plain functions: the only part of the page, with `api.rs`, that names `web_sys`.

pub mod address;
pub mod audio;
pub mod clock;
pub mod field;
pub mod files;
pub mod keys;
pub mod language;
pub mod offline;
pub mod pointer;
pub mod print;
pub mod serviceworker;
pub mod storage;
pub mod view;
pub mod worker;

/// Starts what works in the background: the worker loads while the page is drawn.
pub fn start() {
    pointer::start();
    worker::of_page().start();
    serviceworker::register(offline::report);
}
