//! What would one hear? A few bars of a string or a set of strings, as samples, as loud as asked and never too loud.
//!
//! The bridge's speed goes through a first-order rise below the middle of the body's modes: low notes radiate less.
//! The body is generic, the room is none: this compares strings, it does not portray an instrument.

use super::body::Body;
use super::friction::Law;
use super::gesture::{Gesture, Track};
use super::level::{self, RATE};
use super::map::closed_limits;
use super::note::{self, Note};
use super::player;
use super::sounding::Sounding;
use super::strung::Strung;
use crate::construction::Construction;
use crate::instrument::Kind;
use crate::setting::Setting;

/// Loudness to which sounds are brought unless asked otherwise, LUFS: that of broadcasts.
pub const LOUDNESS: f64 = -23.0;
/// Place of the bow, of the length from the bridge: common practice. No whole number of parts, at which some partials are mute.
const PLACE: f64 = 0.108;
/// Place of a pizzicato: common practice, no source.
const PLUCKED_AT: f64 = 0.23;
/// How long a finger takes to let go of a string, s, on a violin: from memory; longer strings in proportion.
const LETTING_GO: f64 = 6.0e-4;
/// How long the bow takes to leave the string, s.
const LIFTING: f64 = 0.03;

/// How long a finger takes to let go of this string, s.
#[must_use]
pub fn letting_go(string: &Sounding) -> f64 {
    LETTING_GO * string.length / 0.328
}

/// What is played.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Piece {
    /// Each open string, bowed for a second.
    OpenString,
    /// A major scale of one octave from the lowest string up, each note on the highest string that has it.
    Scale,
    /// Each open string, bowed for four seconds from soft to loud and back.
    Swell,
    /// Each open string, plucked.
    Pizzicato,
}

impl Piece {
    /// Every piece.
    pub const ALL: [Self; 4] = [Self::OpenString, Self::Scale, Self::Swell, Self::Pizzicato];

    /// The key by which requests name it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::OpenString => "open-string",
            Self::Scale => "scale",
            Self::Swell => "swell",
            Self::Pizzicato => "pizzicato",
        }
    }
}

/// Samples, and what they measure.
#[derive(Clone, Debug, PartialEq)]
pub struct Sound {
    /// Samples at [`RATE`], full scale 1.
    pub samples: Vec<f32>,
    /// Loudness, LUFS.
    pub loudness: f64,
    /// Loudness before it was brought to the one that was asked for, LUFS: by the difference of two, strings differ.
    pub natural: f64,
    /// Largest sample.
    pub peak: f64,
    /// Whether every bowed note became a clean one.
    pub clean: bool,
}

/// Semitones of the major scale.
const MAJOR: [f64; 8] = [0.0, 2.0, 4.0, 5.0, 7.0, 9.0, 11.0, 12.0];

/// Plays a piece on strings of one instrument, brought to `loudness` LUFS. Silence for no strings.
#[must_use]
pub fn play(
    kind: &Kind,
    strings: &[(Construction, Setting)],
    piece: Piece,
    loudness: f64,
) -> Sound {
    play_telling(kind, strings, piece, loudness, &mut |_| ())
}

/// As [`play`], and tells after each note which share of all notes is done.
#[must_use]
pub fn play_telling(
    kind: &Kind,
    strings: &[(Construction, Setting)],
    piece: Piece,
    loudness: f64,
    tell: &mut dyn FnMut(f64),
) -> Sound {
    let notes = if piece == Piece::Scale { MAJOR.len() } else { strings.len() };
    let mut played = 0.0;
    let mut told = || {
        played += 1.0;
        tell(played / notes as f64);
    };
    let mut low_first: Vec<&(Construction, Setting)> = strings.iter().collect();
    low_first.sort_by(|a, b| a.1.pitch.get().total_cmp(&b.1.pitch.get()));
    let mut bars = Bars { samples: Vec::new(), at: 0, clean: true };
    let open = |s: &(Construction, Setting)| (Sounding::of(&s.0, &s.1), Body::generic(kind, &s.1));
    // Longer strings are bowed faster: in proportion to the square root of the length, a violin's at 0.2 m/s.
    let arm = |string: &Sounding| 0.2 * (string.length / 0.328).sqrt();
    match piece {
        Piece::OpenString => {
            for (string, body) in low_first.iter().map(|s| open(s)) {
                bars.bow(kind, &string, &body, arm(&string), Shape::Even, 1.0, 0.6);
                told();
            }
        }
        Piece::Swell => {
            for (string, body) in low_first.iter().map(|s| open(s)) {
                bars.bow(kind, &string, &body, arm(&string), Shape::Swell, 4.0, 0.6);
                told();
            }
        }
        Piece::Pizzicato => {
            for (string, body) in low_first.iter().map(|s| open(s)) {
                bars.pluck(kind, &string, &body);
                told();
            }
        }
        Piece::Scale => {
            let first = low_first.first().map_or(0.0, |s| s.1.pitch.get());
            for semitones in MAJOR {
                let pitch = first * libm::exp2(semitones / 12.0);
                // A hair of slack, for an open string that has the note itself.
                let on = low_first.iter().rev().find(|s| s.1.pitch.get() <= pitch * 1.003);
                if let Some((construction, setting)) = on {
                    let string = Sounding::stopped(construction, setting, pitch);
                    let body = Body::generic(kind, setting);
                    bars.bow(kind, &string, &body, arm(&string), Shape::Even, 0.5, 0.15);
                }
                told();
            }
        }
    }
    let levelled = level::levelled(&bars.samples, loudness);
    Sound {
        loudness: levelled.loudness,
        natural: levelled.natural,
        peak: levelled.samples.iter().fold(0.0_f64, |most, x| most.max(x.abs())),
        clean: bars.clean,
        samples: levelled.samples.into_iter().map(|x| x as f32).collect(),
    }
}

