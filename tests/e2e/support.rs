//! A browser, a page in it, and what one wants to know of them.

use std::env;
use std::fs;
use std::io::{BufRead, BufReader};
use std::panic::{AssertUnwindSafe, resume_unwind};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::atomic::{AtomicU32, Ordering};
use std::time::{Duration, Instant};

use fantoccini::wd::WebDriverCompatibleCommand;
use fantoccini::{Client, ClientBuilder};
use futures_util::FutureExt;
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Map, Value, json};
use tasks::place;
use tasks::server::Server;

/// How long a test waits for what must happen; generous, for machines that do much at once.
pub(crate) const PATIENCE: Duration = Duration::from_secs(20);

/// Opens the page's database as the page would; a script goes on with `db`.
const DATABASE: &str = "
    const db = await new Promise((done, fail) => {
        const request = indexedDB.open('ropewalk', 2);
        request.onupgradeneeded = () => request.result.createObjectStore('records', { keyPath: 'key' });
        request.onsuccess = () => done(request.result);
        request.onerror = () => fail(request.error);
    });";

/// The page in a browser of its own, served by a server of its own.
pub(crate) struct Page {
    /// The browser, for everything that has no function here.
    pub(crate) client: Client,
    server: Option<Server>,
    url: String,
}

/// Opens the page in a fresh browser, hands it to the test, and checks afterwards that no error stands in the
/// console and that nothing was asked of another host.
pub(crate) fn drive(test: impl AsyncFnOnce(&mut Page)) {
    drive_in(&built(), "", test);
}

/// The same with a server of `folder`, in which the page lies at `path`.
pub(crate) fn drive_in(folder: &Path, path: &str, test: impl AsyncFnOnce(&mut Page)) {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
    runtime.block_on(async {
        let driver = Driver::start();
        let server = Server::start(folder, 0).unwrap();
        let client = driver.browser().await;
        let mut page = Page { client, url: server.url() + path, server: Some(server) };
        let outcome = AssertUnwindSafe(async {
            page.open("").await;
            test(&mut page).await;
            page.assert_clean().await;
        })
        .catch_unwind()
        .await;
        // The browser ends before the driver does, or it would go on alone.
        drop(page.client.close().await);
        if let Err(panic) = outcome {
            resume_unwind(panic);
        }
    });
}

/// A copy of the built page, at `path` in a folder of this name, for a test that changes it.
pub(crate) fn copy(name: &str, path: &str) -> PathBuf {
    fn copy_all(from: &Path, to: &Path) {
        fs::create_dir_all(to).unwrap();
        for entry in fs::read_dir(from).unwrap() {
            let entry = entry.unwrap();
            let to = to.join(entry.file_name());
            if entry.file_type().unwrap().is_dir() {
                copy_all(&entry.path(), &to);
            } else {
                fs::copy(entry.path(), to).unwrap();
            }
        }
    }
    let folder = place::target().join("tmp").join(name);
    drop(fs::remove_dir_all(&folder));
    copy_all(&built(), &folder.join(path));
    folder
}

/// The folder of the built page.
fn built() -> PathBuf {
    let dist = place::dist();
    assert!(
        dist.join("index.html").is_file(),
        "there is no built page: `cargo e2e` builds it and runs these tests"
    );
    dist
}

impl Page {
    /// The page of a server that belongs to somebody else, in this browser.
    pub(crate) fn of(client: Client, url: String) -> Self {
        Self { client, url, server: None }
    }

    /// Opens an address inside the page, such as `#/compare`, and waits until it has started.
    pub(crate) async fn open(&self, path: &str) {
        self.client.goto(&format!("{}{path}", self.url)).await.unwrap();
        self.started().await;
    }

    /// Loads an address inside the page afresh, and waits for nothing.
    pub(crate) async fn load(&self, path: &str) {
        self.client.goto("about:blank").await.unwrap();
        self.client.goto(&format!("{}{path}", self.url)).await.unwrap();
    }

