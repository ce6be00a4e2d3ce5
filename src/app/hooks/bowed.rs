//! Asks for maps of strings under the bow, row by row, and for their sounds; and stops asking.

use std::cell::{Cell, RefCell};
use std::collections::VecDeque;
use std::rc::Rc;

use protocol::reply::{BowMap, Reply, Sound};
use protocol::request::{BowMapRequest, Player, Request, SoundRequest};
use wasm_bindgen_futures::spawn_local;
use yew::prelude::*;

use super::model::{AskError, Model};
use crate::platform::audio::{Deck, Samples};
use crate::platform::worker::{self, BridgeError};
use crate::words::{fault, say};

/// Rows and columns of a map: as many fields as one can tell apart on a phone.
const COUNT: usize = 24;

/// How far the maps of one or two strings are.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Maps {
    /// Counts runs, so that a late row of an earlier one is told apart.
    run: u32,
    /// Which map: `place` or `attack`.
    pub map: AttrValue,
    /// String by string, as far as it has come.
    pub found: Vec<Option<Rc<BowMap>>>,
    /// String by string, the width of its window in decibels, if there is one; nothing while it is not known.
    pub windows: Vec<Option<Option<f64>>>,
    /// Answers that are owed, of how many.
    pub owed: (usize, usize),
    /// The person stopped it.
    pub stopped: bool,
    /// What went wrong.
    pub broke: Option<String>,
}

impl Maps {
    /// Whether more is to come.
    #[must_use]
    pub fn running(&self) -> bool {
        self.owed.0 > 0 && !self.stopped && self.broke.is_none()
    }
}

/// Something that happened to maps.
#[derive(Debug)]
pub enum MapStep {
    /// They were begun.
    Began {
        /// Which run.
        run: u32,
        /// Which map.
        map: AttrValue,
        /// Of how many strings.
        strings: usize,
        /// How many answers are owed.
        owed: usize,
    },
    /// A part of one came.
    Came {
        /// Of which run.
        run: u32,
        /// Of which string.
        string: usize,
        /// The part.
        map: Box<BowMap>,
    },
    /// One could not be computed.
    Broke {
        /// Which run.
        run: u32,
        /// The reason in words.
        why: String,
    },
    /// The person stopped it.
    Stopped,
}

impl Reducible for Maps {
    type Action = MapStep;

    fn reduce(self: Rc<Self>, step: MapStep) -> Rc<Self> {
        let mut next = (*self).clone();
        match step {
            MapStep::Began { run, map, strings, owed } => {
                next = Self {
                    run,
                    map,
                    found: vec![None; strings],
                    windows: vec![None; strings],
                    owed: (owed, owed),
                    ..Self::default()
                };
            }
            MapStep::Came { run, string, map } if run == next.run && next.running() => {
                next.owed.0 -= 1;
                if map.map == "window" {
                    next.windows[string] = Some(map.window.map(|window| window.width_db));
                } else {
                    let mut whole = match next.found[string].take() {
                        Some(whole) => (*whole).clone(),
                        None => BowMap { rows: Vec::new(), ..(*map).clone() },
                    };
                    whole.rows.extend(map.rows);
                    next.found[string] = Some(Rc::new(whole));
                }
            }
            MapStep::Broke { run, why } if run == next.run => next.broke = Some(why),
            MapStep::Stopped => next.stopped = true,
            MapStep::Came { .. } | MapStep::Broke { .. } => return self,
        }
        Rc::new(next)
    }
}

/// Maps as they come, how to begin and how to stop.
#[derive(Clone, Debug, PartialEq)]
pub struct Mapper {
    /// How far it is.
    pub maps: UseReducerHandle<Maps>,
    /// Begins a map of these strings on this instrument.
    pub start: Callback<(AttrValue, AttrValue, Vec<Player>)>,
    /// Gives it up.
    pub stop: Callback<()>,
}

type Job = (usize, BowMapRequest);

