//! The lean path of the search gives the numbers of the full report, to the last few bits.

use strings::construction::Construction;
use strings::draw::Draw;
use strings::fit::{self, answers::Answers};
use strings::instrument;
use strings::report::{self, LeanCore, Property};

#[test]
fn the_search_and_the_report_give_the_same_numbers() {
    let mut compared = 0;
    for kind in instrument::ALL {
        let fitting = fit::fit(&Answers { instrument: Some(kind), ..Answers::default() });
        for (string, found) in fitting.problem.strings.iter().zip(&fitting.found) {
            for candidate in found.candidates.iter().step_by(97) {
                let construction = &candidate.construction;
                let windings: Vec<_> = construction.windings().copied().collect();
                // As the search does it: the core is met bare.
                let bare = Construction::of(construction.core, &[]);
                let lean = LeanCore::new(&bare, &string.setting).wound(&windings);
                let full = report::values(construction, &string.setting, &Draw::CENTRAL);
                for (property, value) in [
                    (Property::Tension, lean.tension),
                    (Property::Stretch, lean.stretch),
                    (Property::OuterDiameter, lean.gauge),
                    (Property::WindingShare, lean.winding_share),
                    (Property::BreakingShare, lean.breaking_share),
                    (Property::Impedance, lean.impedance),
                    (Property::Attack, lean.attack),
                    (Property::SettlingDays, lean.settling),
                    (Property::Drift, lean.drift),
                    (Property::Brilliance, lean.brilliance),
                    (Property::Peg, lean.peg),
                ] {
                    let expected = full.get(property);
                    assert!(
                        (value - expected).abs() <= 1e-12 * expected.abs(),
                        "{property:?}: {value} against {expected}"
                    );
                    compared += 1;
                }
            }
        }
    }
    assert!(compared > 5_000, "only {compared} numbers compared");
}
