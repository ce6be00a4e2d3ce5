//! The answer: a set of strings, why, what it costs, and what to do with it.

mod kinds;
mod load;
mod obstacles;
mod plan;
mod portraits;
mod weights;

use std::rc::Rc;

use protocol::reply::{Caution, Fit, FittedString, Problem, Set};
use protocol::request::Answers;
use yew::prelude::*;

use crate::components::along::Along;
use crate::components::detail_level::DetailLevelChoice;
use crate::components::diagnosis::Diagnosis;
use crate::components::later::Later;
use crate::components::listening::Listening;
use crate::components::portrait::magnification;
use crate::components::string_card::StringCard;
use crate::components::sureness::{SureLine, SureSection};
use crate::components::year::Year;
use crate::hooks::{Sureness, use_detail_level};
use crate::platform::print;
use crate::report_sheet::ReportSheet;
use crate::sheet::Sheet;
use crate::under_bow;
use crate::units;
use crate::words::naming::{capital, the_string};
use crate::words::questions::{instrument_name, size_name, tuning_name};
use crate::words::{kinds as kind_words, plan as plan_words, say, set as words, verdict};

/// Properties of [`SetPage`].
#[derive(Clone, PartialEq, Properties)]
pub struct SetPageProps {
    /// The answer.
    pub fit: Rc<Fit>,
    /// What was said.
    pub answers: Rc<Answers>,
    /// What the fitting is called.
    pub label: AttrValue,
    /// How sure it is, which is known later.
    #[prop_or_default]
    pub sureness: Sureness,
    /// The person wants to change what was said.
    pub on_change: Callback<()>,
    /// The person wants a string beside its rival.
    pub on_compare: Callback<usize>,
    /// The person wants to keep it.
    pub on_keep: Callback<()>,
    /// The person wants it as a file.
    pub on_download: Callback<()>,
}

/// How wide the thickest string of a set is drawn, in pixels: four of them stand beside each other on a laptop.
const WIDEST_PX: f64 = 128.0;

/// The answer.
#[component]
pub fn SetPage(props: &SetPageProps) -> Html {
    let fit = &props.fit;
    let all_the_same = verdict::all_the_same(fit).filter(|_| fit.set.is_some());
    html! {
        <article class="answer">
            <header class="answer-head">
                <p class="context">{ context(&fit.problem, &props.label) }</p>
                <h1>{ verdict::answer(fit) }</h1>
            </header>
            <Diagnosis fit={fit.clone()} />
            if let Some(title) = all_the_same {
                <header class="all-the-same">
                    <h2>{ title }</h2>
                    <p class="lede">{ words::answer(fit) }</p>
                </header>
            }
            { match &fit.set {
                Some(set) => html! { <Chosen fit={fit.clone()} set={set.clone()} page={props.clone()} /> },
                None => obstacles::nothing(fit, &props.on_change),
            } }
        </article>
    }
}

fn context(problem: &Problem, label: &str) -> String {
    let what = format!(
        "{} {}, {}, {}",
        capital(instrument_name(&problem.instrument)),
        size_name(&problem.size),
        tuning_name(&problem.instrument, &problem.tuning),
        units::hertz(problem.a4_hz)
    );
    if label.is_empty() { what } else { format!("{label}: {what}") }
}

#[derive(Clone, PartialEq, Properties)]
struct ChosenProps {
    fit: Rc<Fit>,
    set: Rc<Set>,
    page: SetPageProps,
}

