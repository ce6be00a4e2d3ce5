//! Everything the model says of one string in one setting.
//!
//! A property is computed once with every constant at its value, and once with each uncertain constant at
//! either end of its 90 % range; the differences, added as independent, make the range. This is first-order
//! propagation: exact for a linear model, within a few per cent here, and the same everywhere to the bit.

mod at_pitch;
mod caveat;
mod doubt;
mod lean;
mod moved;
mod nights;
mod over_time;
mod partials;
mod stretched;
mod values;
mod year;

pub use crate::lanes::{Four, LANES, Lanes};
pub use caveat::{Caveat, caveats};
pub use doubt::{Doubt, sampled};
pub use lean::{
    Bending, Lean, LeanCore, LeanKind, Pulled, Sounding, Twisting, Wound, sweep, swept,
};
pub use nights::{Night, chance_settled, nights};
pub use over_time::{Drifts, Moved, Pull, Settling};
pub use partials::{Partial, partials};
pub use stretched::{Stretched, stretched};
pub use values::{values, values_like};
pub use year::{MONTHS, Month, year};

use crate::answer_to_bow::{self, Error};
use crate::constant::{DEVIATIONS, Which};
use crate::construction::Construction;
use crate::draw::{self, Draw};
use crate::setting::Setting;
use crate::source::{self, Evidence, Source};

