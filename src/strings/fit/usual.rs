//! Which string is the most usual at a position? The one nearest the middle of what is made.

use core::cmp::Ordering;

use crate::construction::{Build, Construction, Core, Form};
use crate::draw::Draw;
use crate::makeable;
use crate::material;
use crate::physics::mass;
use crate::precedent::Grade;
use crate::quantity::{KilogramPerCubicMetre, KilogramPerMetre, Metre, Newton, Ratio};
use crate::report::{LeanCore, LeanKind};

use super::admission;
use super::candidates::Made;
use super::problem::StringProblem;
use super::space::{self, Stack};

/// How far a value lies from the middle of its band, as a share of it, so that no value speaks louder than another.
fn from_middle(value: f64, (low, high): (f64, f64)) -> f64 {
    (value - (low + high) / 2.0).abs() / (high - low)
}

/// How unusual a string is: how commonly it is made, and how far it lies from the middle.
type Oddness = (Grade, f64);

fn by_oddness<T>(a: &(Oddness, T), b: &(Oddness, T)) -> Ordering {
    a.0.0.cmp(&b.0.0).then(a.0.1.total_cmp(&b.0.1))
}

/// By tension and gauge.
fn oddness(m: &Made) -> Oddness {
    let tension = from_middle(m.lean.tension, m.bands.tension);
    (m.grade, tension + from_middle(m.lean.gauge, m.bands.gauge))
}

/// By tension, gauge and stretch, which goes by ratios: it tells a rope too stiff for its note from one that is bought.
fn oddness_with_stretch(m: &Made) -> Oddness {
    let (grade, odd) = oddness(m);
    let (low, high) = m.bands.stretch;
    (grade, odd + from_middle(libm::log(m.lean.stretch), (libm::log(low), libm::log(high))))
}

/// The string whose tension and gauge lie nearest the middle: how bright strings usually are at the position.
#[must_use]
pub(super) fn most_usual<'a>(made: impl Iterator<Item = &'a Made>) -> Option<&'a Made> {
    made.map(|m| (oddness(m), m)).min_by(by_oddness).map(|(_, m)| m)
}

/// How many of the sample are tried until one has its like in the space.
const TRIED: usize = 12;

/// The most usual string that could also be recommended: of the space, like the most usual of these from the sample.
#[must_use]
pub(super) fn most_usual_of_space<'a>(
    string: &StringProblem,
    sampled: impl Iterator<Item = &'a Made>,
    fits: impl Fn(&Made) -> bool,
) -> Option<Made> {
    let mut sampled: Vec<(Oddness, &Made)> =
        sampled.filter(|m| fits(m)).map(|m| (oddness_with_stretch(m), m)).collect();
    sampled.sort_by(by_oddness);
    let like = |m: &Made| {
        let like = like(string, m).into_iter().filter(|m| fits(m));
        like.map(|m| (oddness_with_stretch(&m), m)).min_by(by_oddness).map(|(_, m)| m)
    };
    sampled.into_iter().take(TRIED).find_map(|(_, m)| like(m))
}

/// Gauges of the core to either side of the sampled one's which are tried.
const GAUGES: usize = 2;

/// Strings of the space like a sampled one: of the same material and layout, about as thick, under as many layers and
/// the same outermost metal, and about as taut.
fn like(string: &StringProblem, sampled: &Made) -> Vec<Made> {
    let of = &sampled.construction;
    let gauges = space::core_gauges(sampled.family, sampled.bands.gauge);
    let own = of.core.diameter.get();
    let at = gauges.iter().position(|d| d.get() > own - 1e-9).unwrap_or(gauges.len());
    let near = &gauges[at.saturating_sub(GAUGES)..gauges.len().min(at + GAUGES + 1)];
    let is_like = |stack: &Stack| {
        let outer = of.outer_winding().map(|w| w.metal.key);
        outer == Some(material::METALS[stack.outer].key) && stack.layers() == of.windings().count()
    };
    let stacks: Vec<Stack> = space::stacks().into_iter().filter(is_like).collect();
    let mut made = Vec::new();
    for (material, build) in space::arrangements(sampled.family, &space::SPACE) {
        if material.key != of.core.material.key || !is_laid_alike(build, of.core.build) {
            continue;
        }
        let kind = LeanKind::new(
            material,
            build,
            !sampled.family.is_plain(),
            &string.setting,
            &Draw::CENTRAL,
        );
        for diameter in near {
            let core = Core { material, build, diameter: *diameter };
            let met = kind.at(*diameter);
            let wound = stacks.iter().filter_map(|s| tuned(s, core, &met, sampled.lean.tension));
            let plain = sampled.family.is_plain().then(|| Construction::of(core, &[]));
            for construction in wound.chain(plain) {
                let windings: Vec<_> = construction.windings().copied().collect();
                let lean = met.wound(&windings);
                let bands = &sampled.bands;
                if admission::of_made(string, bands, &construction, (&met, &lean)).is_none() {
                    made.push(Made { construction, lean, ..sampled.clone() });
                }
            }
        }
    }
    made
}

fn is_laid_alike(one: Build, other: Build) -> bool {
    match (one, other) {
        (Build::Strand { layout, .. }, Build::Strand { layout: other, .. }) => layout == other,
        // Gut is sampled at the twists of the space.
        (Build::Twisted { .. }, _) => one == other,
        _ => true,
    }
}

/// A core under a stack whose outermost ribbon brings it nearest to that tension; `None` if none is rolled so.
fn tuned(stack: &Stack, core: Core, lean: &LeanCore, tension: f64) -> Option<Construction> {
    let mut wound = lean.bare();
    if let Some(under) = stack.under {
        let metal = &material::METALS[under.metal];
        for _ in 0..under.layers {
            let (density, modulus) = (metal.density.value, metal.modulus.value);
            wound = wound.under(under.form, density, modulus, under.thickness);
        }
    }
    let density = KilogramPerCubicMetre::new(material::METALS[stack.outer].density.value);
    let wanted = KilogramPerMetre::new(lean.winding_for(Newton::new(tension)) - wound.mass);
    let (close, gauge) = (Ratio::new(0.0), Metre::new(wound.gauge));
    let ribbon = mass::winding_thickness(density, Form::Flat, close, gauge, wanted)?;
    let step = libm::round((ribbon.mm() - makeable::RIBBON_MM.0) / makeable::RIBBON_STEP_MM);
    let is_made = makeable::outer_ribbon_is_makeable(ribbon.mm(), gauge.mm());
    // A small whole number.
    let is_rolled = is_made && step >= 0.0 && step < f64::from(space::ribbons());
    is_rolled.then(|| stack.round(core, space::ribbon(step as u32)))
}
