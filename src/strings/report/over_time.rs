//! What time and the room do to a string's pitch, in one draw: how fast it settles, and how far warmth and damp move it.
//!
//! All of it follows from the core, its setting and four numbers that the tension decides ([`Pull`]). What belongs to the
//! core alone is computed once, for a report and for the search alike.

use super::nights::normal_under;
use crate::constant::{self, SETTLED_WITHIN, Which};
use crate::construction::{Build, Core, Layout};
use crate::draw::Draw;
use crate::material::{Class, CoreMaterial, FAST_SLOPE_STRESS};
use crate::physics::{climate, settling};
use crate::quantity::{Cent, Day, Degree, Metre, Pascal, Ratio, Second};
use crate::setting::{Setting, Swing, Untuned};

/// What tension makes of a string, as far as time and the room care.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pull {
    /// Axial stiffness over tension.
    pub stiff: f64,
    /// Share of its strength at which the core works.
    pub breaking_share: f64,
    /// Stress in the core, Pa.
    pub stress: f64,
    /// The core's share of the mass.
    pub core_share: f64,
}

/// Cents by which a swing of the room moves a string: those of a time that it goes untuned, from the swing's cool and dry
/// end to its warm and damp one.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Moved {
    /// By the warmth of string and body.
    pub warmth: f64,
    /// By the water in the core.
    pub moisture: f64,
    /// By the damp of the body.
    pub body: f64,
}

impl Moved {
    /// By damp: the water in the core, and the body.
    #[must_use]
    pub const fn damp(&self) -> f64 {
        self.moisture + self.body
    }

    /// By all of it.
    #[must_use]
    pub const fn all(&self) -> f64 {
        self.warmth + self.moisture + self.body
    }
}

/// How far a swing moves a string, as sums over EA/T, the core's share of the mass, and one. All in cents.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drifts {
    /// By warmth: for each unit of EA/T, and whatever it is.
    pub warmth: (f64, f64),
    /// By the water in the core: for each unit of EA/T, for each of the core's share of the mass, and whatever they are.
    pub moisture: (f64, f64, f64),
    /// By the damp of the body: for each unit of EA/T, and whatever it is.
    pub body: (f64, f64),
}

impl Drifts {
    /// How far it moves a string that is pulled so.
    #[must_use]
    pub fn at(&self, pull: &Pull) -> Moved {
        let linear = |(slope, constant): (f64, f64)| slope * pull.stiff + constant;
        let (by_stiffness, by_share, constant) = self.moisture;
        Moved {
            warmth: linear(self.warmth),
            moisture: by_stiffness * pull.stiff + by_share * pull.core_share + constant,
            body: linear(self.body),
        }
    }

    /// By damp, water and body together: for each unit of EA/T, for each of the core's share of the mass, and whatever
    /// they are.
    #[must_use]
    pub fn damp(&self) -> (f64, f64, f64) {
        let (by_stiffness, by_share, constant) = self.moisture;
        (by_stiffness + self.body.0, by_share, constant + self.body.1)
    }

    /// The same where the core has taken up only this share of the water.
    fn soaked(self, share: f64) -> Self {
        let (by_stiffness, by_share, constant) = self.moisture;
        Self { moisture: (share * by_stiffness, share * by_share, share * constant), ..self }
    }
}

/// What a decade of time costs a core, up to what its tension decides.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Settling {
    /// Relaxation of a decade at [`constant::CREEP_SHARE`] of the strength; for steel the factor on its law.
    creep: f64,
    /// By how much creep rises with the share of strength; none for steel, whose law has it.
    rise: Option<f64>,
    /// Modulus of sounding, and how far it rises with stress.
    modulus: (f64, f64),
    /// Cents that the ends and a strand's wires give: whatever EA/T is, and for each unit of it.
    gives: (f64, f64),
    /// Standard deviations of what creep takes and of what the rest gives, as shares of them.
    doubts: (f64, f64),
}

impl Settling {
    /// Cents that a decade of time costs: what creep takes, which rises with tension, and what the ends and a strand's
    /// wires give, which falls with it.
    #[must_use]
    pub fn a_decade(&self, pull: &Pull) -> (f64, f64) {
        let relaxation = match self.rise {
            None => {
                let share = Ratio::new(pull.breaking_share.min(MOST_SHARE));
                self.creep * settling::steel_relaxation(share).get()
            }
            Some(rise) => {
                let over = pull.breaking_share - constant::CREEP_SHARE;
                self.creep * (1.0 + rise * over).max(LEAST_RISE) * self.tangent(pull.stress)
            }
        };
        let creep = settling::loss_per_decade(Ratio::new(relaxation)).get();
        (creep, self.gives.0 + self.gives.1 * pull.stiff)
    }

