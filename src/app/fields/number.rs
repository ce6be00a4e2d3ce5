//! Answers that are numbers, and how a typed text becomes one.
//!
//! A text that cannot be read is a fault in words, never a guess: the person sees what they typed and what would do.

use protocol::request::{AlsoTuned, Answers};
use strings::error::{self, Bound};
use strings::fit::desirability::Attribute;

use super::unit::{AGE, DAYS, FORCE, LENGTH, PITCH, PURE, SEMITONES, Unit};
use super::{Wish, kind, of_string};
use crate::letters;
use crate::words::say;

/// An answer that is a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Number {
    /// Measured sounding length.
    Length,
    /// Pitch of a′.
    A4,
    /// Age of the strings on it.
    Age,
    /// Days until it matters.
    Days,
    /// Another pitch of a′ at which the same strings are used.
    AlsoA4,
    /// How far above the main tuning they are used too.
    AlsoSemitones,
    /// The most that all strings together may pull.
    MostLoad,
    /// Age of one string, 0 the highest.
    AgeOf(usize),
    /// The most that one string may pull, 0 the highest.
    MostTension(usize),
    /// A wish.
    Wish(Wish),
    /// A weight, by its place among the attributes.
    Weight(usize),
}

impl Number {
    /// Its name in a request.
    #[must_use]
    pub fn key(self) -> String {
        match self {
            Self::Length => "sounding_length_m".to_owned(),
            Self::A4 => "a4_hz".to_owned(),
            Self::Age => "age_months".to_owned(),
            Self::Days => "concert_days".to_owned(),
            Self::AlsoA4 => "also_tuned.0.a4_hz".to_owned(),
            Self::AlsoSemitones => "also_tuned.0.semitones".to_owned(),
            Self::MostLoad => "most_load_n".to_owned(),
            Self::AgeOf(i) => format!("strings.{i}.today.age_months"),
            Self::MostTension(i) => format!("strings.{i}.most_tension_n"),
            Self::Wish(wish) => format!("wishes.{}", wish.key()),
            Self::Weight(i) => format!("weights.{}", weight_key(i)),
        }
    }

