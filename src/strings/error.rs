//! What a caller can get wrong, and the bounds of every input.
//!
//! A fault names the field, the value and what is allowed, so that the person who typed it can mend it.
//! That no string satisfies a wish is not a fault but an answer: see [`crate::fit`].

use core::fmt;

/// One thing wrong with an input.
#[derive(Clone, Debug, PartialEq)]
pub struct Fault {
    /// The field, as the request names it: `setting.sounding_length_m`.
    pub field: String,
    /// The value as it was given.
    pub value: String,
    /// What is allowed: a range with its unit, or a list of words.
    pub allowed: String,
    /// The range, where one is allowed.
    pub range: Option<Bound>,
}

impl Fault {
    /// A fault in `field`, which held `value` although only `allowed` will do.
    pub fn new(
        field: impl Into<String>,
        value: impl fmt::Display,
        allowed: impl Into<String>,
    ) -> Self {
        let (field, value) = (field.into(), value.to_string());
        Self { field, value, allowed: allowed.into(), range: None }
    }

    /// A fault in `field`, which held `value` although only what lies within `range` will do.
    pub fn outside(field: impl Into<String>, value: impl fmt::Display, range: Bound) -> Self {
        let Bound { what, min, max, unit } = range;
        let allowed = format!("{min} to {max} {unit} ({what})");
        Self { range: Some(range), ..Self::new(field, value, allowed) }
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {} is not allowed; it takes {}", self.field, self.value, self.allowed)
    }
}

impl core::error::Error for Fault {}

/// The range of one numeric input, in SI units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bound {
    /// What it is, in plain words.
    pub what: &'static str,
    /// The smallest value allowed.
    pub min: f64,
    /// The largest value allowed.
    pub max: f64,
    /// The unit of both.
    pub unit: &'static str,
}

impl Bound {
    /// Passes a value inside the bound through; anything else, NaN included, is a fault in `field`.
    ///
    /// # Errors
    /// The value lies outside the bound or is not a number.
    pub fn check(&self, field: &str, value: f64) -> Result<f64, Fault> {
        if value >= self.min && value <= self.max {
            Ok(value)
        } else {
            Err(Fault::outside(field, shown(value), *self))
        }
    }
}

/// A number as a fault shows it: short, however large or small it is.
#[must_use]
pub fn shown(value: f64) -> String {
    let usual = value == 0.0 || (1e-9..1e15).contains(&value.abs());
    if usual { value.to_string() } else { format!("{value:e}") }
}

/// Sounding length of the open string.
pub const SOUNDING_LENGTH: Bound =
    Bound { what: "sounding length", min: 0.15, max: 1.30, unit: "m" };
/// Length between bridge and tailpiece or tailgut loop.
pub const AFTERLENGTH: Bound =
    Bound { what: "length behind the bridge", min: 0.0, max: 0.60, unit: "m" };
/// Length between nut and peg; the longest is that of a bass string over an extension.
pub const NUT_TO_PEG: Bound =
    Bound { what: "length from nut to peg", min: 0.0, max: 0.60, unit: "m" };
/// Pitch of the open string.
pub const PITCH: Bound =
    Bound { what: "pitch of the open string", min: 25.0, max: 1000.0, unit: "Hz" };
/// Pitch standard.
pub const A4: Bound = Bound { what: "pitch of a'", min: 392.0, max: 466.2, unit: "Hz" };
/// Room temperature.
pub const TEMPERATURE: Bound =
    Bound { what: "room temperature", min: -10.0, max: 45.0, unit: "°C" };
/// Relative humidity.
pub const HUMIDITY: Bound = Bound { what: "relative humidity", min: 0.05, max: 0.95, unit: "1" };
/// String wound over the nut, or let back.
pub const PULL: Bound = Bound {
    what: "string wound over the nut, or let back where it is negative",
    min: -0.5,
    max: 0.05,
    unit: "m",
};
/// Peg shaft diameter.
pub const PEG_DIAMETER: Bound =
    Bound { what: "diameter of the peg where the string winds", min: 0.003, max: 0.030, unit: "m" };
/// Turns of the button for one turn of the shaft.
pub const GEAR_RATIO: Bound =
    Bound { what: "turns of the button for one of the shaft", min: 1.0, max: 60.0, unit: "1" };
