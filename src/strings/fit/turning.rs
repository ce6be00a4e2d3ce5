//! What would turn the choice? The smallest change of each answer after which another string wins.
//!
//! Every answer and every weight is changed by itself, further and further, and the finalists are judged anew, by the
//! same draws by which the set was chosen. What turns soonest is then fitted in full, at the turning value and at the
//! one before it: only what a whole fit confirms on both sides is told. Limits (nothing from animals, no nickel, a
//! pickup) are not turned, for what they do is plain, and neither are instrument, size, tuning and set-up.

use crate::construction::Family;
use crate::error;
use crate::quantity::Hertz;

use super::answers::{self, Answers, GaugeClass};
use super::choose::{Choice, Outcome};
use super::desirability::Attribute;
use super::finalists::Finalists;
use super::problem::{self, Problem, StringStatus};
use super::score::Logs;
use super::work::Work;
use super::{fit, scenarios, shopping};

/// Steps of work that may be spent on them, whole fits included: some ten times the usual.
pub const STEPS: u64 = 100_000_000;
/// How many turning points are told.
pub const TOLD: usize = 3;
/// How many whole fits may be spent on confirming them, at most and at least.
const FITS: (u64, u64) = (1, 8);
/// Effort that may be spent on them, counted in strings judged. There is no clock here, but a fit takes about as long
/// as judging [`ALWAYS`] strings and those that it judges; this much is about a third of a second.
const EFFORT: u64 = 80_000;
/// Effort of a fit that judges next to nothing.
const ALWAYS: u64 = 8_000;
/// Times as much that a fit takes where the limit of load decides.
const UNDER_LOAD: u64 = 8;
/// How near to the limit a set's load is, as a share, where the limit is taken to decide.
const NEAR_THE_LIMIT: f64 = 0.99;
/// Steps by which a guess of the finalists is moved until whole fits confirm it.
const MOVES: usize = 2;

/// A step of a wish, as on the page's slider.
pub const WISH_STEP: f64 = 0.5;
/// A step of a weight, as a ratio.
pub const WEIGHT_STEP: f64 = 1.25;
/// The most steps of a weight; beyond, it would be another person.
const WEIGHT_STEPS: i32 = 7;
/// A step of the pitch, hertz.
pub const PITCH_STEP: f64 = 1.0;
/// Days tried for the next performance.
const DAYS: [f64; 5] = [1.0, 3.0, 7.0, 14.0, 30.0];

/// A value of an answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Value {
    /// A number.
    Number(f64),
    /// A word, by its key.
    Word(&'static str),
    /// Yes or no.
    Flag(bool),
    /// No answer.
    Nothing,
}

/// What a change does to one string.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Turned {
    /// Which string, 0 the highest.
    pub string: usize,
    /// Its family now, and after the change.
    pub family: (Family, Family),
    /// Its gauge class now, and after the change.
    pub class: (GaugeClass, GaugeClass),
}

/// The smallest change of one answer that turns the choice.
#[derive(Clone, Debug, PartialEq)]
pub struct TurningPoint {
    /// Which answer, as a request names it: `wishes.colour`, `weights.response`, `room`.
    pub input: String,
    /// What it is, or is taken to be.
    pub from: Value,
    /// The last value that turns nothing; for words that is what it is.
    pub holds_at: Value,
    /// The first value that turns the choice.
    pub turns_at: Value,
    /// How far that is: 1 is a step of the scale, a doubling of a weight, 5 Hz, or another word.
    pub far: f64,
    /// The strings that are others then.
    pub strings: Vec<Turned>,
}

/// What was found.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Turning {
    /// At most [`TOLD`], the nearest first, each confirmed by whole fits.
    pub points: Vec<TurningPoint>,
    /// How many answers and weights were changed.
    pub tried: usize,
    /// How many of these turn something among the finalists; where none does, how many of the ends of the wishes turn
    /// it in a whole fit all the same.
    pub turned: usize,
    /// How many whole fits were spent.
    pub fits: u64,
}

/// A value that an answer could take, and everything that would then be said.
struct Other {
    value: Value,
    answers: Answers,
    far: f64,
}

/// A direction in which one answer can be changed, step by step.
struct Direction {
    input: String,
    from: Value,
    /// Whether a step further is more of the same, so that the value before a turning one holds.
    ordered: bool,
    others: Vec<Other>,
}

/// Which families and gauge classes a set has.
type Kinds = Vec<(Family, GaugeClass)>;

