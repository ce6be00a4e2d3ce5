//! The published JSON Schema of the door.

use serde_json::{Value, json};

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
