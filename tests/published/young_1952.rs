//! Young 1952: inharmonicity of plain wire piano strings.

use strings::material::SPRING_STEEL;
use strings::quantity::{Hertz, KilogramPerCubicMetre, Metre, Pascal, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

/// Inharmonicity of a plain wire of the abstract's steel at pitch: E over density 25.5e10 in cgs.
fn inharmonicity(diameter: Metre, length: Metre, pitch: Hertz) -> Ratio {
    let density = KilogramPerCubicMetre::new(SPRING_STEEL.density.value);
    let modulus = Pascal::new(25.5e6 * SPRING_STEEL.density.value);
    let bending =
        physics!(stiffness::bending_bonded)(modulus, physics!(mass::circle)(diameter), diameter);
    physics!(partials::inharmonicity)(
        bending,
        physics!(tension::rigid)(physics!(mass::solid)(density, diameter), length, pitch),
        length,
    )
}

#[test]
fn the_constant_of_the_abstract() {
    let authority = Authority {
        source: "Young 1952, J. Acoust. Soc. Am. 24, 267, abstract: cents = 3.4e13 n^2 d^2/(nu0^2 l^4), cgs",
        grade: Grade::Printed,
    };
    check(
        &authority,
        [(0.8, 400.0, 440.0, 4), (1.0, 630.0, 261.6, 4), (0.26, 328.0, 659.26, 5)].map(
            |(d, l, nu0, n)| {
                let b = inharmonicity(Metre::from_mm(d), Metre::from_mm(l), Hertz::new(nu0));
                // Young counts from the string without stiffness, hence n^2; the model from the first partial, hence n^2 - 1.
                let cents = physics!(partials::sharpness_of_partial)(b, n).get();
                let n2 = f64::from(n * n) - 1.0;
                let (d_cm, l_cm) = (d / 10.0, l / 10.0);
                row(
                    format!("{d} mm, {l} mm, {nu0} Hz, partial {n}: the constant, cgs"),
                    cents / n2 * nu0 * nu0 * l_cm.powi(4) / (d_cm * d_cm),
                    3.4e13,
                    Within::Amount(0.05e13),
                    "two digits printed",
                )
            },
        ),
    );
}

#[test]
fn the_second_partial_of_middle_c() {
    let authority = Authority {
        source: "Young 1952, abstract: about 1.2 cents; the wire of 1.0 mm and 0.63 m is from memory",
        grade: Grade::Hearsay,
    };
    let b = inharmonicity(Metre::from_mm(1.0), Metre::from_mm(630.0), Hertz::new(261.6));
    // Counted from the string without stiffness: add what the first partial rises.
    let found =
        physics!(partials::sharpness_of_partial)(b, 2).get() + 600.0 * (1.0 + b.get()).log2();
    check(&authority, [row("cents", found, 1.2, Within::Share(0.2), "pianos differ")]);
}
