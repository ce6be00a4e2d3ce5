//! The words of the questions.
//!
//! The player's path takes three minutes in a shop: all eight screens together have at most 450 words, which a
//! test counts. Each question says in one short line why it is asked.

use protocol::request::Answers;
use strings::fit::problem::BASE_WEIGHTS;
use strings::instrument;

use super::naming::capital;
use super::say;
use super::speech;
use crate::fields::{self, Flag, Number, Wish, Word};
use crate::units;

/// A question, however it is answered.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Question {
    /// One word of a list.
    Word(Word),
    /// A number.
    Number(Number),
    /// Days until it matters, or a date.
    Concert,
    /// What bothers: any of a list.
    Bothers,
    /// Five wishes.
    Wishes,
    /// Which of these hold.
    Flags(&'static [Flag]),
    /// Another pitch at which the same strings are used.
    AlsoTuned,
    /// Every string by itself: its note, its family, what is there now and what bothers.
    Strings,
    /// Weights set by hand.
    Weights,
}

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

/// A screen of the player's path, or a part of the page with everything.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Screen {
    /// The message that is its heading.
    heading: &'static str,
    /// What it asks.
    pub questions: &'static [Question],
}

impl Screen {
    /// Its heading.
    #[must_use]
    pub fn title(&self) -> &'static str {
        speech::plain(self.heading)
    }
}

/// The player's path.
pub const PATH: [Screen; crate::route::SCREENS] = [
    Screen {
        heading: "path-instrument",
        questions: &[
            Question::Word(Word::Aim),
            Question::Word(Word::Instrument),
            Question::Word(Word::Size),
            Question::Word(Word::SetUp),
        ],
    },
    Screen {
        heading: "path-strings",
        questions: &[Question::Word(Word::Now), Question::Number(Number::Age)],
    },
    Screen { heading: "path-wishes", questions: &[Question::Bothers, Question::Wishes] },
    Screen {
        heading: "path-player",
        questions: &[Question::Word(Word::Music), Question::Word(Word::Level)],
    },
    Screen {
        heading: "path-tuning",
        questions: &[
            Question::Word(Word::Pegs),
            Question::Word(Word::Tuners),
            Question::Word(Word::WhoTunes),
        ],
    },
    Screen { heading: "path-room", questions: &[Question::Word(Word::Room)] },
    Screen { heading: "path-concert", questions: &[Question::Concert] },
    Screen {
        heading: "path-needs",
        questions: &[Question::Word(Word::Budget), Question::Flags(PATH_FLAGS)],
    },
];

const PATH_FLAGS: &[Flag] = &[Flag::NickelAllergy, Flag::AcidSweat, Flag::AnimalFree];

/// Everything, for those who do this daily.
pub const EVERYTHING: &[Screen] = &[
    Screen {
        heading: "part-instrument",
        questions: &[
            Question::Word(Word::Aim),
            Question::Word(Word::Instrument),
            Question::Word(Word::Size),
            Question::Number(Number::Length),
            Question::Word(Word::SetUp),
        ],
    },
    Screen {
        heading: "part-pitch",
        questions: &[
            Question::Word(Word::Tuning),
            Question::Number(Number::A4),
            Question::Word(Word::Temperament),
            Question::AlsoTuned,
        ],
    },
    Screen {
        heading: "part-now",
        questions: &[Question::Word(Word::Now), Question::Number(Number::Age), Question::Bothers],
    },
    Screen { heading: "part-strings", questions: &[Question::Strings] },
    Screen { heading: "part-wishes", questions: &[Question::Wishes] },
    Screen {
        heading: "part-player",
        questions: &[
            Question::Word(Word::Music),
            Question::Word(Word::Level),
            Question::Word(Word::WhoTunes),
            Question::Concert,
            Question::Word(Word::Budget),
        ],
    },
    Screen {
        heading: "part-place",
        questions: &[
            Question::Word(Word::Pegs),
            Question::Word(Word::Tuners),
            Question::Word(Word::Room),
        ],
    },
    Screen { heading: "part-needs", questions: &[Question::Flags(&Flag::ALL)] },
    Screen { heading: "part-weights", questions: &[Question::Weights] },
];

