//! How deep a person likes the page: kept with the other preferences.

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::detail_level::DetailLevel;
use crate::preferences::{self, Preferences};

/// The depth, and the way to change it.
#[hook]
pub fn use_detail_level() -> (DetailLevel, Callback<DetailLevel>) {
    let depth = use_state(|| preferences::now().depth);
    let change = {
        let depth = depth.setter();
        Callback::from(move |wanted| {
            depth.set(wanted);
            spawn_local(async move {
                // The language stays, so nothing has to be fetched and nothing can fail.
                drop(
                    super::preferences::change(Preferences { depth: wanted, ..preferences::now() })
                        .await,
                );
            });
        })
    };
    (*depth, change)
}
