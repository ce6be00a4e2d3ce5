//! The commands of the repository, and what they share with the end-to-end tests:
//! the static file server and the places where tools and builds are kept.
#![allow(
    clippy::print_stdout,
    reason = "installing and building take minutes, and say what they do on the terminal"
)]

pub mod finish;
pub mod place;
pub mod scripts;
pub mod server;
pub mod setup;
pub mod tally;
