//! The causes of every complaint: how plausible each is before any number, what speaks for it, and what mends it.

use crate::construction::Family;
use crate::fit::answers::{Bother, Room, WhoTunes};
use crate::fit::problem::{Problem, StringProblem};
use crate::fit::today::Today;
use crate::report::Property;

use super::Says;

words! {
    /// A cause of a complaint.
    Cause {
        /// On long enough to be worn.
        OldString = "old-string",
        /// Faulty from the start.
        FaultyString = "faulty-string",
        /// The winding is loose or has a gap.
        WindingOpen = "winding-open",
        /// Sweat pits the metal under the fingers.
        SweatEatsWinding = "sweat-eats-winding",
        /// Not long enough on to have settled.
        NotSettled = "not-settled",
        /// This kind is brighter by nature than wanted.
        KindTooBright = "kind-too-bright",
        /// This kind is darker by nature than wanted.
        KindTooDark = "kind-too-dark",
        /// It pulls more than instrument or hand like.
        TensionTooHigh = "tension-too-high",
        /// It pulls too little to carry.
        TensionTooLow = "tension-too-low",
        /// Too much mass for a bow to start soon.
        TooHeavyToStart = "too-heavy-to-start",
        /// It twists under the bow instead of swinging.
        TorsionWhistle = "torsion-whistle",
        /// It is worked near its strength.
        NearItsLimit = "near-its-limit",
        /// So thin that it cuts.
        ThinUnderTheFinger = "thin-under-the-finger",
        /// One string differs from its neighbours.
        OneStandsOut = "one-stands-out",
        /// Core and winding take up and give off water.
        DrinksHumidity = "core-drinks-humidity",
        /// So stiff that the least movement of the body moves the pitch.
        BodyMoves = "body-moves-it",
        /// Peg, tuner or knot gives way or sticks.
        PegSlips = "peg-slips",
        /// Nobody brings it back to pitch.
        NotTuned = "not-tuned",
        /// The groove of nut or bridge pinches.
        WornGroove = "worn-groove",
        /// An edge cuts it, always at the same place.
        SharpEdge = "sharp-edge",
        /// The strings stand too high.
        StringHeight = "string-height",
        /// Soundpost or bridge stands or fits badly.
        SoundpostOrBridge = "soundpost-or-bridge",
        /// A strong note of the body fights with the string.
        WolfOfTheBody = "wolf-of-the-body",
        /// Old hair, or the wrong rosin, or too much or too little of it.
        RosinOrBowHair = "rosin-or-bow-hair",
        /// Where and how the bow meets the string.
        BowStroke = "bow-stroke",
    }
    /// How likely a cause is.
    Likely {
        /// The first to look at.
        Likely = "likely",
        /// Not to be left out.
        Possible = "possible",
        /// Hardly.
        Unlikely = "unlikely",
    }
    /// What to look at for a cause.
    Look {
        /// How long it has been on.
        Age = "age",
        /// The winding, with the eye and a fingernail.
        Winding = "winding",
        /// The days since it was fitted.
        Days = "days",
        /// The kind of string.
        Kind = "kind",
        /// Its gauge against its neighbours.
        Gauge = "gauge",
        /// Who tunes, and how.
        Tuning = "tuning",
        /// The pegs and the knots on them.
        Pegs = "pegs",
        /// The air of the room.
        Air = "air",
        /// The grooves of nut and bridge.
        Grooves = "grooves",
        /// Edges at nut, peg hole, bridge and tuner.
        Edges = "edges",
        /// The height of the strings.
        Height = "height",
        /// Soundpost and bridge.
        PostAndBridge = "post-and-bridge",
        /// Hair and rosin.
        BowHair = "bow-hair",
        /// How it is bowed.
        Bowing = "bowing",
    }
}

/// What mends a cause.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Remedy {
    /// A fresh string of the same kind.
    Fresh,
    /// Another string.
    Other,
    /// Someone who mends instruments.
    Luthier,
    /// Nothing that is bought: bow, hand, or days.
    Patience,
}

