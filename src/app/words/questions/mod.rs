//! The words of the questions.
//!
//! The player's path takes three minutes in a shop: all eight screens together have at most 600 words, which a
//! test counts. Each question says in one sentence why it is asked.

mod layout;
#[cfg(test)]
mod tests;

use protocol::request::Answers;
use strings::fit::answers::{self, Bother, Music, SetUp};
use strings::fit::defaults;
use strings::fit::problem::BASE_WEIGHTS;
use strings::instrument::{self, CELLO, DOUBLE_BASS, VIOLIN};

pub use self::layout::{EVERYTHING, PATH, Question, Screen};
use super::naming::capital;
use super::say;
use super::speech;
use crate::fields::{self, Flag, Number, Wish, Word};
use crate::units;

/// What a question says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Text {
    /// Its short name, in lists and in faults.
    pub name: &'static str,
    /// The question.
    pub ask: &'static str,
    /// Why it is asked.
    pub why: &'static str,
    /// How to answer it, where that is not plain.
    pub hint: &'static str,
}

/// A word one can choose.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Choice {
    /// The word in a request.
    pub key: &'static str,
    /// The words on the page.
    pub label: String,
    /// A few more for the bench, if they help.
    pub hint: String,
}

/// The name by which a fault calls a number.
#[must_use]
pub fn number_name(number: Number) -> String {
    match number {
        Number::Wish(wish) => {
            let words = wish_words(wish);
            say!("wish-name", low = words.low, high = words.high)
        }
        Number::Weight(i) => say!("weight-name", weight = weight_name(i)),
        _ => Question::Number(number).text().name.to_owned(),
    }
}

/// What the question is called that asks for a field; none if none does.
#[must_use]
pub fn name_of_field(field: &str) -> Option<&'static str> {
    let mut asked = EVERYTHING.iter().flat_map(|screen| screen.questions);
    asked.find(|question| question.has(field)).map(|question| question.text().name)
}

/// The words of a wish.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct WishWords {
    /// Its lower end.
    pub low: &'static str,
    /// Its upper end.
    pub high: &'static str,
    /// The lower end as one could say it in a lesson.
    pub low_said: &'static str,
    /// The upper end as one could say it in a lesson.
    pub high_said: &'static str,
    /// A step towards the lower end.
    low_more: &'static str,
    /// A step towards the upper end.
    high_more: &'static str,
}

/// The words of a wish.
#[must_use]
pub fn wish_words(wish: Wish) -> WishWords {
    let key = wish.key();
    let word = |end: &str| speech::of("wish", &format!("{key}-{end}")).unwrap_or_default();
    WishWords {
        low: word("low"),
        high: word("high"),
        low_said: word("low.said"),
        high_said: word("high.said"),
        low_more: word("low.more"),
        high_more: word("high.more"),
    }
}

/// The word for a number on the scale of a wish.
#[must_use]
pub fn wish_word(wish: Wish, value: f64) -> String {
    let words = wish_words(wish);
    let more = if value < 0.0 { words.low_more } else { words.high_more };
    match value.abs() {
        size if size < 0.25 => like_now().to_owned(),
        size if size < 0.75 => say!("wish-a-little", more = more),
        size if size < 1.5 => more.to_owned(),
        _ => say!("wish-much", more = more),
    }
}

/// A step of a wish: towards its upper end, or its lower one.
#[must_use]
pub fn wish_more(wish: Wish, up: bool) -> &'static str {
    let words = wish_words(wish);
    if up { words.high_more } else { words.low_more }
}

/// The middle of every wish.
#[must_use]
pub fn like_now() -> &'static str {
    say!("wish-like-now")
}

/// What can bother.
pub const BOTHERS: &[&str] = Bother::KEYS;

/// The words for what bothers.
#[must_use]
pub fn bother_label(key: &str) -> &str {
    speech::of_or_key("bother", key)
}

