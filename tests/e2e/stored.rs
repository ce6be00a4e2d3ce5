//! What is kept is there again: in two and three tabs, beside older and newer builds, and when something is damaged.

use std::time::Duration;

use fantoccini::wd::WindowHandle;
use serde_json::{Value, json};

use crate::support::{Page, drive};

/// How long a letter, or word of another tab, may take to arrive.
const SOON: Duration = Duration::from_millis(400);

impl Page {
    /// Chooses where the instrument lives, on the screen that asks for it.
    async fn live(&self, key: &str) {
        self.open("#/ask/6").await;
        let choose = format!("document.querySelector('input[name=room][value={key}]').click()");
        self.until("the question is there", "return !!document.querySelector('input[name=room]')")
            .await;
        self.script(&choose).await;
    }

    /// Where the instrument lives, as this tab shows it.
    async fn lives(&self) -> Value {
        self.open("#/ask/6").await;
        self.script("return document.querySelector('input[name=room]:checked')?.value ?? null")
            .await
    }

    /// Gives the answers a label, and keeps their set.
    async fn keep(&self, label: &str) {
        self.open("#/check").await;
        self.until("the label is asked for", "return !!document.getElementById('label')").await;
        let write = format!(
            "const field = document.getElementById('label'); field.value = {};
             field.dispatchEvent(new Event('input', {{ bubbles: true }})); location.hash = '#/set'",
            json!(label)
        );
        self.script(&write).await;
        let keep = "const told = document.querySelector('.notices').textContent.includes('Kept on this machine');
            const keep = [...document.querySelectorAll('main button')].find((b) => b.textContent === 'Keep');
            if (!told) keep?.click();
            return !told && !!keep";
        self.until("its set can be kept", keep).await;
        self.until(
            "it is kept",
            "return document.querySelector('.notices').textContent.includes('Kept on this machine')",
        )
        .await;
    }

    /// The labels of the kept sets, as the first page shows them.
    async fn kept_labels(&self) -> Vec<String> {
        self.open("#/").await;
        let shown = self
            .script("return [...document.querySelectorAll('[aria-labelledby=kept] h3')].map((h) => h.textContent).sort()")
            .await;
        shown.as_array().unwrap().iter().map(|name| name.as_str().unwrap().to_owned()).collect()
    }

    async fn tab(&self) -> WindowHandle {
        let tab = self.client.new_window(true).await.unwrap().handle;
        self.switch(&tab).await;
        self.open("").await;
        tab
    }

    async fn switch(&self, tab: &WindowHandle) {
        self.client.switch_to_window(tab.clone()).await.unwrap();
    }

    /// Opens a text as a saved file on the first page.
    async fn open_file(&self, file: &Value) {
        self.open("#/").await;
        let open = format!(
            "const files = new DataTransfer(); files.items.add(new File([{}], 'sets.json'));
             const field = document.querySelector('input[type=file]'); field.files = files.files;
             field.dispatchEvent(new Event('change', {{ bubbles: true }}))",
            json!(file.to_string())
        );
        self.script(&open).await;
        self.until(
            "it is open",
            "return document.querySelector('.notices').textContent.includes('sets.json is open')",
        )
        .await;
    }
}

fn file(answers: Value, labels: impl IntoIterator<Item = String>) -> Value {
    let set = |label| json!({ "at": "2026-01-02T03:04:05Z", "label": label, "answers": {}, "summary": ["E5: steel"] });
    let fittings: Vec<Value> = labels.into_iter().map(set).collect();
    json!({ "format": "ropewalk-fitting", "version": 1, "label": "", "answers": answers, "drafts": {}, "fittings": fittings })
}

#[test]
fn three_tabs_that_type_and_keep_lose_nothing() {
    drive(async |page| {
        let first = page.client.window().await.unwrap();
        let tabs = [first, page.tab().await, page.tab().await];
        let rooms = ["dry", "damp", "seasonal"];
        for (tab, room) in tabs.iter().zip(rooms) {
            page.switch(tab).await;
            page.live(room).await;
            page.keep(room).await;
        }
        tokio::time::sleep(SOON).await;
        // Each has its own answers and everybody's sets, also when it is loaded anew.
        for _ in 0..2 {
            for (tab, room) in tabs.iter().zip(rooms) {
                page.switch(tab).await;
                assert_eq!(page.lives().await, room);
                assert_eq!(page.kept_labels().await, ["damp", "dry", "seasonal"]);
                page.reload().await;
            }
        }
    });
}

