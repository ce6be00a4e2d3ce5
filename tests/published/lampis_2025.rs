//! Lampis, Chatziioannou and Scavone 2025: a cello G string on a rig.

use strings::quantity::{KilogramPerMetre, Metre, Newton, NewtonSquareMetre};
use support::{Authority, Grade, Within, check, half_unit, physics, row};

const TABLE_1: Authority = Authority {
    source: "Lampis, Chatziioannou and Scavone 2025, Proc. Mtgs. Acoust. 58, 035013, Table 1, as cited in secondary texts",
    grade: Grade::Measured,
};
const TENSION: Newton = Newton::new(145.31);
const LENGTH: Metre = Metre::new(0.700);

#[test]
fn pitch_and_inharmonicity_of_the_cello_string() {
    let pitch = physics!(tension::fundamental)(TENSION, KilogramPerMetre::new(7.721e-3), LENGTH);
    let b = physics!(partials::inharmonicity)(NewtonSquareMetre::new(3.03e-4), TENSION, LENGTH);
    check(
        &TABLE_1,
        [
            row(
                "pitch, Hz",
                pitch.get(),
                98.0,
                Within::Share(0.001),
                "tension and mass of four digits",
            ),
            row("inharmonicity", b.get(), 4.2e-5, half_unit(1e-6), "two digits printed"),
        ],
    );
}
