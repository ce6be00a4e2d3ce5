//! What the answers were taken to mean, and what came of them.

use std::rc::Rc;

use strings::fit::answers::Answers;
use strings::fit::choose::{Obstacle, Outcome};
use strings::fit::complaint::{self, Diagnosis};
use strings::fit::desirability::Attribute;
use strings::fit::problem::{BASE_WEIGHTS, Problem};
use strings::fit::{self, Fitting};

use super::set::set_of;
use crate::reply;

/// What is told of a fitting for these answers.
pub(crate) fn fit_of(answers: &Answers, fitting: &Fitting) -> reply::Fit {
    let (set, obstacles) = match &fitting.outcome {
        Outcome::Set { best, others } => (Some(Rc::new(set_of(fitting, best, others))), Vec::new()),
        Outcome::Nothing(obstacles) => {
            let relax: Vec<String> =
                fit::relaxations(answers).into_iter().map(str::to_owned).collect();
            (None, obstacles.iter().map(|o| obstacle(o, &fitting.problem, &relax)).collect())
        }
    };
    reply::Fit {
        problem: problem_of(&fitting.problem),
        set,
        obstacles,
        verdict: verdict_of(fitting),
    }
}

fn verdict_of(fitting: &Fitting) -> reply::Verdict {
    let verdict = &fitting.verdict;
    reply::Verdict {
        answer: verdict.answer.key().to_owned(),
        string: verdict.string,
        because: verdict.because.iter().map(|fact| fact.key().to_owned()).collect(),
        findings: fitting.findings.iter().map(finding).collect(),
    }
}

fn finding(f: &Diagnosis) -> reply::Finding {
    reply::Finding {
        bother: f.bother.key().to_owned(),
        string: f.string,
        causes: f
            .causes
            .iter()
            .map(|c| reply::Cause {
                cause: c.cause.key().to_owned(),
                likely: c.likely.key().to_owned(),
                judged: c.judged,
                numbers: c.numbers.iter().map(cause_number).collect(),
                look: c.cause.look().key().to_owned(),
            })
            .collect(),
    }
}

fn cause_number(n: &complaint::Number) -> reply::CauseNumber {
    let e = &n.estimate;
    let ranges = e.low < e.high;
    reply::CauseNumber {
        property: n.property.to_owned(),
        string: n.string,
        value: e.value,
        low: ranges.then_some(e.low),
        high: ranges.then_some(e.high),
        limit: Some(n.limit),
    }
}

fn problem_of(p: &Problem) -> reply::Problem {
    reply::Problem {
        instrument: p.kind.key.to_owned(),
        instrument_name: p.kind.name.to_owned(),
        size: p.size.key.to_owned(),
        tuning: p.tuning.key.to_owned(),
        tuning_name: p.tuning.name.to_owned(),
        set_up: p.set_up.key().to_owned(),
        a4_hz: p.a4.get(),
        temperament: p.temperament.key().to_owned(),
        usual_load_n: p.usual_load,
        most_load_n: p.most_load,
        assumed: p
            .assumed
            .iter()
            .map(|a| reply::Assumed { field: a.field.to_owned(), value: a.value.clone() })
            .collect(),
        weights: Attribute::ALL
            .iter()
            .map(|a| reply::Weight {
                attribute: a.key().to_owned(),
                base: BASE_WEIGHTS[*a as usize],
                weight: p.weights[*a as usize],
                steps: p
                    .weight_steps
                    .iter()
                    .filter(|s| s.attribute == *a)
                    .map(|s| reply::WeightStep { factor: s.factor, because: s.because.to_owned() })
                    .collect(),
            })
            .collect(),
        brightness_shift: p.brightness_shift,
        concert_days: p.concert_days,
        highest_ratio: p.highest,
        now: p.now.map(|n| n.key().to_owned()),
    }
}

fn obstacle(o: &Obstacle, problem: &Problem, relax: &[String]) -> reply::Obstacle {
    let relax = relax.to_vec();
    match o {
        Obstacle::String { index, limits } => reply::Obstacle {
            string: Some(*index),
            note: problem.strings.get(*index).map(|s| s.note.name()),
            limits: limits
                .iter()
                .map(|(e, count)| reply::LimitCount { limit: e.key().to_owned(), count: *count })
                .collect(),
            lightest_n: None,
            most_n: None,
            relax,
        },
        Obstacle::Load { lightest, most } => reply::Obstacle {
            string: None,
            note: None,
            limits: Vec::new(),
            lightest_n: Some(*lightest),
            most_n: Some(*most),
            relax,
        },
    }
}
