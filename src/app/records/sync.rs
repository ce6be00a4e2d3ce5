//! Holds what the page shows and what the store keeps to each other: which records are still to be written, and what
//! other tabs have written meanwhile.
//!
//! Kept sets are shared by all tabs. Each tab has a record of its own for the answers in hand. A new tab takes up the
//! answers that were written last, with their record; once somebody else has written there, whoever has typed moves to
//! a record of their own, and whoever has not follows.

use std::collections::BTreeMap;
use std::rc::Rc;

use protocol::document::{self, Document, Fitting};

use super::{Change, Kind, Record, RecordFormat, Undo};
use crate::order;
use crate::state::State;

/// A kept set as it stands on the disk.
#[derive(Clone, Debug, PartialEq)]
struct Known {
    id: String,
    text: String,
    set: Fitting,
}

/// What this tab knows to be on the disk, of all that it may change.
#[derive(Clone, Debug, Default, PartialEq)]
struct Base {
    sets: BTreeMap<u128, Known>,
    /// The same sets, in the order of the page.
    shown: Vec<Fitting>,
    answers: Option<(String, Document)>,
    undo: Option<(String, Undo)>,
}

/// Answers in hand that another tab has, or had.
#[derive(Clone, Debug, PartialEq)]
pub struct Begun {
    /// The id of their record.
    pub id: String,
    /// The answers.
    pub document: Document,
    text: String,
}

/// What the tab knows of the store that it shares with others.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shared {
    /// A name for this load of the page that no other has.
    tab: String,
    /// How often it moved to another record.
    moves: u32,
    /// The id of the record of this tab's answers; empty until the store has been read.
    pub own: String,
    base: Rc<Base>,
    /// The person has typed in this tab, which therefore follows no other.
    typed: bool,
    /// Answers in hand of other tabs, the newest first.
    pub others: Vec<Begun>,
    /// Records that cannot be read. They are never changed.
    pub unreadable: Vec<Record>,
    /// Records to be removed, for a person asked for it.
    removals: Vec<Change>,
    /// A set of which the person is told once it is on the disk.
    pub awaited: Option<u128>,
    /// The person was told that nothing is kept.
    pub told: bool,
}

/// Changes to be written, and what is on the disk once they are.
#[derive(Clone, Debug, PartialEq)]
pub struct Pending {
    /// The changes.
    pub changes: Vec<Change>,
    base: Rc<Base>,
}

impl Shared {
    /// Nothing is known yet. `tab` is a name for this load of the page that no other has.
    #[must_use]
    pub fn of(tab: String) -> Self {
        Self { tab, ..Self::default() }
    }

    /// Whether the set that a person waits for is on the disk; says so once.
    pub(crate) fn has_awaited(&mut self) -> bool {
        let base = &self.base;
        self.awaited.take_if(|set| base.sets.contains_key(set)).is_some()
    }

    /// A new record for this tab's answers: what stands in the one it had is somebody else's.
    fn move_on(&mut self) {
        self.moves += 1;
        self.own = format!("{}-{}", self.tab, self.moves);
        let base = Rc::make_mut(&mut self.base);
        base.answers = None;
        base.undo = None;
    }
}

/// The records as this build reads them.
#[derive(Default)]
struct Disk {
    sets: BTreeMap<u128, Known>,
    answers: Vec<Begun>,
    undo: Vec<(String, String, Undo)>,
    /// The id of the answers that were written last, or emptied last and can be brought back.
    latest: Option<String>,
    /// What can be read of answers that cannot be read in full, by id.
    mended: BTreeMap<String, Document>,
    unreadable: Vec<Record>,
}

impl Disk {
    fn of(records: Vec<Record>) -> Self {
        let mut disk = Self::default();
        let newest = order::sorted(&records, |a, b| b.written_ms.total_cmp(&a.written_ms));
        for record in newest {
            if !disk.takes(&record) {
                disk.unreadable.push(record);
            }
        }
        disk
    }

