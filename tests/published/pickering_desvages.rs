//! Pickering 1985: tension, mass and pitch of four violin strings.

use strings::quantity::{Hertz, KilogramPerMetre, Metre, Newton};
use support::{Authority, Grade, Within, check, half_unit, physics, row};

const PICKERING: Authority = Authority {
    source: "Pickering 1985, as cited in Desvages 2018 (thesis)",
    grade: Grade::Printed,
};

/// Name, tension in N, mass in g/m, pitch in Hz; sounding length 0.320 m.
const TABLE: [(&str, f64, f64, f64); 4] = [
    ("E5", 73.0, 0.41, 659.26),
    ("A4", 57.1, 0.72, 440.0),
    ("D4", 56.88, 1.61, 293.66),
    ("G3", 43.9, 2.79, 196.0),
];
const LENGTH: Metre = Metre::new(0.320);
/// Half a unit of the last digit of 0.41 g/m is 1.2 % of mass, 0.6 % of pitch; the others are nearer.
const ROUNDED: &str = "masses printed to 0.01 g/m";

#[test]
fn the_printed_tension_gives_the_printed_pitch() {
    check(
        &PICKERING,
        TABLE.map(|(name, t, mu, pitch)| {
            let found = physics!(tension::fundamental)(
                Newton::new(t),
                KilogramPerMetre::new(mu * 1e-3),
                LENGTH,
            );
            row(format!("{name}, Hz"), found.get(), pitch, Within::Share(0.002), ROUNDED)
        }),
    );
}

#[test]
fn the_printed_pitch_needs_the_printed_tension() {
    check(
        &PICKERING,
        TABLE.map(|(name, t, mu, pitch)| {
            let found = physics!(tension::rigid)(
                KilogramPerMetre::new(mu * 1e-3),
                LENGTH,
                Hertz::new(pitch),
            );
            row(format!("{name}, N"), found.get(), t, Within::Share(0.004), ROUNDED)
        }),
    );
}

#[test]
fn wave_impedances() {
    let authority = Authority {
        source: "Pickering 1985, wave impedances of its strings, as cited in secondary texts",
        grade: Grade::Printed,
    };
    check(
        &authority,
        [("E5", 73.0, 0.41, 0.173), ("D4", 56.9, 1.61, 0.303), ("G3", 43.9, 2.79, 0.350)].map(
            |(name, t, mu, z)| {
                let found =
                    physics!(tension::impedance)(Newton::new(t), KilogramPerMetre::new(mu * 1e-3));
                row(
                    format!("{name}, kg/s"),
                    found.get(),
                    z,
                    half_unit(0.001),
                    "three digits printed",
                )
            },
        ),
    );
}
