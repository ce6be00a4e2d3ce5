//! What happens when a file of the page is missing, cut or damaged, and when its module breaks down: it is told, with
//! a way on, and what was typed is still there.

use std::fs;
use std::path::{Path, PathBuf};

use serde_json::{Value, json};

use crate::support::{Page, copy, drive_in};

/// What can happen to a file.
#[derive(Clone, Copy, Debug)]
enum Mishap {
    Missing,
    Cut,
    Damaged,
}

const MISHAPS: [Mishap; 3] = [Mishap::Missing, Mishap::Cut, Mishap::Damaged];

/// A file of the page that something has happened to.
struct Harmed {
    path: PathBuf,
    whole: Vec<u8>,
}

impl Harmed {
    fn by(mishap: Mishap, path: PathBuf) -> Self {
        let whole = fs::read(&path).unwrap();
        let half = whole.len() / 2;
        let mut damaged = whole.clone();
        damaged[half..].iter_mut().take(200).for_each(|byte| *byte = 0xff);
        match mishap {
            Mishap::Missing => fs::remove_file(&path).unwrap(),
            Mishap::Cut => fs::write(&path, &whole[..half]).unwrap(),
            Mishap::Damaged => fs::write(&path, damaged).unwrap(),
        }
        Self { path, whole }
    }

    fn mend(self) {
        fs::write(self.path, self.whole).unwrap();
    }
}

/// The file of the page in `folder` whose name begins and ends like this.
fn find(folder: &Path, start: &str, end: &str) -> PathBuf {
    let names = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().file_name());
    let mut names = names.map(|name| name.into_string().unwrap());
    folder.join(names.find(|name| name.starts_with(start) && name.ends_with(end)).unwrap())
}

fn name(path: &Path) -> &str {
    path.file_name().unwrap().to_str().unwrap()
}

impl Page {
    /// From now on nothing comes from what the browser keeps.
    async fn bypass_kept(&self) {
        self.devtools("Network.enable", json!({})).await;
        self.devtools("Network.setBypassServiceWorker", json!({ "bypass": true })).await;
        self.devtools("Network.setCacheDisabled", json!({ "cacheDisabled": true })).await;
    }

    async fn speaks(&self, language: &str) {
        let agent = self.script("return navigator.userAgent").await;
        let agent = json!({ "userAgent": agent, "acceptLanguage": language });
        self.devtools("Emulation.setUserAgentOverride", agent).await;
    }

    /// Waits until the start script tells something that has these words.
    async fn told_at_start(&self, what: &str, words: &str) {
        let script = format!(
            "return document.querySelector('.broken')?.textContent.includes({}) ?? false",
            json!(words)
        );
        self.until(what, &script).await;
    }

    async fn press_start_again(&self) {
        self.script("document.querySelector('.broken button').click()").await;
        self.until("the page has started", "return !!document.querySelector('h1')").await;
    }
}

#[test]
fn a_file_of_the_start_that_is_not_right_is_told_of_and_the_page_starts_when_it_is_back() {
    let folder = copy("start-files", "");
    drive_in(&folder, "", async |page| {
        page.bypass_kept().await;
        for (start, end) in [("ropewalk-", ".js"), ("ropewalk-", ".wasm"), ("style-", ".css")] {
            for (mishap, language) in MISHAPS.into_iter().zip(["en", "de-AT", "fr"]) {
                page.speaks(language).await;
                let file = find(&folder, start, end);
                let harmed = Harmed::by(mishap, file.clone());
                page.load("#/ask/1").await;
                let what = format!("it is told that {} is {mishap:?}", name(&file));
                page.told_at_start(&what, name(&file)).await;
                let words = if language == "de-AT" { "Laden Sie die Seite neu" } else { "Load" };
                page.told_at_start("it is told in the browser's language", words).await;
                if end != ".css" {
                    page.assert_accessible().await;
                }
                harmed.mend();
                page.press_start_again().await;
                assert_eq!(page.script("return location.hash").await, "#/ask/1");
                assert_eq!(
                    page.script("return document.querySelector('.broken')").await,
                    json!(null)
                );
            }
        }
        // What the browser itself says of such files.
        page.console().await;
    });
}

#[test]
fn where_the_start_script_does_not_come_the_page_says_so_by_itself() {
    let folder = copy("start-script", "");
    drive_in(&folder, "", async |page| {
        page.bypass_kept().await;
        for mishap in MISHAPS {
            let harmed = Harmed::by(mishap, find(&folder, "start-", ".js"));
            page.load("#/").await;
            let seen = "const text = document.querySelector('.stalled'); return !!text && getComputedStyle(text).visibility === 'visible'";
            page.until("the style sheet is there", "return document.styleSheets.length === 1")
                .await;
            assert_eq!(
                page.script(seen).await,
                json!(false),
                "nothing is said while it may still come"
            );
            // Its time is a matter of seconds, which this need not wait for.
            let wait = page.script(
                "const [wait] = document.querySelector('.stalled').getAnimations(); const ms = wait.effect.getTiming().duration;
                 wait.finish(); return ms",
            );
            let wait = wait.await.as_f64().unwrap();
            assert!((2_000.0..=10_000.0).contains(&wait), "{wait}");
            assert_eq!(page.script(seen).await, json!(true));
            let said = page.script("return document.querySelector('.stalled').innerText").await;
            let said = said.as_str().unwrap();
            assert!(said.contains("load the page again"), "{said}");
            assert!(said.contains("Laden Sie die Seite neu"), "{said}");
            page.assert_accessible().await;
            harmed.mend();
            page.reload().await;
        }
        page.console().await;
    });
}

