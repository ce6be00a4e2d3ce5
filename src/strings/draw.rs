//! One draw of everything uncertain, shared by all that is made of it.
//!
//! A constant is drawn once for all its candidates: if polyamide is softer than thought, every polyamide core is.
//! The central draw takes every constant at its value; a shifted draw moves one of them within its range.

use crate::constant::Constant;
use crate::material::{CoreMaterial, Metal};

/// Which of a material's numbers is meant.
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
    /// Expansion of the body.
    BodyExpansion,
    /// Movement of the body.
    BodyMovement,
    /// Loss at which brilliance ends.
    BrillianceLoss,
    /// Friction of windings.
    WindingLoss,
    /// Stiffness that windings add.
    WindingStiffening,
    /// How freely filaments slide.
    Bonding,
    /// Days until seated.
    Seating,
    /// Sounding length of the instrument.
    SoundingLength,
}

/// Whose number: a material's by its key, or no material's (`""`).
pub type Owner = &'static str;

/// A draw: central, or with one number moved.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Draw {
    shift: Option<(Owner, Which, f64)>,
}

/// What a core's material can be uncertain in.
pub const OF_CORE: [Which; 10] = [
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
];

/// What a winding's metal can be uncertain in.
pub const OF_METAL: [Which; 2] = [Which::Density, Which::Modulus];

/// What belongs to no material.
pub const GENERAL: [Which; 8] = [
    Which::BodyExpansion,
    Which::BodyMovement,
    Which::BrillianceLoss,
    Which::WindingLoss,
    Which::WindingStiffening,
    Which::Bonding,
    Which::Seating,
    Which::SoundingLength,
];

impl Draw {
    /// Everything at its central value.
    pub const CENTRAL: Self = Self { shift: None };

    /// One number moved to `t` of the way through its range, −1 to 1.
    #[must_use]
    pub const fn shifted(owner: Owner, which: Which, t: f64) -> Self {
        Self { shift: Some((owner, which, t)) }
    }

    fn of(&self, owner: Owner, which: Which, constant: &Constant) -> f64 {
        match self.shift {
            Some((o, w, t)) if w == which && o == owner => constant.drawn(t),
            _ => constant.value,
        }
    }

    /// A number of a core's material.
    #[must_use]
    pub fn core(&self, material: &CoreMaterial, which: Which) -> f64 {
        let constant = match which {
            Which::Density => &material.density,
            Which::Modulus => &material.modulus,
            Which::FastModulus => &material.fast_modulus,
            Which::Strength => &material.strength,
            Which::Poisson => &material.poisson,
            Which::Loss => &material.loss,
            Which::Creep => &material.creep,
            Which::Expansion => &material.expansion,
            Which::Moisture => &material.moisture_left,
            Which::Softening => &material.softening,
            _ => return 0.0,
        };
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
    pub fn general(&self, which: Which, constant: &Constant) -> f64 {
        self.of("", which, constant)
    }
}
