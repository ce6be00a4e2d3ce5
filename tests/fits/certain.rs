//! How sure the choice is, and what would turn it: laws over random people, and every turning point through the door.

use protocol::reply::{AnswerValue, Certainty, Fit, Reply};
use protocol::request::{Answers, FitRequest, Request, Wishes};
use strings::fit::answers;
use strings::fit::candidates::Candidate;
use strings::fit::certainty::{self, Drawing};
use strings::fit::choose::{self, Outcome};
use strings::fit::finalists::{Finalists, Scores};
use strings::fit::kinds::KindHere;
use strings::fit::neighbours;
use strings::fit::work::Work;
use strings::fit::{self, Fitting};
use support::Seeded;

use crate::anybody::{anybody, tables};
use crate::laws::somebody;
use crate::random;

/// How many random people are asked; a few, for each takes as long as half a dozen fits.
fn people() -> usize {
    random::people() / 30 + 8
}

fn fit_of(answers: &Answers) -> Fit {
    match protocol::handle(&Request::Fit(Box::new(FitRequest { answers: answers.clone() }))) {
        Reply::Fit(fit) => *fit,
        other => panic!("refused: {other:?}"),
    }
}

fn certainty_of(answers: &Answers) -> Certainty {
    match protocol::handle(&Request::Certainty(Box::new(FitRequest { answers: answers.clone() }))) {
        Reply::Certainty(certainty) => *certainty,
        other => panic!("refused: {other:?}"),
    }
}

fn is_all(share: f64) -> bool {
    share > 1.0 - 1e-9
}

/// Families and gauge classes of a set.
fn kinds(fit: &Fit) -> Vec<(String, String)> {
    let strings = fit.set.iter().flat_map(|set| &set.strings);
    strings.map(|s| (s.report.family.clone(), s.shopping.gauge_class.clone())).collect()
}

/// The answers with one of them changed, as a request would say it.
fn changed(answers: &Answers, name: &str, value: &AnswerValue) -> Answers {
    let mut json = serde_json::to_value(answers).unwrap();
    let value = serde_json::to_value(value).unwrap();
    match name.split_once('.') {
        Some((of, name)) => {
            let members = json.as_object_mut().unwrap();
            let inner = members.entry(of).or_insert_with(|| serde_json::json!({}));
            inner.as_object_mut().unwrap().insert(name.to_owned(), value);
        }
        None => {
            json.as_object_mut().unwrap().insert(name.to_owned(), value);
        }
    }
    Answers::read(&json).unwrap()
}

#[test]
fn shares_add_up_and_turning_points_turn_through_the_door() {
    let tables = tables();
    let mut seeded = Seeded::new(77);
    let (mut sets, mut points, mut steps, mut none) = (0, 0, 0, 0);
    for _ in 0..people() {
        let answers = anybody(&mut seeded, &tables);
        let (fit, sure) = (fit_of(&answers), certainty_of(&answers));
        let Some(set) = &fit.set else {
            assert_eq!(
                sure,
                Certainty::default(),
                "nothing fits, so there is nothing to be sure of"
            );
            continue;
        };
        sets += 1;
        assert_eq!(sure.worlds as u64, certainty::SCENARIOS * fit::score::DRAWS as u64);
        assert_eq!(sure.strings.len(), set.strings.len());
        for (of, string) in sure.strings.iter().zip(&set.strings) {
            for shares in [&of.families, &of.gauge_classes] {
                let sum: f64 = shares.iter().map(|s| s.share).sum();
                assert!((sum - 1.0).abs() < 1e-9, "shares of {} add up to {sum}", string.note);
            }
            if string.standing != "new" {
                assert!(is_all(of.family.share), "{} stays in every world", string.note);
            }
        }
        let others = [Some(sure.second.share), sure.next.as_ref().map(|n| n.share.share)];
        for other in others.into_iter().flatten() {
            assert!(sure.chosen.share + other <= 1.0 + 1e-9);
            // The set that is shown is the one that wins most often, or the page says how close it is.
            assert!(sure.chosen.share >= other || sure.chosen.word == "close-call");
        }
        let least = sure.strings.iter().map(|s| s.family.share).fold(1.0, f64::min);
        assert!(sure.chosen.share <= least + 1e-9, "a set is no surer than its least sure string");
        let now = kinds(&fit);
        for point in &sure.turning_points {
            let name = &point.answer;
            let then = kinds(&fit_of(&changed(&answers, name, &point.turns_at)));
            let mut told = now.clone();
            for t in &point.strings {
                assert_eq!(now[t.string], (t.family.clone(), t.gauge_class.clone()), "{name}");
                told[t.string] = (t.family_then.clone(), t.gauge_class_then.clone());
            }
            let answers_json = serde_json::to_string(&answers).unwrap();
            let open = |kinds: &[(String, String)]| -> Vec<(String, String)> {
                kinds
                    .iter()
                    .zip(&set.strings)
                    .filter(|(_, s)| s.standing == "new")
                    .map(|(kind, _)| kind.clone())
                    .collect()
            };
            assert_eq!(open(&then), open(&told), "{name} at {:?}: {answers_json}", point.turns_at);
            assert_ne!(open(&then), open(&now), "{name} turns nothing: {answers_json}");
            if point.holds_at != point.from {
                let before = kinds(&fit_of(&changed(&answers, name, &point.holds_at)));
                assert_eq!(
                    open(&before),
                    open(&now),
                    "{name} at {:?}: {answers_json}",
                    point.holds_at
                );
                steps += 1;
            }
            points += 1;
        }
        none += usize::from(sure.turned == 0);
    }
    support::tell(&format!(
        "{points} turning points of {sets} sets, {steps} of them not at the first step; {none} sets that nothing turns"
    ));
    assert!(2 * points > sets, "only {points} turning points of {sets} sets");
}

