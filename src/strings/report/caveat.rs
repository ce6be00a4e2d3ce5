//! Where a report stands on ground that was not measured.

use super::at_pitch::at_pitch;
use crate::construction::Construction;
use crate::draw::Draw;
use crate::material::{Class, FAST_SLOPE_STRESS};
use crate::setting::Setting;

/// Where a report stands on ground that was not measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Caveat {
    /// Stress outside the range in which the fast modulus was measured; the modulus is held at its end.
    StressNotMeasured,
    /// Wire thinner or thicker than its strength was tabled for; held at the end.
    WireNotTabled,
    /// The string would be stretched past its strength: it breaks before it comes to pitch.
    Breaks,
}

/// What has to be said of a report besides its ranges.
#[must_use]
pub fn caveats(construction: &Construction, setting: &Setting) -> Vec<Caveat> {
    let s = at_pitch(construction, setting, &Draw::CENTRAL);
    let m = construction.core.material;
    let mut all = Vec::new();
    if m.fast_slope > 0.0 && !(FAST_SLOPE_STRESS.0..=FAST_SLOPE_STRESS.1).contains(&s.stress.get())
    {
        all.push(Caveat::StressNotMeasured);
    }
    if m.class == Class::Steel && !(0.10..=6.5).contains(&s.core.filament.mm()) {
        all.push(Caveat::WireNotTabled);
    }
    if s.stress.get() > s.core.strength.get() {
        all.push(Caveat::Breaks);
    }
    all
}
