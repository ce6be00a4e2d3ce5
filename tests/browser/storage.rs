//! Records and texts are kept by a real browser, and none is ever lost.

use std::cell::Cell;
use std::rc::Rc;
use std::time::Duration;

use app::platform::storage::{Database, Heard, texts, watch};
use app::records::{Backend, Change, Kind, Record, RecordFormat, StoreError, load};
use js_sys::{Function, Promise};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_test::wasm_bindgen_test;
use yew::platform::time::sleep;

/// Runs a piece of JavaScript, for what a page has no function for.
fn js(body: &str) {
    Function::new_no_args(body).call0(&JsValue::NULL).unwrap();
}

/// Runs the body of an async function and waits for it.
async fn js_async(body: &str) -> JsValue {
    let run = Function::new_no_args(&format!("return (async () => {{ {body} }})()"));
    let promise: Promise = run.call0(&JsValue::NULL).unwrap().unchecked_into();
    JsFuture::from(promise).await.unwrap()
}

/// Opens a database from outside the page, as another program or version would, and does something with its store.
async fn outside(name: &str, version: u32, body: &str) {
    js_async(&format!(
        "const db = await new Promise((done, fail) => {{
            const request = indexedDB.open('{name}', {version});
            request.onupgradeneeded = () => {{
                if (!request.result.objectStoreNames.contains('records'))
                    request.result.createObjectStore('records', {{ keyPath: 'key' }});
            }};
            request.onsuccess = () => done(request.result);
            request.onerror = () => fail(request.error);
        }});
        const change = db.transaction('records', 'readwrite');
        const store = change.objectStore('records');
        {body}
        await new Promise((done) => {{ change.oncomplete = done; }});
        db.close()"
    ))
    .await;
}

fn put(id: &str, before: Option<&str>, after: Option<&str>) -> Change {
    let [before, after] = [before, after].map(|text| text.map(str::to_owned));
    Change { kind: Kind::Set, id: id.to_owned(), before, after }
}

async fn sets(database: &Database) -> Vec<Record> {
    database.read(&[Kind::Set]).await.unwrap()
}

async fn pairs(database: &Database) -> Vec<(String, String)> {
    sets(database).await.into_iter().map(|record| (record.id, record.text)).collect()
}

fn pair(id: &str, text: &str) -> (String, String) {
    (id.to_owned(), text.to_owned())
}

#[wasm_bindgen_test]
async fn records_are_written_replaced_and_removed() {
    let database = Database::of("plain");
    assert!(sets(&database).await.is_empty());
    let both = [put("a", None, Some("44 – gut, 𝄞")), put("b/0", None, Some("b"))];
    database.commit(&both).await.unwrap();
    let now = js_sys::Date::now();
    assert!(sets(&database).await.iter().all(|record| (now - record.written_ms).abs() < 60_000.0));
    database.commit(&[put("b/0", Some("b"), Some("c"))]).await.unwrap();
    // Another connection sees what is on the disk.
    let other = Database::of("plain");
    assert_eq!(pairs(&other).await, [pair("a", "44 – gut, 𝄞"), pair("b/0", "c")]);
    other.commit(&[put("a", Some("44 – gut, 𝄞"), None)]).await.unwrap();
    assert_eq!(pairs(&database).await, [pair("b/0", "c")]);
    // Other kinds have names of their own.
    let aside = Change { kind: Kind::Aside, ..put("b/0", None, Some("x")) };
    database.commit(&[aside]).await.unwrap();
    assert_eq!(pairs(&database).await.len(), 1);
    assert_eq!(database.read(&Kind::ALL).await.unwrap().len(), 2);
}

