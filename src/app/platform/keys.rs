//! Keys that are pressed anywhere on the page, for as long as somebody listens.

use gloo::events::{EventListener, EventListenerOptions};
use wasm_bindgen::JsCast;
use web_sys::{Element, Event, HtmlElement, KeyboardEvent};

/// Where keys belong to what has the focus: fields, lists, and what scrolls by itself.
const OWN_KEYS: &str = "input, select, textarea, [contenteditable], .scroll";

/// What a key stands for where a lesson is given; presenters send the keys of pages.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Key {
    /// On.
    On,
    /// Back.
    Back,
    /// A number, from 1.
    Number(usize),
    /// Stop.
    Stop,
}

impl Key {
    fn read(name: &str) -> Option<Self> {
        match name {
            "ArrowRight" | "PageDown" => Some(Self::On),
            "ArrowLeft" | "PageUp" => Some(Self::Back),
            "Escape" => Some(Self::Stop),
            digit => digit.parse().ok().filter(|n| *n > 0).map(Self::Number),
        }
    }
}

/// Listens for keys while it is kept.
#[derive(Debug)]
pub struct Watch(#[expect(dead_code, reason = "it listens until it is dropped")] EventListener);

/// Tells of every key that belongs to nothing else; one that is taken does nothing more.
#[must_use = "it listens only as long as it is kept"]
pub fn watch(take: impl Fn(Key) -> bool + 'static) -> Watch {
    let options = EventListenerOptions::enable_prevent_default();
    let window = gloo::utils::window();
    Watch(EventListener::new_with_options(&window, "keydown", options, move |event| {
        let Some(pressed) = event.dyn_ref::<KeyboardEvent>() else { return };
        let with = pressed.ctrl_key() || pressed.alt_key() || pressed.meta_key();
        if with || pressed.is_composing() || event.default_prevented() || belongs(event) {
            return;
        }
        if Key::read(&pressed.key()).is_some_and(&take) {
            event.prevent_default();
        }
    }))
}

/// Whether what the key was pressed in has a use for it.
fn belongs(event: &Event) -> bool {
    let target = event.target();
    let element = target.as_ref().and_then(|target| target.dyn_ref::<Element>());
    element.is_some_and(|element| {
        element.closest(OWN_KEYS).ok().flatten().is_some()
            || element.dyn_ref::<HtmlElement>().is_some_and(HtmlElement::is_content_editable)
    })
}
