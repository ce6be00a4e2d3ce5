//! How the model answers when something is doubled, halved or quadrupled.

use strings::construction::{Build, Construction, Core, Form, Winding};
use strings::draw::Draw;
use strings::material::{GUT, METALS, POLYAMIDE, SPRING_STEEL};
use strings::physics::{
    bowing, climate, load, mass, partials, stiffness, strength, tension, tuning,
};
use strings::pitch::{self, Note};
use strings::quantity::{
    Degree, Hertz, Kilogram, KilogramPerCubicMetre, KilogramPerMetre, Metre, Newton,
    NewtonSquareMetre, Pascal, Ratio, Second,
};
use strings::report::{self, Property};
use support::{Authority, Grade, Row, Seeded, Within, check, row};

use crate::any_string;

const LAW: Authority = Authority { source: "scaling law", grade: Grade::Identity };
const CASES: usize = 500;

fn law(what: &str, found: f64, expected: f64) -> Row {
    row(what, found, expected, Within::Share(1e-12), "a law, but for rounding")
}

#[test]
fn tension_length_and_mass_against_pitch() {
    let mut seeded = Seeded::new(1);
    for _ in 0..CASES {
        let (t, mu, l) = (
            seeded.in_decades(5.0, 500.0),
            seeded.in_decades(1e-4, 0.1),
            seeded.between(0.15, 1.3),
        );
        let f = |t: f64, mu: f64, l: f64| {
            tension::fundamental(Newton::new(t), KilogramPerMetre::new(mu), Metre::new(l))
        };
        let open = f(t, mu, l);
        check(
            &LAW,
            [
                law(
                    "four times the tension is an octave",
                    pitch::cents(open, f(4.0 * t, mu, l)).get(),
                    1200.0,
                ),
                law(
                    "four times the mass is an octave down",
                    pitch::cents(open, f(t, 4.0 * mu, l)).get(),
                    -1200.0,
                ),
                law(
                    "half the length is an octave",
                    pitch::cents(open, f(t, mu, l / 2.0)).get(),
                    1200.0,
                ),
                law(
                    "two thirds of it a pure fifth",
                    pitch::cents(open, f(t, mu, l / 1.5)).get(),
                    701.955_000_865_387_4,
                ),
            ],
        );
        let needed = |l: f64, hz: f64| {
            tension::rigid(KilogramPerMetre::new(mu), Metre::new(l), Hertz::new(hz)).get()
        };
        let hz = open.get();
        check(
            &LAW,
            [
                law("tension goes as the square of length", needed(3.0 * l, hz), 9.0 * t),
                law("and of pitch", needed(l, 1.5 * hz), 2.25 * t),
                law(
                    "a string half as long an octave higher is as tight",
                    needed(l / 2.0, 2.0 * hz),
                    t,
                ),
            ],
        );
        let z =
            |t: f64, mu: f64| tension::impedance(Newton::new(t), KilogramPerMetre::new(mu)).get();
        check(
            &LAW,
            [law("both doubled double the impedance", z(2.0 * t, 2.0 * mu), 2.0 * z(t, mu))],
        );
        let feel = |t: f64, l: f64| tension::lateral_stiffness(Newton::new(t), Metre::new(l)).get();
        check(&LAW, [law("both doubled feel the same", feel(2.0 * t, 2.0 * l), feel(t, l))]);
        let press = |t: f64| load::downforce(Newton::new(t), Degree::new(157.0)).get();
        check(&LAW, [law("twice as tight presses twice as hard", press(2.0 * t), 2.0 * press(t))]);
    }
}

#[test]
fn notes_twelve_apart_are_an_octave() {
    for k in 0..100 {
        let (low, high) =
            (Note(k).frequency(Hertz::new(443.0)), Note(k + 12).frequency(Hertz::new(443.0)));
        check(&LAW, [law("an octave", high.get() / low.get(), 2.0)]);
        assert_eq!(
            Note::parse(&Note(k).name()),
            (k < 108).then_some(Note(k)),
            "{}",
            Note(k).name()
        );
    }
}

