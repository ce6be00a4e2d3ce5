//! What can be asked.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use strings::construction::MOST_WINDINGS;
use strings::error;

pub use crate::bowed::{BowMapRequest, Player, SoundRequest};
use crate::convert::MOST_TUNINGS;
pub use crate::lesson::{PlaceRequest, StretchRequest, YearRequest};
use crate::parse::WORD_CHARS;
use crate::schema;

/// A question to the model.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "ask", rename_all = "kebab-case")]
pub enum Request {
    /// Everything about one string in one setting.
    Report(Box<ReportRequest>),
    /// Two strings at one place, and whether they differ noticeably.
    Compare(Box<CompareRequest>),
    /// Strings at pitch, of which more is wound over the nut, or let back.
    Stretch(Box<StretchRequest>),
    /// How strings wander through a year in their room.
    Year(Box<YearRequest>),
    /// The most usual string of every family that is made for one place of an instrument.
    Place(Box<PlaceRequest>),
    /// A set of strings for a person and an instrument.
    Fit(Box<FitRequest>),
    /// How sure the choice is that a fit of these answers makes, and what would turn it.
    Certainty(Box<FitRequest>),
    /// The tables: instruments, materials, precedents, words, bounds, sources.
    Tables(TablesRequest),
    /// Where a string speaks under the bow, row by row.
    BowMap(Box<BowMapRequest>),
    /// What one would hear of strings, on a generic body of their family.
    Sound(Box<SoundRequest>),
}

/// Everything about one string in one setting.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ReportRequest {
    /// What the string is made of.
    pub construction: Construction,
    /// Where it works.
    pub setting: Setting,
}

/// Two strings at one place.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct CompareRequest {
    /// One string.
    pub this: Construction,
    /// The other.
    pub other: Construction,
    /// Where both work.
    pub setting: Setting,
}

/// A set of strings for a person and an instrument.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FitRequest {
    /// What the person says; every answer may be missing.
    pub answers: Answers,
}

/// The tables need no more.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct TablesRequest {}

/// What a string is made of.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Construction {
    /// The core.
    pub core: Core,
    /// None to three windings, innermost first.
    #[serde(default)]
    #[schemars(length(max = MOST_WINDINGS))]
    pub windings: Vec<Winding>,
}

/// A core.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
#[schemars(extend("allOf" = schema::builds()))]
pub struct Core {
    /// `gut`, `spring-steel`, `stainless-steel`, `polyamide`, `polyester`, `high-modulus-polymer`, `aramid`.
    #[schemars(extend("enum" = schema::words("core_material")))]
    pub material: String,
    /// `solid`, `strand`, `multifilament` or `twisted` (gut).
    #[schemars(extend("enum" = schema::words("build")))]
    pub build: String,
    /// Outer diameter of the core, unstretched, 0.0001 to 0.006 m.
    #[schemars(range(min = error::CORE_DIAMETER.min, max = error::CORE_DIAMETER.max))]
    pub diameter_m: f64,
    /// Strand: `1x7`, `1x19` or `7x7`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("layout")))]
    pub layout: Option<String>,
    /// Strand: lay angle of the outer wires, 0 to 30 degrees.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = error::LAY_ANGLE.min, max = error::LAY_ANGLE.max))]
    pub lay_deg: Option<f64>,
    /// Multifilament: diameter of one filament, 0.000008 to 0.0003 m.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = error::FILAMENT_DIAMETER.min, max = error::FILAMENT_DIAMETER.max))]
    pub filament_m: Option<f64>,
    /// Multifilament: share of the circle that filaments fill, 0.45 to 0.91.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = error::FILL.min, max = error::FILL.max))]
    pub fill: Option<f64>,
    /// Multifilament and gut: surface twist angle, 0 to 60 degrees.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = error::TWIST_ANGLE.min, max = error::TWIST_ANGLE.max))]
    pub twist_deg: Option<f64>,
}

/// One close winding.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Winding {
    /// `aluminium`, `titanium`, `chrome-steel`, `nickel`, `copper`, `silver`, `tungsten`, `gold`.
    #[schemars(extend("enum" = schema::words("metal")))]
    pub metal: String,
    /// `round` wire or `flat` ribbon.
    #[schemars(extend("enum" = schema::words("form")))]
    pub form: String,
    /// Diameter of the wire or thickness of the ribbon, 0.00001 to 0.0015 m.
    #[schemars(range(min = error::WINDING_THICKNESS.min, max = error::WINDING_THICKNESS.max))]
    pub thickness_m: f64,
    /// How far it sinks into what lies under it, as a share of its thickness, 0 to 0.5.
    #[serde(default)]
    #[schemars(range(min = error::BEDDING.min, max = error::BEDDING.max))]
    pub bedding: f64,
    /// Gap between turns, as a share of the wire's diameter or the ribbon's width, 0 to 1.
    #[serde(default)]
    #[schemars(range(min = error::GAP.min, max = error::GAP.max))]
    pub gap: f64,
}

