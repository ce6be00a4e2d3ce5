//! The set that is chosen is the best there is: nothing is left out that could be better, and nothing better is missed.

use strings::construction::{CORE_TYPES, CoreType, CoreTypes};
use strings::fit::answers::Answers;
use strings::fit::branches::{self, Wanted};
use strings::fit::candidates;
use strings::fit::candidates::Candidate;
use strings::fit::choose::{self, Choice, Outcome};
use strings::fit::neighbours::{self, Staying};
use strings::fit::possible;
use strings::fit::problem::{Problem, StringStatus};
use strings::fit::score::Judge;
use strings::fit::search::{Contender, Floor, Look, MISS, Recipe, SPAN, Space};
use strings::fit::work::Work;
use strings::fit::{self, Fitting};
use strings::instrument;
use support::Seeded;

fn somebody(seeded: &mut Seeded) -> Fitting {
    let kind = *seeded.one_of(instrument::ALL);
    let size = seeded.one_of(kind.sizes);
    let mut answers = Answers { instrument: Some(kind), size: Some(size), ..Answers::default() };
    answers.wishes.colour = seeded.between(-2.0, 2.0);
    answers.wishes.brightness = seeded.between(-2.0, 2.0);
    answers.wishes.feel = seeded.between(-2.0, 2.0);
    fit::fit(&answers)
}

/// A few strings of each place, drawn from all that is made, so that greedy choices are often wrong.
fn small(fitting: &Fitting, seeded: &mut Seeded) -> Vec<Vec<Contender>> {
    let problem = &fitting.problem;
    fitting
        .found
        .iter()
        .zip(&problem.strings)
        .map(|(found, string)| {
            let judge = Judge::new(problem, string);
            (0..6)
                .map(|_| (&candidates::judged(&judge, seeded.one_of(&found.made))).into())
                .collect()
        })
        .collect()
}

fn worth(problem: &Problem, set: &[Contender]) -> f64 {
    let pairs = set.windows(2).zip(problem.strings.windows(2));
    let terms: f64 =
        pairs.map(|(c, s)| neighbours::pair((&c[0]).into(), (&c[1]).into(), &s[0], &s[1])).sum();
    set.iter().map(|c| c.score).sum::<f64>() + terms
}

fn load(set: &[Contender]) -> f64 {
    set.iter().map(|c| c.tension).sum()
}

/// Every set of the lists.
fn every(lists: &[Vec<Contender>]) -> impl Iterator<Item = Vec<Contender>> + '_ {
    let count: usize = lists.iter().map(Vec::len).product();
    (0..count).map(|n| {
        let mut rest = n;
        lists
            .iter()
            .map(|list| {
                let k = rest % list.len();
                rest /= list.len();
                list[k]
            })
            .collect()
    })
}

/// The worth of the best set, by trying every one.
fn brute_force(problem: &Problem, lists: &[Vec<Contender>], wanted: &Wanted) -> Option<f64> {
    every(lists)
        .filter(|set| load(set) <= wanted.most_load)
        .map(|set| worth(problem, &set))
        .max_by(f64::total_cmp)
}

#[test]
fn branch_and_bound_agrees_with_trying_every_set() {
    let mut seeded = Seeded::new(7);
    let (mut none, mut bound) = (0, 0);
    for _ in 0..10 {
        let fitting = somebody(&mut seeded);
        let problem = &fitting.problem;
        for round in 0..100 {
            let lists = small(&fitting, &mut seeded);
            let of = |f: fn(f64, f64) -> f64, from: f64| -> f64 {
                lists.iter().map(|l| l.iter().map(|c| c.tension).fold(from, f)).sum()
            };
            let (lightest, heaviest) = (of(f64::min, f64::INFINITY), of(f64::max, 0.0));
            // The load limit is drawn across the whole range, so that it often decides.
            let most_load = lightest + seeded.between(-0.1, 1.0) * (heaviest - lightest);
            let open = Wanted { most_load, ..Wanted::default() };
            let first = branches::best(problem, &lists, &open, &mut Work::unlimited());
            let wanted = match round % 2 {
                0 => open,
                _ => Wanted { at_least: first.map(|best| best.worth), ..open },
            };
            let found = branches::best(problem, &lists, &wanted, &mut Work::unlimited());
            let truth = brute_force(problem, &lists, &wanted);
            match (&found, truth) {
                (Some(found), Some(truth)) => {
                    let best = found.worth;
                    assert!(found.proven);
                    assert!((best - truth).abs() < 1e-12, "{best} against {truth}");
                    assert!(load(&found.strings) <= most_load);
                    let free = Wanted { most_load: f64::INFINITY, ..wanted };
                    bound += usize::from(brute_force(problem, &lists, &free) > Some(truth + 1e-9));
                }
                (None, None) => none += 1,
                _ => panic!("one finds a set and the other none: {found:?} against {truth:?}"),
            }
        }
    }
    assert!(none > 20, "the load limit never forbade every set, so the test says little");
    assert!(bound > 100, "the load limit decided {bound} times, so the test says little");
}

