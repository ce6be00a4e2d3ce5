//! The tables of the model: what there is to choose from, and what every number rests on.

use std::collections::BTreeMap;

use strings::constant;
use strings::draw;
use strings::fit::answers::WORD_QUESTIONS;
use strings::fit::desirability::Attribute;
use strings::fit::problem::BASE_WEIGHTS;
use strings::fit::scenarios;
use strings::instrument;
use strings::material::{self, Class};
use strings::precedent::{self, SetUp};
use strings::report::Property;
use strings::source;

use super::{evidence, grade};
use crate::allowed::{self, BOUNDS};
use crate::reply;

fn constant_of(c: &constant::Constant) -> reply::Constant {
    reply::Constant {
        value: c.value,
        low: c.low,
        high: c.high,
        unit: c.unit.to_owned(),
        at: c.at.to_owned(),
        evidence: evidence(c.evidence),
        source: c.source.key.to_owned(),
    }
}

/// The tables of the model.
pub(crate) fn tables() -> reply::Tables {
    reply::Tables {
        instruments: instrument::ALL.iter().map(|kind| instrument_of(kind)).collect(),
        core_materials: material::CORES
            .iter()
            .map(|m| reply::CoreMaterial {
                key: m.key.to_owned(),
                name: m.name.to_owned(),
                class: match m.class {
                    Class::Gut => "gut",
                    Class::Steel => "steel",
                    Class::Polymer => "polymer",
                }
                .to_owned(),
                constants: draw::OF_CORE
                    .iter()
                    .filter_map(|which| {
                        Some((which.key().to_owned(), constant_of(m.constant(*which)?)))
                    })
                    .collect(),
                fast_slope: m.fast_slope,
                animal: m.animal,
            })
            .collect(),
        winding_metals: material::METALS
            .iter()
            .map(|m| reply::WindingMetal {
                key: m.key.to_owned(),
                name: m.name.to_owned(),
                density: constant_of(&m.density),
                modulus: constant_of(&m.modulus),
                nickel_free: m.nickel_free,
                outer: m.outer,
            })
            .collect(),
        constants: constant::ALL.iter().map(|(k, c)| ((*k).to_owned(), constant_of(c))).collect(),
        answer_spreads: scenarios::SPREADS
            .iter()
            .map(|(k, c)| ((*k).to_owned(), constant_of(c)))
            .collect(),
        precedents: precedents(),
        words: words(),
        bounds: BOUNDS.iter().map(|(k, b)| ((*k).to_owned(), reply::Bound::of(*b))).collect(),
        base_weights: Attribute::ALL
            .iter()
            .map(|a| (a.key().to_owned(), BASE_WEIGHTS[*a as usize]))
            .collect(),
        sources: source::ALL
            .iter()
            .map(|s| reply::Source {
                key: s.key.to_owned(),
                authors: s.authors.to_owned(),
                title: s.title.to_owned(),
                place: s.place.to_owned(),
                remark: s.remark.to_owned(),
            })
            .collect(),
        properties: Property::ALL
            .iter()
            .map(|p| reply::PropertyEntry {
                key: p.key().to_owned(),
                evidence: evidence(p.evidence()),
                source: p.source().key.to_owned(),
                fitted: p.error().map(|e| reply::FittedTo {
                    ranks: e.ranks.0,
                    ranks_at_one_place: e.ranks.1,
                    misses: e.anywhere,
                    misses_at_one_place: e.at_one_place,
                }),
            })
            .collect(),
        unverified: strings::unverified::UNVERIFIED
            .iter()
            .map(|(formula, why)| reply::Unverified {
                formula: (*formula).to_owned(),
                why: (*why).to_owned(),
            })
            .collect(),
    }
}

fn instrument_of(kind: &instrument::Kind) -> reply::Instrument {
    let mm = |x: f64| x / 1000.0;
    reply::Instrument {
        key: kind.key.to_owned(),
        name: kind.name.to_owned(),
        full_length_m: kind.full_length,
        angle_over_bridge_deg: kind.angle,
        nut_to_peg_m: kind.nut_to_peg,
        peg_diameter_m: kind.peg,
        string_height_m: kind.height,
        nut_radius_m: kind.nut_radius,
        bridge_resistance_kg_s: kind.resistance,
        usual_load_n: kind.usual_load,
        sizes: kind
            .sizes
            .iter()
            .map(|s| reply::Size {
                key: s.key.to_owned(),
                sounding_length_m: mm(s.length_mm.0),
                range_m: (mm(s.length_mm.1), mm(s.length_mm.2)),
                fraction: s.fraction,
            })
            .collect(),
        tunings: kind
            .tunings
            .iter()
            .map(|t| reply::Tuning {
                key: t.key.to_owned(),
                name: t.name.to_owned(),
                notes: t.strings.iter().map(|(note, _)| (*note).to_owned()).collect(),
                positions: t.strings.iter().map(|(_, position)| (*position).to_owned()).collect(),
                extension: t.extension,
            })
            .collect(),
    }
}

fn precedents() -> Vec<reply::Precedent> {
    precedent::POSITIONS
        .iter()
        .flat_map(|p| {
            p.rows.iter().map(|row| reply::Precedent {
                position: p.key.to_owned(),
                note: p.note.to_owned(),
                usual_tension_n: p.tension,
                brilliance_hz: p.brilliance,
                family: row.family.key().to_owned(),
                grade: grade(row.grade),
                tension_n: row.tension,
                gauge_m: (row.gauge.0 / 1000.0, row.gauge.1 / 1000.0),
                stretch: precedent::stretch_band(row.family),
                winding_mass_share: precedent::winding_band(row.family),
                breaking_share: precedent::working_share(row.family, SetUp::Modern, false),
            })
        })
        .collect()
}

/// The words of every question, and of what else is asked by words.
fn words() -> BTreeMap<String, Vec<String>> {
    let asked = WORD_QUESTIONS.iter().chain(&["attribute", "bothers", "family", "gauge_class"]);
    let words = |name| allowed::words(name).into_iter().map(str::to_owned).collect();
    asked.map(|name| ((*name).to_owned(), words(name))).collect()
}
