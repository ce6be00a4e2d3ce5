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
    bowing, climate, damping, load, mass, partials, settling, stiffness, stopping, strand,
    strength, tension, torsion, tuning,
};
use crate::quantity::{
    Cent, Day, Degree, Hertz, KilogramPerCubicMetre, KilogramPerMetre, KilogramPerSecond, Metre,
    Newton, NewtonSquareMetre, Pascal, Ratio, SquareMetre,
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
    /// What gut loses for good when it gets damper than ever before.
    DriftRatchet = "drift_ratchet_cent", Judged, LYNCH_AIRD_TWIST;
    /// What pegs, knots and bridge give.
    DriftSeats = "drift_seats_cent", Judged, PRACTICE;
    /// Passing drift of the first hours in another room; no part of the sum.
    DriftTransient = "drift_transient_cent", Judged, PRACTICE;
    /// All lasting parts together.
    Drift = "drift_cent", Judged, LYNCH_AIRD_2018;
    /// Force on the bridge.
    Downforce = "downforce_n", Computed, STATICS;
    /// Lowest clean bow acceleration for each newton of bow force.
    GentlestAttack = "gentlest_attack_m_s2_n", Computed, GUETTLER_2002;
    /// Largest bow force for clean motion, at the stated place and speed.
    GreatestForce = "bow_force_greatest_n", Computed, SCHELLENG_1973;
    /// Least bow force by theory.
    LeastForce = "bow_force_least_n", Judged, SCHELLENG_1973;
    /// Least bow force as measured.
    LeastForceMeasured = "bow_force_least_measured_n", Judged, SCHOONDERWALDT_2008;
    /// Room between them, by theory, in decibels.
    BowWindow = "bow_window_db", Judged, SCHELLENG_1973;
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
    /// Pitch rise when stopped at the octave.
    Stopping = "stopping_cent", Computed, ANDERSON_2024;
    /// Pitch rise at a swing of the stated amplitude.
    Glide = "glide_cent", Computed, STATICS;
    /// Bending stress over the nut, over the strength.
    OverTheNut = "over_the_nut", Computed, STATICS;
    /// Share of fatigue strength at the stated amplitude.
    Fatigue = "fatigue", Judged, SHIGLEY;
    /// Pitch lost once, within hours, by a strand finding its place.
    Constructional = "constructional_cent", Guessed, HANDBOOK;
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
    diameter: Metre,
    /// Diameter of one wire or filament; of the core where it is one.
    filament: Metre,
    mass: KilogramPerMetre,
    /// Effective area for pulling, before the twist factor of gut.
    area: SquareMetre,
    modulus: Pascal,
    fast_modulus: Pascal,
    strength: Pascal,
}

fn core_state(construction: &Construction, setting: &Setting, draw: &Draw) -> CoreState {
    let core = &construction.core;
    let m = core.material;
    let gauge = draw.general(Which::CoreGauge, &constant::CORE_GAUGE);
    let d = Metre::new(core.diameter.get() * gauge);
    let density = KilogramPerCubicMetre::new(draw.core(m, Which::Density));
    let (mass_per_length, area, filament) = match core.build {
        Build::Solid | Build::Twisted { .. } => (mass::solid(density, d), mass::circle(d), d),
        Build::Strand { layout, lay } => {
            let poisson = Ratio::new(draw.core(m, Which::Poisson));
            (
                mass::strand(density, d, layout, lay),
                strand::area(d, layout, lay, poisson),
                Metre::new(d.get() / layout.diameter_in_wires()),
            )
        }
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
        tabled * strength::music_wire(filament).get()
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
        diameter: d,
        filament,
        mass: KilogramPerMetre::new(mass_per_length.get() * water),
        area,
        modulus: Pascal::new(draw.core(m, Which::Modulus) * twist_modulus * warmth),
        fast_modulus: Pascal::new(draw.core(m, Which::FastModulus) * twist_modulus * warmth),
        strength: Pascal::new(strength),
    }
}

