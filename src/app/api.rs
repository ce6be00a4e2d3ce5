//! The door for other programs: `window.ropewalk.ask(request)` takes an object and returns a promise of an object.
//!
//! Requests and replies are those of the `protocol` package; a request that cannot be answered is answered with
//! `{reply: "refused", faults: [...]}`. The promise is rejected only when there is no reply at all:
//! with an `Error` whose `kind` is `not-json`, `cancelled`, `failed`, `silent` or `other-build`.
//!
//! A request comes from any script, so it may be anything: it goes through JavaScript's own JSON writer, which finds
//! circles and stops at exceptions, and this module never walks it itself.

use std::cell::Cell;
use std::rc::Rc;

use js_sys::{Array, Error, JSON, JsString, Promise, Reflect};
use protocol::reply::Fault;
use protocol::{REQUEST_BYTES, REQUEST_VALUES};
use serde::Serialize;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::future_to_promise;

use crate::platform::worker;

/// Answers one request.
#[wasm_bindgen]
pub fn ask(request: JsValue) -> Promise {
    match written(&request) {
        Ok(request) => future_to_promise(answer(request)),
        Err(Unwritten::NotJson(why)) => {
            let message = format!("the request cannot be written as JSON: {why}");
            Promise::reject(&fault("not-json", &message))
        }
        Err(Unwritten::TooLarge(fault)) => {
            let refusal = Refusal { reply: "refused", faults: vec![*fault] };
            match serde_wasm_bindgen::to_value(&refusal) {
                Ok(refusal) => Promise::resolve(&refusal),
                Err(error) => Promise::reject(&error.into()),
            }
        }
    }
}

async fn answer(request: String) -> Result<JsValue, JsValue> {
    let (reply, samples) = worker::of_page()
        .ask_sound(&request, Rc::new(|_| ()))
        .await
        .map_err(|error| fault(error.kind(), &error.to_string()))?;
    let reply = JSON::parse(&reply).map_err(|_| fault("failed", "the answer is no JSON"))?;
    if let Some(samples) = samples {
        // Hundreds of thousands of numbers stay as they came: a `Float32Array`.
        drop(Reflect::set(&reply, &"samples".into(), &samples.0));
    }
    Ok(reply)
}

/// A refusal of the page's own, in the form of the model's.
#[derive(Serialize)]
struct Refusal {
    reply: &'static str,
    faults: Vec<Fault>,
}

/// Why a request has no text.
enum Unwritten {
    /// It throws, contains itself or is nested too deep, as JavaScript says it.
    NotJson(String),
    /// It is larger than the door allows.
    TooLarge(Box<Fault>),
}

/// The request as JSON text.
fn written(request: &JsValue) -> Result<String, Unwritten> {
    let room = Rc::new(Room::default());
    let replace = {
        let room = room.clone();
        Closure::<dyn Fn(JsValue, JsValue) -> Result<JsValue, JsValue>>::new(move |name, value| {
            let before = room.values.replace(room.values.get() + 1);
            if room.takes(&name) && room.takes(&value) {
                Ok(as_json(value, before == 0))
            } else {
                Err(JsValue::NULL)
            }
        })
    };
    let text = JSON::stringify_with_replacer(request, replace.as_ref().unchecked_ref());
    let (values, units) = (room.values.get(), room.units.get());
    let too_large = |value: String, allowed: String| {
        Err(Unwritten::TooLarge(Box::new(Fault::new("request", value, allowed))))
    };
    match text {
        _ if values > REQUEST_VALUES => too_large(
            format!("more than {REQUEST_VALUES} values"),
            format!("at most {REQUEST_VALUES} values"),
        ),
        _ if units > REQUEST_BYTES => too_large(
            format!("more than {REQUEST_BYTES} bytes"),
            format!("at most {REQUEST_BYTES} bytes"),
        ),
        Ok(text) => Ok(text.into()),
        Err(error) => Err(Unwritten::NotJson(told(&error))),
    }
}

/// How much of a request has been written.
#[derive(Default)]
struct Room {
    values: Cell<usize>,
    /// Of its names and texts: UTF-16 units, of which a text has no more than bytes.
    units: Cell<usize>,
}

impl Room {
    /// Whether there was room for this name or value.
    fn takes(&self, value: &JsValue) -> bool {
        let units = value.dyn_ref::<JsString>().map_or(0, JsString::length);
        self.units.set(self.units.get() + units as usize);
        self.values.get() <= REQUEST_VALUES && self.units.get() <= REQUEST_BYTES
    }
}

/// A value as JSON has it. What JSON would silently leave out or write as null or `{}` becomes a text that says what it
/// is. No member takes such a text, so that the door refuses it under its name.
fn as_json(value: JsValue, top: bool) -> JsValue {
    let what = if let Some(number) = value.as_f64() {
        match number {
            _ if number.is_finite() => return value,
            _ if number.is_nan() => "NaN",
            _ if number > 0.0 => "Infinity",
            _ => "-Infinity",
        }
    } else if value.is_bigint() {
        "a BigInt"
    } else if value.is_symbol() {
        "a symbol"
    } else if value.is_function() {
        "a function"
    } else if value.is_undefined() && top {
        "undefined"
    } else if value.is_object() && !is_plain(&value) {
        "an object of a class"
    } else {
        return value;
    };
    what.into()
}

/// Whether an object is a list or what `{}` makes: then its own members are all there is to it.
fn is_plain(object: &JsValue) -> bool {
    // Of a proxy, each step may throw.
    let prototype = |object: &JsValue| Reflect::get_prototype_of(object.unchecked_ref()).ok();
    let Some(first) = prototype(object) else { return false };
    let second = || prototype(&first).is_some_and(|second| second.is_null());
    object.is_instance_of::<Array>() || first.is_null() || second()
}

/// What a thrown value says of itself.
fn told(thrown: &JsValue) -> String {
    let message = Reflect::get(thrown, &"message".into()).ok().and_then(|m| m.as_string());
    message.or_else(|| thrown.as_string()).unwrap_or_else(|| "something was thrown".to_owned())
}

/// An `Error` that programs can tell apart by its `kind`.
fn fault(kind: &str, message: &str) -> JsValue {
    let error = Error::new(message);
    // Setting a field of a new error cannot fail.
    drop(Reflect::set(&error, &"kind".into(), &kind.into()));
    error.into()
}
