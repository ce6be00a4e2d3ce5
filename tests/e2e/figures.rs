//! `cargo figures`: how heavy the page is, how soon it is there, and how much of it moves. Numbers, no gates for the
//! times: machines differ. The weights are the same everywhere with the same tools, and `ground.rs` holds them.
#![allow(clippy::unwrap_used, reason = "a measurement that cannot be made says so by a panic")]
#![allow(clippy::print_stdout, reason = "it prints what it measured")]

mod start;
#[allow(dead_code, reason = "the tests drive the page further than this does")]
mod support;

use start::{Start, Weight};
use tasks::setup;

/// How often the page is loaded each way.
const LOADS: usize = 9;

/// The screens that a person meets first.
const SCREENS: [&str; 4] = ["#/", "#/ask/1", "#/ask/2", "#/everything"];

fn main() {
    setup::for_building().unwrap();
    let faults = setup::for_testing();
    assert!(faults.is_empty(), "{faults:?}");
    setup::build().unwrap();
    support::drive(async |page| {
        page.watch_starts().await;
        // The first load warms the server.
        let begun = page.start("#/", true).await;
        println!("\nstart weight, bytes");
        let page_alone = sum("the page alone", &start::weights(&begun.files));
        let worker = sum("the model's worker", &start::weights(&start::worker()));
        row("both", page_alone.0 + worker.0, page_alone.1 + worker.1);
        println!("\nin ms, the median of {LOADS} loads and the range");
        for (visit, first) in [("first visit", true), ("later visit", false)] {
            let mut starts = Vec::new();
            for _ in 0..LOADS {
                starts.push(page.start("#/", first).await);
            }
            println!("{visit}: first paint {}", median(&starts, |start| start.paint));
            println!("{visit}: ready       {}", median(&starts, |start| start.ready));
        }
        println!("\nlayout shift");
        for screen in SCREENS {
            println!("{screen:14} {:.4}", page.start(screen, true).await.shift);
        }
    });
}

fn sum(what: &str, weights: &[Weight]) -> (usize, usize) {
    for weight in weights {
        row(&weight.name, weight.raw, weight.brotli);
    }
    let sum = weights.iter().fold((0, 0), |sum, w| (sum.0 + w.raw, sum.1 + w.brotli));
    row(what, sum.0, sum.1);
    println!();
    sum
}

fn row(name: &str, raw: usize, brotli: usize) {
    println!("{name:44} {raw:>9} raw {brotli:>8} brotli");
}

fn median(starts: &[Start], of: impl Fn(&Start) -> f64) -> String {
    let mut all: Vec<f64> = starts.iter().map(of).collect();
    all.sort_by(f64::total_cmp);
    format!("{:4.0} ({:.0} to {:.0})", all[all.len() / 2], all[0], all[all.len() - 1])
}
