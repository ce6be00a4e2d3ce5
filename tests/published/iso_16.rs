//! ISO 16: the tuning note, and the notes that hang on it in equal temperament.

use strings::pitch::{self, Note};
use strings::quantity::Hertz;
use support::{Authority, Grade, Within, check, half_unit, row};

#[test]
fn open_strings_at_440_hertz() {
    let authority = Authority {
        source: "ISO 16:1975, A4 = 440 Hz, from memory; equal temperament worked out by hand",
        grade: Grade::Identity,
    };
    check(
        &authority,
        [
            ("A4", 440.0),
            ("E5", 659.255),
            ("D4", 293.665),
            ("G3", 195.998),
            ("C3", 130.813),
            ("A3", 220.0),
            ("D3", 146.832),
            ("G2", 97.999),
            ("C2", 65.406),
            ("D2", 73.416),
            ("A1", 55.0),
            ("E1", 41.203),
            ("C1", 32.703),
            ("B0", 30.868),
        ]
        .map(|(name, hertz)| {
            let note = Note::parse(name).unwrap_or_else(|| panic!("{name} is a note"));
            assert_eq!(note.name(), name);
            row(
                name,
                note.frequency(Hertz::new(440.0)).get(),
                hertz,
                half_unit(0.001),
                "six digits written down",
            )
        }),
    );
}

#[test]
fn other_pitches_of_the_tuning_note() {
    let authority = Authority {
        source: "pitch standards relative to 440 Hz, 1200 log2 worked out by hand",
        grade: Grade::Identity,
    };
    check(
        &authority,
        [
            (440.0, 392.0, -199.9798),
            (440.0, 415.0, -101.2706),
            (440.0, 430.0, -39.800_24),
            (440.0, 442.0, 7.851_415),
            (440.0, 443.0, 11.763_81),
            (2.0, 3.0, 701.955),
            (293.33, 440.0, 701.955 + 0.0197),
        ]
        .map(|(from, to, cents)| {
            row(
                format!("from {from} to {to}, cents"),
                pitch::cents(Hertz::new(from), Hertz::new(to)).get(),
                cents,
                Within::Amount(5.1e-4),
                "three decimals written down",
            )
        }),
    );
}
