//! Twisting, against integrals over sections, eigenvalues of a shaft, and a wave sent into one.

use std::sync::OnceLock;

use serde_json::Value;
use strings::construction::Layout;
use strings::quantity::{Metre, Pascal};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of, word};

/// What the program printed; run once for all tests of this file.
fn printed() -> &'static Value {
    static PRINTED: OnceLock<Value> = OnceLock::new();
    PRINTED.get_or_init(|| output_of("twisting"))
}

#[test]
fn waves_of_twist() {
    let authority = Authority {
        source: "twisting.py, eigenvalues of a shaft and a wave sent into one",
        grade: Grade::Independent,
    };
    check(
        &authority,
        list(printed(), "waves").iter().flat_map(|wave| {
            let (stiffness, inertia) = (number(wave, "stiffness"), number(wave, "inertia"));
            let speed = row(
                format!("{}, m/s", word(wave, "name")),
                physics!(torsion::speed)(stiffness, inertia),
                number(wave, "speed_m_s"),
                Within::Share(1e-5),
                "400 elements",
            );
            let radius = Metre::new(number(wave, "radius_m"));
            let impedance = row(
                format!("{}, impedance at the surface, kg/s", word(wave, "name")),
                physics!(torsion::impedance)(stiffness, inertia, radius).get(),
                number(wave, "impedance_kg_s"),
                Within::Share(1e-7),
                "nine digits printed",
            );
            [speed, impedance]
        }),
    );
}

#[test]
fn sections_that_twist_and_bend() {
    let authority = Authority {
        source: "twisting.py, integrals over discs and rings",
        grade: Grade::Independent,
    };
    let printed = printed();
    check(
        &authority,
        list(printed, "solids").iter().map(|solid| {
            let shear = Pascal::new(number(solid, "shear_pa"));
            row(
                format!("rod of {} m", number(solid, "diameter_m")),
                physics!(torsion::solid)(shear, Metre::new(number(solid, "diameter_m"))),
                number(solid, "stiffness"),
                Within::Share(1e-12),
                "rounding",
            )
        }),
    );
    check(
        &authority,
        list(printed, "tubes").iter().flat_map(|tube| {
            let modulus = Pascal::new(number(tube, "shear_pa"));
            let (d, t) = (number(tube, "mean_m"), number(tube, "thickness_m"));
            let within = Within::Share(1.01 * (t / d).powi(2));
            let (mean, wall) = (Metre::new(d), Metre::new(t));
            [
                row(
                    format!("tube of {t} m on {d} m, twisted"),
                    physics!(torsion::tube)(modulus, mean, wall),
                    number(tube, "stiffness"),
                    within,
                    "a thin tube",
                ),
                row(
                    format!("tube of {t} m on {d} m, bent"),
                    physics!(partials::tube_stiffness)(modulus, mean, wall).get(),
                    number(tube, "bending"),
                    within,
                    "a thin tube",
                ),
            ]
        }),
    );
    check(
        &authority,
        list(printed, "wires").iter().map(|strand| {
            let layout = Layout::ALL
                .into_iter()
                .find(|layout| layout.key() == word(strand, "layout"))
                .expect("a layout of the model");
            let diameter = Metre::new(number(strand, "diameter_m"));
            row(
                format!("{}, wires that slide", layout.key()),
                physics!(strand::free_torsion)(layout, diameter),
                number(strand, "share"),
                Within::Share(1e-12),
                "rounding",
            )
        }),
    );
}
