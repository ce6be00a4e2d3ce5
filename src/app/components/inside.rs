//! A core's inside story: strings cut through and from the side, pulled by a slider, and heard before and after.

use std::rc::Rc;

use protocol::reply::{Reply, Stretched};
use protocol::request::{Player, Request, StretchRequest};
use yew::prelude::*;

use super::portrait::{Portrait, ScaleBar, magnification};
use super::section::outer_mm;
use super::side::{NATURAL, THICKEST, side, times};
use crate::hooks::use_asked;
use crate::letters;
use crate::platform::field;
use crate::units;
use crate::words::naming::{capital, list, portrait};
use crate::words::{lesson as words, say};

/// Properties of [`Inside`].
#[derive(Clone, PartialEq, Properties)]
pub struct InsideProps {
    /// Names the fields, of which a page may have more than one.
    pub id: AttrValue,
    /// The strings, at one place.
    pub strings: Rc<Vec<Player>>,
    /// What they are called.
    pub names: Rc<Vec<String>>,
    /// Whether each is drawn cut through as well.
    #[prop_or(true)]
    pub cut: bool,
    /// One is to be plucked.
    pub on_pluck: Callback<Player>,
}

/// How wide the thickest string is drawn where it is cut through, in pixels.
const WIDEST_PX: f64 = 84.0;

/// How far the slider goes until the model has said when the strings are slack, in millimetres.
const AT_FIRST: (f64, f64) = (-30.0, 3.0);

/// The ends of the slider in whole millimetres: all of them slack, and a bit above pitch.
fn ends(strings: &[Stretched]) -> (f64, f64) {
    let slack = strings.iter().map(|s| s.slack_m.value * 1e3).fold(0.0, f64::max);
    let whole = strings.iter().map(|s| s.whole_length_m).fold(0.0, f64::max);
    // A hundred-and-fiftieth of the length is far above the pitch of a steel string.
    (-libm::ceil(slack + 0.5), libm::ceil(whole * 1e3 / 150.0))
}

/// The strings under the pull.
#[component]
pub fn Inside(props: &InsideProps) -> Html {
    let pull = use_state(|| 0.0_f64);
    // What stands in the number's field, while it is typed.
    let typed = use_state(|| None::<String>);
    let request = StretchRequest { strings: props.strings.to_vec(), pull_m: *pull / 1e3 };
    let asked = use_asked(Some(Request::Stretch(Box::new(request))));
    let found: &[Stretched] = match asked.reply.as_deref() {
        Some(Reply::Stretch(found)) if found.strings.len() == props.strings.len() => &found.strings,
        _ => &[],
    };
    let (least, most) = if found.is_empty() { AT_FIRST } else { ends(found) };
    let set = {
        let (pull, typed) = (pull.setter(), typed.setter());
        Callback::from(move |mm: f64| {
            pull.set(mm.clamp(least, most));
            typed.set(None);
        })
    };
    let slide = {
        let set = set.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(mm) = field::text(&event).and_then(|text| letters::number(&text)) {
                set.emit(mm);
            }
        })
    };
    let wrong = typed.as_ref().is_some_and(|text| read(text, least, most).is_none());
    let write = {
        let (pull, typed) = (pull.setter(), typed.setter());
        Callback::from(move |event: InputEvent| {
            let Some(text) = field::text(&event) else { return };
            if let Some(mm) = read(&text, least, most) {
                pull.set(mm);
            }
            typed.set(Some(text));
        })
    };
    let to = |mm: f64| set.reform(move |_: MouseEvent| mm);
    let (id, number) = (format!("{}-pull", props.id), format!("{}-mm", props.id));
    let all: Vec<String> = found
        .iter()
        .zip(props.names.iter())
        .map(|(now, name)| say!("inside-each", name = name, now = words::state(now)))
        .collect();
    let shown = units::fixed(*pull, 1);
    let said = say!("inside-value", mm = units::with_unit(&shown, "mm"), strings = list(&all));
    html! {
        <div class="inside">
            <div class="pull">
                <label for={id.clone()}>{ say!("inside-pull") }</label>
                <input type="range" id={id} min={least.to_string()} max={most.to_string()} step="0.1"
                    value={format!("{:.1}", *pull)} aria-valuetext={said} oninput={slide} />
                <div class="number">
                    <input type="text" inputmode="decimal" autocomplete="off" id={number.clone()} class="small"
                        value={(*typed).clone().unwrap_or(shown)} oninput={write} aria-label={say!("inside-number")}
                        aria-invalid={wrong.then_some("true")} aria-describedby={wrong.then(|| format!("{number}-fault"))} />
                    <span class="unit">{ "mm" }</span>
                    <output for={number.clone()}>{ word(*pull, found) }</output>
                    <button type="button" class="button quiet" onclick={to(least)}>{ say!("inside-to-slack") }</button>
                    <button type="button" class="button quiet" onclick={to(0.0)}>{ say!("inside-to-pitch") }</button>
                    <button type="button" class="button quiet" onclick={to(1.0)}>{ say!("inside-to-one") }</button>
                </div>
                if wrong {
                    <p class="slip" id={format!("{number}-fault")}>{ say!("inside-fault", low = units::fixed(least, 0), high = units::fixed(most, 0)) }</p>
                }
            </div>
            if let Some(broke) = &asked.broke {
                <p class="amiss" role="alert">{ say!("compare-broke", reason = broke) }</p>
            }
            if found.is_empty() {
                <p role="status">{ say!("compare-computing") }</p>
            } else {
                { pieces(props, found) }
            }
        </div>
    }
}

