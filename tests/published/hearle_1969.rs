//! Gegauff 1907; Hearle, Grosberg and Backer 1969: a twisted yarn keeps cos^2 of its surface twist.

use strings::construction::Build;
use strings::material;
use strings::quantity::{Degree, Metre, Ratio};
use strings::report::Property;
use support::{Authority, Grade, Within, check, physics, row};

const YARN: Authority = Authority {
    source: "Gegauff 1907; Hearle, Grosberg and Backer 1969: E_yarn/E_fibre = cos^2 alpha",
    grade: Grade::Identity,
};

#[test]
fn twist_of_thirty_and_fortyfive_degrees() {
    let of = |twist: f64| {
        physics!(stiffness::bundle_area)(Metre::from_mm(0.6), Ratio::new(0.75), Degree::new(twist))
            .get()
    };
    check(
        &YARN,
        [(30.0, 0.75), (45.0, 0.5)].map(|(twist, share)| {
            row(
                format!("{twist} degrees"),
                of(twist) / of(0.0),
                share,
                Within::Share(1e-12),
                "an identity",
            )
        }),
    );
}

#[test]
fn a_whole_string_softens_as_its_yarn() {
    let setting = crate::setting(0.325, 293.665);
    let of = |twist: f64| {
        let build = Build::Multifilament {
            filament: Metre::from_mm(0.03),
            fill: Ratio::new(0.7),
            twist: Degree::new(twist),
        };
        crate::value((&material::POLYAMIDE, build), 0.7, &[], &setting, Property::AxialStiffness)
    };
    check(
        &YARN,
        [row("30 degrees", of(30.0) / of(0.0), 0.75, Within::Share(1e-12), "an identity")],
    );
}

#[test]
fn gut_loses_modulus_and_strength_with_twist() {
    // Lynch-Aird and Woodhouse, data set on the twist of gut, abstract: over 23.5 to 58.3 degrees both fall. How fast is not told.
    let twists = [23.5, 30.0, 40.0, 50.0, 58.3].map(Degree::new);
    for pair in twists.windows(2) {
        assert!(
            physics!(stiffness::gut_twist_factor)(pair[1])
                < physics!(stiffness::gut_twist_factor)(pair[0])
        );
        assert!(
            physics!(strength::gut_twist_factor)(pair[1])
                < physics!(strength::gut_twist_factor)(pair[0])
        );
    }
}
