//! A set is of one kind: coherent, the same as now where nothing is wished, and moved by a wish the way it points.

use serde_json::json;
use strings::construction::{CoreType, Family};
use strings::fit::admission::Exclusion;
use strings::fit::answers::{Answers, Bother, Now, StringAnswer, Today, Wishes};
use strings::fit::choose::{self, Choice, Outcome};
use strings::fit::problem::StringStatus;
use strings::fit::{Fitting, fit, summary};
use strings::instrument;
use strings::material::Class;
use strings::precedent::kinds::{KINDS, SetKind, Tradition};
use support::Seeded;

use crate::anybody::{anybody, tables};

fn set(fitting: &Fitting) -> Option<(&Choice, &[Choice])> {
    match &fitting.outcome {
        Outcome::Set { best, others } => Some((best, others)),
        Outcome::Nothing(_) => None,
    }
}

/// In all that is told, each string is one that its kind allows, and no two polymers stand in one set.
#[test]
fn every_set_belongs_to_its_kind_and_has_one_polymer() {
    let (tables, mut seeded) = (tables(), Seeded::new(1_601));
    let (mut sets, mut level) = (0, 0);
    for _ in 0..120 {
        let asked = anybody(&mut seeded, &tables);
        let request = json!({ "ask": "fit", "answers": asked }).to_string();
        let answers = protocol::split_search::asked(&request).unwrap();
        let fitting = fit(&answers);
        let Some((best, others)) = set(&fitting) else { continue };
        for one in core::iter::once(best).chain(others) {
            let here = &fitting.problem.kinds[one.kind];
            let mut polymers = Vec::new();
            for ((c, cores), string) in
                one.strings.iter().zip(&here.cores).zip(&fitting.problem.strings)
            {
                assert!(cores.has(c.core_type()), "{} in {}", c.core_type().key(), here.kind.key);
                let is_open = string.standing == StringStatus::Open && string.family.is_none();
                if is_open && c.family == Family::Synthetic {
                    polymers.push(c.construction.core.material.key);
                }
            }
            polymers.dedup();
            assert!(polymers.len() < 2, "{polymers:?} in {}", here.kind.key);
            assert!(one.total() <= best.total() + 1e-9);
        }
        sets += 1;
        let second = choose::rather_than(best, others);
        level += usize::from(second.is_some_and(|s| summary::lead(best, s) < summary::CLOSE_CALL));
    }
    support::tell(&format!("{level} of {sets} fits show two level sets"));
    assert!(sets > 80, "only {sets} sets");
    assert!(level * 4 <= sets, "{level} of {sets} fits show two level sets");
}

/// Who says what is on and wishes nothing gets that kind again.
#[test]
fn without_a_wish_the_kind_stays() {
    let mut asked = 0;
    for kind in instrument::ALL {
        for now in Now::ALL {
            let answers = Answers { instrument: Some(kind), now: Some(*now), ..Answers::default() };
            let fitting = fit(&answers);
            let (best, _) = set(&fitting).unwrap();
            let here = &fitting.problem.kinds[best.kind];
            assert_eq!(here.kind.class, now.class(), "{} {}", kind.key, here.kind.key);
            assert!(here.is_now);
            asked += 1;
        }
    }
    assert_eq!(asked, 12);
}

/// The more colour is wished, the more the set stretches; within a kind and from kind to kind. On average over its
/// strings it may fall by less than half of what is noticed, 10 %, as one string takes the place of another.
#[test]
fn a_wish_for_colour_moves_the_stretch_its_way() {
    for kind in instrument::ALL {
        let mut before = 0.0;
        for colour in [-2.0, -1.0, 0.0, 1.0, 2.0] {
            let wishes = Wishes { colour, ..Wishes::default() };
            let answers = Answers { instrument: Some(kind), wishes, ..Answers::default() };
            let fitting = fit(&answers);
            let (best, _) = set(&fitting).unwrap();
            let stretch: f64 = best.strings.iter().map(|c| ln(c.stretch)).sum();
            let slack = 0.5 * ln(1.1) * best.strings.len() as f64;
            assert!(before == 0.0 || stretch > before - slack, "{} at {colour}", kind.key);
            before = stretch;
        }
    }
}

#[allow(clippy::disallowed_methods, reason = "a test's own logarithm may differ in the last bit")]
fn ln(x: f64) -> f64 {
    x.ln()
}

/// Strings that were asked for pull the others to the kind they belong to.
#[test]
fn what_is_asked_for_brings_its_kind() {
    let string = |family| StringAnswer { family: Some(family), ..StringAnswer::default() };
    let families = [Family::PlainSteel, Family::PlainGut, Family::PlainGut];
    let answers = Answers { strings: families.map(string).to_vec(), ..Answers::default() };
    let fitting = fit(&answers);
    let (best, _) = set(&fitting).unwrap();
    assert_eq!(best.strings[3].family, Family::WoundGut);
}

/// A kind that is not possible says what stands in its way, of its own strings and no others'.
#[test]
fn gut_throughout_at_modern_pitch_is_too_near_to_breaking() {
    let fitting = fit(&Answers::default());
    let gut = fitting.ruled_out.iter().find(|one| one.kind.key == "gut").unwrap();
    assert_eq!((gut.string, gut.limit), (Some(0), Some(Exclusion::Breaking)));
    let free = fit(&Answers { animal_free: true, ..Answers::default() });
    let gut = free.ruled_out.iter().find(|one| one.kind.key == "wound-gut").unwrap();
    assert_eq!(gut.limit, Some(Exclusion::Animal));
}

/// What comes from an animal is told by the class of its core.
#[test]
fn gut_and_nothing_else_comes_from_an_animal() {
    for core in strings::material::CORES {
        assert_eq!(core.animal, core.class == Class::Gut, "{}", core.key);
    }
}

/// A string that bothers is not what the set is to be like.
#[test]
fn a_complaint_of_one_string_does_not_bind_the_set_to_it() {
    let a = StringAnswer {
        today: Today { family: Some(Family::WoundSteel), ..Today::default() },
        bothers: vec![Bother::TooBright],
        ..StringAnswer::default()
    };
    let answers = Answers {
        instrument: Some(&instrument::VIOLA),
        now: Some(Now::Synthetic),
        strings: vec![a],
        ..Answers::default()
    };
    let fitting = fit(&answers);
    let now = fitting.problem.kinds.iter().filter(|here| here.is_now);
    assert!(now.map(|here| here.kind.key).any(|key| key == "soft-synthetic"));
}

/// The table of kinds: shares of a hundred, each key once an instrument, and nothing that speaks of an unknown position.
#[test]
fn the_table_of_kinds_holds_together() {
    for kind in instrument::ALL {
        let kinds: Vec<&SetKind> = SetKind::all_of(kind).collect();
        for tradition in Tradition::ALL {
            let all: f64 = kinds.iter().map(|set| set.usual_in(*tradition)).sum();
            assert!((85.0..=115.0).contains(&all), "{} {}: {all}", kind.key, tradition.key());
        }
        for (i, set) in kinds.iter().enumerate() {
            assert!(kinds[..i].iter().all(|other| other.key != set.key), "{}", set.key);
        }
        for (_, position) in kind.tunings.iter().flat_map(|tuning| tuning.strings) {
            let position = strings::precedent::position_of(position).unwrap();
            for set in &kinds {
                let cores = set.cores_at(position);
                assert!(CoreType::ALL.iter().any(|core| cores.has(*core)), "{}", set.key);
            }
        }
    }
    assert!(KINDS.len() > 30);
}
