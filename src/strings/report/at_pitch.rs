//! A string brought to its pitch, in one draw: what most properties are made of.

use super::over_time::Pull;
use crate::constant;
use crate::constant::{Constant, General, Which};
use crate::construction::{Build, Construction};
use crate::draw::Draw;
use crate::material::{Class, FAST_SLOPE_STRESS};
use crate::physics::{climate, mass, partials, stiffness, strand, strength, tension, torsion};
use crate::quantity::{
    Degree, KilogramPerCubicMetre, KilogramPerMetre, KilogramPerSecond, Metre, Newton,
    NewtonSquareMetre, Pascal, Ratio, SquareMetre,
};
use crate::setting::Setting;

/// What a core is, in one draw.
pub(super) struct CoreState {
    pub(super) diameter: Metre,
    /// Diameter of one wire or filament; of the core where it is one.
    pub(super) filament: Metre,
    pub(super) mass: KilogramPerMetre,
    /// Effective area for pulling, before the twist factor of gut.
    pub(super) area: SquareMetre,
    pub(super) modulus: Pascal,
    pub(super) fast_modulus: Pascal,
    pub(super) strength: Pascal,
}

pub(super) fn core_state(construction: &Construction, setting: &Setting, draw: &Draw) -> CoreState {
    let core = &construction.core;
    let m = core.material;
    let gauge = draw.general(&constant::CORE_GAUGE);
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
    let t = draw.general(&constant::BONDING);
    if t < 0.0 { central + t * (central - free) } else { central + t * (high - central) }
}

/// Bending stiffness of the core alone.
pub(super) fn core_bending(
    construction: &Construction,
    core: &CoreState,
    fast: Pascal,
    draw: &Draw,
) -> f64 {
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
pub(super) fn core_torsion(construction: &Construction, core: &CoreState, draw: &Draw) -> f64 {
    let shear = Pascal::new(draw.core(construction.core.material, Which::Shear));
    let solid = torsion::solid(shear, core.diameter);
    match construction.core.build {
        Build::Solid | Build::Twisted { .. } => solid,
        Build::Strand { layout, .. } => {
            let free = shear.get() * strand::free_torsion(layout, core.diameter);
            // Twist was measured 5.2 to 6.1 times as fast as the string's own waves: nearer to wires that hold together.
            by_bonding(free, libm::cbrt(free * solid * solid), solid, draw)
        }
        Build::Multifilament { fill, .. } => {
            let ratio = core.filament.get() / core.diameter.get();
            let free = solid * fill.get() * ratio * ratio;
            by_bonding(free, fill.get() * solid / 2.0, solid, draw)
        }
    }
}

/// What the windings are together, in one draw.
pub(super) struct WindingState {
    pub(super) outer: Metre,
    pub(super) mass: f64,
    /// Bending stiffness they would have as solid tubes.
    pub(super) tube: f64,
    /// Torsional stiffness they would have as solid tubes.
    pub(super) torsion: f64,
    /// Polar inertia a length.
    pub(super) inertia: f64,
}

pub(super) fn winding_state(
    construction: &Construction,
    core: &CoreState,
    draw: &Draw,
) -> WindingState {
    let mut all =
        WindingState { outer: core.diameter, mass: 0.0, tube: 0.0, torsion: 0.0, inertia: 0.0 };
    let gauge = draw.general(&constant::WINDING_GAUGE);
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

/// A string at its pitch, in one draw: what most properties are made of.
pub(super) struct AtPitch {
    pub(super) core: CoreState,
    pub(super) windings: WindingState,
    pub(super) length: Metre,
    pub(super) whole: Metre,
    pub(super) unstretched: KilogramPerMetre,
    pub(super) mass: KilogramPerMetre,
    pub(super) axial: Newton,
    pub(super) tension: Newton,
    pub(super) stretch: Ratio,
    pub(super) stress: Pascal,
    pub(super) fast: Pascal,
    pub(super) bending: NewtonSquareMetre,
    pub(super) inharmonicity: Ratio,
    /// Σ EI η: bending stiffness times loss factor, core and windings.
    pub(super) lossy: NewtonSquareMetre,
    pub(super) impedance: KilogramPerSecond,
    pub(super) resistance: KilogramPerSecond,
}

impl AtPitch {
    /// What its tension makes of it, as far as time and the room care.
    pub(super) fn pull(&self) -> Pull {
        Pull {
            stiff: self.axial.get() / self.tension.get(),
            breaking_share: self.stress.get() / self.core.strength.get(),
            stress: self.stress.get(),
            core_share: self.core.mass.get() / self.unstretched.get(),
        }
    }
}

pub(super) fn at_pitch(construction: &Construction, setting: &Setting, draw: &Draw) -> AtPitch {
    let m = construction.core.material;
    let core = core_state(construction, setting, draw);
    let windings = winding_state(construction, &core, draw);
    let l = setting.sounding_length.get();
    let doubt = setting.sounding_length_doubt.get();
    let doubtful = General {
        which: Which::SoundingLength,
        constant: Constant { value: l, low: l - doubt, high: l + doubt, ..*constant::BONDING },
    };
    let length = Metre::new(draw.general(&doubtful));
    let unstretched = KilogramPerMetre::new(core.mass.get() + windings.mass);
    let axial = stiffness::axial(core.modulus, core.area);
    let tension = tension::at_pitch(unstretched, axial, length, setting.pitch);
    let stretch = tension::stretch(tension, axial);
    let mass = mass::stretched(unstretched, stretch);
    let stress = tension::stress(tension, core.area);
    // Held at the ends of the measured range; the range of the answer reaches to where it would go unheld.
    let measured = stress.get().clamp(FAST_SLOPE_STRESS.0, FAST_SLOPE_STRESS.1);
    let beyond = draw.general(&constant::BEYOND_MEASURED);
    let slope_stress = measured + beyond * (stress.get() - measured);
    let fast = Pascal::new(core.fast_modulus.get() + m.fast_slope * slope_stress);
    let bare = core_bending(construction, &core, fast, draw);
    let stiffening = if construction.is_wound() {
        1.0 + draw.general(&constant::WINDING_STIFFENING)
    } else {
        1.0
    };
    let bending = NewtonSquareMetre::new(bare * stiffening);
    let lossy =
        bare * draw.core(m, Which::Loss) + windings.tube * draw.general(&constant::WINDING_LOSS);
    let resistance = setting.bridge_resistance.get() * draw.general(&constant::BRIDGE_RESISTANCE);
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
