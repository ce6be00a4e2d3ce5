//! Water into a cylinder, against the diffusion stepped in rings and against a long series; and what follows the air.

use std::sync::OnceLock;

use serde_json::Value;
use strings::physics::climate;
use strings::quantity::{Metre, Second};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of};

/// What the program printed; run once for all tests of this file.
fn printed() -> &'static Value {
    static PRINTED: OnceLock<Value> = OnceLock::new();
    PRINTED.get_or_init(|| output_of("soaking"))
}

#[test]
fn a_cylinder_soaks_as_its_rings_do() {
    let authority = Authority {
        source: "soaking.py, diffusion into a cylinder by finite volumes",
        grade: Grade::Independent,
    };
    // A core of gut 0.8 mm thick.
    let (diffusivity, radius) = (2.9e-11, 4e-4);
    check(
        &authority,
        list(printed(), "cylinder").iter().map(|at| {
            let time = number(at, "time");
            let seconds = Second::new(time * radius * radius / diffusivity);
            let found = physics!(climate::soaked)(diffusivity, Metre::new(radius), seconds);
            let what = format!("share at {time} of a²/D");
            let why = "the formula is stated to miss by up to 0.002";
            row(what, found.get(), number(at, "stepped"), Within::Amount(0.002), why)
        }),
    );
}

#[test]
fn the_short_form_and_the_series_meet() {
    // Crank's series in four hundred terms; the formula changes over at 0.05.
    for at in list(printed(), "cylinder") {
        let time = number(at, "time");
        let found = climate::soaked(1.0, Metre::new(1.0), Second::new(time)).get();
        assert!((found - number(at, "series")).abs() < 0.002, "{time}: {found}");
    }
    let of = |time: f64| climate::soaked(1.0, Metre::new(1.0), Second::new(time)).get();
    assert!((of(0.05) - of(0.05 - 1e-12)).abs() < 0.002, "{} and {}", of(0.05), of(0.05 - 1e-12));
}

#[test]
fn what_follows_the_air() {
    let authority = Authority {
        source: "soaking.py, one store of heat stepped through time",
        grade: Grade::Independent,
    };
    check(
        &authority,
        list(printed(), "followed").iter().map(|at| {
            let (time, constant) = (number(at, "time_s"), number(at, "constant_s"));
            let found = physics!(climate::followed)(Second::new(time), Second::new(constant));
            let what = format!("share after {time} s of {constant} s");
            row(what, found.get(), number(at, "share"), Within::Share(1e-6), "eight digits")
        }),
    );
}
