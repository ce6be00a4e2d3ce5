//! Saved files: whatever is in them, a document comes of it, nothing is left out without a word, and it never grows
//! beyond what the page can show.

use std::time::{Duration, Instant};

use protocol::document::{self, Document, Note};
use serde_json::{Value, json};
use support::Seeded;

use crate::mutate::mutated;
use crate::{corpus, inputs};

/// Reads a file and holds the reading to its promises.
fn opened(text: &str) -> (Document, Vec<Note>) {
    let start = Instant::now();
    let (document, notes) = document::restore(text);
    assert!(start.elapsed() < Duration::from_secs(20), "{:?}", start.elapsed());
    assert!(notes.len() <= 20, "{}", notes.len());
    if notes.is_empty() {
        let whole = document::read(text);
        assert_eq!(whole.as_ref(), Ok(&document), "mended without a word: {text}");
    }
    // What was taken can be saved and opened again, with nothing more to mend.
    let (again, more) = document::restore(&document::save(&document));
    assert_eq!((&again, more.as_slice()), (&document, &[][..]), "{text}");
    (document, notes)
}

#[test]
fn whatever_a_file_holds_comes_of_it_or_is_named() {
    let (files, count) = (corpus("files"), inputs() / 4);
    for (name, text) in &files {
        assert_eq!(opened(text).1, [], "{name}");
    }
    let mut mended = 0;
    for seed in 0..count {
        let mut seeded = Seeded::new(seed);
        let text = &seeded.one_of(&files).1;
        let text = mutated(&mut seeded, text, &files);
        // A file that is no text is refused before it is read.
        if let Ok(text) = core::str::from_utf8(&text) {
            let (document, notes) = opened(text);
            mended += u64::from(!notes.is_empty() && document != Document::default());
        }
    }
    assert!(mended * 20 > count, "of {count} files only {mended} were mended");
}

#[test]
fn a_file_with_far_too_much_is_cut_and_says_where() {
    let strings = |count: usize| vec![json!({ "bothers": ["thin"] }); count];
    let file = |more: Value| {
        let mut file = json!({ "format": "ropewalk-fitting", "version": 1 });
        file.as_object_mut().unwrap().extend(more.as_object().unwrap().clone());
        opened(&file.to_string())
    };
    let (document, notes) =
        file(json!({ "answers": { "strings": strings(100_000), "music": "folk" } }));
    assert_eq!(
        (document.answers.strings.len(), document.answers.music.as_deref()),
        (8, Some("folk"))
    );
    let field = "answers.strings".to_owned();
    assert_eq!(notes, [Note::TooMany { field, count: 100_000, most: 8 }]);

    let (document, notes) = file(json!({ "label": "ä".repeat(10_001) }));
    assert_eq!(document.label, "ä".repeat(10_000));
    assert_eq!(notes, [Note::TooLong("label".to_owned(), 10_000)]);

    let (document, notes) = file(json!({ "fittings": vec![json!({}); 30_000] }));
    assert_eq!((document.fittings.len(), notes.len()), (0, 20));
    assert_eq!(notes[19], Note::More(9982));

    let drafts: serde_json::Map<_, _> = (0..300).map(|i| (format!("{i:03}"), json!("x"))).collect();
    let (document, notes) = file(json!({ "drafts": drafts }));
    assert_eq!((document.typed.len(), notes.len()), (200, 1));

    let deep = format!("{{\"answers\":{}1{}}}", "[".repeat(4000), "]".repeat(4000));
    assert!(matches!(opened(&deep).1[..], [Note::NotJson(_)]));
}

#[test]
fn what_a_file_gives_twice_or_in_the_wrong_kind_is_named() {
    let file = |members: &str| {
        opened(&format!("{{\"format\":\"ropewalk-fitting\",\"version\":1,{members}}}")).1
    };
    let unread =
        |field: &str, held: &str| Note::Answer { field: field.to_owned(), held: held.to_owned() };
    assert_eq!(file("\"label\":\"a\",\"label\":\"b\""), [Note::Repeated("label".to_owned())]);
    assert_eq!(file("\"label\":5"), [unread("label", "5")]);
    assert_eq!(file("\"answers\":[]"), [unread("answers", "[]")]);
    assert_eq!(file("\"answers\":null"), [unread("answers", "null")]);
    assert_eq!(file("\"drafts\":[]"), [unread("drafts", "[]")]);
    assert_eq!(file("\"fittings\":{}"), [unread("fittings", "{}")]);
    assert_eq!(file("\"answers\":{\"strings\":[[]]}"), [unread("answers.strings", "[[]]")]);
}
