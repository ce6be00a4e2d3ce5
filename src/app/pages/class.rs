//! Two or three cores side by side, for a class: step by step in large type, heard on a key, with questions.

use std::rc::Rc;

use protocol::reply::{Place, Reply, Report};
use protocol::request::{Answers, PlaceRequest, Player, Request, SoundRequest};
use strings::construction::Family;
use strings::instrument;
use yew::prelude::*;

use crate::components::bar::{RangeBar, ends};
use crate::components::inside::Inside;
use crate::components::portrait::{Portrait, ScaleBar, magnification};
use crate::components::year::Year;
use crate::hooks::{Hearing, Listener, use_asked, use_sounds, use_store};
use crate::lesson::{LEAST_CORES, Lesson, MOST_CORES, Step};
use crate::platform::keys::{self, Key};
use crate::platform::{address, field};
use crate::route::Route;
use crate::under_bow::player;
use crate::units;
use crate::words::naming::{capital, core, letters, portrait, windings};
use crate::words::questions::instrument_name;
use crate::words::{drift, lesson as words, property, say};

/// Properties of [`ClassPage`].
#[derive(Clone, PartialEq, Properties)]
pub struct ClassPageProps {
    /// The lesson that the address names.
    pub lesson: Lesson,
}

/// How wide the thickest string is drawn, in pixels: to be seen from the last row.
const WIDEST_PX: f64 = 210.0;
/// Loudness to which every sound is brought, LUFS.
const LOUDNESS: f64 = -23.0;

/// The class.
#[component]
pub fn ClassPage(props: &ClassPageProps) -> Html {
    let lesson = &props.lesson;
    let store = use_store();
    let answers = about(&store.answers(), lesson.instrument);
    let request = PlaceRequest { answers, string: lesson.string };
    let asked = use_asked(Some(Request::Place(Box::new(request))));
    let place = match asked.reply.as_deref() {
        Some(Reply::Place(place)) => Rc::new(place.as_ref().clone()),
        _ => {
            return html! {
                <article class="class">
                    <h1>{ say!("room-class") }</h1>
                    if let Some(broke) = &asked.broke {
                        <p class="amiss" role="alert">{ say!("compare-broke", reason = broke) }</p>
                    } else {
                        <p role="status">{ say!("compare-computing") }</p>
                    }
                </article>
            };
        }
    };
    html! { <Lecture lesson={lesson.clone()} {place} broke={asked.broke.clone()} /> }
}

/// What is known of the instrument: what the person said, if it is the same one.
fn about(said: &Answers, instrument: &str) -> Answers {
    let own = said.instrument.as_deref().unwrap_or("violin") == instrument;
    if own {
        Answers { instrument: Some(instrument.to_owned()), ..said.clone() }
    } else {
        Answers {
            instrument: Some(instrument.to_owned()),
            room: said.room.clone(),
            ..Answers::default()
        }
    }
}

#[derive(Clone, PartialEq, Properties)]
struct LectureProps {
    lesson: Lesson,
    place: Rc<Place>,
    broke: Option<String>,
}

/// Pieces that a class hears.
const PIECES: [&str; 2] = ["pizzicato", "open-string"];

/// A sound of one string.
pub fn sound(instrument: &str, piece: usize, player: Player) -> SoundRequest {
    SoundRequest {
        piece: PIECES[piece.min(1)].to_owned(),
        instrument: instrument.to_owned(),
        strings: vec![player],
        loudness_lufs: LOUDNESS,
    }
}