    /// The units in which it can be typed, the usual one first; there is at least one.
    #[must_use]
    pub const fn units(self) -> &'static [Unit] {
        match self {
            Self::Length => LENGTH,
            Self::A4 | Self::AlsoA4 => PITCH,
            Self::AlsoSemitones => SEMITONES,
            Self::Age | Self::AgeOf(_) => AGE,
            Self::Days => DAYS,
            Self::MostLoad | Self::MostTension(_) => FORCE,
            Self::Wish(_) | Self::Weight(_) => PURE,
        }
    }

    /// The unit of that label, or the usual one.
    #[must_use]
    pub fn unit(self, label: Option<&str>) -> Unit {
        let units = self.units();
        let named = units.iter().find(|unit| Some(unit.label) == label);
        named.or(units.first()).copied().unwrap_or(PURE[0])
    }

    /// What is allowed.
    #[must_use]
    pub fn bound(self, answers: &Answers) -> Bound {
        match self {
            Self::Length => kind(answers).length_bound(),
            Self::A4 | Self::AlsoA4 => error::A4,
            Self::AlsoSemitones => error::RETUNING,
            Self::Age | Self::AgeOf(_) => error::AGE_MONTHS,
            Self::Days => error::DAYS,
            Self::MostLoad => error::MOST_LOAD,
            Self::MostTension(_) => error::MOST_TENSION,
            Self::Wish(_) => error::WISH,
            Self::Weight(_) => error::WEIGHT,
        }
    }

    /// What was answered. A wish of zero is none.
    #[must_use]
    pub fn of(self, answers: &Answers) -> Option<f64> {
        match self {
            Self::Length => answers.sounding_length_m,
            Self::A4 => answers.a4_hz,
            Self::Age => answers.age_months,
            Self::Days => answers.concert_days,
            Self::AlsoA4 => answers.also_tuned.first()?.a4_hz,
            Self::AlsoSemitones => answers.also_tuned.first()?.semitones,
            Self::MostLoad => answers.most_load_n,
            Self::AgeOf(i) => answers.strings.get(i)?.today.age_months,
            Self::MostTension(i) => answers.strings.get(i)?.most_tension_n,
            Self::Wish(wish) => {
                let value = *wish.get(&answers.wishes);
                (value.abs() > 0.0).then_some(value)
            }
            Self::Weight(i) => answers.weights.get(weight_key(i)).copied(),
        }
    }

    /// Answers it.
    pub fn set(self, answers: &mut Answers, value: Option<f64>) {
        match self {
            Self::Length => answers.sounding_length_m = value,
            Self::A4 => answers.a4_hz = value,
            Self::Age => answers.age_months = value,
            Self::Days => answers.concert_days = value,
            Self::AlsoA4 => also_tuned(answers, |also| also.a4_hz = value),
            Self::AlsoSemitones => also_tuned(answers, |also| also.semitones = value),
            Self::MostLoad => answers.most_load_n = value,
            Self::AgeOf(i) => of_string(answers, i, |string| string.today.age_months = value),
            Self::MostTension(i) => of_string(answers, i, |string| string.most_tension_n = value),
            Self::Wish(wish) => *wish.get_mut(&mut answers.wishes) = value.unwrap_or(0.0),
            Self::Weight(i) => {
                let key = weight_key(i);
                match value {
                    Some(value) => drop(answers.weights.insert(key.to_owned(), value)),
                    None => drop(answers.weights.remove(key)),
                }
            }
        }
    }

    /// Reads what was typed in this unit: none if nothing was. `name` is what the fault calls the field.
    ///
    /// # Errors
    /// A sentence that names the field, what was typed, and what is allowed.
    pub fn read(
        self,
        text: &str,
        unit: Unit,
        bound: Bound,
        name: &str,
    ) -> Result<Option<f64>, String> {
        let trimmed = text.trim();
        if trimmed.is_empty() {
            return Ok(None);
        }
        let (digits, unit) = self.split(trimmed, unit);
        let Some(value) = value(digits) else {
            let range = unit.range(bound);
            return Err(say!("fault-number", name = name, typed = trimmed, range = range));
        };
        let si = unit.to_si(value);
        // The hair's breadth lets in an end that was typed in another unit.
        let hair = 1e-9 * bound.max.abs();
        if si >= bound.min - hair && si <= bound.max + hair {
            Ok(Some(si.clamp(bound.min, bound.max)))
        } else {
            let typed = format!("{digits} {}", unit.shown());
            let range = unit.range(bound);
            Err(say!("fault-outside", name = name, typed = typed.trim_end(), range = range))
        }
    }

    /// Parts the number from a unit that was typed behind it, which then counts instead of the one beside the field.
    fn split(self, text: &str, unit: Unit) -> (&str, Unit) {
        for known in self.units() {
            let own = [known.label, known.shown()];
            for label in known.also.iter().chain(&own) {
                if let Some(digits) = text.strip_suffix(label).filter(|_| !label.is_empty()) {
                    return (digits.trim_end(), *known);
                }
            }
        }
        (text, unit)
    }
}

/// Changes the other pitch; one without a number is none.
fn also_tuned(answers: &mut Answers, change: impl FnOnce(&mut AlsoTuned)) {
    let mut first = answers.also_tuned.first().cloned().unwrap_or_default();
    change(&mut first);
    answers.also_tuned.drain(..answers.also_tuned.len().min(1));
    if first != AlsoTuned::default() {
        answers.also_tuned.insert(0, first);
    }
}

/// The name of an attribute by its place.
#[must_use]
pub fn weight_key(i: usize) -> &'static str {
    Attribute::ALL.get(i).map_or("", |attribute| attribute.key())
}

