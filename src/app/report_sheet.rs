//! The report of one string on one printed page: its portrait, how it is made, where it works, and every number.
//!
//! It takes the place of the sheet of the set while it is printed.

use std::rc::Rc;

use protocol::reply::{FittedString, Problem, Range, Report};
use yew::prelude::*;

use crate::components::evidence::Evidence;
use crate::components::portrait::{Portrait, ScaleBar, magnification};
use crate::units;
use crate::words::naming::{capital, core, family, portrait, the_string, windings};
use crate::words::questions::size_name;
use crate::words::{days, doubt, partials, property, say, speech};

/// Properties of [`ReportSheet`].
#[derive(Clone, PartialEq, Properties)]
pub struct ReportSheetProps {
    /// The string.
    pub string: Rc<FittedString>,
    /// What was asked.
    pub problem: Rc<Problem>,
    /// What it is called.
    pub name: AttrValue,
    /// What the fitting is called.
    pub label: AttrValue,
}

/// How wide the string is drawn on paper, in pixels of a ninety-sixth of an inch.
const WIDE_PX: f64 = 96.0;

/// The report.
#[component]
pub fn ReportSheet(props: &ReportSheetProps) -> Html {
    let report = &props.string.report;
    let construction = &report.construction;
    let px_per_mm = magnification(std::iter::once(construction), WIDE_PX);
    let works = works(report);
    html! {
        <section class="sheet report" lang={speech::language().tag()} aria-label={say!("report-label")}>
            <header class="report-head">
                <div>
                    <Portrait construction={construction.clone()} px_per_mm={px_per_mm}
                        label={portrait(&the_string(&props.name), construction)} />
                    <ScaleBar px_per_mm={px_per_mm} room_px={60.0} />
                </div>
                <div>
                    <p class="sheet-title">{ title(props) }</p>
                    <p><strong>{ say!("report-core") }{ " " }</strong>{ core(&construction.core) }{ "." }</p>
                    <p><strong>{ say!("report-wound") }{ " " }</strong>{ windings(&construction.windings) }{ "." }</p>
                    <p><strong>{ say!("report-setting") }{ " " }</strong>{ setting(report) }</p>
                    { for report.caveats.iter().map(|key| html! { <p><strong>{ doubt::caveat(key) }</strong></p> }) }
                    <p>{ property::all().filter_map(|p| doubt::in_short(p.key, report.doubts.get(p.key)?)).collect::<Vec<_>>().join(" ") }</p>
                </div>
            </header>
            <div class="report-numbers">
                { for property::GROUPS.iter().map(|group| html! {
                    <table>
                        <thead>
                            <tr><th scope="col">{ group.name() }</th><th scope="col">{ say!("column-value") }</th><th scope="col">{ say!("report-range") }</th><th scope="col">{ say!("report-known") }</th><th scope="col">{ say!("report-source") }</th></tr>
                        </thead>
                        <tbody>{ for group.properties.iter().filter_map(|p| number(p, report, &works)) }</tbody>
                    </table>
                }) }
            </div>
            <div class="report-curves">
                <table>
                    <caption>{ format!("{}.", days::title(&report.nights, &props.name)) }</caption>
                    <thead><tr><th scope="col">{ say!("nights-column-day") }</th><th scope="col">{ say!("nights-column-lost") }</th><th scope="col">{ say!("report-range") }</th><th scope="col">{ say!("report-five") }</th></tr></thead>
                    <tbody>
                        { for report.nights.iter().map(|n| html! {
                            <tr><th scope="row">{ n.day }</th>{ lost(&n.lost_cent) }<td>{ days::likely(n.chance) }{ ", " }{ days::percent(n.chance) }</td></tr>
                        }) }
                    </tbody>
                </table>
                <table>
                    <caption>{ say!("report-losses", title = partials::title(&report.partials, &props.name)) }</caption>
                    <thead>
                        <tr>
                            <th scope="col">{ say!("partials-column-n") }</th><th scope="col">{ say!("report-hz") }</th><th scope="col">{ say!("report-sharp") }</th><th scope="col">{ say!("partials-column-rings") }</th>
                            <th scope="col">{ say!("report-bridge") }</th><th scope="col">{ say!("report-air") }</th><th scope="col">{ say!("report-bending") }</th><th scope="col">{ say!("report-pull") }</th>
                        </tr>
                    </thead>
                    <tbody>
                        { for report.partials.iter().map(|p| {
                            let loss = |x: f64| units::significant(x * 1e3, 2);
                            html! {
                                <tr>
                                    <th scope="row">{ p.n }</th><td>{ units::fixed(p.frequency_hz, 0) }</td><td>{ partials::sharp(p) }</td><td>{ units::significant(p.ring_s, 2) }</td>
                                    <td>{ loss(p.loss_bridge) }</td><td>{ loss(p.loss_air) }</td><td>{ loss(p.loss_bending) }</td><td>{ loss(p.loss_string) }</td>
                                </tr>
                            }
                        }) }
                    </tbody>
                </table>
            </div>
            <p class="sheet-foot">
                { say!("report-sources", works = works.iter().enumerate().map(|(i, key)| format!("{} {}", i + 1, property::cited(key))).collect::<Vec<_>>().join("; ")) }
            </p>
        </section>
    }
}

