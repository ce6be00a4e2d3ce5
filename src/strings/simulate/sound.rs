//! What would one hear? A few bars of a string or a set of strings, as samples, as loud as asked and never too loud.
//!
//! The bridge's speed goes through a first-order rise below the middle of the body's modes: low notes radiate less.
//! The body is generic, the room is none: this compares strings, it does not portray an instrument.

use super::body::Body;
use super::friction::Law;
use super::gesture::{Gesture, Track};
use super::map::closed_limits;
use super::note::{self, Note};
use super::player;
use super::sounding::Sounding;
use super::strung::Strung;
use crate::construction::Construction;
use crate::instrument::Kind;
use crate::setting::Setting;

/// Samples a second.
pub const RATE: usize = 48_000;
/// Loudness to which sounds are brought unless asked otherwise, LUFS: that of broadcasts.
pub const LOUDNESS: f64 = -23.0;
/// No sample is larger, of full scale: one decibel below it.
pub const PEAK: f64 = 0.891;
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
    levelled(&bars.samples, loudness, bars.clean)
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
        let stroke = player::tries(string, body, law, at_first, PLACE).best;
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

/// A section of second order with its memory, for loudness.
struct Weighting {
    b: [f64; 3],
    a: [f64; 2],
    kept: [f64; 2],
}

impl Weighting {
    fn pass(&mut self, x: f64) -> f64 {
        let y = self.b[0] * x + self.kept[0];
        self.kept[0] = self.b[1] * x - self.a[0] * y + self.kept[1];
        self.kept[1] = self.b[2] * x - self.a[1] * y;
        y
    }
}

/// Loudness of one channel at [`RATE`], LUFS; minus infinity in silence.
///
/// Source: [`crate::source::BS_1770`]: two filters, blocks of 400 ms every 100 ms, gates at −70 and 10 below the mean.
#[must_use]
pub fn loudness(samples: &[f64]) -> f64 {
    let mut head = Weighting {
        b: [1.535_124_859_586_97, -2.691_696_189_406_38, 1.198_392_810_852_85],
        a: [-1.690_659_293_182_41, 0.732_480_774_215_85],
        kept: [0.0; 2],
    };
    let mut low = Weighting {
        b: [1.0, -2.0, 1.0],
        a: [-1.990_047_454_833_98, 0.990_072_250_366_21],
        kept: [0.0; 2],
    };
    let squares: Vec<f64> = samples
        .iter()
        .map(|x| {
            let y = low.pass(head.pass(*x));
            y * y
        })
        .collect();
    let tenth = RATE / 10;
    let tenths: Vec<f64> =
        squares.chunks(tenth).map(|part| part.iter().sum::<f64>() / tenth as f64).collect();
    let blocks: Vec<f64> = if tenths.len() < 4 {
        vec![squares.iter().sum::<f64>() / squares.len().max(1) as f64]
    } else {
        tenths.windows(4).map(|four| four.iter().sum::<f64>() / 4.0).collect()
    };
    let level = |power: f64| -0.691 + 10.0 * libm::log10(power);
    let mean_above = |gate: f64| {
        let above: Vec<f64> = blocks.iter().copied().filter(|b| level(*b) > gate).collect();
        above.iter().sum::<f64>() / above.len().max(1) as f64
    };
    let gate = level(mean_above(-70.0)) - 10.0;
    level(mean_above(gate.max(-70.0)))
}

/// How far ahead and behind the limiter looks, samples: 5 ms. Shorter would be heard as a crackle.
const LOOK: usize = 240;

/// Turns down where a sample would be above [`PEAK`], smoothly, beginning before it and ending after.
fn limited(samples: &[f64]) -> Vec<f64> {
    let wanted: Vec<f64> =
        samples.iter().map(|x| if x.abs() > PEAK { PEAK / x.abs() } else { 1.0 }).collect();
    if wanted.iter().all(|g| *g >= 1.0) {
        return samples.to_vec();
    }
    // The least over ±LOOK, then the mean over ±LOOK/2 of that: never above what is wanted.
    let least: Vec<f64> = (0..wanted.len())
        .map(|i| {
            let to = (i + LOOK + 1).min(wanted.len());
            wanted[i.saturating_sub(LOOK)..to].iter().copied().fold(1.0, f64::min)
        })
        .collect();
    (0..least.len())
        .map(|i| {
            let part = &least[i.saturating_sub(LOOK / 2)..(i + LOOK / 2 + 1).min(least.len())];
            samples[i] * part.iter().sum::<f64>() / part.len() as f64
        })
        .collect()
}

/// Brings samples to a loudness, LUFS, with no peak above [`PEAK`].
#[must_use]
pub fn levelled(samples: &[f64], wanted: f64, clean: bool) -> Sound {
    let mut gain = 1.0;
    let mut out = samples.to_vec();
    // Turning peaks down takes loudness, which is given back: three rounds meet it to a hundredth of a decibel.
    for _ in 0..6 {
        let found = loudness(&out);
        if !found.is_finite() || (found - wanted).abs() < 0.01 {
            break;
        }
        gain *= libm::pow(10.0, (wanted - found) / 20.0);
        let loud: Vec<f64> = samples.iter().map(|x| x * gain).collect();
        out = limited(&loud);
    }
    let peak = out.iter().fold(0.0_f64, |most, x| most.max(x.abs()));
    Sound {
        loudness: loudness(&out),
        natural: loudness(samples),
        peak,
        clean,
        samples: out.into_iter().map(|x| x as f32).collect(),
    }
}