#[wasm_bindgen_test]
async fn a_commit_is_strict() {
    js("const real = IDBDatabase.prototype.transaction;
        window.durabilities = [];
        IDBDatabase.prototype.transaction = function (stores, mode, options) {
            if (mode === 'readwrite') durabilities.push(options?.durability);
            return real.call(this, stores, mode, options);
        };
        window.unwatch = () => { IDBDatabase.prototype.transaction = real; }");
    Database::of("strict").commit(&[put("a", None, Some("a"))]).await.unwrap();
    let seen = js_async("unwatch(); return durabilities.join()").await;
    assert_eq!(seen.as_string().as_deref(), Some("strict"));
}

#[wasm_bindgen_test]
async fn a_commit_over_something_else_changes_nothing() {
    let database = Database::of("changed");
    database.commit(&[put("a", None, Some("first"))]).await.unwrap();
    for before in [None, Some("second")] {
        let changes = [put("b", None, Some("b")), put("a", before, Some("mine"))];
        assert_eq!(database.commit(&changes).await, Err(StoreError::Changed));
    }
    let gone = [put("b", None, Some("b")), put("c", Some("c"), None)];
    assert_eq!(database.commit(&gone).await, Err(StoreError::Changed));
    assert_eq!(pairs(&database).await, [pair("a", "first")]);
}

#[wasm_bindgen_test]
async fn what_is_no_record_of_ours_is_read_as_it_is_and_stays() {
    let database = Database::of("damaged");
    database.commit(&[put("a", None, Some("a"))]).await.unwrap();
    outside(
        "damaged",
        2,
        "store.put({ key: 'set/b', odd: true });
         store.put({ key: 'set/c', version: 3, written: 7, text: 'c', more: 1 });
         store.put({ key: 'set/d', version: 'x', text: 'd' });",
    )
    .await;
    let found = sets(&database).await;
    let formats: Vec<_> = found.iter().map(|record| record.format).collect();
    let expected =
        [RecordFormat::Known, RecordFormat::Damaged, RecordFormat::Newer, RecordFormat::Damaged];
    assert_eq!(formats, expected);
    assert_eq!(found[1].text, "{\"key\":\"set/b\",\"odd\":true}");
    for (record, text) in found[1..3].iter().map(|record| (record, record.text.as_str())) {
        let id = record.id.as_str();
        assert_eq!(database.commit(&[put(id, None, Some("x"))]).await, Err(StoreError::Changed));
        let asked = database.commit(&[put(id, Some(text), None)]).await;
        // A person may remove what is damaged. A later version's stays in any case.
        assert_eq!(asked.is_ok(), record.format == RecordFormat::Damaged);
    }
}

#[wasm_bindgen_test]
async fn a_later_versions_store_is_read_and_not_changed() {
    let database = Database::of("later");
    let told = Rc::new(Cell::new(0));
    database.when_later({
        let told = Rc::clone(&told);
        move || told.set(told.get() + 1)
    });
    database.commit(&[put("a", None, Some("a"))]).await.unwrap();
    // A newer build in another tab takes it over while this one is open: it is not kept waiting, and this one is told.
    outside("later", 3, "store.put({ key: 'set/b', version: 3, written: 7, text: 'b' });").await;
    assert_eq!((told.get(), database.is_later()), (1, true));
    assert_eq!(database.commit(&[put("c", None, Some("c"))]).await, Err(StoreError::Later));
    let fresh = Database::of("later");
    for database in [&database, &fresh] {
        assert_eq!(pairs(database).await, [pair("a", "a"), pair("b", "b")]);
        assert_eq!(database.commit(&[put("a", Some("a"), None)]).await, Err(StoreError::Later));
        assert!(database.is_later());
    }
    assert_eq!(pairs(&fresh).await.len(), 2);
}

#[wasm_bindgen_test]
async fn a_database_that_was_deleted_is_made_anew() {
    let database = Database::of("deleted");
    database.commit(&[put("a", None, Some("a"))]).await.unwrap();
    js_async(
        "await new Promise((done, fail) => {
        const request = indexedDB.deleteDatabase('deleted');
        request.onsuccess = done; request.onerror = fail; })",
    )
    .await;
    database.commit(&[put("b", None, Some("b"))]).await.unwrap();
    assert_eq!(pairs(&database).await, [pair("b", "b")]);
    assert!(!database.is_later());
}

#[wasm_bindgen_test]
async fn a_browser_that_keeps_nothing_is_told_of() {
    js("window.open_real = IDBFactory.prototype.open;
        IDBFactory.prototype.open = () => { throw new DOMException('no', 'SecurityError') }");
    let database = Database::of("nothing");
    let told = database.commit(&[put("a", None, Some("a"))]).await;
    let read = database.read(&Kind::ALL).await;
    js("IDBFactory.prototype.open = open_real");
    assert_eq!(told, Err(StoreError::Unavailable));
    assert_eq!(read, Err(StoreError::Unavailable));
    database.commit(&[put("a", None, Some("a"))]).await.unwrap();
}

#[wasm_bindgen_test]
async fn a_commit_that_the_browser_gives_up_is_no_success() {
    let database = Database::of("aborted");
    database.commit(&[put("a", None, Some("a"))]).await.unwrap();
    // A full disk shows itself when the transaction is committed.
    js("window.commit_real = IDBTransaction.prototype.commit;
        IDBTransaction.prototype.commit = function () { this.abort() }");
    let told = database.commit(&[put("b", None, Some("b"))]).await;
    js("IDBTransaction.prototype.commit = commit_real");
    assert!(matches!(told, Err(StoreError::Failed(_))), "{told:?}");
    assert_eq!(pairs(&database).await, [pair("a", "a")]);
}

#[wasm_bindgen_test]
async fn old_texts_stay_until_they_are_found_in_the_store() {
    js("localStorage.setItem('ropewalk/fitting', 'half a fitt');
        localStorage.setItem('ropewalk/fitting/aside-1', 'another');
        localStorage.setItem('ropewalk/fittings', 'not ours');");
    let database = Database::of("old");
    let first = load(&database, &texts::old()).await;
    assert!(first.done.is_empty() && first.fault.is_none());
    assert_eq!(texts::old().len(), 2);
    let second = load(&database, &texts::old()).await;
    assert_eq!(second.done.len(), 2);
    assert_eq!(second.records.iter().filter(|record| record.kind == Kind::Aside).count(), 2);
    // One that has changed meanwhile is not forgotten.
    texts::forget("fitting", "something else");
    assert_eq!(texts::raw("fitting").as_deref(), Some("half a fitt"));
    js("localStorage.clear()");
}

#[wasm_bindgen_test]
async fn other_tabs_are_heard_until_nobody_listens() {
    let heard = Rc::new(Cell::new((0, 0)));
    let listening = watch({
        let heard = Rc::clone(&heard);
        move |what| {
            let (records, texts) = heard.get();
            heard.set(match what {
                Heard::Records => (records + 1, texts),
                Heard::OldText => (records, texts + 1),
            });
        }
    });
    let write = "dispatchEvent(new StorageEvent('storage', { key: 'ropewalk/fitting', newValue: 'from there' }));
        dispatchEvent(new StorageEvent('storage', { key: 'ropewalk/preferences', newValue: 'not ours' }))";
    js(write);
    let database = Database::of("heard");
    database.commit(&[put("a", None, Some("a"))]).await.unwrap();
    let mut turns = 0;
    while heard.get() != (1, 1) && turns < 100 {
        sleep(Duration::from_millis(20)).await;
        turns += 1;
    }
    assert_eq!(heard.get(), (1, 1));
    drop(listening);
    js(write);
    database.commit(&[put("a", Some("a"), None)]).await.unwrap();
    sleep(Duration::from_millis(100)).await;
    assert_eq!(heard.get(), (1, 1));
}