    /// Loads the page anew and waits until it has started.
    ///
    /// By script, not by the driver's own command: that one waits for a load of its own and can miss it for good
    /// when the page reloads itself in the same moment, as it does when a newer build takes over.
    pub(crate) async fn reload(&self) {
        self.script("window.before = true; setTimeout(() => location.reload(), 0)").await;
        let start = Instant::now();
        let anew = "return window.before === undefined && !!window.ropewalk && !!document.querySelector('h1')";
        // Between two pages a script finds neither and fails: it is asked again.
        while !self.client.execute(anew, Vec::new()).await.is_ok_and(|is| is == Value::Bool(true)) {
            assert!(start.elapsed() < PATIENCE, "waited in vain until the page has started anew");
            tokio::time::sleep(Duration::from_millis(30)).await;
        }
    }

    async fn started(&self) {
        self.until(
            "the page has started",
            "return !!window.ropewalk && !!document.querySelector('h1')",
        )
        .await;
    }

    /// Waits until a script returns something true.
    pub(crate) async fn until(&self, what: &str, script: &str) {
        let start = Instant::now();
        while !self.script(script).await.as_bool().unwrap_or(false) {
            assert!(
                start.elapsed() < PATIENCE,
                "waited in vain until {what}; the console says {:#?}",
                self.console().await
            );
            tokio::time::sleep(Duration::from_millis(30)).await;
        }
    }

    /// Waits until the body of an async function returns something true; a page that reloads meanwhile is asked again.
    pub(crate) async fn until_async(&self, what: &str, script: &str) {
        let start = Instant::now();
        while self.script_async(script, Vec::new()).await != Ok(Value::Bool(true)) {
            assert!(
                start.elapsed() < PATIENCE,
                "waited in vain until {what}; the console says {:#?}",
                self.console().await
            );
            tokio::time::sleep(Duration::from_millis(30)).await;
        }
    }

    /// Unfolds whatever is folded, and what is folded within that; both are drawn when they are unfolded.
    pub(crate) async fn open_everything(&self) {
        for _ in 0..2 {
            self.script("document.querySelectorAll('details').forEach((d) => { d.open = true; })")
                .await;
            tokio::time::sleep(Duration::from_millis(300)).await;
        }
    }

    /// Runs the body of a function in the page and returns what it returns.
    pub(crate) async fn script(&self, body: &str) -> Value {
        self.client.execute(body, Vec::new()).await.unwrap()
    }

    /// Runs the body of an async function in the page; `args` are the arguments.
    pub(crate) async fn script_async(&self, body: &str, args: Vec<Value>) -> Result<Value, String> {
        let wrapped = format!(
            "const done = arguments[arguments.length - 1]; const args = Array.from(arguments).slice(0, -1);
            (async () => {{ {body} }})().then((value) => done({{ value: value === undefined ? null : value }}),
                (error) => done({{ error: `${{error.kind || error.name}}: ${{error.message}}` }}));"
        );
        let mut result =
            self.client.execute_async(&wrapped, args).await.map_err(|error| error.to_string())?;
        match result.get("error") {
            Some(error) => Err(error.as_str().unwrap_or_default().to_owned()),
            None => Ok(result["value"].take()),
        }
    }

    /// Asks through the door for other programs.
    pub(crate) async fn ask(&self, request: Value) -> Result<Value, String> {
        self.script_async("return await window.ropewalk.ask(args[0])", vec![request]).await
    }

    /// The records in the page's database, each with `key`, `version`, `written` and `text`.
    pub(crate) async fn records(&self) -> Vec<Value> {
        let all = "const request = db.transaction('records').objectStore('records').getAll();
            const all = await new Promise((done) => { request.onsuccess = () => done(request.result); });
            db.close(); return all";
        let all = self.script_async(&format!("{DATABASE}{all}"), Vec::new()).await.unwrap();
        all.as_array().unwrap().clone()
    }

    /// Puts a record into the page's database, as another program might.
    pub(crate) async fn plant(&self, record: Value) {
        let put = "const change = db.transaction('records', 'readwrite');
            change.objectStore('records').put(args[0]);
            await new Promise((done) => { change.oncomplete = done; }); db.close()";
        self.script_async(&format!("{DATABASE}{put}"), vec![record]).await.unwrap();
    }

