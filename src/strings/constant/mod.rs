//! A number that enters the model: its value, its range, the condition it holds in, and its source.

mod general;

use core::ops::Deref;

use crate::source::{Evidence, Source};
pub use general::*;

/// Half the width of a 90 % range in standard deviations of a normal distribution.
pub const DEVIATIONS: f64 = 1.645;

/// A constant with a 90 % range.
///
/// `low` and `high` bound the middle 90 % of belief about the value: a printed scatter where there is one,
/// a stated or judged band otherwise. They need not be symmetric.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Constant {
    /// The central value, SI.
    pub value: f64,
    /// The lower end of the 90 % range.
    pub low: f64,
    /// The upper end of the 90 % range.
    pub high: f64,
    /// The unit of all three.
    pub unit: &'static str,
    /// The condition it holds in.
    pub at: &'static str,
    /// How it is known.
    pub evidence: Evidence,
    /// Where it comes from.
    pub source: Source,
}

impl Constant {
    /// A constant `value` in `[low, high]`.
    #[must_use]
    pub const fn new(
        value: f64,
        low: f64,
        high: f64,
        unit: &'static str,
        at: &'static str,
        evidence: Evidence,
        source: Source,
    ) -> Self {
        Self { value, low, high, unit, at, evidence, source }
    }

    /// Standard deviation of its logarithm, where the whole range is above zero.
    #[must_use]
    pub fn deviation(&self) -> f64 {
        libm::log(self.high / self.low) / (2.0 * DEVIATIONS)
    }

    /// The value at `t` of the way through its range: −1 the low end, 0 the central value, 1 the high end.
    ///
    /// By ratio where the whole range is positive, so that a draw beyond it stays positive; elsewhere straight and
    /// held within the range. Each side on its own, so that an uneven range keeps its central value.
    #[must_use]
    pub fn drawn(&self, t: f64) -> f64 {
        let end = if t < 0.0 { self.low } else { self.high };
        if self.low > 0.0 && self.high < f64::INFINITY {
            self.value * libm::pow(end / self.value, t.abs())
        } else {
            self.value + t.abs().min(1.0) * (end - self.value)
        }
    }
}

/// Which of the uncertain numbers is meant: a material's, or one that belongs to no material.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Which {
    /// Density.
    Density,
    /// Modulus of tuning.
    Modulus,
    /// Modulus of sounding.
    FastModulus,
    /// Tensile strength.
    Strength,
    /// Poisson's ratio.
    Poisson,
    /// Loss factor.
    Loss,
    /// Creep a decade.
    Creep,
    /// Thermal expansion.
    Expansion,
    /// Pitch change left from moisture.
    Moisture,
    /// Softening with warmth.
    Softening,
    /// Water taken up.
    Water,
    /// Modulus of shear.
    Shear,
    /// How fast water diffuses into it.
    Diffusivity,
    /// Growth along a fibre for the water taken up.
    SwellingAlong,
    /// Growth across a fibre for the water taken up.
    SwellingAcross,
    /// Fall of the modulus for the water taken up.
    DampSoftening,
    /// Rise of creep with damp.
    DampCreep,
    /// Expansion of the body.
    BodyExpansion,
    /// Movement of the body.
    BodyMovement,
    /// Time in which the body follows warmth.
    BodyWarming,
    /// Time in which the body follows damp.
    BodySoaking,
    /// Loss at which brilliance ends.
    BrillianceLoss,
    /// Friction of windings.
    WindingLoss,
    /// Stiffness that windings add.
    WindingStiffening,
    /// How freely filaments slide.
    Bonding,
    /// Friction over nut, bridge and peg.
    EdgeFriction,
    /// Share of what friction holds that lets go in the days after fitting.
    Seating,
    /// What knots give.
    Knot,
    /// Share of a strand's constructional stretch left for the days.
    Bedding,
    /// Rise of creep with stress.
    StressCreep,
    /// Creep of a bundle over that of one piece.
    BundleCreep,
    /// How much longer water takes through windings.
    WindingDelay,
    /// Sounding length of the instrument.
    SoundingLength,
    /// Density of air.
    AirDensity,
    /// Viscosity of air.
    AirViscosity,
    /// Loss of a string in its pull.
    StringLoss,
    /// Torsional stiffness of windings.
    WindingTorsion,
    /// True gauge of the core.
    CoreGauge,
    /// True thickness of windings.
    WindingGauge,
    /// Constructional stretch.
    Constructional,
    /// Creep of gut that gets damper.
    Ratchet,
    /// Resistance of the bridge.
    BridgeResistance,
    /// Least bow force as measured.
    LeastForce,
    /// Endurance of a wire.
    Endurance,
    /// Fall of friction from rest to sliding.
    FrictionDrop,
    /// Q of torsional waves.
    TorsionQ,
    /// Fast modulus beyond the measured stress.
    BeyondMeasured,
}

