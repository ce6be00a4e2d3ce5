//! How is a number written: in which unit, with how many digits, with which range?
//!
//! Digits follow the uncertainty: a number is written to the second (in plain words the first) significant digit of
//! half its range. The model counts in SI units; here they become those of the workshop.

use protocol::reply::Quantity;
use strings::quantity::{Metre, Newton};

use crate::preferences::{self, Force, Length, Warmth};
use crate::words::say;

/// A space at which a line does not break, between a number and its unit.
pub const SPACE: char = '\u{a0}';
/// A narrow one, between thousands.
const THIN: char = '\u{202f}';
/// What stands for a number that is none.
#[must_use]
pub fn not_known() -> &'static str {
    say!("not-known")
}

/// How a property is shown: by which factor its SI value is multiplied, and in which unit it then stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    /// Shown value over SI value.
    pub factor: f64,
    /// The unit, with the space before it where one belongs.
    pub unit: &'static str,
    /// Digits after the point for a value that has no range.
    pub exact: i32,
}

const fn scale_of(factor: f64, unit: &'static str, exact: i32) -> Scale {
    Scale { factor, unit, exact }
}

/// The scale of a property of a report, by the name it has there.
#[must_use]
pub fn scale(property: &str) -> Scale {
    match property {
        "mass_unstretched_kg_m" | "mass_at_pitch_kg_m" => scale_of(1e3, "g/m", 3),
        "tension_n" | "downforce_n" => match preferences::now().force {
            Force::Newton => scale_of(1.0, "N", 1),
            Force::Kilogram => scale_of(Newton::new(1.0).kilograms_force(), say!("unit-kg"), 2),
            Force::Pound => scale_of(Newton::new(1.0).pounds_force(), say!("unit-lb"), 2),
        },
        "core_stress_pa" => scale_of(1e-6, "MPa", 0),
        "breaking_share" | "winding_mass_share" => scale_of(1e2, "%", 0),
        "stretch" => scale_of(1e2, "%", 2),
        "breaking_pitch_hz" => scale_of(1.0, "Hz", 0),
        "pull_cent_m" => scale_of(1e-3, say!("unit-cents-mm"), 0),
        "peg_cent_deg" => scale_of(1.0, say!("unit-cents-degree"), 1),
        "lateral_stiffness_n_m" => scale_of(1e-3, "N/mm", 2),
        "impedance_kg_s" => scale_of(1e3, "g/s", 0),
        "axial_stiffness_n" => scale_of(1e-3, "kN", 1),
        "bending_stiffness_n_m2" => scale_of(1e6, "N·mm²", 1),
        "inharmonicity" => scale_of(1e6, say!("unit-millionths"), 0),
        "outer_diameter_m" | "outer_diameter_at_pitch_m" => match preferences::now().length {
            Length::Millimetre => scale_of(1e3, "mm", 3),
            Length::Inch => scale_of(Metre::new(1.0).inches(), say!("unit-inch"), 4),
        },
        "brilliance_hz" => scale_of(1e-3, "kHz", 1),
        "attack_m_s2_n" | "gentlest_attack_m_s2_n" => scale_of(1.0, say!("unit-start"), 1),
        "bow_force_greatest_n"
        | "bow_force_greatest_falling_n"
        | "bow_force_least_n"
        | "bow_force_least_measured_n" => scale_of(1.0, "N", 3),
        "bow_window_db" => scale_of(1.0, "dB", 0),
        "wolf" | "over_the_nut" | "over_the_peg" | "fatigue" => scale_of(1e2, "%", 0),
        "loss_first" => scale_of(1e3, say!("unit-thousandths"), 2),
        "speaks_s" => scale_of(1.0, "s", 3),
        "bow_room_db" => scale_of(1.0, "dB", 1),
        "sharpness_acum" => scale_of(1.0, "acum", 2),
        "ring_s" | "rings_on_s" => scale_of(1.0, "s", 1),
        "torsion_speed_m_s" => scale_of(1.0, "m/s", 0),
        "torsion_ratio" | "torsion_impedance_ratio" => scale_of(1.0, say!("unit-times"), 2),
        "torsion_q" => scale_of(1.0, say!("unit-swings"), 0),
        "loss_cent_decade" => scale_of(1.0, say!("cents"), 1),
        "settling_d" => scale_of(1.0, say!("unit-days"), 1),
        key if key.ends_with("_cent") => scale_of(1.0, say!("cents"), 0),
        _ => scale_of(1.0, "", 3),
    }
}

