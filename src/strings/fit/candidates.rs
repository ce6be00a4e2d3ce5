//! What is made for this position? A sample across every family, and what leaves the rest out.
//!
//! Not a list of strings: core kind, grade and gauge run over makeable sizes, tension over the band that is made,
//! and the mass of the winding is solved for that tension, rounded to ribbon that is rolled. It draws the picture of
//! what there is, stands for today's strings, and says why a position stays empty; the best string is found elsewhere,
//! in the whole space ([`super::search`]).

use crate::construction::{Build, Construction, Core, CoreType, Family, Form, Winding};
use crate::makeable::{self, Limit};
use crate::material::{self, Metal};
use crate::physics::{mass, tension};
use crate::precedent::{self, Bands, Conditions, Grade};
use crate::quantity::{KilogramPerCubicMetre, KilogramPerMetre, Metre, Newton, Ratio};
use crate::report::{Lean, LeanCore};

use super::admission::{self, Exclusion};
use super::desirability::Desirabilities;

use super::problem::{Problem, StringProblem};
use super::score::{self, Judge, JudgedCore};
use super::space;

/// A string that could stand at a position, with what the choice needs of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Candidate {
    /// What it is made of.
    pub construction: Construction,
    /// Its family.
    pub family: Family,
    /// How commonly that is made here.
    pub grade: Grade,
    /// The bands of its family here.
    pub bands: Bands,
    /// Its tension at pitch, newtons.
    pub tension: f64,
    /// Its stretch at pitch.
    pub stretch: f64,
    /// Days until it has settled.
    pub settling: f64,
    /// How far warmth moves it in the time that it goes untuned, cents.
    pub warmth: f64,
    /// How far damp moves it in that time, cents.
    pub damp: f64,
    /// Where between dark (0) and bright (1) it lies.
    pub brightness: f64,
    /// How well it meets each wish.
    pub desirabilities: Desirabilities,
    /// What the draws cost it in which it lies outside its bands.
    pub penalty: f64,
    /// Weighted sum of the logarithms over the weights before any answer, less the penalty.
    pub score: f64,
}

impl Candidate {
    /// Its core type.
    #[must_use]
    pub fn core_type(&self) -> CoreType {
        CoreType::of(self.family, self.construction.core.material)
    }
}

/// A string that is made.
#[derive(Clone, Debug, PartialEq)]
pub struct Made {
    /// What it is made of.
    pub construction: Construction,
    /// Its family.
    pub family: Family,
    /// How commonly that is made here.
    pub grade: Grade,
    /// The bands of its family here.
    pub bands: Bands,
    /// Its numbers.
    pub lean: Lean,
}

/// What a look at a position found.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Found {
    /// A sample of all that is made.
    pub made: Vec<Made>,
    /// How many constructions were examined.
    pub examined: usize,
    /// Why the others were left out, and how many for each reason.
    pub excluded: Vec<(Exclusion, usize)>,
}

impl Found {
    fn exclude(&mut self, why: Exclusion) {
        self.examined += 1;
        // What stands in the way of making it is told as one reason.
        match self.excluded.iter_mut().find(|(e, _)| e.key() == why.key()) {
            Some((_, count)) => *count += 1,
            None => self.excluded.push((why, 1)),
        }
    }
}

/// Core diameters tried across a family's range; more make the answer finer and the search slower in proportion.
const CORE_STEPS: u32 = 14;
/// Tensions tried across a family's band, as shares of its width.
const TENSIONS: [f64; 5] = [0.1, 0.3, 0.5, 0.7, 0.9];
/// Share of the winding's mass that the inner of two layers takes.
const INNER_SHARE: f64 = 0.55;
const NO_BEDDING: Ratio = Ratio::new(0.0);
const NO_GAP: Ratio = Ratio::new(0.0);
fn metals() -> impl Iterator<Item = &'static Metal> {
    material::METALS.iter()
}

/// Gauges from `low` to `high`, evenly, on hundredths of a millimetre; on half hundredths below 0.35 mm.
fn gauges(low: f64, high: f64) -> Vec<Metre> {
    let step = if high < 0.35e-3 { 5e-6 } else { 1e-5 };
    let mut all: Vec<f64> = (0..=CORE_STEPS)
        .map(|i| {
            ((low + (high - low) * f64::from(i) / f64::from(CORE_STEPS)) / step).round() * step
        })
        .collect();
    all.dedup_by(|a, b| (*a - *b).abs() < step / 2.0);
    all.into_iter().filter(|d| *d >= low - 1e-9 && *d <= high + 1e-9).map(Metre::new).collect()
}

/// Thickness on the step in which ribbon is rolled.
fn rolled(thickness: Metre) -> Metre {
    Metre::from_mm((thickness.mm() / makeable::RIBBON_STEP_MM).round() * makeable::RIBBON_STEP_MM)
}

/// A position with the bands of one family in it.
struct At<'a> {
    problem: &'a Problem,
    string: &'a StringProblem,
    bands: Bands,
}

/// A sample of what is made for this position.
#[must_use]
pub fn look(problem: &Problem, string: &StringProblem) -> Found {
    let mut found = Found::default();
    for family in Family::ALL {
        if string.family.is_some_and(|only| only != family) {
            found.exclude(Exclusion::OtherFamily);
            continue;
        }
        let Some(bands) = precedent::bands(string.position, family, &string.conditions) else {
            let unlimited = Conditions { most_tension: None, ..string.conditions };
            let made = precedent::bands(string.position, family, &unlimited).is_some();
            found.exclude(if made { Exclusion::Tension } else { Exclusion::NobodyMakesIt });
            continue;
        };
        let at = At { problem, string, bands };
        for (material, build) in space::arrangements(family, &space::SAMPLE) {
            let plain = family.is_plain();
            if let Some(why) = admission::of_class(problem, material.class) {
                found.exclude(why);
                continue;
            }
            let (low, high) = space::core_range(family, bands.gauge);
            for diameter in gauges(low, high) {
                let core = Core { material, build, diameter };
                if plain {
                    let lean = LeanCore::new(&core, false, &string.setting);
                    admit(&mut found, &at, &lean, core, &[]);
                } else {
                    wind(&mut found, &at, core);
                }
            }
        }
    }
    found
}

