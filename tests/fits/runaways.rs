//! No request runs away, however it was made: work is counted in steps, not in seconds.

use std::sync::Mutex;

use protocol::request::{Answers, FitRequest, Request, StringAnswer, Today};
use strings::fit::certainty::{self, Drawing};
use strings::fit::choose::{Choice, Outcome};
use strings::fit::desirability::Attribute;
use strings::fit::finalists::Finalists;
use strings::fit::work::Work;
use strings::fit::{self, Fitting, neighbours, turning};
use strings::instrument;
use support::Seeded;

use crate::anybody::tables;
use crate::hostile::hostile;

/// Of so many of them, one also asks how sure the set is.
const SURE_EACH: usize = 50;
/// Steps that a fit may take: about half a second, where an ordinary one takes a tenth of it.
const MOST_OF_A_FIT: u64 = 50_000_000;
/// Steps that a fit with one string that stays may take, on any instrument: about what an ordinary one takes.
const MOST_WITH_ONE_KEPT: u64 = 6_000_000;
/// Steps that go over a budget before a phase looks at it again.
const OVERRUN: u64 = 2_000_000;

/// How many hostile people ask, half of them in each of two threads.
fn people() -> usize {
    support::cases("ROPEWALK_RUNAWAYS", 500)
}

fn asked(answers: &Answers) -> Option<fit::answers::Answers> {
    let request = Request::Fit(Box::new(FitRequest { answers: answers.clone() }));
    protocol::split_search::asked(&serde_json::to_string(&request).unwrap())
}

/// What is wrong with a set: too heavy, or beaten by more than it says by one with another string.
fn wrong(fitting: &Fitting, best: &Choice) -> Vec<String> {
    let mut wrong = Vec::new();
    let problem = &fitting.problem;
    let load = |set: &[fit::candidates::Candidate]| set.iter().map(|c| c.tension).sum::<f64>();
    if load(&best.strings) > problem.most_load {
        wrong.push(format!("{} N under a limit of {} N", load(&best.strings), problem.most_load));
    }
    if !best.gap.is_finite() || best.proven != (best.gap <= 0.0) {
        wrong.push(format!("proven {} with a gap of {}", best.proven, best.gap));
    }
    for (i, told) in fitting.told.iter().enumerate() {
        // Another core would make it a set of another kind.
        let cores = problem.kinds[best.kind].cores[i];
        for other in told.iter().filter(|other| cores.has(other.core_type())) {
            let mut set = best.strings.clone();
            set[i] = other.clone();
            let pairs: f64 = neighbours::pairs(problem, &set).iter().sum();
            let worth = set.iter().map(|c| c.score).sum::<f64>() + pairs;
            if load(&set) <= problem.most_load && worth > best.worth + best.gap + 1e-8 {
                wrong.push(format!("{worth} beyond {} and the gap {}", best.worth, best.gap));
            }
        }
    }
    wrong
}

/// How much work it takes to say how sure a set is, beside the fits: of the worlds, and of what would turn it.
fn sure(answers: &fit::answers::Answers, fitting: &Fitting, best: &Choice) -> [u64; 2] {
    let [mut worlds, mut turns] = [Work::of(certainty::STEPS), Work::of(turning::STEPS)];
    let drawing = Drawing::Scenarios(certainty::SCENARIOS);
    let scenarios = certainty::drawn(answers, fitting, drawing);
    let finalists = Finalists::of(fitting, best, &scenarios, &mut worlds);
    let sure = certainty::of(&finalists, best, None, &scenarios, drawing, &mut worlds);
    assert!(sure.worlds > 0, "no world was looked at");
    let turning = turning::of(answers, &finalists, best, &mut turns);
    assert!(turning.points.len() <= turning::TOLD);
    [worlds.taken(), turns.taken()]
}

#[derive(Default)]
struct Met {
    work: Vec<u64>,
    unproven: usize,
    refused: usize,
    wrong: Vec<String>,
}

