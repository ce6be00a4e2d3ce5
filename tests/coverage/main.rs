//! Do the ranges hold the truth?
