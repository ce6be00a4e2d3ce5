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
                physics!(settling::days)(decade, limit).get(),
                evening.get(),
                Within::Share(0.12),
                "the logarithm is the middle of a staircase of times; a string gives back what it regains",
            );
            [lost, found]
        }),
    );
}

#[test]
fn a_day_takes_what_a_chain_and_slips_give() {
    let authority = Authority {
        source: "creeping.py, three hundred places that let go one after the other",
        grade: Grade::Independent,
    };
    check(
        &authority,
        list(printed(), "slips").iter().map(|day| {
            // Creep a decade, and what the ends give over three decades.
            let (creep, slack) = (number(day, "creep"), number(day, "slack"));
            let share = Ratio::new(creep + slack / strings::constant::SEATING_DECADES);
            let decade = physics!(settling::loss_per_decade)(share);
            let evening = Day::new(number(day, "day"));
            row(
                format!("creep {creep}, slack {slack}, day {evening}: cents"),
                physics!(settling::lost_in_a_day)(decade, evening).get(),
                number(day, "lost_cent"),
                Within::Share(0.12),
                "the logarithm is the middle of a staircase of times; a string gives back what it regains",
            )
        }),
    );
}

#[test]
fn the_day_and_the_decade_are_each_others_inverse() {
    let authority = Authority {
        source: "creeping.py, the decade that costs so much on the day",
        grade: Grade::Independent,
    };
    check(
        &authority,
        list(printed(), "days").iter().map(|day| {
            let expected = 1_731.234_049 / 2.0 * number(day, "creep");
            let limit = Cent::new(number(day, "lost_cent"));
            row(
                format!("day {}: cents a decade", number(day, "day")),
                physics!(settling::decade_of)(Day::new(number(day, "day")), limit).get(),
                expected,
                Within::Share(0.10),
                "the logarithm is the middle of a staircase of times; a string gives back what it regains",
            )
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
