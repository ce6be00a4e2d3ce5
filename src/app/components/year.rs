//! A year in a room: how far each string wanders from month to month, if nobody tunes it.

use std::rc::Rc;

use protocol::reply::{Drifting, MonthDrift, Range, Reply};
use protocol::request::{Player, Request, YearRequest};
use yew::prelude::*;

use super::chart::{Chart, Field, Point, percent, px, step};
use super::table::Scroll;
use crate::hooks::use_asked;
use crate::units;
use crate::words::{say, year as words};

/// Properties of [`Year`].
#[derive(Clone, PartialEq, Properties)]
pub struct YearProps {
    /// The strings; the room is in their settings.
    pub strings: Rc<Vec<Player>>,
    /// What they are called beside their rows.
    pub names: Rc<Vec<String>>,
    /// What they are called in a sentence.
    pub called: Rc<Vec<String>>,
}

/// Height of one string's row in pixels.
const ROW: f64 = 92.0;

fn field(rows: usize) -> Field {
    let (top, bottom) = (8.0, 46.0);
    Field { height: ROW * rows as f64 + top + bottom, top, bottom, left: 11.0, right: 2.0 }
}

/// The year, once the model has answered.
#[component]
pub fn Year(props: &YearProps) -> Html {
    let request = YearRequest { strings: props.strings.to_vec() };
    let asked = use_asked(Some(Request::Year(Box::new(request))));
    match (asked.reply.as_deref(), &asked.broke) {
        (_, Some(broke)) => {
            html! { <p class="amiss">{ say!("compare-broke", reason = broke) }</p> }
        }
        (Some(Reply::Year(year)), _) if year.strings.len() == props.names.len() => {
            drawn(&year.strings, &props.names, &props.called)
        }
        _ => html! { <p role="status">{ say!("compare-computing") }</p> },
    }
}

/// The year as a chart with its table.
pub fn drawn(strings: &[Drifting], names: &[String], called: &[String]) -> Html {
    let Some(first) = strings.first() else { return Html::default() };
    let field = field(strings.len());
    let ends = |s: &Drifting| {
        s.months
            .iter()
            .fold(0.0, |m, x| f64::max(m, x.above_cent.high.abs().max(x.above_cent.low.abs())))
    };
    let most = strings.iter().map(ends).fold(5.0, f64::max);
    let along = |i: usize| field.across((i as f64 + 0.5) / first.months.len() as f64);
    let title = words::title(strings, called);
    let points = (0..first.months.len())
        .map(|i| Point { x: along(i), y: None, said: words::point(strings, names, i).into() })
        .collect::<Vec<_>>();
    let svg = html! {
        <>
            { for strings.iter().zip(names).enumerate().map(|(i, (s, name))| row(&field, i, most, s, name)) }
            <g aria-hidden="true">
                { for first.months.iter().enumerate().map(|(i, m)| field.under(along(i), 16.0, words::initial(m.month))) }
                { field.names(say!("year-upward"), say!("year-along")) }
            </g>
        </>
    };
    html! {
        <Chart class="year" title={title.clone()} label={say!("year-picture", title = &title)} height={field.height}
            how={html! { <p>{ words::how(first) }</p> }} drawn={svg} {points} folded={say!("year-table")}
            table={table(strings, names)} />
    }
}

/// One string: its name, a line at nought, the band of its range and the line of its values.
fn row(field: &Field, i: usize, most: f64, string: &Drifting, name: &str) -> Html {
    let top = field.top + ROW * i as f64;
    let middle = top + ROW / 2.0;
    // In a square of 200 by 200 that is drawn as wide as the field and as high as the row.
    let count = string.months.len() as f64;
    let x = |k: usize| 200.0 * (k as f64 + 0.5) / count;
    let y = |cents: f64| 100.0 - 92.0 * cents / most;
    let line = |of: fn(&Range) -> f64| {
        let places = string.months.iter().enumerate();
        places.map(move |(k, m)| format!("{:.1} {:.1}", x(k), y(of(&m.above_cent))))
    };
    let upper: Vec<String> = line(|r| r.high).collect();
    let mut around = line(|r| r.low).collect::<Vec<_>>();
    around.reverse();
    let band = format!("M{}L{}Z", upper.join("L"), around.join("L"));
    let value = format!("M{}", line(|r| r.value).collect::<Vec<_>>().join("L"));
    let mark = step(2.0 * most);
    let number = |cents: f64| {
        let at = middle - 0.46 * ROW * cents / most;
        html! { <text x={percent(field.left - 1.0)} y={px(at + 4.0)} text-anchor="end">{ words::signed(cents, 0) }</text> }
    };
    html! {
        <>
            if i > 0 { { field.line("edge", top) } }
            { field.line("grid", middle) }
            <g aria-hidden="true">{ number(mark) }{ number(-mark) }</g>
            <svg x={percent(field.left)} y={px(top)} width={percent(100.0 - field.left - field.right)} height={px(ROW)}
                viewBox="0 0 200 200" preserveAspectRatio="none">
                <path class="band" vector-effect="non-scaling-stroke" d={band} />
                <path class="line" vector-effect="non-scaling-stroke" d={value} />
            </svg>
            <text class="note" x={percent(0.0)} y={px(top + 12.0)}>{ name }</text>
        </>
    }
}

fn table(strings: &[Drifting], names: &[String]) -> Html {
    let months: &[MonthDrift] = strings.first().map_or(&[], |s| &s.months);
    html! {
        <Scroll label={say!("year-caption")}>
            <table>
                <caption>{ say!("year-caption") }</caption>
                <thead>
                    <tr>
                        <th scope="col">{ say!("year-column-month") }</th>
                        <th scope="col">{ say!("year-column-warmth") }</th>
                        <th scope="col">{ say!("year-column-damp") }</th>
                        { for names.iter().map(|name| html! { <th scope="col">{ say!("year-column-string", name = name) }</th> }) }
                    </tr>
                </thead>
                <tbody>
                    { for months.iter().enumerate().map(|(i, m)| html! {
                        <tr>
                            <th scope="row">{ words::month(m.month) }</th>
                            <td class="figure">{ units::warmth(m.temperature_c) }</td>
                            <td class="figure">{ units::with_unit(&units::of_hundred(m.humidity), "%") }</td>
                            { for strings.iter().filter_map(|s| s.months.get(i)).map(|m| html! {
                                <td class="figure">{ words::cell(&m.above_cent) }</td>
                            }) }
                        </tr>
                    }) }
                </tbody>
            </table>
        </Scroll>
    }
}
