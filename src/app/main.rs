//! Starts the page.

fn main() {}
