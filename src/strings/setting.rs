//! Where the string is to work: lengths, pitch, pegs and room.

use crate::body::Skeleton;
use crate::error::{self, Fault};
use crate::quantity::{Celsius, Degree, Hertz, KilogramPerSecond, Metre, Ratio};

/// A string's place on an instrument in a room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Setting {
    /// Sounding length of the open string.
    pub sounding_length: Metre,
    /// Half the range in which the sounding length lies; zero when measured.
    pub sounding_length_doubt: Metre,
    /// Length behind the bridge.
    pub afterlength: Metre,
    /// Length from nut to peg.
    pub nut_to_peg: Metre,
    /// Pitch of the open string.
    pub pitch: Hertz,
    /// Angle that the string makes over the bridge.
    pub angle_over_bridge: Degree,
    /// Diameter of the peg where the string winds.
    pub peg_diameter: Metre,
    /// Turns of the button for one of the shaft.
    pub gear_ratio: Ratio,
    /// Height of the string over the fingerboard at the octave.
    pub string_height: Metre,
    /// Radius of the edge over which the string bends at the nut.
    pub nut_radius: Metre,
    /// Resistance of the bridge between strong notes.
    pub bridge_resistance: KilogramPerSecond,
    /// Resistance of the bridge at the strongest note.
    pub peak_resistance: KilogramPerSecond,
    /// Whose body stands under the bridge: generic.
    pub body: &'static Skeleton,
    /// Temperature of the room.
    pub temperature: Celsius,
    /// Relative humidity of the room.
    pub humidity: Ratio,
    /// How far the temperature swings, in kelvins from end to end.
    pub temperature_swing: f64,
    /// How far the relative humidity swings, from end to end.
    pub humidity_swing: Ratio,
}

impl Setting {
    /// Checks every member against its bound.
    ///
    /// # Errors
    /// One fault a member outside its bound, its name behind `field`.
    pub fn checked(self, field: &str) -> Result<Self, Vec<Fault>> {
        let checks = [
            (error::SOUNDING_LENGTH, "sounding_length_m", self.sounding_length.get()),
            (error::LENGTH_DOUBT, "sounding_length_doubt_m", self.sounding_length_doubt.get()),
            (error::AFTERLENGTH, "afterlength_m", self.afterlength.get()),
            (error::NUT_TO_PEG, "nut_to_peg_m", self.nut_to_peg.get()),
            (error::PITCH, "pitch_hz", self.pitch.get()),
            (error::ANGLE_OVER_BRIDGE, "angle_over_bridge_deg", self.angle_over_bridge.get()),
            (error::PEG_DIAMETER, "peg_diameter_m", self.peg_diameter.get()),
            (error::GEAR_RATIO, "gear_ratio", self.gear_ratio.get()),
            (error::STRING_HEIGHT, "string_height_m", self.string_height.get()),
            (error::NUT_RADIUS, "nut_radius_m", self.nut_radius.get()),
            (error::RESISTANCE, "bridge_resistance_kg_s", self.bridge_resistance.get()),
            (error::RESISTANCE, "peak_resistance_kg_s", self.peak_resistance.get()),
            (error::TEMPERATURE, "temperature_c", self.temperature.get()),
            (error::HUMIDITY, "humidity", self.humidity.get()),
            (error::TEMPERATURE_SWING, "temperature_swing_k", self.temperature_swing),
            (error::HUMIDITY_SWING, "humidity_swing", self.humidity_swing.get()),
        ];
        let faults: Vec<Fault> = checks
            .iter()
            .filter_map(|(bound, name, value)| {
                bound.check(&format!("{field}.{name}"), *value).err()
            })
            .collect();
        if faults.is_empty() { Ok(self) } else { Err(faults) }
    }
}
