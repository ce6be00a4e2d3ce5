//! Everything the page says, in every language it speaks, and how a message becomes a sentence.
//!
//! The messages stand in `en/` and `de/`, in the format of Project Fluent. The build makes one compact text of each
//! language (`compile.rs`), in which every reference is resolved; what is left to the page is to put words in their
//! places and to choose between texts. So no parser weighs on the page: Fluent's own library is 52 kB there (brotli), its
//! parser alone 10 kB, this reader 1 kB. A language is a file of about 27 kB, fetched when it is needed.
//!
//! The marks of a compact pattern: `1 name 2` is a place for a word; `3 name (4 key 5 pattern)… 6` is a choice by what
//! stands under a name, and the key with an asterisk is taken where no other fits.

use std::borrow::Cow;

/// A language of the page.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Language {
    /// English.
    #[default]
    English,
    /// German.
    German,
}

impl Language {
    /// Every one.
    pub const ALL: [Self; 2] = [Self::English, Self::German];

    /// Its tag, as in the `lang` of a page.
    #[must_use]
    pub const fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::German => "de",
        }
    }

    /// What it calls itself.
    #[must_use]
    pub const fn own_name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::German => "Deutsch",
        }
    }

    /// The language of a tag such as `de-AT`; none if the page does not speak it.
    #[must_use]
    pub fn of(tag: &str) -> Option<Self> {
        let first = tag.split(['-', '_']).next().unwrap_or(tag);
        Self::ALL.into_iter().find(|language| language.tag().eq_ignore_ascii_case(first))
    }

    /// The file in which a build keeps its messages beside the page.
    #[must_use]
    pub const fn file(self) -> &'static str {
        match self {
            Self::English => env!("ROPEWALK_WORDS_EN"),
            Self::German => env!("ROPEWALK_WORDS_DE"),
        }
    }

    /// The hash by which a browser knows that file.
    #[must_use]
    pub const fn integrity(self) -> &'static str {
        match self {
            Self::English => env!("ROPEWALK_WORDS_EN_INTEGRITY"),
            Self::German => env!("ROPEWALK_WORDS_DE_INTEGRITY"),
        }
    }

    /// Its messages. Whoever does not call this for a language does not carry it.
    #[must_use]
    pub const fn messages(self) -> &'static str {
        match self {
            Self::English => ENGLISH,
            Self::German => GERMAN,
        }
    }
}

/// The English messages of the first screens, which the page carries.
pub const EARLY: &str = include_str!(concat!(env!("OUT_DIR"), "/early.txt"));
/// The English messages.
pub const ENGLISH: &str = include_str!(concat!(env!("OUT_DIR"), "/en.txt"));
/// The German messages.
pub const GERMAN: &str = include_str!(concat!(env!("OUT_DIR"), "/de.txt"));

/// What can stand in a place of a message.
#[derive(Clone, Debug, PartialEq)]
pub enum Word<'a> {
    /// A text, or the key by which one is chosen.
    Text(Cow<'a, str>),
    /// A number that decides between one and many.
    Number(f64),
}

impl<'a> From<&'a str> for Word<'a> {
    fn from(text: &'a str) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

impl<'a> From<&'a String> for Word<'a> {
    fn from(text: &'a String) -> Self {
        Self::Text(Cow::Borrowed(text))
    }
}

impl From<String> for Word<'_> {
    fn from(text: String) -> Self {
        Self::Text(Cow::Owned(text))
    }
}

impl From<f64> for Word<'_> {
    fn from(number: f64) -> Self {
        Self::Number(number)
    }
}

impl From<u32> for Word<'_> {
    fn from(number: u32) -> Self {
        Self::Number(f64::from(number))
    }
}

impl From<usize> for Word<'_> {
    fn from(number: usize) -> Self {
        // Counts on a page are far below 2^53.
        Self::Number(number as f64)
    }
}

/// The messages of one language.
#[derive(Clone, Debug)]
pub struct Catalogue {
    /// Names and patterns, in the order of the names.
    messages: Vec<(&'static str, &'static str)>,
}

impl Catalogue {
    /// Takes up a compact text.
    #[must_use]
    pub fn of(text: &'static str) -> Self {
        let messages: Vec<_> = text.lines().filter_map(|line| line.split_once('\t')).collect();
        debug_assert!(
            messages.is_sorted(),
            "the build writes the messages in the order of their names"
        );
        Self { messages }
    }

    /// The pattern of a message; an attribute's name stands behind a point.
    #[must_use]
    pub fn pattern(&self, name: &str) -> Option<&'static str> {
        let found = self.messages.binary_search_by(|(known, _)| (*known).cmp(name)).ok()?;
        self.messages.get(found).map(|(_, pattern)| *pattern)
    }

    /// The names of all messages.
    pub fn names(&self) -> impl Iterator<Item = &'static str> + '_ {
        self.messages.iter().map(|(name, _)| *name)
    }
}

