//! One draw of everything uncertain, shared by all that is made of it.
//!
//! A constant is drawn once for all its candidates: if polyamide is softer than thought, every polyamide core is.
//! The central draw takes every constant at its value; a shifted draw moves one of them within its range.

use crate::constant::{Constant, DEVIATIONS, General, Which};
use crate::material::{CoreMaterial, Metal};
use crate::random;

/// Whose number: a material's by its key, or no material's (`""`).
pub type Owner = &'static str;

/// A draw of everything uncertain.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Draw(Kind);

#[derive(Clone, Copy, Debug, PartialEq)]
enum Kind {
    Central,
    Shifted(Owner, Which, f64),
    Sampled(u64),
    Weighed(u64),
}

/// What a core's material can be uncertain in.
pub const OF_CORE: [Which; 17] = [
    Which::Density,
    Which::Modulus,
    Which::FastModulus,
    Which::Strength,
    Which::Poisson,
    Which::Loss,
    Which::Creep,
    Which::Expansion,
    Which::Moisture,
    Which::Softening,
    Which::Water,
    Which::Shear,
    Which::Diffusivity,
    Which::SwellingAlong,
    Which::SwellingAcross,
    Which::DampSoftening,
    Which::DampCreep,
];

/// What a winding's metal can be uncertain in.
pub const OF_METAL: [Which; 2] = [Which::Density, Which::Modulus];

/// What belongs to no material.
pub const GENERAL: [Which; 30] = [
    Which::BodyExpansion,
    Which::BodyMovement,
    Which::BodyWarming,
    Which::BodySoaking,
    Which::BrillianceLoss,
    Which::WindingLoss,
    Which::WindingStiffening,
    Which::Bonding,
    Which::EdgeFriction,
    Which::Seating,
    Which::Knot,
    Which::Bedding,
    Which::StressCreep,
    Which::BundleCreep,
    Which::WindingDelay,
    Which::SoundingLength,
    Which::AirDensity,
    Which::AirViscosity,
    Which::StringLoss,
    Which::WindingTorsion,
    Which::CoreGauge,
    Which::WindingGauge,
    Which::Constructional,
    Which::Ratchet,
    Which::BridgeResistance,
    Which::LeastForce,
    Which::Endurance,
    Which::FrictionDrop,
    Which::TorsionQ,
    Which::BeyondMeasured,
];

/// What a weighed string on an instrument at hand is not uncertain in.
pub const AS_DESIGNED: [Which; 4] =
    [Which::Density, Which::CoreGauge, Which::WindingGauge, Which::SoundingLength];

impl Draw {
    /// Everything at its central value.
    pub const CENTRAL: Self = Self(Kind::Central);

    /// One number moved to `t` of the way through its range, −1 to 1.
    #[must_use]
    pub const fn shifted(owner: Owner, which: Which, t: f64) -> Self {
        Self(Kind::Shifted(owner, which, t))
    }

    /// Everything drawn from its distribution; the same seed draws the same numbers for every string.
    #[must_use]
    pub const fn sampled(seed: u64) -> Self {
        Self(Kind::Sampled(seed))
    }

    /// One of a series in which the mass and the length stay as designed: a maker weighs what is wound, and the
    /// instrument is at hand. Every other one mirrors the one before, so that a whole pair leans to no side.
    #[must_use]
    pub const fn weighed(index: u64) -> Self {
        Self(Kind::Weighed(index))
    }

    fn of(&self, owner: Owner, which: Which, constant: &Constant) -> f64 {
        match self.0 {
            Kind::Weighed(_) if AS_DESIGNED.contains(&which) => constant.value,
            Kind::Weighed(index) => {
                let side = if index % 2 == 0 { 1.0 } else { -1.0 };
                constant.drawn(side * normal(index / 2, owner, which) / DEVIATIONS)
            }
            Kind::Shifted(o, w, t) if w == which && o == owner => constant.drawn(t),
            Kind::Sampled(seed) => constant.drawn(normal(seed, owner, which) / DEVIATIONS),
            Kind::Central | Kind::Shifted(..) => constant.value,
        }
    }

    /// A number of a core's material.
    #[must_use]
    pub fn core(&self, material: &CoreMaterial, which: Which) -> f64 {
        let Some(constant) = material.constant(which) else { return 0.0 };
        self.of(material.key, which, constant)
    }

    /// A number of a winding's metal.
    #[must_use]
    pub fn metal(&self, metal: &Metal, which: Which) -> f64 {
        match which {
            Which::Density => self.of(metal.key, which, &metal.density),
            Which::Modulus => self.of(metal.key, which, &metal.modulus),
            _ => 0.0,
        }
    }

    /// A number that belongs to no material.
    #[must_use]
    pub fn general(&self, of: &General) -> f64 {
        self.of("", of.which, of)
    }
}

/// A normal number that belongs to a seed, an owner and a quantity.
fn normal(seed: u64, owner: Owner, which: Which) -> f64 {
    normal_of(seed, owner.bytes().chain([which as u8]))
}

/// A normal number that belongs to a seed and to a number fitted to the simulation: by how much it misses.
#[must_use]
pub fn miss(seed: u64, key: &str) -> f64 {
    normal_of(seed, key.bytes())
}

fn normal_of(seed: u64, name: impl Iterator<Item = u8>) -> f64 {
    let hash = random::hash(seed, name);
    random::normal(random::uniform(random::nth(hash, 0)), random::uniform(random::nth(hash, 1)))
}
