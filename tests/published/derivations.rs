//! Sensitivities derived by hand from Hooke's law and f = sqrt(T/mu)/2L, for a steel E and a gut A of a violin.

use strings::quantity::{
    Degree, Hertz, KilogramPerCubicMetre, Metre, Newton, NewtonSquareMetre, Pascal, Ratio,
};
use support::{Authority, Grade, Within, check, half_unit, physics, row};

const BY_HAND: Authority = Authority {
    source: "Hooke's law and the formula of Mersenne and Taylor, worked out by hand",
    grade: Grade::Identity,
};
const DIGITS: &str = "as many digits as are written down";
/// Whole length of the string, peg to tailpiece.
const WHOLE: Metre = Metre::new(0.450);

/// Axial stiffness and tension of a violin E of steel: 200 GPa, 0.26 mm, 73 N.
fn steel_e() -> (Newton, Newton) {
    (
        physics!(stiffness::axial)(
            Pascal::new(200e9),
            physics!(mass::circle)(Metre::from_mm(0.26)),
        ),
        Newton::new(73.0),
    )
}

/// Axial stiffness and tension of a violin A of gut: 6 GPa, 0.76 mm, 55 N.
fn gut_a() -> (Newton, Newton) {
    (
        physics!(stiffness::axial)(Pascal::new(6e9), physics!(mass::circle)(Metre::from_mm(0.76))),
        Newton::new(55.0),
    )
}

/// EA/T.
fn stiff((ea, t): (Newton, Newton)) -> Ratio {
    Ratio::new(ea.get() / t.get())
}

#[test]
fn stretch_at_pitch() {
    let (ea, t) = steel_e();
    check(
        &BY_HAND,
        [
            row(
                "steel E",
                physics!(tension::stretch)(t, ea).get(),
                0.006_874_74,
                Within::Share(1e-6),
                DIGITS,
            ),
            row(
                "gut A at 50 N",
                physics!(tension::stretch)(Newton::new(50.0), gut_a().0).get(),
                0.0184,
                half_unit(1e-4),
                DIGITS,
            ),
            row("EA of gut A, N", gut_a().0.get(), 2722.0, half_unit(1.0), DIGITS),
        ],
    );
}

#[test]
fn cents_a_millimetre_over_the_nut() {
    // 865.617 EA/(T W), and 865.617/W more because the string over there is lighter: 279.8 and 95.2, and 1.924.
    let of = |(ea, t): (Newton, Newton)| physics!(tuning::pull)(ea, t, WHOLE).get() * 1e-3;
    check(
        &BY_HAND,
        [
            row("steel E", of(steel_e()), 279.8 + 1.924, half_unit(0.1), DIGITS),
            row("gut A", of(gut_a()), 95.2 + 1.924, half_unit(0.1), DIGITS),
        ],
    );
}

#[test]
fn cents_a_degree_at_the_peg() {
    // From memory: pegs of 6.5 to 7.5 mm wind 20.4 to 23.6 mm a turn; a degree is worth some 16 cents in steel.
    let authority = Authority {
        source: "pegs of 6.5 to 7.5 mm, about 16 cents a degree for steel, from memory",
        grade: Grade::Hearsay,
    };
    let (ea, t) = steel_e();
    let pull = physics!(tuning::pull)(ea, t, WHOLE);
    check(
        &authority,
        [(6.5, 20.4), (7.5, 23.6)].map(|(mm, turn)| {
            let found = physics!(tuning::peg)(pull, Metre::from_mm(mm), Ratio::new(1.0));
            row(
                format!("peg of {mm} mm, cents a degree"),
                found.get(),
                pull.get() * 1e-3 * turn / 360.0,
                Within::Share(0.0025),
                DIGITS,
            )
        }),
    );
    let found = physics!(tuning::peg)(pull, Metre::from_mm(6.5), Ratio::new(1.0)).get();
    check(&authority, [row("steel E, cents a degree", found, 16.0, half_unit(1.0), DIGITS)]);
    let geared = physics!(tuning::peg)(pull, Metre::from_mm(6.5), Ratio::new(4.0)).get();
    check(
        &BY_HAND,
        [row("through a gear of four", geared, found / 4.0, Within::Share(1e-12), "an identity")],
    );
}