#[test]
fn stress_of_a_plain_string_does_not_know_its_thickness() {
    let mut seeded = Seeded::new(2);
    for _ in 0..CASES {
        let setting = any_string::setting(&mut seeded);
        for (material, build) in [
            (&SPRING_STEEL, Build::Solid),
            (&POLYAMIDE, Build::Solid),
            (&GUT, Build::Twisted { twist: Degree::new(30.0) }),
        ] {
            let of = |mm: f64, property| {
                let core = Core { material, build, diameter: Metre::from_mm(mm) };
                report::values(&Construction::of(core, &[]), &setting, &Draw::CENTRAL).get(property)
            };
            let (thin, thick) = (seeded.between(0.1, 2.0), seeded.between(0.1, 6.0));
            check(
                &LAW,
                [
                    law("stress", of(thin, Property::CoreStress), of(thick, Property::CoreStress)),
                    law("stretch", of(thin, Property::Stretch), of(thick, Property::Stretch)),
                    law("cents a pull", of(thin, Property::Pull), of(thick, Property::Pull)),
                    law(
                        "tension by section",
                        of(thin, Property::Tension) / (thin * thin),
                        of(thick, Property::Tension) / (thick * thick),
                    ),
                    law(
                        "bending stiffness by fourth power",
                        of(thin, Property::BendingStiffness) / thin.powi(4),
                        of(thick, Property::BendingStiffness) / thick.powi(4),
                    ),
                ],
            );
        }
    }
}

#[test]
fn a_string_magnified_weighs_as_its_section() {
    let mut seeded = Seeded::new(3);
    let density = KilogramPerCubicMetre::new(9000.0);
    for _ in 0..CASES {
        let (under, t, b) =
            (seeded.between(1e-4, 6e-3), seeded.between(1e-5, 1.5e-3), seeded.between(0.0, 0.5));
        let (twice, gap) = (seeded.between(1.1, 3.0), seeded.between(0.0, 1.0));
        for form in [Form::Round, Form::Flat] {
            let of = |by: f64| {
                let (thickness, bedding, gap) =
                    (Metre::new(by * t), Ratio::new(b), Ratio::new(gap));
                let winding = Winding { metal: &METALS[0], form, thickness, bedding, gap };
                mass::winding(&winding, density, thickness, Metre::new(by * under)).get()
            };
            check(&LAW, [law("mass of a winding", of(twice), twice * twice * of(1.0))]);
        }
        let solid = |by: f64| mass::solid(density, Metre::new(by * under)).get();
        check(&LAW, [law("mass of a core", solid(twice), twice * twice * solid(1.0))]);
        let ea = |by: f64| {
            stiffness::axial(Pascal::new(2e9), mass::circle(Metre::new(by * under))).get()
        };
        check(&LAW, [law("axial stiffness", ea(twice), twice * twice * ea(1.0))]);
    }
}

#[test]
fn inharmonicity_and_brilliance() {
    let mut seeded = Seeded::new(4);
    for _ in 0..CASES {
        let (ei, t, l) = (
            seeded.in_decades(1e-6, 1e-1),
            seeded.in_decades(5.0, 500.0),
            seeded.between(0.15, 1.3),
        );
        let b = |ei: f64, t: f64, l: f64| {
            partials::inharmonicity(NewtonSquareMetre::new(ei), Newton::new(t), Metre::new(l)).get()
        };
        let shine = |lossy: f64| {
            let (t, l, f, limit) =
                (Newton::new(t), Metre::new(l), Hertz::new(200.0), Ratio::new(2e-3));
            partials::brilliance(NewtonSquareMetre::new(lossy), t, l, f, limit).get()
        };
        check(
            &LAW,
            [
                law("twice the bending stiffness", b(2.0 * ei, t, l), 2.0 * b(ei, t, l)),
                law("twice the tension", b(ei, 2.0 * t, l), 0.5 * b(ei, t, l)),
                law("twice the length", b(ei, t, 2.0 * l), 0.25 * b(ei, t, l)),
                law("four times the loss halves the brilliance", shine(4.0 * ei), 0.5 * shine(ei)),
            ],
        );
        // The higher the partial, the sharper; and the first is not sharp of itself.
        let b = Ratio::new(b(ei, t, l));
        assert!(partials::sharpness_of_partial(b, 1).get().abs() < 1e-12);
        for n in 1..20 {
            assert!(
                partials::sharpness_of_partial(b, n + 1) > partials::sharpness_of_partial(b, n),
                "{b} {n}"
            );
        }
    }
}

