//! What every part of the page stands on: it loads, it computes in its worker, and it needs no network a second time.

use serde_json::{Value, json};

use crate::start;
use crate::support::{copy, drive, drive_in};

/// The most that a browser fetches before the first screen stands, pressed by brotli, in bytes.
const START_MOST: usize = 500_000;

#[test]
fn the_page_loads_and_is_accessible() {
    drive(async |page| {
        assert_eq!(page.client.title().await.unwrap(), "Ropewalk");
        page.assert_accessible().await;
    });
}

#[test]
fn the_worker_answers_other_programs() {
    drive(async |page| {
        let refusal = page.ask(json!({ "ask": "nothing that exists" })).await.unwrap();
        assert_eq!(refusal["reply"], "refused", "{refusal:#}");
        assert!(refusal["faults"][0]["field"].is_string(), "{refusal:#}");
    });
}

#[test]
fn the_worker_and_the_command_line_give_the_same_answer() {
    drive(async |page| {
        let mut requests =
            vec![json!({ "ask": "tables" }), json!({ "ask": "report" }), json!([]), json!(null)];
        for instrument in ["violin", "viola", "cello", "double-bass"] {
            requests.push(json!({ "ask": "fit", "answers": { "instrument": instrument } }));
        }
        let model = "const worker = new Worker(document.querySelector('meta[name=worker]').content, { type: 'module' });
            return await new Promise((done) => { worker.onmessage = (event) => done(event.data.ready) })";
        let model = page.script_async(model, Vec::new()).await;
        assert_eq!(
            model,
            Ok(json!(env!("ROPEWALK_MODEL"))),
            "the built page is older than the model: run `cargo e2e`"
        );
        for request in requests {
            let native: Value =
                serde_json::from_str(&protocol::answer(&request.to_string())).unwrap();
            let worker = page.ask(request.clone()).await.unwrap();
            // Every number to the last bit: the model calls nothing that differs between machines.
            assert!(
                fractions(worker) == fractions(native),
                "{request} is answered differently in the worker"
            );
        }
    });
}

/// JavaScript has one kind of number, so 1 and 1.0 come back alike.
fn fractions(value: Value) -> Value {
    match value {
        Value::Number(number) => json!(number.as_f64()),
        Value::Array(values) => values.into_iter().map(fractions).collect(),
        Value::Object(fields) => {
            fields.into_iter().map(|(name, value)| (name, fractions(value))).collect()
        }
        other => other,
    }
}

#[test]
fn what_is_no_json_is_refused_before_it_is_sent() {
    drive(async |page| {
        let circle =
            "const request = {}; request.self = request; return await window.ropewalk.ask(request)";
        let fault = page.script_async(circle, Vec::new()).await.unwrap_err();
        assert!(fault.starts_with("not-json:"), "{fault}");
        // The page has survived it.
        assert!(page.ask(json!({})).await.is_ok());
    });
}

#[test]
fn the_page_starts_again_without_a_network() {
    drive(async |page| {
        page.kept().await;
        page.end_server();
        page.reload().await;
        assert_eq!(page.ask(json!({})).await.unwrap()["reply"], "refused");
        // Any way into the page leads to it.
        page.open("?from=elsewhere").await;
        page.open("index.html").await;
    });
}

#[test]
fn the_page_works_in_any_folder_of_a_host() {
    drive_in(&copy("in-a-folder", "a b/deeper"), "a%20b/deeper/", async |page| {
        assert_eq!(page.ask(json!({})).await.unwrap()["reply"], "refused");
        page.kept().await;
        page.end_server();
        page.reload().await;
        assert_eq!(page.ask(json!({})).await.unwrap()["reply"], "refused");
    });
}

