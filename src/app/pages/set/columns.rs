//! The strings side by side: what to ask for, why, what it costs, and how soon it settles.

use protocol::reply::{Caution, FittedString, Problem, Reason, Set};
use yew::prelude::*;

use crate::detail_level::DetailLevel;
use crate::units;
use crate::words::naming::{capital, family};
use crate::words::{detail_level, plan, reasons, say, set as words, verdict};

/// How many reasons and how many costs of a string stand here in plain words.
const PLAIN: (usize, usize) = (2, 1);

/// Every string as a column; on a narrow screen one above the other.
pub(super) fn strings(set: &Set, problem: &Problem, names: &[String], depth: DetailLevel) -> Html {
    let many = (set.strings.len() > 4).then_some("of-five");
    html! {
        <section class="strings" aria-labelledby="strings">
            <h2 id="strings">{ if set.close_call { say!("set-first-strings") } else { say!("part-strings") } }</h2>
            <div class={classes!("columns", many)}>
                { for set.strings.iter().zip(names).enumerate().map(|(i, (string, name))| {
                    let cautions = set.plan.cautions.iter().filter(|c| c.string == Some(i));
                    column(string, problem, name, &cautions.collect::<Vec<_>>(), set.plan.settled_d.get(i).copied(), depth)
                }) }
            </div>
        </section>
    }
}

fn column(
    string: &FittedString,
    problem: &Problem,
    name: &str,
    cautions: &[&Caution],
    settled: Option<(f64, f64)>,
    depth: DetailLevel,
) -> Html {
    let report = &string.report;
    let heading = |kind: &str| {
        html! {
            <h3>
                <span class="note-name">{ name }</span>
                <span class="kind">{ kind }</span>
            </h3>
        }
    };
    if let Some(word) = verdict::standing(&string.standing) {
        return html! {
            <section class="string brief">{ heading(&capital(word)) }</section>
        };
    }
    let most = if depth == DetailLevel::Words { PLAIN } else { (usize::MAX, usize::MAX) };
    html! {
        <section class="string brief">
            { heading(&capital(family(&report.family))) }
            <div class="ask">
                <h4>{ say!("sheet-ask") }</h4>
                <p>{ capital(&words::counter(&string.shopping, name, problem, report)) }{ "." }</p>
                if string.grade == "sometimes" {
                    <p>{ say!("card-sometimes") }</p>
                }
                { for cautions.iter().map(|c| html! { <p class="caution">{ plan::caution(&c.caution) }</p> }) }
            </div>
            <div class="for">
                if let Some(rival) = &string.rival {
                    <h4>{ say!("card-rather", family = &rival.family, name = name) }</h4>
                    if string.reasons.is_empty() {
                        <p>{ say!("card-alike") }</p>
                    } else {
                        { list(&string.reasons, most.0, false, string, depth) }
                    }
                } else {
                    <h4>{ say!("card-no-other") }</h4>
                }
            </div>
            <div class="against">
                <h4>{ say!("card-costs") }</h4>
                { list(&string.costs, most.1, true, string, depth) }
            </div>
            <div class="settles">
                if let Some((likely, long)) = settled {
                    <h4>{ say!("column-settles") }</h4>
                    <p>{ say!("sheet-days", likely = units::days(likely), most = units::days_to_be_safe(long)) }</p>
                }
            </div>
            if depth != DetailLevel::Words {
                <div class="in-numbers">
                    <h4>{ say!("column-numbers") }</h4>
                    <ul class="facts">
                        { for words::plain_facts(string).into_iter().map(|fact| html! { <li>{ fact }</li> }) }
                    </ul>
                </div>
            }
        </section>
    }
}

fn list(
    all: &[Reason],
    most: usize,
    is_cost: bool,
    string: &FittedString,
    depth: DetailLevel,
) -> Html {
    let sentence = |reason: &Reason| {
        let reasons::Sentence { text, rests_on } =
            detail_level::sentence(reason, is_cost, string, depth).0;
        html! {
            <li>
                { text }
                if depth != DetailLevel::Words {
                    { " " }<span class="rests-on">{ rests_on }</span>
                }
            </li>
        }
    };
    html! { <ul>{ for all.iter().take(most).map(sentence) }</ul> }
}
