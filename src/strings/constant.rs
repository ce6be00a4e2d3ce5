//! A number that enters the model: its value, its range, the condition it holds in, and its source.

use core::ops::Deref;

use crate::source::{self, Evidence, Source};

/// Half the width of a 90 % range in standard deviations of a normal distribution.
pub const DEVIATIONS: f64 = 1.645;

/// A constant with a 90 % range.
///
/// `low` and `high` bound the middle 90 % of belief about the value: a printed scatter where there is one,
/// a stated or judged band otherwise. They need not be symmetric.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Constant {
    /// The central value, SI.
    pub value: f64,
    /// The lower end of the 90 % range.
    pub low: f64,
    /// The upper end of the 90 % range.
    pub high: f64,
    /// The unit of all three.
    pub unit: &'static str,
    /// The condition it holds in.
    pub at: &'static str,
    /// How it is known.
    pub evidence: Evidence,
    /// Where it comes from.
    pub source: Source,
}

impl Constant {
    /// A constant `value` in `[low, high]`.
    #[must_use]
    pub const fn new(
        value: f64,
        low: f64,
        high: f64,
        unit: &'static str,
        at: &'static str,
        evidence: Evidence,
        source: Source,
    ) -> Self {
        Self { value, low, high, unit, at, evidence, source }
    }

    /// The value at `t` of the way through its range: −1 the low end, 0 the central value, 1 the high end.
    ///
    /// By ratio where the whole range is positive, so that a draw beyond it stays positive; elsewhere straight and
    /// held within the range. Each side on its own, so that an uneven range keeps its central value.
    #[must_use]
    pub fn drawn(&self, t: f64) -> f64 {
        let end = if t < 0.0 { self.low } else { self.high };
        if self.low > 0.0 && self.high < f64::INFINITY {
            self.value * libm::pow(end / self.value, t.abs())
        } else {
            self.value + t.abs().min(1.0) * (end - self.value)
        }
    }
}

/// Which of the uncertain numbers is meant: a material's, or one that belongs to no material.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Which {
    /// Density.
    Density,
    /// Modulus of tuning.
    Modulus,
    /// Modulus of sounding.
    FastModulus,
    /// Tensile strength.
    Strength,
    /// Poisson's ratio.
    Poisson,
    /// Loss factor.
    Loss,
    /// Creep a decade.
    Creep,
    /// Thermal expansion.
    Expansion,
    /// Pitch change left from moisture.
    Moisture,
    /// Softening with warmth.
    Softening,
    /// Water taken up.
    Water,
    /// Modulus of shear.
    Shear,
    /// Expansion of the body.
    BodyExpansion,
    /// Movement of the body.
    BodyMovement,
    /// Loss at which brilliance ends.
    BrillianceLoss,
    /// Friction of windings.
    WindingLoss,
    /// Stiffness that windings add.
    WindingStiffening,
    /// How freely filaments slide.
    Bonding,
    /// Days until seated.
    Seating,
    /// Sounding length of the instrument.
    SoundingLength,
    /// Density of air.
    AirDensity,
    /// Viscosity of air.
    AirViscosity,
    /// Loss of a string in its pull.
    StringLoss,
    /// Torsional stiffness of windings.
    WindingTorsion,
    /// True gauge of the core.
    CoreGauge,
    /// True thickness of windings.
    WindingGauge,
    /// Constructional stretch.
    Constructional,
    /// Creep of gut that gets damper.
    Ratchet,
    /// Effect of water before tension follows.
    Transient,
    /// What pegs and knots give.
    SeatDrift,
    /// Resistance of the bridge.
    BridgeResistance,
    /// Least bow force as measured.
    LeastForce,
    /// Endurance of a wire.
    Endurance,
    /// Fall of friction from rest to sliding.
    FrictionDrop,
    /// Q of torsional waves.
    TorsionQ,
    /// Fast modulus beyond the measured stress.
    BeyondMeasured,
}