/// Where a string works. Only sounding length and pitch must be given; the rest has a violin's usual values.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Setting {
    /// Sounding length, 0.15 to 1.3 m.
    #[schemars(range(min = error::SOUNDING_LENGTH.min, max = error::SOUNDING_LENGTH.max))]
    pub sounding_length_m: f64,
    /// Pitch of the open string, 25 to 1000 Hz.
    #[schemars(range(min = error::PITCH.min, max = error::PITCH.max))]
    pub pitch_hz: f64,
    /// Half the range in which the sounding length lies; 0 if left out.
    #[serde(default)]
    #[schemars(range(min = error::LENGTH_DOUBT.min, max = error::LENGTH_DOUBT.max))]
    pub sounding_length_doubt_m: f64,
    /// Length behind the bridge; a sixth of the sounding length if left out.
    #[serde(default)]
    #[schemars(range(min = error::AFTERLENGTH.min, max = error::AFTERLENGTH.max))]
    pub afterlength_m: Option<f64>,
    /// Length from nut to peg; 0.05 m if left out.
    #[serde(default = "nut_to_peg")]
    #[schemars(range(min = error::NUT_TO_PEG.min, max = error::NUT_TO_PEG.max))]
    pub nut_to_peg_m: f64,
    /// Angle over the bridge; 158 degrees if left out.
    #[serde(default = "angle")]
    #[schemars(range(min = error::ANGLE_OVER_BRIDGE.min, max = error::ANGLE_OVER_BRIDGE.max))]
    pub angle_over_bridge_deg: f64,
    /// Diameter of the peg where the string winds; 0.007 m if left out.
    #[serde(default = "peg")]
    #[schemars(range(min = error::PEG_DIAMETER.min, max = error::PEG_DIAMETER.max))]
    pub peg_diameter_m: f64,
    /// Turns of the button for one of the shaft; 1 if left out.
    #[serde(default = "one")]
    #[schemars(range(min = error::GEAR_RATIO.min, max = error::GEAR_RATIO.max))]
    pub gear_ratio: f64,
    /// Height of the string over the fingerboard at the octave; 0.004 m if left out.
    #[serde(default = "string_height")]
    #[schemars(range(min = error::STRING_HEIGHT.min, max = error::STRING_HEIGHT.max))]
    pub string_height_m: f64,
    /// Radius of the edge over which the string bends at the nut; 0.002 m if left out.
    #[serde(default = "nut_radius")]
    #[schemars(range(min = error::NUT_RADIUS.min, max = error::NUT_RADIUS.max))]
    pub nut_radius_m: f64,
    /// Resistance of the bridge between strong notes; 30 kg/s if left out.
    #[serde(default = "bridge_resistance")]
    #[schemars(range(min = error::RESISTANCE.min, max = error::RESISTANCE.max))]
    pub bridge_resistance_kg_s: f64,
    /// Resistance of the bridge at the strongest note; 10 kg/s if left out.
    #[serde(default = "peak_resistance")]
    #[schemars(range(min = error::RESISTANCE.min, max = error::RESISTANCE.max))]
    pub peak_resistance_kg_s: f64,
    /// Whose body stands under the bridge, generic: `violin`, `viola`, `cello`, `double-bass`; a violin's if left out.
    #[serde(default = "body")]
    #[schemars(extend("enum" = schema::words("body")))]
    pub body: String,
    /// Temperature of the room; 20 °C if left out.
    #[serde(default = "temperature")]
    #[schemars(range(min = error::TEMPERATURE.min, max = error::TEMPERATURE.max))]
    pub temperature_c: f64,
    /// Relative humidity of the room, 0.05 to 0.95; 0.5 if left out.
    #[serde(default = "humidity")]
    #[schemars(range(min = error::HUMIDITY.min, max = error::HUMIDITY.max))]
    pub humidity: f64,
    /// How far the temperature swings; 6 K if left out.
    #[serde(default = "temperature_swing")]
    #[schemars(range(min = error::TEMPERATURE_SWING.min, max = error::TEMPERATURE_SWING.max))]
    pub temperature_swing_k: f64,
    /// How far the relative humidity swings; 0.25 if left out.
    #[serde(default = "humidity_swing")]
    #[schemars(range(min = error::HUMIDITY_SWING.min, max = error::HUMIDITY_SWING.max))]
    pub humidity_swing: f64,
}

