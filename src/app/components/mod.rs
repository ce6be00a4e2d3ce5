//! Parts of pages that are used in more than one place. They take properties, report events and know no physics.

pub mod faults;
pub mod field;
pub mod question;
