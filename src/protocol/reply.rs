//! What comes back.

use std::collections::BTreeMap;
use std::rc::Rc;

use schemars::JsonSchema;
use serde::Serialize;
use strings::error;

pub use crate::bowed::{BowCell, BowMap, BowRow, BowWindow, Sound};
pub use crate::certainty::{
    AnswerValue, Certainty, KeyShare, NextFamilies, SureShare, SureString, TurnedString,
    TurningPointTold,
};
pub use crate::lesson::{Drifting, FamilyAtPlace, MonthDrift, Place, Stretch, Stretched, Year};
use crate::request;

/// An answer of the model.
///
/// It is written with its name in the member `reply`, and read by [`Reply::read`].
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(tag = "reply", rename_all = "kebab-case")]
pub enum Reply {
    /// Everything about one string.
    Report(Box<Report>),
    /// Two strings at one place.
    Compare(Box<Compare>),
    /// Strings of which more was wound over the nut.
    Stretch(Box<Stretch>),
    /// How strings wander through a year.
    Year(Box<Year>),
    /// What is made for a place.
    Place(Box<Place>),
    /// A set, or why there is none.
    Fit(Box<Fit>),
    /// How sure the choice is, and what would turn it.
    Certainty(Box<Certainty>),
    /// The tables.
    Tables(Box<Tables>),
    /// Where a string speaks under the bow.
    BowMap(Box<BowMap>),
    /// What one would hear.
    Sound(Box<Sound>),
    /// The request could not be read: every fault by its field.
    Refused(Refused),
}

/// Every fault of a request.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Refused {
    /// The faults, in the order of the request.
    pub faults: Vec<Fault>,
}

/// How a list of words begins that a field takes.
pub const ONE_OF: &str = "one of: ";

/// One thing wrong with a request.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Fault {
    /// The field.
    pub field: String,
    /// What it held.
    pub value: String,
    /// What it takes.
    pub allowed: String,
    /// The same as numbers, where it takes a range.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub range: Option<Bound>,
    /// The three in one sentence.
    pub message: String,
}

impl Fault {
    /// A fault in `field`, which held `value` although only `allowed` will do.
    #[must_use]
    pub fn new(field: &str, value: String, allowed: String) -> Self {
        Self::of(error::Fault::new(field, value, allowed))
    }

    /// A fault of the model as it is told to others.
    pub(crate) fn of(fault: error::Fault) -> Self {
        let message = fault.to_string();
        let error::Fault { field, value, allowed, range } = fault;
        Self { field, value, allowed, range: range.map(Bound::of), message }
    }
}

/// A number with its 90 % range, how it is known and where its formula comes from.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Quantity {
    /// Central value.
    pub value: f64,
    /// Lower end of the range.
    pub low: f64,
    /// Upper end of the range.
    pub high: f64,
    /// `measured`, `published`, `computed`, `judged` or `guessed`.
    pub evidence: String,
    /// Key of the source.
    pub source: String,
    /// The range is over a factor of three: show "unknown within", and draw no reason from it.
    pub unknown: bool,
}

/// Everything about one string.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Report {
    /// The string, as asked.
    pub construction: request::Construction,
    /// The setting, with everything that was left out filled in.
    pub setting: request::Setting,
    /// The family the trade would put it in.
    pub family: String,
    /// Every property by its name, which carries the unit.
    pub numbers: BTreeMap<String, Quantity>,
    /// The first partials, with what each loses and to what.
    pub partials: Vec<Partial>,
    /// The days after fitting, with what each costs in pitch.
    pub nights: Vec<Night>,
    /// What the doubt about the main properties comes from, the three largest shares of each.
    pub doubts: BTreeMap<String, Vec<Doubt>>,
    /// `stress-not-measured`, `wire-not-tabled`, `breaks`: where the numbers stand on ground that was not measured.
    pub caveats: Vec<String>,
}

