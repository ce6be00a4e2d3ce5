//! How finely can it be tuned?

use core::f64::consts::PI;

use crate::pitch::CENTS_PER_NEPER;
use crate::quantity::{CentPerDegree, CentPerMetre, Metre, Newton, Ratio};

/// Pitch rise for a pull over the nut: (600/ln 2)(EA/T + 1)/Lₜ, Lₜ the whole stretched length.
///
/// Derived: dT = EA x/Lₜ, and the mass a length falls by the same strain. The whole string slides freely
/// over nut and bridge; a string that sticks jumps instead.
#[must_use]
pub fn pull(axial_stiffness: Newton, tension: Newton, whole_length: Metre) -> CentPerMetre {
    CentPerMetre::new(
        CENTS_PER_NEPER / 2.0 * (axial_stiffness.get() / tension.get() + 1.0) / whole_length.get(),
    )
}

/// Pitch rise for one degree at the button: a degree winds π d/360 of string, over the gear's ratio.
#[must_use]
pub fn peg(pull: CentPerMetre, peg_diameter: Metre, gear_ratio: Ratio) -> CentPerDegree {
    CentPerDegree::new(pull.get() * PI * peg_diameter.get() / 360.0 / gear_ratio.get())
}

/// Stretch after so much string was wound over the nut, measured as it lies stretched: (ε + x/Lₜ)/(1 − x/Lₜ).
///
/// Below zero the string hangs slack. The string without its stretch gets shorter by x/(1 + ε); derived, and exact
/// where [`pull`], its slope at x = 0, leaves the stretch out against 1.
#[must_use]
pub fn stretch_after(stretch: Ratio, wound: Metre, whole_length: Metre) -> Ratio {
    let share = wound.get() / whole_length.get();
    Ratio::new((stretch.get() + share) / (1.0 - share))
}
