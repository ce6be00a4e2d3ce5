//! The model in a web worker.

fn main() {}