/// Everything that bothers, about all strings or about one, in the order of the list.
#[must_use]
pub fn complaints(answers: &Answers) -> Vec<String> {
    let said = |key: &&&str| {
        let mut lists = answers.strings.iter().map(|s| &s.bothers).chain([&answers.bothers]);
        lists.any(|list| list.iter().any(|bother| bother == **key))
    };
    BOTHERS.iter().filter(said).map(|key| (*key).to_owned()).collect()
}

/// Whether a complaint can be about one string.
#[must_use]
pub fn is_of_a_string(bother: &str) -> bool {
    bother != Bother::Uneven.key()
}

/// What is true if a box is ticked.
#[must_use]
pub fn flag_label(flag: Flag) -> &'static str {
    speech::of("flag", flag.key()).unwrap_or_default()
}

/// The short name of what a box says.
#[must_use]
pub fn flag_name(flag: Flag) -> &'static str {
    speech::of("flag", &format!("{}.name", flag.key())).unwrap_or_default()
}

/// A family as a word to choose.
#[must_use]
pub fn family_label(key: &str) -> &str {
    speech::of_or_key("kind", key)
}

/// A family in a list of what was said.
#[must_use]
pub fn family_listed(key: &str) -> &str {
    speech::of("kind", &format!("{key}.listed")).unwrap_or(key)
}

/// A gauge as a word to choose.
#[must_use]
pub fn gauge_label(key: &str) -> &str {
    speech::of_or_key("gauge", key)
}

/// A gauge in a list of what was said.
#[must_use]
pub fn gauge_listed(key: &str) -> &str {
    speech::of("gauge", &format!("{key}.listed")).unwrap_or(key)
}

/// The name of a weight.
#[must_use]
pub fn weight_name(i: usize) -> &'static str {
    speech::of_or_key("weight", fields::weight_key(i))
}

/// An instrument as a word within a sentence.
#[must_use]
pub fn instrument_name(key: &str) -> &str {
    speech::of_or_key("instrument", key)
}

/// A size: `4/4`, or inches with the point of the language, `16.5`.
#[must_use]
pub fn size_name(key: &str) -> String {
    let key = key.replace('.', units::point());
    match key.strip_suffix(" in") {
        Some(inches) => say!("size-inches", number = inches),
        None => key,
    }
}

/// A tuning as a word within a sentence.
#[must_use]
pub fn tuning_name<'a>(instrument: &str, key: &'a str) -> &'a str {
    speech::of("tuning", &format!("{instrument}-{key}")).unwrap_or(key)
}

/// The name of a weight, at the head of its field.
#[must_use]
pub fn weight_label(i: usize) -> String {
    capital(weight_name(i))
}

/// Its weight before any answer.
#[must_use]
pub fn base_weight(i: usize) -> f64 {
    BASE_WEIGHTS.get(i).copied().unwrap_or_default()
}

/// The words of a question's list; sizes and tunings are those of the instrument.
#[must_use]
pub fn choices(word: Word, answers: &Answers) -> Vec<Choice> {
    let kind = fields::kind(answers);
    let choice = |key: &'static str| {
        let label = match word {
            Word::Instrument => capital(instrument_name(key)),
            Word::Size => size_name(key),
            Word::Tuning => capital(tuning_name(kind.key, key)),
            _ => speech::of_or_key("choice", &format!("{}-{key}", word.key())).to_owned(),
        };
        let hint = match word {
            Word::Size => kind.size(key).map(|size| units::mm(size.length_mm.0 / 1000.0, 0)),
            _ => None,
        };
        Choice { key, label, hint: hint.unwrap_or_default() }
    };
    match word {
        Word::Instrument => instrument::ALL.iter().map(|kind| choice(kind.key)).collect(),
        Word::Size => kind.sizes.iter().map(|size| choice(size.key)).collect(),
        Word::Tuning => kind.tunings.iter().map(|tuning| choice(tuning.key)).collect(),
        _ => answers::words_of(word.key()).iter().map(|key| choice(key)).collect(),
    }
}

