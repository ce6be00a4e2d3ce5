//! Parts of a page that are drawn when the rest has been seen, one after the other.
//!
//! An answer is a long page. Drawn in one go it holds up the browser for longer than a finger notices; drawn part by
//! part, what is looked at first is there first. A part that is drawn already stays as it was until its turn comes,
//! so that a moved slider leaves no blank.

use yew::prelude::*;

use crate::platform::view;

/// Between the turns of two parts, in milliseconds: one frame.
const TURN_MS: u32 = 16;

/// Properties of [`Later`].
#[derive(Clone, PartialEq, Properties)]
pub struct LaterProps {
    /// What it is drawn of: another number draws it anew.
    pub of: usize,
    /// When its turn comes; the first is 1.
    pub turn: u32,
    /// What to draw.
    pub children: Html,
}

/// Draws its children when their turn comes.
#[component]
pub fn Later(props: &LaterProps) -> Html {
    // Where a page is written without a browser, there is nobody to wait for.
    let at_once = cfg!(not(target_arch = "wasm32"));
    let drawn = use_state(|| at_once.then_some(props.of));
    let children = use_mut_ref(Html::default);
    // What was asked for last: the turn of something earlier may come after it, and has nothing to draw any more.
    let asked = use_mut_ref(|| None);
    {
        let drawn = drawn.setter();
        use_effect_with((props.of, props.turn), move |&(of, turn)| {
            asked.replace(Some(of));
            view::once_seen(turn * TURN_MS, move || {
                if *asked.borrow() == Some(of) {
                    drawn.set(Some(of));
                }
            });
        });
    }
    if *drawn == Some(props.of) {
        children.borrow_mut().clone_from(&props.children);
    }
    children.borrow().clone()
}
