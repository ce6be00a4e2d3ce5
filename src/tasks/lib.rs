//! The commands of the repository, and the static file server they share with the end-to-end tests.
