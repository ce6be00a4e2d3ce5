//! What is a string worth to this person? Expected over constants drawn jointly.
//!
//! The score is the weighted sum of the expected logarithms of its desirabilities, less a penalty for every draw in
//! which it lies outside the bands of what is made. One draw serves all strings of a position: if polyamide is softer
//! than thought, every polyamide core is. Mass and length are as designed ([`Draw::weighed`]).
//!
//! A string's tension is computed first. What follows from core and tension ([`JudgedCore::pull`]), from the metals
//! ([`Judge::metals`]), from the answer to the bow ([`JudgedCore::bowed`]) and from the sound ([`JudgedCore::bright`],
//! [`JudgedCore::rings`]) are separate sums, and none of them is positive: so each has a bound, which the search prunes by.

mod bounds;
mod exact;

use crate::answer_to_bow::{self, BridgeLoad};
use crate::constant::{self, Which};
use crate::construction::{Build, Core, Family};
use crate::draw::Draw;
use crate::material::{self, CoreMaterial, Metal};
use crate::precedent::{self, Bands, Grade};
use crate::quantity::Metre;
use crate::report::{Four, LANES, LeanCore, LeanKind};

use super::desirability::{self as d, Attribute, COUNT, Desirabilities, FLOOR, OneSided, Target};
use super::problem::{BASE_WEIGHTS, Problem, StringProblem};

/// In how many registers the draws stand side by side.
const HALVES: usize = 2;
/// Over how many joint draws an expectation runs.
pub const DRAWS: usize = HALVES * LANES;
/// What a string costs for each unit of ln by which a draw puts it outside its bands.
pub const OUTSIDE: f64 = 0.5;
/// How many winding metals there are.
const METALS: usize = material::METALS.len();

/// The sum of the weights before any answer: what a weight is counted against, so that raising one leaves the others.
#[must_use]
pub fn total_weight() -> f64 {
    BASE_WEIGHTS.iter().sum()
}

/// ln of a desirability, floored.
fn ln(worth: f64) -> f64 {
    libm::log(worth.max(FLOOR))
}

/// A number in every draw.
pub type Drawn = [Four; HALVES];

fn drawn(of: impl Fn(usize) -> f64) -> Drawn {
    core::array::from_fn(|half| {
        let lanes: [f64; LANES] = core::array::from_fn(|lane| of(half * LANES + lane));
        Four::from(lanes)
    })
}

fn all(x: f64) -> Four {
    Four::splat(x)
}

/// Desirabilities, floored.
fn floored(worth: Four) -> Four {
    worth.max(all(FLOOR))
}

/// Desirabilities of values of which one is looked for.
fn worth_beside(target: &Target, value: Four) -> Four {
    let below = all(target.below) * (all(target.at) - value);
    let above = all(target.above) * (value - all(target.at));
    floored(all(1.0) - below.max(above))
}

/// Desirabilities of values, given by their logarithms.
fn worth_of(curve: &OneSided, log: Four) -> Four {
    let (none, slope) = curve.line();
    floored(((log - all(none)) * all(slope)).min(all(1.0)))
}

/// Desirabilities of room for the bow, dB.
fn worth_of_room(room: Four) -> Four {
    let (none, whole) = d::ROOM_ENDS;
    floored(((room - all(none)) * all(1.0 / (whole - none))).min(all(1.0)))
}

/// The mean of the logarithms of desirabilities, by one logarithm of their product: floored, eight of them multiply to
/// no less than 1e-14.
fn mean_ln(worth: &Drawn) -> f64 {
    let [a, b] = worth;
    libm::log((*a * *b).to_array().iter().product()) / DRAWS as f64
}

/// The largest modulus over density of metals in each draw.
fn stiffest(moduli: &[Drawn; METALS], metals: impl Iterator<Item = usize>) -> Drawn {
    metals.fold([all(0.0); HALVES], |most, m| {
        let density = all(material::METALS[m].density.value);
        core::array::from_fn(|h| most[h].max(moduli[m][h] / density))
    })
}

fn mean(values: &Drawn) -> f64 {
    values.iter().map(|half| half.to_array().iter().sum::<f64>()).sum::<f64>() / DRAWS as f64
}

