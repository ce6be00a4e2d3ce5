#![doc = include_str!("README.md")]
//!
//! This package holds no physics. It turns words and numbers from outside into the model's types, names every
//! fault by its field, and turns the model's answers back into plain numbers with the unit in the field name.
//!
//! # The ladder
//!
//! A module uses only what is declared on the rungs before its own; blank lines separate the rungs.

mod tree;

mod read;

mod allowed;
mod wire;

pub mod request;

pub mod reply;

mod convert;
mod parse;
mod schema;
mod upgrade;

pub mod document;

mod encode;

mod bowed;
mod lesson;

mod handle;

pub mod split_search;

pub use handle::{answer, answer_bytes, answer_telling, handle};
pub use parse::{REQUEST_BYTES, REQUEST_VALUES};
pub use read::Unread;
pub use schema::schema;
