//! What a person put into a field is read from the event that tells of it.

use app::platform::field::{text, ticked};
use js_sys::Function;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_test::wasm_bindgen_test;
use web_sys::Event;

/// The event of an element made by a piece of JavaScript.
fn input(element: &str) -> Event {
    let body = format!(
        "const element = {element}; let seen; element.addEventListener('input', (event) => {{ seen = event }});
         element.dispatchEvent(new Event('input', {{ bubbles: true }})); return seen"
    );
    Function::new_no_args(&body).call0(&JsValue::NULL).unwrap().unchecked_into()
}

#[wasm_bindgen_test]
fn every_kind_of_field_gives_its_text() {
    for element in [
        "Object.assign(document.createElement('input'), { value: '0,328' })",
        "Object.assign(document.createElement('textarea'), { value: '0,328' })",
        "(() => { const list = document.createElement('select'); list.add(new Option('long', '0,328')); return list })()",
    ] {
        assert_eq!(text(&input(element)).as_deref(), Some("0,328"), "{element}");
    }
    assert_eq!(text(&input("document.createElement('p')")), None);
}

#[wasm_bindgen_test]
fn a_box_is_ticked_or_not() {
    for (element, expected) in [("true", Some(true)), ("false", Some(false))] {
        let element = format!(
            "Object.assign(document.createElement('input'), {{ type: 'checkbox', checked: {element} }})"
        );
        assert_eq!(ticked(&input(&element)), expected);
    }
    assert_eq!(ticked(&input("document.createElement('p')")), None);
}
