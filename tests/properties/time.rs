//! What time and the room do, as laws that hold for any string: no swing no drift, longer is further, wire takes no water.

use strings::constant::{BODY_MOVEMENT, BODY_MOVEMENT_SWING, BODY_SOAKING, Which};
use strings::construction::{Construction, Winding};
use strings::draw::Draw;
use strings::material::Class;
use strings::physics::climate;
use strings::quantity::{Metre, Ratio, Second};
use strings::report::{self, Property, Values};
use strings::setting::{Setting, Swing, Untuned};
use support::Seeded;

use crate::any_string;

const CASES: usize = 3000;

/// Warmth, damp and both, by how long the string goes untuned.
const PARTS: [[Property; 3]; Untuned::COUNT] = [
    [Property::EveningWarmth, Property::EveningDamp, Property::Evening],
    [Property::WeekWarmth, Property::WeekDamp, Property::Week],
    [Property::SeasonWarmth, Property::SeasonDamp, Property::Season],
];

fn central(construction: &Construction, setting: &Setting) -> Values {
    report::values(construction, setting, &Draw::CENTRAL)
}

fn each(seed: u64, mut test: impl FnMut(&mut Seeded, Construction, Setting)) {
    let mut seeded = Seeded::new(seed);
    for _ in 0..CASES {
        let construction = any_string::construction(&mut seeded);
        let setting = any_string::setting(&mut seeded);
        test(&mut seeded, construction, setting);
    }
}

/// As much more as rounding may make of numbers of these sizes.
fn hair(of: &[f64]) -> f64 {
    1e-9 * of.iter().map(|x| x.abs()).sum::<f64>()
}

/// By how much the damp of the body moves a string, by the two constants and its stretch.
fn by_body(values: &Values, setting: &Setting, untuned: Untuned) -> f64 {
    let swings = setting.swing(untuned).humidity.get() / BODY_MOVEMENT_SWING;
    let share = climate::followed(untuned.time(), Second::new(BODY_SOAKING.value)).get();
    let stiff = values.get(Property::AxialStiffness) / values.get(Property::Tension);
    climate::by_body(Ratio::new(stiff), Ratio::new(share * BODY_MOVEMENT.value * swings)).get()
}

#[test]
fn without_a_swing_nothing_drifts() {
    each(61, |_, construction, mut setting| {
        for swing in &mut setting.swings {
            *swing = Swing { temperature: 0.0, humidity: Ratio::new(0.0) };
        }
        let report = report::report(&construction, &setting);
        for property in Property::ALL.iter().filter(|p| p.is_drift()) {
            let found = report.get(*property);
            for end in [found.low, found.value, found.high] {
                assert!(end == 0.0, "{property:?}: {found:?} of {construction:?} in {setting:?}");
            }
        }
        assert!(report.get(Property::Ratchet).high == 0.0);
        for month in report::year(&construction, &setting) {
            assert!(month.drift.low == 0.0 && month.drift.high == 0.0, "{month:?}");
        }
    });
}

#[test]
fn all_of_it_is_no_more_than_the_sizes_of_its_parts() {
    each(62, |_, construction, setting| {
        let values = central(&construction, &setting);
        let size = |property| values.get(property).abs();
        for [warmth, damp, all] in PARTS {
            let most = size(warmth) + size(damp);
            assert!(size(all) <= most + hair(&[most]), "{all:?}: {} over {most}", size(all));
        }
        let most = size(Property::SeasonMoisture) + size(Property::SeasonBody);
        assert!(size(Property::SeasonDamp) <= most + hair(&[most]));
        // And what is told of the body is what its constants make of it.
        let body = by_body(&values, &setting, Untuned::Season);
        assert!((values.get(Property::SeasonBody) - body).abs() <= hair(&[body]));
    });
}

#[test]
fn at_the_same_swing_longer_reaches_more_of_each_end_state() {
    each(63, |_, construction, mut setting| {
        setting.swings = [setting.swings[2]; Untuned::COUNT];
        let values = central(&construction, &setting);
        let told = || format!("{construction:?} in {setting:?}");
        let bodies = Untuned::ALL.map(|untuned| by_body(&values, &setting, untuned));
        for (i, j) in [(0, 1), (1, 2)] {
            let damp = [PARTS[i][1], PARTS[j][1]].map(|property| values.get(property));
            // The body, and what is left of damp: the water in the core. Each goes one way, and no less far.
            assert!(bodies[i].abs() <= bodies[j].abs() + hair(&bodies), "{bodies:?} of {}", told());
            let water = [damp[0] - bodies[i], damp[1] - bodies[j]];
            let slack = hair(&[damp[0], damp[1], bodies[i], bodies[j]]);
            // Where the short form of soaking gives way to the series both miss by up to 0.002.
            let slack = slack + 0.002 * water[1].abs();
            assert!(
                water[0].abs() <= water[1].abs() + slack && water[0] * water[1] >= -slack * slack,
                "water moves it {water:?} cents: {}",
                told()
            );
            // The wire is warm at once; what comes later is the body, which grows and makes the pitch rise.
            let warmth = [PARTS[i][0], PARTS[j][0]].map(|property| values.get(property));
            let slack = hair(&warmth);
            assert!(warmth[0] <= warmth[1] + slack, "warmth moves it {warmth:?}: {}", told());
        }
    });
}

