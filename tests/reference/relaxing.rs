//! Relaxation of drawn wire, against the printed law differentiated numerically.

use strings::quantity::Ratio;
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of};

#[test]
fn wire_relaxes_by_the_slope_of_the_standard() {
    let printed = output_of("relaxing");
    let authority = Authority {
        source: "relaxing.py, EN 1992-1-1 eq. 3.28 differentiated with forty digits",
        grade: Grade::Independent,
    };
    check(
        &authority,
        list(&printed, "wires").iter().map(|wire| {
            let share = number(wire, "share");
            let found = physics!(settling::steel_relaxation)(Ratio::new(share));
            let what = format!("{share} of the strength, share a decade");
            row(what, found.get(), number(wire, "a_decade"), Within::Share(1e-11), "rounding")
        }),
    );
}
