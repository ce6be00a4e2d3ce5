//! The saved file: what a person answered and the fittings they kept.
//!
//! A saved format is a promise: it carries a version, and everything loaded passes through [`restore`], which
//! always returns a document and says what it had to mend. It takes no more of a file than the page can show: what is
//! beyond is named and left out, and stays in the file.

use core::fmt;
use std::collections::BTreeMap;

use serde_json::Value;

use crate::allowed::{MOST_STRINGS, MOST_TUNINGS};
use crate::read::{self, Unread};
use crate::request::Answers;
use crate::tree::{self, Limits, Path, Unreadable, excerpt};
use crate::upgrade;
use crate::wire::wire;

/// What every file of ours says of itself.
pub const FORMAT: &str = "ropewalk-fitting";
pub use crate::upgrade::VERSION;

/// Objects and lists inside each other; a complaint about a string of a kept fitting is the seventh.
const DEPTH: usize = 32;
/// The most entries of a list or an object, by its name.
const MOST: [(&str, usize); 8] = [
    ("fittings", 10_000),
    ("typed", 200),
    ("drafts", 200),
    ("weights", 50),
    ("bothers", 50),
    ("summary", 50),
    ("also_tuned", MOST_TUNINGS),
    ("strings", MOST_STRINGS),
];
/// The most values in all: some fifty for each kept fitting.
const MOST_VALUES: usize = 2_000_000;
/// The longest text, in characters.
const MOST_CHARS: usize = 10_000;
/// The most notes on one file: more would bury the first.
const MOST_NOTES: usize = 20;

wire! {
    /// A saved file.
    pub struct Document {
        /// Always `ropewalk-fitting`.
        pub format: String,
        /// Version of the format, from 1.
        pub version: u32,
        /// The label the person gave, e.g. "Desk 3 viola, 15 in".
        pub label: String = String::new(),
        /// The answers.
        pub answers: Answers = Answers::default(),
        /// What was typed, by field name, whether it can be read or not.
        pub typed: BTreeMap<String, Typed> = BTreeMap::<String, Typed>::new(),
        /// Fittings kept, the newest first.
        pub fittings: Vec<Fitting> = Vec::<Fitting>::new(),
    }

    /// A fitting that was kept.
    #[derive(Default)]
    pub struct Fitting {
        /// When, as an ISO 8601 date and time.
        pub at: String,
        /// The label the person gave.
        pub label: String = String::new(),
        /// The answers it came from.
        pub answers: Answers,
        /// The set in words of the language in which it was kept, one line a string.
        pub summary: Vec<String> = Vec::<String>::new(),
        /// The strings of the set, highest first, to be told in any language; none where nobody has asked for them yet.
        #[serde(skip_serializing_if = "Option::is_none")]
        pub strings: Option<Vec<KeptString>>,
        /// What was typed, by field name, where answers were put by before a set was kept.
        #[serde(skip_serializing_if = "BTreeMap::is_empty")]
        pub typed: BTreeMap<String, Typed> = BTreeMap::<String, Typed>::new(),
        /// It is an invented example, of this name, and nobody's own.
        #[serde(skip_serializing_if = "Option::is_none")]
        pub invented: Option<String>,
    }

    /// A text as it was typed, and its unit.
    ///
    /// Under `concert_days` it is the date of the next performance, such as `2031-05-09`, in the unit `date`; a count of
    /// days stands there only while it cannot be read.
    #[derive(Default, Eq)]
    pub struct Typed {
        /// The text.
        pub text: String,
        /// The unit; empty where it is the usual one or there is none.
        #[serde(skip_serializing_if = "String::is_empty")]
        pub unit: String = String::new(),
    }

    /// A string of a set that was kept, in the words of a reply.
    pub struct KeptString {
        /// Its note.
        pub note: String,
        /// `new`, `kept` or `not-judged`.
        pub standing: String,
        /// Its family.
        pub family: String,
        /// `light`, `medium` or `heavy`.
        pub gauge_class: String,
        /// Tension to look for on the packet.
        pub tension_n: (f64, f64),
    }
}

impl Fitting {
    /// Whether it is the fitting of these answers under this label.
    #[must_use]
    pub fn is_of(&self, label: &str, answers: &Answers) -> bool {
        self.label == label && self.answers == *answers
    }
}

impl Default for Document {
    fn default() -> Self {
        Self {
            format: FORMAT.to_owned(),
            version: VERSION,
            label: String::new(),
            answers: Answers::default(),
            typed: BTreeMap::new(),
            fittings: Vec::new(),
        }
    }
}

