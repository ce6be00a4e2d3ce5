//! What a person says. Every answer may be missing: "I don't know" is one.

use crate::construction::Family;
pub use crate::instrument::Temperament;
use crate::instrument::{Kind, Size, Tuning};
use crate::material::{Class, Metal};
use crate::pitch::Note;
pub use crate::precedent::SetUp;
use crate::quantity::{Hertz, Metre};

words! {
    /// What the person wants to know.
    Aim {
        /// Which string to put in place of one.
        OneString = "one-string",
        /// Which set.
        WholeSet = "whole-set",
        /// Whether to change anything.
        IsItTime = "is-it-time",
    }
    /// A third of the tension band of what is made.
    GaugeClass {
        /// The lowest third.
        Light = "light",
        /// The middle third.
        Medium = "medium",
        /// The highest third.
        Heavy = "heavy",
    }
    /// What is on the instrument now.
    Now {
        /// Gut, plain or wound.
        Gut = "gut",
        /// Synthetic cores.
        Synthetic = "synthetic",
        /// Steel cores.
        Steel = "steel",
    }
    /// What bothers the player.
    Bother {
        /// Too bright or harsh.
        TooBright = "too-bright",
        /// Thin, without body.
        Thin = "thin",
        /// Too dull.
        TooDull = "too-dull",
        /// Too quiet.
        TooQuiet = "too-quiet",
        /// Slow to speak.
        SlowToSpeak = "slow-to-speak",
        /// Chokes when pushed.
        Chokes = "chokes",
        /// Whistles.
        Whistles = "whistles",
        /// A wolf note.
        Wolf = "wolf",
        /// Goes out of tune.
        OutOfTune = "out-of-tune",
        /// Loses pitch: goes flat, and never sharp.
        GoesFlat = "goes-flat",
        /// Breaks.
        Breaks = "breaks",
        /// Breaks at the peg.
        BreaksAtThePeg = "breaks-at-the-peg",
        /// Sounds false.
        False = "false",
        /// Hard on the hand.
        HardOnTheHand = "hard-on-the-hand",
        /// Uneven across the strings.
        Uneven = "uneven",
    }
    /// What is played.
    Music {
        /// Orchestra and chamber music.
        Classical = "classical",
        /// Early music.
        Early = "early",
        /// Folk and fiddle.
        Folk = "folk",
        /// Jazz, much of it plucked.
        Jazz = "jazz",
    }
    /// How far along the player is.
    Level {
        /// The first two years or so.
        Beginner = "beginner",
        /// A student.
        Student = "student",
        /// Plays well.
        Advanced = "advanced",
        /// Plays for a living.
        Professional = "professional",
    }
    /// What turns the string.
    Pegs {
        /// Plain wooden pegs.
        Friction = "friction",
        /// Geared pegs.
        Geared = "geared",
        /// Machine heads.
        Machine = "machine",
    }
    /// Fine tuners on the tailpiece.
    Tuners {
        /// None.
        None = "none",
        /// On the top string.
        Top = "top",
        /// On every string.
        All = "all",
    }
    /// Who tunes between lessons.
    WhoTunes {
        /// The player.
        Player = "player",
        /// An adult who can.
        Adult = "adult",
        /// Nobody.
        Nobody = "nobody",
    }
    /// Where the instrument lives.
    Room {
        /// Much the same all year.
        Steady = "steady",
        /// Heated in winter, warm in summer.
        Seasonal = "seasonal",
        /// Damp.
        Damp = "damp",
        /// Dry.
        Dry = "dry",
        /// On the road, halls and churches.
        Travelling = "travelling",
    }
    /// How it is amplified.
    Amplified {
        /// By a magnet, which hears only steel.
        Magnet = "magnet",
        /// By a pickup in the bridge.
        Bridge = "bridge",
        /// By a microphone.
        Microphone = "microphone",
    }
    /// Whose instrument it is.
    BelongsTo {
        /// The player's own.
        Player = "player",
        /// A school's.
        School = "school",
        /// Lent or rented out.
        Loan = "loan",
    }
    /// Mostly bowed, plucked, or both.
    Played {
        /// Mostly bowed.
        Bowed = "bowed",
        /// Mostly plucked.
        Plucked = "plucked",
        /// Both.
        Both = "both",
    }
    /// How long a plucked note should ring.
    Ring {
        /// A short note.
        Short = "short",
        /// A long one.
        Long = "long",
    }
    /// Whether an unusual tuning stays.
    TunedSo {
        /// It is always tuned so.
        ForGood = "for-good",
        /// It is retuned, and back.
        Sometimes = "sometimes",
    }
    /// What it may cost.
    Budget {
        /// As little as will do.
        Modest = "modest",
        /// The usual.
        Middle = "middle",
        /// Whatever is best.
        Any = "any",
    }
}

