//! What cores and windings are made of, and how far each number is to be trusted.
//!
//! Values are for oriented filaments, drawn wire or finished gut; a moulding of the same polymer is three
//! times softer and must not stand in for a string. The model keeps the tuning modulus (minutes) apart from
//! the vibration modulus (milliseconds): in polymers they differ.

use crate::constant::{Constant, Which};
use crate::source::{self, Evidence};

/// Broad class of a core material: decides which laws apply.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Class {
    /// Twisted collagen from the intestine of sheep or cattle.
    Gut,
    /// Drawn carbon or stainless spring steel.
    Steel,
    /// Drawn polymer filament.
    Polymer,
}

/// A material of which cores are made.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CoreMaterial {
    /// The key by which requests name it.
    pub key: &'static str,
    /// Its name on screen.
    pub name: &'static str,
    /// Which laws apply to it.
    pub class: Class,
    /// Density of the solid material.
    pub density: Constant,
    /// Modulus over minutes, as when tuning; along a filament, or for gut at [`GUT_TWIST_OF_TABLE`].
    pub modulus: Constant,
    /// Modulus over milliseconds, as when sounding.
    pub fast_modulus: Constant,
    /// Rise of the fast modulus with stress, Pa/Pa, within [`FAST_SLOPE_STRESS`].
    pub fast_slope: f64,
    /// Tensile strength; for carbon spring steel a factor on the law of [`crate::physics::strength`].
    pub strength: Constant,
    /// Poisson's ratio.
    pub poisson: Constant,
    /// Loss factor of the fast modulus.
    pub loss: Constant,
    /// Creep in a decade of time, as a share of the stretch, at [`crate::constant::CREEP_SHARE`] of the strength; for
    /// steel a factor on the law of [`crate::physics::settling::steel_relaxation`].
    pub creep: Constant,
    /// Rise of creep for ten points of relative humidity.
    pub damp_creep: Constant,
    /// Thermal expansion, 1/K.
    pub expansion: Constant,
    /// Water taken up at [`crate::constant::WATER_HUMIDITY`], as a share of mass; for gut the isotherm of collagen is used.
    pub water: Constant,
    /// How fast water diffuses into it, m²/s.
    pub diffusivity: Constant,
    /// Growth along a free fibre for each unit of water taken up.
    pub swelling_along: Constant,
    /// Growth across a free fibre for each unit of water taken up.
    pub swelling_across: Constant,
    /// Fall of the modulus for each unit of water taken up, as a share of it.
    pub damp_softening: Constant,
    /// What tension leaves of the effects of water.
    ///
    /// In a polymer the share of swelling and softening that a pulled fibre shows. In gut the share of a bare string's
    /// change of mass that its pull does not give back: measured of whole strings, it stands for swelling, twist and softening together.
    pub moisture_left: Constant,
    /// Modulus of shear along the string.
    pub shear: Constant,
    /// Fall of the modulus with warmth, as a share of it a kelvin.
    pub softening: Constant,
    /// Whether it comes from an animal.
    pub animal: bool,
}

impl CoreMaterial {
    /// The number of that kind, if it is one that belongs to a core's material.
    #[must_use]
    pub const fn constant(&self, which: Which) -> Option<&Constant> {
        Some(match which {
            Which::Density => &self.density,
            Which::Modulus => &self.modulus,
            Which::FastModulus => &self.fast_modulus,
            Which::Strength => &self.strength,
            Which::Poisson => &self.poisson,
            Which::Loss => &self.loss,
            Which::Creep => &self.creep,
            Which::DampCreep => &self.damp_creep,
            Which::Expansion => &self.expansion,
            Which::Moisture => &self.moisture_left,
            Which::Softening => &self.softening,
            Which::Water => &self.water,
            Which::Diffusivity => &self.diffusivity,
            Which::SwellingAlong => &self.swelling_along,
            Which::SwellingAcross => &self.swelling_across,
            Which::DampSoftening => &self.damp_softening,
            Which::Shear => &self.shear,
            _ => return None,
        })
    }
}

