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

/// EA/T of one of the strings.
fn stiff(string: &Value) -> Ratio {
    Ratio::new(number(string, "axial_stiffness_n") / number(string, "tension_n"))
}

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
            let body = physics!(climate::by_body)(stiff(string), Ratio::new(1e-5));
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
fn an_end_that_gives() {
    // What is pulled over the nut and let back is what an end gives.
    check(
        &ROOTS,
        rows(|string| {
            let whole = Metre::new(number(string, "whole_m"));
            let slack = Metre::new(1e-5);
            let share = physics!(settling::given)(stiff(string), slack, whole);
            let found = physics!(settling::loss_per_decade)(share);
            let what = format!("{}: cents for an end that gives 10 µm", word(string, "name"));
            let expected = 1e-5 * number(string, "pull_cent_m");
            let within = Within::Share(1.05 * number(string, "stretch"));
            vec![row(what, found.get(), expected, within, FIRST_ORDER)]
        }),
    );
}

#[test]
fn a_string_that_takes_up_water() {
    check(
        &ROOTS,
        rows(|string| {
            let (before, gain) = (Ratio::new(0.05), Ratio::new(0.01));
            let why = "the formula takes the first power of the gain over what was there";
            let name = word(string, "name");
            [(1.0, "water_cent"), (0.4, "water_under_windings_cent")]
                .map(|(share, key)| {
                    let mass = physics!(climate::by_water_mass);
                    let found = mass(Ratio::new(share), before, gain).get();
                    let what = format!("{name}: cents for water in {share} of the mass");
                    row(what, found, number(string, key), Within::Share(0.006), why)
                })
                .into()
        }),
    );
}

#[test]
fn a_string_that_swells_and_softens() {
    check(
        &ROOTS,
        rows(|string| {
            let (growth, softer) = (Ratio::new(5e-6), Ratio::new(1e-3));
            let found = physics!(climate::by_swelling)(stiff(string), growth, softer);
            let what = format!("{}: cents for swelling", word(string, "name"));
            let within = Within::Share(1.05 * number(string, "stretch") + 1e-6);
            vec![row(what, found.get(), number(string, "swelling_cent"), within, FIRST_ORDER)]
        }),
    );
}

#[test]
fn a_warming_string() {
    check(
        &ROOTS,
        rows(|string| {
            let (alpha, body) = (number(string, "expansion_k"), number(string, "body_expansion_k"));
            let softening = number(string, "softening_k");
            let within = Within::Amount(1.05 * 1_731.234_049 / 2.0 * (alpha.abs() + body.abs()));
            let why = "the formula leaves out expansion that is not multiplied by EA/T";
            let warmth = physics!(climate::by_warmth);
            let found = warmth(stiff(string), alpha - body, softening, 1.0).get();
            let what = format!("{}: cents a kelvin, up or down", word(string, "name"));
            vec![row(what, found, number(string, "warmth_cent_k"), within, why)]
        }),
    );
}