/// What had to be mended in a file, or why nothing of it could be read.
#[derive(Clone, Debug, PartialEq)]
pub enum Note {
    /// It is not JSON, for this reason.
    NotJson(String),
    /// It does not say that it is ours.
    NotOurs,
    /// It is of a later version.
    Later(u64),
    /// The kept fitting at this place could not be read, for this reason.
    Fitting(usize, String),
    /// An answer held what cannot be read.
    Answer {
        /// Its field.
        field: String,
        /// What it held.
        held: String,
    },
    /// This field was given more than once, and its last value was taken.
    Repeated(String),
    /// A list had more entries than there is room for, and the first were taken.
    TooMany {
        /// Its field.
        field: String,
        /// How many it had.
        count: usize,
        /// How many were taken.
        most: usize,
    },
    /// The text of this field was cut to so many characters.
    TooLong(String, usize),
    /// So many more notes were left out.
    More(usize),
}

impl fmt::Display for Note {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotJson(why) => write!(f, "this is not a file of ours: it is not JSON ({why})"),
            Self::NotOurs => {
                write!(f, "this is not a file of ours: \"format\" is not \"{FORMAT}\"")
            }
            Self::Later(version) => write!(
                f,
                "this file is of version {version}; this copy of the app reads up to {VERSION}"
            ),
            Self::Fitting(i, why) => {
                write!(f, "fittings[{i}] could not be read and was left out ({why})")
            }
            Self::Answer { field, held } => {
                write!(f, "{field} held {held}, which cannot be read, and was left out")
            }
            Self::Repeated(field) => {
                write!(f, "{field} was given more than once; the last value was taken")
            }
            Self::TooMany { field, count, most } => {
                write!(f, "{field} had {count} entries; the first {most} were taken")
            }
            Self::TooLong(field, most) => write!(f, "{field} was cut to {most} characters"),
            Self::More(count) => write!(f, "and {count} more"),
        }
    }
}

/// Reads a saved file of any version as it stands, and mends nothing.
///
/// # Errors
/// When anything of it cannot be read.
pub fn read(text: &str) -> Result<Document, Unread> {
    let mut value = read::parsed(text)?;
    upgrade::document(&mut value);
    read::tree(&value)
}

/// Reads one kept set, as [`save_fitting`] wrote it.
///
/// # Errors
/// When anything of it cannot be read.
pub fn read_fitting(text: &str) -> Result<Fitting, Unread> {
    let mut value = read::parsed(text)?;
    upgrade::fitting(&mut value);
    read::tree(&value)
}

/// Writes one kept set.
#[must_use]
pub fn save_fitting(fitting: &Fitting) -> String {
    // As with a document, writing it cannot fail.
    serde_json::to_string(fitting).unwrap_or_default()
}

/// Reads a saved file, and says what it had to mend.
///
/// An unreadable file gives an empty document and a note that says why; the caller keeps the text. Parts that
/// can be read are kept where others cannot. What reads well but is out of its range or not among the words stays as
/// it is: the page tells of it at its field, and the model of whatever is asked with it.
#[must_use]
pub fn restore(text: &str) -> (Document, Vec<Note>) {
    let limits =
        Limits { depth: DEPTH, values: MOST_VALUES, chars: usize::MAX, refuse_repeated: false };
    let not_json = |why| (Document::default(), vec![Note::NotJson(why)]);
    let tree::Tree { mut value, repeated } = match tree::read(text, limits) {
        Ok(tree) => tree,
        Err(Unreadable::NotJson(why)) => return not_json(why),
        Err(Unreadable::Field(fault)) => return not_json(fault.to_string()),
    };
    if value.get("format").and_then(Value::as_str) != Some(FORMAT) {
        return (Document::default(), vec![Note::NotOurs]);
    }
    let version = value.get("version").and_then(Value::as_u64).unwrap_or(0);
    if version > u64::from(VERSION) {
        return (Document::default(), vec![Note::Later(version)]);
    }
    let mut notes: Vec<Note> = repeated.into_iter().map(Note::Repeated).collect();
    cut(&mut value, "", &Path::Whole, &mut notes);
    if version == 0 {
        notes.push(unread("version", value.get("version").unwrap_or(&Value::Null)));
    }
    let typed = if value.get("drafts").is_some() { "drafts" } else { "typed" };
    upgrade::document(&mut value);
    let document = mend(&value, typed, &mut notes);
    if notes.len() > MOST_NOTES {
        let more = notes.split_off(MOST_NOTES - 1).len();
        notes.push(Note::More(more));
    }
    (document, notes)
}

/// A note on a value that cannot be read.
fn unread(field: &str, held: &Value) -> Note {
    Note::Answer { field: field.to_owned(), held: excerpt(&held.to_string()) }
}

