//! A part of a page that is folded away, and drawn when somebody unfolds it.
//!
//! Most of an answer's numbers are never looked at, most fields never filled in: drawn unseen they were three quarters
//! of the page, and held up what is looked at.

use yew::prelude::*;

/// Properties of [`Fold`].
#[derive(Clone, PartialEq, Properties)]
pub struct FoldProps {
    /// What is inside, in a few words.
    pub summary: Html,
    /// Whether it is unfolded at first; from then on whoever reads it decides.
    #[prop_or_default]
    pub open: bool,
    /// What is inside.
    pub children: Html,
}

/// A part that can be folded away. Once drawn, it stays.
#[component]
pub fn Fold(props: &FoldProps) -> Html {
    let open = *use_state(|| props.open);
    // Where a page is written without a browser, nobody could unfold it.
    let drawn = use_state(|| open || cfg!(not(target_arch = "wasm32")));
    let ontoggle = {
        let drawn = drawn.setter();
        Callback::from(move |_: Event| drawn.set(true))
    };
    html! {
        <details {open} {ontoggle}>
            <summary>{ props.summary.clone() }</summary>
            if *drawn {
                { props.children.clone() }
            }
        </details>
    }
}
