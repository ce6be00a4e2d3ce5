//! Pressing a string down and swinging it wide, against geometry and quadrature.

use strings::quantity::{Metre, Newton, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of, word};

#[test]
fn pressed_at_the_octave_and_swung_wide() {
    let printed = output_of("playing");
    let authority = Authority {
        source: "playing.py, geometry of the pressed string and quadrature of its swing",
        grade: Grade::Independent,
    };
    check(
        &authority,
        list(&printed, "strings").iter().flat_map(|string| {
            let name = word(string, "name");
            let (ea, t) =
                (Newton::new(number(string, "axial_n")), Newton::new(number(string, "tension_n")));
            let stopped = physics!(stopping::at_the_octave)(
                ea,
                t,
                Metre::new(number(string, "height_m")),
                Metre::new(number(string, "sounding_m")),
                Metre::new(number(string, "whole_m")),
            );
            let stopped = row(
                format!("{name}: stopped at the octave, cents by tension"),
                stopped.get(),
                number(string, "tension_cent"),
                // 1 + stretch, and the logarithm of a rise of up to 3 %.
                Within::Share(t.get() / ea.get() + 0.016),
                "the formula leaves out the stretch against 1 and is of first order in the rise",
            );
            let swing = physics!(stopping::glide)(ea, t, Ratio::new(number(string, "amplitude")));
            let swing = row(
                format!("{name}: swung wide, cents"),
                swing.get(),
                number(string, "glide_cent"),
                // The next term of the period of Duffing's oscillator, 13/16 of k.
                Within::Share(1.05 * 13.0 / 16.0 * number(string, "k")),
                "the formula is of first order in the added tension",
            );
            [stopped, swing]
        }),
    );
}

#[test]
fn what_the_stopping_formula_leaves_out_is_small_in_a_stiff_string() {
    // That the string over there is lighter and the slanted half longer: a per cent of a steel's rise, 8 % of a soft bundle's.
    let printed = output_of("playing");
    for string in list(&printed, "strings") {
        let (by_tension, whole) = (number(string, "tension_cent"), number(string, "whole_cent"));
        assert!(whole < by_tension && whole > 0.91 * by_tension, "{string}");
    }
}
