//! French and others, Savart Journal: new strings give for hours to days. And the logarithmic law by hand.

use strings::quantity::{Cent, Day, Ratio};
use support::{Authority, Grade, Within, check, physics, row};

#[test]
fn the_logarithmic_law_by_hand() {
    let authority = Authority {
        source: "creep by the logarithm of time, at fixed length: cents = 865.617 (E/sigma) eps, worked out by hand",
        grade: Grade::Identity,
    };
    // A creep of 8 % of the stretch a decade loses 69.25 cents a decade; from day 9 to day 10, log10(10/9) of it: 3.169 cents.
    let decade = physics!(settling::loss_per_decade)(Ratio::new(0.08));
    check(
        &authority,
        [
            row(
                "cents a decade",
                decade.get(),
                69.249,
                Within::Amount(1e-3),
                "three decimals written down",
            ),
            row(
                "day at which a day costs 3.1687 cents",
                physics!(settling::days)(decade, Cent::new(3.1687)).get(),
                9.0,
                Within::Share(1e-3),
                "five digits written down",
            ),
        ],
    );
}

#[test]
fn a_day_by_hand() {
    let authority = Authority {
        source: "creep by the logarithm of time, ten cents a decade: from day 9 to 10, 10 log10(10/9), worked out by hand",
        grade: Grade::Identity,
    };
    let lost = |day: f64| physics!(settling::lost_in_a_day)(Cent::new(10.0), Day::new(day)).get();
    check(
        &authority,
        [
            row("day 9, cents", lost(9.0), 0.457_575, Within::Amount(1e-6), "six decimals"),
            // 10 log10(1.1/0.1).
            row(
                "the first day, cents",
                lost(0.0),
                10.413_927,
                Within::Amount(1e-6),
                "six decimals",
            ),
        ],
    );
}

#[test]
fn what_loses_nothing_has_settled() {
    let days = |decade: f64| physics!(settling::days)(Cent::new(decade), Cent::new(5.0)).get();
    assert_eq!(days(0.0).to_bits(), 0);
    // K log10((t + 1)/t) = 5 at a day: K = 5/log10(2) = 16.610 cents a decade.
    let authority = Authority {
        source: "creep by the logarithm of time, five cents from the first day to the second, worked out by hand",
        grade: Grade::Identity,
    };
    let decade = physics!(settling::decade_of)(Day::new(1.0), Cent::new(5.0)).get();
    check(
        &authority,
        [
            row("days of 16.610 cents", days(16.610), 1.0, Within::Share(1e-3), "five digits"),
            row("cents of a day", decade, 16.610, Within::Amount(5e-4), "five digits"),
        ],
    );
}

#[test]
fn nylon_settles_in_days_and_steel_at_once() {
    // The abstract: hours to days.
    let days = |creep: f64| {
        let decade = physics!(settling::loss_per_decade)(Ratio::new(creep));
        physics!(settling::days)(decade, Cent::new(5.0)).get()
    };
    let nylon = days(strings::material::POLYAMIDE.creep.value);
    assert!((0.2..=14.0).contains(&nylon), "{nylon} days");
    // Its wire alone, at four tenths of its strength; friction at its ends is another thing.
    let wire = physics!(settling::steel_relaxation)(Ratio::new(0.4)).get();
    let steel = days(strings::material::SPRING_STEEL.creep.value * wire);
    assert!(steel < 0.01, "{steel} days");
    // The opening pages: stranded strings settle sooner than solid ones.
    assert!(strings::constant::BUNDLE_CREEP.high <= 1.0);
}
