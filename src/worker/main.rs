//! The model in a web worker, so that a long search never holds up the page.
//!
//! It first says `{ready: model id}`, for a message sent earlier would be lost. Then it takes `{id, request}` and
//! answers `{id, reply}`, both texts of JSON, one after the other. A sound's reply has `samples` beside it, a
//! `Float32Array` that is handed over, and before it comes `{id, done: share}` after each note. It says `{failed: reason}` before it dies of a panic.
//! It keeps nothing between requests, so the page may end it at any time and start another.

use js_sys::{Array, Float32Array, Object, Reflect};
use wasm_bindgen::prelude::*;
use web_sys::{DedicatedWorkerGlobalScope, MessageEvent};

fn main() {
    std::panic::set_hook(Box::new(|panic| {
        post(&[("failed", JsValue::from_str(&panic.to_string()))]);
        console_error_panic_hook::hook(panic);
    }));
    let answer = Closure::<dyn Fn(MessageEvent)>::new(|message: MessageEvent| {
        let field = |name: &str| {
            Reflect::get(&message.data(), &JsValue::from_str(name)).unwrap_or(JsValue::UNDEFINED)
        };
        // Anything but a text is answered like an empty one: with a refusal that says what is wrong.
        let request = field("request").as_string().unwrap_or_default();
        let id = field("id");
        let mut tell = |share| post(&[("id", id.clone()), ("done", JsValue::from_f64(share))]);
        let (reply, samples) = protocol::answer_telling(&request, &mut tell);
        let reply = ("reply", JsValue::from_str(&reply));
        match samples.map(|samples| Float32Array::from(samples.as_slice())) {
            Some(samples) => {
                let fields = [("id", id), reply, ("samples", samples.clone().into())];
                hand_over(&fields, &Array::of1(&samples.buffer()));
            }
            None => post(&[("id", id), reply]),
        }
    });
    scope().set_onmessage(Some(answer.as_ref().unchecked_ref()));
    // The worker listens as long as it lives.
    answer.forget();
    post(&[("ready", JsValue::from_str(env!("ROPEWALK_MODEL")))]);
}

/// Sends an object with these fields to the page.
fn post(fields: &[(&str, JsValue)]) {
    hand_over(fields, &Array::new());
}

/// Sends an object with these fields to the page, and with it what is to change hands instead of being copied.
fn hand_over(fields: &[(&str, JsValue)], goods: &Array) {
    let message = Object::new();
    for (name, value) in fields {
        // Setting a field of an empty object cannot fail, and text, numbers and buffers can always be sent.
        drop(Reflect::set(&message, &JsValue::from_str(name), value));
    }
    drop(scope().post_message_with_transfer(&message, goods));
}

fn scope() -> DedicatedWorkerGlobalScope {
    js_sys::global().unchecked_into()
}
