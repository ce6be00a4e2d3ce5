//! Strings under the bow and to the ear: maps are drawn as they come and can be stopped, sounds play and are kept.

use std::fs;
use std::time::{Duration, Instant};

use fantoccini::Locator;
use serde_json::{Value, json};

use crate::support::{Page, drive};

impl Page {
    /// Clicks the first button within an element of this class that begins with these words, as a person would.
    async fn click_in(&self, class: &str, words: &str) {
        let path = format!(
            "//*[contains(concat(' ', @class, ' '), ' {class} ')]//button[starts-with(normalize-space(.), '{words}')]"
        );
        self.client.find(Locator::XPath(&path)).await.unwrap().click().await.unwrap();
    }

    async fn with_set(&self) {
        self.script("[...document.querySelectorAll('main a, main button')].find((b) => b.textContent.trim().startsWith('Just show me a set')).click()").await;
        self.until("a set is shown", "return !!document.querySelector('main .answer #strings') && !!document.querySelector('.sheet')")
            .await;
    }
}

#[test]
fn a_map_is_drawn_as_it_comes_and_can_be_stopped() {
    drive(async |page| {
        page.with_set().await;
        page.open_everything().await;
        // Within the page, for on a fast machine the map is done before the driver has looked twice.
        let stopped_early =
            "const button = (words) => [...document.querySelectorAll('.bow-maps button')]
                .find((button) => button.textContent.startsWith(words));
            button('Map force and place').click();
            while (document.querySelectorAll('.bow-map rect.field').length <= 3) {
                await new Promise(requestAnimationFrame);
            }
            const told = !!document.querySelector('.bow-maps progress');
            button('Stop').click();
            return told";
        let told = page.script_async(stopped_early, Vec::new()).await;
        assert_eq!(told, Ok(Value::Bool(true)), "progress is told");
        page.until(
            "it has stopped",
            "return document.querySelector('.bow-maps').textContent.includes('Stopped.')",
        )
        .await;
        let rows = "return document.querySelectorAll('.bow-map tbody tr').length";
        let stopped = page.script(rows).await;
        tokio::time::sleep(Duration::from_millis(500)).await;
        assert_eq!(page.script(rows).await, stopped, "it went on");
        page.click_in("bow-maps", "Map force and place").await;
        page.until("the window is told", "return document.querySelector('.bow-maps .takeaway')?.textContent.includes('speaks cleanly') ?? false").await;
        assert_eq!(page.script("return document.querySelectorAll('.bow-map')[0].querySelectorAll('tbody tr').length").await, 24);
        page.click_in("bow-maps", "Map force and start").await;
        page.until("the starts are counted", "return document.querySelector('.bow-maps .takeaway')?.textContent.includes('of 100') ?? false").await;
        page.assert_accessible().await;
        page.picture("bow-map", 390, 844, "light").await;
        page.picture("bow-map-dark", 1280, 900, "dark").await;
        let wide = page.script("return document.documentElement.scrollWidth <= innerWidth").await;
        assert_eq!(wide, Value::Bool(true), "the page is wider than the window");
        page.assert_clean().await;
    });
}

#[test]
fn two_maps_lie_side_by_side_on_the_compare_page() {
    drive(async |page| {
        page.open("#/compare").await;
        page.until("maps can be asked for", "return !!document.querySelector('.bow-maps')").await;
        page.click_in("bow-maps", "Map force and place").await;
        page.until("both are told", "return document.querySelector('.bow-maps .takeaway')?.textContent.includes('; the second gave') ?? false").await;
        assert_eq!(page.script("return document.querySelectorAll('.bow-map').length").await, 2);
        page.picture("bow-maps-compared", 1280, 900, "light").await;
        page.assert_accessible().await;
        page.assert_clean().await;
    });
}

