//! One number, or several side by side that go through the same formula.
//!
//! Explicit, because what the compiler vectorises by itself changes with the code around a loop.

use core::ops::{Add, BitAnd, BitOr, Div, Mul, Neg, Not, Sub};

/// How many strings or notes stand side by side.
pub const LANES: usize = 4;

/// Four numbers in vector registers.
pub type Four = wide::f64x4;

/// One number, or several side by side that go through the same formula.
pub trait Lanes:
    Copy
    + Add<Output = Self>
    + Sub<Output = Self>
    + Mul<Output = Self>
    + Div<Output = Self>
    + Neg<Output = Self>
{
    /// How many there are.
    const COUNT: usize;
    /// Whether something holds, lane by lane.
    type Truth: Copy
        + BitAnd<Output = Self::Truth>
        + BitOr<Output = Self::Truth>
        + Not<Output = Self::Truth>;
    /// A number for each lane.
    fn each(number: impl FnMut(usize) -> f64) -> Self;
    /// The number in lane `l`.
    fn lane(self, l: usize) -> f64;
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
    /// Without its sign.
    #[must_use]
    fn size(self) -> Self;
    /// Whether it is above another, lane by lane.
    fn above(self, other: Self) -> Self::Truth;
    /// One number where something holds, another where it does not.
    #[must_use]
    fn either(truth: Self::Truth, holds: Self, not: Self) -> Self;
}

impl Lanes for f64 {
    const COUNT: usize = 1;
    type Truth = bool;

    fn each(mut number: impl FnMut(usize) -> f64) -> Self {
        number(0)
    }

    fn lane(self, _: usize) -> f64 {
        self
    }

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

    fn size(self) -> Self {
        self.abs()
    }

    fn above(self, other: Self) -> bool {
        self > other
    }

    fn either(truth: bool, holds: Self, not: Self) -> Self {
        if truth { holds } else { not }
    }
}

impl Lanes for Four {
    const COUNT: usize = LANES;
    type Truth = Self;

    fn each(number: impl FnMut(usize) -> f64) -> Self {
        Self::new(core::array::from_fn(number))
    }

    fn lane(self, l: usize) -> f64 {
        self.to_array()[l]
    }

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

    fn size(self) -> Self {
        self.abs()
    }

    fn above(self, other: Self) -> Self {
        self.simd_gt(other)
    }

    fn either(truth: Self, holds: Self, not: Self) -> Self {
        truth.select(holds, not)
    }
}
