//! Reads requests, replies and saved files out of a tree of JSON.
//!
//! The page reads what the model says, and waits for its own bytes. A reader that serde derives is compiled anew for
//! every type, and each of its steps may end it, so that each carries the undoing of all before it: a fifth of the page.
//! Here a step is a call ([`crate::wire`] writes them). What cannot be read leaves nothing in its place, the first such
//! place is kept, and what was read is handed over only if there is none.

use std::collections::BTreeMap;
use std::error::Error;
use std::fmt;
use std::ptr;
use std::rc::Rc;

use serde_json::Value;
use strings::error::Fault;

use crate::tree::excerpt;

/// Why a text could not be read: the place, and what is wrong with it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unread(String);

impl fmt::Display for Unread {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl Error for Unread {}

/// Reads a tree.
pub(crate) fn tree<T: Read>(tree: &Value) -> Result<T, Unread> {
    whole(tree, |reader| T::read(tree, reader)).map_err(|misread| misread.unread(tree))
}

/// Reads a part of a request.
pub(crate) fn part<'a, T>(
    tree: &'a Value,
    read: impl FnOnce(&mut Reader<'a>) -> T,
) -> Result<T, Fault> {
    whole(tree, read).map_err(|misread| misread.fault(tree))
}

fn whole<'a, T>(
    tree: &'a Value,
    read: impl FnOnce(&mut Reader<'a>) -> T,
) -> Result<T, Misread<'a>> {
    let mut reader = Reader { taken: (tree, ""), misread: None };
    let read = read(&mut reader);
    reader.misread.map_or(Ok(read), Err)
}

/// Parses a text of JSON.
pub(crate) fn parsed(text: &str) -> Result<Value, Unread> {
    serde_json::from_str(text).map_err(|e| Unread(e.to_string()))
}

/// What is wrong with a value.
enum Wrong {
    /// It is not there, but must be.
    Missing,
    /// It is a member that is not one of these.
    Unknown(&'static [&'static str]),
    /// It is something other than this.
    Not(&'static str),
}

/// The first thing that is wrong in a tree.
struct Misread<'a> {
    /// The value, or the object of the member.
    value: &'a Value,
    /// The member, if one is missing or unknown.
    member: Option<&'a str>,
    wrong: Wrong,
}

impl Misread<'_> {
    /// Where it stands in the tree. It is sought only here, so that nobody counts steps on the way.
    fn place(&self, tree: &Value) -> String {
        let mut place = String::new();
        find(tree, self.value, &mut place);
        if let Some(member) = self.member {
            place.push('.');
            place += member;
        }
        place.trim_start_matches('.').to_owned()
    }

    /// What a reader of replies and files is told.
    fn unread(&self, tree: &Value) -> Unread {
        let place = self.place(tree);
        Unread(match &self.wrong {
            Wrong::Missing => format!("{place} is missing"),
            Wrong::Unknown(_) => format!("{place} is not known"),
            Wrong::Not(wanted) => format!("{place} is not {wanted}"),
        })
    }

    /// What whoever sent a request is told.
    fn fault(&self, tree: &Value) -> Fault {
        let member = self.member.and_then(|member| self.value.get(member));
        let value = excerpt(&member.unwrap_or(self.value).to_string());
        let (value, allowed) = match &self.wrong {
            Wrong::Missing => ("nothing".to_owned(), "a value: it must be given".to_owned()),
            Wrong::Unknown(known) => {
                (value, format!("no member of that name, but {}", known.join(", ")))
            }
            Wrong::Not(_) if self.value.is_array() => {
                ("a list".to_owned(), "no list, but one object or value".to_owned())
            }
            Wrong::Not(wanted) => (value, (*wanted).to_owned()),
        };
        Fault::new(self.place(tree), value, allowed)
    }
}

/// Stands where a member is left out.
static NOTHING: Value = Value::Null;

/// Whether a value stands where a member is left out.
pub(crate) fn is_nothing(value: &Value) -> bool {
    ptr::eq(value, &raw const NOTHING)
}

/// Goes through a tree and keeps the first fault.
pub(crate) struct Reader<'a> {
    /// The member that was taken last, and of what.
    taken: (&'a Value, &'static str),
    misread: Option<Misread<'a>>,
}