/// Between the stiffness of free filaments, a central one and a high one, by [`constant::BONDING`].
fn by_bonding(free: f64, central: f64, high: f64, draw: &Draw) -> f64 {
    let t = draw.general(Which::Bonding, &constant::BONDING);
    if t < 0.0 { central + t * (central - free) } else { central + t * (high - central) }
}

/// Bending stiffness of the core alone.
fn core_bending(construction: &Construction, core: &CoreState, fast: Pascal, draw: &Draw) -> f64 {
    let d = core.diameter;
    let poisson = Ratio::new(draw.core(construction.core.material, Which::Poisson));
    let free_of = |count: f64, angle: Degree| {
        stiffness::bending_free(fast, Ratio::new(count), core.filament, angle, poisson).get()
    };
    let bonded = stiffness::bending_bonded(fast, core.area, d).get();
    match construction.core.build {
        Build::Solid | Build::Twisted { .. } => bonded,
        Build::Strand { layout, lay } => {
            let free = free_of(f64::from(layout.wires().0), lay);
            let bonded = stiffness::strand_bending_bonded(fast, core.area, d, layout).get();
            by_bonding(free, (free * bonded).sqrt(), bonded, draw)
        }
        Build::Multifilament { fill, twist, .. } => {
            let ratio = d.get() / core.filament.get();
            // Wound guitar basses on such cores were measured at up to twice the bonded core.
            by_bonding(free_of(fill.get() * ratio * ratio, twist), bonded / 2.0, 2.0 * bonded, draw)
        }
    }
}

/// Torsional stiffness of the core alone: full where it is one piece, else between free and bonded.
fn core_torsion(construction: &Construction, core: &CoreState, draw: &Draw) -> f64 {
    let shear = Pascal::new(draw.core(construction.core.material, Which::Shear));
    let solid = torsion::solid(shear, core.diameter);
    match construction.core.build {
        Build::Solid | Build::Twisted { .. } => solid,
        Build::Strand { layout, .. } => {
            let free = shear.get() * strand::free_torsion(layout, core.diameter);
            by_bonding(free, (free * solid).sqrt(), solid, draw)
        }
        Build::Multifilament { fill, .. } => {
            let ratio = core.filament.get() / core.diameter.get();
            let free = solid * fill.get() * ratio * ratio;
            by_bonding(free, fill.get() * solid / 2.0, solid, draw)
        }
    }
}

/// What the windings are together, in one draw.
struct WindingState {
    outer: Metre,
    mass: f64,
    /// Bending stiffness they would have as solid tubes.
    tube: f64,
    /// Torsional stiffness they would have as solid tubes.
    torsion: f64,
    /// Polar inertia a length.
    inertia: f64,
}

fn winding_state(construction: &Construction, core: &CoreState, draw: &Draw) -> WindingState {
    let mut all =
        WindingState { outer: core.diameter, mass: 0.0, tube: 0.0, torsion: 0.0, inertia: 0.0 };
    let gauge = draw.general(Which::WindingGauge, &constant::WINDING_GAUGE);
    for winding in construction.windings() {
        let density = KilogramPerCubicMetre::new(draw.metal(winding.metal, Which::Density));
        let modulus =
            Pascal::new(draw.metal(winding.metal, Which::Modulus) / (1.0 + winding.gap.get()));
        // Shear is 3/8 of pull in a metal of Poisson's ratio 1/3.
        let shear = Pascal::new(modulus.get() * 0.375);
        let thickness = Metre::new(winding.thickness.get() * gauge);
        let mean = mass::mean_diameter(winding, thickness, all.outer);
        let own = mass::winding(winding, density, thickness, all.outer).get();
        all.mass += own;
        all.tube += partials::tube_stiffness(modulus, mean, thickness).get();
        all.torsion += torsion::tube(shear, mean, thickness);
        all.inertia += own * mean.get() * mean.get() / 4.0;
        all.outer =
            Metre::new(all.outer.get() + 2.0 * thickness.get() * (1.0 - winding.bedding.get()));
    }
    all
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
    (stiffness::axial(core.modulus, core.area), core.mass)
}

