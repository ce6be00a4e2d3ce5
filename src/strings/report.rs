//! Everything the model says of one string in one setting.
//!
//! A property is computed once with every constant at its value, and once with each uncertain constant at
//! either end of its 90 % range; the differences, added as independent, make the range. This is first-order
//! propagation: exact for a linear model, within a few per cent here, and the same everywhere to the bit.

use crate::constant::{self, SETTLED_WITHIN};
use crate::construction::{Build, Construction};
use crate::draw::{self, Draw, Which};
use crate::material::{Class, FAST_SLOPE_STRESS};
use crate::physics::{
    bowing, climate, load, mass, partials, settling, stiffness, strength, tension, tuning,
};
use crate::quantity::{
    Cent, Day, Degree, KilogramPerCubicMetre, KilogramPerMetre, Metre, Newton, NewtonSquareMetre,
    Pascal, Ratio, SquareMetre,
};
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
    /// Drift from the string's warmth over the room's swing.
    DriftTemperature = "drift_temperature_cent", Computed, LYNCH_AIRD_2018;
    /// Drift from the string's moisture over the room's swing.
    DriftMoisture = "drift_moisture_cent", Judged, HERITAGE_2013;
    /// Drift from the body's movement over the room's swing.
    DriftBody = "drift_body_cent", Judged, ANDERSON_2024;
    /// The three together.
    Drift = "drift_cent", Judged, LYNCH_AIRD_2018;
    /// Force on the bridge.
    Downforce = "downforce_n", Computed, STATICS;
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
    /// Whether the range spans more than a factor of three: then it is unknown, and carries no reason.
    #[must_use]
    pub fn is_unknown(&self) -> bool {
        self.low <= 0.0 && self.high > 0.0 || self.high > 3.0 * self.low
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

/// What a core is, in one draw.
struct CoreState {
    mass: f64,
    /// Effective area for pulling, before the twist factor of gut.
    area: SquareMetre,
    modulus: f64,
    fast_modulus: f64,
    strength: f64,
}

fn core_state(construction: &Construction, setting: &Setting, draw: &Draw) -> CoreState {
    let core = &construction.core;
    let m = core.material;
    let d = core.diameter;
    let density = KilogramPerCubicMetre::new(draw.core(m, Which::Density));
    let (mass_per_length, area, wire) = match core.build {
        Build::Solid | Build::Twisted { .. } => (mass::solid(density, d), mass::circle(d), d),
        Build::Strand { layout, lay } => (
            mass::strand(density, d, layout, lay),
            stiffness::strand_area(d, layout, lay),
            Metre::new(d.get() / layout.diameter_in_wires()),
        ),
        Build::Multifilament { filament, fill, twist } => {
            (mass::bundle(density, d, fill), stiffness::bundle_area(d, fill, twist), filament)
        }
    };
    let (twist_modulus, twist_strength) = match core.build {
        Build::Twisted { twist } => {
            (stiffness::gut_twist_factor(twist).get(), strength::gut_twist_factor(twist).get())
        }
        _ => (1.0, 1.0),
    };
    let warmth = 1.0 - draw.core(m, Which::Softening) * (setting.temperature.get() - 20.0);
    let tabled = draw.core(m, Which::Strength);
    let strength = if m.class == Class::Steel {
        tabled * strength::music_wire(wire).get()
    } else {
        tabled * twist_strength
    };
    // Gut weighs what its water makes it weigh; the table holds at 50 % humidity.
    let water = if m.class == Class::Gut {
        (1.0 + climate::collagen_water(setting.humidity).get())
            / (1.0 + climate::collagen_water(Ratio::new(0.5)).get())
    } else {
        1.0
    };
    CoreState {
        mass: mass_per_length.get() * water,
        area,
        modulus: draw.core(m, Which::Modulus) * twist_modulus * warmth,
        fast_modulus: draw.core(m, Which::FastModulus) * twist_modulus * warmth,
        strength,
    }
}

/// Bending stiffness of the core alone: between free and bonded, by [`constant::BONDING`].
fn core_bending(
    construction: &Construction,
    fast_modulus: Pascal,
    area: SquareMetre,
    draw: &Draw,
) -> f64 {
    let core = &construction.core;
    let d = core.diameter;
    let bonded = stiffness::bending_bonded(fast_modulus, area, d).get();
    let poisson = Ratio::new(draw.core(core.material, Which::Poisson));
    let free_of = |count: f64, filament: f64, angle: Degree| {
        stiffness::bending_free(
            fast_modulus,
            Ratio::new(count),
            Metre::new(filament),
            angle,
            poisson,
        )
        .get()
    };
    let (free, central, high) = match core.build {
        Build::Solid | Build::Twisted { .. } => return bonded,
        Build::Strand { layout, lay } => {
            let free =
                free_of(f64::from(layout.wires().0), d.get() / layout.diameter_in_wires(), lay);
            let bonded = stiffness::strand_bending_bonded(fast_modulus, area, d, layout).get();
            (free, (free * bonded).sqrt(), bonded)
        }
        Build::Multifilament { filament, fill, twist } => {
            let ratio = d.get() / filament.get();
            // Wound guitar basses on such cores were measured at up to twice the bonded core.
            (free_of(fill.get() * ratio * ratio, filament.get(), twist), bonded / 2.0, 2.0 * bonded)
        }
    };
    let t = draw.general(Which::Bonding, &constant::BONDING);
    if t < 0.0 { central + t * (central - free) } else { central + t * (high - central) }
}

fn seating(construction: &Construction) -> &'static constant::Constant {
    match (construction.core.material.class, construction.core.build) {
        (Class::Gut, _) => &constant::SEATING[4],
        (_, Build::Strand { .. }) => &constant::SEATING[2],
        (Class::Steel, _) if construction.is_wound() => &constant::SEATING[1],
        (Class::Steel, _) => &constant::SEATING[0],
        (Class::Polymer, _) => &constant::SEATING[3],
    }
}