/// A partial of a plucked or released string.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Partial {
    /// Which, from 1.
    pub n: u32,
    /// Its frequency.
    pub frequency_hz: f64,
    /// How far it lies above n times the first.
    pub sharpness_cent: f64,
    /// Loss factor to the air.
    pub loss_air: f64,
    /// Loss factor of the string in its pull.
    pub loss_string: f64,
    /// Loss factor in bending, core and windings.
    pub loss_bending: f64,
    /// Loss factor to the instrument.
    pub loss_bridge: f64,
    /// Q on ends that do not give.
    pub q: f64,
    /// Seconds in which it falls by 60 dB on the instrument.
    pub ring_s: f64,
    /// The largest of the losses: `air`, `string`, `bending` or `bridge`.
    pub most: String,
}

/// A day after fitting, retuned every evening.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Night {
    /// Which, from 1.
    pub day: u32,
    /// Pitch lost in it, in cents.
    pub lost_cent: Range,
    /// Chance that it costs no more than five cents and everything has seated.
    pub chance: f64,
}

/// What a doubt comes from.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Doubt {
    /// Key of the material, or empty for a number that belongs to none.
    pub owner: String,
    /// Which number of it.
    pub which: String,
    /// Its share of the variance.
    pub share: f64,
}

/// Two strings at one place.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Compare {
    /// One string.
    pub this: Report,
    /// The other.
    pub other: Report,
    /// How they compare in each property that a player notices; what is uncertain in both is shared.
    pub comparisons: Vec<Comparison>,
}

/// The answer to a fitting.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Fit {
    /// What the answers were taken to mean.
    pub problem: Problem,
    /// The set, when something fits.
    pub set: Option<Rc<Set>>,
    /// What stands in the way, when nothing does; else empty.
    pub obstacles: Vec<Obstacle>,
    /// What to do, which is often less than a new set, and why it bothers.
    pub verdict: Verdict,
}

/// What to do, and why it bothers.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Verdict {
    /// `leave-it`, `fresh-same` (a fresh string or set of the same kind), `one-string`, `whole-set` or `luthier-first`.
    pub answer: String,
    /// Which string, 0 the highest, if it is about one.
    pub string: Option<usize>,
    /// What led to it: first causes of the findings, and other facts by their keys.
    pub because: Vec<String>,
    /// Every complaint with its causes.
    pub findings: Vec<Finding>,
}

/// A complaint.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Finding {
    /// What bothers.
    pub bother: String,
    /// About which string, 0 the highest; none for the whole set.
    pub string: Option<usize>,
    /// Its causes, the most plausible first.
    pub causes: Vec<Cause>,
}

/// A cause of a complaint.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Cause {
    /// Which.
    pub cause: String,
    /// `likely`, `possible` or `unlikely`.
    pub likely: String,
    /// No number speaks of it: a judgement alone.
    pub judged: bool,
    /// The numbers it was checked against.
    pub numbers: Vec<CauseNumber>,
    /// What to look at for it.
    pub look: String,
}

/// A number of today's string, against which a cause was checked.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct CauseNumber {
    /// A property of a report, or `age_months`, or `tension_step` (the step between neighbours over the usual one).
    pub property: String,
    /// Of which string, 0 the highest.
    pub string: usize,
    /// The number.
    pub value: f64,
    /// Lower end of its range.
    pub low: Option<f64>,
    /// Upper end of its range.
    pub high: Option<f64>,
    /// The limit with which it was compared.
    pub limit: Option<f64>,
}

/// What the answers were taken to mean.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Problem {
    /// Key of the instrument.
    pub instrument: String,
    /// Its name.
    pub instrument_name: String,
    /// Size.
    pub size: String,
    /// Key of the tuning.
    pub tuning: String,
    /// Its name.
    pub tuning_name: String,
    /// `modern`, `historical` or `light`.
    pub set_up: String,
    /// Pitch of a′.
    pub a4_hz: f64,
    /// `equal` or `pure-fifths`.
    pub temperament: String,
    /// Usual total tension here.
    pub usual_load_n: (f64, f64),
    /// Largest total tension recommended here.
    pub most_load_n: f64,
    /// What was taken for granted because it was not answered.
    pub assumed: Vec<Assumed>,
    /// What counted, and how much.
    pub weights: Vec<Weight>,
    /// How far from the usual towards bright the wish lies, on a scale from dark (0) to bright (1).
    pub brightness_shift: f64,
    /// Days until it matters.
    pub concert_days: Option<f64>,
    /// The highest pitch at which the set is used, over its main one: at least 1. Tension goes with its square.
    pub highest_ratio: f64,
    /// What is on it now.
    pub now: Option<String>,
}

