//! How to fit the set, what to beware of, and what to look at.

use protocol::reply::{Problem, Set};
use yew::prelude::*;

use crate::components::fold::Fold;
use crate::day::Day;
use crate::words::naming::{a_letter, capital};
use crate::words::{glance, plan, say};

pub(super) fn the_plan(set: &Set, problem: &Problem, names: &[String], today: Day) -> Html {
    let when = glance::when(&set.plan, problem.concert_days, today);
    html! {
        <section class="plan" aria-labelledby="plan">
            <h2 id="plan">{ say!("plan-title") }</h2>
            <div class="two">
                <ol class="do">
                    <li>{ when }</li>
                    <li>{ say!("plan-one") }</li>
                    <li>{ say!("plan-often") }</li>
                    <li>{ say!("plan-daily") }</li>
                </ol>
                <ul class="care">
                    { for set.plan.cautions.iter().map(|c| html! {
                        <li>
                            if let Some(i) = c.string {
                                { format!("{}: ", capital(&a_letter(names.get(i).map_or("", String::as_str)))) }
                            }
                            { plan::caution(&c.caution) }
                        </li>
                    }) }
                </ul>
            </div>
            <Fold summary={say!("plan-check")}>
                <ul>{ for set.plan.checks.iter().map(|c| html! { <li>{ plan::check(c) }</li> }) }</ul>
            </Fold>
        </section>
    }
}
