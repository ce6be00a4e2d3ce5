#![doc = include_str!("README.md")]
//!
//! This package holds no physics. It turns words and numbers from outside into the model's types, names every
//! fault by its field, and turns the model's answers back into plain numbers with the unit in the field name.

mod bowed;
mod certainty;
mod convert;
pub mod document;
pub mod halves;
mod handle;
mod lesson;
mod parse;
mod read;
pub mod reply;
pub mod request;
mod schema;
mod tables;
mod tree;
mod upgrade;

pub use handle::{answer, answer_bytes, answer_telling, handle};
pub use parse::{REQUEST_BYTES, REQUEST_VALUES};
pub use read::Unread;
pub use schema::schema;