/// A string at its pitch, in one draw: what most properties are made of.
struct AtPitch {
    core: CoreState,
    windings: WindingState,
    length: Metre,
    whole: Metre,
    unstretched: KilogramPerMetre,
    mass: KilogramPerMetre,
    axial: Newton,
    tension: Newton,
    stretch: Ratio,
    stress: Pascal,
    fast: Pascal,
    bending: NewtonSquareMetre,
    inharmonicity: Ratio,
    /// Σ EI η: bending stiffness times loss factor, core and windings.
    lossy: NewtonSquareMetre,
    impedance: KilogramPerSecond,
    resistance: KilogramPerSecond,
}

fn at_pitch(construction: &Construction, setting: &Setting, draw: &Draw) -> AtPitch {
    let m = construction.core.material;
    let core = core_state(construction, setting, draw);
    let windings = winding_state(construction, &core, draw);
    let l = setting.sounding_length.get();
    let doubt = setting.sounding_length_doubt.get();
    let doubtful =
        constant::Constant { value: l, low: l - doubt, high: l + doubt, ..constant::BONDING };
    let length = Metre::new(draw.general(Which::SoundingLength, &doubtful));
    let unstretched = KilogramPerMetre::new(core.mass.get() + windings.mass);
    let axial = stiffness::axial(core.modulus, core.area);
    let tension = tension::at_pitch(unstretched, axial, length, setting.pitch);
    let stretch = tension::stretch(tension, axial);
    let mass = mass::stretched(unstretched, stretch);
    let stress = tension::stress(tension, core.area);
    let slope_stress = stress.get().clamp(FAST_SLOPE_STRESS.0, FAST_SLOPE_STRESS.1);
    let fast = Pascal::new(core.fast_modulus.get() + m.fast_slope * slope_stress);
    let bare = core_bending(construction, &core, fast, draw);
    let stiffening = if construction.is_wound() {
        1.0 + draw.general(Which::WindingStiffening, &constant::WINDING_STIFFENING)
    } else {
        1.0
    };
    let bending = NewtonSquareMetre::new(bare * stiffening);
    let lossy = bare * draw.core(m, Which::Loss)
        + windings.tube * draw.general(Which::WindingLoss, &constant::WINDING_LOSS);
    let resistance = setting.bridge_resistance.get()
        * draw.general(Which::BridgeResistance, &constant::BRIDGE_RESISTANCE);
    AtPitch {
        whole: Metre::new(length.get() + setting.afterlength.get() + setting.nut_to_peg.get()),
        impedance: tension::impedance(tension, mass),
        inharmonicity: partials::inharmonicity(bending, tension, length),
        lossy: NewtonSquareMetre::new(lossy),
        resistance: KilogramPerSecond::new(resistance),
        core,
        windings,
        length,
        unstretched,
        mass,
        axial,
        tension,
        stretch,
        stress,
        fast,
        bending,
    }
}

/// Losses of one partial, by cause.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Partial {
    /// Which, from 1.
    pub n: u32,
    /// Its frequency when plucked.
    pub frequency: Hertz,
    /// How far it lies above n times the first.
    pub sharpness: Cent,
    /// Loss to the air.
    pub air: Ratio,
    /// Loss of the string in its pull.
    pub string: Ratio,
    /// Loss in bending, core and windings.
    pub bending: Ratio,
    /// Loss to the instrument.
    pub bridge: Ratio,
    /// Loss on ends that do not give.
    pub on_rigid_ends: Ratio,
    /// Seconds in which it falls by 60 dB on the instrument.
    pub ring: f64,
}

