//! What to do with the set: when to fit, how to retune, what to check, what to beware of.

use crate::construction::Family;
use crate::material::Class;
use crate::precedent::{self, Conditions, SetUp};
use crate::report::{self, Property, Report};

use super::admission;
use super::answers::Now;
use super::candidates::Candidate;
use super::problem::{Problem, StringProblem, StringStatus};
use super::today::Today;

words! {
    /// A caution.
    Caution {
        /// A string under tension can snap: eyes.
        Eyes = "eyes",
        /// One string at a time; the bridge leans, the soundpost falls.
        OneAtATime = "one-at-a-time",
        /// Not above the planned pitch.
        NotAbovePitch = "not-above-pitch",
        /// A crack, an open seam, a fallen soundpost: do not tension.
        DoNotTension = "do-not-tension",
        /// An adult fits a child's strings.
        AdultFits = "adult-fits",
        /// Old, light or valuable: a luthier first.
        LuthierFirst = "luthier-first",
        /// Steel where gut was: a luthier first.
        SteelForGut = "steel-for-gut",
        /// Near the top of the usual load.
        LoadNearTop = "load-near-top",
        /// Plain gut near its limit: it will break sometimes.
        GutNearLimit = "gut-near-limit",
        /// Tuned up from its main pitch: a whole tone is 1.26 times the pull.
        TunedUp = "tuned-up",
        /// What stays works nearer to breaking, at the highest tuning, than such strings are worked.
        KeptNearBreaking = "kept-near-breaking",
        /// Tuned far from the note for which such strings are made.
        FarFromUsualNote = "far-from-usual-note",
        /// Will not have settled by the day.
        NotSettledInTime = "not-settled-in-time",
        /// May not have settled by the day.
        MayNotSettleInTime = "may-not-settle-in-time",
        /// The tool advises, a luthier decides.
        LuthierDecides = "luthier-decides",
    }
}

words! {
    /// Something to look at or do at the set-up.
    Check {
        /// Grooves of nut and bridge against the new gauges.
        Grooves = "grooves",
        /// Graphite in the grooves.
        Graphite = "graphite",
        /// A protector under a thin top string at the bridge.
        Protector = "protector",
        /// A fine tuner is needed.
        FineTuner = "fine-tuner",
        /// String height, when the core kind changes.
        Height = "height",
        /// Bridge upright, soundpost in place.
        BridgeAndPost = "bridge-and-post",
        /// Winding clear of the pegbox wall.
        PegboxWall = "pegbox-wall",
        /// Keep the old set.
        KeepOldSet = "keep-old-set",
        /// The longer string of a C extension.
        LongString = "long-string",
    }
}

/// The plan for a set.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// Days before it matters by which to fit: likely, and to be safe.
    pub fit_before_days: (f64, f64),
    /// For each string, days until a night costs no more than five cents: likely, and at the long end.
    pub settled_days: Vec<(f64, f64)>,
    /// What to check.
    pub checks: Vec<Check>,
    /// What to beware of, and for which string (`None` for all).
    pub cautions: Vec<(Caution, Option<usize>)>,
}

/// Share of the usual load above which the load is named.
const NEAR_TOP: f64 = 0.95;
/// Share of its strength above which plain gut's breaking is named.
const GUT_NEAR_LIMIT: f64 = 0.58;
/// Diameter under which a steel top string cuts into the bridge, metres: that of every violin E, plain or wound.
const CUTS_THE_BRIDGE: f64 = 0.40e-3;
/// Cents for a degree of peg above which a fine tuner is needed.
const NEEDS_FINE_TUNER: f64 = 8.0;

/// Rise of tension at the highest tuning from which strings are called tuned up: less than the 1.26 of a whole tone.
const TUNED_UP: f64 = 1.15;

