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
pub mod neighbours;
mod partners;
pub mod plan;
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

use crate::construction::Family;

use answers::{Aim, Answers};
use branches::Wanted;
use candidates::{Candidate, Found};
use choose::{Choice, Chosen, Offer, Outcome};
use complaint::Diagnosis;
use problem::{Problem, StringStatus};
use score::Judge;
use search::{Best, Contender, Counts};
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
        let mut found: Vec<Found> =
            problem.strings.iter().map(|string| candidates::look(&problem, string)).collect();
        for (string, found) in problem.strings.iter_mut().zip(&found) {
            if let Some(usual) = usual::most_usual(found.made.iter()) {
                string.usual_brightness = string.position.brightness_of(usual.lean.brilliance);
            }
        }
        let today = today::all(&problem);
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
        let Self { problem, found, today, findings, about, fixed, work } = self;
        let Chosen { mut told, counts, mut outcome, work: choosing } = chosen;
        let work = work + choosing;
        for (i, told) in told.iter_mut().enumerate().filter(|(i, _)| fixed[*i].is_none()) {
            let mut others = others(&problem, i, &found[i], told);
            if let Outcome::Set { best, .. } = &outcome {
                // One that lies between the steps of the space, so that the choice never saw it, may be the better one.
                others.retain(|c| exchanged(&problem, best, i, c).worth <= best.worth + best.gap);
            }
            told.extend(others);
        }
        if let Outcome::Set { best, runner_up: runner_up @ None } = &mut outcome {
            *runner_up = nearest(&problem, best, &told);
        }
        let verdict = verdict::verdict(&problem, &today, &findings, about, &outcome);
        Fitting { problem, found, told, counts, outcome, today, findings, verdict, work }
    }
}

/// How many strings of a family that the search left out are judged, to name a rival.
const JUDGED_OF_A_FAMILY: usize = 8;

/// A rival of each family that is made for a position and of which none was told: far behind, but the one to name.
fn others(problem: &Problem, i: usize, found: &Found, told: &[Candidate]) -> Vec<Candidate> {
    let string = &problem.strings[i];
    let judge = Judge::new(problem, string);
    let target = string.ends.tension_target;
    Family::ALL
        .into_iter()
        .filter(|family| told.iter().all(|c| c.family != *family))
        .filter_map(|family| {
            let mut made: Vec<_> = found.made.iter().filter(|m| m.family == family).collect();
            let off = |m: &candidates::Made| (m.lean.tension - target).abs();
            made.sort_by(|a, b| a.grade.cmp(&b.grade).then(off(a).total_cmp(&off(b))));
            made.iter()
                .take(JUDGED_OF_A_FAMILY)
                .map(|made| candidates::judged(&judge, made))
                .max_by(|a, b| a.score.total_cmp(&b.score))
        })
        .collect()
}

/// A set with one string of it exchanged.
fn exchanged(problem: &Problem, set: &Choice, i: usize, with: &Candidate) -> Choice {
    let mut strings = set.strings.clone();
    strings[i] = with.clone();
    let pairs = neighbours::pairs(problem, &strings);
    let worth = strings.iter().map(|c| c.score).sum::<f64>() + pairs.iter().sum::<f64>();
    Choice { strings, worth, proven: false, gap: f64::INFINITY, pairs }
}

/// The best set with one string of another family, of those that are told: where every other one is so far behind that
/// the search left it out.
fn nearest(problem: &Problem, best: &Choice, told: &[Vec<Candidate>]) -> Option<Choice> {
    let positions = told.iter().enumerate();
    positions
        .flat_map(|(i, told)| {
            let others = told.iter().filter(move |c| c.family != best.strings[i].family);
            others.map(move |c| exchanged(problem, best, i, c))
        })
        .filter(|set| set.strings.iter().map(|c| c.tension).sum::<f64>() <= problem.most_load)
        .max_by(|a, b| a.worth.total_cmp(&b.worth))
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
        let offers = choose::offers(&problem, &fixed);
        let looks = offers.iter().map(|offer| offer.look(GAIN_STEPS / offers.len() as u64));
        let looks: Vec<Best> = looks.collect();
        work.take(looks.iter().map(|look| look.work).sum());
        let lists: Vec<Vec<Contender>> = looks.into_iter().map(|look| look.contenders).collect();
        let wanted = Wanted { most_load: problem.most_load, ..Wanted::default() };
        // All others stay, so there is one list with more than one string.
        let mut choosing = Work::of(GAIN_STEPS);
        let best = branches::best(&problem, &lists, &wanted, &mut choosing);
        work.take(choosing.taken());
        best.map(|best| (best.worth, i))
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
    /// The best string of another family at position `i`, the rest of the set staying as chosen.
    #[must_use]
    pub fn rival(&self, best: &Choice, i: usize) -> Option<&Candidate> {
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
