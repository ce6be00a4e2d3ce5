//! Tells the tabs of the page of each other's changes.

use gloo::events::EventListener;
use wasm_bindgen::JsCast;
use web_sys::{BroadcastChannel, StorageEvent};

use super::texts;

/// The channel on which tabs tell of changes.
const CHANNEL: &str = "ropewalk-records";

/// What a tab hears.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Heard {
    /// Another tab has written records, or may have while this one slept.
    Records,
    /// An older build in another tab has written a text.
    OldText,
}

/// Tells the other tabs that records were written.
pub(super) fn tell() {
    if let Ok(channel) = BroadcastChannel::new(CHANNEL) {
        // A tab that does not hear it reads anew when it wants to write.
        drop(channel.post_message(&CHANNEL.into()));
        channel.close();
    }
}

/// Reports what other tabs write, until the result is dropped.
#[must_use = "it listens only as long as it is kept"]
pub fn watch(report: impl Fn(Heard) + Clone + 'static) -> Watch {
    let channel = BroadcastChannel::new(CHANNEL).ok();
    let mut listeners = Vec::new();
    if let Some(channel) = &channel {
        let report = report.clone();
        listeners.push(EventListener::new(channel, "message", move |_| report(Heard::Records)));
    }
    {
        let report = report.clone();
        let document = gloo::utils::document();
        listeners.push(EventListener::new(&document, "visibilitychange", move |_| {
            if !gloo::utils::document().hidden() {
                report(Heard::Records);
            }
        }));
    }
    listeners.push(EventListener::new(&gloo::utils::window(), "storage", move |event| {
        let key = event.dyn_ref::<StorageEvent>().and_then(StorageEvent::key);
        if key.is_some_and(|key| texts::is_old_key(&key)) {
            report(Heard::OldText);
        }
    }));
    Watch { channel, listeners }
}

/// Listens to other tabs while it is kept.
#[derive(Debug)]
pub struct Watch {
    channel: Option<BroadcastChannel>,
    #[expect(dead_code, reason = "they listen until they are dropped")]
    listeners: Vec<EventListener>,
}

impl Drop for Watch {
    fn drop(&mut self) {
        if let Some(channel) = &self.channel {
            channel.close();
        }
    }
}
