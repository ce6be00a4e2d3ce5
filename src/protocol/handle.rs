//! Answers a request.

use std::collections::BTreeMap;
use std::rc::Rc;

use strings::construction::{Construction, Family};
use strings::error::Fault;
use strings::fit::candidates::{Candidate, Made};
use strings::fit::choose::{Choice, Obstacle, Outcome};
use strings::fit::compare;
use strings::fit::complaint::{self, Finding};
use strings::fit::desirability::Attribute;
use strings::fit::problem::{BASE_WEIGHTS, Problem, StringProblem};
use strings::fit::score;
use strings::fit::search::Counts;
use strings::fit::shopping::{self, End};
use strings::fit::{self, Fitting, plan, reasons};
use strings::precedent::Grade;
use strings::report::{self, Moves, Property};
use strings::source::Evidence;

use crate::bowed;
use crate::certainty::certainty;
use crate::convert;
use crate::lesson;
use crate::parse;
use crate::reply::{self, Reply};
use crate::request::Request;
use crate::tables;

/// Answers one request given as JSON text with one reply as JSON text; never fails.
#[must_use]
pub fn answer(request: &str) -> String {
    written(&reply_to(request, &mut |_| ()))
}

/// As [`answer`], for bytes as they come from outside: those that are no UTF-8 text are refused like any other.
#[must_use]
pub fn answer_bytes(request: &[u8]) -> String {
    match core::str::from_utf8(request) {
        Ok(text) => answer(text),
        Err(error) => {
            let at = error.valid_up_to();
            let value =
                format!("byte {:#04x} at {at}", request.get(at).copied().unwrap_or_default());
            written(&refused(vec![Fault::new("request", value, "one JSON object, in UTF-8")]))
        }
    }
}

/// As [`answer`], but tells how far a long answer is, as a share, and hands the samples of a sound apart from the text.
#[must_use]
pub fn answer_telling(request: &str, tell: &mut dyn FnMut(f64)) -> (String, Option<Vec<f32>>) {
    let mut reply = reply_to(request, tell);
    let samples = match &mut reply {
        Reply::Sound(sound) => Some(core::mem::take(&mut sound.samples)),
        _ => None,
    };
    (written(&reply), samples)
}

fn reply_to(request: &str, tell: &mut dyn FnMut(f64)) -> Reply {
    match parse::request(request) {
        Ok(Request::Sound(r)) => bowed::sound(&r, tell).unwrap_or_else(refused),
        Ok(request) => handle(&request),
        Err(fault) => refused(vec![fault]),
    }
}

pub(crate) fn written(reply: &Reply) -> String {
    // A reply holds numbers, words and maps with text keys only; writing it cannot fail.
    serde_json::to_string(reply).unwrap_or_default()
}

fn refused(faults: Vec<Fault>) -> Reply {
    Reply::Refused(reply::Refused { faults: faults.into_iter().map(reply::Fault::of).collect() })
}

/// Answers one request.
#[must_use]
pub fn handle(request: &Request) -> Reply {
    match request {
        Request::BowMap(r) => bowed::map(r).unwrap_or_else(refused),
        Request::Sound(r) => bowed::sound(r, &mut |_| ()).unwrap_or_else(refused),
        Request::Report(r) => {
            let (construction, setting) = (
                convert::construction(&r.construction, "construction"),
                convert::setting(&r.setting, "setting"),
            );
            match (construction, setting) {
                (Ok(construction), Ok(setting)) => {
                    Reply::Report(Box::new(report_of(&construction, &setting)))
                }
                (construction, setting) => refused(
                    [construction.err(), setting.err()].into_iter().flatten().flatten().collect(),
                ),
            }
        }
        Request::Compare(r) => {
            let this = convert::construction(&r.this, "this");
            let other = convert::construction(&r.other, "other");
            let setting = convert::setting(&r.setting, "setting");
            match (this, other, setting) {
                (Ok(this), Ok(other), Ok(setting)) => {
                    Reply::Compare(Box::new(compare_of(&this, &other, &setting)))
                }
                (this, other, setting) => {
                    let all = [this.err(), other.err(), setting.err()];
                    refused(all.into_iter().flatten().flatten().collect())
                }
            }
        }
        Request::Stretch(r) => lesson::stretch(r).unwrap_or_else(refused),
        Request::Year(r) => lesson::year(r).unwrap_or_else(refused),
        Request::Place(r) => lesson::place(r).unwrap_or_else(refused),
        Request::Fit(f) => match convert::answers(&f.answers) {
            Ok(answers) => Reply::Fit(Box::new(fit_of(&answers, &fit::fit(&answers)))),
            Err(faults) => refused(faults),
        },
        Request::Certainty(f) => match convert::answers(&f.answers) {
            Ok(answers) => Reply::Certainty(Box::new(certainty(&answers))),
            Err(faults) => refused(faults),
        },
        Request::Tables(_) => Reply::Tables(Box::new(tables::tables())),
    }
}

