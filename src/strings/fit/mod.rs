//! The choice of a set: questions → problem → candidates → set → reasons.
//!
//! Data goes one way. [`answers`] is what a person said; [`problem`] is what that means in numbers, with every
//! assumption written down; [`candidates`] are the makeable strings of each position; [`desirability`] says how
//! well one meets the wishes; [`choose`] finds the best set among them; [`compare`] and [`reasons`] say why it and
//! not another; [`plan`] says what to do with it. Beside that stands what is on the instrument now ([`today`]), why
//! it bothers ([`complaint`]), and the answer that is often less than a set ([`verdict`]).

pub mod answers;
pub mod candidates;
pub mod choose;
pub mod compare;
pub mod complaint;
pub mod desirability;
pub mod limits;
pub mod plan;
pub mod problem;
pub mod reasons;
pub mod shopping;
pub mod today;
pub mod verdict;

use answers::{Aim, Answers};
use candidates::{Candidate, Found};
use choose::Outcome;
use complaint::Finding;
use problem::{Problem, Standing};
use today::Today;
use verdict::Verdict;

/// Everything a fitting found.
#[derive(Clone, Debug, PartialEq)]
pub struct Fitting {
    /// What the answers were taken to mean.
    pub problem: Problem,
    /// What could stand at each place.
    pub found: Vec<Found>,
    /// The best of that, string by string.
    pub shortlists: Vec<Vec<Candidate>>,
    /// The set, or why there is none.
    pub outcome: Outcome,
    /// What is on the instrument now.
    pub today: Vec<Option<Today>>,
    /// Why it bothers.
    pub findings: Vec<Finding>,
    /// What to do.
    pub verdict: Verdict,
}

/// Finds a set for what a person said.
#[must_use]
pub fn fit(answers: &Answers) -> Fitting {
    let mut problem = problem::pose(answers);
    let today = today::all(&problem);
    let findings = complaint::findings(&problem, &today);
    for (i, fault) in complaint::faults(&findings, &today) {
        problem.strings[i].faults.push(fault);
    }
    let mut about = problem.about.filter(|_| problem.aim == Aim::OneString);
    settle_standings(&mut problem, &today, about);
    let mut found: Vec<Found> = (0..today.len()).map(|i| found_at(&problem, &today, i)).collect();
    if problem.aim == Aim::OneString && about.is_none() {
        about = most_gained(&problem, &today, &found);
        settle_standings(&mut problem, &today, about);
        for i in (0..today.len()).filter(|i| Some(*i) != about) {
            found[i] = found_at(&problem, &today, i);
        }
    }
    for (i, place) in found.iter_mut().enumerate() {
        // Where nothing would mend it, the next best is no worse than what is there.
        if place.candidates.is_empty() && !problem.strings[i].faults.is_empty() {
            problem.strings[i].faults.clear();
            *place = found_at(&problem, &today, i);
        }
    }
    let shortlists: Vec<Vec<Candidate>> = found.iter().map(choose::shortlist).collect();
    let outcome = choose::choose(&problem, &found, &shortlists);
    let verdict = verdict::verdict(&problem, &today, &findings, about, &outcome);
    Fitting { problem, found, shortlists, outcome, today, findings, verdict }
}

/// What becomes of each place: where the question is about one string, the others stay as far as they are known, and
/// what is not known cannot be kept.
fn settle_standings(problem: &mut Problem, today: &[Option<Today>], about: Option<usize>) {
    for (i, string) in problem.strings.iter_mut().enumerate() {
        let stays = string.standing == Standing::Kept || about.is_some_and(|about| about != i);
        if stays {
            string.standing = if today[i].is_some() { Standing::Kept } else { Standing::NotJudged };
        }
    }
}

/// What could stand at a place: the string that stays, alone, or everything that fits.
fn found_at(problem: &Problem, today: &[Option<Today>], i: usize) -> Found {
    let string = &problem.strings[i];
    let there = match string.standing {
        Standing::Open => None,
        Standing::Kept => today[i].as_ref().map(|today| today.string.clone()),
        Standing::NotJudged => today::anything(problem, string),
    };
    match there {
        Some(there) => Found { candidates: vec![there], examined: 1, excluded: Vec::new() },
        None => candidates::search(problem, string),
    }
}

/// The string that is worth changing most, the others staying as they are.
fn most_gained(problem: &Problem, today: &[Option<Today>], found: &[Found]) -> Option<usize> {
    let open = |i: &usize| problem.strings[*i].standing == Standing::Open;
    let with = |i: usize| {
        let mut problem = problem.clone();
        settle_standings(&mut problem, today, Some(i));
        let lists: Vec<Vec<Candidate>> = (0..found.len())
            .map(|k| {
                if k == i {
                    choose::shortlist(&found[k])
                } else {
                    found_at(&problem, today, k).candidates
                }
            })
            .collect();
        choose::best(&problem, &lists, None).map(|choice| (choice.worth, i))
    };
    let all = (0..found.len()).filter(open).filter_map(with);
    all.max_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, i)| i)
}

/// Limits that a person set and could give up, by the name of the answer.
pub const RELAXABLE: [&str; 7] = [
    "animal_free",
    "nickel_allergy",
    "magnetic_pickup",
    "strings",
    "gut_to_its_limit",
    "must_settle",
    "also_tuned",
];

/// The wishes that, given up alone, would leave something that fits; for when nothing does.
#[must_use]
pub fn relaxations(answers: &Answers) -> Vec<&'static str> {
    let fits = |a: &Answers| matches!(fit(a).outcome, Outcome::Set { .. });
    RELAXABLE
        .into_iter()
        .filter(|wish| {
            let mut relaxed = answers.clone();
            match *wish {
                "animal_free" => relaxed.animal_free = false,
                "nickel_allergy" => relaxed.nickel_allergy = false,
                "magnetic_pickup" => relaxed.magnetic_pickup = false,
                "strings" => relaxed.strings.clear(),
                "must_settle" => relaxed.must_settle = false,
                "also_tuned" => relaxed.also_tuned.clear(),
                _ => relaxed.gut_to_its_limit = true,
            }
            relaxed != *answers && fits(&relaxed)
        })
        .collect()
}

impl Fitting {
    /// The best string of another family at place `i`, the rest of the set staying as chosen.
    #[must_use]
    pub fn rival(&self, best: &choose::Choice, i: usize) -> Option<&Candidate> {
        let strings = &self.problem.strings;
        let worth = |c: &Candidate| {
            let above = if i > 0 {
                choose::pair(&best.strings[i - 1], c, &strings[i - 1], &strings[i])
            } else {
                0.0
            };
            let below = if i + 1 < strings.len() {
                choose::pair(c, &best.strings[i + 1], &strings[i], &strings[i + 1])
            } else {
                0.0
            };
            c.score + above + below
        };
        self.shortlists[i]
            .iter()
            .filter(|c| c.family != best.strings[i].family)
            .max_by(|a, b| worth(a).total_cmp(&worth(b)))
    }

    /// What stands for today's string at place `i`, where anything is known of it.
    #[must_use]
    pub fn now(&self, i: usize) -> Option<&Candidate> {
        self.today.get(i)?.as_ref().map(|today| &today.string)
    }
}
