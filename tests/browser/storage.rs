//! Texts are kept, and none is ever lost.

use std::cell::RefCell;
use std::rc::Rc;

use app::platform::storage::{StorageError, forget, keep, raw, restore, set_aside, watch};
use js_sys::Function;
use wasm_bindgen::JsValue;
use wasm_bindgen_test::wasm_bindgen_test;

/// Runs a piece of JavaScript, for what a page has no function for.
fn js(body: &str) {
    Function::new_no_args(body).call0(&JsValue::NULL).unwrap();
}

fn number(text: &str) -> Result<u32, String> {
    text.parse().map_err(|_| format!("{text} is no number"))
}

#[wasm_bindgen_test]
fn a_text_is_kept_restored_and_forgotten() {
    assert_eq!(raw("plain"), Ok(None));
    keep("plain", "44 – gut, 𝄞").unwrap();
    assert_eq!(raw("plain"), Ok(Some("44 – gut, 𝄞".to_owned())));
    keep("plain", "45").unwrap();
    assert_eq!(restore("plain", number), Ok(Some(45)));
    forget("plain").unwrap();
    assert_eq!(restore("plain", number), Ok(None));
}

#[wasm_bindgen_test]
fn a_broken_text_is_moved_aside_word_for_word() {
    for (turn, text) in ["half a fitt", "another half"].into_iter().enumerate() {
        keep("broken", text).unwrap();
        let Err(StorageError::Broken { kept_under, .. }) = restore("broken", number) else {
            panic!("it should be broken")
        };
        assert_eq!(raw(&kept_under), Ok(Some(text.to_owned())));
        assert_eq!(raw("broken"), Ok(None));
        assert_eq!(set_aside("broken").unwrap().len(), turn + 1);
    }
    // A new text does not disturb what lies aside.
    keep("broken", "7").unwrap();
    assert_eq!(restore("broken", number), Ok(Some(7)));
    assert_eq!(set_aside("broken").unwrap().len(), 2);
    for name in set_aside("broken").unwrap().into_iter().rev() {
        forget(&name).unwrap();
    }
    forget("broken").unwrap();
}

#[wasm_bindgen_test]
fn a_full_disk_is_told_of_and_loses_nothing() {
    keep("full", "not a number").unwrap();
    // Fill what is left, in ever smaller pieces.
    js("let n = 0, size = 1 << 20;
        while (size > 0) { try { localStorage.setItem('filler' + n, 'x'.repeat(size)); n++ } catch { size >>= 1 } }");
    assert_eq!(keep("full-too", "much"), Err(StorageError::Full));
    // It cannot be moved aside, so it stays, and nothing may be written over it.
    let Err(StorageError::Broken { kept_under, .. }) = restore("full", number) else {
        panic!("it should be broken")
    };
    assert_eq!(kept_under, "full");
    assert_eq!(keep("full", "1"), Err(StorageError::Full));
    assert_eq!(raw("full"), Ok(Some("not a number".to_owned())));
    // With room again, it moves aside before the new text takes its place.
    js(
        "Object.keys(localStorage).filter((key) => key.startsWith('filler')).forEach((key) => localStorage.removeItem(key))",
    );
    keep("full", "1").unwrap();
    assert_eq!(restore("full", number), Ok(Some(1)));
    let aside = set_aside("full").unwrap();
    assert_eq!(raw(&aside[0]), Ok(Some("not a number".to_owned())));
    forget(&aside[0]).unwrap();
    forget("full").unwrap();
}

#[wasm_bindgen_test]
fn a_browser_that_keeps_nothing_is_told_of() {
    js("window.kept = Object.getOwnPropertyDescriptor(window, 'localStorage');
        Object.defineProperty(window, 'localStorage', { configurable: true, get() { throw new DOMException('no', 'SecurityError') } })",
    );
    let told = keep("nothing", "x");
    js("Object.defineProperty(window, 'localStorage', window.kept)");
    assert_eq!(told, Err(StorageError::Disabled));
    assert_eq!(raw("nothing"), Ok(None));
}

#[wasm_bindgen_test]
fn another_tab_is_heard_until_nobody_listens() {
    let heard = Rc::new(RefCell::new(Vec::new()));
    let listening = watch("shared", {
        let heard = Rc::clone(&heard);
        move |text| heard.borrow_mut().push(text)
    });
    // What the browser sends to this tab when another one writes.
    let tell = "dispatchEvent(new StorageEvent('storage', { key: 'ropewalk/shared', newValue: 'from there' }));
        dispatchEvent(new StorageEvent('storage', { key: 'ropewalk/other', newValue: 'not ours' }));
        dispatchEvent(new StorageEvent('storage', { key: null }))";
    js(tell);
    assert_eq!(*heard.borrow(), [Some("from there".to_owned()), None]);
    drop(listening);
    js(tell);
    assert_eq!(heard.borrow().len(), 2);
}
