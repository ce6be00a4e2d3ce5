//! The names of the answers, and how a typed text becomes a number.
//!
//! A text that cannot be read is a fault in words, never a guess: the person sees what they typed and what would do.

use protocol::request::{AlsoTuned, Answers, StringAnswer};
use strings::error::{self, Bound};
use strings::fit::desirability::Attribute;
use strings::instrument::{Kind, VIOLIN};

use crate::letters;
use crate::units;
use crate::words::{say, speech};

/// The name that a field of a request's answers has on the page.
#[must_use]
pub fn on_page(field: &str) -> String {
    let field = field.strip_prefix("answers.").unwrap_or(field);
    let field = field.replace('[', ".").replace(']', "");
    // A list of boxes has one place for its faults.
    match field.split_once("bothers.") {
        Some((before, _)) => format!("{before}bothers"),
        None => field,
    }
}

/// An answer that is one word of a list.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Word {
    /// What the person wants to know.
    Aim,
    /// Which instrument.
    Instrument,
    /// Which size.
    Size,
    /// How it is tuned.
    Tuning,
    /// Equal temperament or pure fifths.
    Temperament,
    /// How it is set up.
    SetUp,
    /// What is on it now.
    Now,
    /// What is played.
    Music,
    /// How far along the player is.
    Level,
    /// What turns the strings.
    Pegs,
    /// Fine tuners.
    Tuners,
    /// Who tunes between lessons.
    WhoTunes,
    /// Where it lives.
    Room,
    /// What it may cost.
    Budget,
}

impl Word {
    /// Every one.
    pub const ALL: [Self; 14] = [
        Self::Aim,
        Self::Instrument,
        Self::Size,
        Self::Tuning,
        Self::Temperament,
        Self::SetUp,
        Self::Now,
        Self::Music,
        Self::Level,
        Self::Pegs,
        Self::Tuners,
        Self::WhoTunes,
        Self::Room,
        Self::Budget,
    ];

    /// Its name in a request.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Aim => "aim",
            Self::Instrument => "instrument",
            Self::Size => "size",
            Self::Tuning => "tuning",
            Self::Temperament => "temperament",
            Self::SetUp => "set_up",
            Self::Now => "now",
            Self::Music => "music",
            Self::Level => "level",
            Self::Pegs => "pegs",
            Self::Tuners => "tuners",
            Self::WhoTunes => "who_tunes",
            Self::Room => "room",
            Self::Budget => "budget",
        }
    }

    /// What was answered.
    #[must_use]
    pub fn of(self, answers: &Answers) -> Option<&str> {
        match self {
            Self::Aim => &answers.aim,
            Self::Instrument => &answers.instrument,
            Self::Size => &answers.size,
            Self::Tuning => &answers.tuning,
            Self::Temperament => &answers.temperament,
            Self::SetUp => &answers.set_up,
            Self::Now => &answers.now,
            Self::Music => &answers.music,
            Self::Level => &answers.level,
            Self::Pegs => &answers.pegs,
            Self::Tuners => &answers.tuners,
            Self::WhoTunes => &answers.who_tunes,
            Self::Room => &answers.room,
            Self::Budget => &answers.budget,
        }
        .as_deref()
    }

    /// Answers it.
    pub fn set(self, answers: &mut Answers, word: Option<String>) {
        *match self {
            Self::Aim => &mut answers.aim,
            Self::Instrument => &mut answers.instrument,
            Self::Size => &mut answers.size,
            Self::Tuning => &mut answers.tuning,
            Self::Temperament => &mut answers.temperament,
            Self::SetUp => &mut answers.set_up,
            Self::Now => &mut answers.now,
            Self::Music => &mut answers.music,
            Self::Level => &mut answers.level,
            Self::Pegs => &mut answers.pegs,
            Self::Tuners => &mut answers.tuners,
            Self::WhoTunes => &mut answers.who_tunes,
            Self::Room => &mut answers.room,
            Self::Budget => &mut answers.budget,
        } = word;
    }
}