#[test]
fn cents_a_kelvin_of_a_steel_e() {
    let by = physics!(climate::by_warmth);
    check(
        &BY_HAND,
        [
            // 865.617 * 145.461 * 11.5e-6.
            row(
                "on a body that does not grow, cents a kelvin",
                by(stiff(steel_e()), 11.5e-6, 0.0, 1.0).get(),
                -1.447_996,
                Within::Share(1e-5),
                DIGITS,
            ),
            // And with 2.5e-4 of its modulus, on wood of 4e-6: 865.617 (145.461 * 7.5e-6 + 2.5e-4) = 1.1607.
            row(
                "on wood, softening, cents a kelvin",
                by(stiff(steel_e()), 7.5e-6, 2.5e-4, 1.0).get(),
                -1.1607,
                half_unit(1e-4),
                DIGITS,
            ),
        ],
    );
    // On wood of 3 to 5e-6/K the same string does less than on a body that does not grow.
    for (body, low, high) in [(3e-6, 1.0, 1.1), (5e-6, 0.8, 0.9)] {
        let found = -by(stiff(steel_e()), 11.5e-6 - body, 0.0, 1.0).get();
        assert!((low..=high).contains(&found), "on a body of {body}/K: {found}");
    }
}

#[test]
fn a_body_that_moves_by_two_in_ten_thousand() {
    // 865.617 (EA/T - 1) 0.0002: 144.46 for steel, 48.49 for gut.
    let of = |string| physics!(climate::by_body)(stiff(string), Ratio::new(2e-4)).get();
    check(
        &BY_HAND,
        [
            row("steel E, cents", of(steel_e()), 25.01, half_unit(0.01), DIGITS),
            row("gut A, cents", of(gut_a()), 8.39, half_unit(0.01), DIGITS),
        ],
    );
    // Anderson and Beausoleil 2024, abstract: the rise of tension significantly exceeds the flattening by length. By length
    // alone the pitch would fall by 1731 * 0.0002 = 0.35 cents.
    assert!(of(gut_a()) > 10.0 * 0.35);
}

#[test]
fn water_swelling_and_an_end_by_hand() {
    // A gut A gains 6 points of water over 18: 865.617 * 0.06/1.18 = 44.014 cents bare, half of that where half is winding.
    let mass = |share: f64| {
        let by = physics!(climate::by_water_mass);
        by(Ratio::new(share), Ratio::new(0.18), Ratio::new(0.06)).get()
    };
    // A free core would be longer by 1e-4 and is softer by a hundredth: 865.617 (49.490 * 1e-4 + 0.01) = 12.940.
    let swollen = physics!(climate::by_swelling);
    let swollen = swollen(stiff(gut_a()), Ratio::new(1e-4), Ratio::new(0.01));
    // Fibres of a bundle at 45 degrees: the mean of tan squared is a half, so 1e-3 (1.5) - 0.5 * 2e-3.
    let grown = physics!(climate::helix_growth);
    let grown = grown(Ratio::new(1e-3), Ratio::new(2e-3), Degree::new(45.0)).get();
    // A knot gives half a millimetre of 0.45 m: 865.617 * 50.490 * 0.0005/0.45 = 48.56 cents.
    let knot = physics!(settling::given)(stiff(gut_a()), Metre::new(5e-4), WHOLE);
    let knot = physics!(settling::loss_per_decade)(knot).get();
    check(
        &BY_HAND,
        [
            row("water in a bare core, cents", mass(1.0), -44.014, half_unit(0.001), DIGITS),
            row("water under windings, cents", mass(0.5), -22.007, half_unit(0.001), DIGITS),
            row("swelling, cents", swollen.get(), -12.940, half_unit(0.001), DIGITS),
            row("growth of a bundle", grown, 5e-4, Within::Share(1e-9), DIGITS),
            row("a knot, cents", knot, 48.56, half_unit(0.01), DIGITS),
        ],
    );
}

#[test]
fn elastic_tension_satisfies_its_equation() {
    // T (1 + T/EA) = 4 L^2 f^2 mu0, put back by hand.
    let (ea, _) = gut_a();
    let mu = physics!(mass::solid)(KilogramPerCubicMetre::new(1320.0), Metre::from_mm(0.76));
    let t = physics!(tension::at_pitch)(mu, ea, Metre::new(0.328), Hertz::new(440.0)).get();
    let right = 4.0 * (0.328_f64 * 440.0).powi(2) * mu.get();
    check(
        &BY_HAND,
        [row(
            "left over right",
            t * (1.0 + t / ea.get()),
            right,
            Within::Share(1e-13),
            "an identity",
        )],
    );
}

#[test]
fn a_breaking_pitch_is_the_pitch_of_the_breaking_force() {
    let mu = physics!(mass::solid)(KilogramPerCubicMetre::new(7850.0), Metre::from_mm(0.25));
    let force = Newton::new(2668e6 * physics!(mass::circle)(Metre::from_mm(0.25)).get());
    let found = physics!(strength::breaking_pitch)(force, mu, Metre::new(0.328)).get();
    check(
        &BY_HAND,
        [row("2668 MPa over 0.328 m, Hz", found, 291.5 / 0.328, Within::Share(2e-4), DIGITS)],
    );
}

