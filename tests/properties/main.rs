//! Laws that hold for every string: scaling, limits, inverses, finite answers, and faults for what is out of bounds.
#![allow(
    clippy::disallowed_methods,
    reason = "an expected value is not computed with the functions that the model computes with"
)]

mod any_string;
mod bounds;
mod inverses;
mod limits;
mod scaling;
mod sweep;
mod time;
