//! The composition of the page.

use yew::prelude::*;

use crate::hooks::use_route;
use crate::pages::home::HomePage;
use crate::platform::view;
use crate::route::Route;

/// The whole page.
#[component]
pub fn App() -> Html {
    let place = use_route();
    let title = match &place.route {
        Route::Home => "Ropewalk",
        Route::Ask { .. } | Route::Everything { .. } => "Questions · Ropewalk",
        Route::Check => "Your answers · Ropewalk",
        Route::Set => "The set · Ropewalk",
        Route::Compare { .. } => "Compare · Ropewalk",
    };
    use_effect_with(title, |title| view::title(title));
    let nav = |to: Route, label: &str, here: bool| {
        let current = here.then_some("page");
        html! { <a href={to.to_string()} aria-current={current}>{ label }</a> }
    };
    let room = match &place.route {
        Route::Home
        | Route::Ask { .. }
        | Route::Everything { .. }
        | Route::Check
        | Route::Set
        | Route::Compare { .. } => html! { <HomePage /> },
    };
    html! {
        <>
            <header class="top">
                <a class="name" href={Route::Home.to_string()}>{ "Ropewalk" }</a>
                <nav aria-label="Rooms">
                    { nav(Route::Home, "Fit", place.route.is_fit()) }
                </nav>
            </header>
            <main>{ room }</main>
            <footer class="foot">
                <p>{ "Everything is worked out on this machine, and nothing leaves it." }</p>
                <p>{ "The tool advises; a luthier who sees the instrument decides." }</p>
            </footer>
        </>
    }
}
