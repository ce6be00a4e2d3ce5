//! Guettler: properties of violin strings on sale, and the limits of a clean bow start.

use strings::quantity::{Hertz, Kilogram, KilogramPerMetre, Metre, Newton};
use strings::report::Property;
use support::{Authority, Grade, Within, check, physics, row};

const PROPERTIES: Authority = Authority {
    source: "Guettler, Typical string properties (violin, L = 0.328 m), as cited in secondary texts",
    grade: Grade::Printed,
};
const LENGTH: Metre = Metre::new(0.328);

struct String {
    name: &'static str,
    pitch_hz: f64,
    /// Mass in g/m, tension in N, impedance in kg/s.
    light: (f64, f64, f64),
    heavy: (f64, f64, f64),
}

/// The upper impedance of D is printed as 0.193, which neither its mass nor its tension allows; 0.314 follows from them.
const TABLE: [String; 4] = [
    String { name: "E", pitch_hz: 659.26, light: (0.38, 71.4, 0.165), heavy: (0.48, 90.7, 0.210) },
    String { name: "A", pitch_hz: 440.0, light: (0.58, 48.3, 0.167), heavy: (0.75, 62.7, 0.217) },
    String {
        name: "D",
        pitch_hz: 293.66,
        light: (0.92, 34.3, 0.178),
        heavy: (1.63, 60.6, f64::NAN),
    },
    String { name: "G", pitch_hz: 196.0, light: (2.12, 35.0, 0.272), heavy: (3.09, 51.1, 0.397) },
];

#[test]
fn the_printed_masses_need_the_printed_tensions() {
    check(
        &PROPERTIES,
        TABLE.iter().flat_map(|s| {
            [s.light, s.heavy].map(|(mu, t, _)| {
                let found = physics!(tension::rigid)(
                    KilogramPerMetre::new(mu * 1e-3),
                    LENGTH,
                    Hertz::new(s.pitch_hz),
                );
                // Half a unit of the last digit of the mass, and of the tension.
                let within = Within::Share(0.005 / mu + 0.05 / t);
                row(
                    format!("{} of {mu} g/m, N", s.name),
                    found.get(),
                    t,
                    within,
                    "masses printed to 0.01 g/m",
                )
            })
        }),
    );
}

#[test]
fn the_printed_tensions_and_masses_give_the_printed_impedances() {
    check(
        &PROPERTIES,
        TABLE
            .iter()
            .flat_map(|s| [s.light, s.heavy].map(|ends| (s.name, ends)))
            .filter(|(_, (_, _, z))| !z.is_nan())
            .map(|(name, (mu, t, z))| {
                let found =
                    physics!(tension::impedance)(Newton::new(t), KilogramPerMetre::new(mu * 1e-3));
                let within = Within::Share(0.5 * (0.005 / mu + 0.05 / t) + 0.0005 / z);
                row(
                    format!("{name} of {mu} g/m, kg/s"),
                    found.get(),
                    z,
                    within,
                    "masses printed to 0.01 g/m",
                )
            }),
    );
}

#[test]
fn an_e_wire_of_a_quarter_millimetre_is_one_of_these() {
    let steel = (&strings::material::SPRING_STEEL, strings::construction::Build::Solid);
    let setting = crate::setting(0.328, 659.26);
    for (property, low, high) in [
        (Property::MassAtPitch, 0.38e-3, 0.48e-3),
        (Property::Tension, 71.4, 90.7),
        (Property::Impedance, 0.165, 0.210),
    ] {
        let found = crate::value(steel, 0.26, &[], &setting, property);
        assert!(
            low <= found && found <= high,
            "{property:?}: {found} is not within {low} to {high}"
        );
    }
}

#[test]
fn the_gentlest_start_lies_below_the_briskest() {
    // Eqs. 8a and 8b of Guettler 2002, as cited in secondary texts, enclose a range of accelerations at every place of
    // the bow; both are proportional to 1/m and vanish with beta.
    let mass = Kilogram::new(1e-3);
    for beta in [0.05, 0.1, 0.2] {
        let (low, high) = (
            physics!(bowing::gentlest_attack)(mass, beta, 0.8, 0.3),
            physics!(bowing::attack)(mass, beta, 0.8, 0.3),
        );
        assert!(0.0 < low && low < high, "at {beta}: {low} to {high}");
        let heavier = physics!(bowing::attack)(Kilogram::new(2e-3), beta, 0.8, 0.3);
        assert!((2.0 * heavier / high - 1.0).abs() < 1e-12, "a heavier string starts more slowly");
    }
}

#[test]
fn a_measured_start_that_failed_was_too_brisk() {
    // Woodhouse and Galluzzo 2025, as cited in secondary texts: cello D, beta 0.09, 1.56 m/s2; with 0.84 N the string was
    // never caught. Its mass is not told: 3 to 4 g/m over 0.69 m are common practice, no source. The clean start at 1.73 N
    // is not held against the limits, which know neither losses nor the friction of that bow.
    for grams in [3.0, 3.5, 4.0] {
        let mass =
            physics!(bowing::sounding_mass)(KilogramPerMetre::new(grams * 1e-3), Metre::new(0.69));
        let briskest = 0.84 * physics!(bowing::attack)(mass, 0.09, 0.8, 0.3);
        assert!(0.5 < briskest && briskest < 1.56, "{grams} g/m: {briskest} m/s2");
    }
}
