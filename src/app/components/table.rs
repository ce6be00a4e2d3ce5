//! A table that may be wider than the screen or very long, and the table of every number of a report.

use std::rc::Rc;

use gloo::timers::callback::Timeout;
use protocol::reply::{Quantity, Report};
use yew::prelude::*;

use super::bar::RangeBar;
use super::evidence::Evidence;
use crate::platform::{field, rows};
use crate::route::Route;
use crate::units;
use crate::words::{doubt, property, say};

/// Properties of [`Scroll`].
#[derive(Clone, PartialEq, Properties)]
pub struct ScrollProps {
    /// What is inside, for those who come by keyboard.
    pub label: AttrValue,
    /// How many rows it may have, where one would look for one among them.
    #[prop_or_default]
    pub rows: usize,
    /// The table.
    pub children: Html,
}

/// A region that scrolls sideways, and can be reached by keyboard for that.
#[component]
pub fn Scroll(props: &ScrollProps) -> Html {
    html! {
        <Filter label={props.label.clone()} rows={props.rows}>
            <div class="scroll" role="region" aria-label={props.label.clone()} tabindex="0">
                { props.children.clone() }
            </div>
        </Filter>
    }
}

/// With more rows than this one looks for a row by its words.
const LONG: usize = 20;

/// How long a person must have paused in typing until they are told how many rows are left, in milliseconds: a voice
/// that speaks at every letter hides what is typed.
const PAUSE_MS: u32 = 600;

/// Properties of [`Filter`].
#[derive(Clone, PartialEq, Properties)]
pub struct FilterProps {
    /// What the rows are of.
    pub label: AttrValue,
    /// How many there are.
    pub rows: usize,
    /// The table or list.
    pub children: Html,
}

/// A field over a long table or list that leaves only the rows with some words.
#[component]
pub fn Filter(props: &FilterProps) -> Html {
    let inside = use_node_ref();
    let words = use_mut_ref(String::new);
    let left = use_state(|| None::<(u32, u32)>);
    let pause = use_mut_ref(|| None::<Timeout>);
    let coming = (*use_state(rows::Coming::default)).clone();
    {
        // New rows have come, or others stand in their places.
        let (inside, words, coming) = (inside.clone(), Rc::clone(&words), coming.clone());
        use_effect(move || {
            if !words.borrow().is_empty() {
                rows::leave_with(&words.borrow(), &inside, &coming, usize::MAX);
            }
        });
    }
    if props.rows <= LONG {
        return props.children.clone();
    }
    let typed = {
        let (inside, words, left) = (inside.clone(), Rc::clone(&words), left.setter());
        Callback::from(move |event: InputEvent| {
            let text = field::text(&event).unwrap_or_default();
            let found = rows::leave_with(&text, &inside, &coming, rows::PORTION);
            words.replace(text);
            let left = left.clone();
            pause.replace(Some(Timeout::new(PAUSE_MS, move || left.set(Some(found)))));
        })
    };
    html! {
        <div class="filtered" ref={inside}>
            <p class="filter">
                <label>
                    { say!("filter-label") }<span class="unseen">{ format!(" ({})", props.label) }</span>{ " " }
                    <input type="search" autocomplete="off" spellcheck="false" oninput={typed} />
                </label>
                { " " }
                <span class="left" role="status">
                    if let Some((left, all)) = *left {
                        { say!("filter-left", left = f64::from(left), all = all.to_string()) }
                    }
                </span>
            </p>
            { props.children.clone() }
        </div>
    }
}

/// Where a source stands among the others.
pub fn source_link(key: &str) -> Html {
    let to = Route::Sources { entry: Some(key.to_owned()) }.to_string();
    html! { <a class="source" href={to}>{ property::cited(key) }</a> }
}

/// Properties of [`Numbers`].
#[derive(Clone, PartialEq, Properties)]
pub struct NumbersProps {
    /// The report.
    pub report: Rc<Report>,
    /// What the string is called.
    pub name: AttrValue,
}