/// Reads a document part by part, leaving out those that cannot be read. `typed` is what the file calls what was typed.
fn mend(value: &Value, typed: &str, notes: &mut Vec<Note>) -> Document {
    let mut document = Document::default();
    match value.get("label") {
        None => {}
        Some(Value::String(label)) => label.clone_into(&mut document.label),
        Some(held) => notes.push(unread("label", held)),
    }
    if let Some(answers) = value.get("answers") {
        document.answers = mend_answers(answers, notes);
    }
    match value.get("typed") {
        None => {}
        Some(Value::Object(entries)) => {
            for (field, entry) in entries {
                match read::tree(entry) {
                    Ok(entry) => drop(document.typed.insert(field.clone(), entry)),
                    Err(_) => notes.push(unread(&format!("{typed}.{field}"), entry)),
                }
            }
        }
        Some(held) => notes.push(unread(typed, held)),
    }
    match value.get("fittings") {
        None => {}
        Some(Value::Array(fittings)) => {
            for (i, fitting) in fittings.iter().enumerate() {
                match read::tree(fitting) {
                    Ok(fitting) => document.fittings.push(fitting),
                    Err(e) => notes.push(Note::Fitting(i, e.to_string())),
                }
            }
        }
        Some(held) => notes.push(unread("fittings", held)),
    }
    document
}

/// Cuts lists, objects and texts to the size for which there is room.
fn cut(value: &mut Value, name: &str, path: &Path<'_>, notes: &mut Vec<Note>) {
    let most = MOST.iter().find(|(of, _)| *of == name).map_or(usize::MAX, |(_, most)| *most);
    let too_many =
        |count| (count > most).then(|| Note::TooMany { field: path.to_string(), count, most });
    match value {
        Value::Array(entries) => {
            notes.extend(too_many(entries.len()));
            entries.truncate(most);
            for (i, entry) in entries.iter_mut().enumerate() {
                cut(entry, "", &Path::Entry(path, i), notes);
            }
        }
        Value::Object(members) => {
            notes.extend(too_many(members.len()));
            let beyond: Vec<String> = members.keys().skip(most).cloned().collect();
            beyond.iter().for_each(|name| drop(members.remove(name)));
            for (name, member) in members.iter_mut() {
                cut(member, name, &Path::Member(path, name), notes);
            }
        }
        Value::String(text) => {
            if let Some((end, _)) = text.char_indices().nth(MOST_CHARS) {
                text.truncate(end);
                notes.push(Note::TooLong(path.to_string(), MOST_CHARS));
            }
        }
        _ => {}
    }
}

/// Reads answers one by one, leaving out those that cannot be read.
fn mend_answers(value: &Value, notes: &mut Vec<Note>) -> Answers {
    if let Ok(answers) = read::tree(value) {
        return answers;
    }
    let Value::Object(members) = value else {
        notes.push(unread("answers", value));
        return Answers::default();
    };
    let mut kept = serde_json::Map::new();
    for (name, member) in members {
        let mut alone = serde_json::Map::new();
        alone.insert(name.clone(), member.clone());
        match read::tree::<Answers>(&Value::Object(alone)) {
            Ok(_) => drop(kept.insert(name.clone(), member.clone())),
            Err(_) => notes.push(unread(&format!("answers.{name}"), member)),
        }
    }
    // Each member was read alone, so together they can be read too.
    read::tree(&Value::Object(kept)).unwrap_or_default()
}

/// Writes a document as the text of a file.
#[must_use]
pub fn save(document: &Document) -> String {
    // A document holds numbers, words and maps with text keys only; writing it cannot fail.
    laid_out(&serde_json::to_string(document).unwrap_or_default())
}

/// A text of JSON in lines, as `serde_json` would lay it out; its own way writes every type a second time.
fn laid_out(text: &str) -> String {
    let mut lines = String::with_capacity(2 * text.len());
    let (mut depth, mut quoted, mut escaped, mut before) = (0, false, false, ' ');
    let line = |lines: &mut String, depth: usize| {
        lines.push('\n');
        (0..depth).for_each(|_| lines.push_str("  "));
    };
    for letter in text.chars() {
        let closes = !quoted && matches!(letter, '}' | ']');
        if closes {
            depth -= 1;
        }
        if matches!(before, '{' | '[') != closes {
            line(&mut lines, depth);
        }
        lines.push(letter);
        if quoted {
            quoted = escaped || letter != '"';
            escaped = letter == '\\' && !escaped;
            before = ' ';
            continue;
        }
        before = letter;
        match letter {
            '"' => quoted = true,
            '{' | '[' => depth += 1,
            ':' => lines.push(' '),
            ',' => line(&mut lines, depth),
            _ => {}
        }
    }
    lines
}
