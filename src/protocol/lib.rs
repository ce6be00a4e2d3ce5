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
mod read;
pub mod reply;
pub mod request;
mod tables;

pub use handle::{answer, answer_telling, handle, schema};
pub use read::Unread;