#[test]
fn messages_that_are_not_right_are_told_of_and_come_when_they_are_back() {
    let folder = copy("start-words", "");
    drive_in(&folder, "", async |page| {
        page.bypass_kept().await;
        for mishap in MISHAPS {
            let harmed = Harmed::by(mishap, find(&folder, "words-en-", ".txt"));
            page.load("#/words").await;
            page.until("it is told", "return document.querySelector('.notices')?.textContent.includes('could not be fetched') ?? false").await;
            harmed.mend();
            page.reload().await;
            page.until(
                "the words are there",
                "return document.querySelectorAll('main dt').length > 10",
            )
            .await;

            page.speaks("de-DE").await;
            let harmed = Harmed::by(mishap, find(&folder, "words-de-", ".txt"));
            page.load("#/").await;
            page.until("it is told", "return document.querySelector('.notices')?.textContent.includes('in English for now') ?? false").await;
            harmed.mend();
            page.reload().await;
            page.until("the page speaks German", "return document.documentElement.lang === 'de'")
                .await;
            page.speaks("en").await;
        }
        page.console().await;
    });
}

#[test]
fn a_model_that_does_not_come_is_told_of_and_asked_again() {
    let folder = copy("worker-files", "");
    drive_in(&folder, "", async |page| {
        page.bypass_kept().await;
        for (start, end) in [("worker_loader-", ".js"), ("worker-", ".js"), ("worker_bg-", ".wasm")]
        {
            for mishap in MISHAPS {
                let harmed = Harmed::by(mishap, find(&folder, start, end));
                page.load("#/set").await;
                let what = format!("it is told that {start} is {mishap:?}");
                page.until(&what, "return !!document.querySelector('.finding [role=alert]')").await;
                harmed.mend();
                // Another question may have met the harmed file in the meantime; then it is pressed again.
                let again = "document.querySelector('.finding [role=alert] button')?.click(); return !!document.querySelector('article.answer')";
                page.until("the set is there", again).await;
            }
        }
        page.console().await;
    });
}

/// Runs before anything of the page, and gives a test the memory of its module.
const EXPOSE: &str = "
    const begin = WebAssembly.instantiateStreaming;
    WebAssembly.instantiateStreaming = async (...given) => {
        const begun = await begin.apply(WebAssembly, given);
        window.memory = begun.instance.exports.memory;
        return begun;
    };";

#[test]
fn a_module_that_breaks_down_is_told_of_and_started_again_with_what_was_typed() {
    drive_in(&copy("broken-module", ""), "", async |page| {
        page.devtools("Page.addScriptToEvaluateOnNewDocument", json!({ "source": EXPOSE })).await;
        // Whatever the module finds in its memory is wrong from now on.
        let break_down = "new Uint8Array(window.memory.buffer).fill(0xff); document.querySelector('input[type=radio]').click()";
        let typed = "return document.querySelector('#age_months')?.value ?? null";
        let settled = std::time::Duration::from_millis(500);

        page.load("#/ask/2").await;
        page.until("the field is there", "return !!document.querySelector('#age_months')").await;
        page.write("#age_months", "about a year").await;
        tokio::time::sleep(settled).await;
        page.script(break_down).await;
        page.told_at_start("it is told", "has broken down").await;
        page.assert_accessible().await;
        page.press_start_again().await;
        assert_eq!(page.script(typed).await, "about a year");

        // A link leads on too.
        page.script(break_down).await;
        page.told_at_start("it is told", "has broken down").await;
        page.script("document.querySelector('a[href=\"#/words\"]').click()").await;
        page.until(
            "the link has led on",
            "return document.querySelectorAll('main dt').length > 10",
        )
        .await;
        page.load("#/ask/2").await;
        page.until(
            "what was typed is there",
            "return document.querySelector('#age_months')?.value === 'about a year'",
        )
        .await;

        // So does a panic that its caller has caught.
        page.script("dispatchEvent(new Event('panic'))").await;
        page.told_at_start("it is told", "has broken down").await;
        page.console().await;
    });
}

/// A script error of somebody else's is no business of the page.
#[test]
fn other_faults_are_not_told_as_a_breakdown() {
    drive_in(&copy("other-faults", ""), "", async |page| {
        page.script("setTimeout(() => { throw new Error('not ours') }); Promise.reject(new TypeError('nor this'))").await;
        tokio::time::sleep(std::time::Duration::from_millis(300)).await;
        assert_eq!(page.script("return document.querySelector('.broken')").await, Value::Null);
        page.console().await;
    });
}
