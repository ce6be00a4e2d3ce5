//! What else could win: the best of the sample of what is made, in many scenarios.

use crate::construction::{Construction, Core, Family, Winding};
use crate::fit::Fitting;
use crate::fit::admission;
use crate::fit::answers::GaugeClass;
use crate::fit::candidates::{self, Candidate, Made};
use crate::fit::desirability::{self as d, Attribute, COUNT, FLOOR};
use crate::fit::problem::{Problem, StringProblem};
use crate::fit::score::{self, Judge};
use crate::fit::shopping;
use crate::fit::space;
use crate::makeable;
use crate::quantity::Metre;
use crate::report::LeanCore;

/// How many of the families and gauge classes of the sample are taken unasked: the best of each.
const CLASSES: usize = GaugeClass::ALL.len();
/// Cores thinner and thicker than that of a family's best which are tried.
const CORES: usize = 3;
/// Steps of ribbon to either side which are tried.
const RIBBONS: i32 = 8;
/// In how many scenarios the sample is asked for its best; more add hardly any string.
const ASKED: usize = 20;

/// What the choice of a sampled string needs: logarithms of desirabilities, tension and shade.
struct Sampled {
    at: usize,
    family: Family,
    class: GaugeClass,
    logs: [f64; COUNT],
    penalty: f64,
    tension: f64,
    shade: f64,
}

/// The strings of the sample that are the best of their family, or of their family and gauge class, in one of the
/// scenarios.
pub(super) fn sampled(fitting: &Fitting, i: usize, scenarios: &[Problem]) -> Vec<Candidate> {
    let (problem, string) = (&fitting.problem, &fitting.problem.strings[i]);
    let judge = Judge::new(problem, string);
    let near = beside(fitting, i);
    let made: Vec<&Made> = fitting.found[i].made.iter().chain(&near).collect();
    let mut all: Vec<Sampled> = Vec::with_capacity(made.len());
    let mut at = 0;
    while let Some(first) = made.get(at) {
        let of = first.construction.core;
        let arrangement = judge.arrangement(first.family, first.bands, of.material, of.build);
        let is_of = |at: usize| {
            made.get(at).is_some_and(|m| {
                let core = m.construction.core;
                m.family == first.family
                    && core.material.key == of.material.key
                    && core.build == of.build
            })
        };
        while is_of(at) {
            let diameter = made[at].construction.core.diameter;
            let core = judge.core(&arrangement, diameter);
            while is_of(at) && made[at].construction.core.diameter == diameter {
                let m = made[at];
                let (worths, penalty) = core.logs(&m.construction).expected();
                all.push(Sampled {
                    at,
                    family: m.family,
                    class: shopping::gauge_class(m.lean.tension, &m.bands),
                    logs: worths.map(libm::log),
                    penalty,
                    tension: m.lean.tension,
                    shade: judge.brightness_of(m.lean.brilliance),
                });
                at += 1;
            }
        }
    }
    let mut picked = vec![false; made.len()];
    let mut pick = |problem: &Problem, string: &StringProblem, by_class: bool| {
        let mut best = [[(f64::NEG_INFINITY, None); CLASSES]; Family::ALL.len()];
        for s in &all {
            let class = if by_class { s.class as usize } else { 0 };
            let best = &mut best[s.family as usize][class];
            let score = meant(s, problem, string);
            if score > best.0 {
                *best = (score, Some(s.at));
            }
        }
        for at in best.iter().flatten().filter_map(|(_, at)| *at) {
            picked[at] = true;
        }
    };
    pick(problem, string, true);
    for scenario in scenarios.iter().take(ASKED) {
        pick(scenario, &scenario.strings[i], false);
    }
    let chosen = made.iter().zip(&picked).filter(|(_, picked)| **picked);
    chosen.map(|(m, _)| candidates::judged(&judge, m)).collect()
}

/// Strings like the best told of each family, on cores and under ribbons a little thinner and thicker: what the sample
/// is too coarse for.
fn beside(fitting: &Fitting, i: usize) -> Vec<Made> {
    let string = &fitting.problem.strings[i];
    let mut made = Vec::new();
    let mut met = [false; Family::ALL.len()];
    for c in &fitting.told[i] {
        if core::mem::replace(&mut met[c.family as usize], true) {
            continue;
        }
        let windings: Vec<Winding> = c.construction.windings().copied().collect();
        let ribbons = if windings.is_empty() { 0..=0 } else { -RIBBONS..=RIBBONS };
        // The gauges of the whole space: between them might lie a string that the choice never saw.
        let gauges = space::core_gauges(c.family, c.bands.gauge);
        let own = c.construction.core.diameter.get();
        let at = gauges.iter().position(|d| d.get() > own - 1e-9).unwrap_or_default();
        for diameter in &gauges[at.saturating_sub(CORES)..gauges.len().min(at + CORES + 1)] {
            let core = Core { diameter: *diameter, ..c.construction.core };
            let met = LeanCore::new(&core, !windings.is_empty(), &string.setting);
            for ribbon in ribbons.clone() {
                let mut windings = windings.clone();
                if let Some(outer) = windings.last_mut() {
                    let thicker = f64::from(ribbon) * makeable::RIBBON_STEP_MM * 1e-3;
                    outer.thickness = Metre::new(outer.thickness.get() + thicker);
                }
                let construction = Construction::of(core, &windings);
                let is_rolled = windings.last().is_none_or(|w| {
                    let (thickness, outer) = (w.thickness.mm(), construction.outer_diameter().mm());
                    makeable::outer_ribbon_is_makeable(thickness, outer - 2.0 * thickness)
                });
                if !is_rolled {
                    continue;
                }
                let lean = met.wound(&windings);
                if admission::of_made(string, &c.bands, &construction, (&met, &lean)).is_none() {
                    let (family, grade, bands) = (c.family, c.grade, c.bands);
                    made.push(Made { construction, family, grade, bands, lean });
                }
            }
        }
    }
    made
}

/// The score of a sampled string for the problem as it could be meant: what the wishes move anew, the rest as it was.
/// Good enough to find the ones that count; those are then judged in full.
fn meant(s: &Sampled, problem: &Problem, string: &StringProblem) -> f64 {
    let ends = &string.ends;
    let ln = |worth: f64| libm::log(worth.max(FLOOR));
    let near =
        |target: f64| ln(d::two_sided(s.tension, ends.tension_low, target, ends.tension_high));
    let mut logs = s.logs;
    logs[Attribute::Feel as usize] = near(ends.tension_target);
    logs[Attribute::Power as usize] = near(ends.power_target);
    logs[Attribute::Brightness as usize] = ln(string.sought_brightness().worth(s.shade));
    let sum: f64 = logs.iter().zip(&problem.weights).map(|(log, weight)| log * weight).sum();
    sum / score::total_weight() - s.penalty
}
