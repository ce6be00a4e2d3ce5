//! Between steadiness and colour: the wish that moves a set along the balance, beside the set that it moves.

use yew::prelude::*;

use super::field::Scale;
use crate::fields::{Number, Wish};
use crate::hooks::use_store;
use crate::state::Action;

/// Properties of [`Along`].
#[derive(Clone, PartialEq, Properties)]
pub struct AlongProps {
    /// The id of its number: it stands at more than one place.
    pub id: AttrValue,
}

/// The slider. The set follows at once.
#[component]
pub fn Along(props: &AlongProps) -> Html {
    let store = use_store();
    let number = Number::Wish(Wish::Colour);
    let typed = {
        let dispatcher = store.dispatcher();
        Callback::from(move |text| dispatcher.dispatch(Action::Type(number, text)))
    };
    let left = {
        let dispatcher = store.dispatcher();
        Callback::from(move |()| dispatcher.dispatch(Action::Left(number.key())))
    };
    html! {
        <Scale id={props.id.clone()} wish={Wish::Colour} value={number.of(&store.document.answers).unwrap_or_default()}
            text={store.text(number)} fault={store.error_of(&number.key()).map(AttrValue::from)} on_type={typed} on_leave={left} />
    }
}
