//! What one would hear: as loud as asked, never too loud, clean, in tune, and the same every time.

use std::f64::consts::PI;

use strings::construction::Construction;
use strings::setting::Setting;
use strings::simulate::level::{self, PEAK, RATE};
use strings::simulate::sound::{self, Piece};
use strings::simulate::{Body, Law, player, spectrum};

#[test]
fn a_full_scale_sine_reads_as_the_standard_says() {
    // ITU-R BS.1770-4: 997 Hz at full scale into one channel reads −3.01 LKFS. From memory.
    let sine: Vec<f64> =
        (0..RATE * 3).map(|i| (2.0 * PI * 997.0 * i as f64 / RATE as f64).sin()).collect();
    let found = level::loudness(&sine);
    assert!((found + 3.01).abs() < 0.02, "{found}");
    let soft: Vec<f64> = sine.iter().map(|x| x / 10.0).collect();
    assert!((level::loudness(&soft) - found + 20.0).abs() < 1e-6);
    // Silence before and after is gated away.
    let mut with_rest = vec![0.0; RATE * 4];
    with_rest.extend(&sine);
    assert!((level::loudness(&with_rest) - found).abs() < 0.5);
    assert!(!level::loudness(&vec![0.0; RATE]).is_finite());
}

#[test]
fn every_piece_is_as_loud_as_asked_and_never_clips() {
    for trade in super::trade() {
        let strings = [(trade.construction, trade.setting)];
        for piece in Piece::ALL {
            let found = sound::play(trade.kind, &strings, piece, sound::LOUDNESS);
            println!(
                "{} {}: {:.2} LUFS, peak {:.2}, {:.1} s, clean {}",
                trade.name,
                piece.key(),
                found.loudness,
                found.peak,
                found.samples.len() as f64 / RATE as f64,
                found.clean
            );
            assert!(
                (found.loudness - sound::LOUDNESS).abs() < 0.1,
                "{}: {}",
                trade.name,
                found.loudness
            );
            assert!(found.peak <= PEAK + 1e-12 && found.samples.iter().all(|x| x.is_finite()));
            assert!(found.clean && found.samples.len() > RATE / 2, "{}", trade.name);
        }
    }
}

#[test]
fn loud_sounds_are_limited_and_still_match() {
    let trade = &super::trade()[3];
    let strings = [(trade.construction, trade.setting)];
    let loud = sound::play(trade.kind, &strings, Piece::Pizzicato, -12.0);
    assert!(
        loud.peak <= PEAK + 1e-12 && (loud.loudness + 12.0).abs() < 0.5,
        "{} {}",
        loud.loudness,
        loud.peak
    );
}

/// The pitch of a part of a sound near `expected`, Hz: where its first three harmonics are strongest.
fn pitch(sound: &[f32], expected: f64) -> f64 {
    let part: Vec<f64> = sound.iter().map(|x| f64::from(*x)).collect();
    (-60..=60)
        .map(|cents| expected * 2.0_f64.powf(f64::from(cents) / 1200.0))
        .max_by(|a, b| {
            let strength = |f: &f64| {
                spectrum::harmonics(&part, RATE as f64 / f, 4).iter().map(|a| a * a).sum::<f64>()
            };
            strength(a).total_cmp(&strength(b))
        })
        .expect("there are pitches to compare")
}

#[test]
fn an_open_string_sounds_at_its_pitch_and_a_scale_climbs() {
    for trade in super::trade().into_iter().filter(|t| t.setting.pitch.get() > 190.0) {
        let strings = [(trade.construction, trade.setting)];
        let open = trade.setting.pitch.get();
        let sound = sound::play(trade.kind, &strings, Piece::OpenString, sound::LOUDNESS);
        let found = pitch(&sound.samples[RATE / 2..RATE * 9 / 10], open);
        let cents = 1200.0 * (found / open).log2();
        println!("{}: {cents:.0} cents from its pitch", trade.name);
        assert!(cents.abs() < 25.0, "{}: {cents}", trade.name);
        let scale = sound::play(trade.kind, &strings, Piece::Scale, sound::LOUDNESS);
        // A note every 0.545 s; the last is the octave.
        let last = (7.0 * 0.545 * RATE as f64) as usize;
        let found = pitch(&scale.samples[last + RATE / 5..last + RATE * 45 / 100], 2.0 * open);
        let cents = 1200.0 * (found / open / 2.0).log2();
        println!("{}: octave {cents:.0} cents off, clean {}", trade.name, scale.clean);
        assert!(cents.abs() < 40.0, "{}: {cents}", trade.name);
    }
}

