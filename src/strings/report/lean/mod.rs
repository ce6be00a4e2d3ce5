//! The few numbers that a search needs, at a fraction of a report's cost, for one string or four side by side.
//!
//! What belongs to a core's arrangement alone is computed once in a draw ([`LeanKind`]); a diameter then costs a
//! few products ([`LeanCore`]), and each winding on it a few more and three square roots ([`Wound`]). The formulas
//! from there on are written once for any number of strings side by side ([`Lanes`]): four in vector registers give
//! the bits that one alone gets. The numbers are those of [`super::values`] to the last few bits, which a test holds,
//! for every draw that leaves mass and length as designed.

mod sweep;

use core::f64::consts::PI;

use super::at_pitch::{core_bending, core_state, core_torsion};
use super::over_time::{Drifts, Moved, OverTime, Pull, Settling};
use super::values::ratchet;
use crate::constant::{self, SETTLED_WITHIN, Which};
use crate::construction::{Build, Construction, Core, Form, Winding};
use crate::draw::Draw;
use crate::lanes::{Four, Lanes};
use crate::material::{Class, CoreMaterial, FAST_SLOPE_STRESS};
use crate::physics::{settling, strength, tension};
use crate::pitch::CENTS_PER_NEPER;
use crate::quantity::{Cent, Metre, Newton, Pascal};
use crate::setting::Setting;
pub use sweep::{sweep, swept};

/// What a draw says of all that belongs to no core, at one position.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Around {
    setting: Setting,
    winding_loss: f64,
    stiffening: f64,
    brilliance_loss: f64,
    air_density: f64,
    air_viscosity: f64,
    string_loss: f64,
    resistance: f64,
    winding_torsion: f64,
    /// How much of the fast modulus' slope goes on beyond the measured stress.
    beyond: f64,
}

/// A core's material and arrangement at a place in one draw, its diameter left open.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LeanKind {
    around: Around,
    /// Diameter of a steel wire for a core of diameter one.
    steel_wire: Option<f64>,
    /// Mass and effective area of a core of diameter one.
    mass: f64,
    area: f64,
    modulus: f64,
    fast_modulus: f64,
    fast_slope: f64,
    /// Strength; for steel the factor on that of music wire.
    strength: f64,
    loss: f64,
    /// Bending stiffness for a modulus of one, by the fourth power of the diameter and by the second.
    bending: (f64, f64),
    /// Torsional stiffness, by the fourth power of the diameter and by the second.
    torsion: (f64, f64),
    over_time: OverTime,
    /// How far a swing moves it where its filaments are the same at every diameter.
    drifts: Option<Drifts>,
    /// What gut loses for good by a swing, cents.
    ratchet: f64,
}

/// A core at a position, ready to be wound.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LeanCore {
    around: Around,
    /// Diameter, metres.
    pub diameter: f64,
    area: f64,
    fast_modulus: f64,
    fast_slope: f64,
    strength: f64,
    loss: f64,
    /// Bending stiffness of the core for a modulus of one.
    bending_of_one: f64,
    /// Axial stiffness.
    pub axial: Newton,
    /// Mass a length, unstretched, kg/m.
    pub mass: f64,
    /// Torsional stiffness of the core, N m².
    torsion: f64,
    /// What a decade of time costs.
    pub settling: Settling,
    /// How far a swing moves it in the time that it goes untuned.
    pub drifts: Drifts,
    /// What gut loses for good by a swing, cents.
    pub ratchet: f64,
}

/// What a core has become under its windings so far.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wound<N> {
    /// Outer diameter, metres.
    pub gauge: N,
    /// Mass of the windings, kg/m.
    pub mass: N,
    /// Bending stiffness the windings would have as solid tubes, N m².
    pub tube: N,
    /// Polar inertia of the windings, kg m.
    pub inertia: N,
}

