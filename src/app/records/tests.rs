//! What is kept stays kept: whichever call of the store fails, and however many tabs write.

use std::future::Future;
use std::pin::pin;
use std::rc::Rc;
use std::task::{Context, Poll, Waker};

use protocol::document::{self, Document, Fitting};
use protocol::reply::Reply;
use protocol::request::{Answers, FitRequest, Request};

use super::memory::{Failure, Memory};
use super::*;
use crate::fields::Word;
use crate::state::{Action, Found, State, reduce};

const TODAY: i64 = 20_000;

/// Runs a future that waits for nobody.
fn now<T>(future: impl Future<Output = T>) -> T {
    match pin!(future).poll(&mut Context::from_waker(Waker::noop())) {
        Poll::Ready(value) => value,
        Poll::Pending => panic!("a store in memory keeps nobody waiting"),
    }
}

/// A tab of the page, with the store that it shares and the texts of earlier builds.
struct Tab<'a> {
    store: &'a Memory,
    state: State,
    session: Option<String>,
}

impl<'a> Tab<'a> {
    /// Opens a tab of this name; one that was open before comes back with its session.
    fn open(
        store: &'a Memory,
        name: &str,
        session: Option<String>,
        old: &mut Vec<OldText>,
    ) -> Self {
        let mut state = State::of(Document::default(), TODAY);
        state.shared = Shared::of(name.to_owned());
        let mut tab = Self { store, state, session };
        let loaded = now(load(store, old));
        old.retain(|old| !loaded.done.contains(&old.name));
        tab.read(loaded);
        tab.settle();
        tab
    }

    fn fresh(store: &'a Memory, name: &str) -> Self {
        Self::open(store, name, None, &mut Vec::new())
    }

    /// The same tab, loaded anew.
    fn reload(&self, name: &str) -> Self {
        Self::open(self.store, name, Some(self.state.shared.own.clone()), &mut Vec::new())
    }

    fn read(&mut self, loaded: Loaded) {
        let first = self.state.shared.own.is_empty();
        let Loaded { records, unsaved, fault, .. } = loaded;
        if first || fault.is_none() || !records.is_empty() {
            self.apply(Action::Read { records, session: self.session.clone() });
        }
        if let Some(old) = unsaved.filter(|_| first) {
            self.apply(Action::Unsaved(Box::new(old)));
        }
    }

    fn apply(&mut self, action: Action) {
        self.state = reduce(&self.state, action);
    }

    /// Hears that another tab has written.
    fn hear(&mut self) {
        let loaded = now(load(self.store, &[]));
        self.read(loaded);
        self.settle();
    }

    /// Does something, and writes it.
    fn does(&mut self, action: Action) {
        self.apply(action);
        self.settle();
    }

    /// Writes until nothing is left, or the store refuses.
    fn settle(&mut self) {
        for _ in 0..8 {
            let Some(pending) = self.state.pending() else { return };
            match now(self.store.commit(&pending.changes)) {
                Ok(()) => self.apply(Action::Written(pending)),
                Err(StoreError::Changed) => {
                    let loaded = now(load(self.store, &[]));
                    self.read(loaded);
                }
                Err(fault) => {
                    self.apply(Action::NotWritten(fault));
                    let loaded = now(load(self.store, &[]));
                    return self.read(loaded);
                }
            }
        }
        panic!("it never comes to rest: {:#?}", self.state.pending());
    }

    fn keep(&mut self, label: &str) {
        self.does(Action::Label(label.to_owned()));
        let answers = Rc::new(self.state.document.answers.clone());
        self.apply(Action::Ask(1));
        self.apply(Action::Answered(1, Found { answers, ..found() }));
        let at = format!("2026-01-01T{label}");
        self.does(Action::Keep { at, strings: Vec::new(), summary: Vec::new() });
    }

    fn labels(&self) -> Vec<&str> {
        self.state.document.fittings.iter().map(|set| set.label.as_str()).collect()
    }

    fn room(&self) -> Option<&str> {
        self.state.document.answers.room.as_deref()
    }

    fn is_told(&self, part: &str) -> bool {
        self.state.notice.as_ref().is_some_and(|notice| notice.text.contains(part))
    }
}

