//! What a class is told: a string stretched, a year in a room, what is made for a place.

use super::report::{Range, Report};
use crate::request::Setting;
use crate::wire::wire;

wire! {
    /// Strings of which more was wound over the nut.
    pub struct Stretch {
        /// How much of each.
        pub pull_m: f64,
        /// The strings, in the order of the request.
        pub strings: Vec<Stretched>,
    }

    /// A string of which more was wound over the nut.
    pub struct Stretched {
        /// The whole length over which it stretches, from peg to tailpiece.
        pub whole_length_m: f64,
        /// How much must be let back from pitch until it hangs slack.
        pub slack_m: Range,
        /// Its stretch now; zero where it is slack.
        pub stretch: Range,
        /// Its tension now.
        pub tension_n: Range,
        /// How far it lies above its pitch now; none where it may be slack.
        pub above_cent: Option<Range>,
        /// Its pitch now; none where it may be slack.
        pub pitch_hz: Option<f64>,
        /// Diameter of its core now.
        pub core_diameter_m: Range,
        /// Its outer diameter now.
        pub outer_diameter_m: Range,
        /// Share of its breaking strength now; from 1 on it has broken.
        pub breaking_share: Range,
    }

    /// How strings wander through a year.
    pub struct Year {
        /// The strings, in the order of the request.
        pub strings: Vec<Drifting>,
    }

    /// A string through a year.
    pub struct Drifting {
        /// January to December.
        pub months: Vec<MonthDrift>,
    }

    /// A string in a month.
    pub struct MonthDrift {
        /// Which month, 1 is January.
        pub month: usize,
        /// Temperature of the room then.
        pub temperature_c: f64,
        /// Relative humidity of the room then.
        pub humidity: f64,
        /// How far the string lies above where it stands in the middle of the room's swing, untuned.
        pub above_cent: Range,
    }

    /// What is made for one place of an instrument.
    pub struct Place {
        /// The notes of the instrument, highest first.
        pub notes: Vec<String>,
        /// Which string it is, 0 the highest.
        pub string: usize,
        /// Where it works.
        pub setting: Setting,
        /// The most usual string of each family that is made there, in the order in which the trade met them.
        pub families: Vec<FamilyAtPlace>,
    }

    /// The most usual string of a family at a place.
    pub struct FamilyAtPlace {
        /// How commonly it is made there: `everyday`, `sometimes`, `nobody`.
        pub grade: String,
        /// Everything about it.
        pub report: Report,
    }
}