/// What turns the choice of a fitting. Where the work runs out, fewer answers are changed and fewer points confirmed.
#[must_use]
pub fn of(answers: &Answers, finalists: &Finalists, best: &Choice, work: &mut Work) -> Turning {
    let posed = &finalists.fitting.problem;
    let logs = finalists.logs(posed, 0, work);
    let search = Search { finalists, posed, now: kinds(best), logs };
    let all = every_direction(answers, posed);
    let mut inputs: Vec<&str> = Vec::new();
    let mut guesses: Vec<(f64, &Direction, usize)> = Vec::new();
    for direction in &all {
        if work.is_out() {
            break;
        }
        inputs.push(direction.input.as_str());
        if let Some(at) = search.first(direction, work) {
            guesses.push((direction.others[at].far, direction, at));
        }
    }
    inputs.dedup();
    let tried = inputs.len();
    guesses.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut met: Vec<&str> =
        guesses.iter().map(|(_, direction, _)| direction.input.as_str()).collect();
    met.sort_unstable();
    met.dedup();
    let mut turned = met.len();
    let load: f64 = best.strings.iter().map(|c| c.tension).sum();
    let under_load = load > NEAR_THE_LIMIT * posed.most_load;
    let judged: u64 = finalists.fitting.counts.iter().map(|c| c.judged).sum();
    let effort = (ALWAYS + judged) * if under_load { UNDER_LOAD } else { 1 };
    let allowed = (EFFORT / effort).clamp(FITS.0, FITS.1);
    let mut left = allowed;
    let mut points: Vec<TurningPoint> = Vec::new();
    for (_, direction, at) in guesses {
        if points.len() == TOLD {
            break;
        }
        // Of an answer that turns the choice both ways, the nearer is told.
        if points.iter().any(|point| point.input == direction.input) {
            continue;
        }
        points.extend(search.confirmed(direction, at, &mut left, work));
    }
    points.sort_by(|a, b| a.far.total_cmp(&b.far));
    if turned == 0 {
        // Nothing is said to turn it only after whole fits at the far ends of the wishes have agreed.
        let ends = all
            .iter()
            .filter(|direction| direction.ordered)
            .filter_map(|direction| direction.others.last());
        // As many as may be spent.
        turned += ends
            .take(left as usize)
            .filter(|end| !work.is_out() && search.fitted(end, &mut left, work).is_some())
            .count();
    }
    Turning { points, tried, turned, fits: allowed - left }
}

fn kinds(choice: &Choice) -> Kinds {
    let class = |c: &super::candidates::Candidate| shopping::gauge_class(c.tension, &c.bands);
    choice.strings.iter().map(|c| (c.family, class(c))).collect()
}

struct Search<'a, 'b> {
    finalists: &'b Finalists<'a>,
    posed: &'b Problem,
    now: Kinds,
    logs: Vec<Vec<Logs>>,
}

impl Search<'_, '_> {
    /// Whether the finalists give other strings for what would then be said.
    fn turns(&self, other: &Other, work: &mut Work) -> bool {
        let problem = scenarios::as_found(problem::pose(&other.answers), self.posed);
        // Weights alone leave every string as it is.
        let scores = if is_as_before(&problem, self.posed) {
            self.finalists.expected(&self.logs, &problem)
        } else {
            self.finalists.expected(&self.finalists.logs(&problem, 0, work), &problem)
        };
        let set = self.finalists.best(&scores, &problem.kinds, problem.most_load, work);
        set.is_some_and(|set| {
            let families = self.finalists.families(&set);
            let classes = self.finalists.classes(&set);
            families.into_iter().zip(classes).ne(self.now.iter().copied())
        })
    }

    /// The first value in a direction that turns the choice, by the finalists.
    fn first(&self, direction: &Direction, work: &mut Work) -> Option<usize> {
        let mut turns = |at: usize| self.turns(&direction.others[at], work);
        if !direction.ordered {
            return (0..direction.others.len()).find(|at| turns(*at));
        }
        // In strides that double, then between the last two by halves.
        let last = direction.others.len().checked_sub(1)?;
        let (mut holds, mut at) = (None, 0);
        while !turns(at) {
            if at == last {
                return None;
            }
            holds = Some(at);
            at = (2 * at + 1).min(last);
        }
        let mut from = holds.map_or(0, |at| at + 1);
        while from < at {
            let between = usize::midpoint(from, at);
            if turns(between) { at = between } else { from = between + 1 }
        }
        Some(at)
    }

