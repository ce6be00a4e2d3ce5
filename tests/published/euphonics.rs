//! Woodhouse, Euphonics: bending loss (7.2.2) and the force of the bowed string on the bridge (9.3.1).

use strings::quantity::{
    Hertz, KilogramPerCubicMetre, KilogramPerMetre, Metre, Newton, NewtonSquareMetre, Pascal, Ratio,
};
use support::{Authority, Grade, Within, check, half_unit, physics, row};

#[test]
fn bending_loss_from_material_and_frequency_length_product() {
    let authority = Authority {
        source: "Woodhouse, Euphonics 7.2.2 eq. 1, second form: (n d/L)^2 pi^2 E eta/(64 rho (L f)^2)",
        grade: Grade::Identity,
    };
    // Gut, nylon and steel of a guitar's or violin's measures; E in GPa.
    check(
        &authority,
        [
            ("gut", 0.8, 0.328, 440.0, 6.0, 1320.0, 0.025),
            ("nylon", 1.03, 0.65, 196.0, 7.4, 1140.0, 0.020),
            ("steel", 0.26, 0.328, 659.26, 200.0, 7850.0, 3e-4),
        ]
        .map(|(name, mm, l, f, gpa, rho, eta)| {
            let (d, length, pitch) = (Metre::from_mm(mm), Metre::new(l), Hertz::new(f));
            let bending = physics!(stiffness::bending_bonded)(
                Pascal::new(gpa * 1e9),
                physics!(mass::circle)(d),
                d,
            );
            let t = physics!(tension::rigid)(
                physics!(mass::solid)(KilogramPerCubicMetre::new(rho), d),
                length,
                pitch,
            );
            let limit = 2e-3;
            let found = physics!(partials::brilliance)(
                NewtonSquareMetre::new(bending.get() * eta),
                t,
                length,
                pitch,
                Ratio::new(limit),
            );
            let n = found.get() / f;
            let loss = (n * d.get() / l).powi(2) * std::f64::consts::PI.powi(2) * gpa * 1e9 * eta
                / (64.0 * rho * (l * f).powi(2));
            row(
                format!("{name}: loss at the limit"),
                loss,
                limit,
                Within::Share(1e-12),
                "an identity",
            )
        }),
    );
}

#[test]
fn the_jump_of_the_bridge_force() {
    let authority = Authority {
        source: "Helmholtz motion, Euphonics 9.3.1: the bridge force jumps by 2 Z0 v/beta",
        grade: Grade::Identity,
    };
    // A violin G of 0.35 kg/s, the bow at 0.1 m/s and a tenth of the string.
    let z = physics!(tension::impedance)(Newton::new(43.9), KilogramPerMetre::new(2.79e-3)).get();
    check(
        &authority,
        [row("jump, N", 2.0 * z * 0.1 / 0.1, 0.700, half_unit(0.001), "three digits printed")],
    );
}