#[test]
fn a_set_is_played_from_low_to_high_and_silence_is_silent() {
    let strings: Vec<(Construction, Setting)> =
        super::trade()[..4].iter().map(|t| (t.construction, t.setting)).collect();
    let kind = super::trade()[0].kind;
    let one = sound::play(kind, &strings[3..], Piece::OpenString, -23.0);
    let set = sound::play(kind, &strings, Piece::OpenString, -23.0);
    assert!(set.samples.len() > 3 * one.samples.len());
    assert_eq!(set, sound::play(kind, &strings, Piece::OpenString, -23.0));
    assert!(sound::play(kind, &[], Piece::Scale, -23.0).samples.is_empty());
}

#[test]
fn what_is_heard_stands_at_multiples_of_the_pitch() {
    for trade in super::trade().into_iter().filter(|t| t.setting.pitch.get() > 190.0) {
        let strings = [(trade.construction, trade.setting)];
        let sound = sound::play(trade.kind, &strings, Piece::OpenString, sound::LOUDNESS);
        let open = trade.setting.pitch.get();
        let part = &sound.samples[RATE / 2..RATE * 9 / 10];
        let own = pitch(part, open);
        let part: Vec<f64> = part.iter().map(|x| f64::from(*x)).collect();
        // Amplitude at any frequency, with Hann's window: what lies four bins away is gone.
        let at = |frequency: f64| {
            let count = part.len() as f64;
            let sum = part.iter().enumerate().fold((0.0, 0.0), |sum, (i, x)| {
                let hann = 0.5 - 0.5 * (2.0 * PI * i as f64 / count).cos();
                let angle = 2.0 * PI * frequency * i as f64 / RATE as f64;
                (sum.0 + x * hann * angle.cos(), sum.1 + x * hann * angle.sin())
            });
            sum.0.hypot(sum.1)
        };
        for n in 1..=6 {
            let n = f64::from(n);
            let (peak, between) = (at(n * own), at((n + 0.5) * own));
            assert!(peak > 10.0 * between, "{} harmonic {n}: {peak} over {between}", trade.name);
        }
    }
}

#[test]
fn two_sounds_match_and_the_difference_they_had_is_told() {
    let trade = super::trade();
    let of = |i: usize, wanted: f64| {
        let strings = [(trade[i].construction, trade[i].setting)];
        sound::play(trade[i].kind, &strings, Piece::OpenString, wanted)
    };
    let (one, other) = (of(0, sound::LOUDNESS), of(3, sound::LOUDNESS));
    assert!((one.loudness - other.loudness).abs() < 0.5);
    assert!((one.natural - other.natural).abs() > 0.1, "they were alike already");
    // What it was by itself does not hang on what was asked for, and a factor leads back to it.
    let soft = of(0, -33.0);
    assert!((soft.natural - one.natural).abs() < 1e-9);
    let factor = 10.0_f64.powf((one.natural - one.loudness) / 20.0);
    let back: Vec<f64> = one.samples.iter().map(|x| f64::from(*x) * factor).collect();
    assert!((level::loudness(&back) - one.natural).abs() < 0.05);
}

#[test]
fn a_player_who_gives_up_hopeless_strokes_chooses_the_same() {
    for trade in super::trade() {
        let string = trade.sounding();
        let body = Body::generic(trade.kind, &trade.setting);
        for speed in [0.07, 0.2] {
            let all = player::tries(&string, &body, Law::Thermal, speed, 0.108).best;
            let chosen = player::chosen(&string, &body, Law::Thermal, speed, 0.108);
            assert_eq!(chosen, all, "{} at {speed} m/s", trade.name);
        }
    }
}
