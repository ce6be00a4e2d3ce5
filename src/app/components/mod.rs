//! Parts of pages that are used in more than one place. They take properties, report events and know no physics.

pub mod along;
pub mod balance;
pub mod bar;
pub mod bow_map;
pub mod chart;
pub mod depths;
pub mod evidence;
pub mod faults;
pub mod field;
pub mod findings;
pub mod habits;
pub mod inside;
pub mod later;
pub mod listening;
pub mod maker;
pub mod nights;
pub mod partials;
pub mod portrait;
pub mod question;
pub mod section;
pub mod side;
pub mod string_card;
pub mod sureness;
pub mod swings;
pub mod table;
pub mod year;