impl Cause {
    /// What mends it.
    #[must_use]
    pub const fn remedy(self) -> Remedy {
        match self {
            Self::OldString | Self::FaultyString | Self::WindingOpen => Remedy::Fresh,
            Self::SweatEatsWinding
            | Self::KindTooBright
            | Self::KindTooDark
            | Self::TensionTooHigh
            | Self::TensionTooLow
            | Self::TooHeavyToStart
            | Self::TorsionWhistle
            | Self::NearItsLimit
            | Self::ThinUnderTheFinger
            | Self::OneStandsOut
            | Self::DrinksHumidity
            | Self::BodyMoves
            // Who has nobody to tune is helped by a string that need not be tuned.
            | Self::NotTuned => Remedy::Other,
            Self::PegSlips
            | Self::WornGroove
            | Self::SharpEdge
            | Self::StringHeight
            | Self::SoundpostOrBridge
            | Self::WolfOfTheBody => Remedy::Luthier,
            Self::NotSettled | Self::RosinOrBowHair | Self::BowStroke => Remedy::Patience,
        }
    }

    /// What to look at first for it.
    #[must_use]
    pub const fn look(self) -> Look {
        match self {
            Self::OldString => Look::Age,
            Self::FaultyString | Self::WindingOpen | Self::SweatEatsWinding => Look::Winding,
            Self::NotSettled => Look::Days,
            Self::KindTooBright | Self::KindTooDark | Self::TorsionWhistle | Self::NearItsLimit => {
                Look::Kind
            }
            Self::TensionTooHigh
            | Self::TensionTooLow
            | Self::TooHeavyToStart
            | Self::ThinUnderTheFinger
            | Self::OneStandsOut => Look::Gauge,
            Self::DrinksHumidity | Self::BodyMoves => Look::Air,
            Self::PegSlips => Look::Pegs,
            Self::NotTuned => Look::Tuning,
            Self::WornGroove => Look::Grooves,
            Self::SharpEdge => Look::Edges,
            Self::StringHeight => Look::Height,
            Self::SoundpostOrBridge | Self::WolfOfTheBody => Look::PostAndBridge,
            Self::RosinOrBowHair => Look::BowHair,
            Self::BowStroke => Look::Bowing,
        }
    }
}

/// What speaks for a cause.
#[derive(Clone, Copy)]
pub(super) enum Speaks {
    /// No number and no answer does.
    Nobody,
    /// Age over life: it speaks for the cause above the first, against it below the second.
    Worn(f64, f64),
    /// Days since it was fitted against the days it takes to settle.
    Unsettled,
    /// A property above a limit.
    Above(Property, fn(&Problem, &StringProblem) -> f64),
    /// A property below a limit.
    Below(Property, fn(&Problem, &StringProblem) -> f64),
    /// An answer, or what the string is.
    Fact(fn(&Problem, &Today) -> Says),
    /// An answer alone.
    Answer(fn(&Problem) -> Says),
    /// The step to a neighbour.
    Step,
}

use Speaks::{Above, Answer, Below, Fact, Nobody, Step, Unsettled, Worn};

/// Upper and lower third of the usual tension of a position.
fn heavy(_: &Problem, string: &StringProblem) -> f64 {
    let (low, high) = string.usual_tension;
    low + (high - low) * 2.0 / 3.0
}

fn light(_: &Problem, string: &StringProblem) -> f64 {
    let (low, high) = string.usual_tension;
    low + (high - low) / 3.0
}

/// Where brilliance ends at that share of the way from the dark to the bright end of a position.
fn shade(string: &StringProblem, share: f64) -> f64 {
    let (dark, bright) = string.position.brilliance;
    dark * libm::pow(bright / dark, share)
}

/// A fifth of the scale above what is wished; a fifth below it.
fn bright(_: &Problem, string: &StringProblem) -> f64 {
    shade(string, string.brightness_target() + SHADE)
}

fn dark(_: &Problem, string: &StringProblem) -> f64 {
    shade(string, string.brightness_target() - SHADE)
}

/// How far from the wish a string may lie before its kind is called too bright or too dark.
const SHADE: f64 = 0.2;

/// The middle between the time to speak that is worth nothing and the one that is worth all.
fn slow(_: &Problem, string: &StringProblem) -> f64 {
    (string.ends.speaks.0 * string.ends.speaks.1).sqrt()
}

