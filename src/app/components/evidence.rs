//! How a number is known: a shape and a word, so that neither colour nor memory is needed.

use yew::prelude::*;

use crate::words::property;

/// Properties of [`Evidence`].
#[derive(Clone, PartialEq, Properties)]
pub struct EvidenceProps {
    /// `measured`, `published`, `computed`, `judged` or `guessed`.
    pub grade: AttrValue,
}

/// A grade of evidence.
#[component]
pub fn Evidence(props: &EvidenceProps) -> Html {
    // The surer, the fuller: a full disc, a full square, a ring, a lozenge, a dashed ring.
    let shape = match props.grade.as_str() {
        "measured" => html! { <circle class="full" cx="6" cy="6" r="4.5" /> },
        "published" => html! { <rect class="full" x="2" y="2" width="8" height="8" /> },
        "computed" => html! { <circle class="open" cx="6" cy="6" r="4" /> },
        "judged" => html! { <path class="open" d="M6 1.2L10.8 6L6 10.8L1.2 6Z" /> },
        _ => html! { <circle class="open dashed" cx="6" cy="6" r="4" /> },
    };
    html! {
        <span class="evidence" title={property::evidence_means(&props.grade)}>
            <svg aria-hidden="true" width="12" height="12" viewBox="0 0 12 12">{ shape }</svg>
            { property::evidence(&props.grade) }
        </span>
    }
}