#[test]
fn the_page_starts_light_and_fetches_the_model_later() {
    drive(async |page| {
        page.watch_starts().await;
        let start = page.start("#/", true).await;
        let weights = start::weights(&start.files);
        for kind in ["html", "css", "js", "wasm"] {
            assert!(
                weights.iter().any(|w| w.name.ends_with(kind)),
                "no {kind} in {:?}",
                start.files
            );
        }
        // What is pressed already stays as it is.
        let pressed = |weight: &start::Weight| weight.name.ends_with(".woff2");
        assert!(weights.iter().all(|weight| weight.brotli < weight.raw || pressed(weight)));
        let sum: usize = weights.iter().map(|weight| weight.brotli).sum();
        assert!(sum <= START_MOST, "{sum} bytes are fetched before the first screen stands");
        let heavy: Vec<_> = start::worker();
        assert_eq!(heavy.len(), 3, "{heavy:?}");
        assert!(!start.files.iter().any(|file| heavy.contains(file)), "{:?}", start.files);
        // What is seen before the page has come stands where the page puts it.
        assert!(start.paint < start.ready, "{} {}", start.paint, start.ready);
        assert!(start.shift < 0.0005, "the first screen moves by {}", start.shift);
        let fetched = "return performance.getEntriesByType('resource').some((f) => f.name.includes('worker_loader'))";
        assert_eq!(
            page.script(fetched).await,
            json!(true),
            "the model should come by itself, later"
        );
    });
}

/// The rooms whose messages the page carries.
const EARLY: [&str; 12] = [
    "#/",
    "#/ask/1",
    "#/ask/2",
    "#/ask/3",
    "#/ask/4",
    "#/ask/5",
    "#/ask/6",
    "#/ask/7",
    "#/ask/8",
    "#/everything",
    "#/check",
    "#/nowhere",
];

#[test]
fn the_first_screens_say_the_same_before_the_other_messages_have_come() {
    drive(async |page| {
        let answers = json!({ "instrument": "cello", "size": "3/4", "now": "steel", "age_months": 700,
            "bothers": ["wolf"], "wishes": { "colour": 2 }, "music": "jazz", "room": "damp", "budget": "modest",
            "strings": [{ "family": "synthetic", "today": { "gauge_class": "light" } }], "weights": { "feel": 3 } });
        let kept = json!({ "format": "ropewalk-fitting", "version": 1, "answers": answers,
            "drafts": { "a4_hz": "44x", "concert_days": "soon" },
            "fittings": [{ "at": "2026-11-25T10:00:00Z", "answers": {}, "summary": ["A3: steel"] }] });
        page.seed(&kept).await;
        page.devtools("Network.enable", json!({})).await;
        page.devtools("Network.setBypassServiceWorker", json!({ "bypass": true })).await;
        let said =
            "const all = document.body.cloneNode(true); all.querySelector('.kept-here')?.remove();
            return all.textContent";
        let mut texts = Vec::new();
        for blocked in [json!(["*words-en*"]), json!([])] {
            page.devtools("Network.setBlockedURLs", json!({ "urls": blocked })).await;
            for room in EARLY {
                page.open(room).await;
                page.reload().await;
                texts.push(page.script(said).await);
            }
            // What another room says is waited for, and where it does not come, that is told.
            page.open("#/words").await;
            page.reload().await;
            let (what, come) = if blocked == json!([]) {
                ("the words have come", "querySelectorAll('main dt').length > 10")
            } else {
                ("that is told", "body.textContent.includes('could not be fetched')")
            };
            page.until(what, &format!("return document.{come}")).await;
            let words = page.script(said).await;
            let told = words.as_str().unwrap().contains("could not be fetched");
            assert_eq!(told, blocked != json!([]), "{words}");
        }
        let (before, after) = texts.split_at(EARLY.len());
        for ((room, before), after) in EARLY.iter().zip(before).zip(after) {
            assert!(before.as_str().unwrap().len() > 200, "{room}: {before}");
            assert_eq!(before, after, "{room}");
        }
        // The blocked file is an error in the console, on purpose.
        page.console().await;
    });
}

#[test]
fn pictures_and_prints_can_be_made() {
    drive(async |page| {
        for scheme in ["light", "dark"] {
            let picture = page.picture(&format!("ground-{scheme}"), 390, 844, scheme).await;
            assert!(picture.metadata().unwrap().len() > 1000, "{}", picture.display());
        }
        assert_eq!(page.print("ground").await, 1);
    });
}

#[test]
fn no_failure_is_planted() {
    assert_ne!(
        std::env::var("ROPEWALK_PLANT").as_deref(),
        Ok("end-to-end"),
        "planted, to see that it is counted"
    );
}
