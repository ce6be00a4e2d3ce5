//! The list of answers, each with a way to change it, and what is taken where nothing was said.

use yew::prelude::*;

use crate::components::error_summary::{ErrorSummary, SUMMARY, room_of};
use crate::components::field::TextField;
use crate::fields::Flag;
use crate::hooks::{CALM_MS, use_finder, use_store};
use crate::platform::view;
use crate::route::{Route, SCREENS};
use crate::state::{Action, State, screen_of};
use crate::words::questions::{self, EVERYTHING, Question, usual};
use crate::words::{said, say};

/// The list of answers.
#[component]
pub fn CheckPage() -> Html {
    let store = use_store();
    let finder = use_finder(&store, Some(CALM_MS));
    let stopped = use_state(|| 0_u32);
    use_effect_with(*stopped, |stopped| {
        if *stopped > 0 {
            view::focus_id(SUMMARY);
        }
    });
    let errors = store.errors();
    let find = {
        let (store, finder) = (store.clone(), finder.clone());
        let (blocked, stopped) = (!errors.is_empty(), stopped.clone());
        Callback::from(move |event: MouseEvent| {
            if blocked {
                event.prevent_default();
                stopped.set(*stopped + 1);
            } else {
                finder.go(&store, &Route::Set);
            }
        })
    };
    let label = {
        let dispatcher = store.dispatcher();
        Callback::from(move |text| dispatcher.dispatch(Action::Label(text)))
    };
    let row = |question: Question, answer: String, change: &str| {
        let name = question.text().name;
        html! {
            <div class="row" key={question.key()}>
                <dt>{ name }</dt>
                <dd>{ answer }</dd>
                <dd class="change">
                    <a href={room(question, &store).to_string()}>
                        { change }
                        <span class="unseen">{ format!(": {name}") }</span>
                    </a>
                </dd>
            </div>
        }
    };
    let (mut answered, mut open) = (Vec::new(), Vec::new());
    for question in EVERYTHING.iter().flat_map(|part| part.questions).copied() {
        match said::said(&store, question) {
            Some(answer) => answered.push(row(question, answer, say!("change"))),
            // Not asked before the instrument is known.
            None if questions::waits(question, &store.document.answers) => {}
            None => {
                let taken = usual(question, &store.document.answers).unwrap_or_default();
                open.push(row(question, taken, say!("answer")));
            }
        }
    }
    let back = Route::Ask { screen: SCREENS, checking: false };
    html! {
        <div class="check">
            <p class="way"><a class="back" href={back.to_string()}>{ say!("back") }</a></p>
            <ErrorSummary {errors} />
            <h1>{ say!("check-title") }</h1>
            if answered.is_empty() {
                <p>{ say!("check-nothing") }</p>
            } else {
                <dl class="rows">{ for answered }</dl>
            }
            <TextField id="label" ask={say!("label-ask")} hint={say!("label-hint")} text={store.document.label.clone()} on_type={label} />
            <p class="actions">
                <button class="button" type="button" onclick={find}>{ say!("find") }</button>
                <a href={Route::Everything { field: None }.to_string()}>{ say!("everything-title") }</a>
            </p>
            if !open.is_empty() {
                <section aria-labelledby="unsaid">
                    <h2 id="unsaid">{ say!("check-unsaid") }</h2>
                    <p>{ say!("check-sharpen") }</p>
                    <dl class="rows faint">{ for open }</dl>
                </section>
            }
        </div>
    }
}

/// The room where a question is answered: on the path if it is there as a whole.
fn room(question: Question, store: &State) -> Route {
    let on_path = |flag: &Flag| screen_of(flag.key()).is_some();
    match question {
        Question::Flags(flags)
            if flags.iter().all(|flag| on_path(flag) || !flag.of(&store.document.answers)) =>
        {
            room_of(Flag::NickelAllergy.key())
        }
        _ => room_of(&question.key()),
    }
}
