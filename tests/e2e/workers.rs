//! Workers that fall silent: no answer waits for one much longer than it would take without it.

use std::fs;
use std::path::PathBuf;
use std::time::Duration;

use serde_json::{Value, json};

use crate::support::{Page, copy, drive_in};

/// A copy of the page whose workers run this first.
fn with_workers(name: &str, script: &str) -> PathBuf {
    let folder = copy(name, "");
    let names = fs::read_dir(&folder).unwrap().map(|entry| entry.unwrap().path());
    let mut loaders = names.filter(|path| path.to_string_lossy().contains("worker_loader-"));
    let loader = loaders.next().unwrap();
    let text = fs::read_to_string(&loader).unwrap();
    fs::write(loader, format!("{script};\n{text}")).unwrap();
    folder
}

impl Page {
    /// How long fits take, in milliseconds, one after the other, with a moment between them.
    async fn fits(&self, count: u32) -> Vec<f64> {
        let ask = "const took = [];
            for (let i = 0; i < args[0]; i += 1) {
                await new Promise((then) => setTimeout(then, 500));
                const begun = performance.now();
                const reply = await window.ropewalk.ask({ ask: 'fit', answers: { instrument: 'cello', age_months: i } });
                if (reply.reply !== 'fit') throw new Error(JSON.stringify(reply));
                took.push(performance.now() - begun);
            }
            return took";
        let took = self.script_async(ask, vec![json!(count)]).await.unwrap();
        took.as_array().unwrap().iter().map(|took| took.as_f64().unwrap()).collect()
    }
}

fn median(all: &[f64]) -> f64 {
    let mut all = all.to_vec();
    all.sort_by(f64::total_cmp);
    all[all.len() / 2]
}

#[test]
fn a_helper_that_closes_without_a_word_holds_up_no_set() {
    let (mut medians, mut slowest) = (Vec::new(), 0.0_f64);
    for (name, helper) in [
        ("no-helper", "if (self.name === 'helper') throw new Error('no helper')"),
        (
            "silent-helper",
            "if (self.name === 'helper') addEventListener('message', () => self.close())",
        ),
    ] {
        drive_in(&with_workers(name, helper), "", async |page| {
            let took = page.fits(9).await;
            println!("{name}: {took:.0?} ms");
            medians.push(median(&took));
            slowest = took.iter().copied().fold(slowest, f64::max);
            // An error on purpose, and a copy of the page that is not what its list says.
            page.console().await;
        });
    }
    // A machine that does much at once may be slow now and then, but not by the minute that a silent worker is given.
    assert!(slowest < 5_000.0, "{slowest} ms");
    assert!(medians[1] < 2.0 * medians[0] + 50.0, "{medians:?} ms");
}

/// A kept set as it was kept before its strings were.
fn kept(at: &str, instrument: &str) -> Value {
    json!({ "at": at, "answers": { "instrument": instrument }, "summary": ["kept long ago"] })
}

#[test]
fn a_kept_set_that_takes_long_delays_nobody() {
    // The search for one kept set never ends.
    let endless = "addEventListener('message', ({ data }) => {
        if (self.name === 'alone' && data.request.includes('double-bass')) for (;;);
    })";
    drive_in(&with_workers("slow-kept-set", endless), "", async |page| {
        let kept =
            [kept("2026-11-25T10:00:00Z", "double-bass"), kept("2026-11-24T10:00:00Z", "viola")];
        let kept =
            json!({ "format": "ropewalk-fitting", "version": 1, "answers": {}, "fittings": kept });
        page.script(&format!("localStorage.setItem('ropewalk/fitting', JSON.stringify({kept}))"))
            .await;
        page.reload().await;
        tokio::time::sleep(Duration::from_millis(1_500)).await;
        let took = page.fits(3).await;
        assert!(took.iter().all(|took| *took < 5_000.0), "{took:?} ms");
        // It is given up, and the next one's strings come.
        let told = "return [...document.querySelectorAll('.kept .lines')].filter((lines) => !lines.textContent.includes('kept long ago')).length === 1";
        page.until("the strings of the other set are told", told).await;
        page.console().await;
    });
}