#[component]
fn Lecture(props: &LectureProps) -> Html {
    let (lesson, place) = (&props.lesson, &props.place);
    let sounds = use_sounds();
    let piece = use_state(|| 0_usize);
    // Which string sounds.
    let heard = use_state(|| None::<usize>);
    let with_keys = use_state(|| true);
    let made: Vec<Family> =
        place.families.iter().filter_map(|f| Family::parse(&f.report.family)).collect();
    let shown = lesson.shown(&made);
    let reports: Vec<&Report> = shown.iter().map(|i| &place.families[*i].report).collect();
    let players: Rc<Vec<Player>> = Rc::new(reports.iter().map(|r| player(r)).collect());
    let names: Rc<Vec<String>> =
        Rc::new(reports.iter().map(|r| say!("class-kind", family = &r.family)).collect());
    let hear = {
        let (play, heard, players) = (sounds.play.clone(), heard.setter(), players.clone());
        let (instrument, piece) = (lesson.instrument, *piece);
        Callback::from(move |i: usize| {
            if let Some(player) = players.get(i) {
                heard.set(Some(i));
                play.emit((vec![sound(instrument, piece, player.clone())], 0, true));
            }
        })
    };
    {
        // The listener stays, and asks for what holds now.
        let now = (lesson.clone(), hear.clone(), sounds.stop.clone(), *with_keys);
        let latest = use_mut_ref(|| now.clone());
        *latest.borrow_mut() = now;
        use_effect_with((), move |()| {
            let watch = keys::watch(move |key| {
                let (lesson, hear, stop, on) = latest.borrow().clone();
                on && act(key, &lesson, &hear, &stop)
            });
            move || drop(watch)
        });
    }
    let pluck = {
        let (play, heard, instrument) = (sounds.play.clone(), heard.setter(), lesson.instrument);
        Callback::from(move |player: Player| {
            heard.set(None);
            play.emit((vec![sound(instrument, 0, player)], 0, true));
        })
    };
    let letters = letters(place.notes.iter().map(String::as_str));
    let name = letters.get(place.string).map_or("", String::as_str);
    let step = lesson.about();
    let sounding = (*heard).filter(|_| sounds.hearing == Hearing::Playing);
    let gut = place
        .families
        .iter()
        .find(|f| place.string == 0 && f.report.family == "plain-gut" && f.grade != "everyday")
        .map(|f| &f.report);
    let chosen = {
        let with_keys = with_keys.setter();
        Callback::from(move |event: Event| {
            with_keys.set(field::ticked(&event).unwrap_or(true));
        })
    };
    html! {
        <article class="class">
            <div class="class-top">
                <p class="context">{ context(lesson, place, name) }</p>
                { steps(lesson) }
            </div>
            <header>
                <h1>{ words::title(step, &reports, name) }{ "." }</h1>
                <p class="lede">{ words::sentence(step) }</p>
            </header>
            if let Some(broke) = &props.broke {
                <p class="amiss" role="alert">{ say!("compare-broke", reason = broke) }</p>
            }
            if step == Step::Stretch {
                <h2 class="unseen">{ say!("inside-title") }</h2>
                <Inside id="class" strings={players.clone()} names={names.clone()} cut={false} on_pluck={pluck} />
            } else {
                { side_by_side(step, &reports, &names, sounding) }
            }
            if step == Step::Air {
                <Year strings={players.clone()} names={Rc::new(names.iter().map(|name| capital(name)).collect::<Vec<_>>())} called={Rc::new(reports.iter().map(|r| words::the_core(r)).collect::<Vec<_>>())} />
                <p class="aside">{ say!("year-apart") }</p>
            }
            <div class="class-work">
                <Ear names={names.clone()} sounds={sounds.clone()} heard={*heard} piece={*piece} on_hear={hear}
                    on_piece={let piece = piece.setter(); Callback::from(move |i| piece.set(i))} keys={*with_keys} />
                { questions(step, &reports, gut, name) }
            </div>
            <Choose lesson={lesson.clone()} letters={letters.clone()} families={made.clone()} shown={shown.clone()} />
            <section class="class-keys" aria-labelledby="class-keys">
                <h2 id="class-keys">{ say!("class-keys") }</h2>
                <p class="tick">
                    <input type="checkbox" id="class-keys-on" checked={*with_keys} onchange={chosen} />
                    <label for="class-keys-on">{ say!("class-keys-on") }</label>
                </p>
                <p>{ say!("class-keys-how") }</p>
            </section>
        </article>
    }
}

/// Does what a key stands for; false where there is nothing to do.
fn act(key: Key, lesson: &Lesson, hear: &Callback<usize>, stop: &Callback<()>) -> bool {
    let to = |lesson: Option<Lesson>| {
        lesson.is_some_and(|lesson| {
            address::go(&Route::Class(lesson).to_string());
            true
        })
    };
    match key {
        Key::On => to(lesson.next()),
        Key::Back => to(lesson.back()),
        Key::Number(n) => {
            hear.emit(n - 1);
            true
        }
        Key::Stop => {
            stop.emit(());
            true
        }
    }
}

/// Where the strings stand, in a line.
fn context(lesson: &Lesson, place: &Place, name: &str) -> String {
    say!(
        "class-context",
        instrument = capital(instrument_name(lesson.instrument)),
        name = name,
        length = units::mm(place.setting.sounding_length_m, 0),
        pitch = units::hertz(place.setting.pitch_hz),
    )
}

