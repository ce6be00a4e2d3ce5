//! What the advice says of the bow moves as the theory says when only the bridge under it changes, and nothing else moves.

use protocol::reply::{Fit, Reply, Report};
use protocol::request::{FitRequest, ReportRequest, Request};
use strings::fit;
use strings::fit::candidates::{self, Candidate, Made};
use strings::fit::choose::{self, Choice, Outcome};
use strings::fit::desirability::Attribute;
use strings::fit::problem::{Problem, StringProblem};
use strings::fit::score::Judge;
use strings::quantity::KilogramPerSecond;
use strings::report::LeanCore;
use support::Seeded;

use crate::anybody::{anybody, tables};
use crate::random;

/// How many fits have their strings looked at.
fn fits_wanted() -> usize {
    random::people() / 5
}
/// By what the bridge is changed.
const FIRMER: f64 = 1.2;
/// By what it is changed where a choice is to turn.
const MUCH_FIRMER: f64 = 2.5;

fn report(of: &Report, bridge: f64, peak: f64) -> Report {
    let mut setting = of.setting.clone();
    setting.bridge_resistance_kg_s *= bridge;
    setting.peak_resistance_kg_s *= peak;
    let construction = of.construction.clone();
    let request = Request::Report(Box::new(ReportRequest { construction, setting }));
    match protocol::handle(&request) {
        Reply::Report(report) => *report,
        other => panic!("no report but {other:?}"),
    }
}

/// Whether a number rose (1), fell (-1) or stayed (0).
fn moved(key: &str, from: &Report, to: &Report) -> i32 {
    let value = |report: &Report| report.numbers.get(key).map_or(f64::NAN, |q| q.value);
    let (a, b) = (value(from), value(to));
    assert!(a.is_finite() && b.is_finite(), "{key}: {a} {b}");
    if (b - a).abs() <= 1e-12 * a.abs() {
        0
    } else if b > a {
        1
    } else {
        -1
    }
}

#[test]
fn what_is_said_of_the_bow_follows_the_bridge_and_nothing_else_does() {
    // Schelleng 1973: the least force falls as the bridge resists more, the greatest does not hang on it. A string is
    // nearer to a wolf as the strongest note's resistance falls. A firmer bridge takes less, so the string rings longer.
    const BY_BRIDGE: [(&str, i32); 3] =
        [("bow_force_least_n", -1), ("bow_window_db", 1), ("ring_s", 1)];
    const BY_PEAK: [(&str, i32); 1] = [("wolf", -1)];
    /// The most room, dB, that a fitted force may lose where the simulation gains.
    const MOST_LOST: f64 = 0.5;
    // By the simulation a bridge that resists more everywhere leaves more room for the bow and lets the string ring
    // on; how soon it speaks and how sharp it sounds hang on the string alone.
    const BY_BOTH: [(&str, i32); 4] =
        [("bow_room_db", 1), ("rings_on_s", 1), ("speaks_s", 0), ("sharpness_acum", 0)];
    let tables = tables();
    let mut seeded = Seeded::new(1973);
    let (wanted, mut fits, mut strings, mut losing) = (fits_wanted(), 0, 0, 0);
    while fits < wanted {
        let answers = anybody(&mut seeded, &tables);
        let reply = protocol::handle(&Request::Fit(Box::new(FitRequest { answers })));
        let Reply::Fit(fit) = reply else { panic!("no fit") };
        let Fit { set: Some(set), .. } = *fit else { continue };
        fits += 1;
        for string in &set.strings {
            strings += 1;
            let own = report(&string.report, 1.0, 1.0);
            let firm = report(&string.report, FIRMER, 1.0);
            let calm = report(&string.report, 1.0, FIRMER);
            let whole = report(&string.report, FIRMER, FIRMER);
            for (key, sign) in BY_BOTH {
                if key == "bow_room_db" && moved(key, &own, &whole) != sign {
                    let room = |report: &Report| report.numbers[key].value;
                    let lost = room(&own) - room(&whole);
                    assert!(lost <= MOST_LOST, "{key}, whole bridge: {lost} dB less");
                    losing += 1;
                    continue;
                }
                assert_eq!(moved(key, &own, &whole), sign, "{key}, whole bridge");
            }
            let by_formula = |key: &&String| BY_BOTH.iter().all(|(name, _)| name != key);
            for key in own.numbers.keys().filter(by_formula) {
                let expected = |moves: &[(&str, i32)]| {
                    moves.iter().find(|(name, _)| name == key).map_or(0, |(_, sign)| *sign)
                };
                assert_eq!(moved(key, &own, &firm), expected(&BY_BRIDGE), "{key}, bridge");
                assert_eq!(moved(key, &own, &calm), expected(&BY_PEAK), "{key}, strongest note");
            }
        }
    }
    support::tell(&format!(
        "{strings} strings of {fits} fits; {losing} lose room on a firmer bridge"
    ));
    // The slackest and the heaviest lie at the edge of what the forces were fitted to.
    assert!(losing * 100 <= strings, "{losing} of {strings} lose room on a firmer bridge");
}