fn found() -> Found {
    thread_local! {
        static FOUND: Found = {
            let answers = Answers::default();
            let request = Request::Fit(Box::new(FitRequest { answers: answers.clone() }));
            let Reply::Fit(fit) = protocol::handle(&request) else { panic!("a set should come") };
            Found { answers: Rc::new(answers), fit: Rc::new(*fit) }
        };
    }
    FOUND.with(Clone::clone)
}

fn room(key: &str) -> Action {
    Action::Choose(Word::Room, Some(key.to_owned()))
}

fn set(label: &str) -> Fitting {
    Fitting { at: format!("2025-{label}"), label: label.to_owned(), ..Fitting::default() }
}

/// A document as an earlier build kept it.
fn old(room: &str, sets: &[&str]) -> OldText {
    let mut document =
        Document { fittings: sets.iter().map(|label| set(label)).collect(), ..Document::default() };
    document.answers.room = (!room.is_empty()).then(|| room.to_owned());
    OldText { name: "fitting".to_owned(), text: document::save(&document) }
}

fn opened(sets: &[String]) -> Action {
    let fittings = sets.iter().map(|label| set(label)).collect();
    let mut document = Document { fittings, ..Document::default() };
    document.answers.room = Some("damp".to_owned());
    Action::Opened { name: "file.json".to_owned(), text: document::save(&document) }
}

#[test]
fn what_is_typed_and_kept_is_there_again() {
    let store = Memory::default();
    let mut tab = Tab::fresh(&store, "a");
    tab.does(room("dry"));
    tab.keep("one");
    assert!(tab.is_told("Kept"));
    let again = tab.reload("b");
    assert_eq!((again.room(), again.labels()), (Some("dry"), vec!["one"]));
    let other = Tab::fresh(&store, "c");
    assert_eq!((other.room(), other.labels()), (Some("dry"), vec!["one"]));
}

#[test]
fn kept_is_told_when_it_is_on_the_disk_and_not_before() {
    let store = Memory::default();
    let mut tab = Tab::fresh(&store, "a");
    store.failing.set(Some((store.calls.get() + 2, Failure::Undone)));
    tab.keep("one");
    assert!(!tab.is_told("Kept") && tab.is_told("Not kept"), "{:?}", tab.state.notice);
    // The next change takes it along.
    tab.does(room("dry"));
    assert!(tab.is_told("Kept"));
    assert_eq!(tab.reload("b").labels(), ["one"]);
}

#[test]
fn no_set_is_ever_dropped_for_want_of_room() {
    let store = Memory::default();
    let mut tab = Tab::fresh(&store, "a");
    for i in 10..60 {
        tab.keep(&i.to_string());
    }
    assert_eq!(tab.labels().len(), 50);
    assert_eq!(tab.reload("b").labels().len(), 50);
}

#[test]
fn opening_a_file_adds_its_sets_and_keeps_what_was_in_hand() {
    let store = Memory::default();
    let mut tab = Tab::fresh(&store, "a");
    for i in 10..30 {
        tab.keep(&i.to_string());
    }
    tab.does(Action::Label(String::new()));
    tab.does(room("dry"));
    let file: Vec<String> = (30..50).map(|i| i.to_string()).collect();
    tab.does(opened(&file));
    // 20 of one's own, 20 of the file, and the answers that were in hand.
    assert_eq!((tab.labels().len(), tab.room()), (41, Some("damp")));
    assert!(tab.is_told("added: 20"));
    // The same file once more adds nothing.
    tab.does(opened(&file));
    assert_eq!(tab.labels().len(), 41);
    let put_by = tab.state.document.fittings.iter().find(|set| set.label.is_empty());
    assert_eq!(put_by.and_then(|set| set.answers.room.as_deref()), Some("dry"));
}

#[test]
fn undo_outlives_the_page_and_can_be_undone() {
    let store = Memory::default();
    let mut tab = Tab::fresh(&store, "a");
    tab.does(room("dry"));
    tab.keep("one");
    let file = ["x".to_owned()];
    tab.does(opened(&file));
    let mut tab = tab.reload("b");
    // What other tabs do meanwhile stays done.
    let mut other = Tab::fresh(&store, "c");
    other.keep("two");
    tab.hear();
    tab.does(Action::Undo);
    assert_eq!((tab.room(), tab.labels()), (Some("dry"), vec!["two", "one"]));
    let mut tab = tab.reload("d");
    tab.does(Action::Undo);
    assert_eq!((tab.room(), tab.labels()), (Some("damp"), vec!["two", "one", "x"]));
}

