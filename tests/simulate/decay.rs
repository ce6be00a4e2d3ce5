//! A string let go: each partial dies away by the model's losses and stands where stiffness puts it; nothing ever grows.

use std::f64::consts::PI;

use strings::simulate::{Body, Bowed, Hyperbolic, Sounding, Strung};

/// The pull of a finger that lets go over a thousandth of a second, and the waves that follow at the bow's place.
fn plucked(strung: &Strung, place: f64, seconds: f64) -> Vec<f64> {
    let mut bowed = Bowed::new(strung, place, Hyperbolic::rosin());
    let (rate, over) = (strung.rate(), 3e-4);
    (0..(seconds * rate) as usize)
        .map(|k| {
            let t = (k as f64 / rate / over).min(1.0);
            let force = -0.5 + 0.5 * (PI * t).cos();
            bowed.pulled(force).speed
        })
        .collect()
}

/// Amplitude and phase at a frequency, under a window of Hann over `from..to`.
fn at(sound: &[f64], from: usize, to: usize, omega: f64) -> (f64, f64) {
    let n = (to - from) as f64;
    let (mut re, mut im) = (0.0, 0.0);
    for (i, x) in sound[from..to].iter().enumerate() {
        let w = 1.0 - (2.0 * PI * i as f64 / n).cos();
        let turn = omega * (from + i) as f64;
        re += w * x * turn.cos();
        im -= w * x * turn.sin();
    }
    (re.hypot(im) / n, im.atan2(re))
}

#[test]
fn every_partial_dies_away_by_its_losses() {
    let (mut worst, mut worst_cents) = (0.0_f64, 0.0_f64);
    for trade in super::trade() {
        let string = trade.sounding();
        let rate = 96_000.0;
        let strung = Strung::new(&string, &Body::rigid(), rate);
        let seconds = 100.0 / string.pitch;
        let sound = plucked(&strung, 0.137, seconds);
        for n in 1..=12_u32 {
            let omega = 2.0 * PI * string.partial(f64::from(n)) / rate;
            let window = sound.len() * 2 / 5;
            let shift = sound.len() / 2;
            let (first, early) = at(&sound, 0, window, omega);
            let (second, late) = at(&sound, shift, shift + window, omega);
            let eta = string.losses[n as usize - 1];
            let found = (first / second).ln() * 2.0 / (omega * shift as f64);
            let share = found / eta - 1.0;
            let drift = (late - early + PI).rem_euclid(2.0 * PI) - PI;
            let cents = 1731.234 * drift / (omega * shift as f64);
            // What is left at the end must be more than the other partials' skirts.
            if (-omega * eta * shift as f64 / 2.0).exp() > 0.02 {
                assert!(
                    share.abs() < 0.07,
                    "{}, partial {n}: loss {found:.3e}, wanted {eta:.3e}",
                    trade.name
                );
                assert!(cents.abs() < 3.0, "{}, partial {n}: {cents:.2} cents off", trade.name);
                worst = worst.max(share.abs());
                worst_cents = worst_cents.max(cents.abs());
            }
        }
    }
    println!(
        "losses of partials 1 to 12 within {:.1} %, pitches within {worst_cents:.2} cents",
        worst * 100.0
    );
}

#[test]
fn no_round_of_any_string_gains() {
    let mut seeded = support::Seeded::new(7);
    let mut strings: Vec<(Sounding, Body)> =
        super::trade().iter().map(|t| (t.sounding(), Body::generic(t.kind, &t.setting))).collect();
    for _ in 0..60 {
        let (loss, steep) = (seeded.in_decades(1e-5, 0.1), seeded.in_decades(1e-6, 0.5));
        let string = Sounding {
            inharmonicity: seeded.in_decades(1e-7, 1e-2),
            losses: (1..80).map(|n| loss + steep * 1e-3 * f64::from(n * n)).collect(),
            ..super::plain(seeded.in_decades(30.0, 2000.0), seeded.in_decades(0.1, 4.0), 0.0)
        };
        strings.push((string, Body::resistive(seeded.in_decades(1.0, 200.0))));
    }
    for (string, body) in &strings {
        for rate in [48_000.0, 96_000.0, 192_000.0] {
            let strung = Strung::new(string, body, rate);
            let bowed = Bowed::new(&strung, 0.11, Hyperbolic::rosin());
            for k in 1..2000 {
                let (re, im) = bowed.round(0, PI * f64::from(k) / 2000.0);
                assert!(re.hypot(im) <= 1.0 + 1e-12, "{string:?} at {rate}: {}", re.hypot(im));
            }
        }
    }
}

#[test]
fn nothing_grows_without_a_bow() {
    for trade in super::trade() {
        let string = trade.sounding();
        let strung = Strung::new(&string, &Body::generic(trade.kind, &trade.setting), 48_000.0);
        let sound = plucked(&strung, 0.2, 40.0 / string.pitch);
        let window = (2.0 * strung.period()) as usize;
        let energy: Vec<f64> =
            sound.chunks_exact(window).map(|part| part.iter().map(|x| x * x).sum()).collect();
        // The body gives back a little of what it took; over many periods nothing may come of it.
        assert!(
            energy.windows(5).skip(1).all(|e| e[4] < e[0] * 1.0001),
            "{}: {energy:?}",
            trade.name
        );
        assert!(sound.iter().all(|x| x.is_finite()));
    }
}

#[test]
fn what_the_bridge_takes_is_what_the_model_says() {
    // Euphonics 5.1.1 eq. 8: η = 2 Z₀/(π n R). A string that loses nothing else on a bridge that is a plain resistance.
    let (z, r, pitch) = (0.3, 25.0, 200.0);
    let string = super::plain(pitch, z, 1e-7);
    let strung = Strung::new(&string, &Body::resistive(r), 96_000.0);
    let bowed = Bowed::new(&strung, 0.1, Hyperbolic::rosin());
    for n in [1.0, 2.0, 5.0, 12.0] {
        let (re, im) = bowed.round(0, 2.0 * PI * pitch * n / 96_000.0);
        let found = -re.hypot(im).ln() / (PI * n);
        let expected = 2.0 * z / (PI * n * r);
        assert!((found / expected - 1.0).abs() < 0.02, "partial {n}: {found} against {expected}");
    }
}