#[component]
fn Chosen(props: &ChosenProps) -> Html {
    let (set, problem) = (&props.set, Rc::new(props.fit.problem.clone()));
    let ReportPrinter { string: printed, on_print, failed } = use_report_printer();
    let (depth, on_depth) = use_detail_level();
    let names = words::names(set);
    // Another answer lies at another address.
    let of = Rc::as_ptr(&props.fit) as usize;
    // The strings come first, from the top down.
    let turn = |behind: u32| set.strings.len() as u32 + behind;
    let px_per_mm = magnification(set.strings.iter().map(|s| &s.report.construction), WIDEST_PX);
    let printed = printed.and_then(|i| Some((set.strings.get(i)?, names.get(i)?)));
    let card = |(i, string): (usize, &Rc<FittedString>)| {
        let cautions = set.plan.cautions.iter().filter(|c| c.string == Some(i)).cloned();
        html! {
            <Later key={i} {of} turn={i as u32 + 1}>
                <StringCard string={string.clone()} problem={problem.clone()} name={names[i].clone()} {px_per_mm} {depth} cautions={cautions.collect::<Vec<_>>()} on_compare={props.page.on_compare.reform(move |()| i)} on_print={on_print.reform(move |()| i)} />
            </Later>
        }
    };
    html! {
        <>
            { urgent(set) }
            <p class="set-kind">{ kind_words::chosen(set, &names) }</p>
            if set.close_call {
                { portraits::level(set, &names, &props.page.on_compare) }
            } else {
                { portraits::row(set, &names, px_per_mm) }
                <p class="lede">{ words::lead(set) }</p>
            }
            <SureLine set={set.clone()} sureness={props.page.sureness.clone()} />
            <DetailLevelChoice {depth} on_change={on_depth} />
            <section class="along" aria-labelledby="along">
                <h2 id="along">{ say!("along-title") }</h2>
                <p>{ say!("along-how") }</p>
                <Along id="along-set" />
            </section>
            <Actions page={props.page.clone()} />
            { assumed(&problem, &props.page.on_change) }
            <Later {of} turn={1}>{ kinds::others(set, &names, depth) }</Later>
            <Later {of} turn={1}>{ load::load(set, &problem, &names) }</Later>
            <section class="strings" aria-labelledby="strings">
                <h2 id="strings">{ if set.close_call { say!("set-first-strings") } else { say!("part-strings") } }</h2>
                { for set.strings.iter().enumerate().map(card) }
            </section>
            <section class="ear" aria-labelledby="ear">
                <h2 id="ear">{ say!("set-ear") }</h2>
                <Later {of} turn={turn(1)}>
                    <Listening id="hear" instrument={problem.instrument.clone()} groups={Rc::new(under_bow::groups(set, &names))} />
                </Later>
            </section>
            <Later {of} turn={turn(2)}>{ plan::the_plan(set, &problem, &names) }</Later>
            <section class="a-year" aria-labelledby="a-year">
                <h2 id="a-year">{ say!("year-section") }</h2>
                <Later {of} turn={turn(3)}>{ a_year(set, &names) }</Later>
            </section>
            <Later {of} turn={turn(4)}>{ weights::counted(&problem, set, &names) }</Later>
            <SureSection set={set.clone()} answers={props.page.answers.clone()} sureness={props.page.sureness.clone()} {depth} />
            <Actions page={props.page.clone()} />
            if failed {
                <p class="amiss" role="alert">{ say!("no-printing") }</p>
            }
            if let Some((string, name)) = printed {
                <ReportSheet string={string.clone()} problem={problem} name={name.clone()} label={props.page.label.clone()} />
            } else {
                <Later {of} turn={turn(5)}>
                    <Sheet fit={props.fit.clone()} answers={props.page.answers.clone()} sureness={props.page.sureness.clone()} label={props.page.label.clone()} />
                </Later>
            }
        </>
    }
}

/// Prints the report of one string.
struct ReportPrinter {
    /// The string whose report takes the place of the sheet while it is printed.
    string: Option<usize>,
    on_print: Callback<usize>,
    /// The browser does not print.
    failed: bool,
}

#[hook]
fn use_report_printer() -> ReportPrinter {
    let string = use_state(|| None::<usize>);
    let failed = use_state(|| false);
    {
        let string = string.setter();
        use_effect_with((), move |()| {
            let watch = print::watch_end(move || string.set(None));
            move || drop(watch)
        });
    }
    {
        let failed = failed.setter();
        use_effect_with(*string, move |string| {
            if string.is_some() {
                failed.set(!print::print());
            }
        });
    }
    let setter = string.setter();
    let on_print = Callback::from(move |i| setter.set(Some(i)));
    ReportPrinter { string: *string, on_print, failed: *failed }
}

/// What cannot wait, of the set as a whole.
fn urgent(set: &Set) -> Html {
    let is_urgent = |c: &&Caution| c.string.is_none() && plan_words::is_urgent(&c.caution);
    let urgent: Vec<_> = set.plan.cautions.iter().filter(is_urgent).collect();
    if urgent.is_empty() {
        return Html::default();
    }
    html! {
        <section class="urgent" aria-label={say!("set-cautions")}>
            { for urgent.iter().map(|c| html! { <p class="caution">{ plan_words::caution(&c.caution) }</p> }) }
        </section>
    }
}

fn a_year(set: &Set, names: &[String]) -> Html {
    let strings: Vec<_> = set.strings.iter().map(|s| under_bow::player(&s.report)).collect();
    let called: Vec<_> = names.iter().map(|name| the_string(name)).collect();
    html! {
        <>
            <Year strings={Rc::new(strings)} names={Rc::new(names.to_vec())} called={Rc::new(called)} />
            <p class="aside">{ say!("year-apart") }</p>
        </>
    }
}

fn assumed(problem: &Problem, on_change: &Callback<()>) -> Html {
    let Some(sentence) = words::assumptions(problem) else { return Html::default() };
    html! {
        <section class="assumed">
            <p>
                { sentence }
                { " " }{ say!("set-sharpen") }{ " " }
                <button type="button" class="as-link" onclick={on_change.reform(|_: MouseEvent| ())}>{ say!("change") }</button>
            </p>
        </section>
    }
}

#[derive(Clone, PartialEq, Properties)]
struct ActionsProps {
    page: SetPageProps,
}

#[component]
fn Actions(props: &ActionsProps) -> Html {
    let page = &props.page;
    let printless = use_state(|| false);
    let on_print = {
        let printless = printless.setter();
        Callback::from(move |_: MouseEvent| printless.set(!print::print()))
    };
    let then = |callback: &Callback<()>| callback.reform(|_: MouseEvent| ());
    html! {
        <>
            <p class="actions">
                <button type="button" class="button" onclick={on_print}>{ say!("set-print") }</button>
                <button type="button" class="button quiet" onclick={then(&page.on_keep)}>{ say!("set-keep") }</button>
                <button type="button" class="button quiet" onclick={then(&page.on_download)}>{ say!("set-download") }</button>
                <button type="button" class="button quiet" onclick={then(&page.on_change)}>{ say!("set-change") }</button>
            </p>
            if *printless {
                <p class="amiss" role="alert">{ say!("no-printing") }</p>
            }
        </>
    }
}