#[test]
fn a_removed_set_comes_back_after_the_page_was_loaded_anew() {
    let store = Memory::default();
    let mut tab = Tab::fresh(&store, "a");
    tab.keep("one");
    let identity = identity(&tab.state.document.fittings[0]);
    tab.does(Action::Remove(identity));
    let mut tab = tab.reload("b");
    assert!(tab.labels().is_empty());
    tab.does(Action::Undo);
    assert_eq!(tab.reload("c").labels(), ["one"]);
}

#[test]
fn tabs_that_keep_and_type_lose_nothing() {
    let store = Memory::default();
    let mut tabs: Vec<Tab> = ["a", "b", "c"].map(|name| Tab::fresh(&store, name)).into();
    // Nobody hears of the others before everybody has written.
    for (tab, key) in tabs.iter_mut().zip(["dry", "damp", "seasonal"]) {
        tab.does(room(key));
        tab.keep(key);
    }
    for tab in &mut tabs {
        tab.hear();
    }
    for (tab, key) in tabs.iter().zip(["dry", "damp", "seasonal"]) {
        assert_eq!((tab.room(), tab.labels().len()), (Some(key), 3));
        let again = tab.reload("again");
        assert_eq!((again.room(), again.labels().len()), (Some(key), 3));
        assert_eq!(again.state.shared.others.len(), 2);
    }
}

#[test]
fn a_tab_that_shares_the_answers_follows_until_it_types() {
    let store = Memory::default();
    let mut first = Tab::fresh(&store, "a");
    first.does(room("dry"));
    let mut second = Tab::fresh(&store, "b");
    assert_eq!(second.room(), Some("dry"));
    first.does(room("damp"));
    second.hear();
    assert!(second.is_told("Another tab"));
    assert_eq!(second.room(), Some("damp"));
    // Both type at once: each keeps its own, and finds the other's.
    first.apply(room("seasonal"));
    second.does(room("steady"));
    first.settle();
    second.hear();
    assert_eq!((first.room(), second.room()), (Some("seasonal"), Some("steady")));
    assert_eq!(
        (first.reload("c").room(), second.reload("d").room()),
        (first.room(), second.room())
    );
}

#[test]
fn answers_of_a_closed_tab_can_be_taken_over() {
    let store = Memory::default();
    let (mut first, mut second) = (Tab::fresh(&store, "a"), Tab::fresh(&store, "b"));
    first.does(room("dry"));
    second.does(room("damp"));
    second.hear();
    let id = second.state.shared.others[0].id.clone();
    second.does(Action::TakeOver(id));
    assert_eq!(second.room(), Some("dry"));
    assert!(second.state.shared.others.is_empty());
    // What was in hand is put by, and the other tab has lost nothing.
    assert_eq!(second.state.document.fittings[0].answers.room.as_deref(), Some("damp"));
    first.hear();
    assert_eq!(first.room(), Some("dry"));
    assert_eq!(second.reload("c").room(), Some("dry"));
}

#[test]
fn starting_afresh_in_one_tab_empties_no_other() {
    let store = Memory::default();
    let mut first = Tab::fresh(&store, "a");
    first.does(room("dry"));
    let mut second = Tab::fresh(&store, "b");
    second.does(Action::StartOver);
    first.hear();
    second.hear();
    assert_eq!((first.room(), second.room()), (Some("dry"), None));
    assert_eq!(first.reload("c").room(), Some("dry"));
    assert_eq!(second.reload("d").room(), None);
}

#[test]
fn nothing_is_written_over_what_cannot_be_read() {
    for format in [RecordFormat::Newer, RecordFormat::Damaged, RecordFormat::Known] {
        let store = Memory::default();
        let mut tab = Tab::fresh(&store, "a");
        tab.does(room("dry"));
        let own = tab.state.shared.own.clone();
        store.plant(Kind::Answers, &own, "half a fitt", format);
        // An idle tab, and one that types.
        tab.hear();
        tab.does(room("damp"));
        assert_eq!(store.text(Kind::Answers, &own).as_deref(), Some("half a fitt"));
        assert_eq!(tab.reload("b").room(), Some("damp"));
        // Whoever starts with it shows it as unreadable and writes elsewhere.
        let mut again = Tab::open(&store, "c", Some(own.clone()), &mut Vec::new());
        again.does(room("seasonal"));
        assert_eq!(store.text(Kind::Answers, &own).as_deref(), Some("half a fitt"));
        let unreadable: Vec<_> = again.state.shared.unreadable.iter().map(|r| &r.text).collect();
        assert_eq!(unreadable, ["half a fitt"]);
    }
}

