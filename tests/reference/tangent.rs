//! Tangent over secant modulus, against a fibre that is pulled and let back step by step.

use strings::quantity::{Pascal, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of};

#[test]
fn a_fibre_that_stiffens_relaxes_by_its_tangent() {
    let printed = output_of("tangent");
    let authority = Authority {
        source: "tangent.py, a fibre whose modulus rises, pulled step by step",
        grade: Grade::Independent,
    };
    check(
        &authority,
        list(&printed, "fibres").iter().flat_map(|fibre| {
            let (modulus, stress) = (number(fibre, "modulus_pa"), number(fibre, "stress_pa"));
            let slope = number(fibre, "slope");
            let ratio = || {
                let of = physics!(settling::tangent_over_secant);
                of(Pascal::new(modulus), slope, Pascal::new(stress)).get()
            };
            let what = format!("{modulus} Pa and {slope} at {stress} Pa");
            let found = row(
                format!("{what}, ratio"),
                ratio(),
                number(fibre, "ratio"),
                Within::Share(1e-5),
                "six digits",
            );
            // In cents: a creep of 1 % of the stretch.
            let cents = physics!(settling::loss_per_decade)(Ratio::new(0.01 * ratio())).get();
            let expected = 1_731.234_049 / 2.0 * 0.01 * number(fibre, "relaxation");
            let lost = row(
                format!("{what}, cents for a creep of 1 %"),
                cents,
                expected,
                Within::Share(1e-3),
                "four digits, and a creep that is small but not nothing",
            );
            [found, lost]
        }),
    );
}
