//! The physics of one string: one question a file, one formula a function.
//!
//! Every function takes and returns quantities; every formula names its source. Nothing here formats text.

pub mod bowing;
pub mod climate;
pub mod damping;
pub mod load;
pub mod mass;
pub mod partials;
pub mod settling;
pub mod stiffness;
pub mod stopping;
pub mod strand;
pub mod strength;
pub mod tension;
pub mod torsion;
pub mod tuning;
