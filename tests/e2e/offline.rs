//! The page without a network: that it is ready for that is said only while every file is here and right; what is lost
//! or damaged is fetched again; and no address leads nowhere.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use serde_json::json;
use tasks::scripts;

use crate::support::{Page, copy, drive, drive_in};

/// What the page keeps: the path of each file, and its hash.
const KEPT: &str = "const found = {};
    for (const name of await caches.keys()) {
        const cache = await caches.open(name);
        for (const request of await cache.keys()) {
            const response = await cache.match(request, { ignoreVary: true });
            const hash = await crypto.subtle.digest('SHA-256', await response.arrayBuffer());
            const path = new URL(request.url).pathname.slice(1);
            found[path] = `sha256-${btoa(String.fromCharCode(...new Uint8Array(hash)))}`;
        }
    }
    return found";

/// Puts something else in the place of what is kept and whose name has this in it.
fn spoil(name: &str) -> String {
    format!(
        "for (const key of await caches.keys()) {{
            const cache = await caches.open(key);
            for (const request of await cache.keys()) {{
                if (!request.url.includes('{name}')) continue;
                const {{ headers }} = await cache.match(request, {{ ignoreVary: true }});
                await cache.put(request, new Response('something else', {{ headers }}));
            }}
        }}"
    )
}

/// Removes what is kept and whose name has this in it.
fn lose(name: &str) -> String {
    format!(
        "for (const key of await caches.keys()) {{
            const cache = await caches.open(key);
            for (const request of await cache.keys()) if (request.url.includes('{name}')) await cache.delete(request);
        }}"
    )
}

/// What should be kept of the page in a folder.
fn whole(folder: &Path) -> BTreeMap<String, String> {
    fn add(folder: &Path, prefix: &str, all: &mut BTreeMap<String, String>) {
        for entry in fs::read_dir(folder).unwrap() {
            let entry = entry.unwrap();
            let name = format!("{prefix}{}", entry.file_name().into_string().unwrap());
            if entry.path().is_dir() {
                add(&entry.path(), &format!("{name}/"), all);
            } else {
                all.insert(name, scripts::integrity(&fs::read(entry.path()).unwrap()));
            }
        }
    }
    let mut all = BTreeMap::new();
    add(folder, "", &mut all);
    all.remove("sw.js");
    let page = all.remove("index.html").unwrap();
    all.insert(String::new(), page);
    all
}

impl Page {
    async fn until_kept(&self, all: &BTreeMap<String, String>) {
        let start = std::time::Instant::now();
        while self.script_async(KEPT, Vec::new()).await != Ok(json!(all)) {
            assert!(start.elapsed() < crate::support::PATIENCE, "not everything is kept again");
            tokio::time::sleep(std::time::Duration::from_millis(50)).await;
        }
    }

    /// Waits until the first room says this of how far the page is kept.
    async fn until_said(&self, words: &str) {
        let script = format!(
            "return document.querySelector('.kept-here')?.textContent.includes({}) ?? false",
            json!(words)
        );
        self.until(&format!("it says “{words}”"), &script).await;
    }
}

const READY: &str = "Ready for use without a network";
const NOT_READY: &str = "a file is missing or damaged";

#[test]
fn what_is_kept_is_fetched_again_when_it_is_lost_or_damaged() {
    drive(async |page| {
        page.kept().await;
        page.until_said(READY).await;
        let all = whole(&tasks::place::dist());
        page.until_kept(&all).await;
        for harm in [spoil(""), lose("words-de"), lose("ropewalk-"), spoil("style-"), lose("")] {
            page.script_async(&harm, Vec::new()).await.unwrap();
            assert_ne!(page.script_async(KEPT, Vec::new()).await, Ok(json!(all)), "{harm}");
            // With a network, the page starts all the same.
            page.reload().await;
            page.until_said(READY).await;
            page.until_kept(&all).await;
        }
        let forget = "for (const name of await caches.keys()) await caches.delete(name)";
        page.script_async(forget, Vec::new()).await.unwrap();
        page.reload().await;
        page.until_said(READY).await;
        page.until_kept(&all).await;
        // What the browser itself says of a damaged module.
        page.console().await;
    });
}

