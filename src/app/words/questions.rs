//! The words of the questions.
//!
//! The player's path takes three minutes in a shop: all eight screens together have at most 450 words, which a
//! test counts. Each question says in one short line why it is asked.

use protocol::request::Answers;
use strings::fit::problem::BASE_WEIGHTS;
use strings::instrument;

use crate::fields::{self, Flag, Number, Wish, Word};

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

/// What a label is asked for with.
pub const LABEL_ASK: &str = "A label for this fitting";
/// How to give one.
pub const LABEL_HINT: &str =
    "A desk or an instrument, such as “Desk 3 viola”. It stays on this machine.";

/// The two ways to say when the next performance is.
pub const DAYS_ASK: &str = "Days from now";
/// The other of them.
pub const DATE_ASK: &str = "Or the date";

/// The choice that is always there.
pub const UNKNOWN: &str = "I don’t know";

/// A screen of the player's path, or a part of the page with everything.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Screen {
    /// Its heading.
    pub title: &'static str,
    /// What it asks.
    pub questions: &'static [Question],
}

/// The player's path.
pub const PATH: [Screen; crate::route::SCREENS] = [
    Screen {
        title: "The instrument",
        questions: &[
            Question::Word(Word::Aim),
            Question::Word(Word::Instrument),
            Question::Word(Word::Size),
            Question::Word(Word::SetUp),
        ],
    },
    Screen {
        title: "Its strings now",
        questions: &[Question::Word(Word::Now), Question::Number(Number::Age)],
    },
    Screen { title: "Complaints and wishes", questions: &[Question::Bothers, Question::Wishes] },
    Screen {
        title: "Music and player",
        questions: &[Question::Word(Word::Music), Question::Word(Word::Level)],
    },
    Screen {
        title: "Tuning it",
        questions: &[
            Question::Word(Word::Pegs),
            Question::Word(Word::Tuners),
            Question::Word(Word::WhoTunes),
        ],
    },
    Screen { title: "Where it lives", questions: &[Question::Word(Word::Room)] },
    Screen { title: "The next performance", questions: &[Question::Concert] },
    Screen {
        title: "Budget and skin",
        questions: &[Question::Word(Word::Budget), Question::Flags(PATH_FLAGS)],
    },
];

const PATH_FLAGS: &[Flag] = &[Flag::NickelAllergy, Flag::AcidSweat, Flag::AnimalFree];

/// Everything, for those who do this daily.
pub const EVERYTHING: &[Screen] = &[
    Screen {
        title: "Instrument",
        questions: &[
            Question::Word(Word::Aim),
            Question::Word(Word::Instrument),
            Question::Word(Word::Size),
            Question::Number(Number::Length),
            Question::Word(Word::SetUp),
        ],
    },
    Screen {
        title: "Pitch",
        questions: &[
            Question::Word(Word::Tuning),
            Question::Number(Number::A4),
            Question::Word(Word::Temperament),
            Question::AlsoTuned,
        ],
    },
    Screen {
        title: "Strings on it now",
        questions: &[Question::Word(Word::Now), Question::Number(Number::Age), Question::Bothers],
    },
    Screen { title: "String by string", questions: &[Question::Strings] },
    Screen { title: "Wishes", questions: &[Question::Wishes] },
    Screen {
        title: "Player",
        questions: &[
            Question::Word(Word::Music),
            Question::Word(Word::Level),
            Question::Word(Word::WhoTunes),
            Question::Concert,
            Question::Word(Word::Budget),
        ],
    },
    Screen {
        title: "Pegs and place",
        questions: &[
            Question::Word(Word::Pegs),
            Question::Word(Word::Tuners),
            Question::Word(Word::Room),
        ],
    },
    Screen { title: "Special needs", questions: &[Question::Flags(&Flag::ALL)] },
    Screen { title: "Weights", questions: &[Question::Weights] },
];

const fn text(name: &'static str, ask: &'static str, why: &'static str) -> Text {
    Text { name, ask, why, hint: "" }
}

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
    pub const fn text(self) -> Text {
        match self {
            Self::Word(word) => word_text(word),
            Self::Number(number) => number_text(number),
            Self::Concert => Text {
                hint: "Nothing planned: leave empty.",
                ..text("Next performance", "When must it be right?", "New strings must settle.")
            },
            Self::Bothers => text("Complaints", "What bothers you?", "Not all need new strings."),
            Self::Wishes => text("Wishes", "What do you wish?", "Every wish has its price."),
            Self::Flags(_) => {
                text("Special needs", "Does any hold?", "They rule some strings out.")
            }
            Self::AlsoTuned => Text {
                hint: "Leave both empty if there is only one.",
                ..text(
                    "Other pitch",
                    "Are the same strings used at another pitch too?",
                    "The highest pitch sets what they must bear.",
                )
            },
            Self::Strings => text(
                "String by string",
                "Is there more to say of one string?",
                "For a mixed set, an odd tuning, or one string that bothers.",
            ),
            Self::Weights => text(
                "Weights",
                "Set a weight by hand?",
                "Answers move the weights; a number here is taken instead.",
            ),
        }
    }
}

