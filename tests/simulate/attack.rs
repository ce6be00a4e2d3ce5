//! Starts from rest: where Guettler has them clean.

use strings::simulate::judge::Watch;
use strings::simulate::map::{self, AttackMap};
use strings::simulate::{Body, Bowed, Gesture, Hyperbolic, Regime, Sounding, Strung};

#[test]
fn the_first_clean_start_lies_on_guettlers_line() {
    // Guettler 2002, eq. 8: a start is clean at once from a force that grows in proportion to acceleration. A string that
    // twists, on a resistance, under friction that falls quickly, as his simulations had it.
    let string = Sounding {
        torsion_impedance: 0.6,
        losses: (1..60).map(|n| 5e-3 * (1.0 + 0.003 * f64::from(n * n))).collect(),
        ..super::plain(200.0, 0.3, 0.0)
    };
    let strung = Strung::new(&string, &Body::resistive(15.0), 96_000.0);
    let place = 0.1;
    let mut points = vec![];
    for acceleration in map::ratios(0.5, 10.0, 8) {
        let (_, least) = map::closed_attack(&string, place, acceleration);
        let first = map::ratios(0.5 * least, 6.0 * least, 80).into_iter().find(|force| {
            let mut bowed = Bowed::new(&strung, place, Hyperbolic::new(0.3, 0.6, 0.02));
            let mut watch = Watch::new(strung.period(), 40.0);
            let gesture = Gesture::accelerated(acceleration, *force, place);
            bowed.play(&[gesture], (40.0 * strung.period()) as usize, |_, m| watch.see(0, m));
            let note = watch.judge(place);
            note.regime == Regime::Helmholtz && note.periods_to_helmholtz < 12.0
        });
        let first = first.expect("some force starts it cleanly");
        println!("{acceleration:.2} m/s2: clean from {first:.3} N, by formula from {least:.3} N");
        points.push((acceleration.ln(), first.ln()));
        assert!((0.7..3.0).contains(&(first / least)), "{acceleration}: {first} against {least}");
    }
    let slope = super::slope(&points);
    assert!((slope - 1.0).abs() < 0.15, "slope {slope}");
}

#[test]
fn too_gentle_a_force_slips_twice_and_too_great_a_one_cracks() {
    let mut clean = 0;
    for trade in super::trade() {
        let body = Body::generic(trade.kind, &trade.setting);
        let map = AttackMap::usual(trade.sounding(), body, 0.1, 10);
        for row in map.rows() {
            for (cell, force) in row.cells.iter().zip(&map.forces) {
                if *force < 0.4 * row.limits.1 {
                    assert_ne!(
                        cell.regime,
                        Regime::Helmholtz,
                        "{}: {} m/s2, {force} N",
                        trade.name,
                        row.at
                    );
                }
                clean += usize::from(cell.regime == Regime::Helmholtz);
            }
        }
    }
    println!("{clean} clean starts of 700");
    assert!(clean > 40, "{clean}");
}
