//! What components share: the model to ask, the state of the page, and where the page is.

mod asked;
mod bowed;
mod certainty;
mod detail_level;
mod kept;
mod model;
mod offline;
pub mod preferences;
mod route;
mod store;

pub use asked::{Asked, use_asked};
pub use bowed::{Hearing, Listener, Made, MapStep, Mapper, Maps, factors, use_mapper, use_sounds};
pub use certainty::{Sureness, use_certainty};
pub use detail_level::use_detail_level;
pub use kept::use_kept;
pub use model::{AskError, CALM_MS, Finder, Model, use_finder, use_model, warm_model};
pub use offline::use_offline;
pub use route::{Location, is_early, use_route};
pub use store::{Store, load_first, use_store, use_store_of_page};
