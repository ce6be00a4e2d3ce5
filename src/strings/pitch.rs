//! Pitch: note names, equal temperament, pure fifths, cents.

use crate::quantity::{Cent, Hertz};

/// A note in scientific pitch: semitones above C0, so that A4 is 57.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Note(pub i32);

const NAMES: [&str; 12] = ["C", "C#", "D", "Eb", "E", "F", "F#", "G", "G#", "A", "Bb", "B"];

impl Note {
    /// A4, the tuning note.
    pub const A4: Self = Self(57);

    /// Reads a note such as `E5`, `F#1` or `Bb3`.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        let mut letters = text.chars();
        let step = match letters.next()? {
            'C' => 0,
            'D' => 2,
            'E' => 4,
            'F' => 5,
            'G' => 7,
            'A' => 9,
            'B' => 11,
            _ => return None,
        };
        let rest = letters.as_str();
        let (shift, octave) = match rest.strip_prefix('#') {
            Some(octave) => (1, octave),
            None => rest.strip_prefix('b').map_or((0, rest), |octave| (-1, octave)),
        };
        let mut digits = octave.chars();
        let octave = i32::try_from(digits.next()?.to_digit(9)?).ok()?;
        if digits.next().is_some() {
            return None;
        }
        Some(Self(12 * octave + step + shift))
    }

    /// The note's name in scientific pitch.
    #[must_use]
    pub fn name(self) -> String {
        let index = usize::try_from(self.0.rem_euclid(12)).unwrap_or(0);
        format!("{}{}", NAMES[index], self.0.div_euclid(12))
    }

    /// Frequency in equal temperament: f = f_A4 · 2^(k/12), k semitones above A4.
    ///
    /// Source: [`crate::source::ISO_16`] for the reference of 440 Hz.
    #[must_use]
    pub fn frequency(self, a4: Hertz) -> Hertz {
        Hertz::new(a4.get() * libm::exp2(f64::from(self.0 - Self::A4.0) / 12.0))
    }
}

/// The interval from `from` up to `to`: 1200 log2(to/from).
#[must_use]
pub fn cents(from: Hertz, to: Hertz) -> Cent {
    Cent::new(1200.0 * libm::log2(to.get() / from.get()))
}

/// Cents for a small relative change of frequency: 1200/ln 2 times d ln f.
pub const CENTS_PER_NEPER: f64 = 1_731.234_049_066_756;
