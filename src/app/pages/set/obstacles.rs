//! Why nothing fits, and what would help.

use protocol::reply::{Fit, Obstacle};
use yew::prelude::*;

use super::assumed;
use crate::units;
use crate::words::naming::letter;
use crate::words::{plan, say};

/// Why nothing fits, and what would help.
pub(super) fn nothing(fit: &Fit, on_change: &Callback<()>) -> Html {
    let relax: Vec<&str> = fit
        .obstacles
        .first()
        .map(|o| o.relax.iter().map(|key| plan::relax(key)).collect())
        .unwrap_or_default();
    html! {
        <>
            <section class="obstacles" aria-labelledby="obstacles">
                <h2 id="obstacles">{ say!("nothing-why") }</h2>
                { for fit.obstacles.iter().map(obstacle) }
                <h2>{ say!("nothing-help") }</h2>
                if relax.is_empty() {
                    <p>{ say!("nothing-single") }</p>
                } else {
                    <p>{ say!("nothing-any") }</p>
                    <ul>{ for relax.iter().map(|wish| html! { <li>{ *wish }</li> }) }</ul>
                }
                <p><button type="button" class="button" onclick={on_change.reform(|_: MouseEvent| ())}>{ say!("set-change") }</button></p>
            </section>
            { assumed(&fit.problem, on_change) }
        </>
    }
}

fn obstacle(o: &Obstacle) -> Html {
    let load = o.lightest_n.zip(o.most_n).map(|(lightest, most)| {
        say!("nothing-lightest", lightest = units::force(lightest), most = units::force(most))
    });
    html! {
        <div class="obstacle">
            if let Some(note) = &o.note {
                <h3>{ say!("nothing-string", name = letter(note)) }</h3>
            }
            if let Some(load) = load {
                <p>{ load }</p>
            }
            if !o.limits.is_empty() {
                <p>{ say!("nothing-left-out") }</p>
                <ul>
                    { for o.limits.iter().map(|l| html! {
                        <li>{ format!("{}: {}", plan::limit(&l.limit), units::fixed(l.count as f64, 0)) }</li>
                    }) }
                </ul>
            }
        </div>
    }
}