/// What the brilliance of a core rests on: f √(limit T/(lossy E + winding loss W)), E the fast modulus at that tension.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bending {
    /// Bending stiffness for a modulus of one times loss factor.
    pub lossy: f64,
    /// Modulus of sounding at no stress, pascals.
    pub fast_modulus: f64,
    /// By how much it rises for each pascal of stress.
    pub fast_slope: f64,
    /// How much of that goes on beyond the measured stress.
    pub beyond: f64,
    /// Effective area, m².
    pub area: f64,
    /// Loss of windings on their stiffness as tubes.
    pub winding_loss: f64,
    /// Loss at which brilliance ends, times (L/π)².
    pub limit: f64,
}

/// What a core's answer to the bow rests on: how it twists and how stiff it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Twisting {
    /// Torsional stiffness of the core, N m².
    pub stiffness: f64,
    /// Polar inertia of the core, kg m.
    pub inertia: f64,
    /// Torsional stiffness of windings for each unit of their bending stiffness as solid tubes.
    pub of_tube: f64,
    /// Inharmonicity of the bare core for a fast modulus of one and a tension of one.
    pub stiff_of_one: f64,
    /// By what windings multiply that.
    pub stiffening: f64,
}

/// What tension alone decides once the core is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pulled {
    /// Stretch at pitch.
    pub stretch: f64,
    /// Share of breaking strength.
    pub breaking_share: f64,
    /// Wave impedance, kg/s.
    pub impedance: f64,
    /// Cents that a decade of time costs.
    pub decade: f64,
    /// How far a swing moves it in the time that it goes untuned, cents.
    pub moved: Moved,
    /// Cents a degree of peg.
    pub peg: f64,
}

/// What the windings decide too.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sounding<N> {
    /// Tension, newtons.
    pub tension: N,
    /// Share of the mass that is winding.
    pub winding_share: N,
    /// Where brilliance ends, hertz.
    pub brilliance: N,
    /// Seconds in which the first partial falls by 60 dB on the instrument.
    pub ring: N,
}

/// The numbers of one string.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lean {
    /// Tension, newtons.
    pub tension: f64,
    /// Stretch at pitch.
    pub stretch: f64,
    /// Outer gauge, metres.
    pub gauge: f64,
    /// Share of the mass that is winding.
    pub winding_share: f64,
    /// Share of breaking strength.
    pub breaking_share: f64,
    /// Wave impedance, kg/s.
    pub impedance: f64,
    /// Days to settle.
    pub settling: f64,
    /// How far a swing moves it in the time that it goes untuned, cents.
    pub moved: Moved,
    /// What gut loses for good by that swing, cents.
    pub ratchet: f64,
    /// Where brilliance ends, hertz.
    pub brilliance: f64,
    /// Seconds in which the first partial falls by 60 dB on the instrument.
    pub ring: f64,
    /// Cents a degree of peg.
    pub peg: f64,
}

impl Lean {
    /// How far damp moves it, whichever way, with what gut loses for good; cents.
    #[must_use]
    pub fn damp(&self) -> f64 {
        self.moved.damp().abs() + self.ratchet
    }
}

/// Diameter at which an arrangement is met once; mass, area and bending follow from it by powers.
const MET_AT: f64 = 1e-3;