impl Which {
    /// The key by which tables and replies name it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Density => "density",
            Self::Modulus => "modulus",
            Self::FastModulus => "fast_modulus",
            Self::Strength => "strength",
            Self::Poisson => "poisson",
            Self::Loss => "loss",
            Self::Creep => "creep",
            Self::Expansion => "expansion",
            Self::Moisture => "moisture_left",
            Self::Softening => "softening",
            Self::Water => "water",
            Self::Shear => "shear",
            Self::BodyExpansion => "body_expansion",
            Self::BodyMovement => "body_movement",
            Self::BrillianceLoss => "brilliance_loss",
            Self::WindingLoss => "winding_loss",
            Self::WindingStiffening => "winding_stiffening",
            Self::Bonding => "bonding",
            Self::Seating => "seating",
            Self::SoundingLength => "sounding_length",
            Self::AirDensity => "air_density",
            Self::AirViscosity => "air_viscosity",
            Self::StringLoss => "string_loss",
            Self::WindingTorsion => "winding_torsion",
            Self::CoreGauge => "core_gauge",
            Self::WindingGauge => "winding_gauge",
            Self::Constructional => "constructional",
            Self::Ratchet => "ratchet",
            Self::Transient => "transient",
            Self::SeatDrift => "seat_drift",
            Self::BridgeResistance => "bridge_resistance",
            Self::LeastForce => "least_force",
            Self::Endurance => "endurance",
            Self::FrictionDrop => "friction_drop",
            Self::TorsionQ => "torsion_q",
            Self::BeyondMeasured => "beyond_measured",
        }
    }
}

/// A constant that belongs to no material, bound to the number that a draw takes for it.
///
/// Constants of one `which` move together in a draw.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct General {
    /// Which number of a draw it is.
    pub which: Which,
    /// Its value and range.
    pub constant: Constant,
}

impl General {
    #[expect(clippy::too_many_arguments, reason = "those of a constant, and which number it is")]
    const fn new(
        which: Which,
        value: f64,
        low: f64,
        high: f64,
        unit: &'static str,
        at: &'static str,
        evidence: Evidence,
        source: Source,
    ) -> Self {
        Self { which, constant: Constant::new(value, low, high, unit, at, evidence, source) }
    }
}

impl Deref for General {
    type Target = Constant;

    fn deref(&self) -> &Constant {
        &self.constant
    }
}

use Evidence::{Guessed, Judged, Published};

/// Thermal expansion of the body along the strings.
pub const BODY_EXPANSION: General = General::new(
    Which::BodyExpansion,
    4.0e-6,
    3.0e-6,
    5.0e-6,
    "1/K",
    "spruce and maple along the grain",
    Guessed,
    source::WOOD_HANDBOOK,
);

/// Change of the distance between the string's ends, as a strain, for a swing of [`BODY_MOVEMENT_SWING`].
pub const BODY_MOVEMENT: General = General::new(
    Which::BodyMovement,
    1.0e-4,
    2.0e-5,
    3.0e-4,
    "1",
    "10 % of relative humidity",
    Judged,
    source::PRACTICE,
);

/// The swing of relative humidity for which [`BODY_MOVEMENT`] is stated.
pub const BODY_MOVEMENT_SWING: f64 = 0.10;

/// Bending loss at which a partial no longer adds to a string's brilliance.
pub const BRILLIANCE_LOSS: General = General::new(
    Which::BrillianceLoss,
    2.0e-3,
    1.5e-3,
    2.5e-3,
    "1",
    "plucked string, ten overtones wanted below it",
    Published,
    source::EUPHONICS,
);

/// Loss factor of close windings, on the bending stiffness they would have as solid tubes.
pub const WINDING_LOSS: General = General::new(
    Which::WindingLoss,
    1.1e-3,
    4.0e-4,
    3.3e-3,
    "1",
    "close windings; drawn from damping measured on guitar basses and one cello string",
    Guessed,
    source::WOODHOUSE_2004,
);

/// Share by which windings raise the bending stiffness of their core.
pub const WINDING_STIFFENING: General = General::new(
    Which::WindingStiffening,
    0.15,
    0.0,
    0.30,
    "1",
    "close windings",
    Judged,
    source::FLETCHER_1964,
);

/// How freely the wires or filaments of a core slide when it bends: −1 all free, 1 all bonded.
pub const BONDING: General = General::new(
    Which::Bonding,
    0.0,
    -1.0,
    1.0,
    "1",
    "strands and multifilaments in bending",
    Judged,
    source::COSTELLO_1997,
);

/// How far the fast modulus goes on rising beyond the stress to which it was measured: not at all, up to wholly.
pub const BEYOND_MEASURED: General = General::new(
    Which::BeyondMeasured,
    0.0,
    0.0,
    1.0,
    "1",
    "polyamide under more stress than harp strings bear",
    Judged,
    source::WOODHOUSE_LYNCH_AIRD_2019,
);

/// Density of air.
pub const AIR_DENSITY: General = General::new(
    Which::AirDensity,
    1.20,
    1.15,
    1.25,
    "kg/m³",
    "20 °C",
    Published,
    source::HANDBOOK,
);

/// Kinematic viscosity of air.
pub const AIR_VISCOSITY: General = General::new(
    Which::AirViscosity,
    1.5e-5,
    1.4e-5,
    1.6e-5,
    "m²/s",
    "20 °C",
    Published,
    source::HANDBOOK,
);

