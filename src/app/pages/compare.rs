//! Two constructions side by side at one place: portraits to one scale, numbers with their ranges, six as bars.

use std::cell::Cell;
use std::rc::Rc;

use protocol::reply::{Compare, Fit, Quantity, Refused, Reply, Report};
use protocol::request::{CompareRequest, Construction, Core, Player, Request, Setting, Winding};
use strings::construction::Family;
use strings::instrument;
use yew::platform::spawn_local;
use yew::prelude::*;

use crate::components::bar::RangeBar;
use crate::components::bow_map::BowMaps;
use crate::components::evidence::Evidence;
use crate::components::inside::Inside;
use crate::components::listening::Listening;
use crate::components::maker::{Draft, Maker};
use crate::components::portrait::{Portrait, ScaleBar, magnification};
use crate::components::table::{Scroll, group_row, source_link};
use crate::hooks::{use_model, use_sounds};
use crate::lesson::Lesson;
use crate::pages::class;
use crate::route::Route;
use crate::under_bow;
use crate::units;
use crate::words::naming::{capital, family, letter, letters, portrait, short, the_string};
use crate::words::questions::{instrument_name, size_name};
use crate::words::{days, fault, property, say};

/// Properties of [`ComparePage`].
#[derive(Clone, PartialEq, Properties)]
pub struct ComparePageProps {
    /// The fitting whose strings are compared, if there is one.
    #[prop_or_default]
    pub fit: Option<Rc<Fit>>,
    /// Which string of it, 0 the highest.
    #[prop_or_default]
    pub string: usize,
}

/// Two strings to begin with, and where they work.
#[derive(Clone, PartialEq)]
struct Start {
    instrument: String,
    name: String,
    place: String,
    setting: Setting,
    sides: [Construction; 2],
    others: Vec<String>,
}

/// Two strings on this instrument, or two on a violin's A.
#[component]
pub fn ComparePage(props: &ComparePageProps) -> Html {
    let start = of_fit(props).unwrap_or_else(of_violin);
    // Another string begins afresh.
    let key = format!("{} {:?} {:?}", props.string, start.setting, start.sides);
    html! { <Side key={key} start={start} string={props.string} /> }
}

fn of_fit(props: &ComparePageProps) -> Option<Start> {
    let fit = props.fit.as_ref()?;
    let set = fit.set.as_ref()?;
    let i = props.string.min(set.strings.len().checked_sub(1)?);
    let string = set.strings.get(i)?;
    let names = letters(set.strings.iter().map(|s| s.note.as_str()));
    // The rival is the nearest other kind; where none is made, today's string or the same again.
    let rival = string.rival.as_ref().or(string.today.as_ref()).unwrap_or(&string.report);
    let setting = string.report.setting.clone();
    Some(Start {
        instrument: fit.problem.instrument.clone(),
        place: place_of(&fit.problem.instrument, &fit.problem.size, &setting),
        name: names.get(i)?.clone(),
        setting,
        sides: [string.report.construction.clone(), rival.construction.clone()],
        others: names,
    })
}

/// Where two strings work, in a line.
fn place_of(instrument: &str, size: &str, setting: &Setting) -> String {
    say!(
        "compare-place",
        instrument = capital(instrument_name(instrument)),
        size = size_name(size),
        length = units::mm(setting.sounding_length_m, 0),
        pitch = units::hertz(setting.pitch_hz),
    )
}

/// A full-size violin's A: a synthetic one and a steel one.
fn of_violin() -> Start {
    let core = |material: &str, build: &str, mm: f64| Core {
        material: material.to_owned(),
        build: build.to_owned(),
        diameter_m: mm / 1000.0,
        layout: None,
        lay_deg: None,
        filament_m: None,
        fill: None,
        twist_deg: None,
    };
    let ribbon = |metal: &str, mm: f64| Winding {
        metal: metal.to_owned(),
        form: "flat".to_owned(),
        thickness_m: mm / 1000.0,
        bedding: 0.0,
        gap: 0.0,
    };
    Start {
        instrument: "violin".to_owned(),
        name: letter("A4"),
        place: place_of("violin", "4/4", &Setting::of(0.328, 440.0)),
        setting: Setting::of(0.328, 440.0),
        sides: [
            Construction {
                core: Core {
                    filament_m: Some(2.5e-5),
                    fill: Some(0.7),
                    twist_deg: Some(12.0),
                    ..core("polyamide", "multifilament", 0.58)
                },
                windings: vec![ribbon("aluminium", 0.07)],
            },
            Construction {
                core: core("spring-steel", "solid", 0.24),
                windings: vec![ribbon("aluminium", 0.11)],
            },
        ],
        others: Vec::new(),
    }
}

