//! The days after fitting: how many cents each costs, and how likely it is that the string has settled.

use protocol::reply::Night;
use yew::prelude::*;

use super::chart::{Chart, Field, Point, percent, px, step};
use super::table::Scroll;
use crate::units;
use crate::words::{days, say};

/// Properties of [`Nights`].
#[derive(Clone, PartialEq, Properties)]
pub struct NightsProps {
    /// The days.
    pub nights: Vec<Night>,
    /// What the string is called.
    pub name: AttrValue,
}

/// Where the days are drawn.
const FIELD: Field = Field { height: 230.0, top: 12.0, bottom: 42.0, left: 9.0, right: 2.0 };
/// What a settled string may cost in a day, in cents.
const ENOUGH: f64 = 5.0;
/// Height of a line of words under the axis, in pixels.
const WORDS: f64 = 20.0;

/// Where a day stands, in per cent of the width.
fn across(day: u32, days: usize) -> f64 {
    FIELD.across((f64::from(day) - 0.5) / days.max(1) as f64)
}

/// The picture and its table.
#[component]
pub fn Nights(props: &NightsProps) -> Html {
    let (nights, name) = (&props.nights, &props.name);
    if nights.is_empty() {
        return Html::default();
    }
    let most = 1.1 * nights.iter().map(|n| n.lost_cent.high).fold(ENOUGH, f64::max);
    let down = |cents: f64| FIELD.down(cents / most);
    let title = days::title(nights, name);
    let runs = days::runs(nights);
    let mark = step(most);
    let point = |n: &Night| Point {
        x: across(n.day, nights.len()),
        y: Some(down(n.lost_cent.value)),
        said: days::point(n).into(),
    };
    let drawn = html! {
        <>
            <g class="axes" aria-hidden="true">
                { for (0..=6).map(|i| mark * f64::from(i)).filter(|cents| *cents <= most).map(|cents| FIELD.rule(down(cents), &units::fixed(cents, 0))) }
                { for nights.iter().map(|n| FIELD.under(across(n.day, nights.len()), 17.0, &n.day.to_string())) }
                { FIELD.names(say!("nights-axis"), say!("nights-day")) }
            </g>
            { for nights.iter().map(|n| block(n, nights.len(), down)) }
            { FIELD.line("enough", down(ENOUGH)) }
            <text class="note" x={percent(100.0 - FIELD.right)} y={px(down(ENOUGH) - 6.0)} text-anchor="end">{ say!("nights-enough") }</text>
            <text class="axis-name" x={percent(FIELD.left)} y={px(FIELD.height + 14.0)}>{ say!("nights-settled-is") }</text>
            { for runs.iter().enumerate().map(|(i, run)| word(i, run, nights.len())) }
        </>
    };
    html! {
        <Chart class="nights" title={title.clone()} label={say!("nights-picture", title = &title)}
            height={FIELD.height + WORDS * (runs.len() + 1) as f64} how={html! { <p>{ say!("nights-how") }</p> }} {drawn}
            points={nights.iter().map(point).collect::<Vec<_>>()} folded={say!("nights-table")} table={table(nights, name)} />
    }
}

/// How wide a block is drawn, in per cent of the width.
fn wide(days: usize) -> f64 {
    0.55 * (100.0 - FIELD.left - FIELD.right) / days as f64
}

/// One day as a block, with a dot at its value.
fn block(n: &Night, days: usize, down: impl Fn(f64) -> f64) -> Html {
    let (top, foot) = (down(n.lost_cent.high), down(n.lost_cent.low));
    let (middle, wide) = (across(n.day, days), wide(days));
    html! {
        <>
            <rect class="band" x={percent(middle - wide / 2.0)} width={percent(wide)} y={px(top)} height={px((foot - top).max(1.0))} />
            <circle class="value" cx={percent(middle)} cy={px(down(n.lost_cent.value))} r="4" />
        </>
    }
}

/// A word under the days to which it belongs.
fn word(i: usize, (word, from, to): &(&'static str, u32, u32), days: usize) -> Html {
    let y = FIELD.height + WORDS * (i + 2) as f64 - 3.0;
    let (start, end) =
        (across(*from, days) - wide(days) / 2.0, across(*to, days) + wide(days) / 2.0);
    // A word that begins far to the right ends where its days end.
    let late = start > 70.0;
    html! {
        <>
            <line class="run" x1={percent(start)} x2={percent(end)} y1={px(y)} y2={px(y)} />
            <text class="note" x={percent(if late { end } else { start })} y={px(y - 4.0)} text-anchor={late.then_some("end")}>{ *word }</text>
        </>
    }
}

/// The days as a table, each with its chance in a word.
fn table(nights: &[Night], name: &str) -> Html {
    let label = say!("nights-caption", name = name);
    html! {
        <Scroll label={label.clone()}>
            <table>
                <caption>{ label }</caption>
                <thead>
                    <tr>
                        <th scope="col">{ say!("nights-column-day") }</th>
                        <th scope="col">{ say!("nights-column-lost") }</th>
                        <th scope="col">{ say!("nights-column-chance") }</th>
                        <th scope="col">{ say!("nights-column-words") }</th>
                    </tr>
                </thead>
                <tbody>
                    { for nights.iter().map(|n| html! {
                        <tr>
                            <th scope="row">{ n.day }</th>
                            <td class="figure">{ days::lost(&n.lost_cent) }</td>
                            <td class="figure">{ days::of_hundred(n.chance) }</td>
                            <td>{ days::likely(n.chance) }</td>
                        </tr>
                    }) }
                </tbody>
            </table>
        </Scroll>
    }
}
