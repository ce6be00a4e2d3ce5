//! What is left when something is taken away: stiffness, stretch, lay, loss.

use strings::construction::{Form, Layout, Winding};
use strings::material::METALS;
use strings::physics::{climate, load, mass, partials, settling, stiffness, strand, tension};
use strings::quantity::{
    Cent, Day, Degree, Hertz, KilogramPerCubicMetre, KilogramPerMetre, Metre, Newton,
    NewtonSquareMetre, Pascal, Ratio, Second,
};
use support::{Authority, Grade, Row, Seeded, Within, check, row};

const LIMIT: Authority = Authority { source: "limit", grade: Grade::Identity };
const CASES: usize = 500;

/// A close winding of that form; what it is made of and how thick it is are told beside it.
fn shape(form: Form) -> Winding {
    let (thickness, none) = (Metre::from_mm(0.1), Ratio::new(0.0));
    Winding { metal: &METALS[0], form, thickness, bedding: none, gap: none }
}

fn limit(what: &str, found: f64, expected: f64) -> Row {
    row(what, found, expected, Within::Share(1e-12), "a limit, but for rounding")
}

#[test]
fn without_bending_stiffness_partials_are_harmonic() {
    let (t, l) = (Newton::new(60.0), Metre::new(0.328));
    let b = partials::inharmonicity(NewtonSquareMetre::new(0.0), t, l);
    for n in 1..60 {
        assert_eq!(partials::sharpness_of_partial(b, n).get().to_bits(), 0, "partial {n}");
    }
    // And on the way there the rise is proportional to B.
    let of = |b: f64| partials::sharpness_of_partial(Ratio::new(b), 20).get();
    check(
        &LIMIT,
        [row(
            "a tenth of a small B",
            of(1e-10),
            0.1 * of(1e-9),
            Within::Share(1e-6),
            "second order in B n^2",
        )],
    );
}

#[test]
fn an_unyielding_core_is_the_rigid_formula() {
    let mut seeded = Seeded::new(11);
    for _ in 0..CASES {
        let (mu, l, f) =
            (seeded.in_decades(1e-4, 0.1), seeded.between(0.15, 1.3), seeded.between(25.0, 1000.0));
        let (mu, l, f) = (KilogramPerMetre::new(mu), Metre::new(l), Hertz::new(f));
        let rigid = tension::rigid(mu, l, f).get();
        let of = |ea: f64| tension::at_pitch(mu, Newton::new(ea), l, f).get();
        check(
            &LIMIT,
            [
                limit("infinite", of(f64::INFINITY), rigid),
                limit("nearly so", of(1e15 * rigid), rigid),
            ],
        );
        // A string that yields is lighter at pitch, so it needs less; and the softer the less.
        assert!(of(10.0 * rigid) < of(100.0 * rigid) && of(100.0 * rigid) < rigid);
        // To first order it needs less by its stretch.
        check(
            &LIMIT,
            [row(
                "first order",
                of(1e4 * rigid),
                rigid * (1.0 - 1e-4),
                Within::Share(3e-8),
                "second order in the stretch",
            )],
        );
    }
}

#[test]
fn ribbon_split_in_two_layers_is_the_same_ribbon() {
    let mut seeded = Seeded::new(12);
    let density = KilogramPerCubicMetre::new(10_360.0);
    for _ in 0..CASES {
        let (under, t) = (seeded.between(1e-4, 6e-3), seeded.between(2e-5, 1.5e-3));
        let part = seeded.between(0.1, 0.9) * t;
        let of = |t: f64, under: f64| {
            mass::winding(&shape(Form::Flat), density, Metre::new(t), Metre::new(under)).get()
        };
        check(
            &LIMIT,
            [limit("mass", of(part, under) + of(t - part, under + 2.0 * part), of(t, under))],
        );
    }
}