/// Lets a string of all that is made stay at a place.
fn keep(
    problem: &mut Problem,
    fitting: &Fitting,
    i: usize,
    fixed: &mut [Option<Candidate>],
    seeded: &mut Seeded,
) {
    problem.strings[i].standing = StringStatus::Kept;
    let judge = Judge::new(problem, &problem.strings[i]);
    fixed[i] = Some(candidates::judged(&judge, seeded.one_of(&fitting.found[i].made)));
    problem.kinds = possible::kinds(problem);
}

/// Strings that stay are out of the search, and their terms in what their neighbours are worth: the set is the same.
#[test]
fn with_strings_that_stay_it_agrees_with_trying_every_set() {
    let mut seeded = Seeded::new(29);
    let mut bound = 0;
    for _ in 0..8 {
        let fitting = somebody(&mut seeded);
        for _ in 0..60 {
            let mut problem = fitting.problem.clone();
            let mut lists = small(&fitting, &mut seeded);
            let mut fixed = vec![None; lists.len()];
            for _ in 0..1 + seeded.below(2) {
                let i = seeded.below(lists.len());
                keep(&mut problem, &fitting, i, &mut fixed, &mut seeded);
                lists[i] = fixed[i].iter().map(Contender::from).collect();
            }
            for (i, list) in lists.iter_mut().enumerate() {
                let staying = Staying::beside(&problem, &fixed, i);
                for c in list {
                    *c = c.beside(&staying);
                }
            }
            let heaviest: f64 =
                lists.iter().map(|l| l.iter().map(|c| c.tension).fold(0.0, f64::max)).sum();
            let most_load = heaviest * seeded.between(0.7, 1.0);
            let wanted = Wanted { most_load, ..Wanted::default() };
            let found = branches::best(&problem, &lists, &wanted, &mut Work::unlimited());
            let truth = brute_force(&problem, &lists, &wanted);
            assert_eq!(found.is_some(), truth.is_some());
            let (Some(found), Some(truth)) = (found, truth) else { continue };
            assert!(found.proven);
            assert!((found.worth - truth).abs() < 1e-12, "{} against {truth}", found.worth);
            // What was searched is what is told.
            let searched = found.strings.iter().map(|c| c.worth(0.0)).sum::<f64>()
                + open_terms(&problem, &found.strings);
            assert!((searched - found.worth).abs() < 1e-12, "{searched}, told {}", found.worth);
            let free = Wanted { most_load: f64::INFINITY, ..wanted };
            bound += usize::from(brute_force(&problem, &lists, &free) > Some(truth + 1e-9));
        }
    }
    assert!(bound > 50, "the load limit decided {bound} times, so the test says little");
}

/// The terms of the pairs of which both strings are to be found.
fn open_terms(problem: &Problem, set: &[Contender]) -> f64 {
    let pairs = set.windows(2).zip(neighbours::Step::all(problem));
    pairs.map(|(c, step)| step.term(c[0].point(), c[1].point())).sum()
}

/// However little work is allowed, the best set is worth no more than the bound that comes with the one found.
#[test]
fn an_interrupted_search_bounds_what_it_missed() {
    let mut seeded = Seeded::new(41);
    let (mut interrupted, mut behind) = (0, 0);
    for _ in 0..6 {
        let fitting = somebody(&mut seeded);
        let problem = &fitting.problem;
        for _ in 0..400 {
            let lists = small(&fitting, &mut seeded);
            let usual: f64 = lists.iter().map(|l| l[0].tension).sum();
            // A hair above, for sums in another order differ by their rounding.
            let wanted = Wanted { most_load: usual * (1.0 + 1e-12), ..Wanted::default() };
            let mut work = Work::of(60 + seeded.bits() % 300);
            let Some(found) = branches::best(problem, &lists, &wanted, &mut work) else { continue };
            let truth = brute_force(problem, &lists, &wanted).unwrap();
            assert!(load(&found.strings) <= wanted.most_load);
            assert!(truth <= found.bound + 1e-9, "{truth} beyond the bound {}", found.bound);
            assert!(!found.proven || (found.worth - truth).abs() < 1e-12);
            interrupted += usize::from(!found.proven);
            behind += usize::from(found.worth < truth - 1e-9);
        }
    }
    assert!(interrupted > 40, "only {interrupted} searches were interrupted");
    assert!(behind > 0, "every interrupted search had met the best");
}