/// Whether a question is not asked, or not yet: sizes and tunings belong to an instrument, plucking matters on a cello,
/// on a bass and in jazz, and only an unusual tuning may be one for good.
#[must_use]
pub fn waits(question: Question, answers: &Answers) -> bool {
    let Question::Word(word) = question else { return false };
    let waits = match word {
        Word::Size | Word::Tuning => answers.instrument.is_none(),
        Word::Played | Word::Ring => !plucking_matters(answers),
        Word::TunedSo => !fields::is_retuned(answers),
        _ => false,
    };
    waits && word.of(answers).is_none()
}

fn plucking_matters(answers: &Answers) -> bool {
    let is_low = [CELLO.key, DOUBLE_BASS.key].contains(&fields::kind(answers).key);
    is_low || answers.music.as_deref() == Some(Music::Jazz.key())
}

/// What is taken for a question without an answer, in words, as the model takes it; none where nothing is.
#[must_use]
pub fn usual(question: Question, answers: &Answers) -> Option<String> {
    let kind = fields::kind(answers);
    let text = match question {
        Question::Word(word) => match usual_word(word, answers) {
            Some(key) => choices(word, answers)
                .into_iter()
                .find(|choice| choice.key == key)
                .map(|choice| choice.label),
            None => speech::of("usual", word.key()).map(str::to_owned),
        }?,
        Question::Number(Number::Length) => {
            let size = answers.size.as_deref().and_then(|key| kind.size(key));
            let size = size.or(kind.sizes.first())?;
            say!("usual-length", number = units::fixed(size.length_mm.0, 0))
        }
        Question::Number(Number::A4) => {
            let a4 = defaults::a4(set_up(answers), answers.music.as_deref().and_then(Music::parse));
            say!("usual-a4", number = units::fixed(a4.get(), 0))
        }
        Question::Concert => say!("usual-concert").to_owned(),
        Question::Bothers => say!("usual-bothers").to_owned(),
        Question::Wishes => say!("usual-wishes").to_owned(),
        Question::Flags(_) => say!("usual-flags").to_owned(),
        Question::Number(Number::MostLoad) => say!("usual-most-load").to_owned(),
        Question::Number(_) => say!("usual-age").to_owned(),
        Question::AlsoTuned => say!("usual-also-tuned").to_owned(),
        Question::Strings => say!("usual-strings").to_owned(),
        Question::Weights => say!("usual-weights").to_owned(),
    };
    Some(text)
}

/// The word that the model takes where none is answered; none where it takes nothing.
#[must_use]
pub fn usual_word(word: Word, answers: &Answers) -> Option<&'static str> {
    let kind = fields::kind(answers);
    match word {
        Word::Aim => Some(defaults::AIM.key()),
        Word::Instrument => Some(VIOLIN.key),
        Word::Size => kind.sizes.first().map(|size| size.key),
        Word::Tuning => kind.tunings.first().map(|tuning| tuning.key),
        Word::Temperament => Some(defaults::TEMPERAMENT.key()),
        Word::SetUp => Some(defaults::SET_UP.key()),
        Word::Pegs => Some(defaults::pegs(kind).key()),
        Word::Tuners => {
            let size = answers.size.as_deref().and_then(|key| kind.size(key));
            let size = size.or(kind.sizes.first())?;
            Some(defaults::tuners(kind, set_up(answers), size).key())
        }
        Word::Room => Some(defaults::ROOM.key()),
        Word::Budget => Some(defaults::BUDGET.key()),
        _ => None,
    }
}

/// How the instrument is set up, or is taken to be.
fn set_up(answers: &Answers) -> SetUp {
    answers.set_up.as_deref().and_then(SetUp::parse).unwrap_or(defaults::SET_UP)
}