    /// What the page keeps, as one saved file: the answers of this tab, and the kept sets with the newest first.
    pub(crate) async fn document(&self) -> Value {
        // A letter takes a moment to the disk.
        tokio::time::sleep(Duration::from_millis(300)).await;
        let tab = self.script("return sessionStorage.getItem('ropewalk/tab')").await;
        let own = format!("answers/{}", tab.as_str().unwrap_or_default());
        let records = self.records().await;
        let text = |record: &Value| -> Value {
            serde_json::from_str(record["text"].as_str().unwrap()).unwrap()
        };
        let answers = records.iter().find(|record| record["key"] == own).map(text);
        let empty = json!({ "format": "ropewalk-fitting", "version": 2, "label": "", "answers": {}, "typed": {} });
        let mut document = answers.unwrap_or(empty);
        let is_set = |record: &&Value| record["key"].as_str().unwrap().starts_with("set/");
        let mut sets: Vec<Value> = records.iter().filter(is_set).map(text).collect();
        sets.sort_by_key(|set| std::cmp::Reverse(set["at"].as_str().unwrap().to_owned()));
        document["fittings"] = sets.into();
        document
    }

    /// Puts a saved file in place of all that the page keeps; it is shown once the page is loaded anew.
    pub(crate) async fn seed(&self, document: &Value) {
        let seed = "const change = db.transaction('records', 'readwrite');
            const store = change.objectStore('records');
            store.clear();
            const written = Date.now();
            const { fittings = [], ...answers } = args[0];
            store.put({ key: 'answers/seed', version: 1, written, text: JSON.stringify(answers) });
            fittings.forEach((set, i) =>
                store.put({ key: `set/seed-${i}`, version: 1, written, text: JSON.stringify(set) }));
            await new Promise((done) => { change.oncomplete = done; });
            db.close();
            localStorage.setItem('ropewalk/stored', '1');
            sessionStorage.setItem('ropewalk/tab', 'seed')";
        self.script_async(&format!("{DATABASE}{seed}"), vec![document.clone()]).await.unwrap();
    }

    /// The errors and warnings in the console since it was last asked for. A test that causes some on purpose asks,
    /// and has them out of the way.
    pub(crate) async fn console(&self) -> Vec<String> {
        let entries = self.log("browser").await;
        let grave = entries
            .iter()
            .filter(|entry| matches!(entry["level"].as_str(), Some("SEVERE" | "WARNING")));
        grave.map(|entry| entry["message"].to_string()).collect()
    }

    /// The addresses that the page asked for since it was last asked.
    pub(crate) async fn requests(&self) -> Vec<String> {
        let entries = self.log("performance").await;
        let events = entries
            .iter()
            .filter_map(|entry| serde_json::from_str::<Value>(entry["message"].as_str()?).ok());
        let sent = events.filter(|event| event["message"]["method"] == "Network.requestWillBeSent");
        sent.filter_map(|event| {
            Some(event["message"]["params"]["request"]["url"].as_str()?.to_owned())
        })
        .collect()
    }

    /// Fails on an error in the console, and on a request to another host.
    pub(crate) async fn assert_clean(&self) {
        let console = self.console().await;
        assert!(console.is_empty(), "the console should be empty: {console:#?}");
        // The browser's own pages (`chrome:`, shown before the first address) come from no host.
        let own = |url: &String| {
            ["data:", "blob:", "chrome:", "chrome-untrusted:", &self.url]
                .iter()
                .any(|start| url.starts_with(start))
        };
        let foreign: Vec<_> = self.requests().await.into_iter().filter(|url| !own(url)).collect();
        assert!(foreign.is_empty(), "nothing may be asked of another host: {foreign:#?}");
    }

    async fn log(&self, kind: &str) -> Vec<Value> {
        self.command("se/log", json!({ "type": kind }))
            .await
            .as_array()
            .cloned()
            .unwrap_or_default()
    }

    /// Sends a command of the browser's own debugging protocol.
    pub(crate) async fn devtools(&self, command: &str, parameters: Value) -> Value {
        self.command("goog/cdp/execute", json!({ "cmd": command, "params": parameters })).await
    }

