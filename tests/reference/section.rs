//! Bending of wires that hold together, against their second moment integrated disc by disc.

use strings::construction::Layout;
use strings::quantity::{Metre, Pascal, SquareMetre};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of, word};

#[test]
fn a_bonded_strand_bends_by_the_moments_of_its_wires() {
    let printed = output_of("section");
    let authority = Authority {
        source: "section.py, second moments integrated disc by disc",
        grade: Grade::Independent,
    };
    let (modulus, wire) = (Pascal::new(2e11), Metre::from_mm(0.1));
    let radius4 = (wire.get() / 2.0).powi(4);
    check(
        &authority,
        list(&printed, "strands").iter().map(|strand| {
            let layout = Layout::ALL
                .into_iter()
                .find(|layout| layout.key() == word(strand, "layout"))
                .expect("a layout of the model");
            let diameter = Metre::new(wire.get() * layout.diameter_in_wires());
            // Lying straight, all wires pull with all their area.
            let area = number(strand, "wires") * physics!(mass::circle)(wire).get();
            let found = physics!(stiffness::strand_bending_bonded)(
                modulus,
                SquareMetre::new(area),
                diameter,
                layout,
            );
            row(
                layout.key(),
                found.get() / modulus.get() / radius4,
                number(strand, "moment"),
                Within::Share(1e-8),
                "ten digits printed",
            )
        }),
    );
    let round = physics!(stiffness::bending_bonded)(modulus, physics!(mass::circle)(wire), wire);
    check(
        &authority,
        [row(
            "one rod",
            round.get() / modulus.get() / radius4,
            number(&printed, "circle"),
            Within::Share(1e-8),
            "ten digits printed",
        )],
    );
}