#[test]
fn a_tab_follows_another_until_it_types() {
    drive(async |page| {
        page.live("dry").await;
        tokio::time::sleep(SOON).await;
        // Loaded anew, it has not been typed in.
        page.reload().await;
        let first = page.client.window().await.unwrap();
        let second = page.tab().await;
        assert_eq!(page.lives().await, "dry");
        page.live("damp").await;
        page.switch(&first).await;
        page.until(
            "the other tab's answers are taken over, and told of",
            "return document.querySelector('.notices').textContent.includes('Another tab')
                && document.querySelector('input[name=room]:checked').value === 'damp'",
        )
        .await;
        // Both type: each keeps its own, and the first page offers the other's.
        page.live("steady").await;
        page.switch(&second).await;
        page.live("seasonal").await;
        tokio::time::sleep(SOON).await;
        page.reload().await;
        assert_eq!(page.lives().await, "seasonal");
        page.open("#/").await;
        page.until(
            "the other tab's answers are offered",
            "return !!document.querySelector('[aria-labelledby=others] li button')",
        )
        .await;
        page.assert_accessible().await;
        page.script("document.querySelector('[aria-labelledby=others] li button').click()").await;
        assert_eq!(page.lives().await, "steady");
        page.switch(&first).await;
        assert_eq!(page.lives().await, "steady");
    });
}

#[test]
fn a_file_adds_its_sets_and_the_way_back_outlives_the_page() {
    drive(async |page| {
        let own = file(json!({ "room": "dry" }), (10..30).map(|i| format!("own {i}")));
        page.seed(&own).await;
        page.reload().await;
        assert_eq!(page.kept_labels().await.len(), 20);
        let other = file(json!({ "room": "damp" }), (10..30).map(|i| format!("other {i}")));
        page.open_file(&other).await;
        // 20 of one's own, 20 of the file, and the answers that were in hand.
        assert_eq!(page.kept_labels().await.len(), 41);
        tokio::time::sleep(SOON).await;
        page.reload().await;
        assert_eq!((page.kept_labels().await.len(), page.lives().await), (41, json!("damp")));
        page.open("#/").await;
        page.script("[...document.querySelectorAll('main button')].find((b) => b.textContent === 'Undo').click()")
            .await;
        assert_eq!((page.kept_labels().await.len(), page.lives().await), (20, json!("dry")));
        assert_eq!(page.document().await["fittings"].as_array().unwrap().len(), 20);
    });
}

#[test]
fn what_an_earlier_build_kept_is_taken_over_and_never_nowhere() {
    drive(async |page| {
        let old = file(json!({ "room": "dry" }), ["one".to_owned(), "two".to_owned()]);
        let put = format!(
            "localStorage.setItem('ropewalk/fitting', {}); localStorage.setItem('ropewalk/fitting/aside-1', 'half a fitt')",
            json!(old.to_string())
        );
        page.script(&put).await;
        page.reload().await;
        assert_eq!(
            (page.lives().await, page.kept_labels().await),
            (json!("dry"), vec!["one".to_owned(), "two".to_owned()])
        );
        let texts = "return Object.keys(localStorage).filter((key) => key.startsWith('ropewalk/fitting')).length";
        assert_eq!(page.script(texts).await, 2, "they stay until a later start has found them");
        page.reload().await;
        assert_eq!(page.script(texts).await, 0);
        page.reload().await;
        assert_eq!((page.lives().await, page.kept_labels().await.len()), (json!("dry"), 2));

        // What was set aside long ago can be had as a file.
        page.open("#/").await;
        page.until(
            "it is listed",
            "return !!document.querySelector('[aria-labelledby=unreadable] li')",
        )
        .await;
        page.assert_accessible().await;
        let saved = page
            .script_async(
                "const real = URL.createObjectURL; let blob;
                 URL.createObjectURL = (it) => { blob = it; return real.call(URL, it); };
                 document.querySelector('[aria-labelledby=unreadable] li button').click();
                 URL.createObjectURL = real; return await blob.text()",
                Vec::new(),
            )
            .await;
        assert_eq!(saved, Ok(json!("half a fitt")));

        // An older build in another tab keeps one more, and knows nothing of what has happened since.
        let tab = page.client.window().await.unwrap();
        page.tab().await;
        let older = file(
            json!({ "room": "steady" }),
            ["one".to_owned(), "two".to_owned(), "three".to_owned()],
        );
        page.script(&format!(
            "localStorage.setItem('ropewalk/fitting', {})",
            json!(older.to_string())
        ))
        .await;
        page.client.close_window().await.unwrap();
        page.switch(&tab).await;
        page.until(
            "its set is here",
            "return [...document.querySelectorAll('[aria-labelledby=kept] h3')].some((h) => h.textContent === 'three')",
        )
        .await;
        assert_eq!(page.lives().await, "dry");
    });
}

#[test]
fn garbage_and_records_of_a_later_version_are_left_alone() {
    drive(async |page| {
        page.live("dry").await;
        tokio::time::sleep(SOON).await;
        let tab = page.script("return sessionStorage.getItem('ropewalk/tab')").await;
        let key = format!("answers/{}", tab.as_str().unwrap());
        for record in [
            json!({ "key": key, "version": 1, "written": 1, "text": "half a fitt" }),
            json!({ "key": key, "version": 3, "written": 1, "text": "{}", "more": true }),
            json!({ "key": key, "odd": 7 }),
        ] {
            page.plant(record.clone()).await;
            // The tab hears of it while it is idle, and types afterwards.
            page.script("new BroadcastChannel('ropewalk-records').postMessage('x')").await;
            tokio::time::sleep(SOON).await;
            page.live("damp").await;
            page.live("dry").await;
            tokio::time::sleep(SOON).await;
            assert!(page.records().await.contains(&record), "{:#?}", page.records().await);
            page.reload().await;
            assert_eq!(page.lives().await, "dry");
        }
        // A set that cannot be read does not stand in the way of others.
        let set = json!({ "key": "set/x", "version": 1, "written": 1, "text": "{\"at\": 7}" });
        page.plant(set.clone()).await;
        page.reload().await;
        page.keep("mine").await;
        assert_eq!(page.kept_labels().await, ["mine"]);
        assert!(page.records().await.contains(&set));
    });
}