    /// Takes a record up, if it can be read.
    fn takes(&mut self, record: &Record) -> bool {
        let (id, text) = (record.id.clone(), record.text.clone());
        if record.format != RecordFormat::Known {
            return false;
        }
        match record.kind {
            Kind::Set => match document::read_fitting(&text) {
                Ok(set) => drop(self.sets.entry(identity(&set)).or_insert(Known { id, text, set })),
                Err(_) => return false,
            },
            Kind::Answers => {
                self.latest.get_or_insert_with(|| id.clone());
                let (document, lost) = crate::state::read_kept(&text);
                if lost.is_some() {
                    self.mended.insert(id, document);
                    return false;
                }
                self.answers.push(Begun { id, document, text });
            }
            Kind::Undo => match Undo::read(&text) {
                Some(undo) => {
                    self.latest.get_or_insert_with(|| id.clone());
                    self.undo.push((id, text, undo));
                }
                None => return false,
            },
            Kind::Aside => return false,
            Kind::TakenOver => {}
        }
        true
    }

    /// Whether a tab has left anything under this id.
    fn has(&self, id: &str) -> bool {
        let unreadable =
            |record: &Record| record.id == id && matches!(record.kind, Kind::Answers | Kind::Undo);
        self.answers(id).is_some()
            || self.undo(id).is_some()
            || self.unreadable.iter().any(unreadable)
    }

    fn answers(&self, id: &str) -> Option<(String, Document)> {
        let begun = self.answers.iter().find(|begun| begun.id == id)?;
        Some((begun.text.clone(), begun.document.clone()))
    }

    fn undo(&self, id: &str) -> Option<(String, Undo)> {
        let (_, text, undo) = self.undo.iter().find(|(of, ..)| of == id)?;
        Some((text.clone(), undo.clone()))
    }
}

impl State {
    /// What is still to be written; none if the disk has everything, or has not been read.
    #[must_use]
    pub fn pending(&self) -> Option<Pending> {
        let shared = &self.shared;
        if shared.own.is_empty() {
            return None;
        }
        let mut changes = shared.removals.clone();
        let mut base = Rc::clone(&shared.base);
        if self.document.fittings != base.shown {
            write_sets(&self.document.fittings, Rc::make_mut(&mut base), &mut changes);
        }
        let own = self.own_answers();
        let answers = (own != Document::default()).then_some(own);
        if answers.as_ref() != base.answers.as_ref().map(|(_, document)| document) {
            let new = answers.map(|document| (document::save(&document), document));
            let old = std::mem::replace(&mut Rc::make_mut(&mut base).answers, new.clone());
            changes.push(change(Kind::Answers, &shared.own, old.map(first), new.map(first)));
        }
        if self.undo.as_deref() != base.undo.as_ref().map(|(_, undo)| undo) {
            let new = self.undo.as_deref().map(|undo| (undo.save(), undo.clone()));
            let old = std::mem::replace(&mut Rc::make_mut(&mut base).undo, new.clone());
            changes.push(change(Kind::Undo, &shared.own, old.map(first), new.map(first)));
        }
        (!changes.is_empty()).then_some(Pending { changes, base })
    }

    /// The changes are on the disk.
    pub(crate) fn written(&mut self, pending: &Pending) {
        let shared = &mut self.shared;
        shared.base = Rc::clone(&pending.base);
        shared.removals.retain(|removal| !pending.changes.contains(removal));
        shared.told = false;
        shared.typed |= pending.changes.iter().any(|change| change.kind == Kind::Answers);
    }

    /// Takes over what stands in the store. `session` is the record that this tab had before it was loaded anew.
    /// Says whether the answers are now another tab's.
    pub(crate) fn merge(&mut self, records: Vec<Record>, session: Option<String>) -> bool {
        let mut disk = Disk::of(records);
        self.document.fittings = merged(&self.document.fittings, &self.shared.base, &disk.sets);
        let base = Rc::make_mut(&mut self.shared.base);
        base.sets = std::mem::take(&mut disk.sets);
        base.shown =
            newest_first(&base.sets.values().map(|known| known.set.clone()).collect::<Vec<_>>());
        let followed = if self.shared.own.is_empty() {
            self.take_up(&disk, session);
            false
        } else {
            self.follow(&disk)
        };
        self.shared.unreadable = disk.unreadable;
        // What has changed since a person saw it is not removed.
        self.shared.removals.clear();
        let own = self.own_answers();
        self.shared.others = disk.answers;
        self.shared.others.retain(|begun| begun.id != self.shared.own && begun.document != own);
        followed
    }

