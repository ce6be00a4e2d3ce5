//! Does the page say anything that is not in the catalogue?

use super::asked::{Source, literals, sources};

/// Sources that speak to programs and not to a person, and why.
const NO_PERSON: [(&str, &str); 6] = [
    ("src/app/api.rs", "its faults are read by programs"),
    ("src/tasks/scripts.rs", "its faults are read by whoever builds the page"),
    ("src/app/platform/keys.rs", "its words are what browsers call keys and elements"),
    ("src/app/platform/serviceworker.rs", "what it says to the service worker is a command"),
    ("src/app/records/memory.rs", "the tests alone use it"),
    ("src/app/fields/unit.rs", "the ways in which people write a unit are known in every language"),
];

/// Marks before a text that no person reads on the page.
const UNSEEN: [&str; 19] = [
    "debug_struct(",
    "must_use = ",
    "use = ",
    "debug_assert!(",
    "class=",
    "class:",
    "classes!(",
    "expect(",
    "expect_err(",
    "reason = ",
    "reason: ",
    "query_selector(",
    "query_selector_all(",
    "inside(",
    "focus(",
    "d=",
    "viewBox=",
    "points=",
    "format_args!(",
];

/// Whether a text is made of words: two that follow each other, or one that begins large and goes on small.
fn says_something(text: &str) -> bool {
    let words: Vec<&str> = text.split(|c: char| !c.is_alphabetic() && c != '’').collect();
    let is_word = |word: &&&str| word.chars().count() > 1 && !word.contains('_');
    let of_words = text.split(' ').filter(|word| {
        word.chars().filter(|c| c.is_alphabetic()).count() > 1
            && !word.contains(['{', '_', '/', '=', '<', '.', '#', '-'])
    });
    let sentence = of_words.count() > 1;
    let named = words.iter().filter(is_word).count() == 1
        && text.chars().next().is_some_and(char::is_uppercase)
        && text.chars().skip(1).all(|c| c.is_lowercase() || c == ' ' || c == '.' || c == '…')
        && text.chars().count() > 2;
    sentence || named
}

/// Texts of a source that say something to a person.
fn own_words(source: &Source) -> Vec<String> {
    let mut found = Vec::new();
    for line in source.text.lines() {
        let mut rest = line;
        for text in literals(line) {
            let at = rest.find(text).unwrap_or(0);
            let before = rest[..at].trim_end_matches('"').to_owned();
            rest = &rest[at + text.len()..];
            let unseen = UNSEEN
                .iter()
                .any(|mark| before.ends_with(mark) || before.trim_end_matches('{').ends_with(mark))
                || before.contains("classes!(")
                || ["reason = ", "must_use = ", "debug_assert!("]
                    .iter()
                    .any(|mark| before.contains(mark));
            if says_something(text) && !unseen {
                found.push(text.to_owned());
            }
        }
    }
    found
}

#[test]
fn every_word_on_the_page_is_in_the_catalogue() {
    let mut found = Vec::new();
    let mut done = Vec::new();
    for source in sources() {
        let place = source.path.display().to_string();
        let words = own_words(&source);
        let listed = NO_PERSON.iter().any(|(other, _)| *other == place);
        if listed && words.is_empty() {
            done.push(place);
        } else if !listed {
            found.extend(words.into_iter().map(|text| format!("{place}: {text}")));
        }
    }
    assert!(
        found.is_empty(),
        "move these to src/catalogue and ask for them with `say!`: {found:#?}"
    );
    assert!(done.is_empty(), "these have no such words any more: delete them here: {done:#?}");
}
