//! Strings to the ear: made ahead, played side by side, and switched between at the same moment.

use std::rc::Rc;

use protocol::request::{Player, SoundRequest};
use yew::prelude::*;

use crate::hooks::{Hearing, Made, factors, use_sounds};
use crate::platform::{field, files};
use crate::wave;
use crate::words::bowed::{self, PIECES};
use crate::words::say;

/// Strings that can be played together: a set, or one string.
#[derive(Clone, Debug, PartialEq)]
pub struct Played {
    /// What they are called: "this set".
    pub name: AttrValue,
    /// The strings.
    pub strings: Vec<Player>,
}

/// Things that are heard against each other: the whole set, or one string of either kind.
#[derive(Clone, Debug, PartialEq)]
pub struct ListeningGroup {
    /// What it is called: "the whole set".
    pub name: AttrValue,
    /// What can be played, the first being the one that was chosen.
    pub played: Vec<Played>,
}

/// Properties of [`Listening`].
#[derive(Clone, PartialEq, Properties)]
pub struct ListeningProps {
    /// Names the fields, of which a page may have more than one.
    pub id: AttrValue,
    /// The instrument, by its key.
    pub instrument: AttrValue,
    /// What can be heard against each other.
    pub groups: Rc<Vec<ListeningGroup>>,
}

/// Loudness to which sounds are brought, LUFS: that of broadcasts.
const LOUDNESS: f64 = -23.0;

/// What is chosen in the lists.
#[derive(Clone, Copy, PartialEq)]
struct Chosen {
    piece: usize,
    group: usize,
    /// Which two are heard against each other; the same if there is but one.
    two: [usize; 2],
    /// Which of the two is heard.
    heard: usize,
    equal: bool,
}