impl Now {
    /// What the cores of a set that is called so are made of.
    #[must_use]
    pub const fn class(self) -> Class {
        match self {
            Self::Gut => Class::Gut,
            Self::Synthetic => Class::Polymer,
            Self::Steel => Class::Steel,
        }
    }
}

/// Hands every question with a plain answer to the macro of that name, so that what follows from the list of them need
/// not list them again.
///
/// - `words`: one word of a list. The brackets say how many of a hundred who do not answer would have said which word,
///   where that is drawn; the rest say what is taken for granted. These numbers are judgements, common practice, no
///   source. Where there are any, it is also tried whether another word turns the choice.
/// - `numbers`: a number, with its bound in [`crate::error`].
/// - `flags`: yes, or not.
///
/// What an answer means is said in [`super::problem`].
#[macro_export]
macro_rules! questions {
    ($macro:ident) => {
        $macro! {
            words {
                /// What the person wants to know.
                aim: Aim [],
                /// Equal temperament or pure fifths.
                temperament: Temperament [],
                /// How it is set up.
                set_up: SetUp [],
                /// What is on it now.
                now: Now [],
                /// Where it lives.
                room: Room [Steady 20, Damp 10, Dry 10, Travelling 10],
                /// How far along the player is.
                level: Level [Beginner 15, Professional 10],
                /// What it may cost.
                budget: Budget [Modest 20, Any 15],
                /// What is played.
                music: Music [Early 5, Folk 10, Jazz 5],
                /// Mostly bowed, plucked, or both.
                played: Played [],
                /// How long a plucked note should ring.
                ring: Ring [],
                /// How it is amplified.
                amplified: Amplified [],
                /// Whose instrument it is.
                belongs_to: BelongsTo [],
                /// Whether an unusual tuning stays.
                tuned_so: TunedSo [],
                /// What turns the strings; drawn on anything but a bass.
                pegs: Pegs [Geared 15],
                /// Fine tuners; drawn on a modern instrument.
                tuners: Tuners [Top 15, All 15],
                /// Who tunes between lessons.
                who_tunes: WhoTunes [Nobody 10],
            }
            numbers {
                /// Age of the strings on it.
                age_months: AGE_MONTHS,
                /// Days until it matters.
                concert_days: DAYS,
                /// The most that all strings together may pull, newtons.
                most_load_n: MOST_LOAD,
            }
            flags {
                /// Skin that cannot bear nickel.
                nickel_allergy: NickelAllergy,
                /// Sweat that eats metal.
                acid_sweat: AcidSweat,
                /// Nothing from animals.
                animal_free: AnimalFree,
                /// The hand hurts.
                hand_pain: HandPain,
                /// A plain gut top string in spite of its breaking.
                gut_to_its_limit: GutToItsLimit,
                /// The set must have settled by the next performance.
                must_settle: MustSettle,
            }
        }
    };
}

