//! The answer: a set of strings, why, what it costs, and what to do with it.

use std::rc::Rc;

use protocol::reply::{Fit, Obstacle, Problem, Report, Set, Weight};
use protocol::request::{Answers, Construction};
use yew::prelude::*;

use crate::components::along::Along;
use crate::components::bar::RangeBar;
use crate::components::depths::Depths;
use crate::components::findings::Findings;
use crate::components::later::Later;
use crate::components::listening::Listening;
use crate::components::portrait::{Portrait, ScaleBar, magnification};
use crate::components::string_card::StringCard;
use crate::components::sureness::{SureLine, SureSection};
use crate::components::swings::Swings;
use crate::components::table::Scroll;
use crate::components::year::Year;
use crate::hooks::{Sureness, use_depth};
use crate::order;
use crate::platform::print;
use crate::report_sheet::ReportSheet;
use crate::sheet::Sheet;
use crate::under_bow;
use crate::units;
use crate::words::naming::{a_letter, capital, list, portrait, short, the_string};
use crate::words::questions::{instrument_name, size_name, tuning_name};
use crate::words::{plan, reasons, say, set as words, verdict};

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
/// The same where two sets stand beside each other.
const WIDEST_OF_TWO_PX: f64 = 80.0;

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
            <Findings fit={fit.clone()} />
            if let Some(title) = all_the_same {
                <header class="all-the-same">
                    <h2>{ title }</h2>
                    <p class="lede">{ words::answer(fit) }</p>
                </header>
            }
            { match &fit.set {
                Some(set) => html! { <Chosen fit={fit.clone()} set={set.clone()} page={props.clone()} /> },
                None => nothing(fit, &props.on_change),
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
    // Which string's report takes the place of the sheet, while it is printed.
    let report = use_state(|| None::<usize>);
    let printless = use_state(|| false);
    {
        let report = report.setter();
        use_effect_with((), move |()| {
            let watch = print::watch_end(move || report.set(None));
            move || drop(watch)
        });
    }
    {
        let printless = printless.setter();
        use_effect_with(*report, move |report| {
            if report.is_some() {
                printless.set(!print::print());
            }
        });
    }
    let (depth, on_depth) = use_depth();
    let names = words::names(set);
    // Another answer lies at another address.
    let of = Rc::as_ptr(&props.fit) as usize;
    // The strings come first, from the top down.
    let turn = |behind: u32| set.strings.len() as u32 + behind;
    let px_per_mm = magnification(set.strings.iter().map(|s| &s.report.construction), WIDEST_PX);
    let urgent: Vec<_> = set
        .plan
        .cautions
        .iter()
        .filter(|c| c.string.is_none() && plan::is_urgent(&c.caution))
        .collect();
    let on_print = |i: usize| {
        let report = report.clone();
        Callback::from(move |()| report.set(Some(i)))
    };
    let printed = report.and_then(|i| Some((set.strings.get(i)?, names.get(i)?)));
    html! {
        <>
            if !urgent.is_empty() {
                <section class="urgent" aria-label={say!("set-cautions")}>
                    { for urgent.iter().map(|c| html! { <p class="caution">{ plan::caution(&c.caution) }</p> }) }
                </section>
            }
            if set.close_call {
                { level(set, &names, &props.page.on_compare) }
            } else {
                { row(set, &names, px_per_mm) }
                <p class="lede">{ words::lead(set) }</p>
            }
            <SureLine set={set.clone()} sureness={props.page.sureness.clone()} />
            <Depths {depth} on_change={on_depth} />
            <section class="along" aria-labelledby="along">
                <h2 id="along">{ say!("along-title") }</h2>
                <p>{ say!("along-how") }</p>
                <Along id="along-set" />
            </section>
            <Actions page={props.page.clone()} />
            { assumed(&problem, &props.page.on_change) }
            <Later {of} turn={1}>{ load(set, &problem, &names) }</Later>
            <section class="strings" aria-labelledby="strings">
                <h2 id="strings">{ if set.close_call { say!("set-first-strings") } else { say!("part-strings") } }</h2>
                { for set.strings.iter().enumerate().map(|(i, s)| {
                    let cautions = set.plan.cautions.iter().filter(|c| c.string == Some(i)).cloned().collect::<Vec<_>>();
                    html! {
                        <Later key={i} {of} turn={i as u32 + 1}>
                        <StringCard string={s.clone()} problem={problem.clone()} name={names[i].clone()} px_per_mm={px_per_mm} {depth} cautions={cautions} on_compare={props.page.on_compare.reform(move |()| i)} on_print={on_print(i)} />
                        </Later>
                    }
                }) }
            </section>
            <section class="ear" aria-labelledby="ear">
                <h2 id="ear">{ say!("set-ear") }</h2>
                <Later {of} turn={turn(1)}>
                    <Listening id="hear" instrument={problem.instrument.clone()} benches={Rc::new(under_bow::benches(set, &names))} />
                </Later>
            </section>
            <Later {of} turn={turn(2)}>{ the_plan(set, &problem, &names) }</Later>
            <section class="a-year" aria-labelledby="a-year">
                <h2 id="a-year">{ say!("year-section") }</h2>
                <Later {of} turn={turn(3)}>
                    <Year strings={Rc::new(set.strings.iter().map(|s| under_bow::player(&s.report)).collect::<Vec<_>>())} names={Rc::new(names.clone())} called={Rc::new(names.iter().map(|name| the_string(name)).collect::<Vec<_>>())} />
                    <p class="aside">{ say!("year-apart") }</p>
                </Later>
            </section>
            <Later {of} turn={turn(4)}>{ counted(&problem, set, &names) }</Later>
            <SureSection set={set.clone()} answers={props.page.answers.clone()} sureness={props.page.sureness.clone()} {depth} />
            <Actions page={props.page.clone()} />
            if *printless {
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

/// The set as a row of portraits.
fn row(set: &Set, names: &[String], px_per_mm: f64) -> Html {
    html! {
        <figure class="line-up">
            <ol class="portraits">
                { for set.strings.iter().zip(names).map(|(s, name)| html! {
                    <li>
                        { likeness(&s.report.construction, name, &s.report.family, px_per_mm) }
                        if let Some(word) = verdict::standing(&s.standing) {
                            <span class="standing">{ word }</span>
                        }
                    </li>
                }) }
            </ol>
            <ScaleBar px_per_mm={px_per_mm} />
        </figure>
    }
}

fn likeness(construction: &Construction, name: &str, family_key: &str, px_per_mm: f64) -> Html {
    html! {
        <>
            <span class="likeness-room">
                <Portrait construction={construction.clone()} px_per_mm={px_per_mm}
                    label={portrait(&the_string(name), construction)} />
            </span>
            <span class="note-name">{ name }</span>
            <span class="kind">{ short(family_key, construction) }</span>
        </>
    }
}

/// What a string is drawn and named by.
fn drawn(report: &Report) -> (&Construction, &str) {
    (&report.construction, &report.family)
}

/// Two sets as equals.
fn level(set: &Set, names: &[String], on_compare: &Callback<usize>) -> Html {
    let second = set.second();
    let both = set.strings.iter().map(|s| &*s.report).chain(second.iter().copied());
    let both = both.map(|report| &report.construction);
    let px_per_mm = magnification(both, WIDEST_OF_TWO_PX);
    let chosen = words::chosen_families(set);
    let other = words::other_families(set);
    let differ = words::differing(&chosen, &other);
    let metal = |c: &Construction| c.windings.last().map(|w| w.metal.clone());
    let other_metal = |i: usize| {
        let first = set.strings.get(i);
        first.zip(second.get(i)).is_some_and(|(first, second)| {
            metal(&first.report.construction) != metal(&second.construction)
        })
    };
    let one = |title: &str,
               families: &[&str],
               gauges: &[&str],
               strings: Vec<(&Construction, &str)>| {
        let many = (strings.len() > 4).then_some("of-five");
        html! {
            <section class="equal">
                <h3>{ title }</h3>
                <p>{ capital(&words::families(families, names)) }{ ", " }{ words::gauges(gauges, names) }{ "." }</p>
                <ol class={classes!("portraits", many)}>
                    { for strings.into_iter().enumerate().map(|(i, (construction, key))| html! {
                        <li class={classes!(differ.contains(&i).then_some("differs"))}>
                            { likeness(construction, &names[i], key, px_per_mm) }
                            if let Some(word) = set.strings.get(i).and_then(|s| verdict::standing(&s.standing)) {
                                <span class="standing">{ word }</span>
                            }
                            if differ.contains(&i) {
                                <span class="differs-mark">{ say!("set-differs") }</span>
                            } else if other_metal(i) {
                                <span class="kind">{ say!("set-metal") }</span>
                            }
                        </li>
                    }) }
                </ol>
            </section>
        }
    };
    let first = set.strings.iter().map(|s| drawn(&s.report)).collect();
    let second = second.iter().copied().map(drawn).collect();
    html! {
        <section class="level" aria-labelledby="level">
            <h2 id="level">{ words::lead(set) }</h2>
            <div class="equals">
                { one(say!("set-first"), &chosen, &words::chosen_gauges(set), first) }
                { one(say!("set-second"), &other, &words::other_gauges(set), second) }
            </div>
            <ScaleBar px_per_mm={px_per_mm} />
            <p>
                { for differ.iter().map(|i| {
                    let i = *i;
                    let onclick = on_compare.reform(move |_: MouseEvent| i);
                    html! {
                        <button type="button" class="button quiet" onclick={onclick}>
                            { say!("set-compare-two", name = &names[i]) }
                        </button>
                    }
                }) }
            </p>
        </section>
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

/// Total load, load on the bridge, and the steps between neighbours.
fn load(set: &Set, problem: &Problem, names: &[String]) -> Html {
    let (total, bridge) = (&set.total_tension_n, &set.downforce_n);
    let written =
        |r: &protocol::reply::Range| (units::force(r.value), units::force_range(r.low, r.high));
    let ((total_force, total_range), (bridge_force, bridge_range)) =
        (written(total), written(bridge));
    let usual = units::force_range(problem.usual_load_n.0, problem.usual_load_n.1);
    let most = 1.12 * problem.usual_load_n.1.max(problem.most_load_n).max(total.high);
    let title = words::load_title(set, problem);
    html! {
        <section class="load" aria-labelledby="load">
            <h2 id="load">{ title }</h2>
            <dl class="bars">
                <dt>{ say!("load-all") }</dt>
                <dd>
                    <p>{ say!("load-total", force = &total_force, range = &total_range, usual = &usual) }
                    if problem.most_load_n < problem.usual_load_n.1 {
                        { format!(" {}", say!("load-old", limit = units::one_force(problem.most_load_n))) }
                    }
                    </p>
                    <RangeBar label={say!("load-total-bar", range = &total_range, usual = &usual)} most={most}
                        value={total.value} range={(total.low, total.high)} usual={problem.usual_load_n}
                        limit={Some(problem.most_load_n)} />
                </dd>
                <dt>{ say!("load-bridge") }</dt>
                <dd>
                    <p>{ say!("load-bridge-force", force = &bridge_force, range = &bridge_range) }</p>
                    <RangeBar label={say!("load-bridge-bar", range = &bridge_range)} most={most}
                        value={bridge.value} range={(bridge.low, bridge.high)} />
                </dd>
            </dl>
            <p class="legend-line">{ say!("load-legend") }</p>
            { steps(set, names) }
        </section>
    }
}

fn steps(set: &Set, names: &[String]) -> Html {
    let title = words::steps_title(&set.steps, names);
    html! {
        <>
            <h3>{ title }</h3>
            <Scroll label={say!("steps-table")}>
                <table>
                    <thead>
                        <tr>
                            <th scope="col">{ say!("steps-from") }</th>
                            <th scope="col">{ say!("steps-tension") }</th>
                            <th scope="col">{ say!("steps-column-usual") }</th>
                            <th scope="col">{ say!("column-word") }</th>
                            <th scope="col">{ say!("steps-push") }</th>
                        </tr>
                    </thead>
                    <tbody>
                        { for set.steps.iter().enumerate().map(|(i, s)| html! {
                            <tr>
                                <th scope="row">{ format!("{}, {}", names[i], names[i + 1]) }</th>
                                <td class="figure">{ units::fixed(s.tension_ratio, 2) }</td>
                                <td class="figure">{ units::fixed(s.usual_ratio, 2) }</td>
                                <td>{ words::step(s) }</td>
                                <td class="figure">{ units::fixed(s.impedance_ratio, 2) }</td>
                            </tr>
                        }) }
                    </tbody>
                </table>
            </Scroll>
        </>
    }
}

fn the_plan(set: &Set, problem: &Problem, names: &[String]) -> Html {
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

/// What counted and why.
fn counted(problem: &Rc<Problem>, set: &Set, names: &[String]) -> Html {
    let because = |w: &Weight| {
        let steps: Vec<String> = w
            .steps
            .iter()
            .map(|s| {
                let factor = units::significant(s.factor, 2);
                say!("weights-step", factor = factor, because = reasons::because(&s.because))
            })
            .collect();
        if steps.is_empty() { say!("weights-none").to_owned() } else { list(&steps) }
    };
    let weights: Vec<&Weight> = problem.weights.iter().collect();
    let weights = order::sorted(&weights, |a, b| b.weight.total_cmp(&a.weight));
    let most: Vec<&str> =
        weights.iter().take(3).map(|w| reasons::attribute(&w.attribute)).collect();
    html! {
        <section class="counted" aria-labelledby="counted">
            <h2 id="counted">{ say!("weights-title", most = list(&most)) }</h2>
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
                <Scroll label={say!("part-weights")}>
                    <table>
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
                                    <td class="figure">{ units::fixed(w.base, 1) }</td>
                                    <td>{ because(w) }</td>
                                    <td class="figure">{ units::fixed(w.weight, 2) }</td>
                                </tr>
                            }) }
                        </tbody>
                    </table>
                </Scroll>
            </details>
        </section>
    }
}

/// Why nothing fits, and what would help.
fn nothing(fit: &Fit, on_change: &Callback<()>) -> Html {
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
                <h3>{ say!("nothing-string", name = crate::words::naming::letter(note)) }</h3>
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
