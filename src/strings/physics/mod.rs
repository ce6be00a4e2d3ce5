//! The physics of one string: one question a file, one formula a function.
//!
//! Every function takes and returns quantities; every formula names its source. Nothing here formats text.

pub mod bowing;
pub mod climate;
pub mod load;
pub mod mass;
pub mod partials;
pub mod settling;
pub mod stiffness;
pub mod strength;
pub mod tension;
pub mod tuning;
