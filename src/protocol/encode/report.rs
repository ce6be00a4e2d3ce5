//! Everything about a string, and two strings beside each other.

use std::collections::BTreeMap;

use strings::construction::Construction;
use strings::fit::{compare, reasons};
use strings::report::{self, Moves, Property};
use strings::setting::Setting;

use super::{evidence, range};
use crate::convert;
use crate::reply;

/// Partials in a report: beyond, they differ by what these show.
const PARTIALS: u32 = 16;

/// Days in a report: by then everything but damp gut has settled.
const NIGHTS: u32 = 14;

/// Doubts named for each property.
const DOUBTS: usize = 3;

/// The properties whose doubts a person can act on.
const DOUBTFUL: [Property; 6] = [
    Property::Tension,
    Property::BreakingShare,
    Property::Brilliance,
    Property::SettlingDays,
    Property::Season,
    Property::BowWindow,
];

pub(crate) fn report_of(construction: &Construction, setting: &Setting) -> reply::Report {
    reply_report(construction, setting, &Moves::of(construction, setting))
}

pub(crate) fn reply_report(c: &Construction, setting: &Setting, moves: &Moves) -> reply::Report {
    let report = moves.report();
    reply::Report {
        construction: convert::construction_back(c),
        setting: convert::setting_back(setting),
        family: c.family().key().to_owned(),
        numbers: numbers(&report),
        partials: report::partials(c, setting, PARTIALS).iter().map(partial).collect(),
        nights: report::nights(&report, NIGHTS).iter().map(night).collect(),
        doubts: DOUBTFUL.iter().map(|p| (p.key().to_owned(), doubts(moves, *p))).collect(),
        caveats: report::caveats(c, setting).into_iter().map(|c| caveat(c).to_owned()).collect(),
    }
}

fn numbers(report: &report::Report) -> BTreeMap<String, reply::Quantity> {
    Property::ALL
        .iter()
        .map(|p| {
            let e = report.get(*p);
            let quantity = reply::Quantity {
                value: e.value,
                low: e.low,
                high: e.high,
                evidence: evidence(p.evidence()),
                source: p.source().key.to_owned(),
            };
            (p.key().to_owned(), quantity)
        })
        .collect()
}

fn partial(p: &report::Partial) -> reply::Partial {
    let causes =
        [("air", p.air), ("string", p.string), ("bending", p.bending), ("bridge", p.bridge)];
    let most = causes
        .iter()
        .fold(causes[0], |most, cause| if cause.1.get() > most.1.get() { *cause } else { most });
    reply::Partial {
        n: p.n,
        frequency_hz: p.frequency.get(),
        sharpness_cent: p.sharpness.get(),
        loss_air: p.air.get(),
        loss_string: p.string.get(),
        loss_bending: p.bending.get(),
        loss_bridge: p.bridge.get(),
        q: 1.0 / p.on_rigid_ends.get(),
        ring_s: p.ring,
        most: most.0.to_owned(),
    }
}

fn night(n: &report::Night) -> reply::Night {
    reply::Night { day: n.day, lost_cent: range(n.lost), chance: n.chance }
}

fn doubts(moves: &Moves, property: Property) -> Vec<reply::Doubt> {
    moves
        .doubts(property)
        .into_iter()
        .take(DOUBTS)
        .map(|d| reply::Doubt {
            owner: d.owner.to_owned(),
            which: d.which.key().to_owned(),
            share: d.share,
        })
        .collect()
}

const fn caveat(c: report::Caveat) -> &'static str {
    match c {
        report::Caveat::StressNotMeasured => "stress-not-measured",
        report::Caveat::WireNotTabled => "wire-not-tabled",
        report::Caveat::Breaks => "breaks",
    }
}

pub(crate) fn compare_of(
    this: &Construction,
    other: &Construction,
    setting: &Setting,
) -> reply::Compare {
    reply::Compare {
        this: report_of(this, setting),
        other: report_of(other, setting),
        comparisons: compare::paired(this, other, setting, &reasons::properties(setting.untuned))
            .iter()
            .map(comparison)
            .collect(),
    }
}

pub(crate) fn comparison(c: &compare::Comparison) -> reply::Comparison {
    reply::Comparison {
        property: c.property.key().to_owned(),
        this: c.this,
        other: c.other,
        verdict: c.verdict().key().to_owned(),
        chance_above: c.chance_above,
        chance_below: c.chance_below,
        chance_at_all: c.chance_at_all,
    }
}
