//! Laws of the choice: it answers the same twice, a weight raised is a wish better met, limits are kept.

use protocol::reply::{Fit, Reply};
use protocol::request::{Answers, FitRequest, Request, StringAnswer};
use strings::fit::choose::Outcome;
use strings::fit::desirability::Attribute;
use strings::fit::neighbours;
use strings::fit::{self, choose};
use strings::precedent::SetUp;
use support::Seeded;

use crate::random::people;

fn fit_of(answers: Answers) -> Fit {
    match protocol::handle(&Request::Fit(Box::new(FitRequest { answers }))) {
        Reply::Fit(fit) => *fit,
        other => panic!("refused: {other:?}"),
    }
}

#[test]
fn the_same_answers_give_the_same_set_to_the_bit() {
    let request = r#"{"ask":"fit","answers":{"instrument":"viola","wishes":{"colour":1.5}}}"#;
    assert_eq!(protocol::answer(request), protocol::answer(request));
}

#[test]
fn all_unknown_is_made_every_day_in_the_middle() {
    let set = fit_of(Answers::default()).set.unwrap();
    for string in &set.strings {
        assert_eq!(string.grade, "everyday", "{}", string.note);
        assert_eq!(string.shopping.gauge_class, "medium", "{}", string.note);
    }
}

/// A person with wishes, limits and an instrument of some kind.
pub(crate) fn somebody(seeded: &mut Seeded) -> fit::answers::Answers {
    use fit::answers::{Budget, Music, Pegs, Room};
    let kind = *seeded.one_of(strings::instrument::ALL);
    fit::answers::Answers {
        instrument: Some(kind),
        size: Some(seeded.one_of(kind.sizes)),
        tuning: Some(seeded.one_of(kind.tunings)),
        set_up: Some(*seeded.one_of(&[SetUp::Modern, SetUp::Light, SetUp::Historical])),
        wishes: fit::answers::Wishes {
            colour: seeded.between(-2.0, 2.0),
            brightness: seeded.between(-2.0, 2.0),
            power: seeded.between(-2.0, 2.0),
            feel: seeded.between(-2.0, 2.0),
            response: seeded.between(-2.0, 2.0),
        },
        music: Some(*seeded.one_of(Music::ALL)),
        room: Some(*seeded.one_of(Room::ALL)),
        pegs: Some(*seeded.one_of(Pegs::ALL)),
        budget: Some(*seeded.one_of(Budget::ALL)),
        ..Default::default()
    }
}

/// Raising one weight, others fixed, never lowers the chosen set's total on that attribute.
///
/// For two weights of one attribute each set is at least as good under its own weight as the other set; added up, the
/// set of the higher weight has the higher total. It holds only for the exact best set, so it is a test of that.
#[test]
fn raising_a_weight_never_lowers_what_it_weighs() {
    let mut seeded = Seeded::new(5);
    let mut compared = 0;
    for attribute in Attribute::ALL {
        for _ in 0..people() / 75 {
            let mut answers = somebody(&mut seeded);
            let (mut last, mut weight) = (f64::NEG_INFINITY, 0.0);
            for _ in 0..4 {
                weight += seeded.between(0.1, 2.0);
                answers.weights = vec![(*attribute, weight)];
                let fitting = fit::fit(&answers);
                let Outcome::Set { best, .. } = &fitting.outcome else { continue };
                // Where the search gave up its proof, the set is the best found and no law holds of it.
                if !best.proven {
                    continue;
                }
                let met: f64 = best
                    .strings
                    .iter()
                    .map(|c| libm_log(c.desirabilities[*attribute as usize]))
                    .sum();
                let key = attribute.key();
                assert!(met >= last - 1e-9, "{key} at weight {weight}: {met} after {last}");
                last = met;
                compared += 1;
            }
        }
    }
    assert!(compared > 100, "only {compared} fits compared");
}

#[allow(clippy::disallowed_methods, reason = "a test's own sum may differ in the last bit")]
fn libm_log(x: f64) -> f64 {
    x.ln()
}

/// No set that was told of is at least as good in everything and better in something: it would have been chosen.
#[test]
fn nothing_that_was_told_of_beats_the_set_in_everything() {
    let mut seeded = Seeded::new(17);
    let mut compared = 0;
    for _ in 0..people() / 2 {
        let answers = somebody(&mut seeded);
        let fitting = fit::fit(&answers);
        let Outcome::Set { best, .. } = &fitting.outcome else { continue };
        for (i, told) in fitting.told.iter().enumerate() {
            for other in told {
                let mut set = best.strings.clone();
                set[i] = other.clone();
                if set.iter().map(|c| c.tension).sum::<f64>() > fitting.problem.most_load {
                    continue;
                }
                let pairs: f64 = neighbours::pairs(&fitting.problem, &set).iter().sum();
                let mine: f64 = best.pairs.iter().sum();
                let (a, b) = (&other.desirabilities, &best.strings[i].desirabilities);
                let no_worse = a.iter().zip(b).all(|(a, b)| a >= b)
                    && pairs >= mine
                    && other.penalty <= best.strings[i].penalty;
                let better = a
                    .iter()
                    .zip(b)
                    .zip(&fitting.problem.weights)
                    .any(|((a, b), w)| *w > 0.0 && *a > b * (1.0 + 1e-9));
                assert!(!(no_worse && better), "{answers:?}: string {i} is beaten by {other:?}");
                compared += 1;
            }
        }
    }
    assert!(compared > 500, "only {compared} sets compared");
}

