//! Why does it bother? The likely causes of a complaint, in order, each checked against the numbers of today's string.
//!
//! A cause has a plausibility that is judged, and where a number can speak it moves it: up where the whole range of
//! the number lies on the side of the cause, down where all of it lies on the other, not at all between. So a wide
//! range says nothing unless all of it says the same.
//!
//! Plausibilities and limits are common practice, no source, unless the row or the limit says otherwise.

mod causes;

use crate::report::{Estimate, Property};

use super::answers::Bother;
use super::flaw::Flaw;
use super::neighbours;
use super::problem::Problem;
use super::today::Today;
use causes::Speaks::{self, Above, Answer, Below, Fact, Nobody, Step, Unsettled, Worn};
use causes::causes_of;
pub use causes::{Cause, Likely, Look, Remedy, thought_of};

/// What a number or an answer says of a cause.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Says {
    /// It speaks for it.
    For,
    /// It does not tell.
    Nothing,
    /// It speaks against it.
    Against,
}

impl Says {
    /// By how much it moves the plausibility: judged; doubled, one number would outweigh all that fitters know.
    const fn factor(self) -> f64 {
        match self {
            Self::For => 3.0,
            Self::Nothing => 1.0,
            Self::Against => 0.3,
        }
    }
}

/// A number that was looked at.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Number {
    /// The property of the report; `age_months` and `tension_step` are none of its.
    pub property: &'static str,
    /// Of which string, 0 the highest.
    pub string: usize,
    /// The number with its range.
    pub estimate: Estimate,
    /// The limit with which it was compared.
    pub limit: f64,
}

/// A cause of a complaint, weighed.
#[derive(Clone, Debug, PartialEq)]
pub struct Weighed {
    /// Which.
    pub cause: Cause,
    /// How plausible it is, judgement and number together: no probability.
    pub plausible: f64,
    /// In a word.
    pub likely: Likely,
    /// No number speaks of it.
    pub judged: bool,
    /// The numbers that were looked at.
    pub numbers: Vec<Number>,
}

/// A complaint with its causes, the most plausible first.
#[derive(Clone, Debug, PartialEq)]
pub struct Diagnosis {
    /// What bothers.
    pub bother: Bother,
    /// About which string, if about one.
    pub string: Option<usize>,
    /// Why.
    pub causes: Vec<Weighed>,
}

/// Plausibility from which a cause is called likely, and from which possible.
const LIKELY: (f64, f64) = (0.45, 0.12);

/// Every complaint, of the whole set first, with its causes in order.
#[must_use]
pub fn findings(problem: &Problem, today: &[Option<Today>]) -> Vec<Diagnosis> {
    let whole = problem.bothers.iter().map(|bother| (*bother, None));
    let each = problem.strings.iter().enumerate();
    let of_strings = each.flat_map(|(i, s)| s.bothers.iter().map(move |bother| (*bother, Some(i))));
    whole
        .chain(of_strings)
        .map(|(bother, string)| diagnosis(problem, today, bother, string))
        .collect()
}

/// What is wrong with single strings, by the first causes of the complaints about them, where another string
/// would be better.
#[must_use]
pub fn flaws(findings: &[Diagnosis], today: &[Option<Today>]) -> Vec<(usize, Flaw)> {
    let of = |diagnosis: &Diagnosis| {
        let (i, first) = (diagnosis.string?, diagnosis.causes.first()?);
        let now = today.get(i)?.as_ref()?;
        let number = |property: Property| now.report.get(property).value;
        let flaw = match first.cause {
            Cause::SweatEatsWinding => {
                Flaw::Metal(now.string.construction.outer_winding()?.metal.key)
            }
            Cause::TorsionWhistle | Cause::DrinksHumidity => Flaw::Family(now.string.family),
            Cause::KindTooBright => Flaw::Shine(number(Property::Brilliance)),
            Cause::KindTooDark => Flaw::Dullness(number(Property::Brilliance)),
            Cause::TensionTooHigh => Flaw::Tension(number(Property::Tension)),
            Cause::TensionTooLow => Flaw::Slackness(number(Property::Tension)),
            Cause::NearItsLimit => Flaw::Work(number(Property::BreakingShare)),
            _ => return None,
        };
        Some((i, flaw))
    };
    findings.iter().filter_map(of).collect()
}

fn diagnosis(
    problem: &Problem,
    today: &[Option<Today>],
    bother: Bother,
    string: Option<usize>,
) -> Diagnosis {
    let strings: Vec<usize> = match string {
        Some(i) => vec![i],
        None => (0..today.len()).collect(),
    };
    let weigh = |(cause, judgement, speaks): &(Cause, f64, Speaks)| {
        let (says, numbers) = ask(problem, today, &strings, *speaks);
        let plausible = judgement * says.factor();
        let likely = match plausible {
            p if p >= LIKELY.0 => Likely::Likely,
            p if p >= LIKELY.1 => Likely::Possible,
            _ => Likely::Unlikely,
        };
        Weighed { cause: *cause, plausible, likely, judged: numbers.is_empty(), numbers }
    };
    let mut causes: Vec<Weighed> = causes_of(bother).iter().map(weigh).collect();
    // Equals stay in the order of the table.
    causes.sort_by(|a, b| b.plausible.total_cmp(&a.plausible));
    Diagnosis { bother, string, causes }
}

