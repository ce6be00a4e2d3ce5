//! How fast is the bowed string? Times real time and cells of a map a second. Numbers, no gates: machines differ and are noisy.
#![allow(clippy::print_stdout, reason = "a bench prints what it measured")]

use std::hint::black_box;
use std::time::Instant;

use strings::fit::answers::Answers;
use strings::fit::{self, choose};
use strings::instrument;
use strings::simulate::map::{AttackMap, PlaceMap};
use strings::simulate::{
    Body, Bowed, Friction, Gesture, Hyperbolic, Law, Sounding, Strung, Thermal,
};

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

/// Times real time of `L` notes side by side.
fn faster<const L: usize, F: Friction<L> + Clone>(
    strung: &Strung,
    force: f64,
    friction: &F,
) -> f64 {
    let played = 2.0;
    let gestures: [Gesture; L] = std::array::from_fn(|_| Gesture::steady(0.1, force, 0.1));
    let taken = seconds(|| {
        let mut bowed = Bowed::<L, F>::new(strung, [0.1; L], friction.clone());
        let mut sum = 0.0;
        bowed.play(&gestures, (played * strung.rate()) as usize, |_, m| sum += m.bridge_force[0]);
        black_box(sum);
    });
    L as f64 * played / taken
}

fn main() {
    for (kind, position) in [(&instrument::VIOLIN, 1), (&instrument::DOUBLE_BASS, 3)] {
        let fitting = fit::fit(&Answers { instrument: Some(kind), ..Answers::default() });
        let Some(choice) = choose::best(&fitting.problem, &fitting.shortlists, None) else {
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
            "{:12} {:.0} Hz: filters fitted in {:.2} ms; law of speed at {rate} steps a second {:.0} times real time alone, {:.0} by two, {:.0} by four; of temperature at {warm_rate} {:.0} alone, {:.0} by four",
            kind.key,
            string.pitch,
            fitted * 1e3,
            faster::<1, _>(&strung, force, &Hyperbolic::rosin()),
            faster::<2, _>(&strung, force, &Hyperbolic::rosin()),
            faster::<4, _>(&strung, force, &Hyperbolic::rosin()),
            faster::<1, _>(&warm, force, &Thermal::new(warm_rate)),
            faster::<4, _>(&warm, force, &Thermal::new(warm_rate)),
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