#[test]
fn limits_of_a_person_are_kept() {
    let gut_free = fit_of(Answers {
        set_up: Some("historical".into()),
        animal_free: true,
        ..Answers::default()
    });
    let no_gut = |fit: &Fit| {
        fit.set
            .iter()
            .flat_map(|s| &s.strings)
            .all(|s| s.report.construction.core.material != "gut")
    };
    assert!(no_gut(&gut_free), "gut for one who wants nothing from animals");
    let allergic = fit_of(Answers {
        instrument: Some("double-bass".into()),
        nickel_allergy: true,
        ..Answers::default()
    });
    for string in &allergic.set.unwrap().strings {
        assert!(string.report.construction.windings.last().is_none_or(|w| w.metal != "nickel"));
    }
    let electric = fit_of(Answers { amplified: Some("magnet".to_owned()), ..Answers::default() });
    for string in &electric.set.unwrap().strings {
        assert!(string.report.construction.core.material.ends_with("steel"));
    }
    let acoustic = Answers { amplified: Some("microphone".to_owned()), ..Answers::default() };
    assert!(fit_of(acoustic).set.is_some_and(|set| {
        set.strings.iter().any(|s| !s.report.construction.core.material.ends_with("steel"))
    }));
}

#[test]
fn no_string_and_no_set_pulls_more_than_a_person_allows() {
    let free = fit_of(Answers::default()).set.unwrap();
    let all = free.total_tension_n.value;
    for share in [0.97, 0.93] {
        let limited =
            fit_of(Answers { most_load_n: Some(share * all), ..Answers::default() }).set.unwrap();
        assert!(limited.total_tension_n.value <= share * all);
        let most = share * free.strings[1].report.numbers["tension_n"].value;
        let mut strings = vec![StringAnswer::default(); 2];
        strings[1].most_tension_n = Some(most);
        let limited = fit_of(Answers { strings, ..Answers::default() }).set.unwrap();
        assert!(limited.strings[1].report.numbers["tension_n"].value <= most);
    }
    // Where nothing pulls so little, the limit is named.
    let least = fit_of(Answers { most_load_n: Some(60.0), ..Answers::default() });
    assert!(least.set.is_none() && least.obstacles[0].relax.contains(&"most_load_n".to_owned()));
    let strings = vec![StringAnswer { most_tension_n: Some(10.0), ..StringAnswer::default() }];
    let least = fit_of(Answers { strings, ..Answers::default() });
    let obstacle = &least.obstacles[0];
    assert!(least.set.is_none() && obstacle.relax.contains(&"strings".to_owned()));
    assert!(obstacle.limits.iter().any(|limit| limit.limit == "tension"), "{obstacle:?}");
}

#[test]
fn who_wishes_a_short_ring_gets_no_longer_one() {
    for instrument in ["double-bass", "cello", "violin"] {
        let rings = |ring: Option<&str>| -> Vec<f64> {
            let answers = Answers {
                instrument: Some(instrument.to_owned()),
                played: Some("plucked".to_owned()),
                ring: ring.map(str::to_owned),
                ..Answers::default()
            };
            let set = fit_of(answers).set.unwrap();
            set.strings.iter().map(|s| s.report.numbers["rings_on_s"].value).collect()
        };
        let mean =
            |rings: Vec<f64>| rings.iter().map(|r| libm_log(*r)).sum::<f64>() / rings.len() as f64;
        let (short, usual, long) =
            (mean(rings(Some("short"))), mean(rings(None)), mean(rings(Some("long"))));
        assert!(
            short <= usual + 0.05 && usual <= long + 0.05,
            "{instrument}: {short} {usual} {long}"
        );
    }
}

#[test]
fn nothing_fits_says_why_and_what_to_give_up() {
    let fit = fit_of(Answers {
        animal_free: true,
        strings: vec![StringAnswer { family: Some("plain-gut".into()), ..Default::default() }],
        ..Answers::default()
    });
    assert!(fit.set.is_none());
    let obstacle = &fit.obstacles[0];
    assert_eq!(obstacle.string, Some(0));
    assert!(obstacle.limits.iter().any(|l| l.limit == "animal"));
    assert!(
        obstacle.relax.contains(&"strings".to_owned())
            || obstacle.relax.contains(&"animal_free".to_owned())
    );
}

#[test]
fn a_load_no_set_can_keep_to_is_named() {
    let fitting = fit::fit(&fit::answers::Answers::default());
    let mut problem = fitting.problem.clone();
    problem.most_load = 100.0;
    let fixed = vec![None; problem.strings.len()];
    match choose::choose(&problem, &fitting.found, &fixed).outcome {
        Outcome::Nothing(obstacles) => assert!(
            matches!(obstacles[0], choose::Obstacle::Load { lightest, most } if lightest > most),
            "{obstacles:?}"
        ),
        Outcome::Set { best, .. } => panic!(
            "a set of {} N under a limit of 100 N",
            best.strings.iter().map(|c| c.tension).sum::<f64>()
        ),
    }
}