#[test]
fn thin_round_wire_fills_a_quarter_of_pi_of_its_ring() {
    let density = KilogramPerCubicMetre::new(10_490.0);
    let of = |form| {
        mass::winding(&shape(form), density, Metre::from_mm(0.001), Metre::from_mm(1.0)).get()
    };
    let fill = std::f64::consts::FRAC_PI_4;
    check(
        &LIMIT,
        [row(
            "fill",
            of(Form::Round) / of(Form::Flat),
            fill,
            Within::Share(1e-7),
            "the slope of the turns",
        )],
    );
}

#[test]
fn a_strand_without_lay_is_its_wires() {
    let (density, d) = (KilogramPerCubicMetre::new(7850.0), Metre::from_mm(0.45));
    let straight = Degree::new(0.0);
    for layout in Layout::ALL {
        let wires = f64::from(layout.wires().0);
        let wire = Metre::new(d.get() / layout.diameter_in_wires());
        let circle = mass::circle(wire).get();
        check(
            &LIMIT,
            [
                limit(
                    "mass",
                    mass::strand(density, d, layout, straight).get(),
                    wires * mass::solid(density, wire).get(),
                ),
                limit(
                    "area",
                    strand::area(d, layout, straight, Ratio::new(0.29)).get(),
                    wires * circle,
                ),
            ],
        );
        // Laid wires are heavier and softer, and the more so the more they are laid.
        for lay in 1..30 {
            let (less, more) = (Degree::new(f64::from(lay - 1)), Degree::new(f64::from(lay)));
            assert!(
                mass::strand(density, d, layout, more) > mass::strand(density, d, layout, less)
            );
            assert!(
                strand::area(d, layout, more, Ratio::new(0.29))
                    < strand::area(d, layout, less, Ratio::new(0.29))
            );
        }
    }
}

#[test]
fn a_bundle_without_twist_or_gaps_is_solid() {
    let (density, d) = (KilogramPerCubicMetre::new(1140.0), Metre::from_mm(0.6));
    let (full, straight) = (Ratio::new(1.0), Degree::new(0.0));
    check(
        &LIMIT,
        [
            limit("mass", mass::bundle(density, d, full).get(), mass::solid(density, d).get()),
            limit("area", stiffness::bundle_area(d, full, straight).get(), mass::circle(d).get()),
        ],
    );
    let one = stiffness::bending_free(Pascal::new(5e9), full, d, straight, Ratio::new(0.39));
    let solid = stiffness::bending_bonded(Pascal::new(5e9), mass::circle(d), d);
    check(&LIMIT, [limit("one straight filament bends as a rod", one.get(), solid.get())]);
}

#[test]
fn nothing_moves_when_nothing_swings() {
    let (stiff, t) = (Ratio::new(150.0), Newton::new(70.0));
    let (none, some) = (Ratio::new(0.0), Ratio::new(0.2));
    for gone in [
        climate::by_water_mass(some, some, none),
        climate::by_swelling(stiff, none, none),
        climate::by_body(stiff, none),
        climate::by_warmth(stiff, 7e-6, 3e-4, 0.0),
        // A string that grows as its body does, and does not soften, stays.
        climate::by_warmth(stiff, 0.0, 0.0, 10.0),
    ] {
        assert_eq!(gone.get().abs().to_bits(), 0);
    }
    assert_eq!(climate::helix_growth(none, none, Degree::new(30.0)).get().to_bits(), 0);
    assert_eq!(climate::soaked(1e-12, Metre::from_mm(0.5), Second::new(0.0)).get().to_bits(), 0);
    assert_eq!(climate::followed(Second::new(0.0), Second::new(60.0)).get().abs().to_bits(), 0);
    assert_eq!(settling::locked_over_an_edge(some, Degree::new(0.0)).get().to_bits(), 0);
    assert_eq!(settling::given(stiff, Metre::new(0.0), Metre::new(0.4)).get().to_bits(), 0);
    assert_eq!(load::downforce(t, Degree::new(180.0)).get().to_bits(), 0);
    assert_eq!(
        mass::stretched(KilogramPerMetre::new(1e-3), Ratio::new(0.0)),
        KilogramPerMetre::new(1e-3)
    );
    let d = Metre::from_mm(1.0);
    assert_eq!(stiffness::diameter_at_pitch(d, d, Ratio::new(0.0), Ratio::new(0.4)), d);
}

