//! The language and the units that a person chose: kept on this machine, and taken up when the page starts.

use catalogue::Language;

use crate::platform::language;
use crate::platform::storage::texts;
use crate::preferences::{self, Preferences};
use crate::words::speech;

/// The name under which preferences are kept.
const NAME: &str = "habits";

/// What was kept. Where nothing can be kept, the page is drawn as for anybody.
fn kept() -> Preferences {
    texts::raw(NAME).map_or_else(Preferences::default, |text| Preferences::read(&text))
}

/// The language in which the page starts: the one that was chosen, or the browser's.
#[must_use]
pub fn first_language() -> Language {
    let preferences = kept();
    preferences::take(preferences);
    preferences.language.unwrap_or_else(language::preferred)
}

/// Speaks a language. What is not here of its messages is fetched.
///
/// # Errors
/// When its messages cannot be had; then the language stays as it was.
pub async fn speak(wanted: Language) -> Result<(), String> {
    fetch(wanted).await?;
    speech::speak(wanted);
    language::mark(wanted);
    Ok(())
}

/// Fetches what the page does not carry of the language that it speaks. A language that is chosen meanwhile stays.
///
/// # Errors
/// When it cannot be had.
pub async fn learn() -> Result<(), String> {
    fetch(speech::language()).await
}

/// Fetches the messages of a language once in the life of the page, which keeps them until it is closed.
async fn fetch(wanted: Language) -> Result<(), String> {
    if !speech::knows(wanted) {
        let messages = language::fetch(wanted).await?;
        // Two may have fetched it at the same time.
        if !speech::knows(wanted) {
            speech::learn(wanted, messages.leak());
        }
    }
    Ok(())
}

/// Takes up changed preferences and keeps them.
///
/// # Errors
/// When the language cannot be had; then everything stays as it was.
pub async fn change(preferences: Preferences) -> Result<(), String> {
    if let Some(language) = preferences.language {
        speak(language).await?;
    }
    preferences::take(preferences);
    // A browser that keeps nothing forgets them with the tab.
    texts::keep(NAME, &preferences.written());
    Ok(())
}
