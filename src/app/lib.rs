//! The page of Ropewalk: what a person sees and touches.
//!
//! It computes no physics: every answer comes from the worker through [`platform::worker`].

pub mod api;
pub mod app;
pub mod components;
pub mod day;
pub mod detail_level;
pub mod fields;
pub mod hooks;
pub mod invented;
pub mod lesson;
pub mod letters;
pub mod order;
pub mod pages;
pub mod platform;
pub mod preferences;
pub mod records;
pub mod report_sheet;
pub mod route;
pub mod sheet;
pub mod state;
pub mod under_bow;
pub mod units;
pub mod wave;
pub mod words;
