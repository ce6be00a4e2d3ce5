//! Partials of a stiff string, against the eigenvalues of a discretised one.

use std::sync::OnceLock;

use serde_json::Value;
use strings::quantity::{KilogramPerMetre, Metre, Newton, NewtonSquareMetre};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of, word};

const EIGENVALUES: Authority = Authority {
    source: "stiff_string.py (Chebyshev collocation, pinned ends)",
    grade: Grade::Independent,
};
const COLLOCATION: &str = "what the collocation leaves: a few parts in 10^9 of a frequency";

fn eigenvalues(string: &Value) -> Vec<f64> {
    list(string, "hz").iter().filter_map(Value::as_f64).collect()
}

/// What the program printed; run once for all tests of this file.
fn printed() -> &'static Value {
    static PRINTED: OnceLock<Value> = OnceLock::new();
    PRINTED.get_or_init(|| output_of("stiff_string"))
}

#[test]
fn partials_rise_as_the_eigenvalues_do() {
    let printed = printed();
    for string in list(printed, "strings") {
        let hertz = eigenvalues(string);
        let b = physics!(partials::inharmonicity)(
            NewtonSquareMetre::new(number(string, "bending_n_m2")),
            Newton::new(number(string, "tension_n")),
            Metre::new(number(string, "length_m")),
        );
        check(
            &EIGENVALUES,
            (1_u32..).zip(&hertz).skip(1).map(|(n, hz)| {
                let expected = 1200.0 * (hz / (f64::from(n) * hertz[0])).log2();
                let found = physics!(partials::sharpness_of_partial)(b, n).get();
                let what = format!(
                    "{}, partial {n} above {n} times the first, cents",
                    word(string, "name")
                );
                row(what, found, expected, Within::Amount(2e-5), COLLOCATION)
            }),
        );
    }
}

#[test]
fn the_flexible_string_is_what_is_left_without_stiffness() {
    let printed = printed();
    check(
        &EIGENVALUES,
        list(printed, "strings").iter().map(|string| {
            let (t, l) =
                (Newton::new(number(string, "tension_n")), Metre::new(number(string, "length_m")));
            let flexible = physics!(tension::fundamental)(
                t,
                KilogramPerMetre::new(number(string, "mass_kg_m")),
                l,
            )
            .get();
            let b = physics!(partials::inharmonicity)(
                NewtonSquareMetre::new(number(string, "bending_n_m2")),
                t,
                l,
            )
            .get();
            let what = format!("{}, first partial, Hz", word(string, "name"));
            row(
                what,
                flexible * (1.0 + b).sqrt(),
                eigenvalues(string)[0],
                Within::Share(1e-8),
                COLLOCATION,
            )
        }),
    );
}