/// All that the strings of one position are judged by.
#[derive(Clone, Debug)]
pub struct Judge<'a> {
    /// The whole question.
    pub problem: &'a Problem,
    /// The position.
    pub string: &'a StringProblem,
    weights: [f64; COUNT],
    /// The stretch that is looked for, by its logarithm.
    stretch: Target,
    /// The brightness that is looked for.
    brightness: Target,
    /// Of the cents that a decade of time costs.
    settling: OneSided,
    drift: OneSided,
    breaking: OneSided,
    tuning: OneSided,
    response: OneSided,
    ring: OneSided,
    /// Wave impedance over tension, and mass at pitch over it.
    impedance: f64,
    mass: f64,
    /// What the position gives under the bow in each draw.
    bridge_load: [BridgeLoad<Four>; HALVES],
    /// The largest modulus over density of any winding metal in each draw.
    stiffest: Drawn,
    /// ln of the dark end, and one over the way to the bright end.
    shade: (f64, f64),
    /// Moduli of the winding metals in each draw.
    moduli: [Drawn; METALS],
    /// The first of the draws; the others follow it.
    first: u64,
}

/// ln of a desirability: the same in every draw, or its own in each.
#[derive(Clone, Copy, Debug)]
enum Log {
    Same(f64),
    Drawn(Drawn),
}

/// ln of every desirability of a string, draw by draw, and by how much it lies outside its bands in each.
#[derive(Clone, Copy, Debug)]
pub struct Logs {
    of: [Log; COUNT],
    outside: Drawn,
}

impl Logs {
    /// Every desirability, as e to the mean of its logarithm; and the penalty.
    #[must_use]
    pub fn expected(&self) -> (Desirabilities, f64) {
        let mean_log = |log: &Log| match log {
            Log::Same(log) => *log,
            Log::Drawn(logs) => mean(logs),
        };
        (core::array::from_fn(|i| libm::exp(mean_log(&self.of[i]))), OUTSIDE * mean(&self.outside))
    }

    /// The score in every draw under these weights.
    #[must_use]
    pub fn scores(&self, weights: &[f64; COUNT]) -> [f64; DRAWS] {
        let mut same = 0.0;
        let mut sum = [all(0.0); HALVES];
        for (log, weight) in self.of.iter().zip(weights) {
            match log {
                Log::Same(log) => same += weight * log,
                Log::Drawn(logs) => {
                    for (sum, log) in sum.iter_mut().zip(logs) {
                        *sum += all(*weight) * *log;
                    }
                }
            }
        }
        let total = total_weight();
        let mut scores = [0.0; DRAWS];
        for (h, four) in scores.chunks_exact_mut(LANES).enumerate() {
            let score = (sum[h] + all(same)) / all(total) - all(OUTSIDE) * self.outside[h];
            four.copy_from_slice(&score.to_array());
        }
        scores
    }
}

/// A core's arrangement at a position, in every draw.
#[derive(Clone, Debug)]
pub struct Arrangement {
    /// The family of what is made of it.
    pub family: Family,
    /// The bands it must lie in.
    pub bands: Bands,
    /// Its material.
    pub material: &'static CoreMaterial,
    /// Its build.
    pub build: Build,
    central: LeanKind,
    kinds: [LeanKind; DRAWS],
    /// ln of the stretch band and of the largest breaking share.
    ln_stretch: (f64, f64),
    ln_breaking: f64,
}

/// A core of one diameter, in every draw.
#[derive(Clone, Copy, Debug)]
pub struct JudgedCore<'a> {
    judge: &'a Judge<'a>,
    /// Its arrangement.
    pub arrangement: &'a Arrangement,
    /// The core.
    pub core: Core,
    /// It, all constants central.
    pub central: LeanCore,
    draws: [LeanCore; DRAWS],
    axial: Drawn,
    ln_axial: Drawn,
    ln_breaking: Drawn,
    warmth: (Drawn, Drawn),
    damp: (Drawn, Drawn, Drawn),
    ratchet: Drawn,
    lossy: Drawn,
    fast_modulus: Drawn,
    beyond: Drawn,
    winding_loss: Drawn,
    limit: Drawn,
    torsion: Drawn,
    torsion_of_tube: Drawn,
    stiff_of_one: Drawn,
    inertia: f64,
    fast_slope: f64,
    area: f64,
}