#[test]
fn an_unreadable_set_stays_where_it_is() {
    let store = Memory::default();
    store.plant(Kind::Set, "x", "{\"at\": 7}", RecordFormat::Known);
    store.plant(Kind::Set, "y", "{\"later\": true}", RecordFormat::Newer);
    let mut tab = Tab::fresh(&store, "a");
    tab.keep("one");
    assert_eq!((tab.labels(), tab.state.shared.unreadable.len()), (vec!["one"], 2));
    assert_eq!(store.text(Kind::Set, "x").as_deref(), Some("{\"at\": 7}"));
    assert_eq!(store.text(Kind::Set, "y").as_deref(), Some("{\"later\": true}"));
}

#[test]
fn what_can_be_read_of_damaged_answers_is_shown_and_the_rest_stays() {
    let store = Memory::default();
    let part = "{\"format\": \"ropewalk-fitting\", \"version\": 1, \"answers\": {\"room\": \"damp\", \"budget\": 7}}";
    store.plant(Kind::Answers, "x", part, RecordFormat::Known);
    let tab = Tab::fresh(&store, "a");
    assert_eq!(tab.room(), Some("damp"));
    assert_eq!(store.text(Kind::Answers, "x").as_deref(), Some(part));
    assert_eq!(tab.state.shared.unreadable.len(), 1);
}

#[test]
fn what_was_typed_before_the_store_was_open_stays() {
    let store = Memory::default();
    Tab::fresh(&store, "a").does(room("dry"));
    let mut state = State::of(Document::default(), TODAY);
    state.shared = Shared::of("b".to_owned());
    let mut tab = Tab { store: &store, state, session: None };
    tab.apply(room("damp"));
    tab.settle();
    tab.hear();
    assert_eq!(tab.room(), Some("damp"));
    assert_eq!(tab.state.shared.others.len(), 1);
    assert_eq!(tab.reload("c").room(), Some("damp"));
}

#[test]
fn old_texts_are_taken_over_once_and_then_let_go() {
    let store = Memory::default();
    let aside = OldText { name: "fitting/aside-1".to_owned(), text: "half a fitt".to_owned() };
    let mut texts = vec![old("dry", &["one", "two"]), aside];
    let tab = Tab::open(&store, "a", None, &mut texts);
    assert_eq!((tab.room(), tab.labels()), (Some("dry"), vec!["two", "one"]));
    assert_eq!(tab.state.shared.unreadable[0].text, "half a fitt");
    // They stay where they are until a later start has found them in the store.
    assert_eq!(texts.len(), 2);
    let mut tab = Tab::open(&store, "b", Some(tab.state.shared.own.clone()), &mut texts);
    assert!(texts.is_empty());
    let identity = identity(&tab.state.document.fittings[0]);
    tab.does(Action::Remove(identity));
    assert_eq!(tab.reload("c").labels(), ["one"]);
    assert!(store.text(Kind::TakenOver, "fitting").is_none());
}

#[test]
fn texts_that_cannot_be_removed_add_nothing_at_each_start() {
    let store = Memory::default();
    let aside = OldText { name: "fitting/aside-1".to_owned(), text: "half a fitt".to_owned() };
    let texts = vec![old("dry", &["one"]), aside];
    // The browser refuses to remove them: they are there at every start.
    for name in ["a", "b", "c", "d"] {
        Tab::open(&store, name, None, &mut texts.clone()).does(room("damp"));
    }
    let count = |kind| store.records.borrow().keys().filter(|(of, _)| *of == kind).count();
    assert_eq!((count(Kind::Set), count(Kind::Aside), count(Kind::Answers)), (1, 1, 1));
}

