//! An invented workshop in a small harbour town that looks after a youth orchestra's instruments: three fittings to look
//! at before one has any of one's own.
//!
//! Every one is marked as invented, here, in its name and in what is saved, so that all can be taken away again.

use protocol::document::Fitting;
use protocol::request::{Answers, Wishes};

use crate::words::speech;

/// An example: its key, and what is said of it.
type Example = (&'static str, fn() -> Answers);

/// The examples.
const EXAMPLES: [Example; 3] =
    [("desk-3-viola", viola), ("desk-1-violin", violin), ("desk-2-cello", cello)];

/// What an example is called; none where this build has no such example.
#[must_use]
pub fn name(key: &str) -> Option<&'static str> {
    speech::of("invented", key)
}

/// The examples as they are kept, at this time.
#[must_use]
pub fn fittings(at: &str) -> Vec<Fitting> {
    let fitting = |(key, answers): Example| Fitting {
        at: at.to_owned(),
        label: name(key).unwrap_or(key).to_owned(),
        answers: answers(),
        invented: Some(key.to_owned()),
        ..Fitting::default()
    };
    EXAMPLES.map(fitting).to_vec()
}

fn word(word: &str) -> Option<String> {
    Some(word.to_owned())
}

/// A viola that has become dull, three weeks before a concert.
fn viola() -> Answers {
    Answers {
        instrument: word("viola"),
        size: word("15 in"),
        now: word("synthetic"),
        age_months: Some(14.0),
        bothers: ["too-dull", "slow-to-speak"].map(str::to_owned).to_vec(),
        music: word("classical"),
        level: word("student"),
        tuners: word("top"),
        room: word("damp"),
        concert_days: Some(21.0),
        budget: word("middle"),
        ..Answers::default()
    }
}

/// A growing child's violin, which an adult tunes.
fn violin() -> Answers {
    Answers {
        instrument: word("violin"),
        size: word("3/4"),
        now: word("steel"),
        age_months: Some(20.0),
        bothers: vec!["too-bright".to_owned()],
        level: word("beginner"),
        tuners: word("all"),
        who_tunes: word("adult"),
        room: word("seasonal"),
        budget: word("modest"),
        ..Answers::default()
    }
}

/// A cello whose player wants more to say.
fn cello() -> Answers {
    Answers {
        instrument: word("cello"),
        size: word("4/4"),
        now: word("steel"),
        age_months: Some(30.0),
        wishes: Wishes { colour: 1.0, ..Wishes::default() },
        music: word("classical"),
        level: word("advanced"),
        pegs: word("geared"),
        room: word("damp"),
        budget: word("any"),
        ..Answers::default()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use protocol::reply::Reply;
    use protocol::request::{FitRequest, Request};

    #[test]
    fn every_example_has_a_name_that_says_so_and_a_set() {
        for fitting in fittings("2031-05-09") {
            assert!(fitting.label.ends_with("(invented)"), "{}", fitting.label);
            let answers = fitting.answers.clone();
            let request = Request::Fit(Box::new(FitRequest { answers }));
            let Reply::Fit(fit) = protocol::handle(&request) else {
                panic!("{} is refused", fitting.label)
            };
            assert!(fit.set.is_some(), "{} has no set", fitting.label);
        }
    }
}