/// Digits after the point at which the last of so many significant digits of `half` stands; negative left of the point.
///
/// None if `half` is no positive number: then it says nothing about digits.
#[must_use]
pub fn decimals(half: f64, figures: i32) -> Option<i32> {
    if half.is_finite() && half > 0.0 {
        // The exponent of a double fits easily.
        let exponent = libm::floor(libm::log10(half)) as i32;
        // Rounding up can make one digit more: 0.096 to two digits is 0.096, but 0.0996 is 0.10.
        let places = figures - 1 - exponent;
        let step = libm::pow(10.0, f64::from(places));
        let grown = libm::round(half * step) >= libm::pow(10.0, f64::from(figures));
        Some((places - i32::from(grown)).clamp(-9, 9))
    } else {
        None
    }
}

/// What stands between whole units and their parts.
#[must_use]
pub fn point() -> &'static str {
    say!("decimal-point")
}

/// A number with so many digits after the point; thousands are set apart from five digits on.
#[must_use]
pub fn fixed(value: f64, places: i32) -> String {
    if !value.is_finite() {
        return not_known().to_owned();
    }
    let text = if places < 0 {
        let step = libm::pow(10.0, f64::from(-places));
        format!("{:.0}", libm::round(value / step) * step)
    } else {
        format!("{:.*}", usize::try_from(places).unwrap_or(0), value)
    };
    let (sign, digits) = text.strip_prefix('-').map_or(("", text.as_str()), |rest| ("−", rest));
    let (whole, rest) = digits.split_once('.').map_or((digits, None), |(w, r)| (w, Some(r)));
    let mut out = String::new();
    if digits.chars().any(|c| ('1'..='9').contains(&c)) {
        out.push_str(sign);
    }
    for (i, c) in whole.chars().enumerate() {
        if whole.len() > 4 && i > 0 && (whole.len() - i).is_multiple_of(3) {
            out.push(THIN);
        }
        out.push(c);
    }
    if let Some(rest) = rest {
        out.push_str(point());
        out.push_str(rest);
    }
    out
}

/// A number and its unit.
#[must_use]
pub fn with_unit(number: &str, unit: &str) -> String {
    match unit {
        "" => number.to_owned(),
        _ if number == "1" && unit == say!("unit-days") => say!("days-safe").to_owned(),
        _ if number == "1" && unit == say!("cents") => say!("cents-one").to_owned(),
        _ => format!("{number}{SPACE}{unit}"),
    }
}

/// A number ready to be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Written {
    /// The value, without its unit.
    pub value: String,
    /// Lower end of the range.
    pub low: String,
    /// Upper end of the range.
    pub high: String,
    /// The unit.
    pub unit: &'static str,
    /// It has no range.
    pub exact: bool,
}

impl Written {
    /// The value with its unit.
    #[must_use]
    pub fn plain(&self) -> String {
        with_unit(&self.value, self.unit)
    }

    /// The value with its unit, and its range.
    #[must_use]
    pub fn within(&self) -> String {
        if self.exact {
            self.plain()
        } else {
            say!("value-within", value = self.plain(), range = self.range())
        }
    }

    /// From where to where, without the unit; the value itself if it has no range.
    #[must_use]
    pub fn range(&self) -> String {
        if self.exact || self.low == self.high {
            self.value.clone()
        } else {
            say!("range-of", low = &self.low, high = &self.high)
        }
    }
}

/// Writes a property of a report to so many significant digits of half its range.
#[must_use]
pub fn written(property: &str, q: &Quantity, figures: i32) -> Written {
    let Scale { factor, unit, exact } = scale(property);
    write(q.value * factor, (q.low * factor, q.high * factor), unit, exact, figures)
}

/// Writes a property for plain words: as it is written wherever two are compared, and never finer than its range. Where
/// that is wide, it stands beside the value.
#[must_use]
pub fn plainly(property: &str, q: &Quantity) -> String {
    let unit = scale(property).unit;
    plainly_as(property, q, &|number| with_unit(number, unit))
}

/// The same with its unit put to the number in another way.
#[must_use]
pub fn plainly_as(property: &str, q: &Quantity, unit: &dyn Fn(&str) -> String) -> String {
    let Scale { factor, exact, .. } = scale(property);
    let (value, low, high) = (q.value * factor, q.low * factor, q.high * factor);
    if !(value.is_finite() && low.is_finite() && high.is_finite()) {
        return not_known().to_owned();
    }
    let one = |x: f64, places: i32| {
        if x.abs() < 1e-12 { "0".to_owned() } else { fixed(x, places.max(0)) }
    };
    if is_wide(q) {
        let places = decimals((high - low) / 2.0, 1).unwrap_or(exact).max(0);
        let end = |x: f64| one(x, not_nought(x, places));
        let range = say!("range-of", low = end(low), high = end(high));
        return say!("value-about", value = unit(&end(value)), range = range);
    }
    unit(&one(value, plain_places((value, low, high), exact)))
}