fn partial(s: &AtPitch, setting: &Setting, draw: &Draw, n: u32) -> Partial {
    let times = f64::from(n)
        * ((1.0 + s.inharmonicity.get() * f64::from(n) * f64::from(n))
            / (1.0 + s.inharmonicity.get()))
        .sqrt();
    let frequency = Hertz::new(setting.pitch.get() * times);
    let air_density =
        KilogramPerCubicMetre::new(draw.general(Which::AirDensity, &constant::AIR_DENSITY));
    let air = damping::air(
        air_density,
        draw.general(Which::AirViscosity, &constant::AIR_VISCOSITY),
        s.mass,
        s.windings.outer,
        frequency,
    );
    let string = Ratio::new(draw.general(Which::StringLoss, &constant::STRING_LOSS));
    let bending = damping::bending(s.lossy, s.tension, s.length, n);
    let bridge = damping::bridge(s.impedance, s.resistance, n);
    let on_rigid_ends = damping::of_string(air, string, bending, s.inharmonicity, n);
    let whole = Ratio::new(on_rigid_ends.get() + bridge.get());
    Partial {
        n,
        frequency,
        sharpness: partials::sharpness_of_partial(s.inharmonicity, n),
        air,
        string,
        bending,
        bridge,
        on_rigid_ends,
        ring: damping::ring(frequency, whole),
    }
}

/// The first partials of a string, all constants central.
#[must_use]
pub fn partials(construction: &Construction, setting: &Setting, count: u32) -> Vec<Partial> {
    let s = at_pitch(construction, setting, &Draw::CENTRAL);
    (1..=count).map(|n| partial(&s, setting, &Draw::CENTRAL, n)).collect()
}

/// Every property of a string in a setting, in one draw.
#[must_use]
pub fn values(construction: &Construction, setting: &Setting, draw: &Draw) -> Values {
    let s = at_pitch(construction, setting, draw);
    let mut out = Values([0.0; COUNT]);
    put_pull(&mut out, construction, setting, draw, &s);
    put_sound(&mut out, construction, setting, draw, &s);
    put_time(&mut out, construction, setting, draw, &s);
    out
}

impl Values {
    fn put(&mut self, property: Property, value: f64) {
        self.0[property as usize] = value;
    }
}

/// Mass, tension, strength, gauge: what holds the string.
fn put_pull(
    out: &mut Values,
    construction: &Construction,
    setting: &Setting,
    draw: &Draw,
    s: &AtPitch,
) {
    let poisson = Ratio::new(draw.core(construction.core.material, Which::Poisson));
    let breaking_force = Newton::new(s.core.strength.get() * s.core.area.get());
    let share = strength::share(s.stress, s.core.strength);
    let amplitude = Ratio::new(constant::AMPLITUDE);
    let endurance = Ratio::new(draw.general(Which::Endurance, &constant::ENDURANCE));
    let pull = tuning::pull(s.axial, s.tension, s.whole);
    out.put(Property::MassUnstretched, s.unstretched.get());
    out.put(Property::MassAtPitch, s.mass.get());
    out.put(Property::Tension, s.tension.get());
    out.put(Property::CoreStress, s.stress.get());
    out.put(Property::BreakingShare, share.get());
    out.put(
        Property::BreakingPitch,
        strength::breaking_pitch(breaking_force, s.unstretched, s.length).get(),
    );
    out.put(Property::Stretch, s.stretch.get());
    out.put(Property::Pull, pull.get());
    out.put(Property::Peg, tuning::peg(pull, setting.peg_diameter, setting.gear_ratio).get());
    out.put(Property::Feel, tension::lateral_stiffness(s.tension, s.length).get());
    out.put(Property::AxialStiffness, s.axial.get());
    out.put(Property::OuterDiameter, s.windings.outer.get());
    let at_pitch =
        stiffness::diameter_at_pitch(s.windings.outer, s.core.diameter, s.stretch, poisson);
    out.put(Property::OuterDiameterAtPitch, at_pitch.get());
    out.put(Property::WindingShare, s.windings.mass / s.unstretched.get());
    out.put(Property::Downforce, load::downforce(s.tension, setting.angle_over_bridge).get());
    out.put(
        Property::Stopping,
        stopping::at_the_octave(s.axial, s.tension, setting.string_height, s.length, s.whole).get(),
    );
    out.put(Property::Glide, stopping::glide(s.axial, s.tension, amplitude).get());
    out.put(
        Property::OverTheNut,
        strength::over_the_nut(
            s.core.modulus,
            s.core.filament,
            setting.nut_radius,
            s.core.strength,
        )
        .get(),
    );
    let swing = strength::swing_stress(s.fast, s.core.filament, amplitude, s.tension, s.bending);
    let fatigue = strength::fatigue(share, swing, s.core.strength, endurance);
    out.put(Property::Fatigue, fatigue.get());
}

