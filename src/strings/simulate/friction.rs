//! How does hair hold the string, and let go? Friction that falls with the speed of sliding.
//!
//! Friedlander's construction: what the string would do alone, and how it yields to a force, make a straight line; its
//! meeting with the curve of friction is the force. Where they meet more than once the string keeps to what it did
//! before, sticking or sliding, until that is possible no longer. Source: [`crate::source::MSW_1983`].

/// How bow and string touch, in each of `L` notes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Contact<const L: usize> {
    /// Force of the bow on the string, N.
    pub force: [f64; L],
    /// Speed of the string's surface over that of the bow, m/s: zero while it sticks.
    pub slip: [f64; L],
}

/// By which law the hair holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Law {
    /// Friction that falls with speed: [`Hyperbolic`].
    Hyperbolic,
    /// Rosin that softens as it warms: [`super::Thermal`]. Wants shorter steps: see [`super::Sounding::rate`].
    Thermal,
}

/// A law of friction in `L` notes side by side.
pub trait Friction<const L: usize> {
    /// The force at which string and bow meet in this step.
    ///
    /// `free` is the speed that the surface would have without the bow, less that of the bow, m/s; `yields` what it
    /// gains for a newton, m/s; `press` the force of the bow on the string, N.
    fn meet(&mut self, free: &[f64; L], yields: f64, press: &[f64; L]) -> Contact<L>;
}

/// Friction that falls with speed: μ = μd + (μs − μd) v₀/(v₀ + v).
///
/// Source: the hyperbolic law of [`crate::source::SCHOONDERWALDT_2008`], eqs. 4 and 5.
#[derive(Clone, Debug, PartialEq)]
pub struct Hyperbolic<const L: usize> {
    sliding: f64,
    drop: f64,
    speed: f64,
    sticks: [bool; L],
}

impl<const L: usize> Hyperbolic<L> {
    /// A law of friction in fast sliding, its drop from rest to there, and the speed at which half of that is gone.
    #[must_use]
    pub const fn new(sliding: f64, drop: f64, speed: f64) -> Self {
        Self { sliding, drop, speed, sticks: [true; L] }
    }

    /// The model's rosin, all constants central.
    #[must_use]
    pub const fn rosin() -> Self {
        use crate::constant::{FRICTION_DROP, FRICTION_SPEED, SLIDING_FRICTION};
        Self::new(SLIDING_FRICTION, FRICTION_DROP.value, FRICTION_SPEED)
    }

    /// Coefficient of friction at rest.
    #[must_use]
    pub fn at_rest(&self) -> f64 {
        self.sliding + self.drop
    }
}

impl<const L: usize> Friction<L> for Hyperbolic<L> {
    #[inline(always)]
    fn meet(&mut self, free: &[f64; L], yields: f64, press: &[f64; L]) -> Contact<L> {
        let mut contact = Contact { force: [0.0; L], slip: [0.0; L] };
        let stiff = 1.0 / yields;
        for l in 0..L {
            // Forward or backward is the same but for the sign.
            let m = free[l].abs();
            // What the string would gain for a coefficient of one.
            let gain = yields * press[l];
            let a = m - gain * self.sliding;
            let k = gain * self.drop * self.speed;
            // Sliding at w: (w − a)(w + v₀) + k = 0; of its roots the faster one is stable.
            let sum = a + self.speed;
            let under = sum * sum - 4.0 * k;
            let root = if under > 0.0 { under } else { 0.0 }.sqrt();
            let w = 0.5 * (a - self.speed + root);
            let may_slide = (under >= 0.0) & (w > 0.0);
            let may_stick = m <= gain * (self.sliding + self.drop);
            let sticks = may_stick & (self.sticks[l] | !may_slide);
            self.sticks[l] = sticks;
            let w = if sticks | !may_slide { 0.0 } else { w };
            contact.force[l] = -(m - w) * stiff;
            contact.slip[l] = w;
            if free[l] < 0.0 {
                contact.force[l] = -contact.force[l];
                contact.slip[l] = -w;
            }
        }
        contact
    }
}