    /// The store has been read for the first time: the tab takes up the answers that it had, or those written last.
    fn take_up(&mut self, disk: &Disk, session: Option<String>) {
        // A tab in which nothing was done yet is as good as a new one.
        let id = session.filter(|id| disk.has(id)).or_else(|| disk.latest.clone());
        let typed = self.own_answers() != Document::default() || self.undo.is_some();
        // What was typed before the store was open stays; what was there before is offered beside it.
        let Some(id) = id.filter(|_| !typed) else {
            self.shared.move_on();
            return;
        };
        if let Some(document) = disk.mended.get(&id) {
            self.shared.move_on();
            self.show(document.clone());
            return;
        }
        let (answers, undo) = (disk.answers(&id), disk.undo(&id));
        // A record that this build cannot read is left alone.
        if disk.unreadable.iter().any(|record| record.id == id) {
            self.shared.move_on();
        } else {
            self.shared.own = id;
        }
        self.undo = undo.as_ref().map(|(_, undo)| Box::new(undo.clone()));
        if let Some((_, document)) = &answers {
            self.show(document.clone());
        }
        let base = Rc::make_mut(&mut self.shared.base);
        (base.answers, base.undo) = (answers, undo);
    }

    /// Somebody else may have written to this tab's record. Says whether the tab shows that now.
    fn follow(&mut self, disk: &Disk) -> bool {
        let own = &self.shared.own;
        let (answers, undo) = (disk.answers(own), disk.undo(own));
        let base = &self.shared.base;
        let same = |ours: Option<&String>, theirs: Option<&String>| ours == theirs;
        if same(base.answers.as_ref().map(|a| &a.0), answers.as_ref().map(|a| &a.0))
            && same(base.undo.as_ref().map(|u| &u.0), undo.as_ref().map(|u| &u.0))
            && !disk.unreadable.iter().any(|record| record.id == *own)
        {
            return false;
        }
        let shown = base.answers.as_ref().map(|(_, document)| document.clone()).unwrap_or_default();
        let ours = self.own_answers();
        // It was this tab after all, and only the word that it is written was lost.
        if answers.as_ref().map(|(_, document)| document) == Some(&ours) {
            let base = Rc::make_mut(&mut self.shared.base);
            (base.answers, base.undo) = (answers, undo);
            return false;
        }
        let typed = self.shared.typed || ours != shown;
        match answers.filter(|_| !typed) {
            Some((text, document)) => {
                let differs = document != shown;
                self.show(document.clone());
                self.undo = undo.as_ref().map(|(_, undo)| Box::new(undo.clone()));
                let base = Rc::make_mut(&mut self.shared.base);
                (base.answers, base.undo) = (Some((text, document)), undo);
                differs
            }
            None => {
                self.shared.move_on();
                false
            }
        }
    }

    /// Takes the answers of another tab out of the store, for they are in hand here now.
    pub(crate) fn claim(&mut self, id: &str) -> Option<Document> {
        let others = &mut self.shared.others;
        let begun = others.remove(others.iter().position(|begun| begun.id == id)?);
        self.shared.removals.push(change(Kind::Answers, id, Some(begun.text), None));
        Some(begun.document)
    }

    /// Takes a record that cannot be read out of the store. One of a later version stays.
    pub(crate) fn discard(&mut self, kind: Kind, id: &str) {
        let shared = &mut self.shared;
        let gone = shared.unreadable.iter().position(|record| {
            record.kind == kind && record.id == id && record.format != RecordFormat::Newer
        });
        if let Some(gone) = gone.map(|i| shared.unreadable.remove(i)) {
            shared.removals.push(change(kind, id, Some(gone.text), None));
        }
    }

