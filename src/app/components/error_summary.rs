//! What stands in the way, at the top of a page: each fault with a way to its field.

use yew::prelude::*;

use crate::platform::view;
use crate::route::Route;
use crate::state::{FieldError, screen_of};
use crate::words::say;

/// What the summary is made of.
#[derive(Clone, Debug, PartialEq, Properties)]
pub struct Props {
    /// The faults.
    pub errors: Vec<FieldError>,
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
pub fn ErrorSummary(props: &Props) -> Html {
    let Props { errors, here } = props;
    if errors.is_empty() {
        return Html::default();
    }
    let item = |error: &FieldError| {
        let link = if *here {
            let field = error.field.clone();
            let go = Callback::from(move |event: MouseEvent| {
                event.prevent_default();
                view::focus_id(&field);
            });
            html! { <a href="#" onclick={go}>{ &error.message }</a> }
        } else {
            html! { <a href={room_of(&error.field).to_string()}>{ &error.message }</a> }
        };
        html! { <li key={error.field.clone()}>{ link }</li> }
    };
    let title = say!("faults-title", count = errors.len());
    html! {
        <section class="faults" id={SUMMARY} tabindex="-1" aria-labelledby="faults-title">
            <h2 id="faults-title">{ title }</h2>
            <ul>{ for errors.iter().map(item) }</ul>
        </section>
    }
}
