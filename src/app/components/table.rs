//! A table that may be wider than the screen, and the table of every number of a report.

use std::rc::Rc;

use protocol::reply::{Quantity, Report};
use yew::prelude::*;

use super::evidence::Evidence;
use crate::route::Route;
use crate::units;
use crate::words::property;

/// Properties of [`Scroll`].
#[derive(Clone, PartialEq, Properties)]
pub struct ScrollProps {
    /// What is inside, for those who come by keyboard.
    pub label: AttrValue,
    /// The table.
    pub children: Html,
}

/// A region that scrolls sideways, and can be reached by keyboard for that.
#[component]
pub fn Scroll(props: &ScrollProps) -> Html {
    html! {
        <div class="scroll" role="region" aria-label={props.label.clone()} tabindex="0">
            { props.children.clone() }
        </div>
    }
}

/// Where a source stands among the others.
pub fn source_link(key: &str) -> Html {
    let to = Route::Sources { entry: Some(key.to_owned()) }.to_string();
    html! { <a class="source" href={to}>{ key.to_owned() }</a> }
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
    let label = format!("Every number of {}", props.name);
    let known = property::ALL.iter().map(|p| p.key);
    let rest =
        props.report.numbers.keys().map(String::as_str).filter(|k| property::of(k).is_none());
    html! {
        <Scroll label={label.clone()}>
            <table class="numbers">
                <caption>{ label }</caption>
                <thead>
                    <tr>
                        <th scope="col">{ "Number" }</th>
                        <th scope="col">{ "Value" }</th>
                        <th scope="col">{ "Range, 90 of 100" }</th>
                        <th scope="col">{ "How known" }</th>
                        <th scope="col">{ "Source" }</th>
                    </tr>
                </thead>
                <tbody>
                    { for known.chain(rest).filter_map(|key| Some(row(key, props.report.numbers.get(key)?))) }
                </tbody>
            </table>
        </Scroll>
    }
}

fn row(key: &str, q: &Quantity) -> Html {
    let w = units::written(key, q, 2);
    let means = property::of(key).map(|p| p.means).unwrap_or_default();
    html! {
        <tr>
            <th scope="row">
                { property::name(key) }
                <span class="means">{ means }</span>
            </th>
            <td class="figure">
                if w.unknown { { "unknown within" } } else { { units::with_unit(&w.value, w.unit) } }
            </td>
            <td class="figure">
                if w.exact { { "as specified" } } else { { units::with_unit(&w.range(), w.unit) } }
            </td>
            <td><Evidence grade={q.evidence.clone()} /></td>
            <td>{ source_link(&q.source) }</td>
        </tr>
    }
}