/// Torsional over transverse wave impedance above which a string has little to damp its twisting: bare wire stands
/// at 3.7, a wound top string under 2.9, strands and bundles under 2.
fn twisting(_: &Problem, _: &StringProblem) -> f64 {
    3.2
}

/// Cents of moisture that are heard: the just-noticeable difference of pitch ([`crate::source::JND`]), its low end.
fn heard(_: &Problem, _: &StringProblem) -> f64 {
    3.0
}

/// Cents lost for good by getting damper than ever: half of what is heard, for it happens more than once.
fn lost(problem: &Problem, string: &StringProblem) -> f64 {
    heard(problem, string) / 2.0
}

/// Cents of the body's movement that a tuner in the room hears: three times what is just heard.
fn moved(_: &Problem, _: &StringProblem) -> f64 {
    10.0
}

/// Share of its strength from which a string is worked hard: plain gut and thin steel tops live there.
fn hard_worked(_: &Problem, _: &StringProblem) -> f64 {
    0.58
}

/// Least over greatest bow force at the strongest note above which a wolf is due to the string's mass: one half
/// leaves a bow 6 dB of room (Schelleng's limits, [`crate::source::SCHELLENG_1973`]; the one half is judged).
fn wolfish(_: &Problem, _: &StringProblem) -> f64 {
    0.5
}

/// Diameter under which a string cuts into a finger: thinner than any wound string.
fn cutting(_: &Problem, _: &StringProblem) -> f64 {
    0.30e-3
}

fn nobody_tunes(problem: &Problem) -> Says {
    match problem.who_tunes {
        Some(WhoTunes::Nobody) => Says::For,
        Some(WhoTunes::Player) => Says::Against,
        Some(WhoTunes::Adult) | None => Says::Nothing,
    }
}

/// Wooden pegs let go when the air dries out.
fn pegs_suffer(problem: &Problem) -> Says {
    match problem.room {
        Room::Dry => Says::For,
        Room::Steady | Room::Seasonal | Room::Damp | Room::Travelling => Says::Nothing,
    }
}

fn sweat(problem: &Problem, today: &Today) -> Says {
    match today.string.construction.outer_winding() {
        None => Says::Against,
        Some(_) if !problem.acid_sweat => Says::Against,
        Some(winding) if winding.metal.wear < SOFT_METAL => Says::For,
        Some(_) => Says::Nothing,
    }
}

/// Wear of a metal under which sweat eats it soon.
const SOFT_METAL: f64 = 0.7;

fn wound(_: &Problem, today: &Today) -> Says {
    if today.string.construction.is_wound() { Says::Nothing } else { Says::Against }
}

fn plain_gut(_: &Problem, today: &Today) -> Says {
    if today.string.family == Family::PlainGut { Says::Nothing } else { Says::Against }
}

