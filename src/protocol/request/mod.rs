//! What can be asked.

mod answers;
mod string;

use strings::simulate::sound as sounds;

pub use self::answers::{AlsoTuned, Answers, StringAnswer, Today, Wishes};
pub use self::string::{Construction, Core, Setting, Winding};
use crate::allowed::{self, COUNTS, LOUDNESSES, MOST_STRINGS};
use crate::wire::{tagged, wire};

tagged! {
    /// A question to the model.
    pub enum Request by "ask" {
        /// Everything about one string in one setting.
        Report(Box<ReportRequest>) = "report",
        /// Two strings at one place, and whether they differ noticeably.
        Compare(Box<CompareRequest>) = "compare",
        /// Strings at pitch, of which more is wound over the nut, or let back.
        Stretch(Box<StretchRequest>) = "stretch",
        /// How strings wander through a year in their room.
        Year(Box<YearRequest>) = "year",
        /// The most usual string of every family that is made for one place of an instrument.
        Place(Box<PlaceRequest>) = "place",
        /// A set of strings for a person and an instrument.
        Fit(Box<FitRequest>) = "fit",
        /// How sure the choice is that a fit of these answers makes, and what would turn it.
        Certainty(Box<FitRequest>) = "certainty",
        /// The tables: instruments, materials, precedents, words, bounds, sources.
        Tables(TablesRequest) = "tables",
        /// Where a string speaks under the bow, row by row.
        BowMap(Box<BowMapRequest>) = "bow-map",
        /// What one would hear of strings, on a generic body of their family.
        Sound(Box<SoundRequest>) = "sound",
    }
}

wire! {
    /// Everything about one string in one setting.
    pub closed struct ReportRequest {
        /// What the string is made of.
        pub construction: Construction,
        /// Where it works.
        pub setting: Setting,
    }

    /// Two strings at one place.
    pub closed struct CompareRequest {
        /// One string.
        pub this: Construction,
        /// The other.
        pub other: Construction,
        /// Where both work.
        pub setting: Setting,
    }

    /// Strings at pitch, of which more is wound over the nut, or let back.
    pub closed struct StretchRequest {
        /// The strings, in any order; one to eight.
        #[schemars(length(min = 1, max = MOST_STRINGS))]
        pub strings: Vec<Player>,
        /// How much of each, as it lies at pitch, is wound over the nut; negative where it is let back. −0.5 to 0.05 m.
        pub pull_m: f64,
    }

    /// How strings wander through a year in their room.
    pub closed struct YearRequest {
        /// The strings, in any order; one to eight. The room is in their settings.
        #[schemars(length(min = 1, max = MOST_STRINGS))]
        pub strings: Vec<Player>,
    }

    /// What is made for one place of an instrument.
    pub closed struct PlaceRequest {
        /// The instrument and its room, as for a fit.
        pub answers: Answers,
        /// Which string, 0 the highest.
        #[schemars(range(max = allowed::most_strings() - 1))]
        pub string: usize,
    }

    /// A set of strings for a person and an instrument.
    pub closed struct FitRequest {
        /// What the person says; every answer may be missing.
        pub answers: Answers,
    }

    /// The tables need no more.
    pub closed struct TablesRequest {}

    /// Where a string speaks under the bow.
    pub closed struct BowMapRequest {
        /// `place` (force against place of the bow), `attack` (force against acceleration from rest) or
        /// `window` (between which forces it keeps a clean note where bows usually are).
        pub map: String,
        /// Whose generic body it is: `violin`, `viola`, `cello`, `double-bass`.
        pub instrument: String,
        /// What the string is made of.
        pub construction: Construction,
        /// Where it works.
        pub setting: Setting,
        /// Rows and columns, 2 to 48; 24 if left out. A window has none.
        #[serde(skip_serializing_if = "Option::is_none")]
        #[schemars(range(min = COUNTS.0, max = COUNTS.1))]
        pub count: Option<usize>,
        /// One row alone, from 0; every row if left out. A window has none.
        #[serde(skip_serializing_if = "Option::is_none")]
        #[schemars(range(max = COUNTS.1 - 1))]
        pub row: Option<usize>,
    }

    /// Strings of one instrument that are played.
    pub closed struct SoundRequest {
        /// `open-string`, `scale`, `swell` or `pizzicato`.
        pub piece: String,
        /// Whose generic body it is: `violin`, `viola`, `cello`, `double-bass`.
        pub instrument: String,
        /// The strings, in any order; one to eight.
        #[schemars(length(min = 1, max = MOST_STRINGS))]
        pub strings: Vec<Player>,
        /// Loudness to which it is brought, −60 to −9 LUFS; −23 if left out.
        #[schemars(range(min = LOUDNESSES.0, max = LOUDNESSES.1))]
        pub loudness_lufs: f64 = sounds::LOUDNESS,
    }

    /// One string that is played.
    pub closed struct Player {
        /// What it is made of.
        pub construction: Construction,
        /// Where it works.
        pub setting: Setting,
    }
}
