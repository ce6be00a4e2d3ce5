//! A year in a room: how far a settled string wanders from month to month if nobody tunes it.
//!
//! The year is a plain swing, north of the equator: coldest and driest in January, warmest and dampest in July, as far
//! as the room's own swings reach, a wave of one period about the room's middle. That is a judgement, as the rooms are.
//! Of the parts of drift only those that come back belong to it: warmth, water, the body. What gut loses for good when
//! it gets damper than ever, and what pegs and knots give, is told apart, and the first hours in another room are over.

use core::f64::consts::PI;

use super::Estimate;
use super::at_pitch::at_pitch;
use super::moved::moved;
use super::values::water_of;
use crate::constant::{self, Which};
use crate::construction::Construction;
use crate::physics::climate;
use crate::quantity::{Celsius, Ratio};
use crate::setting::Setting;

/// Months of a year.
pub const MONTHS: usize = 12;

/// A month.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Month {
    /// Which, 1 is January.
    pub number: usize,
    /// Temperature of the room.
    pub temperature: Celsius,
    /// Relative humidity of the room.
    pub humidity: Ratio,
    /// How far the string lies above where it stands in the middle of the swing, cents.
    pub drift: Estimate,
}

/// How far a month lies from the middle of the swing towards its upper end: −1 in January, 1 in July.
fn season(month: usize) -> f64 {
    -libm::cos(2.0 * PI * (month as f64 - 1.0) / MONTHS as f64)
}

/// The months of a year of one string in its room.
#[must_use]
pub fn year(construction: &Construction, setting: &Setting) -> [Month; MONTHS] {
    let m = construction.core.material;
    let rise = |month: usize| setting.temperature_swing / 2.0 * season(month);
    let damper = |month: usize| setting.humidity_swing.get() / 2.0 * season(month);
    // As the reports hold it where water is concerned.
    let humidity = |month: usize| (setting.humidity.get() + damper(month)).clamp(0.05, 0.95);
    let drift = moved(construction, |draw| {
        let s = at_pitch(construction, setting, draw);
        let expansion = draw.core(m, Which::Expansion);
        let softening = draw.core(m, Which::Softening);
        let body = draw.general(&constant::BODY_EXPANSION);
        let moves = draw.general(&constant::BODY_MOVEMENT);
        let left = draw.core(m, Which::Moisture);
        let water = water_of(m, draw);
        core::array::from_fn::<f64, MONTHS, _>(|i| {
            let (rise, damper) = (rise(i + 1), damper(i + 1));
            let warmth =
                climate::by_warmth(s.axial, s.tension, expansion, body, softening, rise).get();
            let then = Ratio::new(humidity(i + 1));
            let moisture = left * climate::by_water(&water, setting.humidity, then).get();
            let movement = Ratio::new(moves * damper / constant::BODY_MOVEMENT_SWING);
            warmth + moisture + climate::from_body(s.axial, s.tension, movement).get()
        })
    });
    core::array::from_fn(|i| Month {
        number: i + 1,
        temperature: Celsius::new(setting.temperature.get() + rise(i + 1)),
        humidity: Ratio::new(humidity(i + 1)),
        drift: drift[i],
    })
}