/// Maps of one or two strings. What is asked for is given up with the component.
#[hook]
pub fn use_mapper() -> Mapper {
    let maps = use_reducer(Maps::default);
    let jobs = use_mut_ref(VecDeque::<Job>::new);
    {
        let jobs = jobs.clone();
        use_effect_with((), move |()| move || jobs.borrow_mut().clear());
    }
    let start = {
        let (maps, jobs) = (maps.dispatcher(), jobs.clone());
        Callback::from(move |(map, instrument, strings): (AttrValue, AttrValue, Vec<Player>)| {
            let run = number();
            let request = |map: &str, row: Option<usize>, player: &Player| BowMapRequest {
                map: map.to_owned(),
                instrument: instrument.to_string(),
                construction: player.construction.clone(),
                setting: player.setting.clone(),
                // A window has neither rows nor columns.
                count: row.map(|_| COUNT),
                row,
            };
            let mut all = VecDeque::new();
            for row in 0..COUNT {
                for (i, player) in strings.iter().enumerate() {
                    all.push_back((i, request(&map, Some(row), player)));
                }
            }
            if map == "place" {
                for (i, player) in strings.iter().enumerate() {
                    all.push_back((i, request("window", None, player)));
                }
            }
            maps.dispatch(MapStep::Began { run, map, strings: strings.len(), owed: all.len() });
            *jobs.borrow_mut() = all;
            for bridge in worker::of_maps() {
                let (model, maps, jobs) = (Model::of(bridge), maps.clone(), jobs.clone());
                spawn_local(async move { work(run, &model, &maps, &jobs).await });
            }
        })
    };
    let stop = {
        let maps = maps.dispatcher();
        Callback::from(move |()| {
            // The row that is being computed is over in a moment, and nobody waits for it.
            jobs.borrow_mut().clear();
            maps.dispatch(MapStep::Stopped);
        })
    };
    Mapper { maps, start, stop }
}

/// One worker's share of the rows.
async fn work(
    run: u32,
    model: &Model,
    maps: &UseReducerDispatcher<Maps>,
    jobs: &Rc<RefCell<VecDeque<Job>>>,
) {
    loop {
        let Some((string, request)) = jobs.borrow_mut().pop_front() else { return };
        let why = match model.ask(&Request::BowMap(Box::new(request))).await {
            Ok(Reply::BowMap(map)) => {
                maps.dispatch(MapStep::Came { run, string, map });
                continue;
            }
            Ok(reply) => unexpected(&reply),
            Err(error) => error.to_string(),
        };
        jobs.borrow_mut().clear();
        maps.dispatch(MapStep::Broke { run, why });
        return;
    }
}

fn unexpected(reply: &Reply) -> String {
    match reply {
        Reply::Refused(refused) => refused.faults.first().map(fault::told).unwrap_or_default(),
        _ => say!("compare-other-answer").to_owned(),
    }
}

/// A number that no earlier run has.
fn number() -> u32 {
    thread_local! {
        static LAST: Cell<u32> = const { Cell::new(0) };
    }
    LAST.set(LAST.get().wrapping_add(1));
    LAST.get()
}

/// A sound that was made.
#[derive(Clone, Debug, PartialEq)]
pub struct Made {
    /// What was asked for.
    pub request: Rc<SoundRequest>,
    /// What came, without its samples.
    pub sound: Rc<Sound>,
    /// Its samples.
    pub samples: Samples,
}

/// How far the sounds are.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Hearing {
    /// Nothing is made or played.
    #[default]
    Still,
    /// They are being made: the share that is done.
    Making(f64),
    /// They play.
    Playing,
    /// They could not be made or played.
    Broke(String),
}

/// Sounds, how to begin and how to stop.
#[derive(Clone, Debug, PartialEq)]
pub struct Listener {
    /// How far it is.
    pub hearing: Hearing,
    /// The sounds that were made last, in the order in which they were asked for.
    pub made: Rc<Vec<Made>>,
    /// Makes these sounds, unless they are there, and plays them at the same moment.
    pub play: Callback<(Vec<SoundRequest>, usize, bool)>,
    /// Lets another one be heard, as loud as the others or as loud as it is.
    pub hear: Callback<(usize, bool)>,
    /// Stops making and playing.
    pub stop: Callback<()>,
}

/// By which factors sounds are turned down so that they differ as by themselves; the loudest stays.
#[must_use]
pub fn factors(natural_lufs: &[f64], equal: bool) -> Vec<f32> {
    let loudest = natural_lufs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let factor = |own: &f64| {
        if equal { 1.0 } else { libm::pow(10.0, (own - loudest) / 20.0) as f32 }
    };
    natural_lufs.iter().map(factor).collect()
}

fn factors_of(made: &[Made], equal: bool) -> Vec<f32> {
    let natural: Vec<f64> = made.iter().map(|made| made.sound.natural_lufs).collect();
    factors(&natural, equal)
}

/// Sounds that are kept, so that one that was heard is not made again: some 15 MB.
const KEPT: usize = 12;

