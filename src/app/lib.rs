//! The page of Ropewalk.