impl LeanKind {
    /// An arrangement of a material at a position, in a draw that leaves mass and length as designed.
    #[must_use]
    pub fn new(
        material: &'static CoreMaterial,
        build: Build,
        is_wound: bool,
        setting: &Setting,
        draw: &Draw,
    ) -> Self {
        let m = material;
        let met = |d: f64| {
            let core = Core { material, build, diameter: Metre::new(d) };
            let bare = Construction::of(core, &[]);
            let state = core_state(&bare, setting, draw);
            let bending = core_bending(&bare, &state, Pascal::new(1.0), draw);
            let torsion = core_torsion(&bare, &state, draw);
            (state, bending, torsion)
        };
        let (core, bent_once, twisted_once) = met(MET_AT);
        let (_, bent_twice, twisted_twice) = met(2.0 * MET_AT);
        let square = MET_AT * MET_AT;
        // Once = a d⁴ + b d², twice = 16 a d⁴ + 4 b d².
        let by_powers = |once: f64, twice: f64| {
            ((twice - 4.0 * once) / 12.0 / (square * square), (16.0 * once - twice) / 12.0 / square)
        };
        let general = |constant| draw.general(constant);
        let of_diameter = Core { material, build, diameter: Metre::new(MET_AT) };
        let over_time = OverTime::new(
            &of_diameter,
            (core.fast_modulus, setting.whole_length()),
            is_wound,
            setting,
            draw,
        );
        let of_filament = matches!(build, Build::Multifilament { .. }) || m.class == Class::Steel;
        let steel = m.class == Class::Steel;
        let wire = core.filament.get() / MET_AT;
        Self {
            around: Around {
                setting: *setting,
                winding_loss: general(&constant::WINDING_LOSS),
                stiffening: 1.0 + general(&constant::WINDING_STIFFENING),
                brilliance_loss: general(&constant::BRILLIANCE_LOSS),
                air_density: general(&constant::AIR_DENSITY),
                air_viscosity: general(&constant::AIR_VISCOSITY),
                string_loss: general(&constant::STRING_LOSS),
                resistance: setting.bridge_resistance.get() * general(&constant::BRIDGE_RESISTANCE),
                winding_torsion: general(&constant::WINDING_TORSION),
                beyond: general(&constant::BEYOND_MEASURED),
            },
            steel_wire: steel.then_some(wire),
            mass: core.mass.get() / square,
            area: core.area.get() / square,
            modulus: core.modulus.get(),
            fast_modulus: core.fast_modulus.get(),
            fast_slope: m.fast_slope,
            strength: if steel { draw.core(m, Which::Strength) } else { core.strength.get() },
            loss: draw.core(m, Which::Loss),
            bending: by_powers(bent_once, bent_twice),
            torsion: by_powers(twisted_once, twisted_twice),
            drifts: of_filament.then(|| over_time.drifts(setting.untuned, core.filament)),
            ratchet: ratchet(m, setting.swing(setting.untuned), draw),
            over_time,
        }
    }

    /// A core of that diameter.
    #[must_use]
    pub fn at(&self, diameter: Metre) -> LeanCore {
        self.drawn_to(diameter, self.wire_strength(diameter))
    }

    /// Strength that wire of a core of that diameter has by its own diameter, in every draw; 1 for what is no wire.
    #[must_use]
    pub fn wire_strength(&self, diameter: Metre) -> f64 {
        let of_wire = |wire: f64| strength::music_wire(Metre::new(diameter.get() * wire)).get();
        self.steel_wire.map_or(1.0, of_wire)
    }

    /// A core of that diameter, whose wire has that strength by its diameter ([`Self::wire_strength`]).
    #[must_use]
    pub fn drawn_to(&self, diameter: Metre, wire_strength: f64) -> LeanCore {
        let d = diameter.get();
        let square = d * d;
        let area = self.area * square;
        let strength = self.strength * wire_strength;
        LeanCore {
            around: self.around,
            diameter: d,
            area,
            fast_modulus: self.fast_modulus,
            fast_slope: self.fast_slope,
            strength,
            loss: self.loss,
            bending_of_one: self.bending.0 * square * square + self.bending.1 * square,
            axial: Newton::new(self.modulus * area),
            mass: self.mass * square,
            torsion: self.torsion.0 * square * square + self.torsion.1 * square,
            settling: self.over_time.settling,
            drifts: self
                .drifts
                .unwrap_or_else(|| self.over_time.drifts(self.around.setting.untuned, diameter)),
            ratchet: self.ratchet,
        }
    }
}

impl Wound<f64> {
    /// The same under every lane.
    #[must_use]
    pub fn in_lanes(self) -> Wound<Four> {
        Wound {
            gauge: Four::splat(self.gauge),
            mass: Four::splat(self.mass),
            tube: Four::splat(self.tube),
            inertia: Four::splat(self.inertia),
        }
    }
}

impl<N: Lanes> Wound<N> {
    /// Under one more layer of ribbon or wire, close, of a metal of that density (kg/m³) and modulus (Pa).
    #[must_use]
    pub fn under(self, form: Form, density: f64, modulus: f64, thickness: N) -> Self {
        self.under_loosely(form, (density, modulus), thickness, 0.0, 0.0)
    }