/// Core diameter.
pub const CORE_DIAMETER: Bound =
    Bound { what: "core diameter", min: 0.00010, max: 0.0060, unit: "m" };
/// Thickness of one winding: wire diameter or ribbon thickness.
pub const WINDING_THICKNESS: Bound =
    Bound { what: "winding thickness", min: 0.00001, max: 0.0015, unit: "m" };
/// How far a winding beds into what lies under it, as a share of its thickness.
pub const BEDDING: Bound = Bound {
    what: "bedding of the winding into the layer under it, as a share of its thickness",
    min: 0.0,
    max: 0.5,
    unit: "1",
};
/// Lay angle of a strand's outer wires.
pub const LAY_ANGLE: Bound =
    Bound { what: "lay angle of the outer wires", min: 0.0, max: 30.0, unit: "°" };
/// Surface twist angle of a multifilament or of gut.
pub const TWIST_ANGLE: Bound =
    Bound { what: "surface twist angle", min: 0.0, max: 60.0, unit: "°" };
/// Share of a multifilament's cross-section filled by filaments.
pub const FILL: Bound = Bound {
    what: "share of the cross-section filled by filaments",
    min: 0.45,
    max: 0.91,
    unit: "1",
};
/// Diameter of one filament.
pub const FILAMENT_DIAMETER: Bound =
    Bound { what: "filament diameter", min: 0.000_008, max: 0.000_300, unit: "m" };
/// Days until it matters.
pub const DAYS: Bound =
    Bound { what: "days until the next performance", min: 0.0, max: 3650.0, unit: "d" };
/// The most that all strings together may pull: from a tiny violin's set to the heaviest bass.
pub const MOST_LOAD: Bound =
    Bound { what: "the most that all strings may pull", min: 40.0, max: 3000.0, unit: "N" };
/// The most that one string may pull.
pub const MOST_TENSION: Bound =
    Bound { what: "the most that one string may pull", min: 5.0, max: 600.0, unit: "N" };
/// A wish on a scale from one end to the other.
pub const WISH: Bound =
    Bound { what: "a wish from one end to the other", min: -2.0, max: 2.0, unit: "1" };
/// How far another tuning lies from the main one.
pub const RETUNING: Bound =
    Bound { what: "another tuning against the main one", min: -12.0, max: 12.0, unit: "semitones" };
/// Age of the strings on the instrument.
pub const AGE_MONTHS: Bound =
    Bound { what: "age of the strings", min: 0.0, max: 600.0, unit: "months" };
/// A weight given by hand.
pub const WEIGHT: Bound = Bound { what: "weight of a wish", min: 0.0, max: 10.0, unit: "1" };
/// Swing of the room's temperature, from end to end.
pub const TEMPERATURE_SWING: Bound =
    Bound { what: "swing of temperature", min: 0.0, max: 30.0, unit: "K" };
/// Swing of the room's relative humidity, from end to end.
pub const HUMIDITY_SWING: Bound =
    Bound { what: "swing of relative humidity", min: 0.0, max: 0.8, unit: "1" };
/// Angle that a string makes over the bridge.
pub const ANGLE_OVER_BRIDGE: Bound =
    Bound { what: "angle over the bridge", min: 120.0, max: 180.0, unit: "°" };
/// Half the range in which a sounding length lies.
pub const LENGTH_DOUBT: Bound =
    Bound { what: "doubt of the sounding length", min: 0.0, max: 0.1, unit: "m" };
/// Height of a string over the fingerboard at the octave.
pub const STRING_HEIGHT: Bound = Bound {
    what: "height of the string over the fingerboard at the octave",
    min: 0.0,
    max: 0.03,
    unit: "m",
};
/// Radius of the nut's edge.
pub const NUT_RADIUS: Bound = Bound {
    what: "radius of the edge over which the string bends",
    min: 0.0005,
    max: 0.03,
    unit: "m",
};
/// Resistance of the bridge.
pub const RESISTANCE: Bound =
    Bound { what: "resistance of the bridge", min: 1.0, max: 5000.0, unit: "kg/s" };
/// Gap between turns, as a share of the wire's diameter or the ribbon's width.
pub const GAP: Bound =
    Bound { what: "gap between turns, as a share of the wire", min: 0.0, max: 1.0, unit: "1" };
