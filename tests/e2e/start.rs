//! What a start costs: what is fetched before the first screen can be used, how long that takes, and what moves.

use std::fs;
use std::io::Write;
use std::time::Duration;

use serde_json::json;
use tasks::place;

use crate::support::Page;

/// How long a page is watched for what moves: the worker, the set and the word that everything is kept have come.
const SETTLED: Duration = Duration::from_millis(2500);

/// Runs before anything of the page, and notes when the first screen has been painted, and every shift.
const WATCH: &str = "
    window.begun = { ready: null, shift: 0 };
    new PerformanceObserver((list) => {
        for (const shift of list.getEntries()) begun.shift += shift.value;
    }).observe({ type: 'layout-shift', buffered: true });
    new MutationObserver((_, observer) => {
        if (!document.querySelector('main h1')) return;
        observer.disconnect();
        // A frame is painted after its tasks; a message that is sent within it comes after that.
        const channel = new MessageChannel();
        channel.port1.onmessage = () => { begun.ready = performance.now(); };
        requestAnimationFrame(() => channel.port2.postMessage(null));
    }).observe(document, { childList: true, subtree: true });";

/// What was seen of a start. The icon and the manifest are the browser's own, and come when it likes.
const SEEN: &str = "
    const [paint] = performance.getEntriesByName('first-contentful-paint');
    const before = performance.getEntriesByType('resource').filter((file) => file.startTime < begun.ready);
    const names = before.map((file) => new URL(file.name).pathname.slice(1));
    const files = ['index.html', ...names.filter((name) => /^(fonts\\/)?[^/]+\\.(css|js|wasm|txt|woff2)$/.test(name))];
    return { paint: paint.startTime, ready: begun.ready, shift: begun.shift, files };";

/// A start.
pub(crate) struct Start {
    /// Until something of the page was on the screen, ms.
    pub(crate) paint: f64,
    /// Until the first screen was, and could be used, ms.
    pub(crate) ready: f64,
    /// How much has moved by itself, as browsers count it.
    pub(crate) shift: f64,
    /// The files of the page that were asked for until then.
    pub(crate) files: Vec<String>,
}

impl Page {
    /// From now on, every load is watched.
    pub(crate) async fn watch_starts(&self) {
        self.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": WATCH })).await;
    }

    /// Loads a room, as somebody who has never been here or as somebody who has.
    pub(crate) async fn start(&self, room: &str, first_visit: bool) -> Start {
        let origin = self.script("return location.origin").await;
        self.client.goto("about:blank").await.unwrap();
        if first_visit {
            self.devtools("Network.clearBrowserCache", json!({})).await;
            let all = json!({ "origin": origin, "storageTypes": "all" });
            self.devtools("Storage.clearDataForOrigin", all).await;
        }
        self.open(room).await;
        self.until("the first screen is seen", "return begun.ready !== null").await;
        tokio::time::sleep(SETTLED).await;
        let seen = self.script(SEEN).await;
        let number = |name: &str| seen[name].as_f64().unwrap();
        let files = seen["files"].as_array().unwrap();
        Start {
            paint: number("paint"),
            ready: number("ready"),
            shift: number("shift"),
            files: files.iter().map(|file| file.as_str().unwrap().to_owned()).collect(),
        }
    }
}

/// A file of the built page, in bytes.
pub(crate) struct Weight {
    /// Its name.
    pub(crate) name: String,
    /// As it is.
    pub(crate) raw: usize,
    /// As a server sends it that has pressed it beforehand.
    pub(crate) brotli: usize,
}

/// What files weigh.
pub(crate) fn weights(files: &[String]) -> Vec<Weight> {
    let weight = |name: &String| {
        let bytes = fs::read(place::dist().join(name)).unwrap();
        // The highest quality, in the widest window that every browser takes.
        let mut pressed = brotli::CompressorWriter::new(Vec::new(), 1 << 16, 11, 24);
        pressed.write_all(&bytes).unwrap();
        let brotli = pressed.into_inner().len();
        Weight { name: name.clone(), raw: bytes.len(), brotli }
    };
    files.iter().map(weight).collect()
}

/// The files of the model's worker.
pub(crate) fn worker() -> Vec<String> {
    let names = fs::read_dir(place::dist()).unwrap();
    let names = names.map(|entry| entry.unwrap().file_name().into_string().unwrap());
    let mut worker: Vec<_> = names.filter(|name| name.starts_with("worker")).collect();
    worker.sort();
    worker
}