impl Which {
    /// The key by which tables and replies name it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Density => "density",
            Self::Modulus => "modulus",
            Self::FastModulus => "fast_modulus",
            Self::Strength => "strength",
            Self::Poisson => "poisson",
            Self::Loss => "loss",
            Self::Creep => "creep",
            Self::Expansion => "expansion",
            Self::Moisture => "moisture_left",
            Self::Softening => "softening",
            Self::Water => "water",
            Self::Shear => "shear",
            Self::Diffusivity => "diffusivity",
            Self::SwellingAlong => "swelling_along",
            Self::SwellingAcross => "swelling_across",
            Self::DampSoftening => "damp_softening",
            Self::DampCreep => "damp_creep",
            Self::BodyExpansion => "body_expansion",
            Self::BodyMovement => "body_movement",
            Self::BodyWarming => "body_warming",
            Self::BodySoaking => "body_soaking",
            Self::BrillianceLoss => "brilliance_loss",
            Self::WindingLoss => "winding_loss",
            Self::WindingStiffening => "winding_stiffening",
            Self::Bonding => "bonding",
            Self::EdgeFriction => "edge_friction",
            Self::Seating => "seating",
            Self::Knot => "knot",
            Self::Bedding => "bedding_in",
            Self::StressCreep => "stress_creep",
            Self::BundleCreep => "bundle_creep",
            Self::WindingDelay => "winding_delay",
            Self::SoundingLength => "sounding_length",
            Self::AirDensity => "air_density",
            Self::AirViscosity => "air_viscosity",
            Self::StringLoss => "string_loss",
            Self::WindingTorsion => "winding_torsion",
            Self::CoreGauge => "core_gauge",
            Self::WindingGauge => "winding_gauge",
            Self::Constructional => "constructional",
            Self::Ratchet => "ratchet",
            Self::BridgeResistance => "bridge_resistance",
            Self::LeastForce => "least_force",
            Self::Endurance => "endurance",
            Self::FrictionDrop => "friction_drop",
            Self::TorsionQ => "torsion_q",
            Self::BeyondMeasured => "beyond_measured",
        }
    }
}

/// A constant that belongs to no material, bound to the number that a draw takes for it.
///
/// Constants of one `which` move together in a draw.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct General {
    /// Which number of a draw it is.
    pub which: Which,
    /// Its value and range.
    pub constant: Constant,
}

impl General {
    #[expect(clippy::too_many_arguments, reason = "those of a constant, and which number it is")]
    const fn new(
        which: Which,
        value: f64,
        low: f64,
        high: f64,
        unit: &'static str,
        at: &'static str,
        evidence: Evidence,
        source: Source,
    ) -> Self {
        Self { which, constant: Constant::new(value, low, high, unit, at, evidence, source) }
    }
}

impl Deref for General {
    type Target = Constant;

    fn deref(&self) -> &Constant {
        &self.constant
    }
}