/// How wide the thicker string is drawn, in pixels: two stand beside each other on a small phone.
const WIDEST_PX: f64 = 120.0;

/// What the model said of two drafts.
#[derive(Clone, PartialEq, Default)]
struct Said {
    found: Option<Rc<Compare>>,
    faults: [Vec<AttrValue>; 2],
    broke: Option<String>,
}

#[derive(Clone, PartialEq, Properties)]
struct SideProps {
    start: Start,
    string: usize,
}

#[component]
fn Side(props: &SideProps) -> Html {
    let start = &props.start;
    let model = use_model();
    let drafts = use_state(|| start.sides.clone().map(|c| Draft::of(&c)));
    let said = use_state(Said::default);
    let latest = use_mut_ref(|| Rc::new(Cell::new(0_u32)));
    {
        let said = said.clone();
        let setting = start.setting.clone();
        let latest = latest.borrow().clone();
        use_effect_with((*drafts).clone(), move |drafts| {
            let constructions = [drafts[0].read(), drafts[1].read()];
            if let [Ok(one), Ok(other)] = constructions {
                latest.set(latest.get() + 1);
                let turn = latest.get();
                spawn_local(async move {
                    let request =
                        Request::Compare(Box::new(CompareRequest { this: one, other, setting }));
                    let reply = model.ask(&request).await;
                    // A later change has been asked about in the meantime.
                    if latest.get() != turn {
                        return;
                    }
                    let mut next = Said { found: said.found.clone(), ..Said::default() };
                    match reply {
                        Ok(Reply::Compare(found)) => next.found = Some(Rc::new(*found)),
                        Ok(Reply::Refused(Refused { faults })) => {
                            for fault in faults {
                                let side = usize::from(fault.field.starts_with("other"));
                                next.faults[side].push(AttrValue::from(fault::told(&fault)));
                            }
                        }
                        Ok(_) => next.broke = Some(say!("compare-other-answer").to_owned()),
                        Err(error) => next.broke = Some(error.to_string()),
                    }
                    said.set(next);
                });
            }
        });
    }
    let on_change = |side: usize| {
        let drafts = drafts.clone();
        Callback::from(move |draft: Draft| {
            let mut next = (*drafts).clone();
            next[side] = draft;
            drafts.set(next);
        })
    };
    let found = said.found.as_ref();
    let px_per_mm = found.map(|f| {
        magnification([&f.this, &f.other].into_iter().map(|r| &r.construction), WIDEST_PX)
    });
    html! {
        <article class="compare">
            <header class="answer-head">
                <p class="context">{ &start.place }</p>
                <h1>{ say!("compare-title", name = &start.name) }</h1>
                { others(start, props.string) }
                { to_class(start, props.string, found) }
            </header>
            <div class="sides">
                { for (0..2).map(|side| html! {
                    <section class="side" aria-label={[say!("compare-first-string"), say!("compare-second-string")][side]}>
                        <h2>{ [say!("compare-first"), say!("compare-second")][side] }</h2>
                        if let (Some(found), Some(px_per_mm)) = (found, px_per_mm) {
                            { likeness([&found.this, &found.other][side], &start.name, px_per_mm) }
                        }
                    </section>
                }) }
            </div>
            if let Some(px_per_mm) = px_per_mm {
                <ScaleBar px_per_mm={px_per_mm} />
            }
            // Not before the first answer, above which it would have to make room.
            if *said != Said::default() {
            <div class="makers">
                { for (0..2).map(|side| html! {
                    <div>
                        <details>
                            <summary>{ [say!("compare-change-first"), say!("compare-change-second")][side] }</summary>
                            <Maker id={["first", "second"][side]} draft={drafts[side].clone()} faults={said.faults[side].clone()} on_change={on_change(side)} />
                        </details>
                        // What is wrong must be seen even when the form is folded away.
                        if drafts[side].read().is_err() || !said.faults[side].is_empty() {
                            <p class="amiss">{ say!("compare-last") }</p>
                        }
                    </div>
                }) }
            </div>
            }
            if let Some(broke) = &said.broke {
                <p class="amiss" role="alert">{ say!("compare-broke", reason = broke) }</p>
            }
            { match found {
                Some(found) => html! {
                    <>
                        <Compared found={found.clone()} />
                        <Pulled found={found.clone()} instrument={start.instrument.clone()} />
                        { under_the_bow(found, start) }
                    </>
                },
                None => html! { <p role="status">{ say!("compare-computing") }</p> },
            } }
        </article>
    }
}