/// Attributes that tension decides, draw by draw.
const BY_DRAW: [Attribute; 6] = [
    Attribute::Elasticity,
    Attribute::Settling,
    Attribute::Warmth,
    Attribute::Damp,
    Attribute::Durability,
    Attribute::Tuning,
];
/// Attributes that the bow decides, draw by draw: by tension, stiffness and twist.
const BY_BOW: [Attribute; 2] = [Attribute::Response, Attribute::BowRoom];

/// Cents that nobody hears: less than these a string is not said to move.
const STILL: f64 = 1e-3;

/// What one tension makes of a core: logarithms of the desirabilities that are the same in every draw, and those that
/// are not as they are.
#[derive(Clone, Copy, Debug)]
pub struct Row {
    tension: f64,
    feel: f64,
    power: f64,
    by_draw: [Drawn; BY_DRAW.len()],
    /// ln of its stretch.
    stretch: Drawn,
    /// By how much it lies outside its bands, ln: in stretch (below it negative), in breaking share.
    outside: [Drawn; 2],
    /// Cents of a decade: what rises with tension, and what falls with it.
    decade: [Drawn; 2],
    /// Cents by which warmth moves it: their part that goes with EA/T, and the rest.
    warmth: [Drawn; 2],
    /// Cents by which damp moves it: their parts that go with EA/T and with the core's share, and the rest.
    damp: [Drawn; 3],
}

impl<'a> Judge<'a> {
    /// A judge for one position.
    #[must_use]
    pub fn new(problem: &'a Problem, string: &'a StringProblem) -> Self {
        Self::over(problem, string, 0)
    }

    /// A judge over [`DRAWS`] draws from an even `first` on: other ones than those by which the set was chosen.
    #[must_use]
    pub fn over(problem: &'a Problem, string: &'a StringProblem, first: u64) -> Self {
        let total = total_weight();
        let (dark, bright) = string.position.brilliance;
        let (dark, bright) = (libm::log(dark), libm::log(bright));
        let falling = |ends: (f64, f64)| OneSided::new(ends.1, ends.0);
        let moduli: [Drawn; METALS] = core::array::from_fn(|m| {
            let modulus =
                |k| Draw::weighed(first + k as u64).metal(&material::METALS[m], Which::Modulus);
            drawn(modulus)
        });
        let resists = drawn(|k| {
            let draw = Draw::weighed(first + k as u64);
            draw.general(&constant::BRIDGE_RESISTANCE)
        });
        let bridge_load = answer_to_bow::bridge_load(&string.setting);
        Self {
            problem,
            string,
            weights: problem.weights.map(|w| w / total),
            stretch: string.sought_stretch(),
            brightness: string.sought_brightness(),
            settling: falling(d::decade_ends()),
            drift: falling(d::DRIFT_ENDS),
            breaking: falling(d::BREAKING_ENDS),
            tuning: falling(d::TUNING_ENDS),
            response: OneSided::new(string.ends.speaks.0, string.ends.speaks.1),
            ring: if problem.ring_short {
                falling(d::RING_ENDS)
            } else {
                OneSided::new(d::RING_ENDS.0, d::RING_ENDS.1)
            },
            shade: (dark, 1.0 / (bright - dark)),
            impedance: string.ends.impedance_per_tension,
            mass: string.ends.impedance_per_tension * string.ends.impedance_per_tension,
            bridge_load: resists.map(|times| bridge_load.resisting(times.ln(), times)),
            stiffest: stiffest(&moduli, 0..METALS),
            moduli,
            first,
        }
    }

    /// The largest modulus over density of these winding metals in each draw, by their positions.
    #[must_use]
    pub fn stiffest(&self, metals: impl Iterator<Item = usize>) -> Drawn {
        stiffest(&self.moduli, metals)
    }

    /// The same of every winding metal.
    #[must_use]
    pub fn stiffest_of_all(&self) -> &Drawn {
        &self.stiffest
    }

    fn weight(&self, attribute: Attribute) -> f64 {
        self.weights[attribute as usize]
    }

