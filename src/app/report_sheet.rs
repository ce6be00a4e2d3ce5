//! The report of one string on one printed page: its portrait, how it is made, where it works, and every number.
//!
//! It takes the place of the sheet of the set while it is printed.

use std::rc::Rc;

use protocol::reply::{FittedString, Problem, Range, Report};
use yew::prelude::*;

use crate::components::evidence::Evidence;
use crate::components::portrait::{Portrait, ScaleBar, magnification};
use crate::platform::print::on_paper;
use crate::units;
use crate::words::naming::{capital, core, family, portrait, windings};
use crate::words::{days, doubt, partials, property};

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

/// The report, beside the page.
#[component]
pub fn ReportSheet(props: &ReportSheetProps) -> Html {
    let paper = html! { <ReportPaper ..props.clone() /> };
    on_paper(paper)
}

/// What stands on the report.
#[component]
pub fn ReportPaper(props: &ReportSheetProps) -> Html {
    let report = &props.string.report;
    let construction = &report.construction;
    let px_per_mm = magnification(std::iter::once(construction), WIDE_PX);
    let works = works(report);
    html! {
        <section class="sheet report" lang="en" aria-label="Report to print">
            <header class="report-head">
                <div>
                    <Portrait construction={construction.clone()} px_per_mm={px_per_mm}
                        label={portrait(&format!("the {} string", props.name), construction)} />
                    <ScaleBar px_per_mm={px_per_mm} room_px={60.0} />
                </div>
                <div>
                    <p class="sheet-title">{ title(props) }</p>
                    <p><strong>{ "Core: " }</strong>{ core(&construction.core) }{ "." }</p>
                    <p><strong>{ "Wound with: " }</strong>{ windings(&construction.windings) }{ "." }</p>
                    <p><strong>{ "Setting: " }</strong>{ setting(report) }</p>
                    { for report.caveats.iter().map(|key| html! { <p><strong>{ doubt::caveat(key) }</strong></p> }) }
                    <p>{ property::all().filter_map(|p| doubt::in_short(p.key, report.doubts.get(p.key)?)).collect::<Vec<_>>().join(" ") }</p>
                </div>
            </header>
            <div class="report-numbers">
                { for property::GROUPS.iter().map(|group| html! {
                    <table>
                        <thead>
                            <tr><th scope="col">{ group.name }</th><th scope="col">{ "Value" }</th><th scope="col">{ "Range" }</th><th scope="col">{ "Known" }</th><th scope="col">{ "Src" }</th></tr>
                        </thead>
                        <tbody>{ for group.properties.iter().filter_map(|p| number(p, report, &works)) }</tbody>
                    </table>
                }) }
            </div>
            <div class="report-curves">
                <table>
                    <caption>{ format!("{}.", days::title(&report.nights, &props.name)) }</caption>
                    <thead><tr><th scope="col">{ "Day" }</th><th scope="col">{ "Cents lost" }</th><th scope="col">{ "Range" }</th><th scope="col">{ "Within five cents" }</th></tr></thead>
                    <tbody>
                        { for report.nights.iter().map(|n| html! {
                            <tr><th scope="row">{ n.day }</th>{ lost(&n.lost_cent) }<td>{ days::likely(n.chance) }{ ", " }{ days::percent(n.chance) }</td></tr>
                        }) }
                    </tbody>
                </table>
                <table>
                    <caption>{ format!("{}. Losses in thousandths.", partials::title(&report.partials, &props.name)) }</caption>
                    <thead>
                        <tr>
                            <th scope="col">{ "Partial" }</th><th scope="col">{ "Hz" }</th><th scope="col">{ "Sharp, cents" }</th><th scope="col">{ "Rings, s" }</th>
                            <th scope="col">{ "Bridge" }</th><th scope="col">{ "Air" }</th><th scope="col">{ "Bending" }</th><th scope="col">{ "Pull" }</th>
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
                { "Sources: " }
                { works.iter().enumerate().map(|(i, key)| format!("{} {key}", i + 1)).collect::<Vec<_>>().join(", ") }
                { ". Ranges hold the true number 90 times in 100; “unknown” stands where the high end of a range is over three times the low end. The works and formulas are in Ropewalk, under Sources." }
            </p>
        </section>
    }
}

fn title(props: &ReportSheetProps) -> String {
    let (problem, report) = (&props.problem, &props.string.report);
    let what = format!(
        "{} {} {} for a {} {}",
        capital(family(&report.family)),
        props.name,
        units::gauge(report.numbers.get("outer_diameter_m").map_or(0.0, |q| q.value)),
        problem.size,
        problem.instrument_name
    );
    if props.label.is_empty() { what } else { format!("{}: {what}", props.label) }
}

/// Where the string works, in one sentence.
fn setting(report: &Report) -> String {
    let s = &report.setting;
    let percent = |share: f64| units::with_unit(&units::fixed(share * 100.0, 0), "%");
    let doubt = match s.sounding_length_doubt_m {
        doubt if doubt > 0.0 => format!(", give or take {}", units::mm(doubt, 1)),
        _ => String::new(),
    };
    let behind = s
        .afterlength_m
        .map(|m| format!("{} behind the bridge, ", units::mm(m, 0)))
        .unwrap_or_default();
    format!(
        "sounding length {}{doubt}, {behind}{} from nut to peg; {}; {} over the bridge; peg {} across, geared {} to 1; {} high at the octave, nut’s edge {} round; bridge resists {} to {}; room {} ± {}, {} ± {} damp.",
        units::mm(s.sounding_length_m, 0),
        units::mm(s.nut_to_peg_m, 0),
        units::hertz(s.pitch_hz),
        format_args!("{}°", units::fixed(s.angle_over_bridge_deg, 0)),
        units::mm(s.peg_diameter_m, 1),
        units::significant(s.gear_ratio, 2),
        units::mm(s.string_height_m, 1),
        units::mm(s.nut_radius_m, 1),
        units::significant(s.peak_resistance_kg_s, 2),
        units::with_unit(&units::significant(s.bridge_resistance_kg_s, 2), "kg/s"),
        units::with_unit(&units::fixed(s.temperature_c, 0), "°C"),
        units::with_unit(&units::fixed(s.temperature_swing_k / 2.0, 0), "K"),
        percent(s.humidity),
        percent(s.humidity_swing / 2.0),
    )
}

/// What a day costs, and within what.
fn lost(range: &Range) -> Html {
    let w = days::cents(range);
    html! {
        <>
            <td>{ if w.unknown { "unknown" } else { &w.value } }</td>
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
            <th scope="row">{ p.name }</th>
            <td>{ if w.unknown { "unknown".to_owned() } else { units::with_unit(&w.value, w.unit) } }</td>
            <td>{ if w.exact { "none".to_owned() } else if w.unknown { units::with_unit(&w.range(), w.unit) } else { w.range() } }</td>
            <td><Evidence grade={q.evidence.clone()} /></td>
            <td>{ source }</td>
        </tr>
    })
}
