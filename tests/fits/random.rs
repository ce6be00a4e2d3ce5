//! Random fits: nothing that nobody makes, nothing outside its band, no panic, no NaN.

use std::sync::Mutex;

use protocol::reply::{Bands, Fit, FittedString, Quantity, Reply};
use protocol::request::{FitRequest, Request};
use strings::report::Property;
use support::Seeded;

use crate::anybody::{anybody, tables};

/// How many people ask in a proof, half of them in each of two threads; or as many as `ROPEWALK_PEOPLE` says.
pub(crate) fn people() -> usize {
    support::cases("ROPEWALK_PEOPLE", 300)
}

fn inside(what: &str, value: f64, band: (f64, f64), doubts: &mut Vec<String>) {
    // Bands are compared as the search compares them, to a nanometre or a part in a billion.
    let slack = 1e-9 * band.1.abs().max(1.0);
    if !(value >= band.0 - slack && value <= band.1 + slack) {
        doubts.push(format!("{what} {value} outside {} to {}", band.0, band.1));
    }
}

fn check_string(string: &FittedString, doubts: &mut Vec<String>) {
    let value = |key: &str| string.report.numbers.get(key).map_or(f64::NAN, |q| q.value);
    let Bands { tension_n, gauge_m, stretch, winding_mass_share, breaking_share } = &string.bands;
    // What stays is as it is, and may have been made for another set-up.
    if string.standing == "new" {
        inside("tension", value("tension_n"), *tension_n, doubts);
        inside("gauge", value("outer_diameter_m"), *gauge_m, doubts);
        inside("stretch", value("stretch"), *stretch, doubts);
        inside("winding share", value("winding_mass_share"), *winding_mass_share, doubts);
        inside("breaking share", value("breaking_share"), (0.0, *breaking_share), doubts);
    }
    if string.grade != "everyday" && string.grade != "sometimes" {
        doubts.push(format!("grade {}", string.grade));
    }
    for (key, q) in &string.report.numbers {
        let Quantity { value, low, high, .. } = q;
        let is_signed = Property::ALL.iter().any(|p| p.key() == key && p.is_signed());
        let floor = if is_signed { f64::NEG_INFINITY } else { 0.0 };
        if !(low.is_finite() && high.is_finite() && low <= value && value <= high && *low >= floor)
        {
            doubts.push(format!("{key}: {low} {value} {high}"));
        }
    }
    if string.reasons.len() > 3 || string.costs.is_empty() {
        doubts.push(format!("{} reasons, {} costs", string.reasons.len(), string.costs.len()));
    }
    let unsure = string
        .reasons
        .iter()
        .filter_map(|r| r.comparison.as_ref())
        .any(|c| c.verdict != "above" && c.verdict != "below");
    if unsure {
        doubts.push("a reason without a noticeable difference".to_owned());
    }
}

fn check(fit: &Fit, doubts: &mut Vec<String>) {
    match &fit.set {
        Some(set) => {
            for string in &set.strings {
                check_string(string, doubts);
            }
            inside(
                "total tension",
                set.total_tension_n.value,
                (0.0, fit.problem.most_load_n),
                doubts,
            );
        }
        None if fit.obstacles.is_empty() => {
            doubts.push("neither a set nor a reason why not".to_owned());
        }
        None => {}
    }
}

/// Numbers that are no numbers become null in JSON, where the reply's type has no room for them.
fn reread(reply: &Reply, doubts: &mut Vec<String>) {
    let text = serde_json::to_string(reply).unwrap();
    if let Err(e) = Reply::read(&text) {
        doubts.push(format!("the reply does not read back: {e}"));
    }
}

#[test]
fn random_fits_keep_to_what_is_made() {
    let tables = tables();
    let people = people();
    let failures: Mutex<Vec<String>> = Mutex::new(Vec::new());
    let with_set = Mutex::new(0_usize);
    std::thread::scope(|scope| {
        for half in 0..2_u64 {
            let (tables, failures, with_set) = (&tables, &failures, &with_set);
            scope.spawn(move || {
                let mut seeded = Seeded::new(20_260 + half);
                for n in 0..people / 2 {
                    let answers = anybody(&mut seeded, tables);
                    let request = Request::Fit(Box::new(FitRequest { answers }));
                    let reply = protocol::handle(&request);
                    let mut doubts = Vec::new();
                    match &reply {
                        Reply::Fit(fit) => {
                            check(fit, &mut doubts);
                            *with_set.lock().unwrap() += usize::from(fit.set.is_some());
                        }
                        other => doubts.push(format!("refused: {other:?}")),
                    }
                    if n % 10 == 0 {
                        reread(&reply, &mut doubts);
                    }
                    if !doubts.is_empty() {
                        let request = serde_json::to_string(&request).unwrap();
                        failures
                            .lock()
                            .unwrap()
                            .push(format!("{request}\n    {}", doubts.join("\n    ")));
                    }
                }
            });
        }
    });
    let failures = failures.into_inner().unwrap();
    assert!(
        failures.is_empty(),
        "{} of {people} fits went wrong; the first:\n{}",
        failures.len(),
        failures[0]
    );
    let with_set = with_set.into_inner().unwrap();
    support::tell(&format!(
        "{with_set} of {people} people got a set; the others were told why not"
    ));
    assert!(with_set > people / 2, "only {with_set} of {people} people got a set");
}