pub(crate) fn evidence(e: Evidence) -> String {
    match e {
        Evidence::Measured => "measured",
        Evidence::Published => "published",
        Evidence::Computed => "computed",
        Evidence::Judged => "judged",
        Evidence::Guessed => "guessed",
    }
    .to_owned()
}

pub(crate) fn grade(g: Grade) -> String {
    match g {
        Grade::Everyday => "everyday",
        Grade::Sometimes => "sometimes",
        Grade::Nobody => "nobody",
    }
    .to_owned()
}

fn numbers(report: &report::Report) -> BTreeMap<String, reply::Quantity> {
    Property::ALL
        .iter()
        .map(|p| {
            let e = report.get(*p);
            let quantity = reply::Quantity {
                value: e.value,
                low: e.low,
                high: e.high,
                evidence: evidence(p.evidence()),
                source: p.source().key.to_owned(),
                unknown: report.is_unknown(*p),
            };
            (p.key().to_owned(), quantity)
        })
        .collect()
}

pub(crate) fn report_of(
    construction: &Construction,
    setting: &strings::setting::Setting,
) -> reply::Report {
    reply_report(construction, setting, &Moves::of(construction, setting))
}

fn reply_report(
    c: &Construction,
    setting: &strings::setting::Setting,
    moves: &Moves,
) -> reply::Report {
    let report = moves.report();
    reply::Report {
        construction: convert::construction_back(c),
        setting: convert::setting_back(setting),
        family: c.family().key().to_owned(),
        numbers: numbers(&report),
        partials: report::partials(c, setting, PARTIALS).iter().map(partial).collect(),
        nights: report::nights(c, &report, NIGHTS).iter().map(night).collect(),
        doubts: DOUBTFUL.iter().map(|p| (p.key().to_owned(), doubts(moves, *p))).collect(),
        caveats: report::caveats(c, setting).into_iter().map(|c| caveat(c).to_owned()).collect(),
    }
}

/// Partials in a report: beyond, they differ by what these show.
const PARTIALS: u32 = 16;
/// Days in a report: by then everything but damp gut has settled.
const NIGHTS: u32 = 14;
/// Doubts named for each property.
const DOUBTS: usize = 3;
/// The properties whose doubts a person can act on.
const DOUBTFUL: [Property; 6] = [
    Property::Tension,
    Property::BreakingShare,
    Property::Brilliance,
    Property::SettlingDays,
    Property::Drift,
    Property::BowWindow,
];

fn partial(p: &report::Partial) -> reply::Partial {
    let causes =
        [("air", p.air), ("string", p.string), ("bending", p.bending), ("bridge", p.bridge)];
    let most = causes
        .iter()
        .fold(causes[0], |most, cause| if cause.1.get() > most.1.get() { *cause } else { most });
    reply::Partial {
        n: p.n,
        frequency_hz: p.frequency.get(),
        sharpness_cent: p.sharpness.get(),
        loss_air: p.air.get(),
        loss_string: p.string.get(),
        loss_bending: p.bending.get(),
        loss_bridge: p.bridge.get(),
        q: 1.0 / p.on_rigid_ends.get(),
        ring_s: p.ring,
        most: most.0.to_owned(),
    }
}

fn night(n: &report::Night) -> reply::Night {
    reply::Night {
        day: n.day,
        lost_cent: reply::Range { value: n.lost.value, low: n.lost.low, high: n.lost.high },
        chance: n.chance,
    }
}

fn doubts(moves: &Moves, property: Property) -> Vec<reply::Doubt> {
    moves
        .doubts(property)
        .into_iter()
        .take(DOUBTS)
        .map(|d| reply::Doubt {
            owner: d.owner.to_owned(),
            which: d.which.key().to_owned(),
            share: d.share,
        })
        .collect()
}

const fn caveat(c: report::Caveat) -> &'static str {
    match c {
        report::Caveat::StressNotMeasured => "stress-not-measured",
        report::Caveat::WireNotTabled => "wire-not-tabled",
        report::Caveat::Breaks => "breaks",
    }
}

fn compare_of(
    this: &Construction,
    other: &Construction,
    setting: &strings::setting::Setting,
) -> reply::Compare {
    reply::Compare {
        this: report_of(this, setting),
        other: report_of(other, setting),
        comparisons: compare::paired(this, other, setting, &reasons::PROPERTIES)
            .iter()
            .map(comparison)
            .collect(),
    }
}

