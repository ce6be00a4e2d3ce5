//! The commands of the repository: serve, proof, ask, and the last step of a build.

fn main() {}
