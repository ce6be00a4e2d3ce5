//! A twisted bundle, against the average over its cross-section.

use strings::quantity::{Degree, Metre, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of};

#[test]
fn twist_takes_from_a_bundle_what_the_average_says() {
    let printed = output_of("yarn");
    let authority =
        Authority { source: "yarn.py (numeric average of cos^4)", grade: Grade::Independent };
    let area = |twist: f64| {
        physics!(stiffness::bundle_area)(Metre::from_mm(0.5), Ratio::new(0.7), Degree::new(twist))
            .get()
    };
    let gut = |twist: f64| physics!(stiffness::gut_twist_factor)(Degree::new(twist)).get();
    check(
        &authority,
        list(&printed, "yarns").iter().flat_map(|yarn| {
            let (twist, share) = (number(yarn, "twist_deg"), number(yarn, "modulus_share"));
            [("bundle", area(twist) / area(0.0)), ("gut", gut(twist) / gut(0.0))].map(
                |(which, found)| {
                    row(
                        format!(
                            "{which} twisted by {twist} degrees, share of the straight modulus"
                        ),
                        found,
                        share,
                        Within::Share(1e-12),
                        "the integration is asked for 13 digits",
                    )
                },
            )
        }),
    );
}
