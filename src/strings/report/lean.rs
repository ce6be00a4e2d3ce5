//! The few numbers that a search needs, at a fraction of a report's cost.
//!
//! What belongs to the core alone is computed once, with everything that takes a sine or a power; each stack of
//! windings on it then costs a few products and two square roots. All constants are central. The numbers are
//! those of [`super::values`] to the last few bits, which a test holds.

use super::at_pitch::{CoreState, core_bending, core_state, seating};
use crate::constant::{self, SETTLED_WITHIN};
use crate::construction::{Construction, Winding};
use crate::draw::{Draw, Which};
use crate::material::{Class, FAST_SLOPE_STRESS};
use crate::physics::{bowing, climate, mass, partials, settling, tension};
use crate::quantity::{
    Cent, Day, Kilogram, KilogramPerCubicMetre, KilogramPerMetre, Metre, Newton, Pascal, Ratio,
};
use crate::setting::Setting;

/// A core at a place, ready to be wound.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LeanCore {
    setting: Setting,
    diameter: Metre,
    area: f64,
    fast_modulus: f64,
    fast_slope: f64,
    strength: f64,
    loss: f64,
    /// Bending stiffness of the core for a modulus of one.
    bending_of_one: f64,
    /// Axial stiffness.
    pub axial: Newton,
    /// Mass a length, unstretched.
    pub mass: KilogramPerMetre,
    /// Bow acceleration for each newton of force, times the mass of the sounding string.
    attack: f64,
    /// Days to settle, bare and wound.
    settling: (f64, f64),
    /// Rates of drift that belong to the core: warmth by EA/T, warmth alone, and what does not depend on tension.
    drift: (f64, f64, f64),
    /// Body movement.
    movement: f64,
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
    /// Highest clean bow acceleration for each newton, m/s² N.
    pub attack: f64,
    /// Days to settle.
    pub settling: f64,
    /// Drift, cents.
    pub drift: f64,
    /// Where brilliance ends, hertz.
    pub brilliance: f64,
    /// Cents a degree of peg.
    pub peg: f64,
}

impl LeanCore {
    /// The core of a construction, its windings left aside, at a place.
    #[must_use]
    pub fn new(construction: &Construction, setting: &Setting) -> Self {
        let m = construction.core.material;
        let draw = Draw::CENTRAL;
        let core: CoreState = core_state(construction, setting, &draw);
        let axial = crate::physics::stiffness::axial(core.modulus, core.area);
        let slide = constant::SLIDING_FRICTION;
        let rest = slide + constant::FRICTION_DROP.value;
        let loss_per_decade = settling::loss_per_decade(Ratio::new(draw.core(m, Which::Creep)));
        let settled = |wound| {
            settling::days(
                loss_per_decade,
                Cent::new(SETTLED_WITHIN),
                Day::new(seating(&construction.core, wound).value),
            )
            .get()
        };
        let point = Ratio::new(draw.core(m, Which::Water));
        let water = |h: Ratio| {
            if m.class == Class::Gut {
                climate::collagen_water(h)
            } else {
                climate::polymer_water(point, h)
            }
        };
        let moisture = climate::from_water(water, setting.humidity, setting.humidity_swing).get()
            * draw.core(m, Which::Moisture);
        let swing = setting.humidity_swing.get();
        let ratchet = if m.class == Class::Gut {
            constant::RATCHET.value * swing / constant::RATCHET_SWING
        } else {
            0.0
        };
        Self {
            setting: *setting,
            diameter: core.diameter,
            area: core.area.get(),
            fast_modulus: core.fast_modulus.get(),
            fast_slope: m.fast_slope,
            strength: core.strength.get(),
            loss: draw.core(m, Which::Loss),
            bending_of_one: core_bending(construction, &core, Pascal::new(1.0), &draw),
            axial,
            mass: core.mass,
            attack: bowing::attack(Kilogram::new(1.0), constant::BOWING_PLACE, rest, slide),
            settling: (settled(false), settled(true)),
            drift: (
                draw.core(m, Which::Expansion) - constant::BODY_EXPANSION.value,
                draw.core(m, Which::Softening),
                moisture + ratchet + constant::SEAT_DRIFT.value,
            ),
            movement: constant::BODY_MOVEMENT.value * swing / constant::BODY_MOVEMENT_SWING,
        }
    }

    /// Mass of winding, a length, that brings this core to that tension.
    #[must_use]
    pub fn winding_for(&self, wanted: Newton) -> f64 {
        tension::mass_for(wanted, self.axial, self.setting.sounding_length, self.setting.pitch)
            .get()
            - self.mass.get()
    }

    /// The string that this core makes under those windings.
    #[must_use]
    pub fn wound(&self, windings: &[Winding]) -> Lean {
        let s = &self.setting;
        let mut under = self.diameter;
        let (mut winding, mut tube) = (0.0, 0.0);
        for w in windings {
            let density = KilogramPerCubicMetre::new(w.metal.density.value);
            let mean = mass::mean_diameter(w, w.thickness, under);
            winding += mass::winding(w, density, w.thickness, under).get();
            let modulus = Pascal::new(w.metal.modulus.value / (1.0 + w.gap.get()));
            tube += partials::tube_stiffness(modulus, mean, w.thickness).get();
            under = Metre::new(under.get() + 2.0 * w.thickness.get() * (1.0 - w.bedding.get()));
        }
        let whole = self.mass.get() + winding;
        let t =
            tension::at_pitch(KilogramPerMetre::new(whole), self.axial, s.sounding_length, s.pitch)
                .get();
        let (ea, l) = (self.axial.get(), s.sounding_length.get());
        let stretch = t / ea;
        let mu = whole / (1.0 + stretch);
        let stress = t / self.area;
        let fast = self.fast_modulus
            + self.fast_slope * stress.clamp(FAST_SLOPE_STRESS.0, FAST_SLOPE_STRESS.1);
        let lossy = self.bending_of_one * fast * self.loss + tube * constant::WINDING_LOSS.value;
        let stiff = ea / t;
        let half = crate::pitch::CENTS_PER_NEPER / 2.0;
        let warmth = half * (stiff * self.drift.0 + self.drift.1).abs() * s.temperature_swing;
        let body = half * (stiff - 1.0).abs() * self.movement;
        let long = l + s.afterlength.get() + s.nut_to_peg.get();
        let pull = half * (stiff + 1.0) / long;
        let n2 = constant::BRILLIANCE_LOSS.value * t * l * l
            / (core::f64::consts::PI * core::f64::consts::PI * lossy);
        Lean {
            tension: t,
            stretch,
            gauge: under.get(),
            winding_share: winding / whole,
            breaking_share: stress / self.strength,
            impedance: (t * mu).sqrt(),
            attack: self.attack / (mu * l),
            settling: if windings.is_empty() { self.settling.0 } else { self.settling.1 },
            drift: warmth + self.drift.2 + body,
            brilliance: s.pitch.get() * n2.sqrt(),
            peg: pull * core::f64::consts::PI * s.peg_diameter.get() / 360.0 / s.gear_ratio.get(),
        }
    }
}
