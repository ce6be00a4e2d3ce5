//! Circles packed in a circle: how much of a strand's or bundle's section is metal or filament.

use strings::construction::Layout;
use strings::quantity::{Degree, KilogramPerCubicMetre, Metre, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

#[test]
fn a_strand_fills_its_circle_as_its_packing_does() {
    let authority = Authority {
        source: "Graham and others 1998, from memory; hexagonal packing n/(D/d)^2 worked out by hand",
        grade: Grade::Identity,
    };
    let (density, d) = (KilogramPerCubicMetre::new(7850.0), Metre::from_mm(0.7));
    check(
        &authority,
        [
            (Layout::OneBySeven, 7, 7.0 / 9.0),
            (Layout::OneByNineteen, 19, 0.76),
            // Seven in seven: each share once more.
            (Layout::SevenBySeven, 49, 49.0 / 81.0),
        ]
        .map(|(layout, wires, fill)| {
            assert_eq!(layout.wires().0, wires);
            let strand = physics!(mass::strand)(density, d, layout, Degree::new(0.0)).get();
            let bundle = physics!(mass::bundle)(density, d, Ratio::new(fill)).get();
            row(layout.key(), strand, bundle, Within::Share(1e-12), "an identity")
        }),
    );
}

#[test]
fn no_layout_is_denser_than_the_densest_packing() {
    // R/r of the densest known packings: 3 for seven circles, 4.863703 for nineteen.
    for (layout, least) in [(Layout::OneBySeven, 3.0), (Layout::OneByNineteen, 4.863_703)] {
        assert!(layout.diameter_in_wires() >= least, "{}", layout.key());
    }
    assert!(
        f64::from(Layout::SevenBySeven.wires().0)
            / Layout::SevenBySeven.diameter_in_wires().powi(2)
            < 0.9069
    );
}