fn ask(n: usize, answers: &Answers, met: &Mutex<Met>) {
    let Some(model) = asked(answers) else {
        met.lock().unwrap().refused += 1;
        return;
    };
    let fitting = fit::fit(&model);
    let mut wrong_here = Vec::new();
    let mut unproven = false;
    if fitting.work > MOST_OF_A_FIT {
        wrong_here.push(format!("a fit of {} steps", fitting.work));
    }
    if let Outcome::Set { best, .. } = &fitting.outcome {
        wrong_here.extend(wrong(&fitting, best));
        unproven = !best.proven;
        if n.is_multiple_of(SURE_EACH) {
            let [worlds, turns] = sure(&model, &fitting, best);
            if worlds > certainty::STEPS + OVERRUN {
                wrong_here.push(format!("worlds of {worlds} steps"));
            }
            // The last fit may begin just before the work runs out.
            if turns > turning::STEPS + MOST_OF_A_FIT + OVERRUN {
                wrong_here.push(format!("turning points of {turns} steps"));
            }
        }
    }
    let mut met = met.lock().unwrap();
    met.work.push(fitting.work);
    met.unproven += usize::from(unproven);
    if !wrong_here.is_empty() {
        let answers = serde_json::to_string(answers).unwrap();
        met.wrong.push(format!("{}\n    in {answers}", wrong_here.join("\n    ")));
    }
}

#[test]
fn hostile_answers_take_no_more_than_a_second_of_work() {
    let (tables, people) = (tables(), people());
    let met = Mutex::new(Met::default());
    std::thread::scope(|scope| {
        for half in 0..2_u64 {
            let (tables, met) = (&tables, &met);
            scope.spawn(move || {
                let mut seeded = Seeded::new(1_300 + half);
                for n in 0..people / 2 {
                    ask(n, &hostile(&mut seeded, tables), met);
                }
            });
        }
    });
    let Met { mut work, unproven, refused, wrong } = met.into_inner().unwrap();
    work.sort_unstable();
    let most = work.last().copied().unwrap_or_default();
    support::tell(&format!(
        "{} hostile fits: median {} steps, most {most}; {unproven} not proven, {refused} refused",
        work.len(),
        work[work.len() / 2]
    ));
    assert!(wrong.is_empty(), "{} of {people} went wrong; the first:\n{}", wrong.len(), wrong[0]);
    assert!(refused * 20 < people, "{refused} of {people} were refused, so the search says little");
    assert!(unproven * 4 < people, "{unproven} of {people} sets were not proven");
    assert!(most > MOST_OF_A_FIT / 10, "nobody was hostile: {most} steps at most");
}

/// The rival of a family that the search left out comes from the sample, which also holds what lies between the steps
/// of the space.
#[test]
fn no_rival_that_is_named_beats_the_set() {
    let only_feel =
        |a: &Attribute| (a.key().to_owned(), if *a == Attribute::Feel { 10.0 } else { 0.0 });
    let today = Today { family: Some("stranded-steel".to_owned()), ..Today::default() };
    let kept = StringAnswer { keep: true, today, ..StringAnswer::default() };
    let answers = Answers {
        instrument: Some("violin".to_owned()),
        size: Some("1/10".to_owned()),
        strings: vec![StringAnswer::default(), StringAnswer::default(), kept],
        now: Some("steel".to_owned()),
        weights: Attribute::ALL.iter().map(only_feel).collect(),
        ..Answers::default()
    };
    let fitting = fit::fit(&asked(&answers).unwrap());
    let Outcome::Set { best, .. } = &fitting.outcome else { panic!("no set") };
    assert!(best.proven);
    assert_eq!(wrong(&fitting, best), Vec::<String>::new());
}

/// A string that stays is hardly more work than none, whatever it is and wherever it stands.
#[test]
fn a_string_that_stays_makes_no_fit_run_away() {
    let tables = tables();
    let families = crate::anybody::texts(&tables["words"]["family"]);
    let (mut most, mut fits) = (0, 0);
    for kind in instrument::ALL {
        for family in &families {
            for place in 0..kind.tunings[0].strings.len() {
                let today = Today { family: Some(family.clone()), ..Today::default() };
                let mut strings = vec![StringAnswer::default(); place + 1];
                strings[place] = StringAnswer { keep: true, today, ..StringAnswer::default() };
                let answers = Answers {
                    instrument: Some(kind.key.to_owned()),
                    now: Some("gut".to_owned()),
                    strings,
                    ..Answers::default()
                };
                let fitting = fit::fit(&asked(&answers).unwrap());
                let said = format!("{} with {family} at {place}", kind.key);
                if let Outcome::Set { best, .. } = &fitting.outcome {
                    assert!(best.proven, "{said} is not proven");
                }
                assert!(fitting.work < MOST_WITH_ONE_KEPT, "{said}: {} steps", fitting.work);
                most = most.max(fitting.work);
                fits += 1;
            }
        }
    }
    support::tell(&format!("{fits} fits with one string that stays: {most} steps at most"));
}
