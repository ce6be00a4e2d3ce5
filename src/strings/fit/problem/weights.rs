//! How much each wish weighs: the table by which weights follow from the answers.

use crate::fit::answers::{Answers, Bother, Budget, Level, Music, Played, Room, WhoTunes, Wishes};
use crate::fit::desirability::{self, Attribute, Attribute as A};
use crate::precedent::SetUp;

/// A factor on a weight, and the answer it comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WeightStep {
    /// Which weight.
    pub attribute: Attribute,
    /// By how much.
    pub factor: f64,
    /// From which answer.
    pub because: &'static str,
}

/// Weights before any answer: a judgement, open to change.
pub const BASE_WEIGHTS: [f64; desirability::COUNT] =
    [1.5, 1.2, 1.0, 0.3, 0.3, 0.5, 0.3, 0.5, 0.7, 0.2, 0.5, 0.3, 0.5, 2.0, 0.5];

/// The wishes with what bothers added, of the set and of one string: each complaint moves the wish that answers it
/// by one step.
pub(super) fn wishes(answers: &Answers, string: Option<usize>) -> Wishes {
    let mut w = answers.wishes;
    let own = string.and_then(|i| answers.strings.get(i)).map(|string| &string.bothers);
    for bother in answers.bothers.iter().chain(own.into_iter().flatten()) {
        match bother {
            Bother::TooBright | Bother::Whistles => w.brightness -= 1.0,
            Bother::TooDull => w.brightness += 1.0,
            Bother::TooQuiet | Bother::Chokes => w.power += 1.0,
            Bother::Thin => {
                w.brightness -= 1.0;
                w.power += 1.0;
            }
            Bother::SlowToSpeak => w.response += 1.0,
            Bother::HardOnTheHand => w.feel -= 1.0,
            Bother::OutOfTune | Bother::GoesFlat => w.colour -= 1.0,
            // These are mended at the instrument, or by a fresh string, before they are mended by another kind.
            Bother::Wolf
            | Bother::Breaks
            | Bother::BreaksAtThePeg
            | Bother::False
            | Bother::Uneven => {}
        }
    }
    let clamp = |x: f64| x.clamp(-2.0, 2.0);
    Wishes {
        colour: clamp(w.colour),
        brightness: clamp(w.brightness),
        power: clamp(w.power),
        feel: clamp(w.feel),
        response: clamp(w.response),
    }
}

/// The weights that follow from the answers, and how they came about.
pub(super) fn weigh(
    answers: &Answers,
    wishes: &Wishes,
    room: Room,
    set_up: SetUp,
) -> ([f64; desirability::COUNT], Vec<WeightStep>) {
    let mut steps: Vec<WeightStep> = Vec::new();
    let mut step =
        |attribute, factor, because| steps.push(WeightStep { attribute, factor, because });
    by_wishes(wishes, &mut step);
    by_circumstances(answers, room, set_up, &mut step);
    by_troubles(answers, &mut step);
    let mut weights = BASE_WEIGHTS;
    for s in &steps {
        weights[s.attribute as usize] *= s.factor;
    }
    for (attribute, weight) in &answers.weights {
        weights[*attribute as usize] = *weight;
    }
    (weights, steps)
}

