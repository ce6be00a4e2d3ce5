//! Files, kept fittings and the way back.

use std::rc::Rc;

use protocol::document::{self, Document};

use super::super::*;
use super::{TODAY, after, choose, found, text};
use crate::day;
use crate::fields::{Flag, Number, Wish, Word};
use crate::invented;
use crate::records::identity;

#[test]
fn a_file_comes_back_word_for_word() {
    let state = after([
        choose(Word::Instrument, "viola"),
        choose(Word::Size, "15 in"),
        Action::Type(Number::Wish(Wish::Feel), text("-1,5")),
        Action::Type(Number::Age, text("eight")),
        Action::Tick(Flag::AnimalFree, true),
        Action::Label(text("Desk 3 viola, 15 in")),
        Action::Date(day::written(TODAY + 30)),
    ]);
    let opened =
        after([Action::Opened { name: text("viola.json"), text: document::save(&state.document) }]);
    assert_eq!(opened.document, state.document);
    assert_eq!(
        opened.notice.as_ref().map(|n| (n.text.as_str(), n.grave)),
        Some(("viola.json is open.", false))
    );
    assert!(opened.error_of("age_months").is_some());
    assert_eq!(reduce(&opened, Action::Undo).document, Document::default());
}

#[test]
fn good_news_goes_along_once_and_bad_news_stays() {
    let good = after([Action::StartOver, Action::Moved]);
    assert!(good.notice.is_some());
    let gone = reduce(&good, Action::Moved);
    // The way back stays, for the first page offers it.
    assert!(gone.notice.is_none() && gone.undo.is_some());
    let bad = after([Action::Tell(Notice::grave(text("No room"))), Action::Moved, Action::Moved]);
    assert!(bad.notice.is_some());
}

#[test]
fn a_file_that_is_not_ours_changes_nothing() {
    let before = after([choose(Word::Room, "damp")]);
    for wrong in [
        "",
        "null",
        "[]",
        "{}",
        "{\"format\": \"other\"}",
        "half a fi",
        "{\"format\": \"ropewalk-fitting\", \"version\": 99}",
    ] {
        let after = reduce(&before, Action::Opened { name: text("x"), text: text(wrong) });
        assert_eq!(after.document, before.document);
        let notice = after.notice.unwrap();
        assert!(notice.grave && notice.text.contains("Nothing has changed"), "{}", notice.text);
    }
}

#[test]
fn a_file_that_can_be_read_in_part_says_so() {
    let part = "{\"format\": \"ropewalk-fitting\", \"version\": 1, \"answers\": {\"room\": \"damp\", \"budget\": 7, \"instrument\": \"lute\"}}";
    let state = after([Action::Opened { name: text("x"), text: text(part) }]);
    assert_eq!(state.document.answers.room.as_deref(), Some("damp"));
    let notice = state.notice.as_ref().unwrap();
    assert!(notice.grave && notice.text.to_lowercase().contains("budget"), "{notice:?}");
    // A word that is not one of the answers stays, and its question tells of it.
    assert_eq!(state.document.answers.instrument.as_deref(), Some("lute"));
    assert!(state.error_of("instrument").unwrap().contains("“lute” is not one of the answers"));
    assert!(read_kept(part).1.is_some());
}

#[test]
fn a_number_in_a_file_that_nobody_could_type_is_told_of_at_its_field() {
    let far = "{\"format\": \"ropewalk-fitting\", \"version\": 1, \"answers\": {\"a4_hz\": 500, \"weights\": {\"feel\": 40}}}";
    let state = after([Action::Opened { name: text("x"), text: text(far) }]);
    assert_eq!(state.document.answers.a4_hz, Some(500.0));
    assert!(!state.notice.as_ref().unwrap().grave);
    let fields: Vec<_> = state.errors().into_iter().map(|error| error.field).collect();
    assert_eq!(fields, ["a4_hz", "weights.feel"]);
    assert_eq!(read_kept(far), (state.document, None));
}

/// The identity of a kept set.
fn nth(state: &State, n: usize) -> u128 {
    identity(&state.document.fittings[n])
}

/// The identity of the kept set that was put by today.
fn put_by(state: &State) -> u128 {
    let today = day::written(TODAY);
    identity(state.document.fittings.iter().find(|fitting| fitting.at == today).unwrap())
}

#[test]
fn fittings_are_kept_once_and_all_of_them() {
    let mut state = after([Action::Ask(1), Action::Answered(1, found())]);
    let keep = |at: &str| Action::Keep {
        at: text(at),
        strings: Vec::new(),
        summary: vec![text("E5: steel")],
    };
    for at in ["2026-01-01", "2026-01-02"] {
        state = reduce(&state, keep(at));
    }
    assert_eq!(state.document.fittings.len(), 1);
    assert_eq!(state.document.fittings[0].at, "2026-01-02");
    for i in 0..30 {
        state = reduce(&state, Action::Label(format!("Desk {i}")));
        state = reduce(&state, keep(&format!("2026-02-{i:02}")));
    }
    assert_eq!(state.document.fittings.len(), 31);
    assert_eq!(state.document.fittings[0].label, "Desk 29");
    let removed = reduce(&state, Action::Remove(nth(&state, 3)));
    assert_eq!(removed.document.fittings[3].label, "Desk 25");
    assert_eq!(reduce(&removed, Action::Undo).document, state.document);
    let reopened = reduce(&state, Action::Reopen(nth(&state, 4)));
    assert_eq!(reopened.document.label, "Desk 25");
    assert_eq!(reopened.document.fittings, state.document.fittings);
    for nowhere in [Action::Remove(99), Action::Reopen(99)] {
        assert_eq!(reduce(&state, nowhere), state);
    }
}

