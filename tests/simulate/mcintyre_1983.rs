//! McIntyre, Schumacher and Woodhouse 1983, Fig. 7: a string bowed at its middle, flat by the hysteresis of friction.

use strings::simulate::{Friction, Hyperbolic};
use support::{Authority, Grade, Within, check, row};

const RUN: Authority = Authority {
    source: "McIntyre, Schumacher and Woodhouse 1983 (JASA 74, 1325), Fig. 7, as cited in page-referenced notes",
    grade: Grade::Printed,
};
/// Steps in half a period.
const HALF: usize = 128;
/// Steps that are run: ninety periods.
const STEPS: usize = 24_000;

/// The run: both halves of the string are alike, so that one reflection function serves.
fn run() -> Vec<f64> {
    // r(t) = a exp[−b (t − T)²], T half the period, its width at half height 0.40 T, its sum −1.
    let half = HALF as f64;
    let b = std::f64::consts::LN_2 / (0.20 * half).powi(2);
    let mut reflected: Vec<f64> =
        (0..2 * HALF).map(|t| (-b * (t as f64 - half).powi(2)).exp()).collect();
    let sum: f64 = reflected.iter().sum();
    for r in &mut reflected {
        *r /= -sum;
    }
    // Sliding f = 1/(1.5 − q), sticking at q = 1 up to f = 2, Z = 1: with w = 1 − q, f = 2 · 0.5/(0.5 + w).
    let mut friction = Hyperbolic::<f64>::new(0.0, 2.0, 0.5);
    let mut outgoing: Vec<f64> = Vec::with_capacity(STEPS);
    let mut speed = Vec::with_capacity(STEPS);
    for t in 0..STEPS {
        // q_h = r ∗ (q + Z f); the present step does not reach itself, as r has died out at t = 0 to 1e-8.
        let arriving: f64 =
            (1..reflected.len().min(t + 1)).map(|k| reflected[k] * outgoing[t - k]).sum();
        let contact = friction.meet(arriving - 1.0, 1.0, 1.0);
        let (f, q) = (contact.force, 1.0 + contact.slip);
        outgoing.push(q + f);
        speed.push(q);
    }
    speed
}

#[test]
fn the_printed_run_is_268_steps_long() {
    let speed = run();
    let onsets: Vec<usize> =
        (1..STEPS).filter(|t| speed[*t] < 0.5 && speed[t - 1] >= 0.5).collect();
    let last = &onsets[onsets.len() - 11..];
    let periods: Vec<f64> = last.windows(2).map(|w| (w[1] - w[0]) as f64).collect();
    let whole = &speed[last[0]..last[10]];
    let mean = whole.iter().sum::<f64>() / whole.len() as f64;
    check(
        &RUN,
        periods
            .iter()
            .map(|steps| row("steps a period", *steps, 268.0, Within::Amount(0.5), "whole steps"))
            .chain([row("mean speed, eq. 22", mean, 0.0, Within::Amount(1e-6), "a theorem")]),
    );
}
