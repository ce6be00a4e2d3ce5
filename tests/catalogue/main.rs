//! Is everything the page says in the catalogue, in every language, and nothing else?
#![allow(clippy::unwrap_used, reason = "in a test, a panic is how a failure is told")]

mod asked;
mod fluent;
mod literals;

use std::collections::BTreeSet;
use std::path::Path;

use asked::{Asked, Source, sources};
use catalogue::{Catalogue, EARLY, ENGLISH, GERMAN, Language};

/// Messages that read the same in both languages, and why.
const ALIKE: [(&str, &str); 7] = [
    ("term-cent", "the unit has one name"),
    ("note-", "notes are called by the same letters"),
    ("name", "what the program is called"),
    ("window-title", "two names beside each other"),
    ("tuning-", "notes are called by the same letters"),
    ("unit-", "a unit's sign is the same everywhere"),
    ("habit-", "a unit's sign is the same everywhere"),
];

/// Single messages that read the same, and why.
const ALIKE_WORDS: [(&str, &str); 13] = [
    ("class-stop-key", "it stands on the key"),
    ("maker-form", "a word of both languages"),
    ("report-hz", "a unit's sign is the same everywhere"),
    ("month-4", "a word of both languages"),
    ("month-8", "a word of both languages"),
    ("month-9", "a word of both languages"),
    ("month-11", "a word of both languages"),
    ("part-instrument", "a word of both languages"),
    ("question-instrument.name", "a word of both languages"),
    ("choice-music-jazz", "a word of both languages"),
    ("choice-set_up-modern", "a word of both languages"),
    ("usual-a4", "a number and a unit"),
    ("metal-nickel", "a word of both languages"),
];

/// Messages that are not about the same words, and why.
const OTHER_WORDS: [(&str, &str); 5] = [
    ("findings-unlikely", "German sentences keep their capitals, so they stand apart"),
    ("gauges-part", "only English has an article there"),
    ("card-bands", "German has a plural of its own for each family, English the family's name"),
    ("a-letter", "only English has an article that goes by the sound of a letter"),
    ("note-of-several", "German tells two strings of one letter apart by their octave"),
];

/// The words for which a pattern has places, and those by which it chooses.
fn words(pattern: &str) -> (BTreeSet<&str>, BTreeSet<&str>) {
    let places = pattern.split('\u{1}').skip(1).filter_map(|rest| rest.split('\u{2}').next());
    let choices = pattern.split('\u{3}').skip(1).filter_map(|rest| rest.split('\u{4}').next());
    (places.collect(), choices.collect())
}

#[test]
fn every_language_says_the_same_messages_about_the_same_words() {
    let (english, german) = (Catalogue::of(ENGLISH), Catalogue::of(GERMAN));
    assert!(english.names().count() > 200);
    let names = |catalogue: &Catalogue| catalogue.names().collect::<BTreeSet<_>>();
    let missing: Vec<_> = names(&english).difference(&names(&german)).copied().collect();
    assert!(missing.is_empty(), "say these in src/catalogue/de too: {missing:#?}");
    let more: Vec<_> = names(&german).difference(&names(&english)).copied().collect();
    assert!(more.is_empty(), "these are only in src/catalogue/de: {more:#?}");
    for name in english.names() {
        let about = |catalogue: &Catalogue| {
            let (places, choices) = words(catalogue.pattern(name).unwrap());
            // A word that begins a sentence in one language stands within it in another: `Cause` and `cause`.
            places.union(&choices).map(|word| word.to_lowercase()).collect::<BTreeSet<_>>()
        };
        if OTHER_WORDS.iter().all(|(other, _)| *other != name) {
            assert_eq!(about(&english), about(&german), "{name} is not about the same words");
        }
    }
}

