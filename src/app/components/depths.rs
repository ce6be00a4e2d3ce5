//! How deep the page goes: the one switch for it.

use yew::prelude::*;

use crate::depth::Depth;
use crate::words::{say, speech};

/// Properties of [`Depths`].
#[derive(Clone, PartialEq, Properties)]
pub struct DepthsProps {
    /// The depth.
    pub depth: Depth,
    /// Another was chosen.
    pub on_change: Callback<Depth>,
}

/// The switch.
#[component]
pub fn Depths(props: &DepthsProps) -> Html {
    let one = |depth: Depth| {
        let choose = props.on_change.reform(move |_: Event| depth);
        html! {
            <label class="tile">
                <input type="radio" name="depth" value={depth.key()} checked={props.depth == depth} onchange={choose} />
                <span>{ speech::of_or_key("depth", depth.key()) }</span>
            </label>
        }
    };
    html! {
        <fieldset class="depths">
            <legend>{ say!("depth-label") }</legend>
            <div class="tiles">{ for Depth::ALL.map(one) }</div>
        </fieldset>
    }
}
