//! What of a string enters the simulation: its pitch, its impedances, what each partial loses, how stiff it is.

use super::friction::Law;
use crate::construction::Construction;
use crate::draw::Draw;
use crate::quantity::{Hertz, Metre};
use crate::report::{self, Property};
use crate::setting::Setting;

/// Partials above this frequency are not fitted, Hz: little of a bowed string's force lies there, and no bow holds it.
const HIGHEST_PARTIAL: f64 = 12_000.0;
/// Nor are more than this many fitted.
const MOST_PARTIALS: u32 = 160;

/// By the law of temperature, one step of 1/48000 s is parted once more for each so many hertz of pitch, into two to four.
///
/// Halving the step then moves the time to the clean note by under one period in nine starts of ten.
const WARMTH_PITCH: f64 = 50.0;

/// A string at its pitch, as the simulation needs it.
#[derive(Clone, Debug, PartialEq)]
pub struct Sounding {
    /// Fundamental frequency, Hz.
    pub pitch: f64,
    /// Sounding length, m.
    pub length: f64,
    /// Wave impedance, kg/s.
    pub impedance: f64,
    /// Inharmonicity B: partial n stands at n √((1 + B n²)/(1 + B)) times the pitch.
    pub inharmonicity: f64,
    /// Loss factor of partials 1, 2, 3 …, on ends that do not give.
    pub losses: Vec<f64>,
    /// Speed of twist over speed of the wave across the string.
    pub torsion_ratio: f64,
    /// Impedance against twist at the surface, kg/s; infinite for a string that cannot twist.
    pub torsion_impedance: f64,
    /// Q of twist, the same for each partial.
    pub torsion_q: f64,
    /// Share of a wave that the upper end sends back: one at the nut, less under a finger.
    pub end: f64,
}

impl Sounding {
    /// A construction at its pitch, all constants central.
    #[must_use]
    pub fn of(construction: &Construction, setting: &Setting) -> Self {
        let values = report::values(construction, setting, &Draw::CENTRAL);
        let pitch = setting.pitch.get();
        let count = ((HIGHEST_PARTIAL / pitch) as u32).clamp(8, MOST_PARTIALS);
        let losses = report::partials(construction, setting, count)
            .iter()
            .map(|partial| partial.on_rigid_ends.get())
            .collect();
        let impedance = values.get(Property::Impedance);
        Self {
            pitch,
            length: setting.sounding_length.get(),
            impedance,
            inharmonicity: values.get(Property::Inharmonicity),
            losses,
            torsion_ratio: values.get(Property::TorsionRatio),
            torsion_impedance: impedance * values.get(Property::TorsionImpedance),
            torsion_q: values.get(Property::TorsionQ),
            end: 1.0,
        }
    }

    /// The same string stopped by a finger so that it sounds `pitch` hertz: shorter, as tense, and damped by the finger.
    #[must_use]
    pub fn stopped(construction: &Construction, setting: &Setting, pitch: f64) -> Self {
        let open = setting.pitch.get();
        if pitch <= open {
            return Self::of(construction, setting);
        }
        let length = Metre::new(setting.sounding_length.get() * open / pitch);
        let shorter = Setting { sounding_length: length, pitch: Hertz::new(pitch), ..*setting };
        Self { end: crate::constant::FINGER, ..Self::of(construction, &shorter) }
    }

    /// Frequency of partial `n` of the free string, Hz.
    ///
    /// Source: [`crate::source::FLETCHER_1964`].
    #[must_use]
    pub fn partial(&self, n: f64) -> f64 {
        let b = self.inharmonicity;
        self.pitch * n * ((1.0 + b * n * n) / (1.0 + b)).sqrt()
    }

    /// Tension, N: Z₀ c.
    #[must_use]
    pub fn tension(&self) -> f64 {
        self.impedance * 2.0 * self.length * self.pitch
    }

    /// What the string yields to a force at the bow at once, m/s a newton: 1/(2 Z₀) + 1/(2 Zₜ).
    ///
    /// Source: [`crate::source::EUPHONICS`], 9.5.3.
    #[must_use]
    pub fn yields(&self) -> f64 {
        0.5 / self.impedance + 0.5 / self.torsion_impedance
    }

    /// Steps a second at which this string should be stepped, the bow no nearer to the bridge than `beta`.
    ///
    /// The way to the bridge and back is to be three steps; the law of temperature wants two to four times 48 kHz
    /// besides. A multiple of 48 kHz, so that sound can be taken from it without resampling.
    #[must_use]
    pub fn rate(&self, beta: f64, law: Law) -> f64 {
        let period = 48_000.0 / self.pitch;
        let near = 3.0 / (beta * period);
        let warm = match law {
            Law::Hyperbolic => 1.0,
            Law::Thermal => libm::ceil(self.pitch / WARMTH_PITCH).clamp(2.0, 4.0),
        };
        48_000.0 * libm::ceil(near.max(warm)).clamp(1.0, 8.0)
    }
}
