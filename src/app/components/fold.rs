//! A part of a page that is folded away, and drawn when somebody unfolds it.
//!
//! Most of an answer's numbers are never looked at: drawn unseen they were three quarters of the page, and held up
//! what is looked at.

use yew::prelude::*;

/// Properties of [`Fold`].
#[derive(Clone, PartialEq, Properties)]
pub struct FoldProps {
    /// What is inside, in a few words.
    pub summary: AttrValue,
    /// What is inside.
    pub children: Html,
}

/// A part that is folded away at first. Once drawn, it stays.
#[component]
pub fn Fold(props: &FoldProps) -> Html {
    // Where a page is written without a browser, nobody could unfold it.
    let drawn = use_state(|| cfg!(not(target_arch = "wasm32")));
    let ontoggle = {
        let drawn = drawn.setter();
        Callback::from(move |_: Event| drawn.set(true))
    };
    html! {
        <details {ontoggle}>
            <summary>{ &props.summary }</summary>
            if *drawn {
                { props.children.clone() }
            }
        </details>
    }
}
