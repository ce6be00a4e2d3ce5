//! Which strings could still win if answers or constants were slightly different? A short list for each position.
//!
//! The choice is made from the whole space; what follows from it, how sure it is and what would turn it, is asked of
//! a few strings a position: the chosen one, the best told of each family, and from the sample of what is made the best
//! of each family in many scenarios. Over these lists the best set is exact:
//! the same scores, the same terms for neighbours, the same limit of load.

mod sampled;

use crate::construction::{Build, CoreTypes, Family};
use crate::material::CoreMaterial;
use crate::quantity::Metre;

use super::Fitting;
use super::answers::GaugeClass;
use super::branches::{self, Wanted};
use super::candidates::Candidate;
use super::choose::Choice;
use super::kinds::KindHere;
use super::neighbours::Step;
use super::problem::{Problem, StringProblem, StringStatus};
use super::score::{self, Arrangement, DRAWS, Judge, JudgedCore, Logs};
use super::search::Contender;
use super::shopping;
use super::work::Work;

/// How many of each family told of are taken: the further ones differ from them by a step of ribbon.
const OF_A_FAMILY: usize = 2;
/// Steps of work that it takes to judge a string in every draw.
const JUDGING_STEPS: u64 = 100;
/// Cores of one arrangement, and the finalists on each diameter of it.
#[derive(Clone, Debug)]
struct Cores {
    family: Family,
    material: &'static CoreMaterial,
    build: Build,
    of: Vec<(Metre, Vec<usize>)>,
}

/// A position's short list.
#[derive(Clone, Debug)]
pub struct Shortlist {
    /// The strings; where the set has one here, it stands first.
    pub strings: Vec<Candidate>,
    /// The gauge class of each.
    pub classes: Vec<GaugeClass>,
    cores: Vec<Cores>,
}

/// The short lists of a fitting.
#[derive(Clone, Debug)]
pub struct Finalists<'a> {
    /// The fitting they belong to.
    pub fitting: &'a Fitting,
    /// One list for each position, the highest string first.
    pub lists: Vec<Shortlist>,
    contenders: Vec<Vec<Contender>>,
    steps: Vec<Step>,
}

/// A number for each string of each list.
pub type Scores = Vec<Vec<f64>>;

impl Shortlist {
    fn new(strings: Vec<Candidate>) -> Self {
        let classes = strings.iter().map(|c| shopping::gauge_class(c.tension, &c.bands)).collect();
        let mut cores: Vec<Cores> = Vec::new();
        for (k, c) in strings.iter().enumerate() {
            let core = &c.construction.core;
            let is_of = |cores: &Cores| {
                cores.family == c.family
                    && cores.material.key == core.material.key
                    && cores.build == core.build
            };
            let at = cores.iter().position(is_of).unwrap_or_else(|| {
                let (family, material, build) = (c.family, core.material, core.build);
                cores.push(Cores { family, material, build, of: Vec::new() });
                cores.len() - 1
            });
            match cores[at].of.iter_mut().find(|(diameter, _)| *diameter == core.diameter) {
                Some((_, on_it)) => on_it.push(k),
                None => cores[at].of.push((core.diameter, vec![k])),
            }
        }
        Self { strings, classes, cores }
    }

    /// Judges every string of the list, in the order of the list.
    #[must_use]
    pub fn judged(&self, judge: &Judge) -> Vec<Logs> {
        let mut all: Vec<Option<Logs>> = vec![None; self.strings.len()];
        for cores in &self.cores {
            let Some(first) = cores.of.first().and_then(|(_, on_it)| on_it.first()) else {
                continue;
            };
            let bands = self.strings[*first].bands;
            let arrangement: Arrangement =
                judge.arrangement(cores.family, bands, cores.material, cores.build);
            for (diameter, on_it) in &cores.of {
                let core: JudgedCore = judge.core(&arrangement, *diameter);
                for k in on_it {
                    let c = &self.strings[*k];
                    all[*k] = Some(core.logs(&c.construction));
                }
            }
        }
        all.into_iter().flatten().collect()
    }
}

impl<'a> Finalists<'a> {
    /// The short lists of a fitting that found `chosen`, and of what else wins in one of the `scenarios`.
    #[must_use]
    pub fn of(
        fitting: &'a Fitting,
        chosen: &Choice,
        scenarios: &[Problem],
        work: &mut Work,
    ) -> Self {
        let problem = &fitting.problem;
        let lists: Vec<Shortlist> = (0..problem.strings.len())
            .map(|i| {
                let first = chosen.strings[i].clone();
                if problem.strings[i].standing != StringStatus::Open {
                    return Shortlist::new(vec![first]);
                }
                let mut strings = vec![first];
                let mut add = |c: Candidate| {
                    if strings.iter().all(|s| s.construction != c.construction) {
                        strings.push(c);
                    }
                };
                let mut of_family = [0_usize; Family::ALL.len()];
                for c in &fitting.told[i] {
                    let count = &mut of_family[c.family as usize];
                    *count += 1;
                    if *count <= OF_A_FAMILY {
                        add(c.clone());
                    }
                }
                sampled::sampled(fitting, i, scenarios).into_iter().for_each(add);
                Shortlist::new(strings)
            })
            .collect();
        let (contenders, steps) = (contenders(&lists), Step::with_kept(problem));
        let mut finalists = Self { fitting, lists, contenders, steps };
        finalists.leave_out_what_was_never_seen(work);
        finalists
    }