impl Question {
    /// The name of its fields, which is also where the page finds it.
    #[must_use]
    pub fn key(self) -> String {
        match self {
            Self::Word(word) => word.key().to_owned(),
            Self::Number(number) => number.key(),
            Self::Concert => Number::Days.key(),
            Self::Bothers => "bothers".to_owned(),
            Self::Wishes => "wishes".to_owned(),
            Self::Flags(_) => "flags".to_owned(),
            Self::AlsoTuned => "also_tuned".to_owned(),
            Self::Strings => "strings".to_owned(),
            Self::Weights => "weights".to_owned(),
        }
    }

    /// Whether a field belongs to it.
    #[must_use]
    pub fn has(self, field: &str) -> bool {
        let key = self.key();
        match self {
            Self::Flags(flags) => flags.iter().any(|flag| flag.key() == field),
            _ => {
                field == key
                    || field.strip_prefix(&key).is_some_and(|rest| rest.starts_with(['.', '[']))
            }
        }
    }

    /// What it says.
    #[must_use]
    pub fn text(self) -> Text {
        let message = match self {
            Self::Word(word) => word.key(),
            Self::Number(Number::Length) => "length",
            Self::Number(Number::A4) => "a4",
            Self::Number(Number::Age) => "age",
            Self::Number(Number::Days) => "days",
            Self::Number(Number::AlsoA4) => "also-a4",
            Self::Number(Number::AlsoSemitones) => "also-semitones",
            Self::Number(Number::AgeOf(_)) => "age-of",
            // A wish and a weight stand in a list, under a question of their own.
            Self::Number(Number::Wish(_)) | Self::Wishes => "wishes",
            Self::Number(Number::Weight(_)) | Self::Weights => "weights",
            Self::Concert => "concert",
            Self::Bothers => "bothers",
            Self::Flags(_) => "flags",
            Self::AlsoTuned => "also-tuned",
            Self::Strings => "strings",
        };
        let part =
            |part: &str| speech::of("question", &format!("{message}{part}")).unwrap_or_default();
        Text { name: part(".name"), ask: part(""), why: part(".why"), hint: part(".hint") }
    }
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
    let key = fields::wish_key(wish);
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
pub const BOTHERS: [&str; 15] = [
    "too-bright",
    "thin",
    "too-dull",
    "too-quiet",
    "slow-to-speak",
    "chokes",
    "whistles",
    "wolf",
    "out-of-tune",
    "goes-flat",
    "breaks",
    "breaks-at-the-peg",
    "false",
    "hard-on-the-hand",
    "uneven",
];

/// The words for what bothers.
#[must_use]
pub fn bother_label(key: &str) -> &str {
    speech::of_or_key("bother", key)
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

/// The families one can insist on.
pub const FAMILIES: [&str; 7] = [
    "plain-gut",
    "wound-gut",
    "plain-steel",
    "wound-steel",
    "stranded-steel",
    "synthetic",
    "monofilament",
];

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

/// A third of what is made.
pub const GAUGE_CLASSES: [&str; 3] = ["light", "medium", "heavy"];

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
    let keys: Vec<&'static str> = match word {
        Word::Aim => vec!["one-string", "whole-set", "is-it-time"],
        Word::Instrument => instrument::ALL.iter().map(|kind| kind.key).collect(),
        Word::Size => kind.sizes.iter().map(|size| size.key).collect(),
        Word::Tuning => kind.tunings.iter().map(|tuning| tuning.key).collect(),
        Word::Temperament => vec!["equal", "pure-fifths"],
        Word::SetUp => vec!["modern", "historical", "light"],
        Word::Now => vec!["gut", "synthetic", "steel"],
        Word::Music => vec!["classical", "early", "folk", "jazz"],
        Word::Level => vec!["beginner", "student", "advanced", "professional"],
        Word::Pegs => vec!["friction", "geared", "machine"],
        Word::Tuners => vec!["none", "top", "all"],
        Word::WhoTunes => vec!["player", "adult", "nobody"],
        Word::Room => vec!["steady", "seasonal", "damp", "dry", "travelling"],
        Word::Budget => vec!["modest", "middle", "any"],
    };
    keys.into_iter().map(choice).collect()
}

