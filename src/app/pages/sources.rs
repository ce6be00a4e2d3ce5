//! Where does every number come from? What the grades of evidence mean, how each number is computed, the bibliography.

use std::rc::Rc;

use protocol::reply::{Reply, Source, Tables};
use protocol::request::{Request, TablesRequest};
use yew::platform::spawn_local;
use yew::prelude::*;

use crate::components::evidence::Evidence;
use crate::components::fold::Fold;
use crate::components::table::{Filter, Scroll, group_row, source_link};
use crate::hooks::use_model;
use crate::platform::view;
use crate::units;
use crate::words::naming::capital;
use crate::words::{practice, property, say};

/// Properties of [`SourcesPage`].
#[derive(Clone, PartialEq, Properties)]
pub struct SourcesPageProps {
    /// The entry to begin with.
    #[prop_or_default]
    pub entry: Option<AttrValue>,
}

/// The sources, as the model lists them.
#[component]
pub fn SourcesPage(props: &SourcesPageProps) -> Html {
    let model = use_model();
    let tables = use_state(|| None::<Result<Rc<Tables>, String>>);
    {
        let tables = tables.setter();
        use_effect_with((), move |()| {
            spawn_local(async move {
                let answer = match model.ask(&Request::Tables(TablesRequest {})).await {
                    Ok(Reply::Tables(found)) => Ok(Rc::new(*found)),
                    Ok(_) => Err(say!("sources-other-answer").to_owned()),
                    Err(error) => Err(error.to_string()),
                };
                tables.set(Some(answer));
            });
        });
    }
    let found = matches!(*tables, Some(Ok(_)));
    use_effect_with((props.entry.clone(), found), |(entry, found)| {
        if let (Some(entry), true) = (entry, found) {
            view::focus(&format!("#source-{entry}"), true);
        }
    });
    html! {
        <article class="sources">
            <h1>{ say!("foot-sources") }</h1>
            <p class="lede">{ say!("sources-lead") }</p>
            { grades() }
            { match &*tables {
                None => html! { <p role="status">{ say!("sources-fetching") }</p> },
                Some(Err(error)) => html! { <p role="alert">{ say!("sources-broke", reason = error) }</p> },
                Some(Ok(tables)) => html! { <Bibliography tables={tables.clone()} entry={props.entry.clone()} /> },
            } }
        </article>
    }
}

fn grades() -> Html {
    html! {
        <section aria-labelledby="grades">
            <h2 id="grades">{ say!("sources-grades") }</h2>
            <dl class="grades">
                { for property::EVIDENCE.into_iter().map(|grade| html! {
                    <>
                        <dt><Evidence grade={grade} /></dt>
                        <dd>{ property::evidence_means(grade) }</dd>
                    </>
                }) }
            </dl>
            <p>{ say!("sources-range") }</p>
        </section>
    }
}

/// Properties of [`Bibliography`].
#[derive(Clone, PartialEq, Properties)]
pub struct BibliographyProps {
    /// The tables.
    pub tables: Rc<Tables>,
    /// The work to begin with.
    #[prop_or_default]
    pub entry: Option<AttrValue>,
}