/// An answer that is yes, or not.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Flag {
    /// Skin that cannot bear nickel.
    NickelAllergy,
    /// Sweat that eats metal.
    AcidSweat,
    /// Nothing from animals.
    AnimalFree,
    /// A magnetic pickup.
    MagneticPickup,
    /// The hand hurts.
    HandPain,
    /// A plain gut top string in spite of its breaking.
    GutToItsLimit,
    /// The set must have settled by the next performance.
    MustSettle,
}

impl Flag {
    /// Every one.
    pub const ALL: [Self; 7] = [
        Self::NickelAllergy,
        Self::AcidSweat,
        Self::AnimalFree,
        Self::MagneticPickup,
        Self::HandPain,
        Self::GutToItsLimit,
        Self::MustSettle,
    ];

    /// Its name in a request.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::NickelAllergy => "nickel_allergy",
            Self::AcidSweat => "acid_sweat",
            Self::AnimalFree => "animal_free",
            Self::MagneticPickup => "magnetic_pickup",
            Self::HandPain => "hand_pain",
            Self::GutToItsLimit => "gut_to_its_limit",
            Self::MustSettle => "must_settle",
        }
    }

    /// What was answered.
    #[must_use]
    pub const fn of(self, answers: &Answers) -> bool {
        match self {
            Self::NickelAllergy => answers.nickel_allergy,
            Self::AcidSweat => answers.acid_sweat,
            Self::AnimalFree => answers.animal_free,
            Self::MagneticPickup => answers.magnetic_pickup,
            Self::HandPain => answers.hand_pain,
            Self::GutToItsLimit => answers.gut_to_its_limit,
            Self::MustSettle => answers.must_settle,
        }
    }

    /// Answers it.
    pub const fn set(self, answers: &mut Answers, yes: bool) {
        *match self {
            Self::NickelAllergy => &mut answers.nickel_allergy,
            Self::AcidSweat => &mut answers.acid_sweat,
            Self::AnimalFree => &mut answers.animal_free,
            Self::MagneticPickup => &mut answers.magnetic_pickup,
            Self::HandPain => &mut answers.hand_pain,
            Self::GutToItsLimit => &mut answers.gut_to_its_limit,
            Self::MustSettle => &mut answers.must_settle,
        } = yes;
    }
}

/// A wish between two opposites.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Wish {
    /// Steady or colour.
    Colour,
    /// Dark or bright.
    Brightness,
    /// Gentle or powerful.
    Power,
    /// Soft or firm under the hand.
    Feel,
    /// Broad or quick to speak.
    Response,
}

impl Wish {
    /// Every one, in the order in which they are asked.
    pub const ALL: [Self; 5] =
        [Self::Colour, Self::Brightness, Self::Power, Self::Feel, Self::Response];
}

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
    /// Age of one string, 0 the highest.
    AgeOf(usize),
    /// A wish.
    Wish(Wish),
    /// A weight, by its place among the attributes.
    Weight(usize),
}

/// A unit in which a number can be typed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unit {
    /// The name under which it is chosen and kept, whatever the language.
    pub label: &'static str,
    /// One of it in the unit of the request is `times / over`: two factors, so that both are exact in binary or whole.
    times: f64,
    over: f64,
    /// Decimals that are worth showing.
    decimals: usize,
    /// Other ways in which people write it.
    also: &'static [&'static str],
}

