//! Morton and Hearle, Physical properties of textile fibres, sec. 11.3, Table 11.1 (after Preston and Nimkar): swelling from dry to
//! water, fibres free. The section was read in a stored copy.

use strings::material::{GUT, POLYAMIDE};
use strings::quantity::{Degree, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

/// Nylon, two workers: along, across in diameter and in volume.
const NYLON: [(f64, f64, f64); 2] = [(0.027, 0.019, 0.081), (0.029, 0.026, 0.110)];
/// Water that drawn nylon holds when wet, as a share of its dry mass: from memory.
const WET: f64 = 0.085;

#[test]
fn swelling_of_nylon() {
    let authority = Authority {
        source: "Morton and Hearle, Table 11.1, nylon, over some 8.5 % of water",
        grade: Grade::Fitted,
    };
    let free = |twist: f64, (along, across): (f64, f64)| {
        let of = |swelling: f64| Ratio::new(swelling * WET);
        physics!(climate::helix_growth)(of(along), of(across), Degree::new(twist)).get()
    };
    let swelling = (POLYAMIDE.swelling_along.value, POLYAMIDE.swelling_across.value);
    let mean = |of: fn((f64, f64, f64)) -> f64| NYLON.map(of).iter().sum::<f64>() / 2.0;
    let why = "two workers, and the water from memory";
    let along = mean(|worker| worker.0);
    check(
        &authority,
        [row("straight, along", free(0.0, swelling), along, Within::Share(0.05), why)],
    );
    let ends = |of: &strings::constant::Constant, found: fn((f64, f64, f64)) -> f64| {
        NYLON.map(found).iter().all(|x| (of.low..=of.high).contains(&(x / WET)))
    };
    assert!(ends(&POLYAMIDE.swelling_along, |worker| worker.0));
    assert!(ends(&POLYAMIDE.swelling_across, |worker| worker.1));
    // The table against itself: volume is what the length and twice the diameter make, within what two workers differ.
    for (along, across, volume) in NYLON {
        let made = (1.0 + along) * (1.0_f64 + across).powi(2) - 1.0;
        assert!((made / volume - 1.0).abs() < 0.35, "{made} of {volume}");
    }
}

#[test]
fn an_oriented_protein_hardly_grows_along() {
    // Silk in the same table: 1.6 and 1.3 % along, 30 and 32 % in volume. The model gives gut no growth of its own along its
    // fibres; what a whole string was measured to do stands for all of it.
    for (along, volume) in [(0.016, 0.30), (0.013, 0.32)] {
        assert!(along / volume < 0.06);
    }
    assert_eq!(GUT.swelling_along.value.to_bits(), 0);
}
