//! Which language the page speaks, and how a message is asked for.
//!
//! The messages stand in `src/catalogue`. `say!("name")` gives one that is always the same; `say!("name", gauge = …)`
//! one with places for words. Where a key decides, [`of`] gives the message `family-key`.

use std::cell::Cell;
use std::sync::OnceLock;

use catalogue::{Catalogue, Language, Word, fill};

thread_local! {
    /// The language, and its messages where they are not the English ones.
    static SPOKEN: Cell<(Language, Option<&'static Catalogue>)> =
        const { Cell::new((Language::English, None)) };
    /// Every English message, once they have come.
    static ENGLISH: Cell<Option<&'static Catalogue>> = const { Cell::new(None) };
}

/// The English messages that are here from the beginning. The page fetches the others; where nothing can be fetched,
/// in tests and natively, all of them are here.
const CARRIED: &str =
    if cfg!(feature = "every-word") { catalogue::ENGLISH } else { catalogue::EARLY };

/// The English messages stand in for what another language lacks.
fn english() -> &'static Catalogue {
    static EARLY: OnceLock<Catalogue> = OnceLock::new();
    ENGLISH.get().unwrap_or_else(|| EARLY.get_or_init(|| Catalogue::of(CARRIED)))
}

/// Whether everything can be said in a language as soon as it is spoken.
#[must_use]
pub fn knows(language: Language) -> bool {
    let (spoken, messages) = SPOKEN.get();
    match language {
        Language::English => cfg!(feature = "every-word") || ENGLISH.get().is_some(),
        other => spoken == other && messages.is_some(),
    }
}

/// The language that is spoken.
#[must_use]
pub fn language() -> Language {
    SPOKEN.get().0
}

/// Speaks English from now on.
pub fn speak_english() {
    SPOKEN.set((Language::English, None));
}

/// Takes up every English message; the language that is spoken stays.
pub fn learn_english(messages: &'static str) {
    ENGLISH.set(Some(kept(messages)));
}

/// Once in the life of a page, or a few times: it is not given back.
fn kept(messages: &'static str) -> &'static Catalogue {
    Box::leak(Box::new(Catalogue::of(messages)))
}

/// Speaks a language from now on, with its messages.
pub fn speak(language: Language, messages: &'static str) {
    match language {
        Language::English => {
            learn_english(messages);
            speak_english();
        }
        _ => SPOKEN.set((language, Some(kept(messages)))),
    }
}

fn pattern(name: &str) -> Option<&'static str> {
    let own = SPOKEN.get().1.and_then(|catalogue| catalogue.pattern(name));
    own.or_else(|| english().pattern(name))
}

/// The message of that name, which has no places for words.
#[must_use]
pub fn plain(name: &'static str) -> &'static str {
    let found = pattern(name);
    debug_assert!(found.is_some(), "there is no message {name}");
    found.unwrap_or(name)
}

/// The message of that name with words in its places.
#[must_use]
pub fn filled(name: &'static str, words: &[(&str, Word<'_>)]) -> String {
    let found = pattern(name);
    debug_assert!(found.is_some(), "there is no message {name}");
    found.map_or_else(|| name.to_owned(), |pattern| fill(pattern, words))
}

/// The message of a family for a key: `of("limit", "nickel")` is `limit-nickel`. None if there is none.
#[must_use]
pub fn of(family: &'static str, key: &str) -> Option<&'static str> {
    pattern(&name_of(family, key))
}

/// The same with words in its places.
#[must_use]
pub fn of_filled(family: &'static str, key: &str, words: &[(&str, Word<'_>)]) -> Option<String> {
    pattern(&name_of(family, key)).map(|pattern| fill(pattern, words))
}

/// The message of a family for a key, or the key itself where the page does not know it yet.
#[must_use]
pub fn of_or_key<'a>(family: &'static str, key: &'a str) -> &'a str {
    of(family, key).unwrap_or(key)
}

/// The name of a message: keys may have points and colons, names of messages only hyphens.
fn name_of(family: &str, key: &str) -> String {
    let mut name = String::with_capacity(family.len() + key.len() + 1);
    name.push_str(family);
    name.push('-');
    name.extend(key.replace("::", "-").chars().map(|c| if c == '/' { '-' } else { c }));
    name
}

/// A message by its name, with words in its places if it has any.
#[macro_export]
macro_rules! say {
    ($name:literal) => { $crate::words::speech::plain($name) };
    ($name:literal, $($place:ident = $word:expr),+ $(,)?) => {
        $crate::words::speech::filled($name, &[$((stringify!($place), ::catalogue::Word::from($word))),+])
    };
}