    async fn command(&self, path: &'static str, body: Value) -> Value {
        self.client
            .issue_cmd(Post { path, body })
            .await
            .unwrap_or_else(|error| panic!("{path}: {error}"))
    }

    /// Gives the window a size, and tells the page whether the person prefers `light` or `dark`, or has `forced` colours.
    pub(crate) async fn appear(&self, width: u32, height: u32, scheme: &str) {
        let metrics =
            json!({ "width": width, "height": height, "deviceScaleFactor": 1, "mobile": false });
        self.devtools("Emulation.setDeviceMetricsOverride", metrics).await;
        let (scheme, forced) =
            if scheme == "forced" { ("light", "active") } else { (scheme, "none") };
        let features = json!([
            { "name": "prefers-color-scheme", "value": scheme },
            { "name": "forced-colors", "value": forced },
            // Pictures of a movement would differ from run to run.
            { "name": "prefers-reduced-motion", "value": "reduce" },
        ]);
        self.devtools("Emulation.setEmulatedMedia", json!({ "features": features })).await;
    }

    /// Keeps a picture of the whole page as `target/screens/NAME.png`, at this width and in this scheme.
    pub(crate) async fn picture(
        &self,
        name: &str,
        width: u32,
        height: u32,
        scheme: &str,
    ) -> PathBuf {
        self.appear(width, height, scheme).await;
        // Two frames, for layout and for what a script does about it.
        drop(
            self.script_async(
                "for (const _ of [1, 2]) await new Promise(requestAnimationFrame)",
                Vec::new(),
            )
            .await,
        );
        let shot = self
            .devtools(
                "Page.captureScreenshot",
                json!({ "format": "png", "captureBeyondViewport": true }),
            )
            .await;
        let bytes = base64(shot["data"].as_str().unwrap_or_default());
        keep(&format!("{name}.png"), &bytes)
    }

    /// Prints the page on A4 as `target/screens/NAME.pdf` and returns the number of pages.
    pub(crate) async fn print(&self, name: &str) -> usize {
        let paper = json!({ "preferCSSPageSize": true, "paperWidth": 8.27, "paperHeight": 11.69 });
        let print = self.devtools("Page.printToPDF", paper).await;
        let bytes = base64(print["data"].as_str().unwrap_or_default());
        assert!(bytes.starts_with(b"%PDF"), "the print is no PDF");
        keep(&format!("{name}.pdf"), &bytes);
        let text = String::from_utf8_lossy(&bytes);
        text.matches("/Type /Page").count() - text.matches("/Type /Pages").count()
    }

    /// Fails on any fault that the accessibility checker finds in the page as it is now.
    pub(crate) async fn assert_accessible(&self) {
        let axe =
            fs::read_to_string(place::axe()).expect("axe-core is missing: `cargo e2e` installs it");
        self.client.execute(&format!("{axe}; return null"), Vec::new()).await.unwrap();
        let run = "const found = await axe.run(document, { resultTypes: ['violations'] });
            return found.violations.map((v) => `${v.id} (${v.impact}): ${v.help}: ${v.nodes.map((n) => n.target.join(' ')).join(', ')}`)";
        let faults = self.script_async(run, Vec::new()).await.unwrap();
        assert_eq!(faults, json!([]), "the accessibility checker found faults: {faults:#}");
    }

    /// Waits until the page is kept on this machine.
    pub(crate) async fn kept(&self) {
        let ready = "await navigator.serviceWorker.ready; return navigator.serviceWorker.controller !== null";
        self.until_async("the service worker has taken charge of the page", ready).await;
    }

    /// Ends the server, so that from now on there is no network.
    pub(crate) fn end_server(&mut self) {
        drop(self.server.take());
    }

    /// Starts a server of this folder where the one before was.
    pub(crate) fn start_server(&mut self, folder: &Path) {
        let port = url::Url::parse(&self.url).unwrap().port().unwrap();
        self.server = Some(Server::start(folder, port).unwrap());
    }
}

/// A command that the driver knows and the client does not.
#[derive(Debug)]
struct Post {
    path: &'static str,
    body: Value,
}

