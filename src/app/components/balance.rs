//! Elasticity against steadiness: what would do at one place, what was chosen, what is there today.

use std::rc::Rc;

use protocol::reply::{FittedString, Point};
use yew::prelude::*;

use super::along::Along;
use super::chart::{self, Chart, Field, percent, px};
use super::table::Scroll;
use crate::order;
use crate::units;
use crate::words::naming::{capital, family};
use crate::words::{say, set};

/// Properties of [`Balance`].
#[derive(Clone, PartialEq, Properties)]
pub struct BalanceProps {
    /// The string.
    pub string: Rc<FittedString>,
    /// What it is called.
    pub name: AttrValue,
}

/// Where it is drawn.
const FIELD: Field = Field { height: 300.0, top: 14.0, bottom: 44.0, left: 10.0, right: 3.0 };

/// Stretches at which the axis may have a mark, in per cent.
const TICKS: [f64; 8] = [0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0];

/// The stretches that an axis runs over: whole ticks, in per cent.
fn span(points: &[Point], more: &[f64]) -> (f64, f64) {
    let all = points.iter().map(|p| p.stretch * 100.0).chain(more.iter().copied());
    let (low, high) = all.fold((f64::MAX, 0.0_f64), |(l, h), x| (l.min(x), h.max(x)));
    let low = TICKS.iter().rev().find(|t| **t <= low * 0.95).copied().unwrap_or(TICKS[0]);
    let high = TICKS.iter().find(|t| **t >= high * 1.05).copied().unwrap_or(TICKS[TICKS.len() - 1]);
    if low < high { (low, high) } else { (TICKS[0], TICKS[TICKS.len() - 1]) }
}

fn across(stretch_percent: f64, (low, high): (f64, f64)) -> f64 {
    FIELD.across(libm::log(stretch_percent.max(1e-6) / low) / libm::log(high / low))
}

/// The outline of a family's mark, about its middle.
fn mark(key: &str) -> &'static str {
    match key {
        "plain-gut" => "M-4.5 0a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0 -9 0",
        "wound-gut" => {
            "M-4.5 0a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0 -9 0M-1.5 0a1.5 1.5 0 1 0 3 0a1.5 1.5 0 1 0 -3 0"
        }
        "plain-steel" => "M-4 -4H4V4H-4Z",
        "wound-steel" => "M-4 -4H4V4H-4ZM-1.4 -1.4H1.4V1.4H-1.4Z",
        "stranded-steel" => "M-5 0H5M0 -5V5",
        "synthetic" => "M0 -5L5 4H-5Z",
        _ => "M0 -5.5L5.5 0L0 5.5L-5.5 0Z",
    }
}

fn families(points: &[Point]) -> Vec<&str> {
    let mut all: Vec<&str> = Vec::new();
    for p in points {
        if !all.contains(&p.family.as_str()) {
            all.push(&p.family);
        }
    }
    all
}

/// The picture and its table.
#[component]
pub fn Balance(props: &BalanceProps) -> Html {
    let string = &props.string;
    let today = string.today_point.as_ref();
    let chosen = &string.chosen_point;
    let mut more = vec![chosen.stretch * 100.0];
    more.extend(today.map(|t| t.stretch * 100.0));
    let span = span(&string.picture, &more);
    let name = &props.name;
    let title = set::picture_title(&string.picture, name);
    let at = |p: &Point| (percent(across(p.stretch * 100.0, span)), px(FIELD.down(p.steadiness)));
    let drawn = html! {
        <>
            { axes(span) }
            { for string.picture.iter().map(|p| {
                let (x, y) = at(p);
                html! {
                    <svg {x} {y} overflow="visible" width="1" height="1">
                        <path class={classes!("mark", format!("family-{}", p.family))} fill-rule="evenodd" d={mark(&p.family)} />
                    </svg>
                }
            }) }
            if let Some(today) = today {
                { special(today, at(today), "today", say!("balance-today"), 24.0) }
            }
            { special(chosen, at(chosen), "chosen", say!("balance-chosen"), -15.0) }
        </>
    };
    let how = html! {
        <p>
            { say!("balance-how") }
            if let Some(overlap) = set::overlap(&string.picture) {
                { " " }{ overlap }
            }
        </p>
    };
    let points = in_order(string).into_iter().map(|(p, which)| chart::Point {
        x: across(p.stretch * 100.0, span),
        y: Some(FIELD.down(p.steadiness)),
        said: said(p, which).into(),
    });
    let table = html! { <><p>{ say!("balance-parts") }</p>{ parts(string, name) }</> };
    html! {
        <Chart class="balance" title={title.clone()} label={say!("balance-picture", title = &title)} height={FIELD.height} {how} {drawn}
            points={points.collect::<Vec<_>>()} folded={say!("balance-table")} {table}>
            <ul class="legend">
                { for families(&string.picture).into_iter().map(|key| html! {
                    <li>
                        <svg aria-hidden="true" width="14" height="14" viewBox="-7 -7 14 14">
                            <path class={classes!("mark", format!("family-{key}"))} fill-rule="evenodd" d={mark(key)} />
                        </svg>
                        { family(key) }
                    </li>
                }) }
            </ul>
            <p class="how-to-read">{ say!("along-picture") }</p>
            <Along id={format!("along-{}", name.to_ascii_lowercase().replace(' ', "-"))} />
            if let Some(today) = today {
                <p class="aside">
                    { say!("balance-was", name = name.as_str(), family = &today.family,
                        stretch = units::with_unit(&units::significant(today.stretch * 100.0, 2), "%"),
                        steadiness = units::of_hundred(today.steadiness)) }
                </p>
            }
        </Chart>
    }
}