/// Loss factor of a string in its own pull, whatever the partial.
pub const STRING_LOSS: General = General::new(
    Which::StringLoss,
    4.0e-4,
    5.0e-5,
    2.0e-3,
    "1",
    "guitar strings, one cello string and one bass string; wound basses measure highest",
    Published,
    source::WOODHOUSE_2004,
);

/// Share of the torsional stiffness of solid tubes that close windings have.
pub const WINDING_TORSION: General = General::new(
    Which::WindingTorsion,
    0.01,
    0.0,
    0.05,
    "1",
    "close windings",
    Guessed,
    source::WOODHOUSE_LOACH_1999,
);

/// What a maker's core gauge is in truth, over what it is called.
pub const CORE_GAUGE: General = General::new(
    Which::CoreGauge,
    1.0,
    0.99,
    1.01,
    "1",
    "a core as sold",
    Judged,
    source::PRACTICE,
);

/// What a maker's winding is in truth, over what it is called.
pub const WINDING_GAUGE: General = General::new(
    Which::WindingGauge,
    1.0,
    0.97,
    1.03,
    "1",
    "ribbon or wire as rolled and wound",
    Judged,
    source::PRACTICE,
);

/// Constructional stretch of a strand, given once, within hours.
pub const CONSTRUCTIONAL: General = General::new(
    Which::Constructional,
    1.0e-3,
    3.0e-4,
    3.0e-3,
    "1",
    "strand or rope, first pull; less than the 1e-3 to 5e-3 of ropes, for strings are pulled when wound",
    Guessed,
    source::HANDBOOK,
);

/// What gut loses for good when it gets damper than ever before.
pub const RATCHET: General = General::new(
    Which::Ratchet,
    8.0,
    2.0,
    30.0,
    "cent",
    "20 % of relative humidity above the highest so far",
    Judged,
    source::LYNCH_AIRD_TWIST,
);

/// The swing of relative humidity for which [`RATCHET`] is stated.
pub const RATCHET_SWING: f64 = 0.20;

/// Share of the effect of water on mass that shows before tension has followed.
pub const TRANSIENT: General = General::new(
    Which::Transient,
    0.3,
    0.1,
    0.6,
    "1",
    "the first hours in another room",
    Judged,
    source::PRACTICE,
);

/// What pegs, knots and bridge give in a change of room.
pub const SEAT_DRIFT: General = General::new(
    Which::SeatDrift,
    2.0,
    0.5,
    6.0,
    "cent",
    "a set that has settled",
    Judged,
    source::PRACTICE,
);

/// What the bridge resists in truth, over what was taken.
pub const BRIDGE_RESISTANCE: General = General::new(
    Which::BridgeResistance,
    1.0,
    0.4,
    2.5,
    "1",
    "between the instrument's strong notes",
    Guessed,
    source::EUPHONICS,
);

/// Least bow force as measured: this times Z₀²/β².
///
/// 0.37 mN/β² on a D string of 0.25 kg/s, at any bow speed; that it goes with Z₀² is Schelleng's.
pub const LEAST_FORCE: General = General::new(
    Which::LeastForce,
    5.9e-3,
    4.5e-3,
    7.5e-3,
    "N·s²/kg²",
    "steel D string on a violin",
    Published,
    source::SCHOONDERWALDT_2008,
);

/// Share of strength that a wire bears in endless bending to and fro.
pub const ENDURANCE: General =
    General::new(Which::Endurance, 0.45, 0.35, 0.50, "1", "music wire", Guessed, source::SHIGLEY);

/// Bow speed at which bow forces are stated, m/s.
pub const BOW_SPEED: f64 = 0.10;

/// Amplitude at mid-string, over the sounding length, at which glide and fatigue are stated: 2 mm on a violin.
pub const AMPLITUDE: f64 = 0.002 / 0.328;

/// Q of torsional waves, whatever the partial.
pub const TORSION_Q: General = General::new(
    Which::TorsionQ,
    30.0,
    17.0,
    57.0,
    "1",
    "steel cello and bass strings, on instruments and monochords",
    Published,
    source::BAVU_2005,
);

/// Speed at which friction has fallen half-way, by the hyperbolic law, m/s.
pub const FRICTION_SPEED: f64 = 0.20;

/// Humidity at which the water of a polymer is stated.
pub const WATER_HUMIDITY: f64 = 0.60;

/// Friction of a rosined bow in fast sliding.
pub const SLIDING_FRICTION: f64 = 0.3;

