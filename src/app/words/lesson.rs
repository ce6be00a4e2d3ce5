//! What a lesson says: its takeaways, and the answers to its questions, all of them from the numbers of the cores.

use protocol::reply::{Quantity, Report, Stretched};

use super::naming::capital;
use super::reasons::HEARING;
use super::{drift, property, say};
use crate::lesson::Step;
use crate::units;

/// What warms a string while it is played, and what damps it over the year.
const EVENING_WARMTH: &str = "evening_warmth_cent";
const SEASON_DAMP: &str = "season_damp_cent";

/// Who has the most, or the least, of something, and how sure that is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Lead {
    /// One whose range lies apart from all others.
    Clear(usize),
    /// One whose value lies outside the others' ranges, and theirs outside its own.
    Probably(usize),
    /// One of some of them; of the others it is sure enough that they are not it.
    Either(Vec<usize>),
    /// The ranges say nothing.
    Even,
}

/// Which of a few has the most, or the least.
#[must_use]
pub fn lead(all: &[&Quantity], most: bool) -> Lead {
    let turned = |q: &&Quantity| {
        if most { (q.value, q.low, q.high) } else { (-q.value, -q.high, -q.low) }
    };
    let all: Vec<_> = all.iter().map(turned).collect();
    let order = |i: &usize, j: &usize| all[*i].0.total_cmp(&all[*j].0);
    let Some(first) = (0..all.len()).max_by(order) else { return Lead::Even };
    let (value, low, _) = all[first];
    let may_be: Vec<usize> =
        (0..all.len()).filter(|i| *i == first || value <= all[*i].2 || low <= all[*i].0).collect();
    if may_be.len() == 1 {
        let apart = (0..all.len()).all(|i| i == first || low > all[i].2);
        if apart { Lead::Clear(first) } else { Lead::Probably(first) }
    } else if may_be.len() < all.len() {
        Lead::Either(may_be)
    } else {
        Lead::Even
    }
}

/// What a core is called in a sentence: `the plain gut string`.
#[must_use]
pub fn the_core(report: &Report) -> String {
    say!("class-core", family = &report.family)
}

/// A number as it is said to a class: no stroke in its unit.
fn aloud(key: &str, q: &Quantity) -> String {
    match key {
        "pull_cent_m" => units::plainly_as(key, q, &|cents| say!("class-for-mm", cents = cents)),
        "peg_cent_deg" => {
            units::plainly_as(key, q, &|cents| say!("class-for-degree", cents = cents))
        }
        _ => drift::plainly(key, q),
    }
}

/// Every core with its number: `plain gut 12 cents; wound steel 45 cents`.
#[must_use]
pub fn each(reports: &[&Report], key: &str) -> String {
    let one = |report: &&Report| {
        let q = report.numbers.get(key)?;
        let core = say!("class-kind", family = &report.family);
        Some(say!("class-each", core = core, value = aloud(key, q)))
    };
    capital(&reports.iter().filter_map(one).collect::<Vec<_>>().join("; "))
}

/// Who has the most, or the least: a word for how sure it is, what they are called, and the number of one alone.
fn told(reports: &[&Report], key: &str, most: bool) -> Option<(&'static str, String, String)> {
    let all: Option<Vec<Quantity>> =
        reports.iter().map(|r| r.numbers.get(key).map(|q| drift::sized(key, q))).collect();
    let all = all?;
    let one = |i: usize| {
        let number = reports[i].numbers.get(key).map(|q| aloud(key, q));
        (the_core(reports[i]), number.unwrap_or_default())
    };
    Some(match lead(&all.iter().collect::<Vec<_>>(), most) {
        Lead::Clear(i) => ("clear", one(i).0, one(i).1),
        Lead::Probably(i) => ("probably", one(i).0, one(i).1),
        Lead::Either(some) => {
            let names = some.into_iter().map(|i| one(i).0);
            let or = |one: String, other: String| say!("class-or", one = one, other = other);
            ("either", names.reduce(or).unwrap_or_default(), String::new())
        }
        Lead::Even => ("even", String::new(), String::new()),
    })
}

