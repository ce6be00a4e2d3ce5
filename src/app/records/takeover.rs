//! Takes over what earlier builds kept as texts in the browser's `localStorage`.
//!
//! Each text is taken over once, and again when an older build in another tab has written a new one. The text itself is
//! put into the store with what was read out of it, in one commit, and stays where it was until a later start has found
//! it in the store.

use protocol::document::{self, Document};

use super::sync::{fingerprint, identity};
use super::{Backend, Change, Kind, Record, StoreError};
use crate::state::read_kept;

/// The name of the document among the old texts. All others are texts that were set aside.
const DOCUMENT: &str = "fitting";

/// What was read from the store when the page started.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Loaded {
    /// The records.
    pub records: Vec<Record>,
    /// Names of old texts that an earlier start has taken over, so that they need not stay where they are.
    pub done: Vec<String>,
    /// What is not in the store, for it could not be written.
    pub unsaved: Option<Document>,
    /// Why.
    pub fault: Option<StoreError>,
}

/// Reads the store, and takes old texts over first.
pub async fn load(backend: &impl Backend, old: &[OldText]) -> Loaded {
    let mut loaded = Loaded::default();
    // Once to read, once to read back what was taken over, and once more if another tab did so in the same moment.
    for turn in 0..3 {
        match backend.read(&Kind::ALL).await {
            Ok(records) => loaded.records = records,
            Err(fault) => return unsaved(loaded, old, fault),
        }
        let changes = takeover(old, &loaded.records);
        if turn == 0 {
            loaded.done = done(old, &loaded.records);
        }
        if changes.is_empty() {
            return loaded;
        }
        match backend.commit(&changes).await {
            Ok(()) | Err(StoreError::Changed) => {}
            Err(fault) => return unsaved(loaded, old, fault),
        }
    }
    loaded
}

/// Old texts could not be taken over, so what can be read of them goes along beside the records.
fn unsaved(mut loaded: Loaded, old: &[OldText], fault: StoreError) -> Loaded {
    let waiting = old
        .iter()
        .find(|old| old.name == DOCUMENT && taken(&old.name, &loaded.records) != Some(&old.text));
    loaded.unsaved = waiting.map(|old| read_kept(&old.text).0);
    loaded.fault = Some(fault);
    loaded
}

/// A text of the old store.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OldText {
    /// Its name.
    pub name: String,
    /// What it says.
    pub text: String,
}

/// The changes that take old texts over, given what is in the store.
fn takeover(old: &[OldText], records: &[Record]) -> Vec<Change> {
    let mut changes: Vec<Change> = Vec::new();
    for OldText { name, text } in old {
        let before = taken(name, records);
        if before == Some(text) {
            continue;
        }
        let mut add = |kind: Kind, id: String, after: String| {
            let is_there = records.iter().any(|record| record.kind == kind && record.id == id)
                || changes.iter().any(|change| change.kind == kind && change.id == id);
            if !is_there {
                changes.push(Change { kind, id, before: None, after: Some(after) });
            }
        };
        let aside = || format!("{:032x}", fingerprint(text));
        if name == DOCUMENT {
            let (document, lost) = read_kept(text);
            let last = before.map(|text| read_kept(text).0).unwrap_or_default();
            for set in &document.fittings {
                // What was taken over before may have been removed since, and stays removed.
                if !last.fittings.iter().any(|known| identity(known) == identity(set)) {
                    let id = format!("{:032x}", identity(set));
                    add(Kind::Set, id, document::save_fitting(set));
                }
            }
            let (answers, before) = (without_sets(document), without_sets(last));
            if answers != Document::default() && answers != before {
                let id = format!("old-{:032x}", fingerprint(text));
                add(Kind::Answers, id, document::save(&answers));
            }
            if lost.is_some() {
                add(Kind::Aside, aside(), text.clone());
            }
        } else {
            add(Kind::Aside, aside(), text.clone());
        }
        changes.push(Change {
            kind: Kind::TakenOver,
            id: name.clone(),
            before: before.cloned(),
            after: Some(text.clone()),
        });
    }
    // The last copy of a text that is gone from the old store is let go one start later.
    for record in records.iter().filter(|record| record.kind == Kind::TakenOver) {
        if !old.iter().any(|old| old.name == record.id) {
            changes.push(Change {
                kind: Kind::TakenOver,
                id: record.id.clone(),
                before: Some(record.text.clone()),
                after: None,
            });
        }
    }
    changes
}

/// The names of old texts that the store holds word for word.
fn done(old: &[OldText], records: &[Record]) -> Vec<String> {
    let is_done = |old: &&OldText| taken(&old.name, records) == Some(&old.text);
    old.iter().filter(is_done).map(|old| old.name.clone()).collect()
}

/// The text of this name as it was taken over last.
fn taken<'a>(name: &str, records: &'a [Record]) -> Option<&'a String> {
    let record = records.iter().find(|r| r.kind == Kind::TakenOver && r.id == name)?;
    Some(&record.text)
}

fn without_sets(document: Document) -> Document {
    Document { fittings: Vec::new(), ..document }
}
