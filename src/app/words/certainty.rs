//! How sure a set is, and what would change it, as sentences.
//!
//! Two words are kept apart. How far the set leads if everything is as said comes with the set: *about level*, or
//! *behind by so much*. How often it stays the best when answers and numbers are drawn comes later: *very likely*,
//! *likely* or *a close call*, and only here. Where the two point different ways both are said, in one sentence that
//! holds them together: a set may lead by a hair and yet nearly always, or by far and only as things were said.

use std::rc::Rc;

use protocol::reply::{
    AnswerValue, Certainty, FittedString, Set, SureString, TurnedString, TurningPointTold,
};
use protocol::request::Answers;
use strings::fit::desirability::Attribute;

use super::naming::{capital, family, list};
use super::questions::{self, Question};
use super::{say, set, speech};
use crate::detail_level::DetailLevel;
use crate::fields::{Flag, Wish, Word};
use crate::units;

/// The word for a share, from the model's own key for it.
fn word(key: &str) -> &str {
    speech::of_or_key("sure-word", key)
}

/// How sure the set is, in one or two sentences that stand over it.
#[must_use]
pub fn over(set: &Set, sure: &Certainty) -> Vec<String> {
    let key = sure.chosen.word.as_str();
    if key == "close-call" {
        let mut said = vec![say!("sure-close-call").to_owned()];
        // Two sets that come out level are shown as equals already.
        if !set.close_call {
            said.push(match &sure.next {
                Some(next) if next.share.share >= sure.chosen.share => {
                    say!("sure-equal", families = families(&next.families, set))
                }
                _ => say!("sure-leads").to_owned(),
            });
        }
        return said;
    }
    if set.close_call {
        return vec![speech::of("sure-level", key).unwrap_or_default().to_owned()];
    }
    vec![speech::of("sure", key).unwrap_or_default().to_owned()]
}

fn families(keys: &[String], set: &Set) -> String {
    let keys: Vec<&str> = keys.iter().map(String::as_str).collect();
    set::families(&keys, &set::names(set))
}

/// What was counted over the whole set, in numbers.
#[must_use]
pub fn counted(set: &Set, sure: &Certainty) -> Vec<String> {
    let mut said = vec![say!(
        "sure-chosen",
        share = units::of_hundred(sure.chosen.share),
        error = units::of_hundred(sure.chosen.error)
    )];
    if set.close_call {
        said.push(say!("sure-second", share = units::of_hundred(sure.second.share)));
    }
    if let Some(next) = &sure.next {
        said.push(say!(
            "sure-next",
            families = families(&next.families, set),
            share = units::of_hundred(next.share.share)
        ));
    }
    said
}

/// A smaller share would be printed as none.
const TOLD_SHARE: f64 = 0.005;

/// How sure each new string is.
#[must_use]
pub fn strings(set: &Set, sure: &Certainty, depth: DetailLevel) -> Vec<String> {
    let names = set::names(set);
    let of = |((string, of), name): ((&Rc<FittedString>, _), &String)| {
        let of: &SureString = of;
        let gauge = questions::gauge_listed(&string.shopping.gauge_class);
        let kind = family(&string.report.family);
        if depth == DetailLevel::Words {
            return say!(
                "sure-string",
                name = name,
                family = kind,
                word = word(&of.family.word),
                gauge = gauge,
                gauge_word = word(&of.gauge_class.word)
            );
        }
        let share = units::of_hundred(of.family.share);
        let gauge_share = units::of_hundred(of.gauge_class.share);
        let other = of.families.iter().find(|f| f.key != string.report.family);
        match other.filter(|f| f.share >= TOLD_SHARE) {
            Some(other) => say!(
                "sure-string-other",
                name = name,
                family = kind,
                share = share,
                other = family(&other.key),
                other_share = units::of_hundred(other.share),
                gauge = gauge,
                gauge_share = gauge_share
            ),
            None => say!(
                "sure-string-share",
                name = name,
                family = kind,
                share = share,
                gauge = gauge,
                gauge_share = gauge_share
            ),
        }
    };
    set.strings
        .iter()
        .zip(&sure.strings)
        .zip(&names)
        .filter(|((string, _), _)| string.standing == "new")
        .map(of)
        .collect()
}

/// What would change the set: a sentence for each answer; or why there is none.
#[must_use]
pub fn turns(set: &Set, sure: &Certainty, answers: &Answers, depth: DetailLevel) -> Vec<String> {
    if !sure.turning_points.is_empty() {
        return sure.turning_points.iter().map(|p| turn(set, p, answers, depth)).collect();
    }
    if sure.turned == 0 {
        vec![say!("turn-none", tried = sure.tried)]
    } else {
        vec![say!("turn-unsure").to_owned()]
    }
}

fn turn(set: &Set, point: &TurningPointTold, answers: &Answers, depth: DetailLevel) -> String {
    say!("turn-then", change = change(point, answers, depth), then = then(set, &point.strings))
}

