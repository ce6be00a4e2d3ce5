//! The constants that belong to no material.

use super::{General, Which};
use crate::source::{self, Evidence};

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
    9.0e-5,
    5.0e-5,
    1.8e-4,
    "1",
    "10 % of relative humidity; 0.1 to 0.2 % over 28 % of water, widened for neck, arch and figure",
    Judged,
    source::WOOD_HANDBOOK,
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

/// Time in which the body follows a change of warmth, s.
pub const BODY_WARMING: General = General::new(
    Which::BodyWarming,
    1800.0,
    600.0,
    7200.0,
    "s",
    "plates of 3 mm and a neck of 25 mm in still air, by their heat and what air takes",
    Guessed,
    source::WOOD_HANDBOOK,
);

/// Time in which the body follows a change of damp, s.
pub const BODY_SOAKING: General = General::new(
    Which::BodySoaking,
    2.6e5,
    6.0e4,
    8.6e5,
    "s",
    "varnished outside, bare inside: plates in hours, the neck in a week",
    Judged,
    source::GOLI_2017,
);

/// How much longer water takes into a core under windings.
pub const WINDING_DELAY: General = General::new(
    Which::WindingDelay,
    5.0,
    1.5,
    20.0,
    "1",
    "close windings: water comes in between the turns",
    Judged,
    source::PRACTICE,
);

/// Friction of a plain string over nut, bridge and peg.
pub const FRICTION_PLAIN: General = General::new(
    Which::EdgeFriction,
    0.10,
    0.05,
    0.17,
    "1",
    "plain steel on a saddle, at most 0.17 measured; gut and polymer taken alike",
    Published,
    source::GROVES_KEMP_2019,
);

/// Friction of a wound string over nut, bridge and peg.
pub const FRICTION_WOUND: General = General::new(
    Which::EdgeFriction,
    0.15,
    0.08,
    0.26,
    "1",
    "wound steel on a saddle, at most 0.26 measured; other cores taken alike",
    Published,
    source::GROVES_KEMP_2019,
);

/// Share of what friction holds at nut, bridge and peg that lets go in the days after fitting; the rest waits for hands.
pub const SEATING: General = General::new(
    Which::Seating,
    0.20,
    0.08,
    0.50,
    "1",
    "over the decades of time from a quarter of an hour to ten days",
    Judged,
    source::FOOTE_2003,
);

/// Decades of time over which seating runs, from a quarter of an hour to ten days: a judgement.
pub const SEATING_DECADES: f64 = 3.0;

/// Angle over the nut, degrees: common practice, no source.
pub const NUT_ANGLE: f64 = 12.0;

/// What a knot of gut gives in the days after fitting.
pub const KNOT: General = General::new(
    Which::Knot,
    5.0e-4,
    2.0e-4,
    1.5e-3,
    "m",
    "gut tied at the tailpiece",
    Judged,
    source::PRACTICE,
);

/// Constructional stretch of a single strand, given once, within hours.
pub const CONSTRUCTIONAL_SPIRAL: General = General::new(
    Which::Constructional,
    5.0e-4,
    2.0e-4,
    1.0e-3,
    "1",
    "wires in one lay, first pull: 0.03 to 0.1 %, from memory",
    Guessed,
    source::HANDBOOK,
);

/// Constructional stretch of a rope of strands, given once, within hours.
pub const CONSTRUCTIONAL_ROPE: General = General::new(
    Which::Constructional,
    1.5e-3,
    5.0e-4,
    4.0e-3,
    "1",
    "strands laid into a rope, first pull: 0.125 to 0.5 % as ropes are sold; strings are pulled when wound",
    Guessed,
    source::HANDBOOK,
);

/// Share of a strand's constructional stretch that is left for the days after fitting.
pub const BEDDING: General = General::new(
    Which::Bedding,
    0.20,
    0.08,
    0.40,
    "1",
    "strands and ropes once brought to pitch",
    Judged,
    source::PRACTICE,
);

/// Rise of the creep of polymers and gut for each unit of the share of strength, from [`CREEP_SHARE`] on.
pub const STRESS_CREEP: General = General::new(
    Which::StressCreep,
    1.5,
    0.0,
    3.0,
    "1",
    "oriented fibres; both creep and relaxation rise faster than stress",
    Judged,
    source::BALTUSSEN_2003,
);

/// The share of strength at which the creep of polymers and gut is stated.
pub const CREEP_SHARE: f64 = 0.40;

/// Creep of a bundle of filaments over that of one piece of the same material.
pub const BUNDLE_CREEP: General = General::new(
    Which::BundleCreep,
    0.75,
    0.50,
    1.00,
    "1",
    "stranded nylon strings settle sooner than solid ones; no number printed",
    Judged,
    source::FRENCH_SAVART,
);

/// Relaxation of wire of class 1 after 1000 h at seven tenths of its strength, %, times the 5.39e-5 of the formula.
///
/// The class from memory; the formula as read in a secondary text.
pub const EN_1992_CLASS_1: f64 = 5.39 * 8.0 * 1e-5;

/// Hours in which the relaxation of a class is stated.
pub const EN_1992_HOURS: f64 = 1000.0;

/// How long a string goes untuned in an evening, a week and a season, seconds: common practice, no source.
pub const UNTUNED_S: [f64; 3] = [2.5 * 3600.0, 7.0 * 86_400.0, 90.0 * 86_400.0];

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
    ("body_warming", BODY_WARMING),
    ("body_soaking", BODY_SOAKING),
    ("winding_delay", WINDING_DELAY),
    ("friction_plain", FRICTION_PLAIN),
    ("friction_wound", FRICTION_WOUND),
    ("seating", SEATING),
    ("knot", KNOT),
    ("constructional_spiral", CONSTRUCTIONAL_SPIRAL),
    ("constructional_rope", CONSTRUCTIONAL_ROPE),
    ("bedding_in", BEDDING),
    ("stress_creep", STRESS_CREEP),
    ("bundle_creep", BUNDLE_CREEP),
    ("ratchet", RATCHET),
    ("bridge_resistance", BRIDGE_RESISTANCE),
    ("least_force", LEAST_FORCE),
    ("endurance", ENDURANCE),
    ("friction_drop", FRICTION_DROP),
    ("torsion_q", TORSION_Q),
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
