//! H. Fletcher 1964: partials of a stiff string with pinned ends.

use strings::construction::{Build, Form, Winding};
use strings::material;
use strings::quantity::{Metre, Ratio};
use strings::report::Property;
use support::{Authority, Grade, Within, check, physics, row};

#[test]
fn partials_of_the_pinned_string() {
    let authority = Authority {
        source: "Fletcher 1964, J. Acoust. Soc. Am. 36, 203: f_n = n f_0 sqrt(1 + B n^2), worked out by hand",
        grade: Grade::Identity,
    };
    check(
        &authority,
        [
            (1e-4, 2, 0.2596),
            (1e-4, 5, 2.074_785),
            (1e-4, 10, 8.526_618),
            (1e-4, 20, 33.864),
            (1e-4, 30, 74.510_32),
            (1e-5, 5, 0.207_721_1),
            (1e-5, 10, 0.856_528_4),
            (1e-5, 30, 7.747_049),
            (1e-3, 10, 81.637),
        ]
        .map(|(b, n, cents)| {
            row(
                format!("B = {b}, partial {n}, cents above n f_1"),
                physics!(partials::sharpness_of_partial)(Ratio::new(b), n).get(),
                cents,
                Within::Share(2e-4),
                "four digits written down",
            )
        }),
    );
}

#[test]
fn a_covering_stiffens_somewhat_and_not_as_a_tube_would() {
    // From the abstract: the cover "does stiffen the string somewhat, but not nearly as much as if the coils just touched".
    let copper = material::metal_of("copper").expect("the model has copper");
    let winding = Winding {
        metal: copper,
        form: Form::Round,
        thickness: Metre::from_mm(0.5),
        bedding: Ratio::new(0.0),
        gap: Ratio::new(0.0),
    };
    let setting = crate::setting(1.2, 60.0);
    let of = |windings: &[Winding]| {
        crate::value(
            (&material::SPRING_STEEL, Build::Solid),
            1.0,
            windings,
            &setting,
            Property::BendingStiffness,
        )
    };
    let (bare, covered) = (of(&[]), of(&[winding]));
    let modulus = strings::quantity::Pascal::new(copper.modulus.value);
    let tube =
        physics!(partials::tube_stiffness)(modulus, Metre::from_mm(1.5), Metre::from_mm(0.5)).get();
    assert!(
        bare < covered && covered < bare + 0.5 * tube,
        "{bare} bare, {covered} covered, {tube} as a tube"
    );
}
