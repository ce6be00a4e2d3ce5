//! Situations in which the trade knows the answer: common practice, no source.

use protocol::reply::{Fit, Reply};
use protocol::request::{Answers, FitRequest, Request, StringAnswer, Wishes};

fn fit_of(answers: Answers) -> Fit {
    match protocol::handle(&Request::Fit(Box::new(FitRequest { answers }))) {
        Reply::Fit(fit) => *fit,
        other => panic!("refused: {other:?}"),
    }
}

fn families(fit: &Fit) -> Vec<String> {
    fit.set.iter().flat_map(|s| &s.strings).map(|s| s.report.family.clone()).collect()
}

fn word(text: &str) -> Option<String> {
    Some(text.to_owned())
}

#[test]
fn a_modern_violin_has_a_steel_top_and_no_gut() {
    let fit = fit_of(Answers {
        instrument: word("violin"),
        set_up: word("modern"),
        ..Answers::default()
    });
    let families = families(&fit);
    assert_eq!(families[0], "plain-steel");
    assert!(families.iter().all(|f| !f.ends_with("gut")), "{families:?}");
}

#[test]
fn a_baroque_violin_has_gut_throughout_and_a_caution_for_its_top_string() {
    let fit = fit_of(Answers {
        instrument: word("violin"),
        set_up: word("historical"),
        a4_hz: Some(415.0),
        music: word("early"),
        ..Answers::default()
    });
    let families = families(&fit);
    assert_eq!(families[0], "plain-gut");
    assert!(families.iter().all(|f| f.ends_with("gut")), "{families:?}");
    let cautions = &fit.set.unwrap().plan.cautions;
    assert!(
        cautions.iter().any(|c| c.caution == "gut-near-limit" && c.string == Some(0)),
        "{cautions:?}"
    );
}

#[test]
fn a_plain_gut_top_string_at_440_is_there_only_for_who_asks() {
    let plain = |limit| Answers {
        instrument: word("violin"),
        a4_hz: Some(440.0),
        strings: vec![StringAnswer { family: word("plain-gut"), ..StringAnswer::default() }],
        gut_to_its_limit: limit,
        ..Answers::default()
    };
    let refused = fit_of(plain(false));
    assert!(refused.set.is_none());
    assert!(
        refused.obstacles[0].relax.contains(&"gut_to_its_limit".to_owned()),
        "{:?}",
        refused.obstacles
    );
    let asked = fit_of(plain(true));
    assert_eq!(families(&asked)[0], "plain-gut");
}

#[test]
fn an_orchestral_cello_and_a_bass_have_steel() {
    for instrument in ["cello", "double-bass"] {
        let families =
            families(&fit_of(Answers { instrument: word(instrument), ..Answers::default() }));
        assert!(families.iter().all(|f| f.ends_with("steel")), "{instrument}: {families:?}");
    }
}

#[test]
fn a_wish_for_steadiness_never_moves_a_violin_a_towards_gut() {
    let colour = |colour: f64| {
        fit_of(Answers {
            instrument: word("violin"),
            wishes: Wishes { colour, ..Wishes::default() },
            ..Answers::default()
        })
    };
    // Of the whole set: a single string may give way to its neighbours.
    let elastic = |fit: &Fit| -> f64 {
        let strings = &fit.set.as_ref().unwrap().strings;
        strings.iter().map(|s| s.report.numbers["stretch"].value).sum()
    };
    let (steady, usual, colourful) = (colour(-2.0), colour(0.0), colour(2.0));
    let (steadily, usually, colourfully) = (elastic(&steady), elastic(&usual), elastic(&colourful));
    // Steadiness by itself need not mean a stiffer core: the body moves a stiff string further.
    assert!(steadily < colourfully && usually < colourfully, "{steadily} {usually} {colourfully}");
    assert!(families(&steady).iter().all(|f| !f.ends_with("gut")));
}

#[test]
fn a_quarter_size_beginner_gets_everyday_strings_and_an_adult_to_fit_them() {
    let fit = fit_of(Answers {
        instrument: word("violin"),
        size: word("1/4"),
        level: word("beginner"),
        ..Answers::default()
    });
    let set = fit.set.unwrap();
    assert!(set.strings.iter().all(|s| s.grade == "everyday"));
    assert!(set.plan.cautions.iter().any(|c| c.caution == "adult-fits"));
}

#[test]
fn old_strings_and_a_wolf_are_looked_at_before_anything_is_bought() {
    let fit = fit_of(Answers {
        instrument: word("cello"),
        now: word("steel"),
        age_months: Some(40.0),
        bothers: vec!["wolf".into()],
        ..Answers::default()
    });
    assert_eq!(fit.verdict.answer, "luthier-first");
    assert_eq!(fit.verdict.findings[0].causes[0].cause, "wolf-of-the-body");
}

#[test]
fn gut_or_polyamide_two_days_before_a_concert_is_warned_of() {
    let fit = fit_of(Answers {
        instrument: word("violin"),
        set_up: word("historical"),
        a4_hz: Some(415.0),
        concert_days: Some(2.0),
        ..Answers::default()
    });
    let set = fit.set.unwrap();
    let late = set.plan.settled_d.iter().any(|(likely, _)| *likely > 2.0);
    let warned = set.plan.cautions.iter().any(|c| c.caution.contains("settle"));
    assert_eq!(late, warned);
    assert!(late, "gut settled within two days");
}

#[test]
fn an_old_light_violin_is_kept_from_the_top_of_the_load() {
    let modern = fit_of(Answers {
        set_up: word("modern"),
        wishes: Wishes { power: 2.0, feel: 2.0, ..Wishes::default() },
        ..Answers::default()
    });
    let light = fit_of(Answers {
        set_up: word("light"),
        wishes: Wishes { power: 2.0, feel: 2.0, ..Wishes::default() },
        ..Answers::default()
    });
    let load = |fit: &Fit| fit.set.as_ref().unwrap().total_tension_n.value;
    assert!(load(&light) < load(&modern));
    assert!(load(&light) <= light.problem.most_load_n);
    assert!(light.set.unwrap().plan.cautions.iter().any(|c| c.caution == "luthier-first"));
}
