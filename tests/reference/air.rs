//! Loss to the air, against Stokes' cylinder in a viscous fluid, solved with Bessel functions.

use strings::quantity::{Hertz, KilogramPerCubicMetre, KilogramPerMetre, Metre};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of, word};

#[test]
fn a_string_drags_the_air_as_stokes_says() {
    let printed = output_of("air");
    let authority = Authority {
        source: "air.py, Stokes 1851 with Bessel functions by scipy",
        grade: Grade::Independent,
    };
    let compare = || {
        check(
        &authority,
        list(&printed, "strings").iter().map(|string| {
            let found = physics!(damping::air)(
                KilogramPerCubicMetre::new(number(string, "air_kg_m3")),
                number(string, "viscosity_m2_s"),
                KilogramPerMetre::new(number(string, "mass_kg_m")),
                Metre::new(number(string, "diameter_m")),
                Hertz::new(number(string, "hz")),
            );
            row(
                format!("{}, loss factor", word(string, "name")),
                found.get(),
                number(string, "loss"),
                Within::Share(0.02),
                "two terms of a series in the thickness of the layer of air; thin strings are the worst",
            )
        }),
    );
    };
    compare();
}
