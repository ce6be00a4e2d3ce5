//! The front door.

use yew::prelude::*;

use crate::route::Route;

/// What the page is for, and the ways in.
#[component]
pub fn HomePage() -> Html {
    html! {
        <>
            <h1>{ "Find strings for a violin, viola, cello or double bass, and see why." }</h1>
            <p><a class="button" href={Route::Set.to_string()}>{ "Show me a set" }</a></p>
        </>
    }
}
