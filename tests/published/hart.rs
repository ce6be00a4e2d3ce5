//! Hart, The Violin: what strings press on the bridge; and the statics it rests on.

use strings::quantity::{Degree, Newton};
use support::{Authority, Grade, Within, check, half_unit, physics, row};

#[test]
fn eighteen_pounds_of_tension_press_eight_pounds() {
    let authority = Authority {
        source: "Hart, The Violin (1875 to 1884), section III: 18 lb of tension press 8 lb on the bridge",
        grade: Grade::Printed,
    };
    // 2 sin((180 - a)/2) = 8/18 asks for an angle of 154.3 degrees over the bridge.
    let pound = 9.806_65 * 0.453_592_37;
    let found = physics!(load::downforce)(Newton::new(18.0 * pound), Degree::new(154.3));
    check(
        &authority,
        [row(
            "force on the bridge, lb",
            found.pounds_force(),
            8.0,
            half_unit(0.1),
            "the angle has four digits",
        )],
    );
}

#[test]
fn statics_of_the_angles_in_use() {
    let authority = Authority {
        source: "statics, 2 sin((180 - a)/2) worked out by hand; 158 violin and 157 viola as cited in tables of measures",
        grade: Grade::Identity,
    };
    check(
        &authority,
        [(158.0, 0.381_618), (157.0, 0.398_735_9), (154.0, 0.4499), (150.0, 0.5176), (180.0, 0.0)]
            .map(|(angle, share)| {
                let found = physics!(load::downforce)(Newton::new(1.0), Degree::new(angle));
                row(
                    format!("{angle} degrees"),
                    found.get(),
                    share,
                    Within::Amount(5e-5),
                    "four digits written down",
                )
            }),
    );
}

#[test]
fn a_whole_violin_set() {
    let authority = Authority {
        source: "Guettler, Typical string properties, as cited in secondary texts: sums of 189 to 265 N; pressed at 158 degrees, by hand",
        grade: Grade::Identity,
    };
    check(
        &authority,
        [(189.0, 72.0), (265.0, 101.0)].map(|(sum, force)| {
            let found = physics!(load::downforce)(Newton::new(sum), Degree::new(158.0));
            row(format!("{sum} N"), found.get(), force, half_unit(1.0), "whole newtons")
        }),
    );
}
