//! Which document is in hand: opening, keeping and removing fittings, and the way back. Nothing in hand is ever lost to
//! another document.

use protocol::document::{self, Document, Fitting, KeptString, Note};

use super::{Notice, State, dates};
use crate::day;
use crate::invented;
use crate::records::{Undo, identity, newest_first};
use crate::words::fitting;
use crate::words::{fault, say};

impl State {
    pub(super) fn open(&mut self, name: &str, text: &str) {
        let (opened, notes) = match read_file(text) {
            Ok(read) => read,
            Err(reason) => {
                let text = say!("told-not-open", name = name, reason = reason);
                self.notice = Some(Notice::grave(text));
                return;
            }
        };
        let opened = dates::dated(opened, self.today);
        let (mut fittings, put_by) = self.put_by(&opened);
        let had = fittings.len();
        for fitting in &opened.fittings {
            let same = |other: &Fitting| match &fitting.invented {
                Some(_) => other.invented == fitting.invented,
                None => identity(other) == identity(fitting),
            };
            if !fittings.iter().any(same) {
                fittings.push(fitting.clone());
            }
        }
        let added = fittings.len() - had;
        self.replace(Document { fittings: newest_first(&fittings), ..opened });
        let mut told = if notes.is_empty() {
            say!("told-open", name = name)
        } else {
            say!("told-half-open", name = name, notes = notes.join("; "))
        };
        if added > 0 {
            told = format!("{told} {}", say!("told-added", count = added));
        }
        if put_by {
            told = format!("{told} {}", say!("told-had"));
        }
        self.notice = Some(Notice { grave: !notes.is_empty(), ..Notice::undoable(told) });
    }

    pub(super) fn start_over(&mut self) {
        let fittings = self.document.fittings.clone();
        self.replace(Document { fittings, ..Document::default() });
        self.notice = Some(Notice::undoable(say!("told-empty").to_owned()));
    }

    /// Opens a kept set. What was being answered is kept beside it, or it would be lost once one has gone on.
    pub(super) fn reopen(&mut self, identity: u128) {
        let Some(i) = self.index_of(identity) else { return };
        let Fitting { answers, typed, label, invented, .. } = self.document.fittings[i].clone();
        let next = Document { label, answers, typed, ..Document::default() };
        let mut next = dates::dated(next, self.today);
        let (mut fittings, put_by) = self.put_by(&next);
        if let Some(name) = invented.as_deref().and_then(invented::name) {
            // By this name it is found again when the examples go.
            for same in fittings.iter_mut().filter(|other| other.invented == invented) {
                name.clone_into(&mut same.label);
            }
            name.clone_into(&mut next.label);
        }
        self.replace(Document { fittings: newest_first(&fittings), ..next });
        self.tell_reopened(put_by);
    }

    pub(super) fn remove(&mut self, identity: u128) {
        let Some(i) = self.index_of(identity) else { return };
        let mut left = self.document.clone();
        let gone = left.fittings.remove(i);
        self.replace(left);
        let text = say!("told-removed", name = fitting::name(&gone));
        self.notice = Some(Notice::undoable(text));
    }

    pub(super) fn take_over(&mut self, id: &str) {
        let Some(document) = self.claim(id) else { return };
        let document = dates::dated(document, self.today);
        let (fittings, put_by) = self.put_by(&document);
        self.replace(Document { fittings, ..document });
        self.tell_reopened(put_by);
    }

    fn tell_reopened(&mut self, put_by: bool) {
        let text = if put_by { say!("told-put-by") } else { say!("told-reopened") };
        self.notice = Some(Notice::undoable(text.to_owned()));
    }

    pub(super) fn keep(&mut self, at: String, strings: Vec<KeptString>, summary: Vec<String>) {
        let Some(found) = &self.found else { return };
        let fittings = &mut self.document.fittings;
        let label = self.document.label.clone();
        let of = |fitting: &Fitting| fitting.is_of(&label, &found.answers);
        // What was invented stays invented, however often it is kept.
        let invented = fittings.iter().find(|fitting| of(fitting)).and_then(|f| f.invented.clone());
        // The same set for the same person is kept once, under its latest date.
        fittings.retain(|fitting| !of(fitting));
        let fitting = Fitting {
            at,
            label,
            answers: (*found.answers).clone(),
            summary,
            strings: Some(strings),
            invented,
            ..Fitting::default()
        };
        self.shared.awaited = Some(identity(&fitting));
        fittings.push(fitting);
        *fittings = newest_first(fittings);
        // That it is kept is told once it is.
        self.notice = None;
    }