/// What is told of a fitting for these answers.
pub(crate) fn fit_of(answers: &fit::answers::Answers, fitting: &Fitting) -> reply::Fit {
    let (set, obstacles) = match &fitting.outcome {
        Outcome::Set { best, runner_up } => {
            (Some(Rc::new(set_of(fitting, best, runner_up.as_ref()))), Vec::new())
        }
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

fn finding(f: &Finding) -> reply::Finding {
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
        set_up: convert::set_up_key(p.set_up).to_owned(),
        a4_hz: p.a4.get(),
        temperament: convert::temperament_key(p.temperament).to_owned(),
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

/// Lead of the best over the runner-up under which both are shown as equals, as a ratio of desirabilities.
const CLOSE_CALL: f64 = 1.05;

fn set_of(fitting: &Fitting, best: &Choice, runner_up: Option<&Choice>) -> reply::Set {
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
    let sum = |property: Property| {
        let all: Vec<report::Estimate> = reports.iter().map(|r| r.get(property)).collect();
        // Ranges of one instrument move together (its length above all), so their ends add.
        reply::Range {
            value: all.iter().map(|e| e.value).sum(),
            low: all.iter().map(|e| e.low).sum(),
            high: all.iter().map(|e| e.high).sum(),
        }
    };
    let middle = |s: &StringProblem| (s.usual_tension.0 + s.usual_tension.1) / 2.0;
    let steps = (0..best.pairs.len())
        .map(|i| reply::Step {
            tension_ratio: best.strings[i].tension / best.strings[i + 1].tension,
            usual_ratio: middle(&problem.strings[i]) / middle(&problem.strings[i + 1]),
            impedance_ratio: reports[i + 1].get(Property::Impedance).value
                / reports[i].get(Property::Impedance).value,
            term: best.pairs[i],
        })
        .collect();
    // Over the strings, so that four and five of them are read alike.
    let each = |choice: &Choice| choice.worth / choice.strings.len() as f64;
    let lead = runner_up.map(|r| libm::exp(each(best) - each(r)));
    let made = plan::plan(problem, &best.strings, &reports, &fitting.today);
    reply::Set {
        strings,
        total_tension_n: sum(Property::Tension),
        downforce_n: sum(Property::Downforce),
        steps,
        worth: each(best),
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
            worth: each(r),
        }),
        lead,
        close_call: lead.is_some_and(|l| l < CLOSE_CALL),
        searched: searched(&fitting.counts),
        proven: best.proven,
        optimality_gap: libm::exp(best.gap / best.strings.len() as f64) - 1.0,
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
                property: a.property().map(|p| p.key().to_owned()),
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
        picture: picture(&fitting.found[i].made, problem),
        chosen_point: candidate_point(chosen, problem),
        today_point: today.as_ref().map(|t| candidate_point(t, problem)),
        fine_tuner: string.fine_tuner,
    }
}

fn reason(r: &reasons::Reason) -> reply::Reason {
    reply::Reason {
        attribute: r.attribute.key().to_owned(),
        judged: r.attribute.property().is_none(),
        gain: r.gain,
        comparison: r.comparison.as_ref().map(comparison),
        worth: r.worth.0,
        rival_worth: r.worth.1,
    }
}

fn comparison(c: &compare::Comparison) -> reply::Comparison {
    reply::Comparison {
        property: c.property.key().to_owned(),
        this: c.this,
        other: c.other,
        verdict: match c.verdict() {
            1 => "above",
            -1 => "below",
            _ => "no-difference-we-can-compute",
        }
        .to_owned(),
        chance_above: c.chance_above,
        chance_below: c.chance_below,
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

/// Cells to a side of the grid on which the picture is thinned; one point a cell and family.
const PICTURE_CELLS: f64 = 16.0;

fn picture(made: &[Made], problem: &Problem) -> Vec<reply::Point> {
    let mut seen = std::collections::BTreeSet::new();
    made.iter()
        .map(|m| {
            let lean = (m.lean.stretch, m.lean.settling, m.lean.drift);
            (m.family, point(m.family, lean, &m.construction, problem))
        })
        .filter(|(family, p)| {
            let across = (libm::log(p.stretch) * PICTURE_CELLS / 4.0).floor();
            let up = (p.steadiness * PICTURE_CELLS).floor();
            // The cells are small whole numbers.
            seen.insert((*family, across as i32, up as i32))
        })
        .map(|(_, p)| p)
        .collect()
}

fn candidate_point(c: &Candidate, problem: &Problem) -> reply::Point {
    point(c.family, (c.stretch, c.settling, c.drift), &c.construction, problem)
}

fn point(
    family: Family,
    (stretch, settling, drift): (f64, f64, f64),
    construction: &Construction,
    problem: &Problem,
) -> reply::Point {
    let judgement = construction.core.material.climate_judgement;
    reply::Point {
        family: family.key().to_owned(),
        stretch,
        steadiness: score::steadiness(&problem.weights, settling, drift, judgement),
        settling_d: settling,
        drift_cent: drift,
        fitters_judgement: judgement,
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
