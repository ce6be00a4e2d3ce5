//! The rooms of the page, one module each.

pub mod ask;
pub mod check;
pub mod class;
pub mod compare;
pub mod everything;
pub mod glossary;
pub mod home;
pub mod progress;
pub mod set;
pub mod sources;
pub mod specimen;