/// Stiffness, loss, bow, torsion: what it sounds and answers like.
fn put_sound(
    out: &mut Values,
    construction: &Construction,
    setting: &Setting,
    draw: &Draw,
    s: &AtPitch,
) {
    let limit = Ratio::new(draw.general(Which::BrillianceLoss, &constant::BRILLIANCE_LOSS));
    let (rest, slide) = constant::FRICTION;
    let (beta, speed) = (constant::BOWING_PLACE, constant::BOW_SPEED);
    let sounding = bowing::sounding_mass(s.mass, s.length);
    out.put(Property::Impedance, s.impedance.get());
    out.put(Property::BendingStiffness, s.bending.get());
    out.put(Property::Inharmonicity, s.inharmonicity.get());
    out.put(
        Property::Brilliance,
        partials::brilliance(s.lossy, s.tension, s.length, setting.pitch, limit).get(),
    );
    out.put(Property::Attack, bowing::attack(sounding, beta, rest, slide));
    out.put(Property::GentlestAttack, bowing::gentlest_attack(sounding, beta, rest, slide));
    let greatest = bowing::greatest_force(s.impedance, speed, beta, rest, slide);
    let least = bowing::least_force(s.impedance, s.resistance, speed, beta, rest, slide);
    let coefficient = draw.general(Which::LeastForce, &constant::LEAST_FORCE);
    let peak = setting.peak_resistance.get()
        * draw.general(Which::BridgeResistance, &constant::BRIDGE_RESISTANCE);
    out.put(Property::GreatestForce, greatest.get());
    out.put(Property::LeastForce, least.get());
    out.put(
        Property::LeastForceMeasured,
        bowing::least_force_as_measured(coefficient, s.impedance, beta).get(),
    );
    out.put(Property::BowWindow, bowing::window(greatest, least));
    out.put(Property::Wolf, bowing::wolf(s.impedance, KilogramPerSecond::new(peak), beta).get());
    let first = partial(s, setting, draw, 1);
    out.put(Property::Loss, first.on_rigid_ends.get());
    out.put(Property::Ring, first.ring);
    let windings =
        s.windings.torsion * draw.general(Which::WindingTorsion, &constant::WINDING_TORSION);
    let twist = core_torsion(construction, &s.core, draw) + windings;
    let d = s.core.diameter.get();
    let inertia = s.core.mass.get() * d * d / 8.0 + s.windings.inertia;
    let torsional = torsion::speed(twist, inertia);
    let impedance = torsion::impedance(twist, inertia, Metre::new(s.windings.outer.get() / 2.0));
    out.put(Property::TorsionSpeed, torsional);
    out.put(Property::TorsionRatio, torsional / (2.0 * s.length.get() * setting.pitch.get()));
    out.put(Property::TorsionImpedance, impedance.get() / s.impedance.get());
}

