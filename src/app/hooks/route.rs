//! Where the page is, following the address.

use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use crate::hooks::preferences;
use crate::platform::{address, view};
use crate::route::Route;
use crate::words::speech;

/// What the address says.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Location {
    /// The room; home, if there is none of that address.
    pub route: Route,
    /// The address, if no room has it.
    pub lost: Option<String>,
    /// A room was asked for, and what it says could not be had.
    pub mute: bool,
    /// The page has just started, and not in the language that was wished for: its messages could not be had.
    pub foreign: bool,
}

fn location(hash: &str) -> Location {
    let (route, lost) = match Route::read(hash) {
        Some(route) => (route, None),
        None => (Route::Home, Some(hash.to_owned())),
    };
    Location { route, lost, mute: false, foreign: false }
}

/// Whether everything that the location says is here.
fn is_said(location: &Location) -> bool {
    location.route.is_early() || speech::knows(speech::language())
}

/// Whether the page begins with a screen whose messages it carries.
#[must_use]
pub fn is_early() -> bool {
    location(&address::hash()).route.is_early()
}

/// The location with which the page begins.
fn first() -> Location {
    let foreign = preferences::first_language() != speech::language();
    let location = Location { foreign, ..location(&address::hash()) };
    if is_said(&location) {
        location
    } else {
        Location { route: Route::Home, mute: true, ..location }
    }
}

/// The room that the address names. When it changes, the focus goes to the heading of the new room.
#[hook]
pub fn use_route() -> Location {
    let here = use_state(first);
    {
        let here = here.clone();
        let latest = use_mut_ref(|| Route::Home);
        *latest.borrow_mut() = here.route.clone();
        use_effect_with((), move |()| {
            let watch = address::watch(move |hash| {
                let (location, here) = (location(&hash), here.setter());
                if is_said(&location) {
                    here.set(location);
                    return;
                }
                // As with any page that is on its way, one stays where one is until it has come.
                let route = latest.borrow().clone();
                spawn_local(async move {
                    let said = preferences::learn().await.is_ok();
                    if address::hash() == hash {
                        here.set(if said {
                            location
                        } else {
                            Location { route, mute: true, ..location }
                        });
                    }
                });
            });
            move || drop(watch)
        });
    }
    {
        let before = use_mut_ref(|| None::<Route>);
        use_effect_with((*here).clone(), move |location| {
            // Whoever opens the page begins at its top, as on any page.
            let before = before.replace(Some(location.route.clone()));
            if before.is_none_or(|before| location.route.stays(&before)) {
                return;
            }
            match &location.route {
                Route::Everything { field: Some(field) } => view::focus_id(field),
                _ => view::focus_heading(),
            }
        });
    }
    (*here).clone()
}
