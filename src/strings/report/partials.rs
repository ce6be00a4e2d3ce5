//! What each partial loses, and to what.

use super::at_pitch::{AtPitch, at_pitch};
use crate::constant;
use crate::construction::Construction;
use crate::draw::Draw;
use crate::physics::{damping, partials};
use crate::quantity::{Cent, Hertz, KilogramPerCubicMetre, Ratio};
use crate::setting::Setting;

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

pub(super) fn partial(s: &AtPitch, setting: &Setting, draw: &Draw, n: u32) -> Partial {
    let times = f64::from(n)
        * ((1.0 + s.inharmonicity.get() * f64::from(n) * f64::from(n))
            / (1.0 + s.inharmonicity.get()))
        .sqrt();
    let frequency = Hertz::new(setting.pitch.get() * times);
    let air_density = KilogramPerCubicMetre::new(draw.general(&constant::AIR_DENSITY));
    let air = damping::air(
        air_density,
        draw.general(&constant::AIR_VISCOSITY),
        s.mass,
        s.windings.outer,
        frequency,
    );
    let string = Ratio::new(draw.general(&constant::STRING_LOSS));
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