/// A change of an answer, as the first part of a sentence.
fn change(point: &TurningPointTold, answers: &Answers, depth: DetailLevel) -> String {
    let (from, to) = (&point.from, &point.turns_at);
    let holds = (point.holds_at != point.from).then_some(&point.holds_at);
    match (point.answer.split_once('.'), from, to) {
        (Some(("wishes", key)), AnswerValue::Number(from), AnswerValue::Number(to)) => {
            wish(key, *from, *to, holds, depth)
        }
        (Some(("weights", key)), AnswerValue::Number(from), AnswerValue::Number(to)) => {
            weight(key, *from, *to, holds, depth)
        }
        (None, AnswerValue::Number(from), AnswerValue::Number(to)) if point.answer == "a4_hz" => {
            say!("turn-pitch", to = units::hertz(*to), from = units::hertz(*from))
        }
        (None, _, AnswerValue::Number(days)) => say!("turn-days", days = units::days(*days)),
        (None, _, AnswerValue::Flag(yes)) => {
            let fact = Flag::parse(&point.answer).map_or("", questions::flag_label);
            if *yes { say!("turn-so", fact = fact) } else { say!("turn-not-so", fact = fact) }
        }
        (None, from, AnswerValue::Word(to)) => word_change(&point.answer, from, to, answers),
        _ => point.answer.clone(),
    }
}

/// A number on a scale of wishes.
fn scaled(value: f64) -> String {
    units::fixed(value, 1)
}

fn wish(key: &str, from: f64, to: f64, holds: Option<&AnswerValue>, depth: DetailLevel) -> String {
    let wish = match key {
        "colour" => Wish::Colour,
        "brightness" => Wish::Brightness,
        "power" => Wish::Power,
        "feel" => Wish::Feel,
        _ => Wish::Response,
    };
    // As the slider moves.
    let steps = libm::round((to - from).abs() / strings::fit::turning::WISH_STEP).max(1.0);
    let change = say!("turn-steps", steps = steps, more = questions::wish_more(wish, to > from));
    if depth == DetailLevel::Words {
        return change;
    }
    let (from, to) = (scaled(from), scaled(to));
    match holds {
        Some(AnswerValue::Number(holds)) => {
            say!("turn-scale", change = change, from = from, to = to, holds = scaled(*holds))
        }
        _ => say!("turn-scale-first", change = change, from = from, to = to),
    }
}

fn weight(
    key: &str,
    from: f64,
    to: f64,
    holds: Option<&AnswerValue>,
    depth: DetailLevel,
) -> String {
    let name = Attribute::parse(key).map_or(key, |a| questions::weight_name(a as usize));
    let change = if to > from {
        say!("turn-weight-up", weight = name)
    } else {
        say!("turn-weight-down", weight = name)
    };
    if depth == DetailLevel::Words {
        return change;
    }
    let number = |value: f64| units::fixed(value, 2);
    match holds {
        Some(AnswerValue::Number(holds)) => say!(
            "turn-weight",
            change = change,
            to = number(to),
            from = number(from),
            holds = number(*holds)
        ),
        _ => say!("turn-weight-first", change = change, to = number(to), from = number(from)),
    }
}

fn word_change(answer: &str, from: &AnswerValue, to: &str, answers: &Answers) -> String {
    let Some(asked) = Word::parse(answer) else { return answer.to_owned() };
    let choices = questions::choices(asked, answers);
    let label = |key: &str| {
        let choice = choices.iter().find(|choice| choice.key == key);
        choice.map_or_else(|| key.to_owned(), |choice| choice.label.clone())
    };
    let name = Question::Word(asked).text().name;
    match from {
        AnswerValue::Word(from) => {
            say!("turn-answer", name = name, to = label(to), from = label(from))
        }
        _ => say!("turn-answer-new", name = name, to = label(to)),
    }
}

/// What the strings would be, as the second part of a sentence.
fn then(set: &Set, turned: &[TurnedString]) -> String {
    let names = set::names(set);
    let mut groups: Vec<(String, String, Vec<String>)> = Vec::new();
    for t in turned {
        let kind = if t.family == t.family_then { String::new() } else { t.family_then.clone() };
        let gauge = if t.gauge_class == t.gauge_class_then {
            String::new()
        } else {
            t.gauge_class_then.clone()
        };
        let name = names.get(t.string).cloned().unwrap_or_default();
        match groups.iter_mut().find(|(k, g, _)| *k == kind && *g == gauge) {
            Some((_, _, names)) => names.push(name),
            None => groups.push((kind, gauge, vec![name])),
        }
    }
    let parts: Vec<String> = groups
        .iter()
        .map(|(kind, gauge, names)| {
            let names = list(names);
            let (kind, gauge_word) = (family(kind), questions::gauge_listed(gauge));
            if gauge.is_empty() {
                say!("turn-kind", names = names, family = kind)
            } else if kind.is_empty() {
                say!("turn-gauge", names = names, gauge = gauge_word)
            } else {
                say!("turn-both", names = names, family = kind, gauge = gauge_word)
            }
        })
        .collect();
    list(&parts)
}

/// The two lines of the printed sheet. Whoever takes it home has no scale before them, so its change is told in words.
#[must_use]
pub fn on_paper(set: &Set, sure: &Certainty, answers: &Answers) -> Vec<String> {
    let how = over(set, sure).join(" ");
    let first = sure.turning_points.first();
    let first =
        first.map(|point| say!("turn-sheet", turn = turn(set, point, answers, DetailLevel::Words)));
    let how = say!("sure-sheet", sure = format!("{how} {}", counted(set, sure)[0]));
    core::iter::once(how).chain(first).map(|line| capital(&line)).collect()
}