/// The plan for a chosen set and its reports; `today` is what is on the instrument now.
#[must_use]
pub fn plan(
    problem: &Problem,
    strings: &[Candidate],
    reports: &[Report],
    today: &[Option<Today>],
) -> Plan {
    let is_new = |i: usize| problem.strings[i].standing == StringStatus::Open;
    let settling = reports.iter().map(|r| r.get(Property::SettlingDays)).enumerate();
    // What stays has settled.
    let settled_days: Vec<(f64, f64)> =
        settling.map(|(i, e)| if is_new(i) { (e.value, e.high) } else { (0.0, 0.0) }).collect();
    let longest = settled_days
        .iter()
        .fold((0.0_f64, 0.0_f64), |worst, days| (worst.0.max(days.0), worst.1.max(days.1)));
    let mut cautions = vec![
        (Caution::Eyes, None),
        (Caution::OneAtATime, None),
        (Caution::NotAbovePitch, None),
        (Caution::DoNotTension, None),
        (Caution::LuthierDecides, None),
    ];
    let mut checks = vec![
        Check::Grooves,
        Check::Graphite,
        Check::BridgeAndPost,
        Check::PegboxWall,
        Check::KeepOldSet,
    ];
    if problem.for_a_child {
        cautions.push((Caution::AdultFits, None));
    }
    if problem.set_up == SetUp::Light {
        cautions.push((Caution::LuthierFirst, None));
    }
    cautions.extend(load_cautions(problem, strings));
    let is_steel = |c: &Candidate| c.construction.core.material.class == Class::Steel;
    let was_gut = |i: usize| match today.get(i).and_then(Option::as_ref) {
        Some(today) => today.string.construction.core.material.class == Class::Gut,
        None => problem.now == Some(Now::Gut),
    };
    let steel_for_gut = strings.iter().enumerate().any(|(i, c)| {
        is_new(i) && is_steel(c) && (problem.set_up == SetUp::Historical || was_gut(i))
    });
    if steel_for_gut {
        cautions.push((Caution::SteelForGut, None));
    }
    cautions.extend(settling_cautions(problem, reports, longest));
    for (i, ((candidate, report), string)) in
        strings.iter().zip(reports).zip(&problem.strings).enumerate()
    {
        if string.standing != StringStatus::NotJudged {
            each(candidate, report, string, i, &mut cautions, &mut checks);
        }
    }
    if changes_core(today, strings) {
        checks.push(Check::Height);
    }
    if problem.tuning.extension {
        checks.push(Check::LongString);
    }
    if problem.set_up == SetUp::Historical {
        // A historical tailpiece takes none, and gut is tuned with patience.
        checks.retain(|check| *check != Check::FineTuner);
    }
    checks.sort();
    checks.dedup();
    cautions.sort();
    Plan { fit_before_days: longest, settled_days, checks, cautions }
}

/// What to beware of where the set may settle too late.
fn settling_cautions(
    problem: &Problem,
    reports: &[Report],
    longest: (f64, f64),
) -> Vec<(Caution, Option<usize>)> {
    let is_new = |i: &usize| problem.strings[*i].standing == StringStatus::Open;
    let mut found = Vec::new();
    if problem.strings.iter().any(|string| string.settled_by.is_some()) {
        for (i, report) in reports.iter().enumerate().filter(|(i, _)| is_new(i)) {
            let chance = |day| report::chance_settled(report, day);
            if problem.strings[i].settled_by.map(chance).is_some_and(|c| c < admission::SURE_CHANCE)
            {
                found.push((Caution::MayNotSettleInTime, Some(i)));
            }
        }
    } else if let Some(days) = problem.concert_days {
        if longest.0 > days {
            found.push((Caution::NotSettledInTime, None));
        } else if longest.1 > days {
            found.push((Caution::MayNotSettleInTime, None));
        }
    }
    found
}

/// What to beware of where the set pulls hard.
fn load_cautions(problem: &Problem, strings: &[Candidate]) -> Vec<(Caution, Option<usize>)> {
    let mut found = Vec::new();
    let load: f64 = strings.iter().map(|c| c.tension).sum();
    let load = load * problem.highest * problem.highest;
    if problem.highest * problem.highest > TUNED_UP {
        found.push((Caution::TunedUp, None));
    }
    if load > NEAR_TOP * problem.usual_load.1 {
        found.push((Caution::LoadNearTop, None));
    }
    found
}

/// What is to be known of one string of the set.
fn each(
    candidate: &Candidate,
    report: &Report,
    string: &StringProblem,
    i: usize,
    cautions: &mut Vec<(Caution, Option<usize>)>,
    checks: &mut Vec<Check>,
) {
    if candidate.family == Family::PlainGut
        && report.get(Property::BreakingShare).value > GUT_NEAR_LIMIT
    {
        cautions.push((Caution::GutNearLimit, Some(i)));
    }
    let worked = report.get(Property::BreakingShare).value;
    // The working share of the bands is that at the main pitch, for a string that must hold at the highest.
    let unlimited = Conditions { most_tension: None, ..string.conditions };
    let most = precedent::bands(string.position, candidate.family, &unlimited)
        .map_or(f64::INFINITY, |bands| bands.breaking_share);
    if string.standing == StringStatus::Kept && worked > most {
        cautions.push((Caution::KeptNearBreaking, Some(i)));
    }
    let usual = crate::pitch::Note::parse(string.position.note);
    if usual.is_some_and(|note| (note.0 - string.note.0).abs() > 2) {
        cautions.push((Caution::FarFromUsualNote, Some(i)));
    }
    let thin = report.get(Property::OuterDiameter).value < CUTS_THE_BRIDGE;
    if i == 0 && candidate.family.class() == Class::Steel && thin {
        checks.push(Check::Protector);
    }
    if !string.fine_tuner && report.get(Property::Peg).value > NEEDS_FINE_TUNER {
        checks.push(Check::FineTuner);
    }
}

/// Whether a string but the highest gets another kind of core than it has now.
fn changes_core(today: &[Option<Today>], strings: &[Candidate]) -> bool {
    let class = |c: &Candidate| c.construction.core.material.class;
    let now = today.iter().map(|t| t.as_ref().map(|t| class(&t.string)));
    strings.iter().zip(now).skip(1).any(|(c, now)| now.is_some_and(|now| class(c) != now))
}
