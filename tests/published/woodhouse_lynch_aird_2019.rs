//! Woodhouse and Lynch-Aird 2019: stress, impedance and feel of plain strings.

use strings::construction::Build;
use strings::material;
use strings::quantity::{Hertz, KilogramPerCubicMetre, Metre, Newton, Pascal};
use strings::report::Property;
use support::{Authority, Grade, Within, check, physics, row};

const PAPER: Authority = Authority {
    source: "Woodhouse and Lynch-Aird 2019, Acta Acust. u. Acust. 105, 516, as cited in secondary texts; worked out by hand",
    grade: Grade::Identity,
};

#[test]
fn stress_follows_from_density_length_and_pitch_alone() {
    let nylon = physics!(tension::stress_of_plain)(
        KilogramPerCubicMetre::new(1140.0),
        Metre::new(0.65),
        Hertz::new(196.0),
    );
    let steel = physics!(tension::stress_of_plain)(
        KilogramPerCubicMetre::new(7850.0),
        Metre::new(0.328),
        Hertz::new(659.255),
    );
    let share = physics!(strength::share)(steel, Pascal::new(2668e6));
    check(
        &PAPER,
        [
            row(
                "eq. 19, nylon G of a guitar, MPa",
                nylon.get() / 1e6,
                74.012_27,
                Within::Share(1e-4),
                "worked out by hand",
            ),
            row(
                "eq. 19, steel E of a violin, GPa",
                steel.get() / 1e9,
                1.468,
                Within::Amount(5.1e-4),
                "worked out by hand",
            ),
            row(
                "steel E over the least strength of its wire",
                share.get(),
                0.55,
                Within::Amount(0.005),
                "two digits",
            ),
        ],
    );
    // A thicker plain string carries more tension and the same stress.
    let density = KilogramPerCubicMetre::new(1140.0);
    for mm in [0.3, 0.6, 1.2] {
        let d = Metre::from_mm(mm);
        let t = physics!(tension::rigid)(
            physics!(mass::solid)(density, d),
            Metre::new(0.65),
            Hertz::new(196.0),
        );
        let found = physics!(tension::stress)(t, physics!(mass::circle)(d));
        check(
            &PAPER,
            [row(
                format!("{mm} mm"),
                found.get(),
                nylon.get(),
                Within::Share(1e-12),
                "an identity",
            )],
        );
    }
}

#[test]
fn impedance_and_feel_of_a_plain_string() {
    // Eq. 8: Z0 = pi d^2 rho L f/2. Eq. 10: F over deflection 4 T/L.
    let (d, rho, l, f) = (0.76e-3, 1320.0, 0.328, 440.0);
    let mu = physics!(mass::solid)(KilogramPerCubicMetre::new(rho), Metre::new(d));
    let t = physics!(tension::rigid)(mu, Metre::new(l), Hertz::new(f));
    let feel = physics!(tension::lateral_stiffness)(t, Metre::new(l));
    // Pulled aside by a thousandth of its length, either half of the string turns by twice that.
    let turned = (2e-3_f64).atan().sin();
    check(
        &PAPER,
        [
            row(
                "eq. 8, kg/s",
                physics!(tension::impedance)(t, mu).get(),
                std::f64::consts::PI * d * d * rho * l * f / 2.0,
                Within::Share(1e-12),
                "an identity",
            ),
            row(
                "eq. 10, N/m",
                feel.get(),
                2.0 * t.get() * turned / (l * 1e-3),
                Within::Share(1e-5),
                "a small pull",
            ),
        ],
    );
}

#[test]
fn one_number_for_inharmonicity() {
    // Eq. 7: lambda = pi^2 E d^2 n^2/(64 rho L^4 f^2), with n = 1.
    let (d, e, rho, l, f) = (1.03e-3, 7.4e9, 1140.0, 0.65, 196.0);
    let bending = physics!(stiffness::bending_bonded)(
        Pascal::new(e),
        physics!(mass::circle)(Metre::new(d)),
        Metre::new(d),
    );
    let t = physics!(tension::rigid)(
        physics!(mass::solid)(KilogramPerCubicMetre::new(rho), Metre::new(d)),
        Metre::new(l),
        Hertz::new(f),
    );
    let lambda = std::f64::consts::PI.powi(2) * e * d * d / (64.0 * rho * l.powi(4) * f * f);
    let found = physics!(partials::inharmonicity)(bending, t, Metre::new(l)).get();
    check(&PAPER, [row("eq. 7", found, lambda, Within::Share(1e-12), "an identity")]);
}

#[test]
fn modulus_of_nylon_at_its_stress() {
    // Eq. 16: 4.5 GPa and 39 times the stress, so 7.386 GPa at the 74.0 MPa of a guitar's G.
    let setting = crate::setting(0.65, 196.0);
    let found = crate::value(
        (&material::POLYAMIDE, Build::Solid),
        1.03,
        &[],
        &setting,
        Property::BendingStiffness,
    );
    let second_moment = std::f64::consts::PI * 1.03e-3_f64.powi(4) / 64.0;
    let authority = Authority {
        source: "Woodhouse and Lynch-Aird 2019, eq. 16, which the model has taken over",
        grade: Grade::Fitted,
    };
    check(
        &authority,
        [row(
            "eq. 16, nylon G of a guitar, GPa",
            found / second_moment / 1e9,
            7.386,
            Within::Share(0.01),
            "the model counts stress on the unstretched section, 1.6 % wider",
        )],
    );
}

#[test]
fn gut_keeps_one_modulus() {
    let authority = Authority {
        source: "Woodhouse and Lynch-Aird 2019 (6 GPa, 1320 kg/m3 at 20 degrees), as cited in secondary texts",
        grade: Grade::Fitted,
    };
    let twisted =
        Build::Twisted { twist: strings::quantity::Degree::new(material::GUT_TWIST_OF_TABLE) };
    let setting = crate::setting(0.328, 440.0);
    let of = |property| crate::value((&material::GUT, twisted), 0.76, &[], &setting, property);
    let area = std::f64::consts::PI / 4.0 * 0.76e-3 * 0.76e-3;
    check(
        &authority,
        [
            row(
                "EA of 0.76 mm, N",
                of(Property::AxialStiffness),
                6.0e9 * area,
                Within::Share(0.15),
                "scatter between strings",
            ),
            row(
                "EI of 0.76 mm, N m2",
                of(Property::BendingStiffness),
                6.0e9 * area * 0.76e-3 * 0.76e-3 / 16.0,
                Within::Share(0.15),
                "one modulus at all time scales; scatter between strings",
            ),
            row(
                "mass of 0.76 mm, kg/m",
                of(Property::MassUnstretched),
                1320.0 * area,
                Within::Share(0.02),
                "scatter of density",
            ),
        ],
    );
    let stretched =
        physics!(tension::stretch)(Newton::new(50.0), Newton::new(of(Property::AxialStiffness)))
            .get();
    check(
        &authority,
        [row(
            "stretch at 50 N",
            stretched,
            0.0184,
            Within::Amount(5.1e-5),
            "worked out by hand: 50/2722",
        )],
    );
}
