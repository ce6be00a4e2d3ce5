//! The conventions of the repository, kept as tests.