    /// An arrangement of a family, met in every draw.
    #[must_use]
    pub fn arrangement(
        &self,
        family: Family,
        bands: Bands,
        material: &'static CoreMaterial,
        build: Build,
    ) -> Arrangement {
        let (setting, wound) = (&self.string.setting, !family.is_plain());
        let kinds: [LeanKind; DRAWS] = core::array::from_fn(|k| {
            LeanKind::new(material, build, wound, setting, &Draw::weighed(self.first + k as u64))
        });
        Arrangement {
            family,
            bands,
            material,
            build,
            central: LeanKind::new(material, build, wound, setting, &Draw::CENTRAL),
            kinds,
            ln_stretch: (libm::log(bands.stretch.0), libm::log(bands.stretch.1)),
            ln_breaking: libm::log(bands.breaking_share),
        }
    }

    /// A core of that diameter.
    #[must_use]
    pub fn core(&'a self, arrangement: &'a Arrangement, diameter: Metre) -> JudgedCore<'a> {
        let Arrangement { material, build, central, .. } = *arrangement;
        let wire = central.wire_strength(diameter);
        let draws = arrangement.kinds.map(|kind| kind.drawn_to(diameter, wire));
        let central = central.drawn_to(diameter, wire);
        let axial = drawn(|k| draws[k].axial.get());
        let bending = draws.map(|core| core.bending());
        let damp = draws.map(|core| core.drifts.damp());
        let twisting = draws.map(|core| core.twisting());
        let wound = !arrangement.family.is_plain();
        JudgedCore {
            judge: self,
            arrangement,
            core: Core { material, build, diameter },
            central,
            ln_axial: axial.map(Four::ln),
            ln_breaking: drawn(|k| draws[k].breaking_force()).map(Four::ln),
            warmth: (drawn(|k| draws[k].drifts.warmth.0), drawn(|k| draws[k].drifts.warmth.1)),
            damp: (drawn(|k| damp[k].0), drawn(|k| damp[k].1), drawn(|k| damp[k].2)),
            ratchet: drawn(|k| draws[k].ratchet),
            lossy: drawn(|k| bending[k].lossy),
            fast_modulus: drawn(|k| bending[k].fast_modulus),
            beyond: drawn(|k| bending[k].beyond),
            winding_loss: drawn(|k| bending[k].winding_loss),
            limit: drawn(|k| bending[k].limit),
            torsion: drawn(|k| twisting[k].stiffness),
            torsion_of_tube: drawn(|k| twisting[k].of_tube),
            stiff_of_one: drawn(|k| {
                twisting[k].stiff_of_one * if wound { twisting[k].stiffening } else { 1.0 }
            }),
            inertia: central.twisting().inertia,
            fast_slope: bending[0].fast_slope,
            area: bending[0].area,
            axial,
            draws,
        }
    }

    /// Logarithms of what the metals decide: price, availability, care.
    #[must_use]
    pub fn of_metals(&self, family: Family, layers: &[&'static Metal]) -> [(Attribute, f64); 3] {
        let price = d::price(family, layers.iter().copied());
        let worth = d::price_worth(price, self.problem.price_wish, layers.len());
        let outer = layers.last().copied();
        let string = self.string;
        let in_class = precedent::grade_in_class(string.position, family, &string.conditions);
        let covered = outer.map(|metal| precedent::metal_grade(string.position, family, metal));
        let is_everyday = [Some(in_class), covered].into_iter().flatten().max();
        let available = if is_everyday == Some(Grade::Everyday) { 1.0 } else { d::SOMETIMES };
        [
            (Attribute::Price, ln(worth)),
            (Attribute::Availability, ln(available)),
            (Attribute::Care, ln(d::care(outer, family, self.problem.acid_sweat))),
        ]
    }

    /// The weighted sum of [`Self::of_metals`].
    #[must_use]
    pub fn metals(&self, family: Family, layers: &[&'static Metal]) -> f64 {
        self.of_metals(family, layers).iter().map(|(a, ln)| self.weight(*a) * ln).sum()
    }

    /// Where between dark (0) and bright (1) a string lies whose brilliance ends at that frequency.
    #[must_use]
    pub fn brightness_of(&self, brilliance: f64) -> f64 {
        (libm::log(brilliance.max(1.0)) - self.shade.0) * self.shade.1
    }
}

/// The weighted sum of logarithms of desirabilities, less a penalty.
#[must_use]
pub fn score(desirabilities: &Desirabilities, weights: &[f64; COUNT], penalty: f64) -> f64 {
    let sum: f64 = desirabilities.iter().zip(weights).map(|(d, w)| w * libm::log(*d)).sum();
    sum / total_weight() - penalty
}
