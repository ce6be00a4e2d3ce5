//! How far does playing push the pitch?

use core::f64::consts::PI;

use crate::pitch::CENTS_PER_NEPER;
use crate::quantity::{Cent, Metre, Newton, Ratio};

/// Pitch rise from pressing the string down at the octave: (600/ln 2)(EA/T)(2 h²/L)/Lₜ.
///
/// The path grows by h²/2 (1/a + 1/(L − a)) with a = L/2. Players correct by ear; it shows where stopped notes
/// meet open strings and harmonics. Source: geometry and Hooke's law; cf. [`crate::source::ANDERSON_2024`].
#[must_use]
pub fn at_the_octave(
    axial_stiffness: Newton,
    tension: Newton,
    height: Metre,
    length: Metre,
    whole_length: Metre,
) -> Cent {
    let h = height.get();
    Cent::new(
        CENTS_PER_NEPER / 2.0 * axial_stiffness.get() / tension.get() * 2.0 * h * h
            / length.get()
            / whole_length.get(),
    )
}

/// Pitch rise of a wide swing in its first partial: (3/8)(EA/T)(π a/2L)², a the amplitude at mid-string.
///
/// One plane of motion (Duffing); in a circle it is a third more. Derived.
#[must_use]
pub fn glide(axial_stiffness: Newton, tension: Newton, amplitude_share: Ratio) -> Cent {
    let slope = PI * amplitude_share.get() / 2.0;
    Cent::new(CENTS_PER_NEPER * 0.375 * axial_stiffness.get() / tension.get() * slope * slope)
}
