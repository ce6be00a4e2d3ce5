//! The model in a web worker, so that a long search never holds up the page.
//!
//! It is a module of its own: the page stays light without the model, and the content policy can allow workers from
//! our own files alone, no blobs. The price is a second file of glue.
//!
//! It first says `{ready: model id}`, for a message sent earlier would be lost. Then it takes `{id, request}` and
//! answers `{id, reply}`, both texts of JSON, one after the other. A sound's reply has `samples` beside it, a
//! `Float32Array` that is handed over, and before it comes `{id, done: share}` after each note. It says `{failed: reason}` before it dies of a panic.
//! Samples travel apart from the text because half a million numbers take longer to read as JSON than to compute.
//! It keeps nothing between requests, so the page may end it at any time and start another.
//! From its first fit on it has a [helper] of its own, which searches half of every further one. By the name
//! [`split_search::ALONE`] it knows that it is to do without.

mod helper;

use std::rc::Rc;

use futures_channel::oneshot;
use gloo::timers::callback::Timeout;
use js_sys::{Array, Float32Array, Object, Reflect};
use protocol::split_search;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::spawn_local;
use web_sys::{DedicatedWorkerGlobalScope, MessageEvent};

use helper::Helper;

fn main() {
    std::panic::set_hook(Box::new(|panic| {
        post(&[("failed", JsValue::from_str(&panic.to_string()))]);
        console_error_panic_hook::hook(panic);
    }));
    if helper::is_here() {
        helper::help();
        return;
    }
    let helper = Rc::new(Helper::of(scope().name() == split_search::ALONE));
    let answer = Closure::<dyn Fn(MessageEvent)>::new(move |message: MessageEvent| {
        let data = message.data();
        // Anything but a text is answered like an empty one: with a refusal that says what is wrong.
        let request = field(&data, "request").as_string().unwrap_or_default();
        let id = field(&data, "id");
        match split_search::asked(&request) {
            Some(answers) => {
                let helper = helper.clone();
                spawn_local(async move {
                    let helped = helper.half(&request);
                    let reply = split_search::answer(&answers, helped, pause).await;
                    post(&[("id", id), ("reply", JsValue::from_str(&reply))]);
                });
            }
            None => answer(&request, id),
        }
    });
    scope().set_onmessage(Some(answer.as_ref().unchecked_ref()));
    // The worker listens as long as it lives.
    answer.forget();
    post(&[("ready", JsValue::from_str(env!("ROPEWALK_MODEL")))]);
}

/// Answers a request that is not shared.
fn answer(request: &str, id: JsValue) {
    let mut tell = |share| post(&[("id", id.clone()), ("done", JsValue::from_f64(share))]);
    let (reply, samples) = protocol::answer_telling(request, &mut tell);
    let reply = ("reply", JsValue::from_str(&reply));
    match samples.map(|samples| Float32Array::from(samples.as_slice())) {
        Some(samples) => {
            let fields = [("id", id), reply, ("samples", samples.clone().into())];
            hand_over(&fields, &Array::of1(&samples.buffer()));
        }
        None => post(&[("id", id), reply]),
    }
}

/// Waits, and lets messages come in meanwhile.
async fn pause(ms: u32) {
    let (tells, told) = oneshot::channel();
    let clock = Timeout::new(ms, move || tells.send(()).unwrap_or_default());
    // It ends when the clock has told or is dropped.
    told.await.unwrap_or_default();
    drop(clock);
}

/// A member of a message.
fn field(data: &JsValue, name: &str) -> JsValue {
    Reflect::get(data, &JsValue::from_str(name)).unwrap_or(JsValue::UNDEFINED)
}

/// Sends an object with these fields to whoever started this worker.
fn post(fields: &[(&str, JsValue)]) {
    hand_over(fields, &Array::new());
}

/// Sends an object with these fields to whoever started this worker, and with it what is to change hands instead of being copied.
fn hand_over(fields: &[(&str, JsValue)], transfer: &Array) {
    drop(scope().post_message_with_transfer(&message(fields), transfer));
}

/// An object with these fields.
fn message(fields: &[(&str, JsValue)]) -> Object {
    let message = Object::new();
    for (name, value) in fields {
        // Setting a field of an empty object cannot fail, and text, numbers and buffers can always be sent.
        drop(Reflect::set(&message, &JsValue::from_str(name), value));
    }
    message
}

fn scope() -> DedicatedWorkerGlobalScope {
    js_sys::global().unchecked_into()
}
