#![doc = include_str!("README.md")]

pub mod quantity;

pub mod error;
pub mod source;

pub mod constant;

pub mod material;
pub mod pitch;

pub mod construction;

pub mod physics;

pub mod draw;
pub mod setting;

pub mod report;

pub mod instrument;
pub mod makeable;
pub mod precedent;

pub mod fit;