/// Settling and drift: what time and the room do to it.
fn put_time(
    out: &mut Values,
    construction: &Construction,
    setting: &Setting,
    draw: &Draw,
    s: &AtPitch,
) {
    let m = construction.core.material;
    let loss = settling::loss_per_decade(Ratio::new(draw.core(m, Which::Creep)));
    let seated = Day::new(draw.general(Which::Seating, seating(construction)));
    let once = match construction.core.build {
        Build::Strand { .. } => draw.general(Which::Constructional, &constant::CONSTRUCTIONAL),
        Build::Solid | Build::Multifilament { .. } | Build::Twisted { .. } => 0.0,
    };
    let warmth = climate::from_temperature(
        s.axial,
        s.tension,
        draw.core(m, Which::Expansion),
        draw.general(Which::BodyExpansion, &constant::BODY_EXPANSION),
        draw.core(m, Which::Softening),
        setting.temperature_swing,
    );
    let point = Ratio::new(draw.core(m, Which::Water));
    let water = |h: Ratio| {
        if m.class == Class::Gut {
            climate::collagen_water(h)
        } else {
            climate::polymer_water(point, h)
        }
    };
    let by_mass = climate::from_water(water, setting.humidity, setting.humidity_swing).get();
    let moisture = by_mass * draw.core(m, Which::Moisture);
    let swing = setting.humidity_swing.get();
    let movement = draw.general(Which::BodyMovement, &constant::BODY_MOVEMENT) * swing
        / constant::BODY_MOVEMENT_SWING;
    let body = climate::from_body(s.axial, s.tension, Ratio::new(movement)).get();
    let ratchet = if m.class == Class::Gut {
        draw.general(Which::Ratchet, &constant::RATCHET) * swing / constant::RATCHET_SWING
    } else {
        0.0
    };
    let seats = draw.general(Which::SeatDrift, &constant::SEAT_DRIFT);
    out.put(Property::LossPerDecade, loss.get());
    out.put(Property::SettlingDays, settling::days(loss, Cent::new(SETTLED_WITHIN), seated).get());
    out.put(
        Property::Constructional,
        settling::constructional(s.axial, s.tension, Ratio::new(once)).get(),
    );
    out.put(Property::DriftTemperature, warmth.get());
    out.put(Property::DriftMoisture, moisture);
    out.put(Property::DriftBody, body);
    out.put(Property::DriftRatchet, ratchet);
    out.put(Property::DriftSeats, seats);
    out.put(
        Property::DriftTransient,
        by_mass * draw.general(Which::Transient, &constant::TRANSIENT),
    );
    out.put(Property::Drift, warmth.get() + moisture + body + ratchet + seats);
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

/// Every property of a string by sampling: the median, and the middle 90 % of `count` joint draws from `seed`.
///
/// Slower than [`report`] and free of its linearity: the two hold each other in check.
#[must_use]
pub fn sampled(construction: &Construction, setting: &Setting, seed: u64, count: usize) -> Report {
    let count = count.max(20);
    let draws: Vec<Values> = (0..count as u64)
        .map(|i| values(construction, setting, &Draw::sampled(seed.wrapping_add(i))))
        .collect();
    let quantile =
        |sorted: &[f64], share: f64| sorted[((sorted.len() - 1) as f64 * share).round() as usize];
    Report(
        (0..COUNT)
            .map(|i| {
                let mut all: Vec<f64> = draws.iter().map(|v| v.0[i]).collect();
                all.sort_by(f64::total_cmp);
                Estimate {
                    value: quantile(&all, 0.5),
                    low: quantile(&all, 0.05),
                    high: quantile(&all, 0.95),
                }
            })
            .collect(),
    )
}

/// What the doubt about a property comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Doubt {
    /// Whose number: a material's key, or nothing.
    pub owner: draw::Owner,
    /// Which number.
    pub which: Which,
    /// Its share of the variance.
    pub share: f64,
}

