//! What is kept on this machine, as records: the types of the store, and what a store must do.
//!
//! A record is a text under a kind and an id. Nothing here knows the browser: [`Backend`] is implemented by
//! `platform::storage` on IndexedDB, and by [`memory`] for the tests, where any call can be made to fail.
//!
//! Two rules keep what a person typed. All changes of a [`Backend::commit`] happen or none does, and it returns when
//! they are on the disk. And a [`Change`] names the text that it replaces: if another tab, or another version of the
//! page, has put something else there, nothing is written, and the tab reads again first.

#[cfg(test)]
mod memory;
mod sync;
mod takeover;
mod undo;

#[cfg(test)]
mod tests;

pub use sync::{Begun, Pending, Shared, identity, newest_first};
pub use takeover::{Loaded, OldText, load};
pub use undo::Undo;

/// The version in which this build writes records. A record of a later version is never changed.
///
/// 2: fittings keep what was typed as `typed`, where those of version 1 have `drafts`.
pub const VERSION: u32 = 2;

/// What a record holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// The answers of one tab that are not kept as a set: a saved file without kept sets. The id names the tab.
    Answers,
    /// A set that a person kept.
    Set,
    /// What the last great change of a tab replaced, to bring it back. The id is that of the tab's answers.
    Undo,
    /// A text that an earlier build set aside because it could not be read.
    Aside,
    /// A text of an earlier build's store as it was taken over; the id is its name there.
    TakenOver,
}

impl Kind {
    /// Every kind that this build knows.
    pub const ALL: [Self; 5] = [Self::Answers, Self::Set, Self::Undo, Self::Aside, Self::TakenOver];

    /// The word for it in the store.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Answers => "answers",
            Self::Set => "set",
            Self::Undo => "undo",
            Self::Aside => "aside",
            Self::TakenOver => "taken-over",
        }
    }
}

/// Whether this build understands how a record is stored. What its text says is another question.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RecordFormat {
    /// Written by this version or an earlier one.
    Known,
    /// Written by a later version.
    Newer,
    /// Not a record of ours.
    Damaged,
}

/// A record as it stands in the store.
#[derive(Clone, Debug, PartialEq)]
pub struct Record {
    /// What it holds.
    pub kind: Kind,
    /// Its name among those of its kind.
    pub id: String,
    /// Its text; of a damaged one, whatever stands there, as JSON.
    pub text: String,
    /// When it was written, in milliseconds since 1970; 0 if unknown.
    pub written_ms: f64,
    /// Whether this build understands how it is stored.
    pub format: RecordFormat,
}

/// A change of one record. Without a text before, it is new; without one after, it is removed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Change {
    /// What it holds.
    pub kind: Kind,
    /// Its name among those of its kind.
    pub id: String,
    /// The text that it replaces.
    pub before: Option<String>,
    /// The new text.
    pub after: Option<String>,
}

/// Why the store did not do what it was asked for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum StoreError {
    /// The browser keeps nothing for this page: a setting, or a private window.
    Unavailable,
    /// A later version of the page owns the store: it can be read at most.
    Later,
    /// Something else stands where a change expected the text that it replaces. Nothing was written.
    Changed,
    /// The browser gave up, for this reason. Nothing was written.
    Failed(String),
}

/// A place that keeps records.
#[expect(
    async_fn_in_trait,
    reason = "the page has one thread, so nobody asks whether a future can be sent"
)]
pub trait Backend {
    /// Every record of these kinds, as of one moment.
    ///
    /// # Errors
    /// [`StoreError::Unavailable`] or [`StoreError::Failed`].
    async fn read(&self, kinds: &[Kind]) -> Result<Vec<Record>, StoreError>;

    /// Makes all of the changes or none, and returns when they are on the disk.
    ///
    /// # Errors
    /// Any [`StoreError`].
    async fn commit(&self, changes: &[Change]) -> Result<(), StoreError>;
}
