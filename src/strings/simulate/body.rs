//! The generic body of an instrument, and its resonances as filters.

use core::f64::consts::PI;

use super::section::{Complex, Section};
use crate::body::skeleton;
use crate::instrument::Kind;
use crate::setting::Setting;

pub use crate::body::{Body, Mode};

impl Body {
    /// Middle of the many modes of an instrument's family, Hz: generic.
    #[must_use]
    pub fn between(kind: &Kind) -> f64 {
        skeleton(kind.key).between
    }

    /// The generic body of an instrument's family, scaled to the resistances of the setting.
    ///
    /// Its signature modes are those of one instrument; another has them elsewhere. Nothing here is of the instrument at hand.
    #[must_use]
    pub fn generic(kind: &Kind, setting: &Setting) -> Self {
        Self::of(kind, setting.bridge_resistance.get(), setting.peak_resistance.get())
    }

    /// The same, scaled to a resistance between strong notes and at the strongest, kg/s.
    #[must_use]
    pub fn of(kind: &Kind, resistance: f64, at_strongest: f64) -> Self {
        Self::on(skeleton(kind.key), resistance, at_strongest)
    }

    /// Its resonances as filters at `rate` steps a second, without the conductance.
    pub(super) fn sections(&self, rate: f64) -> Vec<Section> {
        self.modes
            .iter()
            .map(|mode| {
                Section::resonance(libm::tan(PI * mode.frequency.min(0.45 * rate) / rate), mode.q)
            })
            .collect()
    }

    /// Speed of the bridge for a force on it, at `omega` radians a step: real and imaginary part, s/kg.
    #[must_use]
    pub fn admittance(&self, omega: f64, rate: f64) -> (f64, f64) {
        let mut sum: Complex = (0.0, 0.0);
        for (mode, section) in self.modes.iter().zip(self.sections(rate)) {
            let y = section.response(omega);
            sum = (sum.0 + mode.conductance * y.0, sum.1 + mode.conductance * y.1);
        }
        sum
    }
}
