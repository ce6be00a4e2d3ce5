//! Where do the numbers of a report stand on ground that was not measured, and what would make them surer?

use protocol::reply::Doubt;

use super::naming::{capital, core_material, list, metal};
use crate::units;

/// Shares of a doubt under this are not worth naming.
const WORTH_NAMING: f64 = 0.05;

/// A caveat as a sentence.
#[must_use]
pub fn caveat(key: &str) -> &str {
    match key {
        "stress-not-measured" => {
            "Its core is pulled harder or less hard than in the measurements of how stiff it sounds; that stiffness is held at the end of what was measured."
        }
        "wire-not-tabled" => {
            "One wire of its core is thinner or thicker than the strengths of wire are tabled for; the strength is held at the end of the table."
        }
        "breaks" => "It would break before it comes to pitch.",
        other => other,
    }
}

/// What a doubt comes from: `the density of silver`, `the sounding length`.
#[must_use]
pub fn cause(doubt: &Doubt) -> String {
    let of = match doubt.owner.as_str() {
        "" => return general(&doubt.which).to_owned(),
        owner => match core_material(owner) {
            same if same == owner => metal(owner),
            name => name,
        },
    };
    match doubt.which.as_str() {
        "density" => format!("the density of {of}"),
        "modulus" => format!("the stiffness of {of} to a slow pull"),
        "fast_modulus" => format!("the stiffness of {of} while it sounds"),
        "strength" => format!("the strength of {of}"),
        "poisson" => format!("how much {of} narrows when it stretches"),
        "loss" => format!("the inner friction of {of}"),
        "creep" => format!("the creep of {of}"),
        "expansion" => format!("how far warmth lengthens {of}"),
        "moisture_left" => format!("how much of the water’s weight is felt in {of}"),
        "softening" => format!("how warmth softens {of}"),
        "water" => format!("how much water {of} takes up"),
        "shear" => format!("the stiffness of {of} to a twist"),
        other => format!("{other} of {of}"),
    }
}

fn general(which: &str) -> &str {
    match which {
        "air_density" => "the density of the air",
        "air_viscosity" => "the stickiness of the air",
        "body_expansion" => "how far warmth lengthens the instrument",
        "body_movement" => "how far the instrument itself moves with the damp",
        "bonding" => "how firmly wires or filaments hold together in bending",
        "bridge_resistance" => "how easily the bridge gives",
        "brilliance_loss" => "where one takes the shine to end",
        "constructional" => "how far a new strand lies closer",
        "core_gauge" => "the diameter of the core",
        "endurance" => "what a core bears for ever",
        "friction_drop" => "how far the hair’s friction falls when it slides",
        "least_force" => "the one measurement of the least bow force",
        "ratchet" => "what gut loses to a new damp",
        "seat_drift" => "how far pegs and knots give",
        "seating" => "the time the string needs to seat",
        "sounding_length" => "the sounding length",
        "string_loss" => "the string’s loss in its pull",
        "torsion_q" => "how long a twist rings",
        "beyond_measured" => "how a polymer stiffens beyond the stress at which it was measured",
        "transient" => "what passes in the first hours",
        "winding_gauge" => "the thickness of the winding",
        "winding_loss" => "the friction between windings",
        "winding_stiffening" => "how far windings stiffen a string",
        "winding_torsion" => "how far windings stiffen it to a twist",
        other => other,
    }
}

/// How a person could know it better, if a person can.
#[must_use]
pub fn remedy(which: &str) -> Option<&'static str> {
    match which {
        "sounding_length" => Some("Measure it from nut to bridge, to the millimetre."),
        "core_gauge" => Some("Measure a bare piece with a micrometer, or weigh a metre of it."),
        "winding_gauge" => Some("Measure the outside with a micrometer, or weigh a metre of it."),
        "creep" | "seating" => Some("Write down what each day costs."),
        "body_movement" | "seat_drift" | "ratchet" => {
            Some("Write down the pitch with the weather, for a month.")
        }
        "bridge_resistance" => Some("It belongs to the instrument, and changes from note to note."),
        _ => None,
    }
}

/// What a property is called in the middle of a sentence about its doubt.
fn about(property: &str) -> &str {
    match property {
        "tension_n" => "tension",
        "breaking_share" => "the share of its strength",
        "brilliance_hz" => "where the shine ends",
        "settling_d" => "the days to settle",
        "drift_cent" => "drift",
        "bow_window_db" => "the room for the bow",
        other => super::property::name(other),
    }
}

/// What most of the doubt about a property comes from, in a short sentence; none if there is no doubt.
#[must_use]
pub fn in_short(property: &str, doubts: &[Doubt]) -> Option<String> {
    let first = doubts.first().filter(|d| d.share >= WORTH_NAMING)?;
    Some(format!(
        "{} decides {} of the doubt about {}.",
        capital(&cause(first)),
        share(first),
        about(property)
    ))
}

/// A share of a doubt.
fn share(d: &Doubt) -> String {
    if d.share >= 0.995 {
        "nearly all".to_owned()
    } else {
        units::with_unit(&units::fixed(d.share * 100.0, 0), "%")
    }
}

/// What the doubt about a property comes from, as a sentence; none if there is no doubt.
#[must_use]
pub fn sentence(property: &str, doubts: &[Doubt]) -> Option<String> {
    let named: Vec<&Doubt> = doubts.iter().filter(|d| d.share >= WORTH_NAMING).collect();
    let (first, rest) = named.split_first()?;
    let more: Vec<String> = rest.iter().map(|d| format!("{} {}", cause(d), share(d))).collect();
    let more = if more.is_empty() { String::new() } else { format!(", {}", list(&more)) };
    let remedy = remedy(&first.which).map(|r| format!(" {r}")).unwrap_or_default();
    Some(format!(
        "{} decides {} of the doubt about {}{more}.{remedy}",
        capital(&cause(first)),
        share(first),
        about(property)
    ))
}
