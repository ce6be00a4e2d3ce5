//! Pairs of functions that undo each other.

use strings::construction::{Form, Winding};
use strings::material::METALS;
use strings::physics::{mass, tension};
use strings::quantity::{Hertz, KilogramPerCubicMetre, KilogramPerMetre, Metre, Newton, Ratio};
use support::{Authority, Grade, Seeded, Within, check, row};

const INVERSE: Authority = Authority { source: "an inverse", grade: Grade::Identity };
const CASES: usize = 2000;

/// A close winding of that form; what it is made of and how thick it is are told beside it.
fn shape(form: Form, bedding: f64) -> Winding {
    let (thickness, bedding) = (Metre::from_mm(0.1), Ratio::new(bedding));
    Winding { metal: &METALS[0], form, thickness, bedding, gap: Ratio::new(0.0) }
}

#[test]
fn thickness_of_a_winding_from_its_mass() {
    let mut seeded = Seeded::new(21);
    for _ in 0..CASES {
        let density = KilogramPerCubicMetre::new(seeded.between(2600.0, 19_300.0));
        let (under, bedding) = (seeded.between(1e-4, 6e-3), seeded.between(0.0, 0.5));
        for (form, thickest, within) in [(Form::Flat, 5.0, 1e-10), (Form::Round, 0.19, 0.002)] {
            let wanted = seeded.between(0.01, thickest) * under;
            let under = Metre::new(under);
            let weight = mass::winding(&shape(form, bedding), density, Metre::new(wanted), under);
            let found = mass::winding_thickness(density, form, Ratio::new(bedding), under, weight)
                .map_or(f64::NAN, Metre::get);
            let what = format!("{form:?} on {under}, bedding {bedding}: thickness");
            check(
                &INVERSE,
                [row(
                    what,
                    found,
                    wanted,
                    Within::Share(within),
                    "the slope of the turns is left out for round wire",
                )],
            );
        }
    }
}

#[test]
fn no_thickness_gives_no_mass() {
    for wanted in [0.0, -1e-3, f64::NAN] {
        for form in [Form::Round, Form::Flat] {
            for bedding in [0.0, 0.25, 0.5] {
                let density = KilogramPerCubicMetre::new(8900.0);
                let (bedding, under, wanted) =
                    (Ratio::new(bedding), Metre::from_mm(0.5), KilogramPerMetre::new(wanted));
                assert_eq!(
                    mass::winding_thickness(density, form, bedding, under, wanted),
                    None,
                    "{wanted}"
                );
            }
        }
    }
}

#[test]
fn tension_from_mass_and_mass_from_tension() {
    let mut seeded = Seeded::new(22);
    for _ in 0..CASES {
        let (l, f) =
            (Metre::new(seeded.between(0.15, 1.3)), Hertz::new(seeded.between(25.0, 1000.0)));
        let ea = Newton::new(seeded.in_decades(50.0, 1e6));
        let t = Newton::new(seeded.in_decades(1.0, 500.0));
        let mu = tension::mass_for(t, ea, l, f);
        let back = tension::at_pitch(mu, ea, l, f);
        let at_pitch = mass::stretched(mu, tension::stretch(back, ea));
        check(
            &INVERSE,
            [
                row("tension", back.get(), t.get(), Within::Share(1e-12), "rounding"),
                row(
                    "pitch",
                    tension::fundamental(back, at_pitch, l).get(),
                    f.get(),
                    Within::Share(1e-12),
                    "rounding",
                ),
            ],
        );
    }
}
