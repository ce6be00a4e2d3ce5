//! What the page says, apart from how it is laid out.

pub mod doubt;
pub mod naming;
pub mod plan;
pub mod property;
pub mod questions;
pub mod reasons;
pub mod set;
pub mod summary;