fn fitted(answers: &answers::Answers) -> Option<(Fitting, choose::Choice, Option<choose::Choice>)> {
    let fitting = fit::fit(answers);
    let Outcome::Set { best, others } = fitting.outcome.clone() else { return None };
    let runner_up = choose::rather_than(&best, &others).cloned();
    Some((fitting, best, runner_up))
}

/// Where nothing is drawn, the finalists say what the whole space said.
#[test]
fn with_nothing_drawn_the_chosen_set_is_sure() {
    let mut seeded = Seeded::new(8);
    let mut asked = 0;
    for _ in 0..25 {
        let answers = somebody(&mut seeded);
        let Some((fitting, best, second)) = fitted(&answers) else { continue };
        // Where the proof was given up, a better set may turn up anywhere.
        if !best.proven {
            continue;
        }
        let scenarios = certainty::drawn(&answers, &fitting, Drawing::Scenarios(12));
        let finalists = Finalists::of(&fitting, &best, &scenarios, &mut Work::unlimited());
        let as_taken = certainty::drawn(&answers, &fitting, Drawing::Nothing);
        let sure = certainty::of(
            &finalists,
            &best,
            second.as_ref(),
            &as_taken,
            Drawing::Nothing,
            &mut Work::unlimited(),
        );
        assert!(is_all(sure.chosen.share), "{answers:?}");
        assert!(sure.second.share < 1e-9, "{answers:?}");
        let scores = finalists.expected(
            &finalists.logs(&fitting.problem, 0, &mut Work::unlimited()),
            &fitting.problem,
        );
        let (kinds, most_load) = (&fitting.problem.kinds, fitting.problem.most_load);
        let set = finalists.best(&scores, kinds, most_load, &mut Work::unlimited()).unwrap();
        assert!(set.iter().all(|k| *k == 0), "{set:?} is not the chosen set: {answers:?}");
        assert!((finalists.worth(&scores, &set) - best.worth).abs() < 1e-9);
        asked += 1;
    }
    assert!(asked > 10, "only {asked} sets");
}

/// Four times the worlds, and a share moves no further than its error says.
#[test]
fn more_worlds_move_a_share_by_no_more_than_its_error() {
    let mut seeded = Seeded::new(9);
    let (mut compared, mut far) = (0, 0);
    for _ in 0..14 {
        let answers = somebody(&mut seeded);
        let Some((fitting, best, second)) = fitted(&answers) else { continue };
        let many =
            certainty::drawn(&answers, &fitting, Drawing::Scenarios(4 * certainty::SCENARIOS));
        let few = &many[..many.len() / 4];
        let finalists = Finalists::of(&fitting, &best, few, &mut Work::unlimited());
        let of = |scenarios: &[fit::problem::Problem]| {
            let drawing = Drawing::Scenarios(scenarios.len() as u64);
            certainty::of(
                &finalists,
                &best,
                second.as_ref(),
                scenarios,
                drawing,
                &mut Work::unlimited(),
            )
        };
        let (of_few, of_many) = (of(few), of(&many));
        for (a, b) in [(of_few.chosen, of_many.chosen), (of_few.second, of_many.second)] {
            // A share of 0 or 1 among few says nothing of its error: one way in 64 is then the least.
            let error = a.error.max(1.0 / certainty::SCENARIOS as f64);
            let moved = (a.share - b.share).abs();
            far += usize::from(moved > 2.0 * error);
            assert!(moved < 4.0 * error, "{moved} at an error of {error}: {answers:?}");
            compared += 1;
        }
    }
    assert!(compared > 15, "only {compared} shares compared");
    assert!(far * 8 <= compared, "{far} of {compared} shares moved by more than twice their error");
}

/// What speaks against the best kind to which a set belongs; none where it belongs to no kind.
fn term(kinds: &[KindHere], finalists: &Finalists, set: &[usize]) -> Option<f64> {
    let is_of = |here: &&KindHere| {
        let cores = set.iter().zip(&finalists.lists).map(|(k, list)| list.strings[*k].core_type());
        cores.zip(&here.cores).all(|(core, allowed)| allowed.has(core))
    };
    kinds.iter().filter(is_of).map(|here| here.term).max_by(f64::total_cmp)
}

