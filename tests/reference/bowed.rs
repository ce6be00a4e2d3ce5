//! One bowed note by travelling waves, against the same note as a sum of modes.

use serde_json::Value;
use strings::simulate::{Body, Gesture, Law, Regime, Sounding, Strung, note, spectrum};
use support::{Authority, Grade, Within, check, row};

use crate::python::{list, number, output_of, word};

/// The program's note: a plain string that twists, on ends that do not give, from the ideal motion.
fn string(case: &Value) -> Sounding {
    let (loss, steep) = (number(case, "loss"), number(case, "steep"));
    Sounding {
        pitch: number(case, "pitch"),
        length: number(case, "length"),
        impedance: number(case, "impedance"),
        inharmonicity: 0.0,
        losses: (1..=60).map(|n| loss * (1.0 + steep * f64::from(n * n))).collect(),
        torsion_ratio: number(case, "torsion_ratio"),
        torsion_impedance: number(case, "torsion_impedance"),
        torsion_q: number(case, "torsion_q"),
        end: 1.0,
    }
}

#[test]
fn a_bowed_note_is_the_same_by_waves_and_by_modes() {
    let printed = output_of("bowed");
    let authority = Authority {
        source: "bowed.py, a bowed string as a sum of modes, each stepped exactly",
        grade: Grade::Independent,
    };
    let mut rows = vec![];
    for case in list(&printed, "notes") {
        let (name, string) = (word(case, "name"), string(case));
        let strung = Strung::new(&string, &Body::rigid(), 192_000.0);
        let gesture =
            Gesture::steady(number(case, "speed"), number(case, "force"), number(case, "beta"));
        let played = note::kept_moving(&strung, Law::Hyperbolic, &gesture, 60.0 / string.pitch);
        assert_eq!(played.judgement.regime, Regime::Helmholtz, "{name}");
        let period = strung.period() / 2.0_f64.powf(played.judgement.cents / 1200.0);
        let last = played.bridge_force.len() - (19.0 * period) as usize;
        let harmonics = spectrum::harmonics(&played.bridge_force[last..], period, 10);
        rows.push(row(
            format!("{name}: cents"),
            played.judgement.cents,
            number(case, "cents"),
            // Pressed hard, the string hangs on how its corner is rounded on the short side.
            Within::Amount(if name == "heavy" { 4.0 } else { 1.5 }),
            "all losses of a round stand at the nut, and are fitted",
        ));
        rows.push(row(
            format!("{name}: share of slipping"),
            played.judgement.slip_share,
            number(case, "slip_share"),
            Within::Share(0.06),
            "the same, and creep is counted otherwise",
        ));
        for (i, expected) in list(case, "harmonics_n").iter().enumerate().take(6) {
            rows.push(row(
                format!("{name}: harmonic {} of the bridge's force, N", i + 1),
                harmonics[i],
                expected.as_f64().unwrap_or(f64::NAN),
                Within::Share(0.08),
                "the same",
            ));
        }
    }
    check(&authority, rows);
}