/// The way to the same strings before a class; without a set a violin's A is meant.
fn to_class(start: &Start, string: usize, found: Option<&Rc<Compare>>) -> Html {
    let Some(kind) = instrument::Kind::of(&start.instrument) else { return Html::default() };
    let families = found.map(|f| [&f.this.family, &f.other.family]).into_iter().flatten();
    let mut cores: Vec<_> = families.filter_map(|key| Family::parse(key)).collect();
    cores.dedup();
    let usual = Lesson::default();
    let cores = if cores.len() < 2 { usual.cores } else { cores };
    let string = if start.others.is_empty() { usual.string } else { string };
    let lesson = Lesson { instrument: kind.key, string, cores, step: 0 };
    html! { <p class="open-class"><a href={Route::Class(lesson).to_string()}>{ say!("class-open") }</a></p> }
}

#[derive(Clone, PartialEq, Properties)]
struct PulledProps {
    found: Rc<Compare>,
    instrument: String,
}

/// The two under a pull, from the side.
#[component]
fn Pulled(props: &PulledProps) -> Html {
    let sounds = use_sounds();
    let reports = [&props.found.this, &props.found.other];
    let strings = reports
        .map(|r| Player { construction: r.construction.clone(), setting: r.setting.clone() });
    let names = [say!("compare-first-string"), say!("compare-second-string")];
    let pluck = {
        let (play, instrument) = (sounds.play.clone(), props.instrument.clone());
        Callback::from(move |player| {
            play.emit((vec![class::sound(&instrument, 0, player)], 0, true));
        })
    };
    html! {
        <section aria-labelledby="pulled">
            <h2 id="pulled">{ say!("inside-title") }</h2>
            <Inside id="pulled" strings={Rc::new(strings.to_vec())} names={Rc::new(names.map(str::to_owned).to_vec())} on_pluck={pluck} />
            <p role="status">{ class::heard(&sounds.hearing) }</p>
        </section>
    }
}

/// The two under the bow and to the ear.
fn under_the_bow(found: &Compare, start: &Start) -> Html {
    let sides = [&found.this.construction, &found.other.construction];
    let setting = &found.this.setting;
    let instrument = &start.instrument;
    html! {
        <>
            <section aria-labelledby="bow">
                <h2 id="bow">{ say!("compare-bow") }</h2>
                <BowMaps instrument={instrument.clone()} name={start.name.clone()} strings={Rc::new(under_bow::two_mapped(sides, setting))} />
            </section>
            <section class="ear" aria-labelledby="ear">
                <h2 id="ear">{ say!("set-ear") }</h2>
                <Listening id="hear" instrument={instrument.clone()} benches={Rc::new(under_bow::two_heard(sides, setting))} />
            </section>
        </>
    }
}

fn others(start: &Start, here: usize) -> Html {
    if start.others.len() < 2 {
        return Html::default();
    }
    html! {
        <nav class="others" aria-label={say!("compare-others")}>
            <ul>
                { for start.others.iter().enumerate().map(|(i, name)| html! {
                    <li><a href={Route::Compare { string: i }.to_string()} aria-current={(i == here).then_some("page")}>{ name }</a></li>
                }) }
            </ul>
        </nav>
    }
}

fn likeness(report: &Report, name: &str, px_per_mm: f64) -> Html {
    html! {
        <figure class="likeness">
            <span class="likeness-room">
                <Portrait construction={report.construction.clone()} px_per_mm={px_per_mm} label={portrait(&the_string(name), &report.construction)} />
            </span>
            <figcaption>{ capital(&short(&report.family, &report.construction)) }</figcaption>
        </figure>
    }
}

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