/// A metal of which windings are made.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Metal {
    /// The key by which requests name it.
    pub key: &'static str,
    /// Its name on screen.
    pub name: &'static str,
    /// Density of the wire or ribbon.
    pub density: Constant,
    /// Young's modulus, for the friction of close windings.
    pub modulus: Constant,
    /// Whether skin that cannot bear nickel can bear it as the outermost layer.
    pub nickel_free: bool,
    /// Whether the trade uses it as the outermost layer, under the fingers.
    pub outer: bool,
    /// Price of the string it makes, 1 modest to 4 costly: a judgement.
    pub price: u8,
    /// How it wears under acid sweat, 0 badly to 1 not at all: a judgement.
    pub wear: f64,
}

use Evidence::{Guessed, Judged, Published};

/// Surface twist at which gut's tabled modulus and strength hold; both fall from there as cos² and cos.
pub const GUT_TWIST_OF_TABLE: f64 = 25.0;

/// Stress range in which the fast modulus of polyamide was measured, Pa; outside it the slope is clamped.
pub const FAST_SLOPE_STRESS: (f64, f64) = (2.0e7, 2.0e8);

const ROOM: &str = "20 °C, 50 % humidity";

const fn constant(
    value: f64,
    low: f64,
    high: f64,
    unit: &'static str,
    evidence: Evidence,
    from: source::Source,
) -> Constant {
    Constant::new(value, low, high, unit, ROOM, evidence, from)
}

/// Nothing of the kind.
const NONE: Constant = constant(0.0, 0.0, 0.0, "1", Published, source::STATICS);

/// Gut of sheep or cattle, twisted and dried.
pub const GUT: CoreMaterial = CoreMaterial {
    key: "gut",
    name: "gut",
    class: Class::Gut,
    density: constant(
        1320.0,
        1290.0,
        1350.0,
        "kg/m³",
        Published,
        source::WOODHOUSE_LYNCH_AIRD_2019,
    ),
    modulus: constant(6.0e9, 5.1e9, 6.9e9, "Pa", Published, source::WOODHOUSE_LYNCH_AIRD_2019),
    fast_modulus: constant(6.0e9, 5.1e9, 6.9e9, "Pa", Published, source::WOODHOUSE_LYNCH_AIRD_2019),
    fast_slope: 0.0,
    // The trade's breaking index of 260 Hz·m (240 to 280), turned into stress with the stretch at break taken off.
    strength: constant(3.38e8, 2.90e8, 3.89e8, "Pa", Guessed, source::PRACTICE),
    poisson: constant(0.40, 0.35, 0.50, "1", Guessed, source::HANDBOOK),
    loss: constant(0.025, 0.020, 0.030, "1", Guessed, source::HANDBOOK),
    creep: constant(0.05, 0.03, 0.085, "1", Guessed, source::PRACTICE),
    damp_creep: constant(0.20, 0.05, 0.50, "1", Judged, source::LYNCH_AIRD_TWIST),
    expansion: constant(-2.0e-5, -8.0e-5, 2.0e-5, "1/K", Guessed, source::LYNCH_AIRD_2018),
    water: constant(0.21, 0.20, 0.22, "1", Published, source::HERITAGE_2013),
    // A quarter of an hour through 0.78 mm.
    diffusivity: constant(2.9e-11, 1.0e-11, 1.0e-10, "m²/s", Guessed, source::PRACTICE),
    swelling_along: NONE,
    swelling_across: NONE,
    damp_softening: NONE,
    moisture_left: constant(0.10, 0.02, 0.30, "1", Judged, source::LYNCH_AIRD_TWIST),
    shear: constant(7.5e8, 5.0e8, 1.0e9, "Pa", Guessed, source::HANDBOOK),
    softening: constant(2.0e-3, 0.0, 4.0e-3, "1/K", Guessed, source::LYNCH_AIRD_2018),
    animal: true,
};