/// The same of a whole fit: with less and less work, what it finds and by how much it says it may be beaten.
#[test]
fn a_fit_that_is_cut_short_says_how_far_from_the_best_it_can_be() {
    let mut seeded = Seeded::new(43);
    let (mut unproven, mut behind) = (0, 0);
    for _ in 0..12 {
        let fitting = somebody(&mut seeded);
        let mut problem = fitting.problem.clone();
        let mut fixed = vec![None; problem.strings.len()];
        if seeded.bits().is_multiple_of(2) {
            let i = seeded.below(fixed.len());
            keep(&mut problem, &fitting, i, &mut fixed, &mut seeded);
        }
        // Every other time the load decides.
        problem.most_load *= *seeded.one_of(&[0.85, 1.0]);
        let within = |look, choice| -> Option<Choice> {
            match choose::within(&problem, &fitting.found, &fixed, look, choice).outcome {
                Outcome::Set { best, .. } => Some(best),
                Outcome::Nothing(_) => None,
            }
        };
        let Some(truth) = within(1 << 40, 1 << 40).filter(|set| set.proven) else { continue };
        for steps in [0, 1_000, 30_000, 300_000, 1_000_000] {
            for (look, choice) in [(steps, steps), (1 << 40, steps), (steps, 1 << 40)] {
                let found = within(look, choice).expect("there is a set");
                let load: f64 = found.strings.iter().map(|c| c.tension).sum();
                assert!(load <= problem.most_load);
                assert!(
                    truth.total() <= found.total() + found.gap + 1e-9,
                    "{} is beyond {} and the gap {}",
                    truth.total(),
                    found.total(),
                    found.gap
                );
                assert_eq!(found.proven, found.gap <= 0.0);
                assert!(!found.proven || found.total() > truth.total() - 1e-9);
                unproven += usize::from(!found.proven);
                behind += usize::from(found.total() < truth.total() - 1e-9);
            }
        }
    }
    assert!(unproven > 40, "only {unproven} fits were cut short");
    assert!(behind > 20, "only {behind} found less than the best");
}

/// A string with nothing to it but what a choice needs.
#[allow(clippy::disallowed_methods, reason = "a test's own logarithm may differ in the last bit")]
fn plain(score: f64, tension: f64, brightness: f64) -> Contender {
    Contender {
        score,
        staying: 0.0,
        tension,
        ln_tension: tension.ln(),
        brightness,
        core_type: CoreType::SoftSynthetic,
        recipe: Recipe::default(),
    }
}

/// Spaces on which three shorter ways go wrong: taking the best string by string, keeping for each string only what is
/// not beaten in score and tension alike, and rounding the load to bins.
#[test]
fn shorter_ways_go_wrong_where_this_one_does_not() {
    let problem = fit::fit(&Answers::default()).problem;
    let usual: Vec<f64> =
        problem.strings.iter().map(|s| (s.usual_tension.0 + s.usual_tension.1) / 2.0).collect();
    let bright: Vec<f64> = problem.strings.iter().map(|s| s.usual_brightness).collect();
    let mut seeded = Seeded::new(23);
    let (mut greedy_wrong, mut pareto_wrong, mut bins_wrong) = (0, 0, 0);
    for _ in 0..400 {
        // Bright strings score best, and by a little only; two bright neighbours of a dark one cost more than that.
        let lists: Vec<Vec<Contender>> = (0..4)
            .map(|i| {
                (0..5)
                    .map(|_| {
                        let shade = seeded.between(-0.9, 0.9);
                        let pull = seeded.between(0.85, 1.15);
                        let score =
                            -0.3 + 0.05 * shade + 0.1 * (pull - 1.0) + seeded.between(0.0, 0.04);
                        plain(score, usual[i] * pull, bright[i] + shade)
                    })
                    .collect()
            })
            .collect();
        let most_load = usual.iter().sum::<f64>() * seeded.between(0.97, 1.08);
        let wanted = Wanted { most_load, ..Wanted::default() };
        let truth = brute_force(&problem, &lists, &wanted);
        let found = branches::best(&problem, &lists, &wanted, &mut Work::unlimited());
        let found = found.map(|best| best.worth);
        match (found, truth) {
            (Some(found), Some(truth)) => assert!((found - truth).abs() < 1e-12),
            (found, truth) => assert_eq!(found, truth),
        }
        let Some(truth) = truth else { continue };
        let falls_short = |worth: Option<f64>| usize::from(worth.is_none_or(|w| w < truth - 1e-9));

        let best_of = |list: &Vec<Contender>| {
            list.iter().copied().max_by(|a, b| a.score.total_cmp(&b.score)).unwrap()
        };
        let set: Vec<Contender> = lists.iter().map(best_of).collect();
        greedy_wrong += falls_short((load(&set) <= most_load).then(|| worth(&problem, &set)));

        let unbeaten: Vec<Vec<Contender>> = lists
            .iter()
            .map(|list| {
                let beaten = |c: &Contender| {
                    list.iter().any(|o| o.score > c.score && o.tension <= c.tension)
                };
                list.iter().filter(|c| !beaten(c)).copied().collect()
            })
            .collect();
        pareto_wrong += falls_short(brute_force(&problem, &unbeaten, &wanted));

        // Loads counted in whole bins of 5 N, each rounded up, as a table of states by load would.
        let binned = every(&lists)
            .filter(|set| {
                set.iter().map(|c| (c.tension / 5.0).ceil() * 5.0).sum::<f64>() <= most_load
            })
            .map(|set| worth(&problem, &set))
            .max_by(f64::total_cmp);
        bins_wrong += falls_short(binned);
    }
    for (what, wrong) in
        [("greedy", greedy_wrong), ("unbeaten", pareto_wrong), ("bins", bins_wrong)]
    {
        assert!(wrong > 20, "{what} went wrong only {wrong} times, so the spaces are too easy");
    }
}