/// Worth and load of every set of the lists that belongs to a kind, by trying them all.
fn every_set(
    finalists: &Finalists,
    scores: &Scores,
    pairs: &[Vec<Vec<f64>>],
    set: &mut Vec<usize>,
    (worth, load): (f64, f64),
    met: &mut impl FnMut(f64, f64),
) {
    let i = set.len();
    let Some(list) = finalists.lists.get(i) else {
        if let Some(term) = term(&finalists.fitting.problem.kinds, finalists, set) {
            met(worth + term, load);
        }
        return;
    };
    for (k, string) in list.strings.iter().enumerate() {
        let pair = set.last().map_or(0.0, |above| pairs[i - 1][*above][k]);
        set.push(k);
        let so_far = (worth + scores[i][k] + pair, load + string.tension);
        every_set(finalists, scores, pairs, set, so_far, met);
        set.pop();
    }
}

/// The best set of the short lists is the best that trying every one finds, at any load.
#[test]
fn the_finalists_best_set_is_exact() {
    let mut seeded = Seeded::new(12);
    let (mut bound, mut none) = (0, 0);
    for _ in 0..8 {
        let answers = somebody(&mut seeded);
        let Some((fitting, best, _)) = fitted(&answers) else { continue };
        let finalists = Finalists::of(&fitting, &best, &[], &mut Work::unlimited());
        let lists: Vec<&Vec<Candidate>> = finalists.lists.iter().map(|l| &l.strings).collect();
        if lists.iter().map(|list| list.len()).product::<usize>() > 2_000_000 {
            continue;
        }
        let strings = fitting.problem.strings.windows(2);
        let pairs: Vec<Vec<Vec<f64>>> = lists
            .windows(2)
            .zip(strings)
            .map(|(c, s)| {
                let term = |upper: &Candidate, lower: &Candidate| {
                    neighbours::pair(upper.into(), lower.into(), &s[0], &s[1])
                };
                let row = |upper| c[1].iter().map(|lower| term(upper, lower)).collect();
                c[0].iter().map(row).collect()
            })
            .collect();
        for _ in 0..20 {
            let scores: Scores = lists
                .iter()
                .map(|list| list.iter().map(|c| c.score + seeded.between(0.0, 0.05)).collect())
                .collect();
            let end = |f: fn(f64, f64) -> f64, from: f64| -> f64 {
                lists.iter().map(|l| l.iter().map(|c| c.tension).fold(from, f)).sum()
            };
            let (lightest, heaviest) = (end(f64::min, f64::INFINITY), end(f64::max, 0.0));
            let most_load = lightest + seeded.between(-0.05, 0.8) * (heaviest - lightest);
            let (mut truth, mut free) = (f64::NEG_INFINITY, f64::NEG_INFINITY);
            let mut met = |worth: f64, load: f64| {
                free = free.max(worth);
                if load <= most_load {
                    truth = truth.max(worth);
                }
            };
            every_set(&finalists, &scores, &pairs, &mut Vec::new(), (0.0, 0.0), &mut met);
            let kinds = &fitting.problem.kinds;
            match finalists.best(&scores, kinds, most_load, &mut Work::unlimited()) {
                Some(found) => {
                    let of_kind = term(kinds, &finalists, &found).unwrap();
                    let worth = finalists.worth(&scores, &found) + of_kind;
                    assert!((worth - truth).abs() < 1e-9, "{worth}, not {truth}");
                    bound += usize::from(free > truth + 1e-9);
                }
                None => {
                    assert!(truth.is_infinite(), "a set worth {truth} was not found");
                    none += 1;
                }
            }
        }
    }
    assert!(none > 2, "the load forbade every set only {none} times");
    assert!(bound > 20, "the load decided only {bound} times");
}

#[test]
fn the_same_answers_give_the_same_certainty_to_the_bit() {
    let request = r#"{"ask":"certainty","answers":{"instrument":"cello","wishes":{"colour":1}}}"#;
    let once = protocol::answer(request);
    assert_eq!(once, protocol::answer(request));
    let Reply::Certainty(read) = Reply::read(&once).unwrap() else { panic!("{once}") };
    let wishes = Wishes { colour: 1.0, ..Wishes::default() };
    let instrument = Some("cello".to_owned());
    let answers = Answers { instrument, wishes, ..Answers::default() };
    assert_eq!(*read, certainty_of(&answers));
}

/// A person whose strings are all said has nothing that the choice could be unsure of.
#[test]
fn a_string_that_must_be_of_a_family_is_so_in_every_world() {
    let string = |family: &str| protocol::request::StringAnswer {
        family: Some(family.to_owned()),
        ..Default::default()
    };
    let families = ["plain-steel", "synthetic", "synthetic", "synthetic"];
    let answers = Answers { strings: families.map(string).to_vec(), ..Answers::default() };
    let sure = certainty_of(&answers);
    assert!(is_all(sure.chosen.share));
    assert_eq!(sure.chosen.word, "very-likely");
    assert!(sure.next.is_none());
}
