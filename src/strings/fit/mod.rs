//! The choice of a set: questions → problem → candidates → set → reasons.
//!
//! Data goes one way. [`answers`] is what a person said; [`problem`] is what that means in numbers, with every
//! assumption written down; [`candidates`] are the makeable strings of each position; [`desirability`] says how
//! well one meets the wishes; [`choose`] finds the best set among them; [`compare`] and [`reasons`] say why it and
//! not another; [`plan`] says what to do with it; [`certainty`] says how sure it is and [`turning`] what would turn it,
//! both of the [`finalists`]. Beside that stands what is on the instrument now ([`today`]), why
//! it bothers ([`complaint`]), and the answer that is often less than a set ([`verdict`]).

pub mod admission;
pub mod answers;
pub mod branches;
pub mod candidates;
pub mod certainty;
pub mod choose;
pub mod compare;
pub mod complaint;
pub mod defaults;
pub mod desirability;
pub mod finalists;
pub mod flaw;
pub mod kinds;
pub mod neighbours;
mod partners;
pub mod plan;
pub mod possible;
pub mod problem;
pub mod reasons;
pub mod scenarios;
pub mod score;
pub mod search;
pub mod shopping;
pub mod space;
pub mod summary;
pub mod today;
pub mod turning;
mod usual;
pub mod verdict;
pub mod work;

use crate::construction::CoreType;

use answers::{Aim, Answers};
use candidates::{Candidate, Found, Made};
use choose::{Choice, Chosen, Offer, Outcome, RuledOut};
use complaint::Diagnosis;
use problem::{Problem, StringStatus};
use search::{Best, Counts};
use today::Today;
use verdict::Verdict;
use work::Work;

/// Everything a fitting found.
#[derive(Clone, Debug, PartialEq)]
pub struct Fitting {
    /// What the answers were taken to mean.
    pub problem: Problem,
    /// What is made for each position: a sample.
    pub found: Vec<Found>,
    /// The best few of each family, string by string, the best first.
    pub told: Vec<Vec<Candidate>>,
    /// How much was looked at, string by string.
    pub counts: Vec<Counts>,
    /// The set, or why there is none.
    pub outcome: Outcome,
    /// The kinds of set of which nothing is possible here.
    pub ruled_out: Vec<RuledOut>,
    /// What is on the instrument now.
    pub today: Vec<Option<Today>>,
    /// Why it bothers.
    pub findings: Vec<Diagnosis>,
    /// What to do.
    pub verdict: Verdict,
    /// How many steps of work the search and the choice took.
    pub work: u64,
}

/// Finds a set for what a person said.
#[must_use]
pub fn fit(answers: &Answers) -> Fitting {
    let posed = Posed::new(answers);
    let offers = posed.offers();
    let searched = offers.iter().map(Offer::first_look).collect();
    let chosen = posed.choose(&offers, searched);
    drop(offers);
    posed.settle(chosen)
}

/// A question and all that stands before its search, so that the search of its positions can be shared out.
#[derive(Clone, Debug)]
pub struct Posed {
    problem: Problem,
    found: Vec<Found>,
    today: Vec<Option<Today>>,
    findings: Vec<Diagnosis>,
    about: Option<usize>,
    fixed: Vec<Option<Candidate>>,
    /// Steps of work that it took to find which string to change.
    work: u64,
}

