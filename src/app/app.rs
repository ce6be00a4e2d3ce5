//! The composition of the page.

use std::rc::Rc;

use yew::platform::spawn_local;
use yew::prelude::*;

use crate::components::preferences::PreferencesChoice;
use crate::hooks::{Location, Store, use_route, use_store, use_store_of_page, warm_model};
use crate::pages::ask::AskPage;
use crate::pages::check::CheckPage;
use crate::pages::class::ClassPage;
use crate::pages::compare::ComparePage;
use crate::pages::everything::EverythingPage;
use crate::pages::glossary::GlossaryPage;
use crate::pages::home::HomePage;
use crate::pages::progress::ProgressPage;
use crate::pages::sources::SourcesPage;
use crate::pages::specimen::SpecimenPage;
use crate::platform::{self, view};
use crate::preferences::{self, Preferences};
use crate::route::Route;
use crate::state::{Action, Notice};
use crate::words::questions::{PATH, Screen};
use crate::words::say;

/// How long the first screen is left alone after it was painted, in milliseconds.
const SEEN_MS: u32 = 50;

/// The whole page.
#[component]
pub fn App() -> Html {
    let store = use_store_of_page();
    let location = use_route();
    use_effect_with((), |()| {
        // What the other rooms say, and the model: both are heavy, and the first screen does without them.
        view::once_seen(SEEN_MS, || {
            // Whoever comes to such a room before it is here waits there for it, and hears why it does not come.
            spawn_local(async { drop(crate::hooks::preferences::learn().await) });
            warm_model();
            platform::keep();
        });
    });
    let title = title(&location.route);
    use_effect_with(title, |title| view::title(title));
    {
        let dispatcher = store.dispatcher();
        use_effect_with(location.route.clone(), move |_| dispatcher.dispatch(Action::Moved));
    }
    // The language or a unit was changed in the list of that name, so many times.
    let changed = use_state(|| (0_u32, ""));
    use_effect_with(*changed, |(times, list)| {
        if *times > 0 {
            // Everything is drawn anew, and the keyboard stays where it was.
            view::focus_id(list);
        }
    });
    let on_preferences = {
        let (dispatcher, changed) = (store.dispatcher(), changed.clone());
        Callback::from(move |(preferences, list): (Preferences, &'static str)| {
            let (dispatcher, changed) = (dispatcher.clone(), changed.clone());
            spawn_local(async move {
                match crate::hooks::preferences::change(preferences).await {
                    Ok(()) => changed.set((changed.0 + 1, list)),
                    Err(_) => {
                        let text = say!("language-failed").to_owned();
                        dispatcher.dispatch(Action::Tell(Notice::grave(text)));
                    }
                }
            });
        })
    };
    html! {
        <ContextProvider<Store> context={store}>
            // The key draws every text anew in another language.
            <Frame key={changed.0} {location} {on_preferences} />
        </ContextProvider<Store>>
    }
}

/// What stands round a room.
#[derive(Clone, PartialEq, Properties)]
struct FrameProps {
    location: Location,
    on_preferences: Callback<(Preferences, &'static str)>,
}

/// The room, with what stands round it.
#[component]
fn Frame(props: &FrameProps) -> Html {
    let location = props.location.clone();
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
        <>
            <header class="top">
                <a class="skip" href="#" onclick={skip}>{ say!("skip") }</a>
                <a class="name" href={Route::Home.to_string()}>{ say!("name") }</a>
                <nav aria-label={say!("rooms")}>
                    { nav(Route::Home, say!("room-fit"), location.route.is_fit()) }
                    { nav(Route::Compare { string: 0 }, say!("room-compare"), matches!(location.route, Route::Compare { .. } | Route::Class(_))) }
                </nav>
            </header>
            <main>
                <Notices lost={location.lost.clone()} mute={location.mute} foreign={location.foreign} />
                <Room {location} />
            </main>
            <footer class="foot">
                <p><a href={Route::Sources { entry: None }.to_string()}>{ say!("foot-sources") }</a></p>
                <p><a href={Route::Glossary.to_string()}>{ say!("foot-glossary") }</a></p>
                <p><a href={Route::Specimen.to_string()}>{ say!("foot-specimen") }</a></p>
                <p>{ say!("foot-advises") }</p>
                <p>{ say!("foot-private") }</p>
                <PreferencesChoice preferences={preferences::now()} on_change={props.on_preferences.clone()} />
            </footer>
        </>
    }
}

fn title(route: &Route) -> String {
    let room = match route {
        Route::Home => return say!("name").to_owned(),
        Route::Ask { screen, .. } => {
            PATH.get(screen - 1).map_or(say!("room-questions"), Screen::title)
        }
        Route::Everything { .. } => say!("room-everything"),
        Route::Check => say!("check-title"),
        Route::Set => say!("room-set"),
        Route::Glossary => say!("room-glossary"),
        Route::Specimen => say!("room-specimen"),
        Route::Compare { .. } => say!("room-compare"),
        Route::Class(_) => say!("room-class"),
        Route::Sources { .. } => say!("room-sources"),
    };
    say!("window-title", room = room)
}

/// Where the page is.
#[derive(Clone, PartialEq, Properties)]
struct RoomProps {
    location: Location,
}

/// The room that the address names.
#[component]
fn Room(props: &RoomProps) -> Html {
    let store = use_store();
    match props.location.route.clone() {
        Route::Home => html! { <HomePage /> },
        // The key makes each screen a page of its own, with no fault shown from the one before.
        Route::Ask { screen, checking } => html! { <AskPage key={screen} {screen} {checking} /> },
        Route::Everything { .. } => html! { <EverythingPage /> },
        Route::Check => html! { <CheckPage /> },
        Route::Set => html! { <ProgressPage /> },
        Route::Glossary => html! { <GlossaryPage /> },
        Route::Specimen => html! { <SpecimenPage /> },
        Route::Compare { string } => {
            let fit = store.found.as_ref().map(|found| Rc::clone(&found.fit));
            html! { <ComparePage {fit} {string} /> }
        }
        Route::Class(lesson) => html! { <ClassPage {lesson} /> },
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
    /// A room was asked for, and what it says could not be had.
    mute: bool,
    /// The page could not start in the language that was wished for.
    foreign: bool,
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
                <p class="notice">{ say!("lost") }</p>
            }
            if props.mute {
                <p class="notice grave">{ say!("room-mute") }</p>
            }
            if props.foreign {
                <p class="notice grave">{ say!("language-missing") }</p>
            }
            if let Some(notice) = &store.notice {
                <div class={classes!("notice", notice.grave.then_some("grave"))}>
                    <p>{ &notice.text }</p>
                    if notice.undoes && store.undo.is_some() {
                        <button class="button quiet" type="button" onclick={act(|| Action::Undo)}>{ say!("undo") }</button>
                    }
                    <button class="button quiet" type="button" onclick={act(|| Action::CloseNotice)}>{ say!("close") }</button>
                </div>
            }
        </div>
    }
}
