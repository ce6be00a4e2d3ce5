//! What a person says.

use std::collections::BTreeMap;

use serde_json::Value;
use strings::error;

use crate::allowed::{self, MOST_TUNINGS};
use crate::read::{self, Unread};
use crate::wire::wire;

wire! {
    /// What a person says. Every answer may be missing, which widens the range and never blocks.
    pub sparse struct Answers {
        /// `one-string`, `whole-set` or `is-it-time`; `whole-set` if left out.
        pub aim: Option<String>,
        /// `violin`, `viola`, `cello`, `double-bass`.
        pub instrument: Option<String>,
        /// A size of that instrument, as the tables list them: `4/4`, `15 in`.
        pub size: Option<String>,
        /// Sounding length, if measured, 0.15 to 1.3 m.
        pub sounding_length_m: Option<f64>,
        /// A tuning of that instrument, as the tables list them.
        pub tuning: Option<String>,
        /// Pitch of a′, 392 to 466.2 Hz.
        pub a4_hz: Option<f64>,
        /// Other pitches at which the same strings are used.
        #[schemars(length(max = MOST_TUNINGS))]
        pub also_tuned: Vec<AlsoTuned>,
        /// `equal` or `pure-fifths`.
        pub temperament: Option<String>,
        /// Per string, highest first.
        #[schemars(length(max = allowed::most_strings()))]
        pub strings: Vec<StringAnswer>,
        /// `modern`, `historical` or `light` (modern in shape, but old, light or valuable).
        pub set_up: Option<String>,
        /// What is on it now: `gut`, `synthetic`, `steel`.
        pub now: Option<String>,
        /// How old that is, 0 to 600 months.
        pub age_months: Option<f64>,
        /// What bothers: `too-bright`, `thin`, `too-dull`, `too-quiet`, `slow-to-speak`, `chokes`, `whistles`, `wolf`,
        /// `out-of-tune`, `goes-flat`, `breaks`, `breaks-at-the-peg`, `false`, `hard-on-the-hand`, `uneven`.
        pub bothers: Vec<String>,
        /// What is wished.
        pub wishes: Wishes,
        /// `classical`, `early`, `folk`, `jazz`.
        pub music: Option<String>,
        /// `bowed`, `plucked` or `both`: what is done mostly.
        pub played: Option<String>,
        /// How long a plucked note should ring: `short`, `long`.
        pub ring: Option<String>,
        /// How it is amplified: `magnet` (which hears only steel), `bridge`, `microphone`; not at all if left out.
        pub amplified: Option<String>,
        /// Whose instrument it is: `player`, `school`, `loan` (lent or rented out).
        pub belongs_to: Option<String>,
        /// Whether a tuning other than the usual one stays: `for-good`, `sometimes`.
        pub tuned_so: Option<String>,
        /// The most that all strings together may pull, 40 to 3000 N.
        pub most_load_n: Option<f64>,
        /// `beginner`, `student`, `advanced`, `professional`.
        pub level: Option<String>,
        /// `friction`, `geared`, `machine`.
        pub pegs: Option<String>,
        /// Fine tuners: `none`, `top`, `all`.
        pub tuners: Option<String>,
        /// Who tunes between lessons: `player`, `adult`, `nobody`.
        pub who_tunes: Option<String>,
        /// Where it lives: `steady`, `seasonal`, `damp`, `dry`, `travelling`.
        pub room: Option<String>,
        /// Days until it matters, 0 to 3650.
        pub concert_days: Option<f64>,
        /// The set must have settled by then: a chance under 20 % excludes, one under 80 % warns.
        pub must_settle: bool,
        /// `modest`, `middle`, `any`.
        pub budget: Option<String>,
        /// Skin that cannot bear nickel.
        pub nickel_allergy: bool,
        /// Sweat that eats metal.
        pub acid_sweat: bool,
        /// Nothing from animals.
        pub animal_free: bool,
        /// The hand hurts.
        pub hand_pain: bool,
        /// A plain gut top string in spite of its breaking.
        pub gut_to_its_limit: bool,
        /// Weights set by hand, by attribute, 0 to 10; the others follow from the answers.
        #[schemars(extend(
            "propertyNames" = allowed::word("attribute"),
            "additionalProperties" = allowed::number(error::WEIGHT)
        ))]
        pub weights: BTreeMap<String, f64>,
    }

    /// What a person says of one string.
    pub sparse struct StringAnswer {
        /// Tuned to another note than the tuning says: `E4`, `F#1`, `Bb3`.
        pub note: Option<String>,
        /// Must be of this family: `plain-gut`, `wound-gut`, `plain-steel`, `wound-steel`, `stranded-steel`,
        /// `synthetic`, `monofilament`.
        pub family: Option<String>,
        /// What is there now.
        pub today: Today,
        /// What bothers about this string alone, in the words of the whole set's `bothers`.
        pub bothers: Vec<String>,
        /// It stays as it is; its family must be known, from `today` or from the whole set's `now`.
        pub keep: bool,
        /// The most it may pull, 5 to 600 N.
        pub most_tension_n: Option<f64>,
    }

    /// What is known of the string that is there now.
    pub sparse struct Today {
        /// Its family, by the words of `strings[i].family`.
        pub family: Option<String>,
        /// `light`, `medium` or `heavy`.
        pub gauge_class: Option<String>,
        /// The metal under the fingers, by the words of a winding's `metal`.
        pub outer_metal: Option<String>,
        /// How old it is, 0 to 600 months; as the whole set if left out.
        pub age_months: Option<f64>,
    }

    /// Another pitch at which the same strings are used.
    pub sparse struct AlsoTuned {
        /// Pitch of a′ there, 392 to 466.2 Hz; the main one if left out.
        pub a4_hz: Option<f64>,
        /// How far above the main tuning, −12 to 12 semitones; 0 if left out.
        pub semitones: Option<f64>,
    }

    /// Five opposites, each from −2 to 2; 0 is "like now".
    pub closed struct Wishes {
        /// −2 steady, 2 colour.
        pub colour: f64 = 0.0,
        /// −2 dark, 2 bright.
        pub brightness: f64 = 0.0,
        /// −2 gentle, 2 powerful.
        pub power: f64 = 0.0,
        /// −2 soft under the hand, 2 firm.
        pub feel: f64 = 0.0,
        /// −2 broad, 2 quick to speak.
        pub response: f64 = 0.0,
    }
}

impl Answers {
    /// Reads answers from a tree of JSON.
    ///
    /// # Errors
    /// When anything of them cannot be read; the error names the place.
    pub fn read(answers: &Value) -> Result<Self, Unread> {
        read::tree(answers)
    }
}
