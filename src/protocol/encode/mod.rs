//! What the model found, as replies tell it: words and plain numbers with the unit in the name.

mod certainty;
mod fit;
mod report;
mod set;
mod tables;

use strings::precedent::Grade;
use strings::report::Estimate;
use strings::source::Evidence;

pub(crate) use self::certainty::certainty_of;
pub(crate) use self::fit::fit_of;
pub(crate) use self::report::{compare_of, report_of};
pub(crate) use self::tables::tables;
use crate::reply;

fn evidence(e: Evidence) -> String {
    match e {
        Evidence::Measured => "measured",
        Evidence::Published => "published",
        Evidence::Computed => "computed",
        Evidence::Judged => "judged",
        Evidence::Guessed => "guessed",
    }
    .to_owned()
}

pub(crate) fn grade(g: Grade) -> String {
    match g {
        Grade::Everyday => "everyday",
        Grade::Sometimes => "sometimes",
        Grade::Nobody => "nobody",
    }
    .to_owned()
}

/// A number with its range.
pub(crate) fn range(e: Estimate) -> reply::Range {
    reply::Range { value: e.value, low: e.low, high: e.high }
}
