//! What a class asks at the door: a string stretched, a year in a room, what is made for a place.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use strings::error::{self, Fault};
use strings::fit::{problem, today};
use strings::report::{self, Estimate};

use crate::bowed::{MOST_STRINGS, Player, players};
use crate::convert;
use crate::handle::{grade, report_of};
use crate::reply::{Range, Reply, Report};
use crate::request::{Answers, Setting};
use crate::schema;

/// Strings at pitch, of which more is wound over the nut, or let back.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StretchRequest {
    /// The strings, in any order; one to eight.
    #[schemars(length(min = 1, max = MOST_STRINGS))]
    pub strings: Vec<Player>,
    /// How much of each, as it lies at pitch, is wound over the nut; negative where it is let back. −0.5 to 0.05 m.
    #[schemars(range(min = error::PULL.min, max = error::PULL.max))]
    pub pull_m: f64,
}

/// How strings wander through a year in their room.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct YearRequest {
    /// The strings, in any order; one to eight. The room is in their settings.
    #[schemars(length(min = 1, max = MOST_STRINGS))]
    pub strings: Vec<Player>,
}

/// What is made for one place of an instrument.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PlaceRequest {
    /// The instrument and its room, as for a fit.
    pub answers: Answers,
    /// Which string, 0 the highest.
    #[schemars(range(max = schema::most_strings() - 1))]
    pub string: usize,
}

/// Strings of which more was wound over the nut.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Stretch {
    /// How much of each.
    pub pull_m: f64,
    /// The strings, in the order of the request.
    pub strings: Vec<Stretched>,
}

/// A string of which more was wound over the nut.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Stretched {
    /// The whole length over which it stretches, from peg to tailpiece.
    pub whole_length_m: f64,
    /// How much must be let back from pitch until it hangs slack.
    pub slack_m: Range,
    /// Its stretch now; zero where it is slack.
    pub stretch: Range,
    /// Its tension now.
    pub tension_n: Range,
    /// How far it lies above its pitch now; none where it may be slack.
    pub above_cent: Option<Range>,
    /// Its pitch now; none where it may be slack.
    pub pitch_hz: Option<f64>,
    /// Diameter of its core now.
    pub core_diameter_m: Range,
    /// Its outer diameter now.
    pub outer_diameter_m: Range,
    /// Share of its breaking strength now; from 1 on it has broken.
    pub breaking_share: Range,
}

/// How strings wander through a year.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Year {
    /// The strings, in the order of the request.
    pub strings: Vec<Drifting>,
}

/// A string through a year.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Drifting {
    /// January to December.
    pub months: Vec<MonthDrift>,
}

/// A string in a month.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct MonthDrift {
    /// Which month, 1 is January.
    pub month: usize,
    /// Temperature of the room then.
    pub temperature_c: f64,
    /// Relative humidity of the room then.
    pub humidity: f64,
    /// How far the string lies above where it stands in the middle of the room's swing, untuned.
    pub above_cent: Range,
}

/// What is made for one place of an instrument.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Place {
    /// The notes of the instrument, highest first.
    pub notes: Vec<String>,
    /// Which string it is, 0 the highest.
    pub string: usize,
    /// Where it works.
    pub setting: Setting,
    /// The most usual string of each family that is made there, in the order in which the trade met them.
    pub families: Vec<FamilyAtPlace>,
}

/// The most usual string of a family at a place.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FamilyAtPlace {
    /// How commonly it is made there: `everyday`, `sometimes`, `nobody`.
    pub grade: String,
    /// Everything about it.
    pub report: Report,
}

fn range(e: Estimate) -> Range {
    Range { value: e.value, low: e.low, high: e.high }
}

/// Answers a request for strings that are stretched.
pub(crate) fn stretch(r: &StretchRequest) -> Result<Reply, Vec<Fault>> {
    let mut faults = Vec::new();
    let strings = players(&r.strings, &mut faults);
    faults.extend(error::PULL.check("pull_m", r.pull_m).err());
    if !faults.is_empty() {
        return Err(faults);
    }
    let wound = strings::quantity::Metre::new(r.pull_m);
    let one = |(construction, setting): &_| {
        let s = report::stretched(construction, setting, wound);
        Stretched {
            whole_length_m: s.whole.get(),
            slack_m: range(s.slack),
            stretch: range(s.stretch),
            tension_n: range(s.tension),
            above_cent: s.cents.map(range),
            pitch_hz: s.pitch,
            core_diameter_m: range(s.core),
            outer_diameter_m: range(s.outer),
            breaking_share: range(s.breaking_share),
        }
    };
    let strings = strings.iter().map(one).collect();
    Ok(Reply::Stretch(Box::new(Stretch { pull_m: r.pull_m, strings })))
}

/// Answers a request for a year.
pub(crate) fn year(r: &YearRequest) -> Result<Reply, Vec<Fault>> {
    let mut faults = Vec::new();
    let strings = players(&r.strings, &mut faults);
    if !faults.is_empty() {
        return Err(faults);
    }
    let one = |(construction, setting): &_| Drifting {
        months: report::year(construction, setting)
            .iter()
            .map(|m| MonthDrift {
                month: m.number,
                temperature_c: m.temperature.get(),
                humidity: m.humidity.get(),
                above_cent: range(m.drift),
            })
            .collect(),
    };
    Ok(Reply::Year(Box::new(Year { strings: strings.iter().map(one).collect() })))
}

/// Answers a request for what is made for a place.
pub(crate) fn place(r: &PlaceRequest) -> Result<Reply, Vec<Fault>> {
    let problem = problem::pose(&convert::answers(&r.answers)?);
    let Some(string) = problem.strings.get(r.string) else {
        let allowed = format!("0 to {}", problem.strings.len().saturating_sub(1));
        return Err(vec![Fault::new("string", r.string, allowed)]);
    };
    let families = today::of_families(&problem, string)
        .iter()
        .map(|found| FamilyAtPlace {
            grade: grade(found.grade),
            report: report_of(&found.construction, &string.setting),
        })
        .collect();
    Ok(Reply::Place(Box::new(Place {
        notes: problem.strings.iter().map(|s| s.note.name()).collect(),
        string: r.string,
        setting: convert::setting_back(&string.setting),
        families,
    })))
}