fn by_wishes(wishes: &Wishes, step: &mut impl FnMut(A, f64, &'static str)) {
    if wishes.colour > 0.0 {
        step(A::Elasticity, 1.0 + wishes.colour, "wishes.colour");
        for a in [A::Settling, A::Warmth, A::Damp] {
            step(a, 1.0 / (1.0 + wishes.colour / 2.0), "wishes.colour");
        }
    } else if wishes.colour < 0.0 {
        step(A::Elasticity, 1.0 - wishes.colour, "wishes.colour");
        for a in [A::Settling, A::Warmth, A::Damp] {
            step(a, 1.0 - wishes.colour, "wishes.colour");
        }
    }
    for (wish, attribute, because) in [
        (wishes.brightness.abs(), A::Brightness, "wishes.brightness"),
        (wishes.power.abs(), A::Power, "wishes.power"),
        (wishes.feel.abs(), A::Feel, "wishes.feel"),
        (wishes.response.max(0.0), A::Response, "wishes.response"),
    ] {
        if wish > 0.0 {
            step(attribute, 1.0 + wish, because);
        }
    }
    if wishes.power > 0.0 {
        // Who wants to push wants a string that bears it.
        step(A::BowRoom, 1.0 + wishes.power / 2.0, "wishes.power");
    }
    if wishes.response < 0.0 {
        step(A::Response, 1.0 / (1.0 - wishes.response), "wishes.response");
    }
}

fn by_circumstances(
    answers: &Answers,
    room: Room,
    set_up: SetUp,
    step: &mut impl FnMut(A, f64, &'static str),
) {
    if set_up == SetUp::Historical {
        step(A::Settling, 0.7, "set_up");
    }
    match answers.level {
        Some(Level::Beginner) => {
            step(A::Elasticity, 0.4, "level");
            step(A::Settling, 1.5, "level");
            step(A::Durability, 1.5, "level");
            step(A::Availability, 1.5, "level");
            step(A::Tuning, 1.5, "level");
            // A bow that is not even yet needs room.
            step(A::BowRoom, 2.0, "level");
        }
        Some(Level::Professional) => {
            step(A::Elasticity, 1.4, "level");
            step(A::Price, 0.5, "level");
            step(A::Availability, 0.6, "level");
        }
        Some(Level::Student | Level::Advanced) | None => {}
    }
    if answers.who_tunes == Some(WhoTunes::Nobody) {
        step(A::Settling, 2.0, "who_tunes");
    }
    if matches!(room, Room::Travelling | Room::Damp) {
        step(A::Damp, 1.5, "room");
    }
    if answers.concert_days.is_some_and(|days| days < 14.0) {
        step(A::Settling, 2.0, "concert_days");
    }
    match answers.budget {
        Some(Budget::Modest) => step(A::Price, 2.5, "budget"),
        Some(Budget::Any) => {
            step(A::Price, 0.2, "budget");
            step(A::Availability, 0.7, "budget");
        }
        Some(Budget::Middle) | None => {}
    }
    match answers.music {
        Some(Music::Early) => step(A::Elasticity, 1.3, "music"),
        Some(Music::Folk) => {
            step(A::Response, 1.3, "music");
            step(A::BowRoom, 1.3, "music");
        }
        Some(Music::Jazz) => {
            step(A::Brightness, 1.3, "music");
        }
        Some(Music::Classical) | None => {}
    }
    by_plucking(answers, step);
}

/// The ring counts where the player plucks, and where one is wished for.
fn by_plucking(answers: &Answers, step: &mut impl FnMut(A, f64, &'static str)) {
    match (answers.played, answers.music) {
        (Some(Played::Plucked), _) => step(A::Ring, 3.0, "played"),
        (Some(Played::Both), _) => step(A::Ring, 2.0, "played"),
        (None, Some(Music::Jazz)) => step(A::Ring, 3.0, "music"),
        (Some(Played::Bowed) | None, _) => {}
    }
    if answers.ring.is_some() {
        step(A::Ring, 3.0, "ring");
    }
}

fn by_troubles(answers: &Answers, step: &mut impl FnMut(A, f64, &'static str)) {
    let bothers = |bother: Bother| {
        let mut own = answers.strings.iter().flat_map(|string| &string.bothers);
        answers.bothers.contains(&bother) || own.any(|own| *own == bother)
    };
    if bothers(Bother::Chokes) {
        step(A::BowRoom, 2.0, "bothers.chokes");
    }
    if bothers(Bother::Breaks) {
        step(A::Durability, 2.5, "bothers");
    }
    if bothers(Bother::False) && answers.acid_sweat {
        step(A::Durability, 2.0, "bothers");
    }
    if answers.acid_sweat {
        step(A::Care, 3.0, "acid_sweat");
    }
    if answers.hand_pain {
        step(A::Feel, 2.0, "hand_pain");
    }
}