impl<'a> Reader<'a> {
    /// A member that must be there.
    pub(crate) fn member(&mut self, of: &'a Value, name: &'static str) -> &'a Value {
        match of {
            Value::Object(members) => {
                self.taken = (of, name);
                members.get(name).unwrap_or(&NOTHING)
            }
            _ => {
                self.not(of, "an object");
                &NOTHING
            }
        }
    }

    /// A member that may be left out.
    pub(crate) fn optional(&mut self, of: &'a Value, name: &'static str) -> Option<&'a Value> {
        let member = self.member(of, name);
        (!is_nothing(member)).then_some(member)
    }

    /// Nothing else stands here than members of these names.
    pub(crate) fn closed(&mut self, of: &'a Value, names: &'static [&'static str]) {
        let Value::Object(members) = of else { return };
        if let Some(name) = members.keys().find(|name| !names.contains(&name.as_str())) {
            self.keep(of, Some(name), Wrong::Unknown(names));
        }
    }

    /// Keeps that a value is not what it should be.
    pub(crate) fn not(&mut self, value: &'a Value, wanted: &'static str) {
        if is_nothing(value) {
            let (of, name) = self.taken;
            self.keep(of, Some(name), Wrong::Missing);
        } else {
            self.keep(value, None, Wrong::Not(wanted));
        }
    }

    fn keep(&mut self, value: &'a Value, member: Option<&'a str>, wrong: Wrong) {
        if self.misread.is_none() {
            self.misread = Some(Misread { value, member, wrong });
        }
    }

    pub(crate) fn text(&mut self, value: &'a Value) -> &'a str {
        value.as_str().unwrap_or_else(|| {
            self.not(value, "a text in quotes");
            ""
        })
    }

    pub(crate) fn number(&mut self, value: &'a Value) -> f64 {
        value.as_f64().unwrap_or_else(|| {
            self.not(value, "a number");
            0.0
        })
    }

    pub(crate) fn count(&mut self, value: &'a Value) -> u64 {
        value.as_u64().unwrap_or_else(|| {
            self.not(value, "a whole number, 0 or more");
            0
        })
    }

    pub(crate) fn list(&mut self, value: &'a Value) -> &'a [Value] {
        value.as_array().map(Vec::as_slice).unwrap_or_else(|| {
            self.not(value, "a list");
            &[]
        })
    }
}

/// Writes where a value stands in a tree, and says whether it does.
fn find(tree: &Value, value: &Value, place: &mut String) -> bool {
    let length = place.len();
    let mut within = |step: &str, part| {
        *place += step;
        let found = find(part, value, place);
        if !found {
            place.truncate(length);
        }
        found
    };
    ptr::eq(tree, value)
        || match tree {
            Value::Object(members) => {
                members.iter().any(|(name, member)| within(&format!(".{name}"), member))
            }
            Value::Array(list) => {
                list.iter().enumerate().any(|(i, entry)| within(&format!("[{i}]"), entry))
            }
            _ => false,
        }
}

/// A type that is read out of a tree.
pub(crate) trait Read: Sized {
    /// What stands in `value`; where it is something else, the reader keeps the fault, and this is of no use.
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self;
}

impl Read for String {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        reader.text(value).to_owned()
    }
}

impl Read for f64 {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        reader.number(value)
    }
}

impl Read for f32 {
    #[expect(clippy::cast_possible_truncation, reason = "a sample was written from one")]
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        reader.number(value) as Self
    }
}

impl Read for u64 {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        reader.count(value)
    }
}

macro_rules! read_counts {
    ($($count:ty),+) => {$(
        impl Read for $count {
            fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
                Self::try_from(reader.count(value)).unwrap_or_else(|_| {
                    reader.not(value, "so small a count");
                    0
                })
            }
        }
    )+};
}

read_counts!(u32, usize);

impl Read for bool {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        value.as_bool().unwrap_or_else(|| {
            reader.not(value, "true or false");
            false
        })
    }
}

impl<T: Read> Read for Option<T> {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        (!value.is_null()).then(|| T::read(value, reader))
    }
}

impl<T: Read> Read for Box<T> {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        Self::new(T::read(value, reader))
    }
}

impl<T: Read> Read for Rc<T> {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        Self::new(T::read(value, reader))
    }
}

impl<T: Read> Read for Vec<T> {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        reader.list(value).iter().map(|entry| T::read(entry, reader)).collect()
    }
}

impl Read for (f64, f64) {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        if let [first, second] = reader.list(value) {
            return (reader.number(first), reader.number(second));
        }
        reader.not(value, "a pair");
        (0.0, 0.0)
    }
}

impl<T: Read> Read for BTreeMap<String, T> {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        let Value::Object(members) = value else {
            reader.not(value, "an object");
            return Self::new();
        };
        // One by one: to collect them would sort them first, by a sort compiled for each type.
        let mut table = Self::new();
        for (name, member) in members {
            table.insert(name.clone(), T::read(member, reader));
        }
        table
    }
}