/// Reads a number with a decimal point or comma, or a fraction of an inch: `328,5`, `12 7/8`.
fn value(text: &str) -> Option<f64> {
    let (sign, text) = match text.strip_prefix(['-', '−', '–']) {
        Some(rest) => (-1.0, rest.trim_start()),
        None => (1.0, text.strip_prefix('+').unwrap_or(text)),
    };
    let whole = |text: &str| {
        let digits =
            !text.is_empty() && text.len() <= 6 && text.bytes().all(|b| b.is_ascii_digit());
        digits.then(|| letters::number(text)).flatten()
    };
    let fraction = |text: &str| {
        let (over, under) = text.split_once('/')?;
        let (over, under) = (whole(over.trim())?, whole(under.trim())?);
        (under > 0.0).then(|| over / under)
    };
    let size = if text.contains('/') {
        match text.split_once(' ') {
            Some((units, rest)) if !rest.trim_start().starts_with('/') && !units.contains('/') => {
                whole(units)? + fraction(rest)?
            }
            _ => fraction(text)?,
        }
    } else {
        let text = text.replace(',', ".");
        let shape = text.bytes().all(|b| b.is_ascii_digit() || b == b'.')
            && text.bytes().any(|b| b.is_ascii_digit())
            && text.bytes().filter(|b| *b == b'.').count() <= 1
            && text.len() <= 20;
        if !shape {
            return None;
        }
        letters::number(&text)?
    };
    Some(sign * size)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(number: Number, text: &str, unit: &str) -> Result<Option<f64>, String> {
        let answers = Answers::default();
        number.read(text, number.unit(Some(unit)), number.bound(&answers), "It")
    }

    fn close(read: Result<Option<f64>, String>, expected: f64) {
        let value = read.unwrap().unwrap();
        assert!((value - expected).abs() < 1e-12, "{value} instead of {expected}");
    }

    #[test]
    fn numbers_are_read_as_people_write_them() {
        for text in ["328.5", "328,5", " 328.5 ", "328.5 mm", "328,5mm", "+328.5", "0328.50"] {
            close(read(Number::Length, text, "mm"), 0.3285);
        }
        for text in ["12 7/8", "12.875", "12,875 in", "12 7/8\"", "12 7/8 inches", "103/8"] {
            close(read(Number::Length, text, "in"), 12.875 * 0.0254);
        }
        close(read(Number::Length, "12.875 in", "mm"), 12.875 * 0.0254);
        close(read(Number::Age, "1,5", "years"), 18.0);
        close(read(Number::Wish(Wish::Feel), "-1,5", ""), -1.5);
        close(read(Number::Wish(Wish::Feel), "−2", ""), -2.0);
        close(read(Number::Days, "0", "days"), 0.0);
        close(read(Number::MostLoad, "25,5 kg", "N"), 25.5 * 9.80665);
        close(read(Number::MostTension(1), "13 lbs", "kg"), 13.0 * 4.448_221_615_260_5);
        assert_eq!(read(Number::A4, "  ", "Hz"), Ok(None));
    }

    #[test]
    fn what_is_no_number_is_told_of() {
        for text in [
            "x",
            "3 3",
            "1,234.5",
            "1.2.3",
            "NaN",
            "inf",
            "1e3",
            "--3",
            "/",
            "1/0",
            "7/",
            "1 2 3/4",
            ".",
            ",",
            "33o",
            "٣",
            "9999999/1",
            "𝄞",
            "mm",
            "1/2/3",
            "-",
            "+",
        ] {
            let fault = read(Number::Length, text, "mm").unwrap_err();
            assert!(fault.contains("is not a number. It takes 162 to 366 mm."), "{fault}");
        }
    }

    #[test]
    fn what_is_out_of_range_is_told_of_in_the_unit_it_was_typed_in() {
        let fault = read(Number::Length, "3300", "mm").unwrap_err();
        assert_eq!(fault, "It: 3300 mm is outside 162 to 366 mm.");
        let fault = read(Number::Length, "20 in", "mm").unwrap_err();
        assert_eq!(fault, "It: 20 in is outside 6.38 to 14.4 in.");
        let fault = read(Number::A4, "391,9", "Hz").unwrap_err();
        assert_eq!(fault, "It: 391,9 Hz is outside 392 to 466.2 Hz.");
        let fault = read(Number::Wish(Wish::Feel), "3", "").unwrap_err();
        assert_eq!(fault, "It: 3 is outside -2 to 2.");
        assert!(read(Number::Days, &"9".repeat(19), "days").is_err());
    }

    #[test]
    fn whoever_types_an_end_is_let_in() {
        let answers = Answers::default();
        let mut numbers = vec![Number::Length, Number::A4, Number::Age, Number::Days];
        numbers.extend([Number::MostLoad, Number::MostTension(0)]);
        numbers.extend(Wish::ALL.map(Number::Wish));
        numbers.extend((0..Attribute::ALL.len()).map(Number::Weight));
        for number in numbers {
            for unit in number.units() {
                let range = unit.range(number.bound(&answers));
                let ends = range.strip_suffix(unit.label).unwrap_or(&range);
                for end in ends.split(" to ") {
                    let value = number.read(end, *unit, number.bound(&answers), "It");
                    assert!(matches!(value, Ok(Some(_))), "{} {end}: {value:?}", number.key());
                }
            }
        }
    }

    #[test]
    fn a_typed_number_comes_back_as_it_was() {
        for (number, unit, text) in [
            (Number::Length, "mm", "328.5"),
            (Number::Length, "in", "12.9"),
            (Number::A4, "Hz", "415"),
            (Number::Age, "years", "1.5"),
            (Number::Wish(Wish::Power), "", "-1.25"),
        ] {
            let unit = number.unit(Some(unit));
            let value = read(number, text, unit.label).unwrap().unwrap();
            assert_eq!(unit.typed(value), text);
        }
    }
}
