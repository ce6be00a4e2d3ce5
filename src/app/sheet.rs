//! The sheet: a set on one printed page, in black and white, to take home.
//!
//! It stands in the page unseen. On paper it is shown alone: the style sheet leaves out everything else.

use std::rc::Rc;

use protocol::reply::{Fit, FittedString, Problem, Set};
use protocol::request::Answers;
use yew::prelude::*;

use crate::components::portrait::{Portrait, ScaleBar, magnification};
use crate::hooks::Sureness;
use crate::units;
use crate::words::naming::{after_colon, capital, letter, portrait};
use crate::words::questions::{instrument_name, size_name, tuning_name};
use crate::words::{certainty, plan, reasons, say, set as words, speech, verdict};

/// Properties of [`Sheet`].
#[derive(Clone, PartialEq, Properties)]
pub struct SheetProps {
    /// The answer.
    pub fit: Rc<Fit>,
    /// What was said.
    pub answers: Rc<Answers>,
    /// How sure it is, as far as that is known.
    pub sureness: Sureness,
    /// What the fitting is called.
    pub label: AttrValue,
}

/// How wide the thickest string is drawn on paper, in pixels of a ninety-sixth of an inch.
const WIDEST_PX: f64 = 44.0;

/// The sheet; none where there is no set.
#[component]
pub fn Sheet(props: &SheetProps) -> Html {
    match &props.fit.set {
        Some(set) => paper(props, set),
        None => Html::default(),
    }
}

/// What stands on the sheet.
fn paper(props: &SheetProps, set: &Set) -> Html {
    let fit = &props.fit;
    let problem = &fit.problem;
    let names = words::names(set);
    let px_per_mm = magnification(set.strings.iter().map(|s| &s.report.construction), WIDEST_PX);
    let (likely, safe) = set.plan.fit_before_d;
    let for_string = |c: &protocol::reply::Caution| {
        c.string.and_then(|i| names.get(i)).map(|n| format!("{n}: ")).unwrap_or_default()
    };
    html! {
        <section class="sheet" lang={speech::language().tag()} aria-label={say!("sheet-label")}>
            <header class="sheet-head">
                <div>
                    <p class="sheet-title">{ verdict::answer(fit) }</p>
                    if let Some(title) = verdict::all_the_same(fit) {
                        { for verdict::reasons(fit).into_iter().map(|reason| html! { <p>{ reason }</p> }) }
                        { looks(fit) }
                        <p><strong>{ title }</strong></p>
                        <p>{ words::answer(fit) }</p>
                    }
                    <p>{ instrument(problem) }</p>
                </div>
                <dl class="by-hand">
                    <dt>{ say!("sheet-for") }</dt><dd>{ &props.label }</dd>
                    <dt>{ say!("sheet-date") }</dt><dd></dd>
                </dl>
            </header>
            <table class="sheet-set">
                <thead>
                    <tr>
                        <th></th>
                        <th>{ say!("plan-string") }</th>
                        <th>{ say!("sheet-ask") }</th>
                        <th>{ say!("sheet-gauge") }</th>
                        <th>{ say!("sheet-why") }</th>
                        <th>{ say!("sheet-settles") }</th>
                    </tr>
                </thead>
                <tbody>
                    { for set.strings.iter().enumerate().map(|(i, s)| row(s, &names[i], problem, px_per_mm, set.plan.settled_d.get(i).copied())) }
                </tbody>
            </table>
            <ScaleBar px_per_mm={px_per_mm} room_px={60.0} />
            <p class="sheet-load">
                { say!("sheet-load", pull = units::force(set.total_tension_n.value),
                    place = words::load_place(set.total_tension_n.value, problem.usual_load_n),
                    press = units::force(set.downforce_n.value)) }
                if set.close_call {
                    { format!(" {}", say!("sheet-close", strings = words::families(&words::other_families(set), &names))) }
                    { for asks_of_other(set, problem, &names).into_iter().map(|asks| format!(" {asks}")) }
                }
            </p>
            if let Sureness::Known(sure) = &props.sureness {
                { for certainty::on_paper(set, sure, &props.answers).into_iter().map(|line| html! { <p class="sheet-sure">{ line }</p> }) }
            }
            if verdict::all_the_same(fit).is_none() {
                { looks(fit) }
            }
            <div class="sheet-two">
                <div>
                    <h2>{ say!("sheet-when") }</h2>
                    <ol>
                        <li>{ say!("sheet-fit", likely = units::days_to_be_safe(likely), safe = units::days_to_be_safe(safe)) }</li>
                        <li>{ say!("sheet-one") }</li>
                    </ol>
                    <h2>{ say!("plan-check") }</h2>
                    <ul class="tick">{ for set.plan.checks.iter().map(|c| html! { <li>{ plan::check(c) }</li> }) }</ul>
                </div>
                <div>
                    <h2>{ say!("plan-care") }</h2>
                    <ul>{ for set.plan.cautions.iter().filter(|c| c.caution != "luthier-decides").map(|c| html! {
                        <li>{ for_string(c) }{ plan::caution(&c.caution) }</li>
                    }) }</ul>
                    <h2>{ say!("sheet-fitted") }</h2>
                    <p class="write"></p>
                    <p class="write"></p>
                </div>
            </div>
            <p class="sheet-foot">{ plan::caution("luthier-decides") }{ " " }{ say!("sheet-foot") }</p>
        </section>
    }
}

