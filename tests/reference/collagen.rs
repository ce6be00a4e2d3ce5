//! Water in collagen, against a fit of the printed table made anew.

use strings::quantity::Ratio;
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of};

#[test]
fn the_law_is_the_best_fit_of_the_table() {
    let printed = output_of("collagen");
    let authority = Authority {
        source: "collagen.py (least squares on Table 1 of Heritage Science 2013, 1:14)",
        grade: Grade::Fitted,
    };
    check(
        &authority,
        list(&printed, "water").iter().map(|point| {
            let humidity = number(point, "humidity");
            row(
                format!("water at a relative humidity of {humidity}"),
                physics!(climate::collagen_water)(Ratio::new(humidity)).get(),
                number(point, "share"),
                Within::Share(5e-4),
                "the model keeps four digits of each constant",
            )
        }),
    );
}
