//! Lampis, Chatziioannou and Scavone 2025: a cello G string on a rig.

use strings::quantity::{Hertz, KilogramPerMetre, Metre, Newton, NewtonSquareMetre, Ratio};
use support::{Authority, Grade, Within, check, half_unit, physics, row};

const TABLE_1: Authority = Authority {
    source: "Lampis, Chatziioannou and Scavone 2025, Proc. Mtgs. Acoust. 58, 035013, Table 1, as cited in secondary texts",
    grade: Grade::Measured,
};
const TENSION: Newton = Newton::new(145.31);
const LENGTH: Metre = Metre::new(0.700);

#[test]
fn pitch_and_inharmonicity_of_the_cello_string() {
    let (mass, bending) = (KilogramPerMetre::new(7.721e-3), NewtonSquareMetre::new(3.03e-4));
    check(
        &TABLE_1,
        [
            row(
                "pitch, Hz",
                physics!(tension::fundamental)(TENSION, mass, LENGTH).get(),
                98.0,
                Within::Share(0.001),
                "tension and mass of four digits",
            ),
            row(
                "inharmonicity",
                physics!(partials::inharmonicity)(bending, TENSION, LENGTH).get(),
                4.2e-5,
                half_unit(1e-6),
                "two digits printed",
            ),
        ],
    );
}

#[test]
fn it_rings_for_half_a_minute() {
    // The text: damping ratio 3.5e-4, of which the loss factor is twice, and about 32 s to fall by 60 dB.
    let found = physics!(damping::ring)(Hertz::new(98.0), Ratio::new(2.0 * 3.5e-4));
    check(
        &TABLE_1,
        [row("seconds to fall by 60 dB", found, 32.0, half_unit(1.0), "two digits printed")],
    );
}
