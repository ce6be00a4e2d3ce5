//! What stays in sight beside the set: what to do with it, and the slider along its balance with what that just changed.

use std::rc::Rc;

use protocol::reply::Set;
use yew::prelude::*;

use crate::components::along::Along;
use crate::words::{changed, say};

/// Properties of [`Companion`].
#[derive(Clone, PartialEq, Properties)]
pub(super) struct CompanionProps {
    /// What can be done with the set.
    pub children: Html,
    /// The set.
    pub set: Rc<Set>,
}

/// What stays in sight beside the set.
#[component]
pub(super) fn Companion(props: &CompanionProps) -> Html {
    let before = use_before(&props.set);
    html! {
        <aside class="companion" aria-label={say!("set-companion")}>
            { props.children.clone() }
            <section class="along" aria-labelledby="along">
                <h2 id="along">{ say!("along-title") }</h2>
                <Along id="along-set" />
                <div class="changed">
                    if let Some(before) = before {
                        <h3>{ say!("changed-title") }</h3>
                        <ul>{ for changed::told(&before, &props.set).into_iter().map(|said| html! { <li>{ said }</li> }) }</ul>
                    } else {
                        <p>{ say!("along-how") }</p>
                    }
                </div>
            </section>
        </aside>
    }
}

/// The set that was shown before this one.
#[hook]
fn use_before(set: &Rc<Set>) -> Option<Rc<Set>> {
    let shown = use_mut_ref(|| (None::<Rc<Set>>, set.clone()));
    let mut shown = shown.borrow_mut();
    if !Rc::ptr_eq(&shown.1, set) {
        let earlier = std::mem::replace(&mut shown.1, set.clone());
        shown.0 = Some(earlier);
    }
    shown.0.clone()
}
