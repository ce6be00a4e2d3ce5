//! Do the ranges hold the truth? Against made worlds with other laws, against strings that were measured, and one way of
//! finding a range against the other.
#![allow(clippy::unwrap_used, reason = "in a test, a panic is how a failure is told")]
#![allow(clippy::print_stdout, reason = "what the ranges hold is to be read")]
#![allow(clippy::disallowed_methods, reason = "nothing here enters the model")]

mod measured;
mod methods;
mod strings_of_the_trade;
mod worlds;
