#![doc = include_str!("README.md")]
//!
//! # The ladder
//!
//! A module uses only what is declared on the rungs before its own; blank lines separate the rungs.

pub mod quantity;
mod random;
#[macro_use]
mod words;

pub mod error;
pub mod source;

pub mod constant;

pub mod material;
pub mod pitch;

pub mod construction;

pub mod physics;

pub mod body;
pub mod draw;
pub mod lanes;

pub mod setting;

pub mod answer_to_bow;

pub mod report;

pub mod instrument;
pub mod makeable;

pub mod precedent;

pub mod simulate;

pub mod fit;

pub mod unverified;
