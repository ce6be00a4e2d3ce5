//! The choice of a set: random people, brute force, laws, and situations of the trade.
#![allow(clippy::unwrap_used, reason = "a test that cannot unwrap has failed, and says where")]

mod anybody;
mod bowing;
mod certain;
mod door;
mod exactness;
mod hostile;
mod kinds;
mod laws;
mod lean;
mod random;
mod reading;
mod runaways;
mod situations;
mod today;
mod undecided;
