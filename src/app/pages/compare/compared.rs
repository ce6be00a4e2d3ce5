//! How two strings compare: six numbers as bars, and every number.

use std::rc::Rc;

use protocol::reply::{Compare, Quantity};
use yew::prelude::*;

use crate::components::bar::RangeBar;
use crate::components::evidence::Evidence;
use crate::components::table::{Scroll, group_row, source_link};
use crate::units;
use crate::words::naming::{capital, family};
use crate::words::{days, property, say};

/// Properties of [`Compared`].
#[derive(Clone, PartialEq, Properties)]
pub struct ComparedProps {
    /// What the model said of the two.
    pub found: Rc<Compare>,
}

/// How two strings compare: six numbers as bars, and every number.
#[component]
pub fn Compared(props: &ComparedProps) -> Html {
    html! { <>{ bars(&props.found) }{ numbers(&props.found) }</> }
}

/// The six numbers that are drawn.
const DRAWN: [&str; 6] =
    ["tension_n", "stretch", "speaks_s", "brilliance_hz", "settling_d", "drift_cent"];

/// How the first compares with the second.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Verdict {
    /// More or less of it: the word, and how likely.
    Apart(&'static str, &'static str),
    /// No just-noticeable difference is sure enough.
    Alike,
    /// Nothing a player notices by itself: the ranges alone tell.
    Ranges(&'static str),
}

impl Verdict {
    fn words(self) -> String {
        match self {
            Self::Apart(word, "") => word.to_owned(),
            Self::Apart(word, likely) => say!("compare-apart", likely = likely, word = word),
            Self::Alike => say!("no-difference").to_owned(),
            Self::Ranges(words) => words.to_owned(),
        }
    }
}

/// The property whose comparison decides: that of tension is that of the firmness it makes at one length.
fn decided_by(key: &str) -> &str {
    if key == "tension_n" { "lateral_stiffness_n_m" } else { key }
}

/// How the first compares with the second: from paired draws where a player notices the property, else by the ranges.
fn verdict(found: &Compare, key: &str) -> Option<Verdict> {
    let (one, other) = both(found, key)?;
    let words = property::of(key);
    let (more, less) = words.map_or((say!("more"), say!("less")), |p| (p.more(), p.less()));
    let overlap = one.low <= other.high && other.low <= one.high;
    // From a range over a factor of three no word is drawn, unless the other lies wholly outside it.
    if (one.unknown || other.unknown) && overlap {
        return Some(Verdict::Ranges(say!("compare-cannot")));
    }
    if let Some(c) = found.comparisons.iter().find(|c| c.property == decided_by(key)) {
        return Some(match c.verdict.as_str() {
            "above" => Verdict::Apart(more, days::likely(c.chance_above)),
            "below" => Verdict::Apart(less, days::likely(c.chance_below)),
            _ => Verdict::Alike,
        });
    }
    let same = (one.value - other.value).abs() <= 1e-9 * one.value.abs().max(other.value.abs());
    Some(if same {
        Verdict::Ranges(say!("compare-same"))
    } else if overlap {
        Verdict::Ranges(say!("compare-overlap"))
    } else {
        Verdict::Apart(if one.value > other.value { more } else { less }, "")
    })
}

fn both<'a>(found: &'a Compare, key: &str) -> Option<(&'a Quantity, &'a Quantity)> {
    Some((found.this.numbers.get(key)?, found.other.numbers.get(key)?))
}

fn bars(found: &Compare) -> Html {
    html! {
        <section aria-labelledby="six">
            <h2 id="six">{ title(found) }</h2>
            { for DRAWN.into_iter().filter_map(|key| {
                let (one, other) = both(found, key)?;
                let most = 1.1 * one.high.max(other.high);
                let line = |word: &str, q: &Quantity| {
                    let w = units::written(key, q, 2);
                    html! {
                        <div class="bar-line">
                            <p><span class="which">{ word.to_owned() }</span>{ " " }{ w.plain() }</p>
                            <RangeBar label={format!("{word}: {}", w.plain())} most={most} value={q.value} range={(q.low, q.high)} unknown={q.unknown} />
                        </div>
                    }
                };
                Some(html! {
                    <div class="six">
                        <h3>{ property::name(key) }<span class="means">{ property::of(key).map(|p| p.means()).unwrap_or_default() }</span></h3>
                        { line(say!("compare-first"), one) }
                        { line(say!("compare-second"), other) }
                        <p class="verdict">{ say!("compare-verdict", verdict = verdict(found, key)?.words()) }</p>
                    </div>
                })
            }) }
        </section>
    }
}

/// The takeaway of the bars: where the two can be told apart.
fn title(found: &Compare) -> String {
    let apart: Vec<&str> = DRAWN
        .into_iter()
        .filter_map(|key| match verdict(found, key)? {
            Verdict::Apart(word, _) => Some(word),
            _ => None,
        })
        .collect();
    let (one, other) = (family(&found.this.family), family(&found.other.family));
    if apart.is_empty() {
        capital(say!("no-difference"))
    } else {
        let places = (say!("compare-the-first"), say!("compare-the-second"));
        let (one, other) = if one == other { places } else { (one, other) };
        say!("compare-against", one = capital(one), other = other, apart = apart.join("; "))
    }
}

fn numbers(found: &Compare) -> Html {
    html! {
        <section aria-labelledby="numbers">
            <h2 id="numbers">{ say!("compare-every") }</h2>
            <p class="how-to-read">{ say!("compare-how") }</p>
            <Scroll label={say!("compare-table")} rows={property::all().count()}>
                <table class="numbers">
                    <thead>
                        <tr>
                            <th scope="col">{ say!("column-number") }</th>
                            <th scope="col">{ say!("compare-first") }</th>
                            <th scope="col">{ say!("compare-second") }</th>
                            <th scope="col">{ say!("compare-column") }</th>
                            <th scope="col">{ say!("column-known") }</th>
                            <th scope="col">{ say!("column-source") }</th>
                        </tr>
                    </thead>
                    { for property::GROUPS.iter().map(|group| html! {
                    <tbody>
                        { group_row(group, 6) }
                        { for group.properties.iter().filter_map(|p| {
                            let (one, other) = both(found, p.key)?;
                            let cell = |q: &Quantity| {
                                let w = units::written(p.key, q, 2);
                                html! {
                                    <td class="figure">
                                        if w.unknown { { w.plain() } } else { { units::with_unit(&w.value, w.unit) } }
                                        if !w.exact && !w.unknown { <span class="means">{ w.range() }</span> }
                                    </td>
                                }
                            };
                            Some(html! {
                                <tr>
                                    <th scope="row">{ p.name() }</th>
                                    { cell(one) }
                                    { cell(other) }
                                    <td>{ verdict(found, p.key)?.words() }</td>
                                    <td><Evidence grade={one.evidence.clone()} /></td>
                                    <td>{ source_link(&one.source) }</td>
                                </tr>
                            })
                        }) }
                    </tbody>
                    }) }
                </table>
            </Scroll>
        </section>
    }
}
