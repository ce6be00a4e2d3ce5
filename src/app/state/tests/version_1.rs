//! Documents of version 1, as the last build that wrote them saved them on day 20,000: everything that was typed stands
//! where it stood.

use super::super::*;
use super::TODAY;
use crate::fields::{Flag, Number, Wish};
use crate::records::{Undo, identity};
use protocol::document;

fn opened(text: &str) -> State {
    let (document, lost) = read_kept(text);
    assert_eq!(lost, None);
    let state = State::of(document, TODAY);
    // Saved by this build and opened again, it is the same.
    let saved = document::save(&state.document);
    assert!(saved.contains("\"version\": 2") && !saved.contains("drafts"), "{saved}");
    let (again, lost) = read_kept(&saved);
    assert_eq!((&State::of(again, TODAY).document, lost), (&state.document, None));
    state
}

#[test]
fn what_was_typed_stands_as_it_was_typed() {
    let state = opened(include_str!("version_1/typed.json"));
    let field = |number| (state.text(number), state.unit(number).label);
    for (number, text, unit) in [
        (Number::Length, "14 3/8", "in"),
        (Number::A4, "44x", "Hz"),
        (Number::Age, "1,5", "years"),
        (Number::AgeOf(2), "", "years"),
        (Number::Wish(Wish::Feel), "-1,5", ""),
        (Number::Weight(0), "3.0", ""),
        (Number::AlsoA4, "430", "Hz"),
        (Number::Days, "10", "days"),
    ] {
        assert_eq!(field(number), (text.to_owned(), unit), "{number:?}");
    }
    let notes: Vec<_> = (0..4).map(|i| state.note_text(i)).collect();
    assert_eq!(notes, ["", "d4", "", "H3"]);
    assert_eq!((state.date_text(), state.name()), ("2024-10-14".to_owned(), "Desk 3".to_owned()));
    let answers = state.answers();
    assert_eq!(
        (answers.sounding_length_m, answers.a4_hz, answers.age_months, answers.concert_days),
        (Some(14.375 * 0.0254), None, Some(18.0), Some(10.0))
    );
    assert_eq!(
        (answers.instrument.as_deref(), answers.size.as_deref()),
        (Some("viola"), Some("15 in"))
    );
    assert!(Flag::AnimalFree.of(&answers) && answers.bothers == ["wolf"]);
    let errors: Vec<_> = state.errors().into_iter().map(|error| error.field).collect();
    assert_eq!(errors, ["a4_hz", "strings.3.note"]);
}

#[test]
fn a_performance_is_there_as_it_was_typed() {
    let soon = opened(include_str!("version_1/soon.json"));
    assert_eq!((soon.text(Number::Days), soon.date_text()), ("soon".to_owned(), String::new()));
    let far = opened(include_str!("version_1/far.json"));
    assert_eq!((far.text(Number::Days), far.date_text()), (String::new(), "2100-01-01".to_owned()));
    for state in [soon, far] {
        assert_eq!((state.answers().concert_days, state.errors().len()), (None, 1));
    }
}

#[test]
fn kept_sets_and_what_was_put_by_are_there() {
    let state = opened(include_str!("version_1/kept.json"));
    // An example was opened, which has a count of days and no date: it is counted from today.
    assert_eq!(
        (state.answers().concert_days, state.date_text()),
        (Some(21.0), "2024-10-25".to_owned())
    );
    assert_eq!(state.document.fittings.len(), 5);
    let kept: Vec<_> = state.document.fittings.iter().map(|f| f.answers.concert_days).collect();
    assert_eq!(kept, [Some(30.0), None, Some(21.0), None, Some(30.0)]);
    let put_by = reduce(&state, Action::Reopen(identity(&state.document.fittings[0])));
    assert_put_by(&put_by);
    // The example is a kept set as it stands, so it is not kept twice.
    assert_eq!(put_by.document.fittings.len(), 5);
}

#[test]
fn records_of_the_store_are_read_as_they_are() {
    let set = document::read_fitting(include_str!("version_1/set.json")).unwrap();
    let whole = opened(include_str!("version_1/kept.json"));
    assert_eq!(set, whole.document.fittings[0]);
    // The undo brings back what was put by when the example was opened.
    let undo = Undo::read(include_str!("version_1/undo.json")).unwrap();
    let state = State { undo: Some(Box::new(undo)), ..whole };
    let undone = reduce(&state, Action::Undo);
    assert_put_by(&undone);
    assert_eq!(undone.document.fittings.len(), 4);
}

fn assert_put_by(state: &State) {
    assert_eq!(state.text(Number::Age), "a year");
    assert_eq!(
        (state.note_text(0), state.answers().room.as_deref()),
        ("e5".to_owned(), Some("dry"))
    );
    assert_eq!(
        (state.answers().concert_days, state.date_text()),
        (Some(30.0), "2024-11-03".to_owned())
    );
}
