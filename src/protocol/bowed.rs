//! Maps of where a string speaks under the bow, and sounds.

use strings::answer_to_bow::{PLACE, SPEED};
use strings::error::{self, Fault};
use strings::instrument::{Kind, VIOLIN};
use strings::simulate::level::RATE;
use strings::simulate::map::{AttackMap, PlaceMap, Row, window_about};
use strings::simulate::sound::{self as sounds, Piece};
use strings::simulate::{Body, Judgement, Law, Sounding};

use crate::allowed::{COUNTS, LOUDNESSES, MAPS, one_of, words};
use crate::convert;
use crate::convert::{players, taken};
use crate::reply::{BowCell, BowMap, BowRow, BowWindow, Reply, Sound};
use crate::request::{BowMapRequest, SoundRequest};

/// Rows and columns of a map, if they are left out.
const USUAL_COUNT: usize = 24;

fn kind(key: &str, faults: &mut Vec<Fault>) -> &'static Kind {
    Kind::of(key).unwrap_or_else(|| {
        let allowed = one_of(&words("instrument"));
        faults.push(Fault::new("instrument", format!("\"{key}\""), allowed));
        &VIOLIN
    })
}

/// Answers a request for a map.
pub(crate) fn map(r: &BowMapRequest) -> Result<Reply, Vec<Fault>> {
    let mut faults = Vec::new();
    let kind = kind(&r.instrument, &mut faults);
    let construction = taken(convert::construction(&r.construction, "construction"), &mut faults);
    let setting = taken(convert::setting(&r.setting, "setting"), &mut faults);
    if !MAPS.contains(&r.map.as_str()) {
        faults.push(Fault::new("map", format!("\"{}\"", r.map), one_of(&MAPS)));
    }
    let count = grid(r, &mut faults);
    let (Some(construction), Some(setting)) = (construction, setting) else { return Err(faults) };
    if !faults.is_empty() {
        return Err(faults);
    }
    let string = Sounding::of(&construction, &setting);
    let body = Body::generic(kind, &setting);
    let rows = r.row.map_or(0..count, |row| row..row + 1);
    let mut reply = BowMap {
        map: r.map.clone(),
        forces_n: Vec::new(),
        at: Vec::new(),
        rows: Vec::new(),
        window: None,
    };
    match r.map.as_str() {
        "place" => {
            let resistance = setting.bridge_resistance.get();
            let map = PlaceMap::usual(string, body, resistance, SPEED, count);
            reply.rows = rows.filter_map(|i| Some(row(i, &map.row(i)?))).collect();
            (reply.at, reply.forces_n) = (map.places, map.forces);
        }
        "attack" => {
            let map = AttackMap::usual(string, body, PLACE, count);
            reply.rows = rows.filter_map(|i| Some(row(i, &map.row(i)?))).collect();
            (reply.at, reply.forces_n) = (map.accelerations, map.forces);
        }
        _ => {
            let window = window_about(&string, &body, Law::Hyperbolic, SPEED, PLACE);
            reply.window = window.map(|w| BowWindow {
                least_n: w.least,
                greatest_n: w.greatest,
                width_db: w.decibels(),
            });
        }
    }
    Ok(Reply::BowMap(Box::new(reply)))
}

/// How many rows and columns a map has.
fn grid(r: &BowMapRequest, faults: &mut Vec<Fault>) -> usize {
    let count = r.count.unwrap_or(USUAL_COUNT);
    if r.map == "window" {
        for (name, given) in [("count", r.count), ("row", r.row)] {
            let fault = |given| Fault::new(name, given, "nothing: a window has no rows");
            faults.extend(given.map(fault));
        }
    } else if !(COUNTS.0..=COUNTS.1).contains(&count) {
        let allowed = format!("{} to {} rows and columns", COUNTS.0, COUNTS.1);
        faults.push(Fault::new("count", count, allowed));
    } else if let Some(row) = r.row.filter(|row| *row >= count) {
        faults.push(Fault::new("row", row, format!("0 to {}", count - 1)));
    }
    count
}

fn row(i: usize, row: &Row) -> BowRow {
    let cell = |note: &Judgement| BowCell {
        regime: note.regime.key().to_owned(),
        periods: note.periods_to_helmholtz.is_finite().then_some(note.periods_to_helmholtz),
        cents: note.cents,
    };
    BowRow {
        row: i,
        greatest_n: row.limits.0,
        least_n: row.limits.1,
        cells: row.cells.iter().map(cell).collect(),
    }
}

/// Answers a request for a sound, and tells after each note which share is done.
pub(crate) fn sound(r: &SoundRequest, tell: &mut dyn FnMut(f64)) -> Result<Reply, Vec<Fault>> {
    let mut faults = Vec::new();
    let kind = kind(&r.instrument, &mut faults);
    let piece = Piece::ALL.into_iter().find(|piece| piece.key() == r.piece);
    if piece.is_none() {
        faults.push(Fault::new("piece", format!("\"{}\"", r.piece), one_of(&words("piece"))));
    }
    let strings = players(&r.strings, &mut faults);
    if !(LOUDNESSES.0..=LOUDNESSES.1).contains(&r.loudness_lufs) {
        let allowed = format!("{} to {} LUFS", LOUDNESSES.0, LOUDNESSES.1);
        faults.push(Fault::new("loudness_lufs", error::shown(r.loudness_lufs), allowed));
    }
    let Some(piece) = piece.filter(|_| faults.is_empty()) else { return Err(faults) };
    let sound = sounds::play_telling(kind, &strings, piece, r.loudness_lufs, tell);
    Ok(Reply::Sound(Box::new(Sound {
        rate_hz: RATE as u32,
        samples: sound.samples,
        loudness_lufs: sound.loudness,
        natural_lufs: sound.natural,
        peak: sound.peak,
        clean: sound.clean,
    })))
}
