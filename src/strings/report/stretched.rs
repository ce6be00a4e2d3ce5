//! A string at its pitch, of which a little more is wound over the nut, or let back: what it does then.

use super::Estimate;
use super::at_pitch::{AtPitch, at_pitch};
use super::moved::moved;
use crate::constant::Which;
use crate::construction::Construction;
use crate::draw::Draw;
use crate::physics::{mass, stiffness, strength, tension, tuning};
use crate::pitch::CENTS_PER_NEPER;
use crate::quantity::{Metre, Ratio};
use crate::setting::Setting;

/// A string that was drawn tighter or let back.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stretched {
    /// The whole length over which it stretches: sounding, behind the bridge, and from nut to peg.
    pub whole: Metre,
    /// How much would have to be let back until it hangs slack, metres.
    pub slack: Estimate,
    /// Its stretch now, zero where it is slack.
    pub stretch: Estimate,
    /// Its tension now, newtons.
    pub tension: Estimate,
    /// How far it lies above its pitch, cents; none where it may be slack.
    pub cents: Option<Estimate>,
    /// Its pitch now by the central numbers, hertz; none where it may be slack.
    pub pitch: Option<f64>,
    /// Diameter of the core now, metres.
    pub core: Estimate,
    /// Outer diameter now, metres.
    pub outer: Estimate,
    /// Share of its breaking strength.
    pub breaking_share: Estimate,
}

/// The least stretch at which a pitch is spoken of: below it any bend of the string counts for more.
const TAUT: f64 = 1e-5;

/// A string after so much of it, as it lies at pitch, was wound over the nut.
///
/// Linear elasticity, no creep, and the string slides freely over nut and bridge: what a peg turned quickly does.
#[must_use]
pub fn stretched(construction: &Construction, setting: &Setting, wound: Metre) -> Stretched {
    let after = |s: &AtPitch| tuning::stretch_after(s.stretch, wound, s.whole).get();
    let found = moved(construction, |draw| {
        let s = at_pitch(construction, setting, draw);
        let taut = after(&s).max(0.0);
        let poisson = Ratio::new(draw.core(construction.core.material, Which::Poisson));
        let now = |outer| {
            stiffness::diameter_at_pitch(outer, s.core.diameter, Ratio::new(taut), poisson).get()
        };
        let pull = tension::pull_of(Ratio::new(taut), s.axial);
        let at = mass::stretched(s.unstretched, Ratio::new(taut));
        let pitch = tension::fundamental(pull, at, s.length).get();
        let ratio = pitch.max(f64::MIN_POSITIVE) / setting.pitch.get();
        [
            s.stretch.get() * s.whole.get(),
            taut,
            pull.get(),
            CENTS_PER_NEPER * libm::log(ratio),
            now(s.core.diameter),
            now(s.windings.outer),
            strength::share(tension::stress(pull, s.core.area), s.core.strength).get(),
            after(&s),
        ]
    });
    let [slack, stretch, pull, cents, core, outer, breaking_share, signed] = found;
    let central = at_pitch(construction, setting, &Draw::CENTRAL);
    let pitch = setting.pitch.get() * libm::exp(cents.value / CENTS_PER_NEPER);
    let taut = signed.low > TAUT;
    Stretched {
        whole: central.whole,
        slack,
        stretch: Estimate { low: stretch.low.max(0.0), ..stretch },
        tension: Estimate { low: pull.low.max(0.0), ..pull },
        cents: taut.then_some(cents),
        pitch: taut.then_some(pitch),
        core,
        outer,
        breaking_share: Estimate { low: breaking_share.low.max(0.0), ..breaking_share },
    }
}
