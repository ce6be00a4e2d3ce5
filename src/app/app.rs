//! The composition of the page.

use yew::prelude::*;

/// The whole page.
#[component]
pub fn App() -> Html {
    html! {
        <main>
            <h1>{ "Ropewalk" }</h1>
        </main>
    }
}
