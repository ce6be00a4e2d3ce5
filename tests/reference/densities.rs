//! What windings weigh, with the densities of an independent library.

use strings::construction::{Form, Winding};
use strings::material;
use strings::quantity::{KilogramPerCubicMetre, Metre, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of, word};

#[test]
fn a_winding_of_each_metal() {
    let printed = output_of("densities");
    let authority = Authority {
        source: "densities.py (periodictable; sterling silver by rule of mixtures)",
        grade: Grade::Fitted,
    };
    let (under, thickness) = (0.5e-3_f64, 0.1e-3_f64);
    let ring = std::f64::consts::PI / 4.0 * ((under + 2.0 * thickness).powi(2) - under.powi(2));
    check(
        &authority,
        list(&printed, "densities").iter().map(|entry| {
            let key = word(entry, "metal");
            let metal = material::metal_of(key).unwrap_or_else(|| panic!("the model has no {key}"));
            let density = KilogramPerCubicMetre::new(metal.density.value);
            let ribbon = Winding {
                metal,
                form: Form::Flat,
                thickness: Metre::new(thickness),
                bedding: Ratio::new(0.0),
                gap: Ratio::new(0.0),
            };
            let found =
                physics!(mass::winding)(&ribbon, density, ribbon.thickness, Metre::new(under));
            row(
                format!("ribbon of {key}, kg/m"),
                found.get(),
                number(entry, "kg_m3") * ring,
                Within::Share(0.01),
                "libraries differ by up to 0.8 %, and ribbon is an alloy",
            )
        }),
    );
}
