//! What could the answers have meant? Scenarios: each answer drawn from its spread, the same for every string.
//!
//! A wish on a scale, a room in a word, a weight from a table are less precise than we treat them, and whoever skips a
//! question still has an answer to it. Every spread is a judgement of how people answer.

use crate::constant::{Constant, DEVIATIONS};
use crate::instrument;
use crate::precedent::SetUp;
use crate::quantity::{Hertz, Metre, Ratio};
use crate::random;
use crate::setting::Swing;
use crate::source::{self, Evidence::Judged};

use super::answers::{self, Answers, Wishes};
use super::possible;
use super::problem::{self, Problem};

/// How far a wish may be from where it was put, on the scale from −2 to 2: a step of the slider to either side.
pub const WISH: Constant =
    Constant::new(0.0, -0.5, 0.5, "1", "a wish on the scale", Judged, source::PRACTICE);
/// What a weight that follows from the answers is multiplied by: nobody knows it to a quarter.
pub const WEIGHT: Constant =
    Constant::new(1.0, 0.75, 1.33, "1", "a weight from the table", Judged, source::PRACTICE);
/// What a weight set by hand is multiplied by.
pub const WEIGHT_BY_HAND: Constant =
    Constant::new(1.0, 0.9, 1.1, "1", "a weight set by hand", Judged, source::PRACTICE);
/// How far the humidity of a room lies from what its word says.
pub const HUMIDITY: Constant =
    Constant::new(0.0, -0.08, 0.08, "1", "humidity of a room in a word", Judged, source::PRACTICE);
/// What the swings of a room are multiplied by.
pub const SWING: Constant =
    Constant::new(1.0, 0.6, 1.6, "1", "swings of a room in a word", Judged, source::PRACTICE);
/// How far the pitch of a′ lies from the usual one, hertz, where it was not said.
pub const PITCH: Constant =
    Constant::new(0.0, -1.0, 3.0, "Hz", "pitch of a' not said", Judged, source::PRACTICE);

/// Every spread with its key, for the published tables.
pub const SPREADS: &[(&str, Constant)] = &[
    ("wish_spread", WISH),
    ("weight_spread", WEIGHT),
    ("weight_by_hand_spread", WEIGHT_BY_HAND),
    ("humidity_spread", HUMIDITY),
    ("swing_spread", SWING),
    ("pitch_spread", PITCH),
];

/// One scenario: random numbers that belong to it.
#[derive(Clone, Copy, Debug)]
struct Scenario(u64);

impl Scenario {
    /// A number between 0 and 1 that belongs to this scenario and this name.
    fn uniform(self, name: &str) -> f64 {
        random::uniform(random::mix(random::mix(random::hash(self.0, name.bytes()))))
    }

    /// A draw of a spread.
    fn of(self, name: &str, spread: &Constant) -> f64 {
        let (u, v) = (self.uniform(name), self.uniform(spread.at));
        // The second number belongs to the name too.
        let v = (v + self.uniform(&format!("{name}'"))).fract();
        spread.drawn(random::normal(u, v) / DEVIATIONS)
    }

    /// One of the words, or `None` for what is taken for granted.
    fn word<T: Copy>(self, name: &str, odds: &[(T, u8)]) -> Option<T> {
        let mut left = 100.0 * self.uniform(name);
        for (word, of_hundred) in odds {
            if left < f64::from(*of_hundred) {
                return Some(*word);
            }
            left -= f64::from(*of_hundred);
        }
        None
    }
}

/// The problem in one of the scenarios; `posed` is the problem as they were taken.
///
/// Only answers that do not change what is made are drawn: instrument, size, set-up and limits stay.
#[must_use]
pub fn meant(answers: &Answers, posed: &Problem, index: u64) -> Problem {
    let scenario = Scenario(index);
    let mut drawn = answers.clone();
    let wish = |name: &str, put: f64| (put + scenario.of(name, &WISH)).clamp(-2.0, 2.0);
    let Wishes { colour, brightness, power, feel, response } = answers.wishes;
    drawn.wishes = Wishes {
        colour: wish("colour", colour),
        brightness: wish("brightness", brightness),
        power: wish("power", power),
        feel: wish("feel", feel),
        response: wish("response", response),
    };
    // What was not said and is taken for granted is the same pitch in every scenario, but for its spread.
    let a4 = posed.a4.get() + if answers.a4.is_none() { scenario.of("a4", &PITCH) } else { 0.0 };
    drawn.a4 = Some(Hertz::new(a4));
    if answers.sounding_length.is_none() {
        let (length, doubt) = (posed.size.length().get(), posed.size.length_doubt().get());
        let spread = Constant::new(0.0, -doubt, doubt, "m", "size", Judged, source::PRACTICE);
        let length = length + scenario.of("sounding_length_m", &spread);
        drawn.sounding_length = Some(Metre::new(length));
    }
    macro_rules! draw_words {
        (
            words { $($(#[$about:meta])* $question:ident: $type:ident [$($word:ident $odds:literal),*],)* }
            numbers $numbers:tt
            flags $flags:tt
        ) => {$(
            drawn.$question = answers
                .$question
                .or_else(|| scenario.word(stringify!($question), &[$((answers::$type::$word, $odds)),*]));
        )*};
    }
    crate::questions!(draw_words);
    let not_a_bass = posed.kind.key != instrument::DOUBLE_BASS.key;
    if !not_a_bass {
        drawn.pegs = answers.pegs;
    }
    if !not_a_bass || posed.set_up == SetUp::Historical {
        drawn.tuners = answers.tuners;
    }
    drawn.weights.clear();
    let mut problem = as_found(problem::pose(&drawn), posed);
    for (attribute, weight) in super::desirability::Attribute::ALL.iter().zip(&mut problem.weights)
    {
        let by_hand = answers.weights.iter().find(|(a, _)| a == attribute);
        *weight = match by_hand {
            Some((_, set)) => set * scenario.of(attribute.key(), &WEIGHT_BY_HAND),
            None => *weight * scenario.of(attribute.key(), &WEIGHT),
        };
    }
    for string in &mut problem.strings {
        let setting = &mut string.setting;
        let held = |share: f64| Ratio::new(share.clamp(0.05, 0.95));
        setting.humidity = held(setting.humidity.get() + scenario.of("humidity", &HUMIDITY));
        let swing = scenario.of("swing", &SWING);
        for Swing { temperature, humidity } in &mut setting.swings {
            *humidity = held(humidity.get() * swing);
            *temperature *= swing;
        }
    }
    problem
}

/// A problem posed from other answers, with what the fitting found out about its positions.
#[must_use]
pub fn as_found(mut problem: Problem, posed: &Problem) -> Problem {
    for (string, found) in problem.strings.iter_mut().zip(&posed.strings) {
        string.count_from_like(found.usual_brightness, found.usual_stretch, found.usual_pull);
        string.flaws.clone_from(&found.flaws);
        string.standing = found.standing;
    }
    problem.kinds = possible::kinds(&problem);
    problem
}
