//! One string of the set in full: what it is, every reason and cost, and its numbers at three levels of detail.

use std::rc::Rc;

use protocol::reply::{FittedString, Problem, Reason};
use yew::prelude::*;

use super::balance::Balance;
use super::bow_map::BowMaps;
use super::fold::Fold;
use super::nights::Nights;
use super::partials::Partials;
use super::portrait::{Portrait, ScaleBar};
use super::table::{Doubts, Numbers, Scroll, source_link};
use crate::detail_level::DetailLevel;
use crate::under_bow;
use crate::units;
use crate::words::detail_level::{self, MakerDetails};
use crate::words::naming::{
    a_letter, capital, core, family, family_is, picture_note, portrait, the_string, windings,
};
use crate::words::{property, reasons, say, set};

/// Properties of [`StringCard`].
#[derive(Clone, PartialEq, Properties)]
pub struct StringCardProps {
    /// The string.
    pub string: Rc<FittedString>,
    /// What was asked.
    pub problem: Rc<Problem>,
    /// What it is called.
    pub name: AttrValue,
    /// Pixels to a millimetre, the same for the whole set.
    pub px_per_mm: f64,
    /// How deep its reasons go.
    #[prop_or_default]
    pub depth: DetailLevel,
    /// The person wants it beside its rival.
    pub on_compare: Callback<()>,
    /// The person wants its report on paper.
    pub on_print: Callback<()>,
}

/// One string of the set.
#[component]
pub fn StringCard(props: &StringCardProps) -> Html {
    let (string, name) = (&props.string, &props.name);
    let report = &string.report;
    let construction = &report.construction;
    let full = a_letter(name);
    let id = format!("string-{}", name.to_ascii_lowercase().replace(' ', "-"));
    if string.standing != "new" {
        return stays(string, name, &id);
    }
    let print = props.on_print.reform(|_: MouseEvent| ());
    let compare = props.on_compare.reform(|_: MouseEvent| ());
    html! {
        <section class="string" aria-labelledby={id.clone()}>
            <h3 id={id}>
                <span class="note-name">{ name }</span>
                <span class="kind">{ capital(family(&report.family)) }</span>
            </h3>
            <div class="string-body">
                <figure class="likeness">
                    <Portrait construction={construction.clone()} px_per_mm={props.px_per_mm}
                        label={portrait(&the_string(name), construction)} />
                    <ScaleBar px_per_mm={props.px_per_mm} room_px={90.0} />
                </figure>
                <div class="string-text">
                    <p class="what">
                        { capital(family_is(&report.family)) }{ ", " }
                        { units::gauge(report.numbers.get("outer_diameter_m").map_or(0.0, |q| q.value)) }{ "." }
                    </p>
                    { case(string, name, props.depth) }
                    <p class="packet">{ say!("card-packet", packet = set::packet(&string.shopping)) }</p>
                    <p class="actions">
                        if string.rival.is_some() {
                            <button type="button" class="button quiet" onclick={compare}>
                                { say!("card-compare", String = capital(&full), string = full.as_str()) }
                            </button>
                        }
                        <button type="button" class="button quiet" onclick={print} aria-label={say!("card-print-of", name = name.as_str())}>
                            { say!("card-print") }
                        </button>
                    </p>
                </div>
            </div>
            if !string.changes.is_empty() {
                { changes(string, name) }
            }
            <Fold summary={say!("card-balance", name = name.as_str())}>
                <Balance string={string.clone()} name={name.clone()} />
            </Fold>
            <Fold summary={say!("card-bow", name = name.as_str())}>
                <BowMaps instrument={props.problem.instrument.clone()} name={name.clone()} strings={Rc::new(under_bow::mapped(string, name))} />
            </Fold>
            <Fold summary={say!("card-made", name = name.as_str())}>
                <dl class="made">
                    <dt>{ say!("card-core") }</dt>
                    <dd>{ capital(&core(&construction.core)) }{ "." }{ picture_note(construction) }</dd>
                    <dt>{ say!("card-wound") }</dt>
                    <dd>{ capital(&windings(&construction.windings)) }{ "." }</dd>
                    <dt>{ say!("card-among") }</dt>
                    <dd>{ bands(string) }</dd>
                </dl>
            </Fold>
            <Fold summary={say!("card-numbers", name = name.as_str())}>
                <Numbers report={report.clone()} name={the_string(name)} />
                <Doubts report={report.clone()} />
                <Nights nights={report.nights.clone()} name={name.clone()} />
                <Partials partials={report.partials.clone()} ring={report.numbers.get("ring_s").cloned()} name={name.clone()} />
            </Fold>
            <Fold summary={say!("card-worths", name = name.as_str())}>
                { worths(string, name) }
            </Fold>
        </section>
    }
}

/// A string that is not new, in a few words.
fn stays(string: &FittedString, name: &str, id: &str) -> Html {
    let report = &string.report;
    let gauge = units::gauge(report.numbers.get("outer_diameter_m").map_or(0.0, |q| q.value));
    let pull = units::force(report.numbers.get("tension_n").map_or(0.0, |q| q.value));
    let known = string.standing == "kept";
    html! {
        <section class="string" aria-labelledby={id.to_owned()}>
            <h3 id={id.to_owned()}>
                <span class="note-name">{ name }</span>
                <span class="kind">{ if known { say!("card-stays") } else { say!("card-not-judged") } }</span>
            </h3>
            <p class="what">
                if known {
                    { say!("card-known", kind = capital(family_is(&report.family)), gauge = gauge, pull = pull) }
                } else {
                    { say!("card-unknown", pull = pull) }
                }
            </p>
        </section>
    }
}

