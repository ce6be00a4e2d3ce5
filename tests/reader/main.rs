//! Does the page's text ever contradict its numbers? An independent reader of what the page draws.
//!
//! The page is drawn natively, read back as text, and every figure, comparative and word on a scale is compared with
//! the reply it was drawn from. The reader has words, units, conversions and rounding of its own; what it does not know,
//! it objects to.
#![allow(clippy::unwrap_used, reason = "a test that cannot unwrap has failed, and says where")]

#[path = "../fits/anybody.rs"]
mod anybody;
mod cases;
mod figure;
mod german;
mod heard;
mod objects;
mod phrases;
mod reader;
mod rendered;
mod rows;
mod sure;
mod text;
mod verdict;
mod vocabulary;
