//! The surrogate against the simulation on 300 strings that it was not fitted to.
//!
//! What the simulation says of them is stored in `held_out.tsv`, as it takes minutes: our own output, which proves
//! nothing of strings and only how well one follows the other. Some are simulated anew in each run. To make it again:
//! `ROPEWALK_HELD_OUT=write cargo test --release -p tests --test simulate held_out`.

use std::path::Path;
use std::{env, fs};

use strings::instrument::{self, Kind};
use strings::simulate::surrogate::{Verdict, quick, simulated};
use strings::simulate::{Body, Sounding};
use support::Seeded;

const STRINGS: usize = 300;
/// Those that are simulated anew.
const ANEW: usize = 60;

/// Pitch, Hz, and tension from and to, N.
type Position = (f64, f64, f64);

/// The four positions of each instrument. Common practice, as in the precedents.
const POSITIONS: [(&Kind, [Position; 4]); 4] = [
    (
        &instrument::VIOLIN,
        [(659.26, 70.0, 90.0), (440.0, 48.0, 65.0), (293.66, 38.0, 60.0), (196.0, 35.0, 51.0)],
    ),
    (
        &instrument::VIOLA,
        [(440.0, 56.0, 98.0), (293.66, 45.0, 70.0), (196.0, 43.0, 65.0), (130.81, 42.0, 65.0)],
    ),
    (
        &instrument::CELLO,
        [
            (220.0, 134.0, 182.0),
            (146.83, 108.0, 155.0),
            (98.0, 108.0, 155.0),
            (65.41, 100.0, 160.0),
        ],
    ),
    (
        &instrument::DOUBLE_BASS,
        [(98.0, 200.0, 315.0), (73.42, 200.0, 315.0), (55.0, 182.0, 315.0), (41.2, 200.0, 315.0)],
    ),
];

/// A string drawn at random over what strings of the trade are: stiffness, losses and twist of plain wire to soft gut.
fn drawn(seeded: &mut Seeded) -> (&'static Kind, Sounding) {
    let (kind, positions) = seeded.one_of(&POSITIONS);
    let (pitch, low, high) = *seeded.one_of(positions);
    let length = kind.full_length;
    let impedance = seeded.in_decades(low, high) / (2.0 * length * pitch);
    let b = seeded.in_decades(5e-6, 5e-4);
    let (air, bent) = (seeded.in_decades(5e-5, 5e-4), b * seeded.in_decades(0.002, 0.08));
    let ratio = seeded.in_decades(1.1, 8.0);
    let count = ((12_000.0 / pitch) as u32).clamp(8, 160);
    let losses = (1..=count)
        .map(|n| {
            let n = f64::from(n);
            (4e-4 + air / n.sqrt() + bent * n * n) / (1.0 + b * n * n)
        })
        .collect();
    let twist = 0.65 * ratio.powf(0.85) * seeded.in_decades(0.85, 1.18);
    let string = Sounding {
        pitch,
        length,
        impedance,
        inharmonicity: b,
        losses,
        torsion_ratio: ratio,
        torsion_impedance: twist * impedance,
        torsion_q: 30.0,
        end: 1.0,
    };
    (kind, string)
}

fn body(kind: &Kind) -> Body {
    Body::of(kind, kind.resistance.0, kind.resistance.1)
}

const NAMES: [&str; 4] = ["response, s", "window, dB", "brightness, acum", "ring, s"];

fn four(v: &Verdict) -> [f64; 4] {
    [v.response, v.window(), v.brightness, v.ring]
}

/// Ranks, the same for the same.
fn ranks(values: &[f64]) -> Vec<f64> {
    values
        .iter()
        .map(|v| {
            let below = values.iter().filter(|w| *w < v).count() as f64;
            let same = values.iter().filter(|w| (*w - v).abs() < 1e-15).count() as f64;
            below + (same - 1.0) / 2.0
        })
        .collect()
}

/// Spearman's correlation of ranks.
fn rank_correlation(a: &[f64], b: &[f64]) -> f64 {
    let (a, b) = (ranks(a), ranks(b));
    let mean = (a.len() as f64 - 1.0) / 2.0;
    let product =
        |x: &[f64], y: &[f64]| x.iter().zip(y).map(|(x, y)| (x - mean) * (y - mean)).sum::<f64>();
    product(&a, &b) / (product(&a, &a) * product(&b, &b)).sqrt()
}

