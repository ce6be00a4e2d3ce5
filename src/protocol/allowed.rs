//! What each member of a request takes: which words, and between which numbers it lies.

use serde_json::{Value, json};
use strings::body::SKELETONS;
use strings::construction::{Family, Layout};
use strings::error::{self, Bound};
use strings::fit::answers;
use strings::fit::desirability::Attribute;
use strings::setting::Untuned;
use strings::simulate::sound::Piece;
use strings::{instrument, material};

/// How a list of words begins that a field takes.
pub const ONE_OF: &str = "one of: ";
/// The longest word in a request, in characters.
pub(crate) const WORD_CHARS: usize = 100;
/// Other tunings of the same strings.
pub(crate) const MOST_TUNINGS: usize = 8;
/// Strings that may be asked about at once.
pub(crate) const MOST_STRINGS: usize = 8;
/// Rows and columns a map may have.
pub(crate) const COUNTS: (usize, usize) = (2, 48);
/// Loudnesses that may be asked for, LUFS.
pub(crate) const LOUDNESSES: (f64, f64) = (-60.0, -9.0);
/// The maps there are.
pub(crate) const MAPS: [&str; 3] = ["place", "attack", "window"];
/// The forms of a winding.
pub(crate) const FORMS: [&str; 2] = ["round", "flat"];
/// How a core can be built.
pub(crate) const BUILDS: [&str; 4] = ["solid", "strand", "multifilament", "twisted"];
/// The builds that each optional member of a core belongs to.
pub(crate) const BUILDS_WITH: [(&str, &[&str]); 5] = [
    ("layout", &["strand"]),
    ("lay_deg", &["strand"]),
    ("filament_m", &["multifilament"]),
    ("fill", &["multifilament"]),
    ("twist_deg", &["multifilament", "twisted"]),
];

/// The range of each numeric member, by the name under which the tables publish it.
pub(crate) const BOUNDS: [(&str, Bound); 37] = [
    ("sounding_length_m", error::SOUNDING_LENGTH),
    ("afterlength_m", error::AFTERLENGTH),
    ("nut_to_peg_m", error::NUT_TO_PEG),
    ("pull_m", error::PULL),
    ("pitch_hz", error::PITCH),
    ("a4_hz", error::A4),
    ("temperature_c", error::TEMPERATURE),
    ("humidity", error::HUMIDITY),
    ("temperature_swing_k", error::TEMPERATURE_SWING),
    ("humidity_swing", error::HUMIDITY_SWING),
    ("week_temperature_swing_k", error::TEMPERATURE_SWING),
    ("week_humidity_swing", error::HUMIDITY_SWING),
    ("evening_temperature_swing_k", error::TEMPERATURE_SWING),
    ("evening_humidity_swing", error::HUMIDITY_SWING),
    ("angle_over_bridge_deg", error::ANGLE_OVER_BRIDGE),
    ("sounding_length_doubt_m", error::LENGTH_DOUBT),
    ("string_height_m", error::STRING_HEIGHT),
    ("nut_radius_m", error::NUT_RADIUS),
    ("bridge_resistance_kg_s", error::RESISTANCE),
    ("peak_resistance_kg_s", error::RESISTANCE),
    ("gap", error::GAP),
    ("peg_diameter_m", error::PEG_DIAMETER),
    ("gear_ratio", error::GEAR_RATIO),
    ("core_diameter_m", error::CORE_DIAMETER),
    ("winding_thickness_m", error::WINDING_THICKNESS),
    ("bedding", error::BEDDING),
    ("lay_deg", error::LAY_ANGLE),
    ("twist_deg", error::TWIST_ANGLE),
    ("fill", error::FILL),
    ("filament_m", error::FILAMENT_DIAMETER),
    ("concert_days", error::DAYS),
    ("most_load_n", error::MOST_LOAD),
    ("most_tension_n", error::MOST_TENSION),
    ("wish", error::WISH),
    ("age_months", error::AGE_MONTHS),
    ("semitones", error::RETUNING),
    ("weight", error::WEIGHT),
];