/// Strings to the ear.
#[component]
pub fn Listening(props: &ListeningProps) -> Html {
    let sounds = use_sounds();
    let chosen = use_state(|| Chosen { piece: 0, group: 0, two: [0, 1], heard: 0, equal: true });
    let amiss = use_state(|| None::<String>);
    {
        let (stop, chosen) = (sounds.stop.clone(), chosen.clone());
        let before = use_mut_ref(|| props.groups.clone());
        use_effect_with(props.groups.clone(), move |groups| {
            if *before.borrow() != *groups {
                *before.borrow_mut() = groups.clone();
                stop.emit(());
                chosen.set(Chosen { group: 0, two: [0, 1], heard: 0, ..*chosen });
            }
        });
    }
    let Some(group) = props.groups.get(chosen.group).or(props.groups.first()) else {
        return Html::default();
    };
    let last = group.played.len().saturating_sub(1);
    let two = chosen.two.map(|i| i.min(last));
    let list = |name: &str,
                label: &str,
                options: Vec<AttrValue>,
                now: usize,
                set: fn(&mut Chosen, usize)| {
        let (chosen, stop) = (chosen.clone(), sounds.stop.clone());
        let onchange = Callback::from(move |event: Event| {
            if let Some(i) = field::text(&event).and_then(|text| text.parse().ok()) {
                let mut next = *chosen;
                set(&mut next, i);
                // What plays is of the choice before.
                stop.emit(());
                chosen.set(next);
            }
        });
        let id = format!("{}-{name}", props.id);
        html! {
            <p class="field">
                <label for={id.clone()}>{ label.to_owned() }</label>
                <select {id} {onchange}>
                    { for options.into_iter().enumerate().map(|(i, words)| html! {
                        <option value={i.to_string()} selected={i == now}>{ words }</option>
                    }) }
                </select>
            </p>
        }
    };
    let names = || group.played.iter().map(|played| played.name.clone()).collect::<Vec<_>>();
    let requests: Vec<SoundRequest> = both(two)
        .into_iter()
        .filter_map(|i| {
            Some(SoundRequest {
                piece: (*PIECES.get(chosen.piece)?).to_owned(),
                instrument: props.instrument.to_string(),
                strings: group.played.get(i)?.strings.clone(),
                loudness_lufs: LOUDNESS,
            })
        })
        .collect();
    let ready = made_of(&sounds.made, &requests);
    let play = {
        let (sounds, chosen, requests) = (sounds.clone(), *chosen, requests.clone());
        Callback::from(move |_: MouseEvent| {
            sounds.play.emit((
                requests.clone(),
                chosen.heard.min(requests.len() - 1),
                chosen.equal,
            ));
        })
    };
    let hear = |heard: usize| {
        let (sounds, chosen) = (sounds.clone(), chosen.clone());
        Callback::from(move |_: MouseEvent| {
            sounds.hear.emit((heard, chosen.equal));
            chosen.set(Chosen { heard, ..*chosen });
        })
    };
    let level = {
        let (sounds, chosen) = (sounds.clone(), chosen.clone());
        Callback::from(move |event: Event| {
            let equal = field::ticked(&event).unwrap_or(true);
            sounds.hear.emit((chosen.heard, equal));
            chosen.set(Chosen { equal, ..*chosen });
        })
    };
    let save = |i: usize, name: &str| {
        let (made, amiss, equal) = (sounds.made.clone(), amiss.setter(), chosen.equal);
        let file = format!(
            "{}-{}.wav",
            PIECES[chosen.piece.min(PIECES.len() - 1)],
            name.replace(' ', "-").replace('’', "")
        );
        Callback::from(move |_: MouseEvent| {
            let natural: Vec<f64> = made.iter().map(|made| made.sound.natural_lufs).collect();
            let factor = factors(&natural, equal).get(i).copied().unwrap_or(1.0);
            let Some(made) = made.get(i) else { return };
            let bytes = wave::file(&made.samples.numbers(), made.sound.rate_hz, factor);
            amiss.set(files::save_bytes(&file, "audio/wav", &bytes).err());
        })
    };
    let busy = matches!(sounds.hearing, Hearing::Making(_));
    let playing = sounds.hearing == Hearing::Playing;
    let groups = props.groups.iter().map(|group| group.name.clone()).collect::<Vec<_>>();
    let pieces = PIECES.iter().map(|key| AttrValue::from(bowed::piece(key))).collect();
    html! {
        <div class="listening">
            <p>{ say!("hear-lead") }</p>
            <div class="choices">
                { list("piece", say!("hear-piece"), pieces, chosen.piece, |c, i| c.piece = i) }
                if groups.len() > 1 {
                    { list("bench", say!("hear-on"), groups, chosen.group, |c, i| { c.group = i; c.two = [0, 1]; c.heard = 0; }) }
                }
                { list("first", say!("hear-one"), names(), two[0], |c, i| c.two[0] = i) }
                if last > 0 {
                    { list("second", say!("hear-against"), names(), two[1], |c, i| c.two[1] = i) }
                }
            </div>
            <p class="actions">
                <button type="button" class="button" onclick={play} disabled={busy}>{ say!("hear-play") }</button>
                <button type="button" class="button quiet" onclick={sounds.stop.reform(|_: MouseEvent| ())} disabled={!busy && !playing}>{ say!("stop") }</button>
                if requests.len() > 1 {
                    <span class="switch" role="group" aria-label={say!("hear-which")}>
                        { for both(two).into_iter().enumerate().map(|(side, i)| html! {
                            <button type="button" class="button quiet" aria-pressed={(chosen.heard == side).to_string()} onclick={hear(side)}>
                                { say!("hear-this", name = group.played.get(i).map_or("", |p| p.name.as_str())) }
                            </button>
                        }) }
                    </span>
                }
            </p>
            <p class="tick">
                <input type="checkbox" id={format!("{}-equal", props.id)} checked={chosen.equal} onchange={level} />
                <label for={format!("{}-equal", props.id)}>{ say!("hear-level") }</label>
            </p>
            if let Hearing::Making(share) = sounds.hearing {
                <progress max="100" value={format!("{:.0}", 100.0 * share)} aria-label={say!("hear-progress")} />
            }
            <div role="status">
                { match &sounds.hearing {
                    Hearing::Making(_) => html! { <p>{ say!("hear-making") }</p> },
                    Hearing::Playing => html! { <p>{ say!("hear-plays") }</p> },
                    Hearing::Broke(why) if !why.is_empty() => html! { <p class="amiss">{ say!("hear-broke", reason = why) }</p> },
                    _ => Html::default(),
                } }
                if let Some(amiss) = &*amiss {
                    <p class="amiss">{ amiss }</p>
                }
            </div>
            if let Some(ready) = ready {
                if ready.iter().any(|made| !made.sound.clean) {
                    <p class="aside">{ say!("hear-unclean") }</p>
                }
                <p class="actions">
                    { for both(two).into_iter().enumerate().map(|(side, i)| {
                        let name = group.played.get(i).map_or("", |p| p.name.as_str());
                        html! {
                            <button type="button" class="button quiet" onclick={save(side, name)}>{ say!("hear-download", name = name) }</button>
                        }
                    }) }
                </p>
            }
        </div>
    }
}

/// Two that are heard against each other, or one against nothing.
fn both(two: [usize; 2]) -> Vec<usize> {
    if two[0] == two[1] { vec![two[0]] } else { two.to_vec() }
}

/// What was made, if it is what is asked for now.
fn made_of<'a>(made: &'a [Made], requests: &[SoundRequest]) -> Option<&'a [Made]> {
    let same = made.len() == requests.len()
        && made.iter().zip(requests).all(|(made, request)| *made.request == *request);
    (same && !made.is_empty()).then_some(made)
}
