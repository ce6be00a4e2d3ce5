//! How far the page is kept on this machine.

use yew::prelude::*;

use crate::platform::offline;
use crate::platform::serviceworker::{self, Offline};

/// The last report of the keeper; none before the first. It is asked to look again.
#[hook]
pub fn use_offline() -> Option<Offline> {
    let state = use_state(offline::last);
    let setter = state.setter();
    use_effect_with((), move |()| {
        // A report may have come between drawing and listening.
        setter.set(offline::last());
        offline::watch(Some(Callback::from(move |report| setter.set(Some(report)))));
        serviceworker::check();
        || offline::watch(None)
    });
    (*state).clone()
}