#[test]
fn more_winding_leaves_less_to_the_water_in_the_core() {
    let mut wound = 0;
    each(64, |seeded, construction, setting| {
        let core = construction.core;
        if core.material.class != Class::Gut {
            return;
        }
        // Of gut the pull gives back the same whatever is wound on it, so that what differs is the share of the mass.
        let thin = any_string::winding(seeded);
        let thick = Winding { thickness: Metre::new(1.3 * thin.thickness.get()), ..thin };
        let of = |winding| {
            let values = central(&Construction::of(core, &[winding]), &setting);
            (values.get(Property::WindingShare), values.get(Property::SeasonMoisture))
        };
        let (less, more) = (of(thin), of(thick));
        assert!(more.0 > less.0);
        // Water makes it heavy and flat: under more winding it is less flat.
        assert!(more.1 >= less.1, "{less:?} and {more:?}: {core:?} under {thin:?} in {setting:?}");
        wound += 1;
    });
    assert!(wound > CASES / 20, "only {wound} strings of gut");
    // At a given pull the effect of the mass goes with the core's share of it, whatever the core.
    let of = |share: f64| {
        climate::by_water_mass(Ratio::new(share), Ratio::new(0.03), Ratio::new(0.01)).get()
    };
    assert!(of(0.2).abs() < of(0.6).abs() && of(0.6).abs() < of(1.0).abs());
}

#[test]
fn what_works_nearer_its_strength_settles_later() {
    let mut strictly = 0;
    each(65, |_, construction, setting| {
        let key = construction.core.material.key;
        // Pulls, stretches and masses are alike; only what it would bear is less.
        let of = |t: f64| {
            report::values(&construction, &setting, &Draw::shifted(key, Which::Strength, t))
        };
        let (weak, strong) = (of(-1.0), of(1.0));
        assert!(weak.get(Property::BreakingShare) > strong.get(Property::BreakingShare));
        let alike = [Property::Tension, Property::Stretch, Property::CoreStress];
        assert!(alike.iter().all(|p| weak.get(*p).to_bits() == strong.get(*p).to_bits()));
        for property in [Property::LossPerDecade, Property::SettlingDays] {
            let (later, sooner) = (weak.get(property), strong.get(property));
            assert!(later >= sooner, "{property:?}: {later} and {sooner} of {construction:?}");
        }
        strictly +=
            usize::from(weak.get(Property::LossPerDecade) > strong.get(Property::LossPerDecade));
    });
    assert!(strictly > CASES / 2, "only {strictly} strings settle later");
}

#[test]
fn july_lies_as_far_above_january_as_the_seasons_move_it() {
    each(66, |_, construction, setting| {
        let season = central(&construction, &setting).get(Property::Season);
        let year = report::year(&construction, &setting);
        let found = year[6].drift.value - year[0].drift.value;
        assert!((found - season).abs() <= hair(&[season]), "{found} and {season}");
        // Half of it each way, and nothing half-way.
        assert!((year[6].drift.value - season / 2.0).abs() <= hair(&[season]));
        assert!(year[3].drift.value.abs() <= hair(&[season]));
    });
}

#[test]
fn a_wire_takes_no_water() {
    let mut wires = 0;
    each(67, |_, construction, setting| {
        if construction.core.material.class != Class::Steel {
            return;
        }
        wires += 1;
        let report = report::report(&construction, &setting);
        let water = report.get(Property::SeasonMoisture);
        assert!([water.low, water.value, water.high].iter().all(|x| *x == 0.0), "{water:?}");
        assert_eq!(report.get(Property::SeasonDamp), report.get(Property::SeasonBody));
        assert!(report.get(Property::Ratchet).high == 0.0);
        // Its damp is the body's alone, in any time.
        let values = central(&construction, &setting);
        for untuned in Untuned::ALL {
            let (found, body) =
                (values.get(PARTS[untuned as usize][1]), by_body(&values, &setting, untuned));
            assert!((found - body).abs() <= hair(&[body]), "{found} and {body}");
        }
    });
    assert!(wires > CASES / 10, "only {wires} wires");
}

#[test]
fn how_long_it_goes_untuned_changes_no_number_of_a_report() {
    each(68, |_, construction, mut setting| {
        let [one, two, three] = Untuned::ALL.map(|untuned| {
            setting.untuned = untuned;
            central(&construction, &setting)
        });
        assert!(one == two && two == three);
    });
}

#[test]
fn every_day_costs_less_than_the_one_before_and_is_likelier_to_cost_little() {
    each(69, |_, construction, setting| {
        let nights = report::nights(&report::report(&construction, &setting), 14);
        assert_eq!(nights.len(), 14);
        for night in &nights {
            let ends = [night.lost.low, night.lost.value, night.lost.high];
            assert!(ends.iter().all(|x| x.is_finite()) && ends.is_sorted(), "{night:?}");
            assert!((0.0..=1.0).contains(&night.chance), "{night:?}");
        }
        for two in nights.windows(2) {
            assert!(two[1].lost.value < two[0].lost.value && two[1].chance >= two[0].chance);
        }
    });
}