/// Whether a question is not asked yet: sizes and tunings belong to an instrument, and without one there is nothing
/// to choose from.
#[must_use]
pub fn waits(question: Question, answers: &Answers) -> bool {
    match question {
        Question::Word(word @ (Word::Size | Word::Tuning)) => {
            answers.instrument.is_none() && word.of(answers).is_none()
        }
        _ => false,
    }
}

/// What is taken for a question without an answer, in words, as the model takes it; none where nothing is.
#[must_use]
pub fn usual(question: Question, answers: &Answers) -> Option<String> {
    let kind = fields::kind(answers);
    let historical = answers.set_up.as_deref() == Some("historical");
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
            let low = historical || answers.music.as_deref() == Some("early");
            say!("usual-a4", number = if low { "415" } else { "440" })
        }
        Question::Concert => say!("usual-concert").to_owned(),
        Question::Bothers => say!("usual-bothers").to_owned(),
        Question::Wishes => say!("usual-wishes").to_owned(),
        Question::Flags(_) => say!("usual-flags").to_owned(),
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
    let bass = kind.key == "double-bass";
    let size = answers.size.as_deref().and_then(|key| kind.size(key)).or(kind.sizes.first());
    match word {
        Word::Aim => Some("whole-set"),
        Word::Instrument => Some("violin"),
        Word::Size => kind.sizes.first().map(|size| size.key),
        Word::Tuning => kind.tunings.first().map(|tuning| tuning.key),
        Word::Temperament => Some("equal"),
        Word::SetUp => Some("modern"),
        Word::Pegs => Some(if bass { "machine" } else { "friction" }),
        Word::Tuners if answers.set_up.as_deref() == Some("historical") || bass => Some("none"),
        Word::Tuners if kind.key == "cello" || size.is_some_and(|size| size.fraction) => {
            Some("all")
        }
        Word::Tuners => Some("top"),
        Word::Room => Some("seasonal"),
        Word::Budget => Some("middle"),
        Word::Now | Word::Music | Word::Level | Word::WhoTunes => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::route::SCREENS;
    use protocol::reply::Reply;
    use protocol::request::{FitRequest, Request, TablesRequest};

    /// Everything a screen of the path says, for a violin.
    fn said(screen: &Screen) -> Vec<String> {
        let mut said = vec![screen.title().to_owned()];
        let answers = Answers::default();
        for question in screen.questions {
            let text = question.text();
            said.extend([text.ask, text.why, text.hint].map(str::to_owned));
            match question {
                Question::Word(word) => {
                    said.push(say!("unknown").to_owned());
                    // The path shows no hints beside choices: they are for the bench.
                    said.extend(choices(*word, &answers).into_iter().map(|c| c.label));
                }
                Question::Number(number) => {
                    said.extend(number.units().iter().map(|unit| unit.shown().to_owned()));
                }
                Question::Concert => {
                    let days = Question::Number(Number::Days).text().ask;
                    let unit = say!("unit-typed-days");
                    said.extend([days, say!("date-ask"), unit].map(str::to_owned));
                }
                Question::Bothers => said.extend(BOTHERS.map(|key| bother_label(key).to_owned())),
                Question::Wishes => {
                    for wish in Wish::ALL {
                        let w = wish_words(wish);
                        let all = [w.low, w.high, w.low_said, w.high_said, like_now()];
                        said.extend(all.map(str::to_owned));
                    }
                }
                Question::Flags(flags) => {
                    said.extend(flags.iter().map(|flag| flag_label(*flag).to_owned()));
                }
                Question::AlsoTuned | Question::Strings | Question::Weights => {}
            }
        }
        // What stands on every screen besides.
        let count = say!("screen-of", screen = "1", all = "8");
        said.extend([say!("back"), &count, say!("continue"), say!("find")].map(str::to_owned));
        said
    }

    #[test]
    fn the_path_has_at_most_eight_screens_and_450_words() {
        const { assert!(SCREENS <= 8) };
        for language in catalogue::Language::ALL {
            speech::learn(language, language.messages());
            speech::speak(language);
            let count = |text: &String| text.split_whitespace().count();
            let words: Vec<usize> =
                PATH.iter().map(|screen| said(screen).iter().map(count).sum()).collect();
            speech::speak(catalogue::Language::English);
            let total: usize = words.iter().sum();
            println!("{language:?}: words of each screen: {words:?}, together {total}");
            assert!(total <= 450, "{language:?}: {words:?}, together {total}");
        }
    }

    #[test]
    fn every_question_says_why_it_is_asked() {
        for language in catalogue::Language::ALL {
            speech::learn(language, language.messages());
            speech::speak(language);
            for question in PATH.iter().chain(EVERYTHING).flat_map(|screen| screen.questions) {
                let text = question.text();
                assert!(!text.name.is_empty() && text.ask.len() > 5, "{question:?}");
                assert!((3..=14).contains(&text.why.split_whitespace().count()), "{text:?}");
            }
            speech::speak(catalogue::Language::English);
        }
    }

    #[test]
    fn everything_asks_whatever_can_be_answered() {
        let asked: Vec<Question> =
            EVERYTHING.iter().flat_map(|screen| screen.questions.iter().copied()).collect();
        let has = |field: &str| asked.iter().filter(|question| question.has(field)).count();
        let schema = protocol::schema();
        let fields = schema
            .pointer("/request/$defs/Answers/properties")
            .and_then(|p| p.as_object())
            .cloned()
            .unwrap();
        assert!(fields.len() > 20);
        for field in fields.keys() {
            assert_eq!(has(field), 1, "{field}");
        }
        // Whatever the path asks, the page with everything asks too.
        for screen in PATH {
            for question in screen.questions {
                let key = match question {
                    Question::Flags(flags) => flags[0].key().to_owned(),
                    _ => question.key(),
                };
                assert_eq!(has(&key), 1, "{question:?}");
            }
        }
    }

    #[test]
    fn the_words_are_those_of_the_model() {
        let Reply::Tables(tables) = protocol::handle(&Request::Tables(TablesRequest {})) else {
            panic!("the tables should come")
        };
        for instrument in instrument::ALL {
            let answers =
                Answers { instrument: Some(instrument.key.to_owned()), ..Answers::default() };
            for word in Word::ALL {
                let keys: Vec<_> = choices(word, &answers).iter().map(|c| c.key).collect();
                assert!(!keys.is_empty());
                if let Some(known) = tables.words.get(word.key()) {
                    assert_eq!(&keys, known, "{word:?}");
                }
                if let Some(usual) = usual_word(word, &answers) {
                    assert!(keys.contains(&usual), "{word:?}: {usual}");
                }
            }
        }
        assert_eq!(&BOTHERS[..], &tables.words["bothers"][..]);
        assert_eq!(&GAUGE_CLASSES[..], &tables.words["gauge_class"][..]);
        assert_eq!(&FAMILIES[..], &tables.words["family"][..]);
        for (i, attribute) in tables.words["attribute"].iter().enumerate() {
            assert_eq!(fields::weight_key(i), attribute);
            assert_ne!(weight_name(i), "");
        }
    }

    #[test]
    fn instruments_tunings_and_metals_are_called_as_in_the_model() {
        for kind in instrument::ALL {
            assert_eq!(instrument_name(kind.key), kind.name);
            for tuning in kind.tunings {
                assert_eq!(tuning_name(kind.key, tuning.key), tuning.name);
            }
        }
        for metal in strings::material::METALS {
            assert_eq!(crate::words::naming::metal(metal.key), metal.name);
        }
    }

    #[test]
    fn every_word_of_the_model_has_its_message_in_every_language() {
        let Reply::Tables(tables) = protocol::handle(&Request::Tables(TablesRequest {})) else {
            panic!("the tables should come")
        };
        for language in catalogue::Language::ALL {
            let messages = catalogue::Catalogue::of(language.messages());
            let has = |name: String| {
                assert!(messages.pattern(&name).is_some(), "{name}, {}", language.tag());
            };
            for kind in instrument::ALL {
                has(format!("instrument-{}", kind.key));
                kind.tunings.iter().for_each(|t| has(format!("tuning-{}-{}", kind.key, t.key)));
            }
            for word in Word::ALL {
                if !matches!(word, Word::Instrument | Word::Size | Word::Tuning) {
                    for choice in choices(word, &Answers::default()) {
                        has(format!("choice-{}-{}", word.key(), choice.key));
                    }
                }
            }
            FAMILIES.iter().for_each(|key| has(format!("family-{key}")));
            FAMILIES.iter().for_each(|key| has(format!("family-is-{key}")));
            FAMILIES.iter().for_each(|key| has(format!("kind-{key}.listed")));
            GAUGE_CLASSES.iter().for_each(|key| has(format!("gauge-{key}.listed")));
            Flag::ALL.iter().for_each(|flag| has(format!("flag-{}.name", flag.key())));
            for attribute in &tables.words["attribute"] {
                has(format!("weight-{attribute}"));
                has(format!("attribute-{attribute}.means"));
            }
            for property in &tables.properties {
                has(format!("property-{}.more", property.key));
            }
            for metal in strings::material::METALS {
                has(format!("metal-{}", metal.key));
            }
        }
    }

    #[test]
    fn what_is_taken_without_an_answer_is_what_the_model_takes() {
        let text = |t: &str| Some(t.to_owned());
        for (instrument, size, set_up, music) in [
            (None, None, None, None),
            (text("violin"), text("1/4"), None, None),
            (text("violin"), None, text("historical"), None),
            (text("viola"), None, None, text("early")),
            (text("cello"), None, None, None),
            (text("double-bass"), None, None, None),
        ] {
            let answers = Answers { instrument, size, set_up, music, ..Answers::default() };
            let request = Request::Fit(Box::new(FitRequest { answers: answers.clone() }));
            let Reply::Fit(fit) = protocol::handle(&request) else { panic!("a set should come") };
            for assumed in &fit.problem.assumed {
                let word = Word::ALL.into_iter().find(|word| word.key() == assumed.field);
                let ours = match (word, assumed.field.as_str()) {
                    (Some(word), _) => {
                        let key = usual_word(word, &answers).unwrap();
                        // The model names tunings and instruments by what stands on the page.
                        match word {
                            Word::Tuning => {
                                fields::kind(&answers).tuning(key).unwrap().name.to_owned()
                            }
                            Word::Instrument => fields::kind(&answers).name.to_owned(),
                            _ => key.to_owned(),
                        }
                    }
                    (None, "a4_hz") => usual(Question::Number(Number::A4), &answers).unwrap(),
                    (None, "sounding_length_m") => {
                        let said = usual(Question::Number(Number::Length), &answers).unwrap();
                        said.split(',').next().unwrap().to_owned()
                    }
                    (None, other) => panic!("{other} is taken for granted but not asked"),
                };
                assert_eq!(ours, assumed.value, "{}", assumed.field);
            }
        }
    }

    #[test]
    fn every_number_on_the_scale_has_its_word() {
        let word = |value| wish_word(Wish::Brightness, value);
        assert_eq!(word(0.0), "like now");
        assert_eq!(word(-0.5), "a little darker");
        assert_eq!(word(1.0), "brighter");
        assert_eq!(word(2.0), "much brighter");
        assert_eq!(wish_word(Wish::Colour, 2.0), "much more colour");
    }

    #[test]
    fn a_field_is_found_by_its_question() {
        assert!(Question::Strings.has("strings.0.note"));
        assert!(Question::Wishes.has("wishes.feel"));
        assert!(!Question::Word(Word::Size).has("sizes"));
        assert!(Question::Flags(&Flag::ALL).has("hand_pain"));
    }
}
