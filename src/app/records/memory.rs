//! A store in memory, in which any call can be made to fail.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;

use super::{Backend, Change, Kind, Record, RecordFormat, StoreError};

/// How a call fails.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Failure {
    /// Nothing is done.
    Undone,
    /// It is done, but whoever called hears that it is not, as when a tab is closed in that moment.
    Unheard,
}

/// A store in memory.
#[derive(Default)]
pub(super) struct Memory {
    /// What stands in it.
    pub(super) records: RefCell<BTreeMap<(Kind, String), Record>>,
    /// How many calls it has had.
    pub(super) calls: Cell<u32>,
    /// Which call fails, from 1, and how.
    pub(super) failing: Cell<Option<(u32, Failure)>>,
}

impl Memory {
    /// The text of a record.
    pub(super) fn text(&self, kind: Kind, id: &str) -> Option<String> {
        self.records.borrow().get(&(kind, id.to_owned())).map(|record| record.text.clone())
    }

    /// Puts a record in place as another program might.
    pub(super) fn plant(&self, kind: Kind, id: &str, text: &str, format: RecordFormat) {
        let written_ms = f64::from(self.calls.get());
        let record = Record { kind, id: id.to_owned(), text: text.to_owned(), written_ms, format };
        self.records.borrow_mut().insert((kind, id.to_owned()), record);
    }

    fn called(&self) -> Result<Option<StoreError>, StoreError> {
        self.calls.set(self.calls.get() + 1);
        let fault = StoreError::Failed("the test wants it".to_owned());
        match self.failing.get() {
            Some((n, Failure::Undone)) if n == self.calls.get() => Err(fault),
            Some((n, Failure::Unheard)) if n == self.calls.get() => Ok(Some(fault)),
            _ => Ok(None),
        }
    }

    fn write(&self, changes: &[Change]) -> Result<(), StoreError> {
        let mut after = self.records.borrow().clone();
        for Change { kind, id, before, after: text } in changes {
            let key = (*kind, id.clone());
            if after.get(&key).map(|record| &record.text) != before.as_ref() {
                return Err(StoreError::Changed);
            }
            match text {
                Some(text) => {
                    let written_ms = f64::from(self.calls.get());
                    let (id, text) = (id.clone(), text.clone());
                    let format = RecordFormat::Known;
                    after.insert(key, Record { kind: *kind, id, text, written_ms, format });
                }
                None => drop(after.remove(&key)),
            }
        }
        self.records.replace(after);
        Ok(())
    }
}

impl Backend for Memory {
    async fn read(&self, kinds: &[Kind]) -> Result<Vec<Record>, StoreError> {
        let unheard = self.called()?;
        let records = self.records.borrow();
        let found = records.values().filter(|record| kinds.contains(&record.kind)).cloned();
        unheard.map_or_else(|| Ok(found.collect()), Err)
    }

    async fn commit(&self, changes: &[Change]) -> Result<(), StoreError> {
        let unheard = self.called()?;
        self.write(changes)?;
        unheard.map_or(Ok(()), Err)
    }
}