/// Sounds of strings, made in a worker of their own.
#[hook]
pub fn use_sounds() -> Listener {
    let hearing = use_state(Hearing::default);
    let made = use_state(Rc::<Vec<Made>>::default);
    let kept = use_mut_ref(Vec::<Made>::new);
    let deck = use_mut_ref(|| None::<Deck>);
    // The run that may still speak.
    let run = use_mut_ref(|| 0_u32);
    let making = use_mut_ref(|| false);
    let end: Callback<()> = {
        let (deck, run, making) = (deck.clone(), run.clone(), making.clone());
        Callback::from(move |()| {
            *run.borrow_mut() = number();
            drop(deck.borrow_mut().take());
            if making.replace(false) {
                worker::of_sounds().cancel();
            }
        })
    };
    {
        let end = end.clone();
        use_effect_with((), move |()| move || end.emit(()));
    }
    let stop = {
        let (hearing, end) = (hearing.setter(), end.clone());
        Callback::from(move |()| {
            end.emit(());
            hearing.set(Hearing::Still);
        })
    };
    let hear = {
        let (deck, made) = (deck.clone(), made.clone());
        Callback::from(move |(heard, equal): (usize, bool)| {
            if let Some(deck) = deck.borrow().as_ref() {
                deck.hear(heard, &factors_of(&made, equal));
            }
        })
    };
    let play = {
        let (hearing, made) = (hearing.setter(), made.setter());
        Callback::from(move |(requests, heard, equal): (Vec<SoundRequest>, usize, bool)| {
            end.emit(());
            let own = *run.borrow();
            *making.borrow_mut() = true;
            hearing.set(Hearing::Making(0.0));
            let (hearing, made) = (hearing.clone(), made.clone());
            let (kept, deck, run, making) =
                (kept.clone(), deck.clone(), run.clone(), making.clone());
            spawn_local(async move {
                let mut all = Vec::new();
                let count = requests.len() as f64;
                for (i, request) in requests.into_iter().enumerate() {
                    let there = kept.borrow().iter().find(|m| *m.request == request).cloned();
                    let one = match there {
                        Some(one) => Ok(one),
                        None => {
                            let (hearing, run) = (hearing.clone(), run.clone());
                            let told = Rc::new(move |share: f64| {
                                if *run.borrow() == own {
                                    hearing.set(Hearing::Making((i as f64 + share) / count));
                                }
                            });
                            make(request, told).await
                        }
                    };
                    if *run.borrow() != own {
                        return;
                    }
                    match one {
                        Ok(one) => {
                            let mut kept = kept.borrow_mut();
                            if !kept.contains(&one) {
                                kept.push(one.clone());
                                if kept.len() > KEPT {
                                    kept.remove(0);
                                }
                            }
                            drop(kept);
                            all.push(one);
                        }
                        Err(why) => {
                            *making.borrow_mut() = false;
                            hearing.set(Hearing::Broke(why));
                            return;
                        }
                    }
                }
                *making.borrow_mut() = false;
                let sounds: Vec<(Samples, f32)> = all
                    .iter()
                    .zip(factors_of(&all, equal))
                    .map(|(made, factor)| (made.samples.clone(), factor))
                    .collect();
                let rate = all.first().map_or(48_000, |made| made.sound.rate_hz);
                made.set(Rc::new(all));
                let over = {
                    let (hearing, run) = (hearing.clone(), run.clone());
                    Rc::new(move || {
                        if *run.borrow() == own {
                            hearing.set(Hearing::Still);
                        }
                    })
                };
                match Deck::start(&sounds, rate, heard, over) {
                    Ok(playing) => {
                        *deck.borrow_mut() = Some(playing);
                        hearing.set(Hearing::Playing);
                    }
                    Err(why) => hearing.set(Hearing::Broke(why)),
                }
            });
        })
    };
    Listener { hearing: (*hearing).clone(), made: (*made).clone(), play, hear, stop }
}

async fn make(request: SoundRequest, told: Rc<dyn Fn(f64)>) -> Result<Made, String> {
    let asked = Request::Sound(Box::new(request.clone()));
    let (reply, samples) = Model::of(worker::of_sounds()).ask_sound(&asked, told).await.map_err(
        |error: AskError| match error {
            AskError::Bridge(BridgeError::Cancelled) => String::new(),
            error => error.to_string(),
        },
    )?;
    match (reply, samples) {
        (Reply::Sound(sound), Some(samples)) => {
            Ok(Made { request: Rc::new(request), sound: Rc::new(*sound), samples })
        }
        (reply, _) => Err(unexpected(&reply)),
    }
}
