//! How long does a fit take, over random people of every instrument, size, tuning, set-up, wish and limit? The spread, and
//! the slowest. Numbers, no gates. `ROPEWALK_PEOPLE` says how many.
#![allow(clippy::print_stdout, reason = "a bench prints what it measured")]
#![allow(clippy::unwrap_used, reason = "a bench that cannot run says so by a panic")]

#[path = "../fits/anybody.rs"]
#[allow(dead_code, reason = "the fits' tests use the rest")]
mod anybody;

use std::hint::black_box;
use std::time::Instant;

use protocol::reply::Reply;
use protocol::request::{FitRequest, Request};
use support::Seeded;

fn main() {
    let tables = anybody::tables();
    let mut seeded = Seeded::new(1);
    let (mut sets, mut proven) = (0, 0);
    let mut all: Vec<(f64, String)> = (0..support::cases("ROPEWALK_PEOPLE", 2000))
        .map(|_| {
            let answers = anybody::anybody(&mut seeded, &tables);
            let request = Request::Fit(Box::new(FitRequest { answers }));
            let start = Instant::now();
            let reply = black_box(protocol::handle(&request));
            let seconds = start.elapsed().as_secs_f64();
            if let Reply::Fit(fit) = &reply
                && let Some(set) = &fit.set
            {
                sets += 1;
                proven += usize::from(set.proven);
            }
            (seconds, serde_json::to_string(&request).unwrap())
        })
        .collect();
    all.sort_by(|a, b| a.0.total_cmp(&b.0));
    let at = |share: f64| all[((all.len() - 1) as f64 * share).round() as usize].0;
    let median = at(0.5);
    println!("{} people, one after another: {sets} sets, {proven} proven the best", all.len());
    for (name, share) in [("p50", 0.5), ("p95", 0.95), ("p99", 0.99), ("longest", 1.0)] {
        let seconds = at(share);
        println!("  {name:8} {:7.1} ms {:6.1} times the median", seconds * 1e3, seconds / median);
    }
    for (seconds, request) in all.iter().rev().take(5) {
        println!("{:.3} s {request}", seconds);
    }
}
