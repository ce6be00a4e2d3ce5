//! What is typed and chosen.

use std::rc::Rc;

use protocol::document::Document;
use protocol::reply::Fault;

use super::super::*;
use super::{TODAY, after, choose, found, reopened, text};
use crate::day;
use crate::fields::{Flag, Number, Wish, Word};
use crate::preferences;
use crate::words::questions::{self, EVERYTHING, Question};
use crate::words::said::said;

#[test]
fn half_a_number_stays_as_typed_and_is_told_of() {
    let state = after([Action::Type(Number::Length, text("32o,5"))]);
    assert_eq!(state.document.answers.sounding_length_m, None);
    assert_eq!(state.text(Number::Length), "32o,5");
    // While it is being typed, nothing is said.
    assert_eq!(state.error_of("sounding_length_m"), None);
    assert_eq!(state.errors().len(), 1);
    let left = reduce(&state, Action::Left(text("sounding_length_m")));
    let told = left.error_of("sounding_length_m").unwrap();
    assert!(told.starts_with("Sounding length: “32o,5” is not a number"), "{told}");
    let again = reopened(&state, TODAY);
    assert_eq!(again.text(Number::Length), "32o,5");
    assert_eq!(again.error_of("sounding_length_m"), Some(told));
    let mended = reduce(&again, Action::Type(Number::Length, text("320,5")));
    assert_eq!(mended.document.answers.sounding_length_m, Some(0.3205));
    assert!(mended.errors().is_empty());
}

#[test]
fn a_stale_number_never_stays_behind_a_text_that_cannot_be_read() {
    let state =
        after([Action::Type(Number::A4, text("415")), Action::Type(Number::A4, text("41x"))]);
    assert_eq!(state.document.answers.a4_hz, None);
    assert_eq!(
        after([Action::Type(Number::A4, text("415")), Action::Type(Number::A4, text(" "))])
            .document,
        Document::default()
    );
}

#[test]
fn a_unit_by_habit_stays_with_what_was_typed() {
    let in_mm = after([Action::Type(Number::Length, text("328"))]);
    preferences::take(preferences::Preferences::read("in"));
    let still_mm = in_mm.unit(Number::Length).label;
    let typed = after([Action::Type(Number::Length, text("12 7/8"))]);
    let emptied = reduce(&typed, Action::Type(Number::Length, text("")));
    preferences::take(preferences::Preferences::default());
    assert_eq!(still_mm, "mm");
    assert_eq!(typed.document.answers.sounding_length_m, Some(12.875 * 0.0254));
    assert_eq!(typed.unit(Number::Length).label, "in");
    assert_eq!(emptied.document, Document::default());
}

#[test]
fn a_unit_is_kept_with_its_number() {
    let state = after([
        Action::Unit(Number::Length, text("in")),
        Action::Type(Number::Length, text("12 7/8")),
    ]);
    assert_eq!(state.document.answers.sounding_length_m, Some(12.875 * 0.0254));
    let again = reopened(&state, TODAY);
    assert_eq!(
        (again.text(Number::Length), again.unit(Number::Length).label),
        (text("12 7/8"), "in")
    );
    assert_eq!(said(&again, Question::Number(Number::Length)), Some(text("12 7/8 in")));
}

#[test]
fn another_instrument_has_other_sizes_and_strings() {
    let state = after([
        choose(Word::Instrument, "violin"),
        choose(Word::Size, "1/2"),
        choose(Word::Tuning, "five-string"),
        Action::Note(4, text("B2")),
        Action::OfString(0, StringAction::Family(Some(text("plain-gut")))),
        Action::Type(Number::Length, text("320")),
        choose(Word::Instrument, "cello"),
    ]);
    let answers = &state.document.answers;
    assert_eq!((&answers.size, &answers.tuning, answers.strings.len()), (&None, &None, 0));
    // The length stays as typed; that it is no cello's is told.
    assert_eq!((state.text(Number::Length), answers.sounding_length_m), (text("320"), None));
    assert_eq!(state.errors().len(), 1);
    let back = reduce(&state, choose(Word::Instrument, "violin"));
    assert_eq!(back.document.answers.sounding_length_m, Some(0.32));
    // The same instrument once more changes nothing.
    let once = after([choose(Word::Instrument, "viola"), choose(Word::Size, "15 in")]);
    assert_eq!(reduce(&once, choose(Word::Instrument, "viola")), once);
}

