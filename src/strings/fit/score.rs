//! What is a string worth to this person? Expected over constants drawn jointly.
//!
//! The score is the weighted sum of the expected logarithms of its desirabilities, less a penalty for every draw in
//! which it lies outside the bands of what is made. One draw serves all strings of a place: if polyamide is softer
//! than thought, every polyamide core is. Mass and length are as designed ([`Draw::weighed`]).
//!
//! A string's tension is met first. What follows from core and tension ([`JudgedCore::pull`]), from the metals
//! ([`Judge::metals`]), from the answer to the bow ([`JudgedCore::bowed`]) and from the sound ([`JudgedCore::bright`],
//! [`JudgedCore::rings`]) are separate sums, and none of them is positive: so each has a bound, which the search prunes by.

use core::f64::consts::PI;

use crate::answer_to_bow::{self, Answer, Footing};
use crate::constant::{self, Which};
use crate::construction::{Build, Construction, Core, Family};
use crate::draw::Draw;
use crate::material::{self, CoreMaterial, FAST_SLOPE_STRESS, Metal};
use crate::precedent::{Bands, Grade};
use crate::quantity::Metre;
use crate::report::{Four, LANES, LeanCore, LeanKind, Wound};

use super::desirability::{self as d, Attribute, COUNT, Desirabilities, FLOOR, OneSided};
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

/// All that the strings of one place are judged by.
#[derive(Clone, Debug)]
pub struct Judge<'a> {
    /// The whole question.
    pub problem: &'a Problem,
    /// The place.
    pub string: &'a StringProblem,
    weights: [f64; COUNT],
    elasticity: OneSided,
    settling: OneSided,
    drift: OneSided,
    breaking: OneSided,
    tuning: OneSided,
    response: OneSided,
    ring: OneSided,
    /// Wave impedance over tension, and mass at pitch over it.
    impedance: f64,
    mass: f64,
    /// What the place gives under the bow in each draw.
    footing: [Footing<Four>; HALVES],
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

/// A core's arrangement at a place, in every draw.
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
    /// Weighted worth of what follows from the core alone.
    fixed: f64,
    /// The worth of settling.
    settling: Drawn,
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
    fixed_drift: Drawn,
    body_drift: Drawn,
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
const BY_DRAW: [Attribute; 4] =
    [Attribute::Elasticity, Attribute::Drift, Attribute::Durability, Attribute::Tuning];
/// Attributes that the bow decides, draw by draw: by tension, stiffness and twist.
const BY_BOW: [Attribute; 2] = [Attribute::Response, Attribute::BowRoom];

/// What one tension makes of a core: logarithms of the desirabilities that are the same in every draw, and those that
/// are not as they are.
#[derive(Clone, Copy, Debug)]
pub struct Row {
    tension: f64,
    feel: f64,
    power: f64,
    by_draw: [Drawn; BY_DRAW.len()],
    /// By how much it lies outside its bands, ln: in stretch (below it negative), in breaking share.
    outside: [Drawn; 2],
    /// The part of the drift that changes sign somewhere, and the drift.
    warmth: Drawn,
    drift: Drawn,
}

