//! Which strings of an answer are mapped and heard against which.

use protocol::reply::{FittedString, Report, Set};
use protocol::request::{Construction, Player, Setting};

use crate::components::bow_map::Mapped;
use crate::components::listening::{ListeningGroup, Played};
use crate::words::say;

/// A string of a report, as it is played.
#[must_use]
pub fn player(report: &Report) -> Player {
    Player { construction: report.construction.clone(), setting: report.setting.clone() }
}

/// The chosen string, and today's beside it where that is known.
#[must_use]
pub fn mapped(string: &FittedString, name: &str) -> Vec<Mapped> {
    let own =
        Mapped { name: say!("bench-this", name = name).into(), string: player(&string.report) };
    let today = string
        .today
        .as_ref()
        .map(|today| Mapped { name: say!("bench-todays-string").into(), string: player(today) });
    [own].into_iter().chain(today).collect()
}

/// What of a set can be heard against what: the whole set, and each new string against others at its place.
#[must_use]
pub fn groups(set: &Set, names: &[String]) -> Vec<ListeningGroup> {
    let of = |name: &str, reports: Vec<&Report>| Played {
        name: name.to_owned().into(),
        strings: reports.into_iter().map(player).collect(),
    };
    let mut whole =
        vec![of(say!("bench-this-set"), set.strings.iter().map(|s| &*s.report).collect())];
    // A string that stays is today's string.
    let today = set
        .strings
        .iter()
        .map(|s| s.today.as_ref().or_else(|| (s.standing != "new").then_some(&s.report)));
    if let Some(today) = today.collect::<Option<Vec<_>>>() {
        whole.push(of(say!("bench-todays-set"), today));
    }
    let second = set.second();
    if !second.is_empty() {
        whole.push(of(say!("bench-second-set"), second.clone()));
    }
    let single =
        set.strings.iter().zip(names).enumerate().filter(|(_, (s, _))| s.standing == "new");
    let single = single.map(|(i, (s, name))| {
        let mut played = vec![of(&say!("bench-this", name = name), vec![&s.report])];
        if let Some(today) = &s.today {
            played.push(of(&say!("bench-todays", name = name), vec![today]));
        }
        if let Some(rival) = &s.rival {
            played.push(of(&say!("bench-other-kind", name = name), vec![rival]));
        }
        if let Some(other) = second.get(i) {
            played.push(of(&say!("bench-seconds", name = name), vec![other]));
        }
        ListeningGroup { name: say!("bench-alone", name = name).into(), played: unlike(played) }
    });
    let mut all = vec![ListeningGroup { name: say!("bench-whole").into(), played: unlike(whole) }];
    all.extend(single);
    all
}

/// The same strings under two names are heard under the first alone.
fn unlike(played: Vec<Played>) -> Vec<Played> {
    let mut left: Vec<Played> = Vec::new();
    for one in played {
        if left.iter().all(|other| other.strings != one.strings) {
            left.push(one);
        }
    }
    left
}

/// Two strings at one place, to be mapped.
#[must_use]
pub fn two_mapped(sides: [&Construction; 2], setting: &Setting) -> Vec<Mapped> {
    let names = [say!("bench-first"), say!("bench-second")];
    let one = |(name, construction): (&str, &Construction)| Mapped {
        name: name.to_owned().into(),
        string: Player { construction: construction.clone(), setting: setting.clone() },
    };
    names.into_iter().zip(sides).map(one).collect()
}

/// Two strings at one place, to be heard.
#[must_use]
pub fn two_heard(sides: [&Construction; 2], setting: &Setting) -> Vec<ListeningGroup> {
    let played = two_mapped(sides, setting)
        .into_iter()
        .map(|mapped| Played { name: mapped.name, strings: vec![mapped.string] });
    vec![ListeningGroup { name: say!("bench-two").into(), played: played.collect() }]
}
