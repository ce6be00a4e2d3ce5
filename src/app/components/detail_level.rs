//! How deep the page goes: the one switch for it.

use yew::prelude::*;

use crate::detail_level::DetailLevel;
use crate::words::{say, speech};

/// Properties of [`DetailLevelChoice`].
#[derive(Clone, PartialEq, Properties)]
pub struct DetailLevelProps {
    /// The depth.
    pub depth: DetailLevel,
    /// Another was chosen.
    pub on_change: Callback<DetailLevel>,
}

/// The switch.
#[component]
pub fn DetailLevelChoice(props: &DetailLevelProps) -> Html {
    let one = |depth: DetailLevel| {
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
            <div class="tiles">{ for DetailLevel::ALL.map(one) }</div>
        </fieldset>
    }
}