#[test]
fn a_sound_plays_stops_and_is_kept_as_a_file() {
    drive(async |page| {
        let folder = std::env::temp_dir().join(format!("ropewalk-wav-{}", std::process::id()));
        fs::create_dir_all(&folder).unwrap();
        let allow = json!({ "behavior": "allow", "downloadPath": folder.to_str().unwrap() });
        page.devtools("Browser.setDownloadBehavior", allow).await;
        page.open("#/compare").await;
        page.until("it can be heard", "return !!document.querySelector('.listening')").await;
        // Stopped while it is being made.
        page.click_in("listening", "Play").await;
        page.until("it is being made", "return !!document.querySelector('.listening progress')")
            .await;
        page.click_in("listening", "Stop").await;
        page.until("it has stopped", "return !document.querySelector('.listening progress')").await;
        page.script("const list = document.querySelector('#hear-piece'); list.value = 3; list.dispatchEvent(new Event('change', { bubbles: true }))").await;
        page.click_in("listening", "Play").await;
        page.until(
            "it plays",
            "return document.querySelector('.listening').textContent.includes('It plays.')",
        )
        .await;
        page.click_in("listening", "Hear the second").await;
        page.until("the other is heard", "return document.querySelectorAll('.listening [aria-pressed]')[1].ariaPressed === 'true'").await;
        page.script("document.querySelector('#hear-equal').click()").await;
        page.until(
            "it still plays",
            "return document.querySelector('.listening').textContent.includes('It plays.')",
        )
        .await;
        page.click_in("listening", "Stop").await;
        page.until(
            "it has stopped",
            "return !document.querySelector('.listening').textContent.includes('It plays.')",
        )
        .await;
        page.picture("listening", 390, 844, "light").await;
        page.assert_accessible().await;
        page.click_in("listening", "Download the first").await;
        let file = folder.join("pizzicato-the-first.wav");
        let start = Instant::now();
        while !file.is_file() && start.elapsed() < Duration::from_secs(20) {
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
        let bytes = fs::read(&file).unwrap();
        // The layout of RIFF WAVE, from memory: sizes in bytes, least first.
        let number = |at: usize| {
            bytes[at..at + 4].iter().rev().fold(0_usize, |sum, byte| sum << 8 | usize::from(*byte))
        };
        assert_eq!((&bytes[..4], &bytes[8..16]), (&b"RIFF"[..], &b"WAVEfmt "[..]));
        assert_eq!(number(4), bytes.len() - 8);
        assert_eq!((number(24), number(40)), (48_000, bytes.len() - 44));
        // One pizzicato rings for two seconds.
        assert_eq!(bytes.len() - 44, 2 * 2 * 48_000);
        let loud =
            bytes[44..].chunks(2).any(|two| i16::from_le_bytes([two[0], two[1]]).abs() > 1000);
        assert!(loud, "the file is silent");
        drop(fs::remove_dir_all(&folder));
        page.assert_clean().await;
    });
}

/// A map of one string by two workers that are there, each asking for the next row: milliseconds until the first row
/// came, and until all had.
const BY_TWO: &str = "const { string, map } = args[0];
    const place = document.querySelector('meta[name=worker]').content;
    const workers = [0, 1].map(() => new Worker(place, { type: 'module' }));
    const next = (worker) => new Promise((done) => { worker.onmessage = (event) => done(event.data); });
    await Promise.all(workers.map(next));
    const start = performance.now(); let first = 0, row = 0;
    await Promise.all(workers.map(async (worker) => {
        while (row < 24) {
            const request = JSON.stringify({ ask: 'bow-map', map, count: 24, row: row++, ...string });
            const came = next(worker);
            worker.postMessage({ id: row, request });
            const reply = JSON.parse((await came).reply);
            if (reply.reply !== 'bow-map') throw new Error(JSON.stringify(reply));
            first ||= performance.now() - start;
        }
        worker.terminate();
    }));
    return [first, performance.now() - start].map(Math.round)";

/// A piece, so many times: milliseconds that each took, and that it lasts.
const PIECES: &str = "const { request, times } = args[0]; const took = []; let lasting = 0;
    for (let i = 0; i < times; i++) {
        const start = performance.now();
        const reply = await window.ropewalk.ask(request);
        took.push(performance.now() - start);
        lasting = 1e3 * reply.samples.length / reply.rate_hz;
    }
    return [...took, lasting].map(Math.round)";

/// Presses for a map on the compare page and waits for both strings: milliseconds until fields are seen, and until all
/// is drawn.
const DRAWN: &str = "const maps = document.querySelector('.bow-maps');
    const start = performance.now(); let first = 0;
    [...maps.querySelectorAll('button')].find((b) => b.textContent.startsWith(args[0])).click();
    do {
        await new Promise(requestAnimationFrame);
        if (maps.querySelector('rect.field')) first ||= performance.now() - start;
    } while (maps.querySelector('progress') || !maps.querySelector('.takeaway'));
    return [first, performance.now() - start].map(Math.round)";

/// How often a piece is timed.
const TIMES: usize = 7;
/// No map takes longer than so many milliseconds, however busy the machine: a map that hangs is no slow one.
const FAR_TOO_LONG: u64 = 120_000;

#[test]
fn maps_and_sounds_are_timed() {
    drive(async |page| {
        // Numbers for the console of the test, and all but no gates: machines differ.
        let core = |material: &str, mm: f64| json!({ "material": material, "build": "solid", "diameter_m": mm / 1e3 });
        let flat = |metal: &str, mm: f64| json!({ "metal": metal, "form": "flat", "thickness_m": mm / 1e3 });
        let string = |instrument: &str, construction: &Value, length: f64, pitch: f64| {
            json!({ "instrument": instrument, "construction": construction,
                "setting": { "sounding_length_m": length, "pitch_hz": pitch } })
        };
        let a =
            json!({ "core": core("spring-steel", 0.24), "windings": [flat("aluminium", 0.11)] });
        let e = json!({ "core": core("spring-steel", 0.9), "windings": [flat("nickel", 0.4)] });
        for (name, string) in [
            ("violin A", string("violin", &a, 0.328, 440.0)),
            ("bass E", string("double-bass", &e, 1.06, 41.2)),
        ] {
            for map in ["place", "attack"] {
                let args = vec![json!({ "string": string, "map": map })];
                let took = page.script_async(BY_TWO, args).await.unwrap();
                println!("{name}, {map}: first row and all by two workers, ms: {took}");
                assert!(took[1].as_u64().is_some_and(|all| all < FAR_TOO_LONG), "{name}: {took}");
            }
        }
        let four: Vec<Value> = [196.0, 293.66, 440.0, 659.26]
            .iter()
            .map(|pitch| json!({ "construction": a, "setting": { "sounding_length_m": 0.328, "pitch_hz": pitch } }))
            .collect();
        for piece in ["open-string", "scale", "swell", "pizzicato"] {
            let request =
                json!({ "ask": "sound", "piece": piece, "instrument": "violin", "strings": four });
            let args = vec![json!({ "request": request, "times": TIMES })];
            let told = page.script_async(PIECES, args).await.unwrap();
            let mut all: Vec<u64> =
                told.as_array().unwrap().iter().map(|ms| ms.as_u64().unwrap()).collect();
            let lasting = all.pop().unwrap();
            all.sort_unstable();
            let median = all[TIMES / 2];
            println!(
                "four strings, {piece}: made in {median} ms, the median of {all:?}; it lasts {lasting}"
            );
            assert!(median < FAR_TOO_LONG);
        }
        page.open("#/compare").await;
        for workers in ["new", "there"] {
            page.until("maps can be asked for", "return !!document.querySelector('.bow-maps')")
                .await;
            let took = page.script_async(DRAWN, vec![json!("Map force and place")]).await.unwrap();
            println!(
                "two maps of a violin A drawn, the workers {workers}: first row and all, ms: {took}"
            );
            page.open("#/").await;
            page.open("#/compare").await;
        }
        // The E of a bass, as it is chosen and its rival.
        page.script("location.hash = '#/everything'").await;
        let bass = "input[name=instrument][value='double-bass']";
        let there = format!("return !!document.querySelector(\"{bass}\")");
        page.until("a bass can be said", &there).await;
        page.script(&format!("document.querySelector(\"{bass}\").click()")).await;
        page.script("document.querySelector('main button[type=submit]').click()").await;
        page.until("a set is shown", "return !!document.querySelector('.sheet')").await;
        for words in ["Map force and place", "Map force and start"] {
            page.open("#/").await;
            page.open("#/compare/3").await;
            page.until("maps can be asked for", "return !!document.querySelector('.bow-maps')")
                .await;
            let took = page.script_async(DRAWN, vec![json!(words)]).await.unwrap();
            println!("two maps of a bass E, {words}: first row and all, ms: {took}");
        }
        page.assert_clean().await;
    });
}