/// Carbon spring steel: music wire.
pub const SPRING_STEEL: CoreMaterial = CoreMaterial {
    key: "spring-steel",
    name: "spring steel",
    class: Class::Steel,
    density: constant(7850.0, 7800.0, 7880.0, "kg/m³", Published, source::EN_10270),
    modulus: constant(2.00e11, 1.94e11, 2.06e11, "Pa", Published, source::YOUNG_1952),
    fast_modulus: constant(2.00e11, 1.94e11, 2.06e11, "Pa", Published, source::YOUNG_1952),
    fast_slope: 0.0,
    strength: constant(1.0, 0.90, 1.12, "of ASTM A228, least", Published, source::ASTM_A228),
    poisson: constant(0.29, 0.28, 0.30, "1", Published, source::HANDBOOK),
    loss: constant(3.0e-4, 1.0e-4, 5.0e-4, "1", Guessed, source::HANDBOOK),
    // Piano wire was found to lose several times what the law gives, pins in wood not excluded.
    creep: constant(1.7, 0.5, 5.0, "of EN 1992-1-1 eq. 3.28", Judged, source::EN_1992),
    damp_creep: NONE,
    expansion: constant(1.15e-5, 1.10e-5, 1.20e-5, "1/K", Published, source::HANDBOOK),
    water: NONE,
    // It takes up no water, so that this number has no effect.
    diffusivity: constant(1.0, 1.0, 1.0, "m²/s", Published, source::STATICS),
    swelling_along: NONE,
    swelling_across: NONE,
    damp_softening: NONE,
    moisture_left: NONE,
    shear: constant(7.9e10, 7.7e10, 8.1e10, "Pa", Published, source::HANDBOOK),
    softening: constant(2.5e-4, 2.2e-4, 2.9e-4, "1/K", Guessed, source::KEULEGAN_1933),
    animal: false,
};

/// Stainless spring steel of the 302 kind.
pub const STAINLESS: CoreMaterial = CoreMaterial {
    key: "stainless-steel",
    name: "stainless spring steel",
    density: constant(7930.0, 7900.0, 8000.0, "kg/m³", Guessed, source::HANDBOOK),
    modulus: constant(1.90e11, 1.85e11, 1.95e11, "Pa", Guessed, source::HANDBOOK),
    fast_modulus: constant(1.90e11, 1.85e11, 1.95e11, "Pa", Guessed, source::HANDBOOK),
    // The least of ASTM A313 for type 302, from memory: 0.83 of music wire at 0.25 mm, 0.86 from 0.5 mm on.
    strength: constant(0.84, 0.78, 0.92, "of ASTM A228, least", Guessed, source::HANDBOOK),
    loss: constant(5.0e-4, 2.0e-4, 1.0e-3, "1", Guessed, source::HANDBOOK),
    expansion: constant(1.7e-5, 1.6e-5, 1.8e-5, "1/K", Guessed, source::HANDBOOK),
    shear: constant(7.1e10, 6.9e10, 7.3e10, "Pa", Guessed, source::HANDBOOK),
    ..SPRING_STEEL
};

