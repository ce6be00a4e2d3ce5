//! What do the strings ask of the instrument?

use crate::quantity::{Degree, Newton};

/// Force of a string on the bridge, along the line that halves the break: F = 2 T sin((180° − θ)/2).
///
/// θ is the angle that the string makes over the bridge, 158° on a violin. Statics, exact.
#[must_use]
pub fn downforce(tension: Newton, angle_over_bridge: Degree) -> Newton {
    let half = (180.0 - angle_over_bridge.get()).to_radians() / 2.0;
    Newton::new(2.0 * tension.get() * libm::sin(half))
}
