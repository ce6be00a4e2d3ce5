//! What the advice says of the bow moves as the theory says when only the bridge under it changes, and nothing else moves.

use protocol::reply::{Fit, Reply, Report};
use protocol::request::{FitRequest, ReportRequest, Request};
use support::Seeded;

use crate::anybody::{anybody, tables};

/// Fits whose strings are looked at.
const FITS: usize = 200;
/// By what the bridge is changed.
const FIRMER: f64 = 1.2;

fn report(of: &Report, bridge: f64, peak: f64) -> Report {
    let mut setting = of.setting.clone();
    setting.bridge_resistance_kg_s *= bridge;
    setting.peak_resistance_kg_s *= peak;
    let construction = of.construction.clone();
    let request = Request::Report(Box::new(ReportRequest { construction, setting }));
    match protocol::handle(&request) {
        Reply::Report(report) => *report,
        other => panic!("no report but {other:?}"),
    }
}

/// Whether a number rose (1), fell (-1) or stayed (0).
fn moved(key: &str, from: &Report, to: &Report) -> i32 {
    let value = |report: &Report| report.numbers.get(key).map_or(f64::NAN, |q| q.value);
    let (a, b) = (value(from), value(to));
    assert!(a.is_finite() && b.is_finite(), "{key}: {a} {b}");
    if (b - a).abs() <= 1e-12 * a.abs() {
        0
    } else if b > a {
        1
    } else {
        -1
    }
}

#[test]
fn what_is_said_of_the_bow_follows_the_bridge_and_nothing_else_does() {
    // Schelleng 1973: the least force falls as the bridge resists more, the greatest does not hang on it. A string is
    // nearer to a wolf as the strongest note's resistance falls. A firmer bridge takes less, so the string rings longer.
    const BY_BRIDGE: [(&str, i32); 3] =
        [("bow_force_least_n", -1), ("bow_window_db", 1), ("ring_s", 1)];
    const BY_PEAK: [(&str, i32); 1] = [("wolf", -1)];
    let tables = tables();
    let mut seeded = Seeded::new(1973);
    let (mut fits, mut strings) = (0, 0);
    while fits < FITS {
        let answers = anybody(&mut seeded, &tables);
        let reply = protocol::handle(&Request::Fit(Box::new(FitRequest { answers })));
        let Reply::Fit(fit) = reply else { panic!("no fit") };
        let Fit { set: Some(set), .. } = *fit else { continue };
        fits += 1;
        for string in &set.strings {
            strings += 1;
            let own = report(&string.report, 1.0, 1.0);
            let firm = report(&string.report, FIRMER, 1.0);
            let calm = report(&string.report, 1.0, FIRMER);
            for key in own.numbers.keys() {
                let expected = |moves: &[(&str, i32)]| {
                    moves.iter().find(|(name, _)| name == key).map_or(0, |(_, sign)| *sign)
                };
                assert_eq!(moved(key, &own, &firm), expected(&BY_BRIDGE), "{key}, bridge");
                assert_eq!(moved(key, &own, &calm), expected(&BY_PEAK), "{key}, strongest note");
            }
        }
    }
    support::tell(&format!("{strings} strings of {fits} fits"));
}
