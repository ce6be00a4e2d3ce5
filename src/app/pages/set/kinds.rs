//! The best sets of other kinds, and the kinds that are not possible here.

use protocol::reply::{OtherKind, Set};
use yew::prelude::*;

use crate::components::fold::Fold;
use crate::detail_level::DetailLevel;
use crate::words::{kinds as words, say};

/// How many kinds are told before the others are folded away, in plain words and else.
const TOLD: (usize, usize) = (2, 4);

pub(super) fn others(set: &Set, names: &[String], depth: DetailLevel) -> Html {
    let told = if depth == DetailLevel::Words { TOLD.0 } else { TOLD.1 };
    let (first, rest) = set.other_kinds.split_at(told.min(set.other_kinds.len()));
    let one = |other: &OtherKind| {
        html! {
            <div class="other-kind">
                <h3>{ words::name(&other.kind, set, names) }</h3>
                <p>{ words::about(other, names, depth).join(" ") }</p>
            </div>
        }
    };
    html! {
        <>
            if !first.is_empty() {
                <p>{ say!("kinds-how") }</p>
            }
            { for first.iter().map(one) }
            if !rest.is_empty() {
                <Fold summary={words::more(rest.len())}>
                    { for rest.iter().map(one) }
                </Fold>
            }
            if !set.ruled_out.is_empty() {
                <h3>{ say!("kinds-ruled-out") }</h3>
                <ul class="ruled-out">
                    { for set.ruled_out.iter().map(|kind| html! {
                        <li>{ words::ruled_out(kind, set, names) }</li>
                    }) }
                </ul>
            }
        </>
    }
}
