//! A loop over the fast path that the benches time, here so that every place where it is timed runs the same
//! compiled code.

use super::{LeanCore, LeanKind};
use crate::construction::{Build, Form};
use crate::draw::Draw;
use crate::lanes::{Four, LANES};
use crate::material::{self, FAST_SLOPE_STRESS};
use crate::quantity::{Degree, Metre, Ratio};
use crate::setting::Setting;

/// How many strings a [`sweep`] winds.
const SWEPT: u32 = 4096;
/// The thinnest ribbon of a sweep and the step to the next, metres.
const SWEPT_FROM: (f64, f64) = (20e-6, 4e-8);

/// A bundle of polyamide at a place, and density and modulus of the aluminium that goes round it.
fn swept_core(setting: &Setting) -> (LeanCore, (f64, f64)) {
    let build = Build::Multifilament {
        filament: Metre::new(2.5e-5),
        fill: Ratio::new(0.7),
        twist: Degree::new(12.0),
    };
    let kind = LeanKind::new(&material::POLYAMIDE, build, true, setting, &Draw::CENTRAL);
    let metal = &material::METALS[0];
    (kind.at(Metre::new(5e-4)), (metal.density.value, metal.modulus.value))
}

/// Winds one bundle of polyamide with every thickness of aluminium ribbon from 20 µm on, alone or in lanes, and gives
/// the sum of all it computed, and how many strings there were.
#[must_use]
pub fn sweep(setting: &Setting, lanes: bool) -> (f64, u32) {
    let (core, (density, modulus)) = swept_core(setting);
    let thickness = |i: u32| SWEPT_FROM.0 + SWEPT_FROM.1 * f64::from(i);
    let mut sum = 0.0;
    if lanes {
        let bare = core.bare().in_lanes();
        let mut all = Four::splat(0.0);
        for i in (0..SWEPT).step_by(LANES) {
            let thick: [f64; LANES] = core::array::from_fn(|lane| thickness(i + lane as u32));
            let wound = bare.under(Form::Flat, density, modulus, Four::from(thick));
            let s = core.sounding(&wound, true);
            all += s.tension + wound.gauge + s.winding_share + s.brilliance + s.ring;
        }
        sum += all.to_array().iter().sum::<f64>();
    } else {
        for i in 0..SWEPT {
            let wound = core.bare().under(Form::Flat, density, modulus, thickness(i));
            let s = core.sounding(&wound, true);
            sum += s.tension + wound.gauge + s.winding_share + s.brilliance + s.ring;
        }
    }
    (sum, SWEPT)
}

/// What a [`sweep`] computes with, in SI units, for programs in other languages that do the same sums.
#[must_use]
pub fn swept(setting: &Setting) -> Vec<(&'static str, f64)> {
    let (core, (density, modulus)) = swept_core(setting);
    let a = &core.around;
    vec![
        ("strings", f64::from(SWEPT)),
        ("thinnest", SWEPT_FROM.0),
        ("step", SWEPT_FROM.1),
        ("density", density),
        ("modulus", modulus),
        ("length", a.setting.sounding_length.get()),
        ("pitch", a.setting.pitch.get()),
        ("diameter", core.diameter),
        ("mass", core.mass),
        ("axial", core.axial.get()),
        ("area", core.area),
        ("fast_modulus", core.fast_modulus),
        ("fast_slope", core.fast_slope),
        ("slope_from", FAST_SLOPE_STRESS.0),
        ("slope_to", FAST_SLOPE_STRESS.1),
        ("beyond", a.beyond),
        ("bending_of_one", core.bending_of_one),
        ("core_loss", core.loss),
        ("winding_loss", a.winding_loss),
        ("brilliance_loss", a.brilliance_loss),
        ("stiffening", a.stiffening),
        ("air_density", a.air_density),
        ("air_viscosity", a.air_viscosity),
        ("string_loss", a.string_loss),
        ("resistance", a.resistance),
    ]
}