    /// Chance that a day costs no more than five cents from `day` on, by the ranges of creep and of friction alone: what a
    /// search can afford of [`super::chance_settled`].
    #[must_use]
    pub fn chance(&self, pull: &Pull, day: Day) -> f64 {
        let most = settling::decade_of(day, Cent::new(SETTLED_WITHIN)).get();
        let (creep, gives) = self.a_decade(pull);
        let decade = creep + gives;
        let deviation = libm::hypot(creep * self.doubts.0, gives * self.doubts.1) / decade;
        normal_under(libm::log(most / decade) / deviation)
    }

    /// Tangent over secant modulus under that stress, held where it was measured.
    fn tangent(&self, stress: f64) -> f64 {
        let (modulus, slope) = self.modulus;
        if slope == 0.0 {
            return 1.0;
        }
        let held = stress.clamp(FAST_SLOPE_STRESS.0, FAST_SLOPE_STRESS.1);
        settling::tangent_over_secant(Pascal::new(modulus), slope, Pascal::new(held)).get()
    }
}

/// What time and the room do to a core in one setting, in one draw.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct OverTime {
    /// How far each time that it goes untuned moves it, its core soaked through.
    drifts: [Drifts; Untuned::COUNT],
    /// How fast water gets in, m²/s.
    diffusivity: f64,
    pub(super) settling: Settling,
    /// Stretch that a strand gives once.
    pub(super) constructional: f64,
}

impl OverTime {
    /// What belongs to a core at a position, bare or under windings; `fast_modulus` and the `whole` length from peg to
    /// tailpiece are those of this draw.
    pub(super) fn new(
        core: &Core,
        (fast_modulus, whole): (Pascal, Metre),
        is_wound: bool,
        setting: &Setting,
        draw: &Draw,
    ) -> Self {
        let m = core.material;
        let general = |constant| draw.general(constant);
        let is_bundle = matches!(core.build, Build::Multifilament { .. });
        let of_bundle = |of: f64, otherwise| if is_bundle { of } else { otherwise };
        let bundle = of_bundle(general(&constant::BUNDLE_CREEP), 1.0);
        let bundle_deviation = of_bundle(constant::BUNDLE_CREEP.deviation(), 0.0);
        let constructional = match core.build {
            Build::Strand { layout: Layout::SevenBySeven, .. } => {
                general(&constant::CONSTRUCTIONAL_ROPE)
            }
            Build::Strand { .. } => general(&constant::CONSTRUCTIONAL_SPIRAL),
            _ => 0.0,
        };
        let knot = Metre::new(if m.class == Class::Gut { general(&constant::KNOT) } else { 0.0 });
        let gives = |stiff: f64| {
            let knot = settling::given(Ratio::new(stiff), knot, whole).get();
            let beds = general(&constant::BEDDING) * constructional * stiff;
            let seats = general(&constant::SEATING) * locked(is_wound, setting, whole, draw);
            let all = Ratio::new((knot + beds + seats) / constant::SEATING_DECADES);
            settling::loss_per_decade(all).get()
        };
        let delay = if is_wound { general(&constant::WINDING_DELAY) } else { 1.0 };
        Self {
            drifts: Untuned::ALL.map(|untuned| drifts(core, setting, draw, untuned)),
            diffusivity: draw.core(m, Which::Diffusivity) / delay,
            settling: Settling {
                creep: draw.core(m, Which::Creep) * in_damp(m, setting, draw) * bundle,
                rise: (m.class != Class::Steel).then(|| general(&constant::STRESS_CREEP)),
                modulus: (fast_modulus.get(), m.fast_slope),
                gives: (gives(0.0), gives(1.0) - gives(0.0)),
                doubts: (
                    libm::hypot(m.creep.deviation(), bundle_deviation),
                    libm::hypot(
                        constant::SEATING.deviation(),
                        constant::FRICTION_PLAIN.deviation(),
                    ),
                ),
            },
            constructional,
        }
    }

    /// How far it moves while it goes untuned so long, its pieces of that diameter.
    pub(super) fn drifts(&self, untuned: Untuned, filament: Metre) -> Drifts {
        let drifts = self.drifts[untuned as usize];
        if drifts.moisture == (0.0, 0.0, 0.0) {
            return drifts;
        }
        let radius = Metre::new(filament.get() / 2.0);
        drifts.soaked(climate::soaked(self.diffusivity, radius, untuned.time()).get())
    }
}