const fn word_text(word: Word) -> Text {
    match word {
        Word::Aim => text("What it is about", "What is it about?", "One may do."),
        Word::Instrument => text("Instrument", "Which instrument?", "It sets length and pitch."),
        Word::Size => text("Size", "Which size?", "Length decides the gauge."),
        Word::Tuning => text("Tuning", "How is it tuned?", "Pitch and length set the load."),
        Word::Temperament => text(
            "Temperament",
            "Which temperament?",
            "Pure fifths move the outer strings by cents.",
        ),
        Word::SetUp => text("Set-up", "How is it set up?", "Old ones bear less."),
        Word::Now => text("Strings now", "What strings are on it?", "Advice compares with them."),
        Word::Music => text("Music", "What is played?", "Each style asks differently."),
        Word::Level => text("Level", "How far along?", "Beginners need steadiness first."),
        Word::Pegs => text("Pegs", "What turns the strings?", "Stiff strings need fine steps."),
        Word::Tuners => text("Fine tuners", "Where are fine tuners?", "Steel needs them."),
        Word::WhoTunes => text("Who tunes", "Who tunes between lessons?", "Some strings drift."),
        Word::Room => text("Where it lives", "What is the air like?", "Damp and heat move pitch."),
        Word::Budget => text("Budget", "What may it cost?", "Dearer isn’t always better."),
    }
}

const fn number_text(number: Number) -> Text {
    const EMPTY: &str = "Leave empty if unknown.";
    match number {
        Number::Length => Text {
            hint: "Nut to bridge, along the outer string. Leave empty to take the size’s usual length.",
            ..text(
                "Sounding length",
                "What is the sounding length?",
                "A measured length narrows every range.",
            )
        },
        Number::A4 => Text {
            hint: EMPTY,
            ..text("Pitch of a′", "What is a′?", "Higher pitch, more load.")
        },
        Number::Age => {
            Text { hint: EMPTY, ..text("Age", "How old are they?", "Fresh ones may do.") }
        }
        Number::Days => text("Next performance", DAYS_ASK, ""),
        Number::AlsoA4 => text("Other pitch of a′", "Another a′", ""),
        Number::AlsoSemitones => Text {
            hint: "2 for a whole tone up, −1 for a semitone down.",
            ..text("Other tuning", "How far above the main tuning", "")
        },
        Number::AgeOf(_) => text("Age of the string", "How old it is", ""),
        Number::Wish(_) => text("Wish", "", ""),
        Number::Weight(_) => text("Weight", "", ""),
    }
}

/// The name by which a fault calls a number.
#[must_use]
pub fn number_name(number: Number) -> String {
    match number {
        Number::Wish(wish) => {
            let words = wish_words(wish);
            format!("Wish from {} to {}", words.low, words.high)
        }
        Number::Weight(i) => format!("Weight of {}", weight_name(i)),
        _ => number_text(number).name.to_owned(),
    }
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
pub const fn wish_words(wish: Wish) -> WishWords {
    match wish {
        Wish::Colour => WishWords {
            low: "steady",
            high: "colour",
            low_said: "It stays in tune.",
            high_said: "Every bow stroke sounds different.",
            low_more: "steadier",
            high_more: "more colour",
        },
        Wish::Brightness => WishWords {
            low: "dark",
            high: "bright",
            low_said: "Like a low, warm voice.",
            high_said: "Like a small bell.",
            low_more: "darker",
            high_more: "brighter",
        },
        Wish::Power => WishWords {
            low: "gentle",
            high: "powerful",
            low_said: "It sings in small rooms.",
            high_said: "It reaches the back row.",
            low_more: "gentler",
            high_more: "more powerful",
        },
        Wish::Feel => WishWords {
            low: "soft",
            high: "firm",
            low_said: "My fingers hardly work.",
            high_said: "It pushes back.",
            low_more: "softer",
            high_more: "firmer",
        },
        Wish::Response => WishWords {
            low: "broad",
            high: "quick",
            low_said: "I lean in and it blooms.",
            high_said: "It speaks at a touch.",
            low_more: "broader",
            high_more: "quicker",
        },
    }
}

/// The word for a number on the scale of a wish.
#[must_use]
pub fn wish_word(wish: Wish, value: f64) -> String {
    let words = wish_words(wish);
    let more = if value < 0.0 { words.low_more } else { words.high_more };
    match value.abs() {
        size if size < 0.25 => LIKE_NOW.to_owned(),
        size if size < 0.75 => format!("a little {more}"),
        size if size < 1.5 => more.to_owned(),
        _ => format!("much {more}"),
    }
}

/// The middle of every wish.
pub const LIKE_NOW: &str = "like now";

/// What can bother, with the words for it.
pub const BOTHERS: [(&str, &str); 15] = [
    ("too-bright", "Too bright"),
    ("thin", "Thin"),
    ("too-dull", "Too dull"),
    ("too-quiet", "Too quiet"),
    ("slow-to-speak", "Slow to speak"),
    ("chokes", "Chokes when pushed"),
    ("whistles", "Whistles"),
    ("wolf", "A wolf note"),
    ("out-of-tune", "Out of tune"),
    ("goes-flat", "Goes flat"),
    ("breaks", "Breaks"),
    ("breaks-at-the-peg", "Breaks at the peg"),
    ("false", "Sounds false"),
    ("hard-on-the-hand", "Hard on the hand"),
    ("uneven", "Uneven strings"),
];

/// What is true if a box is ticked.
#[must_use]
pub const fn flag_label(flag: Flag) -> &'static str {
    match flag {
        Flag::NickelAllergy => "Nickel irritates the skin",
        Flag::AcidSweat => "Sweat eats strings",
        Flag::AnimalFree => "Nothing from animals",
        Flag::MagneticPickup => "A magnetic pickup needs steel",
        Flag::HandPain => "The hand hurts",
        Flag::GutToItsLimit => "Plain gut on top, even if it breaks often",
        Flag::MustSettle => "It must have settled by the next performance",
    }
}

