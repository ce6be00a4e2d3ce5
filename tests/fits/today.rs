//! What is on the instrument: what stays is left alone, what bothers is looked into, and often less than a set will do.

use protocol::reply::{Fit, Reply};
use protocol::request::{AlsoTuned, Answers, FitRequest, Request, StringAnswer, Today};
use strings::construction::Construction;
use strings::fit::admission::Exclusion;
use strings::fit::answers::Bother;
use strings::fit::{self, admission, complaint, space};
use strings::instrument;
use strings::precedent::SetUp;
use strings::quantity::{Day, Hertz};
use strings::report::{self, LeanCore, Property};
use strings::setting::Setting;

fn fit_of(answers: Answers) -> Fit {
    match protocol::handle(&Request::Fit(Box::new(FitRequest { answers }))) {
        Reply::Fit(fit) => *fit,
        other => panic!("refused: {other:?}"),
    }
}

fn word(text: &str) -> Option<String> {
    Some(text.to_owned())
}

/// A string of which the family is known.
fn now(family: &str) -> StringAnswer {
    let today = Today { family: word(family), ..Today::default() };
    StringAnswer { today, ..StringAnswer::default() }
}

#[test]
fn what_is_kept_is_what_is_there() {
    let light = Today {
        family: word("stranded-steel"),
        gauge_class: word("light"),
        outer_metal: word("tungsten"),
        age_months: None,
    };
    let kept = StringAnswer { today: light, keep: true, ..StringAnswer::default() };
    let fit = fit_of(Answers {
        instrument: word("cello"),
        strings: vec![StringAnswer::default(), StringAnswer::default(), kept],
        // Neither a wish nor a limit touches what stays.
        animal_free: true,
        wishes: protocol::request::Wishes { colour: 2.0, power: 2.0, ..Default::default() },
        ..Answers::default()
    });
    let set = fit.set.unwrap();
    let string = &set.strings[2];
    assert_eq!(string.standing, "kept");
    assert_eq!(Some(&*string.report), string.today.as_ref(), "what stays is today's string");
    assert_eq!(string.report.family, "stranded-steel");
    assert_eq!(string.report.construction.windings.last().unwrap().metal, "tungsten");
    assert_eq!(string.shopping.gauge_class, "light");
    assert_eq!(set.plan.settled_d[2], (0.0, 0.0), "what stays has settled");
    for i in [0, 1, 3] {
        assert_eq!(set.strings[i].standing, "new");
    }
    let load: f64 = set.strings.iter().map(|s| s.report.numbers["tension_n"].value).sum();
    assert!((load - set.total_tension_n.value).abs() < 1e-9, "the load counts what stays");
}

#[test]
fn a_question_about_one_string_changes_that_one() {
    let mut strings =
        vec![now("plain-steel"), now("synthetic"), now("synthetic"), now("synthetic")];
    for i in 0..4 {
        strings[i].bothers = vec!["too-bright".to_owned()];
        let fit = fit_of(Answers {
            aim: word("one-string"),
            strings: strings.clone(),
            ..Answers::default()
        });
        strings[i].bothers.clear();
        for (k, string) in fit.set.unwrap().strings.iter().enumerate() {
            let stands = if k == i { "new" } else { "kept" };
            assert_eq!(string.standing, stands, "asked about {i}, string {k}");
            if k != i {
                assert_eq!(Some(&*string.report), string.today.as_ref());
            }
        }
    }
    // Nothing is known of the others: they are not judged, and cost no step.
    let fit = fit_of(Answers {
        aim: word("one-string"),
        strings: vec![StringAnswer { family: word("wound-steel"), ..StringAnswer::default() }],
        ..Answers::default()
    });
    let set = fit.set.unwrap();
    assert_eq!(set.strings[0].report.family, "wound-steel");
    assert!(set.strings[1..].iter().all(|string| string.standing == "not-judged"));
    assert!(set.steps.iter().all(|step| step.term == 0.0));
    assert_eq!((fit.verdict.answer.as_str(), fit.verdict.string), ("one-string", Some(0)));
}

#[test]
fn which_string_is_found_where_it_is_not_said() {
    let fit = fit_of(Answers {
        aim: word("one-string"),
        now: word("synthetic"),
        strings: vec![
            StringAnswer::default(),
            StringAnswer::default(),
            now("monofilament"),
            now("plain-gut"),
        ],
        wishes: protocol::request::Wishes { brightness: 1.0, ..Default::default() },
        ..Answers::default()
    });
    let new: Vec<usize> = fit
        .set
        .unwrap()
        .strings
        .iter()
        .enumerate()
        .filter(|(_, s)| s.standing == "new")
        .map(|(i, _)| i)
        .collect();
    assert_eq!(new.len(), 1, "one string is changed");
    assert_eq!(fit.verdict.string, Some(new[0]));
}

