//! The rooms of the page, one module each.

pub mod home;
