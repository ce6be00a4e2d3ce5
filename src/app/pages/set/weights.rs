//! What counted, and why.

use std::rc::Rc;

use protocol::reply::{Problem, Set, Weight};
use yew::prelude::*;

use crate::components::swings::Swings;
use crate::components::table::Scroll;
use crate::order;
use crate::units;
use crate::words::naming::{capital, list};
use crate::words::{reasons, say, set as words};

/// What counted most.
pub(super) fn title(problem: &Problem) -> String {
    let weights = sorted(problem);
    let most: Vec<&str> =
        weights.iter().take(3).map(|w| reasons::attribute(&w.attribute)).collect();
    say!("weights-title", most = list(&most))
}

/// The weights, the largest first.
fn sorted(problem: &Problem) -> Vec<&Weight> {
    let weights: Vec<&Weight> = problem.weights.iter().collect();
    order::sorted(&weights, |a, b| b.weight.total_cmp(&a.weight))
}

/// What counted and why.
pub(super) fn counted(problem: &Rc<Problem>, set: &Set, names: &[String]) -> Html {
    html! {
        <>
            <p>
                { words::searched(&set.searched, names) }
                if !set.close_call {
                    { " " }{ words::lead(set) }
                }
                if let (Some(lead), true) = (set.lead, set.close_call) {
                    { " " }{ words::close(lead) }
                }
                if let Some(unproven) = words::unproven(set) {
                    { " " }{ unproven }
                }
            </p>
            <details>
                <summary>{ say!("swings-title") }</summary>
                <Swings problem={problem.clone()} />
            </details>
            <details>
                <summary>{ say!("weights-every") }</summary>
                <p>{ say!("weights-how") }</p>
                { table(&sorted(problem)) }
            </details>
        </>
    }
}

/// Every weight, the largest first.
fn table(weights: &[&Weight]) -> Html {
    html! {
        <Scroll label={say!("part-weights")}>
            <table class="stacks">
                <thead>
                    <tr>
                        <th scope="col">{ say!("column-wish") }</th>
                        <th scope="col">{ say!("weights-base") }</th>
                        <th scope="col">{ say!("weights-moved") }</th>
                        <th scope="col">{ say!("weights-here") }</th>
                    </tr>
                </thead>
                <tbody>
                    { for weights.iter().map(|w| html! {
                        <tr>
                            <th scope="row">
                                { capital(reasons::attribute(&w.attribute)) }
                                <span class="means">{ reasons::attribute_means(&w.attribute) }</span>
                            </th>
                            <td class="figure" data-label={say!("weights-base")}>{ units::fixed(w.base, 1) }</td>
                            <td data-label={say!("weights-moved")}>{ because(w) }</td>
                            <td class="figure" data-label={say!("weights-here")}>{ units::fixed(w.weight, 2) }</td>
                        </tr>
                    }) }
                </tbody>
            </table>
        </Scroll>
    }
}

/// Which answers moved a weight.
fn because(weight: &Weight) -> String {
    let steps = weight.steps.iter().map(|step| {
        let factor = units::significant(step.factor, 2);
        say!("weights-step", factor = factor, because = reasons::because(&step.because))
    });
    let steps: Vec<String> = steps.collect();
    if steps.is_empty() { say!("weights-none").to_owned() } else { list(&steps) }
}
