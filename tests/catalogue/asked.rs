//! Which messages the page asks for, read from its sources.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

/// A source of the page, without its tests and comments.
pub(crate) struct Source {
    /// Its path from the root.
    pub(crate) path: PathBuf,
    /// What is left of it.
    pub(crate) text: String,
}

/// The sources of the page.
pub(crate) fn sources() -> Vec<Source> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap();
    let mut found = Vec::new();
    walk(&root.join("src/app"), root, &mut found);
    // What is said before the page has started, the build writes into its start script.
    found.push(source(&root.join("src/tasks/scripts.rs"), root));
    found.sort_by(|a, b| a.path.cmp(&b.path));
    assert!(found.len() > 30, "the walk misses files: it found {}", found.len());
    found
}

fn walk(folder: &Path, root: &Path, found: &mut Vec<Source>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.file_stem().is_some_and(|name| name == "tests") {
            continue;
        }
        if path.is_dir() {
            walk(&path, root, found);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            found.push(source(&path, root));
        }
    }
}

fn source(path: &Path, root: &Path) -> Source {
    let text = fs::read_to_string(path).unwrap();
    let text = text.split("#[cfg(test)]\nmod tests {").next().unwrap_or_default();
    let lines = text.lines().filter(|line| !line.trim_start().starts_with("//"));
    let text = lines.collect::<Vec<_>>().join("\n");
    Source { path: path.strip_prefix(root).unwrap().to_path_buf(), text }
}

/// What is asked for.
pub(crate) struct Asked {
    /// Messages by name, with the words they are given and where.
    pub(crate) messages: Vec<(String, BTreeSet<String>, String)>,
    /// Families of which a key decides.
    families: BTreeSet<String>,
    /// Every text in the sources: a name may stand in a table.
    texts: BTreeSet<String>,
}

impl Asked {
    pub(crate) fn of<'a>(sources: impl IntoIterator<Item = &'a Source>) -> Self {
        let mut asked =
            Self { messages: Vec::new(), families: BTreeSet::new(), texts: BTreeSet::new() };
        for source in sources {
            let place = source.path.display().to_string();
            for (at, _) in source.text.match_indices("say!(") {
                let inside = inside(&source.text[at + "say!(".len()..]);
                let mut parts = parts(inside).into_iter();
                let Some(name) = parts.next().and_then(|name| literal(name.trim())) else {
                    continue;
                };
                let given =
                    parts.filter_map(|part| Some(part.split_once(" = ")?.0.trim().to_owned()));
                asked.messages.push((name, given.collect(), place.clone()));
            }
            for call in ["speech::of(", "speech::of_or_key(", "speech::of_filled("] {
                for (at, _) in source.text.match_indices(call) {
                    let inside = inside(&source.text[at + call.len()..]);
                    let family = parts(inside).into_iter().next();
                    asked.families.extend(family.and_then(|family| literal(family.trim())));
                }
            }
            asked.texts.extend(literals(&source.text).map(str::to_owned));
        }
        asked
    }

    /// Whether anything asks for a message, or a part of it.
    pub(crate) fn knows(&self, name: &str) -> bool {
        let of_family = |family: &String| {
            name.strip_prefix(family.as_str()).is_some_and(|rest| rest.starts_with('-'))
        };
        self.messages.iter().any(|(known, ..)| known == name)
            || self.texts.contains(name)
            || self.families.iter().any(of_family)
    }
}

/// The texts between quotes.
pub(crate) fn literals(text: &str) -> impl Iterator<Item = &str> {
    let mut rest = text;
    std::iter::from_fn(move || {
        let from = rest.find('"')? + 1;
        // A quote that is a character of its own opens nothing.
        if rest[..from].ends_with("'\"") {
            rest = &rest[from..];
            return Some("");
        }
        let mut end = from;
        let mut escaped = false;
        for c in rest[from..].chars() {
            if c == '"' && !escaped {
                break;
            }
            escaped = c == '\\' && !escaped;
            end += c.len_utf8();
        }
        let found = &rest[from..end];
        rest = rest.get(end + 1..).unwrap_or_default();
        Some(found)
    })
}

/// A text between quotes, if that is all there is.
fn literal(text: &str) -> Option<String> {
    Some(text.strip_prefix('"')?.strip_suffix('"')?.to_owned())
}

/// What stands before the bracket that closes.
fn inside(text: &str) -> &str {
    let (mut depth, mut quoted, mut before) = (0_i32, false, ' ');
    for (at, c) in text.char_indices() {
        match c {
            '"' if before != '\\' && before != '\'' => quoted = !quoted,
            '(' | '[' | '{' if !quoted => depth += 1,
            ')' | ']' | '}' if !quoted && depth == 0 => return &text[..at],
            ')' | ']' | '}' if !quoted => depth -= 1,
            _ => {}
        }
        before = c;
    }
    text
}

/// What stands between commas that are in no bracket.
fn parts(text: &str) -> Vec<&str> {
    let (mut depth, mut quoted, mut before, mut from) = (0_i32, false, ' ', 0);
    let mut found = Vec::new();
    for (at, c) in text.char_indices() {
        match c {
            '"' if before != '\\' && before != '\'' => quoted = !quoted,
            '(' | '[' | '{' if !quoted => depth += 1,
            ')' | ']' | '}' if !quoted => depth -= 1,
            ',' if !quoted && depth == 0 => {
                found.push(&text[from..at]);
                from = at + 1;
            }
            _ => {}
        }
        before = c;
    }
    found.push(&text[from..]);
    found
}
