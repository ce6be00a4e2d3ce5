//! Facts that every player and maker knows: common practice, no source. A model that misses one is wrong.

use strings::construction::{Build, Form, Layout, Winding};
use strings::material::{self, CoreMaterial, GUT, POLYAMIDE, SPRING_STEEL};
use strings::quantity::{Degree, Metre, Ratio};
use strings::report::Property;

type Made = (&'static CoreMaterial, Build);

const STEEL_WIRE: Made = (&SPRING_STEEL, Build::Solid);
const PLAIN_GUT: Made = (&GUT, Build::Twisted { twist: Degree::new(25.0) });
const BUNDLE: Made = (
    &POLYAMIDE,
    Build::Multifilament {
        filament: Metre::new(3e-5),
        fill: Ratio::new(0.72),
        twist: Degree::new(10.0),
    },
);
const ROPE: Made =
    (&SPRING_STEEL, Build::Strand { layout: Layout::OneByNineteen, lay: Degree::new(10.0) });

fn ribbon(metal: &str, mm: f64) -> Winding {
    let metal = material::metal_of(metal).unwrap_or_else(|| panic!("the model has no {metal}"));
    Winding {
        metal,
        form: Form::Flat,
        thickness: Metre::from_mm(mm),
        bedding: Ratio::new(0.0),
        gap: Ratio::new(0.0),
    }
}

#[test]
fn a_plain_gut_e_sits_close_under_its_limit_and_steel_far_from_it() {
    // Common practice, no source.
    let setting = crate::setting(0.328, 659.255);
    let of = |made: Made, mm: f64| crate::value(made, mm, &[], &setting, Property::BreakingShare);
    let (gut, steel) = (of(PLAIN_GUT, 0.62), of(STEEL_WIRE, 0.26));
    assert!((0.60..1.0).contains(&gut), "gut works at {gut} of its strength");
    assert!((0.40..0.65).contains(&steel), "steel works at {steel} of its strength");
    // At the pitch of 415 the gut has more room.
    let lower =
        crate::value(PLAIN_GUT, 0.62, &[], &crate::setting(0.328, 621.8), Property::BreakingShare);
    assert!(lower < gut, "{lower}");
}

#[test]
fn strings_of_usual_make_reach_usual_tensions() {
    // Common practice, no source: gauges of violin and cello strings and the tensions they are sold with.
    for (name, made, mm, windings, length, pitch, low, high) in [
        ("violin E, plain steel", STEEL_WIRE, 0.26, vec![], 0.328, 659.255, 68.0, 90.0),
        ("violin A, plain gut", PLAIN_GUT, 0.76, vec![], 0.328, 440.0, 40.0, 60.0),
        (
            "violin D, bundle under aluminium",
            BUNDLE,
            0.55,
            vec![ribbon("aluminium", 0.12)],
            0.328,
            293.665,
            25.0,
            60.0,
        ),
        (
            "violin G, bundle under silver",
            BUNDLE,
            0.52,
            vec![ribbon("silver", 0.115)],
            0.328,
            195.998,
            35.0,
            60.0,
        ),
        (
            "cello C, rope under tungsten",
            ROPE,
            0.80,
            vec![ribbon("tungsten", 0.28)],
            0.692,
            65.406,
            90.0,
            200.0,
        ),
    ] {
        let found =
            crate::value(made, mm, &windings, &crate::setting(length, pitch), Property::Tension);
        assert!((low..=high).contains(&found), "{name}: {found} N");
    }
}

#[test]
fn steel_is_touchy_at_the_peg_and_gut_is_not() {
    // Common practice, no source: this is why steel strings have fine tuners.
    let of =
        |made, mm, pitch| crate::value(made, mm, &[], &crate::setting(0.328, pitch), Property::Peg);
    let (steel, gut) = (of(STEEL_WIRE, 0.26, 659.255), of(PLAIN_GUT, 0.76, 440.0));
    assert!(steel > 2.0 * gut, "{steel} and {gut} cents a degree");
}

#[test]
fn gut_wants_days_and_steel_is_steady_at_once() {
    // Common practice, no source.
    let of = |made, mm, pitch| {
        crate::value(made, mm, &[], &crate::setting(0.328, pitch), Property::SettlingDays)
    };
    let (gut, nylon, steel) =
        (of(PLAIN_GUT, 0.76, 440.0), of(BUNDLE, 0.8, 440.0), of(STEEL_WIRE, 0.26, 659.255));
    assert!(gut > steel && nylon > steel, "gut {gut}, nylon {nylon}, steel {steel} days");
    assert!(
        steel <= 1.0 && gut <= 30.0 && nylon <= 30.0,
        "gut {gut}, nylon {nylon}, steel {steel} days"
    );
}

#[test]
fn plain_gut_is_too_thick_and_stiff_for_a_low_string() {
    // Common practice, no source: this is why low strings are wound. Same pitch, same tension: a violin G.
    let setting = crate::setting(0.328, 195.998);
    let of = |made, mm, windings: &[Winding], property| {
        crate::value(made, mm, windings, &setting, property)
    };
    let silver = [ribbon("silver", 0.085)];
    let plain = of(PLAIN_GUT, 1.65, &[], Property::Tension);
    let wound = of(PLAIN_GUT, 0.75, &silver, Property::Tension);
    assert!((wound / plain - 1.0).abs() < 0.25, "{plain} N plain and {wound} N wound");
    assert!(
        of(PLAIN_GUT, 0.75, &silver, Property::Inharmonicity)
            < 0.2 * of(PLAIN_GUT, 1.65, &[], Property::Inharmonicity)
    );
    assert!(
        of(PLAIN_GUT, 0.75, &silver, Property::Brilliance)
            > of(PLAIN_GUT, 1.65, &[], Property::Brilliance)
    );
    assert!(of(PLAIN_GUT, 0.75, &silver, Property::OuterDiameter) < 1.0e-3);
}