#[test]
fn collagen_takes_up_more_the_damper_it_is() {
    let of = |percent: u32| climate::collagen_water(Ratio::new(f64::from(percent) / 100.0)).get();
    assert_eq!(of(0).to_bits(), 0);
    for percent in 0..95 {
        assert!(of(percent) < of(percent + 1), "{percent} %");
    }
}

#[test]
fn what_soaks_is_soaked_at_last_and_never_goes_back() {
    let of = |x: f64| climate::soaked(1.0, Metre::new(1.0), Second::new(x)).get();
    let mut before = 0.0;
    for step in 1..2000 {
        let now = of(1e-6 * 1.01_f64.powi(step));
        // Where the short form gives way to the series both miss by up to 0.002.
        assert!(now >= before - 2e-3 && now <= 1.0, "step {step}: {before} to {now}");
        before = now;
    }
    assert_eq!(of(1e3).to_bits(), 1.0_f64.to_bits());
    // Early on by the root of time: four times as long, twice as much.
    check(
        &LIMIT,
        [
            row(
                "four times a short time",
                of(4e-8),
                2.0 * of(1e-8),
                Within::Share(1e-3),
                "first order",
            ),
            row(
                "its beginning",
                of(1e-8),
                4e-4 / std::f64::consts::PI.sqrt(),
                Within::Share(1e-3),
                "Crank",
            ),
        ],
    );
}

#[test]
fn a_bundle_without_twist_grows_as_its_fibres_do() {
    let (along, across) = (Ratio::new(3e-3), Ratio::new(5e-3));
    check(
        &LIMIT,
        [
            limit("straight", climate::helix_growth(along, across, Degree::new(0.0)).get(), 3e-3),
            // Fibres that grow alike every way make a bundle that does.
            limit("alike", climate::helix_growth(along, along, Degree::new(40.0)).get(), 3e-3),
        ],
    );
}

#[test]
fn a_modulus_that_does_not_rise_relaxes_as_it_creeps() {
    let of =
        |slope: f64| settling::tangent_over_secant(Pascal::new(5e9), slope, Pascal::new(1e8)).get();
    assert_eq!(of(0.0).to_bits(), 1.0_f64.to_bits());
    // To first order half of what the modulus has risen by; and no step where the formula changes.
    check(
        &LIMIT,
        [
            row("a little", of(1e-3) - 1.0, 1e-5, Within::Share(1e-3), "second order"),
            row("no step", of(5.000_01e-5), of(4.999_99e-5), Within::Share(1e-9), "a limit"),
        ],
    );
}

#[test]
fn more_creep_settles_later_and_more_patience_sooner() {
    let of = |decade: f64, within: f64| settling::days(Cent::new(decade), Cent::new(within)).get();
    for decade in 1..200 {
        let decade = f64::from(decade);
        assert!(
            of(decade + 1.0, 5.0) > of(decade, 5.0) && of(decade, 6.0) < of(decade, 5.0),
            "{decade} cents"
        );
    }
    assert!(of(1e-300, 5.0) >= 0.0 && of(1e300, 5.0).is_finite());
    for decade in 1..200 {
        let decade = f64::from(decade);
        let back = settling::decade_of(Day::new(of(decade, 5.0)), Cent::new(5.0)).get();
        // A tenth of a millionth of a day is lost beside a day.
        assert!(decade < 1.5 || (back / decade - 1.0).abs() < 1e-6, "{decade} and back {back}");
    }
}
