//! An invented workshop in a small harbour town that looks after a youth orchestra's instruments: three fittings to look
//! at before one has any of one's own.
//!
//! Every one is marked as invented, here, in its name and in what is saved, so that all can be taken away again.

use protocol::document::{self, Fitting};

use crate::words::speech;

/// The examples, as a saved file: a viola that has become dull, three weeks before a concert; a growing child's violin,
/// which an adult tunes; a cello whose player wants more to say.
const FILE: &str = include_str!("invented.json");

/// What an example is called; none where this build has no such example.
#[must_use]
pub fn name(key: &str) -> Option<&'static str> {
    speech::of("invented", key)
}

/// The examples as they are kept, at this time.
#[must_use]
pub fn fittings(at: &str) -> Vec<Fitting> {
    let (file, _) = document::restore(FILE);
    let called = |mut fitting: Fitting| {
        at.clone_into(&mut fitting.at);
        let name = fitting.invented.as_deref().and_then(name);
        fitting.label = name.unwrap_or_default().to_owned();
        fitting
    };
    file.fittings.into_iter().map(called).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use protocol::reply::Reply;
    use protocol::request::{FitRequest, Request};

    #[test]
    fn every_example_has_a_name_that_says_so_and_a_set() {
        assert_eq!(document::restore(FILE).1, []);
        let fittings = fittings("2031-05-09");
        assert_eq!(fittings.len(), 3);
        for fitting in fittings {
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
