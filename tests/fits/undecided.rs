//! How often the page has to say that of two strings it can't be told which settles sooner or moves less.

use protocol::reply::{Comparison, Reply};
use protocol::request::{CompareRequest, FitRequest, Request};
use support::Seeded;

use crate::anybody::{anybody, tables};

/// How many people ask.
const PEOPLE: usize = 300;

#[test]
fn settling_and_drift_are_decided_in_three_of_four_comparisons() {
    let tables = tables();
    let mut seeded = Seeded::new(1_512);
    let mut found: Vec<(String, String)> = Vec::new();
    for _ in 0..PEOPLE {
        let answers = anybody(&mut seeded, &tables);
        let Reply::Fit(fit) = protocol::handle(&Request::Fit(Box::new(FitRequest { answers })))
        else {
            panic!("refused")
        };
        let Some(set) = fit.set else { continue };
        for string in set.strings.iter().filter(|s| s.standing == "new") {
            let mut told = |c: &Comparison| {
                let is_of_time = ["settling_d", "_warmth_cent", "_damp_cent"];
                if is_of_time.iter().any(|end| c.property.ends_with(end)) {
                    found.push((c.property.clone(), c.verdict.clone()));
                }
            };
            string.changes.iter().for_each(&mut told);
            // A person sets the chosen string beside the other that is named.
            let Some(rival) = &string.rival else { continue };
            let request = Request::Compare(Box::new(CompareRequest {
                this: string.report.construction.clone(),
                other: rival.construction.clone(),
                setting: string.report.setting.clone(),
            }));
            let Reply::Compare(compare) = protocol::handle(&request) else { panic!("refused") };
            compare.comparisons.iter().for_each(&mut told);
        }
    }
    for property in ["settling_d", "_warmth_cent", "_damp_cent"] {
        let of = |verdict: &str| {
            let is = |(p, v): &&(String, String)| p.ends_with(property) && v == verdict;
            found.iter().filter(is).count()
        };
        support::tell(&format!(
            "{property}: {} above, {} below, {} rather so, {} alike, {} undecided",
            of("above"),
            of("below"),
            of("rather-above") + of("rather-below"),
            of("alike"),
            of("undecided")
        ));
    }
    let undecided = found.iter().filter(|(_, verdict)| verdict == "undecided").count();
    support::tell(&format!("{undecided} of {} comparisons undecided", found.len()));
    assert!(found.len() > 2_000, "only {} comparisons", found.len());
    assert!(undecided * 4 <= found.len(), "{undecided} of {} comparisons", found.len());
}