impl Posed {
    /// What a person said, in numbers, with a look at what is made and at what is on the instrument.
    #[must_use]
    pub fn new(answers: &Answers) -> Self {
        let mut problem = problem::pose(answers);
        problem.kinds = possible::kinds(&problem);
        let mut found: Vec<Found> =
            problem.strings.iter().map(|string| candidates::look(&problem, string)).collect();
        let known = today::known(&problem);
        count_from_now(&mut problem, &known, &found);
        let today = today::judged(&problem, known);
        let findings = complaint::findings(&problem, &today);
        for (i, flaw) in complaint::flaws(&findings, &today) {
            problem.strings[i].flaws.push(flaw);
        }
        for (i, found) in found.iter_mut().enumerate() {
            if problem.strings[i].flaws.is_empty() {
                continue;
            }
            let other = candidates::look(&problem, &problem.strings[i]);
            if other.made.is_empty() {
                // Where nothing would mend it, the next best is no worse than what is there.
                problem.strings[i].flaws.clear();
            } else {
                *found = other;
            }
        }
        let mut about = problem.about.filter(|_| problem.aim == Aim::OneString);
        let mut work = Work::unlimited();
        if problem.aim == Aim::OneString && about.is_none() {
            about = most_gained(&problem, &today, &mut work);
        }
        settle_standings(&mut problem, &today, about);
        let fixed = (0..today.len()).map(|i| fixed_at(&problem, &today, i)).collect();
        Self { problem, found, today, findings, about, fixed, work: work.taken() }
    }

    /// What each position offers, the highest first.
    #[must_use]
    pub fn offers(&self) -> Vec<Offer<'_>> {
        choose::offers(&self.problem, &self.fixed)
    }

    /// The choice among `offers`, after the first look into each.
    #[must_use]
    pub fn choose(&self, offers: &[Offer], searched: Vec<Best>) -> Chosen {
        choose::among(&self.problem, &self.found, offers, searched)
    }

    /// All that is told of the choice.
    #[must_use]
    pub fn settle(self, chosen: Chosen) -> Fitting {
        let Self { problem, found, today, findings, about, work, .. } = self;
        let Chosen { told, counts, outcome, mut ruled_out, work: choosing } = chosen;
        ruled_out.extend(possible::ruled_out(&problem));
        let work = work + choosing;
        let verdict = verdict::verdict(&problem, &today, &findings, about, &outcome);
        Fitting { problem, found, told, counts, outcome, ruled_out, today, findings, verdict, work }
    }
}

/// Counts every wish from what is on the instrument now; where that is not known, from the most usual string of the kind
/// that is most usual for this player.
fn count_from_now(problem: &mut Problem, known: &[Option<Made>], found: &[Found]) {
    let kind = problem.kinds.first().cloned();
    for (i, string) in problem.strings.iter_mut().enumerate() {
        let of_kind = |made: &&Made| {
            let core = CoreType::of(made.family, made.construction.core.material);
            kind.as_ref().is_none_or(|kind| kind.cores[i].has(core))
        };
        let made = &found[i].made;
        let usual = || {
            usual::most_usual(made.iter().filter(of_kind))
                .or_else(|| usual::most_usual(made.iter()))
        };
        if let Some(Made { lean, .. }) = known[i].as_ref().or_else(usual) {
            let brightness = string.position.brightness_of(lean.brilliance);
            // How taut it is, is known where its gauge is.
            if known[i].is_some() && string.now.gauge_class.is_some() {
                string.count_from(brightness, lean.stretch, lean.tension);
            } else {
                string.count_from_like(brightness, lean.stretch, string.usual_pull);
            }
        }
    }
}

/// What becomes of each position: where the question is about one string, the others stay as far as they are known, and
/// what is not known cannot be kept.
fn settle_standings(problem: &mut Problem, today: &[Option<Today>], about: Option<usize>) {
    for (i, string) in problem.strings.iter_mut().enumerate() {
        let stays = string.standing == StringStatus::Kept || about.is_some_and(|about| about != i);
        if stays {
            string.standing =
                if today[i].is_some() { StringStatus::Kept } else { StringStatus::NotJudged };
        }
    }
    problem.kinds = possible::kinds(problem);
}

/// The string that stays at a position, or stands for one of which nothing is known; none where one is to be found.
fn fixed_at(problem: &Problem, today: &[Option<Today>], i: usize) -> Option<Candidate> {
    let string = &problem.strings[i];
    match string.standing {
        StringStatus::Open => None,
        StringStatus::Kept => today[i].as_ref().map(|today| today.string.clone()),
        StringStatus::NotJudged => today::anything(problem, string),
    }
}