fn title(props: &ReportSheetProps) -> String {
    let (problem, report) = (&props.problem, &props.string.report);
    let what = say!(
        "report-title",
        Kind = capital(family(&report.family)),
        name = props.name.as_str(),
        gauge = units::gauge(report.numbers.get("outer_diameter_m").map_or(0.0, |q| q.value)),
        size = size_name(&problem.size),
        instrument = &problem.instrument,
    );
    if props.label.is_empty() { what } else { format!("{}: {what}", props.label) }
}

/// Where the string works, in one sentence.
fn setting(report: &Report) -> String {
    let s = &report.setting;
    let percent = |share: f64| units::with_unit(&units::fixed(share * 100.0, 0), "%");
    let (doubt, behind) = (s.sounding_length_doubt_m, s.afterlength_m);
    let doubt = match doubt {
        doubt if doubt > 0.0 => say!("setting-doubt", doubt = units::mm(doubt, 1)),
        _ => String::new(),
    };
    let behind =
        behind.map(|m| say!("setting-behind", length = units::mm(m, 0))).unwrap_or_default();
    let (warmer, damper) = match s.untuned.as_str() {
        "evening" => (s.evening_temperature_swing_k, s.evening_humidity_swing),
        "week" => (s.week_temperature_swing_k, s.week_humidity_swing),
        _ => (s.temperature_swing_k, s.humidity_swing),
    };
    say!(
        "setting",
        length = units::mm(s.sounding_length_m, 0),
        doubt = doubt,
        behind = behind,
        nut = units::mm(s.nut_to_peg_m, 0),
        pitch = units::hertz(s.pitch_hz),
        angle = units::fixed(s.angle_over_bridge_deg, 0),
        peg = units::mm(s.peg_diameter_m, 1),
        gear = units::significant(s.gear_ratio, 2),
        height = units::mm(s.string_height_m, 1),
        edge = units::mm(s.nut_radius_m, 1),
        peak = units::significant(s.peak_resistance_kg_s, 2),
        bridge = units::with_unit(&units::significant(s.bridge_resistance_kg_s, 2), "kg/s"),
        warmth = units::warmth(s.temperature_c),
        swing = units::warmer(s.temperature_swing_k / 2.0),
        damp = percent(s.humidity),
        change = percent(s.humidity_swing / 2.0),
        untuned = &s.untuned,
        warmer = units::warmer(warmer),
        damper = percent(damper),
    )
}

/// What a day costs, and within what.
fn lost(range: &Range) -> Html {
    let w = days::cents(range);
    html! {
        <>
            <td>{ &w.value }</td>
            <td>{ w.range() }</td>
        </>
    }
}

/// The sources of a report, in the order in which its numbers name them.
fn works(report: &Report) -> Vec<&str> {
    let mut works: Vec<&str> = Vec::new();
    for q in property::all().filter_map(|p| report.numbers.get(p.key)) {
        if !works.contains(&q.source.as_str()) {
            works.push(&q.source);
        }
    }
    works
}

fn number(p: &property::Property, report: &Report, works: &[&str]) -> Option<Html> {
    let q = report.numbers.get(p.key)?;
    let w = units::written(p.key, q, 2);
    let source = works.iter().position(|key| *key == q.source)? + 1;
    let part = property::PARTS_OF_DRIFT.contains(&p.key);
    Some(html! {
        <tr class={part.then_some("of-drift")}>
            <th scope="row">{ p.name() }</th>
            <td>{ w.plain() }</td>
            <td>{ if w.exact { say!("table-none").to_owned() } else { w.range() } }</td>
            <td><Evidence grade={q.evidence.clone()} /></td>
            <td>{ source }</td>
        </tr>
    })
}