/// The answer to "which": the name, how sure it is, and everybody's number.
#[must_use]
pub fn which(reports: &[&Report], key: &str, most: bool) -> String {
    let Some((lead, name, _)) = told(reports, key, most) else { return String::new() };
    let numbers = say!("class-numbers", name = property::name(key), each = each(reports, key));
    capital(&say!("class-which", lead = lead, name = name, numbers = numbers))
}

/// The takeaway of a step, without its full stop.
#[must_use]
pub fn title(step: Step, reports: &[&Report], name: &str) -> String {
    let of = |key: &str, most: bool| {
        let wide = |report: &&Report| report.numbers.get(key).is_some_and(units::is_wide);
        match told(reports, key, most) {
            // Who it is is sure; a number with a wide range is no headline.
            Some(("clear", name, _)) if reports.iter().any(wide) => ("either", name, String::new()),
            told => told.unwrap_or(("even", String::new(), String::new())),
        }
    };
    let title = match step {
        Step::Inside => say!("class-inside-title", count = reports.len(), name = name),
        Step::Stretch => {
            let (lead, most, value) = of("pull_cent_m", true);
            say!("class-stretch-title", lead = lead, name = most, value = value)
        }
        Step::Response => {
            let (lead, most, value) = of("stretch", true);
            say!("class-answer-title", lead = lead, name = most, value = value)
        }
        Step::Ring => {
            let key = "brilliance_hz";
            let (lead, most, value) = of(key, true);
            let ends = reports.iter().filter_map(|r| r.numbers.get(key)).map(|q| q.value);
            let heard = if ends.fold(0.0, f64::max) > HEARING { "no" } else { "yes" };
            let reach = say!("class-ring-reach", heard = heard, value = value);
            say!("class-ring-title", lead = lead, name = most, reach = reach)
        }
        Step::Air => {
            let (lead, least, value) = of(EVENING_WARMTH, false);
            let warmth = say!("class-warmth-title", lead = lead, name = least, value = value);
            let (lead, least, value) = of(SEASON_DAMP, false);
            let damp = say!("class-damp-title", lead = lead, name = least, value = value);
            say!("class-air-title", warmth = warmth, damp = damp)
        }
        Step::Settle => {
            let (lead, least, value) = of("settling_d", false);
            say!("class-settle-title", lead = lead, name = least, value = value)
        }
    };
    capital(&title)
}

/// The sentence under the takeaway.
#[must_use]
pub fn sentence(step: Step) -> &'static str {
    match step {
        Step::Inside => say!("class-inside-lead"),
        Step::Stretch => say!("class-stretch-lead"),
        Step::Response => say!("class-answer-lead"),
        Step::Ring => say!("class-ring-lead"),
        Step::Air => say!("class-air-lead"),
        Step::Settle => say!("class-settle-lead"),
    }
}

/// The numbers that a step shows of every core.
#[must_use]
pub const fn numbers(step: Step) -> &'static [&'static str] {
    match step {
        Step::Inside => &["outer_diameter_m", "winding_mass_share"],
        Step::Stretch => &[],
        Step::Response => &["stretch", "settling_d"],
        Step::Ring => &["brilliance_hz", "rings_on_s"],
        Step::Air => &[EVENING_WARMTH, SEASON_DAMP],
        Step::Settle => &["settling_d", "loss_cent_decade"],
    }
}

/// A question that a teacher asks, with its answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Question {
    /// The question.
    pub ask: String,
    /// The answer.
    pub answer: String,
}

