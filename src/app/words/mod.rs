//! What the page says, apart from how it is laid out.

pub mod bowed;
pub mod certainty;
pub mod changed;
pub mod days;
pub mod detail_level;
pub mod doubt;
pub mod drift;
pub mod fault;
pub mod fitting;
pub mod glance;
pub mod kinds;
pub mod lesson;
pub mod naming;
pub mod partials;
pub mod picture;
pub mod plan;
pub mod practice;
pub mod property;
pub mod questions;
pub mod reasons;
pub mod said;
pub mod set;
pub mod speech;
pub mod summary;
pub mod verdict;
pub mod year;

pub use crate::say;
