//! What the questions say, and that they are those of the model.

use super::*;
use crate::route::SCREENS;
use protocol::reply::Reply;
use protocol::request::{FitRequest, Request, TablesRequest};
use strings::construction::Family;
use strings::fit::answers::GaugeClass;

/// Everything a screen of the path says, for a violin.
fn said(screen: &Screen) -> Vec<String> {
    let mut said = vec![screen.title().to_owned()];
    let answers = Answers { instrument: Some("violin".to_owned()), ..Answers::default() };
    for question in screen.questions.iter().filter(|question| !waits(**question, &answers)) {
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
            Question::Bothers => {
                said.extend(BOTHERS.iter().map(|key| bother_label(key).to_owned()));
                // What is asked once something is ticked.
                said.push(say!("bother-only-on", bother = ""));
            }
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
fn the_path_has_at_most_eight_screens_and_600_words() {
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
        assert!(total <= 600, "{language:?}: {words:?}, together {total}");
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
        let answers = Answers { instrument: Some(instrument.key.to_owned()), ..Answers::default() };
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
        Family::ALL.map(Family::key).iter().for_each(|key| has(format!("family-{key}")));
        Family::ALL.map(Family::key).iter().for_each(|key| has(format!("family-is-{key}")));
        Family::ALL.map(Family::key).iter().for_each(|key| has(format!("kind-{key}.listed")));
        GaugeClass::KEYS.iter().for_each(|key| has(format!("gauge-{key}.listed")));
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
                        Word::Tuning => fields::kind(&answers).tuning(key).unwrap().name.to_owned(),
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