/// Polyamide 66 filament: the most elastic synthetic in common use.
pub const POLYAMIDE: CoreMaterial = CoreMaterial {
    key: "polyamide",
    name: "polyamide",
    class: Class::Polymer,
    density: constant(1140.0, 1120.0, 1160.0, "kg/m³", Published, source::HANDBOOK),
    modulus: constant(4.5e9, 3.2e9, 6.0e9, "Pa", Guessed, source::LYNCH_AIRD_2017),
    fast_modulus: constant(4.5e9, 3.6e9, 5.4e9, "Pa", Published, source::WOODHOUSE_LYNCH_AIRD_2019),
    fast_slope: 39.0,
    // From memory: twisted yarn 400 to 600 MPa, single filament 500 to 700.
    strength: constant(6.0e8, 4.0e8, 7.0e8, "Pa", Guessed, source::HANDBOOK),
    poisson: constant(0.39, 0.35, 0.45, "1", Guessed, source::HANDBOOK),
    loss: constant(0.020, 0.015, 0.025, "1", Guessed, source::HANDBOOK),
    creep: constant(0.08, 0.05, 0.13, "1", Guessed, source::FRENCH_SAVART),
    damp_creep: constant(0.20, 0.05, 0.40, "1", Judged, source::HUMEAU_2018),
    expansion: constant(-6.0e-5, -1.2e-4, -1.0e-5, "1/K", Guessed, source::CHOY_1981),
    // Of drawn fibre; a moulding takes 0.025.
    water: constant(0.036, 0.028, 0.042, "1", Guessed, source::MORTON_HEARLE),
    diffusivity: constant(3.0e-13, 1.0e-13, 1.0e-12, "m²/s", Guessed, source::HANDBOOK),
    // 2.7 to 2.9 % along and 1.9 to 2.6 % across, from dry to wet with some 8.5 % of water.
    swelling_along: constant(0.33, 0.29, 0.37, "1", Published, source::MORTON_HEARLE),
    swelling_across: constant(0.26, 0.21, 0.32, "1", Published, source::MORTON_HEARLE),
    damp_softening: constant(6.0, 3.0, 10.0, "1", Guessed, source::HUMEAU_2018),
    moisture_left: constant(0.10, 0.03, 0.35, "1", Judged, source::LYNCH_AIRD_2018),
    shear: constant(7.5e8, 5.0e8, 1.0e9, "Pa", Guessed, source::HANDBOOK),
    softening: constant(3.0e-3, 1.0e-3, 6.0e-3, "1/K", Guessed, source::LYNCH_AIRD_2018),
    animal: false,
};

/// Polyester filament: a firmer synthetic.
pub const POLYESTER: CoreMaterial = CoreMaterial {
    key: "polyester",
    name: "polyester",
    density: constant(1375.0, 1360.0, 1390.0, "kg/m³", Published, source::HANDBOOK),
    modulus: constant(1.05e10, 8.0e9, 1.35e10, "Pa", Guessed, source::HANDBOOK),
    fast_modulus: constant(1.2e10, 1.0e10, 1.4e10, "Pa", Published, source::HANDBOOK),
    fast_slope: 0.0,
    strength: constant(7.0e8, 5.0e8, 9.0e8, "Pa", Guessed, source::HANDBOOK),
    poisson: constant(0.38, 0.33, 0.44, "1", Guessed, source::HANDBOOK),
    loss: constant(0.015, 0.010, 0.020, "1", Guessed, source::HANDBOOK),
    creep: constant(0.030, 0.018, 0.050, "1", Guessed, source::HANDBOOK),
    damp_creep: constant(0.02, 0.0, 0.05, "1", Judged, source::YAMAGUCHI_1959),
    expansion: constant(-2.0e-5, -5.0e-5, 0.0, "1/K", Guessed, source::CHOY_1981),
    softening: constant(1.0e-3, 3.0e-4, 2.0e-3, "1/K", Guessed, source::HANDBOOK),
    water: constant(0.004, 0.003, 0.005, "1", Guessed, source::HANDBOOK),
    diffusivity: constant(5.0e-13, 1.0e-13, 2.0e-12, "m²/s", Guessed, source::HANDBOOK),
    swelling_along: constant(0.15, 0.0, 0.30, "1", Guessed, source::HANDBOOK),
    swelling_across: constant(0.30, 0.10, 0.50, "1", Guessed, source::HANDBOOK),
    damp_softening: constant(2.0, 0.0, 5.0, "1", Guessed, source::HANDBOOK),
    moisture_left: constant(0.5, 0.1, 1.0, "1", Judged, source::PRACTICE),
    shear: constant(1.2e9, 8.0e8, 2.0e9, "Pa", Guessed, source::HANDBOOK),
    ..POLYAMIDE
};

