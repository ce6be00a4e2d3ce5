//! What is said at first sight of a set: why this one, what it costs, the other kind to weigh it against, and when to
//! fit it.

use protocol::reply::{Comparison, FittedString, KindDifference, OtherKind, Plan, Reason, Set};
use protocol::request::Answers;
use strings::report::Property;

use super::naming::{capital, list};
use super::{kinds, property, reasons, say};
use crate::day::{self, Day};
use crate::detail_level::DetailLevel;
use crate::fields::{Number, Wish};
use crate::units;

/// How many differences stand in one sentence.
const TOLD: usize = 2;

/// By how much an answer to the question between two sets moves a wish: as far as most such sets need to be told apart.
const STEP: f64 = 1.0;

/// The wishes, each with the property that it moves, and which way.
const WISHES: [(Wish, Property, f64); 5] = [
    (Wish::Colour, Property::Stretch, 1.0),
    (Wish::Brightness, Property::Brilliance, 1.0),
    (Wish::Power, Property::Impedance, 1.0),
    (Wish::Feel, Property::Feel, 1.0),
    // To speak quickly is to need less time.
    (Wish::Response, Property::Speaks, -1.0),
];

/// A difference from the string that would stand there else, and the strings that have it.
type Difference = (String, Vec<usize>);

/// Why this set: where it is better than the best set of another kind, what was wished for first; or that it is like the
/// one on the instrument now.
#[must_use]
pub fn why(set: &Set, names: &[String]) -> String {
    let found = differences(set, |string| &string.reasons, false);
    if found.is_empty() {
        let known = || set.strings.iter().filter_map(|s| Some((s, s.today.as_ref()?)));
        let is_as_now = known().all(|(string, today)| string.report.family == today.family);
        let stays = is_as_now && known().next().is_some();
        return if stays { say!("glance-as-now") } else { say!("glance-no-reason") }.to_owned();
    }
    let parts = told(&found, names);
    match kinds::rival(set) {
        Some(other) => {
            let kind = kinds::name(&other.kind, set, names);
            say!("glance-against", kind = kind, parts = parts)
        }
        None => say!("glance-parts", parts = capital(&parts)),
    }
}

/// What it costs: where the other is better.
#[must_use]
pub fn cost(set: &Set, names: &[String]) -> Option<String> {
    let found = differences(set, |string| &string.costs, false);
    if !found.is_empty() {
        return Some(say!("glance-parts", parts = capital(&told(&found, names))));
    }
    let weakest = |i: usize| {
        let cost = set.strings[i].costs.iter().find(|r| !r.judged && r.comparison.is_none())?;
        Some((reasons::attribute(&cost.attribute), i))
    };
    let (what, first) = (0..set.strings.len()).find_map(weakest)?;
    let strings: Vec<&String> = (first..set.strings.len())
        .filter(|i| weakest(*i).is_some_and(|(other, _)| other == what))
        .filter_map(|i| names.get(i))
        .collect();
    Some(say!("glance-weakest", what = what, strings = list(&strings)))
}

/// What the second of two sets that come out level has over the first.
#[must_use]
pub fn for_the_second(set: &Set, names: &[String]) -> Option<String> {
    let found = differences(set, |string| &string.costs, true);
    (!found.is_empty()).then(|| say!("glance-parts", parts = capital(&told(&found, names))))
}

/// The differences that some reasons tell, each with its strings, in the order in which they are told; `turned` tells
/// them from the other side.
fn differences(
    set: &Set,
    of: impl Fn(&FittedString) -> &Vec<Reason>,
    turned: bool,
) -> Vec<Difference> {
    let mut found: Vec<Difference> = Vec::new();
    let families = super::set::other_families(set);
    let is_other =
        |i: usize| families.get(i).is_none_or(|family| *family != set.strings[i].report.family);
    // A string that has its family in both sets is weighed against one of neither.
    for (i, string) in set.strings.iter().enumerate().filter(|(i, _)| is_other(*i)) {
        for reason in of(string).iter().filter(|reason| !reason.judged) {
            let Some(comparison) = &reason.comparison else { continue };
            let Some(property) = property::of(&comparison.property) else { continue };
            let above = (comparison.verdict == "above") != turned;
            let word = if above { property.more() } else { property.less() };
            match found.iter_mut().find(|(known, _)| known == word) {
                Some((_, strings)) => strings.push(i),
                None => found.push((word.to_owned(), vec![i])),
            }
        }
    }
    found.truncate(TOLD);
    found
}

/// Differences as the parts of a sentence.
fn told(found: &[Difference], names: &[String]) -> String {
    kinds::on_strings(found.iter().map(|(word, strings)| (strings, word.as_str())), names)
}

/// Wishes for another sound or feel that no string of the set answers noticeably, against what is on the instrument now:
/// each with a kind of set that would, where there is one. Nothing where it is not known what is on it.
#[must_use]
pub fn unmet(set: &Set, answers: &Answers, names: &[String]) -> Vec<String> {
    if set.strings.iter().all(|string| string.today.is_none()) {
        return Vec::new();
    }
    let wished = |wish: Wish| Number::Wish(wish).of(answers).unwrap_or_default();
    let asked = WISHES.into_iter().map(|(wish, property, sign)| (sign * wished(wish), property));
    asked
        .filter(|(wish, _)| *wish != 0.0)
        .filter_map(|(wish, property)| {
            let property = property::of(property.key())?;
            let (above, word) =
                if wish > 0.0 { ("above", property.more()) } else { ("below", property.less()) };
            let answers = |c: &Comparison| c.property == property.key && c.verdict == above;
            if set.strings.iter().any(|string| string.changes.iter().any(answers)) {
                return None;
            }
            let answers = |d: &KindDifference| {
                let strings = if wish > 0.0 { &d.above } else { &d.below };
                d.property == property.key && !strings.is_empty()
            };
            let other = set.other_kinds.iter().find(|kind| kind.differences.iter().any(answers));
            Some(match other {
                Some(other) => {
                    let kind = kinds::name(&other.kind, set, names);
                    say!("glance-unmet-kind", word = word, kind = kind)
                }
                None => say!("glance-unmet", word = word),
            })
        })
        .collect()
}

