//! How long does the model take? Numbers, no gates: machines differ and are noisy.
#![allow(clippy::print_stdout, reason = "a bench prints what it measured")]

use std::hint::black_box;
use std::time::Instant;

use strings::construction::{Construction, Winding};
use strings::fit::answers::Answers;
use strings::fit::{self, candidates, choose, problem};
use strings::instrument;
use strings::report::{self, LeanCore};

/// Median seconds of `times` runs.
fn median(times: usize, mut run: impl FnMut()) -> f64 {
    let mut all: Vec<f64> = (0..times)
        .map(|_| {
            let start = Instant::now();
            run();
            start.elapsed().as_secs_f64()
        })
        .collect();
    all.sort_by(f64::total_cmp);
    all[all.len() / 2]
}

/// Microseconds a construction takes on the lean path: every core of the search's candidates met once, every stack wound.
fn lean() -> f64 {
    let posed = problem::pose(&Answers::default());
    let string = &posed.strings[1];
    let found = candidates::search(&posed, string);
    let mut blocks: Vec<(LeanCore, Vec<Vec<Winding>>)> = Vec::new();
    let mut last = None;
    for candidate in &found.candidates {
        let core = candidate.construction.core;
        if last != Some(core) {
            blocks.push((LeanCore::new(&Construction::of(core, &[]), &string.setting), Vec::new()));
            last = Some(core);
        }
        if let Some((_, stacks)) = blocks.last_mut() {
            stacks.push(candidate.construction.windings().copied().collect());
        }
    }
    let seconds = median(99, || {
        for (core, stacks) in &blocks {
            for windings in stacks {
                black_box(core.wound(black_box(windings)));
            }
        }
    });
    seconds * 1e6 / found.candidates.len() as f64
}

fn main() {
    println!("lean path {:.3} us a construction", lean());
    for kind in instrument::ALL {
        let answers = Answers { instrument: Some(kind), ..Answers::default() };
        let posed = problem::pose(&answers);
        let examined: usize =
            posed.strings.iter().map(|s| candidates::search(&posed, s).examined).sum();
        let search = median(9, || {
            for string in &posed.strings {
                black_box(candidates::search(black_box(&posed), string));
            }
        });
        let whole = median(9, || drop(black_box(fit::fit(black_box(&answers)))));
        let fitting = fit::fit(&answers);
        let shortlists = median(9, || {
            for found in &fitting.found {
                black_box(choose::shortlist(black_box(found)));
            }
        });
        let best = median(9, || {
            drop(black_box(choose::best(&fitting.problem, &fitting.shortlists, None)));
        });
        let choice = choose::best(&fitting.problem, &fitting.shortlists, None);
        let string = choice.map(|c| c.strings[1].construction);
        let report = string.map_or(0.0, |c| {
            median(99, || drop(black_box(report::report(&c, &fitting.problem.strings[1].setting))))
        });
        println!(
            "{:12} fit {:6.1} ms; search {:6.1} ms for {examined} constructions, {:.3} us each; shortlists {:.1} ms; best set {:.1} ms; report {:.0} us",
            kind.key,
            whole * 1e3,
            search * 1e3,
            search * 1e6 / examined as f64,
            shortlists * 1e3,
            best * 1e3,
            report * 1e6,
        );
    }
}