/// Something taken for granted.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Assumed {
    /// The question.
    pub field: String,
    /// What was taken.
    pub value: String,
}

/// How much an attribute counted.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Weight {
    /// Which attribute.
    pub attribute: String,
    /// Its weight before any answer.
    pub base: f64,
    /// Its weight here.
    pub weight: f64,
    /// Factors on it, and the answer each comes from.
    pub steps: Vec<WeightStep>,
}

/// A factor on a weight.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct WeightStep {
    /// By how much.
    pub factor: f64,
    /// From which answer.
    pub because: String,
}

/// What stands in the way.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Obstacle {
    /// Which string, 0 the highest; none for the whole set.
    pub string: Option<usize>,
    /// Its note.
    pub note: Option<String>,
    /// Limits that left constructions out, the most active first.
    pub limits: Vec<LimitCount>,
    /// For the load: total tension of the lightest set there is.
    pub lightest_n: Option<f64>,
    /// For the load: largest total tension.
    pub most_n: Option<f64>,
    /// Wishes that, given up alone, would leave something that fits.
    pub relax: Vec<String>,
}

/// How many constructions a limit left out.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct LimitCount {
    /// Which limit.
    pub limit: String,
    /// How many.
    pub count: usize,
}

/// A set of strings.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Set {
    /// The strings, highest first.
    pub strings: Vec<Rc<FittedString>>,
    /// Total tension.
    pub total_tension_n: Range,
    /// Total force on the bridge.
    pub downforce_n: Range,
    /// Steps between neighbours, from the highest pair down.
    pub steps: Vec<Step>,
    /// Mean over the strings of score and pair terms: the logarithm of a desirability.
    pub worth: f64,
    /// The best set with another family somewhere, if there is one.
    pub runner_up: Option<RunnerUp>,
    /// How much better the best is, as a ratio of desirabilities; under 1.05 it is a close call.
    pub lead: Option<f64>,
    /// The best and the runner-up are about equal.
    pub close_call: bool,
    /// How much of the space was looked at, over all strings.
    pub searched: Searched,
    /// Nothing better can be made; false where the proof took too much work and was given up.
    pub proven: bool,
    /// By which share a better set could be better at most: a ratio of desirabilities less 1, and 0 where `proven`.
    pub optimality_gap: f64,
    /// What to do with it.
    pub plan: Plan,
}

impl Set {
    /// The strings of the runner-up, highest first: where it has none of its own, the chosen ones.
    #[must_use]
    pub fn second(&self) -> Vec<&Report> {
        let own = self.runner_up.iter().flat_map(|second| &second.strings);
        own.zip(&self.strings).map(|(own, chosen)| own.as_ref().unwrap_or(&chosen.report)).collect()
    }
}

/// A sum with its range.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Range {
    /// Central value.
    pub value: f64,
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

/// How much of the space was looked at.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Searched {
    /// Makeable constructions of every family, from the thinnest to the thickest string that is made here.
    pub space: u64,
    /// Of these, how many were wound; the others were left out by a limit or by a bound.
    pub wound: u64,
    /// Of these, how many lie inside every band.
    pub inside: u64,
    /// Of these, how many were judged in every draw.
    pub judged: u64,
}

/// A step between two neighbours.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Step {
    /// Ratio of tensions, upper over lower.
    pub tension_ratio: f64,
    /// The usual ratio here.
    pub usual_ratio: f64,
    /// Ratio of wave impedances, lower over upper.
    pub impedance_ratio: f64,
    /// What the step costs, in units of ln desirability.
    pub term: f64,
}

