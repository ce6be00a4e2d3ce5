//! The tables of the model: what there is to choose from, and what every number rests on.

use std::collections::BTreeMap;

use super::Bound;
use crate::wire::wire;

wire! {
    /// The tables of the model.
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
    pub struct Unverified {
        /// Its name in the model.
        pub formula: String,
        /// Why nothing holds it.
        pub why: String,
    }

    /// An instrument.
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
        /// From an animal.
        pub animal: bool,
    }

    /// A winding metal.
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

    /// A bibliography entry.
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
}