    /// The sample lies between the steps of the whole space, so a string of it may by a hair complete a better set than
    /// the best there is in the space. It is left out: nobody could be shown it.
    fn leave_out_what_was_never_seen(&mut self, work: &mut Work) {
        let problem = &self.fitting.problem;
        let logs = self.logs(problem, 0, work);
        let mut scores = self.expected(&logs, problem);
        while let Some(set) = self.best(&scores, &problem.kinds, problem.most_load, work) {
            if work.is_out() {
                break;
            }
            let unseen = |(i, k): (usize, &usize)| {
                let c = &self.lists[i].strings[*k];
                *k > 0 && self.fitting.told[i].iter().all(|t| t.construction != c.construction)
            };
            let Some(i) = set.iter().enumerate().position(unseen) else { break };
            let k = set[i];
            let mut strings = self.lists[i].strings.clone();
            strings.remove(k);
            scores[i].remove(k);
            // A list of one is not scored.
            if strings.len() == 1 {
                scores[i].clear();
            }
            self.lists[i] = Shortlist::new(strings);
            self.contenders[i].remove(k);
        }
    }

    /// Every string of every list, judged over the draws from `first` on, for the problem as it could be meant.
    #[must_use]
    pub fn logs(&self, problem: &Problem, first: u64, work: &mut Work) -> Vec<Vec<Logs>> {
        work.take(self.lists.iter().map(|list| list.strings.len() as u64 * JUDGING_STEPS).sum());
        let judged = |(list, string): (&Shortlist, &StringProblem)| {
            // Of a single string there is nothing to choose.
            let judge = (list.strings.len() > 1).then(|| Judge::over(problem, string, first));
            judge.map(|judge| list.judged(&judge)).unwrap_or_default()
        };
        self.lists.iter().zip(&problem.strings).map(judged).collect()
    }

    /// The scores by which a set is chosen: expected over the draws.
    #[must_use]
    pub fn expected(&self, logs: &[Vec<Logs>], problem: &Problem) -> Scores {
        let of = |logs: &Logs| {
            let (desirabilities, penalty) = logs.expected();
            score::score(&desirabilities, &problem.weights, penalty)
        };
        logs.iter().map(|logs| logs.iter().map(of).collect()).collect()
    }

    /// The scores in each single draw.
    #[must_use]
    pub fn drawn(&self, logs: &[Vec<Logs>], problem: &Problem) -> Vec<Scores> {
        let each: Vec<Vec<[f64; DRAWS]>> = logs
            .iter()
            .map(|logs| logs.iter().map(|logs| logs.scores(&problem.weights)).collect())
            .collect();
        (0..DRAWS)
            .map(|k| each.iter().map(|list| list.iter().map(|s| s[k]).collect()).collect())
            .collect()
    }

    /// What a set is worth.
    #[must_use]
    pub fn worth(&self, scores: &Scores, set: &[usize]) -> f64 {
        let own: f64 = set.iter().zip(scores).filter_map(|(k, scores)| scores.get(*k)).sum();
        let points = |i: usize| self.contenders[i][set[i]].point();
        let steps = self.steps.iter().enumerate();
        own + steps.map(|(i, step)| step.term(points(i), points(i + 1))).sum::<f64>()
    }

    /// The best set of the lists under a limit of load, of whichever of the kinds: exact unless the work runs out. `None`
    /// if no set is light enough.
    #[must_use]
    pub fn best(
        &self,
        scores: &Scores,
        kinds: &[KindHere],
        most_load: f64,
        work: &mut Work,
    ) -> Option<Vec<usize>> {
        let scored = |i: usize, cores: CoreTypes| {
            let list = self.contenders[i].iter().enumerate();
            let of_kind = list.filter(|(_, c)| cores.has(c.core_type));
            let with_score = |(k, c): (usize, &Contender)| {
                (k, Contender { score: scores[i].get(k).copied().unwrap_or_default(), ..*c })
            };
            of_kind.map(with_score).collect::<Vec<_>>()
        };
        let mut best: Option<(f64, Vec<usize>)> = None;
        for here in kinds {
            let all = here.cores.iter().enumerate().map(|(i, cores)| scored(i, *cores));
            let (indices, lists): (Vec<Vec<usize>>, Vec<Vec<Contender>>) =
                all.map(|list| list.into_iter().unzip()).unzip();
            if lists.iter().any(Vec::is_empty) {
                continue;
            }
            // No term of a pair is positive.
            let top = |list: &Vec<Contender>| {
                list.iter().map(|c| c.worth(0.0)).fold(f64::NEG_INFINITY, f64::max)
            };
            let most = lists.iter().map(top).sum::<f64>() + here.term;
            if best.as_ref().is_some_and(|(worth, _)| *worth >= most) {
                continue;
            }
            let wanted = Wanted { most_load, ..Wanted::default() };
            let Some(path) = branches::best_path(&self.steps, &lists, &wanted, work) else {
                continue;
            };
            let set: Vec<usize> = path.iter().zip(&indices).map(|(k, list)| list[*k]).collect();
            let worth = self.worth(scores, &set) + here.term;
            if best.as_ref().is_none_or(|(other, _)| worth > *other) {
                best = Some((worth, set));
            }
        }
        best.map(|(_, set)| set)
    }

    /// The families of a set of the lists, the highest string first.
    #[must_use]
    pub fn families(&self, set: &[usize]) -> Vec<Family> {
        set.iter().zip(&self.lists).map(|(k, list)| list.strings[*k].family).collect()
    }

    /// The gauge classes of a set of the lists.
    #[must_use]
    pub fn classes(&self, set: &[usize]) -> Vec<GaugeClass> {
        set.iter().zip(&self.lists).map(|(k, list)| list.classes[*k]).collect()
    }
}

/// What the choice needs of the strings of each list; their scores are open.
fn contenders(lists: &[Shortlist]) -> Vec<Vec<Contender>> {
    lists.iter().map(|list| list.strings.iter().map(Contender::from).collect()).collect()
}
