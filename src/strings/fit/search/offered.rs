//! What is made for one position: its families, what they are covered with, and how their cores are arranged.

use crate::construction::{Construction, Core, Family};
use crate::makeable;
use crate::material;
use crate::precedent::{self, Bands, Grade};

use crate::fit::admission;
use crate::fit::problem::{Problem, StringProblem};
use crate::fit::score::{Arrangement, Judge};
use crate::fit::space::{self, Stack};

/// A stack with what its metals are worth.
pub(super) struct Covering {
    pub(super) stack: Stack,
    pub(super) grade: Grade,
    pub(super) worth: f64,
}

/// A family at the position.
pub(super) struct Making {
    pub(super) family: Family,
    pub(super) coverings: Vec<Covering>,
}

impl Making {
    /// What the covering that is worth most is worth.
    pub(super) fn dearest(&self) -> f64 {
        self.coverings.first().map_or(0.0, |covering| covering.worth)
    }
}

/// The families made here, each with its coverings, and the core arrangements of each.
pub(super) fn makings(
    problem: &Problem,
    string: &StringProblem,
    judge: &Judge,
) -> (Vec<Making>, Vec<(usize, Arrangement)>) {
    let stacks = space::stacks();
    let (mut makings, mut arrangements) = (Vec::new(), Vec::new());
    for family in Family::ALL {
        if string.family.is_some_and(|only| only != family) {
            continue;
        }
        let Some(bands) = precedent::bands(string.position, family, &string.conditions) else {
            continue;
        };
        let mut coverings: Vec<Covering> = if family.is_plain() {
            let worth = judge.metals(family, &[]);
            vec![Covering { stack: Stack { under: None, outer: 0 }, grade: bands.grade, worth }]
        } else {
            stacks.iter().filter_map(|s| covering(problem, judge, family, &bands, s)).collect()
        };
        coverings.sort_by(|a, b| b.worth.total_cmp(&a.worth));
        for (material, build) in space::arrangements(family, &space::SPACE) {
            let barred = admission::of_class(problem, material.class).is_some();
            if !barred && !coverings.is_empty() {
                let arrangement = judge.arrangement(family, bands, material, build);
                arrangements.push((makings.len(), arrangement));
            }
        }
        makings.push(Making { family, coverings });
    }
    (makings, arrangements)
}

fn covering(
    problem: &Problem,
    judge: &Judge,
    family: Family,
    bands: &Bands,
    stack: &Stack,
) -> Option<Covering> {
    let outer = &material::METALS[stack.outer];
    if admission::of_metal(problem, outer).is_some() {
        return None;
    }
    let grade = admission::grade(judge.string, family, bands, Some(outer)).ok()?;
    let worth = match stack.under.map(|u| (&material::METALS[u.metal], u.layers)) {
        None => judge.metals(family, &[outer]),
        Some((inner, 1)) => judge.metals(family, &[inner, outer]),
        Some((inner, _)) => judge.metals(family, &[inner, inner, outer]),
    };
    Some(Covering { stack: *stack, grade, worth })
}

/// How many makeable constructions there are, of whatever family, from the thinnest to the thickest string made here.
pub(super) fn size(string: &StringProblem) -> u64 {
    let made = || {
        Family::ALL.iter().filter_map(|f| precedent::bands(string.position, *f, &string.conditions))
    };
    let thin = made().map(|b| b.gauge.0).fold(f64::INFINITY, f64::min);
    let thick = made().map(|b| b.gauge.1).fold(0.0, f64::max);
    let stacks = space::stacks().len() as u64 * u64::from(space::ribbons());
    let mut size = 0;
    for family in Family::ALL {
        let each = if family.is_plain() { 1 } else { stacks };
        for (material, build) in space::arrangements(family, &space::SPACE) {
            let makeable =
                space::core_gauges(family, (thin, thick)).into_iter().filter(|diameter| {
                    let core = Core { material, build, diameter: *diameter };
                    makeable::broken(&Construction::of(core, &[])).is_none()
                });
            size += makeable.count() as u64 * each;
        }
    }
    size
}
