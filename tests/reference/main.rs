//! The model against independent programs: each is run anew, held against its stored output, and the model against it.
//!
//! The programs are the `*.py` files beside this one; what they printed is stored in the `*.json` file of the same
//! name. To make that file again: `cd tests/reference && python3 NAME.py > NAME.json`.
//! They need Python 3 with numpy, scipy, mpmath and periodictable, which `cargo proof` installs.
#![allow(
    clippy::disallowed_methods,
    reason = "an expected value is not computed with the functions that the model computes with"
)]

mod air;
mod bowed;
mod bridge;
mod capstan;
mod collagen;
mod creeping;
mod decay;
mod densities;
mod elastic_string;
mod ends;
mod guettler;
mod helix;
mod normal;
mod playing;
mod python;
mod recompute;
mod relaxing;
mod section;
mod soaking;
mod stiff_string;
mod strand;
mod swings;
mod tangent;
mod temperament;
mod twisting;
mod winding;
mod yarn;