/// What the search can afford is about the chance of the whole report.
#[test]
fn the_chance_of_settling_is_about_that_of_the_days() {
    let fitting = fit::fit(&fit::answers::Answers::default());
    for (found, string) in fitting.found.iter().zip(&fitting.problem.strings) {
        for candidate in found.made.iter().step_by(37) {
            let construction = &candidate.construction;
            let whole = report::report(construction, &string.setting);
            let core = LeanCore::new(&construction.core, construction.is_wound(), &string.setting);
            let pull = core.pull(whole.get(Property::Tension).value);
            for night in report::nights(&whole, 14) {
                let alone = core.settling.chance(&pull, Day::new(f64::from(night.day)));
                assert!((alone - night.chance).abs() < 0.1, "{alone} {}", night.chance);
            }
        }
    }
}

#[test]
fn who_insists_on_settling_gets_nothing_that_hardly_does() {
    for days in [0.3, 1.0, 2.0, 3.0, 5.0, 9.0, 30.0] {
        let answers = fit::answers::Answers {
            must_settle: true,
            concert_days: Some(days),
            ..Default::default()
        };
        let fitting = fit::fit(&answers);
        // The search's chance is about that of the report, and the report rounds to whole nights.
        let least = admission::SURE_CHANCE - 0.15;
        let is_late = |c: &Construction, setting: &Setting| {
            report::chance_settled(&report::report(c, setting), Day::new(days)) < least
        };
        for (found, string) in fitting.found.iter().zip(&fitting.problem.strings) {
            for candidate in found.made.iter().step_by(13) {
                assert!(!is_late(&candidate.construction, &string.setting), "{days} days");
            }
        }
        for (told, string) in fitting.told.iter().zip(&fitting.problem.strings) {
            for candidate in told {
                assert!(!is_late(&candidate.construction, &string.setting), "{days} days");
            }
        }
        let left_out = fitting.found.iter().flat_map(|f| &f.excluded);
        let by_time = left_out.filter(|(why, _)| *why == Exclusion::NotSettled).count();
        assert_eq!(by_time > 0, days <= 9.0, "{days} days: {by_time}");
        let fit =
            fit_of(Answers { must_settle: true, concert_days: Some(days), ..Answers::default() });
        let Some(set) = fit.set else { continue };
        for (i, string) in set.strings.iter().enumerate() {
            let warned = set
                .plan
                .cautions
                .iter()
                .any(|c| c.caution == "may-not-settle-in-time" && c.string == Some(i));
            let whole = days.fract() == 0.0 && days <= 14.0;
            if whole {
                // The day is a small whole number.
                let chance = string.report.nights[days as usize - 1].chance;
                assert_eq!(warned, chance < admission::SURE_CHANCE, "{days} days, string {i}");
            }
        }
    }
    // Who does not insist is warned, and may choose.
    let fit = fit_of(Answers {
        set_up: word("historical"),
        concert_days: Some(1.0),
        ..Answers::default()
    });
    assert!(fit.set.is_some());
    let fit = fit_of(Answers {
        set_up: word("historical"),
        concert_days: Some(0.5),
        must_settle: true,
        ..Answers::default()
    });
    assert!(fit.set.is_none());
    assert!(
        fit.obstacles[0].limits.iter().any(|l| l.limit == "not-settled"),
        "{:?}",
        fit.obstacles
    );
    assert!(fit.obstacles[0].relax.contains(&"must_settle".to_owned()), "{:?}", fit.obstacles);
}

#[test]
fn a_historical_tailpiece_takes_nothing_that_needs_a_fine_tuner() {
    let of = |set_up| {
        fit::fit(&fit::answers::Answers {
            instrument: Some(&instrument::VIOLIN),
            set_up: Some(set_up),
            a4: Some(Hertz::new(415.0)),
            ..Default::default()
        })
    };
    let needs = |fitting: &fit::Fitting| {
        let left_out = fitting.found.iter().flat_map(|f| &f.excluded);
        left_out.filter(|(why, _)| *why == Exclusion::NeedsFineTuner).map(|(_, n)| n).sum::<usize>()
    };
    let (historical, modern) = (of(SetUp::Historical), of(SetUp::Modern));
    assert!(needs(&historical) > 0, "thick plain gut is too stiff for a peg alone");
    assert_eq!(needs(&modern), 0, "elsewhere a tuner can be put on");
    for (found, string) in historical.found.iter().zip(&historical.problem.strings) {
        for candidate in found.made.iter().step_by(7) {
            let peg =
                report::report(&candidate.construction, &string.setting).get(Property::Peg).value;
            assert!(peg <= admission::MOST_ON_A_PEG + 1e-9, "{peg} cents a degree");
        }
    }
    for (told, string) in historical.told.iter().zip(&historical.problem.strings) {
        for candidate in told {
            let peg =
                report::report(&candidate.construction, &string.setting).get(Property::Peg).value;
            assert!(peg <= admission::MOST_ON_A_PEG + 1e-9, "{peg} cents a degree");
        }
    }
}

