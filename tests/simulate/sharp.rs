//! Sharpness and loudness against the standards' reference values and an independent program.

use strings::simulate::sharpness::{self, BANDS};
use support::{Authority, Grade, Within, check, row};

/// Levels of one third octave alone.
fn one(band: usize, level: f64) -> [f64; BANDS] {
    let mut levels = [-60.0; BANDS];
    levels[band] = level;
    levels
}

#[test]
fn the_weight_of_din_45692() {
    let authority = Authority {
        source: "DIN 45692:2009, weight of sharpness, arithmetic on its formula",
        grade: Grade::Identity,
    };
    let rows = [
        (10.0, 1.0),
        (15.8, 1.0),
        (18.0, 1.227902),
        (20.0, 1.72536),
        (22.0, 2.87766),
        (24.0, 5.546793),
    ];
    check(
        &authority,
        rows.map(|(z, expected)| {
            row(
                format!("g at {z} Bark"),
                sharpness::weight(z),
                expected,
                Within::Share(1e-5),
                "printed digits",
            )
        }),
    );
}

#[test]
fn the_reference_sound_is_one_acum() {
    // DIN 45692:2009: noise one critical band wide about 1 kHz at 60 dB has 1 acum; the standard allows 5 %. ISO 532-1:
    // a tone of 1 kHz at 40 dB has 1 sone, and each 10 dB double it.
    let authority = Authority {
        source: "DIN 45692:2009 and ISO 532-1:2017, reference sounds, from memory",
        grade: Grade::Printed,
    };
    let at = |level: f64| sharpness::loudness(&one(16, level));
    check(
        &authority,
        [
            row(
                "sharpness, acum",
                sharpness::sharpness(&at(60.0)),
                1.0,
                Within::Share(0.05),
                "the standard's own",
            ),
            row(
                "loudness at 40 dB, sone",
                at(40.0).sone,
                1.0,
                Within::Share(0.12),
                "a band for a tone",
            ),
            row(
                "loudness at 60 dB, sone",
                at(60.0).sone,
                4.0,
                Within::Share(0.14),
                "a band for a tone",
            ),
        ],
    );
}

#[test]
fn an_independent_program_finds_the_same() {
    let authority = Authority {
        source: "mosqito 1.2.1, its core of ISO 532-1 and DIN 45692 run on the same third octaves",
        grade: Grade::Independent,
    };
    let centre = |k: usize| 1000.0 * 2.0_f64.powf((k as f64 - 16.0) / 3.0);
    let saw: [f64; BANDS] =
        std::array::from_fn(|k| 80.0 - 20.0 * (centre(k).max(200.0) / 200.0).log10());
    let cases: [(&str, [f64; BANDS], f64, f64); 9] = [
        ("1 kHz, 60 dB", one(16, 60.0), 3.49, 1.0490220421978154),
        ("1 kHz, 70 dB", one(16, 70.0), 6.944, 1.067692226860119),
        ("250 Hz, 70 dB", one(10, 70.0), 6.863, 0.39235418089405283),
        ("4 kHz, 60 dB", one(22, 60.0), 5.273, 3.0044962160227096),
        ("10 kHz, 60 dB", one(26, 60.0), 1.759, 9.327277490352117),
        ("60 dB in each band", [60.0; BANDS], 31.94, 2.0110256527318033),
        ("falling from 200 Hz", saw, 46.26, 1.0544513947601517),
        ("rising", std::array::from_fn(|k| 40.0 + k as f64), 29.09, 2.6295573163034947),
        (
            "a hill at 160 Hz",
            std::array::from_fn(|k| 75.0 - 0.9 * (k as f64 - 8.0).abs()),
            48.66,
            1.5368514467661354,
        ),
    ];
    check(
        &authority,
        cases.into_iter().flat_map(|(name, levels, sone, acum)| {
            let loudness = sharpness::loudness(&levels);
            [
                row(
                    format!("{name}: sone"),
                    loudness.sone,
                    sone,
                    Within::Share(0.002),
                    "three digits",
                ),
                row(
                    format!("{name}: acum"),
                    sharpness::sharpness(&loudness),
                    acum,
                    Within::Share(0.02),
                    "it reads the pattern at other tenths of a Bark",
                ),
            ]
        }),
    );
}

#[test]
fn harmonics_fall_into_their_bands() {
    let levels = sharpness::third_octaves(&[1.0, 0.0, 1.0], 1000.0, 70.0);
    assert!((levels[16] - 66.99).abs() < 0.01 && (levels[21] - 66.99).abs() < 0.01, "{levels:?}");
    assert_eq!(levels.iter().filter(|l| **l > -60.0).count(), 2);
    let all: f64 = levels.iter().map(|l| 10.0_f64.powf(l / 10.0)).sum();
    assert!((10.0 * all.log10() - 70.0).abs() < 1e-6);
}
