//! The commands of the repository, and what they share with the end-to-end tests:
//! the static file server and the places where tools and builds are kept.

pub mod finish;
pub mod place;
pub mod server;
pub mod setup;
pub mod tally;