impl WebDriverCompatibleCommand for Post {
    fn endpoint(
        &self,
        base: &url::Url,
        session: Option<&str>,
    ) -> Result<url::Url, url::ParseError> {
        base.join(&format!("session/{}/{}", session.unwrap_or_default(), self.path))
    }

    fn method_and_body(&self, _: &url::Url) -> (http::Method, Option<String>) {
        (http::Method::POST, Some(self.body.to_string()))
    }
}

/// The browser's driver, on a port of its own choice.
pub(crate) struct Driver {
    process: Child,
    url: String,
    profile: PathBuf,
}

impl Driver {
    pub(crate) fn start() -> Self {
        let program = place::chromedriver()
            .expect("chromedriver is missing: `cargo e2e` installs it or says how");
        let mut process = Command::new(program)
            .arg("--port=0")
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .unwrap();
        let mut lines =
            BufReader::new(process.stdout.take().unwrap()).lines().map_while(Result::ok);
        let port = lines.find_map(|line| {
            let (_, port) = line.split_once("started successfully on port ")?;
            port.trim_end_matches('.').parse::<u16>().ok()
        });
        let port = port.expect("chromedriver should say on which port it listens");
        // It would stop at the next line it writes if nobody read it.
        std::thread::spawn(move || lines.for_each(drop));
        static COUNT: AtomicU32 = AtomicU32::new(0);
        let profile =
            format!("ropewalk-{}-{}", std::process::id(), COUNT.fetch_add(1, Ordering::Relaxed));
        Self {
            process,
            url: format!("http://127.0.0.1:{port}"),
            profile: env::temp_dir().join(profile),
        }
    }

    /// A folder for a browser's data, removed with the driver.
    pub(crate) fn profile(&self) -> &Path {
        &self.profile
    }

    /// Drives a browser that was started elsewhere, at its address for debugging.
    pub(crate) async fn attached(&self, address: &str) -> Client {
        let mut capabilities = Map::new();
        capabilities.insert("goog:chromeOptions".to_owned(), json!({ "debuggerAddress": address }));
        self.connect(capabilities).await
    }

    async fn browser(&self) -> Client {
        let profile = format!("--user-data-dir={}", self.profile.display());
        let options = json!({
            "binary": place::chromium().expect("there is no browser: `cargo e2e` installs one or says how"),
            "args": [
                "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run",
                "--disable-background-networking", "--disable-component-update", "--disable-sync", profile,
                // No name leads anywhere, so that a request to another host fails even where no log shows it.
                "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
                "--window-size=1280,900",
            ],
        });
        let mut capabilities = Map::new();
        capabilities.insert("goog:chromeOptions".to_owned(), options);
        capabilities.insert(
            "goog:loggingPrefs".to_owned(),
            json!({ "browser": "ALL", "performance": "ALL" }),
        );
        self.connect(capabilities).await
    }

    async fn connect(&self, capabilities: Map<String, Value>) -> Client {
        let mut builder = ClientBuilder::new(HttpConnector::new());
        builder
            .capabilities(capabilities)
            .connect(&self.url)
            .await
            .expect("the browser should start")
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        drop(self.process.kill());
        drop(self.process.wait());
        drop(fs::remove_dir_all(&self.profile));
    }
}

fn keep(name: &str, bytes: &[u8]) -> PathBuf {
    let path = place::screens().join(name);
    fs::create_dir_all(place::screens()).unwrap();
    fs::write(&path, bytes).unwrap();
    path
}

/// Undoes the letters in which the driver sends pictures.
fn base64(text: &str) -> Vec<u8> {
    let mut bytes = Vec::with_capacity(text.len() / 4 * 3);
    let (mut bits, mut count) = (0_u32, 0);
    for letter in text.bytes() {
        let value = match letter {
            b'A'..=b'Z' => letter - b'A',
            b'a'..=b'z' => letter - b'a' + 26,
            b'0'..=b'9' => letter - b'0' + 52,
            b'+' => 62,
            b'/' => 63,
            _ => continue,
        };
        bits = bits << 6 | u32::from(value);
        count += 6;
        if count >= 8 {
            count -= 8;
            bytes.push((bits >> count & 0xff) as u8);
        }
    }
    bytes
}
