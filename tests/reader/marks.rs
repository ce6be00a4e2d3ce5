//! The page's messages with marks in them, so that a sentence can be read by its meaning and not by its words.
//!
//! Before a page is drawn, every pattern of the catalogue gets a mark with its message's name at either end, one round
//! each place for a word, and one in each text of a choice. The page puts the marks out with the text, and here they
//! become a tree. A mark is one character of Unicode's private planes, which no text has. The page itself knows nothing
//! of this: it speaks the language it is given.

use std::collections::HashMap;
use std::sync::OnceLock;

use catalogue::{ENGLISH, GERMAN, Language};

/// A piece of what is said.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Part {
    /// Text that no message holds, or that stands in one.
    Text(String),
    /// A message.
    Said(Said),
    /// A place of a message, with what was put there.
    Place(&'static str, Vec<Part>),
    /// The key by which a message chose its text, under its name.
    Choice(&'static str, &'static str),
}

/// A message as it was said.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Said {
    /// Its name in the catalogue.
    pub(crate) id: &'static str,
    /// Its text, with what stands in its places.
    pub(crate) parts: Vec<Part>,
}

#[derive(Clone, Copy, PartialEq, Eq, Hash)]
enum Mark {
    Message(&'static str),
    Place(&'static str),
    Choice(&'static str, &'static str),
}

/// The first mark; those after it follow in the order in which they were needed.
const FIRST: u32 = 0xF_0000;
/// Stands before the mark of a message, as the page may take the first byte of a note's name for its letter.
const BEFORE: char = '\u{e}';
/// Ends a message or a place.
const END: char = '\u{10_FFFD}';
/// These are no sentences: the page looks at them to know how to write others.
const SIGNS: [&str; 2] = ["after-colon", "decimal-point"];

#[derive(Default)]
struct Marks {
    all: Vec<Mark>,
    known: HashMap<Mark, char>,
    languages: Vec<&'static str>,
}

fn marks() -> &'static Marks {
    static MARKS: OnceLock<Marks> = OnceLock::new();
    MARKS.get_or_init(|| {
        let mut marks = Marks::default();
        for messages in [ENGLISH, GERMAN] {
            let text: String = messages.lines().map(|line| marks.line(line)).collect();
            marks.languages.push(Box::leak(text.into_boxed_str()));
        }
        marks
    })
}

/// The messages of a language, with marks.
pub(crate) fn marked(language: Language) -> &'static str {
    marks().languages[usize::from(language == Language::German)]
}

/// The mark of a message, to put another in its place.
pub(crate) fn sign(id: &'static str) -> char {
    marks().known[&Mark::Message(id)]
}

/// The mark of a text of a choice.
pub(crate) fn sign_of_choice(by: &'static str, key: &'static str) -> char {
    marks().known[&Mark::Choice(by, key)]
}

/// Whether what follows a text stands in a message, and in none of its places.
pub(crate) fn of_a_message(before: &str) -> bool {
    let mut closed = 0;
    // A message stands within one text.
    for letter in before.chars().rev().take_while(|letter| *letter != '>') {
        match u32::from(letter).checked_sub(FIRST).and_then(|i| marks().all.get(i as usize)) {
            _ if letter == END => closed += 1,
            None | Some(Mark::Choice(..)) => {}
            Some(_) if closed > 0 => closed -= 1,
            Some(mark) => return matches!(mark, Mark::Message(_)),
        }
    }
    false
}

impl Marks {
    fn sign(&mut self, mark: Mark) -> char {
        let next = char::from_u32(FIRST + u32::try_from(self.all.len()).unwrap()).unwrap();
        *self.known.entry(mark).or_insert_with(|| {
            self.all.push(mark);
            next
        })
    }

    fn line(&mut self, line: &'static str) -> String {
        let (id, pattern) = line.split_once('\t').unwrap();
        if SIGNS.contains(&id) {
            return format!("{line}\n");
        }
        format!("{id}\t{BEFORE}{}{}{END}\n", self.sign(Mark::Message(id)), self.pattern(pattern))
    }

    /// A pattern with marks; what its own signs mean, `catalogue` says.
    fn pattern(&mut self, pattern: &'static str) -> String {
        let (mut out, mut rest, mut choices) = (String::new(), pattern, Vec::new());
        while let Some(at) = rest.find(['\u{1}', '\u{3}', '\u{4}', '\u{6}']) {
            out.push_str(&rest[..=at]);
            let after = &rest[at + 1..];
            rest = match &rest[at..=at] {
                "\u{1}" => {
                    let (name, after) = after.split_once('\u{2}').unwrap();
                    out.insert(out.len() - 1, self.sign(Mark::Place(name)));
                    out.push_str(&format!("{name}\u{2}{END}"));
                    after
                }
                "\u{3}" => {
                    let (name, _) = after.split_once('\u{4}').unwrap();
                    choices.push(name);
                    out.push_str(name);
                    &after[name.len()..]
                }
                "\u{4}" => {
                    let (key, after) = after.split_once('\u{5}').unwrap();
                    let by = choices[choices.len() - 1];
                    let mark = self.sign(Mark::Choice(by, key.trim_start_matches('*')));
                    out.push_str(&format!("{key}\u{5}{mark}"));
                    after
                }
                _ => {
                    choices.pop();
                    after
                }
            };
        }
        out + rest
    }
}