/// The best set with another family somewhere.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct RunnerUp {
    /// Its strings, highest first; none where it has the chosen one.
    pub strings: Vec<Option<Report>>,
    /// What to ask for at the counter, string by string.
    pub shopping: Vec<Shopping>,
    /// Its worth.
    pub worth: f64,
}

/// One chosen string.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FittedString {
    /// `new`, `kept` (today's string, as far as it is known), or `not-judged` (one of which nothing is known; the most
    /// usual stands for it).
    pub standing: String,
    /// Its note.
    pub note: String,
    /// Its place, as the tables of precedents name it.
    pub position: String,
    /// What it is and does.
    pub report: Rc<Report>,
    /// `everyday` or `sometimes`.
    pub grade: String,
    /// The bands within which such strings are made.
    pub bands: Bands,
    /// Usual tension of the position, whatever the family.
    pub usual_tension_n: (f64, f64),
    /// Where between dark (0) and bright (1) it lies.
    pub brightness: f64,
    /// Where the most usual string of this place lies between them.
    pub usual_brightness: f64,
    /// Where the wish lies between them.
    pub brightness_target: f64,
    /// Mean of ln desirability.
    pub score: f64,
    /// What each wish was worth.
    pub attributes: Vec<AttributeWorth>,
    /// Rival: the best string of another family at this place, the others staying.
    pub rival: Option<Report>,
    /// Reasons for it rather than the rival, at most three.
    pub reasons: Vec<Reason>,
    /// What it costs: at least one.
    pub costs: Vec<Reason>,
    /// What changes from today's string, if its family was said.
    pub changes: Vec<Comparison>,
    /// What today's string was taken to be.
    pub today: Option<Report>,
    /// What to ask for at the counter.
    pub shopping: Shopping,
    /// Elasticity and steadiness of what would do here, thinned out.
    pub picture: Vec<Point>,
    /// Elasticity and steadiness of the chosen one.
    pub chosen_point: Point,
    /// Elasticity and steadiness of today's string.
    pub today_point: Option<Point>,
    /// A fine tuner serves it.
    pub fine_tuner: bool,
}

/// The bands within which strings of a family are made at a place.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Bands {
    /// Tension.
    pub tension_n: (f64, f64),
    /// Outer gauge.
    pub gauge_m: (f64, f64),
    /// Stretch at pitch.
    pub stretch: (f64, f64),
    /// Share of the mass that is winding.
    pub winding_mass_share: (f64, f64),
    /// Largest share of the breaking strength.
    pub breaking_share: f64,
}

/// What a wish was worth.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct AttributeWorth {
    /// Which attribute.
    pub attribute: String,
    /// Its desirability, 0.02 to 1.
    pub desirability: f64,
    /// Its weight.
    pub weight: f64,
    /// The property under it; none for a judgement.
    pub property: Option<String>,
}

/// One thing the choice weighed.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Reason {
    /// What it is about.
    pub attribute: String,
    /// Rests on a judgement, not on a computed number.
    pub judged: bool,
    /// How much it adds to the score; negative for a cost.
    pub gain: f64,
    /// The comparison under it, where there is one.
    pub comparison: Option<Comparison>,
    /// Worth to this string.
    pub worth: f64,
    /// Worth to the rival.
    pub rival_worth: f64,
}

/// How two strings compare in one property.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Comparison {
    /// Which property.
    pub property: String,
    /// Value of this string.
    pub this: f64,
    /// Value of the other.
    pub other: f64,
    /// `above`, `below`, or `no-difference-we-can-compute`.
    pub verdict: String,
    /// Chance that it lies above by a just-noticeable difference.
    pub chance_above: f64,
    /// Chance that it lies below by one.
    pub chance_below: f64,
}

