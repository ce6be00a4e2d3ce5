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
fn the_least_strengths_are_those_of_the_table() {
    let fitted = Authority { grade: Grade::Fitted, ..A228 };
    check(
        &fitted,
        TABLE.map(|(inches, least, _)| {
            row(
                format!("least strength at {inches} in, Pa"),
                model(inches),
                least * KSI,
                Within::Share(1e-9),
                "the table itself",
            )
        }),
    );
}

/// A row left out is met by the straight line between its neighbours, in the logarithms: between rows half as far apart
/// the table is met better.
#[test]
fn between_its_rows_the_table_is_met() {
    for rows in TABLE.windows(3) {
        let [(d, low, _), (left_out, printed, _), (e, high, _)] = [rows[0], rows[1], rows[2]];
        let share = (left_out / d).ln() / (e / d).ln();
        let line = low.powf(1.0 - share) * high.powf(share);
        assert!((line / printed - 1.0).abs() < 0.005, "{left_out} in: {line} for {printed} ksi");
        // Half-way between two rows the model is their geometric mean.
        let middle = model((d * left_out).sqrt());
        let mean = (low * printed).sqrt() * KSI;
        assert!((middle / mean - 1.0).abs() < 1e-9, "{middle} for {mean} Pa");
    }
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
