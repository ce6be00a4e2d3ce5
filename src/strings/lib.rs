#![doc = include_str!("README.md")]
//!
//! # The ladder
//!
//! quantity, error, source < constant < material, pitch < construction < physics < body, draw, lanes,
//! setting < answer_to_bow < report < instrument, makeable, precedent < simulate < fit. A module uses only what stands before it.

pub mod quantity;

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