impl<'a> Judge<'a> {
    /// A judge for one place.
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
        let footing = answer_to_bow::footing(&string.setting);
        Self {
            problem,
            string,
            weights: problem.weights.map(|w| w / total),
            elasticity: OneSided::new(d::STRETCH_ENDS.0, d::STRETCH_ENDS.1),
            settling: falling(d::SETTLING_ENDS),
            drift: falling(d::DRIFT_ENDS),
            breaking: falling(d::BREAKING_ENDS),
            tuning: falling(d::TUNING_ENDS),
            response: OneSided::new(string.ends.speaks.0, string.ends.speaks.1),
            ring: OneSided::new(d::RING_ENDS.0, d::RING_ENDS.1),
            shade: (dark, 1.0 / (bright - dark)),
            impedance: string.ends.impedance_per_tension,
            mass: string.ends.impedance_per_tension * string.ends.impedance_per_tension,
            footing: resists.map(|times| footing.resisting(times.ln(), times)),
            stiffest: stiffest(&moduli, 0..METALS),
            moduli,
            first,
        }
    }

    /// The largest modulus over density of these winding metals in each draw, by their places.
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
        let setting = &self.string.setting;
        let kinds: [LeanKind; DRAWS] = core::array::from_fn(|k| {
            LeanKind::new(material, build, setting, &Draw::weighed(self.first + k as u64))
        });
        let wound = !family.is_plain();
        let settling =
            drawn(|k| self.settling.of_log(libm::log(kinds[k].settling(wound)))).map(floored);
        let fixed = self.weight(Attribute::Settling) * mean_ln(&settling)
            + self.weight(Attribute::FittersJudgement) * ln(material.climate_judgement);
        Arrangement {
            family,
            bands,
            material,
            build,
            central: LeanKind::new(material, build, setting, &Draw::CENTRAL),
            kinds,
            fixed,
            settling,
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
        let drift = draws.map(|core| core.drift_parts());
        let twisting = draws.map(|core| core.twisting());
        let wound = !arrangement.family.is_plain();
        JudgedCore {
            judge: self,
            arrangement,
            core: Core { material, build, diameter },
            central,
            ln_axial: axial.map(Four::ln),
            ln_breaking: drawn(|k| draws[k].breaking_force()).map(Four::ln),
            warmth: (drawn(|k| drift[k].0.0), drawn(|k| drift[k].0.1)),
            fixed_drift: drawn(|k| drift[k].1),
            body_drift: drawn(|k| drift[k].2),
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
    pub fn of_metals(
        &self,
        family: Family,
        grade: Grade,
        layers: &[&'static Metal],
    ) -> [(Attribute, f64); 3] {
        let price = d::price(family, layers.iter().copied());
        let worth = d::price_worth(price, self.problem.price_wish, layers.len());
        let available = if grade == Grade::Everyday { 1.0 } else { d::SOMETIMES };
        let outer = layers.last().copied();
        [
            (Attribute::Price, ln(worth)),
            (Attribute::Availability, ln(available)),
            (Attribute::Care, ln(d::care(outer, family, self.problem.acid_sweat))),
        ]
    }

    /// The weighted sum of [`Self::of_metals`].
    #[must_use]
    pub fn metals(&self, family: Family, grade: Grade, layers: &[&'static Metal]) -> f64 {
        self.of_metals(family, grade, layers).iter().map(|(a, ln)| self.weight(*a) * ln).sum()
    }

    /// Where between dark (0) and bright (1) a string lies whose brilliance ends at that frequency.
    #[must_use]
    pub fn place(&self, brilliance: f64) -> f64 {
        (libm::log(brilliance.max(1.0)) - self.shade.0) * self.shade.1
    }
}

/// By how much values lie outside a band, all in ln: below it negative.
fn beyond(log: Four, (low, high): (f64, f64)) -> Four {
    let zero = all(0.0);
    (log - all(low)).min(zero) + (log - all(high)).max(zero)
}

impl Row {
    /// Distance outside the bands in each draw, ln.
    fn is_outside(&self) -> Drawn {
        core::array::from_fn(|h| self.outside[0][h].abs() + self.outside[1][h])
    }
}

impl JudgedCore<'_> {
    /// Weighted worth of what follows from the core alone: settling, and what fitters say of it.
    #[must_use]
    pub fn fixed(&self) -> f64 {
        self.arrangement.fixed
    }

    /// What that tension makes of it in every draw.
    #[must_use]
    pub fn row(&self, tension: f64) -> Row {
        let judge = self.judge;
        let ends = &judge.string.ends;
        let Arrangement { ln_stretch, ln_breaking, .. } = *self.arrangement;
        let none = [all(0.0); HALVES];
        let mut row = Row {
            tension,
            feel: ln(d::two_sided(
                tension,
                ends.tension_low,
                ends.tension_target,
                ends.tension_high,
            )),
            power: ln(d::two_sided(
                tension,
                ends.tension_low,
                ends.power_target,
                ends.tension_high,
            )),
            // What does not count here is as good as can be.
            by_draw: [[all(1.0); HALVES]; BY_DRAW.len()],
            outside: [none; 2],
            warmth: none,
            drift: none,
        };
        let ln_tension = all(libm::log(tension));
        for h in 0..HALVES {
            let stiff = self.axial[h] / all(tension);
            let warmth = self.warmth.0[h] * stiff + self.warmth.1[h];
            let body = self.body_drift[h] * (stiff - all(1.0)).abs();
            let drift = warmth.abs() + self.fixed_drift[h] + body;
            let stretch = ln_tension - self.ln_axial[h];
            let breaking = ln_tension - self.ln_breaking[h];
            row.warmth[h] = warmth;
            row.drift[h] = drift;
            row.by_draw[0][h] = worth_of(&judge.elasticity, stretch);
            row.by_draw[1][h] = worth_of(&judge.drift, drift.ln());
            row.by_draw[2][h] = worth_of(&judge.breaking, breaking);
            if !judge.string.fine_tuner {
                // Cents a degree of peg go with 1 + EA/T.
                let of_one = all(self.central.peg_of_stiffness());
                row.by_draw[3][h] = worth_of(&judge.tuning, (of_one * (stiff + all(1.0))).ln());
            }
            row.outside[0][h] = beyond(stretch, ln_stretch);
            row.outside[1][h] = (breaking - all(ln_breaking)).max(all(0.0));
        }
        row
    }

    /// Weighted worth of what core and tension decide, less the penalty: exact.
    #[must_use]
    pub fn pull(&self, row: &Row) -> f64 {
        let judge = self.judge;
        let by_draw: f64 = BY_DRAW
            .iter()
            .zip(&row.by_draw)
            .map(|(attribute, worth)| judge.weight(*attribute) * mean_ln(worth))
            .sum();
        judge.weight(Attribute::Feel) * row.feel
            + judge.weight(Attribute::Power) * row.power
            + by_draw
            - OUTSIDE * mean(&row.is_outside())
    }

    /// The most that [`Self::pull`] can be for any tension between those of two rows.
    ///
    /// Every part is monotone between them but four, which are bounded by themselves: feel and power are 1 where the
    /// target lies between, the warmth's drift is nothing where it changes sign, and the penalty is nothing where the
    /// band lies between.
    #[must_use]
    pub fn most(&self, slack: &Row, taut: &Row) -> f64 {
        let judge = self.judge;
        let ends = &judge.string.ends;
        let peak = |target: f64, a: f64, b: f64| {
            if slack.tension <= target && target <= taut.tension { 0.0 } else { a.max(b) }
        };
        let mut sum = judge.weight(Attribute::Feel)
            * peak(ends.tension_target, slack.feel, taut.feel)
            + judge.weight(Attribute::Power) * peak(ends.power_target, slack.power, taut.power);
        for (a, attribute) in BY_DRAW.iter().enumerate() {
            let most = core::array::from_fn(|h| {
                if *attribute != Attribute::Drift {
                    return slack.by_draw[a][h].max(taut.by_draw[a][h]);
                }
                // At least what is not the warmth's, and the whole where the warmth keeps its sign.
                let (cold, hot) = (slack.warmth[h], taut.warmth[h]);
                let other = (slack.drift[h] - cold.abs()).min(taut.drift[h] - hot.abs());
                let least_warmth =
                    cold.min(hot).max(all(0.0)) + (all(0.0) - cold.max(hot)).max(all(0.0));
                worth_of(&judge.drift, (other + least_warmth).max(all(1e-3)).ln())
            });
            sum += judge.weight(*attribute) * mean_ln(&most);
        }
        let outside = core::array::from_fn(|h| {
            let least = |side: usize| {
                let (a, b) = (slack.outside[side][h], taut.outside[side][h]);
                a.min(b).max(all(0.0)) + (all(0.0) - a.max(b)).max(all(0.0))
            };
            least(0) + least(1)
        });
        sum - OUTSIDE * mean(&outside)
    }

    /// Modulus of sounding at that tension, in every draw.
    fn fast(&self, tension: f64) -> Drawn {
        let stress = tension / self.area;
        let held = stress.clamp(FAST_SLOPE_STRESS.0, FAST_SLOPE_STRESS.1);
        core::array::from_fn(|h| {
            let sloped = all(held) + self.beyond[h] * all(stress - held);
            self.fast_modulus[h] + all(self.fast_slope) * sloped
        })
    }

    /// The worth of [`BY_BOW`]; exact.
    fn under_the_bow(
        &self,
        tension: f64,
        gauge: f64,
        inertia: f64,
        tubes: &[(usize, f64)],
    ) -> [Drawn; BY_BOW.len()] {
        let judge = self.judge;
        let z = tension * judge.impedance;
        let (ln_z, z) = (all(libm::log(z)), all(z));
        let inertia = all(self.inertia + inertia);
        let square = all(4.0 / (gauge * gauge));
        let fast = self.fast(tension);
        let mut worth = [[all(0.0); HALVES]; BY_BOW.len()];
        for h in 0..HALVES {
            let mut tube = all(0.0);
            for (metal, of_one) in tubes {
                tube += judge.moduli[*metal][h] * all(*of_one);
            }
            let stiffness = self.torsion[h] + self.torsion_of_tube[h] * tube;
            let surface = (stiffness * inertia).sqrt() * square;
            let left = surface / (z + surface);
            let stiff = self.stiff_of_one[h] * fast[h] / all(tension);
            let answer = Answer::new(&judge.footing[h], (ln_z, z), left.ln(), stiff.ln());
            worth[0][h] = worth_of(&judge.response, answer.response());
            worth[1][h] = worth_of_room(answer.room());
        }
        worth
    }

    fn weighed_by_bow(&self, worth: &[Drawn; BY_BOW.len()]) -> f64 {
        BY_BOW.iter().zip(worth).map(|(a, worth)| self.judge.weight(*a) * mean_ln(worth)).sum()
    }

    /// Weighted worth of how it answers the bow: exact.
    ///
    /// `inertia` is the polar one of the windings; `tubes` gives each winding's metal, and the stiffness it would have
    /// as a tube for a modulus of one.
    #[must_use]
    pub fn bowed(&self, tension: f64, gauge: f64, inertia: f64, tubes: &[(usize, f64)]) -> f64 {
        self.weighed_by_bow(&self.under_the_bow(tension, gauge, inertia, tubes))
    }

    /// The most that [`Self::bowed`] can be for tensions between two, at a gauge of at least `gauge`, under windings
    /// whose moduli over their densities are at most those in each draw.
    ///
    /// A layer of mass μ and mean diameter m has the inertia μ m²/4 and, for a modulus of one, a tube of at most
    /// μ m²/(2πρ): of wire; of ribbon less. No m is above the gauge D, so the surface's impedance, 4 √(C J)/D², is at
    /// most that of these bounds, which falls with D and rises with mass.
    #[must_use]
    pub fn most_bowed(&self, slack: f64, taut: f64, gauge: f64, stiffest: &Drawn) -> f64 {
        let judge = self.judge;
        let square = 4.0 / (gauge * gauge);
        let whole = taut * judge.mass * (1.0 + taut / self.central.axial.get());
        let winding = (whole - self.central.mass).max(0.0) * (1.0 + 1e-9);
        let inertia = all(self.inertia * square + winding);
        let [z, z_taut] = [slack, taut].map(|tension| {
            let z = tension * judge.impedance;
            (all(libm::log(z)), all(z))
        });
        let mut worth = [[all(0.0); HALVES]; BY_BOW.len()];
        for h in 0..HALVES {
            let tubes = self.torsion_of_tube[h] * stiffest[h] * all(winding * 2.0 / PI);
            let surface = ((self.torsion[h] * all(square) + tubes) * inertia).sqrt();
            let left = (surface / (z.1 + surface)).ln();
            let answer = |z| Answer::new(&judge.footing[h], z, left, all(0.0));
            let (a, b) = (answer(z), answer(z_taut));
            worth[0][h] = worth_of(&judge.response, a.response());
            worth[1][h] = worth_of_room(Answer::most_room(&a, &b));
        }
        self.weighed_by_bow(&worth)
    }

    /// The worth of brightness where the brilliance ends at most: at a tension up to `taut` and from `slack` on,
    /// under windings of at least these tubes. Held at the target where `at_most` says that it is a bound.
    fn brightness(&self, slack: f64, taut: f64, tubes: &[(usize, f64)], at_most: bool) -> Drawn {
        let judge = self.judge;
        let (dark, over) = judge.shade;
        let ln_pitch = libm::log(judge.string.setting.pitch.get());
        let target = all(judge.string.brightness_target());
        let fast = self.fast(slack);
        core::array::from_fn(|h| {
            let fast = fast[h];
            let mut tube = all(0.0);
            for (metal, of_one) in tubes {
                tube += judge.moduli[*metal][h] * all(*of_one);
            }
            let lossy = self.lossy[h] * fast + self.winding_loss[h] * tube;
            let n2 = self.limit[h] * all(taut) / lossy;
            let place = (all(ln_pitch - dark) + all(0.5) * n2.ln()) * all(over);
            let place = if at_most { place.min(target) } else { place };
            floored(all(1.0) - (place - target).abs())
        })
    }

    /// The most that the worth of brightness can be for tensions between two, under at least such tubes of winding.
    ///
    /// `tubes` gives each winding's metal, and the stiffness it would have as a tube for a modulus of one.
    #[must_use]
    pub fn most_bright(&self, slack: f64, taut: f64, tubes: &[(usize, f64)]) -> f64 {
        let most = mean_ln(&self.brightness(slack, taut, tubes, true));
        self.judge.weight(Attribute::Brightness) * most
    }

    /// The worth of the ring; exact.
    fn ring(&self, gauge: f64, mass: f64, tubes: &[(usize, f64)]) -> Drawn {
        let judge = self.judge;
        let pitch = judge.string.setting.pitch.get();
        let swings = drawn(|k| {
            let modulus = |metal: usize| judge.moduli[metal][k / LANES].to_array()[k % LANES];
            let tube = tubes.iter().map(|(metal, of_one)| modulus(*metal) * of_one).sum();
            let wound = Wound { gauge, mass, tube, inertia: 0.0 };
            self.draws[k].sounding(&wound, !tubes.is_empty()).ring * pitch
        });
        swings.map(|swings| worth_of(&judge.ring, swings.ln()))
    }

    /// Weighted worth of its brightness: exact.
    #[must_use]
    pub fn bright(&self, tension: f64, tubes: &[(usize, f64)]) -> f64 {
        let worth = mean_ln(&self.brightness(tension, tension, tubes, false));
        self.judge.weight(Attribute::Brightness) * worth
    }

    /// Weighted worth of its ring: exact.
    #[must_use]
    pub fn rings(&self, gauge: f64, mass: f64, tubes: &[(usize, f64)]) -> f64 {
        self.judge.weight(Attribute::Ring) * mean_ln(&self.ring(gauge, mass, tubes))
    }

    /// Every desirability of the string of these windings, as e to the mean of its logarithm; and the penalty.
    #[must_use]
    pub fn desirabilities(
        &self,
        construction: &Construction,
        grade: Grade,
    ) -> (Desirabilities, f64) {
        self.logs(construction, grade).expected()
    }

    /// ln of every desirability of the string of these windings, draw by draw.
    #[must_use]
    pub fn logs(&self, construction: &Construction, grade: Grade) -> Logs {
        let layers: Vec<&'static Metal> = construction.windings().map(|w| w.metal).collect();
        let (wound, tubes) = self.windings(construction);
        let Wound { gauge, mass, inertia, .. } = wound;
        let row = self.row(self.central.sounding(&wound, !tubes.is_empty()).tension);
        let mut of = [Log::Same(0.0); COUNT];
        let mut put = |attribute: Attribute, log: Log| of[attribute as usize] = log;
        let logs = |worth: Drawn| Log::Drawn(worth.map(Four::ln));
        put(Attribute::Feel, Log::Same(row.feel));
        put(Attribute::Power, Log::Same(row.power));
        for (a, attribute) in BY_DRAW.iter().enumerate() {
            put(*attribute, logs(row.by_draw[a]));
        }
        let bowed = self.under_the_bow(row.tension, gauge, inertia, &tubes);
        for (attribute, worth) in BY_BOW.iter().zip(bowed) {
            put(*attribute, logs(worth));
        }
        put(Attribute::Settling, logs(self.arrangement.settling));
        let judgement = ln(self.core.material.climate_judgement);
        put(Attribute::FittersJudgement, Log::Same(judgement));
        let brightness = self.brightness(row.tension, row.tension, &tubes, false);
        put(Attribute::Brightness, logs(brightness));
        put(Attribute::Ring, logs(self.ring(gauge, mass, &tubes)));
        for (attribute, log) in self.judge.of_metals(self.arrangement.family, grade, &layers) {
            put(attribute, Log::Same(log));
        }
        Logs { of, outside: row.is_outside() }
    }

    /// The core under its windings as they are for a modulus of one, and their tubes.
    fn windings(&self, construction: &Construction) -> (Wound<f64>, Vec<(usize, f64)>) {
        let mut wound = self.central.bare();
        let mut tubes = Vec::new();
        for w in construction.windings() {
            let before = wound.tube;
            wound = wound.under(w.form, w.metal.density.value, 1.0, w.thickness.get());
            let metal = material::METALS.iter().position(|m| m.key == w.metal.key).unwrap_or(0);
            tubes.push((metal, wound.tube - before));
        }
        (wound, tubes)
    }
}

/// The weighted sum of logarithms of desirabilities, less a penalty.
#[must_use]
pub fn score(desirabilities: &Desirabilities, weights: &[f64; COUNT], penalty: f64) -> f64 {
    let sum: f64 = desirabilities.iter().zip(weights).map(|(d, w)| w * libm::log(*d)).sum();
    sum / total_weight() - penalty
}

/// How steady a string is, 0 to 1: the weighted geometric mean of settling, drift and the fitters' judgement.
#[must_use]
pub fn steadiness(weights: &[f64; COUNT], settling: f64, drift: f64, judgement: f64) -> f64 {
    let falling =
        |ends: (f64, f64), value: f64| OneSided::new(ends.1, ends.0).of_log(libm::log(value));
    let parts = [
        (Attribute::Settling, falling(d::SETTLING_ENDS, settling)),
        (Attribute::Drift, falling(d::DRIFT_ENDS, drift)),
        (Attribute::FittersJudgement, judgement),
    ];
    let (mut sum, mut total) = (0.0, 0.0);
    for (attribute, worth) in parts {
        let weight = weights[attribute as usize];
        sum += weight * ln(worth);
        total += weight;
    }
    if total > 0.0 { libm::exp(sum / total) } else { 1.0 }
}
