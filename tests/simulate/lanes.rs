//! Notes side by side give the bits that each gives alone, and the same bits every time.

use strings::lanes::{Four, Lanes};
use strings::simulate::{
    Body, Bowed, Friction, Gesture, Hyperbolic, Law, Strung, Thermal, Track, note,
};

fn gestures() -> [Gesture; 4] {
    [
        Gesture::steady(0.1, 0.2, 0.1),
        Gesture::accelerated(2.0, 0.5, 0.07),
        Gesture {
            speed: Track::through(vec![(0.0, 0.0), (0.02, 0.2), (0.1, -0.2)]),
            force: Track::through(vec![(0.0, 0.1), (0.05, 0.6), (0.1, 0.0)]),
            place: Track::through(vec![(0.0, 0.05), (0.1, 0.12)]),
        },
        Gesture::steady(0.3, 1.5, 0.131),
    ]
}

fn together<F: Friction<Four>>(strung: &Strung, friction: F) -> Vec<[u64; 4]> {
    let gestures = gestures();
    let places = Four::each(|l| gestures[l].place.at(0.0));
    let mut out = vec![];
    Bowed::new(strung, places, friction)
        .play(&gestures, 6000, |_, m| out.push(m.bridge_force.to_array().map(f64::to_bits)));
    out
}

fn alone<F: Friction<f64>>(strung: &Strung, l: usize, friction: F) -> Vec<u64> {
    let gesture = gestures()[l].clone();
    let mut out = vec![];
    Bowed::new(strung, gesture.place.at(0.0), friction)
        .play(&[gesture], 6000, |_, m| out.push(m.bridge_force.to_bits()));
    out
}

#[test]
fn four_side_by_side_are_each_as_alone() {
    for trade in super::trade() {
        let strung =
            Strung::new(&trade.sounding(), &Body::generic(trade.kind, &trade.setting), 48_000.0);
        let four = together(&strung, Hyperbolic::rosin());
        let warm = together(&strung, Thermal::new(48_000.0));
        for l in 0..4 {
            let column = |four: &[[u64; 4]]| four.iter().map(|row| row[l]).collect::<Vec<_>>();
            assert_eq!(column(&four), alone(&strung, l, Hyperbolic::rosin()), "{} {l}", trade.name);
            assert_eq!(
                column(&warm),
                alone(&strung, l, Thermal::new(48_000.0)),
                "{} {l}",
                trade.name
            );
        }
        assert_eq!(four, together(&strung, Hyperbolic::rosin()));
    }
}

#[test]
fn a_row_of_a_map_is_judged_as_each_note_alone() {
    let (string, body) = super::bits::string();
    let gestures: Vec<Gesture> =
        (1..=10).map(|i| Gesture::steady(0.1, 0.05 * f64::from(i * i), 0.1)).collect();
    for law in [Law::Hyperbolic, Law::Thermal] {
        let strung = Strung::new(&string, &body, string.rate(0.1, law));
        let together = note::judged(&strung, law, &gestures, Some(0.1));
        assert_eq!(together, note::judged_alone(&strung, law, &gestures, Some(0.1)));
        assert!(together.iter().any(|note| note.regime != together[0].regime), "all are alike");
    }
}

#[test]
fn a_bowed_note_has_the_stored_bits() {
    assert_eq!(super::bits::bits(), super::bits::STORED, "in the browser the same are expected");
}
