//! The mass of a close winding, against integration along the wire and over the ring.

use std::sync::OnceLock;

use serde_json::Value;
use strings::construction::Form;
use strings::physics::mass;
use strings::quantity::{KilogramPerCubicMetre, KilogramPerMetre, Metre, Ratio};
use support::{Authority, Grade, Within, check, row};

use crate::python::{list, number, output_of, word};

/// What the program printed; run once for all tests of this file.
fn printed() -> &'static Value {
    static PRINTED: OnceLock<Value> = OnceLock::new();
    PRINTED.get_or_init(|| output_of("winding"))
}

#[test]
fn a_winding_weighs_what_integration_says() {
    let printed = printed();
    let authority =
        Authority { source: "winding.py (numeric integration)", grade: Grade::Independent };
    check(
        &authority,
        list(printed, "windings").iter().map(|winding| {
            let form = match word(winding, "form") {
                "round" => Form::Round,
                _ => Form::Flat,
            };
            let (t, under) = (number(winding, "thickness_m"), number(winding, "under_m"));
            let found = mass::winding(
                KilogramPerCubicMetre::new(number(winding, "density_kg_m3")),
                form,
                Metre::new(t),
                Ratio::new(number(winding, "bedding")),
                Metre::new(under),
            );
            row(
                format!("{form:?} winding of {t} m on {under} m, kg/m"),
                found.get(),
                number(winding, "kg_m"),
                Within::Share(1e-12),
                "the integration is asked for 13 digits",
            )
        }),
    );
}

#[test]
fn the_thickness_is_found_from_the_integrated_mass() {
    let printed = printed();
    let authority = Authority {
        source: "winding.py (numeric integration), asked the other way round",
        grade: Grade::Independent,
    };
    check(
        &authority,
        list(printed, "windings").iter().filter_map(|winding| {
            let (t, under) = (number(winding, "thickness_m"), number(winding, "under_m"));
            // For round wire the model leaves out the slope of the turns, and says it holds for thin wire.
            let (form, within) = match word(winding, "form") {
                "round" if t > 0.19 * under => return None,
                "round" => (Form::Round, 0.002),
                _ => (Form::Flat, 1e-12),
            };
            let found = mass::winding_thickness(
                KilogramPerCubicMetre::new(number(winding, "density_kg_m3")),
                form,
                Ratio::new(number(winding, "bedding")),
                Metre::new(under),
                KilogramPerMetre::new(number(winding, "kg_m")),
            );
            let what = format!("{form:?} winding on {under} m, m");
            Some(row(
                what,
                found.map_or(f64::NAN, Metre::get),
                t,
                Within::Share(within),
                "as stated",
            ))
        }),
    );
}
