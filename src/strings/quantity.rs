//! Quantities: one type a dimension, over one SI number, so that a signature says what it takes.
//!
//! Own newtypes rather than a units package: the model needs some twenty dimensions and no algebra of
//! units between them, the compiler's messages name the trade's quantity, and the inside of a formula
//! stays plain `f64` in the paper's letters. Inch, pound and kilogram-force exist here and on the screen only.

use core::fmt;

macro_rules! quantities {
    ($($(#[$doc:meta])* $name:ident $unit:literal;)*) => {$(
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            /// The unit in which the number inside is counted.
            pub const UNIT: &'static str = $unit;

            /// Wraps a number already in this unit.
            #[must_use]
            pub const fn new(value: f64) -> Self {
                Self(value)
            }

            /// The number, in this type's unit; for use in the body of a formula.
            #[must_use]
            pub const fn get(self) -> f64 {
                self.0
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, "{} {}", self.0, $unit)
            }
        }
    )*};
}

quantities! {
    /// A length in metres.
    Metre "m";
    /// An area in square metres.
    SquareMetre "m²";
    /// A mass in kilograms.
    Kilogram "kg";
    /// A mass per length in kilograms a metre.
    KilogramPerMetre "kg/m";
    /// A density in kilograms a cubic metre.
    KilogramPerCubicMetre "kg/m³";
    /// A force in newtons.
    Newton "N";
    /// A stress or a modulus in pascals.
    Pascal "Pa";
    /// A bending stiffness in newton square metres.
    NewtonSquareMetre "N·m²";
    /// A lateral stiffness in newtons a metre.
    NewtonPerMetre "N/m";
    /// A frequency in hertz.
    Hertz "Hz";
    /// A wave impedance in kilograms a second.
    KilogramPerSecond "kg/s";
    /// A musical interval in cents: a difference, never a pitch.
    Cent "cent";
    /// A pitch change for a pull along the string, in cents a metre.
    CentPerMetre "cent/m";
    /// A pitch change for a turn of the peg, in cents a degree.
    CentPerDegree "cent/°";
    /// An angle in degrees.
    Degree "°";
    /// A temperature in degrees Celsius.
    Celsius "°C";
    /// A number without dimension: a share, a strain, a ratio.
    Ratio "1";
    /// A time in days.
    Day "d";
    /// A time in seconds.
    Second "s";
}

impl Metre {
    /// A length given in millimetres.
    #[must_use]
    pub const fn from_mm(mm: f64) -> Self {
        Self(mm * 1e-3)
    }

    /// The length in millimetres.
    #[must_use]
    pub const fn mm(self) -> f64 {
        self.0 * 1e3
    }

    /// The length in inches; one inch is exactly 25.4 mm (international yard and pound agreement, 1959).
    #[must_use]
    pub const fn inches(self) -> f64 {
        self.0 / 0.0254
    }
}

impl Newton {
    /// The force in kilograms-force; exactly 9.806 65 N each (standard gravity, CGPM 1901).
    #[must_use]
    pub const fn kilograms_force(self) -> f64 {
        self.0 / 9.806_65
    }

    /// The force in pounds-force: 0.453 592 37 kg (exact, 1959) under standard gravity.
    #[must_use]
    pub const fn pounds_force(self) -> f64 {
        self.0 / (9.806_65 * 0.453_592_37)
    }
}
