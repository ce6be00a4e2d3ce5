//! Every question on one page, for those who fit strings daily.

use yew::prelude::*;

use crate::components::error_summary::{ErrorSummary, SUMMARY};
use crate::components::field::TextField;
use crate::components::question::Ask;
use crate::hooks::{CALM_MS, use_finder, use_store};
use crate::platform::view;
use crate::route::Route;
use crate::state::Action;
use crate::words::questions::EVERYTHING;
use crate::words::say;

/// All questions.
#[component]
pub fn EverythingPage() -> Html {
    let store = use_store();
    let finder = use_finder(&store, Some(CALM_MS));
    let stopped = use_state(|| 0_u32);
    use_effect_with(*stopped, |stopped| {
        if *stopped > 0 {
            view::focus_id(SUMMARY);
        }
    });
    let leave = |to: Route| {
        let (store, stopped, finder) = (store.clone(), stopped.clone(), finder.clone());
        move || {
            let errors = store.errors();
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
        let leave = leave(Route::Set);
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            leave();
        })
    };
    let label = {
        let dispatcher = store.dispatcher();
        Callback::from(move |text| dispatcher.dispatch(Action::Label(text)))
    };
    let errors = if *stopped > 0 { store.errors() } else { Vec::new() };
    html! {
        <div class="everything">
            <p class="way"><a class="back" href={Route::Home.to_string()}>{ say!("back") }</a></p>
            <ErrorSummary {errors} here=true />
            <h1>{ say!("everything-title") }</h1>
            <p class="lead">{ say!("everything-lead") }</p>
            <form novalidate=true onsubmit={submit}>
                <TextField id="label" ask={say!("label-ask")} hint={say!("label-hint")} text={store.document.label.clone()} on_type={label} />
                { for EVERYTHING.iter().map(|part| html! {
                    <section key={part.title()} class="part">
                        <h2>{ part.title() }</h2>
                        <div class="questions">
                            { for part.questions.iter().map(|question| html! {
                                <Ask key={question.key()} question={*question} hints=true />
                            }) }
                        </div>
                    </section>
                }) }
                <p class="actions stays">
                    <button class="button" type="submit">{ say!("find") }</button>
                    <a href={Route::Check.to_string()}>{ say!("check-answers") }</a>
                </p>
            </form>
        </div>
    }
}
