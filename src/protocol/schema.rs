//! The published JSON Schema of the door, and what the types alone do not say of a request: which words a member takes
//! and between which numbers it lies.

use serde_json::{Value, json};
use strings::body::SKELETONS;
use strings::construction::Layout;
use strings::error::Bound;
use strings::{instrument, material};

use crate::convert::{self, BUILDS, BUILDS_WITH};
use crate::reply::Reply;
use crate::request::Request;

/// The JSON Schema of the door: a request and a reply.
#[must_use]
pub fn schema() -> Value {
    // With an id of its own each is a document of its own, in which its references lead.
    let part = |name: &str, mut schema: schemars::Schema| {
        schema.insert("$id".to_owned(), format!("{name}.schema.json").into());
        schema
    };
    json!({
        "request": part("request", schemars::schema_for!(Request)),
        "reply": part("reply", schemars::schema_for!(Reply)),
    })
}

/// The words that a member takes.
pub(crate) fn words(member: &str) -> Vec<&'static str> {
    match member {
        "instrument" => instrument::ALL.iter().map(|kind| kind.key).collect(),
        "core_material" => material::CORES.iter().map(|core| core.key).collect(),
        "metal" => material::METALS.iter().map(|metal| metal.key).collect(),
        "build" => BUILDS.to_vec(),
        "layout" => Layout::ALL.iter().map(|layout| layout.key()).collect(),
        "form" => vec!["round", "flat"],
        "body" => SKELETONS.iter().map(|skeleton| skeleton.key).collect(),
        question => {
            let all = convert::words();
            all.into_iter()
                .find(|(key, _)| *key == question)
                .map(|(_, words)| words)
                .unwrap_or_default()
        }
    }
}

/// The words that a member takes that may be null, which is as good as leaving it out.
pub(crate) fn answers(member: &str) -> Vec<Option<&'static str>> {
    words(member).into_iter().map(Some).chain([None]).collect()
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
