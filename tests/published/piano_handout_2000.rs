//! A practical rule of piano makers for round copper wrap on a steel core.

use strings::construction::{Form, Winding};
use strings::material::{self, SPRING_STEEL};
use strings::quantity::{KilogramPerCubicMetre, Metre, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

#[test]
fn wrap_over_core() {
    let authority = Authority {
        source: "handout of piano technicians, 2000: wrap/core = 0.89 (Dw^2 - Dc^2)/Dc^2, as cited in their list's archive",
        grade: Grade::Printed,
    };
    let metal = material::metal_of("copper").expect("the model has copper");
    let copper = KilogramPerCubicMetre::new(metal.density.value);
    let (thickness, none) = (Metre::from_mm(0.2), Ratio::new(0.0));
    let close = Winding { metal, form: Form::Round, thickness, bedding: none, gap: none };
    let steel = KilogramPerCubicMetre::new(SPRING_STEEL.density.value);
    check(
        &authority,
        [(1.0, 0.2), (1.2, 0.8), (1.5, 1.2)].map(|(core, wire): (f64, f64)| {
            let under = Metre::from_mm(core);
            let wrap = physics!(mass::winding)(&close, copper, Metre::from_mm(wire), under);
            let outer = core + 2.0 * wire;
            row(
                format!("{wire} mm on {core} mm: the factor"),
                wrap.get() / physics!(mass::solid)(steel, under).get() / ((outer * outer - core * core) / (core * core)),
                0.89,
                Within::Share(0.0155),
                "0.56 % half a unit of the factor, 0.4 % densities, up to 0.5 % the slope of thick wire",
            )
        }),
    );
}
