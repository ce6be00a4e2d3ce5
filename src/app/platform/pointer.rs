//! Waits until a press of the mouse or finger is over.
//!
//! A field that is left by a press tells of its fault only then: the words would push the page down, and the button
//! would slip away from under the finger between its going down and its coming up.

use std::cell::{Cell, RefCell};

use gloo::events::{EventListener, EventListenerOptions};

use super::clock;

/// How long after the press: a finger's click is made up from its touch and comes some moments later.
const SETTLE_MS: u32 = 50;

type Task = Box<dyn FnOnce()>;

thread_local! {
    static DOWN: Cell<bool> = const { Cell::new(false) };
    static WAITING: RefCell<Vec<Task>> = const { RefCell::new(Vec::new()) };
    /// Listens from the first question on, as long as the page lives.
    static LISTENERS: [EventListener; 3] = [
        listen("pointerdown", || DOWN.set(true)),
        listen("pointerup", up),
        listen("pointercancel", up),
    ];
}

fn listen(event: &'static str, then: fn()) -> EventListener {
    let options = EventListenerOptions::run_in_capture_phase();
    EventListener::new_with_options(&gloo::utils::window(), event, options, move |_| then())
}

fn up() {
    DOWN.set(false);
    let tasks = WAITING.take();
    clock::after(SETTLE_MS, move || tasks.into_iter().for_each(|task| task()));
}

/// Begins to follow presses.
pub fn start() {
    LISTENERS.with(|_| {});
}

/// Does something when no press is going on.
pub fn when_up(task: impl FnOnce() + 'static) {
    if DOWN.get() {
        WAITING.with_borrow_mut(|waiting| waiting.push(Box::new(task)));
    } else {
        clock::after(SETTLE_MS, task);
    }
}
