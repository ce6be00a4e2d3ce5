//! A set of strings: what each is, why it and not another, what it costs, and what to do with it.

use std::rc::Rc;

use strings::fit::candidates::Candidate;
use strings::fit::choose::{self, Choice, RuledOut};
use strings::fit::desirability::Attribute;
use strings::fit::problem::{Problem, StringProblem};
use strings::fit::search::Counts;
use strings::fit::shopping::{self, End};
use strings::fit::summary::{self, Point};
use strings::fit::{Fitting, plan, reasons};
use strings::report::{self, Moves, Property};
use strings::setting::Untuned;

use super::report::{comparison, reply_report, report_of};
use super::{grade, range};
use crate::reply;

pub(crate) fn set_of(fitting: &Fitting, best: &Choice, others: &[Choice]) -> reply::Set {
    let runner_up = choose::rather_than(best, others);
    let problem = &fitting.problem;
    let moves: Vec<Moves> = best
        .strings
        .iter()
        .zip(&problem.strings)
        .map(|(c, s)| Moves::of(&c.construction, &s.setting))
        .collect();
    let reports: Vec<report::Report> = moves.iter().map(Moves::report).collect();
    let strings = (0..best.strings.len()).map(|i| Rc::new(fitted(fitting, best, &moves[i], i)));
    let strings = strings.collect();
    let steps = (0..best.pairs.len())
        .map(|i| reply::Step {
            tension_ratio: best.strings[i].tension / best.strings[i + 1].tension,
            usual_ratio: summary::usual_step(&problem.strings[i], &problem.strings[i + 1]),
            impedance_ratio: reports[i + 1].get(Property::Impedance).value
                / reports[i].get(Property::Impedance).value,
            term: best.pairs[i],
        })
        .collect();
    let lead = runner_up.map(|second| summary::lead(best, second));
    let made = plan::plan(problem, &best.strings, &reports, &fitting.today);
    reply::Set {
        strings,
        total_tension_n: range(summary::total(&reports, Property::Tension)),
        downforce_n: range(summary::total(&reports, Property::Downforce)),
        steps,
        kind: problem.kinds[best.kind].kind.key.to_owned(),
        worth: summary::worth(best),
        other_kinds: others.iter().map(|other| other_kind(problem, best, other)).collect(),
        ruled_out: fitting.ruled_out.iter().map(ruled_out).collect(),
        runner_up: runner_up.map(|r| reply::RunnerUp {
            strings: r
                .strings
                .iter()
                .zip(&best.strings)
                .zip(&problem.strings)
                .map(|((c, chosen), s)| {
                    let own = c.construction != chosen.construction;
                    own.then(|| report_of(&c.construction, &s.setting))
                })
                .collect(),
            shopping: r
                .strings
                .iter()
                .zip(&problem.strings)
                .enumerate()
                .map(|(i, (c, s))| shopping_of(c, problem, i, s))
                .collect(),
            worth: summary::worth(r),
        }),
        lead,
        close_call: lead.is_some_and(|l| l < summary::CLOSE_CALL),
        searched: searched(&fitting.counts),
        proven: best.proven,
        optimality_gap: summary::optimality_gap(best),
        plan: reply::Plan {
            fit_before_d: made.fit_before_days,
            settled_d: made.settled_days,
            checks: made.checks.iter().map(|c| c.key().to_owned()).collect(),
            cautions: made
                .cautions
                .iter()
                .map(|(c, string)| reply::Caution { caution: c.key().to_owned(), string: *string })
                .collect(),
        },
    }
}

fn other_kind(problem: &Problem, best: &Choice, other: &Choice) -> reply::OtherKind {
    let here = &problem.kinds[other.kind];
    reply::OtherKind {
        kind: here.kind.key.to_owned(),
        families: other.strings.iter().map(|c| c.family.key().to_owned()).collect(),
        usual_of_hundred: here.usual,
        is_now: here.is_now,
        lead: summary::lead(best, other),
        proven: other.proven,
        differences: reasons::differences(problem, best, other)
            .into_iter()
            .map(|d| reply::KindDifference {
                property: d.property.key().to_owned(),
                above: d.above,
                below: d.below,
            })
            .collect(),
    }
}

