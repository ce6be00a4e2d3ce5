//! Heritage Science 2013, 1:14, Table 1: water in collagen at 25 degrees.

use strings::quantity::Ratio;
use support::{Authority, Grade, Within, check, physics, row};

#[test]
fn sorption_of_collagen() {
    let authority = Authority {
        source: "Heritage Science 2013, 1:14, Table 1, 25 degrees Celsius",
        grade: Grade::Fitted,
    };
    check(
        &authority,
        [
            (0.05, 5.45),
            (0.10, 7.39),
            (0.20, 10.06),
            (0.30, 12.44),
            (0.40, 15.14),
            (0.50, 17.95),
            (0.60, 21.06),
            (0.70, 25.05),
            (0.80, 30.20),
            (0.90, 40.70),
            (0.95, 50.01),
        ]
        .map(|(humidity, percent)| {
            row(
                format!("water at {humidity}, per cent of the dry mass"),
                100.0 * physics!(climate::collagen_water)(Ratio::new(humidity)).get(),
                percent,
                Within::Amount(0.95),
                "the fit is stated to miss by up to 0.95 points of per cent",
            )
        }),
    );
}
