//! Loss through a bridge that resists, against the complex frequencies of such a string.

use strings::quantity::{Hertz, KilogramPerMetre, KilogramPerSecond, Metre, Newton, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of, word};

#[test]
fn a_bridge_takes_what_its_resistance_lets_it() {
    let printed = output_of("bridge");
    let authority = Authority {
        source: "bridge.py, complex frequencies to 30 digits by mpmath",
        grade: Grade::Independent,
    };
    check(
        &authority,
        list(&printed, "strings").iter().flat_map(|string| {
            let n = u32::try_from(string["n"].as_u64().unwrap_or_default()).unwrap_or_default();
            let (t, mu) = (
                Newton::new(number(string, "tension_n")),
                KilogramPerMetre::new(number(string, "mass_kg_m")),
            );
            let z = physics!(tension::impedance)(t, mu);
            let open =
                physics!(tension::fundamental)(t, mu, Metre::new(number(string, "length_m")));
            let resistance = KilogramPerSecond::new(number(string, "resistance_kg_s"));
            let loss = physics!(damping::bridge)(z, resistance, n);
            let share = number(string, "share");
            let name = word(string, "name");
            let why = "of first order in the string's impedance over the resistance";
            let loss_row = row(
                format!("{name}, partial {n}: loss factor"),
                loss.get(),
                number(string, "loss"),
                Within::Share(0.5 * share * share + 1e-12),
                why,
            );
            let at = Hertz::new(open.get() * f64::from(n));
            let ring_row = row(
                format!("{name}, partial {n}: seconds to fall by 60 dB"),
                physics!(damping::ring)(at, Ratio::new(loss.get())),
                number(string, "ring_s"),
                Within::Share(0.5 * share * share + 1e-12),
                why,
            );
            [loss_row, ring_row]
        }),
    );
}
