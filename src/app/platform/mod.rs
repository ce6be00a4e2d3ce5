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
pub mod rows;
pub mod serviceworker;
pub mod session;
pub mod storage;
pub mod view;
pub mod worker;

/// Starts what must listen from the beginning.
pub fn start() {
    pointer::start();
}

/// Begins to keep the page on this machine.
pub fn keep() {
    serviceworker::register(offline::report);
}

/// Tells the start script, which outlives this module, that it has panicked.
pub fn tell_of_panic() {
    if let Ok(panic) = web_sys::Event::new("panic") {
        drop(gloo::utils::window().dispatch_event(&panic));
    }
}
