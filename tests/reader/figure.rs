//! A printed figure, and whether it is a value rounded to the digits that are printed.

/// Newtons in a kilogram's weight: the standard acceleration of free fall, by definition (CGPM 1901).
pub(crate) const KILOGRAM_N: f64 = 9.806_65;
/// Newtons in a pound's weight: 0.453 592 37 kg by definition (international yard and pound agreement 1959).
pub(crate) const POUND_N: f64 = 0.453_592_37 * KILOGRAM_N;
/// Metres in a thousandth of an inch: 25.4 mm to the inch by definition (same agreement).
pub(crate) const THOU_M: f64 = 25.4e-6;

/// A number as it is printed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Figure {
    /// Its value.
    value: f64,
    /// Digits after the point.
    places: i32,
    /// Noughts at the end of a whole number: they may be digits, or stand for what was rounded away.
    noughts: i32,
}

impl Figure {
    /// Reads a number: digits, perhaps a point or a German comma, perhaps a sign.
    pub(crate) fn read(text: &str) -> Option<Self> {
        let text = text.replace('−', "-").replace(',', ".");
        let places = text.split_once('.').map_or(0, |(_, after)| after.len());
        let noughts = if places > 0 { 0 } else { text.len() - text.trim_end_matches('0').len() };
        Some(Self {
            value: text.parse().ok()?,
            places: i32::try_from(places).ok()?,
            noughts: i32::try_from(noughts).ok()?,
        })
    }

    /// Whether a value, rounded to the printed digits, is this figure. Halves may go either way.
    pub(crate) fn is(&self, value: f64) -> bool {
        self.is_to(value, power_of_ten(-self.places))
    }

    /// The same for a value whose half range is known: noughts at the end may then stand for digits that say nothing,
    /// as long as two digits of the half range are left.
    pub(crate) fn is_of(&self, value: f64, half: f64) -> bool {
        self.is(value)
            || (1..=self.noughts)
                .map(power_of_ten)
                .any(|step| 9.9 * step <= half && self.is_to(value, step))
    }

    /// Whether a value, rounded to this step, is this figure.
    pub(crate) fn is_to(&self, value: f64, step: f64) -> bool {
        (self.value - value).abs() <= 0.5 * step * (1.0 + 1e-7) + 1e-12
    }

    /// The value that is printed.
    pub(crate) fn printed(&self) -> f64 {
        self.value
    }
}

fn power_of_ten(exponent: i32) -> f64 {
    let ten: f64 = if exponent < 0 { 0.1 } else { 10.0 };
    (0..exponent.abs()).fold(1.0, |product, _| product * ten)
}

#[test]
fn a_figure_is_a_value_rounded_to_its_digits() {
    let is = |text: &str, value: f64| Figure::read(text).unwrap().is(value);
    assert!(is("4.7", 4.65) && is("4.7", 4.7499) && !is("4.7", 4.751) && !is("4.7", 4.6));
    assert!(is("0.260", 0.2604) && !is("0.260", 0.2606) && is("−3", -3.2) && is("0", 0.4));
    let of = |text: &str, value: f64, half: f64| Figure::read(text).unwrap().is_of(value, half);
    assert!(
        of("1200", 1234.0, 1500.0) && !of("1200", 1234.0, 200.0) && !of("1250", 1234.0, 1500.0)
    );
}