#[test]
fn what_must_hold_is_held_at_the_highest_pitch() {
    let tuned = |semitones: Option<f64>| Answers {
        instrument: word("violin"),
        also_tuned: semitones
            .map(|s| AlsoTuned { a4_hz: None, semitones: Some(s) })
            .into_iter()
            .collect(),
        ..Answers::default()
    };
    let (once, lower, up) =
        (fit_of(tuned(None)), fit_of(tuned(Some(-2.0))), fit_of(tuned(Some(0.5))));
    assert_eq!(once.set, lower.set, "a lower tuning asks nothing more");
    // The twenty-fourth root of two.
    assert!((up.problem.highest_ratio - 1.029_302_236_643_492).abs() < 1e-12);
    let squared = up.problem.highest_ratio * up.problem.highest_ratio;
    assert!((once.problem.most_load_n / up.problem.most_load_n - squared).abs() < 1e-9);
    let set = up.set.unwrap();
    for (string, before) in set.strings.iter().zip(&once.set.unwrap().strings) {
        let share = string.report.numbers["breaking_share"].value;
        assert!(share <= string.bands.breaking_share);
        // The share allowed at the highest pitch is the same as ever, where the family is.
        if string.report.family == before.report.family {
            let ratio = before.bands.breaking_share / string.bands.breaking_share;
            assert!((ratio - squared).abs() < 1e-9, "{ratio}");
        }
        assert_eq!(
            string.usual_tension_n, before.usual_tension_n,
            "feel is sized at the main pitch"
        );
    }
    // A whole tone up: a quarter more pull, warned of.
    let bass = fit_of(Answers {
        instrument: word("double-bass"),
        also_tuned: vec![AlsoTuned { a4_hz: None, semitones: Some(2.0) }],
        ..Answers::default()
    });
    let set = bass.set.unwrap();
    assert!(set.plan.cautions.iter().any(|c| c.caution == "tuned-up"));
    let rise = bass.problem.highest_ratio * bass.problem.highest_ratio;
    // 2^(4/12): a whole tone is two semitones, and tension goes with the square of pitch.
    assert!((rise - 1.26).abs() < 0.005, "{rise}");
    assert!(set.total_tension_n.value * rise <= bass.problem.usual_load_n.1 * (1.0 + 1e-9));
}

#[test]
fn every_complaint_has_causes_whose_numbers_are_those_of_the_report() {
    for (instrument, class, top) in [
        ("violin", "synthetic", "plain-steel"),
        ("viola", "gut", "plain-gut"),
        ("cello", "steel", "wound-steel"),
    ] {
        for bother in Bother::ALL {
            for string in [None, Some(1)] {
                let mut strings = vec![now(top)];
                strings[0].today.age_months = Some(7.0);
                let mut bothers = vec![bother.key().to_owned()];
                if string == Some(1) {
                    strings.push(StringAnswer {
                        bothers: std::mem::take(&mut bothers),
                        ..StringAnswer::default()
                    });
                }
                let fit = fit_of(Answers {
                    instrument: word(instrument),
                    now: word(class),
                    age_months: Some(20.0),
                    strings,
                    bothers,
                    ..Answers::default()
                });
                let [finding] = fit.verdict.findings.as_slice() else {
                    panic!("{} findings", fit.verdict.findings.len())
                };
                assert_eq!((finding.bother.as_str(), finding.string), (bother.key(), string));
                assert_eq!(finding.causes.len(), complaint::thought_of(*bother).count());
                assert!(finding.causes.len() >= 3, "{}", bother.key());
                assert_ne!(finding.causes[0].likely, "unlikely", "{}", bother.key());
                let set = fit.set.as_ref().unwrap();
                for cause in &finding.causes {
                    assert_eq!(cause.judged, cause.numbers.is_empty());
                    for n in &cause.numbers {
                        assert!(string.is_none_or(|i| i == n.string));
                        let today = set.strings[n.string].today.as_ref().unwrap();
                        match (n.property.as_str(), today.numbers.get(&n.property)) {
                            (_, Some(q)) => {
                                assert_eq!(n.value.to_bits(), q.value.to_bits(), "{}", n.property);
                                assert_eq!(n.low.unwrap_or(n.value).to_bits(), q.low.to_bits());
                                assert_eq!(n.high.unwrap_or(n.value).to_bits(), q.high.to_bits());
                            }
                            ("age_months", None) => {
                                let age = if n.string == 0 { 7.0 } else { 20.0 };
                                assert_eq!(n.value.to_bits(), f64::to_bits(age));
                            }
                            ("tension_step", None) => assert_eq!(*bother, Bother::Uneven),
                            (other, None) => panic!("{other} is no number of a report"),
                        }
                    }
                }
            }
        }
    }
}