#[test]
fn notes_are_read_as_people_write_them() {
    let state = after([
        Action::Note(1, text(" b♭3")),
        Action::Note(3, text("H3")),
        Action::OfString(2, StringAction::Family(Some(text("synthetic")))),
    ]);
    let notes: Vec<_> = state.document.answers.strings.iter().map(|s| s.note.as_deref()).collect();
    // What cannot be read is no answer, and no answer takes no place.
    assert_eq!(notes, [None, Some("Bb3"), None]);
    let errors = state.errors();
    assert_eq!(errors.len(), 1);
    assert!(
        errors[0].message.starts_with("Note of the G3 string: “H3” is not a note"),
        "{errors:?}"
    );
    let empty = [
        Action::Note(1, String::new()),
        Action::Note(3, String::new()),
        Action::OfString(2, StringAction::Family(None)),
    ];
    let state = empty.into_iter().fold(state, |state, action| reduce(&state, action));
    assert_eq!(state.document, Document::default());
}

#[test]
fn complaints_stand_in_the_order_of_the_list() {
    let state =
        after(["wolf", "too-bright", "wolf", "uneven"].map(|key| Action::Bother(text(key), true)));
    assert_eq!(state.document.answers.bothers, ["too-bright", "wolf", "uneven"]);
    let state = reduce(&state, Action::Bother(text("wolf"), false));
    assert_eq!(said(&state, Question::Bothers), Some(text("Too bright, Uneven strings")));
}

#[test]
fn days_are_counted_from_the_day_it_is() {
    let typed = after([Action::Type(Number::Days, text("10"))]);
    assert_eq!(typed.date_text(), day::written(TODAY + 10));
    let dated = after([Action::Date(day::written(TODAY + 10))]);
    for state in [typed, dated] {
        assert_eq!(state.answers().concert_days, Some(10.0));
        assert_eq!(state.text(Number::Days), "10");
        let later = reopened(&state, TODAY + 4);
        assert_eq!(later.answers().concert_days, Some(6.0));
        assert_eq!(later.text(Number::Days), "6");
        assert!(reopened(&state, TODAY + 10).answers().concert_days.is_some());
        // Once it is over, it is no question any more.
        let over = reopened(&state, TODAY + 11);
        assert_eq!((over.answers().concert_days, over.date_text()), (None, String::new()));
    }
}

#[test]
fn a_day_that_will_not_do_is_told_of() {
    let fault = |date: &str| {
        let state = after([Action::Date(text(date))]);
        assert_eq!(state.answers().concert_days, None);
        state.errors().first().map(|error| error.message.clone()).unwrap_or_default()
    };
    assert!(fault(&day::written(TODAY - 1)).contains("is past"));
    assert!(fault(&day::written(TODAY + 4000)).contains("is too far off"));
    assert!(fault("2030-02-30").contains("“2030-02-30” is not a date"));
    assert_eq!(fault(""), "");
    // A number of days in its place mends it.
    let state = after([Action::Date(text("nonsense")), Action::Type(Number::Days, text("3"))]);
    assert!(state.errors().is_empty());
}

#[test]
fn an_answer_that_comes_too_late_is_left_out() {
    let state = after([Action::Ask(1), Action::Ask(2), Action::Answered(1, found())]);
    assert_eq!((state.asking.clone(), state.found.clone()), (Asking::Busy(2), None));
    let stopped = reduce(&state, Action::Stop);
    let late = Action::Failed { ask: 2, message: text("stopped"), reload: false };
    assert_eq!(reduce(&stopped, late).asking, Asking::Stopped);
    let done = reduce(&state, Action::Answered(2, found()));
    assert!(done.is_found());
    // The last good answer stays while the next is worked out.
    let more = reduce(&reduce(&done, choose(Word::Room, "dry")), Action::Ask(3));
    assert!(more.found.is_some() && !more.is_found());
}