#[test]
fn what_is_asked_for_is_there_and_what_is_there_is_asked_for() {
    let english = Catalogue::of(ENGLISH);
    let all = sources();
    let asked = Asked::of(&all);
    for (name, given, place) in &asked.messages {
        let pattern = english.pattern(name);
        let pattern =
            pattern.unwrap_or_else(|| panic!("{place} asks for {name}: say it in src/catalogue"));
        for language in Language::ALL {
            let catalogue = Catalogue::of(language.messages());
            let (places, choices) = words(catalogue.pattern(name).unwrap_or(pattern));
            let lacking: Vec<_> =
                places.union(&choices).filter(|word| !given.contains(**word)).collect();
            assert!(lacking.is_empty(), "{place} gives {name} no {lacking:?} ({})", language.tag());
        }
        let needed = |word: &String| {
            Language::ALL.into_iter().any(|language| {
                let catalogue = Catalogue::of(language.messages());
                let (places, choices) = words(catalogue.pattern(name).unwrap_or(pattern));
                places.contains(word.as_str()) || choices.contains(word.as_str())
            })
        };
        let idle: Vec<_> = given.iter().filter(|word| !needed(word)).collect();
        assert!(idle.is_empty(), "{place} gives {name} {idle:?}, which it has no place for");
    }
    let unused: Vec<_> = english.names().filter(|name| !asked.knows(name)).collect();
    assert!(unused.is_empty(), "nothing asks for these: delete them: {unused:#?}");
}

/// What is drawn or told before the messages of the other rooms have come.
const EARLY_SOURCES: [&str; 20] = [
    "app.rs",
    "day.rs",
    "fields",
    "state",
    "components/error_summary.rs",
    "components/field",
    "components/preferences.rs",
    "components/question.rs",
    "hooks/preferences.rs",
    "hooks/model.rs",
    "hooks/offline.rs",
    "hooks/route.rs",
    "hooks/store.rs",
    "pages/ask.rs",
    "pages/check.rs",
    "pages/everything.rs",
    "pages/home.rs",
    "platform",
    "words/fitting.rs",
    "words/said.rs",
];

#[test]
fn the_page_carries_what_its_first_screens_say() {
    let (early, english) = (Catalogue::of(EARLY), Catalogue::of(ENGLISH));
    for name in early.names() {
        assert_eq!(early.pattern(name), english.pattern(name), "{name}");
    }
    let (carried, all) = (early.names().count(), english.names().count());
    assert!(
        carried * 2 < all,
        "{carried} of {all} messages: the others are fetched when they are needed"
    );
    let all = sources();
    for path in EARLY_SOURCES {
        let path = Path::new("src/app").join(path);
        assert!(all.iter().any(|source| source.path.starts_with(&path)), "{}", path.display());
    }
    let drawn = |source: &&Source| {
        EARLY_SOURCES.iter().any(|path| source.path.starts_with(Path::new("src/app").join(path)))
    };
    let missing: Vec<_> = Asked::of(all.iter().filter(drawn))
        .messages
        .into_iter()
        .filter(|(name, ..)| early.pattern(name).is_none())
        .map(|(name, _, place)| format!("{name} in {place}"))
        .collect();
    assert!(
        missing.is_empty(),
        "move these to a file that src/catalogue/build.rs counts among the early ones: {missing:#?}"
    );
}

#[test]
fn nothing_is_left_untranslated() {
    let (english, german) = (Catalogue::of(ENGLISH), Catalogue::of(GERMAN));
    let mut left = Vec::new();
    for name in english.names() {
        let (one, other) = (english.pattern(name), german.pattern(name));
        // Signs, numbers and places alone belong to no language.
        let bare = one
            .unwrap_or_default()
            .split('\u{1}')
            .map(|part| part.split_once('\u{2}').map_or(part, |(_, after)| after));
        let wordless = !bare.collect::<String>().chars().any(char::is_alphabetic);
        // A formula is written in letters that belong to no language.
        let formula = name.ends_with(".formula");
        let known = formula
            || ALIKE.iter().any(|(start, _)| name.starts_with(start))
            || ALIKE_WORDS.iter().any(|(word, _)| *word == name);
        if one == other && !known && !wordless {
            left.push(name);
        }
    }
    assert!(
        left.is_empty(),
        "these read the same in German: translate them, or say why: {left:#?}"
    );
}

#[test]
fn german_says_sie() {
    let german = Catalogue::of(GERMAN);
    for name in german.names() {
        let said = german.pattern(name).unwrap_or_default();
        let words = said.split(|c: char| !c.is_alphabetic());
        let informal = words.filter(|word| {
            ["du", "dich", "dir", "dein", "deine", "deiner", "deinem", "deinen"].contains(word)
        });
        assert_eq!(informal.count(), 0, "{name}: {said}");
    }
}