/// The short name of what a box says.
#[must_use]
pub const fn flag_name(flag: Flag) -> &'static str {
    match flag {
        Flag::NickelAllergy => "Nickel allergy",
        Flag::AcidSweat => "Acid sweat",
        Flag::AnimalFree => "Animal-free",
        Flag::MagneticPickup => "Magnetic pickup",
        Flag::HandPain => "Hand pain",
        Flag::GutToItsLimit => "Gut to its limit",
        Flag::MustSettle => "Settled in time",
    }
}

/// The families one can insist on.
pub const FAMILIES: [(&str, &str); 7] = [
    ("plain-gut", "Plain gut"),
    ("wound-gut", "Wound gut"),
    ("plain-steel", "Plain steel"),
    ("wound-steel", "Wound steel"),
    ("stranded-steel", "Stranded steel"),
    ("synthetic", "Synthetic"),
    ("monofilament", "Monofilament"),
];

/// A third of what is made.
pub const GAUGE_CLASSES: [(&str, &str); 3] =
    [("light", "Light"), ("medium", "Medium"), ("heavy", "Heavy")];

/// The name of a weight.
#[must_use]
pub fn weight_name(i: usize) -> &'static str {
    match fields::weight_key(i) {
        "feel" => "feel under the hand",
        "elasticity" => "elastic core",
        "settling" => "settling fast",
        "drift" => "computed drift",
        "fitters-judgement" => "steadiness, as fitters judge it",
        "response" => "quick response",
        "power" => "power",
        "brightness" => "brightness as wished",
        "ring" => "ring of a plucked note",
        "durability" => "reserve to breaking",
        "care" => "bears hands and sweat",
        "price" => "price",
        "availability" => "easy to get",
        "tuning" => "easy to tune",
        other => other,
    }
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

fn choice(key: &'static str, label: &str) -> Choice {
    Choice { key, label: label.to_owned(), hint: String::new() }
}

