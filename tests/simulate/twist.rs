//! The wave of twist runs at its own speed.

use strings::simulate::{Body, Bowed, Hyperbolic, Strung};

#[test]
fn an_echo_of_twist_comes_back_at_its_own_speed() {
    // Mores 2019, as cited in secondary texts: a cello G of 98 Hz whose first twist stands at 543 Hz.
    let string = strings::simulate::Sounding {
        torsion_ratio: 543.0 / 98.0,
        torsion_impedance: 1.25,
        torsion_q: 200.0,
        ..super::plain(98.0, 1.0, 1e-6)
    };
    let rate = 192_000.0;
    let strung = Strung::new(&string, &Body::rigid(), rate);
    let mut bowed = Bowed::new(&strung, 0.5, Hyperbolic::new(0.5, 0.0, 1.0));
    // A bow that slides fast holds with the same force always; a pinch makes it hold more for an instant.
    let twist: Vec<f64> =
        (0..300).map(|k| bowed.step(50.0, if k == 0 { 1.0 } else { 0.0 }).twist).collect();
    let echo = (100..260).max_by(|a, b| twist[*a].abs().total_cmp(&twist[*b].abs())).unwrap();
    // From the middle to an end and back takes half a period of the first twist; it comes back turned over.
    let expected = rate / 543.0 / 2.0;
    assert!((echo as f64 - expected).abs() < 2.5, "{echo} against {expected}");
    assert!(twist[echo] < 0.0 && twist[0] > 0.0);
}

#[test]
fn twist_halves_what_the_string_resists() {
    // Two impedances side by side: Z₀ Zₜ/(Z₀ + Zₜ). Euphonics 9.5.3.
    let string =
        strings::simulate::Sounding { torsion_impedance: 0.5, ..super::plain(200.0, 0.25, 1e-4) };
    let together = 0.25 * 0.5 / 0.75;
    assert!((string.yields() - 0.5 / together).abs() < 1e-12);
}
