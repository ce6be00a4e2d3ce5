//! What friction holds at nut, bridge and peg, against the balance of forces stepped along the edge and round the peg.

use strings::quantity::{Degree, Metre, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of};

#[test]
fn friction_holds_what_the_pieces_hold() {
    let printed = output_of("capstan");
    let authority = Authority {
        source: "capstan.py, balance of forces stepped along an edge and round a peg",
        grade: Grade::Independent,
    };
    let edges = list(&printed, "edges").iter().map(|edge| {
        let (friction, angle) = (number(edge, "friction"), number(edge, "degrees"));
        let found =
            physics!(settling::locked_over_an_edge)(Ratio::new(friction), Degree::new(angle));
        let what = format!("{friction} over {angle} degrees");
        row(what, found.get(), number(edge, "over_an_edge"), Within::Share(1e-6), "eight digits")
    });
    check(&authority, edges);
    let authority = Authority {
        source: "capstan.py, stretch added up over forty turns",
        grade: Grade::Independent,
    };
    let whole = Metre::new(0.45);
    let turns = list(&printed, "turns").iter().map(|turn| {
        let (friction, peg) = (Ratio::new(number(turn, "friction")), number(turn, "peg_m"));
        let found = physics!(settling::locked_in_the_turns)(friction, Metre::new(peg), whole);
        let expected = number(turn, "in_the_turns_m") / whole.get();
        let what = format!("{friction} round {peg} m");
        row(what, found.get(), expected, Within::Share(1e-6), "seven digits")
    });
    check(&authority, turns);
}
