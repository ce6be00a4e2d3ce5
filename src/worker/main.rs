//! The model in a web worker, so that a long search never holds up the page.
//!
//! It first says `{ready: model id}`, for a message sent earlier would be lost. Then it takes `{id, request}` and
//! answers `{id, reply}`, both texts of JSON, one after the other. It says `{failed: reason}` before it dies of a panic.
//! It keeps nothing between requests, so the page may end it at any time and start another.

use js_sys::{Object, Reflect};
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
        post(&[("id", field("id")), ("reply", JsValue::from_str(&protocol::answer(&request)))]);
    });
    scope().set_onmessage(Some(answer.as_ref().unchecked_ref()));
    // The worker listens as long as it lives.
    answer.forget();
    post(&[("ready", JsValue::from_str(env!("ROPEWALK_MODEL")))]);
}

/// Sends an object with these fields to the page.
fn post(fields: &[(&str, JsValue)]) {
    let message = Object::new();
    for (name, value) in fields {
        // Setting a field of an empty object cannot fail, and text and numbers can always be sent.
        drop(Reflect::set(&message, &JsValue::from_str(name), value));
    }
    drop(scope().post_message(&message));
}

fn scope() -> DedicatedWorkerGlobalScope {
    js_sys::global().unchecked_into()
}
