//! Friction of rosin that softens as sliding heats it.
//!
//! The contact holds up to μ(τ) times the bow's force, τ the warmth of the rosin above the room: 1.2 when cold,
//! falling straight to 0.35 at 40 K and no further ([`crate::source::WOODHOUSE_2003`]). It is warmed by sliding, and
//! loses warmth to hair and string the faster the more fresh surface runs past ([`crate::source::VAN_WALSTIJN_2026`],
//! Table 1): a F dτ/dt + (b √(ℓ v F) + c F) τ = μ F v. The length ℓ of the contact, without which the printed units do
//! not agree, is twice the contact radius of the first source. In steady sliding the two together give the friction that
//! was measured ([`crate::source::SMITH_WOODHOUSE_2000`]) within a twentieth, which neither was fitted to here.

use super::friction::{Contact, Friction};
use crate::constant;
use crate::lanes::Lanes;

/// The law of temperature.
#[derive(Clone, Debug, PartialEq)]
pub struct Thermal<N> {
    step: f64,
    warmth: N,
}

impl<N: Lanes> Thermal<N> {
    /// Cold rosin, at `rate` steps a second.
    #[must_use]
    pub fn new(rate: f64) -> Self {
        Self { step: 1.0 / rate, warmth: N::all(0.0) }
    }

    /// Warmth of the rosin above the room, K.
    #[must_use]
    pub const fn warmth(&self) -> N {
        self.warmth
    }
}

/// Friction of rosin by its warmth above the room, K.
#[must_use]
#[inline(always)]
pub fn friction<N: Lanes>(warmth: N) -> N {
    let fall = (constant::ROSIN_COLD - constant::ROSIN_HOT) / constant::ROSIN_SOFT;
    let mu = N::all(constant::ROSIN_COLD) - N::all(fall) * warmth;
    let hot = N::all(constant::ROSIN_HOT);
    N::either(mu.above(hot), mu, hot)
}

/// What the contact loses for each kelvin while `slip` runs past under `press`, W/K.
#[must_use]
#[inline(always)]
pub fn cooling<N: Lanes>(slip: N, press: N) -> N {
    N::all(constant::ROSIN_AT_REST) * press
        + N::all(constant::ROSIN_IN_MOTION)
            * (N::all(2.0 * constant::CONTACT_RADIUS) * slip * press).root()
}

impl<N: Lanes> Friction<N> for Thermal<N> {
    #[inline(always)]
    fn meet(&mut self, free: N, yields: f64, press: N) -> Contact<N> {
        let (none, all) = (N::all(0.0), N::all);
        let m = free.size();
        let most = all(yields) * press * friction(self.warmth);
        let w = N::either(m.above(most), m - most, none);
        let force = (m - w) * all(1.0 / yields);
        let store = all(constant::ROSIN_HEAT) * press;
        // Heat of this step, let go implicitly: steady at any step. The small number is for a bow off the string.
        self.warmth = (store * self.warmth + all(self.step) * force * w)
            / (store + all(self.step) * cooling(w, press) + all(1e-30));
        let backward = none.above(free);
        Contact { force: N::either(backward, force, -force), slip: N::either(backward, -w, w) }
    }
}
