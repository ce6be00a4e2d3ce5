//! Reads a request from its text, and names the field where it goes wrong.

use serde_json::{Map, Value};
use strings::error::Fault;

use crate::allowed::{WORD_CHARS, one_of};
use crate::read;
use crate::request::Request;
use crate::tree::{self, Limits, Unreadable, excerpt};

/// The longest request, in bytes: a dozen times the longest that anybody needs.
pub const REQUEST_BYTES: usize = 65_536;
/// The most values in a request, twice as many as anybody needs.
pub const REQUEST_VALUES: usize = 1000;
/// Objects and lists inside each other; a string's winding in a list of strings is the sixth.
const DEPTH: usize = 16;

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
    let asks = || one_of(Request::NAMES);
    let Some(ask) = members.remove("ask") else {
        return Err(Fault::new("ask", "nothing", asks()));
    };
    let name = ask.as_str().unwrap_or_default();
    let rest = Value::Object(members);
    let request = read::part(&rest, |reader| Request::of_name(name, &rest, reader))?;
    request.ok_or_else(|| Fault::new("ask", excerpt(&ask.to_string()), asks()))
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
