//! Reads JSON text into a tree, with limits, and reports what most JSON readers accept without a word: a member given
//! twice, and numbers that no number type can hold.
//!
//! It knows the path to every value while it reads, so that each fault names its field.

use std::cell::{Cell, RefCell};
use std::fmt;

use serde::de::{DeserializeSeed, Deserializer, Error, MapAccess, SeqAccess, Visitor};
use serde_json::{Map, Number, Value};
use strings::error::Fault;

/// How much a text may hold.
#[derive(Clone, Copy)]
pub(crate) struct Limits {
    /// Objects and lists inside each other.
    pub(crate) depth: usize,
    /// Values in all.
    pub(crate) values: usize,
    /// Characters of one text or of one member's name.
    pub(crate) chars: usize,
    /// A member that is given twice is a fault; else its last value counts and [`Tree::repeated`] names it.
    pub(crate) refuse_repeated: bool,
}

/// What was read.
pub(crate) struct Tree {
    pub(crate) value: Value,
    /// The fields that were given more than once.
    pub(crate) repeated: Vec<String>,
}

/// Why a text could not be read.
pub(crate) enum Unreadable {
    /// It is not JSON, for this reason.
    NotJson(String),
    /// It is JSON, or nearly, and this field is at fault.
    Field(Fault),
}

/// Reads a text.
pub(crate) fn read(text: &str, limits: Limits) -> Result<Tree, Unreadable> {
    let reading = Reading {
        limits,
        values: Cell::default(),
        fault: RefCell::default(),
        repeated: RefCell::default(),
    };
    let mut json = serde_json::Deserializer::from_str(text);
    let whole = Node { path: &Path::Whole, depth: 0, reading: &reading };
    let read = whole.deserialize(&mut json).and_then(|value| json.end().map(|()| value));
    let Reading { fault, repeated, .. } = reading;
    match (read, fault.into_inner()) {
        (Ok(value), _) => Ok(Tree { value, repeated: repeated.into_inner() }),
        (Err(_), Some(Stopped { fault: Some(fault), .. })) => Err(Unreadable::Field(fault)),
        (Err(error), stopped) => Err(match not_a_number(text, &error) {
            Some((token, allowed)) => {
                let field = stopped.map(|stopped| stopped.field).unwrap_or_default();
                Unreadable::Field(Fault::new(field, token, allowed))
            }
            None => Unreadable::NotJson(error.to_string()),
        }),
    }
}

/// The start of a text, as a fault shows it.
pub(crate) fn excerpt(text: &str) -> String {
    const SHOWN: usize = 60;
    let text = text.trim();
    let mut start: String = text.chars().take(SHOWN).collect();
    if start.len() < text.len() {
        start.push('…');
    }
    start
}

/// The token where reading stopped, and what is allowed there, if a number was meant.
fn not_a_number(text: &str, error: &serde_json::Error) -> Option<(String, &'static str)> {
    let line = text.split('\n').nth(error.line().checked_sub(1)?)?;
    let ends = |c: char| c.is_whitespace() || ",:[]{}\"".contains(c);
    // The reader has come as far as this byte, which may lie inside the token or just behind it.
    let at = (0..=error.column().min(line.len())).rev().find(|at| line.is_char_boundary(*at))?;
    let head = line[..at].trim_end_matches(ends);
    let start = head.rfind(ends).map_or(0, |i| i + 1);
    let token = line[start..].split(ends).next()?;
    let name = token.trim_start_matches(['-', '+']);
    if ["nan", "inf", "infinity"].iter().any(|word| name.eq_ignore_ascii_case(word)) {
        return Some((token.to_owned(), "a number; JSON has neither NaN nor infinities"));
    }
    // The reader has no kind for this, only words.
    let too_large = error.to_string().starts_with("number out of range");
    too_large.then(|| (excerpt(token), "a number no larger than 1.79e308"))
}

/// The path to a value.
pub(crate) enum Path<'a> {
    Whole,
    Member(&'a Path<'a>, &'a str),
    Entry(&'a Path<'a>, usize),
}

impl fmt::Display for Path<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Whole => Ok(()),
            Self::Member(Self::Whole, name) => f.write_str(name),
            Self::Member(of, name) => write!(f, "{of}.{name}"),
            Self::Entry(of, i) => write!(f, "{of}[{i}]"),
        }
    }
}

