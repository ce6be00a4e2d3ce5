//! Texts go out as files and come back word for word.

use app::platform::files::{Opened, open, save};
use js_sys::{Function, Promise};
use wasm_bindgen::JsCast;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_test::wasm_bindgen_test;
use web_sys::Event;

fn js(body: &str) -> JsValue {
    Function::new_no_args(body).call0(&JsValue::NULL).unwrap()
}

/// The event of a field in which a file with these bytes was chosen.
fn chosen(bytes: &str) -> Event {
    let body = format!(
        "const field = document.createElement('input'); field.type = 'file';
         const files = new DataTransfer(); const bytes = {bytes};
         if (bytes) files.items.add(new File([bytes], 'ledger.json'));
         field.files = files.files; let seen; field.onchange = (event) => {{ seen = event }};
         field.dispatchEvent(new Event('change')); return seen"
    );
    js(&body).unchecked_into()
}

#[wasm_bindgen_test]
async fn a_chosen_file_is_read_as_it_is() {
    let opened =
        |text: &str| Ok(Some(Opened { name: "ledger.json".to_owned(), text: text.to_owned() }));
    assert_eq!(open(chosen("'44 – gut, 𝄞'")).await, opened("44 – gut, 𝄞"));
    assert_eq!(open(chosen("new Uint8Array([0xef, 0xbb, 0xbf, 0x7b, 0x7d])")).await, opened("{}"));
    assert_eq!(open(chosen("new Uint8Array(0)")).await, opened(""));
    assert_eq!(open(chosen("null")).await, Ok(None));
}

#[wasm_bindgen_test]
async fn what_is_no_text_is_refused() {
    let refusal = open(chosen("new Uint8Array([0x7b, 0xff, 0xfe])")).await.unwrap_err();
    assert!(refusal.contains("ledger.json"), "{refusal}");
    let refusal = open(chosen("new Uint8Array(33 << 20)")).await.unwrap_err();
    assert!(refusal.contains("33 MB"), "{refusal}");
}

#[wasm_bindgen_test]
async fn a_saved_file_holds_the_text() {
    js("window.click = HTMLAnchorElement.prototype.click;
        HTMLAnchorElement.prototype.click = function () { window.saved = { name: this.download, url: this.href } }");
    let outcome = save("set.json", "application/json", "{\"a\": \"𝄞\"}");
    js("HTMLAnchorElement.prototype.click = window.click");
    assert_eq!(outcome, Ok(()));
    let read = "return fetch(window.saved.url).then(async (file) => [window.saved.name, file.headers.get('content-type'), await file.text()].join())";
    let saved = JsFuture::from(js(read).unchecked_into::<Promise>()).await.unwrap();
    assert_eq!(saved.as_string().as_deref(), Some("set.json,application/json,{\"a\": \"𝄞\"}"));
}