/// Share of strength up to which the law of steel's relaxation is used: beyond it the wire has all but broken.
const MOST_SHARE: f64 = 0.85;

/// What is left of creep at the least stress.
const LEAST_RISE: f64 = 0.1;

/// Factor on creep in the room's humidity, 1 at 50 %.
fn in_damp(m: &CoreMaterial, setting: &Setting, draw: &Draw) -> f64 {
    let rise = draw.core(m, Which::DampCreep);
    if rise == 0.0 { 1.0 } else { libm::pow(1.0 + rise, (setting.humidity.get() - 0.5) / 0.1) }
}

/// Share of its tension that friction holds at nut, bridge and peg.
fn locked(is_wound: bool, setting: &Setting, whole: Metre, draw: &Draw) -> f64 {
    let constant = if is_wound { &constant::FRICTION_WOUND } else { &constant::FRICTION_PLAIN };
    let friction = Ratio::new(draw.general(constant));
    let over = |angle: f64, length: Metre| {
        let step = settling::locked_over_an_edge(friction, Degree::new(angle)).get();
        step * length.get() / whole.get()
    };
    over(constant::NUT_ANGLE, setting.nut_to_peg)
        + over(180.0 - setting.angle_over_bridge.get(), setting.afterlength)
        + settling::locked_in_the_turns(friction, setting.peg_diameter, whole).get()
}

/// Water in a core's material at a humidity, as a share of its dry mass, in one draw.
pub(super) fn water_of(material: &CoreMaterial, draw: &Draw) -> impl Fn(Ratio) -> Ratio + use<> {
    let gut = material.class == Class::Gut;
    let point = Ratio::new(draw.core(material, Which::Water));
    move |humidity| {
        let held = Ratio::new(humidity.get().clamp(0.05, 0.95));
        if gut { climate::collagen_water(held) } else { climate::polymer_water(point, held) }
    }
}

/// How far the room's swing moves a core that has soaked through, while it goes untuned so long.
fn drifts(core: &Core, setting: &Setting, draw: &Draw, untuned: Untuned) -> Drifts {
    let m = core.material;
    let of = |which| draw.core(m, which);
    let general = |constant| draw.general(constant);
    let (time, Swing { temperature, humidity }) = (untuned.time(), setting.swing(untuned));
    let warmed = climate::followed(time, Second::new(general(&constant::BODY_WARMING))).get();
    let soaked = climate::followed(time, Second::new(general(&constant::BODY_SOAKING))).get();
    // A wire follows the air in seconds to minutes: all of its own warmth counts.
    let expansion = of(Which::Expansion) - warmed * general(&constant::BODY_EXPANSION);
    let softening = of(Which::Softening);
    let swings = humidity.get() / constant::BODY_MOVEMENT_SWING;
    let movement = Ratio::new(soaked * general(&constant::BODY_MOVEMENT) * swings);
    let water = water_of(m, draw);
    let end = |side: f64| water(Ratio::new(setting.humidity.get() + side * humidity.get() / 2.0));
    let gain = Ratio::new(end(1.0).get() - end(-1.0).get());
    let by_mass = climate::by_water_mass(Ratio::new(1.0), water(setting.humidity), gain).get();
    let by_pull = linear(|stiff| by_the_pull(core, draw, stiff, gain, by_mass));
    Drifts {
        warmth: linear(|stiff| climate::by_warmth(stiff, expansion, softening, temperature)),
        moisture: (by_pull.0, by_mass, by_pull.1),
        body: linear(|stiff| climate::by_body(stiff, movement)),
    }
}

/// Slope and constant of cents that go straight with EA/T.
fn linear(of: impl Fn(Ratio) -> Cent) -> (f64, f64) {
    let constant = of(Ratio::new(0.0)).get();
    (of(Ratio::new(1.0)).get() - constant, constant)
}

/// Cents by which a gain of water changes a core's pull; `by_mass` are those of a bare core's mass.
fn by_the_pull(core: &Core, draw: &Draw, stiff: Ratio, gain: Ratio, by_mass: f64) -> Cent {
    let m = core.material;
    let left = draw.core(m, Which::Moisture);
    if m.class == Class::Gut {
        return Cent::new(-(1.0 - left) * by_mass);
    }
    let twist = match core.build {
        Build::Multifilament { twist, .. } => twist,
        _ => Degree::new(0.0),
    };
    let of = |which| Ratio::new(draw.core(m, which) * left * gain.get());
    let growth = climate::helix_growth(of(Which::SwellingAlong), of(Which::SwellingAcross), twist);
    climate::by_swelling(stiff, growth, of(Which::DampSoftening))
}
