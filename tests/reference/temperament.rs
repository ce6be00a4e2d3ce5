//! Pitches and intervals, against 30 digits.

use std::sync::OnceLock;

use serde_json::Value;
use strings::pitch::{self, CENTS_PER_NEPER, Note};
use strings::quantity::Hertz;
use support::{Authority, Grade, Within, check, row};

use crate::python::{list, number, output_of};

const MPMATH: Authority =
    Authority { source: "temperament.py (mpmath, 40 digits)", grade: Grade::Independent };
const ROUNDING: &str = "a few roundings of double precision";

/// What the program printed; run once for all tests of this file.
fn printed() -> &'static Value {
    static PRINTED: OnceLock<Value> = OnceLock::new();
    PRINTED.get_or_init(|| output_of("temperament"))
}

#[test]
fn equal_temperament_at_every_pitch_standard() {
    let printed = printed();
    check(
        &MPMATH,
        list(printed, "notes").iter().map(|note| {
            let (a4, k) = (number(note, "a4_hz"), number(note, "semitones_above_c0"));
            let note_of_model = Note(k as i32);
            row(
                format!("{} at {a4} Hz", note_of_model.name()),
                note_of_model.frequency(Hertz::new(a4)).get(),
                number(note, "hz"),
                Within::Share(4e-15),
                ROUNDING,
            )
        }),
    );
}

#[test]
fn cents_between_standards_and_of_pure_intervals() {
    let printed = printed();
    check(
        &MPMATH,
        list(printed, "cents").iter().map(|interval| {
            let (from, to) = (number(interval, "from"), number(interval, "to"));
            row(
                format!("cents from {from} to {to}"),
                pitch::cents(Hertz::new(from), Hertz::new(to)).get(),
                number(interval, "cents"),
                // The logarithm of a ratio near 1 keeps the rounding of the ratio.
                Within::Amount(1e-12),
                ROUNDING,
            )
        }),
    );
    check(
        &MPMATH,
        [row(
            "cents a neper",
            CENTS_PER_NEPER,
            number(printed, "cents_per_neper"),
            Within::Share(2e-16),
            "half a unit in the last place",
        )],
    );
}
