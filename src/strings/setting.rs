//! Where the string is to work: lengths, pitch, pegs and room.

use crate::body::Skeleton;
use crate::error::{self, Fault};
use crate::quantity::{Celsius, Degree, Hertz, KilogramPerSecond, Metre, Ratio, Second};

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
    /// How far the room swings in each time that the string may go untuned, in the order of [`Untuned::ALL`].
    pub swings: [Swing; 3],
    /// How long it goes untuned.
    pub untuned: Untuned,
}

/// How long a string goes untuned.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Untuned {
    /// From a quiet room to lamps, hands and the breath of an audience.
    Evening,
    /// From one lesson to the next.
    Week,
    /// From winter to summer.
    Season,
}

impl Untuned {
    /// All of them, the shortest first.
    pub const ALL: [Self; 3] = [Self::Evening, Self::Week, Self::Season];
    /// How many there are.
    pub const COUNT: usize = Self::ALL.len();

    /// The key by which requests and replies name it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Evening => "evening",
            Self::Week => "week",
            Self::Season => "season",
        }
    }

    /// The time of that key.
    #[must_use]
    pub fn parse(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|untuned| untuned.key() == key)
    }

    /// How long it lasts.
    #[must_use]
    pub const fn time(self) -> Second {
        Second::new(crate::constant::UNTUNED_S[self as usize])
    }
}

/// How far a room swings: it gets that much warmer and damper, or cooler and drier by as much.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Swing {
    /// Temperature, in kelvins from end to end.
    pub temperature: f64,
    /// Relative humidity, from end to end.
    pub humidity: Ratio,
}

impl Setting {
    /// How far the room swings while the string goes untuned so long.
    #[must_use]
    pub const fn swing(&self, untuned: Untuned) -> Swing {
        self.swings[untuned as usize]
    }

    /// Length from peg to tailpiece.
    #[must_use]
    pub const fn whole_length(&self) -> Metre {
        let (sounding, behind) = (self.sounding_length.get(), self.afterlength.get());
        Metre::new(sounding + behind + self.nut_to_peg.get())
    }

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
        ];
        let mut faults: Vec<Fault> = checks
            .iter()
            .filter_map(|(bound, name, value)| {
                bound.check(&format!("{field}.{name}"), *value).err()
            })
            .collect();
        for (untuned, Swing { temperature, humidity }) in Untuned::ALL.iter().zip(&self.swings) {
            // The swing of the seasons is the room's own.
            let of = match untuned {
                Untuned::Season => String::new(),
                Untuned::Evening | Untuned::Week => format!("{}_", untuned.key()),
            };
            let name = |swing: &str| format!("{field}.{of}{swing}");
            let checks = [
                error::TEMPERATURE_SWING.check(&name("temperature_swing_k"), *temperature),
                error::HUMIDITY_SWING.check(&name("humidity_swing"), humidity.get()),
            ];
            faults.extend(checks.into_iter().filter_map(Result::err));
        }
        if faults.is_empty() { Ok(self) } else { Err(faults) }
    }
}
