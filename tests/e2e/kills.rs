//! A browser that keeps sets in a loop is killed at random moments: whatever was told to be kept is there afterwards.
//!
//! `cargo campaign kills` kills it 300 times, on one profile.

use std::collections::BTreeSet;
use std::env;
use std::fs;
use std::os::unix::process::CommandExt;
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use fantoccini::Client;
use serde_json::{Value, json};
use tasks::place;
use tasks::server::Server;

use crate::support::{Driver, PATIENCE, Page};

/// How often the browser is killed in proof.
const KILLS: u32 = 20;

/// The longest that the loop runs before the browser is killed.
const LIFE_MS: u64 = 1500;

/// Keeps one set after the other under labels of their own, and notes each that the page told to be kept.
const LOOP: &str = "
    window.told = [];
    const run = arguments[0];
    const wait = async (what) => { let it; while (!(it = what())) await new Promise((done) => setTimeout(done, 2)); return it; };
    (async () => {
        for (let i = 0; ; i++) {
            location.hash = '#/check';
            const field = await wait(() => document.getElementById('label'));
            field.value = `${run}.${i}`;
            field.dispatchEvent(new Event('input', { bubbles: true }));
            location.hash = '#/set';
            const keep = await wait(() => [...document.querySelectorAll('main button')].find((b) => b.textContent === 'Keep'));
            const isTold = () => document.querySelector('.notices').textContent.includes('Kept on this machine');
            await wait(() => !isTold());
            keep.click();
            await wait(isTold);
            told.push(field.value);
        }
    })();";

/// A browser of our own, in a process group of its own, so that all of it can be killed at once.
struct Browser {
    process: Child,
    address: String,
}

impl Browser {
    fn start(profile: &Path) -> Self {
        let port = profile.join("DevToolsActivePort");
        drop(fs::remove_file(&port));
        let program = place::chromium().expect("there is no browser: `cargo e2e` installs one");
        let mut browser = Self {
            process: Command::new(program)
                .args([
                    "--headless=new",
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-dev-shm-usage",
                ])
                .args(["--no-first-run", "--disable-background-networking", "--disable-sync"])
                .args(["--disable-component-update", "--remote-debugging-port=0", "about:blank"])
                .arg(format!("--user-data-dir={}", profile.display()))
                .stdout(Stdio::null())
                .stderr(Stdio::null())
                .process_group(0)
                .spawn()
                .unwrap(),
            address: String::new(),
        };
        let start = Instant::now();
        loop {
            let text = fs::read_to_string(&port).unwrap_or_default();
            if let Some(port) = text.lines().next().filter(|_| text.lines().count() > 1) {
                browser.address = format!("127.0.0.1:{port}");
                return browser;
            }
            assert!(start.elapsed() < PATIENCE, "the browser should say on which port it listens");
            std::thread::sleep(Duration::from_millis(10));
        }
    }

    /// Kills every process of it, without a chance to write anything more.
    fn kill(mut self) {
        let group = format!("-{}", self.process.id());
        let killed = Command::new("kill").args(["-9", "--", &group]).status().unwrap();
        assert!(killed.success());
        self.process.wait().unwrap();
    }
}

/// The page in a browser, in which a set has been found.
async fn opened(driver: &Driver, browser: &Browser, server: &Server) -> Page {
    let client: Client = driver.attached(&browser.address).await;
    let page = Page::of(client, server.url());
    page.open("#/set").await;
    page.until(
        "a set is shown",
        "return [...document.querySelectorAll('main button')].some((b) => b.textContent === 'Keep')",
    )
    .await;
    page
}

/// Fails if a set that was told to be kept is not in the store, or one is there in part.
async fn check(page: &Page, told: &BTreeSet<String>, run: u32) {
    let mut there = BTreeSet::new();
    for record in page.records().await {
        let key = record["key"].as_str().unwrap();
        let text = record["text"].as_str().unwrap();
        let value: Value = serde_json::from_str(text)
            .unwrap_or_else(|fault| panic!("after kill {run}, {key} is half written: {fault}"));
        if key.starts_with("set/") {
            assert!(value["strings"].is_array() && value["summary"].is_array(), "{value}");
            there.insert(value["label"].as_str().unwrap().to_owned());
        }
    }
    let lost: Vec<_> = told.difference(&there).collect();
    assert!(lost.is_empty(), "after kill {run}, these were told to be kept and are not: {lost:?}");
}

#[test]
fn what_was_told_to_be_kept_outlives_a_killed_browser() {
    let kills = env::var("ROPEWALK_KILLS").map_or(KILLS, |kills| kills.parse().unwrap());
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
    runtime.block_on(async {
        let driver = Driver::start();
        let server = Server::start(&place::dist(), 0).unwrap();
        let profile = driver.profile();
        fs::create_dir_all(profile).unwrap();
        let (mut told, mut random, mut longest) = (BTreeSet::new(), 0x9e37_79b9_u64, 0);
        for run in 0..kills {
            let browser = Browser::start(profile);
            let page = opened(&driver, &browser, &server).await;
            check(&page, &told, run).await;
            page.client.execute(LOOP, vec![json!(run)]).await.unwrap();
            // A step of a linear congruential generator: the moments are the same in each run, and uneven.
            random = random
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1_442_695_040_888_963_407);
            let until = Instant::now() + Duration::from_millis((random >> 33) % LIFE_MS);
            let mut now = Vec::new();
            // Killed right after the last word that something is kept.
            while Instant::now() < until || now.is_empty() {
                let said = page.script("return told").await;
                now = said
                    .as_array()
                    .unwrap()
                    .iter()
                    .map(|label| label.as_str().unwrap().to_owned())
                    .collect();
            }
            browser.kill();
            longest = longest.max(now.len());
            told.extend(now);
        }
        let browser = Browser::start(profile);
        let page = opened(&driver, &browser, &server).await;
        check(&page, &told, kills).await;
        browser.kill();
        println!(
            "{kills} kills, {} sets told to be kept, at most {longest} in one life: all are there",
            told.len()
        );
        assert!(told.len() >= kills as usize);
    });
}