/// What the bounds leave out is never worth more than what was asked for: without any bound the same strings come out.
#[test]
fn bounds_leave_out_nothing_that_counts() {
    let mut seeded = Seeded::new(31);
    let mut compared = 0;
    for (n, kind) in instrument::ALL.iter().enumerate() {
        let mut answers = Answers { instrument: Some(kind), ..Answers::default() };
        answers.wishes.colour = seeded.between(-2.0, 2.0);
        answers.wishes.brightness = seeded.between(-2.0, 2.0);
        let fitting = fit::fit(&answers);
        let mut problem = fitting.problem.clone();
        // One string an instrument: without bounds a place takes seconds.
        let i = 1 + seeded.below(problem.strings.len() - 1);
        // On every other instrument, whatever is made stays above it.
        let mut fixed = vec![None; problem.strings.len()];
        if n % 2 == 0 {
            keep(&mut problem, &fitting, i - 1, &mut fixed, &mut seeded);
        }
        let staying = Staying::beside(&problem, &fixed, i);
        assert_eq!(staying.are_none(), n % 2 == 1);
        let string = &problem.strings[i];
        let space = Space::new(&problem, string, staying);
        let of = |floor| space.best(&Look::free(floor, CoreTypes::ALL), &mut Work::unlimited());
        let all = of(Floor::At(f64::NEG_INFINITY));
        for gap in [0.0, 0.02] {
            let best = of(Floor::Under(gap));
            assert!(best.counts.judged < all.counts.judged / 2, "the bounds bound little");
            let mut tops = [f64::NEG_INFINITY; CORE_TYPES];
            for c in &all.contenders {
                tops[c.core_type as usize] = tops[c.core_type as usize].max(c.worth(0.0));
            }
            let top = tops.iter().fold(f64::NEG_INFINITY, |a, b| a.max(*b));
            // Of a core type that lies far behind, one that is worth about the best is enough.
            let is_far = |c: &Contender| tops[c.core_type as usize] < top - SPAN;
            let floor = |c: &Contender| {
                let of_type = tops[c.core_type as usize];
                if is_far(c) { of_type - MISS } else { of_type - gap }
            };
            let expected: Vec<Contender> = all
                .contenders
                .iter()
                .filter(|c| !is_far(c) && c.worth(0.0) >= floor(c) + 1e-7)
                .copied()
                .collect();
            for c in &expected {
                assert!(best.contenders.contains(c), "{} misses {c:?}", kind.key);
            }
            for c in &best.contenders {
                assert!(c.worth(0.0) >= floor(c) - 1e-7, "{} keeps {c:?}", kind.key);
            }
            for core in CoreType::ALL {
                let any = |list: &[Contender]| list.iter().any(|c| c.core_type == *core);
                assert_eq!(any(&best.contenders), any(&all.contenders), "{}", core.key());
            }
            compared += expected.len();
        }
        // What the search scores on its lean path is what the string scores when it is judged by itself.
        for c in all.contenders.iter().step_by(all.contenders.len() / 40 + 1) {
            let candidate = space.candidate(c.recipe).unwrap();
            assert!((candidate.score - c.score).abs() < 1e-9, "{} {c:?}", candidate.score);
            assert!((candidate.tension - c.tension).abs() < 1e-9 * c.tension);
            assert!((candidate.brightness - c.brightness).abs() < 1e-9);
        }
    }
    assert!(compared > 100, "only {compared} strings compared");
}
