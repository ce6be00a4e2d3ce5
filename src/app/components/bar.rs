//! A number on a line, with its range, what is usual and what is too much.

use protocol::reply::Quantity;
use yew::prelude::*;

use crate::units;

/// Properties of [`RangeBar`].
#[derive(Clone, PartialEq, Properties)]
pub struct RangeBarProps {
    /// What it says, for those who do not see it.
    pub label: AttrValue,
    /// Right end of the line.
    pub most: f64,
    /// Left end of the line: nought, unless a value can lie below it.
    #[prop_or_default]
    pub least: f64,
    /// The value.
    pub value: f64,
    /// The range of the value.
    pub range: (f64, f64),
    /// What is usual.
    #[prop_or_default]
    pub usual: Option<(f64, f64)>,
    /// The largest recommended.
    #[prop_or_default]
    pub limit: Option<f64>,
}

/// Room at either end, in per cent of the width.
const EDGE: f64 = 1.5;

/// Where a value stands between two ends, in per cent of the width.
#[must_use]
pub fn along(value: f64, least: f64, most: f64) -> f64 {
    if most > least && value.is_finite() {
        EDGE + (100.0 - 2.0 * EDGE) * ((value - least) / (most - least)).clamp(0.0, 1.0)
    } else {
        EDGE
    }
}

/// A line's ends for some numbers that stand under each other: nought lies on it, with a little room beyond them.
pub fn ends<'a>(all: impl Iterator<Item = &'a Quantity>) -> (f64, f64) {
    all.fold((0.0, 0.0), |(least, most), q| {
        (f64::min(least, 1.05 * q.low), f64::max(most, 1.05 * q.high))
    })
}

fn percent(x: f64) -> String {
    format!("{x:.2}%")
}

/// A number on a line. Widths are shares, so that it fits any screen and its marks keep their size.
#[component]
pub fn RangeBar(props: &RangeBarProps) -> Html {
    let at = |value: f64| along(value, props.least, props.most);
    let (low, high) = (at(props.range.0), at(props.range.1));
    html! {
        <svg class="range-bar" role="img" aria-label={props.label.clone()} width="100%" height={if props.usual.is_some() { "48" } else { "32" }}>
            <line class="axis" x1={percent(EDGE)} x2={percent(100.0 - EDGE)} y1="16" y2="16" />
            if let Some((from, to)) = props.usual {
                <rect class="usual" x={percent(at(from))} width={percent(at(to) - at(from))} y="7" height="18" />
            }
            if let Some((from, to)) = props.usual {
                <text x={percent(at(from))} y="42" text-anchor="middle">{ units::fixed(from, 0) }</text>
                <text x={percent(at(to))} y="42" text-anchor="middle">{ units::fixed(to, 0) }</text>
            }
            if let Some(limit) = props.limit {
                <line class="limit" x1={percent(at(limit))} x2={percent(at(limit))} y1="2" y2="30" />
            }
            if props.least < 0.0 {
                <line class="axis" x1={percent(at(0.0))} x2={percent(at(0.0))} y1="4" y2="28" />
            }
            <line class="spread" x1={percent(low)} x2={percent(high)} y1="16" y2="16" />
            <line class="spread end" x1={percent(low)} x2={percent(low)} y1="11" y2="21" />
            <line class="spread end" x1={percent(high)} x2={percent(high)} y1="11" y2="21" />
            <circle class="value" cx={percent(at(props.value))} cy="16" r="5" />
        </svg>
    }
}
