//! A set of strings: what each is, why it and not another, what it costs, and what to do with it.

use std::rc::Rc;

use super::report::{Comparison, Range, Report};
use crate::wire::wire;

wire! {
    /// A set of strings.
    pub struct Set {
        /// The strings, highest first.
        pub strings: Vec<Rc<FittedString>>,
        /// Total tension.
        pub total_tension_n: Range,
        /// Total force on the bridge.
        pub downforce_n: Range,
        /// Steps between neighbours, from the highest pair down.
        pub steps: Vec<Step>,
        /// The kind of set, by its key: `soft-synthetic`, `wound-gut`, `stranded-steel` and so on.
        pub kind: String,
        /// Mean over the strings of score and pair terms, less what speaks against the kind: the logarithm of a desirability.
        pub worth: f64,
        /// The best set of the other kind that one would weigh it against, if there is one.
        pub runner_up: Option<RunnerUp>,
        /// The best set of every other kind that is possible here, the better ones first.
        pub other_kinds: Vec<OtherKind>,
        /// The kinds that are not possible here, and why.
        pub ruled_out: Vec<RuledOut>,
        /// How much better the best is, as a ratio of desirabilities; under 1.02 it is a close call.
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

    /// How much of the space was looked at.
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

    /// The best set of another kind.
    pub struct OtherKind {
        /// Which kind.
        pub kind: String,
        /// Its families, string by string, the highest first.
        pub families: Vec<String>,
        /// How many of a hundred players of this tradition have it: common practice, no source.
        pub usual_of_hundred: f64,
        /// What is on the instrument now belongs to it.
        pub is_now: bool,
        /// How much better the chosen set is, as a ratio of desirabilities.
        pub lead: f64,
        /// Nothing better of its kind can be made; false where the proof took too much work or the kind lies too far behind.
        pub proven: bool,
        /// In what it differs noticeably from the chosen set.
        pub differences: Vec<KindDifference>,
    }

    /// A property in which sets of two kinds differ noticeably.
    pub struct KindDifference {
        /// Which property.
        pub property: String,
        /// In which strings the other kind has more of it, 0 the highest.
        pub above: Vec<usize>,
        /// In which it has less.
        pub below: Vec<usize>,
    }

    /// A kind of set that is not possible here.
    pub struct RuledOut {
        /// Which kind.
        pub kind: String,
        /// At which string, 0 the highest; none where it is the load of all together.
        pub string: Option<usize>,
        /// What left most of its strings out there.
        pub limit: Option<String>,
    }

    /// The best set of another kind: what to weigh the chosen one against.
    pub struct RunnerUp {
        /// Its strings, highest first; none where it has the chosen one.
        pub strings: Vec<Option<Report>>,
        /// What to ask for at the counter, string by string.
        pub shopping: Vec<Shopping>,
        /// Its worth.
        pub worth: f64,
    }

    /// One chosen string.
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

    /// What to ask for at the counter.
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
    pub struct Point {
        /// Family.
        pub family: String,
        /// Stretch at pitch.
        pub stretch: f64,
        /// Days until it has settled.
        pub settling_d: f64,
        /// How far warmth moves it while it goes untuned, whichever way.
        pub warmth_cent: f64,
        /// How far damp moves it while it goes untuned, whichever way, with what gut loses for good.
        pub damp_cent: f64,
    }

    /// What to do with the set.
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
    pub struct Caution {
        /// Which.
        pub caution: String,
        /// For which string, 0 the highest; none for all.
        pub string: Option<usize>,
    }
}

impl Set {
    /// The strings of the runner-up, highest first: where it has none of its own, the chosen ones.
    #[must_use]
    pub fn second(&self) -> Vec<&Report> {
        let own = self.runner_up.iter().flat_map(|second| &second.strings);
        own.zip(&self.strings).map(|(own, chosen)| own.as_ref().unwrap_or(&chosen.report)).collect()
    }
}
