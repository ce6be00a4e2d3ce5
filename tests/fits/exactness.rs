//! The branch and bound finds what trying every set finds.

use strings::fit::answers::Answers;
use strings::fit::candidates::Candidate;
use strings::fit::{self, Fitting, choose};
use strings::instrument;
use support::Seeded;

fn fitting(seeded: &mut Seeded) -> Fitting {
    let kind = *seeded.one_of(instrument::ALL);
    let size = seeded.one_of(kind.sizes);
    let mut answers = Answers { instrument: Some(kind), size: Some(size), ..Answers::default() };
    answers.wishes.colour = seeded.between(-2.0, 2.0);
    answers.wishes.brightness = seeded.between(-2.0, 2.0);
    answers.wishes.feel = seeded.between(-2.0, 2.0);
    fit::fit(&answers)
}

/// A few candidates of each string, drawn so that greedy choices are often wrong.
fn small(fitting: &Fitting, seeded: &mut Seeded) -> Vec<Vec<Candidate>> {
    fitting
        .found
        .iter()
        .map(|found| {
            let mut list: Vec<Candidate> =
                (0..6).map(|_| seeded.one_of(&found.candidates).clone()).collect();
            list.sort_by(|a, b| b.score.total_cmp(&a.score));
            list
        })
        .collect()
}

/// The worth of the best set by trying every one.
fn brute_force(fitting: &Fitting, lists: &[Vec<Candidate>], most_load: f64) -> Option<f64> {
    let mut best: Option<f64> = None;
    let count: usize = lists.iter().map(Vec::len).product();
    for n in 0..count {
        let mut rest = n;
        let strings: Vec<Candidate> = lists
            .iter()
            .map(|list| {
                let k = rest % list.len();
                rest /= list.len();
                list[k].clone()
            })
            .collect();
        if strings.iter().map(|c| c.tension).sum::<f64>() > most_load {
            continue;
        }
        let pairs: f64 = choose::pairs(&fitting.problem, &strings).iter().sum();
        let worth = strings.iter().map(|c| c.score).sum::<f64>() + pairs;
        best = Some(best.map_or(worth, |b: f64| b.max(worth)));
    }
    best.map(|worth| worth / lists.len() as f64)
}

#[test]
fn branch_and_bound_agrees_with_brute_force() {
    let mut seeded = Seeded::new(7);
    let mut tight = 0;
    for _ in 0..12 {
        let mut fitting = fitting(&mut seeded);
        for _ in 0..25 {
            let lists = small(&fitting, &mut seeded);
            let lightest: f64 = lists
                .iter()
                .map(|l| l.iter().map(|c| c.tension).fold(f64::INFINITY, f64::min))
                .sum();
            let heaviest: f64 =
                lists.iter().map(|l| l.iter().map(|c| c.tension).fold(0.0, f64::max)).sum();
            // The load limit is drawn across the whole range, so that it often decides.
            fitting.problem.most_load =
                lightest + seeded.between(-0.1, 1.0) * (heaviest - lightest);
            let found = choose::best(&fitting.problem, &lists, None);
            let truth = brute_force(&fitting, &lists, fitting.problem.most_load);
            match (&found, truth) {
                (Some(choice), Some(truth)) => assert!(
                    (choice.worth - truth).abs() < 1e-12,
                    "{} against {truth} by brute force",
                    choice.worth
                ),
                (None, None) => tight += 1,
                _ => panic!(
                    "one finds a set and the other none: {:?} against {truth:?}",
                    found.map(|c| c.worth)
                ),
            }
        }
    }
    assert!(tight > 5, "the load limit never decided, so the test says little");
}

#[test]
fn what_the_shortlist_leaves_out_is_no_better_string_by_string() {
    let mut seeded = Seeded::new(11);
    for _ in 0..8 {
        let fitting = fitting(&mut seeded);
        for (found, list) in fitting.found.iter().zip(&fitting.shortlists) {
            let best = found.candidates.iter().map(|c| c.score).fold(f64::NEG_INFINITY, f64::max);
            assert!(
                list.iter().any(|c| (c.score - best).abs() < 1e-15),
                "the best string is not on the shortlist"
            );
            for family in strings::construction::Family::ALL {
                let any = found.candidates.iter().any(|c| c.family == family);
                assert_eq!(any, list.iter().any(|c| c.family == family), "{family:?} was lost");
            }
        }
    }
}