/// Where reading stopped, and why, if it was one of our own limits.
struct Stopped {
    field: String,
    fault: Option<Fault>,
}

struct Reading {
    limits: Limits,
    values: Cell<usize>,
    fault: RefCell<Option<Stopped>>,
    repeated: RefCell<Vec<String>>,
}

/// A value that is about to be read.
#[derive(Clone, Copy)]
struct Node<'a> {
    path: &'a Path<'a>,
    depth: usize,
    reading: &'a Reading,
}

impl Node<'_> {
    /// Stops with a fault of this value.
    fn stop<E: Error>(&self, value: impl fmt::Display, allowed: impl Into<String>) -> E {
        let field = self.path.to_string();
        let fault = Fault::new(field.as_str(), value, allowed);
        self.reading.fault.borrow_mut().get_or_insert(Stopped { field, fault: Some(fault) });
        E::custom("stopped")
    }

    fn check_text<E: Error>(&self, text: &str) -> Result<(), E> {
        let most = self.reading.limits.chars;
        // Bytes are counted first, for there are never fewer.
        if text.len() > most && text.chars().count() > most {
            let value = format!("\"{}\"", excerpt(text));
            return Err(self.stop(value, format!("at most {most} characters")));
        }
        Ok(())
    }

    /// Goes one level deeper.
    fn enter<E: Error>(&self) -> Result<usize, E> {
        let most = self.reading.limits.depth;
        if self.depth == most {
            return Err(self.stop("deeper nesting", format!("at most {most} levels")));
        }
        Ok(self.depth + 1)
    }
}

impl<'de> DeserializeSeed<'de> for Node<'_> {
    type Value = Value;

    fn deserialize<D: Deserializer<'de>>(self, json: D) -> Result<Value, D::Error> {
        let Reading { limits, values, .. } = self.reading;
        if values.replace(values.get() + 1) == limits.values {
            return Err(self.stop("more values", format!("at most {} in all", limits.values)));
        }
        let read = json.deserialize_any(self);
        if read.is_err() {
            let stopped = || Stopped { field: self.path.to_string(), fault: None };
            self.reading.fault.borrow_mut().get_or_insert_with(stopped);
        }
        read
    }
}

impl<'de> Visitor<'de> for Node<'_> {
    type Value = Value;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a value")
    }

    fn visit_unit<E: Error>(self) -> Result<Value, E> {
        Ok(Value::Null)
    }

    fn visit_bool<E: Error>(self, flag: bool) -> Result<Value, E> {
        Ok(Value::Bool(flag))
    }

    fn visit_u64<E: Error>(self, number: u64) -> Result<Value, E> {
        Ok(Value::Number(number.into()))
    }

    fn visit_i64<E: Error>(self, number: i64) -> Result<Value, E> {
        Ok(Value::Number(number.into()))
    }

    fn visit_f64<E: Error>(self, number: f64) -> Result<Value, E> {
        let finite = Number::from_f64(number);
        finite.map(Value::Number).ok_or_else(|| self.stop(number, "a finite number"))
    }

    fn visit_str<E: Error>(self, text: &str) -> Result<Value, E> {
        self.check_text(text)?;
        Ok(Value::String(text.to_owned()))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Value, A::Error> {
        let depth = self.enter()?;
        let mut entries = Vec::new();
        loop {
            let path = Path::Entry(self.path, entries.len());
            match list.next_element_seed(Node { path: &path, depth, ..self })? {
                Some(entry) => entries.push(entry),
                None => return Ok(Value::Array(entries)),
            }
        }
    }

    fn visit_map<A: MapAccess<'de>>(self, mut object: A) -> Result<Value, A::Error> {
        let depth = self.enter()?;
        let mut members = Map::new();
        while let Some(name) = object.next_key::<String>()? {
            self.check_text(&name)?;
            let path = Path::Member(self.path, &name);
            let member = Node { path: &path, depth, ..self };
            if members.contains_key(&name) {
                if self.reading.limits.refuse_repeated {
                    return Err(member.stop("given twice", "one value"));
                }
                self.reading.repeated.borrow_mut().push(path.to_string());
            }
            let value = object.next_value_seed(member)?;
            members.insert(name, value);
        }
        Ok(Value::Object(members))
    }
}