#[test]
fn a_thin_tube_is_the_difference_of_two_rods() {
    // E pi ((D + t)^4 - (D - t)^4)/64 = E pi D^3 t/8 (1 + (t/D)^2).
    check(
        &BY_HAND,
        [(1.0, 0.05), (0.8, 0.1), (2.0, 0.4)].map(|(d, t): (f64, f64)| {
            let exact =
                1.2e11 * std::f64::consts::PI / 64.0 * ((d + t).powi(4) - (d - t).powi(4)) * 1e-12;
            let found = physics!(partials::tube_stiffness)(
                Pascal::new(1.2e11),
                Metre::from_mm(d),
                Metre::from_mm(t),
            );
            row(
                format!("{t} mm of wall on {d} mm"),
                found.get(),
                exact,
                Within::Share(1.01 * (t / d).powi(2)),
                "a thin tube",
            )
        }),
    );
}

#[test]
fn angles_are_in_degrees() {
    // Cosines of 60 degrees: a bundle keeps a quarter, gut a quarter over cos^2 of its table's 25 degrees.
    let bundle =
        physics!(stiffness::bundle_area)(Metre::from_mm(1.0), Ratio::new(1.0), Degree::new(60.0))
            .get();
    let gut = physics!(stiffness::gut_twist_factor)(Degree::new(60.0)).get();
    check(
        &BY_HAND,
        [
            row(
                "bundle, mm2",
                bundle * 1e6,
                std::f64::consts::PI / 16.0,
                Within::Share(1e-7),
                DIGITS,
            ),
            row("gut", gut, 0.25 / 0.821_394, Within::Share(1e-5), DIGITS),
        ],
    );
}

#[test]
fn pressing_swinging_and_bending_by_hand() {
    // Pressed 3 mm down in the middle: 865.617 (EA/T) 2 h^2/L/0.45 m; 2 mm of swing on 0.328 m: 649.213 (EA/T)(pi a/2L)^2.
    let (steel, gut) = (steel_e(), gut_a());
    let stopped = |(ea, t): (Newton, Newton)| {
        physics!(stopping::at_the_octave)(ea, t, Metre::from_mm(3.0), Metre::new(0.328), WHOLE)
            .get()
    };
    let swing = Ratio::new(0.002 / 0.328);
    let (modulus, wire) = (Pascal::new(200e9), Metre::from_mm(0.26));
    // Over an edge of 2 mm: 200 GPa * 0.26/4.26 is 12.207 GPa, 4.575 times 2668 MPa.
    let edge =
        physics!(strength::over_the_nut)(modulus, wire, Metre::from_mm(2.0), Pascal::new(2668e6));
    // E pi d^4/64 = 4.4865e-5 N m2; pi a/L sqrt(T/EI) = 0.019156 * 1275.6 = 24.435 a metre; times E d/2: 635.3 MPa.
    let bending = NewtonSquareMetre::new(200e9 * std::f64::consts::PI / 64.0 * 0.26e-3_f64.powi(4));
    let swung = physics!(strength::swing_stress)(modulus, wire, swing, steel.1, bending);
    // Goodman: 0.55 and 635.3/(0.45 * 2668).
    let fatigue =
        physics!(strength::fatigue)(Ratio::new(0.55), swung, Pascal::new(2668e6), Ratio::new(0.45));
    check(
        &BY_HAND,
        [
            row("steel E stopped, cents", stopped(steel), 15.4, half_unit(0.1), DIGITS),
            row("gut A stopped, cents", stopped(gut), 5.2, half_unit(0.1), DIGITS),
            row(
                "steel E swung, cents",
                physics!(stopping::glide)(steel.0, steel.1, swing).get(),
                8.7,
                half_unit(0.1),
                DIGITS,
            ),
            row("steel E over the nut", edge.get(), 4.575, half_unit(0.001), DIGITS),
            row("steel E at the bridge, MPa", swung.get() / 1e6, 635.3, half_unit(0.2), DIGITS),
            row("share of fatigue strength", fatigue.get(), 1.079, half_unit(0.001), DIGITS),
        ],
    );
}

#[test]
fn a_strand_that_gives_a_ten_thousandth() {
    // x = 214.286 * 1e-4 = 0.0214286; -865.617 ln(1 - x) = 865.617 * 0.0216615 = 18.751 cents.
    let found = physics!(settling::constructional)(
        Newton::new(30_000.0),
        Newton::new(140.0),
        Ratio::new(1e-4),
    );
    check(&BY_HAND, [row("cents", found.get(), 18.751, half_unit(0.001), DIGITS)]);
}