#[test]
fn an_older_build_in_another_tab_is_heard_and_overrules_nobody() {
    let store = Memory::default();
    let mut texts = vec![old("dry", &["one", "two"])];
    let mut tab = Tab::open(&store, "a", None, &mut texts);
    let gone = tab.state.document.fittings.iter().find(|set| set.label == "one").map(identity);
    tab.does(Action::Remove(gone.unwrap()));
    tab.does(room("damp"));
    // The older build knows nothing of that, and keeps another set.
    let written = vec![old("steady", &["one", "two", "three"])];
    let loaded = now(load(&store, &written));
    tab.read(loaded);
    tab.settle();
    assert_eq!((tab.room(), tab.labels()), (Some("damp"), vec!["two", "three"]));
    assert!(
        tab.state
            .shared
            .others
            .iter()
            .any(|b| b.document.answers.room.as_deref() == Some("steady"))
    );
}

#[test]
fn old_answers_that_cannot_be_read_in_full_are_set_aside_word_for_word() {
    let store = Memory::default();
    for text in ["half a fitt", "{\"format\": \"ropewalk-fitting\", \"version\": 99}"] {
        let mut texts = vec![OldText { name: "fitting".to_owned(), text: text.to_owned() }];
        let tab = Tab::open(&store, "a", None, &mut texts);
        assert!(tab.state.shared.unreadable.iter().any(|record| record.text == text));
    }
}

/// What a person does, one thing after the other, and what must be there afterwards.
fn workflow<'a>(store: &'a Memory, texts: &mut Vec<OldText>) -> (Vec<String>, Tab<'a>) {
    let mut acknowledged = Vec::new();
    let mut tab = Tab::open(store, "a", None, texts);
    let mut other = Tab::fresh(store, "b");
    tab.does(room("damp"));
    for (tab, label) in [(&mut tab, "x"), (&mut other, "y")] {
        tab.keep(label);
        if tab.is_told("Kept") {
            acknowledged.push(label.to_owned());
        }
    }
    tab.hear();
    tab.does(opened(&["file".to_owned()]));
    tab.does(Action::Undo);
    tab.does(Action::Undo);
    let last = tab.state.document.fittings.iter().find(|set| set.label == "x").map(identity);
    tab.does(Action::Remove(last.unwrap_or_default()));
    tab.does(Action::Undo);
    tab.does(Action::StartOver);
    tab.does(Action::Undo);
    tab.does(room("dry"));
    (acknowledged, tab)
}

#[test]
fn whichever_call_fails_nothing_acknowledged_is_lost() {
    let whole = Memory::default();
    workflow(&whole, &mut vec![old("steady", &["one", "two"])]);
    let calls = whole.calls.get();
    assert!(calls > 15, "{calls}");
    for n in 1..=calls {
        for failure in [Failure::Undone, Failure::Unheard] {
            let store = Memory::default();
            store.failing.set(Some((n, failure)));
            let mut texts = vec![old("steady", &["one", "two"])];
            let (acknowledged, mut tab) = workflow(&store, &mut texts);
            store.failing.set(None);
            // The next change takes along whatever the fault has left undone.
            tab.settle();
            let state = tab.state;
            let case = format!("call {n} of {calls} fails, {failure:?}");
            assert_eq!(state.pending(), None, "{case}");
            let session = Some(state.shared.own.clone());
            let again = Tab::open(&store, "z", session, &mut texts);
            let labels = again.labels();
            for label in acknowledged.iter().map(String::as_str).chain(["one", "two", "file", "x"])
            {
                assert!(labels.contains(&label), "{case}: {label} is not among {labels:?}");
            }
            assert_eq!(again.room(), Some("dry"), "{case}");
            assert_eq!(again.state.own_answers(), state.own_answers(), "{case}");
            for set in &state.document.fittings {
                assert!(again.state.document.fittings.contains(set), "{case}: {}", set.label);
            }
            assert!(again.state.undo.is_some(), "{case}");
        }
    }
}

#[test]
fn a_store_that_is_not_there_is_told_of_and_the_page_works_on() {
    let store = Memory::default();
    store.failing.set(Some((1, Failure::Undone)));
    let mut texts = vec![old("dry", &["one"])];
    let mut tab = Tab::open(&store, "a", None, &mut texts);
    // What an earlier build kept is shown, stays where it is, and is taken over when the store is back.
    assert_eq!((tab.room(), tab.labels(), texts.len()), (Some("dry"), vec!["one"], 1));
    tab.does(room("damp"));
    let again = Tab::open(&store, "b", Some(tab.state.shared.own.clone()), &mut texts);
    assert_eq!((again.room(), again.labels()), (Some("damp"), vec!["one"]));
}
