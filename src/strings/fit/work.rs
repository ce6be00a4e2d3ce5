//! How much work may an answer take? Counted steps instead of a clock, so that the same question ends at the same place
//! on every machine.
//!
//! A step is about ten nanoseconds of native code. Whoever runs out returns the best it found, and an upper bound for
//! what it did not look at.

/// Steps that are left, and steps that were taken.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Work {
    left: u64,
    taken: u64,
}

impl Work {
    /// A budget of that many steps.
    #[must_use]
    pub const fn of(steps: u64) -> Self {
        Self { left: steps, taken: 0 }
    }

    /// A budget that never runs out.
    #[must_use]
    pub const fn unlimited() -> Self {
        Self::of(u64::MAX)
    }

    /// Whether it never runs out.
    #[must_use]
    pub const fn is_unlimited(&self) -> bool {
        self.left > u64::MAX / 2
    }

    /// Takes steps, more than are left if need be.
    pub const fn take(&mut self, steps: u64) {
        self.left = self.left.saturating_sub(steps);
        self.taken += steps;
    }

    /// Whether no steps are left.
    #[must_use]
    pub const fn is_out(&self) -> bool {
        self.left == 0
    }

    /// How many steps were taken.
    #[must_use]
    pub const fn taken(&self) -> u64 {
        self.taken
    }

    /// Runs a phase that may take half of what is left, so that the next one has as much.
    pub fn half<T>(&mut self, phase: impl FnOnce(&mut Self) -> T) -> T {
        self.at_most(self.left / 2, phase)
    }

    /// Runs a phase that may take three quarters of what is left.
    pub fn most<T>(&mut self, phase: impl FnOnce(&mut Self) -> T) -> T {
        self.at_most(self.left - self.left / 4, phase)
    }

    fn at_most<T>(&mut self, steps: u64, phase: impl FnOnce(&mut Self) -> T) -> T {
        let mut part = Self::of(steps);
        let result = phase(&mut part);
        self.take(part.taken);
        result
    }
}
