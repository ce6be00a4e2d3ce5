//! What a class asks at the door: a string stretched, a year in a room, what is made for a place.

use strings::error::{self, Fault};
use strings::fit::{problem, today};
use strings::quantity::Metre;
use strings::report;

use crate::convert::{self, players};
use crate::encode::{grade, range, report_of};
use crate::reply::{Drifting, FamilyAtPlace, MonthDrift, Place, Reply, Stretch, Stretched, Year};
use crate::request::{PlaceRequest, StretchRequest, YearRequest};

/// Answers a request for strings that are stretched.
pub(crate) fn stretch(r: &StretchRequest) -> Result<Reply, Vec<Fault>> {
    let mut faults = Vec::new();
    let strings = players(&r.strings, &mut faults);
    faults.extend(error::PULL.check("pull_m", r.pull_m).err());
    if !faults.is_empty() {
        return Err(faults);
    }
    let wound = Metre::new(r.pull_m);
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
