//! How sure a set is, and what would change it. It comes after the set, into room that is kept for it.

use std::rc::Rc;

use protocol::reply::Set;
use protocol::request::Answers;
use yew::prelude::*;

use crate::detail_level::DetailLevel;
use crate::hooks::Sureness;
use crate::platform::view;
use crate::route::Route;
use crate::words::{certainty as words, say};

/// The id of the heading of [`SureSection`], to which the line over the set leads.
pub const SURE: &str = "sure";

/// Properties of [`SureLine`].
#[derive(Clone, PartialEq, Properties)]
pub struct SureLineProps {
    /// The set.
    pub set: Rc<Set>,
    /// How sure it is.
    pub sureness: Sureness,
}

/// The line over the set.
#[component]
pub fn SureLine(props: &SureLineProps) -> Html {
    let onclick = Callback::from(|_: MouseEvent| view::focus_id(SURE));
    html! {
        <div class="sure-line" role="status">
            { match &props.sureness {
                Sureness::Asked => html! { <p>{ say!("sure-waits") }</p> },
                Sureness::Failed(reason) => html! { <p>{ say!("sure-failed", reason = reason) }</p> },
                Sureness::Known(sure) => html! {
                    <p>
                        { words::over(&props.set, sure).join(" ") }
                        { " " }
                        <button type="button" class="as-link" {onclick}>{ say!("sure-more") }</button>
                    </p>
                },
            } }
        </div>
    }
}

/// Properties of [`SureSection`].
#[derive(Clone, PartialEq, Properties)]
pub struct SureSectionProps {
    /// The set.
    pub set: Rc<Set>,
    /// What was said.
    pub answers: Rc<Answers>,
    /// How sure it is.
    pub sureness: Sureness,
    /// How deep to go.
    pub depth: DetailLevel,
}

/// How it was found out, string by string, and what would change it. At the foot of the page it moves nothing else.
#[component]
pub fn SureSection(props: &SureSectionProps) -> Html {
    let Sureness::Known(sure) = &props.sureness else { return Html::default() };
    let SureSectionProps { set, answers, depth, .. } = props;
    let list = |sentences: Vec<String>| {
        html! { <ul>{ for sentences.into_iter().map(|sentence| html! { <li>{ sentence }</li> }) }</ul> }
    };
    html! {
        <div class="sureness">
            <p>{ say!("sure-how") }</p>
            if *depth >= DetailLevel::Numbers {
                <p>{ words::counted(set, sure).join(" ") }</p>
            }
            { list(words::strings(set, sure, *depth)) }
            <h3>{ say!("turn-title") }</h3>
            { list(words::turns(set, sure, answers, *depth)) }
            if *depth == DetailLevel::Bench {
                <p>{ say!("sure-bench-worlds", worlds = sure.worlds) }</p>
                <p>{ say!("sure-bench-spreads") }</p>
                <p>{ say!("sure-bench-error") }</p>
                if !sure.turning_points.is_empty() {
                    <p>{ say!("turn-confirmed") }</p>
                }
                <p><a href={Route::Sources { entry: None }.to_string()}>{ say!("sure-sources") }</a></p>
            }
        </div>
    }
}
