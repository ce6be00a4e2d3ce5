//! What every chart is framed by: its takeaway, how it is read, the drawing, a walk along its points, its table.

use std::cell::Cell;

use yew::prelude::*;

use crate::platform::field;
use crate::words::say;

/// The field in which a chart is drawn. Widths are shares of the room there is, heights are pixels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Field {
    /// Height of the whole drawing in pixels.
    pub height: f64,
    /// Room above the field, in pixels.
    pub top: f64,
    /// Room below it, in pixels.
    pub bottom: f64,
    /// Room to its left, in per cent of the width.
    pub left: f64,
    /// Room to its right, in per cent of the width.
    pub right: f64,
}

impl Field {
    /// Where a share of the field's width lies, in per cent of the drawing's.
    #[must_use]
    pub fn across(&self, share: f64) -> f64 {
        self.left + (100.0 - self.left - self.right) * share.clamp(0.0, 1.0)
    }

    /// Where a share of the field's height lies, counted upward, in pixels from the top.
    #[must_use]
    pub fn down(&self, share: f64) -> f64 {
        self.top + (self.height - self.top - self.bottom) * (1.0 - share.clamp(0.0, 1.0))
    }

    /// Where the field ends below, in pixels.
    #[must_use]
    pub fn base(&self) -> f64 {
        self.height - self.bottom
    }

    /// A line across the field at a height, with its number.
    pub fn rule(&self, y: f64, number: &str) -> Html {
        html! {
            <>
                { self.line("grid", y) }
                <text x={percent(self.left - 1.0)} y={px(y + 4.0)} text-anchor="end">{ number }</text>
            </>
        }
    }

    /// A line across the field at a height.
    pub fn line(&self, class: &'static str, y: f64) -> Html {
        html! { <line {class} x1={percent(self.left)} x2={percent(100.0 - self.right)} y1={px(y)} y2={px(y)} /> }
    }

    /// A number under the field.
    pub fn under(&self, x: f64, below: f64, number: &str) -> Html {
        html! { <text x={percent(x)} y={px(self.base() + below)} text-anchor="middle">{ number }</text> }
    }

    /// What is counted upward and what along, under the numbers.
    pub fn names(&self, upward: &str, along: &str) -> Html {
        let y = px(self.height - 6.0);
        html! {
            <>
                <text class="axis-name" x={percent(self.left)} y={y.clone()}>{ upward }</text>
                <text class="axis-name" x={percent(100.0 - self.right)} {y} text-anchor="end">{ along }</text>
            </>
        }
    }
}

/// A share of the width as a drawing takes it.
#[must_use]
pub fn percent(x: f64) -> String {
    format!("{x:.2}%")
}

/// A length in pixels as a drawing takes it.
#[must_use]
pub fn px(y: f64) -> String {
    format!("{y:.1}")
}

/// Steps between the marks of an axis that begins at nought.
const STEPS: [f64; 8] = [1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0];

/// A whole step at which an axis up to `most` has six marks at the most.
#[must_use]
pub fn step(most: f64) -> f64 {
    STEPS.into_iter().find(|step| most / step <= 6.0).unwrap_or(500.0)
}

/// A point of a chart: where it stands, and what it says.
#[derive(Clone, Debug, PartialEq)]
pub struct Point {
    /// In per cent of the width.
    pub x: f64,
    /// In pixels; where there is none, the point stands for everything at its place along the axis.
    pub y: Option<f64>,
    /// What it says, in words.
    pub said: AttrValue,
}

/// A number that no other chart on the page has.
fn next() -> u32 {
    thread_local! {
        static LAST: Cell<u32> = const { Cell::new(0) };
    }
    LAST.set(LAST.get() + 1);
    LAST.get()
}

/// Properties of [`Chart`].
#[derive(Clone, PartialEq, Properties)]
pub struct ChartProps {
    /// Which kind of chart.
    pub class: &'static str,
    /// The takeaway, a sentence without its full stop.
    pub title: AttrValue,
    /// How it is read.
    pub how: Html,
    /// What the drawing shows, for those who do not see it.
    pub label: AttrValue,
    /// Height of the drawing in pixels.
    pub height: f64,
    /// What is drawn.
    pub drawn: Html,
    /// The points, in the order in which they are read.
    pub points: Vec<Point>,
    /// What stands between the drawing and its table.
    #[prop_or_default]
    pub children: Html,
    /// What the table is called while it is folded away; nothing where several charts share one.
    #[prop_or_default]
    pub folded: AttrValue,
    /// The table, with what is said of it.
    #[prop_or_default]
    pub table: Html,
}

/// A chart in its frame. Its points are walked along with a slider: one stop for the keyboard, arrows from point to
/// point, and each is marked in the drawing and read aloud.
#[component]
pub fn Chart(props: &ChartProps) -> Html {
    // None before the first.
    let at = use_state(|| 0_usize);
    let moved = {
        let at = at.setter();
        Callback::from(move |event: InputEvent| {
            if let Some(next) = field::text(&event).and_then(|text| text.parse().ok()) {
                at.set(next);
            }
        })
    };
    let number = use_memo((), |()| next());
    let how = format!("chart-{number}");
    let count = props.points.len();
    let point = at.checked_sub(1).and_then(|i| props.points.get(i));
    let said = point.map_or(AttrValue::Static(say!("chart-none")), |point| point.said.clone());
    html! {
        <figure class={classes!("chart", props.class)}>
            <figcaption>
                <p class="takeaway">{ props.title.clone() }{ "." }</p>
                <div class="how-to-read" id={how.clone()}>{ props.how.clone() }</div>
            </figcaption>
            <svg role="img" aria-label={props.label.clone()} aria-describedby={how} width="100%" height={px(props.height)}>
                { props.drawn.clone() }
                if let Some(point) = point {
                    { match point.y {
                        Some(y) => html! { <circle class="here" cx={percent(point.x)} cy={px(y)} r="11" /> },
                        None => html! { <line class="here" x1={percent(point.x)} x2={percent(point.x)} y1="0" y2={px(props.height)} /> },
                    } }
                }
            </svg>
            if count > 0 {
                <div class="walk">
                    <label>
                        { say!("chart-walk") }
                        <input type="range" min="0" max={count.to_string()} step="1" value={(*at).min(count).to_string()}
                            aria-valuetext={said.clone()} oninput={moved} />
                    </label>
                    // The slider itself says it aloud.
                    <p aria-hidden="true">{ if point.is_some() { said } else { AttrValue::default() } }</p>
                </div>
            }
            { props.children.clone() }
            if !props.folded.is_empty() {
                <details>
                    <summary>{ props.folded.clone() }</summary>
                    { props.table.clone() }
                </details>
            }
        </figure>
    }
}
