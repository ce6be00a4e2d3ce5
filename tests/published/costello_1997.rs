//! Costello, Theory of Wire Rope: the modulus and the bending of strands, beside the numbers of its worked strand.

use strings::construction::Layout;
use strings::quantity::{Degree, KilogramPerCubicMetre, Metre, Pascal, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

/// Modulus of a 1x7 over its wire's, on the metal's own area, by the theory.
fn share(lay: f64, poisson: f64) -> f64 {
    let (d, lay, poisson) = (Metre::from_mm(0.3), Degree::new(lay), Ratio::new(poisson));
    let area = physics!(strand::area)(d, Layout::OneBySeven, lay, poisson);
    area.get() / (7.0 * physics!(mass::circle)(Metre::from_mm(0.1)).get())
}

/// The same by the rule of cosines.
fn by_cosine(lay: f64) -> f64 {
    let area =
        physics!(strand::area_by_cosine)(Metre::from_mm(0.3), Layout::OneBySeven, Degree::new(lay));
    area.get() / (7.0 * physics!(mass::circle)(Metre::from_mm(0.1)).get())
}

#[test]
fn the_test_strand_of_the_literature() {
    let authority = Authority {
        source: "Costello 1997, ch. 3, from memory, worked elsewhere for the 1x7 strand of R1 1.97, R2 1.865, pitch 115 mm: 0.9374",
        grade: Grade::Independent,
    };
    check(
        &authority,
        [
            row(
                "laid at 11.834 degrees",
                share(11.834, 0.3),
                0.9374,
                Within::Share(0.0015),
                "equal wires; the worked strand's outer ones are 5 % thinner than its straight one",
            ),
            // (1.97^2 + 6 * 1.865^2 * 0.9376) over (1.97^2 + 6 * 1.865^2); the model's wires are equal, that strand's are not.
            row(
                "the cosine rule by hand",
                by_cosine(11.834),
                0.9474,
                Within::Share(0.0015),
                "equal wires",
            ),
        ],
    );
}

#[test]
fn a_strand_of_wire_rope_practice() {
    let authority = Authority {
        source: "ASTM A416: pitch 12 to 16 diameters, 7.5 to 9.9 degrees; modulus 195 GPa against 205, from memory",
        grade: Grade::Hearsay,
    };
    check(
        &authority,
        [7.5, 8.7, 9.9].map(|lay| {
            row(
                format!("{lay} degrees"),
                share(lay, 0.29),
                195.0 / 205.0,
                Within::Share(0.035),
                "nominal moduli",
            )
        }),
    );
}

#[test]
fn the_least_bending_stiffness() {
    let authority = Authority {
        source: "Costello 1997, ch. 4, from memory: free filaments over a solid circle are phi^2/n",
        grade: Grade::Identity,
    };
    // Filaments of 0.1 mm in circles of 3, 4.8637 (densest) and 11.952 times that, the last 70 % full of 100.
    let modulus = Pascal::new(2e11);
    check(
        &authority,
        [(7.0, 3.0, 0.086_419_75), (19.0, 4.863_703, 0.033_953_56), (100.0, 11.952_286, 0.0049)]
            .map(|(n, ratio, share)| {
                let (wire, whole) = (Metre::from_mm(0.1), Metre::from_mm(0.1 * ratio));
                let free = physics!(stiffness::bending_free)(
                    modulus,
                    Ratio::new(n),
                    wire,
                    Degree::new(0.0),
                    Ratio::new(0.29),
                );
                let solid = physics!(stiffness::bending_bonded)(
                    modulus,
                    physics!(mass::circle)(whole),
                    whole,
                );
                row(
                    format!("{n} filaments"),
                    free.get() / solid.get(),
                    share,
                    Within::Share(1e-5),
                    "six digits written down",
                )
            }),
    );
}

#[test]
fn a_laid_wire_is_longer_than_its_strand() {
    let authority = Authority {
        source: "geometry: a wire laid at 60 degrees is twice as long as its strand; at 0 as long",
        grade: Grade::Identity,
    };
    let (density, d) = (KilogramPerCubicMetre::new(7850.0), Metre::from_mm(0.9));
    let wire = |layout: Layout| {
        physics!(mass::solid)(density, Metre::from_mm(0.9 / layout.diameter_in_wires())).get()
    };
    check(
        &authority,
        [
            (Layout::OneBySeven, 0.0, 7.0),
            (Layout::OneByNineteen, 0.0, 19.0),
            (Layout::SevenBySeven, 0.0, 49.0),
            (Layout::OneBySeven, 60.0, 1.0 + 6.0 * 2.0),
            (Layout::OneByNineteen, 60.0, 1.0 + 18.0 * 2.0),
            (Layout::SevenBySeven, 60.0, 1.0 + 12.0 * 2.0 + 36.0 * 4.0),
        ]
        .map(|(layout, lay, wires)| {
            let found = physics!(mass::strand)(density, d, layout, Degree::new(lay));
            row(
                format!("{} at {lay} degrees, wires", layout.key()),
                found.get() / wire(layout),
                wires,
                Within::Share(1e-12),
                "an identity",
            )
        }),
    );
}

#[test]
fn a_laid_wire_pulls_less_than_a_straight_one() {
    let authority = Authority {
        source: "cosine rule: a wire laid at 60 degrees counts an eighth, one laid twice a sixty-fourth",
        grade: Grade::Identity,
    };
    let d = Metre::from_mm(0.9);
    check(
        &authority,
        [
            (Layout::OneBySeven, 1.0 + 6.0 / 8.0),
            (Layout::OneByNineteen, 1.0 + 18.0 / 8.0),
            (Layout::SevenBySeven, 1.0 + 12.0 / 8.0 + 36.0 / 64.0),
        ]
        .map(|(layout, wires)| {
            let wire =
                physics!(mass::circle)(Metre::from_mm(0.9 / layout.diameter_in_wires())).get();
            let found = physics!(strand::area_by_cosine)(d, layout, Degree::new(60.0)).get() / wire;
            row(
                format!("{}, wires", layout.key()),
                found,
                wires,
                Within::Share(1e-12),
                "an identity",
            )
        }),
    );
}
