//! Notes side by side give the bits that each gives alone, and the same bits every time.

use strings::simulate::{Body, Bowed, Friction, Gesture, Hyperbolic, Strung, Thermal, Track};

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

fn together<F: Friction<4>>(strung: &Strung, friction: F) -> Vec<[u64; 4]> {
    let gestures = gestures();
    let places = std::array::from_fn(|l| gestures[l].place.at(0.0));
    let mut out = vec![];
    Bowed::<4, F>::new(strung, places, friction)
        .play(&gestures, 6000, |_, m| out.push(m.bridge_force.map(f64::to_bits)));
    out
}

fn alone<F: Friction<1>>(strung: &Strung, l: usize, friction: F) -> Vec<u64> {
    let gesture = gestures()[l].clone();
    let mut out = vec![];
    Bowed::<1, F>::new(strung, [gesture.place.at(0.0)], friction)
        .play(&[gesture], 6000, |_, m| out.push(m.bridge_force[0].to_bits()));
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
fn a_bowed_note_has_the_stored_bits() {
    assert_eq!(super::bits::bits(), super::bits::STORED, "in the browser the same are expected");
}
