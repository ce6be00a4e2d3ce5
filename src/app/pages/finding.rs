//! Asks the model for a set and shows it; the last good one stays while the next is worked out.

use std::rc::Rc;

use yew::prelude::*;

use crate::components::faults::Faults;
use crate::components::later::Later;
use crate::hooks::{use_certainty, use_finder, use_store};
use crate::pages::set::SetPage;
use crate::platform::{address, clock, files};
use crate::route::Route;
use crate::state::{Action, Asking, Notice};
use crate::words::{self, say, summary, verdict};

/// How long a set may take until it is said that it is being worked out, in turns of [`Later`]: 0.4 s.
const PATIENCE: u32 = 25;

/// The set, or how far it is.
#[component]
pub fn FindingPage() -> Html {
    let store = use_store();
    let finder = use_finder(&store, None);
    let errors = store.errors();
    let sureness = use_certainty(store.found.as_ref());
    let again = {
        let find = finder.find.clone();
        Callback::from(move |_: MouseEvent| find.emit(()))
    };
    let stop = {
        let stop = finder.stop.clone();
        Callback::from(move |_: MouseEvent| stop.emit(()))
    };
    // Whoever comes for a new set is not shown the earlier one on the way: drawing it would hold up the question.
    let came_for_new = use_state(|| !store.is_found());
    {
        let came_for_new = came_for_new.setter();
        let over =
            store.is_found() || matches!(store.asking, Asking::Stopped | Asking::Failed { .. });
        use_effect_with(over, move |over| {
            if *over {
                came_for_new.set(false);
            }
        });
    }
    // The heading changes without a word for those who do not see it, so the set is told beside it.
    let told = match &store.found {
        Some(found) if store.is_found() && errors.is_empty() => {
            let lead = found.fit.set.as_deref().map(words::set::lead).unwrap_or_default();
            format!("{} {lead}", verdict::answer(&found.fit))
        }
        _ => String::new(),
    };
    let framed = |inside: Html| {
        html! {
            <div class="finding">
                <p class="unseen" role="status">{ told }</p>
                { inside }
            </div>
        }
    };
    let earlier = html! { <p class="earlier">{ say!("finding-earlier") }</p> };
    let status = match &store.asking {
        // A set that comes at once needs no word of it, and the page should not jump.
        Asking::Busy(ask) => html! {
            <Later of={*ask as usize} turn={PATIENCE}>
                <div class="busy" role="status">
                    <p>{ say!("finding-busy") }</p>
                    <button class="button quiet" type="button" onclick={stop}>{ say!("stop") }</button>
                </div>
                if store.found.is_some() && !*came_for_new {
                    { earlier.clone() }
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
            let anew = Callback::from(|_: MouseEvent| address::reload());
            html! {
                <div class="busy grave" role="alert">
                    <p>{ say!("finding-failed", reason = message) }</p>
                    if *reload {
                        <button class="button" type="button" onclick={anew}>{ say!("load-again") }</button>
                    } else {
                        <button class="button" type="button" onclick={again}>{ say!("try-again") }</button>
                    }
                </div>
            }
        }
        _ => Html::default(),
    };
    let shown = store.found.as_ref().filter(|_| errors.is_empty());
    let Some(found) = shown.filter(|_| store.is_found() || !*came_for_new) else {
        let title = if errors.is_empty() { say!("finding-title") } else { say!("finding-not-yet") };
        return framed(html! {
            <>
                <p class="way"><a class="back" href={Route::Check.to_string()}>{ say!("back") }</a></p>
                <h1>{ title }</h1>
                <Faults {errors} />
                { status }
            </>
        });
    };
    let keep = {
        let (dispatcher, fit) = (store.dispatcher(), Rc::clone(&found.fit));
        Callback::from(move |()| {
            let (at, strings) = (clock::now_iso(), summary::strings(&fit));
            let summary = summary::lines(&strings);
            dispatcher.dispatch(Action::Keep { at, strings, summary });
        })
    };
    let download = {
        let store = store.clone();
        Callback::from(move |()| {
            let text = protocol::document::save(&store.document);
            let name = summary::file_name(&store.name());
            if let Err(reason) = files::save(&name, "application/json", &text) {
                let text = say!("not-saved", reason = reason.to_string());
                store.dispatch(Action::Tell(Notice::grave(text)));
            }
        })
    };
    let change = Callback::from(|()| address::go(&Route::Check.to_string()));
    let compare = Callback::from(|string| address::go(&Route::Compare { string }.to_string()));
    framed(html! {
        <>
            { status }
            if !store.is_found() && !matches!(store.asking, Asking::Idle | Asking::Busy(_)) {
                { earlier }
            }
            <SetPage fit={Rc::clone(&found.fit)} answers={Rc::clone(&found.answers)} {sureness} label={store.document.label.clone()}
                on_change={change} on_compare={compare} on_keep={keep} on_download={download} />
        </>
    })
}