#[test]
fn what_the_model_refuses_finds_its_field() {
    let fault = |field: &str| Fault {
        field: text(field),
        value: text("7"),
        allowed: text("less"),
        range: None,
        message: String::new(),
    };
    let refused = ["answers.strings[2].note", "answers.bothers[0]", "answers.room", "answers.odd"];
    let state = after([Action::Ask(1), Action::Refused(1, refused.map(fault).to_vec())]);
    assert_eq!(state.asking, Asking::Idle);
    for field in ["strings.2.note", "bothers", "room", "odd"] {
        assert!(state.error_of(field).is_some(), "{field}");
    }
    assert_eq!(
        state.error_of("room").unwrap(),
        "Where it is kept: 7 is not allowed. It takes less."
    );
    let mended = reduce(&state, choose(Word::Room, "dry"));
    assert_eq!(mended.error_of("room"), None);
    assert_eq!(mended.errors().len(), 3);
}

#[test]
fn a_fault_leads_to_the_screen_that_asks() {
    assert_eq!(screen_of("instrument"), Some(1));
    assert_eq!(screen_of("wishes.feel"), Some(3));
    assert_eq!(screen_of("concert_days"), Some(7));
    assert_eq!(screen_of("nickel_allergy"), Some(8));
    assert_eq!(screen_of("hand_pain"), None);
    assert_eq!(screen_of("a4_hz"), None);
}

#[test]
fn everything_that_was_answered_can_be_said() {
    let mut state = after([]);
    for question in EVERYTHING.iter().flat_map(|part| part.questions) {
        assert_eq!(said(&state, *question), None, "{question:?}");
        let taken = questions::usual(*question, &state.document.answers);
        assert!(taken.is_some_and(|taken| !taken.is_empty()), "{question:?}");
    }
    for word in Word::ALL {
        let key = questions::choices(word, &state.document.answers)[0].key;
        state = reduce(&state, choose(word, key));
    }
    for flag in Flag::ALL {
        state = reduce(&state, Action::Tick(flag, true));
    }
    for action in [
        Action::Type(Number::Length, text("328,5")),
        Action::Type(Number::A4, text("442")),
        Action::Type(Number::Age, text("8")),
        Action::Type(Number::Days, text("1")),
        Action::Type(Number::Wish(Wish::Power), text("1")),
        Action::Type(Number::Weight(0), text("3")),
        Action::Bother(text("wolf"), true),
        Action::Note(0, text("D5")),
        Action::Type(Number::AlsoSemitones, text("2")),
        Action::Type(Number::AgeOf(1), text("9")),
        Action::Type(Number::MostLoad, text("220")),
        Action::Type(Number::MostTension(1), text("60")),
        Action::OfString(1, StringAction::TodayFamily(Some(text("synthetic")))),
        Action::OfString(1, StringAction::TodayGauge(Some(text("light")))),
        Action::OfString(1, StringAction::TodayMetal(Some(text("silver")))),
        Action::OfString(1, StringAction::Keep(true)),
        Action::OfString(2, StringAction::Bother(text("thin"), true)),
    ] {
        state = reduce(&state, action);
    }
    for question in EVERYTHING.iter().flat_map(|part| part.questions) {
        assert!(said(&state, *question).is_some_and(|said| !said.is_empty()), "{question:?}");
    }
    assert_eq!(
        said(&state, Question::Concert),
        Some(format!("In 1 day, {}", day::spoken(TODAY + 1)))
    );
    assert_eq!(said(&state, Question::Wishes), Some(text("More powerful (1)")));
    assert_eq!(said(&state, Question::AlsoTuned), Some(text("2 semitones")));
    let each = said(&state, Question::Strings).unwrap();
    for part in
        ["tuned to D5", "now light synthetic under silver 9 months old", "it stays", "at most 60 N"]
    {
        assert!(each.contains(part), "{part}: {each}");
    }
    assert_eq!(said(&state, Question::Bothers), Some(text("Thin (D4), Wolf note")));
    assert!(state.errors().is_empty());
}

