//! Records in the browser's `IndexedDB`, each written with strict durability: a commit returns when it is on the disk.

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use indexed_db_futures::database::Database as Connection;
use indexed_db_futures::error::{Error, OpenDbError};
use indexed_db_futures::object_store::ObjectStore;
use indexed_db_futures::prelude::*;
use indexed_db_futures::transaction::{TransactionDurability, TransactionMode, TransactionOptions};
use indexed_db_futures::{KeyPath, KeyRange};
use js_sys::{JSON, Object, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::spawn_local;
use web_sys::DomException;

use super::{tabs, texts};
use crate::platform::clock;
use crate::records::{Backend, Change, Kind, Record, RecordFormat, StoreError, VERSION};

/// The name of the page's database.
const NAME: &str = "ropewalk";

/// The one store in it. A record is `{key, version, written, text}`; its key is its kind, a slash and its id.
const RECORDS: &str = "records";

/// Another connection than the one that just failed is tried once.
const TRIES: u32 = 2;

/// Hears that a later version has taken the database over.
type Report = Box<dyn Fn()>;

/// The page's database. It is opened when it is first needed, and copies share the connection.
#[derive(Clone)]
pub struct Database {
    name: &'static str,
    connection: Rc<RefCell<Option<Connection>>>,
    /// A later version of the page has taken the database over.
    later: Rc<Cell<bool>>,
    /// Hears of that.
    told: Rc<RefCell<Option<Report>>>,
}

impl Default for Database {
    fn default() -> Self {
        Self::of(NAME)
    }
}

impl Database {
    /// The database of this name.
    #[must_use]
    pub fn of(name: &'static str) -> Self {
        Self { name, connection: Rc::default(), later: Rc::default(), told: Rc::default() }
    }

    /// Reports when a later version of the page takes the database over.
    pub fn when_later(&self, report: impl Fn() + 'static) {
        self.told.replace(Some(Box::new(report)));
    }

    /// Whether a later version of the page has taken the database over, so that it can only be read.
    #[must_use]
    pub fn is_later(&self) -> bool {
        self.later.get()
    }

    async fn connection(&self) -> Result<Connection, StoreError> {
        if let Some(connection) = self.connection.borrow().clone() {
            return Ok(connection);
        }
        let connection = match open(self.name).await {
            Err(StoreError::Later) => {
                self.later.set(true);
                let request = Connection::open(self.name).build().map_err(|e| refused(&e))?;
                request.await.map_err(|e| refused(&e))?
            }
            opened => opened?,
        };
        self.connection.replace(Some(connection.clone()));
        self.give_way(&connection);
        Ok(connection)
    }

    /// Lets the database go when a later version wants to change it, or when it is deleted.
    fn give_way(&self, connection: &Connection) {
        let Ok(mut changes) = connection.version_changes() else { return };
        let (this, connection) = (self.clone(), connection.clone());
        spawn_local(async move {
            if let Some(change) = changes.recv().await
                && change.new_version().is_some()
            {
                this.later.set(true);
                if let Some(told) = this.told.borrow().as_ref() {
                    told();
                }
            }
            this.connection.replace(None);
            // What is being written is written first.
            connection.close();
        });
    }

    /// Closes the connection; the next call opens another one.
    fn close(&self) {
        if let Some(connection) = self.connection.take() {
            connection.close();
        }
    }

    async fn try_read(&self, kinds: &[Kind]) -> Result<Vec<Record>, StoreError> {
        let connection = self.connection().await?;
        let transaction = connection.transaction(RECORDS).build()?;
        let store = transaction.object_store(RECORDS)?;
        let mut records = Vec::new();
        for kind in kinds {
            // A slash stands before a digit nought among the characters.
            let (from, to) = (format!("{}/", kind.key()), format!("{}0", kind.key()));
            let range = KeyRange::Bound(from, false, to, true);
            let rows =
                store.get_all::<JsValue>().with_query::<String, _>(range).primitive()?.await?;
            for row in rows {
                records.push(record(*kind, &row?));
            }
        }
        Ok(records)
    }

    async fn try_commit(&self, changes: &[Change]) -> Result<(), StoreError> {
        let connection = self.connection().await?;
        if self.later.get() {
            return Err(StoreError::Later);
        }
        let strict = TransactionOptions::new().with_durability(TransactionDurability::Strict);
        let transaction = connection
            .transaction(RECORDS)
            .with_mode(TransactionMode::Readwrite)
            .with_options(strict)
            .build()?;
        let store = transaction.object_store(RECORDS)?;
        for change in changes {
            if text_of(&store, change).await? != change.before {
                // Dropped without a commit, a transaction undoes what it did.
                return Err(StoreError::Changed);
            }
            write(&store, change).await?;
        }
        Ok(transaction.commit().await?)
    }
}

impl Backend for Database {
    async fn read(&self, kinds: &[Kind]) -> Result<Vec<Record>, StoreError> {
        let mut result = Ok(Vec::new());
        for _ in 0..TRIES {
            result = self.try_read(kinds).await;
            if !matches!(result, Err(StoreError::Failed(_))) {
                return result;
            }
            self.close();
        }
        result
    }

    async fn commit(&self, changes: &[Change]) -> Result<(), StoreError> {
        let mut result = Ok(());
        for _ in 0..TRIES {
            result = self.try_commit(changes).await;
            if !matches!(result, Err(StoreError::Failed(_))) {
                break;
            }
            // The browser may have closed the connection, as when its data are cleared.
            self.close();
        }
        if result.is_ok() {
            texts::mark_stored();
            tabs::tell();
        }
        result
    }
}

async fn open(name: &str) -> Result<Connection, StoreError> {
    let request = Connection::open(name)
        .with_version(VERSION)
        .with_on_upgrade_needed(|event, database| {
            // Records of an earlier version stay as they are: what they say is upgraded when it is read.
            if event.old_version() < 1.0 {
                database.create_object_store(RECORDS).with_key_path(KeyPath::One("key")).build()?;
            }
            Ok(())
        })
        .build()
        .map_err(|error| refused(&error))?;
    request.await.map_err(|error| refused(&error))
}

/// Why a database was not opened.
fn refused(error: &OpenDbError) -> StoreError {
    match error {
        OpenDbError::Base(Error::DomException(exception)) => {
            let exception: JsValue = exception.clone().into();
            let name = exception.dyn_ref::<DomException>().map(DomException::name);
            match name.as_deref() {
                Some("VersionError") => StoreError::Later,
                // Firefox and others, in a private window or by a setting.
                Some("InvalidStateError" | "SecurityError" | "NotAllowedError") => {
                    StoreError::Unavailable
                }
                _ => StoreError::Failed(error.to_string()),
            }
        }
        OpenDbError::Base(_) => StoreError::Failed(error.to_string()),
        _ => StoreError::Unavailable,
    }
}

impl From<Error> for StoreError {
    fn from(error: Error) -> Self {
        Self::Failed(error.to_string())
    }
}

/// The text that stands where a change wants to write.
async fn text_of(store: &ObjectStore<'_>, change: &Change) -> Result<Option<String>, StoreError> {
    let key = format!("{}/{}", change.kind.key(), change.id);
    let row: Option<JsValue> = store.get::<JsValue, String, _>(key).primitive()?.await?;
    let there = row.map(|row| record(change.kind, &row));
    match there {
        // Whatever it says, a later version's is never changed.
        Some(there) if there.format == RecordFormat::Newer => Err(StoreError::Changed),
        there => Ok(there.map(|there| there.text)),
    }
}

async fn write(store: &ObjectStore<'_>, change: &Change) -> Result<(), StoreError> {
    let key = format!("{}/{}", change.kind.key(), change.id);
    match &change.after {
        Some(text) => {
            let row = Object::new();
            set(&row, "key", &key.into());
            set(&row, "version", &VERSION.into());
            set(&row, "written", &clock::now_ms().into());
            set(&row, "text", &text.into());
            store.put(JsValue::from(row)).primitive()?.await?;
        }
        None => store.delete::<String, _>(key).primitive()?.await?,
    }
    Ok(())
}

fn set(row: &Object, name: &str, value: &JsValue) {
    // Setting a member of a new object cannot fail.
    drop(Reflect::set(row, &name.into(), value));
}

/// A record out of a row of the store.
fn record(kind: Kind, row: &JsValue) -> Record {
    let member = |name: &str| Reflect::get(row, &name.into()).unwrap_or(JsValue::UNDEFINED);
    let key = member("key").as_string().unwrap_or_default();
    let id = key.split_once('/').map(|(_, id)| id.to_owned()).unwrap_or_default();
    let written_ms = member("written").as_f64().unwrap_or(0.0);
    let (text, format) = match (member("version").as_f64(), member("text").as_string()) {
        (Some(version), Some(text)) if (1.0..=f64::from(VERSION)).contains(&version) => {
            (text, RecordFormat::Known)
        }
        (version, text) => {
            let later = version.is_some_and(|version| version > f64::from(VERSION));
            let whole = || JSON::stringify(row).ok().and_then(|text| text.as_string());
            let text = text.or_else(whole).unwrap_or_default();
            (text, if later { RecordFormat::Newer } else { RecordFormat::Damaged })
        }
    };
    Record { kind, id, text, written_ms, format }
}
