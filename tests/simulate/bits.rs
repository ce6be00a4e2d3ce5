//! The bits of a bowed note by each law and of a plucked one, the same natively and in the browser.
//!
//! The stored ones are our own output: they prove nothing but that every machine gives the same.

use strings::instrument::VIOLIN;
use strings::simulate::{Body, Gesture, Law, Sounding, Strung, note};

/// What every machine gives.
pub(crate) const STORED: [u64; 3] =
    [0xE6B8_FDC8_B3B0_FBFD, 0x9C75_F4BA_512E_E685, 0x02BF_C527_5D5A_59BE];

/// A violin A on a generic body.
pub(crate) fn string() -> (Sounding, Body) {
    let string = Sounding {
        pitch: 440.0,
        length: 0.328,
        impedance: 0.2,
        inharmonicity: 3e-5,
        losses: (1..=40).map(|n| 6e-4 + 1e-6 * f64::from(n * n)).collect(),
        torsion_ratio: 3.0,
        torsion_impedance: 0.4,
        torsion_q: 30.0,
        end: 1.0,
    };
    (string, Body::of(&VIOLIN, 30.0, 10.0))
}

/// A sum over the bits of half a second of each.
pub(crate) fn bits() -> [u64; 3] {
    let (string, body) = string();
    let sum = |sound: &[f64]| {
        sound.iter().fold(0_u64, |sum, x| {
            sum.rotate_left(5) ^ x.to_bits().wrapping_mul(0x9E37_79B9_7F4A_7C15)
        })
    };
    let gesture = Gesture::steady(0.1, 0.2, 0.1);
    let bowed = |law| {
        let strung = Strung::new(&string, &body, string.rate(0.1, law));
        sum(&note::bowed(&strung, law, &gesture, 0.5).bridge_force)
    };
    let strung = Strung::new(&string, &body, 48_000.0);
    let plucked = note::plucked(&strung, 0.23, 1.0, 6e-4, 0.5);
    [bowed(Law::Hyperbolic), bowed(Law::Thermal), sum(&plucked.bridge_speed)]
}