/// What bothers, and what to look at first; where that comes before any string, it is the reason.
fn looks(fit: &Fit) -> Html {
    html! {
        if !fit.verdict.findings.is_empty() {
            <p class="sheet-looks">
                <strong>{ say!("sheet-look") }{ " " }</strong>
                { verdict::first_causes(fit).join(" ") }
            </p>
        }
    }
}

/// What to ask for where the second set differs from the first, and that the rest of it does not.
fn asks_of_other(set: &Set, problem: &Problem, names: &[String]) -> Vec<String> {
    let Some(other) = &set.runner_up else { return Vec::new() };
    let both = set.strings.iter().zip(set.second()).zip(&other.shopping).zip(names);
    let asks = both.filter_map(|(((first, second), shopping), name)| {
        let asks = words::counter(shopping, name, problem, second);
        let differs = asks != words::counter(&first.shopping, name, problem, &first.report);
        differs.then_some(asks)
    });
    let mut asks: Vec<String> = asks
        .enumerate()
        .map(|(i, asks)| match i {
            0 => say!("sheet-close-ask", asks = asks),
            _ => say!("sheet-close-also", asks = asks),
        })
        .collect();
    if asks.len() < names.len() {
        asks.push(say!("sheet-close-rest").to_owned());
    }
    asks
}

fn instrument(problem: &Problem) -> String {
    say!(
        "sheet-instrument",
        instrument = capital(instrument_name(&problem.instrument)),
        size = size_name(&problem.size),
        tuning = tuning_name(&problem.instrument, &problem.tuning),
        pitch = units::hertz(problem.a4_hz),
        set_up = &problem.set_up,
    )
}

fn row(
    string: &FittedString,
    name: &str,
    problem: &Problem,
    px_per_mm: f64,
    settled: Option<(f64, f64)>,
) -> Html {
    let report = &string.report;
    let gauge = report.numbers.get("outer_diameter_m").map_or(0.0, |q| q.value);
    let pull = report.numbers.get("tension_n").map_or(0.0, |q| q.value);
    // The sheet has room for one reason and one cost; the page has them all.
    let reason = string.reasons.first().map(|r| reasons::sentence(r, false, string).text);
    let reason = reason.unwrap_or_else(|| say!("card-alike").to_owned());
    let cost = string.costs.first().map(|r| reasons::sentence(r, true, string).text);
    let rival = string
        .rival
        .as_ref()
        .map(|r| say!("card-rather", family = &r.family, name = letter(&string.note)));
    if let Some(word) = verdict::standing(&string.standing) {
        return html! {
            <tr>
                <td class="sheet-likeness"></td>
                <th scope="row">{ name }</th>
                <td colspan="5">{ capital(word) }{ "." }</td>
            </tr>
        };
    }
    html! {
        <tr>
            <td class="sheet-likeness"><Portrait construction={report.construction.clone()} px_per_mm={px_per_mm} label={portrait(name, &report.construction)} /></td>
            <th scope="row">{ name }</th>
            <td>{ capital(&words::counter(&string.shopping, name, problem, report)) }{ "." }</td>
            <td>{ units::gauge(gauge) }{ "; " }{ units::force(pull) }</td>
            <td>
                if let Some(rival) = rival {
                    { rival }{ ": " }{ after_colon(&reason) }{ " " }
                } else {
                    { say!("card-no-other") }{ ". " }
                }
                if let Some(cost) = cost {
                    <em>{ say!("sheet-but") }{ " " }</em>{ after_colon(&cost) }
                }
            </td>
            <td>{ settled.map(|(likely, long)| say!("sheet-days", likely = units::days(likely), most = units::days_to_be_safe(long))).unwrap_or_default() }</td>
        </tr>
    }
}
