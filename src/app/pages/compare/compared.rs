//! How two strings compare: the numbers that a player notices as bars, and every number.

use std::borrow::Cow;
use std::rc::Rc;

use protocol::reply::{Compare, Quantity};
use yew::prelude::*;

use crate::components::bar::{RangeBar, ends};
use crate::components::evidence::Evidence;
use crate::components::table::{Scroll, group_row, source_link};
use crate::units;
use crate::words::naming::{capital, family};
use crate::words::{days, drift, property, reasons, say};

/// Properties of [`Compared`].
#[derive(Clone, PartialEq, Properties)]
pub struct ComparedProps {
    /// What the model said of the two.
    pub found: Rc<Compare>,
}

/// How two strings compare: the numbers that a player notices as bars, and every number.
#[component]
pub fn Compared(props: &ComparedProps) -> Html {
    html! { <>{ bars(&props.found) }{ numbers(&props.found) }</> }
}

/// The numbers that are drawn: of warmth and damp those of the time that the strings go untuned.
fn shown(found: &Compare) -> Vec<String> {
    let untuned = &found.this.setting.untuned;
    let whatever = ["tension_n", "stretch", "speaks_s", "brilliance_hz", "settling_d"];
    let mut keys: Vec<String> = whatever.map(str::to_owned).into();
    keys.extend(["warmth", "damp"].map(|by| drift::met(untuned, by)));
    keys
}

/// How the first compares with the second.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Verdict {
    /// More or less of it: the word, and how likely.
    Apart(&'static str, &'static str),
    /// No difference that is noticed, none that is sure, or what the ranges alone tell.
    Other(Cow<'static, str>),
}

impl Verdict {
    fn words(self) -> String {
        match self {
            Self::Apart(word, "") => word.to_owned(),
            Self::Apart(word, likely) => say!("compare-apart", likely = likely, word = word),
            Self::Other(words) => words.into_owned(),
        }
    }

    fn sentence(self) -> String {
        match self {
            Self::Apart(..) => say!("compare-verdict", verdict = self.words()),
            Self::Other(words) => say!("compare-both", verdict = capital(&words)),
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
    if let Some(c) = found.comparisons.iter().find(|c| c.property == decided_by(key)) {
        return Some(match c.verdict.as_str() {
            "above" => Verdict::Apart(more, days::likely(c.chance_above)),
            "below" => Verdict::Apart(less, days::likely(c.chance_below)),
            _ => Verdict::Other(reasons::verdict(c)),
        });
    }
    let (one, other) = (drift::sized(key, one), drift::sized(key, other));
    let overlap = one.low <= other.high && other.low <= one.high;
    let same = (one.value - other.value).abs() <= 1e-9 * one.value.abs().max(other.value.abs());
    Some(if same {
        Verdict::Other(say!("compare-same").into())
    } else if overlap {
        Verdict::Other(say!("compare-overlap").into())
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
            { for shown(found).iter().filter_map(|key| {
                let (one, other) = both(found, key)?;
                let (least, most) = ends([one, other].into_iter());
                let line = |word: &str, q: &Quantity| {
                    let said = units::written(key, q, 2).within();
                    html! {
                        <div class="bar-line">
                            <p><span class="which">{ word.to_owned() }</span>{ " " }{ &said }</p>
                            <RangeBar label={format!("{word}: {said}")} {least} {most} value={q.value} range={(q.low, q.high)} />
                        </div>
                    }
                };
                Some(html! {
                    <div class="six">
                        <h3>{ property::name(key) }<span class="means">{ property::of(key).map(|p| p.means()).unwrap_or_default() }</span></h3>
                        { line(say!("compare-first"), one) }
                        { line(say!("compare-second"), other) }
                        <p class="verdict">{ verdict(found, key)?.sentence() }</p>
                    </div>
                })
            }) }
        </section>
    }
}

/// The takeaway of the bars: where the two can be told apart.
fn title(found: &Compare) -> String {
    let apart: Vec<&str> = shown(found)
        .iter()
        .filter_map(|key| match verdict(found, key)? {
            Verdict::Apart(word, _) => Some(word),
            _ => None,
        })
        .collect();
    let (one, other) = (family(&found.this.family), family(&found.other.family));
    if apart.is_empty() {
        say!("compare-none").to_owned()
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
                <table class="numbers stacks">
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
                            let cell = |label: &'static str, q: &Quantity| {
                                let w = units::written(p.key, q, 2);
                                html! {
                                    <td class="figure" data-label={label}>
                                        { w.plain() }
                                        if !w.exact { <span class="means">{ w.range() }</span> }
                                    </td>
                                }
                            };
                            Some(html! {
                                <tr>
                                    <th scope="row">{ p.name() }</th>
                                    { cell(say!("compare-first"), one) }
                                    { cell(say!("compare-second"), other) }
                                    <td class="verdict">{ verdict(found, p.key)?.words() }</td>
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