    fn under_loosely(
        self,
        form: Form,
        (density, modulus): (f64, f64),
        thickness: N,
        bedding: f64,
        gap: f64,
    ) -> Self {
        let t = thickness;
        let mean = self.gauge - N::all(2.0 * bedding) * t + t;
        let volume = match form {
            Form::Flat => N::all(PI) * t * mean / N::all(1.0 + gap),
            Form::Round => {
                let turn = N::all(PI) * mean / (t * N::all(1.0 + gap));
                N::all(PI) * t * t / N::all(4.0) * (turn * turn + N::all(1.0)).root()
            }
        };
        let cube = mean * mean * mean;
        let mass = N::all(density) * volume;
        Self {
            gauge: self.gauge + N::all(2.0 * (1.0 - bedding)) * t,
            mass: self.mass + mass,
            inertia: self.inertia + mass * mean * mean / N::all(4.0),
            tube: self.tube + N::all(modulus / (1.0 + gap) * PI) * cube * t / N::all(8.0),
        }
    }
}

impl LeanCore {
    /// A core at a position, bare or to be wound, all constants central.
    #[must_use]
    pub fn new(core: &Core, is_wound: bool, setting: &Setting) -> Self {
        LeanKind::new(core.material, core.build, is_wound, setting, &Draw::CENTRAL)
            .at(core.diameter)
    }

    /// The core with nothing round it.
    #[must_use]
    pub fn bare(&self) -> Wound<f64> {
        Wound { gauge: self.diameter, mass: 0.0, tube: 0.0, inertia: 0.0 }
    }

    /// Mass of winding, a length, that brings this core to that tension.
    #[must_use]
    pub fn winding_for(&self, wanted: Newton) -> f64 {
        let s = &self.around.setting;
        tension::mass_for(wanted, self.axial, s.sounding_length, s.pitch).get() - self.mass
    }

    /// What its brilliance rests on.
    #[must_use]
    pub fn bending(&self) -> Bending {
        let a = &self.around;
        let l = a.setting.sounding_length.get();
        Bending {
            lossy: self.bending_of_one * self.loss,
            fast_modulus: self.fast_modulus,
            fast_slope: self.fast_slope,
            beyond: a.beyond,
            area: self.area,
            winding_loss: a.winding_loss,
            limit: a.brilliance_loss * l * l / (PI * PI),
        }
    }

    /// What its answer to the bow rests on.
    #[must_use]
    pub fn twisting(&self) -> Twisting {
        let a = &self.around;
        let l = a.setting.sounding_length.get();
        Twisting {
            stiffness: self.torsion,
            inertia: self.mass * self.diameter * self.diameter / 8.0,
            // Torsion of a tube is twice its bending, and shear is 3/8 of pull.
            of_tube: 0.75 * a.winding_torsion,
            stiff_of_one: PI * PI / (l * l) * self.bending_of_one,
            stiffening: a.stiffening,
        }
    }

    /// Force at which it breaks, newtons.
    #[must_use]
    pub fn breaking_force(&self) -> f64 {
        self.strength * self.area
    }

    /// Cents a degree of peg for each unit of EA/T + 1.
    #[must_use]
    pub fn peg_of_stiffness(&self) -> f64 {
        let s = &self.around.setting;
        let long = s.whole_length().get();
        CENTS_PER_NEPER / 2.0 / long * PI * s.peg_diameter.get() / 360.0 / s.gear_ratio.get()
    }

    /// What that tension makes of it, as far as time and the room care.
    #[must_use]
    pub fn pull(&self, t: f64) -> Pull {
        let stress = t / self.area;
        let stiff = self.axial.get() / t;
        let core_share = (self.share_of_tension() / t * stiff / (stiff + 1.0)).min(1.0);
        Pull { stiff, breaking_share: stress / self.strength, stress, core_share }
    }

    /// The core's share of the mass is this over T (1 + T/EA).
    fn share_of_tension(&self) -> f64 {
        let s = &self.around.setting;
        let lf = s.sounding_length.get() * s.pitch.get();
        4.0 * lf * lf * self.mass
    }