/// What the doubt about a property comes from, the largest share first.
#[must_use]
pub fn doubts(construction: &Construction, setting: &Setting, property: Property) -> Vec<Doubt> {
    let mut all: Vec<Doubt> = uncertain(construction)
        .into_iter()
        .map(|(owner, which)| {
            let ends = [-1.0, 1.0].map(|t| {
                values(construction, setting, &Draw::shifted(owner, which, t)).get(property)
            });
            let half = (ends[1] - ends[0]) / 2.0;
            Doubt { owner, which, share: half * half }
        })
        .collect();
    let total: f64 = all.iter().map(|d| d.share).sum();
    if total > 0.0 {
        for doubt in &mut all {
            doubt.share /= total;
        }
    }
    all.retain(|d| d.share > 0.0);
    all.sort_by(|a, b| b.share.total_cmp(&a.share));
    all
}

/// A day after fitting.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Night {
    /// Which, from 1.
    pub day: u32,
    /// Pitch lost in it, retuned the evening before.
    pub lost: Estimate,
    /// Chance that it costs no more than five cents, and that everything has seated.
    pub chance: f64,
}

/// Half the width of a 90 % range in standard deviations of a normal distribution.
pub const DEVIATIONS: f64 = 1.645;

/// Chance that a number of that range lies under `limit`: normal in the logarithm, or straight where the range touches zero.
fn chance_under(estimate: &Estimate, limit: f64) -> f64 {
    let normal = |z: f64| 0.5 * (1.0 + libm::erf(z / core::f64::consts::SQRT_2));
    if estimate.high <= estimate.low {
        return f64::from(u8::from(estimate.value <= limit));
    }
    if estimate.low > 0.0 && limit > 0.0 {
        let deviation = libm::log(estimate.high / estimate.low) / (2.0 * DEVIATIONS);
        normal((libm::log(limit) - libm::log(estimate.value)) / deviation)
    } else {
        normal((limit - estimate.value) * 2.0 * DEVIATIONS / (estimate.high - estimate.low))
    }
}

/// The days after fitting, each with what it costs in pitch: log-time creep, retuned every evening.
#[must_use]
pub fn nights(construction: &Construction, setting: &Setting, days: u32) -> Vec<Night> {
    let loss = report(construction, setting).get(Property::LossPerDecade);
    let seat = seating(construction);
    let seated = Estimate { value: seat.value, low: seat.low, high: seat.high };
    (1..=days)
        .map(|day| {
            let at = Day::new(f64::from(day));
            let lost = |k: f64| settling::lost_in_a_day(Cent::new(k), at).get();
            let lost =
                Estimate { value: lost(loss.value), low: lost(loss.low), high: lost(loss.high) };
            Night {
                day,
                chance: chance_under(&lost, SETTLED_WITHIN) * chance_under(&seated, f64::from(day)),
                lost,
            }
        })
        .collect()
}

/// Where a report stands on ground that was not measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Caveat {
    /// Stress outside the range in which the fast modulus was measured; the modulus is held at its end.
    StressNotMeasured,
    /// Wire thinner or thicker than its strength was tabled for; held at the end.
    WireNotTabled,
    /// The string would be stretched past its strength: it breaks before it comes to pitch.
    Breaks,
}

/// What has to be said of a report besides its ranges.
#[must_use]
pub fn caveats(construction: &Construction, setting: &Setting) -> Vec<Caveat> {
    let s = at_pitch(construction, setting, &Draw::CENTRAL);
    let m = construction.core.material;
    let mut all = Vec::new();
    if m.fast_slope > 0.0 && !(FAST_SLOPE_STRESS.0..=FAST_SLOPE_STRESS.1).contains(&s.stress.get())
    {
        all.push(Caveat::StressNotMeasured);
    }
    if m.class == Class::Steel && !(0.10..=6.5).contains(&s.core.filament.mm()) {
        all.push(Caveat::WireNotTabled);
    }
    if s.stress.get() > s.core.strength.get() {
        all.push(Caveat::Breaks);
    }
    all
}
