//! What is seen first: the strings, why these, what they cost, what else one would weigh, when to fit them, how sure.

use std::rc::Rc;

use protocol::reply::{Problem, Set};
use protocol::request::Answers;
use yew::prelude::*;

use crate::components::sureness::SureLine;
use crate::day::Day;
use crate::fields::Number;
use crate::hooks::{Sureness, use_store};
use crate::state::Action;
use crate::units;
use crate::words::glance::Question;
use crate::words::{glance as words, kinds, say};

/// The lines beside the portraits.
pub(super) fn points(
    set: &Rc<Set>,
    problem: &Problem,
    answers: &Answers,
    names: &[String],
    today: Day,
    sureness: &Sureness,
) -> Html {
    let point = |class: &'static str, label: &str, said: String| {
        html! { <div class={class}><dt>{ label }</dt><dd>{ said }</dd></div> }
    };
    let other = kinds::rival(set).filter(|_| !set.close_call);
    html! {
        <dl class="points">
            if set.close_call {
                { point("for", say!("set-first"), words::why(set, names)) }
                if let Some(said) = words::for_the_second(set, names) {
                    { point("for-second", say!("set-second"), said) }
                }
                if let Some(question) = words::question(set) {
                    <div class="decide">
                        <dt>{ say!("glance-decide") }</dt>
                        <dd><Decide {question} /></dd>
                    </div>
                }
            } else {
                { point("for", say!("glance-why"), words::why(set, names)) }
                if let Some(said) = words::cost(set, names) {
                    { point("against", say!("glance-cost"), said) }
                }
            }
            { for words::unmet(set, answers, names).into_iter().map(|said| point("wish", say!("glance-wish"), said)) }
            if let Some(other) = other {
                { point("or", say!("glance-or"), words::other_kind(other, set, names)) }
            }
            { point("when", say!("glance-when"), words::when(&set.plan, problem.concert_days, today)) }
            <div class="sure">
                <dt>{ say!("glance-sure") }</dt>
                <dd><SureLine set={set.clone()} sureness={sureness.clone()} /></dd>
            </div>
        </dl>
    }
}

#[derive(Clone, PartialEq, Properties)]
struct DecideProps {
    question: Question,
}

/// The question that decides between two sets; the answer moves a wish, and the set follows.
#[component]
fn Decide(props: &DecideProps) -> Html {
    let store = use_store();
    let Question { wish, step, rather } = &props.question;
    let number = Number::Wish(*wish);
    let now = number.of(&store.document.answers).unwrap_or_default();
    let choose = |step: f64| {
        let dispatcher = store.dispatcher();
        let wished = units::fixed((now + step).clamp(-2.0, 2.0), 1);
        Callback::from(move |_: MouseEvent| {
            dispatcher.dispatch(Action::Type(number, wished.clone()));
        })
    };
    html! {
        <p class="actions">
            { for rather.iter().zip([*step, -*step]).map(|(word, step)| html! {
                <button type="button" class="button quiet" onclick={choose(step)}>{ say!("glance-rather", word = *word) }</button>
            }) }
        </p>
    }
}
