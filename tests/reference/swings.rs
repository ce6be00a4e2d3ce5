//! What warmth and damp do to a string left alone, put together from the formulas, against strings stepped through time.

use serde_json::Value;
use strings::quantity::{Degree, Metre, Ratio, Second};
use support::{Authority, Grade, Row, Within, check, physics, row};

use crate::python::{list, number, output_of, word};

/// By warmth, as a report puts it together.
fn by_warmth(swing: &Value) -> f64 {
    let time = Second::new(3600.0 * number(swing, "hours"));
    let warmed = physics!(climate::followed)(time, Second::new(number(swing, "warming_s"))).get();
    let expansion = number(swing, "expansion_k") - warmed * number(swing, "body_growth_k");
    let softening = number(swing, "softening_k");
    physics!(climate::by_warmth)(stiff(swing), expansion, softening, number(swing, "kelvin")).get()
}

/// By damp: by the mass of water, by what it does to the pull, and by the body.
fn by_damp(swing: &Value) -> f64 {
    let time = Second::new(3600.0 * number(swing, "hours"));
    let radius = Metre::new(number(swing, "radius_m"));
    let wet = physics!(climate::soaked)(number(swing, "diffusivity"), radius, time).get();
    let gain = number(swing, "tenths") * number(swing, "water_a_tenth");
    let water = Ratio::new(number(swing, "water"));
    let share = Ratio::new(number(swing, "core_share"));
    let mass = physics!(climate::by_water_mass)(share, water, Ratio::new(gain)).get();
    let of = |which| Ratio::new(number(swing, which) * number(swing, "left") * gain);
    let twist = Degree::new(number(swing, "twist_deg"));
    let growth = physics!(climate::helix_growth)(of("along"), of("across"), twist);
    let pull = physics!(climate::by_swelling)(stiff(swing), growth, of("damp_softening")).get();
    let moved = physics!(climate::followed)(time, Second::new(number(swing, "soaking_s"))).get();
    let apart = moved * number(swing, "body_movement") * number(swing, "tenths");
    let body = physics!(climate::by_body)(stiff(swing), Ratio::new(apart)).get();
    wet * (mass + pull) + body
}

/// The sizes of all parts together, cents.
fn sizes(swing: &Value) -> f64 {
    let (stiff, of) = (stiff(swing).get(), |key| number(swing, key));
    let gain = of("tenths") * of("water_a_tenth");
    let swelling = stiff * (of("along") + of("across")) + of("damp_softening");
    let warmth = stiff * (of("expansion_k").abs() + of("body_growth_k")) + of("softening_k");
    let damp = gain * (of("core_share") + of("left") * swelling)
        + stiff * of("body_movement") * of("tenths");
    1_731.234_049 / 2.0 * (warmth * of("kelvin") + damp)
}

fn stiff(swing: &Value) -> Ratio {
    Ratio::new(number(swing, "axial_n") / number(swing, "tension_n"))
}

#[test]
fn a_string_left_alone_moves_as_the_parts_say() {
    let authority = Authority {
        source: "swings.py, strings stepped through an evening, a week and a season",
        grade: Grade::Independent,
    };
    let printed = output_of("swings");
    // What is left out: the stretch against one, and what warmth and damp do to one another.
    let of = |swing: &Value| -> [Row; 3] {
        let stretch = 1.0 / stiff(swing).get();
        let told = |part: &str| format!("{}, {}: {part}", word(swing, "name"), word(swing, "time"));
        // Parts may cancel, so that what is left out is a share of their sizes.
        let sizes = sizes(swing);
        let within = Within::Amount((1.5 * stretch + 0.004) * sizes);
        let why = "formulas of first order in the stretch and in what moves it";
        [
            row(told("warmth"), by_warmth(swing), number(swing, "warmth"), within, why),
            row(told("damp"), by_damp(swing), number(swing, "damp"), within, why),
            row(told("all"), by_warmth(swing) + by_damp(swing), number(swing, "all"), within, why),
        ]
    };
    check(&authority, list(&printed, "swings").iter().flat_map(of));
}
