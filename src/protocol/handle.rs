//! Answers a request.

use strings::error::Fault;
use strings::fit;

use crate::bowed;
use crate::convert;
use crate::encode::{certainty_of, compare_of, fit_of, report_of, tables};
use crate::lesson;
use crate::parse;
use crate::reply::{self, Reply};
use crate::request::Request;

/// Answers one request given as JSON text with one reply as JSON text; never fails.
#[must_use]
pub fn answer(request: &str) -> String {
    written(&reply_to(request, &mut |_| ()))
}

/// As [`answer`], for bytes as they come from outside: those that are no UTF-8 text are refused like any other.
#[must_use]
pub fn answer_bytes(request: &[u8]) -> String {
    match core::str::from_utf8(request) {
        Ok(text) => answer(text),
        Err(error) => {
            let at = error.valid_up_to();
            let value =
                format!("byte {:#04x} at {at}", request.get(at).copied().unwrap_or_default());
            written(&refused(vec![Fault::new("request", value, "one JSON object, in UTF-8")]))
        }
    }
}

/// As [`answer`], but tells how far a long answer is, as a share, and hands the samples of a sound apart from the text.
#[must_use]
pub fn answer_telling(request: &str, tell: &mut dyn FnMut(f64)) -> (String, Option<Vec<f32>>) {
    let mut reply = reply_to(request, tell);
    let samples = match &mut reply {
        Reply::Sound(sound) => Some(core::mem::take(&mut sound.samples)),
        _ => None,
    };
    (written(&reply), samples)
}

fn reply_to(request: &str, tell: &mut dyn FnMut(f64)) -> Reply {
    match parse::request(request) {
        Ok(Request::Sound(r)) => bowed::sound(&r, tell).unwrap_or_else(refused),
        Ok(request) => handle(&request),
        Err(fault) => refused(vec![fault]),
    }
}

pub(crate) fn written(reply: &Reply) -> String {
    // A reply holds numbers, words and maps with text keys only; writing it cannot fail.
    serde_json::to_string(reply).unwrap_or_default()
}

fn refused(faults: Vec<Fault>) -> Reply {
    Reply::Refused(reply::Refused { faults: faults.into_iter().map(reply::Fault::of).collect() })
}

/// Answers one request.
#[must_use]
pub fn handle(request: &Request) -> Reply {
    match request {
        Request::BowMap(r) => bowed::map(r).unwrap_or_else(refused),
        Request::Sound(r) => bowed::sound(r, &mut |_| ()).unwrap_or_else(refused),
        Request::Report(r) => {
            let (construction, setting) = (
                convert::construction(&r.construction, "construction"),
                convert::setting(&r.setting, "setting"),
            );
            match (construction, setting) {
                (Ok(construction), Ok(setting)) => {
                    Reply::Report(Box::new(report_of(&construction, &setting)))
                }
                (construction, setting) => refused(
                    [construction.err(), setting.err()].into_iter().flatten().flatten().collect(),
                ),
            }
        }
        Request::Compare(r) => {
            let this = convert::construction(&r.this, "this");
            let other = convert::construction(&r.other, "other");
            let setting = convert::setting(&r.setting, "setting");
            match (this, other, setting) {
                (Ok(this), Ok(other), Ok(setting)) => {
                    Reply::Compare(Box::new(compare_of(&this, &other, &setting)))
                }
                (this, other, setting) => {
                    let all = [this.err(), other.err(), setting.err()];
                    refused(all.into_iter().flatten().flatten().collect())
                }
            }
        }
        Request::Stretch(r) => lesson::stretch(r).unwrap_or_else(refused),
        Request::Year(r) => lesson::year(r).unwrap_or_else(refused),
        Request::Place(r) => lesson::place(r).unwrap_or_else(refused),
        Request::Fit(f) => match convert::answers(&f.answers) {
            Ok(answers) => Reply::Fit(Box::new(fit_of(&answers, &fit::fit(&answers)))),
            Err(faults) => refused(faults),
        },
        Request::Certainty(f) => match convert::answers(&f.answers) {
            Ok(answers) => Reply::Certainty(Box::new(certainty_of(&answers))),
            Err(faults) => refused(faults),
        },
        Request::Tables(_) => Reply::Tables(Box::new(tables())),
    }
}
