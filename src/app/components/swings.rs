//! The weights, asked as swings: how much it would be worth to go from the worst of a thing to its best.

use std::rc::Rc;

use protocol::reply::Problem;
use strings::fit::desirability::Attribute;
use yew::prelude::*;

use crate::fields::Number;
use crate::hooks::use_store;
use crate::letters;
use crate::platform::{clock, field};
use crate::state::Action;
use crate::units;
use crate::words::naming::capital;
use crate::words::{reasons, say};

/// Properties of [`Swings`].
#[derive(Clone, PartialEq, Properties)]
pub struct SwingsProps {
    /// What the answers made of the weights.
    pub problem: Rc<Problem>,
}

/// The most that a slider gives; more can be typed among the answers.
const MOST: f64 = 5.0;
/// How long the rest of the page waits for a moved slider, in milliseconds: until the slider's own share is painted.
const TURN_MS: u32 = 16;

/// A slider for every weight. The set follows at once.
#[component]
pub fn Swings(props: &SwingsProps) -> Html {
    let store = use_store();
    let own = &store.document.answers.weights;
    // The slider that was moved last and its weight, and how many moves the page has not heard of yet.
    let moved = use_state(|| (0, 0.0));
    let unheard = use_mut_ref(|| 0_u32);
    let mut weights: Vec<f64> = props
        .problem
        .weights
        .iter()
        .map(|w| own.get(&w.attribute).copied().unwrap_or(w.weight))
        .collect();
    if let Some(weight) = weights.get_mut(moved.0).filter(|_| *unheard.borrow() > 0) {
        *weight = moved.1;
    }
    let all: f64 = weights.iter().sum();
    let row = |(i, key): (usize, &str)| {
        let weight = weights[i];
        let share = if all > 0.0 { weight / all } else { 0.0 };
        let id = format!("swing-{key}");
        let typed = {
            let (dispatcher, moved, unheard) =
                (store.dispatcher(), moved.setter(), Rc::clone(&unheard));
            let number = Attribute::parse(key).map(|a| Number::Weight(a as usize));
            Callback::from(move |event: InputEvent| {
                let Some((number, text)) = number.zip(field::text(&event)) else { return };
                if let Some(weight) = letters::number(&text) {
                    *unheard.borrow_mut() += 1;
                    moved.set((i, weight));
                    let (dispatcher, unheard) = (dispatcher.clone(), Rc::clone(&unheard));
                    let hear = move || {
                        *unheard.borrow_mut() -= 1;
                        dispatcher.dispatch(Action::Type(number, text));
                    };
                    // Nothing that was moved is lost, also where the sliders are gone by then.
                    clock::after(TURN_MS, hear);
                }
            })
        };
        let name = capital(reasons::attribute(key));
        let counts = say!("swings-counts", share = units::of_hundred(share));
        html! {
            <li key={key.to_owned()}>
                <label for={id.clone()}>{ name.clone() }</label>
                <span class="means" id={format!("{id}-ends")}>{ reasons::swing(key) }</span>
                <input type="range" id={id.clone()} min="0" max={MOST.max(weight).to_string()} step="0.1"
                    value={units::fixed(weight, 1)} oninput={typed}
                    aria-valuetext={counts.clone()} aria-describedby={format!("{id}-ends")} />
                <output for={id}><span class="unseen">{ name }{ " " }</span>{ counts }</output>
            </li>
        }
    };
    let reset = {
        let (dispatcher, own) = (store.dispatcher(), own.clone());
        Callback::from(move |_: MouseEvent| {
            for attribute in own.keys().filter_map(|key| Attribute::parse(key)) {
                let number = Number::Weight(attribute as usize);
                dispatcher.dispatch(Action::Type(number, String::new()));
            }
        })
    };
    html! {
        <>
            <p>{ say!("swings-how") }</p>
            <ul class="swings">
                { for props.problem.weights.iter().map(|w| w.attribute.as_str()).enumerate().map(row) }
            </ul>
            if !own.is_empty() {
                <p class="actions">
                    <button type="button" class="button quiet" onclick={reset}>{ say!("swings-reset") }</button>
                </p>
            }
        </>
    }
}
