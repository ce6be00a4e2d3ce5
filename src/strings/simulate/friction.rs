//! How does hair hold the string, and let go? Friction that falls with the speed of sliding.
//!
//! Friedlander's construction: what the string would do alone, and how it yields to a force, make a straight line; its
//! meeting with the curve of friction is the force. Where they meet more than once the string keeps to what it did
//! before, sticking or sliding, until that is possible no longer. Source: [`crate::source::MSW_1983`].

use crate::lanes::Lanes;

/// How bow and string touch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Contact<N> {
    /// Force of the bow on the string, N.
    pub force: N,
    /// Speed of the string's surface over that of the bow, m/s: zero while it sticks.
    pub slip: N,
}

/// By which law the hair holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Law {
    /// Friction that falls with speed: [`Hyperbolic`].
    Hyperbolic,
    /// Rosin that softens as it warms: [`super::Thermal`]. Wants shorter steps: see [`super::Sounding::rate`].
    Thermal,
}

/// A law of friction, in one note or several side by side.
pub trait Friction<N: Lanes> {
    /// The force at which string and bow meet in this step.
    ///
    /// `free` is the speed that the surface would have without the bow, less that of the bow, m/s; `yields` what it
    /// gains for a newton, m/s; `press` the force of the bow on the string, N.
    fn meet(&mut self, free: N, yields: f64, press: N) -> Contact<N>;
}

/// Friction that falls with speed: μ = μd + (μs − μd) v₀/(v₀ + v).
///
/// Source: the hyperbolic law of [`crate::source::SCHOONDERWALDT_2008`], eqs. 4 and 5.
#[derive(Clone, Debug, PartialEq)]
pub struct Hyperbolic<N: Lanes> {
    sliding: f64,
    drop: f64,
    speed: f64,
    sticks: N::Truth,
}

impl<N: Lanes> Hyperbolic<N> {
    /// A law of friction in fast sliding, its drop from rest to there, and the speed at which half of that is gone.
    #[must_use]
    pub fn new(sliding: f64, drop: f64, speed: f64) -> Self {
        Self { sliding, drop, speed, sticks: N::all(1.0).above(N::all(0.0)) }
    }

    /// The model's rosin, all constants central.
    #[must_use]
    pub fn rosin() -> Self {
        use crate::constant::{FRICTION_DROP, FRICTION_SPEED, SLIDING_FRICTION};
        Self::new(SLIDING_FRICTION, FRICTION_DROP.value, FRICTION_SPEED)
    }

    /// Coefficient of friction at rest.
    #[must_use]
    pub fn at_rest(&self) -> f64 {
        self.sliding + self.drop
    }
}

impl<N: Lanes> Friction<N> for Hyperbolic<N> {
    #[inline(always)]
    fn meet(&mut self, free: N, yields: f64, press: N) -> Contact<N> {
        let (none, all) = (N::all(0.0), N::all);
        // Forward or backward is the same but for the sign.
        let m = free.size();
        // What the string would gain for a coefficient of one.
        let gain = all(yields) * press;
        let a = m - gain * all(self.sliding);
        let k = gain * all(self.drop) * all(self.speed);
        // Sliding at w: (w − a)(w + v₀) + k = 0; of its roots the faster one is stable.
        let sum = a + all(self.speed);
        let under = sum * sum - all(4.0) * k;
        let root = N::either(under.above(none), under, none).root();
        let w = all(0.5) * (a - all(self.speed) + root);
        let must_stick = none.above(under) | !w.above(none);
        let must_slide = m.above(gain * all(self.sliding + self.drop));
        let sticks = !must_slide & (self.sticks | must_stick);
        self.sticks = sticks;
        let w = N::either(sticks | must_stick, none, w);
        let force = (m - w) * all(1.0 / yields);
        let backward = none.above(free);
        Contact { force: N::either(backward, force, -force), slip: N::either(backward, -w, w) }
    }
}
