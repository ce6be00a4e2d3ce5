//! Laws of the choice: it answers the same twice, a weight raised is a wish better met, limits are kept.

use protocol::reply::{Fit, Reply};
use protocol::request::{Answers, FitRequest, Request};
use strings::fit::choose::Outcome;
use strings::fit::desirability::{self, Attribute};
use strings::fit::{self, choose};
use support::Seeded;

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

/// Raising one weight, others fixed, never lowers the chosen set's total on that attribute.
///
/// Proven for the exact optimum of a sum; here over the shortlists held fixed, which is what is optimised.
#[test]
fn raising_a_weight_never_lowers_what_it_weighs() {
    let mut seeded = Seeded::new(5);
    for kind in strings::instrument::ALL {
        let answers = fit::answers::Answers { instrument: Some(kind), ..Default::default() };
        let fitting = fit::fit(&answers);
        for attribute in Attribute::ALL {
            let i = *attribute as usize;
            let mut last = f64::NEG_INFINITY;
            let mut weight = 0.0;
            for _ in 0..6 {
                weight += seeded.between(0.1, 2.0);
                let mut problem = fitting.problem.clone();
                problem.weights[i] = weight;
                // Scores are means: so that only this weight changes, they are taken as sums over a fixed total.
                let total = 20.0;
                let mut lists = fitting.shortlists.clone();
                for list in &mut lists {
                    for c in list.iter_mut() {
                        let sum: f64 = problem.weights.iter().sum();
                        c.score =
                            desirability::score(&c.desirabilities, &problem.weights) * sum / total;
                    }
                    list.sort_by(|a, b| b.score.total_cmp(&a.score));
                }
                let chosen = choose::best(&problem, &lists, None).unwrap();
                let met: f64 = chosen.strings.iter().map(|c| libm_log(c.desirabilities[i])).sum();
                assert!(
                    met >= last - 1e-9,
                    "{} at weight {weight}: {met} after {last}",
                    attribute.key()
                );
                last = met;
            }
        }
    }
}

#[allow(clippy::disallowed_methods, reason = "a test's own sum may differ in the last bit")]
fn libm_log(x: f64) -> f64 {
    x.ln()
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
    for string in allergic.set.unwrap().strings {
        assert!(string.report.construction.windings.last().is_none_or(|w| w.metal != "nickel"));
    }
    let electric = fit_of(Answers { magnetic_pickup: true, ..Answers::default() });
    for string in electric.set.unwrap().strings {
        assert!(string.report.construction.core.material.ends_with("steel"));
    }
}

#[test]
fn nothing_fits_says_why_and_what_to_give_up() {
    let fit = fit_of(Answers {
        animal_free: true,
        strings: vec![protocol::request::StringAnswer {
            family: Some("plain-gut".into()),
            ..Default::default()
        }],
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
    match choose::choose(&problem, &fitting.found, &fitting.shortlists) {
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