/// The range of a numeric member.
fn bound(member: &str) -> Option<Bound> {
    let published = match member {
        "diameter_m" => "core_diameter_m",
        "thickness_m" => "winding_thickness_m",
        "colour" | "brightness" | "power" | "feel" | "response" => "wish",
        other => other,
    };
    BOUNDS.iter().find(|(name, _)| *name == published).map(|(_, bound)| *bound)
}

/// The words that a member takes; none if it is no word of a list.
pub(crate) fn words(member: &str) -> Vec<&'static str> {
    match member {
        "instrument" => instrument::ALL.iter().map(|kind| kind.key).collect(),
        "material" => material::CORES.iter().map(|core| core.key).collect(),
        "metal" | "outer_metal" => material::METALS.iter().map(|metal| metal.key).collect(),
        "build" => BUILDS.to_vec(),
        "layout" => Layout::ALL.iter().map(|layout| layout.key()).collect(),
        "form" => FORMS.to_vec(),
        "untuned" => Untuned::ALL.iter().map(|untuned| untuned.key()).collect(),
        "body" => SKELETONS.iter().map(|skeleton| skeleton.key).collect(),
        "map" => MAPS.to_vec(),
        "piece" => Piece::ALL.map(Piece::key).to_vec(),
        "family" => Family::ALL.map(Family::key).to_vec(),
        "attribute" => Attribute::ALL.iter().map(|attribute| attribute.key()).collect(),
        question => answers::words_of(question).to_vec(),
    }
}

/// Adds to the schema of a type what its members take, each by its name.
pub(crate) fn narrow(schema: &mut schemars::Schema) {
    let Some(Value::Object(members)) = schema.get_mut("properties") else { return };
    for (name, member) in members {
        let is = |kind: &str| match &member["type"] {
            Value::Array(kinds) => kinds.iter().any(|one| one == kind),
            one => one == kind,
        };
        let words = words(name);
        if is("array") && !words.is_empty() {
            member["maxItems"] = words.len().into();
            member["uniqueItems"] = true.into();
            member["items"] = word(name);
        } else if is("string") && words.is_empty() {
            member["maxLength"] = WORD_CHARS.into();
        } else if is("string") {
            // Null is as good as leaving it out.
            let or_null = is("null").then_some(Value::Null);
            member["enum"] = words.into_iter().map(Value::from).chain(or_null).collect();
        } else if let Some(bound) = bound(name).filter(|_| is("number")) {
            member["minimum"] = bound.min.into();
            member["maximum"] = bound.max.into();
        }
    }
}

/// A list of words, as a fault shows it.
pub(crate) fn one_of(words: &[&str]) -> String {
    format!("{ONE_OF}{}", words.join(", "))
}

/// A text that is one of the words of this member.
pub(crate) fn word(member: &str) -> Value {
    json!({ "type": "string", "enum": words(member) })
}

/// A number within a bound.
pub(crate) fn number(bound: Bound) -> Value {
    json!({ "type": "number", "minimum": bound.min, "maximum": bound.max })
}

/// The most strings that a tuning has.
pub(crate) fn most_strings() -> usize {
    let tunings = instrument::ALL.iter().flat_map(|kind| kind.tunings);
    tunings.map(|tuning| tuning.strings.len()).max().unwrap_or_default()
}

/// Which members of a core each build takes and needs.
pub(crate) fn builds() -> Value {
    let rule = |build: &&str| {
        let with = |own: bool| {
            let members =
                BUILDS_WITH.iter().filter(move |(_, builds)| builds.contains(build) == own);
            members.map(|(name, _)| *name)
        };
        let unused: serde_json::Map<_, _> =
            with(false).map(|name| (name.to_owned(), json!({ "type": "null" }))).collect();
        json!({
            "if": { "properties": { "build": { "const": build } } },
            "then": { "properties": unused, "required": with(true).collect::<Vec<_>>() },
        })
    };
    BUILDS.iter().map(rule).collect()
}
