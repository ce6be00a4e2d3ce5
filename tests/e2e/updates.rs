//! Two builds of the page on one machine: who runs the old one has all of it until the page is loaded anew.

use std::fs;
use std::path::Path;
use std::time::{Duration, Instant};

use serde_json::json;
use tasks::{place, scripts};

use crate::support::{PATIENCE, Page, copy, drive_in};

/// Makes a newer build of the page in `folder`, with another page, start script, module and worker; those of the build
/// before are gone from it.
pub(crate) fn publish_newer(folder: &Path) {
    let read = |name: &str| fs::read_to_string(folder.join(name)).unwrap();
    let names: Vec<_> = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap()).collect();
    let names = names.iter().map(|entry| entry.file_name().into_string().unwrap());
    let (workers, others): (Vec<_>, Vec<_>) = names.partition(|name| name.starts_with("worker"));
    let loader = workers.iter().find(|name| name.starts_with("worker_loader-")).unwrap();
    let id = loader.trim_start_matches("worker_loader-").trim_end_matches(".js");
    let newer: String = id.chars().rev().collect();
    for name in &workers {
        if name.ends_with(".js") {
            fs::write(folder.join(name), read(name).replace(id, &newer)).unwrap();
        }
        fs::rename(folder.join(name), folder.join(name.replace(id, &newer))).unwrap();
    }
    let start = others.iter().find(|name| name.starts_with("start-")).unwrap();
    let module = others.iter().find(|name| name.ends_with("_bg.wasm")).unwrap();
    let another = module.replace("_bg.wasm", "newer_bg.wasm");
    fs::rename(folder.join(module), folder.join(&another)).unwrap();
    let page = read("index.html").replace(id, &newer).replace(start, "start.js");
    let page = page.replace(module, &another);
    fs::write(folder.join("index.html"), page + "<!-- newer -->").unwrap();
    fs::remove_file(folder.join(start)).unwrap();
    for script in ["start.js", "sw.js"] {
        fs::copy(place::root().join("www").join(script), folder.join(script)).unwrap();
    }
    scripts::fill(folder).unwrap();
}

/// Has the browser fetch the newer build.
const UPDATE: &str =
    "const registration = await navigator.serviceWorker.ready; await registration.update();
    while (!registration.waiting) await new Promise((again) => setTimeout(again, 20)); return true";

/// The start script, which tells one build from another.
const BUILD: &str = "return document.querySelector('script[type=module]').src";

impl Page {
    async fn until_caches(&self, count: usize) {
        let start = Instant::now();
        let keys = "return (await caches.keys()).length";
        while self.script_async(keys, Vec::new()).await != Ok(json!(count)) {
            assert!(start.elapsed() < PATIENCE, "there should be {count} builds");
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
    }

    async fn press_use_it_now(&self) {
        let button = "const button = document.querySelector('.kept-here button'); button?.click(); return !!button";
        self.until("the newer version is offered", button).await;
    }

    async fn until_newer_than(&self, old: &serde_json::Value) {
        let start = Instant::now();
        let newer = format!("{BUILD} !== {old} && !!document.querySelector('h1')");
        while self.client.execute(&newer, Vec::new()).await.ok() != Some(json!(true)) {
            assert!(start.elapsed() < PATIENCE, "the newer build never came");
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
    }
}

#[test]
fn a_newer_build_takes_over_only_where_no_other_tab_is_open() {
    let folder = copy("two-builds", "");
    drive_in(&folder, "", async |page| {
        page.kept().await;
        let old = page.script(BUILD).await;
        publish_newer(&folder);
        assert_eq!(page.script_async(UPDATE, Vec::new()).await, Ok(json!(true)));

        // With a second tab open, both builds are kept, and the old one answers.
        let first = page.client.window().await.unwrap();
        let second = page.client.new_window(true).await.unwrap().handle;
        page.client.switch_to_window(second).await.unwrap();
        page.open("").await;
        tokio::time::sleep(Duration::from_millis(500)).await;
        page.until_caches(2).await;
        assert_eq!(page.script(BUILD).await, old);
        page.client.close_window().await.unwrap();
        page.client.switch_to_window(first).await.unwrap();

        // Alone, it is replaced when it is loaded anew, without a network too.
        // The browser may count a closed tab for a moment, so this may take a second load.
        let start = Instant::now();
        while page.script(BUILD).await == old {
            assert!(start.elapsed() < PATIENCE, "the newer build never took over");
            page.reload().await;
            tokio::time::sleep(Duration::from_millis(300)).await;
        }
        page.until_caches(1).await;
        page.end_server();
        page.reload().await;
        assert_eq!(page.ask(json!({})).await.unwrap()["reply"], "refused");
    });
}

#[test]
fn a_newer_build_in_one_tab_takes_nothing_from_another() {
    let folder = copy("two-tabs", "");
    drive_in(&folder, "", async |page| {
        page.kept().await;
        let old = page.script(BUILD).await;
        let worker = "return document.querySelector('meta[name=worker]').content";
        let worker = page.script(worker).await;
        let first = page.client.window().await.unwrap();
        let second = page.client.new_window(true).await.unwrap().handle;
        page.client.switch_to_window(second.clone()).await.unwrap();
        page.open("").await;
        publish_newer(&folder);
        assert_eq!(page.script_async(UPDATE, Vec::new()).await, Ok(json!(true)));
        page.press_use_it_now().await;
        page.until_newer_than(&old).await;
        // It has looked round for what is of no more use.
        tokio::time::sleep(Duration::from_millis(2_500)).await;
        page.until_caches(2).await;

        // The first tab runs on, and finds what it has not asked for before: a second worker is loaded for how sure a set is.
        page.client.switch_to_window(first.clone()).await.unwrap();
        assert_eq!(page.script(BUILD).await, old);
        let fetched = page.script_async("return (await fetch(args[0])).ok", vec![worker]).await;
        assert_eq!(fetched, Ok(json!(true)), "its worker is gone");
        page.script("location.hash = '#/set'").await;
        page.until("the set is there", "return !!document.querySelector('article.answer')").await;
        let sure = "return performance.getEntriesByType('resource').length > 0 && !document.querySelector('[role=alert]')";
        page.until("nothing has failed", sure).await;
        // It is told, and follows when it is asked to.
        page.script("location.hash = '#/'").await;
        let said = "return document.querySelector('.kept-here')?.textContent.includes('Another tab') ?? false";
        page.until("it is told", said).await;
        page.press_use_it_now().await;
        page.until_newer_than(&old).await;
        page.until_caches(1).await;
        page.client.close_window().await.unwrap();
        page.client.switch_to_window(second).await.unwrap();
    });
}

#[test]
fn a_build_that_no_longer_starts_gives_way_to_the_newer_one() {
    let folder = copy("broken-build", "");
    drive_in(&folder, "", async |page| {
        page.kept().await;
        let old = page.script(BUILD).await;
        publish_newer(&folder);
        // Its module is lost, and the host has another one by now.
        let lose = "for (const name of await caches.keys()) {
                const cache = await caches.open(name);
                for (const file of await cache.keys()) if (/ropewalk-.*wasm/.test(file.url)) await cache.delete(file);
            }";
        page.script_async(lose, Vec::new()).await.unwrap();
        page.load("#/ask/2").await;
        page.until_newer_than(&old).await;
        assert_eq!(page.script("return location.hash").await, "#/ask/2");
        page.until_caches(1).await;
        // What the browser itself says of a missing file.
        page.console().await;
    });
}
