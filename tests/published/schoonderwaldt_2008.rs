//! Schoonderwaldt, Guettler and Askenfelt 2008: bow forces measured on one string, beside the limits of Schelleng.

use strings::constant::LEAST_FORCE;
use strings::quantity::{KilogramPerSecond, Newton};
use support::{Authority, Grade, Within, check, half_unit, physics, row};

/// Wave impedance of the steel D string of the measurements.
const D: KilogramPerSecond = KilogramPerSecond::new(0.25);

/// Bow speed in m/s; the greatest force times beta over speed, and its scatter, kg/s; the least force times beta squared
/// over speed, and its scatter, g/s; the difference of the frictions.
type Measured = (f64, (f64, f64), (f64, f64), f64);

const TABLE: [Measured; 4] = [
    (0.05, (1.0, 0.24), (7.0, 1.0), 0.51),
    (0.10, (0.73, 0.05), (4.2, 0.4), 0.69),
    (0.15, (0.75, 0.04), (2.3, 0.3), 0.67),
    (0.20, (0.75, 0.03), (1.8, 0.3), 0.67),
];

#[test]
fn the_greatest_force_at_four_speeds() {
    let authority = Authority {
        source: "Schoonderwaldt, Guettler and Askenfelt 2008, Acta Acust. u. Acust. 94, 604, as cited in secondary texts",
        grade: Grade::Measured,
    };
    check(
        &authority,
        TABLE.map(|(speed, (measured, scatter), _, friction)| {
            let found = physics!(bowing::greatest_force)(D, speed, 0.1, friction, 0.0);
            row(
                format!("{speed} m/s: force times beta over speed, kg/s"),
                found.get() * 0.1 / speed,
                measured,
                Within::Amount(scatter),
                "scatter of the measurement",
            )
        }),
    );
    // The worked point: 0.1 m/s at a tenth, 0.73 N measured; 2 * 0.25 * 0.1/(0.1 * 0.67) is 0.746.
    let worked = physics!(bowing::greatest_force)(D, 0.1, 0.1, 0.67, 0.0);
    check(
        &authority,
        [row("worked point, N", worked.get(), 0.73, Within::Amount(0.05), "scatter")],
    );
}

#[test]
fn the_least_force_does_not_know_the_speed() {
    let authority = Authority {
        source: "Schoonderwaldt, Guettler and Askenfelt 2008, least forces, from which the model's constant was drawn",
        grade: Grade::Fitted,
    };
    check(
        &authority,
        TABLE.map(|(speed, _, (measured, scatter), _)| {
            let found = physics!(bowing::least_force_as_measured)(LEAST_FORCE.value, D, 0.1);
            row(
                format!("{speed} m/s: force times beta squared, mN"),
                found.get() * 0.01 * 1e3,
                measured * speed,
                Within::Amount(2.0 * scatter * speed),
                "twice the printed scatter",
            )
        }),
    );
    let theory = |speed: f64| {
        physics!(bowing::least_force)(D, KilogramPerSecond::new(30.0), speed, 0.1, 0.67, 0.0).get()
    };
    let ratio = theory(0.2) / theory(0.05);
    assert!((ratio - 4.0).abs() < 1e-12, "by theory it grows with speed, and does not: {ratio}");
}

#[test]
fn limits_by_hand() {
    let authority = Authority {
        source: "Schelleng 1973, J. Acoust. Soc. Am. 53, 26, as cited in secondary texts; worked out by hand",
        grade: Grade::Identity,
    };
    let resistance = KilogramPerSecond::new(20.0);
    let greatest = physics!(bowing::greatest_force)(D, 0.1, 0.1, 0.8, 0.13);
    let least = physics!(bowing::least_force)(D, resistance, 0.1, 0.1, 0.8, 0.13);
    let window = physics!(bowing::window)(greatest, least);
    let at_the_limit = KilogramPerSecond::new(0.25 / 0.4);
    check(
        &authority,
        [
            row("greatest, N", greatest.get(), 0.746, half_unit(0.001), "three digits"),
            // 0.0625 * 0.1/(2 * 0.01 * 20 * 0.67).
            row("least, N", least.get(), 0.023_32, half_unit(1e-5), "four digits"),
            // 4 beta R/Z0 = 32, which is 30.103 dB.
            row("room between, dB", window, 30.103, half_unit(0.001), "five digits"),
            row(
                "the bow's place at which no force is right",
                physics!(bowing::wolf)(D, at_the_limit, 0.1).get(),
                1.0,
                Within::Share(1e-12),
                "beta = Z0/(4 R)",
            ),
            // z0 = 0.2 m/s: at a tenth of the string, 0.1 m/s becomes 0.12.
            row(
                "friction that falls with speed, m/s",
                physics!(bowing::effective_speed)(0.1, 0.1, 0.2),
                0.12,
                Within::Share(1e-12),
                "eqs. 4 and 5 of Schoonderwaldt and others 2008",
            ),
        ],
    );
}

#[test]
fn usual_bow_forces_lie_between_the_limits() {
    // Guettler 1997, as cited in secondary texts: 0.5 to 1.5 N. A violin's strings, the bow at a tenth, 0.3 m/s.
    for z in [0.173, 0.25, 0.35] {
        let z = KilogramPerSecond::new(z);
        let greatest = physics!(bowing::greatest_force)(z, 0.3, 0.1, 0.8, 0.3);
        let least =
            physics!(bowing::least_force)(z, KilogramPerSecond::new(30.0), 0.3, 0.1, 0.8, 0.3);
        assert!(least < Newton::new(0.5) && greatest > Newton::new(1.5), "{least} to {greatest}");
    }
}