const fn unit(label: &'static str, decimals: usize, also: &'static [&'static str]) -> Unit {
    Unit { label, times: 1.0, over: 1.0, decimals, also }
}

const LENGTH: &[Unit] = &[
    Unit { over: 1000.0, ..unit("mm", 1, &["millimetres"]) },
    Unit { times: 0.0254, ..unit("in", 2, &["inches", "inch", "\"", "″"]) },
];
const AGE: &[Unit] =
    &[unit("months", 1, &["month"]), Unit { times: 12.0, ..unit("years", 1, &["year"]) }];
const PITCH: &[Unit] = &[unit("Hz", 1, &["hz", "Hertz", "hertz"])];
const SEMITONES: &[Unit] = &[unit("semitones", 1, &["semitone"])];
const DAYS: &[Unit] = &[unit("days", 0, &["day", "d"])];
const PURE: &[Unit] = &[unit("", 2, &[])];

impl Unit {
    /// What stands beside the number.
    #[must_use]
    pub fn shown(self) -> &'static str {
        if self.label.is_empty() { "" } else { speech::of_or_key("unit-typed", self.label) }
    }

    fn to_si(self, value: f64) -> f64 {
        value * self.times / self.over
    }

    fn of_si(self, value: f64) -> f64 {
        value * self.over / self.times
    }

    /// A number of the request as one would type it.
    #[must_use]
    pub fn typed(self, si: f64) -> String {
        plain(self.of_si(si), self.decimals)
    }

    /// The bounds as one would say them: rounded inwards, so that whoever types an end is let in.
    fn range(self, bound: Bound) -> String {
        // Tens to so few decimals are exact.
        let scale: f64 = (0..self.decimals).map(|_| 10.0).product();
        // What the factors leave behind the last digit must not push a whole number to the next.
        let (low, high) = (self.of_si(bound.min) * scale, self.of_si(bound.max) * scale);
        let (low, high) = ((low - 1e-6).ceil() / scale, (high + 1e-6).floor() / scale);
        let (low, high) = (plain(low, self.decimals), plain(high, self.decimals));
        let range = say!("range-of", low = low, high = high);
        format!("{range} {}", self.shown()).trim_end().to_owned()
    }
}