#[test]
fn attacks_drifts_and_breaking() {
    let mut seeded = Seeded::new(5);
    for _ in 0..CASES {
        let (m, beta) = (seeded.in_decades(1e-4, 0.1), seeded.between(0.02, 0.3));
        let (s, d) = (seeded.between(0.6, 1.2), seeded.between(0.2, 0.5));
        let fast = |m: f64, by: f64| bowing::attack(Kilogram::new(m), beta, by * s, by * d);
        let slow =
            |m: f64, by: f64| bowing::gentlest_attack(Kilogram::new(m), beta, by * s, by * d);
        check(
            &LAW,
            [
                law("twice the mass, highest", fast(2.0 * m, 1.0), 0.5 * fast(m, 1.0)),
                law("twice the mass, lowest", slow(2.0 * m, 1.0), 0.5 * slow(m, 1.0)),
                // The bracket is a difference that keeps some ten digits.
                row(
                    "twice the friction, highest",
                    fast(m, 2.0),
                    2.0 * fast(m, 1.0),
                    Within::Share(1e-10),
                    "a difference",
                ),
                row(
                    "twice the friction, lowest",
                    slow(m, 2.0),
                    2.0 * slow(m, 1.0),
                    Within::Share(1e-10),
                    "a difference",
                ),
            ],
        );
        assert!(
            0.0 < slow(m, 1.0) && slow(m, 1.0) < fast(m, 1.0),
            "{m} kg at {beta}, friction {s} and {d}"
        );

        let (ea, t) = (
            Newton::new(seeded.in_decades(500.0, 5e4)),
            Newton::new(seeded.in_decades(20.0, 400.0)),
        );
        let stiff = Ratio::new(ea.get() / t.get());
        let warmth = |swing: f64| climate::by_warmth(stiff, 7e-6, 3e-4, swing).get();
        let body = |swing: f64| climate::by_body(stiff, Ratio::new(swing)).get();
        let mass = |share: f64| {
            climate::by_water_mass(Ratio::new(share), Ratio::new(0.1), Ratio::new(0.02)).get()
        };
        let swollen = |by: f64| {
            climate::by_swelling(stiff, Ratio::new(by * 1e-4), Ratio::new(by * 1e-2)).get()
        };
        // Twice as thick, four times as long.
        let soaked = |radius: f64, time: f64| {
            climate::soaked(1e-11, Metre::new(radius), Second::new(time)).get()
        };
        let (radius, time) = (seeded.in_decades(1e-5, 1e-3), seeded.in_decades(1.0, 1e7));
        let pull = |whole: f64| tuning::pull(ea, t, Metre::new(whole)).get();
        check(
            &LAW,
            [
                law("twice the swing of temperature", warmth(10.0), 2.0 * warmth(5.0)),
                law("twice the movement of the body", body(2e-4), 2.0 * body(1e-4)),
                law("half the mass in the core", mass(0.5), 0.5 * mass(1.0)),
                law("twice the water", swollen(2.0), 2.0 * swollen(1.0)),
                law("twice as thick", soaked(2.0 * radius, 4.0 * time), soaked(radius, time)),
                law("twice the whole length", pull(0.9), 0.5 * pull(0.45)),
            ],
        );
        let (sigma, rho) = (seeded.in_decades(1e8, 4e9), KilogramPerCubicMetre::new(1400.0));
        let index = |by: f64| strength::breaking_index(Pascal::new(by * sigma), rho);
        check(&LAW, [law("four times the strength is an octave", index(4.0), 2.0 * index(1.0))]);
    }
}
