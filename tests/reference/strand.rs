//! A strand, against Costello's linear theory in pulling and the integrated energy of a helical rod in bending.

use std::sync::OnceLock;

use serde_json::Value;
use strings::construction::Layout;
use strings::quantity::{Degree, Metre, Pascal, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of, word};

/// What the program printed; run once for all tests of this file.
fn printed() -> &'static Value {
    static PRINTED: OnceLock<Value> = OnceLock::new();
    PRINTED.get_or_init(|| output_of("strand"))
}

#[test]
fn a_strand_pulls_as_costello_says() {
    let printed = printed();
    let authority = Authority {
        source: "strand.py, Costello 1997, ch. 3, equations from memory, solved as one linear system",
        grade: Grade::Independent,
    };
    check(
        &authority,
        list(printed, "pulls").iter().map(|pull| {
            let (lay, poisson) = (number(pull, "lay_deg"), number(pull, "poisson"));
            let (layout, wires) = match word(pull, "layout") {
                "1x7" => (Layout::OneBySeven, 7.0),
                _ => (Layout::OneByNineteen, 19.0),
            };
            let (wire, diameter) =
                (Metre::from_mm(0.15), Metre::from_mm(0.15 * layout.diameter_in_wires()));
            let area =
                physics!(strand::area)(diameter, layout, Degree::new(lay), Ratio::new(poisson));
            row(
                format!("{} laid at {lay} degrees, Poisson's ratio {poisson}", layout.key()),
                area.get() / (wires * physics!(mass::circle)(wire).get()),
                number(pull, "modulus_share"),
                Within::Share(1e-9),
                "the same theory, another solution",
            )
        }),
    );
}

#[test]
fn a_strand_pulls_nearly_as_its_least_energy_says() {
    // No theory of strands: every wire by its exact geometry, and the force as the slope of the elastic energy.
    let program = output_of("strand_energy");
    let authority = Authority {
        source: "strand_energy.py, least elastic energy of helical wires, geometry in full",
        grade: Grade::Independent,
    };
    let why = "the linear theory leaves out that contact, squeezing wires, lengthens them: 0.9 % at 12 degrees";
    check(
        &authority,
        list(&program, "pulls").iter().map(|pull| {
            let (lay, poisson) = (number(pull, "lay_deg"), number(pull, "poisson"));
            let area = physics!(strand::area)(
                Metre::from_mm(0.45),
                Layout::OneBySeven,
                Degree::new(lay),
                Ratio::new(poisson),
            );
            row(
                format!("1x7 laid at {lay} degrees, Poisson's ratio {poisson}"),
                area.get() / (7.0 * physics!(mass::circle)(Metre::from_mm(0.15)).get()),
                number(pull, "modulus_share"),
                Within::Share(0.0125 * (lay / 12.0).powi(2)),
                why,
            )
        }),
    );
}

#[test]
fn the_rule_of_cosines_lies_above_the_theory_as_stated() {
    let printed = printed();
    let authority = Authority {
        source: "strand.py, against the rule that each laid wire counts cos^3 of its lay",
        grade: Grade::Independent,
    };
    check(
        &authority,
        list(printed, "pulls")
            .iter()
            .filter(|pull| word(pull, "layout") == "1x7" && number(pull, "poisson") < 0.3)
            .map(|pull| {
                let lay = number(pull, "lay_deg");
                let area = physics!(strand::area_by_cosine)(
                    Metre::from_mm(0.45),
                    Layout::OneBySeven,
                    Degree::new(lay),
                );
                row(
                    format!("1x7 laid at {lay} degrees"),
                    area.get() / (7.0 * physics!(mass::circle)(Metre::from_mm(0.15)).get()),
                    number(pull, "modulus_share"),
                    Within::Share(0.011 * (lay / 12.0).powi(2) + 1e-12),
                    "stated to lie 1.0 % above at 12 degrees, growing as the square of the lay",
                )
            }),
    );
}

#[test]
fn free_wires_bend_as_the_energy_of_a_helical_rod_says() {
    let printed = printed();
    let authority = Authority {
        source: "strand.py (strain energy of a helical rod, integrated)",
        grade: Grade::Independent,
    };
    let (modulus, wire) = (Pascal::new(2.0e11), Metre::from_mm(0.1));
    let straight =
        physics!(stiffness::bending_bonded)(modulus, physics!(mass::circle)(wire), wire).get();
    check(
        &authority,
        list(printed, "bends").iter().map(|bend| {
            let (lay, poisson) = (number(bend, "lay_deg"), number(bend, "poisson"));
            let count = Ratio::new(7.0);
            let found = physics!(stiffness::bending_free)(modulus, count, wire, Degree::new(lay), Ratio::new(poisson));
            row(
                format!("seven wires laid at {lay} degrees, Poisson's ratio {poisson}, share of straight ones"),
                found.get() / (7.0 * straight),
                number(bend, "share"),
                Within::Share(1e-12),
                "the integration is asked for 13 digits",
            )
        }),
    );
}
