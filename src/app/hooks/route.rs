//! Where the page is, following the address.

use yew::prelude::*;

use crate::platform::{address, view};
use crate::route::Route;

/// What the address says.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Place {
    /// The room; home, if there is none of that address.
    pub route: Route,
    /// The address, if no room has it.
    pub lost: Option<String>,
}

fn place(hash: &str) -> Place {
    match Route::read(hash) {
        Some(route) => Place { route, lost: None },
        None => Place { route: Route::Home, lost: Some(hash.to_owned()) },
    }
}

/// The room that the address names. When it changes, the focus goes to the heading of the new room.
#[hook]
pub fn use_route() -> Place {
    let here = use_state(|| place(&address::hash()));
    {
        let here = here.setter();
        use_effect_with((), move |()| {
            let watch = address::watch(move |hash| here.set(place(&hash)));
            move || drop(watch)
        });
    }
    {
        let before = use_mut_ref(|| None::<Route>);
        use_effect_with((*here).clone(), move |place| {
            // Whoever opens the page begins at its top, as on any page.
            let before = before.replace(Some(place.route.clone()));
            if before.is_none_or(|before| place.route.stays(&before)) {
                return;
            }
            match &place.route {
                Route::Everything { field: Some(field) } => view::focus_id(field),
                _ => view::focus_heading(),
            }
        });
    }
    (*here).clone()
}
