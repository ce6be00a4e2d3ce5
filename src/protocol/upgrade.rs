//! Brings saved texts of earlier versions into the form of this one.
//!
//! Version 1 kept what was typed as `drafts`: texts by field name, a unit under the name of its field and `.unit`, and the
//! date of the next performance as `concert_date` beside the count of days. Until warmth and damp were weighed apart, a
//! weight set by hand could be that of `drift` or of `fitters-judgement`. Until it was asked how the instrument is amplified,
//! `magnetic_pickup` said that it is by a magnet.

use serde_json::{Map, Value};

/// The version of the saved file that this build writes.
pub const VERSION: u32 = 2;

/// Upgrades a saved file and the fittings in it.
pub(crate) fn document(value: &mut Value) {
    if value.get("version") == Some(&Value::from(1))
        && let Value::Object(members) = value
    {
        members.insert("version".to_owned(), VERSION.into());
    }
    fitting(value);
    if let Some(Value::Array(fittings)) = value.get_mut("fittings") {
        fittings.iter_mut().for_each(fitting);
    }
}

/// Upgrades a kept fitting. It carries no version: one of version 1 is known by its drafts.
pub(crate) fn fitting(value: &mut Value) {
    let Value::Object(members) = value else { return };
    if let Some(Value::Object(answers)) = members.get_mut("answers") {
        self::answers(answers);
    }
    let Some(drafts) = members.remove("drafts") else { return };
    let typed = match drafts {
        Value::Object(drafts) => Value::Object(typed(drafts)),
        unreadable => unreadable,
    };
    members.insert("typed".to_owned(), typed);
}

fn answers(answers: &mut Map<String, Value>) {
    if let Some(Value::Object(weights)) = answers.get_mut("weights") {
        for (earlier, now) in [("drift", "warmth"), ("fitters-judgement", "damp")] {
            if let Some(weight) = weights.remove(earlier) {
                weights.entry(now).or_insert(weight);
            }
        }
    }
    if let Some(magnet) = answers.get("magnetic_pickup").and_then(Value::as_bool) {
        if magnet {
            answers.entry("amplified").or_insert("magnet".into());
        }
        answers.remove("magnetic_pickup");
    }
}

/// What was typed, by field name. What is not text stays as it is, for the reader to refuse.
fn typed(drafts: Map<String, Value>) -> Map<String, Value> {
    let mut typed = Map::new();
    for (name, draft) in drafts {
        let (field, member) = match name.strip_suffix(".unit") {
            Some(field) => (field, "unit"),
            None => (name.as_str(), "text"),
        };
        // The date comes before the count of days, which would only repeat it.
        if name == "concert_date" && draft.is_string() {
            typed.insert("concert_days".to_owned(), entry(draft, "date"));
        } else if draft.is_string() {
            let known = typed.entry(field).or_insert_with(|| entry("".into(), ""));
            if let Value::Object(known) = known
                && known.get("unit") != Some(&"date".into())
            {
                known.insert(member.to_owned(), draft);
            }
        } else {
            typed.insert(name, draft);
        }
    }
    typed
}

fn entry(text: Value, unit: &str) -> Value {
    let mut entry = Map::new();
    entry.insert("text".to_owned(), text);
    if !unit.is_empty() {
        entry.insert("unit".to_owned(), unit.into());
    }
    Value::Object(entry)
}
