//! The physics of bowed strings, and the choice of a set of them.