impl Setting {
    /// A setting of that length and pitch, everything else as it is when left out.
    #[must_use]
    pub fn of(sounding_length_m: f64, pitch_hz: f64) -> Self {
        Self {
            sounding_length_m,
            pitch_hz,
            sounding_length_doubt_m: 0.0,
            afterlength_m: None,
            nut_to_peg_m: nut_to_peg(),
            angle_over_bridge_deg: angle(),
            peg_diameter_m: peg(),
            gear_ratio: one(),
            string_height_m: string_height(),
            nut_radius_m: nut_radius(),
            bridge_resistance_kg_s: bridge_resistance(),
            peak_resistance_kg_s: peak_resistance(),
            body: body(),
            temperature_c: temperature(),
            humidity: humidity(),
            temperature_swing_k: temperature_swing(),
            humidity_swing: humidity_swing(),
        }
    }
}

fn nut_to_peg() -> f64 {
    0.05
}
fn angle() -> f64 {
    158.0
}
fn peg() -> f64 {
    0.007
}
fn one() -> f64 {
    1.0
}
fn string_height() -> f64 {
    0.004
}
fn nut_radius() -> f64 {
    0.002
}
fn bridge_resistance() -> f64 {
    30.0
}
fn peak_resistance() -> f64 {
    10.0
}
fn body() -> String {
    "violin".to_owned()
}
fn temperature() -> f64 {
    20.0
}
fn humidity() -> f64 {
    0.5
}
fn temperature_swing() -> f64 {
    6.0
}
fn humidity_swing() -> f64 {
    0.25
}

/// What a person says. Every answer may be missing, which widens the range and never blocks.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Answers {
    /// `one-string`, `whole-set` or `is-it-time`; `whole-set` if left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("aim")))]
    pub aim: Option<String>,
    /// `violin`, `viola`, `cello`, `double-bass`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("instrument")))]
    pub instrument: Option<String>,
    /// A size of that instrument, as the tables list them: `4/4`, `15 in`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(length(max = WORD_CHARS))]
    pub size: Option<String>,
    /// Sounding length, if measured, 0.15 to 1.3 m.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = error::SOUNDING_LENGTH.min, max = error::SOUNDING_LENGTH.max))]
    pub sounding_length_m: Option<f64>,
    /// A tuning of that instrument, as the tables list them.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(length(max = WORD_CHARS))]
    pub tuning: Option<String>,
    /// Pitch of a′, 392 to 466.2 Hz.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = error::A4.min, max = error::A4.max))]
    pub a4_hz: Option<f64>,
    /// Other pitches at which the same strings are used.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(length(max = MOST_TUNINGS))]
    pub also_tuned: Vec<AlsoTuned>,
    /// `equal` or `pure-fifths`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("temperament")))]
    pub temperament: Option<String>,
    /// Per string, highest first.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(length(max = schema::most_strings()))]
    pub strings: Vec<StringAnswer>,
    /// `modern`, `historical` or `light` (modern in shape, but old, light or valuable).
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("set_up")))]
    pub set_up: Option<String>,
    /// What is on it now: `gut`, `synthetic`, `steel`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("now")))]
    pub now: Option<String>,
    /// How old that is, 0 to 600 months.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = error::AGE_MONTHS.min, max = error::AGE_MONTHS.max))]
    pub age_months: Option<f64>,
    /// What bothers: `too-bright`, `thin`, `too-dull`, `too-quiet`, `slow-to-speak`, `chokes`, `whistles`, `wolf`,
    /// `out-of-tune`, `goes-flat`, `breaks`, `breaks-at-the-peg`, `false`, `hard-on-the-hand`, `uneven`.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(extend("items" = schema::word("bothers"), "maxItems" = schema::words("bothers").len(), "uniqueItems" = true))]
    pub bothers: Vec<String>,
    /// What is wished.
    #[serde(skip_serializing_if = "Wishes::is_none")]
    pub wishes: Wishes,
    /// `classical`, `early`, `folk`, `jazz`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("music")))]
    pub music: Option<String>,
    /// `beginner`, `student`, `advanced`, `professional`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("level")))]
    pub level: Option<String>,
    /// `friction`, `geared`, `machine`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("pegs")))]
    pub pegs: Option<String>,
    /// Fine tuners: `none`, `top`, `all`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("tuners")))]
    pub tuners: Option<String>,
    /// Who tunes between lessons: `player`, `adult`, `nobody`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("who_tunes")))]
    pub who_tunes: Option<String>,
    /// Where it lives: `steady`, `seasonal`, `damp`, `dry`, `travelling`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("room")))]
    pub room: Option<String>,
    /// Days until it matters, 0 to 3650.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = error::DAYS.min, max = error::DAYS.max))]
    pub concert_days: Option<f64>,
    /// The set must have settled by then: a chance under 20 % excludes, one under 80 % warns.
    #[serde(skip_serializing_if = "is_false")]
    pub must_settle: bool,
    /// `modest`, `middle`, `any`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("budget")))]
    pub budget: Option<String>,
    /// Skin that cannot bear nickel.
    #[serde(skip_serializing_if = "is_false")]
    pub nickel_allergy: bool,
    /// Sweat that eats metal.
    #[serde(skip_serializing_if = "is_false")]
    pub acid_sweat: bool,
    /// Nothing from animals.
    #[serde(skip_serializing_if = "is_false")]
    pub animal_free: bool,
    /// A magnetic pickup.
    #[serde(skip_serializing_if = "is_false")]
    pub magnetic_pickup: bool,
    /// The hand hurts.
    #[serde(skip_serializing_if = "is_false")]
    pub hand_pain: bool,
    /// A plain gut top string in spite of its breaking.
    #[serde(skip_serializing_if = "is_false")]
    pub gut_to_its_limit: bool,
    /// Weights set by hand, by attribute, 0 to 10; the others follow from the answers.
    #[serde(skip_serializing_if = "std::collections::BTreeMap::is_empty")]
    #[schemars(extend("propertyNames" = schema::word("attribute"), "additionalProperties" = schema::number(error::WEIGHT)))]
    pub weights: std::collections::BTreeMap<String, f64>,
}