/// The way back and on, and how far one is.
fn steps(lesson: &Lesson) -> Html {
    let way = |to: Option<Lesson>, text: &'static str, class: &'static str| match to {
        Some(to) => {
            html! { <a class={classes!("button", class)} href={Route::Class(to).to_string()}>{ text }</a> }
        }
        // It keeps its room, so that the other one stays under the hand.
        None => html! { <span class="button quiet off" aria-hidden="true">{ text }</span> },
    };
    html! {
        <nav class="class-steps" aria-label={say!("class-steps")}>
            <span>{ say!("screen-of", screen = lesson.step + 1, all = Step::ALL.len()) }</span>
            { way(lesson.back(), say!("class-back"), "quiet") }
            { way(lesson.next(), say!("class-next"), "") }
        </nav>
    }
}

/// The cores side by side: what each is, drawn where that is the point, with the numbers of the step. The one that is
/// heard stands out.
fn side_by_side(
    step: Step,
    reports: &[&Report],
    names: &[String],
    sounding: Option<usize>,
) -> Html {
    let px_per_mm = magnification(reports.iter().map(|r| &r.construction), WIDEST_PX);
    let number = |report: &Report, key: &'static str, name: &str| {
        let q = report.numbers.get(key)?;
        let (least, most) = ends(reports.iter().filter_map(|r| r.numbers.get(key)));
        let w = units::written(key, q, 1);
        let label =
            say!("class-bar", name = name, number = property::name(key), value = w.within());
        Some(html! {
            <div class="class-number">
                <p class="means">{ property::name(key) }</p>
                <p class="figure">{ drift::alone(key, q) }</p>
                if !w.exact && w.low != w.high {
                    <p class="means">{ say!("class-range", low = &w.low, high = &w.high) }</p>
                }
                <RangeBar {label} {least} {most} value={q.value} range={(q.low, q.high)} />
            </div>
        })
    };
    html! {
        <>
            <ul class="class-cores">
                { for reports.iter().zip(names).enumerate().map(|(i, (report, name))| html! {
                    <li class={(sounding == Some(i)).then_some("sounding")}>
                        if step == Step::Inside {
                            <span class="likeness-room">
                                <Portrait construction={report.construction.clone()} {px_per_mm} label={portrait(name, &report.construction)} />
                            </span>
                        }
                        <h2>{ capital(name) }</h2>
                        if step == Step::Inside {
                            <p class="made-of">{ say!("class-made", core = capital(&core(&report.construction.core)), wound = windings(&report.construction.windings)) }</p>
                        }
                        <div class="class-numbers">
                            { for words::numbers(step).iter().filter_map(|key| number(report, key, name)) }
                        </div>
                    </li>
                }) }
            </ul>
            if step == Step::Inside {
                <ScaleBar {px_per_mm} room_px={220.0} />
            } else {
                <p class="how-to-read">{ say!("class-bars") }</p>
            }
        </>
    }
}

/// How far the sounds are, in words; nothing where there is nothing to tell.
pub fn heard(hearing: &Hearing) -> String {
    match hearing {
        Hearing::Making(_) => say!("hear-making").to_owned(),
        Hearing::Playing => say!("hear-plays").to_owned(),
        Hearing::Broke(why) if !why.is_empty() => say!("hear-broke", reason = why),
        Hearing::Still | Hearing::Broke(_) => String::new(),
    }
}

#[derive(Clone, PartialEq, Properties)]
struct EarProps {
    names: Rc<Vec<String>>,
    sounds: Listener,
    heard: Option<usize>,
    piece: usize,
    on_hear: Callback<usize>,
    on_piece: Callback<usize>,
    keys: bool,
}