#[test]
fn the_surrogate_ranks_held_out_strings_as_the_simulation_does() {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("simulate/held_out.tsv");
    let mut seeded = Seeded::new(20_261);
    let strings: Vec<_> = (0..STRINGS).map(|_| drawn(&mut seeded)).collect();
    let anew = |i: usize| {
        let (kind, string) = &strings[i];
        let verdict =
            simulated(string, &body(kind), kind).expect("a string of the trade speaks and rings");
        four(&verdict)
    };
    if env::var_os("ROPEWALK_HELD_OUT").is_some() {
        let lines: Vec<String> =
            (0..STRINGS).map(|i| anew(i).map(|value| format!("{value:.9e}")).join("\t")).collect();
        fs::write(&path, lines.join("\n") + "\n").expect("the file can be written");
    }
    let text = fs::read_to_string(&path).expect("the stored answers");
    let stored: Vec<[f64; 4]> = text
        .lines()
        .map(|line| {
            let mut values = line.split('\t').map(|v| v.parse().expect("a number"));
            std::array::from_fn(|_| values.next().expect("four numbers"))
        })
        .collect();
    assert_eq!(stored.len(), STRINGS);
    for i in (7..STRINGS).step_by(ANEW) {
        for (now, then) in anew(i).iter().zip(stored[i]) {
            assert!(
                (now - then).abs() < 1e-6 * then.abs(),
                "string {i}: {now} now, {then} stored; if the simulation changed on purpose, write the file again"
            );
        }
    }
    let found: Vec<[f64; 4]> =
        strings.iter().map(|(kind, string)| four(&quick(string, &body(kind), kind))).collect();
    for (k, name) in NAMES.iter().enumerate() {
        let column = |rows: &[[f64; 4]]| rows.iter().map(|row| row[k]).collect::<Vec<f64>>();
        let (quick, slow) = (column(&found), column(&stored));
        let rank = rank_correlation(&quick, &slow);
        let mut errors: Vec<f64> = quick
            .iter()
            .zip(&slow)
            .map(|(q, s)| if k == 1 { (q - s).abs() } else { (q / s).ln().abs() })
            .collect();
        errors.sort_by(f64::total_cmp);
        let (half, most) = (errors[STRINGS / 2], errors[STRINGS * 9 / 10]);
        support::tell(&if k == 1 {
            format!(
                "surrogate, {name}: rank correlation {rank:.3} on {STRINGS} held-out strings; half within {half:.1} dB, nine tenths within {most:.1}"
            )
        } else {
            format!(
                "surrogate, {name}: rank correlation {rank:.3} on {STRINGS} held-out strings; half within {:.0} %, nine tenths within {:.0}",
                half * 100.0,
                most * 100.0
            )
        });
        assert!(rank >= 0.9, "{name}: {rank}");
    }
}

#[test]
fn the_surrogate_follows_physics_where_physics_is_plain() {
    let mut seeded = Seeded::new(5);
    for _ in 0..200 {
        let (kind, string) = drawn(&mut seeded);
        let (r, peak) = kind.resistance;
        let of = |string: &Sounding| quick(string, &Body::of(kind, r, peak), kind);
        let plain = of(&string);
        let lossy =
            Sounding { losses: string.losses.iter().map(|l| l * 1.3).collect(), ..string.clone() };
        assert!(of(&lossy).ring < plain.ring && of(&lossy).brightness <= plain.brightness + 1e-9);
        let heavy = Sounding {
            impedance: string.impedance * 1.2,
            torsion_impedance: string.torsion_impedance * 1.2,
            ..string.clone()
        };
        assert!(of(&heavy).greatest > plain.greatest && of(&heavy).least > plain.least);
        assert!(of(&heavy).response > plain.response && of(&heavy).ring < plain.ring);
        let twists =
            Sounding { torsion_impedance: string.torsion_impedance * 0.8, ..string.clone() };
        assert!(
            of(&twists).greatest <= plain.greatest + 1e-12
                && of(&twists).response >= plain.response
        );
    }
}
