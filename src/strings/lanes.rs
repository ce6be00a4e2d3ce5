//! One number, or several side by side that go through the same formula.

use core::ops::{Add, Div, Mul, Sub};

/// How many strings stand side by side.
pub const LANES: usize = 4;

/// Four numbers in vector registers.
pub type Four = wide::f64x4;

/// One number, or several side by side that go through the same formula.
pub trait Lanes:
    Copy + Add<Output = Self> + Sub<Output = Self> + Mul<Output = Self> + Div<Output = Self>
{
    /// The same number in every lane.
    fn all(x: f64) -> Self;
    /// The square root, correctly rounded as the standard wants it.
    #[must_use]
    fn root(self) -> Self;
    /// Held between two ends.
    #[must_use]
    fn held(self, low: f64, high: f64) -> Self;
    /// The smaller of two, lane by lane.
    #[must_use]
    fn least(self, other: Self) -> Self;
    /// The larger of two, lane by lane.
    #[must_use]
    fn most(self, other: Self) -> Self;
}

impl Lanes for f64 {
    fn all(x: f64) -> Self {
        x
    }

    fn root(self) -> Self {
        self.sqrt()
    }

    fn held(self, low: f64, high: f64) -> Self {
        self.clamp(low, high)
    }

    fn least(self, other: Self) -> Self {
        self.min(other)
    }

    fn most(self, other: Self) -> Self {
        self.max(other)
    }
}

impl Lanes for Four {
    fn all(x: f64) -> Self {
        Self::splat(x)
    }

    fn root(self) -> Self {
        self.sqrt()
    }

    fn held(self, low: f64, high: f64) -> Self {
        self.max(Self::splat(low)).min(Self::splat(high))
    }

    fn least(self, other: Self) -> Self {
        self.min(other)
    }

    fn most(self, other: Self) -> Self {
        self.max(other)
    }
}
