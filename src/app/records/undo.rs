//! What a great change replaced: other answers, sets that went and sets that came.

use protocol::document::{self, Document, Fitting};
use serde_json::Value;

use super::sync::{identity, newest_first};

/// The way back from a great change. What was done to other sets meanwhile, here or in another tab, stays done.
#[derive(Clone, Debug, PartialEq)]
pub struct Undo {
    /// The answers before it, with the sets that went.
    before: Document,
    /// The sets that came, as the list of a document.
    came: Document,
}

impl Undo {
    /// The way back from one document to another.
    #[must_use]
    pub fn between(before: &Document, after: &Document) -> Self {
        let answers = Document { fittings: Vec::new(), ..before.clone() };
        Self {
            before: Document { fittings: without(&before.fittings, &after.fittings), ..answers },
            came: Document {
                fittings: without(&after.fittings, &before.fittings),
                ..Document::default()
            },
        }
    }

    /// The document when the change is undone.
    #[must_use]
    pub fn applied_to(self, document: &Document) -> Document {
        let mut fittings = without(&document.fittings, &self.came.fittings);
        fittings.extend(without(&self.before.fittings, &fittings));
        Document { fittings: newest_first(&fittings), ..self.before }
    }

    /// Its text in the store.
    #[must_use]
    pub fn save(&self) -> String {
        format!("[{},{}]", document::save(&self.before), document::save(&self.came))
    }

    /// Reads its text; none if it cannot be read in full.
    #[must_use]
    pub fn read(text: &str) -> Option<Self> {
        let value: Value = serde_json::from_str(text).ok()?;
        let part = |i: usize| document::read(&value.get(i)?.to_string()).ok();
        Some(Self { before: part(0)?, came: part(1)? })
    }
}

/// The sets of one list that another one does not have.
fn without(sets: &[Fitting], others: &[Fitting]) -> Vec<Fitting> {
    let others: std::collections::BTreeSet<_> = others.iter().map(identity).collect();
    sets.iter().filter(|set| !others.contains(&identity(set))).cloned().collect()
}
