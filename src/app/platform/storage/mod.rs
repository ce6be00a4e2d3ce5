//! What the browser keeps for this page: records in `IndexedDB` ([`Database`]), and a few texts in its older stores
//! ([`texts`]), which can be read before anything is drawn.

mod database;
mod tabs;
pub mod texts;

pub use database::Database;
pub use tabs::{Heard, Watch, watch};