/// Why something bothers: cause, plausibility before any number, and what speaks for it.
pub(super) const fn causes_of(bother: Bother) -> &'static [(Cause, f64, Speaks)] {
    use Cause as C;
    match bother {
        Bother::TooBright => &[
            (C::KindTooBright, 0.50, Above(Property::Brilliance, bright)),
            (C::SoundpostOrBridge, 0.25, Nobody),
            (C::TensionTooHigh, 0.15, Above(Property::Tension, heavy)),
            (C::NotSettled, 0.10, Unsettled),
            (C::RosinOrBowHair, 0.05, Nobody),
        ],
        Bother::Thin => &[
            (C::TensionTooLow, 0.35, Below(Property::Tension, light)),
            (C::KindTooBright, 0.30, Above(Property::Brilliance, bright)),
            (C::SoundpostOrBridge, 0.25, Nobody),
            (C::OldString, 0.20, Worn(1.0, 0.5)),
        ],
        Bother::TooDull => &[
            (C::OldString, 0.45, Worn(1.0, 0.4)),
            (C::KindTooDark, 0.25, Below(Property::Brilliance, dark)),
            (C::SoundpostOrBridge, 0.20, Nobody),
            (C::RosinOrBowHair, 0.15, Nobody),
            (C::TensionTooHigh, 0.10, Above(Property::Tension, heavy)),
        ],
        Bother::TooQuiet => &[
            (C::TensionTooLow, 0.35, Below(Property::Tension, light)),
            (C::OldString, 0.25, Worn(1.0, 0.5)),
            (C::SoundpostOrBridge, 0.25, Nobody),
            (C::RosinOrBowHair, 0.15, Nobody),
            (C::TensionTooHigh, 0.10, Above(Property::Tension, heavy)),
        ],
        Bother::SlowToSpeak => &[
            (C::RosinOrBowHair, 0.30, Nobody),
            (C::OldString, 0.30, Worn(1.0, 0.5)),
            (C::TooHeavyToStart, 0.25, Above(Property::Speaks, slow)),
            (C::TensionTooHigh, 0.15, Above(Property::Tension, heavy)),
            (C::SoundpostOrBridge, 0.15, Nobody),
        ],
        Bother::Chokes => &[
            (C::TensionTooHigh, 0.30, Above(Property::Tension, heavy)),
            (C::SoundpostOrBridge, 0.30, Nobody),
            (C::TensionTooLow, 0.25, Below(Property::Tension, light)),
            (C::BowStroke, 0.20, Nobody),
        ],
        Bother::Whistles => &[
            (C::TorsionWhistle, 0.35, Above(Property::TorsionImpedance, twisting)),
            (C::BowStroke, 0.30, Nobody),
            (C::RosinOrBowHair, 0.25, Nobody),
            (C::WornGroove, 0.05, Nobody),
        ],
        Bother::Wolf => &[
            (C::WolfOfTheBody, 0.60, Nobody),
            (C::SoundpostOrBridge, 0.30, Nobody),
            (C::TensionTooHigh, 0.15, Above(Property::Wolf, wolfish)),
        ],
        Bother::OutOfTune => &[
            (C::PegSlips, 0.30, Answer(pegs_suffer)),
            (C::NotTuned, 0.30, Answer(nobody_tunes)),
            (C::DrinksHumidity, 0.30, Above(Property::SeasonMoisture, heard)),
            (C::NotSettled, 0.20, Unsettled),
            (C::OldString, 0.20, Worn(1.0, 0.5)),
            (C::BodyMoves, 0.10, Above(Property::SeasonBody, moved)),
        ],
        Bother::GoesFlat => &[
            (C::PegSlips, 0.35, Answer(pegs_suffer)),
            (C::DrinksHumidity, 0.35, Above(Property::Ratchet, lost)),
            (C::NotSettled, 0.30, Unsettled),
            (C::WornGroove, 0.10, Nobody),
            (C::BodyMoves, 0.05, Above(Property::SeasonBody, moved)),
        ],
        Bother::Breaks => &[
            (C::SharpEdge, 0.35, Nobody),
            (C::NearItsLimit, 0.30, Above(Property::BreakingShare, hard_worked)),
            (C::WornGroove, 0.20, Nobody),
            (C::OldString, 0.15, Worn(1.0, 0.5)),
        ],
        Bother::BreaksAtThePeg => &[
            (C::SharpEdge, 0.50, Nobody),
            (C::WornGroove, 0.25, Nobody),
            (C::NearItsLimit, 0.10, Above(Property::BreakingShare, hard_worked)),
        ],
        Bother::False => &[
            (C::OldString, 0.30, Worn(1.0, 0.4)),
            (C::WindingOpen, 0.25, Fact(wound)),
            (C::SweatEatsWinding, 0.25, Fact(sweat)),
            (C::FaultyString, 0.20, Fact(plain_gut)),
            (C::WornGroove, 0.15, Nobody),
        ],
        Bother::HardOnTheHand => &[
            (C::StringHeight, 0.35, Nobody),
            (C::TensionTooHigh, 0.30, Above(Property::Tension, heavy)),
            (C::ThinUnderTheFinger, 0.10, Below(Property::OuterDiameter, cutting)),
        ],
        Bother::Uneven => &[
            (C::SoundpostOrBridge, 0.30, Nobody),
            (C::OneStandsOut, 0.30, Step),
            (C::OldString, 0.20, Worn(1.0, 0.5)),
        ],
    }
}

/// Every cause that is thought of for a complaint.
pub fn thought_of(bother: Bother) -> impl Iterator<Item = Cause> {
    causes_of(bother).iter().map(|(cause, _, _)| *cause)
}