    /// What a whole fit makes of it: `None` where nothing turns or nothing fits.
    fn fitted(&self, other: &Other, left: &mut u64, work: &mut Work) -> Option<Vec<Turned>> {
        *left -= 1;
        let fitting = fit(&other.answers);
        work.take(fitting.work);
        let Outcome::Set { best, .. } = &fitting.outcome else { return None };
        let open = |i: &usize| self.posed.strings[*i].standing == StringStatus::Open;
        let turned: Vec<Turned> = self
            .now
            .iter()
            .zip(kinds(best))
            .enumerate()
            .filter(|(i, (now, then))| *now != then && open(i))
            .map(|(string, (now, then))| Turned {
                string,
                family: (now.0, then.0),
                class: (now.1, then.1),
            })
            .collect();
        (!turned.is_empty()).then_some(turned)
    }

    /// The turning point near a guess, if whole fits confirm one within a few steps.
    fn confirmed(
        &self,
        direction: &Direction,
        guess: usize,
        left: &mut u64,
        work: &mut Work,
    ) -> Option<TurningPoint> {
        let point = |at: usize, strings: Vec<Turned>| {
            let before = if direction.ordered { at.checked_sub(1) } else { None };
            TurningPoint {
                input: direction.input.clone(),
                from: direction.from,
                holds_at: before.map_or(direction.from, |before| direction.others[before].value),
                turns_at: direction.others[at].value,
                far: direction.others[at].far,
                strings,
            }
        };
        let mut at = guess;
        let mut turned: Option<(usize, Vec<Turned>)> = None;
        for _ in 0..=MOVES + 1 {
            if *left == 0 || work.is_out() {
                return None;
            }
            match (self.fitted(&direction.others[at], left, work), turned.take()) {
                // It holds here and turned one step on: that is the point.
                (None, Some((next, strings))) => return Some(point(next, strings)),
                (Some(strings), _) if at == 0 || !direction.ordered => {
                    return Some(point(at, strings));
                }
                (Some(strings), _) => {
                    turned = Some((at, strings));
                    at -= 1;
                }
                (None, None) if direction.ordered && at + 1 < direction.others.len() => {
                    at += 1;
                    // The value before has just been found to hold.
                    if *left == 0 || work.is_out() {
                        return None;
                    }
                    if let Some(strings) = self.fitted(&direction.others[at], left, work) {
                        return Some(point(at, strings));
                    }
                }
                (None, None) => return None,
            }
        }
        None
    }
}

/// Whether two problems differ in nothing but weights.
fn is_as_before(problem: &Problem, posed: &Problem) -> bool {
    problem.strings == posed.strings
        && problem.price_wish == posed.price_wish
        && problem.acid_sweat == posed.acid_sweat
}

/// Every direction in which an answer or a weight can be changed.
fn every_direction(answers: &Answers, posed: &Problem) -> Vec<Direction> {
    let mut all = Vec::new();
    wishes(answers, &mut all);
    words(answers, posed, &mut all);
    flags(answers, &mut all);
    days(answers, &mut all);
    pitches(answers, posed, &mut all);
    weights(answers, posed, &mut all);
    all.retain(|direction| !direction.others.is_empty());
    all
}

/// A scale on which one answer moves up and down by steps.
struct Scale {
    input: String,
    from: f64,
    step: fn(f64, i32) -> f64,
    ends: (f64, f64),
    steps: i32,
    far_of_a_step: f64,
}

impl Scale {
    /// Adds the directions up and down.
    fn add(&self, all: &mut Vec<Direction>, answers: &Answers, set: impl Fn(&mut Answers, f64)) {
        for side in [1, -1] {
            let mut others = Vec::new();
            let mut last = self.from;
            for n in 1..=self.steps {
                let value = (self.step)(self.from, side * n).clamp(self.ends.0, self.ends.1);
                if (value - last).abs() < 1e-9 {
                    break;
                }
                last = value;
                let mut answers = answers.clone();
                set(&mut answers, value);
                let far = f64::from(n) * self.far_of_a_step;
                others.push(Other { value: Value::Number(value), answers, far });
            }
            let from = Value::Number(self.from);
            all.push(Direction { input: self.input.clone(), from, ordered: true, others });
        }
    }
}

