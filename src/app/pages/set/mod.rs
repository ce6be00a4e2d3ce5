//! The answer: a set of strings, why, what it costs, and what to do with it.

mod columns;
mod companion;
mod glance;
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

use crate::components::detail_level::DetailLevelChoice;
use crate::components::diagnosis::Diagnosis;
use crate::components::fold::Fold;
use crate::components::later::Later;
use crate::components::listening::Listening;
use crate::components::portrait::magnification;
use crate::components::string_card::StringCard;
use crate::components::sureness::{SURE, SureSection};
use crate::components::year::Year;
use crate::day::Day;
use crate::hooks::{Sureness, use_detail_level};
use crate::platform::print;
use crate::report_sheet::ReportSheet;
use crate::sheet::Sheet;
use crate::under_bow;
use crate::units;
use crate::words::naming::{capital, the_string};
use crate::words::questions::{instrument_name, size_name, tuning_name};
use crate::words::{kinds as kind_words, plan as plan_words, say, set as words, verdict};

use companion::Companion;

/// Properties of [`SetPage`].
#[derive(Clone, PartialEq, Properties)]
pub struct SetPageProps {
    /// The answer.
    pub fit: Rc<Fit>,
    /// What was said.
    pub answers: Rc<Answers>,
    /// What the fitting is called.
    pub label: AttrValue,
    /// Which day it is.
    pub today: Day,
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
    let px_per_mm = magnification(set.strings.iter().map(|s| &s.report.construction), WIDEST_PX);
    let printed = printed.and_then(|i| Some((set.strings.get(i)?, names.get(i)?)));
    let card = |(i, string): (usize, &Rc<FittedString>)| {
        html! {
            <StringCard key={i} string={string.clone()} problem={problem.clone()} name={names[i].clone()} {px_per_mm} {depth} on_compare={props.page.on_compare.reform(move |()| i)} on_print={on_print.reform(move |()| i)} />
        }
    };
    let sureness = &props.page.sureness;
    html! {
        <>
            { urgent(set) }
            if set.close_call {
                { portraits::level(set, &names, &props.page.on_compare) }
            } else {
                <p class="set-kind">{ kind_words::chosen(set, &names) }</p>
                { portraits::row(set, &names, px_per_mm) }
            }
            { glance::points(set, &problem, &props.page.answers, &names, props.page.today, sureness) }
            <Companion set={set.clone()}><Actions page={props.page.clone()} /></Companion>
            <DetailLevelChoice {depth} on_change={on_depth} />
            <Later {of} turn={1}>{ columns::strings(set, &problem, &names, depth) }</Later>
            <Later {of} turn={2}>{ plan::the_plan(set, &problem, &names, props.page.today) }</Later>
            <div class="more">
                if !set.other_kinds.is_empty() || !set.ruled_out.is_empty() {
                    { folded("other-kinds", say!("kinds-title"), kinds::others(set, &names, depth)) }
                }
                { folded("details", say!("set-details"), set.strings.iter().enumerate().map(card).collect()) }
                { folded("load", &words::load_title(set, &problem), load::load(set, &problem, &names)) }
                { folded("ear", say!("set-ear"), html! {
                    <Listening id="hear" instrument={problem.instrument.clone()} groups={Rc::new(under_bow::groups(set, &names))} />
                }) }
                { folded("a-year", say!("year-section"), a_year(set, &names)) }
                { folded("counted", &weights::title(&problem), weights::counted(&problem, set, &names)) }
                if let Sureness::Known(_) = sureness {
                    { folded(SURE, say!("sure-title"), html! {
                        <SureSection set={set.clone()} answers={props.page.answers.clone()} sureness={sureness.clone()} {depth} />
                    }) }
                }
                if !problem.assumed.is_empty() {
                    { folded("assumed", say!("set-assumed"), assumed(&problem, &props.page.on_change)) }
                }
            </div>
            if failed {
                <p class="amiss" role="alert">{ say!("no-printing") }</p>
            }
            if let Some((string, name)) = printed {
                <ReportSheet string={string.clone()} problem={problem} name={name.clone()} label={props.page.label.clone()} />
            } else {
                <Later {of} turn={3}>
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
        <p>
            { sentence }
            { " " }{ say!("set-sharpen") }{ " " }
            <button type="button" class="as-link" onclick={on_change.reform(|_: MouseEvent| ())}>{ say!("change") }</button>
        </p>
    }
}

/// A part of the page that is folded away under its heading.
fn folded(id: &'static str, title: &str, inside: Html) -> Html {
    html! {
        <section class={id}>
            <Fold summary={html! { <h2 {id} tabindex="-1">{ title }</h2> }}>{ inside }</Fold>
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
    // Kept is what is shown; another set can be kept anew.
    let kept = use_state(|| None::<usize>);
    let shown = Rc::as_ptr(&page.fit) as usize;
    let on_keep = {
        let kept = kept.setter();
        page.on_keep.reform(move |_: MouseEvent| kept.set(Some(shown)))
    };
    let then = |callback: &Callback<()>| callback.reform(|_: MouseEvent| ());
    html! {
        <>
            <p class="actions">
                <button type="button" class="button" onclick={on_print}>{ say!("set-print") }</button>
                <button type="button" class="button quiet" onclick={on_keep}>
                    { if *kept == Some(shown) { say!("set-kept") } else { say!("set-keep") } }
                </button>
                <button type="button" class="button quiet" onclick={then(&page.on_download)}>{ say!("set-download") }</button>
                <button type="button" class="button quiet" onclick={then(&page.on_change)}>{ say!("set-change") }</button>
            </p>
            if *printless {
                <p class="amiss" role="alert">{ say!("no-printing") }</p>
            }
        </>
    }
}