macro_rules! properties {
    ($($(#[$doc:meta])* $name:ident = $key:literal, $evidence:ident, $source:ident;)*) => {
        /// One of the numbers of a report.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
        pub enum Property { $($(#[$doc])* $name),* }

        impl Property {
            /// Every property, in the order of a report.
            pub const ALL: &[Self] = &[$(Self::$name),*];

            /// Its name in a reply, with the unit.
            #[must_use]
            pub const fn key(self) -> &'static str {
                match self { $(Self::$name => $key),* }
            }

            /// How it is known at best.
            #[must_use]
            pub const fn evidence(self) -> Evidence {
                match self { $(Self::$name => Evidence::$evidence),* }
            }

            /// Where its formula comes from.
            #[must_use]
            pub const fn source(self) -> Source {
                match self { $(Self::$name => source::$source),* }
            }
        }
    };
}

properties! {
    /// Mass a length before it is stretched.
    MassUnstretched = "mass_unstretched_kg_m", Computed, STATICS;
    /// Mass a length at pitch.
    MassAtPitch = "mass_at_pitch_kg_m", Computed, STATICS;
    /// Tension at pitch.
    Tension = "tension_n", Computed, MERSENNE;
    /// Stress in the most strained filament of the core.
    CoreStress = "core_stress_pa", Computed, WOODHOUSE_LYNCH_AIRD_2019;
    /// That stress over the strength.
    BreakingShare = "breaking_share", Computed, WOODHOUSE_LYNCH_AIRD_2019;
    /// Pitch at which the core breaks.
    BreakingPitch = "breaking_pitch_hz", Computed, WOODHOUSE_LYNCH_AIRD_2019;
    /// Stretch at pitch: elasticity.
    Stretch = "stretch", Computed, LYNCH_AIRD_2018;
    /// Pitch rise for a pull along the string.
    Pull = "pull_cent_m", Computed, STATICS;
    /// Pitch rise for a degree at the button.
    Peg = "peg_cent_deg", Computed, STATICS;
    /// Lateral stiffness at mid-string: feel.
    Feel = "lateral_stiffness_n_m", Computed, WOODHOUSE_LYNCH_AIRD_2019;
    /// Wave impedance: power.
    Impedance = "impedance_kg_s", Computed, WOODHOUSE_LYNCH_AIRD_2019;
    /// Axial stiffness of the core.
    AxialStiffness = "axial_stiffness_n", Computed, STATICS;
    /// Bending stiffness.
    BendingStiffness = "bending_stiffness_n_m2", Computed, COSTELLO_1997;
    /// Inharmonicity, pinned.
    Inharmonicity = "inharmonicity", Computed, FLETCHER_1964;
    /// Gauge: outer diameter, unstretched.
    OuterDiameter = "outer_diameter_m", Computed, STATICS;
    /// Outer diameter at pitch.
    OuterDiameterAtPitch = "outer_diameter_at_pitch_m", Computed, STATICS;
    /// Share of the mass that is winding.
    WindingShare = "winding_mass_share", Computed, STATICS;
    /// Frequency where bending loss ends the brilliance.
    Brilliance = "brilliance_hz", Judged, EUPHONICS;
    /// Highest clean bow acceleration for each newton of bow force.
    Attack = "attack_m_s2_n", Computed, GUETTLER_2002;
    /// Pitch lost in a decade of time.
    LossPerDecade = "loss_cent_decade", Guessed, FRENCH_SAVART;
    /// Days until a night costs no more than five cents.
    SettlingDays = "settling_d", Guessed, FRENCH_SAVART;
    /// How far an evening's warmth moves it.
    EveningWarmth = "evening_warmth_cent", Computed, LYNCH_AIRD_2018;
    /// How far an evening's damp moves it, by the water in its core and by the body.
    EveningDamp = "evening_damp_cent", Judged, CRANK_1975;
    /// How far an evening moves it.
    Evening = "evening_cent", Judged, LYNCH_AIRD_2018;
    /// How far a week's warmth moves it, untuned.
    WeekWarmth = "week_warmth_cent", Computed, LYNCH_AIRD_2018;
    /// How far a week's damp moves it, untuned.
    WeekDamp = "week_damp_cent", Judged, CRANK_1975;
    /// How far a week moves it, untuned.
    Week = "week_cent", Judged, LYNCH_AIRD_2018;
    /// How far the warmth of the seasons moves it, untuned.
    SeasonWarmth = "season_warmth_cent", Computed, LYNCH_AIRD_2018;
    /// How far the water in its core moves it over the seasons, untuned.
    SeasonMoisture = "season_moisture_cent", Judged, HERITAGE_2013;
    /// How far the damp of the body moves it over the seasons, untuned.
    SeasonBody = "season_body_cent", Judged, WOOD_HANDBOOK;
    /// How far the damp of the seasons moves it, untuned: by its water and by the body.
    SeasonDamp = "season_damp_cent", Judged, CRANK_1975;
    /// How far the seasons move it, untuned.
    Season = "season_cent", Judged, LYNCH_AIRD_2018;
    /// What gut loses for good when it gets damper than ever before.
    Ratchet = "ratchet_cent", Judged, LYNCH_AIRD_TWIST;
    /// Force on the bridge.
    Downforce = "downforce_n", Computed, STATICS;
    /// Lowest clean bow acceleration for each newton of bow force.
    GentlestAttack = "gentlest_attack_m_s2_n", Computed, GUETTLER_2002;
    /// Largest bow force for clean motion, at the stated place and speed.
    GreatestForce = "bow_force_greatest_n", Computed, SCHELLENG_1973;
    /// Largest bow force with friction that falls with speed.
    GreatestForceFalling = "bow_force_greatest_falling_n", Computed, SCHOONDERWALDT_2008;
    /// Least bow force by theory.
    LeastForce = "bow_force_least_n", Judged, SCHELLENG_1973;
    /// Least bow force as measured.
    LeastForceMeasured = "bow_force_least_measured_n", Judged, SCHOONDERWALDT_2008;
    /// Room between them, by theory, in decibels.
    BowWindow = "bow_window_db", Judged, SCHELLENG_1973;
    /// Seconds until it speaks, by the simulation.
    Speaks = "speaks_s", Computed, WOODHOUSE_2003;
    /// Room between the least and the greatest force of the bow, by the simulation, in decibels.
    BowRoom = "bow_room_db", Computed, MSW_1983;
    /// Sharpness of its steady sound, by the simulation, in acum.
    Sharpness = "sharpness_acum", Computed, DIN_45692;
    /// Seconds in which it falls by 60 dB when plucked, as the simulation hears it at the bridge.
    RingsOn = "rings_on_s", Computed, EUPHONICS;
    /// Least over greatest force at the body's strongest note.
    Wolf = "wolf", Guessed, SCHELLENG_1973;
    /// Loss factor of the first partial, on ends that do not give.
    Loss = "loss_first", Computed, WOODHOUSE_2004;
    /// Seconds in which the open string falls by 60 dB on the instrument.
    Ring = "ring_s", Judged, EUPHONICS;
    /// Speed of torsional waves.
    TorsionSpeed = "torsion_speed_m_s", Judged, WOODHOUSE_LOACH_1999;
    /// Torsional over transverse speed.
    TorsionRatio = "torsion_ratio", Judged, WOODHOUSE_LOACH_1999;
    /// Torsional over transverse impedance.
    TorsionImpedance = "torsion_impedance_ratio", Judged, WOODHOUSE_LOACH_1999;
    /// Q of torsional waves.
    TorsionQ = "torsion_q", Published, BAVU_2005;
    /// Pitch rise when stopped at the octave.
    Stopping = "stopping_cent", Computed, ANDERSON_2024;
    /// Pitch rise at a swing of the stated amplitude.
    Glide = "glide_cent", Computed, STATICS;
    /// Bending stress over the nut, over the strength.
    OverTheNut = "over_the_nut", Computed, STATICS;
    /// Bending stress round the peg, over the strength.
    OverThePeg = "over_the_peg", Computed, STATICS;
    /// Share of fatigue strength at the stated amplitude.
    Fatigue = "fatigue", Judged, SHIGLEY;
    /// Pitch lost once, within hours, by a strand finding its place.
    Constructional = "constructional_cent", Guessed, HANDBOOK;
}

impl Property {
    /// By how much the number fitted to the simulation misses it; none for what is no such number.
    #[must_use]
    pub const fn error(self) -> Option<Error> {
        match self {
            Self::Speaks => Some(answer_to_bow::RESPONSE_ERROR),
            Self::BowRoom => Some(answer_to_bow::ROOM_ERROR),
            Self::Sharpness => Some(answer_to_bow::SHARPNESS_ERROR),
            Self::RingsOn => Some(answer_to_bow::RING_ERROR),
            _ => None,
        }
    }

    /// Whether it is a level in decibels.
    #[must_use]
    pub const fn is_level(self) -> bool {
        matches!(self, Self::BowWindow | Self::BowRoom)
    }

    /// Whether it is a change of pitch, up or down, that a swing of the room makes.
    #[must_use]
    pub const fn is_drift(self) -> bool {
        matches!(
            self,
            Self::EveningWarmth
                | Self::EveningDamp
                | Self::Evening
                | Self::WeekWarmth
                | Self::WeekDamp
                | Self::Week
                | Self::SeasonWarmth
                | Self::SeasonMoisture
                | Self::SeasonBody
                | Self::SeasonDamp
                | Self::Season
        )
    }

    /// Whether it may fall below zero.
    #[must_use]
    pub const fn is_signed(self) -> bool {
        self.is_level() || self.is_drift()
    }
}

/// How many properties a report has.
pub const COUNT: usize = Property::ALL.len();

/// The values of every property in one draw.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Values([f64; COUNT]);

impl Values {
    /// The value of one property.
    #[must_use]
    pub fn get(&self, property: Property) -> f64 {
        self.0[property as usize]
    }

    fn put(&mut self, property: Property, value: f64) {
        self.0[property as usize] = value;
    }
}

/// A number with its 90 % range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Estimate {
    /// Central value.
    pub value: f64,
    /// Lower end of the range.
    pub low: f64,
    /// Upper end of the range.
    pub high: f64,
}

impl Estimate {
    /// How far from zero it lies, whichever way.
    #[must_use]
    pub fn size(&self) -> Self {
        let (one, other) = (self.low.abs(), self.high.abs());
        let spans_zero = self.low <= 0.0 && self.high >= 0.0;
        let low = if spans_zero { 0.0 } else { one.min(other) };
        Self { value: self.value.abs(), low, high: one.max(other) }
    }
}

/// A report: every property with its range.
#[derive(Clone, Debug, PartialEq)]
pub struct Report(Vec<Estimate>);

impl Report {
    /// The estimate of one property.
    #[must_use]
    pub fn get(&self, property: Property) -> Estimate {
        self.0[property as usize]
    }
}

/// Every number that is uncertain in a construction, as owner and which.
pub fn uncertain(construction: &Construction) -> Vec<(draw::Owner, Which)> {
    let mut all: Vec<(draw::Owner, Which)> =
        draw::OF_CORE.iter().map(|w| (construction.core.material.key, *w)).collect();
    for winding in construction.windings() {
        for which in draw::OF_METAL {
            if !all.contains(&(winding.metal.key, which)) {
                all.push((winding.metal.key, which));
            }
        }
    }
    all.extend(draw::GENERAL.iter().map(|w| ("", *w)));
    all
}

/// A string's properties with every uncertain constant moved to either end of its range, one at a time.
#[derive(Clone, Debug, PartialEq)]
pub struct Moves {
    central: Values,
    ends: Vec<(draw::Owner, Which, [Values; 2])>,
}

impl Moves {
    /// Works the string out with each constant at its value, at its low end and at its high end.
    #[must_use]
    pub fn of(construction: &Construction, setting: &Setting) -> Self {
        let central = values(construction, setting, &Draw::CENTRAL);
        let shifted = |owner, which, t| {
            let draw = Draw::shifted(owner, which, t);
            values_like(construction, setting, &draw, Some(&central))
        };
        let ends = uncertain(construction)
            .into_iter()
            .map(|(owner, which)| (owner, which, [-1.0, 1.0].map(|t| shifted(owner, which, t))))
            .collect();
        Self { central, ends }
    }

    /// Every property with the range that the moves make.
    #[must_use]
    pub fn report(&self) -> Report {
        let (mut down, mut up) = ([0.0; COUNT], [0.0; COUNT]);
        for (_, _, ends) in &self.ends {
            for i in 0..COUNT {
                let deltas = [ends[0].0[i] - self.central.0[i], ends[1].0[i] - self.central.0[i]];
                let (low, high) =
                    (deltas[0].min(deltas[1]).min(0.0), deltas[0].max(deltas[1]).max(0.0));
                down[i] += low * low;
                up[i] += high * high;
            }
        }
        for (i, property) in Property::ALL.iter().enumerate() {
            let Some(error) = property.error() else { continue };
            let reach = DEVIATIONS * error.anywhere;
            let (low, high) = if property.is_level() {
                (reach, reach)
            } else {
                let value = self.central.0[i];
                (value * (1.0 - libm::exp(-reach)), value * (libm::exp(reach) - 1.0))
            };
            down[i] += low * low;
            up[i] += high * high;
        }
        let estimate = |i: usize| {
            let value = self.central.0[i];
            let floor = if Property::ALL[i].is_signed() { f64::NEG_INFINITY } else { 0.0 };
            Estimate { value, low: (value - down[i].sqrt()).max(floor), high: value + up[i].sqrt() }
        };
        Report((0..COUNT).map(estimate).collect())
    }
}

/// Every property of a string in a setting, each with its 90 % range.
#[must_use]
pub fn report(construction: &Construction, setting: &Setting) -> Report {
    Moves::of(construction, setting).report()
}