fn wishes(answers: &Answers, all: &mut Vec<Direction>) {
    type Wish = (&'static str, fn(&mut answers::Wishes) -> &mut f64);
    let each: [Wish; 5] = [
        ("colour", |w| &mut w.colour),
        ("brightness", |w| &mut w.brightness),
        ("power", |w| &mut w.power),
        ("feel", |w| &mut w.feel),
        ("response", |w| &mut w.response),
    ];
    for (name, of) in each {
        let scale = Scale {
            input: format!("wishes.{name}"),
            from: *of(&mut answers.wishes.clone()),
            step: |from, n| from + f64::from(n) * WISH_STEP,
            ends: (error::WISH.min, error::WISH.max),
            steps: 8,
            far_of_a_step: WISH_STEP,
        };
        scale.add(all, answers, |answers, value| *of(&mut answers.wishes) = value);
    }
}

fn pitches(answers: &Answers, posed: &Problem, all: &mut Vec<Direction>) {
    let scale = Scale {
        input: "a4_hz".to_owned(),
        from: posed.a4.get(),
        step: |from, n| from + f64::from(n) * PITCH_STEP,
        ends: (error::A4.min, error::A4.max),
        steps: 30,
        far_of_a_step: 0.2,
    };
    scale.add(all, answers, |answers, value| answers.a4 = Some(Hertz::new(value)));
}

fn weights(answers: &Answers, posed: &Problem, all: &mut Vec<Direction>) {
    for attribute in Attribute::ALL {
        let weight = posed.weights[*attribute as usize];
        if weight <= 0.0 {
            continue;
        }
        let scale = Scale {
            input: format!("weights.{}", attribute.key()),
            from: weight,
            // To the hundredth: what is told can be typed.
            step: |from, n| {
                libm::round(from * libm::pow(WEIGHT_STEP, f64::from(n)) * 100.0) / 100.0
            },
            ends: (0.01, error::WEIGHT.max),
            steps: WEIGHT_STEPS,
            far_of_a_step: libm::log2(WEIGHT_STEP),
        };
        scale.add(all, answers, |answers, value| {
            answers.weights.retain(|(a, _)| a != attribute);
            answers.weights.push((*attribute, value));
        });
    }
}

/// Every other word that each question takes whose answer is drawn where there is none.
fn words(answers: &Answers, posed: &Problem, all: &mut Vec<Direction>) {
    let taken = |field: &str| {
        posed.assumed.iter().find(|assumed| assumed.field == field).map(|a| a.value.as_str())
    };
    macro_rules! turn_words {
        (
            words { $($(#[$about:meta])* $question:ident: $type:ident [$($odds:tt)*],)* }
            numbers $numbers:tt
            flags $flags:tt
        ) => {$(
            let field = stringify!($question);
            let from = answers.$question.or_else(|| taken(field).and_then(answers::$type::parse));
            let is_turned = !stringify!($($odds)*).is_empty();
            let others = answers::$type::ALL.iter().filter(|word| is_turned && from != Some(**word));
            let others = others.map(|word| {
                let answers = Answers { $question: Some(*word), ..answers.clone() };
                Other { value: Value::Word(word.key()), answers, far: 1.0 }
            });
            let others = others.collect();
            let from = from.map_or(Value::Nothing, |word| Value::Word(word.key()));
            all.push(Direction { input: field.to_owned(), from, ordered: false, others });
        )*};
    }
    crate::questions!(turn_words);
}

fn flags(answers: &Answers, all: &mut Vec<Direction>) {
    type Flag = (&'static str, fn(&mut Answers) -> &mut bool);
    let each: [Flag; 2] =
        [("acid_sweat", |a| &mut a.acid_sweat), ("hand_pain", |a| &mut a.hand_pain)];
    for (name, of) in each {
        let mut answers = answers.clone();
        let flag = of(&mut answers);
        *flag = !*flag;
        let (from, value) = (Value::Flag(!*flag), Value::Flag(*flag));
        let others = vec![Other { value, answers, far: 1.0 }];
        all.push(Direction { input: name.to_owned(), from, ordered: false, others });
    }
}

fn days(answers: &Answers, all: &mut Vec<Direction>) {
    let now = answers.concert_days;
    let others = DAYS
        .iter()
        .filter(|days| now != Some(**days))
        .map(|days| {
            let answers = Answers { concert_days: Some(*days), ..answers.clone() };
            Other { value: Value::Number(*days), answers, far: 1.0 }
        })
        .collect();
    let from = now.map_or(Value::Nothing, Value::Number);
    all.push(Direction { input: "concert_days".to_owned(), from, ordered: false, others });
}
