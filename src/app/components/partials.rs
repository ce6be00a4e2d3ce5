//! The partials of a plucked string: how long each rings, and what takes most of it.

use protocol::reply::{Partial, Quantity};
use yew::prelude::*;

use super::chart::{Chart, Point, percent, px};
use super::table::Scroll;
use crate::units;
use crate::words::{partials as words, say};

/// Properties of [`Partials`].
#[derive(Clone, PartialEq, Properties)]
pub struct PartialsProps {
    /// The partials.
    pub partials: Vec<Partial>,
    /// How long the first one rings, with its range.
    #[prop_or_default]
    pub ring: Option<Quantity>,
    /// What the string is called.
    pub name: AttrValue,
}

/// Height of one bar with the room about it, and of the bar alone, in pixels.
const ROW: f64 = 22.0;
const BAR: f64 = 13.0;
/// Room for the number to the left, and for the words to the right, in per cent of the width.
const LEFT: f64 = 7.0;
const RIGHT: f64 = 36.0;

/// What may take most, in the order of the legend.
const CAUSES: [&str; 4] = ["bridge", "air", "bending", "string"];

/// The filling of a bar by what takes most: full, empty, hatched or dotted, so that no colour is needed.
fn filling(id: &str, most: &str) -> String {
    match most {
        "bridge" | "air" => String::new(),
        most => format!("url(#{id}-{most})"),
    }
}

fn patterns(id: &str) -> Html {
    html! {
        <defs>
            <pattern id={format!("{id}-bending")} width="5" height="5" patternUnits="userSpaceOnUse">
                <path class="hatch" d="M-1 6L6 -1M-1 1L1 -1M4 6L6 4" />
            </pattern>
            <pattern id={format!("{id}-string")} width="5" height="5" patternUnits="userSpaceOnUse">
                <circle class="dot" cx="2.5" cy="2.5" r="1.3" />
            </pattern>
        </defs>
    }
}

/// The picture and its table.
#[component]
pub fn Partials(props: &PartialsProps) -> Html {
    let (partials, name) = (&props.partials, &props.name);
    if partials.is_empty() {
        return Html::default();
    }
    let id = format!("loss-{}", name.to_ascii_lowercase().replace([' ', '♯', '♭'], "-"));
    let longest = partials.iter().map(|p| p.ring_s).fold(1e-9, f64::max);
    let title = words::title(partials, name);
    let height = ROW * partials.len() as f64 + 4.0;
    let fill = |most: &str| {
        let filling = filling(&id, most);
        (!filling.is_empty()).then_some(filling)
    };
    let here = |cause: &&str| partials.iter().any(|p| p.most == *cause);
    let top = |i: usize| ROW * i as f64 + 4.0;
    let long = |p: &Partial| (100.0 - LEFT - RIGHT) * p.ring_s / longest;
    let bar = |(i, p): (usize, &Partial)| {
        let foot = px(top(i) + BAR - 1.5);
        html! {
            <>
                <text x={percent(LEFT - 1.5)} y={foot.clone()} text-anchor="end">{ p.n }</text>
                <rect class={classes!("bar", format!("most-{}", p.most))} fill={fill(&p.most)} x={percent(LEFT)} width={percent(long(p))} y={px(top(i))} height={px(BAR)} />
                <text x={percent(LEFT + long(p) + 1.2)} y={foot}>{ words::label(p) }</text>
            </>
        }
    };
    let point = |(i, p): (usize, &Partial)| Point {
        x: LEFT + long(p),
        y: Some(top(i) + BAR / 2.0),
        said: say!("partials-point", n = p.n, label = words::label(p)).into(),
    };
    let how = html! {
        <p>
            { say!("partials-how") }
            if let Some(ring) = &props.ring {
                { format!(" {}", say!("partials-ring", ring = units::plainly("ring_s", ring))) }
            }
        </p>
    };
    html! {
        <Chart class="partials" title={title.clone()} label={say!("partials-picture", title = &title)} {height} {how}
            drawn={html! { <>{ patterns(&id) }{ for partials.iter().enumerate().map(bar) }</> }}
            points={partials.iter().enumerate().map(point).collect::<Vec<_>>()} folded={say!("partials-table")} table={table(partials, name)}>
            <ul class="legend">
                { for CAUSES.into_iter().filter(here).map(|cause| html! {
                    <li>
                        <svg aria-hidden="true" width="26" height="14">
                            <rect class={classes!("bar", format!("most-{cause}"))} fill={fill(cause)} x="1" y="1" width="24" height="12" />
                        </svg>
                        { words::takes(cause) }
                    </li>
                }) }
            </ul>
        </Chart>
    }
}

/// The partials as a table, with every loss.
fn table(partials: &[Partial], name: &str) -> Html {
    let label = say!("partials-caption", name = name);
    let loss = |x: f64| units::significant(x * 1e3, 2);
    html! {
        <Scroll label={label.clone()}>
            <table>
                <caption>{ label }</caption>
                <thead>
                    <tr>
                        <th scope="col">{ say!("partials-column-n") }</th>
                        <th scope="col">{ say!("partials-column-frequency") }</th>
                        <th scope="col">{ say!("partials-column-sharp") }</th>
                        <th scope="col">{ say!("partials-column-rings") }</th>
                        <th scope="col">{ say!("partials-column-bridge") }</th>
                        <th scope="col">{ say!("partials-column-air") }</th>
                        <th scope="col">{ say!("partials-column-bending") }</th>
                        <th scope="col">{ say!("partials-column-pull") }</th>
                        <th scope="col">{ say!("partials-column-q") }</th>
                    </tr>
                </thead>
                <tbody>
                    { for partials.iter().map(|p| html! {
                        <tr>
                            <th scope="row">{ p.n }</th>
                            <td class="figure">{ units::hertz(libm::round(p.frequency_hz)) }</td>
                            <td class="figure">{ words::sharp(p) }</td>
                            <td class="figure">{ units::significant(p.ring_s, 2) }</td>
                            <td class="figure">{ loss(p.loss_bridge) }</td>
                            <td class="figure">{ loss(p.loss_air) }</td>
                            <td class="figure">{ loss(p.loss_bending) }</td>
                            <td class="figure">{ loss(p.loss_string) }</td>
                            <td class="figure">{ units::fixed(p.q, -1) }</td>
                        </tr>
                    }) }
                </tbody>
            </table>
        </Scroll>
    }
}