    /// The answers in hand, without the kept sets.
    #[must_use]
    pub fn own_answers(&self) -> Document {
        let Document { label, answers, typed, .. } = &self.document;
        Document {
            label: label.clone(),
            answers: answers.clone(),
            typed: typed.clone(),
            ..Document::default()
        }
    }
}

fn first<T>((text, _): (String, T)) -> String {
    text
}

fn change(kind: Kind, id: &str, before: Option<String>, after: Option<String>) -> Change {
    Change { kind, id: id.to_owned(), before, after }
}

/// Adds the changes that make these sets those on the disk.
fn write_sets(sets: &[Fitting], base: &mut Base, changes: &mut Vec<Change>) {
    let mut left = std::mem::take(&mut base.sets);
    for set in sets {
        let identity = identity(set);
        let known = left.remove(&identity);
        if let Some(known) = known.as_ref().filter(|known| known.set == *set) {
            base.sets.insert(identity, known.clone());
            continue;
        }
        let id =
            known.as_ref().map_or_else(|| format!("{identity:032x}"), |known| known.id.clone());
        let text = document::save_fitting(set);
        changes.push(change(Kind::Set, &id, known.map(|known| known.text), Some(text.clone())));
        base.sets.insert(identity, Known { id, text, set: set.clone() });
    }
    for known in left.into_values() {
        changes.push(change(Kind::Set, &known.id, Some(known.text), None));
    }
    base.shown = sets.to_vec();
}

/// The kept sets of this tab, with what other tabs added, completed and removed.
fn merged(ours: &[Fitting], base: &Base, disk: &BTreeMap<u128, Known>) -> Vec<Fitting> {
    let mut sets = Vec::new();
    let mut seen = std::collections::BTreeSet::new();
    for set in ours {
        let identity = identity(set);
        seen.insert(identity);
        match (base.sets.get(&identity), disk.get(&identity)) {
            // Another tab has removed it.
            (Some(_), None) => {}
            (Some(before), Some(now)) if before.set == *set => sets.push(now.set.clone()),
            (None, Some(now)) if set.strings.is_none() => sets.push(now.set.clone()),
            _ => sets.push(set.clone()),
        }
    }
    for (identity, now) in disk {
        // What this tab has removed is not brought back before that is written.
        if !seen.contains(identity) && !base.sets.contains_key(identity) {
            sets.push(now.set.clone());
        }
    }
    newest_first(&sets)
}

/// Kept sets with the newest first.
#[must_use]
pub fn newest_first(sets: &[Fitting]) -> Vec<Fitting> {
    // What was put by has a date and no time, and came last on its day.
    let at = |set: &Fitting| match set.at.len() {
        10 => format!("{}~", set.at),
        _ => set.at.clone(),
    };
    // The order is the same in every tab, also of those that were kept at one time.
    order::sorted(sets, |a, b| at(b).cmp(&at(a)).then_with(|| identity(a).cmp(&identity(b))))
}

/// What makes a kept set the one it is, whichever tab or file it comes from: when it was kept, its label and its
/// answers. In which words it is told, and of which strings it is made, follows from them.
#[must_use]
pub fn identity(set: &Fitting) -> u128 {
    let named = Fitting {
        at: set.at.clone(),
        label: set.label.clone(),
        answers: set.answers.clone(),
        typed: set.typed.clone(),
        invented: set.invented.clone(),
        ..Fitting::default()
    };
    fingerprint(&document::save_fitting(&named))
}

/// The hash FNV-1a of 128 bits, after Fowler, Noll and Vo.
pub(super) fn fingerprint(text: &str) -> u128 {
    const START: u128 = 0x6c62_272e_07bb_0142_62b8_2175_6295_c58d;
    const PRIME: u128 = 0x0000_0000_0100_0000_0000_0000_0000_013b;
    text.bytes().fold(START, |hash, byte| (hash ^ u128::from(byte)).wrapping_mul(PRIME))
}
