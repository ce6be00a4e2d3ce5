//! How deep a person likes the page: kept with the other habits.

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::depth::Depth;
use crate::habits::{self, Habits};

/// The depth, and the way to change it.
#[hook]
pub fn use_depth() -> (Depth, Callback<Depth>) {
    let depth = use_state(|| habits::now().depth);
    let change = {
        let depth = depth.setter();
        Callback::from(move |wanted| {
            depth.set(wanted);
            spawn_local(async move {
                // The language stays, so nothing has to be fetched and nothing can fail.
                drop(super::habits::change(Habits { depth: wanted, ..habits::now() }).await);
            });
        })
    };
    (*depth, change)
}
