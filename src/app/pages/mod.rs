//! The rooms of the page, one module each.

pub mod ask;
pub mod check;
pub mod everything;
pub mod finding;
pub mod home;
