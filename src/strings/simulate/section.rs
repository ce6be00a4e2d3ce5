//! One link of a digital filter, and its answer at a frequency.

use crate::lanes::Lanes;

/// A complex number: real and imaginary part.
pub(super) type Complex = (f64, f64);

/// The product of two complex numbers.
pub(super) fn times(a: Complex, b: Complex) -> Complex {
    (a.0 * b.0 - a.1 * b.1, a.0 * b.1 + a.1 * b.0)
}

/// The quotient of two complex numbers.
pub(super) fn over(a: Complex, b: Complex) -> Complex {
    let n = b.0 * b.0 + b.1 * b.1;
    ((a.0 * b.0 + a.1 * b.1) / n, (a.1 * b.0 - a.0 * b.1) / n)
}

/// The magnitude of a complex number.
pub(super) fn size(a: Complex) -> f64 {
    (a.0 * a.0 + a.1 * a.1).sqrt()
}

/// The angle of a complex number, radians.
pub(super) fn angle(a: Complex) -> f64 {
    libm::atan2(a.1, a.0)
}

/// The delay of one step at `omega` radians a step: e^(−iω).
pub(super) fn delay(omega: f64) -> Complex {
    (libm::cos(omega), -libm::sin(omega))
}

/// A section y = b₀x + b₁x' + b₂x'' − a₁y' − a₂y''.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Section<N = f64> {
    pub(super) b: [N; 3],
    pub(super) a: [N; 2],
}

impl Section {
    /// Lets everything through.
    pub(super) const NONE: Self = Self { b: [1.0, 0.0, 0.0], a: [0.0, 0.0] };

    /// First order, (1 + g s/p)/(1 + s/p), at rest 1 and fast g; `t` is tan(π f_p/rate).
    pub(super) fn shelf(t: f64, g: f64) -> Self {
        let n = t + 1.0;
        Self { b: [(t + g) / n, (t - g) / n, 0.0], a: [(t - 1.0) / n, 0.0] }
    }

    /// Second order, 1/(1 + s/(q p) + s²/p²); `t` is tan(π f_p/rate).
    pub(super) fn low_pass(t: f64, q: f64) -> Self {
        let n = 1.0 + t / q + t * t;
        let b = t * t / n;
        Self { b: [b, 2.0 * b, b], a: [2.0 * (t * t - 1.0) / n, (1.0 - t / q + t * t) / n] }
    }

    /// The resonance (s p/q)/(s² + s p/q + p²), 1 at its top; `t` is tan(π f_p/rate).
    pub(super) fn resonance(t: f64, q: f64) -> Self {
        let n = 1.0 + t / q + t * t;
        let b = t / q / n;
        Self { b: [b, 0.0, -b], a: [2.0 * (t * t - 1.0) / n, (1.0 - t / q + t * t) / n] }
    }

    /// All-pass of first order, (a + z⁻¹)/(1 + a z⁻¹).
    pub(super) const fn all_pass(a: f64) -> Self {
        Self { b: [a, 1.0, 0.0], a: [a, 0.0] }
    }

    /// The same for every note side by side.
    pub(super) fn abreast<N: Lanes>(&self) -> Section<N> {
        Section { b: self.b.map(N::all), a: self.a.map(N::all) }
    }

    /// Its answer at `omega` radians a step.
    pub(super) fn response(&self, omega: f64) -> Complex {
        let z = delay(omega);
        let zz = times(z, z);
        over(
            (self.b[0] + self.b[1] * z.0 + self.b[2] * zz.0, self.b[1] * z.1 + self.b[2] * zz.1),
            (1.0 + self.a[0] * z.0 + self.a[1] * zz.0, self.a[0] * z.1 + self.a[1] * zz.1),
        )
    }

    /// How many steps a wave of `omega` radians a step is late: −angle/ω.
    pub(super) fn steps_late(&self, omega: f64) -> f64 {
        -angle(self.response(omega)) / omega
    }
}

/// The coefficient of the all-pass that is `steps` late at `omega` radians a step.
pub(super) fn all_pass_for(steps: f64, omega: f64) -> f64 {
    let d = libm::tan(omega * steps / 2.0) / libm::tan(omega / 2.0);
    (1.0 - d) / (1.0 + d)
}
