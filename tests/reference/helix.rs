//! A bundle that swells and cannot untwist, against the lengths of its helices.

use strings::quantity::{Degree, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of};

#[test]
fn a_bundle_grows_as_the_mean_of_its_helices() {
    let printed = output_of("helix");
    let rows = |key: &str, share: fn(f64) -> f64, why: &'static str| {
        let of = |bundle: &serde_json::Value| {
            let (twist, along, across) =
                (number(bundle, "twist_deg"), number(bundle, "along"), number(bundle, "across"));
            let growth = physics!(climate::helix_growth);
            let found = growth(Ratio::new(along), Ratio::new(across), Degree::new(twist)).get();
            // The two parts may cancel, so that a share is one of their sizes.
            let within = Within::Amount(share(twist.to_radians().tan().powi(2)) * (along + across));
            let what = format!("{twist} degrees, {along} along and {across} across, {key}");
            row(what, found, number(bundle, key), within, why)
        };
        list(&printed, "bundles").iter().map(of).collect::<Vec<_>>()
    };
    let authority = Authority {
        source: "helix.py, every fibre by itself, mean over the section",
        grade: Grade::Independent,
    };
    let why = "the formula is of first order in the growth";
    check(&authority, rows("alone", |_| 0.006, why));
    let authority =
        Authority { source: "helix.py, all fibres tied to one height", grade: Grade::Independent };
    let why = "the formula takes the plain mean over the section, which is of first order in tan²";
    check(&authority, rows("together", |t2| 0.006 + t2 * t2 / 6.0, why));
}
