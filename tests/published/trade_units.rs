//! Inch, pound and kilogram-force, whose sizes are fixed by agreement.

use strings::quantity::{Metre, Newton};
use support::{Authority, Grade, Within, check, row};

#[test]
fn inch_pound_and_kilogram_force() {
    let authority = Authority {
        source: "International yard and pound agreement 1959 (25.4 mm, 0.45359237 kg); CGPM 1901 (9.80665 m/s2)",
        grade: Grade::Identity,
    };
    check(
        &authority,
        [
            row(
                "0.127 mm in inches",
                Metre::from_mm(0.127).inches(),
                0.005,
                Within::Share(1e-15),
                "exact by agreement",
            ),
            row(
                "0.26 mm in millimetres",
                Metre::from_mm(0.26).mm(),
                0.26,
                Within::Share(1e-15),
                "exact",
            ),
            row(
                "80 N in kilograms-force",
                Newton::new(80.0).kilograms_force(),
                8.157_730,
                Within::Share(1e-7),
                "worked out by hand",
            ),
            row(
                "80 N in pounds-force",
                Newton::new(80.0).pounds_force(),
                17.984_716,
                Within::Share(1e-7),
                "worked out by hand",
            ),
        ],
    );
}
