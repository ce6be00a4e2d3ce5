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

/// The law of temperature in `L` notes.
#[derive(Clone, Debug, PartialEq)]
pub struct Thermal<const L: usize> {
    step: f64,
    warmth: [f64; L],
}

impl<const L: usize> Thermal<L> {
    /// Cold rosin, at `rate` steps a second.
    #[must_use]
    pub const fn new(rate: f64) -> Self {
        Self { step: 1.0 / rate, warmth: [0.0; L] }
    }

    /// Warmth of the rosin above the room, K.
    #[must_use]
    pub const fn warmth(&self) -> [f64; L] {
        self.warmth
    }
}

/// Friction of rosin by its warmth above the room, K.
#[must_use]
#[inline(always)]
pub fn friction(warmth: f64) -> f64 {
    let fall = (constant::ROSIN_COLD - constant::ROSIN_HOT) / constant::ROSIN_SOFT;
    let mu = constant::ROSIN_COLD - fall * warmth;
    if mu > constant::ROSIN_HOT { mu } else { constant::ROSIN_HOT }
}

/// What the contact loses for each kelvin while `slip` runs past under `press`, W/K.
#[must_use]
#[inline(always)]
pub fn cooling(slip: f64, press: f64) -> f64 {
    constant::ROSIN_AT_REST * press
        + constant::ROSIN_IN_MOTION * (2.0 * constant::CONTACT_RADIUS * slip * press).sqrt()
}

impl<const L: usize> Friction<L> for Thermal<L> {
    #[inline(always)]
    fn meet(&mut self, free: &[f64; L], yields: f64, press: &[f64; L]) -> Contact<L> {
        let mut contact = Contact { force: [0.0; L], slip: [0.0; L] };
        let stiff = 1.0 / yields;
        for l in 0..L {
            let m = free[l].abs();
            let most = yields * press[l] * friction(self.warmth[l]);
            let w = if m > most { m - most } else { 0.0 };
            let force = (m - w) * stiff;
            let store = constant::ROSIN_HEAT * press[l];
            // Heat of this step, let go implicitly: steady at any step. The small number is for a bow off the string.
            self.warmth[l] = (store * self.warmth[l] + self.step * force * w)
                / (store + self.step * cooling(w, press[l]) + 1e-30);
            contact.force[l] = if free[l] < 0.0 { force } else { -force };
            contact.slip[l] = if free[l] < 0.0 { -w } else { w };
        }
        contact
    }
}