/// Steps of work that may be taken to see what is gained by changing one string, shared among all positions.
const GAIN_STEPS: u64 = 5_000_000;

/// The string that is worth changing most, the others staying as they are.
fn most_gained(problem: &Problem, today: &[Option<Today>], work: &mut Work) -> Option<usize> {
    let open = |i: &usize| problem.strings[*i].standing == StringStatus::Open;
    let with = |i: usize| {
        let mut problem = problem.clone();
        settle_standings(&mut problem, today, Some(i));
        let fixed: Vec<_> = (0..today.len()).map(|k| fixed_at(&problem, today, k)).collect();
        let chosen =
            choose::within(&problem, &[], &fixed, GAIN_STEPS / today.len() as u64, GAIN_STEPS);
        work.take(chosen.work);
        match chosen.outcome {
            Outcome::Set { best, .. } => Some((best.total(), i)),
            Outcome::Nothing(_) => None,
        }
    };
    let all = (0..today.len()).filter(open).filter_map(with);
    all.max_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, i)| i)
}

/// Limits that a person set and could give up, by the name of the answer.
pub const RELAXABLE: [&str; 8] = [
    "animal_free",
    "nickel_allergy",
    "amplified",
    "strings",
    "gut_to_its_limit",
    "must_settle",
    "also_tuned",
    "most_load_n",
];

/// The wishes that, given up alone, would leave something that fits; for when nothing does.
#[must_use]
pub fn relaxations(answers: &Answers) -> Vec<&'static str> {
    // Something is made for every position, and the lightest of it together is light enough.
    let fits = |a: &Answers| {
        let problem = problem::pose(a);
        let lightest = |string| {
            let made = candidates::look(&problem, string).made;
            made.iter().map(|m| m.lean.tension).min_by(f64::total_cmp)
        };
        let load: Option<f64> = problem.strings.iter().map(lightest).sum();
        load.is_some_and(|load| load <= problem.most_load)
    };
    RELAXABLE
        .into_iter()
        .filter(|wish| {
            let mut relaxed = answers.clone();
            match *wish {
                "animal_free" => relaxed.animal_free = false,
                "nickel_allergy" => relaxed.nickel_allergy = false,
                "amplified" => relaxed.amplified = None,
                "strings" => relaxed.strings.clear(),
                "must_settle" => relaxed.must_settle = false,
                "also_tuned" => relaxed.also_tuned.clear(),
                "most_load_n" => relaxed.most_load_n = None,
                _ => relaxed.gut_to_its_limit = true,
            }
            relaxed != *answers && fits(&relaxed)
        })
        .collect()
}

impl Fitting {
    /// What to weigh the string at position `i` against: that of the other kind that one would weigh the set against,
    /// or, where it has the same family there, the best string of another family, the rest of the set staying as chosen.
    #[must_use]
    pub fn rival(&self, best: &Choice, i: usize) -> Option<&Candidate> {
        if let Outcome::Set { others, .. } = &self.outcome
            && let Some(other) = choose::rather_than(best, others)
            && other.strings[i].family != best.strings[i].family
        {
            return Some(&other.strings[i]);
        }
        let strings = &self.problem.strings;
        let worth = |c: &Candidate| {
            let above = if i > 0 {
                neighbours::pair(
                    (&best.strings[i - 1]).into(),
                    c.into(),
                    &strings[i - 1],
                    &strings[i],
                )
            } else {
                0.0
            };
            let below = if i + 1 < strings.len() {
                neighbours::pair(
                    c.into(),
                    (&best.strings[i + 1]).into(),
                    &strings[i],
                    &strings[i + 1],
                )
            } else {
                0.0
            };
            c.score + above + below
        };
        self.told[i]
            .iter()
            .filter(|c| c.family != best.strings[i].family)
            .max_by(|a, b| worth(a).total_cmp(&worth(b)))
    }

    /// What stands for today's string at position `i`, where anything is known of it.
    #[must_use]
    pub fn now(&self, i: usize) -> Option<&Candidate> {
        self.today.get(i)?.as_ref().map(|today| &today.string)
    }
}
