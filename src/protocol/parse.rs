//! Reads a request from its text, and names the field where it goes wrong.

use serde_json::{Map, Value};
use strings::error::Fault;

use crate::request::Request;
use crate::tree::{self, Limits, Unreadable, excerpt};

/// The longest request, in bytes: a dozen times the longest that anybody needs.
pub const REQUEST_BYTES: usize = 65_536;
/// The most values in a request, twice as many as anybody needs.
pub const REQUEST_VALUES: usize = 1000;
/// Objects and lists inside each other; a string's winding in a list of strings is the sixth.
const DEPTH: usize = 16;
/// The longest word in a request, in characters.
pub(crate) const WORD_CHARS: usize = 100;

/// Reads a request.
pub(crate) fn request(text: &str) -> Result<Request, Fault> {
    read(text).map_err(|fault| match fault.field.as_str() {
        // The whole, or a member without a name.
        "" => Fault { field: "request".to_owned(), ..fault },
        _ => fault,
    })
}

fn read(text: &str) -> Result<Request, Fault> {
    let mut members = object(text)?;
    let Some(ask) = members.remove("ask") else {
        return Err(Fault::new("ask", "nothing", asks()));
    };
    let rest = Value::Object(members);
    if let Some(fault) = misplaced_list(&rest, "") {
        return Err(fault);
    }
    match ask.as_str() {
        Some("report") => part(rest).map(|r| Request::Report(Box::new(r))),
        Some("compare") => part(rest).map(|r| Request::Compare(Box::new(r))),
        Some("stretch") => part(rest).map(|r| Request::Stretch(Box::new(r))),
        Some("year") => part(rest).map(|r| Request::Year(Box::new(r))),
        Some("place") => part(rest).map(|r| Request::Place(Box::new(r))),
        Some("fit") => part(rest).map(|r| Request::Fit(Box::new(r))),
        Some("certainty") => part(rest).map(|r| Request::Certainty(Box::new(r))),
        Some("tables") => part(rest).map(Request::Tables),
        Some("bow-map") => part(rest).map(|r| Request::BowMap(Box::new(r))),
        Some("sound") => part(rest).map(|r| Request::Sound(Box::new(r))),
        _ => Err(Fault::new("ask", excerpt(&ask.to_string()), asks())),
    }
}

fn asks() -> &'static str {
    "one of: report, compare, stretch, year, place, fit, certainty, tables, bow-map, sound"
}

/// The members of the one object that a request is.
fn object(text: &str) -> Result<Map<String, Value>, Fault> {
    if text.len() > REQUEST_BYTES {
        let allowed = format!("at most {REQUEST_BYTES} bytes");
        return Err(Fault::new("request", format!("{} bytes", text.len()), allowed));
    }
    let shown = || format!("\"{}\"", excerpt(text));
    let limits =
        Limits { depth: DEPTH, values: REQUEST_VALUES, chars: WORD_CHARS, refuse_repeated: true };
    match tree::read(text, limits) {
        Ok(tree::Tree { value: Value::Object(members), .. }) => Ok(members),
        Ok(_) => Err(Fault::new("request", shown(), "one JSON object")),
        Err(Unreadable::Field(fault)) => Err(fault),
        Err(Unreadable::NotJson(why)) => {
            Err(Fault::new("request", shown(), format!("one JSON object ({why})")))
        }
    }
}

/// Members that hold a list.
const LISTS: [&str; 4] = ["windings", "strings", "bothers", "also_tuned"];

/// A list where an object or a value belongs; serde would take its entries for members in their order.
fn misplaced_list(value: &Value, path: &str) -> Option<Fault> {
    match value {
        Value::Object(members) => members.iter().find_map(|(name, member)| {
            let path = if path.is_empty() { name.clone() } else { format!("{path}.{name}") };
            match member {
                Value::Array(entries) if LISTS.contains(&name.as_str()) => entries
                    .iter()
                    .enumerate()
                    .find_map(|(i, entry)| misplaced_list(entry, &format!("{path}[{i}]"))),
                _ => misplaced_list(member, &path),
            }
        }),
        Value::Array(_) => Some(Fault::new(path, "a list", "no list, but one object or value")),
        _ => None,
    }
}

fn part<T: serde::de::DeserializeOwned>(value: Value) -> Result<T, Fault> {
    serde_path_to_error::deserialize(&value).map_err(|e| {
        let path = e.path().to_string();
        let given = value
            .pointer(&pointer(&path))
            .map_or_else(|| "nothing".to_owned(), |given| excerpt(&given.to_string()));
        let path = if path == "." { String::new() } else { path };
        plain(&path, &given, &e.into_inner().to_string())
    })
}

/// Turns serde's message into a fault in our own words: what is missing, unknown, or of the wrong type.
fn plain(path: &str, given: &str, complaint: &str) -> Fault {
    let within =
        |name: &str| if path.is_empty() { name.to_owned() } else { format!("{path}.{name}") };
    let quoted = complaint.split('`').nth(1).unwrap_or_default();
    if complaint.starts_with("missing field") {
        return Fault::new(within(quoted), "nothing", "a value: it must be given");
    }
    let field = if path.is_empty() { "request" } else { path };
    if complaint.starts_with("unknown field") {
        let names: Vec<&str> = complaint.split('`').skip(3).step_by(2).collect();
        return Fault::new(
            field,
            given,
            format!("no member of that name, but {}", names.join(", ")),
        );
    }
    let wanted = complaint.rsplit("expected ").next().unwrap_or(complaint);
    let wanted = match wanted {
        "f64" => "a number",
        "usize" => "a whole number, 0 or more",
        "a string" => "a text in quotes",
        "a boolean" => "true or false",
        "a sequence" => "a list",
        other if other.starts_with("struct") || other == "a map" => "an object",
        other => other,
    };
    Fault::new(field, given, wanted)
}

/// A path such as `construction.windings[0].metal` as a JSON pointer.
fn pointer(path: &str) -> String {
    let mut pointer = String::new();
    for step in path.split(['.', '[', ']']).filter(|step| !step.is_empty()) {
        pointer.push('/');
        pointer.push_str(step);
    }
    pointer
}