    pub(super) fn complete(&mut self, fitting: &Fitting, strings: Vec<KeptString>) {
        let mut fittings = self.document.fittings.iter_mut();
        if let Some(known) = fittings.find(|kept| *kept == fitting) {
            known.strings = Some(strings);
        }
    }

    pub(super) fn add_invented(&mut self, at: &str) {
        let fittings = &mut self.document.fittings;
        fittings.retain(|fitting| fitting.invented.is_none());
        fittings.extend(invented::fittings(at));
        *fittings = newest_first(fittings);
        self.notice = Some(Notice::good(say!("told-invented").to_owned()));
    }

    pub(super) fn remove_invented(&mut self) {
        let mut left = self.document.clone();
        let invented = |fitting: &Fitting| fitting.invented.is_some();
        // An example that was opened and left as it is goes too; one that was changed is the person's own.
        if self.kept_as().is_some_and(invented) {
            left = Document { fittings: left.fittings, ..Document::default() };
        }
        left.fittings.retain(|fitting| !invented(fitting));
        self.replace(left);
        self.notice = Some(Notice::undoable(say!("told-uninvented").to_owned()));
    }

    pub(super) fn undo(&mut self) {
        let Some(undo) = self.undo.take() else { return };
        // What was typed since comes back by undoing once more.
        let before = undo.applied_to(&self.document);
        self.replace(before);
        self.notice = Some(Notice::undoable(say!("told-undone").to_owned()));
    }

    pub(super) fn add_unsaved(&mut self, document: Document) {
        for fitting in &document.fittings {
            if self.index_of(identity(fitting)).is_none() {
                self.document.fittings.push(fitting.clone());
            }
        }
        self.document.fittings = newest_first(&self.document.fittings);
        if !self.is_begun() {
            self.show(document);
        }
    }

    /// Puts another document in place, from which one can come back.
    fn replace(&mut self, document: Document) {
        let before = self.document.clone();
        self.take_in(document);
        self.undo = Some(Box::new(Undo::between(&before, &self.document)));
    }

    /// Shows other answers in place of those in hand, as another tab or an earlier visit left them.
    pub(crate) fn show(&mut self, document: Document) {
        let fittings = std::mem::take(&mut self.document.fittings);
        self.take_in(Document { fittings, ..document });
    }

    /// Takes a document in hand. Invalid text that was typed on another day is reported at once.
    pub(super) fn take_in(&mut self, document: Document) {
        self.document = dates::dated(document, self.today);
        self.typed_days = None;
        self.refused.clear();
        self.shown = self.errors().into_iter().map(|error| error.field).collect();
    }

    /// The kept sets, with the answers in hand among them if these would be lost to the next, and whether they would.
    fn put_by(&self, next: &Document) -> (Vec<Fitting>, bool) {
        let mut fittings = self.document.fittings.clone();
        let Document { label, answers, typed, .. } = self.own_answers();
        let is_next = (&label, &answers, &typed) == (&next.label, &next.answers, &next.typed);
        let is_kept = self.kept_as().is_some() && self.errors().is_empty();
        let put_by = self.is_begun() && !is_next && !is_kept;
        if put_by {
            let (at, answers) = (day::written(self.today), self.answers());
            fittings.push(Fitting { at, label, answers, typed, ..Fitting::default() });
        }
        (newest_first(&fittings), put_by)
    }

    /// The place of the kept set of this identity.
    fn index_of(&self, wanted: u128) -> Option<usize> {
        self.document.fittings.iter().position(|fitting| identity(fitting) == wanted)
    }

    /// The kept fitting that the answers are, as they stand.
    fn kept_as(&self) -> Option<&Fitting> {
        let (document, answers) = (&self.document, self.answers());
        document.fittings.iter().find(|kept| kept.is_of(&document.label, &answers))
    }
}

/// Reads a saved file, and says what it had to mend.
///
/// # Errors
/// When nothing of it can be read, with the reason.
pub fn read_file(text: &str) -> Result<(Document, Vec<String>), String> {
    let (document, notes) = document::restore(text);
    let told: Vec<String> = notes.iter().map(fault::note).collect();
    let unread = |note: &Note| matches!(note, Note::NotJson(_) | Note::NotOurs | Note::Later(_));
    if notes.iter().any(unread) { Err(told.join("; ")) } else { Ok((document, told)) }
}

/// Reads what this browser kept: the document, and what could not be read of it, if some of it would be lost.
#[must_use]
pub fn read_kept(text: &str) -> (Document, Option<String>) {
    let (document, notes) = document::restore(text);
    let whole = document::read(text).is_ok_and(|strict| strict == document);
    let told = || notes.iter().map(fault::note).collect::<Vec<_>>().join("; ");
    (document, (!whole).then(told))
}
