//! Groves and Kemp 2019: friction of guitar strings over a saddle by the capstan law. The abstract was read.

use strings::constant::{FRICTION_PLAIN, FRICTION_WOUND, NUT_ANGLE};
use strings::quantity::{Degree, Ratio};
use support::{Authority, Grade, check, half_unit, physics, row};

#[test]
fn what_the_edges_of_a_violin_can_hold() {
    // The abstract: under 0.17 plain, under 0.26 wound.
    assert!(FRICTION_PLAIN.high <= 0.17 && FRICTION_WOUND.high <= 0.26);
    assert_eq!(NUT_ANGLE.to_bits(), 12.0_f64.to_bits());
    let authority = Authority {
        source: "Groves and Kemp 2019, Archives of Acoustics, abstract: bounds of friction, in cents by the capstan law by hand",
        grade: Grade::Identity,
    };
    // 865.617 (e^(mu theta) - 1) l/W, with 0.05 m from nut to peg and 0.328/6 m behind the bridge of W = 0.43267 m: plain at the nut
    // 865.617 * 0.036246 * 0.11556, at the bridge 865.617 * 0.067453 * 0.12635; wound 0.055964 and 0.104986.
    let cents = |friction: f64, angle: f64, share: f64| {
        let of = physics!(settling::locked_over_an_edge);
        let held = of(Ratio::new(friction), Degree::new(angle)).get();
        physics!(settling::loss_per_decade)(Ratio::new(held * share)).get()
    };
    let (nut, bridge) = (0.05 / 0.432_667, 0.054_667 / 0.432_667);
    check(
        &authority,
        [
            ("plain, nut", cents(0.17, 12.0, nut), 3.6),
            ("plain, bridge", cents(0.17, 22.0, bridge), 7.4),
            ("wound, nut", cents(0.26, 12.0, nut), 5.6),
            ("wound, bridge", cents(0.26, 22.0, bridge), 11.5),
        ]
        .map(|(what, found, expected)| row(what, found, expected, half_unit(0.1), "one decimal")),
    );
}
