//! What the page says, apart from how it is laid out.

pub mod questions;
pub mod summary;