/// The same question on an instrument whose whole bridge resists more.
fn firmer(problem: &Problem) -> Problem {
    let mut problem = problem.clone();
    for string in &mut problem.strings {
        for resistance in
            [&mut string.setting.bridge_resistance, &mut string.setting.peak_resistance]
        {
            *resistance = KilogramPerSecond::new(resistance.get() * MUCH_FIRMER);
        }
    }
    problem
}

/// The strings of a set, judged in another question.
fn judged_in(problem: &Problem, set: &Choice) -> Vec<Candidate> {
    let judged = |(c, string): (&Candidate, &StringProblem)| {
        let windings: Vec<_> = c.construction.windings().copied().collect();
        let made = Made {
            construction: c.construction,
            family: c.family,
            grade: c.grade,
            bands: c.bands,
            lean: LeanCore::new(&c.construction.core, !windings.is_empty(), &string.setting)
                .wound(&windings),
        };
        candidates::judged(&Judge::new(problem, string), &made)
    };
    set.strings.iter().zip(&problem.strings).map(judged).collect()
}

/// What the choice gains from a firmer bridge goes to the strings that gain most by it.
///
/// If one set is best on the softer bridge and another on the firmer, each is at least as good as the other where it
/// is best; added up, the one of the firmer bridge gains at least as much by it as the other does.
#[test]
fn the_choice_follows_the_bridge() {
    let mut seeded = Seeded::new(1963);
    let (wanted, mut fits, mut changed, mut roomier) = (fits_wanted(), 0, 0, 0);
    while fits < wanted {
        let answers = somebody(&mut seeded);
        let fitting = fit::fit(&answers);
        let firm_problem = firmer(&fitting.problem);
        let fixed = vec![None; fitting.problem.strings.len()];
        let chosen =
            |problem: &Problem| match choose::choose(problem, &fitting.found, &fixed).outcome {
                Outcome::Set { best, .. } if best.proven => Some(best),
                _ => None,
            };
        let (Some(soft), Some(firm)) = (chosen(&fitting.problem), chosen(&firm_problem)) else {
            continue;
        };
        fits += 1;
        let sum = |set: &[Candidate]| set.iter().map(|c| c.score).sum::<f64>();
        let gain =
            |set| sum(&judged_in(&firm_problem, set)) - sum(&judged_in(&fitting.problem, set));
        let (of_soft, of_firm) = (gain(&soft), gain(&firm));
        assert!(of_firm >= of_soft - 1e-9, "{answers:?}: {of_firm} after {of_soft}");
        assert!(of_soft > 0.0, "{answers:?}: no gain by a firmer bridge, but {of_soft}");
        changed += usize::from(
            soft.strings.iter().zip(&firm.strings).any(|(a, b)| a.construction != b.construction),
        );
        let room = |set: &[Candidate]| {
            set.iter().map(|c| c.desirabilities[Attribute::BowRoom as usize]).sum::<f64>()
        };
        roomier += usize::from(room(&firm.strings) > room(&soft.strings));
    }
    support::tell(&format!(
        "on a firmer bridge {roomier} of {fits} sets leave more room for the bow, and {changed} are other sets"
    ));
    assert_eq!(roomier, fits, "a firmer bridge leaves more room");
}

fn somebody(seeded: &mut Seeded) -> fit::answers::Answers {
    let kind = *seeded.one_of(strings::instrument::ALL);
    fit::answers::Answers {
        instrument: Some(kind),
        size: Some(seeded.one_of(kind.sizes)),
        wishes: fit::answers::Wishes {
            colour: seeded.between(-2.0, 2.0),
            brightness: seeded.between(-2.0, 2.0),
            power: seeded.between(-2.0, 2.0),
            feel: seeded.between(-2.0, 2.0),
            response: seeded.between(-2.0, 2.0),
        },
        // So that room weighs enough to turn a choice.
        weights: vec![(Attribute::BowRoom, 1.0)],
        ..Default::default()
    }
}
