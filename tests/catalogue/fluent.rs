//! Does the page read its messages as Fluent's own authors do?

use std::fs;
use std::path::Path;

use catalogue::{Catalogue, Language, Word, fill};
use fluent_bundle::{FluentArgs, FluentBundle, FluentResource};
use unic_langid::LanguageIdentifier;

/// The messages of a language as they are written.
fn written(language: Language) -> Vec<String> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap();
    let folder = root.join("src/catalogue").join(language.tag());
    let files = fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    files.map(|file| fs::read_to_string(file).unwrap()).collect()
}

/// Every key by which a pattern chooses.
fn keys(pattern: &str) -> Vec<&str> {
    let keys = pattern.split('\u{4}').skip(1).filter_map(|rest| rest.split('\u{5}').next());
    keys.map(|key| key.trim_start_matches('*')).collect()
}

#[test]
fn every_message_reads_as_by_fluents_own_reader() {
    for language in Language::ALL {
        let tag: LanguageIdentifier = language.tag().parse().unwrap();
        let mut bundle = FluentBundle::new(vec![tag]);
        bundle.set_use_isolating(false);
        for text in written(language) {
            let resource = FluentResource::try_new(text).map_err(|(_, faults)| faults).unwrap();
            bundle.add_resource(resource).unwrap();
        }
        let ours = Catalogue::of(language.messages());
        let mut compared = 0;
        for name in ours.names() {
            let pattern = ours.pattern(name).unwrap();
            let (places, choices) = super::words(pattern);
            let mut tries = vec!["nothing"];
            tries.extend(keys(pattern));
            for key in tries {
                for number in [0.0, 1.0, 2.0] {
                    // A word that decides is a key; where only numbers and plurals are known, it is a number.
                    let plural = keys(pattern)
                        .iter()
                        .all(|k| ["one", "other"].contains(k) || k.parse::<f64>().is_ok());
                    let mut args = FluentArgs::new();
                    let mut words = Vec::new();
                    for word in places.union(&choices) {
                        if choices.contains(word) && plural {
                            args.set(*word, number);
                            words.push((*word, Word::from(number)));
                        } else if choices.contains(word) {
                            args.set(*word, key);
                            words.push((*word, Word::from(key)));
                        } else {
                            args.set(*word, format!("<{word}>"));
                            words.push((*word, Word::from(format!("<{word}>"))));
                        }
                    }
                    let (id, part) = name.split_once('.').unwrap_or((name, ""));
                    let message = bundle.get_message(id).unwrap();
                    let theirs = if part.is_empty() {
                        message.value().unwrap()
                    } else {
                        message.get_attribute(part).unwrap().value()
                    };
                    let mut faults = Vec::new();
                    let theirs = bundle.format_pattern(theirs, Some(&args), &mut faults);
                    assert!(faults.is_empty(), "{name}: {faults:?}");
                    assert_eq!(fill(pattern, &words), theirs.replace('\n', " "), "{name}");
                    compared += 1;
                }
            }
        }
        assert!(compared > 500);
    }
}