/// Puts words into a pattern.
#[must_use]
pub fn fill(pattern: &str, words: &[(&str, Word<'_>)]) -> String {
    let mut out = String::with_capacity(pattern.len());
    put(pattern, words, &mut out);
    out
}

fn put(pattern: &str, words: &[(&str, Word<'_>)], out: &mut String) {
    let mut rest = pattern;
    while let Some(at) = rest.find(['\u{1}', '\u{3}']) {
        out.push_str(&rest[..at]);
        let choice = rest[at..].starts_with('\u{3}');
        rest = &rest[at + 1..];
        if choice {
            let end = end_of_choice(rest);
            let (name, variants) = rest[..end].split_once('\u{4}').unwrap_or((&rest[..end], ""));
            put(chosen(variants, word(words, name)), words, out);
            rest = rest.get(end + 1..).unwrap_or_default();
        } else {
            let (name, after) = rest.split_once('\u{2}').unwrap_or((rest, ""));
            match word(words, name) {
                Some(Word::Text(text)) => out.push_str(text),
                Some(Word::Number(number)) => out.push_str(&number.to_string()),
                None => out.push_str(name),
            }
            rest = after;
        }
    }
    out.push_str(rest);
}

fn word<'a, 'b>(words: &'b [(&str, Word<'a>)], name: &str) -> Option<&'b Word<'a>> {
    let found = words.iter().find(|(known, _)| *known == name);
    debug_assert!(found.is_some(), "a message needs ${name}");
    found.map(|(_, word)| word)
}

/// Where the choice ends that has just begun.
fn end_of_choice(text: &str) -> usize {
    let mut depth = 0_u32;
    for (at, mark) in text.char_indices() {
        match mark {
            '\u{3}' => depth += 1,
            '\u{6}' if depth == 0 => return at,
            '\u{6}' => depth -= 1,
            _ => {}
        }
    }
    text.len()
}

/// The text of a choice that fits a word: the one of that key or number, of its plural, or the usual one.
fn chosen<'a>(variants: &'a str, word: Option<&Word<'_>>) -> &'a str {
    let mut usual = "";
    let mut by_plural = None;
    let mut rest = variants;
    while let Some((key, after)) = rest.split_once('\u{5}') {
        let end = end_of_variant(after);
        let text = &after[..end];
        rest = after.get(end + 1..).unwrap_or_default();
        let key = key.strip_prefix('*').map_or(key, |key| {
            usual = text;
            key
        });
        match word {
            Some(Word::Text(word)) if word == key => return text,
            Some(Word::Number(number)) => {
                if key == number.to_string() {
                    return text;
                }
                // English and German have the same two numbers.
                let one = number.total_cmp(&1.0).is_eq();
                if key == (if one { "one" } else { "other" }) {
                    by_plural = Some(text);
                }
            }
            _ => {}
        }
    }
    by_plural.unwrap_or(usual)
}

/// Where a variant ends: at the next key of the same choice, or with the choice.
fn end_of_variant(text: &str) -> usize {
    let mut depth = 0_u32;
    for (at, mark) in text.char_indices() {
        match mark {
            '\u{3}' => depth += 1,
            '\u{6}' => depth = depth.saturating_sub(1),
            '\u{4}' if depth == 0 => return at,
            _ => {}
        }
    }
    text.len()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_stand_in_their_places() {
        let pattern = "the \u{1}note\u{2} string, \u{1}gauge\u{2}.";
        let said = fill(pattern, &[("note", "A".into()), ("gauge", "0.68 mm".into())]);
        assert_eq!(said, "the A string, 0.68 mm.");
    }

    #[test]
    fn a_choice_goes_by_key_by_number_and_by_plural() {
        let days = "in \u{3}days\u{4}0\u{5}no time\u{4}one\u{5}\u{1}days\u{2} day\u{4}*other\u{5}\u{1}days\u{2} days\u{6}.";
        let said = |n: f64| fill(days, &[("days", n.into())]);
        assert_eq!(
            [said(0.0), said(1.0), said(2.0), said(1.5)].join(" "),
            "in no time. in 1 day. in 2 days. in 1.5 days."
        );
        let nested = "\u{3}a\u{4}x\u{5}\u{3}b\u{4}*y\u{5}1\u{4}z\u{5}2\u{6}\u{4}*w\u{5}3\u{6}";
        let said = |a: &str, b: &str| fill(nested, &[("a", a.into()), ("b", b.into())]);
        assert_eq!([said("x", "z"), said("x", "q"), said("v", "z")].concat(), "213");
    }

    #[test]
    fn a_tag_finds_its_language() {
        assert_eq!(Language::of("de-AT"), Some(Language::German));
        assert_eq!(Language::of("EN"), Some(Language::English));
        assert_eq!(Language::of("fr"), None);
    }
}
