//! What to do with the set: when to fit, how to retune, what to check, what to beware of.

use crate::construction::Family;
use crate::material::Class;
use crate::precedent::SetUp;
use crate::report::{Property, Report};

use super::answers::{Bother, Now};
use super::candidates::Candidate;
use super::problem::{Problem, StringProblem};

macro_rules! notes {
    ($(#[$doc:meta])* $name:ident { $($(#[$vdoc:meta])* $variant:ident = $key:literal,)* }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
        pub enum $name { $($(#[$vdoc])* $variant,)* }

        impl $name {
            /// Every one, in the order of showing.
            pub const ALL: &[Self] = &[$(Self::$variant),*];

            /// The key by which replies name it.
            #[must_use]
            pub const fn key(self) -> &'static str {
                match self { $(Self::$variant => $key),* }
            }
        }
    };
}

notes! {
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

notes! {
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

notes! {
    /// What to look at before buying.
    FirstLook {
        /// The strings are old: a fresh set of the same kind may be the answer.
        OldStrings = "old-strings",
        /// A wolf is the instrument's: a luthier.
        WolfLuthier = "wolf-luthier",
        /// Breaking at one place is a groove or an edge.
        BreakingPlace = "breaking-place",
        /// A false string is worn or faulty: replace that one.
        FalseString = "false-string",
        /// Out of tune: pegs, grooves, tailgut.
        PegsAndGrooves = "pegs-and-grooves",
        /// Slow or whistling: bow hair and rosin.
        BowAndRosin = "bow-and-rosin",
        /// Uneven: soundpost and bridge.
        PostAndBridge = "post-and-bridge",
        /// Hard on the hand: string height.
        StringHeight = "string-height",
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
    /// What to look at before buying.
    pub first_looks: Vec<FirstLook>,
}

/// Months after which a set is old, by what it is: common practice.
#[must_use]
pub const fn life_months(now: Option<Now>) -> f64 {
    match now {
        Some(Now::Gut) => 6.0,
        Some(Now::Synthetic) | None => 12.0,
        Some(Now::Steel) => 18.0,
    }
}

/// Share of the usual load above which the load is named.
const NEAR_TOP: f64 = 0.95;
/// Share of its strength above which plain gut's breaking is named.
const GUT_NEAR_LIMIT: f64 = 0.58;
/// Cents for a degree of peg above which a fine tuner is needed.
const NEEDS_FINE_TUNER: f64 = 8.0;

/// What to look at before any set is bought.
#[must_use]
pub fn first_looks(problem: &Problem) -> Vec<FirstLook> {
    let mut looks = Vec::new();
    if problem.age_months.is_some_and(|age| age > life_months(problem.now)) {
        looks.push(FirstLook::OldStrings);
    }
    for bother in &problem.bothers {
        let look = match bother {
            Bother::Wolf => FirstLook::WolfLuthier,
            Bother::Breaks | Bother::BreaksAtThePeg => FirstLook::BreakingPlace,
            Bother::False => FirstLook::FalseString,
            Bother::OutOfTune | Bother::GoesFlat => FirstLook::PegsAndGrooves,
            Bother::SlowToSpeak | Bother::Whistles | Bother::Chokes => FirstLook::BowAndRosin,
            Bother::Uneven => FirstLook::PostAndBridge,
            Bother::HardOnTheHand => FirstLook::StringHeight,
            Bother::TooBright | Bother::Thin | Bother::TooDull | Bother::TooQuiet => continue,
        };
        if !looks.contains(&look) {
            looks.push(look);
        }
    }
    looks.sort();
    looks
}

/// The plan for a chosen set and its reports.
#[must_use]
pub fn plan(problem: &Problem, strings: &[Candidate], reports: &[Report]) -> Plan {
    let settled_days: Vec<(f64, f64)> =
        reports.iter().map(|r| r.get(Property::SettlingDays)).map(|e| (e.value, e.high)).collect();
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
    let load: f64 = strings.iter().map(|c| c.tension).sum();
    if load > NEAR_TOP * problem.usual_load.1 {
        cautions.push((Caution::LoadNearTop, None));
    }
    let steel = strings.iter().any(|c| c.construction.core.material.class == Class::Steel);
    if steel && (problem.set_up == SetUp::Historical || problem.now == Some(Now::Gut)) {
        cautions.push((Caution::SteelForGut, None));
    }
    if let Some(days) = problem.concert_days {
        if longest.0 > days {
            cautions.push((Caution::NotSettledInTime, None));
        } else if longest.1 > days {
            cautions.push((Caution::MayNotSettleInTime, None));
        }
    }
    for (i, ((candidate, report), string)) in
        strings.iter().zip(reports).zip(&problem.strings).enumerate()
    {
        each(candidate, report, string, i, &mut cautions, &mut checks);
    }
    if changes_core(problem, strings) {
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
    Plan {
        fit_before_days: longest,
        settled_days,
        checks,
        cautions,
        first_looks: first_looks(problem),
    }
}

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
    let usual = crate::pitch::Note::parse(string.position.note);
    if usual.is_some_and(|note| (note.0 - string.note.0).abs() > 2) {
        cautions.push((Caution::FarFromUsualNote, Some(i)));
    }
    if i == 0 && candidate.family == Family::PlainSteel {
        checks.push(Check::Protector);
    }
    if !string.fine_tuner && report.get(Property::Peg).value > NEEDS_FINE_TUNER {
        checks.push(Check::FineTuner);
    }
}

/// Whether most strings get another kind of core than they have now.
fn changes_core(problem: &Problem, strings: &[Candidate]) -> bool {
    let Some(now) = problem.now else { return false };
    let class = match now {
        Now::Gut => Class::Gut,
        Now::Synthetic => Class::Polymer,
        Now::Steel => Class::Steel,
    };
    strings.iter().skip(1).any(|c| c.construction.core.material.class != class)
}
