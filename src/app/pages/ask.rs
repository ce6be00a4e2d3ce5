//! The player's path: at most eight short screens, each with a way back and a way on.

use yew::prelude::*;

use crate::components::error_summary::{ErrorSummary, SUMMARY};
use crate::components::question::Ask;
use crate::hooks::{CALM_MS, use_finder, use_store};
use crate::platform::view;
use crate::route::{Route, SCREENS};
use crate::state::Action;
use crate::words::questions::PATH;
use crate::words::say;

/// Which screen.
#[derive(Clone, Debug, PartialEq, Eq, Properties)]
pub struct Props {
    /// From 1.
    pub screen: usize,
    /// The person came from the list of answers.
    pub checking: bool,
}

/// A screen of the path.
#[component]
pub fn AskPage(props: &Props) -> Html {
    let Props { screen, checking } = *props;
    let store = use_store();
    let finder = use_finder(&store, Some(CALM_MS));
    // Counts the times when a fault stood in the way, for the summary takes the focus each time.
    let stopped = use_state(|| 0_u32);
    use_effect_with(*stopped, |stopped| {
        if *stopped > 0 {
            view::focus_id(SUMMARY);
        }
    });
    let Some(page) = PATH.get(screen.wrapping_sub(1)) else { return Html::default() };
    let back = match screen {
        _ if checking => Route::Check,
        1 => Route::Home,
        _ => Route::Ask { screen: screen - 1, checking: false },
    };
    let on = if checking || screen >= SCREENS {
        Route::Check
    } else {
        Route::Ask { screen: screen + 1, checking: false }
    };
    // One step out of the path must not leave a fault behind unseen.
    let leave = |to: Route| {
        let (store, stopped, finder) = (store.clone(), stopped.clone(), finder.clone());
        move || {
            let errors = store.errors_in(page.questions);
            if errors.is_empty() {
                finder.go(&store, &to);
            } else {
                let fields = errors.into_iter().map(|error| error.field).collect();
                store.dispatch(Action::Show(fields));
                stopped.set(*stopped + 1);
            }
        }
    };
    let submit = {
        let leave = leave(on);
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            leave();
        })
    };
    let find = {
        let leave = leave(Route::Set);
        Callback::from(move |event: MouseEvent| {
            event.prevent_default();
            leave();
        })
    };
    let errors = if *stopped > 0 { store.errors_in(page.questions) } else { Vec::new() };
    html! {
        <div class="ask-page">
            <p class="way">
                <a class="back" href={back.to_string()}>{ say!("back") }</a>
                if !checking {
                    <span class="count">{ say!("screen-of", screen = screen, all = SCREENS) }</span>
                }
            </p>
            <ErrorSummary {errors} here=true />
            <h1>{ page.title() }</h1>
            <form novalidate=true onsubmit={submit}>
                { for page.questions.iter().map(|question| html! { <Ask key={question.key()} question={*question} /> }) }
                <p class="actions">
                    <button class="button" type="submit">{ say!("continue") }</button>
                    <a href={Route::Set.to_string()} onclick={find}>{ say!("find") }</a>
                </p>
            </form>
        </div>
    }
}
