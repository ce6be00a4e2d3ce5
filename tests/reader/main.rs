//! Does the page's text ever contradict its numbers? An independent reader of what the page draws.
//!
//! The page is drawn natively from messages with marks in them (`marks`), so that each sentence comes back as the name
//! of its message and what stands in its places, in English as in German. Every figure and every direction is compared
//! with the reply that was drawn; the reader has units, conversions and rounding of its own. What it does not know, it
//! objects to.
#![allow(clippy::unwrap_used, reason = "a test that cannot unwrap has failed, and says where")]

#[path = "../fits/anybody.rs"]
mod anybody;
mod cases;
mod charts;
mod claims;
mod figure;
mod heard;
mod kinds;
mod marks;
mod names;
mod objects;
mod reader;
mod rendered;
mod rows;
mod set;
mod text;
mod verdict;
mod why;
mod words;