/// What to ask for at the counter.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Shopping {
    /// Family.
    pub family: String,
    /// Name of the core's material.
    pub core_material: String,
    /// Name of the metal under the fingers, if wound.
    pub outer_metal: Option<String>,
    /// `light`, `medium` or `heavy`: a third of the band.
    pub gauge_class: String,
    /// Tension to look for on the packet.
    pub tension_n: (f64, f64),
    /// At this pitch.
    pub pitch_hz: f64,
    /// And this sounding length.
    pub sounding_length_m: f64,
    /// `ball`, `loop-or-ball` or `knot`.
    pub end: String,
    /// Needs the longer string of a C extension.
    pub extension: bool,
}

/// A string in the picture of the balance.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Point {
    /// Family.
    pub family: String,
    /// Stretch at pitch.
    pub stretch: f64,
    /// Steadiness, 0 to 1: weighted geometric mean of its three parts.
    pub steadiness: f64,
    /// First part: days until settled.
    pub settling_d: f64,
    /// Second part: computed drift.
    pub drift_cent: f64,
    /// Third part: what fitters say of the core, a judgement, 0 to 1.
    pub fitters_judgement: f64,
}

/// What to do with the set.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Plan {
    /// Days before it matters by which to fit: likely, and to be safe.
    pub fit_before_d: (f64, f64),
    /// For each string, days until a night costs no more than five cents: likely, and at the long end.
    pub settled_d: Vec<(f64, f64)>,
    /// What to check at the set-up.
    pub checks: Vec<String>,
    /// What to beware of.
    pub cautions: Vec<Caution>,
}

/// A caution.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Caution {
    /// Which.
    pub caution: String,
    /// For which string, 0 the highest; none for all.
    pub string: Option<usize>,
}

/// The tables of the model.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Tables {
    /// Instruments with sizes, tunings and geometry.
    pub instruments: Vec<Instrument>,
    /// Core materials.
    pub core_materials: Vec<CoreMaterial>,
    /// Winding metals.
    pub winding_metals: Vec<WindingMetal>,
    /// Constants that belong to no material.
    pub constants: BTreeMap<String, Constant>,
    /// How far what is meant may lie from what was said.
    pub answer_spreads: BTreeMap<String, Constant>,
    /// What is made, by position and family.
    pub precedents: Vec<Precedent>,
    /// The words each question takes.
    pub words: BTreeMap<String, Vec<String>>,
    /// The range of each numeric input.
    pub bounds: BTreeMap<String, Bound>,
    /// Weights before any answer.
    pub base_weights: BTreeMap<String, f64>,
    /// The bibliography.
    pub sources: Vec<Source>,
    /// Every property of a report: name, evidence, source.
    pub properties: Vec<PropertyEntry>,
    /// Formulas that no outside value holds, and why.
    pub unverified: Vec<Unverified>,
}

/// How near a number that was fitted to the bowed string in time comes to it, on 300 strings to which it was not fitted.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FittedTo {
    /// Correlation of ranks, over all strings.
    pub ranks: f64,
    /// The same over the strings of one place, in the median.
    pub ranks_at_one_place: f64,
    /// By how much it misses, as a standard deviation: a share, or decibels for a level.
    pub misses: f64,
    /// The same between strings of one place.
    pub misses_at_one_place: f64,
}

/// A formula that no outside value holds.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Unverified {
    /// Its name in the model.
    pub formula: String,
    /// Why nothing holds it.
    pub why: String,
}

/// An instrument.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Instrument {
    /// Key.
    pub key: String,
    /// Name.
    pub name: String,
    /// Length for which the precedents are stated.
    pub full_length_m: f64,
    /// Angle over the bridge.
    pub angle_over_bridge_deg: f64,
    /// Length from nut to peg.
    pub nut_to_peg_m: f64,
    /// Diameter of the peg where the string winds.
    pub peg_diameter_m: f64,
    /// Height of the strings over the fingerboard at the octave.
    pub string_height_m: f64,
    /// Radius of the nut's edge.
    pub nut_radius_m: f64,
    /// Resistance of the bridge between strong notes, and at the strongest.
    pub bridge_resistance_kg_s: (f64, f64),
    /// Usual total tension of four strings.
    pub usual_load_n: (f64, f64),
    /// Sizes.
    pub sizes: Vec<Size>,
    /// Tunings.
    pub tunings: Vec<Tuning>,
}