#[test]
fn a_newer_build_takes_the_store_over_and_the_older_one_says_so() {
    drive(async |page| {
        page.live("dry").await;
        page.keep("mine").await;
        let older = page.client.window().await.unwrap();
        page.tab().await;
        // As a newer build would: the database gets its version, and a record that only it understands.
        let newer = "const db = await new Promise((done, fail) => {
                const request = indexedDB.open('ropewalk', 3);
                request.onsuccess = () => done(request.result); request.onerror = () => fail(request.error);
                request.onblocked = () => fail(new Error('it is kept waiting'));
            });
            const change = db.transaction('records', 'readwrite');
            change.objectStore('records').put({ key: 'set/new', version: 3, written: 1, text: 'new' });
            await new Promise((done) => { change.oncomplete = done; });
            const all = db.transaction('records').objectStore('records').getAll();
            window.all = await new Promise((done) => { all.onsuccess = () => done(JSON.stringify(all.result)); });
            db.close()";
        page.script_async(newer, Vec::new()).await.unwrap();
        let all = page.script("return window.all").await;
        let now = "const db = await new Promise((done) => { const request = indexedDB.open('ropewalk'); request.onsuccess = () => done(request.result); });
            const all = db.transaction('records').objectStore('records').getAll();
            const text = await new Promise((done) => { all.onsuccess = () => done(JSON.stringify(all.result)); });
            db.close(); return text";
        page.switch(&older).await;
        let told =
            "return document.querySelector('.notices').textContent.includes('newer version')";
        page.until("it is told at once", told).await;
        page.live("damp").await;
        tokio::time::sleep(SOON).await;
        assert_eq!(page.script_async(now, Vec::new()).await, Ok(all.clone()));
        // Loaded anew, it shows what it can read, and still changes nothing.
        page.reload().await;
        page.until("it is told again", told).await;
        assert_eq!(
            (page.lives().await, page.kept_labels().await),
            (json!("dry"), vec!["mine".to_owned()])
        );
        page.live("damp").await;
        tokio::time::sleep(SOON).await;
        assert_eq!(page.script_async(now, Vec::new()).await, Ok(all));
    });
}

#[test]
fn a_browser_without_a_store_is_told_of_and_nothing_is_shown_as_kept() {
    drive(async |page| {
        let none =
            "IDBFactory.prototype.open = () => { throw new DOMException('no', 'SecurityError'); }";
        page.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": none })).await;
        page.reload().await;
        page.live("dry").await;
        page.until(
            "it is told",
            "return document.querySelector('.notices').textContent.includes('keeps nothing for this page')",
        )
        .await;
        assert_eq!(page.lives().await, "dry");
    });
}

#[test]
fn a_file_with_a_hundred_thousand_strings_is_cut_and_the_page_stays_quick() {
    drive(async |page| {
        let strings = vec![json!({ "bothers": ["thin"] }); 100_000];
        page.open_file(&file(json!({ "strings": strings, "music": "folk" }), [])).await;
        let notices = page.script("return document.querySelector('.notices').textContent").await;
        let notices = notices.as_str().unwrap();
        assert!(notices.contains("there are 100000, and the first 8 were taken"), "{notices}");
        // What is drawn goes with what was taken: drawn in full, this took over a minute.
        page.open("#/check").await;
        page.until("the answers are there", "return !!document.getElementById('label')").await;
        let elements = page.script("return document.querySelectorAll('main *').length").await;
        assert!(elements.as_u64().unwrap() < 2_000, "{elements} elements");
        page.reload().await;
        page.until("they are there again", "return !!document.getElementById('label')").await;
    });
}

#[test]
fn two_strings_compared_are_there_after_a_reload_as_they_were_typed() {
    drive(async |page| {
        page.open("#/compare").await;
        let typed = "return document.getElementById('first-gauge')?.value ?? ''";
        page.until("it can be typed", "return !!document.getElementById('first-gauge')").await;
        // Half a number, too.
        page.script(
            "const field = document.getElementById('first-gauge'); field.value = '0.6x';
             field.dispatchEvent(new Event('input', { bubbles: true }))",
        )
        .await;
        page.reload().await;
        page.until("it is there again", "return !!document.getElementById('first-gauge')").await;
        assert_eq!(page.script(typed).await, "0.6x");
        // A string that no instrument has.
        page.open("#/compare/9").await;
        let told = "return document.querySelector('main').textContent.includes('There is no page at that address')";
        page.until("the address is refused", told).await;
        page.assert_clean().await;
    });
}
