//! The two laws of friction against what was measured in steady sliding.

use strings::simulate::{Friction, Hyperbolic, Thermal, thermal};
use support::{Authority, Grade, Within, check, row};

#[test]
fn rosin_that_warms_gives_the_friction_measured_in_steady_sliding() {
    // Smith and Woodhouse 2000: μ(v) = 0.4 e^(−v/0.01) + 0.45 e^(−v/0.1) + 0.35. The law's constants come from two other
    // papers; nothing was fitted to these.
    let authority = Authority {
        source: "Smith and Woodhouse 2000, steady sliding, as cited in secondary texts",
        grade: Grade::Printed,
    };
    let rows = [(0.01, 0.90433), (0.05, 0.62563), (0.1, 0.51556), (0.3, 0.37240), (1.0, 0.35002)];
    check(
        &authority,
        rows.map(|(v, expected)| {
            let mut law = Thermal::<f64>::new(48_000.0);
            let mut force = 0.0;
            // A surface held at this speed: one that yields next to nothing.
            for _ in 0..200_000 {
                force = law.meet(-v, 1e-9, 1.0).force;
            }
            row(
                format!("friction at {v} m/s"),
                force,
                expected,
                Within::Share(0.05),
                "a straight fall of friction for a curved one",
            )
        }),
    );
}

#[test]
fn cold_rosin_holds_and_hot_rosin_does_not() {
    assert!((thermal::friction(0.0) - 1.2).abs() < 1e-12);
    assert!((thermal::friction(40.0) - 0.35).abs() < 1e-12);
    assert!((thermal::friction(400.0) - 0.35).abs() < 1e-12);
    assert!(thermal::cooling(0.2, 1.0) > thermal::cooling(0.1, 1.0));
}

#[test]
fn the_force_lies_on_the_line_and_on_the_curve() {
    // Friedlander's construction: v = v_h + Y f on the line, f = F μ(v) on the curve, whichever way the string runs.
    let (yields, press) = (1.7, 0.8);
    for free in [-3.0, -1.4, -0.2, 0.0, 0.4, 1.3, 2.0] {
        let mut law = Hyperbolic::<f64>::new(0.3, 0.5, 0.15);
        let contact = law.meet(free, yields, press);
        let (f, v) = (contact.force, contact.slip);
        assert!((free + yields * f - v).abs() < 1e-12, "{free}: {contact:?}");
        if v == 0.0 {
            assert!(f.abs() <= press * 0.8 + 1e-12);
        } else {
            let curve = press * (0.3 + 0.5 * 0.15 / (0.15 + v.abs()));
            assert!((f.abs() - curve).abs() < 1e-12 && f * v < 0.0, "{free}: {contact:?}");
        }
    }
}

#[test]
fn a_bow_off_the_string_does_nothing() {
    assert!(Hyperbolic::<f64>::rosin().meet(0.3, 2.0, 0.0).force.abs() < 1e-300);
    assert!(Thermal::<f64>::new(48e3).meet(0.3, 2.0, 0.0).force.abs() < 1e-300);
}
