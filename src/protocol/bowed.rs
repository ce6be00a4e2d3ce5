//! The bowed string at the door: maps of where a string speaks, and sounds.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use strings::answer_to_bow::{PLACE, SPEED};
use strings::error::{self, Fault};
use strings::instrument::{self, Kind};
use strings::simulate::level::RATE;
use strings::simulate::map::{AttackMap, PlaceMap, Row, window_about};
use strings::simulate::sound::{self as sounds, Piece};
use strings::simulate::{Body, Judgement, Law, Sounding};

use crate::convert;
use crate::reply::Reply;
use crate::request::{Construction, Setting};
use crate::schema;

/// Where a string speaks under the bow.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct BowMapRequest {
    /// `place` (force against place of the bow), `attack` (force against acceleration from rest) or
    /// `window` (between which forces it keeps a clean note where bows usually are).
    #[schemars(extend("enum" = MAPS))]
    pub map: String,
    /// Whose generic body it is: `violin`, `viola`, `cello`, `double-bass`.
    #[schemars(extend("enum" = schema::words("instrument")))]
    pub instrument: String,
    /// What the string is made of.
    pub construction: Construction,
    /// Where it works.
    pub setting: Setting,
    /// Rows and columns, 2 to 48; 24 if left out. A window has none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = COUNTS.0, max = COUNTS.1))]
    pub count: Option<usize>,
    /// One row alone, from 0; every row if left out. A window has none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schemars(range(max = COUNTS.1 - 1))]
    pub row: Option<usize>,
}

/// The maps there are.
const MAPS: [&str; 3] = ["place", "attack", "window"];
/// Rows and columns of a map, if they are left out.
const USUAL_COUNT: usize = 24;
/// Rows and columns a map may have.
const COUNTS: (usize, usize) = (2, 48);

/// Strings of one instrument that are played.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SoundRequest {
    /// `open-string`, `scale`, `swell` or `pizzicato`.
    #[schemars(extend("enum" = Piece::ALL.map(Piece::key)))]
    pub piece: String,
    /// Whose generic body it is: `violin`, `viola`, `cello`, `double-bass`.
    #[schemars(extend("enum" = schema::words("instrument")))]
    pub instrument: String,
    /// The strings, in any order; one to eight.
    #[schemars(length(min = 1, max = MOST_STRINGS))]
    pub strings: Vec<Player>,
    /// Loudness to which it is brought, −60 to −9 LUFS; −23 if left out.
    #[serde(default = "usual_loudness")]
    #[schemars(range(min = LOUDNESSES.0, max = LOUDNESSES.1))]
    pub loudness_lufs: f64,
}

fn usual_loudness() -> f64 {
    sounds::LOUDNESS
}

/// Strings that may be played in one piece.
pub(crate) const MOST_STRINGS: usize = 8;
/// Loudnesses that may be asked for, LUFS.
const LOUDNESSES: (f64, f64) = (-60.0, -9.0);

/// One string that is played.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Player {
    /// What it is made of.
    pub construction: Construction,
    /// Where it works.
    pub setting: Setting,
}

/// Where a string speaks.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct BowMap {
    /// `place`, `attack` or `window`.
    pub map: String,
    /// The forces of the columns, N; none for a window.
    pub forces_n: Vec<f64>,
    /// What the rows stand for: places of the bow as shares of the length from the bridge, or accelerations, m/s².
    pub at: Vec<f64>,
    /// The rows that were asked for.
    pub rows: Vec<BowRow>,
    /// The window, if that was asked for and there is one.
    pub window: Option<BowWindow>,
}

/// One row of a map.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct BowRow {
    /// Which row, from 0.
    pub row: usize,
    /// Least force by formula, N.
    pub least_n: f64,
    /// Greatest force by formula, N.
    pub greatest_n: f64,
    /// The notes, one a column.
    pub cells: Vec<BowCell>,
}

/// What is said of one note.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct BowCell {
    /// `helmholtz` (clean), `double-slip`, `raucous`, `anomalous-low`, `multiple-flyback` or `not-settled`.
    pub regime: String,
    /// Periods until it was clean; none if it never was.
    pub periods: Option<f64>,
    /// How far it lies above the free string, cents.
    pub cents: f64,
}

/// Between which forces a string keeps a clean note.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct BowWindow {
    /// Least force, N.
    pub least_n: f64,
    /// Greatest force, N.
    pub greatest_n: f64,
    /// Their ratio, dB.
    pub width_db: f64,
}

/// What one would hear.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Sound {
    /// Samples a second.
    pub rate_hz: u32,
    /// One channel, full scale 1. The page gets them apart from the text, and then this is empty.
    pub samples: Vec<f32>,
    /// Loudness, LUFS.
    pub loudness_lufs: f64,
    /// Loudness before it was brought to the one asked for, LUFS; by the difference of two, strings differ.
    pub natural_lufs: f64,
    /// Largest sample, of full scale.
    pub peak: f64,
    /// Every bowed note became a clean one.
    pub clean: bool,
}

fn kind(key: &str, faults: &mut Vec<Fault>) -> &'static Kind {
    Kind::of(key).unwrap_or_else(|| {
        let all: Vec<&str> = instrument::ALL.iter().map(|kind| kind.key).collect();
        let allowed = format!("one of: {}", all.join(", "));
        faults.push(Fault::new("instrument", format!("\"{key}\""), allowed));
        &instrument::VIOLIN
    })
}

/// What is right is taken, what is wrong is told.
fn taken<T>(read: Result<T, Vec<Fault>>, faults: &mut Vec<Fault>) -> Option<T> {
    read.map_err(|wrong| faults.extend(wrong)).ok()
}

/// Reads strings of one instrument, with every fault named.
pub(crate) fn players(
    players: &[Player],
    faults: &mut Vec<Fault>,
) -> Vec<(strings::construction::Construction, strings::setting::Setting)> {
    if players.is_empty() || players.len() > MOST_STRINGS {
        let allowed = format!("1 to {MOST_STRINGS} strings");
        faults.push(Fault::new("strings", format!("{} strings", players.len()), allowed));
    }
    let mut strings = Vec::new();
    for (i, player) in players.iter().take(MOST_STRINGS).enumerate() {
        let at = |part: &str| format!("strings[{i}].{part}");
        let construction = convert::construction(&player.construction, &at("construction"));
        let construction = taken(construction, faults);
        let setting = taken(convert::setting(&player.setting, &at("setting")), faults);
        strings.extend(construction.zip(setting));
    }
    strings
}

/// Answers a request for a map.
pub(crate) fn map(r: &BowMapRequest) -> Result<Reply, Vec<Fault>> {
    let mut faults = Vec::new();
    let kind = kind(&r.instrument, &mut faults);
    let construction = taken(convert::construction(&r.construction, "construction"), &mut faults);
    let setting = taken(convert::setting(&r.setting, "setting"), &mut faults);
    if !MAPS.contains(&r.map.as_str()) {
        let allowed = format!("one of: {}", MAPS.join(", "));
        faults.push(Fault::new("map", format!("\"{}\"", r.map), allowed));
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
        let allowed = format!("one of: {}", Piece::ALL.map(Piece::key).join(", "));
        faults.push(Fault::new("piece", format!("\"{}\"", r.piece), allowed));
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