/// A high-modulus polymer filament, as the strongest composite cores use it.
pub const HIGH_MODULUS: CoreMaterial = CoreMaterial {
    key: "high-modulus-polymer",
    name: "high-modulus polymer",
    density: constant(1380.0, 1300.0, 1450.0, "kg/m³", Guessed, source::HANDBOOK),
    modulus: constant(2.2e10, 1.4e10, 3.5e10, "Pa", Guessed, source::HANDBOOK),
    fast_modulus: constant(2.5e10, 1.6e10, 4.0e10, "Pa", Guessed, source::HANDBOOK),
    fast_slope: 0.0,
    strength: constant(1.3e9, 9.0e8, 2.0e9, "Pa", Guessed, source::HANDBOOK),
    loss: constant(0.015, 0.010, 0.030, "1", Guessed, source::HANDBOOK),
    creep: constant(0.018, 0.010, 0.035, "1", Guessed, source::HANDBOOK),
    damp_creep: constant(0.02, 0.0, 0.05, "1", Judged, source::HANDBOOK),
    expansion: constant(-1.0e-5, -3.0e-5, 0.0, "1/K", Guessed, source::CHOY_1981),
    softening: constant(1.5e-3, 5.0e-4, 3.0e-3, "1/K", Guessed, source::HANDBOOK),
    water: constant(0.003, 0.0, 0.006, "1", Guessed, source::HANDBOOK),
    diffusivity: constant(5.0e-13, 1.0e-13, 2.0e-12, "m²/s", Guessed, source::HANDBOOK),
    swelling_along: constant(0.10, 0.0, 0.30, "1", Guessed, source::HANDBOOK),
    swelling_across: constant(0.30, 0.10, 0.50, "1", Guessed, source::HANDBOOK),
    damp_softening: constant(1.0, 0.0, 3.0, "1", Guessed, source::HANDBOOK),
    moisture_left: constant(0.5, 0.1, 1.0, "1", Judged, source::PRACTICE),
    shear: constant(1.5e9, 8.0e8, 2.5e9, "Pa", Guessed, source::HANDBOOK),
    ..POLYAMIDE
};

/// Para-aramid filament: stronger and stiffer than any synthetic string core in common use.
pub const ARAMID: CoreMaterial = CoreMaterial {
    key: "aramid",
    name: "aramid",
    density: constant(1440.0, 1430.0, 1450.0, "kg/m³", Guessed, source::HANDBOOK),
    modulus: constant(9.5e10, 7.0e10, 1.25e11, "Pa", Guessed, source::HANDBOOK),
    fast_modulus: constant(9.5e10, 7.0e10, 1.25e11, "Pa", Guessed, source::HANDBOOK),
    fast_slope: 0.0,
    strength: constant(3.2e9, 2.9e9, 3.6e9, "Pa", Guessed, source::HANDBOOK),
    poisson: constant(0.36, 0.30, 0.40, "1", Guessed, source::HANDBOOK),
    loss: constant(0.015, 0.010, 0.020, "1", Guessed, source::HANDBOOK),
    // 13 % of the elastic stretch after 1000 days at 57 % of its strength, 14.6 % after 4000.
    creep: constant(0.017, 0.011, 0.030, "1", Published, source::WALTON_1983),
    damp_creep: constant(0.10, 0.0, 0.30, "1", Guessed, source::WANG_1993),
    expansion: constant(-3.5e-6, -5.0e-6, -2.0e-6, "1/K", Guessed, source::HANDBOOK),
    softening: constant(8.0e-4, 3.0e-4, 1.5e-3, "1/K", Guessed, source::HANDBOOK),
    water: constant(0.05, 0.035, 0.07, "1", Guessed, source::HANDBOOK),
    diffusivity: constant(1.0e-15, 1.0e-16, 1.0e-14, "m²/s", Guessed, source::HANDBOOK),
    swelling_along: constant(0.02, 0.0, 0.06, "1", Guessed, source::HANDBOOK),
    swelling_across: constant(0.50, 0.30, 0.70, "1", Guessed, source::HANDBOOK),
    damp_softening: constant(1.0, 0.0, 3.0, "1", Guessed, source::HANDBOOK),
    moisture_left: constant(0.5, 0.1, 1.0, "1", Judged, source::PRACTICE),
    shear: constant(1.75e9, 1.5e9, 2.0e9, "Pa", Guessed, source::HANDBOOK),
    ..POLYAMIDE
};