/// Axial stiffness of the core and mass a length of the core alone, all constants central; for the search.
#[must_use]
pub fn core_of(construction: &Construction, setting: &Setting) -> (Newton, KilogramPerMetre) {
    let core = core_state(construction, setting, &Draw::CENTRAL);
    (stiffness::axial(Pascal::new(core.modulus), core.area), KilogramPerMetre::new(core.mass))
}

/// Every property of a string in a setting, in one draw.
#[must_use]
pub fn values(construction: &Construction, setting: &Setting, draw: &Draw) -> Values {
    let m = construction.core.material;
    let core = core_state(construction, setting, draw);
    let doubt = constant::Constant {
        value: setting.sounding_length.get(),
        low: setting.sounding_length.get() - setting.sounding_length_doubt.get(),
        high: setting.sounding_length.get() + setting.sounding_length_doubt.get(),
        ..constant::BONDING
    };
    let length = Metre::new(draw.general(Which::SoundingLength, &doubt));

    let mut under = construction.core.diameter.get();
    let mut winding_mass = 0.0;
    let mut winding_lossy = 0.0;
    for winding in construction.windings() {
        let density = KilogramPerCubicMetre::new(draw.metal(winding.metal, Which::Density));
        winding_mass += mass::winding(
            density,
            winding.form,
            winding.thickness,
            winding.bedding,
            Metre::new(under),
        )
        .get();
        let t = winding.thickness.get();
        let mean = Metre::new(under - 2.0 * winding.bedding.get() * t + t);
        winding_lossy += partials::tube_stiffness(
            Pascal::new(draw.metal(winding.metal, Which::Modulus)),
            mean,
            winding.thickness,
        )
        .get();
        under += 2.0 * t * (1.0 - winding.bedding.get());
    }
    let mu0 = KilogramPerMetre::new(core.mass + winding_mass);
    let ea = stiffness::axial(Pascal::new(core.modulus), core.area);
    let t = tension::at_pitch(mu0, ea, length, setting.pitch);
    let stretch = tension::stretch(t, ea);
    let mu = mass::stretched(mu0, stretch);
    let stress = tension::stress(t, core.area);
    let strength = Pascal::new(core.strength);
    let breaking_force = Newton::new(core.strength * core.area.get());

    let slope_stress = stress.get().clamp(FAST_SLOPE_STRESS.0, FAST_SLOPE_STRESS.1);
    let fast = Pascal::new(core.fast_modulus + m.fast_slope * slope_stress);
    let bare = core_bending(construction, fast, core.area, draw);
    let stiffening = if construction.is_wound() {
        1.0 + draw.general(Which::WindingStiffening, &constant::WINDING_STIFFENING)
    } else {
        1.0
    };
    let bending = NewtonSquareMetre::new(bare * stiffening);
    let lossy = bare * draw.core(m, Which::Loss)
        + winding_lossy * draw.general(Which::WindingLoss, &constant::WINDING_LOSS);
    let limit = Ratio::new(draw.general(Which::BrillianceLoss, &constant::BRILLIANCE_LOSS));

    let whole = Metre::new(length.get() + setting.afterlength.get() + setting.nut_to_peg.get());
    let pull = tuning::pull(ea, t, whole);
    let loss = settling::loss_per_decade(Ratio::new(draw.core(m, Which::Creep)));
    let seated = Day::new(draw.general(Which::Seating, seating(construction)));

    let warmth = climate::from_temperature(
        ea,
        t,
        draw.core(m, Which::Expansion),
        draw.general(Which::BodyExpansion, &constant::BODY_EXPANSION),
        draw.core(m, Which::Softening),
        setting.temperature_swing,
    );
    let moisture = climate::from_moisture(
        setting.humidity,
        setting.humidity_swing,
        Ratio::new(draw.core(m, Which::Moisture)),
    );
    let movement = draw.general(Which::BodyMovement, &constant::BODY_MOVEMENT)
        * setting.humidity_swing.get()
        / constant::BODY_MOVEMENT_SWING;
    let body = climate::from_body(ea, t, Ratio::new(movement));
    let (static_friction, sliding_friction) = constant::FRICTION;

    let mut out = [0.0; COUNT];
    let mut put = |property: Property, value: f64| out[property as usize] = value;
    put(Property::MassUnstretched, mu0.get());
    put(Property::MassAtPitch, mu.get());
    put(Property::Tension, t.get());
    put(Property::CoreStress, stress.get());
    put(Property::BreakingShare, strength::share(stress, strength).get());
    put(Property::BreakingPitch, strength::breaking_pitch(breaking_force, mu0, length).get());
    put(Property::Stretch, stretch.get());
    put(Property::Pull, pull.get());
    put(Property::Peg, tuning::peg(pull, setting.peg_diameter, setting.gear_ratio).get());
    put(Property::Feel, tension::lateral_stiffness(t, length).get());
    put(Property::Impedance, tension::impedance(t, mu).get());
    put(Property::AxialStiffness, ea.get());
    put(Property::BendingStiffness, bending.get());
    put(Property::Inharmonicity, partials::inharmonicity(bending, t, length).get());
    put(Property::OuterDiameter, under);
    put(
        Property::OuterDiameterAtPitch,
        stiffness::diameter_at_pitch(
            Metre::new(under),
            construction.core.diameter,
            stretch,
            Ratio::new(draw.core(m, Which::Poisson)),
        )
        .get(),
    );
    put(Property::WindingShare, winding_mass / mu0.get());
    put(
        Property::Brilliance,
        partials::brilliance(NewtonSquareMetre::new(lossy), t, length, setting.pitch, limit).get(),
    );
    put(
        Property::Attack,
        bowing::attack(
            bowing::sounding_mass(mu, length),
            constant::BOWING_PLACE,
            static_friction,
            sliding_friction,
        ),
    );
    put(Property::LossPerDecade, loss.get());
    put(Property::SettlingDays, settling::days(loss, Cent::new(SETTLED_WITHIN), seated).get());
    put(Property::DriftTemperature, warmth.get());
    put(Property::DriftMoisture, moisture.get());
    put(Property::DriftBody, body.get());
    put(Property::Drift, warmth.get() + moisture.get() + body.get());
    put(Property::Downforce, load::downforce(t, setting.angle_over_bridge).get());
    Values(out)
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

/// Every property of a string in a setting, each with its 90 % range.
#[must_use]
pub fn report(construction: &Construction, setting: &Setting) -> Report {
    let central = values(construction, setting, &Draw::CENTRAL);
    let (mut down, mut up) = ([0.0; COUNT], [0.0; COUNT]);
    for (owner, which) in uncertain(construction) {
        let ends =
            [-1.0, 1.0].map(|t| values(construction, setting, &Draw::shifted(owner, which, t)));
        for i in 0..COUNT {
            let deltas = ends.map(|v| v.0[i] - central.0[i]);
            let (low, high) =
                (deltas[0].min(deltas[1]).min(0.0), deltas[0].max(deltas[1]).max(0.0));
            down[i] += low * low;
            up[i] += high * high;
        }
    }
    Report(
        (0..COUNT)
            .map(|i| {
                let value = central.0[i];
                // None of these properties can be negative, so a range may not be either.
                Estimate {
                    value,
                    low: (value - down[i].sqrt()).max(0.0),
                    high: value + up[i].sqrt(),
                }
            })
            .collect(),
    )
}
