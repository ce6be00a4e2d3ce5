//! The days after fitting: how many cents each costs, and how likely it is that the string has settled.

use protocol::reply::{Night, Range};
use yew::prelude::*;

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

/// Height of the plot in pixels, and of the room above and below it.
const HEIGHT: f64 = 230.0;
const TOP: f64 = 12.0;
const BOTTOM: f64 = 42.0;
/// Room to the left and right of the plot, in per cent of the width.
const LEFT: f64 = 9.0;
const RIGHT: f64 = 2.0;
/// What a settled string may cost in a day, in cents.
const ENOUGH: f64 = 5.0;

/// Height of a line of words under the axis, in pixels.
const WORDS: f64 = 20.0;

fn percent(x: f64) -> String {
    format!("{x:.2}%")
}

/// Where a day stands, in per cent of the width.
fn across(day: u32, days: usize) -> f64 {
    LEFT + (100.0 - LEFT - RIGHT) * (f64::from(day) - 0.5) / days.max(1) as f64
}

fn down(cents: f64, most: f64) -> f64 {
    TOP + (HEIGHT - TOP - BOTTOM) * (1.0 - (cents / most).clamp(0.0, 1.0))
}

/// Steps between the marks of the axis, in cents.
const STEPS: [f64; 6] = [1.0, 2.0, 5.0, 10.0, 20.0, 50.0];

/// Marks of the axis up to the most.
fn ticks(most: f64) -> Vec<f64> {
    let step = STEPS.into_iter().find(|step| most / step <= 6.0).unwrap_or(100.0);
    (0..=6).map(|i| step * f64::from(i)).filter(|cents| *cents <= most).collect()
}

/// Whether a range is over a factor of three: then only the band is drawn.
fn unknown(range: &Range) -> bool {
    range.high > 3.0 * range.low && range.high > 0.0
}

/// The picture and its table.
#[component]
pub fn Nights(props: &NightsProps) -> Html {
    let (nights, name) = (&props.nights, &props.name);
    if nights.is_empty() {
        return Html::default();
    }
    let most = 1.1 * nights.iter().map(|n| n.lost_cent.high).fold(ENOUGH, f64::max);
    let title = days::title(nights, name);
    let wide = 0.55 * (100.0 - LEFT - RIGHT) / nights.len() as f64;
    let base = HEIGHT - BOTTOM;
    let runs = days::runs(nights);
    html! {
        <figure class="nights">
            <figcaption>
                <p class="takeaway">{ title.clone() }{ "." }</p>
                <p class="how-to-read">{ say!("nights-how") }</p>
            </figcaption>
            <svg role="img" aria-label={say!("nights-picture", title = &title)} width="100%" height={(HEIGHT + WORDS * (runs.len() + 1) as f64).to_string()}>
                <g class="axes" aria-hidden="true">
                    { for ticks(most).into_iter().map(|cents| html! {
                        <>
                            <line class="grid" x1={percent(LEFT)} x2={percent(100.0 - RIGHT)} y1={down(cents, most).to_string()} y2={down(cents, most).to_string()} />
                            <text x={percent(LEFT - 1.0)} y={(down(cents, most) + 4.0).to_string()} text-anchor="end">{ units::fixed(cents, 0) }</text>
                        </>
                    }) }
                    { for nights.iter().map(|n| html! {
                        <text x={percent(across(n.day, nights.len()))} y={(base + 17.0).to_string()} text-anchor="middle">{ n.day }</text>
                    }) }
                    <text class="axis-name" x={percent(LEFT)} y={(base + 36.0).to_string()}>{ say!("nights-axis") }</text>
                    <text class="axis-name" x={percent(100.0 - RIGHT)} y={(base + 36.0).to_string()} text-anchor="end">{ say!("nights-day") }</text>
                </g>
                { for nights.iter().map(|n| {
                    let (top, foot) = (down(n.lost_cent.high, most), down(n.lost_cent.low, most));
                    let middle = across(n.day, nights.len());
                    html! {
                        <>
                            <rect class="band" x={percent(middle - wide / 2.0)} width={percent(wide)} y={format!("{top:.1}")} height={format!("{:.1}", (foot - top).max(1.0))} />
                            if !unknown(&n.lost_cent) {
                                <circle class="value" cx={percent(middle)} cy={format!("{:.1}", down(n.lost_cent.value, most))} r="4" />
                            }
                        </>
                    }
                }) }
                <line class="enough" x1={percent(LEFT)} x2={percent(100.0 - RIGHT)} y1={down(ENOUGH, most).to_string()} y2={down(ENOUGH, most).to_string()} />
                <text class="note" x={percent(100.0 - RIGHT)} y={(down(ENOUGH, most) - 6.0).to_string()} text-anchor="end">{ say!("nights-enough") }</text>
                <text class="axis-name" x={percent(LEFT)} y={(HEIGHT + 14.0).to_string()}>{ say!("nights-settled-is") }</text>
                { for runs.iter().enumerate().map(|(i, (word, from, to))| {
                    let y = HEIGHT + WORDS * (i + 2) as f64 - 3.0;
                    let (start, end) = (across(*from, nights.len()) - wide / 2.0, across(*to, nights.len()) + wide / 2.0);
                    // A word that begins far to the right ends where its days end.
                    let late = start > 70.0;
                    html! {
                        <>
                            <line class="run" x1={percent(start)} x2={percent(end)} y1={y.to_string()} y2={y.to_string()} />
                            <text class="note" x={percent(if late { end } else { start })} y={(y - 4.0).to_string()} text-anchor={late.then_some("end")}>{ *word }</text>
                        </>
                    }
                }) }
            </svg>
            <details>
                <summary>{ say!("nights-table") }</summary>
                { table(nights, name) }
            </details>
        </figure>
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
