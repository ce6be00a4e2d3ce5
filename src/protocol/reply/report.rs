//! What is told of a string: its numbers with their ranges, and two strings beside each other.

use std::collections::BTreeMap;

use crate::request;
use crate::wire::wire;

wire! {
    /// A number with its 90 % range, how it is known and where its formula comes from.
    pub struct Quantity {
        /// Central value.
        pub value: f64,
        /// Lower end of the range.
        pub low: f64,
        /// Upper end of the range.
        pub high: f64,
        /// `measured`, `published`, `computed`, `judged` or `guessed`.
        pub evidence: String,
        /// Key of the source.
        pub source: String,
    }

    /// A sum with its range.
    pub struct Range {
        /// Central value.
        pub value: f64,
        /// Lower end.
        pub low: f64,
        /// Upper end.
        pub high: f64,
    }

    /// Everything about one string.
    pub struct Report {
        /// The string, as asked.
        pub construction: request::Construction,
        /// The setting, with everything that was left out filled in.
        pub setting: request::Setting,
        /// The family the trade would put it in.
        pub family: String,
        /// Every property by its name, which carries the unit.
        pub numbers: BTreeMap<String, Quantity>,
        /// The first partials, with what each loses and to what.
        pub partials: Vec<Partial>,
        /// The days after fitting, with what each costs in pitch.
        pub nights: Vec<Night>,
        /// What the doubt about the main properties comes from, the three largest shares of each.
        pub doubts: BTreeMap<String, Vec<Doubt>>,
        /// `stress-not-measured`, `wire-not-tabled`, `breaks`: where the numbers stand on ground that was not measured.
        pub caveats: Vec<String>,
    }

    /// A partial of a plucked or released string.
    pub struct Partial {
        /// Which, from 1.
        pub n: u32,
        /// Its frequency.
        pub frequency_hz: f64,
        /// How far it lies above n times the first.
        pub sharpness_cent: f64,
        /// Loss factor to the air.
        pub loss_air: f64,
        /// Loss factor of the string in its pull.
        pub loss_string: f64,
        /// Loss factor in bending, core and windings.
        pub loss_bending: f64,
        /// Loss factor to the instrument.
        pub loss_bridge: f64,
        /// Q on ends that do not give.
        pub q: f64,
        /// Seconds in which it falls by 60 dB on the instrument.
        pub ring_s: f64,
        /// The largest of the losses: `air`, `string`, `bending` or `bridge`.
        pub most: String,
    }

    /// A day after fitting, retuned every evening.
    pub struct Night {
        /// Which, from 1.
        pub day: u32,
        /// Pitch lost in it, in cents.
        pub lost_cent: Range,
        /// Chance that it costs no more than five cents and everything has seated.
        pub chance: f64,
    }

    /// What a doubt comes from.
    pub struct Doubt {
        /// Key of the material, or empty for a number that belongs to none.
        pub owner: String,
        /// Which number of it.
        pub which: String,
        /// Its share of the variance.
        pub share: f64,
    }

    /// Two strings at one place.
    pub struct Compare {
        /// One string.
        pub this: Report,
        /// The other.
        pub other: Report,
        /// How they compare in each property that a player notices; what is uncertain in both is shared.
        pub comparisons: Vec<Comparison>,
    }

    /// How two strings compare in one property.
    pub struct Comparison {
        /// Which property.
        pub property: String,
        /// Value of this string.
        pub this: f64,
        /// Value of the other.
        pub other: f64,
        /// `above`, `below`, `alike` where no difference is noticed, `rather-above` or `rather-below` where it is sure which but not that it is noticed, or `undecided`. Of a change of pitch its size is compared, whichever way it goes.
        pub verdict: String,
        /// Chance that it lies above by a just-noticeable difference.
        pub chance_above: f64,
        /// Chance that it lies below by one.
        pub chance_below: f64,
        /// Chance that it lies above by however little.
        pub chance_at_all: f64,
    }
}
