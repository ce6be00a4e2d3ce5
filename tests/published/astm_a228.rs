//! ASTM A228, steel wire of music spring quality: least and greatest strength for each diameter.

use strings::material::SPRING_STEEL;
use strings::quantity::{KilogramPerCubicMetre, Metre};
use support::{Authority, Grade, Within, check, physics, row};

const A228: Authority = Authority {
    source: "ASTM A228, table of tensile strength, as cited in a wire supplier's copy",
    grade: Grade::Printed,
};

/// Diameter in inches, least and greatest strength in ksi. The greatest for 0.036 in is misprinted there and not used.
const TABLE: [(f64, f64, f64); 14] = [
    (0.004, 439.0, 485.0),
    (0.006, 415.0, 459.0),
    (0.008, 399.0, 441.0),
    (0.010, 387.0, 428.0),
    (0.012, 377.0, 417.0),
    (0.014, 369.0, 408.0),
    (0.016, 362.0, 400.0),
    (0.020, 350.0, 387.0),
    (0.024, 341.0, 377.0),
    (0.030, 330.0, 365.0),
    (0.040, 315.0, 349.0),
    (0.051, 303.0, 335.0),
    (0.063, 293.0, 324.0),
    (0.080, 282.0, 312.0),
];

/// 1000 lbf a square inch: 4448.2216 N over 645.16 mm2.
const KSI: f64 = 4_448.221_615_260_5 / 645.16e-6;

fn model(inches: f64) -> f64 {
    physics!(strength::music_wire)(Metre::from_mm(inches * 25.4)).get()
}

#[test]
fn the_law_follows_the_least_strengths() {
    check(
        &A228,
        TABLE.map(|(inches, least, _)| {
            // No string core is thicker than 1.3 mm; past it the two-constant law leaves the table.
            let within = if inches < 0.06 { 0.02 } else { 0.03 };
            row(
                format!("least strength at {inches} in, Pa"),
                model(inches),
                least * KSI,
                Within::Share(within),
                "a power law of two constants, as printed in the handbook, over a table of many diameters",
            )
        }),
    );
}

#[test]
fn the_stated_range_holds_least_and_greatest() {
    let (low, high) = (SPRING_STEEL.strength.low, SPRING_STEEL.strength.high);
    for (inches, least, greatest) in TABLE {
        let law = model(inches);
        assert!(low * law <= least * KSI, "{inches} in: the least strength lies below the range");
        assert!(
            high * law >= greatest * KSI,
            "{inches} in: the greatest strength lies above the range"
        );
    }
}

#[test]
fn breaking_index_of_a_violin_e_wire() {
    // Half the root of 387 ksi over 7850 kg/m3 is 291.5 Hz m.
    let found = physics!(strength::breaking_index)(
        physics!(strength::music_wire)(Metre::from_mm(0.254)),
        KilogramPerCubicMetre::new(7850.0),
    );
    check(
        &A228,
        [row(
            "breaking index of wire of 0.010 in, Hz m",
            found,
            291.5,
            Within::Share(0.01),
            "half of the 2 % by which the law may miss the strength",
        )],
    );
}
