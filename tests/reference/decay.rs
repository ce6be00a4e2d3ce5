//! Loss of a partial by its causes, against a string stepped through time.

use strings::quantity::{Metre, Newton, NewtonSquareMetre, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of, word};

#[test]
fn a_partial_decays_by_its_losses() {
    let printed = output_of("decay");
    let authority = Authority {
        source: "decay.py, finite differences through time, loss read off the energy",
        grade: Grade::Independent,
    };
    check(
        &authority,
        list(&printed, "partials").iter().map(|partial| {
            let n = u32::try_from(partial["n"].as_u64().unwrap_or_default()).unwrap_or_default();
            let (t, l) = (
                Newton::new(number(partial, "tension_n")),
                Metre::new(number(partial, "length_m")),
            );
            let ei = number(partial, "bending_n_m2");
            let b = physics!(partials::inharmonicity)(NewtonSquareMetre::new(ei), t, l);
            let lossy = NewtonSquareMetre::new(ei * number(partial, "bend"));
            let bending = physics!(damping::bending)(lossy, t, l, n);
            // In the program the air's loss is that of the whole partial, in the model that of the pull's share of it.
            let air = number(partial, "air") * (1.0 + b.get() * f64::from(n * n));
            let pull = Ratio::new(number(partial, "pull"));
            let found = physics!(damping::of_string)(Ratio::new(air), pull, bending, b, n);
            row(
                format!("{}, partial {n}", word(partial, "name")),
                found.get(),
                number(partial, "loss"),
                Within::Share(0.002),
                "differences on 120 pieces",
            )
        }),
    );
}
