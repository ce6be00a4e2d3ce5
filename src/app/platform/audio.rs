//! Sounds that were made ahead, played side by side, one of them heard at a time.

use std::fmt;
use std::rc::Rc;

use js_sys::Float32Array;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{AudioBufferSourceNode, AudioContext, AudioScheduledSourceNode, GainNode};

use crate::words::say;

/// Samples of one channel, full scale 1. Copies share them.
#[derive(Clone, Debug)]
pub struct Samples(pub(crate) Float32Array);

impl PartialEq for Samples {
    fn eq(&self, other: &Self) -> bool {
        js_sys::Object::is(&self.0, &other.0)
    }
}

impl Samples {
    /// Samples from numbers.
    #[must_use]
    pub fn of(samples: &[f32]) -> Self {
        Self(Float32Array::from(samples))
    }

    /// How many there are.
    #[must_use]
    pub fn count(&self) -> u32 {
        self.0.length()
    }

    /// The numbers.
    #[must_use]
    pub fn numbers(&self) -> Vec<f32> {
        self.0.to_vec()
    }
}

/// How long one sound takes to give way to another, s: short enough to be at the same moment, too long for a click.
const GIVING_WAY: f64 = 0.01;
/// How long before the start everything must be ready, s.
const AHEAD: f64 = 0.05;

/// Sounds that play at the same moment. They stop when it is dropped.
pub struct Deck {
    context: AudioContext,
    sources: Vec<AudioScheduledSourceNode>,
    gains: Vec<GainNode>,
    _on_end: Closure<dyn FnMut()>,
}

impl fmt::Debug for Deck {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Deck").field("sounds", &self.sources.len()).finish_non_exhaustive()
    }
}

impl Deck {
    /// Starts these sounds at once, each as loud as its factor says, of which the one at `heard` is heard.
    ///
    /// `ended` is called when the longest is over.
    ///
    /// # Errors
    /// When the browser plays no sound, in words.
    pub fn start(
        sounds: &[(Samples, f32)],
        rate_hz: u32,
        heard: usize,
        ended: Rc<dyn Fn()>,
    ) -> Result<Self, String> {
        Self::started(sounds, rate_hz, heard, ended).map_err(|_| say!("audio-none").to_owned())
    }

    fn started(
        sounds: &[(Samples, f32)],
        rate_hz: u32,
        heard: usize,
        ended: Rc<dyn Fn()>,
    ) -> Result<Self, JsValue> {
        let context = AudioContext::new()?;
        let mut deck = Self {
            context,
            sources: Vec::new(),
            gains: Vec::new(),
            _on_end: Closure::new(move || ended()),
        };
        let context = &deck.context;
        let start = context.current_time() + AHEAD;
        let mut longest: Option<(u32, AudioScheduledSourceNode)> = None;
        for (i, (samples, factor)) in sounds.iter().enumerate() {
            let count = samples.count();
            let buffer = context.create_buffer(1, count.max(1), rate_hz as f32)?;
            buffer.copy_to_channel_with_f32_array(&samples.0, 0)?;
            let source: AudioBufferSourceNode = context.create_buffer_source()?;
            source.set_buffer(Some(&buffer));
            let gain = context.create_gain()?;
            gain.gain().set_value(if i == heard { *factor } else { 0.0 });
            source.connect_with_audio_node(&gain)?;
            gain.connect_with_audio_node(&context.destination())?;
            source.start_with_when(start)?;
            let source: AudioScheduledSourceNode = source.into();
            if longest.as_ref().is_none_or(|(most, _)| count > *most) {
                longest = Some((count, source.clone()));
            }
            deck.sources.push(source);
            deck.gains.push(gain);
        }
        if let Some((_, source)) = longest {
            source.set_onended(Some(deck._on_end.as_ref().unchecked_ref()));
        }
        // A browser that wants a gesture first has had one: the button. If the person stops it before it has begun,
        // nobody waits for it any more.
        let begun = JsFuture::from(deck.context.resume()?);
        spawn_local(async { drop(begun.await) });
        Ok(deck)
    }

    /// Lets the sound at `heard` be heard instead of the others, each by its factor, at this moment.
    pub fn hear(&self, heard: usize, factors: &[f32]) {
        let now = self.context.current_time();
        for (i, (gain, factor)) in self.gains.iter().zip(factors).enumerate() {
            let to = if i == heard { *factor } else { 0.0 };
            // Only a time before the first moment is refused.
            drop(gain.gain().set_target_at_time(to, now, GIVING_WAY / 3.0));
        }
    }
}

impl Drop for Deck {
    fn drop(&mut self) {
        for source in &self.sources {
            source.set_onended(None);
        }
        if let Ok(closed) = self.context.close() {
            spawn_local(async { drop(JsFuture::from(closed).await) });
        }
    }
}