/// What speaks, over the strings it may be about: the one that speaks loudest for the cause counts.
fn ask(
    problem: &Problem,
    today: &[Option<Today>],
    strings: &[usize],
    speaks: Speaks,
) -> (Says, Vec<Number>) {
    match speaks {
        Nobody => return (Says::Nothing, Vec::new()),
        Answer(says) => return (says(problem), Vec::new()),
        Step => return step(problem, today, strings),
        Worn(..) | Unsettled | Above(..) | Below(..) | Fact(_) => {}
    }
    let known = strings.iter().filter_map(|i| Some((*i, today.get(*i)?.as_ref()?)));
    let mut loudest: Option<(Says, f64, Vec<Number>)> = None;
    for (i, now) in known {
        let (says, by, number) = ask_one(problem, i, now, speaks);
        let numbers: Vec<Number> = number.into_iter().collect();
        let louder = loudest.as_ref().is_none_or(|(_, most, _)| by > *most);
        if louder {
            loudest = Some((says, by, numbers));
        }
    }
    match loudest {
        Some((says, _, numbers)) => (says, numbers),
        // Where nothing is known of the strings, the age of the set may be.
        None => match (speaks, problem.age_months) {
            (Worn(old, young), Some(age)) => {
                let life = super::today::life(problem, crate::material::Class::Polymer);
                let (says, _, number) = worn(strings[0], age, life, (old, young));
                (says, number.into_iter().collect())
            }
            _ => (Says::Nothing, Vec::new()),
        },
    }
}

/// What a string says of a cause, how loudly, and the number.
fn ask_one(
    problem: &Problem,
    i: usize,
    now: &Today,
    speaks: Speaks,
) -> (Says, f64, Option<Number>) {
    let string = &problem.strings[i];
    let compared = |property: Property, limit: f64, above: bool| {
        let estimate = now.report.get(property);
        // A change of pitch is heard whichever way it goes.
        let size = if property.is_drift() { estimate.size() } else { estimate };
        let (over, under) = if above {
            (size.low > limit, size.high < limit)
        } else {
            (size.high < limit, size.low > limit)
        };
        let by = if above { size.value / limit } else { limit / size.value.max(1e-12) };
        (
            told(over, under),
            by,
            Some(Number { property: property.key(), string: i, estimate, limit }),
        )
    };
    match speaks {
        Above(property, limit) => compared(property, limit(problem, string), true),
        Below(property, limit) => compared(property, limit(problem, string), false),
        Worn(old, young) => match now.age_months {
            Some(age) => worn(i, age, now.life_months, (old, young)),
            None => (Says::Nothing, 0.0, None),
        },
        Unsettled => match now.age_months {
            Some(age) => {
                let estimate = now.report.get(Property::SettlingDays);
                let days = age * DAYS_A_MONTH;
                let property = Property::SettlingDays.key();
                let number = Number { property, string: i, estimate, limit: days };
                let says = told(estimate.low > days, estimate.high < days);
                (says, estimate.value / days.max(1e-9), Some(number))
            }
            None => (Says::Nothing, 0.0, None),
        },
        Fact(says) => {
            let says = says(problem, now);
            (says, says.factor(), None)
        }
        Nobody | Answer(_) | Step => (Says::Nothing, 0.0, None),
    }
}

const DAYS_A_MONTH: f64 = 30.4;

const fn told(speaks_for: bool, against: bool) -> Says {
    match (speaks_for, against) {
        (true, _) => Says::For,
        (false, true) => Says::Against,
        (false, false) => Says::Nothing,
    }
}

fn worn(i: usize, age: f64, life: f64, (old, young): (f64, f64)) -> (Says, f64, Option<Number>) {
    let share = age / life;
    let estimate = Estimate { value: age, low: age, high: age };
    let number = Number { property: "age_months", string: i, estimate, limit: life * old };
    (told(share >= old, share < young), share, Some(number))
}

/// Ratio of neighbours' tensions against the usual one, either way, above which one of them stands out: as much as
/// two of the three thirds of a usual band lie apart.
const STEP: f64 = 1.25;

/// The neighbours whose tensions differ most from the usual step, and whether that is much.
fn step(problem: &Problem, today: &[Option<Today>], strings: &[usize]) -> (Says, Vec<Number>) {
    let mut most: Option<Number> = None;
    for i in 0..today.len().saturating_sub(1) {
        if !strings.iter().any(|string| *string == i || *string == i + 1) {
            continue;
        }
        let (Some(upper), Some(lower)) = (&today[i], &today[i + 1]) else { continue };
        let usual = neighbours::usual_step(&problem.strings[i], &problem.strings[i + 1]);
        let ratio = upper.string.tension / lower.string.tension / usual;
        let size = ratio.max(1.0 / ratio);
        if most.is_none_or(|most| size > most.estimate.value) {
            // The one that lies further from the middle of its own position is the one that stands out.
            let off = |k: usize, tension: f64| {
                let (low, high) = problem.strings[k].usual_tension;
                (2.0 * tension / (low + high) - 1.0).abs()
            };
            let upper_is_odd = off(i, upper.string.tension) > off(i + 1, lower.string.tension);
            let string = match strings {
                [only] => *only,
                _ if upper_is_odd => i,
                _ => i + 1,
            };
            let estimate = Estimate { value: size, low: size, high: size };
            most = Some(Number { property: "tension_step", string, estimate, limit: STEP });
        }
    }
    most.map_or((Says::Nothing, Vec::new()), |number| {
        let size = number.estimate.value;
        (told(size > STEP, size < 1.0 + (STEP - 1.0) / 2.0), vec![number])
    })
}
