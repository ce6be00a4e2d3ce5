//! What components share: the model to ask, the state of the page, and where the page is.

mod model;
mod route;

pub use model::{AskError, Model, use_model};
pub use route::{Place, use_route};
