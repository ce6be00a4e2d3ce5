//! The bridge to the worker, tried with workers that behave and workers that do not.

use app::platform::worker::{Bridge, BridgeError};
use js_sys::Array;
use wasm_bindgen_test::wasm_bindgen_test;
use web_sys::{Blob, BlobPropertyBag, Url};

/// A worker of three lines: it says it is ready, and answers as told.
fn worker(ready: &str, answer: &str) -> Bridge {
    let source = format!(
        "let count = 0; onmessage = ({{ data: {{ id, request }} }}) => {{ count++; {answer} }}; {ready}"
    );
    let kind = BlobPropertyBag::new();
    kind.set_type("text/javascript");
    let blob = Blob::new_with_str_sequence_and_options(&Array::of1(&source.into()), &kind).unwrap();
    Bridge::new(&Url::create_object_url_with_blob(&blob).unwrap(), "m1")
}

const READY: &str = "postMessage({ ready: 'm1' })";
const ECHO: &str = "postMessage({ id, reply: `${count}:${request}` })";

#[wasm_bindgen_test]
async fn questions_asked_before_it_is_ready_are_answered_in_order() {
    // Whatever is sent before the worker listens is lost, so this one listens late.
    let bridge = worker(
        "const listen = onmessage; onmessage = null; setTimeout(() => { onmessage = listen; postMessage({ ready: 'm1' }) }, 50)",
        ECHO,
    );
    let (first, second) = (bridge.ask("a"), bridge.ask("b"));
    assert_eq!(first.await.as_deref(), Ok("1:a"));
    assert_eq!(second.await.as_deref(), Ok("2:b"));
}

#[wasm_bindgen_test]
async fn a_question_nobody_waits_for_is_not_asked() {
    let bridge = worker(READY, ECHO);
    let first = bridge.ask("a");
    drop(bridge.ask("b"));
    let third = bridge.ask("c");
    assert_eq!(first.await.as_deref(), Ok("1:a"));
    assert_eq!(third.await.as_deref(), Ok("2:c"));
}

#[wasm_bindgen_test]
async fn cancelling_ends_a_computation_and_the_next_is_answered_afresh() {
    let bridge = worker(
        READY,
        "if (request === 'endless') for (;;); postMessage({ id, reply: `${count}:${request}` })",
    );
    assert_eq!(bridge.ask("a").await.as_deref(), Ok("1:a"));
    let (endless, behind) = (bridge.ask("endless"), bridge.ask("behind"));
    bridge.cancel();
    assert_eq!(endless.await, Err(BridgeError::Cancelled));
    assert_eq!(behind.await, Err(BridgeError::Cancelled));
    // A worker that has counted none before.
    assert_eq!(bridge.ask("b").await.as_deref(), Ok("1:b"));
    // An idle one has nothing to interrupt, and stays.
    bridge.cancel();
    assert_eq!(bridge.ask("c").await.as_deref(), Ok("2:c"));
}

#[wasm_bindgen_test]
async fn a_worker_that_breaks_down_loses_one_question_only() {
    let bridge = worker(
        READY,
        "if (request === 'bad') throw new Error('overwound'); postMessage({ id, reply: request })",
    );
    let (bad, good) = (bridge.ask("bad"), bridge.ask("good"));
    let Err(BridgeError::Failed(reason)) = bad.await else { panic!("it should have failed") };
    assert!(reason.contains("overwound"), "{reason}");
    assert_eq!(good.await.as_deref(), Ok("good"));
}

/// The first worker waits until a later time and breaks down; whoever is asked after it answers.
fn breaks_once(breakdown: &str) -> String {
    let later = js_sys::Date::now() + 300.0;
    format!("if (Date.now() < {later}) {{ while (Date.now() < {later}); {breakdown} }} {ECHO}")
}

#[wasm_bindgen_test]
async fn a_question_over_which_a_worker_broke_down_is_asked_once_more() {
    for breakdown in [
        "throw new Error('overwound')",
        "postMessage({ failed: 'it snapped' }); throw new Error('unreachable')",
        "close(); return",
    ] {
        let bridge = worker(READY, &breaks_once(breakdown)).with_limits_ms(5_000, 1_000);
        let (first, second) = (bridge.ask("a"), bridge.ask("b"));
        // The second worker has counted none before.
        assert_eq!(first.await.as_deref(), Ok("1:a"), "{breakdown}");
        assert_eq!(second.await.as_deref(), Ok("2:b"), "{breakdown}");
    }
}

#[wasm_bindgen_test]
async fn what_nobody_waits_for_is_asked_once_of_a_worker_that_works_alone() {
    let source = breaks_once("throw new Error('overwound')");
    let bridge = worker(READY, &source).in_background(1_000);
    assert!(matches!(bridge.ask("a").await, Err(BridgeError::Failed(_))));
    let bridge = worker(READY, "postMessage({ id, reply: self.name })").in_background(1_000);
    assert_eq!(bridge.ask("a").await.as_deref(), Ok(protocol::split_search::ALONE));
    // Closed, it gives up what it was asked, and starts again for the next question.
    let given_up = bridge.ask("b");
    bridge.close();
    assert_eq!(given_up.await, Err(BridgeError::Cancelled));
    assert_eq!(bridge.ask("c").await.as_deref(), Ok(protocol::split_search::ALONE));
}

#[wasm_bindgen_test]
async fn the_words_of_a_panic_reach_the_page() {
    let bridge =
        worker(READY, "postMessage({ failed: 'it snapped' }); throw new Error('unreachable')");
    assert_eq!(bridge.ask("a").await, Err(BridgeError::Failed("it snapped".to_owned())));
}

#[wasm_bindgen_test]
async fn a_silent_worker_is_ended() {
    let bridge = worker(READY, "if (request !== 'wait') postMessage({ id, reply: request })")
        .with_limits_ms(5_000, 200);
    let (silent, next) = (bridge.ask("wait"), bridge.ask("next"));
    assert_eq!(silent.await, Err(BridgeError::Silent(1)));
    assert_eq!(next.await.as_deref(), Ok("next"));
    let never_ready = worker("", ECHO).with_limits_ms(200, 200);
    assert_eq!(never_ready.ask("a").await, Err(BridgeError::Silent(1)));
}

#[wasm_bindgen_test]
async fn a_worker_of_another_build_is_refused() {
    let bridge = worker("postMessage({ ready: 'm2' })", ECHO);
    let (first, second) = (bridge.ask("a"), bridge.ask("b"));
    assert_eq!(first.await, Err(BridgeError::OtherBuild));
    assert_eq!(second.await, Err(BridgeError::OtherBuild));
}

#[wasm_bindgen_test]
async fn a_worker_that_is_not_there_is_told_of() {
    let bridge = Bridge::new("./there-is-no-such-worker.js", "m1");
    assert!(matches!(bridge.ask("a").await, Err(BridgeError::Failed(_))));
    assert!(matches!(bridge.ask("b").await, Err(BridgeError::Failed(_))));
}
