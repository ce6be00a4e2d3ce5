//! A page that cannot be kept says so. That it is kept is tried on the built page, in tests/e2e.

use app::platform::serviceworker::{LocalCopy, Offline, register};
use futures_channel::oneshot;
use js_sys::Function;
use wasm_bindgen::JsValue;
use wasm_bindgen_test::wasm_bindgen_test;

/// What registering first reports.
async fn first_report() -> Offline {
    let (send, report) = oneshot::channel();
    let send = std::cell::Cell::new(Some(send));
    register(move |offline| {
        if let Some(send) = send.take() {
            send.send(offline).unwrap();
        }
    });
    report.await.unwrap()
}

fn js(body: &str) {
    Function::new_no_args(body).call0(&JsValue::NULL).unwrap();
}

#[wasm_bindgen_test]
async fn without_the_means_it_is_impossible() {
    js(
        "Object.defineProperty(navigator, 'serviceWorker', { configurable: true, value: undefined })",
    );
    let report = first_report().await;
    js("delete navigator.serviceWorker");
    assert_eq!(report, Offline { copy: LocalCopy::Impossible, newer: None });
}

#[wasm_bindgen_test]
async fn a_missing_file_is_told_of() {
    // The server of these tests has no sw.js.
    let report = first_report().await;
    assert_eq!(report.newer, None);
    assert!(matches!(&report.copy, LocalCopy::Failed(reason) if !reason.is_empty()), "{report:?}");
}

#[wasm_bindgen_test]
fn a_panic_is_told_to_the_start_script() {
    js("window.panics = 0; addEventListener('panic', () => { window.panics += 1 })");
    app::platform::tell_of_panic();
    js("if (window.panics !== 1) throw new Error('nobody was told')");
}