/// Winds one core to each tension with each stack of metals.
fn wind(found: &mut Found, at: &At, core: Core) {
    if let Build::Strand { layout, .. } = core.build
        && !makeable::strand_wire_is_makeable(core.diameter, layout)
    {
        return found.exclude(Exclusion::NotMakeable(Limit::StrandWire));
    }
    let bands = &at.bands;
    let lean = LeanCore::new(&core, true, &at.string.setting);
    for share in TENSIONS {
        let wanted = Newton::new(bands.tension.0 + share * (bands.tension.1 - bands.tension.0));
        let stretch = tension::stretch(wanted, lean.axial).get();
        if stretch < bands.stretch.0 || stretch > bands.stretch.1 {
            found.exclude(Exclusion::Stretch);
            continue;
        }
        let winding = lean.winding_for(wanted);
        let whole = winding + lean.mass;
        if winding < bands.winding_share.0 * whole || winding > bands.winding_share.1 * whole {
            found.exclude(Exclusion::WindingShare);
            continue;
        }
        for outer in metals().filter(|m| m.outer) {
            if let Some(why) = admission::of_metal(at.problem, outer) {
                found.exclude(why);
                continue;
            }
            if let Some(layer) = layer(outer, core.diameter, winding) {
                admit(found, at, &lean, core, &[layer]);
            }
            for inner in metals().filter(|m| space::SAMPLE.inner_metals.contains(&m.key)) {
                let Some(first) = under_layer(inner, core.diameter, winding * INNER_SHARE) else {
                    continue;
                };
                let under = Metre::new(core.diameter.get() + 2.0 * first.thickness.get());
                let taken = mass::winding(&first, density(inner), first.thickness, core.diameter);
                if let Some(second) = layer(outer, under, winding - taken.get()) {
                    admit(found, at, &lean, core, &[first, second]);
                }
            }
        }
    }
}

fn density(metal: &Metal) -> KilogramPerCubicMetre {
    KilogramPerCubicMetre::new(metal.density.value)
}

/// An outermost layer of about that mass a length: ribbon, smooth under the hand. `None` if none is rolled so.
fn layer(metal: &'static Metal, under: Metre, mass_wanted: f64) -> Option<Winding> {
    let made_mm = (makeable::thinnest_outer_ribbon_mm(under.mm()), makeable::RIBBON_MM.1);
    shaped(metal, Form::Flat, made_mm, under, mass_wanted)
}

/// A layer under another one: ribbon if it is rolled so, else round wire.
fn under_layer(metal: &'static Metal, under: Metre, mass_wanted: f64) -> Option<Winding> {
    shaped(metal, Form::Flat, makeable::RIBBON_MM, under, mass_wanted)
        .or_else(|| shaped(metal, Form::Round, makeable::WIRE_MM, under, mass_wanted))
}

fn shaped(
    metal: &'static Metal,
    form: Form,
    made_mm: (f64, f64),
    under: Metre,
    mass_wanted: f64,
) -> Option<Winding> {
    let wanted = KilogramPerMetre::new(mass_wanted);
    let thickness =
        rolled(mass::winding_thickness(density(metal), form, NO_BEDDING, under, wanted)?);
    let (thin, thick) = made_mm;
    let is_made = thickness.mm() > thin - 1e-9 && thickness.mm() < thick + 1e-9;
    is_made.then_some(Winding { metal, form, thickness, bedding: NO_BEDDING, gap: NO_GAP })
}

fn admit(found: &mut Found, at: &At, core: &LeanCore, of: Core, windings: &[Winding]) {
    let construction = Construction::of(of, windings);
    let lean = core.wound(windings);
    let family = construction.family();
    let outer = windings.last().map(|w| w.metal);
    let grade = match admission::of_made(at.string, &at.bands, &construction, (core, &lean)) {
        Some(why) => Err(why),
        None => admission::grade(at.string, family, &at.bands, outer),
    };
    match grade {
        Ok(grade) => {
            found.examined += 1;
            found.made.push(Made { construction, family, grade, bands: at.bands, lean });
        }
        Err(why) => found.exclude(why),
    }
}

/// A string, judged by what this person wishes.
#[must_use]
pub fn judged(judge: &Judge, made: &Made) -> Candidate {
    let core = made.construction.core;
    let arrangement = judge.arrangement(made.family, made.bands, core.material, core.build);
    judged_on(judge, &judge.core(&arrangement, core.diameter), made)
}

/// The same, where its core has been met already.
#[must_use]
pub fn judged_on(judge: &Judge, core: &JudgedCore, made: &Made) -> Candidate {
    let (desirabilities, penalty) = core.desirabilities(&made.construction);
    Candidate {
        construction: made.construction,
        family: made.family,
        grade: made.grade,
        bands: made.bands,
        tension: made.lean.tension,
        stretch: made.lean.stretch,
        settling: made.lean.settling,
        warmth: made.lean.moved.warmth.abs(),
        damp: made.lean.damp(),
        brightness: judge.brightness_of(made.lean.brilliance),
        score: score::score(&desirabilities, &judge.problem.weights, penalty),
        desirabilities,
        penalty,
    }
}