/// A number with at most so many decimals, and none that say nothing.
fn plain(value: f64, decimals: usize) -> String {
    let text = format!("{value:.decimals$}");
    let short =
        if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    if short == "-0" { "0".to_owned() } else { short.replace('.', units::point()) }
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
            Self::AgeOf(i) => format!("strings.{i}.today.age_months"),
            Self::Wish(wish) => format!("wishes.{}", wish_key(wish)),
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
            Self::Length => length_bound(kind(answers)),
            Self::A4 | Self::AlsoA4 => error::A4,
            Self::AlsoSemitones => error::RETUNING,
            Self::Age | Self::AgeOf(_) => error::AGE_MONTHS,
            Self::Days => error::DAYS,
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
            Self::AgeOf(i) => answers.strings.get(i)?.today.age_months,
            Self::Wish(wish) => {
                let wishes = &answers.wishes;
                let value = match wish {
                    Wish::Colour => wishes.colour,
                    Wish::Brightness => wishes.brightness,
                    Wish::Power => wishes.power,
                    Wish::Feel => wishes.feel,
                    Wish::Response => wishes.response,
                };
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
            Self::AgeOf(i) => of_string(answers, i, |string| string.today.age_months = value),
            Self::Wish(wish) => {
                let wishes = &mut answers.wishes;
                *match wish {
                    Wish::Colour => &mut wishes.colour,
                    Wish::Brightness => &mut wishes.brightness,
                    Wish::Power => &mut wishes.power,
                    Wish::Feel => &mut wishes.feel,
                    Wish::Response => &mut wishes.response,
                } = value.unwrap_or(0.0);
            }
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

/// Changes what is said of a string, 0 the highest; the list ends with the last string of which something is said.
pub fn of_string(answers: &mut Answers, i: usize, change: impl FnOnce(&mut StringAnswer)) {
    let strings = &mut answers.strings;
    if strings.len() <= i {
        strings.resize(i + 1, StringAnswer::default());
    }
    change(&mut strings[i]);
    while strings.last().is_some_and(|string| *string == StringAnswer::default()) {
        strings.pop();
    }
}

/// The name of a wish.
#[must_use]
pub const fn wish_key(wish: Wish) -> &'static str {
    match wish {
        Wish::Colour => "colour",
        Wish::Brightness => "brightness",
        Wish::Power => "power",
        Wish::Feel => "feel",
        Wish::Response => "response",
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

/// The instrument that was answered, or the one that is taken without an answer.
#[must_use]
pub fn kind(answers: &Answers) -> &'static Kind {
    answers.instrument.as_deref().and_then(Kind::of).unwrap_or(&VIOLIN)
}

/// How many strings the tuning has.
#[must_use]
pub fn string_count(answers: &Answers) -> usize {
    tuned(answers).len()
}

/// The notes of the tuning, highest first.
#[must_use]
pub fn tuned(answers: &Answers) -> Vec<&'static str> {
    let kind = kind(answers);
    let tuning = answers.tuning.as_deref().and_then(|key| kind.tuning(key));
    let tuning = tuning.or(kind.tunings.first());
    tuning.map_or_else(Vec::new, |t| t.strings.iter().map(|(note, _)| *note).collect())
}

/// Sounding lengths of an instrument of that kind: its smallest and largest size, and a tenth beyond, as the model
/// has it. A test holds the two together.
fn length_bound(kind: &Kind) -> Bound {
    let ends = kind.sizes.iter().fold((f64::INFINITY, 0.0_f64), |(low, high), size| {
        (low.min(size.length_mm.1), high.max(size.length_mm.2))
    });
    Bound {
        min: (ends.0 * 0.9).floor() / 1000.0,
        max: (ends.1 * 1.1).ceil() / 1000.0,
        ..error::SOUNDING_LENGTH
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use protocol::reply::Reply;
    use protocol::request::{FitRequest, Request};

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

    #[test]
    fn an_answer_is_where_it_was_put() {
        let mut answers = Answers::default();
        for word in Word::ALL {
            assert_eq!(word.of(&answers), None);
            word.set(&mut answers, Some(word.key().to_owned()));
        }
        for flag in Flag::ALL {
            assert!(!flag.of(&answers));
            flag.set(&mut answers, true);
        }
        let numbers = [
            Number::Length,
            Number::A4,
            Number::Age,
            Number::Days,
            Number::AlsoA4,
            Number::AlsoSemitones,
            Number::AgeOf(2),
            Number::Weight(3),
        ];
        for number in numbers.into_iter().chain(Wish::ALL.map(Number::Wish)) {
            assert_eq!(number.of(&answers), None);
            number.set(&mut answers, Some(1.5));
        }
        // Each stands in the request under its own name, and nothing is left that has no question.
        let written = serde_json::to_value(&answers).unwrap();
        for word in Word::ALL {
            assert_eq!(written[word.key()], word.key());
        }
        for flag in Flag::ALL {
            assert_eq!(written[flag.key()], true);
        }
        for number in numbers.into_iter().chain(Wish::ALL.map(Number::Wish)) {
            let pointer = format!("/{}", number.key().replace('.', "/"));
            assert_eq!(written.pointer(&pointer), Some(&1.5.into()), "{pointer}");
        }
        assert_eq!(written.as_object().map(|o| o.len()), Some(14 + 7 + 4 + 4), "{written}");
    }

    #[test]
    fn the_model_has_the_same_bounds_of_length() {
        let refuses = |instrument: &str, length: f64| {
            let answers = Answers {
                instrument: Some(instrument.to_owned()),
                sounding_length_m: Some(length),
                ..Answers::default()
            };
            let reply = protocol::handle(&Request::Fit(Box::new(FitRequest { answers })));
            matches!(reply, Reply::Refused(_))
        };
        for kind in strings::instrument::ALL {
            let bound = length_bound(kind);
            assert!(refuses(kind.key, bound.min - 0.0001), "{}", kind.key);
            assert!(refuses(kind.key, bound.max + 0.0001), "{}", kind.key);
            assert!(!refuses(kind.key, bound.min), "{}", kind.key);
            assert!(!refuses(kind.key, bound.max), "{}", kind.key);
        }
    }
}
