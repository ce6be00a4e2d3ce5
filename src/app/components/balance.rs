//! What elasticity costs, in three pictures of one kind: days to settle, cents by warmth, cents by damp. Each has what
//! would do at one place, what was chosen, and what is there today.

use std::rc::Rc;

use protocol::reply::{FittedString, Point};
use yew::prelude::*;

use super::along::Along;
use super::chart::{self, Chart, Field, percent, px, step};
use super::table::Scroll;
use crate::order;
use crate::units;
use crate::words::naming::{capital, family};
use crate::words::picture::{self, Aspect};
use crate::words::say;

/// Properties of [`Balance`].
#[derive(Clone, PartialEq, Properties)]
pub struct BalanceProps {
    /// The string.
    pub string: Rc<FittedString>,
    /// What it is called.
    pub name: AttrValue,
}

/// Where each is drawn.
const FIELD: Field = Field { height: 280.0, top: 14.0, bottom: 44.0, left: 11.0, right: 3.0 };

/// Stretches at which the axis may have a mark, in per cent.
const TICKS: [f64; 8] = [0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0];

/// Days at which the axis may have a mark.
const DAYS: [f64; 6] = [0.01, 0.1, 1.0, 10.0, 100.0, 1000.0];

/// The stretches that an axis runs over: whole ticks, in per cent.
fn span(string: &FittedString) -> (f64, f64) {
    let all = marks(string).map(|p| p.stretch * 100.0);
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

/// Every mark of a picture.
fn marks(string: &FittedString) -> impl Iterator<Item = &Point> {
    string.picture.iter().chain([&string.chosen_point]).chain(&string.today_point)
}

/// What is counted upward: days by their logarithm, cents from nought.
#[derive(Clone, Copy)]
enum Upward {
    Days(f64, f64),
    Cents(f64),
}

impl Upward {
    fn of(aspect: Aspect, string: &FittedString) -> Self {
        let all = || marks(string).map(|p| aspect.of(p));
        let most = all().fold(0.0, f64::max);
        if aspect != Aspect::Settling {
            return Self::Cents((1.1 * most).max(10.0));
        }
        let least = all().fold(f64::MAX, f64::min);
        let low = DAYS.iter().rev().find(|d| **d <= least).copied().unwrap_or(DAYS[0]);
        let high = DAYS.iter().find(|d| **d >= most && **d > low).copied();
        Self::Days(low, high.unwrap_or(DAYS[DAYS.len() - 1]))
    }

    fn down(self, x: f64) -> f64 {
        FIELD.down(match self {
            Self::Days(low, high) => libm::log(x.max(low) / low) / libm::log(high / low),
            Self::Cents(most) => x / most,
        })
    }

    fn ticks(self) -> Vec<f64> {
        match self {
            Self::Days(low, high) => {
                DAYS.into_iter().filter(|d| (low..=high).contains(d)).collect()
            }
            Self::Cents(most) => {
                let mark = step(most);
                (0..=6).map(|i| mark * f64::from(i)).filter(|cents| *cents <= most).collect()
            }
        }
    }
}

/// The three pictures with their table.
#[component]
pub fn Balance(props: &BalanceProps) -> Html {
    let (string, name) = (&props.string, &props.name);
    let today = string.today_point.as_ref();
    html! {
        <div class="balances">
            <p class="how-to-read">{ say!("balance-how", untuned = &string.report.setting.untuned) }</p>
            <div class="three">{ for Aspect::ALL.into_iter().map(|aspect| drawn(aspect, string, name)) }</div>
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
            <details>
                <summary>{ say!("balance-table") }</summary>
                { table(string, name) }
            </details>
            <p class="how-to-read">{ say!("along-picture") }</p>
            <Along id={format!("along-{}", name.to_ascii_lowercase().replace(' ', "-"))} />
            if let Some(today) = today {
                <p class="aside">
                    { say!("balance-was", name = name.as_str(), family = &today.family,
                        stretch = picture::stretch(today),
                        days = Aspect::Settling.said(today),
                        warmth = Aspect::Warmth.said(today),
                        damp = Aspect::Damp.said(today)) }
                </p>
            }
        </div>
    }
}

/// One picture: what a string costs in one respect, over its stretch.
fn drawn(aspect: Aspect, string: &FittedString, name: &str) -> Html {
    let (span, upward) = (span(string), Upward::of(aspect, string));
    let chosen = &string.chosen_point;
    let title = picture::title(aspect, &string.picture);
    let x = |p: &Point| across(p.stretch * 100.0, span);
    let y = |p: &Point| upward.down(aspect.of(p));
    let at = |p: &Point| (percent(x(p)), px(y(p)));
    let drawn = html! {
        <>
            { axes(aspect, span, upward) }
            { for string.picture.iter().map(|p| {
                let (x, y) = at(p);
                html! {
                    <svg {x} {y} overflow="visible" width="1" height="1">
                        <path class={classes!("mark", format!("family-{}", p.family))} fill-rule="evenodd" d={mark(&p.family)} />
                    </svg>
                }
            }) }
            if let Some(today) = &string.today_point {
                { special(today, at(today), "today", say!("balance-today"), 24.0) }
            }
            { special(chosen, at(chosen), "chosen", say!("balance-chosen"), -15.0) }
        </>
    };
    let points = in_order(string).into_iter().map(|(p, which)| chart::Point {
        x: x(p),
        y: Some(y(p)),
        said: said(aspect, p, which).into(),
    });
    let how = picture::overlap(aspect, &string.picture).map(|overlap| html! { <p>{ overlap }</p> });
    let label = say!("balance-picture", name = name, title = &title);
    html! {
        <Chart class="balance" {title} {label} height={FIELD.height} how={how.unwrap_or_default()} {drawn}
            points={points.collect::<Vec<_>>()} />
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
fn said(aspect: Aspect, p: &Point, which: &str) -> String {
    let kind = capital(family(&p.family));
    say!(
        "balance-point",
        aspect = aspect.key(),
        kind = if which.is_empty() { kind } else { format!("{kind} {which}") },
        stretch = picture::stretch(p),
        value = aspect.said(p),
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

fn axes(aspect: Aspect, span: (f64, f64), upward: Upward) -> Html {
    let base = FIELD.base();
    let marks = || TICKS.into_iter().filter(|t| *t >= span.0 && *t <= span.1);
    html! {
        <g class="axes" aria-hidden="true">
            { for upward.ticks().into_iter().map(|v| FIELD.rule(upward.down(v), &units::significant(v, 1))) }
            { for marks().map(|t| {
                let x = across(t, span);
                html! {
                    <>
                        <line class="tick" x1={percent(x)} x2={percent(x)} y1={px(base)} y2={px(base + 5.0)} />
                        { FIELD.under(x, 19.0, &units::significant(t, 1)) }
                    </>
                }
            }) }
            { FIELD.names(axis(aspect), say!("balance-stretch")) }
        </g>
    }
}

/// What is counted upward.
fn axis(aspect: Aspect) -> &'static str {
    match aspect {
        Aspect::Settling => say!("balance-axis-settling"),
        Aspect::Warmth => say!("balance-axis-warmth"),
        Aspect::Damp => say!("balance-axis-damp"),
    }
}

/// The marks of all three as a table.
fn table(string: &FittedString, name: &str) -> Html {
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
                        { for Aspect::ALL.into_iter().map(|aspect| html! { <th scope="col">{ capital(axis(aspect)) }</th> }) }
                    </tr>
                </thead>
                <tbody>
                    { for rows.into_iter().map(|(p, which)| html! {
                        <tr class={(!which.is_empty()).then_some("chosen")}>
                            <th scope="row">{ capital(family(&p.family)) }if !which.is_empty() { { " " }{ which } }</th>
                            <td class="figure">{ units::significant(p.stretch * 100.0, 2) }</td>
                            { for Aspect::ALL.into_iter().map(|aspect| html! {
                                <td class="figure">{ units::significant(aspect.of(p), 2) }</td>
                            }) }
                        </tr>
                    }) }
                </tbody>
            </table>
        </Scroll>
    }
}
