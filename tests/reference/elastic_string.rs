//! Tuning an elastic string and disturbing it, against root finding on the exact laws.

use std::sync::OnceLock;

use serde_json::Value;
use strings::quantity::{Hertz, KilogramPerMetre, Metre, Newton, Ratio};
use support::{Authority, Grade, Row, Within, check, physics, row};

use crate::python::{list, number, output_of, word};

const ROOTS: Authority = Authority {
    source: "elastic_string.py (root finding on the laws of an elastic string)",
    grade: Grade::Independent,
};
const SOLVED: &str = "the root finder stops at 15 digits of length, which is 13 of stretch";
/// The model's sensitivities are derived for a small stretch; the program's are not.
const FIRST_ORDER: &str = "the formula leaves out the stretch against 1";

fn rows(of: impl Fn(&Value) -> Vec<Row>) -> Vec<Row> {
    let printed = printed();
    list(printed, "strings").iter().flat_map(of).collect()
}

/// What the program printed; run once for all tests of this file.
fn printed() -> &'static Value {
    static PRINTED: OnceLock<Value> = OnceLock::new();
    PRINTED.get_or_init(|| output_of("elastic_string"))
}

#[test]
fn tension_stretch_and_mass_at_pitch() {
    check(
        &ROOTS,
        rows(|string| {
            let name = word(string, "name");
            let ea = Newton::new(number(string, "axial_stiffness_n"));
            let unstretched = KilogramPerMetre::new(number(string, "mass_unstretched_kg_m"));
            let length = Metre::new(number(string, "sounding_m"));
            let pitch = Hertz::new(number(string, "hz"));
            let found = physics!(tension::at_pitch)(unstretched, ea, length, pitch);
            let stretch = physics!(tension::stretch)(found, ea);
            let at_pitch = physics!(mass::stretched)(unstretched, stretch);
            let back = physics!(tension::mass_for)(
                Newton::new(number(string, "tension_n")),
                ea,
                length,
                pitch,
            );
            [
                ("tension, N", found.get(), number(string, "tension_n")),
                ("stretch", stretch.get(), number(string, "stretch")),
                ("mass at pitch, kg/m", at_pitch.get(), number(string, "mass_at_pitch_kg_m")),
                ("mass for the tension, kg/m", back.get(), unstretched.get()),
                (
                    "pitch, Hz",
                    physics!(tension::fundamental)(found, at_pitch, length).get(),
                    pitch.get(),
                ),
            ]
            .map(|(what, found, expected)| {
                row(format!("{name}: {what}"), found, expected, Within::Share(1e-11), SOLVED)
            })
            .into()
        }),
    );
}

#[test]
fn pulling_over_the_nut_and_a_growing_body() {
    check(
        &ROOTS,
        rows(|string| {
            let name = word(string, "name");
            let (ea, t) = (
                Newton::new(number(string, "axial_stiffness_n")),
                Newton::new(number(string, "tension_n")),
            );
            let pull = physics!(tuning::pull)(ea, t, Metre::new(number(string, "whole_m")));
            let body = physics!(climate::from_body)(ea, t, Ratio::new(1e-5));
            let within = Within::Share(1.05 * number(string, "stretch"));
            [
                ("pull, cents/m", pull.get(), number(string, "pull_cent_m")),
                ("body, cents", body.get(), number(string, "body_cent")),
            ]
            .map(|(what, found, expected)| {
                row(format!("{name}: {what}"), found, expected, within, FIRST_ORDER)
            })
            .into()
        }),
    );
}

#[test]
fn winding_string_over_the_nut() {
    check(
        &ROOTS,
        rows(|string| {
            let name = word(string, "name");
            let ea = Newton::new(number(string, "axial_stiffness_n"));
            let unstretched = KilogramPerMetre::new(number(string, "mass_unstretched_kg_m"));
            let length = Metre::new(number(string, "sounding_m"));
            let whole = Metre::new(number(string, "whole_m"));
            let stretch = Ratio::new(number(string, "stretch"));
            let turn = |wound: &Value| {
                let x = number(wound, "wound_m");
                let now = physics!(tuning::stretch_after)(stretch, Metre::new(x), whole);
                let pull = physics!(tension::pull_of)(now, ea);
                let mass = physics!(mass::stretched)(unstretched, now);
                let pitch = physics!(tension::fundamental)(pull, mass, length).get();
                let cent = 1200.0 * (pitch / number(string, "hz")).log2();
                [
                    ("stretch", now.get(), number(wound, "stretch")),
                    ("tension, N", pull.get(), number(wound, "tension_n")),
                    ("cents", cent, number(wound, "cent")),
                ]
                .map(|(what, found, expected)| {
                    let what = format!("{name}: {what} after {x} m");
                    row(what, found, expected, Within::Share(1e-9), SOLVED)
                })
            };
            list(string, "wound").iter().flat_map(turn).collect()
        }),
    );
}

#[test]
fn a_string_that_takes_up_water() {
    check(
        &ROOTS,
        rows(|string| {
            // Humidity stands for the water itself.
            let (before, after) = (Ratio::new(0.05), Ratio::new(0.06));
            let found = physics!(climate::by_water)(|water| water, before, after);
            let why = "the formula takes the first power of the gain over what was there";
            let what = format!("{}: cents for water", word(string, "name"));
            vec![row(what, found.get(), number(string, "water_cent"), Within::Share(0.006), why)]
        }),
    );
}

#[test]
fn a_warming_string() {
    check(
        &ROOTS,
        rows(|string| {
            let (ea, t) = (number(string, "axial_stiffness_n"), number(string, "tension_n"));
            let (alpha, body) = (number(string, "expansion_k"), number(string, "body_expansion_k"));
            let softening = number(string, "softening_k");
            let found = physics!(climate::from_temperature)(
                Newton::new(ea),
                Newton::new(t),
                alpha,
                body,
                softening,
                1.0,
            );
            // A report tells how far pitch moves, not which way.
            let expected = number(string, "warmth_cent_k").abs();
            let within = Within::Amount(1.05 * 1_731.234_049 / 2.0 * (alpha.abs() + body.abs()));
            let why = "the formula leaves out expansion that is not multiplied by EA/T";
            let name = word(string, "name");
            let signed = physics!(climate::by_warmth)(
                Newton::new(ea),
                Newton::new(t),
                alpha,
                body,
                softening,
                1.0,
            );
            vec![
                row(format!("{name}: cents a kelvin"), found.get(), expected, within, why),
                row(
                    format!("{name}: cents a kelvin, up or down"),
                    signed.get(),
                    number(string, "warmth_cent_k"),
                    within,
                    why,
                ),
            ]
        }),
    );
}
