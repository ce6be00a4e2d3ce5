//! The door for other programs: `window.wasmBindings.ask(request)` answers an object with a promise of an object.
//!
//! Requests and replies are those of the `protocol` package; a request that cannot be answered is answered with
//! `{reply: "refused", faults: [...]}`. The promise is rejected only when there is no reply at all:
//! with an `Error` whose `kind` is `not-json`, `cancelled`, `failed`, `silent` or `other-build`.

use std::rc::Rc;

use js_sys::{Error, JSON, Promise, Reflect};
use serde_json::Value;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::future_to_promise;

use crate::platform::worker;

/// Answers one request.
#[wasm_bindgen]
pub fn ask(request: JsValue) -> Promise {
    let request = read(&request);
    future_to_promise(async move {
        let (reply, samples) = worker::of_page()
            .ask_sound(&request?, Rc::new(|_| ()))
            .await
            .map_err(|error| fault(error.kind(), &error.to_string()))?;
        let reply = JSON::parse(&reply).map_err(|_| fault("failed", "the answer is no JSON"))?;
        if let Some(samples) = samples {
            // Hundreds of thousands of numbers stay as they came: a `Float32Array`.
            drop(Reflect::set(&reply, &"samples".into(), &samples.0));
        }
        Ok(reply)
    })
}

/// The request as a text of JSON.
fn read(request: &JsValue) -> Result<String, JsValue> {
    // JavaScript's own writer goes first: it finds the circles in an object, in which the reading below would never end.
    JSON::stringify(request).map_err(|_| {
        fault("not-json", "the request contains itself, or a value that JSON does not have")
    })?;
    let value: Value = serde_wasm_bindgen::from_value(request.clone()).map_err(|error| {
        fault("not-json", &format!("the request cannot be written as JSON: {error}"))
    })?;
    Ok(value.to_string())
}

/// An `Error` that programs can tell apart by its `kind`.
fn fault(kind: &str, message: &str) -> JsValue {
    let error = Error::new(message);
    // Setting a field of a new error cannot fail.
    drop(Reflect::set(&error, &"kind".into(), &kind.into()));
    error.into()
}
