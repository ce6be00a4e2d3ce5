//! Which language the page speaks, and how a message is asked for.
//!
//! The messages stand in `src/catalogue`. `say!("name")` gives one that is always the same; `say!("name", gauge = …)`
//! one with places for words. Where a key decides, [`of`] gives the message `family-key`.

use std::cell::Cell;
use std::sync::OnceLock;

use catalogue::{Catalogue, Language, Word, fill};

thread_local! {
    /// The language that is spoken.
    static SPOKEN: Cell<Language> = const { Cell::new(Language::English) };
    /// The messages of each language, once they have come. They are never given back, so each comes once.
    static LEARNED: Cell<[Option<&'static Catalogue>; Language::ALL.len()]> =
        const { Cell::new([None; Language::ALL.len()]) };
}

/// The English messages that are here from the beginning. The page fetches the others; where nothing can be fetched,
/// in tests and natively, all of them are here.
const CARRIED: &str =
    if cfg!(feature = "every-word") { catalogue::ENGLISH } else { catalogue::EARLY };

/// The messages of a language, if they have come.
fn learned(language: Language) -> Option<&'static Catalogue> {
    LEARNED.get()[language as usize]
}

/// The English messages stand in for what another language lacks.
fn english() -> &'static Catalogue {
    static EARLY: OnceLock<Catalogue> = OnceLock::new();
    learned(Language::English).unwrap_or_else(|| EARLY.get_or_init(|| Catalogue::of(CARRIED)))
}

/// Whether everything can be said in a language as soon as it is spoken.
#[must_use]
pub fn knows(language: Language) -> bool {
    let carried = cfg!(feature = "every-word") && language == Language::English;
    carried || learned(language).is_some()
}

/// The language that is spoken.
#[must_use]
pub fn language() -> Language {
    SPOKEN.get()
}

/// Takes up the messages of a language; the language that is spoken stays.
pub fn learn(language: Language, messages: &'static str) {
    if learned(language).is_none() {
        let mut all = LEARNED.get();
        all[language as usize] = Some(Box::leak(Box::new(Catalogue::of(messages))));
        LEARNED.set(all);
    }
}

/// Speaks a language from now on. What is not [learned](learn) of it is said in English.
pub fn speak(language: Language) {
    SPOKEN.set(language);
}

fn pattern(name: &str) -> Option<&'static str> {
    let own = learned(SPOKEN.get()).and_then(|catalogue| catalogue.pattern(name));
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
