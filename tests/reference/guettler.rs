//! Bow accelerations of a clean start, against 30 digits from the period and the impedance.

use strings::quantity::{KilogramPerMetre, Metre};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of, word};

#[test]
fn briskest_and_gentlest_start() {
    let printed = output_of("guettler");
    let authority = Authority {
        source: "guettler.py (Guettler 2002, eqs. 8a and 8b, as cited in secondary texts; mpmath)",
        grade: Grade::Independent,
    };
    check(
        &authority,
        list(&printed, "attacks").iter().flat_map(|attack| {
            let sounding = physics!(bowing::sounding_mass)(
                KilogramPerMetre::new(number(attack, "mass_kg_m")),
                Metre::new(number(attack, "length_m")),
            );
            let (beta, s, d) =
                (number(attack, "beta"), number(attack, "static"), number(attack, "sliding"));
            [
                ("highest", physics!(bowing::attack)(sounding, beta, s, d)),
                ("lowest", physics!(bowing::gentlest_attack)(sounding, beta, s, d)),
            ]
            .map(|(which, found)| {
                row(
                    format!(
                        "{} at {beta}, friction {s} and {d}: {which} m/s2 a newton",
                        word(attack, "name")
                    ),
                    found,
                    number(attack, which),
                    Within::Share(1e-13),
                    "the bracket is a difference and loses two digits of double precision",
                )
            })
        }),
    );
}