/// How a bowed note is shaped.
#[derive(Clone, Copy)]
enum Shape {
    Even,
    Swell,
}

struct Bars {
    samples: Vec<f64>,
    /// Where the next note begins.
    at: usize,
    clean: bool,
}

impl Bars {
    /// A bowed note of `seconds`, left to ring for `after` more.
    #[allow(
        clippy::too_many_arguments,
        reason = "a note has these parts, and only this function asks for them"
    )]
    fn bow(
        &mut self,
        kind: &Kind,
        string: &Sounding,
        body: &Body,
        speed: f64,
        shape: Shape,
        seconds: f64,
        after: f64,
    ) {
        let law = Law::Thermal;
        // A swell starts at a third of its greatest speed.
        let at_first = match shape {
            Shape::Even => speed,
            Shape::Swell => speed / 3.0,
        };
        let stroke = player::chosen(string, body, law, at_first, PLACE);
        let rise = at_first / stroke.acceleration;
        let gesture = match shape {
            Shape::Even => Gesture {
                speed: Track::through(vec![(0.0, 0.0), (rise, speed)]),
                force: Track::through(vec![
                    (0.0, stroke.force),
                    (seconds - LIFTING, stroke.force),
                    (seconds, 0.0),
                ]),
                place: Track::steady(PLACE),
            },
            Shape::Swell => {
                let limit = |speed: f64| closed_limits(string, 1.0, speed, PLACE).0;
                let most = stroke.force * limit(speed) / limit(at_first);
                let (middle, end) = (seconds / 2.0, seconds - LIFTING);
                Gesture {
                    speed: Track::through(vec![
                        (0.0, 0.0),
                        (rise, at_first),
                        (middle, speed),
                        (end, at_first),
                    ]),
                    force: Track::through(vec![
                        (0.0, stroke.force),
                        (rise, stroke.force),
                        (middle, most),
                        (end, stroke.force),
                        (seconds, 0.0),
                    ]),
                    place: Track::steady(PLACE),
                }
            }
        };
        self.clean &= stroke.judgement.periods_to_helmholtz.is_finite();
        let strung = Strung::new(string, body, string.rate(PLACE, law));
        let note = note::bowed(&strung, law, &gesture, seconds + after);
        self.add(&note, kind, seconds + 0.3 * after, after);
    }

    fn pluck(&mut self, kind: &Kind, string: &Sounding, body: &Body) {
        let strung = Strung::new(string, body, string.rate(PLUCKED_AT, Law::Hyperbolic));
        // Pulled aside by a two-hundredth of the length.
        let pull = 0.005 * string.tension() / (PLUCKED_AT * (1.0 - PLUCKED_AT));
        let note = note::plucked(&strung, PLUCKED_AT, pull, letting_go(string), 2.0);
        self.add(&note, kind, 1.5, 0.5);
    }

    /// Adds a note where the last one left off; the next begins `next` seconds later, the last `fade` seconds fade out.
    fn add(&mut self, note: &Note, kind: &Kind, next: f64, fade: f64) {
        let sound = heard(note, kind);
        if self.samples.len() < self.at + sound.len() {
            self.samples.resize(self.at + sound.len(), 0.0);
        }
        let fading = (fade * RATE as f64).max(1.0);
        for (i, x) in sound.iter().enumerate() {
            let left = (sound.len() - i) as f64 / fading;
            self.samples[self.at + i] += x * left.min(1.0);
        }
        self.at += (next * RATE as f64) as usize;
    }
}

/// What is heard of a note, at [`RATE`]: the bridge's speed, rising with frequency below the middle of the body's modes.
#[must_use]
pub fn heard(note: &Note, kind: &Kind) -> Vec<f64> {
    let steps = ((note.rate / RATE as f64) + 0.5) as usize;
    let corner = Body::between(kind);
    // First order, in steps of the note itself: y' = y + x' − x − c y.
    let c = 1.0 - libm::exp(-2.0 * core::f64::consts::PI * corner / note.rate);
    let (mut before, mut y) = (0.0, 0.0);
    let risen: Vec<f64> = note
        .bridge_speed
        .iter()
        .map(|&x| {
            y += x - before - c * y;
            before = x;
            y
        })
        .collect();
    risen
        .chunks_exact(steps.max(1))
        .map(|some| some.iter().sum::<f64>() / some.len() as f64)
        .collect()
}
