//! How long does the model take? Numbers, no gates: machines differ and are noisy.
#![allow(clippy::print_stdout, reason = "a bench prints what it measured")]

use std::hint::black_box;
use std::time::Instant;

use strings::fit::answers::Answers;
use strings::fit::neighbours::Staying;
use strings::fit::search::Space;
use strings::fit::{self, candidates, choose, problem};
use strings::instrument;
use strings::report;

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

/// Microseconds a construction takes on the lean path: one core under every thickness of ribbon, alone and in lanes.
fn lean() -> [f64; 2] {
    let posed = problem::pose(&Answers::default());
    let setting = &posed.strings[1].setting;
    [false, true].map(|lanes| {
        let seconds = median(99, || {
            black_box(report::sweep(black_box(setting), lanes));
        });
        seconds * 1e6 / f64::from(report::sweep(setting, lanes).1)
    })
}

/// Microseconds that a report of one string takes: every number in every constant's two ends.
fn told() -> f64 {
    let fitting = fit::fit(&Answers::default());
    let choose::Outcome::Set { best, .. } = &fitting.outcome else { return f64::NAN };
    let (string, setting) = (&best.strings[1].construction, &fitting.problem.strings[1].setting);
    1e6 * median(99, || drop(black_box(report::report(black_box(string), setting))))
}

fn main() {
    let [alone, lanes] = lean();
    println!("lean path {alone:.4} us a construction alone, {lanes:.4} us in lanes");
    println!("a report {:.0} us", told());
    // A name after the command measures that instrument alone.
    let only = std::env::args().skip(1).find(|a| !a.starts_with('-'));
    for kind in instrument::ALL.iter().filter(|k| only.as_ref().is_none_or(|o| o == k.key)) {
        let answers = Answers { instrument: Some(kind), ..Answers::default() };
        let posed = fit::fit(&answers).problem;
        let look = median(9, || {
            for string in &posed.strings {
                black_box(candidates::look(black_box(&posed), string));
            }
        });
        let bounding = median(9, || {
            for string in &posed.strings {
                drop(black_box(Space::new(black_box(&posed), string, Staying::default())));
            }
        });
        let found: Vec<_> = posed.strings.iter().map(|s| candidates::look(&posed, s)).collect();
        let fixed = vec![None; posed.strings.len()];
        let choosing =
            median(9, || drop(black_box(choose::choose(black_box(&posed), &found, &fixed))));
        let whole = median(9, || drop(black_box(fit::fit(black_box(&answers)))));
        let fitting = fit::fit(&answers);
        let request = protocol::request::Request::Fit(Box::new(protocol::request::FitRequest {
            answers: protocol::request::Answers {
                instrument: Some(kind.key.to_owned()),
                ..Default::default()
            },
        }));
        let reply = median(9, || drop(black_box(protocol::handle(black_box(&request)))));
        let asked =
            protocol::request::Request::Certainty(Box::new(protocol::request::FitRequest {
                answers: protocol::request::Answers {
                    instrument: Some(kind.key.to_owned()),
                    ..Default::default()
                },
            }));
        let certainty = median(5, || drop(black_box(protocol::handle(black_box(&asked)))));
        println!(
            "{:12} certainty {:6.1} ms, the fit in it and those of the turning points included",
            kind.key,
            certainty * 1e3
        );
        println!(
            "{:12} reply {:6.1} ms; fit {:6.1} ms: look {:.1}, bounds {:.1}, choice {:.1}",
            kind.key,
            reply * 1e3,
            whole * 1e3,
            look * 1e3,
            bounding * 1e3,
            choosing * 1e3,
        );
        println!(
            "{:?}",
            fitting.problem.strings.iter().map(|s| s.usual_brightness).collect::<Vec<_>>()
        );
        for c in &fitting.counts {
            println!("             {c:?}");
        }
        if let choose::Outcome::Set { best, others } = &fitting.outcome {
            for c in &best.strings {
                println!(
                    "             {:?} {:.1} N score {:.4} bright {:.3}",
                    c.family, c.tension, c.score, c.brightness
                );
            }
            println!(
                "             worth {:.4} pairs {:?} second {:?}",
                best.worth,
                best.pairs,
                others.first().map(|other| other.worth)
            );
        }
    }
}