/// Digits after the point of a value in plain words: two of it, and never finer than its range.
fn plain_places((value, low, high): (f64, f64, f64), exact: i32) -> i32 {
    let of_value = decimals(value.abs(), 2).unwrap_or(exact);
    decimals((high - low) / 2.0, 2).map_or(of_value, |p| p.min(of_value))
}

/// The size of a value in plain words, without its range, which stands beside it.
#[must_use]
pub fn size_alone(property: &str, q: &Quantity) -> String {
    let Scale { factor, unit, exact } = scale(property);
    let (value, low, high) = (q.value * factor, q.low * factor, q.high * factor);
    let places = plain_places((value, low, high), exact).max(0);
    with_unit(&fixed(value.abs(), places), unit)
}

/// Whether its range is over a factor of three, or has both signs.
#[must_use]
pub fn is_wide(q: &Quantity) -> bool {
    let (one, other) = (q.low.abs(), q.high.abs());
    q.low * q.high < 0.0 || one.max(other) > 3.0 * one.min(other)
}

/// Digits after the point for the low end of a range: as many as for its high end, and enough that it is no nought.
///
/// Over a range of a hundredfold the digits of the high end would make nothing of the low one.
#[must_use]
pub fn not_nought(low: f64, places: i32) -> i32 {
    decimals(low.abs(), 1).map_or(places, |own| own.max(places))
}

/// Writes a value with its range.
#[must_use]
pub fn write(
    value: f64,
    range: (f64, f64),
    unit: &'static str,
    exact: i32,
    figures: i32,
) -> Written {
    let half = (range.1 - range.0) / 2.0;
    let places = decimals(half, figures);
    let at = places.unwrap_or(exact);
    // Nought is nought however finely it is measured.
    let one = |x: f64, at: i32| if x.abs() < 1e-12 { "0".to_owned() } else { fixed(x, at) };
    let whole = value.is_finite() && range.0.is_finite() && range.1.is_finite();
    if !whole {
        let none = not_known().to_owned();
        return Written {
            value: none.clone(),
            low: none.clone(),
            high: none,
            unit: "",
            exact: true,
        };
    }
    Written {
        value: one(value, at),
        low: one(range.0, not_nought(range.0, at)),
        high: one(range.1, at),
        unit,
        exact: places.is_none(),
    }
}

/// A value of a property without its range, to so many significant digits of itself.
#[must_use]
pub fn bare(property: &str, value: f64, figures: i32) -> String {
    let Scale { factor, unit, .. } = scale(property);
    with_unit(&significant(value * factor, figures), unit)
}

/// A number to so many significant digits of itself.
#[must_use]
pub fn significant(value: f64, figures: i32) -> String {
    match decimals(value.abs(), figures) {
        // Digits left of the point are all written: 229, not 230.
        Some(places) => fixed(value, places.max(0)),
        None if value.is_finite() => "0".to_owned(),
        None => not_known().to_owned(),
    }
}

/// Two values of one property, with the digits that tell them apart.
#[must_use]
pub fn pair(property: &str, one: f64, other: f64) -> (String, String) {
    let Scale { factor, unit, .. } = scale(property);
    let (one, other) = (one * factor, other * factor);
    let smaller = one.abs().min(other.abs());
    let figures = if (one - other).abs() < 0.1 * smaller { 3 } else { 2 };
    (with_unit(&significant(one, figures), unit), with_unit(&significant(other, figures), unit))
}

/// A length in millimetres and in thousandths of an inch.
#[must_use]
pub fn gauge(metres: f64) -> String {
    let length = Metre::new(metres);
    let mm = with_unit(&fixed(length.mm(), if length.mm() < 1.0 { 3 } else { 2 }), "mm");
    let inch = with_unit(&fixed(length.inches() * 1000.0, 0), say!("unit-thousandths"));
    match preferences::now().length {
        Length::Millimetre => say!("gauge-mm", mm = mm, inch = inch),
        Length::Inch => say!("gauge-inch", mm = mm, inch = inch),
    }
}

/// A length, to so many digits after the point in millimetres.
#[must_use]
pub fn mm(metres: f64, places: i32) -> String {
    let length = Metre::new(metres);
    match preferences::now().length {
        Length::Millimetre => with_unit(&fixed(length.mm(), places), "mm"),
        // An inch is a little more than one digit.
        Length::Inch => with_unit(&fixed(length.inches(), places + 1), say!("unit-inch")),
    }
}