/// The words of a question's list; sizes and tunings are those of the instrument.
#[must_use]
pub fn choices(word: Word, answers: &Answers) -> Vec<Choice> {
    let list = |pairs: &[(&'static str, &str)]| {
        pairs.iter().map(|(key, label)| choice(key, label)).collect()
    };
    match word {
        Word::Aim => list(&[
            ("one-string", "One string"),
            ("whole-set", "The whole set"),
            ("is-it-time", "Is it time?"),
        ]),
        Word::Instrument => {
            instrument::ALL.iter().map(|kind| choice(kind.key, &capital(kind.name))).collect()
        }
        Word::Size => {
            let sizes = fields::kind(answers).sizes.iter();
            sizes
                .map(|size| Choice {
                    hint: format!("{:.0} mm", size.length_mm.0),
                    ..choice(size.key, size.key)
                })
                .collect()
        }
        Word::Tuning => {
            let tunings = fields::kind(answers).tunings.iter();
            tunings.map(|tuning| choice(tuning.key, &capital(tuning.name))).collect()
        }
        Word::Temperament => list(&[("equal", "Equal"), ("pure-fifths", "Pure fifths")]),
        Word::SetUp => {
            list(&[("modern", "Modern"), ("historical", "Historical"), ("light", "Old or light")])
        }
        Word::Now => list(&[("gut", "Gut"), ("synthetic", "Synthetic"), ("steel", "Steel")]),
        Word::Music => list(&[
            ("classical", "Classical"),
            ("early", "Early music"),
            ("folk", "Folk"),
            ("jazz", "Jazz"),
        ]),
        Word::Level => list(&[
            ("beginner", "Beginner"),
            ("student", "Student"),
            ("advanced", "Advanced"),
            ("professional", "Professional"),
        ]),
        Word::Pegs => list(&[
            ("friction", "Wooden pegs"),
            ("geared", "Geared pegs"),
            ("machine", "Machine heads"),
        ]),
        Word::Tuners => {
            list(&[("none", "Nowhere"), ("top", "Top string"), ("all", "Every string")])
        }
        Word::WhoTunes => {
            list(&[("player", "The player"), ("adult", "An adult"), ("nobody", "Nobody")])
        }
        Word::Room => list(&[
            ("steady", "The same all year"),
            ("seasonal", "Heated winters, warm summers"),
            ("damp", "Damp"),
            ("dry", "Dry"),
            ("travelling", "It travels"),
        ]),
        Word::Budget => {
            list(&[("modest", "Little"), ("middle", "The usual"), ("any", "Whatever is best")])
        }
    }
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
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
            None => match word {
                Word::Now => Some("Nothing to compare with".to_owned()),
                Word::Music => Some("Classical".to_owned()),
                Word::Level => Some("Any".to_owned()),
                Word::WhoTunes => Some("Somebody does".to_owned()),
                _ => None,
            },
        }?,
        Question::Number(Number::Length) => {
            let size = answers.size.as_deref().and_then(|key| kind.size(key));
            let size = size.or(kind.sizes.first())?;
            format!("{:.0} mm, and a wider range", size.length_mm.0)
        }
        Question::Number(Number::A4) => {
            let low = historical || answers.music.as_deref() == Some("early");
            (if low { "415 Hz" } else { "440 Hz" }).to_owned()
        }
        Question::Concert => "No date".to_owned(),
        Question::Bothers => "Nothing".to_owned(),
        Question::Wishes => "Everything like now".to_owned(),
        Question::Flags(_) => "None".to_owned(),
        Question::Number(_) => "Not old".to_owned(),
        Question::AlsoTuned => "Only this one".to_owned(),
        Question::Strings => "The tuning’s notes, any kind".to_owned(),
        Question::Weights => "They follow from the answers".to_owned(),
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
        let mut said = vec![screen.title.to_owned()];
        let answers = Answers::default();
        for question in screen.questions {
            let text = question.text();
            said.extend([text.ask, text.why, text.hint].map(str::to_owned));
            match question {
                Question::Word(word) => {
                    said.push(UNKNOWN.to_owned());
                    // The path shows no hints beside choices: they are for the bench.
                    said.extend(choices(*word, &answers).into_iter().map(|c| c.label));
                }
                Question::Number(number) => {
                    said.extend(number.units().iter().map(|unit| unit.label.to_owned()));
                }
                Question::Concert => said.extend([DAYS_ASK, DATE_ASK, "days"].map(str::to_owned)),
                Question::Bothers => said.extend(BOTHERS.map(|(_, label)| label.to_owned())),
                Question::Wishes => {
                    for wish in Wish::ALL {
                        let w = wish_words(wish);
                        let all = [w.low, w.high, w.low_said, w.high_said, LIKE_NOW];
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
        said.extend(["Back", "1 of 8", "Continue", "Find strings"].map(str::to_owned));
        said
    }

    #[test]
    fn the_path_has_at_most_eight_screens_and_450_words() {
        const { assert!(SCREENS <= 8) };
        let words: Vec<usize> = PATH
            .iter()
            .map(|screen| said(screen).iter().map(|text| text.split_whitespace().count()).sum())
            .collect();
        let total: usize = words.iter().sum();
        println!("words of each screen: {words:?}, together {total}");
        assert!(total <= 450, "{words:?}, together {total}");
    }

    #[test]
    fn every_question_says_why_it_is_asked() {
        for screen in PATH.iter().chain(EVERYTHING) {
            for question in screen.questions {
                let text = question.text();
                assert!(!text.name.is_empty() && text.ask.len() > 5, "{question:?}");
                assert!((3..=14).contains(&text.why.split_whitespace().count()), "{text:?}");
            }
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
        assert_eq!(&BOTHERS.map(|(key, _)| key)[..], &tables.words["bothers"][..]);
        assert_eq!(&GAUGE_CLASSES.map(|(key, _)| key)[..], &tables.words["gauge_class"][..]);
        assert_eq!(&FAMILIES.map(|(key, _)| key)[..], &tables.words["family"][..]);
        for (i, attribute) in tables.words["attribute"].iter().enumerate() {
            assert_eq!(fields::weight_key(i), attribute);
            assert_ne!(weight_name(i), "");
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