/// The buttons that let a core be heard.
#[component]
fn Ear(props: &EarProps) -> Html {
    let busy = !matches!(props.sounds.hearing, Hearing::Still | Hearing::Broke(_));
    let on_piece = props
        .on_piece
        .reform(|event: Event| usize::from(field::text(&event).as_deref() == Some("1")));
    let now = match (&props.sounds.hearing, props.heard.and_then(|i| props.names.get(i))) {
        (Hearing::Playing, Some(name)) => say!("class-sounds", name = name),
        (hearing, _) => heard(hearing),
    };
    html! {
        <section class="class-ear" aria-labelledby="class-ear">
            <h2 id="class-ear">{ say!("class-ear") }</h2>
            <p class="actions">
                { for props.names.iter().enumerate().map(|(i, name)| html! {
                    <button type="button" class="button" onclick={props.on_hear.reform(move |_: MouseEvent| i)}>
                        if props.keys { <kbd aria-hidden="true">{ i + 1 }</kbd>{ " " } }
                        { capital(name) }
                    </button>
                }) }
                <button type="button" class="button quiet" disabled={!busy} onclick={props.sounds.stop.reform(|_: MouseEvent| ())}>
                    if props.keys { <kbd aria-hidden="true">{ say!("class-stop-key") }</kbd>{ " " } }
                    { say!("stop") }
                </button>
                <label>
                    { say!("class-piece") }{ " " }
                    <select onchange={on_piece}>
                        <option value="0" selected={props.piece == 0}>{ say!("class-plucked") }</option>
                        <option value="1" selected={props.piece == 1}>{ say!("class-bowed") }</option>
                    </select>
                </label>
            </p>
            <p role="status">{ now }</p>
            <p class="aside">{ say!("class-ear-how") }</p>
        </section>
    }
}

/// What a teacher can ask; the answers are folded away.
fn questions(step: Step, reports: &[&Report], gut: Option<&Report>, name: &str) -> Html {
    html! {
        <section class="class-questions" aria-labelledby="class-questions">
            <h2 id="class-questions">{ say!("class-questions") }</h2>
            { for words::questions(step, reports, gut, name).into_iter().map(|question| html! {
                // Another question is another thing to unfold.
                <details key={format!("{step:?} {}", question.answer)}>
                    <summary>{ question.ask }</summary>
                    <p>{ question.answer }</p>
                </details>
            }) }
        </section>
    }
}

#[derive(Clone, PartialEq, Properties)]
struct ChooseProps {
    lesson: Lesson,
    letters: Vec<String>,
    families: Vec<Family>,
    shown: Vec<usize>,
}

/// The instrument, the string and the cores.
#[component]
fn Choose(props: &ChooseProps) -> Html {
    let lesson = &props.lesson;
    let go = |lesson: Lesson| address::replace(&Route::Class(lesson).to_string());
    let on_instrument = {
        let lesson = lesson.clone();
        Callback::from(move |event: Event| {
            let text = field::text(&event).unwrap_or_default();
            if let Some(kind) = instrument::Kind::of(&text) {
                go(Lesson { instrument: kind.key, ..lesson.clone() });
            }
        })
    };
    let on_string = {
        let lesson = lesson.clone();
        Callback::from(move |event: Event| {
            if let Some(string) = field::text(&event).and_then(|text| text.parse().ok()) {
                go(Lesson { string, ..lesson.clone() });
            }
        })
    };
    let shown: Vec<Family> =
        props.shown.iter().filter_map(|i| props.families.get(*i)).copied().collect();
    let core = |family: Family| {
        let on = shown.contains(&family);
        let full = if on { shown.len() <= LEAST_CORES } else { shown.len() >= MOST_CORES };
        let next = lesson.toggled(&shown, family);
        let change = Callback::from(move |_: Event| go(next.clone()));
        html! {
            <label class="tile" key={family.key()}>
                <input type="checkbox" checked={on} disabled={full} onchange={change} />
                <span>{ capital(&say!("class-kind", family = family.key())) }</span>
            </label>
        }
    };
    html! {
        <section class="class-choose" aria-labelledby="class-choose">
            <h2 id="class-choose">{ say!("class-choose") }</h2>
            <p class="field">
                <label for="class-instrument">{ say!("part-instrument") }</label>
                <select id="class-instrument" onchange={on_instrument}>
                    { for instrument::ALL.iter().map(|kind| html! {
                        <option value={kind.key} selected={kind.key == lesson.instrument}>{ capital(instrument_name(kind.key)) }</option>
                    }) }
                </select>
            </p>
            <p class="field">
                <label for="class-string">{ say!("class-string") }</label>
                <select id="class-string" onchange={on_string}>
                    { for props.letters.iter().enumerate().map(|(i, name)| html! {
                        <option value={i.to_string()} selected={i == lesson.string}>{ name }</option>
                    }) }
                </select>
            </p>
            <fieldset>
                <legend>{ say!("class-cores") }</legend>
                <div class="tiles">{ for props.families.iter().map(|family| core(*family)) }</div>
            </fieldset>
        </section>
    }
}
