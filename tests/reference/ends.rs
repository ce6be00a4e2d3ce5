//! Pinned and clamped ends of a stiff string, against finite elements.

use std::sync::OnceLock;

use serde_json::Value;
use strings::quantity::{Metre, Newton, NewtonSquareMetre, Pascal, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of, word};

/// What the program printed; run once for all tests of this file.
fn printed() -> &'static Value {
    static PRINTED: OnceLock<Value> = OnceLock::new();
    PRINTED.get_or_init(|| output_of("ends"))
}

/// How far each partial lies above its number times the first, in cents, for ends of that kind.
fn partials_of(kind: &str, within: f64, why: &'static str, authority: &Authority) {
    let printed = printed();
    check(
        authority,
        list(printed, "strings").iter().flat_map(|string| {
            let hertz: Vec<f64> = list(string, kind).iter().filter_map(Value::as_f64).collect();
            let (t, l) = (number(string, "tension_n"), number(string, "length_m"));
            let ei = NewtonSquareMetre::new(number(string, "bending_n_m2"));
            [4_u32, 10].map(|n| {
                let b = physics!(partials::inharmonicity)(ei, Newton::new(t), Metre::new(l));
                let at = hertz[n as usize - 1];
                row(
                    format!("{}, partial {n}, {kind}, cents", word(string, "name")),
                    physics!(partials::sharpness_of_partial)(b, n).get(),
                    1200.0 * (at / (f64::from(n) * hertz[0])).log2(),
                    Within::Share(within),
                    why,
                )
            })
        }),
    );
}

#[test]
fn pinned_partials() {
    let authority = Authority {
        source: "ends.py, pinned, finite elements and eigenvalues by scipy",
        grade: Grade::Independent,
    };
    partials_of("pinned_hz", 0.002, "what the elements leave", &authority);
}

#[test]
fn clamped_partials_stretch_nearly_alike() {
    // Clamping raises all partials by almost the same share; what is left is of the order of B^1.5 n^2.
    let authority = Authority {
        source: "ends.py, clamped, finite elements and eigenvalues by scipy",
        grade: Grade::Independent,
    };
    partials_of("clamped_hz", 0.01, "the model's ends are pinned", &authority);
}

#[test]
fn a_clamped_string_bends_at_its_end_as_said() {
    let printed = printed();
    let authority = Authority {
        source: "ends.py, clamped, finite elements and eigenvalues by scipy",
        grade: Grade::Independent,
    };
    let (modulus, wire, share) = (Pascal::new(2e11), Metre::from_mm(0.26), Ratio::new(0.005));
    check(
        &authority,
        list(printed, "strings").iter().map(|string| {
            let (t, l) = (number(string, "tension_n"), number(string, "length_m"));
            let ei = number(string, "bending_n_m2");
            let found = physics!(strength::swing_stress)(
                modulus,
                wire,
                share,
                Newton::new(t),
                NewtonSquareMetre::new(ei),
            );
            let expected =
                number(string, "end_curvature") * share.get() * l * 2e11 * wire.get() / 2.0;
            row(
                format!("{}, stress at the end, Pa", word(string, "name")),
                found.get(),
                expected,
                // The layer of sqrt(EI/T) shortens what swings, at both ends.
                Within::Share(3.0 * (ei / t).sqrt() / l),
                "the layer at the ends is counted as short",
            )
        }),
    );
}
