//! Densities of elements as the `periodictable` package 2.1.0 prints them, seen through whole windings.

use strings::construction::{Form, Winding};
use strings::material;
use strings::quantity::{KilogramPerCubicMetre, Metre, Ratio};
use strings::report::Property;
use support::{Authority, Grade, Within, check, physics, row};

const PACKAGE: Authority = Authority {
    source: "periodictable 2.1.0 (Python package), densities of the elements",
    grade: Grade::Fitted,
};
const ALLOY: &str = "libraries differ by up to 0.8 %, and wire is an alloy";

/// kg/m3; silver as sterling, 92.5 % of 10500 and 7.5 % of copper's 8960 by mass: 10366.
const TABLE: [(&str, f64); 7] = [
    ("aluminium", 2698.9),
    ("titanium", 4540.0),
    ("nickel", 8902.0),
    ("copper", 8960.0),
    ("silver", 10_366.0),
    ("tungsten", 19_300.0),
    ("gold", 19_300.0),
];

#[test]
fn ribbon_adds_its_ring_of_metal() {
    let setting = crate::setting(0.325, 196.0);
    let steel = (&material::SPRING_STEEL, strings::construction::Build::Solid);
    check(
        &PACKAGE,
        TABLE.map(|(key, density)| {
            let metal = material::metal_of(key).unwrap_or_else(|| panic!("the model has no {key}"));
            let thickness = Metre::from_mm(0.1);
            let ribbon = Winding {
                metal,
                form: Form::Flat,
                thickness,
                bedding: Ratio::new(0.0),
                gap: Ratio::new(0.0),
            };
            let of = |windings: &[Winding]| {
                crate::value(steel, 0.4, windings, &setting, Property::MassUnstretched)
            };
            let ring = std::f64::consts::PI / 4.0 * (0.6e-3 * 0.6e-3 - 0.4e-3 * 0.4e-3);
            row(
                format!("{key} ribbon, kg/m"),
                of(&[ribbon]) - of(&[]),
                density * ring,
                Within::Share(0.01),
                ALLOY,
            )
        }),
    );
}

#[test]
fn the_range_of_silver_reaches_from_sterling_to_fine() {
    let silver = material::metal_of("silver").expect("the model has silver").density;
    for density in [10_366.0, 10_500.0] {
        assert!(silver.low <= density && density <= silver.high, "{density}");
    }
}

#[test]
fn steel_is_iron_with_a_little_carbon() {
    let d = Metre::from_mm(0.26);
    let found =
        physics!(mass::solid)(KilogramPerCubicMetre::new(material::SPRING_STEEL.density.value), d);
    let circle = std::f64::consts::PI / 4.0 * 0.26e-3 * 0.26e-3;
    check(
        &PACKAGE,
        [row(
            "violin E wire as iron, kg/m",
            found.get(),
            7874.0 * circle,
            Within::Share(0.01),
            ALLOY,
        )],
    );
}
