//! Ten thousand strings from anywhere within the bounds, most of which nobody would make: the model answers them all.

use strings::construction::{Construction, MOST_WINDINGS};
use strings::draw::Draw;
use strings::report::{self, Property};
use strings::setting::Setting;
use support::Seeded;

use crate::any_string;

const CASES: usize = 10_000;

/// Properties that are above zero for every string.
const POSITIVE: [Property; 36] = [
    Property::MassUnstretched,
    Property::MassAtPitch,
    Property::Tension,
    Property::CoreStress,
    Property::BreakingShare,
    Property::BreakingPitch,
    Property::Stretch,
    Property::Pull,
    Property::Peg,
    Property::Feel,
    Property::Impedance,
    Property::AxialStiffness,
    Property::BendingStiffness,
    Property::Inharmonicity,
    Property::OuterDiameter,
    Property::Brilliance,
    Property::Attack,
    Property::LossPerDecade,
    Property::SettlingDays,
    Property::OuterDiameterAtPitch,
    Property::GentlestAttack,
    Property::GreatestForce,
    Property::LeastForce,
    Property::LeastForceMeasured,
    Property::Wolf,
    Property::Loss,
    Property::Ring,
    Property::Speaks,
    Property::Sharpness,
    Property::RingsOn,
    Property::TorsionSpeed,
    Property::TorsionRatio,
    Property::TorsionImpedance,
    Property::Glide,
    Property::OverTheNut,
    Property::Fatigue,
];

fn each(seed: u64, mut test: impl FnMut(usize, &Construction, &Setting)) {
    let mut seeded = Seeded::new(seed);
    for case in 0..CASES {
        let construction = any_string::construction(&mut seeded);
        let setting = any_string::setting(&mut seeded);
        test(case, &construction, &setting);
    }
}

#[test]
fn every_report_is_finite_ordered_and_positive_where_it_must_be() {
    each(31, |case, construction, setting| {
        let report = report::report(construction, setting);
        let told = || format!("case {case}: {construction:?} in {setting:?}");
        for property in Property::ALL {
            let estimate = report.get(*property);
            let (low, value, high) = (estimate.low, estimate.value, estimate.high);
            assert!(
                low.is_finite() && value.is_finite() && high.is_finite(),
                "{property:?} {estimate:?} of {}",
                told()
            );
            // A window in decibels may close and turn negative; see below. So may a change of pitch.
            if !property.is_level() {
                assert!(low <= value && value <= high, "{property:?} {estimate:?} of {}", told());
                assert!(
                    low >= 0.0 || property.is_signed(),
                    "{property:?} {estimate:?} of {}",
                    told()
                );
            }
            assert!(
                value > 0.0 || !POSITIVE.contains(property),
                "{property:?} {estimate:?} of {}",
                told()
            );
        }
        let share = report.get(Property::WindingShare).value;
        assert!(
            (0.0..1.0).contains(&share) && (share > 0.0) == construction.is_wound(),
            "{share} of {}",
            told()
        );
        let (thin, thick) =
            (report.get(Property::MassAtPitch), report.get(Property::MassUnstretched));
        assert!(thin.value < thick.value, "a stretched string is lighter: {}", told());
    });
}

#[test]
fn a_bow_window_lies_within_its_range_even_where_no_force_is_right() {
    each(31, |case, construction, setting| {
        let window = report::report(construction, setting).get(Property::BowWindow);
        assert!(
            window.low <= window.value && window.value <= window.high,
            "case {case}: {window:?}"
        );
    });
}

/// Thickness at pitch lies between nothing and the thickness unstretched.
fn thins(case: usize, construction: &Construction, setting: &Setting) {
    let estimate = report::report(construction, setting).get(Property::OuterDiameterAtPitch);
    let (low, value, high) = (estimate.low, estimate.value, estimate.high);
    let told = || format!("case {case}: {estimate:?} of {construction:?} in {setting:?}");
    assert!(0.0 <= low && low <= value && value <= high && high.is_finite(), "{}", told());
    assert!(0.0 < value && value <= construction.outer_diameter().get(), "{}", told());
}

fn breaking_share(construction: &Construction, setting: &Setting) -> f64 {
    report::values(construction, setting, &Draw::CENTRAL).get(Property::BreakingShare)
}

#[test]
fn a_string_that_holds_thins_a_little() {
    let mut held = 0;
    each(32, |case, construction, setting| {
        if breaking_share(construction, setting) < 1.0 {
            held += 1;
            thins(case, construction, setting);
        }
    });
    assert!(held > CASES / 20, "only {held} strings hold, which shows too little");
}

#[test]
fn a_string_that_breaks_keeps_a_thickness() {
    each(32, thins);
}

#[test]
fn the_same_string_answers_the_same() {
    let mut seeded = Seeded::new(33);
    for _ in 0..200 {
        let (construction, setting) =
            (any_string::construction(&mut seeded), any_string::setting(&mut seeded));
        let (once, again) =
            (report::report(&construction, &setting), report::report(&construction, &setting));
        for property in Property::ALL {
            let (a, b) = (once.get(*property), again.get(*property));
            let bits = |e: report::Estimate| [e.low, e.value, e.high].map(f64::to_bits);
            assert_eq!(bits(a), bits(b), "{property:?}");
        }
    }
}

#[test]
fn the_central_draw_is_the_value_of_the_report() {
    let mut seeded = Seeded::new(34);
    for _ in 0..200 {
        let (construction, setting) =
            (any_string::construction(&mut seeded), any_string::setting(&mut seeded));
        let (report, values) = (
            report::report(&construction, &setting),
            report::values(&construction, &setting, &Draw::CENTRAL),
        );
        for property in Property::ALL {
            assert_eq!(
                report.get(*property).value.to_bits(),
                values.get(*property).to_bits(),
                "{property:?}"
            );
        }
    }
}

#[test]
fn a_winding_more_makes_it_heavier_and_tighter() {
    let mut seeded = Seeded::new(35);
    for _ in 0..2000 {
        let (core, setting) = (any_string::core(&mut seeded), any_string::setting(&mut seeded));
        let mut windings = Vec::new();
        let mut before = (0.0, 0.0, 0.0);
        for _ in 0..=MOST_WINDINGS {
            let values =
                report::values(&Construction::of(core, &windings), &setting, &Draw::CENTRAL);
            let now = (
                values.get(Property::MassUnstretched),
                values.get(Property::Tension),
                values.get(Property::OuterDiameter),
            );
            assert!(
                now.0 > before.0 && now.1 > before.1 && now.2 > before.2,
                "{core:?} {windings:?}: {before:?} to {now:?}"
            );
            before = now;
            windings.push(any_string::winding(&mut seeded));
        }
    }
}