/// What comes in place of a string must not bother in the same way.
#[test]
fn what_mends_a_string_is_other_in_what_was_at_fault() {
    for (instrument, i, bother, family, property, rises) in [
        ("violin", 0, "whistles", "plain-steel", "torsion_impedance_ratio", false),
        ("cello", 0, "too-bright", "stranded-steel", "brilliance_hz", false),
        ("viola", 2, "too-dull", "plain-gut", "brilliance_hz", true),
        ("violin", 1, "goes-flat", "plain-gut", "ratchet_cent", false),
    ] {
        let mut strings = vec![StringAnswer::default(); i + 1];
        strings[i] = StringAnswer { bothers: vec![bother.to_owned()], ..now(family) };
        strings[i].today.age_months = Some(2.0);
        let fit = fit_of(Answers { instrument: word(instrument), strings, ..Answers::default() });
        if fit.verdict.answer != "one-string" {
            continue;
        }
        assert_eq!(fit.verdict.string, Some(i));
        let string = &fit.set.unwrap().strings[i];
        let (new, old) = (
            string.report.numbers[property].value,
            string.today.as_ref().unwrap().numbers[property].value,
        );
        assert!(if rises { new > old } else { new < old }, "{bother}: {new} after {old}");
    }
}

/// A number moves a cause only the way it points.
#[test]
fn age_makes_age_a_cause() {
    let dull = |months: f64| {
        let fit = fit_of(Answers {
            aim: word("is-it-time"),
            now: word("synthetic"),
            age_months: Some(months),
            bothers: vec!["too-dull".to_owned()],
            ..Answers::default()
        });
        let causes = &fit.verdict.findings[0].causes;
        let place = causes.iter().position(|c| c.cause == "old-string").unwrap();
        (place, fit.verdict.answer)
    };
    assert_eq!(dull(24.0), (0, "fresh-same".to_owned()));
    assert!(dull(1.0).0 > 0, "a month is not old");
}

#[test]
fn the_verdict_is_the_smallest_change_that_helps() {
    let verdict = |answers: Answers| {
        let fit = fit_of(answers);
        (fit.verdict.answer, fit.verdict.string)
    };
    let asked =
        |aim: &str| Answers { aim: word(aim), now: word("synthetic"), ..Answers::default() };
    // Common practice, no source, in each case.
    let young = Answers { age_months: Some(2.0), ..asked("is-it-time") };
    assert_eq!(verdict(young.clone()), ("leave-it".to_owned(), None));
    let old = Answers { age_months: Some(20.0), ..asked("is-it-time") };
    assert_eq!(verdict(old), ("fresh-same".to_owned(), None));
    let mut one_old = young.clone();
    one_old.strings = vec![now("plain-steel"), StringAnswer::default()];
    one_old.strings[0].today.age_months = Some(30.0);
    assert_eq!(verdict(one_old), ("fresh-same".to_owned(), Some(0)));
    assert_eq!(verdict(Answers::default()), ("whole-set".to_owned(), None));
    let allergic = Answers { animal_free: true, now: word("gut"), ..asked("is-it-time") };
    assert_eq!(verdict(allergic).0, "whole-set");
    let wolf = Answers { bothers: vec!["wolf".to_owned()], ..young };
    assert_eq!(verdict(wolf), ("luthier-first".to_owned(), None));
}

/// Today's string, and what is shown of a family, could also be recommended: it is a string of the space.
#[test]
fn the_most_usual_string_of_a_family_is_one_of_the_space() {
    let mut seen = 0;
    for kind in instrument::ALL {
        for tuning in kind.tunings {
            let answers = fit::answers::Answers {
                instrument: Some(kind),
                tuning: Some(tuning),
                ..fit::answers::Answers::default()
            };
            let problem = fit::problem::pose(&answers);
            for string in &problem.strings {
                for c in fit::today::of_families(&problem, string) {
                    let (core, made) = (c.construction.core, &c.construction);
                    let arrangements = space::arrangements(c.family, &space::SPACE);
                    let is_arranged = arrangements
                        .iter()
                        .any(|(m, build)| m.key == core.material.key && *build == core.build);
                    let gauges = space::core_gauges(c.family, c.bands.gauge);
                    let is_wound = |stack: &space::Stack| {
                        let rolled = (0..space::ribbons()).map(space::ribbon);
                        rolled.into_iter().any(|ribbon| stack.round(core, ribbon) == *made)
                    };
                    assert!(is_arranged && gauges.contains(&core.diameter), "{made:?}");
                    assert!(!made.is_wound() || space::stacks().iter().any(is_wound), "{made:?}");
                    seen += 1;
                }
            }
        }
    }
    assert!(seen > 100, "only {seen} strings");
}