/// A question that decides between two kinds of set that come out level.
#[derive(Clone, Debug, PartialEq)]
pub struct Question {
    /// The wish that the answer moves.
    pub wish: Wish,
    /// By how much for the first of the sets; for the second by as much the other way.
    pub step: f64,
    /// What the first has more of, and what the second.
    pub rather: [&'static str; 2],
}

/// What to ask where two kinds come out level; none where they differ in nothing that one can wish for.
#[must_use]
pub fn question(set: &Set) -> Option<Question> {
    let differences = &kinds::rival(set).filter(|_| set.close_call)?.differences;
    differences.iter().find_map(|difference| {
        let property = property::of(&difference.property)?;
        let (wish, _, sign) = WISHES.into_iter().find(|(_, p, _)| p.key() == property.key)?;
        // Where one string has more of it and another less, neither answer leads to one of the sets.
        if !difference.above.is_empty() && !difference.below.is_empty() {
            return None;
        }
        let second_has_more = !difference.above.is_empty();
        let step = if second_has_more { -sign } else { sign } * STEP;
        let rather = if second_has_more {
            [property.less(), property.more()]
        } else {
            [property.more(), property.less()]
        };
        Some(Question { wish, step, rather })
    })
}

/// The other kind to weigh the set against: what it is called, and how well it would suit.
#[must_use]
pub fn other_kind(other: &OtherKind, set: &Set, names: &[String]) -> String {
    let kind = say!("glance-or-kind", kind = kinds::name(&other.kind, set, names));
    format!("{kind} {}", kinds::lead(other, DetailLevel::Words))
}

/// When to fit it: by which day, where there is a day by which it must be right.
#[must_use]
pub fn when(plan: &Plan, concert_days: Option<f64>, today: Day) -> String {
    let (likely, safe) = plan.fit_before_d;
    if let Some(days) = concert_days {
        // Counts of days that were asked for are small.
        #[expect(clippy::cast_possible_truncation, reason = "at most some thousand days")]
        let before = |wait: f64| today + (days - wait.max(1.0)).floor() as Day;
        let (likely, safe) = (before(likely.ceil()), before(safe.ceil()));
        return if likely < today {
            say!("when-too-late").to_owned()
        } else if safe < today {
            say!("when-at-once", last = day::named(likely))
        } else {
            say!("when-by", last = day::named(likely), safe = day::named(safe))
        };
    }
    say!("when-days", likely = units::days_to_be_safe(likely), safe = units::days_to_be_safe(safe))
}

#[cfg(test)]
mod tests {
    use protocol::reply::Reply;
    use protocol::request::{FitRequest, Request};

    use super::*;

    fn set(answers: &Answers) -> Set {
        let answers = answers.clone();
        let request = Request::Fit(Box::new(FitRequest { answers }));
        let Reply::Fit(fit) = protocol::handle(&request) else { panic!("it is refused") };
        Set::clone(&fit.set.unwrap())
    }

    #[test]
    fn a_wish_that_nothing_answers_is_told_with_a_kind_that_would() {
        let mut answers = Answers { now: Some("steel".to_owned()), ..Answers::default() };
        answers.wishes.colour = 2.0;
        let mut set = set(&answers);
        let names = super::super::set::names(&set);
        assert_eq!(unmet(&set, &answers, &names), [""; 0], "it is more elastic than steel");
        for string in &mut set.strings {
            let mut same = FittedString::clone(string);
            same.changes.clear();
            *string = same.into();
        }
        let said = unmet(&set, &answers, &names);
        assert!(said.len() == 1 && said[0].starts_with("You asked for “more elastic”"), "{said:?}");
        set.other_kinds.clear();
        assert!(unmet(&set, &answers, &names)[0].ends_with("Set-up and bow would do more."));
        assert_eq!(unmet(&set, &Answers::default(), &names), [""; 0]);
    }

    #[test]
    fn the_question_between_two_sets_leads_to_either() {
        let mut answers = Answers { tuners: Some("all".to_owned()), ..Answers::default() };
        let level = set(&answers);
        let question = question(&level).expect("two kinds come out level");
        assert_eq!(question.wish, Wish::Colour);
        let second = kinds::rival(&level).unwrap();
        for (step, kind) in [(question.step, &level.kind), (-question.step, &second.kind)] {
            answers.wishes.colour = step;
            assert_eq!(&set(&answers).kind, kind);
        }
    }

    #[test]
    fn days_before_a_concert_are_dates() {
        let plan = Plan {
            fit_before_d: (1.6, 4.2),
            settled_d: Vec::new(),
            checks: Vec::new(),
            cautions: Vec::new(),
        };
        // A Tuesday.
        let today = day::read("2026-12-01").unwrap();
        let said = |days: f64| when(&plan, Some(days), today);
        assert_eq!(said(10.0), "Fit it by Wednesday 9 December; Sunday 6 December is safe.");
        assert_eq!(said(3.0), "Fit it at once: after Wednesday 2 December it is likely too late.");
        assert!(said(1.0).starts_with("It will hardly have settled by then"));
        assert_eq!(
            when(&plan, None, today),
            "It takes about 2\u{a0}days to settle; 5\u{a0}days to be safe."
        );
    }
}
