//! Creep by the logarithm of time and evenings of tuning, against a chain of springs and dashpots.

use std::sync::OnceLock;

use serde_json::Value;
use strings::quantity::{Cent, Day, Newton, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

use crate::python::{list, number, output_of};

/// What the program printed; run once for all tests of this file.
fn printed() -> &'static Value {
    static PRINTED: OnceLock<Value> = OnceLock::new();
    PRINTED.get_or_init(|| output_of("creeping"))
}

#[test]
fn a_day_takes_what_a_chain_of_dashpots_gives() {
    let authority = Authority {
        source: "creeping.py, Burgers body of eighty elements stepped through time",
        grade: Grade::Independent,
    };
    check(
        &authority,
        list(printed(), "days").iter().flat_map(|day| {
            let decade = physics!(settling::loss_per_decade)(Ratio::new(number(day, "creep")));
            let evening = Day::new(number(day, "day"));
            let lost = row(
                format!("creep {}, day {}: cents", number(day, "creep"), number(day, "day")),
                physics!(settling::lost_in_a_day)(decade, evening).get(),
                number(day, "lost_cent"),
                Within::Share(0.10),
                "the logarithm is the middle of a staircase of times; a string gives back what it regains",
            );
            let limit = Cent::new(number(day, "lost_cent"));
            let found = row(
                format!("creep {}: the day that costs {limit}", number(day, "creep")),
                physics!(settling::days)(decade, limit, Day::new(0.0)).get(),
                evening.get(),
                Within::Share(0.12),
                "the logarithm is the middle of a staircase of times; a string gives back what it regains",
            );
            [lost, found]
        }),
    );
}

#[test]
fn a_strand_that_grows_once() {
    let authority = Authority {
        source: "creeping.py, Hooke's law at a fixed length",
        grade: Grade::Independent,
    };
    check(
        &authority,
        list(printed(), "once").iter().map(|once| {
            let (ea, t) = (number(once, "axial_n"), number(once, "tension_n"));
            let share = number(once, "share");
            let found = physics!(settling::constructional)(
                Newton::new(ea),
                Newton::new(t),
                Ratio::new(share),
            );
            row(
                format!("{share} of {ea} N at {t} N: cents"),
                found.get(),
                number(once, "lost_cent"),
                // The logarithm of 1 - x against -x, and the stretch against 1.
                Within::Share(0.55 * ea / t * share + 1.1 * t / ea),
                "of first order in the tension lost",
            )
        }),
    );
}