#[test]
fn a_complaint_goes_to_the_string_it_is_about_and_back() {
    let only_on = |i, yes| Action::BotherOnlyOn(i, text("whistles"), yes);
    let bothers = |state: &State| {
        let answers = &state.document.answers;
        let each = answers.strings.iter().map(|string| string.bothers.len()).collect::<Vec<_>>();
        (answers.bothers.clone(), each)
    };
    let all = after([Action::Bother(text("whistles"), true)]);
    let one = reduce(&all, only_on(1, true));
    assert_eq!(bothers(&one), (vec![], vec![0, 1]));
    let two = reduce(&one, only_on(0, true));
    assert_eq!(bothers(&two), (vec![], vec![1, 1]));
    // Of all strings again, once none is left by itself.
    let none = reduce(&reduce(&two, only_on(0, false)), only_on(1, false));
    assert_eq!(none.document, all.document);
    // Another tuning has other strings, but what bothers still does.
    let other = reduce(&two, choose(Word::Tuning, "cross-a"));
    assert_eq!(bothers(&other), (vec![text("whistles")], vec![]));
    let gone = reduce(&two, Action::Bother(text("whistles"), false));
    assert_eq!(gone.document, Document::default());
}

#[test]
fn what_is_asked_of_few_waits_for_them() {
    let waits =
        |state: &State, word| questions::waits(Question::Word(word), &state.document.answers);
    let violin = after([choose(Word::Instrument, "violin")]);
    assert!([Word::Played, Word::Ring, Word::TunedSo].iter().all(|word| waits(&violin, *word)));
    let jazz = reduce(&violin, choose(Word::Music, "jazz"));
    let bass = after([choose(Word::Instrument, "double-bass")]);
    for state in [jazz, bass] {
        assert!(!waits(&state, Word::Played) && !waits(&state, Word::Ring));
    }
    // An answer stays in sight.
    let played = reduce(&violin, choose(Word::Played, "both"));
    assert!(!waits(&played, Word::Played));
    let retuned = reduce(&violin, Action::Note(2, text("E4")));
    assert!(!waits(&retuned, Word::TunedSo));
    let cross = reduce(&violin, choose(Word::Tuning, "cross-a"));
    assert!(!waits(&cross, Word::TunedSo));
    let same = reduce(&violin, Action::Note(2, text("D4")));
    assert!(waits(&same, Word::TunedSo));
}

#[test]
fn days_stay_as_typed_until_the_day_is_over() {
    let state = after([Action::Type(Number::Days, text("10 d"))]);
    assert_eq!(
        (state.text(Number::Days), state.date_text()),
        (text("10 d"), day::written(TODAY + 10))
    );
    // The same day, told again with every question, changes nothing.
    assert_eq!(reduce(&state, Action::Today(TODAY)), state);
    assert_eq!(reduce(&state, Action::Today(TODAY + 1)).text(Number::Days), "9");
    assert_eq!(reopened(&state, TODAY).text(Number::Days), "10");
    // What cannot be read stays as it is, on every day.
    let soon = after([Action::Type(Number::Days, text("soon"))]);
    for state in [reduce(&soon, Action::Today(TODAY + 1)), reopened(&soon, TODAY + 9)] {
        assert_eq!((state.text(Number::Days), state.answers().concert_days), (text("soon"), None));
        assert_eq!(state.errors().len(), 1);
    }
}

#[test]
fn after_midnight_the_set_is_asked_for_once() {
    let state = after([Action::Type(Number::Days, text("10"))]);
    // The page asks from the new day, before the state knows of it.
    let answers = Rc::new(state.answers_on(TODAY + 1));
    assert_eq!(answers.concert_days, Some(9.0));
    let found = Found { answers, ..found() };
    let actions = [Action::Today(TODAY + 1), Action::Ask(1), Action::Answered(1, found)];
    let state = actions.into_iter().fold(state, |state, action| reduce(&state, action));
    assert!(state.is_found() && !state.wants_set());
}

#[test]
fn a_count_of_days_changes_nothing_that_is_kept() {
    let state = after([Action::Type(Number::Days, text("10"))]);
    let later = reduce(&state, Action::Today(TODAY + 3));
    assert_eq!(later.document, state.document);
    assert_eq!(later.answers().concert_days, Some(7.0));
}
