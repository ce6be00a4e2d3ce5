//! Asks the model for a set and shows it; the last good one stays while the next is worked out.

use std::rc::Rc;

use protocol::reply::Fit;
use yew::prelude::*;

use crate::components::error_summary::ErrorSummary;
use crate::components::later::Later;
use crate::hooks::{Finder, Store, use_certainty, use_finder, use_store};
use crate::pages::set::SetPage;
use crate::platform::{address, clock, files};
use crate::route::Route;
use crate::state::{Action, Asking, Notice};
use crate::words::{self, say, summary, verdict};

/// How long a set may take until it is said that it is being worked out, in turns of [`Later`]: 0.4 s.
const PATIENCE: u32 = 25;

/// The set, or how far it is.
#[component]
pub fn ProgressPage() -> Html {
    let store = use_store();
    let finder = use_finder(&store, None);
    let errors = store.errors();
    let sureness = use_certainty(store.found.as_ref());
    let came_for_new = use_came_for_new(&store);
    // The heading changes without a word for those who do not see it, so the set is told beside it.
    let told = match &store.found {
        Some(found) if store.is_found() && errors.is_empty() => {
            let lead = found.fit.set.as_deref().map(words::set::lead).unwrap_or_default();
            format!("{} {lead}", verdict::answer(&found.fit))
        }
        _ => String::new(),
    };
    let shown = store.found.as_ref().filter(|_| errors.is_empty());
    let inside = match shown.filter(|_| store.is_found() || !came_for_new) {
        Some(found) => html! {
            <>
                { status(&store, &finder, came_for_new) }
                if !store.is_found() && !matches!(store.asking, Asking::Idle | Asking::Busy(_)) {
                    { earlier() }
                }
                <SetPage fit={Rc::clone(&found.fit)} answers={Rc::clone(&found.answers)} {sureness} today={clock::today()} label={store.document.label.clone()}
                    on_change={go(Route::Check)} on_compare={Callback::from(|string| address::go(&Route::Compare { string }.to_string()))}
                    on_keep={keep(&store, &found.fit)} on_download={download(&store)} />
            </>
        },
        None => html! {
            <>
                <p class="way"><a class="back" href={Route::Check.to_string()}>{ say!("back") }</a></p>
                <h1>{ if errors.is_empty() { say!("finding-title") } else { say!("finding-not-yet") } }</h1>
                <ErrorSummary {errors} />
                { status(&store, &finder, came_for_new) }
            </>
        },
    };
    html! {
        <div class="finding">
            <p class="unseen" role="status">{ told }</p>
            { inside }
        </div>
    }
}

/// Whether the person came for a new set that is not there yet. They are not shown the earlier one on the way: drawing
/// it would hold up the question.
#[hook]
fn use_came_for_new(store: &Store) -> bool {
    let came_for_new = use_state(|| !store.is_found());
    let over = store.is_found() || matches!(store.asking, Asking::Stopped | Asking::Failed { .. });
    let setter = came_for_new.setter();
    use_effect_with(over, move |over| {
        if *over {
            setter.set(false);
        }
    });
    *came_for_new
}

/// How far the question is, where that is worth a word.
fn status(store: &Store, finder: &Finder, came_for_new: bool) -> Html {
    let again = finder.find.reform(|_: MouseEvent| ());
    match &store.asking {
        // A set that comes at once needs no word of it, and the page should not jump.
        Asking::Busy(ask) => html! {
            <Later of={*ask as usize} turn={PATIENCE}>
                <div class="busy" role="status">
                    <p>{ say!("finding-busy") }</p>
                    <button class="button quiet" type="button" onclick={finder.stop.reform(|_: MouseEvent| ())}>{ say!("stop") }</button>
                </div>
                if store.found.is_some() && !came_for_new {
                    { earlier() }
                }
            </Later>
        },
        Asking::Stopped if !store.is_found() => html! {
            <div class="busy" role="status">
                <p>{ say!("finding-stopped") }</p>
                <button class="button" type="button" onclick={again}>{ say!("find") }</button>
            </div>
        },
        Asking::Failed { message, reload } => {
            let reload_page = Callback::from(|_: MouseEvent| address::reload());
            html! {
                <div class="busy grave" role="alert">
                    <p>{ say!("finding-failed", reason = message) }</p>
                    if *reload {
                        <button class="button" type="button" onclick={reload_page}>{ say!("load-again") }</button>
                    } else {
                        <button class="button" type="button" onclick={again}>{ say!("try-again") }</button>
                    }
                </div>
            }
        }
        _ => Html::default(),
    }
}

fn earlier() -> Html {
    html! { <p class="earlier">{ say!("finding-earlier") }</p> }
}

fn go(to: Route) -> Callback<()> {
    Callback::from(move |()| address::go(&to.to_string()))
}

fn keep(store: &Store, fit: &Rc<Fit>) -> Callback<()> {
    let (dispatcher, fit) = (store.dispatcher(), Rc::clone(fit));
    Callback::from(move |()| {
        let (at, strings) = (clock::now_iso(), summary::strings(&fit));
        let summary = summary::lines(&strings);
        dispatcher.dispatch(Action::Keep { at, strings, summary });
    })
}

fn download(store: &Store) -> Callback<()> {
    let store = store.clone();
    Callback::from(move |()| {
        let text = protocol::document::save(&store.document);
        let name = summary::file_name(&store.name());
        if let Err(reason) = files::save(&name, "application/json", &text) {
            let text = say!("not-saved", reason = reason.to_string());
            store.dispatch(Action::Tell(Notice::grave(text)));
        }
    })
}
