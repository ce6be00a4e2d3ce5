//! How fast is the bowed string? Times real time and cells of a map a second. Numbers, no gates: machines differ and are noisy.
#![allow(clippy::print_stdout, reason = "a bench prints what it measured")]

use std::hint::black_box;
use std::time::Instant;

use strings::fit::answers::Answers;
use strings::fit::{self, choose};
use strings::instrument;
use strings::simulate::map::{AttackMap, PlaceMap};
use strings::simulate::{Body, Gesture, Law, Sounding, Strung, note};

/// Best of three, in seconds.
fn seconds(mut run: impl FnMut()) -> f64 {
    (0..3)
        .map(|_| {
            let start = Instant::now();
            run();
            start.elapsed().as_secs_f64()
        })
        .fold(f64::INFINITY, f64::min)
}

/// Times real time of one note alone.
fn alone(strung: &Strung, law: Law, force: f64) -> f64 {
    let gesture = Gesture::steady(0.1, force, 0.1);
    2.0 / seconds(|| drop(black_box(note::bowed(strung, law, &gesture, 2.0))))
}

/// Times real time of notes side by side.
fn in_lanes(strung: &Strung, law: Law, force: f64) -> f64 {
    let gestures = vec![Gesture::steady(0.1, force, 0.1); 16];
    let played = 16.0 * note::PERIODS * strung.period() / strung.rate();
    played / seconds(|| drop(black_box(note::judged(strung, law, &gestures, None))))
}

fn main() {
    for (kind, position) in [(&instrument::VIOLIN, 1), (&instrument::DOUBLE_BASS, 3)] {
        let fitting = fit::fit(&Answers { instrument: Some(kind), ..Answers::default() });
        let choose::Outcome::Set { best: choice, .. } = &fitting.outcome else {
            continue;
        };
        let setting = &fitting.problem.strings[position].setting;
        let string = Sounding::of(&choice.strings[position].construction, setting);
        let body = Body::generic(kind, setting);
        let rate = string.rate(0.1, Law::Hyperbolic);
        let fitted = seconds(|| drop(black_box(Strung::new(&string, &body, rate))));
        let strung = Strung::new(&string, &body, rate);
        let warm_rate = string.rate(0.1, Law::Thermal);
        let warm = Strung::new(&string, &body, warm_rate);
        let force = string.impedance;
        println!(
            "{:12} {:.0} Hz: filters fitted in {:.2} ms; law of speed at {rate} steps a second {:.0} times real time alone, {:.0} in lanes; of temperature at {warm_rate} {:.0} alone, {:.0} in lanes",
            kind.key,
            string.pitch,
            fitted * 1e3,
            alone(&strung, Law::Hyperbolic, force),
            in_lanes(&strung, Law::Hyperbolic, force),
            alone(&warm, Law::Thermal, force),
            in_lanes(&warm, Law::Thermal, force),
        );
        let resistance = setting.bridge_resistance.get();
        let places = PlaceMap::usual(string.clone(), body.clone(), resistance, 0.1, 24);
        let of_places = seconds(|| drop(black_box(places.rows().collect::<Vec<_>>())));
        let attacks = AttackMap::usual(string, body, 0.1, 24);
        let of_attacks = seconds(|| drop(black_box(attacks.rows().collect::<Vec<_>>())));
        println!(
            "{:12} map of 24 by 24 notes of 60 periods: places {of_places:.2} s, {:.0} cells a second; attacks {of_attacks:.2} s, {:.0}",
            kind.key,
            576.0 / of_places,
            576.0 / of_attacks,
        );
    }
}
