//! The page of Ropewalk: what a person sees and touches.
//!
//! It computes no physics: every answer comes from the worker through [`platform::worker`].

pub mod api;
pub mod app;
pub mod platform;
