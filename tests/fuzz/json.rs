//! JSON as a text could have it, also where no reader accepts it: members given twice, numbers that do not exist.

use std::fmt::Write;

use serde_json::Value;

/// A tree of JSON.
#[derive(Clone, Debug)]
pub(crate) enum Json {
    /// Written as it stands: a number, a text in quotes, or anything else.
    Raw(String),
    List(Vec<Json>),
    Object(Vec<(String, Json)>),
}

/// The step to a part of a tree: which member or entry.
pub(crate) type Path = Vec<usize>;

impl Json {
    pub(crate) fn parse(text: &str) -> Option<Self> {
        serde_json::from_str(text).ok().map(|value: Value| Self::of(&value))
    }

    fn of(value: &Value) -> Self {
        match value {
            Value::Array(entries) => Self::List(entries.iter().map(Self::of).collect()),
            Value::Object(members) => Self::Object(
                members.iter().map(|(name, member)| (name.clone(), Self::of(member))).collect(),
            ),
            scalar => Self::Raw(scalar.to_string()),
        }
    }

    pub(crate) fn text(&self) -> String {
        let mut text = String::new();
        self.write(&mut text);
        text
    }

    fn write(&self, text: &mut String) {
        match self {
            Self::Raw(raw) => text.push_str(raw),
            Self::List(entries) => {
                text.push('[');
                for (i, entry) in entries.iter().enumerate() {
                    text.push_str(if i > 0 { "," } else { "" });
                    entry.write(text);
                }
                text.push(']');
            }
            Self::Object(members) => {
                text.push('{');
                for (i, (name, member)) in members.iter().enumerate() {
                    let comma = if i > 0 { "," } else { "" };
                    write!(text, "{comma}{}:", Value::from(name.as_str())).unwrap();
                    member.write(text);
                }
                text.push('}');
            }
        }
    }

    /// Every part of the tree, by its path; the first is the tree itself.
    pub(crate) fn paths(&self) -> Vec<Path> {
        let mut found = vec![Vec::new()];
        let parts: Vec<&Self> = match self {
            Self::Raw(_) => Vec::new(),
            Self::List(entries) => entries.iter().collect(),
            Self::Object(members) => members.iter().map(|(_, member)| member).collect(),
        };
        for (i, part) in parts.into_iter().enumerate() {
            found.extend(part.paths().into_iter().map(|rest| [vec![i], rest].concat()));
        }
        found
    }

    pub(crate) fn at(&mut self, path: &[usize]) -> &mut Self {
        let Some((first, rest)) = path.split_first() else { return self };
        match self {
            Self::Raw(_) => unreachable!("a path leads through lists and objects"),
            Self::List(entries) => entries[*first].at(rest),
            Self::Object(members) => members[*first].1.at(rest),
        }
    }

    /// A path as a fault names it.
    pub(crate) fn name(&self, path: &[usize]) -> String {
        let Some((first, rest)) = path.split_first() else { return String::new() };
        let (step, part) = match self {
            Self::Raw(_) => unreachable!("a path leads through lists and objects"),
            Self::List(entries) => (format!("[{first}]"), &entries[*first]),
            Self::Object(members) => (members[*first].0.clone(), &members[*first].1),
        };
        let rest = part.name(rest);
        let point = if rest.is_empty() || rest.starts_with('[') { "" } else { "." };
        format!("{step}{point}{rest}")
    }
}