macro_rules! words_by_question {
    (
        words { $($(#[$about:meta])* $question:ident: $word:ident [$($odds:tt)*],)* }
        numbers $numbers:tt
        flags $flags:tt
    ) => {
        /// The questions that take one word of a list, as a request names them.
        pub const WORD_QUESTIONS: &[&str] = &[$(stringify!($question)),*];

        /// The words that a question takes, by its name in a request; none if it takes no words of its own.
        #[must_use]
        pub fn words_of(question: &str) -> &'static [&'static str] {
            match question {
                "bothers" => Bother::KEYS,
                "gauge_class" => GaugeClass::KEYS,
                $(stringify!($question) => $word::KEYS,)*
                _ => &[],
            }
        }
    };
}
questions!(words_by_question);

/// What a person says of one string.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct StringAnswer {
    /// Tuned to another note than the tuning says.
    pub note: Option<Note>,
    /// Must be of this family.
    pub family: Option<Family>,
    /// What is there now.
    pub today: Today,
    /// What bothers about this string alone.
    pub bothers: Vec<Bother>,
    /// It stays.
    pub keep: bool,
    /// The most it may pull, newtons.
    pub most_tension: Option<f64>,
}

/// What a person knows of the string that is there now.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Today {
    /// Its family.
    pub family: Option<Family>,
    /// Light, medium or heavy.
    pub gauge_class: Option<GaugeClass>,
    /// The metal under the fingers.
    pub outer_metal: Option<&'static Metal>,
    /// How old it is, in months.
    pub age_months: Option<f64>,
}

/// Another pitch at which the same strings are used.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct AlsoTuned {
    /// Pitch of a′ there; the main one where it is not given.
    pub a4: Option<Hertz>,
    /// How far above the main tuning, in semitones; below if negative.
    pub semitones: f64,
}

/// How strongly five opposites are wished, −2 to 2; zero is "like now".
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Wishes {
    /// −2 steady, 2 colour.
    pub colour: f64,
    /// −2 dark, 2 bright.
    pub brightness: f64,
    /// −2 gentle, 2 powerful.
    pub power: f64,
    /// −2 soft under the hand, 2 firm.
    pub feel: f64,
    /// −2 broad, 2 quick to speak.
    pub response: f64,
}

/// Everything a person says.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Answers {
    /// What the person wants to know; the whole set if it is not said.
    pub aim: Option<Aim>,
    /// Which instrument.
    pub instrument: Option<&'static Kind>,
    /// Which size.
    pub size: Option<&'static Size>,
    /// Sounding length, if measured.
    pub sounding_length: Option<Metre>,
    /// How it is tuned.
    pub tuning: Option<&'static Tuning>,
    /// Pitch of a′.
    pub a4: Option<Hertz>,
    /// Other pitches at which the same strings are used.
    pub also_tuned: Vec<AlsoTuned>,
    /// Equal temperament or pure fifths.
    pub temperament: Option<Temperament>,
    /// Per string, highest first; may be shorter than the tuning.
    pub strings: Vec<StringAnswer>,
    /// How it is set up.
    pub set_up: Option<SetUp>,
    /// What is on it now.
    pub now: Option<Now>,
    /// How old that is, in months.
    pub age_months: Option<f64>,
    /// What bothers.
    pub bothers: Vec<Bother>,
    /// What is wished.
    pub wishes: Wishes,
    /// What is played.
    pub music: Option<Music>,
    /// Mostly bowed, plucked, or both.
    pub played: Option<Played>,
    /// How long a plucked note should ring.
    pub ring: Option<Ring>,
    /// How it is amplified.
    pub amplified: Option<Amplified>,
    /// Whose instrument it is.
    pub belongs_to: Option<BelongsTo>,
    /// Whether an unusual tuning stays.
    pub tuned_so: Option<TunedSo>,
    /// The most that all strings together may pull, newtons.
    pub most_load_n: Option<f64>,
    /// How far along the player is.
    pub level: Option<Level>,
    /// What turns the strings.
    pub pegs: Option<Pegs>,
    /// Which fine tuners there are.
    pub tuners: Option<Tuners>,
    /// Who tunes between lessons.
    pub who_tunes: Option<WhoTunes>,
    /// Where it lives.
    pub room: Option<Room>,
    /// Days until it matters.
    pub concert_days: Option<f64>,
    /// The set must have settled by then.
    pub must_settle: bool,
    /// What it may cost.
    pub budget: Option<Budget>,
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
    /// Weights set by hand, in the order of [`super::desirability::Attribute::ALL`].
    pub weights: Vec<(super::desirability::Attribute, f64)>,
}