/// A size.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Size {
    /// Key.
    pub key: String,
    /// Usual sounding length.
    pub sounding_length_m: f64,
    /// Range of the sounding length.
    pub range_m: (f64, f64),
    /// Strings for it are made smaller.
    pub fraction: bool,
}

/// A tuning.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Tuning {
    /// Key.
    pub key: String,
    /// Name.
    pub name: String,
    /// Notes, highest first.
    pub notes: Vec<String>,
    /// Positions, highest first.
    pub positions: Vec<String>,
    /// The lowest string runs over an extension.
    pub extension: bool,
}

/// A constant with its 90 % range.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Constant {
    /// Value.
    pub value: f64,
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
    /// Unit.
    pub unit: String,
    /// The condition it holds in.
    pub at: String,
    /// How it is known.
    pub evidence: String,
    /// Where from.
    pub source: String,
}

/// A core material.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct CoreMaterial {
    /// Key.
    pub key: String,
    /// Name.
    pub name: String,
    /// `gut`, `steel` or `polymer`.
    pub class: String,
    /// Its constants by name.
    pub constants: BTreeMap<String, Constant>,
    /// Rise of the fast modulus with stress, Pa/Pa.
    pub fast_slope: f64,
    /// What fitters say of it in a changing room, 0 to 1.
    pub climate_judgement: f64,
    /// From an animal.
    pub animal: bool,
}

/// A winding metal.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct WindingMetal {
    /// Key.
    pub key: String,
    /// Name.
    pub name: String,
    /// Density.
    pub density: Constant,
    /// Modulus.
    pub modulus: Constant,
    /// No nickel in it.
    pub nickel_free: bool,
    /// Used outermost.
    pub outer: bool,
}

/// One family at one position.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Precedent {
    /// Position.
    pub position: String,
    /// The note for which it stands, at 440 Hz.
    pub note: String,
    /// Usual tension of the position, whatever the family, at full size.
    pub usual_tension_n: (f64, f64),
    /// Where brilliance ends at the dark end and at the bright end of what is made: a judgement of scale.
    pub brilliance_hz: (f64, f64),
    /// Family.
    pub family: String,
    /// `everyday` or `sometimes`.
    pub grade: String,
    /// Tension at full size.
    pub tension_n: (f64, f64),
    /// Outer gauge at full size.
    pub gauge_m: (f64, f64),
    /// Stretch at pitch.
    pub stretch: (f64, f64),
    /// Share of the mass that is winding.
    pub winding_mass_share: (f64, f64),
    /// Largest share of the breaking strength.
    pub breaking_share: f64,
}

/// The range of a numeric input.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Bound {
    /// What it is.
    pub what: String,
    /// Smallest.
    pub min: f64,
    /// Largest.
    pub max: f64,
    /// Unit.
    pub unit: String,
}

impl Bound {
    /// A range of the model as it is told to others.
    pub(crate) fn of(bound: error::Bound) -> Self {
        let error::Bound { what, min, max, unit } = bound;
        Self { what: what.to_owned(), min, max, unit: unit.to_owned() }
    }
}

/// A bibliography entry.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Source {
    /// Key.
    pub key: String,
    /// Authors.
    pub authors: String,
    /// Title.
    pub title: String,
    /// Where and when.
    pub place: String,
    /// What has to be known to use it rightly.
    pub remark: String,
}

/// A property of a report.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct PropertyEntry {
    /// Name, with the unit.
    pub key: String,
    /// How it is known at best.
    pub evidence: String,
    /// Where its formula comes from.
    pub source: String,
    /// How near it comes to the simulation, where it is a number fitted to that.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fitted: Option<FittedTo>,
}