fn ruled_out(one: &RuledOut) -> reply::RuledOut {
    reply::RuledOut {
        kind: one.kind.key.to_owned(),
        string: one.string,
        limit: one.limit.map(|limit| limit.key().to_owned()),
    }
}

fn fitted(fitting: &Fitting, best: &Choice, moves: &Moves, i: usize) -> reply::FittedString {
    let problem = &fitting.problem;
    let (chosen, string) = (&best.strings[i], &problem.strings[i]);
    let rival = fitting.rival(best, i);
    let case = match rival {
        Some(rival) => reasons::case(chosen, rival, problem, string),
        None => reasons::Case {
            reasons: Vec::new(),
            costs: vec![reasons::weakest(&chosen.desirabilities, problem)],
        },
    };
    let today = fitting.now(i);
    let bands = &chosen.bands;
    reply::FittedString {
        standing: string.standing.key().to_owned(),
        note: string.note.name(),
        position: string.position.key.to_owned(),
        report: Rc::new(reply_report(&chosen.construction, &string.setting, moves)),
        grade: grade(chosen.grade),
        bands: reply::Bands {
            tension_n: bands.tension,
            gauge_m: bands.gauge,
            stretch: bands.stretch,
            winding_mass_share: bands.winding_share,
            breaking_share: bands.breaking_share,
        },
        usual_tension_n: string.usual_tension,
        brightness: chosen.brightness,
        usual_brightness: string.usual_brightness,
        brightness_target: string.brightness_target(),
        score: chosen.score,
        attributes: Attribute::ALL
            .iter()
            .map(|a| reply::AttributeWorth {
                attribute: a.key().to_owned(),
                desirability: chosen.desirabilities[*a as usize],
                weight: problem.weights[*a as usize],
                property: a.property(string.setting.untuned).map(|p| p.key().to_owned()),
            })
            .collect(),
        rival: rival.map(|r| report_of(&r.construction, &string.setting)),
        reasons: case.reasons.iter().map(reason).collect(),
        costs: case.costs.iter().map(reason).collect(),
        changes: today
            .as_ref()
            .map(|t| reasons::changes(chosen, t, string).iter().map(comparison).collect())
            .unwrap_or_default(),
        today: today.as_ref().map(|t| report_of(&t.construction, &string.setting)),
        shopping: shopping_of(chosen, problem, i, string),
        picture: summary::picture(&fitting.found[i].made).iter().map(point).collect(),
        chosen_point: point(&Point::of(chosen)),
        today_point: today.as_ref().map(|t| point(&Point::of(t))),
        fine_tuner: string.fine_tuner,
    }
}

fn reason(r: &reasons::Reason) -> reply::Reason {
    reply::Reason {
        attribute: r.attribute.key().to_owned(),
        judged: r.attribute.property(Untuned::Evening).is_none(),
        gain: r.gain,
        comparison: r.comparison.as_ref().map(comparison),
        worth: r.worth.0,
        rival_worth: r.worth.1,
    }
}

fn shopping_of(
    chosen: &Candidate,
    problem: &Problem,
    i: usize,
    string: &StringProblem,
) -> reply::Shopping {
    let s = shopping::describe(chosen, problem, i);
    reply::Shopping {
        family: s.family.key().to_owned(),
        core_material: chosen.construction.core.material.name.to_owned(),
        outer_metal: s.outer_metal.map(|m| m.name.to_owned()),
        gauge_class: s.gauge_class.key().to_owned(),
        tension_n: (s.tension.0.get(), s.tension.1.get()),
        pitch_hz: string.setting.pitch.get(),
        sounding_length_m: string.setting.sounding_length.get(),
        end: match s.end {
            End::Ball => "ball",
            End::LoopOrBall => "loop-or-ball",
            End::Knot => "knot",
        }
        .to_owned(),
        extension: s.extension,
    }
}

fn point(p: &Point) -> reply::Point {
    reply::Point {
        family: p.family.key().to_owned(),
        stretch: p.stretch,
        settling_d: p.settling,
        warmth_cent: p.warmth,
        damp_cent: p.damp,
    }
}

fn searched(counts: &[Counts]) -> reply::Searched {
    let sum = |of: fn(&Counts) -> u64| counts.iter().map(of).sum();
    reply::Searched {
        space: sum(|c| c.space),
        wound: sum(|c| c.wound),
        inside: sum(|c| c.inside),
        judged: sum(|c| c.judged),
    }
}
