//! How stiff is the core, along and across?

use core::f64::consts::PI;

use super::mass::circle;
use crate::construction::Layout;
use crate::quantity::{Degree, Metre, Newton, NewtonSquareMetre, Pascal, Ratio, SquareMetre};

/// Effective area of a twisted bundle for pulling: φ (π d²/4) cos² α, α the surface twist.
///
/// Source: [`crate::source::HEARLE_1969`].
#[must_use]
pub fn bundle_area(diameter: Metre, fill: Ratio, twist: Degree) -> SquareMetre {
    let c = libm::cos(twist.get().to_radians());
    SquareMetre::new(fill.get() * circle(diameter).get() * c * c)
}

/// Factor on the modulus of gut for its twist: cos² α / cos² α₀, 1 at the twist of the table.
///
/// The form is that of a twisted yarn ([`crate::source::HEARLE_1969`]); that the modulus falls with twist is
/// measured ([`crate::source::LYNCH_AIRD_TWIST`]), how fast is not known here.
#[must_use]
pub fn gut_twist_factor(twist: Degree) -> Ratio {
    let c = libm::cos(twist.get().to_radians());
    let c0 = libm::cos(crate::material::GUT_TWIST_OF_TABLE.to_radians());
    Ratio::new(c * c / (c0 * c0))
}

/// Axial stiffness E A of the core; windings carry nothing.
#[must_use]
pub fn axial(modulus: Pascal, effective: SquareMetre) -> Newton {
    Newton::new(modulus.get() * effective.get())
}

/// Bending stiffness of a core bending as one solid: E A d²/16, which is E π d⁴/64 for a full circle.
#[must_use]
pub fn bending_bonded(
    modulus: Pascal,
    effective: SquareMetre,
    diameter: Metre,
) -> NewtonSquareMetre {
    let d = diameter.get();
    NewtonSquareMetre::new(modulus.get() * effective.get() * d * d / 16.0)
}

/// Bending stiffness of a strand whose wires hold together: E A_e d² k/(16 n m²), m its diameter in wires.
///
/// k/4 · π r⁴ is the second moment of n wires of radius r about the strand's axis, lying straight: k is 55, 403
/// and 3409 for 1x7, 1x19 and 7x7, by the theorem of parallel axes. Of a full circle it is 87, 85 and 86 %.
#[must_use]
pub fn strand_bending_bonded(
    modulus: Pascal,
    effective: SquareMetre,
    diameter: Metre,
    layout: Layout,
) -> NewtonSquareMetre {
    let k = match layout {
        Layout::OneBySeven => 55.0,
        Layout::OneByNineteen => 403.0,
        Layout::SevenBySeven => 3409.0,
    };
    let (d, m, n) = (diameter.get(), layout.diameter_in_wires(), f64::from(layout.wires().0));
    NewtonSquareMetre::new(modulus.get() * effective.get() * d * d * k / (16.0 * n * m * m))
}

/// Bending stiffness of filaments that slide freely: n E (π d_f⁴/64) · 2 cos λ / (2 + ν sin² λ).
///
/// Source: [`crate::source::COSTELLO_1997`], ch. 4. Filaments are counted as a real number: φ (d/d_f)².
#[must_use]
pub fn bending_free(
    modulus: Pascal,
    count: Ratio,
    filament: Metre,
    lay: Degree,
    poisson: Ratio,
) -> NewtonSquareMetre {
    let (c, s) = (libm::cos(lay.get().to_radians()), libm::sin(lay.get().to_radians()));
    let f2 = filament.get() * filament.get();
    let one = modulus.get() * PI * f2 * f2 / 64.0;
    NewtonSquareMetre::new(count.get() * one * 2.0 * c / (2.0 + poisson.get() * s * s))
}

/// Outer diameter at pitch: the core thins to (1 + ε)^−ν of its diameter, and windings follow it inward.
///
/// A wound string lies between this and its unstretched gauge; the difference is under 2 % in all but
/// polymer cores. Source: Poisson's ratio in its logarithmic form, which never thins a core to nothing.
#[must_use]
pub fn diameter_at_pitch(outer: Metre, core: Metre, stretch: Ratio, poisson: Ratio) -> Metre {
    Metre::new(outer.get() + core.get() * libm::expm1(-poisson.get() * libm::log1p(stretch.get())))
}