/// Every core material, in the order the tables show them.
pub const CORES: &[&CoreMaterial] =
    &[&GUT, &SPRING_STEEL, &STAINLESS, &POLYAMIDE, &POLYESTER, &HIGH_MODULUS, &ARAMID];

/// What the trade says of a winding metal: no nickel in it, fit to be outermost, price, wear.
type Habits = (bool, bool, u8, f64);

const fn metal(
    key: &'static str,
    name: &'static str,
    density: Constant,
    modulus: (f64, f64, f64),
    habits: Habits,
) -> Metal {
    let modulus = constant(modulus.0, modulus.1, modulus.2, "Pa", Guessed, source::HANDBOOK);
    let (nickel_free, outer, price, wear) = habits;
    Metal { key, name, density, modulus, nickel_free, outer, price, wear }
}

const fn rho(
    value: f64,
    low: f64,
    high: f64,
    evidence: Evidence,
    from: source::Source,
) -> Constant {
    constant(value, low, high, "kg/m³", evidence, from)
}

/// Every winding metal, light to heavy.
pub const METALS: &[Metal] = &[
    metal(
        "aluminium",
        "aluminium",
        rho(2680.0, 2640.0, 2710.0, Guessed, source::HANDBOOK),
        (7.0e10, 6.8e10, 7.2e10),
        (true, true, 1, 0.3),
    ),
    metal(
        "titanium",
        "titanium",
        rho(4510.0, 4500.0, 4550.0, Guessed, source::HANDBOOK),
        (1.10e11, 1.05e11, 1.16e11),
        (true, true, 3, 1.0),
    ),
    metal(
        "chrome-steel",
        "chrome steel",
        rho(7730.0, 7700.0, 7800.0, Guessed, source::HANDBOOK),
        (2.00e11, 1.90e11, 2.06e11),
        (true, true, 1, 0.9),
    ),
    metal(
        "nickel",
        "nickel",
        rho(8900.0, 8850.0, 8910.0, Published, source::PERIODICTABLE),
        (2.05e11, 1.95e11, 2.10e11),
        (false, true, 2, 0.8),
    ),
    metal(
        "copper",
        "copper",
        rho(8940.0, 8900.0, 8960.0, Guessed, source::HANDBOOK),
        (1.20e11, 1.15e11, 1.30e11),
        (true, false, 1, 0.3),
    ),
    metal(
        "silver",
        "silver",
        rho(10360.0, 10300.0, 10500.0, Guessed, source::HANDBOOK),
        (7.8e10, 7.4e10, 8.3e10),
        (true, true, 3, 0.6),
    ),
    metal(
        "tungsten",
        "tungsten",
        rho(19250.0, 19000.0, 19300.0, Guessed, source::HANDBOOK),
        (4.00e11, 3.90e11, 4.10e11),
        (true, true, 3, 0.9),
    ),
    metal(
        "gold",
        "gold",
        rho(19300.0, 19200.0, 19320.0, Published, source::PERIODICTABLE),
        (7.8e10, 7.6e10, 8.0e10),
        (true, true, 4, 1.0),
    ),
];

/// The core material of that key.
#[must_use]
pub fn core(key: &str) -> Option<&'static CoreMaterial> {
    CORES.iter().copied().find(|m| m.key == key)
}

/// The winding metal of that key.
#[must_use]
pub fn metal_of(key: &str) -> Option<&'static Metal> {
    METALS.iter().find(|m| m.key == key)
}
