//! A string and where it works.

use strings::construction::MOST_WINDINGS;

use crate::allowed;
use crate::wire::wire;

wire! {
    /// What a string is made of.
    pub closed struct Construction {
        /// The core.
        pub core: Core,
        /// None to three windings, innermost first.
        #[schemars(length(max = MOST_WINDINGS))]
        pub windings: Vec<Winding> = Vec::<Winding>::new(),
    }

    /// A core.
    #[schemars(extend("allOf" = allowed::builds()))]
    pub closed struct Core {
        /// `gut`, `spring-steel`, `stainless-steel`, `polyamide`, `polyester`, `high-modulus-polymer`, `aramid`.
        pub material: String,
        /// `solid`, `strand`, `multifilament` or `twisted` (gut).
        pub build: String,
        /// Outer diameter of the core, unstretched, 0.0001 to 0.006 m.
        pub diameter_m: f64,
        /// Strand: `1x7`, `1x19` or `7x7`.
        #[serde(skip_serializing_if = "Option::is_none")]
        pub layout: Option<String>,
        /// Strand: lay angle of the outer wires, 0 to 30 degrees.
        #[serde(skip_serializing_if = "Option::is_none")]
        pub lay_deg: Option<f64>,
        /// Multifilament: diameter of one filament, 0.000008 to 0.0003 m.
        #[serde(skip_serializing_if = "Option::is_none")]
        pub filament_m: Option<f64>,
        /// Multifilament: share of the circle that filaments fill, 0.45 to 0.91.
        #[serde(skip_serializing_if = "Option::is_none")]
        pub fill: Option<f64>,
        /// Multifilament and gut: surface twist angle, 0 to 60 degrees.
        #[serde(skip_serializing_if = "Option::is_none")]
        pub twist_deg: Option<f64>,
    }

    /// One close winding.
    pub closed struct Winding {
        /// `aluminium`, `titanium`, `chrome-steel`, `nickel`, `copper`, `silver`, `tungsten`, `gold`.
        pub metal: String,
        /// `round` wire or `flat` ribbon.
        pub form: String,
        /// Diameter of the wire or thickness of the ribbon, 0.00001 to 0.0015 m.
        pub thickness_m: f64,
        /// How far it sinks into what lies under it, as a share of its thickness, 0 to 0.5.
        pub bedding: f64 = 0.0,
        /// Gap between turns, as a share of the wire's diameter or the ribbon's width, 0 to 1.
        pub gap: f64 = 0.0,
    }

    /// Where a string works. Only sounding length and pitch must be given; the rest has a violin's usual values.
    pub closed struct Setting {
        /// Sounding length, 0.15 to 1.3 m.
        pub sounding_length_m: f64,
        /// Pitch of the open string, 25 to 1000 Hz.
        pub pitch_hz: f64,
        /// Half the range in which the sounding length lies; 0 if left out.
        pub sounding_length_doubt_m: f64 = 0.0,
        /// Length behind the bridge; a sixth of the sounding length if left out.
        pub afterlength_m: Option<f64> = None::<f64>,
        /// Length from nut to peg; 0.05 m if left out.
        pub nut_to_peg_m: f64 = 0.05,
        /// Angle over the bridge; 158 degrees if left out.
        pub angle_over_bridge_deg: f64 = 158.0,
        /// Diameter of the peg where the string winds; 0.007 m if left out.
        pub peg_diameter_m: f64 = 0.007,
        /// Turns of the button for one of the shaft; 1 if left out.
        pub gear_ratio: f64 = 1.0,
        /// Height of the string over the fingerboard at the octave; 0.004 m if left out.
        pub string_height_m: f64 = 0.004,
        /// Radius of the edge over which the string bends at the nut; 0.002 m if left out.
        pub nut_radius_m: f64 = 0.002,
        /// Resistance of the bridge between strong notes; 30 kg/s if left out.
        pub bridge_resistance_kg_s: f64 = 30.0,
        /// Resistance of the bridge at the strongest note; 10 kg/s if left out.
        pub peak_resistance_kg_s: f64 = 10.0,
        /// Whose body stands under the bridge, generic: `violin`, `viola`, `cello`, `double-bass`; a violin's if left out.
        pub body: String = "violin".to_owned(),
        /// Temperature of the room; 20 °C if left out.
        pub temperature_c: f64 = 20.0,
        /// Relative humidity of the room, 0.05 to 0.95; 0.5 if left out.
        pub humidity: f64 = 0.5,
        /// How far the temperature swings over the seasons; 6 K if left out.
        pub temperature_swing_k: f64 = 6.0,
        /// How far the relative humidity swings over the seasons; 0.25 if left out.
        pub humidity_swing: f64 = 0.25,
        /// How far the temperature swings in a week; 5 K if left out.
        pub week_temperature_swing_k: f64 = 5.0,
        /// How far the relative humidity swings in a week; 0.12 if left out.
        pub week_humidity_swing: f64 = 0.12,
        /// How far the temperature rises in an evening of playing; 4 K if left out.
        pub evening_temperature_swing_k: f64 = 4.0,
        /// How far the relative humidity rises in an evening of playing; 0.08 if left out.
        pub evening_humidity_swing: f64 = 0.08,
        /// How long the string goes untuned: `evening`, `week`, `season`; an evening if left out.
        pub untuned: String = "evening".to_owned(),
    }
}

impl Setting {
    /// A setting of that length and pitch, everything else as it is when left out.
    #[must_use]
    pub fn of(sounding_length_m: f64, pitch_hz: f64) -> Self {
        Self { sounding_length_m, pitch_hz, ..Self::default() }
    }
}