/// The questions of a step. `gut` is the plain gut string of the place, where one is made and another kind is usual.
#[must_use]
pub fn questions(
    step: Step,
    reports: &[&Report],
    gut: Option<&Report>,
    name: &str,
) -> Vec<Question> {
    let about = |ask: &str, key: &str, most: bool| Question {
        ask: ask.to_owned(),
        answer: which(reports, key, most),
    };
    match step {
        Step::Inside => vec![about(say!("class-ask-heavy"), "mass_at_pitch_kg_m", true)],
        Step::Stretch => {
            let mut all = vec![about(say!("class-ask-peg"), "peg_cent_deg", true)];
            all.push(match gut {
                Some(gut) => rarely_gut(reports, gut, name),
                None => about(say!("class-ask-break"), "breaking_share", true),
            });
            all
        }
        Step::Response => vec![
            about(say!("class-ask-stretch"), "stretch", true),
            about(say!("class-ask-speaks"), "speaks_s", false),
        ],
        Step::Ring => vec![about(say!("class-ask-ring"), "rings_on_s", true)],
        Step::Air => vec![
            about(say!("class-ask-lamps"), EVENING_WARMTH, true),
            about(say!("class-ask-rain"), "evening_damp_cent", true),
            about(say!("class-ask-body"), "season_body_cent", true),
            about(say!("class-ask-drink"), "season_moisture_cent", true),
        ],
        Step::Settle => vec![about(say!("class-ask-eve"), "settling_d", false)],
    }
}

/// Why a top string is rarely gut: how near to breaking gut would hang, and how near the others do.
fn rarely_gut(reports: &[&Report], gut: &Report, name: &str) -> Question {
    let share = gut.numbers.get("breaking_share");
    let others: Vec<&Report> = reports.iter().copied().filter(|r| r.family != gut.family).collect();
    let answer = say!(
        "class-gut-answer",
        share = share.map(|q| units::plainly("breaking_share", q)).unwrap_or_default(),
        others = each(&others, "breaking_share"),
    );
    Question { ask: say!("class-ask-gut", name = name), answer }
}

/// What a pull has made of a string, in a line.
#[must_use]
pub fn pulled(now: &Stretched) -> String {
    let percent = |x: f64| units::bare("stretch", x, 2);
    if now.above_cent.is_none() || now.breaking_share.value >= 1.0 {
        return state(now);
    }
    let tension = units::bare("tension_n", now.tension_n.value, 2);
    let share = units::bare("breaking_share", now.breaking_share.value, 2);
    let stretch = percent(now.stretch.value);
    say!("inside-now", change = state(now), tension = tension, stretch = stretch, share = share)
}

/// What became of a string under a pull, as short as can be.
#[must_use]
pub fn state(now: &Stretched) -> String {
    match &now.above_cent {
        _ if now.breaking_share.value >= 1.0 => say!("inside-snapped").to_owned(),
        Some(above) => change(above.value),
        None if now.stretch.value > 0.0 => say!("inside-perhaps").to_owned(),
        None => say!("inside-slack").to_owned(),
    }
}

/// How far a pitch lies above or below where it was.
#[must_use]
pub fn change(cents: f64) -> String {
    let size = libm::round(cents.abs());
    let way = if size < 1.0 {
        "same"
    } else if cents > 0.0 {
        "up"
    } else {
        "down"
    };
    say!("inside-change", way = way, cents = units::fixed(size, 0))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn quantity(value: f64, low: f64, high: f64) -> Quantity {
        let (evidence, source) = ("computed".to_owned(), "hooke".to_owned());
        Quantity { value, low, high, evidence, source }
    }

    #[test]
    fn a_lead_is_only_called_what_the_ranges_bear() {
        let (a, b) = (quantity(10.0, 8.0, 12.0), quantity(5.0, 4.0, 6.0));
        assert_eq!(lead(&[&b, &a], true), Lead::Clear(1));
        assert_eq!(lead(&[&b, &a], false), Lead::Clear(0));
        let wide = quantity(5.0, 2.0, 9.0);
        assert_eq!(lead(&[&a, &wide], true), Lead::Probably(0));
        assert_eq!(lead(&[&a, &wide], false), Lead::Probably(1));
        let wider = quantity(5.0, 1.0, 11.0);
        assert_eq!(lead(&[&a, &wider], true), Lead::Even);
        // One is out of it, the other two cannot be told apart.
        assert_eq!(lead(&[&a, &b, &wider], true), Lead::Either(vec![0, 2]));
        assert_eq!(lead(&[], true), Lead::Even);
    }

    #[test]
    fn a_change_of_pitch_has_a_direction_or_is_none() {
        assert_ne!(change(40.0), change(-40.0));
        assert_eq!(change(0.3), change(-0.3));
        assert!(change(-41.2).contains("41"), "{}", change(-41.2));
    }
}