/// A range of lengths, to so many digits after the point in millimetres: `0.62 to 0.83 mm`.
#[must_use]
pub fn mm_range(low: f64, high: f64, places: i32) -> String {
    let range = |low: f64, high: f64, places: i32, unit: &str| {
        let (low, high) = (fixed(low, places), fixed(high, places));
        with_unit(&say!("range-of", low = low, high = high), unit)
    };
    let (low, high) = (Metre::new(low), Metre::new(high));
    match preferences::now().length {
        Length::Millimetre => range(low.mm(), high.mm(), places, "mm"),
        Length::Inch => range(low.inches(), high.inches(), places + 2, say!("unit-inch")),
    }
}

/// A range of forces without other units: `50 to 62 N`.
#[must_use]
pub fn force_range(low: f64, high: f64) -> String {
    let Scale { factor, unit, .. } = scale("tension_n");
    let places = i32::from(preferences::now().force != Force::Newton);
    let (low, high) = (fixed(low * factor, places), fixed(high * factor, places));
    with_unit(&say!("range-of", low = low, high = high), unit)
}

/// A force alone: `62 N`.
#[must_use]
pub fn one_force(newtons: f64) -> String {
    let Scale { factor, unit, .. } = scale("tension_n");
    with_unit(&fixed(newtons * factor, i32::from(preferences::now().force != Force::Newton)), unit)
}

/// A temperature.
#[must_use]
pub fn warmth(celsius: f64) -> String {
    match preferences::now().warmth {
        Warmth::Celsius => with_unit(&fixed(celsius, 0), "°C"),
        Warmth::Fahrenheit => with_unit(&fixed(celsius * 1.8 + 32.0, 0), "°F"),
    }
}

/// A difference of temperatures.
#[must_use]
pub fn warmer(kelvin: f64) -> String {
    match preferences::now().warmth {
        Warmth::Celsius => with_unit(&fixed(kelvin, 0), "K"),
        Warmth::Fahrenheit => with_unit(&fixed(kelvin * 1.8, 0), "°F"),
    }
}

/// A force in newtons, in kilograms and in pounds as packets print them.
#[must_use]
pub fn force(newtons: f64) -> String {
    let force = Newton::new(newtons);
    three(
        with_unit(&fixed(force.get(), 0), "N"),
        with_unit(&fixed(force.kilograms_force(), 1), say!("unit-kg")),
        with_unit(&fixed(force.pounds_force(), 1), say!("unit-lb")),
    )
}

/// A range of forces in newtons, in kilograms and in pounds as packets print them.
#[must_use]
pub fn forces((low, high): (f64, f64)) -> String {
    let (low, high) = (Newton::new(low), Newton::new(high));
    let span = |of: fn(Newton) -> f64, places: i32, unit: &str| {
        let (a, b) = (fixed(of(low), places), fixed(of(high), places));
        with_unit(&if a == b { a } else { say!("range-of", low = a, high = b) }, unit)
    };
    three(
        span(Newton::get, 0, "N"),
        span(Newton::kilograms_force, 1, say!("unit-kg")),
        span(Newton::pounds_force, 1, say!("unit-lb")),
    )
}

/// A force in three units, the person's own first.
fn three(newtons: String, kilograms: String, pounds: String) -> String {
    let (own, one, other) = match preferences::now().force {
        Force::Newton => (newtons, kilograms, pounds),
        Force::Kilogram => (kilograms, newtons, pounds),
        Force::Pound => (pounds, newtons, kilograms),
    };
    say!("force", own = own, one = one, other = other)
}

/// A pitch.
#[must_use]
pub fn hertz(pitch: f64) -> String {
    let whole = (pitch - libm::round(pitch)).abs() < 0.05;
    with_unit(&fixed(pitch, i32::from(!whole)), "Hz")
}

/// Days as one says them.
#[must_use]
pub fn days(days: f64) -> String {
    if !days.is_finite() {
        not_known().to_owned()
    } else if days < 0.75 {
        say!("days-less").to_owned()
    } else if days < 1.5 {
        say!("days-one").to_owned()
    } else {
        with_unit(&fixed(days, 0), say!("unit-days"))
    }
}

/// A size in cents as one says it.
#[must_use]
pub fn cents(cents: f64) -> String {
    if !cents.is_finite() {
        not_known().to_owned()
    } else if cents < 1.0 {
        say!("cents-less").to_owned()
    } else {
        with_unit(&fixed(cents, 0), say!("cents"))
    }
}

/// Whole days that are surely enough.
#[must_use]
pub fn days_to_be_safe(days: f64) -> String {
    if !days.is_finite() {
        return not_known().to_owned();
    }
    let whole = libm::ceil(days).max(1.0);
    if whole < 1.5 {
        say!("days-safe").to_owned()
    } else {
        with_unit(&fixed(whole, 0), say!("unit-days"))
    }
}

/// A share as so many of a hundred.
#[must_use]
pub fn of_hundred(share: f64) -> String {
    fixed(share * 100.0, 0)
}
