//! When to fit the set, how soon each string has settled, and what to look after.

use protocol::reply::{Problem, Set};
use yew::prelude::*;

use crate::components::table::Scroll;
use crate::units;
use crate::words::naming::{a_letter, capital};
use crate::words::{plan, say};

pub(super) fn the_plan(set: &Set, problem: &Problem, names: &[String]) -> Html {
    let (likely, safe) = set.plan.fit_before_d;
    let day = problem
        .concert_days
        .map(|days| format!(" {}", say!("plan-matters", days = units::days(days))));
    html! {
        <section class="plan" aria-labelledby="plan">
            <h2 id="plan">{ say!("plan-title", likely = units::days_to_be_safe(likely), safe = units::days_to_be_safe(safe)) }</h2>
            <ol class="do">
                <li>{ say!("plan-one") }</li>
                <li>{ say!("plan-often") }</li>
                <li>{ say!("plan-daily") }{ day.unwrap_or_default() }</li>
            </ol>
            <Scroll label={say!("plan-days")}>
                <table>
                    <caption>{ say!("plan-days-caption") }</caption>
                    <thead><tr><th scope="col">{ say!("plan-string") }</th><th scope="col">{ say!("plan-likely") }</th><th scope="col">{ say!("plan-long") }</th></tr></thead>
                    <tbody>
                        { for set.plan.settled_d.iter().zip(names).map(|((likely, long), name)| html! {
                            <tr>
                                <th scope="row">{ name }</th>
                                <td>{ units::days(*likely) }</td>
                                <td>{ units::days_to_be_safe(*long) }</td>
                            </tr>
                        }) }
                    </tbody>
                </table>
            </Scroll>
            <div class="two">
                <div>
                    <h3>{ say!("plan-check") }</h3>
                    <ul>{ for set.plan.checks.iter().map(|c| html! { <li>{ plan::check(c) }</li> }) }</ul>
                </div>
                <div>
                    <h3>{ say!("plan-care") }</h3>
                    <ul>
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
            </div>
        </section>
    }
}
