//! EN 10270-1, patented cold-drawn spring wire: what stands beside music wire.

use strings::material::SPRING_STEEL;
use strings::quantity::Metre;
use support::{Authority, Grade, Within, check, physics, row};

fn law(mm: f64) -> f64 {
    physics!(strength::music_wire)(Metre::from_mm(mm)).get() / 1e6
}

#[test]
fn the_low_end_of_the_range_is_the_least_of_grade_sm() {
    let authority = Authority {
        source: "EN 10270-1, grade SM, as cited in a spring maker's table, which set the low end",
        grade: Grade::Fitted,
    };
    check(
        &authority,
        [
            (0.3, 2370.0),
            (0.4, 2270.0),
            (0.5, 2200.0),
            (0.6, 2140.0),
            (1.0, 1980.0),
            (2.0, 1760.0),
        ]
        .map(|(mm, least)| {
            row(
                format!("least strength at {mm} mm, MPa"),
                SPRING_STEEL.strength.low * law(mm),
                least,
                Within::Share(0.025),
                "the standard is linear in the logarithm of the diameter, the law is a power of it",
            )
        }),
    );
}

#[test]
fn the_law_stays_below_the_greatest_of_grade_sm() {
    // As cited in the same spring maker's table.
    for (mm, greatest) in [(0.3, 2650.0), (0.5, 2470.0), (1.0, 2250.0)] {
        assert!(law(mm) < greatest, "{mm} mm: {} MPa is not below {greatest}", law(mm));
    }
}

#[test]
fn the_law_is_the_least_of_grade_sh() {
    let authority = Authority {
        source: "EN 10270-1, grades SH and DH: 2220 - 820 lg d, from memory",
        grade: Grade::Hearsay,
    };
    check(
        &authority,
        [0.2, 0.3, 0.5, 0.8, 1.0, 1.5, 2.0].map(|mm: f64| {
            row(
                format!("least strength at {mm} mm, MPa"),
                law(mm),
                2220.0 - 820.0 * mm.log10(),
                Within::Share(0.025),
                "the standard is linear in the logarithm of the diameter, the law is a power of it",
            )
        }),
    );
}