/// What a text with marks says.
pub(crate) fn parts(text: &str) -> Vec<Part> {
    let mut open: Vec<(Option<Mark>, Vec<Part>)> = vec![(None, Vec::new())];
    for letter in text.chars().filter(|letter| *letter != BEFORE) {
        let (_, inside) = open.last_mut().unwrap();
        if letter == END {
            let Some((Some(mark), parts)) = open.pop() else { panic!("an end too many: {text}") };
            open.last_mut().unwrap().1.push(match mark {
                Mark::Message(id) => Part::Said(Said { id, parts }),
                Mark::Place(name) | Mark::Choice(name, _) => Part::Place(name, parts),
            });
            continue;
        }
        let mark = u32::from(letter).checked_sub(FIRST);
        match mark.and_then(|i| marks().all.get(usize::try_from(i).ok()?)) {
            Some(Mark::Choice(name, key)) => inside.push(Part::Choice(name, key)),
            Some(mark) => open.push((Some(*mark), Vec::new())),
            None => match inside.last_mut() {
                Some(Part::Text(text)) => text.push(letter),
                _ => inside.push(Part::Text(letter.to_string())),
            },
        }
    }
    assert_eq!(open.len(), 1, "a mark without its end: {text}");
    open.remove(0).1
}

/// Words with each message in them as its name in braces: alike in every language.
pub(crate) fn flat(words: &[Part]) -> String {
    let one = |part: &Part| match part {
        Part::Text(text) => text.clone(),
        Part::Said(said) => format!("{{{}}}", said.id),
        Part::Place(_, parts) => flat(parts),
        Part::Choice(..) => String::new(),
    };
    words.iter().map(one).collect::<String>().trim().to_owned()
}

/// Words as they are read.
pub(crate) fn plain(words: &[Part]) -> String {
    let one = |part: &Part| match part {
        Part::Text(text) => text.clone(),
        Part::Said(Said { parts, .. }) | Part::Place(_, parts) => plain(parts),
        Part::Choice(..) => String::new(),
    };
    words.iter().map(one).collect()
}

/// The message that words are, if they are nothing else.
pub(crate) fn sole(words: &[Part]) -> Option<&Said> {
    let mut told =
        words.iter().filter(|part| !matches!(part, Part::Text(t) if t.trim().is_empty()));
    match (told.next(), told.next()) {
        (Some(Part::Said(said)), None) => Some(said),
        _ => None,
    }
}

/// Every message in words, also within others, each before what stands in it.
pub(crate) fn all<'w>(words: &'w [Part]) -> Vec<&'w Said> {
    let one = |part: &'w Part| match part {
        Part::Said(said) => {
            let mut found = vec![said];
            found.extend(all(&said.parts));
            found
        }
        Part::Place(_, parts) => all(parts),
        _ => Vec::new(),
    };
    words.iter().flat_map(one).collect()
}

impl Said {
    /// What stands in a place.
    pub(crate) fn place(&self, name: &str) -> Option<&[Part]> {
        self.parts.iter().find_map(|part| match part {
            Part::Place(known, parts) if *known == name => Some(parts.as_slice()),
            _ => None,
        })
    }

    /// The key by which it chose a text.
    pub(crate) fn choice(&self, name: &str) -> Option<&'static str> {
        self.parts.iter().find_map(|part| match part {
            Part::Choice(known, key) if *known == name => Some(*key),
            _ => None,
        })
    }
}

#[test]
fn marks_come_back_as_a_tree() {
    let catalogue = catalogue::Catalogue::of(marked(Language::English));
    let cents = catalogue.pattern("cents").unwrap();
    let words = [("number", format!("5 {cents}").into())];
    let said = catalogue::fill(catalogue.pattern("under").unwrap(), &words);
    let tree = parts(&format!("It is {said}."));
    assert_eq!(flat(&tree), "It is {under}.");
    assert_eq!(plain(&tree), "It is under 5 cents.");
    assert_eq!(all(&tree).iter().map(|said| said.id).collect::<Vec<_>>(), ["under", "cents"]);
    assert_eq!(flat(all(&tree)[0].place("number").unwrap()), "5 {cents}");
    let german = catalogue::Catalogue::of(marked(Language::German));
    let price = catalogue::fill(german.pattern("judged-price").unwrap(), &[("cost", "no".into())]);
    assert_eq!(all(&parts(&price))[0].choice("cost"), Some("no"));
}
