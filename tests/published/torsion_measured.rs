//! Torsion as measured: cello strings (Woodhouse and Loach, Mores, Serafin) and a bass string (Bavu, Smith and Wolfe).

use strings::construction::{Build, Form, Layout, Winding};
use strings::construction::{Construction, Core};
use strings::draw::Draw;
use strings::material::{self, SPRING_STEEL};
use strings::quantity::{Degree, Metre, Ratio};
use strings::report::{self, Property};
use strings::setting::Setting;
use support::{Authority, Grade, check, half_unit, physics, row};

#[test]
fn speed_from_stiffness_and_inertia() {
    let authority = Authority {
        source: "Woodhouse and Loach 1999, K 2.9e-4 N m2 and P 4.2e-10 kg m, as cited in van Walstijn and others 2026; by hand",
        grade: Grade::Identity,
    };
    check(
        &authority,
        [
            row(
                "cello string, m/s",
                physics!(torsion::speed)(2.9e-4, 4.2e-10),
                831.0,
                half_unit(1.0),
                "three digits",
            ),
            // sqrt(79e9/7850).
            row(
                "a bare steel wire, m/s",
                physics!(torsion::speed)(7.9e10, 7850.0),
                3172.3,
                half_unit(0.1),
                "five digits",
            ),
            // pi a^2/2 sqrt(G rho) with a of 0.13 mm: 0.6611 kg/s.
            row(
                "impedance of a bare violin E, kg/s",
                physics!(torsion::impedance)(
                    physics!(torsion::solid)(
                        strings::quantity::Pascal::new(7.9e10),
                        Metre::from_mm(0.26),
                    ),
                    7850.0 * std::f64::consts::PI / 2.0 * 0.13e-3_f64.powi(4),
                    Metre::from_mm(0.13),
                )
                .get(),
                0.6611,
                half_unit(1e-4),
                "four digits",
            ),
        ],
    );
}

fn wound(layout: Layout, core: f64, layers: &[(&'static str, f64)]) -> Construction {
    let windings: Vec<Winding> = layers
        .iter()
        .map(|(metal, mm)| Winding {
            metal: material::metal_of(metal).expect("a metal of the model"),
            form: Form::Flat,
            thickness: Metre::from_mm(*mm),
            bedding: Ratio::new(0.0),
            gap: Ratio::new(0.0),
        })
        .collect();
    let build = Build::Strand { layout, lay: Degree::new(10.0) };
    let core = Core { material: &SPRING_STEEL, build, diameter: Metre::from_mm(core) };
    Construction::new(core, &windings, "string").expect("in bounds")
}

#[test]
fn ranges_hold_what_was_measured() {
    // Their constructions are not told; ropes of steel under metal of usual gauges, common practice, no source.
    let cello = wound(Layout::OneByNineteen, 0.65, &[("chrome-steel", 0.1), ("tungsten", 0.08)]);
    let bass = wound(Layout::SevenBySeven, 1.25, &[("chrome-steel", 0.2), ("chrome-steel", 0.25)]);
    let of = |string: &Construction, setting: &Setting, property| {
        report::report(string, setting).get(property)
    };
    let (at_cello, at_bass) = (crate::setting(0.69, 98.0), crate::setting(1.06, 41.2));
    for (source, string, setting, property, measured) in [
        ("Mores 2019, 2 * 0.68 m * 543 Hz", &cello, &at_cello, Property::TorsionSpeed, 738.0),
        ("Woodhouse and Loach 1999", &cello, &at_cello, Property::TorsionSpeed, 831.0),
        ("Serafin", &cello, &at_cello, Property::TorsionRatio, 5.2),
        ("Mores 2019", &cello, &at_cello, Property::TorsionRatio, 5.5),
        ("Bavu, Smith and Wolfe 2005", &bass, &at_bass, Property::TorsionRatio, 5.6),
    ] {
        let range = of(string, setting, property);
        let tension = report::values(string, setting, &Draw::CENTRAL).get(Property::Tension);
        assert!(
            range.low <= measured && measured <= range.high,
            "{source}: {property:?} {measured} is not in {range:?} of a string of {tension} N"
        );
    }
}
