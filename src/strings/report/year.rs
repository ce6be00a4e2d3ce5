//! A year in a room: how far a settled string wanders from month to month if nobody tunes it.
//!
//! The year is a plain swing, north of the equator: coldest and driest in January, warmest and dampest in July, as far
//! as the room's own swings reach, a wave of one period about the room's middle. That is a judgement, as the rooms are.
//! July lies as far above January as the season's drift of the report. What gut loses for good when it gets damper than
//! ever does not come back, and is told apart.

use core::f64::consts::PI;

use super::Estimate;
use super::at_pitch::at_pitch;
use super::moved::moved;
use super::over_time::OverTime;
use crate::construction::Construction;
use crate::quantity::{Celsius, Ratio};
use crate::setting::{Setting, Swing, Untuned};

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
fn towards_summer(month: usize) -> f64 {
    -libm::cos(2.0 * PI * (month as f64 - 1.0) / MONTHS as f64)
}

/// The months of a year of one string in its room.
#[must_use]
pub fn year(construction: &Construction, setting: &Setting) -> [Month; MONTHS] {
    let Swing { temperature, humidity } = setting.swing(Untuned::Season);
    let drift = moved(construction, |draw| {
        let s = at_pitch(construction, setting, draw);
        let (core, wound) = (&construction.core, construction.is_wound());
        let time = OverTime::new(core, (s.core.fast_modulus, s.whole), wound, setting, draw);
        let season = time.drifts(Untuned::Season, s.core.filament).at(&s.pull()).all();
        core::array::from_fn::<f64, MONTHS, _>(|i| season / 2.0 * towards_summer(i + 1))
    });
    core::array::from_fn(|i| {
        let half = towards_summer(i + 1) / 2.0;
        let damper = setting.humidity.get() + humidity.get() * half;
        Month {
            number: i + 1,
            temperature: Celsius::new(setting.temperature.get() + temperature * half),
            humidity: Ratio::new(damper.clamp(0.05, 0.95)),
            drift: drift[i],
        }
    })
}