/// Every number of a report: its range, how it is known, where it comes from.
#[component]
pub fn Numbers(props: &NumbersProps) -> Html {
    let label = say!("table-of", name = props.name.as_str());
    let numbers = &props.report.numbers;
    let rest: Vec<&str> =
        numbers.keys().map(String::as_str).filter(|k| property::of(k).is_none()).collect();
    html! {
        <Scroll label={label.clone()} rows={numbers.len()}>
            <table class="numbers stacks">
                <caption>{ label }</caption>
                <thead>
                    <tr>
                        <th scope="col">{ say!("column-number") }</th>
                        <th scope="col">{ say!("column-value") }</th>
                        <th scope="col">{ say!("column-range") }</th>
                        <th scope="col">{ say!("column-known") }</th>
                        <th scope="col">{ say!("column-source") }</th>
                    </tr>
                </thead>
                { for property::GROUPS.iter().map(|group| html! {
                    <tbody>
                        { group_row(group, 5) }
                        { for group.properties.iter().filter_map(|p| match p.key {
                            LEAST_BY_THEORY => disputed(&props.report),
                            LEAST_AS_MEASURED => None,
                            key => Some(row(key, numbers.get(key)?)),
                        }) }
                    </tbody>
                }) }
                if !rest.is_empty() {
                    <tbody>{ for rest.into_iter().filter_map(|key| Some(row(key, numbers.get(key)?))) }</tbody>
                }
            </table>
        </Scroll>
    }
}

/// The row that heads a group of numbers.
pub fn group_row(group: &property::Group, columns: usize) -> Html {
    html! {
        <tr class="group">
            <th scope="rowgroup" colspan={columns.to_string()}>
                { group.name() }
                <span class="means">{ group.asks() }</span>
            </th>
        </tr>
    }
}

/// The least bow force as the theory has it, and as it was measured.
pub const LEAST_BY_THEORY: &str = "bow_force_least_n";
/// The same as it was measured.
pub const LEAST_AS_MEASURED: &str = "bow_force_least_measured_n";

/// The least bow force, about which theory and measurement disagree: one band with both values.
fn disputed(report: &Report) -> Option<Html> {
    let theory = report.numbers.get(LEAST_BY_THEORY)?;
    let measured = report.numbers.get(LEAST_AS_MEASURED)?;
    let most = 1.1 * theory.high.max(measured.high);
    let (low, high) = (theory.low.min(measured.low), theory.high.max(measured.high));
    let band = units::write(low, (low, high), "N", 3, 2);
    let line = |word: &str, key: &str, q: &Quantity| {
        let w = units::written(key, q, 2);
        let said = format!("{word}: {}", range_with_unit(&w));
        html! {
            <div class="bar-line">
                <p><span class="which">{ word.to_owned() }</span>{ " " }{ w.plain() }</p>
                <RangeBar label={said} most={most} value={q.value} range={(q.low, q.high)} />
            </div>
        }
    };
    Some(html! {
        <tr class="disputed">
            <th scope="row">
                { say!("disputed") }
                <span class="means">{ say!("disputed-means") }</span>
            </th>
            <td class="figure" colspan="2">
                { say!("disputed-within", range = units::with_unit(&band.range(), "N")) }
                { line(say!("disputed-theory"), LEAST_BY_THEORY, theory) }
                { line(say!("disputed-measured"), LEAST_AS_MEASURED, measured) }
            </td>
            <td><Evidence grade={theory.evidence.clone()} /></td>
            <td>{ source_link(&theory.source) }{ ", " }{ source_link(&measured.source) }</td>
        </tr>
    })
}

fn range_with_unit(w: &units::Written) -> String {
    say!("value-within", value = w.plain(), range = units::with_unit(&w.range(), w.unit))
}

fn row(key: &str, q: &Quantity) -> Html {
    let w = units::written(key, q, 2);
    let means = property::of(key).map(|p| p.means()).unwrap_or_default();
    let part = property::PARTS_OF_DRIFT.contains(&key);
    html! {
        <tr class={classes!(part.then_some("of-drift"))}>
            <th scope="row">
                { property::name(key) }
                <span class="means">{ means }</span>
            </th>
            <td class="figure">
                { w.plain() }
            </td>
            <td class="figure">
                if w.exact { { say!("table-none") } } else { { units::with_unit(&w.range(), w.unit) } }
            </td>
            <td><Evidence grade={q.evidence.clone()} /></td>
            <td>{ source_link(&q.source) }</td>
        </tr>
    }
}

/// Properties of [`Doubts`].
#[derive(Clone, PartialEq, Properties)]
pub struct DoubtsProps {
    /// The report.
    pub report: Rc<Report>,
}

/// Where the numbers stand on ground that was not measured, and what to measure to know more.
#[component]
pub fn Doubts(props: &DoubtsProps) -> Html {
    let report = &props.report;
    let sentences: Vec<String> =
        property::all().filter_map(|p| doubt::sentence(p.key, report.doubts.get(p.key)?)).collect();
    html! {
        <>
            { for report.caveats.iter().map(|key| html! { <p class="caution">{ doubt::caveat(key) }</p> }) }
            if !sentences.is_empty() {
                <div class="doubts">
                    <h4>{ say!("doubts-title") }</h4>
                    <ul>{ for sentences.into_iter().map(|s| html! { <li>{ s }</li> }) }</ul>
                </div>
            }
        </>
    }
}