#[test]
fn invented_fittings_come_and_go_and_touch_nothing_of_ones_own() {
    let invent = || Action::AddInvented { at: text("2026-01-02T03:04:05Z") };
    let own = after([
        Action::Ask(1),
        Action::Answered(1, found()),
        Action::Keep { at: text("2026-01-01"), strings: Vec::new(), summary: Vec::new() },
        choose(Word::Room, "dry"),
        Action::Type(Number::Age, text("ten")),
    ]);
    let with = reduce(&own, invent());
    assert_eq!(with.document.fittings.len(), 1 + invented::fittings("").len());
    assert_eq!(with.document.answers, own.document.answers);
    // Twice is once.
    assert_eq!(reduce(&with, invent()).document, with.document);
    assert_eq!(reduce(&with, Action::RemoveInvented).document, own.document);

    // One of them is opened: what was half typed is kept, and comes back word for word.
    let viola =
        with.document.fittings.iter().find(|f| f.invented.as_deref() == Some("desk-3-viola"));
    let opened = reduce(&with, Action::Reopen(identity(viola.unwrap())));
    assert_eq!(opened.name(), "Desk 3 viola, 15\u{a0}in (invented)");
    let gone = reduce(&opened, Action::RemoveInvented);
    assert!(!gone.is_begun(), "an example that was only looked at goes with the others");
    assert_eq!(gone.document.fittings.len(), 2);
    let back = reduce(&gone, Action::Reopen(put_by(&gone)));
    assert_eq!(back.text(Number::Age), "ten");
    assert_eq!(back.document.answers, own.document.answers);
    assert_eq!(reduce(&gone, Action::Undo).document, opened.document);

    // What a person made of an example is their own; what they kept as it was is still invented.
    let changed = reduce(&opened, choose(Word::Room, "travelling"));
    let stays = reduce(&changed, Action::RemoveInvented);
    assert_eq!(stays.document.answers, changed.document.answers);
    let found = Found { answers: Rc::new(opened.answers()), ..found() };
    let kept = [
        Action::Ask(2),
        Action::Answered(2, found),
        Action::Keep { at: text("2026-01-03"), strings: Vec::new(), summary: Vec::new() },
        Action::RemoveInvented,
    ];
    let kept = kept.into_iter().fold(opened, |state, action| reduce(&state, action));
    assert_eq!(kept.document.fittings, gone.document.fittings);
}

#[test]
fn opening_a_fitting_loses_nothing_that_was_being_answered() {
    let state = after([
        Action::Ask(1),
        Action::Answered(1, found()),
        Action::Keep { at: text("2026-01-01"), strings: Vec::new(), summary: Vec::new() },
    ]);
    // What is kept as it stands is not kept twice.
    let kept = Action::Reopen(nth(&state, 0));
    let same = reduce(&state, kept.clone());
    assert_eq!(same.document.fittings.len(), 1);
    let other = reduce(&reduce(&same, choose(Word::Room, "dry")), kept);
    assert_eq!(other.document.fittings.len(), 2);
    let back = reduce(&other, Action::Reopen(put_by(&other)));
    assert_eq!(back.document.answers.room.as_deref(), Some("dry"));
    assert_eq!(back.document.fittings.len(), 2);
}

#[test]
fn the_strings_of_a_kept_fitting_are_told_once_they_are_known() {
    let state = after([Action::AddInvented { at: text("2026-01-02") }]);
    let fitting = state.document.fittings[2].clone();
    let known = Action::StringsKnown { fitting: Box::new(fitting), strings: Vec::new() };
    let state = reduce(&state, known.clone());
    let strings: Vec<_> = state.document.fittings.iter().map(|f| f.strings.is_some()).collect();
    assert_eq!(strings, [false, false, true]);
    // A fitting that has gone meanwhile is nobody's.
    let gone = reduce(&state, Action::RemoveInvented);
    assert_eq!(reduce(&gone, known), gone);
}

#[test]
fn starting_afresh_leaves_what_was_kept_and_can_be_undone() {
    let state = after([
        Action::Ask(1),
        Action::Answered(1, found()),
        Action::Keep { at: text("2026-01-01"), strings: Vec::new(), summary: Vec::new() },
        choose(Word::Room, "dry"),
    ]);
    let fresh = reduce(&state, Action::StartOver);
    assert!(!fresh.is_begun() && state.is_begun());
    assert_eq!(fresh.document.fittings.len(), 1);
    assert_eq!(reduce(&fresh, Action::Undo).document, state.document);
}