#[test]
fn it_is_ready_only_while_everything_is_here() {
    drive(async |page| {
        page.kept().await;
        page.until_said(READY).await;
        let all = whole(&tasks::place::dist());
        page.end_server();

        // While the page is open, coming back to the first room is enough.
        page.script_async(&lose("words-de"), Vec::new()).await.unwrap();
        page.open("#/words").await;
        page.open("#/").await;
        page.until_said(NOT_READY).await;
        page.reload().await;
        page.until_said(NOT_READY).await;
        let said = page.script("return document.querySelector('.kept-here').textContent").await;
        assert!(!said.as_str().unwrap().contains(READY), "{said}");

        // The browser says that there is a network again.
        page.start_server(&tasks::place::dist());
        page.script("dispatchEvent(new Event('online'))").await;
        page.until_said(READY).await;
        page.until_kept(&all).await;

        // A part of the start that is damaged while there is no network is told of, and heals with the network.
        page.end_server();
        page.script_async(&spoil("_bg.wasm"), Vec::new()).await.unwrap();
        page.load("#/").await;
        page.until(
            "it is told",
            "return document.querySelector('.broken')?.textContent.includes('_bg.wasm') ?? false",
        )
        .await;
        page.start_server(&tasks::place::dist());
        page.script("dispatchEvent(new Event('online'))").await;
        page.until("the page has started", "return !!document.querySelector('h1')").await;
        page.until_said(READY).await;
        page.until_kept(&all).await;
        // What the browser itself says of such files.
        page.console().await;
    });
}

#[test]
fn a_tab_that_met_a_damaged_file_starts_when_another_has_it_fetched_again() {
    drive(async |page| {
        page.kept().await;
        page.until_said(READY).await;
        let well = page.client.window().await.unwrap();
        let ill = page.client.new_window(true).await.unwrap().handle;
        page.end_server();
        page.script_async(&spoil("_bg.wasm"), Vec::new()).await.unwrap();
        page.client.switch_to_window(ill.clone()).await.unwrap();
        page.load("#/").await;
        page.until("it is told", "return !!document.querySelector('.broken')").await;
        page.start_server(&tasks::place::dist());
        page.client.switch_to_window(well).await.unwrap();
        page.script("dispatchEvent(new Event('online'))").await;
        page.until_said(READY).await;
        page.client.switch_to_window(ill).await.unwrap();
        page.until_said(READY).await;
        // What the browser itself says of the damaged module.
        page.console().await;
    });
}

#[test]
fn a_browser_whose_caches_fail_leads_to_the_network() {
    let folder = copy("broken-caches", "");
    let script = folder.join("sw.js");
    let breaks = "for (const call of ['open', 'match', 'keys']) {
        const whole = CacheStorage.prototype[call];
        CacheStorage.prototype[call] = function (...given) {
            return self.broken ? Promise.reject(new Error('the disk is gone')) : whole.apply(this, given);
        };
    }
    self.addEventListener('message', (event) => { if (event.data === 'break') self.broken = true; });\n";
    fs::write(&script, breaks.to_owned() + &fs::read_to_string(&script).unwrap()).unwrap();
    drive_in(&folder, "", async |page| {
        page.kept().await;
        page.until_said(READY).await;
        page.script("navigator.serviceWorker.controller.postMessage('break')").await;
        page.reload().await;
        assert_eq!(page.ask(json!({})).await.unwrap()["reply"], "refused");
        page.until_said(NOT_READY).await;
    });
}

#[test]
fn every_other_address_leads_to_the_page() {
    drive(async |page| {
        page.kept().await;
        let place = "return location.pathname + location.hash";
        for network in [true, false] {
            if !network {
                page.end_server();
            }
            for (path, leads) in [
                ("some/where?else#/ask/2", "/#/ask/2"),
                ("constructor#/words", "/#/words"),
                ("index.html", "/index.html"),
                ("?from=elsewhere#/ask/3", "/#/ask/3"),
            ] {
                page.load(path).await;
                page.until("the page has started", "return !!document.querySelector('h1')").await;
                assert_eq!(page.script(place).await, leads, "{path}");
            }
            // A file of the page is itself.
            page.load("door.schema.json").await;
            let text = page.script("return document.body.textContent").await;
            assert!(text.as_str().unwrap().contains("$schema"), "{text}");
            // The browser looks for an icon of a page that names none.
            page.console().await;
        }
    });
}