/// Reasons and costs, against the rival.
fn case(string: &FittedString, name: &str, depth: DetailLevel) -> Html {
    let item = |reason: &Reason, is_cost: bool| {
        let (sentence, sticks) = detail_level::sentence(reason, is_cost, string, depth);
        html! {
            <li>
                { sentence.text }
                { " " }
                <span class="rests-on">{ sentence.rests_on }</span>
                if let Some(sticks) = sticks {
                    <p class="deeper">{ sticks }</p>
                }
                if depth == DetailLevel::Bench {
                    { maker_details(detail_level::maker_details(reason, string)) }
                }
            </li>
        }
    };
    let rival = string.rival.as_ref().map(|r| say!("card-rather", family = &r.family, name = name));
    html! {
        <div class="case">
            <div class="for">
                if let Some(rival) = &rival {
                    <h4>{ rival }</h4>
                    if string.reasons.is_empty() {
                        <p>{ say!("card-alike") }</p>
                    } else {
                        <ul>{ for string.reasons.iter().map(|r| item(r, false)) }</ul>
                    }
                } else {
                    <h4>{ say!("card-no-other") }</h4>
                    <p>{ say!("card-no-other-why") }</p>
                }
            </div>
            <div class="against">
                <h4>{ say!("card-costs") }</h4>
                <ul>{ for string.costs.iter().map(|r| item(r, true)) }</ul>
            </div>
        </div>
    }
}

/// What stands under a reason at the bench.
fn maker_details(details: MakerDetails) -> Html {
    html! {
        <>
            <p class="deeper">{ details.carries }</p>
            if let Some(formula) = details.formula {
                <p class="deeper formula">
                    { formula }
                    if let Some(source) = details.source {
                        { " · " }{ source_link(&source) }
                    }
                </p>
            }
            if let Some(ranks) = details.ranks {
                <p class="deeper">{ ranks }</p>
            }
        </>
    }
}

/// What changes from today's string.
fn changes(string: &FittedString, name: &str) -> Html {
    let today = string.today.as_ref().map(|t| t.family.as_str()).unwrap_or_default();
    let label = say!("card-changes", name = name);
    html! {
        <div class="changes">
            <h4>{ label.clone() }</h4>
            <p class="aside">{ say!("card-today", family = today, name = name) }</p>
            <Scroll label={label}>
                <table>
                    <thead>
                        <tr>
                            <th scope="col">{ say!("column-number") }</th>
                            <th scope="col">{ say!("column-today") }</th>
                            <th scope="col">{ say!("column-then") }</th>
                            <th scope="col">{ say!("column-word") }</th>
                        </tr>
                    </thead>
                    <tbody>
                        { for string.changes.iter().map(|c| {
                            let (this, other) = units::pair(&c.property, c.this, c.other);
                            html! {
                                <tr>
                                    <th scope="row">{ property::name(&c.property) }</th>
                                    <td class="figure">{ other }</td>
                                    <td class="figure">{ this }</td>
                                    <td>{ reasons::verdict(c) }</td>
                                </tr>
                            }
                        }) }
                    </tbody>
                </table>
            </Scroll>
        </div>
    }
}

/// Where the string stands within what is made.
fn bands(string: &FittedString) -> String {
    let bands = &string.bands;
    let percent = |x: f64| units::significant(x * 100.0, 2);
    say!(
        "card-bands",
        Kind = capital(family(&string.report.family)),
        family = &string.report.family,
        gauges = units::mm_range(bands.gauge_m.0, bands.gauge_m.1, 2),
        forces = units::force_range(bands.tension_n.0, bands.tension_n.1),
        low = percent(bands.stretch.0),
        high = percent(bands.stretch.1),
    )
}

/// The parts of a string's score.
fn worths(string: &FittedString, name: &str) -> Html {
    let label = say!("card-worths", name = name);
    html! {
        <Scroll label={label}>
            <table>
                <thead>
                    <tr>
                        <th scope="col">{ say!("column-wish") }</th>
                        <th scope="col">{ say!("column-under") }</th>
                        <th scope="col">{ say!("column-met") }</th>
                        <th scope="col">{ say!("column-weight") }</th>
                    </tr>
                </thead>
                <tbody>
                    { for string.attributes.iter().map(|w| html! {
                        <tr>
                            <th scope="row">{ capital(reasons::attribute(&w.attribute)) }</th>
                            <td>{ under(string, w.property.as_deref()) }</td>
                            <td class="figure">{ units::of_hundred(w.desirability) }</td>
                            <td class="figure">{ units::fixed(w.weight, 2) }</td>
                        </tr>
                    }) }
                </tbody>
            </table>
        </Scroll>
    }
}

fn under(string: &FittedString, key: Option<&str>) -> String {
    match key.and_then(|key| Some((key, string.report.numbers.get(key)?))) {
        Some((key, q)) => {
            format!("{}: {}", property::name(key), units::written(key, q, 2).within())
        }
        None => say!("card-judgement").to_owned(),
    }
}
