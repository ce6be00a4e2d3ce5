//! The mass of a close winding, against integration along the wire and over the ring.

use std::sync::OnceLock;

use serde_json::Value;
use strings::construction::{Form, Winding};
use strings::material::METALS;
use strings::quantity::{KilogramPerCubicMetre, KilogramPerMetre, Metre, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of, word};

/// What the program printed; run once for all tests of this file.
fn printed() -> &'static Value {
    static PRINTED: OnceLock<Value> = OnceLock::new();
    PRINTED.get_or_init(|| output_of("winding"))
}

/// A winding of that form; what it is made of and how thick it is are told beside it.
fn shape(form: Form, bedding: f64, gap: f64) -> Winding {
    Winding {
        metal: &METALS[0],
        form,
        thickness: Metre::from_mm(0.1),
        bedding: Ratio::new(bedding),
        gap: Ratio::new(gap),
    }
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
            let shape = shape(form, number(winding, "bedding"), number(winding, "gap"));
            let found = physics!(mass::winding)(
                &shape,
                KilogramPerCubicMetre::new(number(winding, "density_kg_m3")),
                Metre::new(t),
                Metre::new(under),
            );
            row(
                format!("{form:?} winding of {t} m on {under} m, gap {}, kg/m", shape.gap),
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
                // The inverse knows close windings alone.
                _ if number(winding, "gap") > 0.0 => return None,
                "round" if t > 0.19 * under => return None,
                "round" => (Form::Round, 0.002),
                _ => (Form::Flat, 1e-12),
            };
            let found = physics!(mass::winding_thickness)(
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

#[test]
fn turns_lie_half_way_between_their_edges() {
    let printed = printed();
    let authority = Authority { source: "winding.py, edges of a winding", grade: Grade::Identity };
    check(
        &authority,
        list(printed, "windings").iter().map(|winding| {
            let shape = shape(Form::Flat, number(winding, "bedding"), 0.0);
            let (t, under) = (number(winding, "thickness_m"), number(winding, "under_m"));
            row(
                format!("mean diameter of {t} m on {under} m, m"),
                physics!(mass::mean_diameter)(&shape, Metre::new(t), Metre::new(under)).get(),
                number(winding, "mean_m"),
                Within::Share(1e-12),
                "an identity",
            )
        }),
    );
}