/// How much friction falls from rest to fast sliding.
pub const FRICTION_DROP: General = General::new(
    Which::FrictionDrop,
    0.60,
    0.45,
    0.72,
    "1",
    "rosined bow on steel; 0.51 to 0.69 in the source at four speeds",
    Published,
    source::SCHOONDERWALDT_2008,
);

/// Bowing place at which the attack is stated, as a share of the sounding length.
pub const BOWING_PLACE: f64 = 0.1;

/// Days until windings and knots have seated: plain wire, wound wire, strand, bundle, gut.
pub const SEATING: [General; 5] = [
    General::new(Which::Seating, 0.1, 0.05, 0.3, "d", "plain wire", Judged, source::PRACTICE),
    General::new(Which::Seating, 0.5, 0.2, 1.0, "d", "wound wire", Judged, source::PRACTICE),
    General::new(Which::Seating, 1.0, 0.5, 2.0, "d", "strand or rope", Judged, source::PRACTICE),
    General::new(
        Which::Seating,
        1.0,
        0.5,
        2.0,
        "d",
        "bundle of filaments or monofilament",
        Judged,
        source::PRACTICE,
    ),
    General::new(Which::Seating, 1.5, 0.5, 3.0, "d", "gut", Judged, source::PRACTICE),
];

/// A string counts as settled when it loses no more than this overnight.
pub const SETTLED_WITHIN: f64 = 5.0;

/// Collagen sorption by Guggenheim, Anderson and de Boer: water of a full layer, and its two constants.
///
/// Fitted to the table of the source for 5 to 95 % humidity at 25 °C; largest error 0.95 points of per cent.
pub const COLLAGEN_GAB: (f64, f64, f64) = (0.1090, 20.15, 0.8235);

/// General constants with their keys, for the published tables.
pub const ALL: &[(&str, General)] = &[
    ("body_expansion", BODY_EXPANSION),
    ("body_movement", BODY_MOVEMENT),
    ("brilliance_loss", BRILLIANCE_LOSS),
    ("winding_loss", WINDING_LOSS),
    ("winding_stiffening", WINDING_STIFFENING),
    ("bonding", BONDING),
    ("beyond_measured", BEYOND_MEASURED),
    ("air_density", AIR_DENSITY),
    ("air_viscosity", AIR_VISCOSITY),
    ("string_loss", STRING_LOSS),
    ("winding_torsion", WINDING_TORSION),
    ("core_gauge", CORE_GAUGE),
    ("winding_gauge", WINDING_GAUGE),
    ("constructional", CONSTRUCTIONAL),
    ("ratchet", RATCHET),
    ("transient", TRANSIENT),
    ("seat_drift", SEAT_DRIFT),
    ("bridge_resistance", BRIDGE_RESISTANCE),
    ("least_force", LEAST_FORCE),
    ("endurance", ENDURANCE),
    ("friction_drop", FRICTION_DROP),
    ("torsion_q", TORSION_Q),
    ("seating_plain_wire", SEATING[0]),
    ("seating_wound_wire", SEATING[1]),
    ("seating_strand", SEATING[2]),
    ("seating_bundle", SEATING[3]),
    ("seating_gut", SEATING[4]),
];

/// Friction of cold rosin, and of rosin as warm as it gets.
///
/// Read off fig. 3 of [`source::WOODHOUSE_2003`], as cited in secondary texts.
pub const ROSIN_COLD: f64 = 1.2;
/// See [`ROSIN_COLD`].
pub const ROSIN_HOT: f64 = 0.35;
/// Warmth above the room over which rosin's friction falls from [`ROSIN_COLD`] to [`ROSIN_HOT`], K.
pub const ROSIN_SOFT: f64 = 40.0;
/// Radius of the contact of hair and string at one newton, m ([`source::WOODHOUSE_2003`]).
pub const CONTACT_RADIUS: f64 = 2.5e-4;
/// Heat that the contact stores for each kelvin and newton, m/K ([`source::VAN_WALSTIJN_2026`], Table 1).
pub const ROSIN_HEAT: f64 = 1.0e-6;
/// Heat that runs off with the surfaces as they slide, √W/(√m K) ([`source::VAN_WALSTIJN_2026`], Table 1).
pub const ROSIN_IN_MOTION: f64 = 0.22;
/// Heat that runs off at rest, m/(s K) ([`source::VAN_WALSTIJN_2026`], Table 1).
pub const ROSIN_AT_REST: f64 = 1.0e-4;

/// Share of a wave that a finger sends back: common practice, no source; from memory that a stopped note rings a tenth as long.
pub const FINGER: f64 = 0.98;