/// The marks as one reads them: what was chosen, what is there today, then kind by kind from stiff to elastic.
fn in_order(string: &FittedString) -> Vec<(&Point, &'static str)> {
    let points: Vec<(&Point, &str)> = string.picture.iter().map(|p| (p, "")).collect();
    let mut points = order::sorted(&points, |(a, _), (b, _)| {
        a.family.cmp(&b.family).then(a.stretch.total_cmp(&b.stretch))
    });
    if let Some(today) = &string.today_point {
        points.insert(0, (today, say!("balance-mark-today")));
    }
    points.insert(0, (&string.chosen_point, say!("balance-mark-chosen")));
    points
}

/// A mark in words.
fn said(p: &Point, which: &str) -> String {
    let kind = capital(family(&p.family));
    say!(
        "balance-point",
        kind = if which.is_empty() { kind } else { format!("{kind} {which}") },
        stretch = units::with_unit(&units::significant(p.stretch * 100.0, 2), "%"),
        steadiness = units::of_hundred(p.steadiness),
    )
}

/// A mark with a ring about it and a word beside it.
fn special(
    p: &Point,
    (x, y): (String, String),
    ring: &'static str,
    word: &'static str,
    dy: f64,
) -> Html {
    html! {
        <svg x={x} y={y} overflow="visible" width="1" height="1">
            <circle class={ring} r="10" />
            <path class={classes!("mark", (ring == "chosen").then_some("taken"), format!("family-{}", p.family))} fill-rule="evenodd" d={mark(&p.family)} />
            <text class="note" y={dy.to_string()} text-anchor="middle">{ word }</text>
        </svg>
    }
}

fn axes(span: (f64, f64)) -> Html {
    let base = FIELD.base();
    let marks = || TICKS.into_iter().filter(|t| *t >= span.0 && *t <= span.1);
    html! {
        <g class="axes" aria-hidden="true">
            { for [0.0, 0.25, 0.5, 0.75, 1.0].into_iter().map(|s| FIELD.rule(FIELD.down(s), &units::of_hundred(s))) }
            { for marks().map(|t| {
                let x = across(t, span);
                html! {
                    <>
                        <line class="tick" x1={percent(x)} x2={percent(x)} y1={px(base)} y2={px(base + 5.0)} />
                        { FIELD.under(x, 19.0, &units::significant(t, 1)) }
                    </>
                }
            }) }
            { FIELD.names(say!("balance-axis"), say!("balance-stretch")) }
        </g>
    }
}

fn parts(string: &FittedString, name: &str) -> Html {
    let label = say!("balance-caption", name = name);
    let rows = in_order(string);
    html! {
        <Scroll label={label.clone()} rows={rows.len()}>
            <table>
                <caption>{ label }</caption>
                <thead>
                    <tr>
                        <th scope="col">{ say!("balance-column-kind") }</th>
                        <th scope="col">{ say!("balance-column-stretch") }</th>
                        <th scope="col">{ say!("balance-column-steadiness") }</th>
                        <th scope="col">{ say!("balance-column-days") }</th>
                        <th scope="col">{ say!("balance-column-drift") }</th>
                        <th scope="col">{ say!("balance-column-fitters") }</th>
                    </tr>
                </thead>
                <tbody>
                    { for rows.into_iter().map(|(p, which)| html! {
                        <tr class={(!which.is_empty()).then_some("chosen")}>
                            <th scope="row">{ capital(family(&p.family)) }if !which.is_empty() { { " " }{ which } }</th>
                            <td class="figure">{ units::significant(p.stretch * 100.0, 2) }</td>
                            <td class="figure">{ units::of_hundred(p.steadiness) }</td>
                            <td class="figure">{ units::significant(p.settling_d, 2) }</td>
                            <td class="figure">{ units::significant(p.drift_cent, 2) }</td>
                            <td class="figure">{ units::of_hundred(p.fitters_judgement) }</td>
                        </tr>
                    }) }
                </tbody>
            </table>
        </Scroll>
    }
}
