//! Smaller steps: the answer converges, at the order of the scheme.

use std::f64::consts::PI;

use strings::simulate::judge::Watch;
use strings::simulate::{Body, Bowed, Gesture, Hyperbolic, Law, Regime, Sounding, Strung, Thermal};

/// Force on the bridge at every 1/48000 s after a smooth pull, stepped `finer` times finer.
fn bridge(finer: usize) -> Vec<f64> {
    let rate = 48_000.0 * finer as f64;
    let string = super::plain(311.0, 0.25, 1e-9);
    let body = Body {
        modes: vec![strings::simulate::body::Mode { frequency: 460.0, q: 20.0, conductance: 0.05 }],
    };
    let strung = Strung::new(&string, &body, rate);
    let mut bowed = Bowed::new(&strung, 0.171, Hyperbolic::rosin());
    let over = 2e-3;
    let mut out = vec![];
    for k in 0..(0.012 * rate) as usize {
        let t = (k as f64 / rate / over).min(1.0);
        let force = bowed.pulled(0.5 - 0.5 * (2.0 * PI * t).cos()).bridge_force;
        if k % finer == 0 {
            out.push(force);
        }
    }
    out
}

#[test]
fn a_free_string_converges_at_second_order() {
    let finest = bridge(32);
    let errors: Vec<f64> = [1, 2, 4, 8]
        .map(|finer| {
            let coarse = bridge(finer);
            (coarse.iter().zip(&finest).map(|(a, b)| (a - b) * (a - b)).sum::<f64>()
                / finest.iter().map(|b| b * b).sum::<f64>())
            .sqrt()
        })
        .to_vec();
    let orders: Vec<f64> = errors.windows(2).map(|e| (e[0] / e[1]).log2()).collect();
    println!("errors {errors:?}, orders {orders:.2?}");
    assert!(orders.iter().all(|order| *order > 1.7), "{errors:?}: {orders:?}");
}

/// Periods to the clean note of a start from rest that is clean, and its cents.
fn start(
    string: &Sounding,
    body: &Body,
    law: Law,
    rate: f64,
    force: f64,
    acceleration: f64,
) -> (Regime, f64) {
    let strung = Strung::new(string, body, rate);
    let gesture = [Gesture {
        speed: strings::simulate::Track::rising(acceleration, 0.3),
        ..Gesture::steady(0.0, force, 0.1)
    }];
    let period = strung.period();
    let mut watch = Watch::new(period, 60.0);
    let steps = (60.0 * period) as usize;
    let see = |_: usize, m: &strings::simulate::Moment<f64>| watch.see(0, m);
    match law {
        Law::Hyperbolic => {
            Bowed::new(&strung, 0.1, Hyperbolic::rosin()).play(&gesture, steps, see);
        }
        Law::Thermal => {
            Bowed::new(&strung, 0.1, Thermal::new(rate)).play(&gesture, steps, see);
        }
    }
    let note = watch.judge(0.1);
    (note.regime, note.periods_to_helmholtz)
}

#[test]
fn the_law_of_temperature_is_stepped_finely_enough() {
    // Halving the step moves the time to the clean note by under one period.
    let (mut seen, mut moved, mut most) = (0, 0, 0.0_f64);
    for trade in super::trade() {
        let string = trade.sounding();
        let body = Body::generic(trade.kind, &trade.setting);
        let (greatest, _) = strings::simulate::map::closed_limits(&string, 1.0, 0.1, 0.1);
        for share in [0.15, 0.25, 0.4] {
            let force = share * greatest;
            let (_, least) = strings::simulate::map::closed_attack(&string, 0.1, 1.0);
            let acceleration = force / least * 0.6;
            let rate = string.rate(0.1, Law::Thermal);
            let coarse = start(&string, &body, Law::Thermal, rate, force, acceleration);
            let fine = start(&string, &body, Law::Thermal, 2.0 * rate, force, acceleration);
            println!("{} at {share}: {coarse:.2?} {fine:.2?}", trade.name);
            if coarse.0 == Regime::Helmholtz && fine.0 == Regime::Helmholtz && fine.1 < 20.0 {
                seen += 1;
                let by = (coarse.1 - fine.1).abs();
                most = most.max(by.min(1.0));
                if by >= 1.0 {
                    moved += 1;
                }
            }
        }
    }
    println!("{moved} of {seen} starts moved by a period or more");
    assert!(seen >= 8 && moved * 10 <= seen, "{moved} of {seen}");
}
