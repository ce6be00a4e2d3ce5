//! The composition of the page.

use std::rc::Rc;

use yew::prelude::*;

use crate::hooks::{Place, Store, use_route, use_store, use_store_of_page};
use crate::pages::ask::AskPage;
use crate::pages::check::CheckPage;
use crate::pages::compare::ComparePage;
use crate::pages::everything::EverythingPage;
use crate::pages::finding::FindingPage;
use crate::pages::home::HomePage;
use crate::pages::sources::SourcesPage;
use crate::platform::{view, worker};
use crate::route::Route;
use crate::state::Action;
use crate::words::questions::PATH;

/// The whole page.
#[component]
pub fn App() -> Html {
    let store = use_store_of_page();
    let place = use_route();
    let title = title(&place.route);
    use_effect_with(title, |title| view::title(title));
    {
        let dispatcher = store.dispatcher();
        use_effect_with(place.route.clone(), move |_| dispatcher.dispatch(Action::Moved));
    }
    let skip = Callback::from(|event: MouseEvent| {
        // The address belongs to the rooms, so the link moves the focus itself.
        event.prevent_default();
        view::focus_heading();
    });
    let nav = |to: Route, label: &str, here: bool| {
        let current = here.then_some("page");
        html! { <a href={to.to_string()} aria-current={current}>{ label }</a> }
    };
    html! {
        <ContextProvider<Store> context={store}>
            <header class="top">
                <a class="skip" href="#" onclick={skip}>{ "Skip to the page" }</a>
                <a class="name" href={Route::Home.to_string()}>{ "Ropewalk" }</a>
                <nav aria-label="Rooms">
                    { nav(Route::Home, "Fit", place.route.is_fit()) }
                    { nav(Route::Compare { string: 0 }, "Compare", matches!(place.route, Route::Compare { .. })) }
                </nav>
            </header>
            <main>
                <Notices lost={place.lost.clone()} />
                <Room {place} />
            </main>
            <footer class="foot">
                <p><a href={Route::Sources { entry: None }.to_string()}>{ "Where the numbers come from" }</a></p>
                <p>{ "The tool advises; a luthier who sees the instrument decides." }</p>
                <p>{ "Everything is worked out on this machine, and nothing leaves it." }</p>
                <p class="build">
                    { format!("Version {}, model {}", env!("CARGO_PKG_VERSION"), worker::MODEL) }
                </p>
            </footer>
        </ContextProvider<Store>>
    }
}

fn title(route: &Route) -> String {
    let room = match route {
        Route::Home => return "Ropewalk".to_owned(),
        Route::Ask { screen, .. } => PATH.get(screen - 1).map_or("Questions", |page| page.title),
        Route::Everything { .. } => "Everything",
        Route::Check => "Check your answers",
        Route::Set => "The set",
        Route::Compare { .. } => "Compare",
        Route::Sources { .. } => "Sources",
    };
    format!("{room} · Ropewalk")
}

/// Where the page is.
#[derive(Clone, PartialEq, Properties)]
struct RoomProps {
    place: Place,
}

/// The room that the address names.
#[component]
fn Room(props: &RoomProps) -> Html {
    let store = use_store();
    match props.place.route.clone() {
        Route::Home => html! { <HomePage /> },
        // The key makes each screen a page of its own, with no fault shown from the one before.
        Route::Ask { screen, checking } => html! { <AskPage key={screen} {screen} {checking} /> },
        Route::Everything { .. } => html! { <EverythingPage /> },
        Route::Check => html! { <CheckPage /> },
        Route::Set => html! { <FindingPage /> },
        Route::Compare { string } => {
            let fit = store.found.as_ref().map(|found| Rc::clone(&found.fit));
            html! { <ComparePage {fit} {string} /> }
        }
        Route::Sources { entry } => {
            html! { <SourcesPage entry={entry.map(AttrValue::from)} /> }
        }
    }
}

/// What there is to tell.
#[derive(Clone, PartialEq, Properties)]
struct NoticesProps {
    /// An address that no room has.
    lost: Option<String>,
}

/// What there is to tell, above every room. The frame is always there, so that what comes into it is read aloud.
#[component]
fn Notices(props: &NoticesProps) -> Html {
    let store = use_store();
    let act = |action: fn() -> Action| {
        let dispatcher = store.dispatcher();
        Callback::from(move |_: MouseEvent| dispatcher.dispatch(action()))
    };
    html! {
        <div class="notices" role="status">
            if props.lost.is_some() {
                <p class="notice">{ "There is no page at that address, so this is the first one." }</p>
            }
            if let Some(notice) = &store.notice {
                <div class={classes!("notice", notice.grave.then_some("grave"))}>
                    <p>{ &notice.text }</p>
                    if store.before.is_some() {
                        <button class="button quiet" type="button" onclick={act(|| Action::Undo)}>{ "Undo" }</button>
                    }
                    <button class="button quiet" type="button" onclick={act(|| Action::Heard)}>{ "Close" }</button>
                </div>
            }
            if store.elsewhere.is_some() {
                <div class="notice grave">
                    <p>{ "Another tab has changed these answers meanwhile. What is typed next in either tab replaces the other’s." }</p>
                    <button class="button quiet" type="button" onclick={act(|| Action::TakeElsewhere(true))}>
                        { "Take the other tab’s" }
                    </button>
                    <button class="button quiet" type="button" onclick={act(|| Action::TakeElsewhere(false))}>
                        { "Keep these" }
                    </button>
                </div>
            }
        </div>
    }
}