/// How each number is computed, and the works they rest on.
#[component]
pub fn Bibliography(props: &BibliographyProps) -> Html {
    let tables = &props.tables;
    html! {
        <>
            <section aria-labelledby="formulas">
                <h2 id="formulas">{ say!("sources-formulas") }</h2>
                <p>{ say!("sources-letters") }</p>
                <Scroll label={say!("sources-table")} rows={tables.properties.len()}>
                    <table class="stacks">
                        <thead><tr><th scope="col">{ say!("column-number") }</th><th scope="col">{ say!("sources-formula") }</th><th scope="col">{ say!("sources-best") }</th><th scope="col">{ say!("column-source") }</th></tr></thead>
                        { for property::GROUPS.iter().map(|group| html! {
                        <tbody>
                            { group_row(group, 4) }
                            { for group.properties.iter().filter_map(|p| {
                                let entry = tables.properties.iter().find(|e| e.key == p.key)?;
                                Some(html! {
                                    <tr>
                                        <th scope="row">{ p.name() }<span class="means">{ p.means() }</span></th>
                                        <td class="formula">{ p.formula() }</td>
                                        <td><Evidence grade={entry.evidence.clone()} /></td>
                                        <td>{ source_link(&entry.source) }</td>
                                    </tr>
                                })
                            }) }
                        </tbody>
                        }) }
                    </table>
                </Scroll>
            </section>
            <section aria-labelledby="fitted">
                <h2 id="fitted">{ say!("sources-fitted") }</h2>
                <p>{ say!("sources-fitted-how") }</p>
                <Scroll label={say!("sources-fitted-table")} rows={tables.properties.iter().filter(|p| p.fitted.is_some()).count()}>
                    <table class="stacks">
                        <thead><tr>
                            <th scope="col">{ say!("column-number") }</th>
                            <th scope="col">{ say!("sources-ranks") }</th>
                            <th scope="col">{ say!("sources-ranks-place") }</th>
                            <th scope="col">{ say!("sources-misses") }</th>
                            <th scope="col">{ say!("sources-misses-place") }</th>
                        </tr></thead>
                        <tbody>
                            { for tables.properties.iter().filter_map(|p| {
                                let f = p.fitted.as_ref()?;
                                Some(html! {
                                    <tr>
                                        <th scope="row">{ property::name(&p.key) }</th>
                                        <td class="figure" data-label={say!("sources-ranks")}>{ units::fixed(f.ranks, 2) }</td>
                                        <td class="figure" data-label={say!("sources-ranks-place")}>{ units::fixed(f.ranks_at_one_place, 2) }</td>
                                        <td class="figure" data-label={say!("sources-misses")}>{ missed(&p.key, f.misses) }</td>
                                        <td class="figure" data-label={say!("sources-misses-place")}>{ missed(&p.key, f.misses_at_one_place) }</td>
                                    </tr>
                                })
                            }) }
                        </tbody>
                    </table>
                </Scroll>
            </section>
            <section aria-labelledby="trade">
                <h2 id="trade">{ say!("sources-trade") }</h2>
                <p>{ say!("sources-trade-order") }</p>
                <ul>
                    <li>{ say!("sources-trade-settling") }</li>
                    <li>{ say!("sources-trade-warmth") }</li>
                    <li>{ say!("sources-trade-damp") }</li>
                </ul>
            </section>
            { common_practice() }
            <section aria-labelledby="unverified">
                <h2 id="unverified">{ say!("sources-unheld") }</h2>
                if tables.unverified.is_empty() {
                    <p>{ say!("sources-all-held") }</p>
                } else {
                    <p>{ say!("sources-rest") }</p>
                    <dl class="works unverified">
                        { for tables.unverified.iter().map(|u| html! {
                            <div class="work">
                                <dt>{ property::formula(&u.formula) }<span class="means">{ &u.formula }</span></dt>
                                <dd lang="en">{ capital(&u.why) }{ "." }</dd>
                            </div>
                        }) }
                    </dl>
                }
            </section>
            <section aria-labelledby="works">
                <h2 id="works">{ say!("sources-works") }</h2>
                // Whoever follows a link to a work finds it, whatever was looked for before.
                <Filter key={props.entry.as_deref().unwrap_or_default()} label={say!("sources-works")} rows={tables.sources.len()}>
                    <dl class="works">{ for tables.sources.iter().map(source) }</dl>
                </Filter>
            </section>
        </>
    }
}

/// The situations that the trade is sure of, beside what is told in them.
fn common_practice() -> Html {
    let rows = practice::rows();
    let agreed = rows.iter().filter(|row| row.agrees).count();
    let mark =
        |agrees: bool| if agrees { say!("practice-agrees") } else { say!("practice-differs") };
    html! {
        <section aria-labelledby="practice">
            <h2 id="practice">{ say!("sources-practice") }</h2>
            <p>{ say!("sources-practice-how", agreed = agreed, of = rows.len()) }</p>
            <Fold summary={html! { say!("sources-practice-table") }}>
                <Scroll label={say!("sources-practice-table")} rows={rows.len()}>
                    <table class="stacks">
                        <thead><tr>
                            <th scope="col">{ say!("column-situation") }</th>
                            <th scope="col">{ say!("column-practice") }</th>
                            <th scope="col">{ say!("column-told") }</th>
                        </tr></thead>
                        <tbody>
                            { for rows.into_iter().map(|row| html! {
                                <tr>
                                    <th scope="row"><span lang="en">{ row.situation }</span><span class="means">{ row.strings }</span></th>
                                    <td data-label={say!("column-practice")}>{ row.practice }</td>
                                    <td data-label={say!("column-told")}>{ row.told }<span class="means">{ mark(row.agrees) }</span></td>
                                </tr>
                            }) }
                        </tbody>
                    </table>
                </Scroll>
            </Fold>
        </section>
    }
}

/// A miss of a fitted number: decibels of a level, else a share.
fn missed(key: &str, by: f64) -> String {
    if key.ends_with("_db") {
        units::with_unit(&units::fixed(by, 1), "dB")
    } else {
        units::with_unit(&units::fixed(100.0 * by, 0), "%")
    }
}

/// A work, as the model names it: in English, and marked as such.
fn source(s: &Source) -> Html {
    html! {
        <div class="work" id={format!("source-{}", s.key)}>
            <dt>{ property::cited(&s.key) }</dt>
            <dd>
                if s.authors != "-" {
                    <span lang="en">{ &s.authors }</span>{ ": " }
                }
                <cite lang="en">{ &s.title }</cite>{ ". " }
                if s.place != "-" {
                    <span lang="en">{ &s.place }</span>{ ". " }
                }
                if !s.remark.is_empty() {
                    <span class="remark">{ say!("sources-remark") }{ " " }<span lang="en">{ &s.remark }{ "." }</span></span>
                }
            </dd>
        </div>
    }
}
