//! How much does a metre of the string weigh?

use core::f64::consts::PI;

use crate::construction::{Form, Layout, Winding};
use crate::quantity::{Degree, KilogramPerCubicMetre, KilogramPerMetre, Metre, Ratio, SquareMetre};

/// Area of a circle of that diameter.
#[must_use]
pub fn circle(diameter: Metre) -> SquareMetre {
    let d = diameter.get();
    SquareMetre::new(PI * d * d / 4.0)
}

/// Mass a length of a solid round core: ρ π d²/4.
///
/// Source: [`crate::source::MERSENNE`] (textbook form).
#[must_use]
pub fn solid(density: KilogramPerCubicMetre, diameter: Metre) -> KilogramPerMetre {
    KilogramPerMetre::new(density.get() * circle(diameter).get())
}

/// Mass a length of a strand: every laid wire is longer than the strand by 1/cos λ.
///
/// In a rope of strands the wires of the outer strands are laid twice, and longer by 1/cos² λ.
/// Source: geometry ([`crate::source::COSTELLO_1997`]).
#[must_use]
pub fn strand(
    density: KilogramPerCubicMetre,
    diameter: Metre,
    layout: Layout,
    lay: Degree,
) -> KilogramPerMetre {
    let wire = Metre::new(diameter.get() / layout.diameter_in_wires());
    let c = libm::cos(lay.get().to_radians());
    let lengths = match layout {
        Layout::OneBySeven => 1.0 + 6.0 / c,
        Layout::OneByNineteen => 1.0 + 18.0 / c,
        Layout::SevenBySeven => 1.0 + 12.0 / c + 36.0 / (c * c),
    };
    KilogramPerMetre::new(density.get() * circle(wire).get() * lengths)
}

/// Mass a length of a bundle that fills the share `fill` of its circle: ρ φ π d²/4.
///
/// Source: definition of the fill ([`crate::source::GRAHAM_1998`] for equal filaments).
#[must_use]
pub fn bundle(density: KilogramPerCubicMetre, diameter: Metre, fill: Ratio) -> KilogramPerMetre {
    KilogramPerMetre::new(density.get() * fill.get() * circle(diameter).get())
}

/// Mass a length of one winding on a body of diameter `under`.
///
/// Round wire at an axial pitch p = t (1 + g): ρ (π t²/4) √((π D/p)² + 1), D = under + t.
/// Flat ribbon with gaps of the share g of its width: ρ π t (under + t)/(1 + g), whatever that width.
/// With bedding b the winding sits at under − 2 b t.
/// Source: helix geometry, exact; held against numeric integration in the tests.
#[must_use]
pub fn winding(
    winding: &Winding,
    density: KilogramPerCubicMetre,
    thickness: Metre,
    under: Metre,
) -> KilogramPerMetre {
    let (t, spread) = (thickness.get(), 1.0 + winding.gap.get());
    let mean = mean_diameter(winding, thickness, under).get();
    let volume = match winding.form {
        Form::Round => {
            let turn = PI * mean / (t * spread);
            circle(thickness).get() * (turn * turn + 1.0).sqrt()
        }
        Form::Flat => PI * t * mean / spread,
    };
    KilogramPerMetre::new(density.get() * volume)
}

/// Mean diameter of a winding of that thickness on a body of diameter `under`: under − 2 b t + t.
#[must_use]
pub fn mean_diameter(winding: &Winding, thickness: Metre, under: Metre) -> Metre {
    let t = thickness.get();
    Metre::new(under.get() - 2.0 * winding.bedding.get() * t + t)
}

/// Thickness of the winding that brings a body of diameter `under` the mass a length `wanted`.
///
/// The inverse of [`winding`]: exact for ribbon; for round wire the slope of the turns is left out, which costs
/// up to 0.2 % of mass while the wire is thinner than a fifth of the body. `None` where no positive thickness does.
#[must_use]
pub fn winding_thickness(
    density: KilogramPerCubicMetre,
    form: Form,
    bedding: Ratio,
    under: Metre,
    wanted: KilogramPerMetre,
) -> Option<Metre> {
    let filled = match form {
        Form::Round => PI / 4.0,
        Form::Flat => 1.0,
    };
    let area = wanted.get() / (density.get() * PI * filled);
    let (a, b) = (1.0 - 2.0 * bedding.get(), under.get());
    // a t² + b t = area, solved without a difference of near equals.
    let t = 2.0 * area / (b + (b * b + 4.0 * a * area).sqrt());
    (wanted.get() > 0.0 && t > 0.0).then_some(Metre::new(t))
}

/// Mass a length of the string at pitch: what was a metre now measures 1 + ε.
///
/// Source: conservation of mass.
#[must_use]
pub fn stretched(unstretched: KilogramPerMetre, stretch: Ratio) -> KilogramPerMetre {
    KilogramPerMetre::new(unstretched.get() / (1.0 + stretch.get()))
}