fn is_false(value: &bool) -> bool {
    !value
}

/// What a person says of one string.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct StringAnswer {
    /// Tuned to another note than the tuning says: `E4`, `F#1`, `Bb3`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(length(max = WORD_CHARS))]
    pub note: Option<String>,
    /// Must be of this family: `plain-gut`, `wound-gut`, `plain-steel`, `wound-steel`, `stranded-steel`,
    /// `synthetic`, `monofilament`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("family")))]
    pub family: Option<String>,
    /// What is there now.
    #[serde(skip_serializing_if = "Today::is_unknown")]
    pub today: Today,
    /// What bothers about this string alone, in the words of the whole set's `bothers`.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schemars(extend("items" = schema::word("bothers"), "maxItems" = schema::words("bothers").len(), "uniqueItems" = true))]
    pub bothers: Vec<String>,
    /// It stays as it is; its family must be known, from `today` or from the whole set's `now`.
    #[serde(skip_serializing_if = "is_false")]
    pub keep: bool,
}

/// What is known of the string that is there now.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Today {
    /// Its family, by the words of `strings[i].family`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("family")))]
    pub family: Option<String>,
    /// `light`, `medium` or `heavy`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("gauge_class")))]
    pub gauge_class: Option<String>,
    /// The metal under the fingers, by the words of a winding's `metal`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("enum" = schema::answers("metal")))]
    pub outer_metal: Option<String>,
    /// How old it is, 0 to 600 months; as the whole set if left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = error::AGE_MONTHS.min, max = error::AGE_MONTHS.max))]
    pub age_months: Option<f64>,
}

impl Today {
    fn is_unknown(&self) -> bool {
        *self == Self::default()
    }
}

/// Another pitch at which the same strings are used.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct AlsoTuned {
    /// Pitch of a′ there, 392 to 466.2 Hz; the main one if left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = error::A4.min, max = error::A4.max))]
    pub a4_hz: Option<f64>,
    /// How far above the main tuning, −12 to 12 semitones; 0 if left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = error::RETUNING.min, max = error::RETUNING.max))]
    pub semitones: Option<f64>,
}

/// Five opposites, each from −2 to 2; 0 is "like now".
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Wishes {
    /// −2 steady, 2 colour.
    #[schemars(range(min = error::WISH.min, max = error::WISH.max))]
    pub colour: f64,
    /// −2 dark, 2 bright.
    #[schemars(range(min = error::WISH.min, max = error::WISH.max))]
    pub brightness: f64,
    /// −2 gentle, 2 powerful.
    #[schemars(range(min = error::WISH.min, max = error::WISH.max))]
    pub power: f64,
    /// −2 soft under the hand, 2 firm.
    #[schemars(range(min = error::WISH.min, max = error::WISH.max))]
    pub feel: f64,
    /// −2 broad, 2 quick to speak.
    #[schemars(range(min = error::WISH.min, max = error::WISH.max))]
    pub response: f64,
}

impl Wishes {
    fn is_none(&self) -> bool {
        *self == Self::default()
    }
}
