//! Walton and Majumdar 1983: creep of an aramid filament over years. The abstract was read.

use strings::constant::CREEP_SHARE;
use strings::material::ARAMID;
use strings::quantity::Ratio;
use support::{Authority, Grade, Within, check, half_unit, physics, row};

#[test]
fn creep_of_an_aramid_filament() {
    // At 1830 MPa, some 57 % of its strength: 13 % of the elastic stretch after 1000 days, 14.6 % after 4000; creep goes as t^n
    // with n = ln(14.6/13)/ln 4 = 0.0837 (0.057 to 0.112 by rounding). A decade from 1 to 1000 days: (13 - 13 * 1000^-n)/3.
    let n = (14.6_f64 / 13.0).ln() / 4.0_f64.ln();
    let decade = 0.13 * (1.0 - 1000.0_f64.powf(-n)) / 3.0;
    assert!((n - 0.0837).abs() < 1e-4 && (decade - 0.019).abs() < 5e-4, "{n} {decade}");
    let slope_at = |days: f64| 0.13 * (days / 1000.0).powf(n) * n * 10.0_f64.ln();
    let authority = Authority {
        source: "Walton and Majumdar 1983, J. Mater. Sci. 18, 2939, abstract: 13 and 14.6 % after 1000 and 4000 days",
        grade: Grade::Fitted,
    };
    let cents = |creep: f64| physics!(settling::loss_per_decade)(Ratio::new(creep)).get();
    check(
        &authority,
        [
            row(
                "cents a decade about ten days, at a linear modulus",
                cents(ARAMID.creep.value),
                600.0 / std::f64::consts::LN_2 * slope_at(10.0),
                Within::Share(0.02),
                "two digits taken over",
            ),
            row("n = 0.0837, cents of 1.7 %", cents(0.017), 14.7, half_unit(0.1), "14.715"),
        ],
    );
    // A power law steepens with time; from a day to a hundred it stays in the range, and so does the mean of three decades.
    for creep in [slope_at(1.0), slope_at(100.0), decade] {
        assert!((ARAMID.creep.low..=ARAMID.creep.high).contains(&creep), "{creep}");
    }
    // It was stated at 57 % of the strength; the model states creep at four tenths and lets it rise from there.
    const { assert!(1830e6 / ARAMID.strength.value > CREEP_SHARE) };
}