/// A number of millimetres, with a point or a comma.
fn read(text: &str, least: f64, most: f64) -> Option<f64> {
    let text = text.trim().replace(',', ".").replace('−', "-");
    letters::number(&text).filter(|mm| (least..=most).contains(mm))
}

/// Where the strings are, in a word.
fn word(pull: f64, found: &[Stretched]) -> &'static str {
    let slack = !found.is_empty() && found.iter().all(|now| now.above_cent.is_none());
    if slack {
        say!("inside-word-slack")
    } else if pull.abs() < 0.05 {
        say!("inside-word-pitch")
    } else if pull < 0.0 {
        say!("inside-word-back")
    } else {
        say!("inside-word-further")
    }
}

/// The strings side by side, all to one scale.
fn pieces(props: &InsideProps, found: &[Stretched]) -> Html {
    let thickest = props.strings.iter().map(|s| outer_mm(&s.construction)).fold(0.1, f64::max);
    let scale = THICKEST / thickest;
    let px_per_mm = magnification(props.strings.iter().map(|s| &s.construction), WIDEST_PX);
    let piece = NATURAL / scale;
    // As large whatever the pull, so that the slider alone moves the drawing.
    let furthest =
        found.iter().map(|s| (s.slack_m.value + 0.01 * s.whole_length_m) / s.whole_length_m);
    let times = times(furthest.fold(0.0, f64::max));
    let one = |(i, ((player, now), name)): (usize, ((&Player, &Stretched), &String))| {
        let line = words::pulled(now);
        let label = say!("inside-picture", name = name, now = &line);
        html! {
            <li key={i}>
                <div class="piece">
                    if props.cut {
                        <span class="likeness-room">
                            <Portrait construction={player.construction.clone()} {px_per_mm} label={portrait(name, &player.construction)} />
                        </span>
                    }
                    { side(&format!("{}-{i}", props.id), &player.construction, now, (scale, times), label) }
                </div>
                <div>
                    <h3>{ capital(name) }</h3>
                    <p class="now">{ line }</p>
                    { plucks(props, player, now, name) }
                </div>
            </li>
        }
    };
    let strings = props.strings.iter().zip(found).zip(props.names.iter()).enumerate();
    html! {
        <>
            <ul class="pieces">{ for strings.map(one) }</ul>
            if props.cut { <ScaleBar {px_per_mm} room_px={90.0} /> }
            <p class="how-to-read">{ say!("inside-how", piece = units::mm(piece / 1e3, 1), times = units::fixed(times, 0)) }</p>
        </>
    }
}

/// The buttons that pluck a string at its pitch, and as it is pulled.
fn plucks(props: &InsideProps, player: &Player, now: &Stretched, name: &str) -> Html {
    let pluck = |pitch: f64| {
        let mut player = player.clone();
        player.setting.pitch_hz = pitch;
        props.on_pluck.reform(move |_: MouseEvent| player.clone())
    };
    // What the model plays, and what is still a string.
    let pulled =
        now.pitch_hz.filter(|hz| (25.0..=1000.0).contains(hz) && now.breaking_share.value < 1.0);
    let button = |text: &'static str, pitch: Option<f64>| {
        html! {
            <button type="button" class="button quiet" disabled={pitch.is_none()} onclick={pluck(pitch.unwrap_or(player.setting.pitch_hz))}>
                { text }<span class="unseen">{ format!(" {name}") }</span>
            </button>
        }
    };
    html! {
        <p class="plucks">
            { button(say!("inside-before"), Some(player.setting.pitch_hz)) }
            { button(say!("inside-after"), pulled) }
        </p>
    }
}