    /// What that tension makes of it.
    #[must_use]
    pub fn pulled(&self, t: f64) -> Pulled {
        let s = &self.around.setting;
        let (ea, l) = (self.axial.get(), s.sounding_length.get());
        let lf2 = 2.0 * l * s.pitch.get();
        let stiff = ea / t;
        let pull = self.pull(t);
        let (creep, gives) = self.settling.a_decade(&pull);
        Pulled {
            stretch: t / ea,
            breaking_share: pull.breaking_share,
            impedance: t / lf2,
            decade: creep + gives,
            moved: self.drifts.at(&pull),
            peg: self.peg_of_stiffness() * (stiff + 1.0),
        }
    }

    /// What it sounds like under these windings.
    #[must_use]
    pub fn sounding<N: Lanes>(&self, wound: &Wound<N>, is_wound: bool) -> Sounding<N> {
        let a = &self.around;
        let s = &a.setting;
        let (one, two) = (N::all(1.0), N::all(2.0));
        let (l, f) = (s.sounding_length.get(), s.pitch.get());
        let ea = N::all(self.axial.get());
        let whole = wound.mass + N::all(self.mass);
        // T (1 + T/EA) = 4 L² f² μ₀, written so that a stiff core loses no digits.
        let rigid = N::all(4.0 * (l * f) * (l * f)) * whole;
        let t = two * rigid / (one + (one + N::all(4.0) * rigid / ea).root());
        let mu = whole / (one + t / ea);
        let stress = t / N::all(self.area);
        let held = stress.held(FAST_SLOPE_STRESS.0, FAST_SLOPE_STRESS.1);
        let sloped = held + N::all(a.beyond) * (stress - held);
        let fast = N::all(self.fast_modulus) + N::all(self.fast_slope) * sloped;
        let core = N::all(self.bending_of_one) * fast;
        let lossy = core * N::all(self.loss) + wound.tube * N::all(a.winding_loss);
        let n2 = N::all(a.brilliance_loss * l * l / (PI * PI)) * t / lossy;
        let stiffening = if is_wound { a.stiffening } else { 1.0 };
        let b = N::all(PI * PI / (l * l) * stiffening) * core / t;
        let d = wound.gauge;
        let layer = d * N::all((2.0 * PI * f / a.air_viscosity).sqrt() / 4.0);
        let air = N::all(a.air_density * PI / 4.0) * d * d / mu
            * (N::all(2.0 * core::f64::consts::SQRT_2) * layer + one)
            / (two * layer * layer);
        let bending = N::all(PI * PI / (l * l)) * lossy / t;
        let bridge = N::all(2.0 / (PI * a.resistance)) * (t * mu).root();
        let loss = (air + N::all(a.string_loss) + bending) / (one + b) + bridge;
        Sounding {
            tension: t,
            winding_share: wound.mass / whole,
            brilliance: N::all(f) * n2.root(),
            ring: N::all(LN_1000 / (PI * f)) / loss,
        }
    }

    /// The string that this core makes under those windings, their metals at their central values.
    #[must_use]
    pub fn wound(&self, windings: &[Winding]) -> Lean {
        let mut wound = self.bare();
        for w in windings {
            let metal = (w.metal.density.value, w.metal.modulus.value);
            wound =
                wound.under_loosely(w.form, metal, w.thickness.get(), w.bedding.get(), w.gap.get());
        }
        let is_wound = !windings.is_empty();
        let sound = self.sounding(&wound, is_wound);
        let pulled = self.pulled(sound.tension);
        Lean {
            tension: sound.tension,
            stretch: pulled.stretch,
            gauge: wound.gauge,
            winding_share: sound.winding_share,
            breaking_share: pulled.breaking_share,
            impedance: pulled.impedance,
            settling: settling::days(Cent::new(pulled.decade), Cent::new(SETTLED_WITHIN)).get(),
            moved: pulled.moved,
            ratchet: self.ratchet,
            brilliance: sound.brilliance,
            ring: sound.ring,
            peg: pulled.peg,
        }
    }
}

/// ln 1000, a fall by 60 dB.
const LN_1000: f64 = 6.907_755_278_982_137;
