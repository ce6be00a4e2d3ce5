//! How far does the room move its pitch?
//!
//! Four things move it: the string's own warmth, the water in its core, the body that holds its ends, and the time that
//! each of them takes. The first three are end states; the last says what share of them is reached.

use crate::pitch::CENTS_PER_NEPER;
use crate::quantity::{Cent, Degree, Metre, Ratio, Second};

/// Water in collagen, as a share of its dry mass, at a relative humidity.
///
/// X = Xm C K a / ((1 − K a)(1 − K a + C K a)). Source: [`crate::source::HERITAGE_2013`], fitted;
/// largest error 0.95 points of per cent between 5 and 95 %.
#[must_use]
pub fn collagen_water(humidity: Ratio) -> Ratio {
    let (xm, c, k) = crate::constant::COLLAGEN_GAB;
    let ka = k * humidity.get();
    Ratio::new(xm * c * ka / ((1.0 - ka) * (1.0 - ka + c * ka)))
}

/// Water in a polymer at a relative humidity: in proportion to it, from one known point.
///
/// Straight proportion is a simplification: near 95 % polyamide takes half as much again.
#[must_use]
pub fn polymer_water(at_point: Ratio, humidity: Ratio) -> Ratio {
    Ratio::new(at_point.get() * humidity.get() / crate::constant::WATER_HUMIDITY)
}

/// Pitch change for a rise of temperature: −(600/ln 2)·((EA/T)(α − α_body) + s) Δθ.
///
/// `stiff` is EA/T; `expansion` is α − α_body, 1/K; s the softening of the core, a share a kelvin. Derived;
/// steel's first term alone is −1.45 cents/K for a violin E.
#[must_use]
pub fn by_warmth(stiff: Ratio, expansion: f64, softening: f64, rise: f64) -> Cent {
    Cent::new(-CENTS_PER_NEPER / 2.0 * (stiff.get() * expansion + softening) * rise)
}

/// Pitch change by the mass of water that a core takes up: −(600/ln 2) c ΔX/(1 + X), c the core's share of the mass.
///
/// X is the water before. Derived from Mersenne's law at fixed length and tension.
#[must_use]
pub fn by_water_mass(core_share: Ratio, before: Ratio, gain: Ratio) -> Cent {
    Cent::new(-CENTS_PER_NEPER / 2.0 * core_share.get() * gain.get() / (1.0 + before.get()))
}

/// Stretch of a free twisted bundle whose fibres grow along and across: ε_a/cos² − tan² ε_r, both over its section.
///
/// In a bundle that cannot untwist, a fibre at the angle β and a growth ε_r of its radius shorten the bundle by
/// tan² β ε_r; over the section of a bundle of surface twist α the mean of tan² β is tan² α/2. Derived from the length of a helix.
#[must_use]
pub fn helix_growth(along: Ratio, across: Ratio, twist: Degree) -> Ratio {
    let t = libm::tan(twist.get().to_radians());
    let mean = t * t / 2.0;
    Ratio::new(along.get() * (1.0 + mean) - mean * across.get())
}

/// Pitch change by what a gain of water does to a core's pull: −(600/ln 2)((EA/T) ε + s), at fixed length.
///
/// `stiff` is EA/T, ε the stretch that the core would take if it were free, s the share by which its modulus falls. Derived.
#[must_use]
pub fn by_swelling(stiff: Ratio, growth: Ratio, softening: Ratio) -> Cent {
    Cent::new(-CENTS_PER_NEPER / 2.0 * (stiff.get() * growth.get() + softening.get()))
}

/// Pitch change when the body moves the string's ends apart by `movement`: (600/ln 2)(EA/T − 1) ε.
///
/// `stiff` is EA/T: a stiff string is the more sensitive one; ends that come together make the pitch fall. Source: derived;
/// cf. [`crate::source::ANDERSON_2024`].
#[must_use]
pub fn by_body(stiff: Ratio, movement: Ratio) -> Cent {
    Cent::new(CENTS_PER_NEPER / 2.0 * (stiff.get() - 1.0) * movement.get())
}

/// Squares of the first three zeros of the Bessel function J₀.
const BESSEL_ZEROS: [f64; 3] = [5.783_185_962_946_785, 30.471_262_343_662_09, 74.887_006_790_695_2];

/// The square of the first: time of a cylinder's slowest part, in a²/D over it.
pub const SLOWEST: f64 = BESSEL_ZEROS[0];

/// Share of its end state that a cylinder reaches after a time: Crank's series in D t/a², from its outside inwards.
///
/// Under D t/a² = 0.05 the form for short times, 4 √(x/π) − x − x√x/(3√π); above it three terms of the series. Error under 0.002.
/// Source: [`crate::source::CRANK_1975`].
#[must_use]
pub fn soaked(diffusivity: f64, radius: Metre, time: Second) -> Ratio {
    let x = diffusivity * time.get() / (radius.get() * radius.get());
    if x < 0.05 {
        let root = (x / core::f64::consts::PI).sqrt();
        return Ratio::new(root * (4.0 - x / 3.0) - x);
    }
    let dry: f64 = BESSEL_ZEROS.iter().map(|zero| 4.0 / zero * libm::exp(-zero * x)).sum();
    Ratio::new(1.0 - dry)
}

/// Share of its end state that is reached after a time by what follows with one time constant: 1 − e^(−t/τ).
#[must_use]
pub fn followed(time: Second, constant: Second) -> Ratio {
    Ratio::new(-libm::expm1(-time.get() / constant.get()))
}
