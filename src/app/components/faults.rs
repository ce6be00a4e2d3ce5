//! What stands in the way, at the top of a page: each fault with a way to its field.

use yew::prelude::*;

use crate::platform::view;
use crate::route::Route;
use crate::state::{Slip, screen_of};
use crate::words::say;

/// What the summary is made of.
#[derive(Clone, Debug, PartialEq, Properties)]
pub struct Props {
    /// The faults.
    pub slips: Vec<Slip>,
    /// Their fields are on this page.
    #[prop_or_default]
    pub here: bool,
}

/// The id by which the summary gets the focus.
pub const SUMMARY: &str = "faults";

/// The room where a field is.
#[must_use]
pub fn room_of(field: &str) -> Route {
    screen_of(field).map_or_else(
        || Route::Everything { field: Some(field.to_owned()) },
        |screen| Route::Ask { screen, checking: true },
    )
}

/// The faults, with ways to their fields; nothing if there are none.
#[component]
pub fn Faults(props: &Props) -> Html {
    let Props { slips, here } = props;
    if slips.is_empty() {
        return Html::default();
    }
    let item = |slip: &Slip| {
        let link = if *here {
            let field = slip.field.clone();
            let go = Callback::from(move |event: MouseEvent| {
                event.prevent_default();
                view::focus_id(&field);
            });
            html! { <a href="#" onclick={go}>{ &slip.message }</a> }
        } else {
            html! { <a href={room_of(&slip.field).to_string()}>{ &slip.message }</a> }
        };
        html! { <li key={slip.field.clone()}>{ link }</li> }
    };
    let title = say!("faults-title", count = slips.len());
    html! {
        <section class="faults" id={SUMMARY} tabindex="-1" aria-labelledby="faults-title">
            <h2 id="faults-title">{ title }</h2>
            <ul>{ for slips.iter().map(item) }</ul>
        </section>
    }
}
