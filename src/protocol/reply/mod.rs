//! What comes back.

mod bowed;
mod certainty;
mod fit;
mod lesson;
mod report;
mod set;
mod tables;

use serde_json::Value;
use strings::error;

pub use self::bowed::{BowCell, BowMap, BowRow, BowWindow, Sound};
pub use self::certainty::{
    AnswerValue, Certainty, KeyShare, NextFamilies, SureShare, SureString, TurnedString,
    TurningPointTold,
};
pub use self::fit::{
    Assumed, Cause, CauseNumber, Finding, Fit, LimitCount, Obstacle, Problem, Verdict, Weight,
    WeightStep,
};
pub use self::lesson::{Drifting, FamilyAtPlace, MonthDrift, Place, Stretch, Stretched, Year};
pub use self::report::{Compare, Comparison, Doubt, Night, Partial, Quantity, Range, Report};
pub use self::set::{
    AttributeWorth, Bands, Caution, FittedString, KindDifference, OtherKind, Plan, Point, Reason,
    RuledOut, RunnerUp, Searched, Set, Shopping, Step,
};
pub use self::tables::{
    Constant, CoreMaterial, FittedTo, Instrument, Precedent, PropertyEntry, Size, Source, Tables,
    Tuning, Unverified, WindingMetal,
};
pub use crate::allowed::ONE_OF;
use crate::read::{self, Read, Reader, Unread};
use crate::wire::{tagged, wire};

tagged! {
    /// An answer of the model.
    ///
    /// It is written with its name in the member `reply`, and read by [`Reply::read`].
    pub enum Reply by "reply" {
        /// Everything about one string.
        Report(Box<Report>) = "report",
        /// Two strings at one place.
        Compare(Box<Compare>) = "compare",
        /// Strings of which more was wound over the nut.
        Stretch(Box<Stretch>) = "stretch",
        /// How strings wander through a year.
        Year(Box<Year>) = "year",
        /// What is made for a place.
        Place(Box<Place>) = "place",
        /// A set, or why there is none.
        Fit(Box<Fit>) = "fit",
        /// How sure the choice is, and what would turn it.
        Certainty(Box<Certainty>) = "certainty",
        /// The tables.
        Tables(Box<Tables>) = "tables",
        /// Where a string speaks under the bow.
        BowMap(Box<BowMap>) = "bow-map",
        /// What one would hear.
        Sound(Box<Sound>) = "sound",
        /// The request could not be read: every fault by its field.
        Refused(Refused) = "refused",
    }
}

impl Reply {
    /// Reads a reply from its text.
    ///
    /// # Errors
    /// When the text is no reply of this build; the error names the place.
    pub fn read(text: &str) -> Result<Self, Unread> {
        read::tree(&read::parsed(text)?)
    }
}

impl Read for Reply {
    fn read<'a>(value: &'a Value, reader: &mut Reader<'a>) -> Self {
        let name = reader.member(value, "reply");
        let known = reader.text(name);
        Self::of_name(known, value, reader).unwrap_or_else(|| {
            reader.not(name, "the name of a reply");
            Self::Refused(Refused { faults: Vec::new() })
        })
    }
}

wire! {
    /// Every fault of a request.
    pub struct Refused {
        /// The faults, in the order of the request.
        pub faults: Vec<Fault>,
    }

    /// One thing wrong with a request.
    pub struct Fault {
        /// The field.
        pub field: String,
        /// What it held.
        pub value: String,
        /// What it takes.
        pub allowed: String,
        /// The same as numbers, where it takes a range.
        #[serde(skip_serializing_if = "Option::is_none")]
        pub range: Option<Bound>,
        /// The three in one sentence.
        pub message: String,
    }

    /// The range of a numeric input.
    pub struct Bound {
        /// What it is.
        pub what: String,
        /// Smallest.
        pub min: f64,
        /// Largest.
        pub max: f64,
        /// Unit.
        pub unit: String,
    }
}

impl Fault {
    /// A fault in `field`, which held `value` although only `allowed` will do.
    #[must_use]
    pub fn new(field: &str, value: String, allowed: String) -> Self {
        Self::of(error::Fault::new(field, value, allowed))
    }

    /// A fault of the model as it is told to others.
    pub(crate) fn of(fault: error::Fault) -> Self {
        let message = fault.to_string();
        let error::Fault { field, value, allowed, range } = fault;
        Self { field, value, allowed, range: range.map(Bound::of), message }
    }
}

impl Bound {
    /// A range of the model as it is told to others.
    pub(crate) fn of(bound: error::Bound) -> Self {
        let error::Bound { what, min, max, unit } = bound;
        Self { what: what.to_owned(), min, max, unit: unit.to_owned() }
    }
}
