//! Two constructions side by side at one place: portraits to one scale, numbers with their ranges, six as bars.

mod compared;
mod start;

use std::cell::Cell;
use std::rc::Rc;

use protocol::reply::{Compare, Fit, Refused, Reply, Report};
use protocol::request::{CompareRequest, Player, Request, Setting};
use serde_json::{Value, json};
use strings::construction::Family;
use strings::instrument;
use yew::platform::spawn_local;
use yew::prelude::*;

use crate::components::bow_map::BowMaps;
use crate::components::inside::Inside;
use crate::components::listening::Listening;
use crate::components::maker::{Draft, Maker};
use crate::components::portrait::{Portrait, ScaleBar, magnification};
use crate::hooks::{use_model, use_sounds};
use crate::lesson::Lesson;
use crate::pages::class;
use crate::platform::session;
use crate::route::Route;
use crate::under_bow;
use crate::words::naming::{capital, portrait, short, the_string};
use crate::words::{fault, say};

pub use compared::{Compared, ComparedProps};
use start::Start;

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

/// Two strings on this instrument, or two on a violin's A.
#[component]
pub fn ComparePage(props: &ComparePageProps) -> Html {
    let start = props
        .fit
        .as_ref()
        .and_then(|fit| start::of_fit(fit, props.string))
        .unwrap_or_else(start::of_violin);
    // Another string begins afresh.
    let id = format!("{} {:?} {:?}", props.string, start.setting, start.sides);
    let key = id.clone();
    html! { <Side {key} {id} start={start} string={props.string} /> }
}

/// Under which name the two drafts are put by, so that they outlive a reload.
const PUT_BY: &str = "ropewalk/compare";

/// The drafts that were put by for this comparison: whatever begins alike.
fn recalled(id: &str) -> Option<[Draft; 2]> {
    let value: Value = serde_json::from_str(&session::recall(PUT_BY)?).ok()?;
    let [first, second] = [&value[1], &value[2]].map(Draft::of_value);
    (value[0] == id).then_some([first?, second?])
}

fn put_by(id: &str, [first, second]: &[Draft; 2]) {
    let value = json!([id, first.to_value(), second.to_value()]);
    session::put_by(PUT_BY, &value.to_string());
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
    id: String,
    start: Start,
    string: usize,
}

#[component]
fn Side(props: &SideProps) -> Html {
    let start = &props.start;
    let begin =
        || recalled(&props.id).unwrap_or_else(|| start.sides.clone().map(|c| Draft::of(&c)));
    let drafts = use_state(begin);
    let said = use_said(&drafts, &start.setting);
    let on_change = |side: usize| {
        let (drafts, id) = (drafts.clone(), props.id.clone());
        Callback::from(move |draft: Draft| {
            let mut next = (*drafts).clone();
            next[side] = draft;
            put_by(&id, &next);
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
                <p class="context">{ &start.context }</p>
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
            // Not before the first answer, above which it would have to make room; but where there will be none until
            // something is mended.
            if said != Said::default() || drafts.iter().any(|draft| draft.read().is_err()) {
                { makers(&drafts, &said.faults, on_change) }
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

/// Asks the model how two drafts compare, and again with every change; the last good answer stays meanwhile.
#[hook]
fn use_said(drafts: &[Draft; 2], setting: &Setting) -> Said {
    let model = use_model();
    let said = use_state(Said::default);
    let latest = use_mut_ref(|| Rc::new(Cell::new(0_u32)));
    {
        let said = said.clone();
        let setting = setting.clone();
        let latest = latest.borrow().clone();
        use_effect_with(drafts.clone(), move |drafts| {
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
    (*said).clone()
}

/// The two forms.
fn makers(
    drafts: &[Draft; 2],
    faults: &[Vec<AttrValue>; 2],
    on_change: impl Fn(usize) -> Callback<Draft>,
) -> Html {
    html! {
        <div class="makers">
            { for (0..2).map(|side| html! {
                <div>
                    <details>
                        <summary>{ [say!("compare-change-first"), say!("compare-change-second")][side] }</summary>
                        <Maker id={["first", "second"][side]} draft={drafts[side].clone()} faults={faults[side].clone()} on_change={on_change(side)} />
                    </details>
                    // What is wrong must be seen even when the form is folded away.
                    if drafts[side].read().is_err() || !faults[side].is_empty() {
                        <p class="amiss">{ say!("compare-last") }</p>
                    }
                </div>
            }) }
        </div>
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
                <Listening id="hear" instrument={instrument.clone()} groups={Rc::new(under_bow::two_heard(sides, setting))} />
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
