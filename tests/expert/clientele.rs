//! What do many people get? `clientele.tsv` says which shares of each kind of player have gut, synthetic cores or steel;
//! here people are drawn from a seed as its rows describe them, and the shares of what they are told are set beside it.

use std::thread;

use serde_json::{Map, Value, json};
use support::Seeded;

use crate::fit_of;
use crate::practice::{after, strings_of};

const CLIENTELE: &str = include_str!("clientele.tsv");

/// How many people are drawn; or as many as `ROPEWALK_PEOPLE` says, 2,000 where the shares are to be read.
fn people() -> usize {
    support::cases("ROPEWALK_PEOPLE", 300)
}

/// How many errors of a drawn share one may lie outside its range.
const FARTHEST: f64 = 2.5;

/// Gut, synthetic cores, steel, in the order of the table.
const CLASSES: [&str; 3] = ["gut", "synthetic", "steel"];

/// A row of the table.
struct Row {
    instrument: &'static str,
    positions: &'static str,
    player: &'static str,
    /// The range of each class, of a hundred.
    shares: [(f64, f64); 3],
}

/// What the people of a row are told: strings of each class, and people whom nothing fits.
#[derive(Clone, Copy, Default)]
struct Told {
    strings: [usize; 3],
    nothing: usize,
}

fn rows() -> Vec<Row> {
    let lines = CLIENTELE.lines().filter(|line| !line.starts_with('#')).skip(1);
    let range = |text: &str| {
        let (low, high) = text.split_once('-').unwrap_or((text, text));
        (low.parse().unwrap(), high.parse().unwrap())
    };
    let row = |line: &'static str| {
        let cells: Vec<&str> = line.split('\t').collect();
        let [instrument, positions, player, gut, synthetic, steel, _] = cells[..] else {
            panic!("{line}")
        };
        let shares = [range(gut), range(synthetic), range(steel)];
        Row { instrument, positions, player, shares }
    };
    lines.map(row).collect()
}

/// One of these by odds of a hundred; null for the rest.
fn drawn(seeded: &mut Seeded, odds: &[(&str, f64)]) -> Value {
    let mut left = 100.0 * seeded.share();
    for (word, of_hundred) in odds {
        if left < *of_hundred {
            return json!(word);
        }
        left -= of_hundred;
    }
    Value::Null
}

/// What the words of a row say of its players.
fn as_described(seeded: &mut Seeded, row: &Row) -> Value {
    let grown = [("student", 30.0), ("advanced", 40.0), ("professional", 15.0)];
    let learner = |seeded: &mut Seeded| {
        let size = match row.instrument {
            "violin" => drawn(seeded, &[("4/4", 50.0), ("3/4", 25.0), ("1/2", 25.0)]),
            "viola" => drawn(seeded, &[("16 in", 30.0), ("15 in", 40.0), ("14 in", 30.0)]),
            "cello" => drawn(seeded, &[("4/4", 60.0), ("3/4", 20.0), ("1/2", 20.0)]),
            _ => drawn(seeded, &[("3/4", 80.0), ("1/2", 20.0)]),
        };
        json!({
            "level": "beginner", "size": size, "belongs_to": drawn(seeded, &[("school", 50.0), ("loan", 50.0)]),
            "who_tunes": drawn(seeded, &[("player", 30.0), ("adult", 30.0), ("nobody", 30.0)]),
        })
    };
    match row.player {
        "all but period" => {
            let music = drawn(seeded, &[("classical", 60.0), ("folk", 15.0), ("jazz", 5.0)]);
            let level = drawn(
                seeded,
                &[
                    ("beginner", 35.0),
                    ("student", 30.0),
                    ("advanced", 20.0),
                    ("professional", 10.0),
                ],
            );
            json!({ "music": music, "level": level })
        }
        "school or rental beginner" => learner(seeded),
        "folk (all)" => json!({ "music": "folk", "level": drawn(seeded, &grown) }),
        "bluegrass, old-time" => {
            let crossed = seeded.share() < 0.2;
            let tuning = if crossed { json!("cross-a") } else { Value::Null };
            let tuned_so = if crossed { json!("sometimes") } else { Value::Null };
            json!({ "music": "folk", "level": drawn(seeded, &grown), "tuning": tuning, "tuned_so": tuned_so })
        }
        "student, amateur (advancing)" => {
            json!({ "level": drawn(seeded, &[("student", 50.0), ("advanced", 50.0)]), "music": drawn(seeded, &[("classical", 80.0)]) })
        }
        "student to professional" => {
            let level =
                drawn(seeded, &[("student", 40.0), ("advanced", 35.0), ("professional", 25.0)]);
            json!({ "level": level, "music": drawn(seeded, &[("classical", 80.0)]) })
        }
        "professional orchestral" => json!({ "level": "professional", "music": "classical" }),
        "period" => {
            let low = seeded.share() < 0.8;
            json!({
                "set_up": "historical", "music": "early", "a4_hz": if low { 415 } else { 430 },
                "level": drawn(seeded, &grown),
            })
        }
        "beginner, student, folk" => match seeded.below(3) {
            0 => learner(seeded),
            1 => json!({ "level": "student", "music": drawn(seeded, &[("classical", 80.0)]) }),
            _ => json!({ "music": "folk", "level": drawn(seeded, &grown) }),
        },
        "school, student" => match seeded.below(2) {
            0 => learner(seeded),
            _ => {
                json!({ "level": "student", "music": drawn(seeded, &[("classical", 60.0), ("jazz", 20.0)]) })
            }
        },
        "jazz" => {
            let played = drawn(seeded, &[("plucked", 60.0), ("both", 30.0)]);
            json!({ "music": "jazz", "level": drawn(seeded, &grown), "played": played })
        }
        "bluegrass, country" => {
            json!({ "music": "folk", "level": drawn(seeded, &grown), "played": "plucked" })
        }
        "rockabilly slap" => json!({
            "music": drawn(seeded, &[("jazz", 50.0), ("folk", 50.0)]), "level": drawn(seeded, &grown),
            "played": "plucked", "ring": "short",
        }),
        other => panic!("nobody is described as {other}"),
    }
}

/// What nine of ten say is on it now, drawn by the shares of the row.
fn now(seeded: &mut Seeded, row: &Row, answers: &mut Map<String, Value>) {
    let middles = row.shares.map(|(low, high)| (low + high) / 2.0);
    let mut left = seeded.share() * middles.iter().sum::<f64>();
    let is_said = seeded.share() < 0.9;
    let class = middles.iter().position(|middle| {
        left -= middle;
        left < 0.0
    });
    let Some(class) = class.filter(|_| is_said) else { return };
    let strings = strings_of(&Value::Object(answers.clone()), row.positions);
    if let [one] = strings[..] {
        // Of one place it says nothing about the others.
        let family = match (CLASSES[class], one) {
            ("gut", 0) => "plain-gut",
            ("gut", _) => "wound-gut",
            ("steel", 0) if row.instrument == "violin" => "plain-steel",
            ("steel", 0) => "wound-steel",
            ("steel", _) => "stranded-steel",
            _ => "synthetic",
        };
        let mut said = vec![json!({}); one + 1];
        said[one] = json!({ "today": { "family": family } });
        answers.insert("strings".to_owned(), said.into());
    } else {
        answers.insert("now".to_owned(), CLASSES[class].into());
    }
    if seeded.share() < 0.5 {
        answers.insert("age_months".to_owned(), seeded.between(1.0, 30.0).round().into());
    }
}

/// A person of a row.
fn person(seeded: &mut Seeded, row: &Row) -> Value {
    let Value::Object(mut answers) = as_described(seeded, row) else { panic!("no answers") };
    answers.insert("instrument".to_owned(), row.instrument.replace(' ', "-").into());
    now(seeded, row, &mut answers);
    let rooms =
        [("steady", 20.0), ("seasonal", 35.0), ("damp", 10.0), ("dry", 10.0), ("travelling", 10.0)];
    answers.insert("room".to_owned(), drawn(seeded, &rooms));
    let budgets = [("modest", 25.0), ("middle", 45.0), ("any", 15.0)];
    answers.insert("budget".to_owned(), drawn(seeded, &budgets));
    if seeded.share() < 0.3 {
        let wish = *seeded.one_of(&["colour", "brightness", "power", "feel", "response"]);
        let by = *seeded.one_of(&[-1.0, -0.5, 0.5, 1.0]);
        answers.insert("wishes".to_owned(), json!({ wish: by }));
    }
    if seeded.share() < 0.2 {
        answers.insert("concert_days".to_owned(), seeded.between(3.0, 60.0).round().into());
    }
    Value::Object(answers)
}

/// What people of a row are told.
fn told(row: &Row, index: usize, count: usize) -> Told {
    let mut told = Told::default();
    for i in 0..count {
        let answers = person(&mut Seeded::new((index * 100_000 + i) as u64), row);
        let fit = fit_of(&answers);
        if fit.set.is_none() {
            told.nothing += 1;
            continue;
        }
        for string in strings_of(&answers, row.positions) {
            let family = after(&fit, string).map_or("", |report| report.family.as_str());
            let class = match family {
                "plain-gut" | "wound-gut" => 0,
                "synthetic" | "monofilament" => 1,
                _ => 2,
            };
            told.strings[class] += 1;
        }
    }
    told
}

#[test]
fn many_people_get_what_such_people_have() {
    let rows = rows();
    let each = people().div_ceil(rows.len());
    // Two threads, each with every other row.
    let half = |first: usize| {
        let mine = rows.iter().enumerate().skip(first).step_by(2);
        mine.map(|(i, row)| (i, told(row, i, each))).collect::<Vec<_>>()
    };
    let mut all = thread::scope(|scope| {
        let other = scope.spawn(|| half(1));
        let mut all = half(0);
        all.extend(other.join().unwrap());
        all
    });
    all.sort_by_key(|(i, _)| *i);
    let (mut within, mut far) = (0, Vec::new());
    for (i, told) in &all {
        let row = &rows[*i];
        let of = told.strings.iter().sum::<usize>().max(1) as f64;
        let shares = told.strings.map(|count| 100.0 * count as f64 / of);
        let fits = shares
            .iter()
            .zip(&row.shares)
            .all(|(share, (low, high))| (low.floor()..=high.ceil()).contains(&share.round()));
        within += usize::from(fits);
        for ((share, (low, high)), class) in shares.iter().zip(&row.shares).zip(CLASSES) {
            // Of nearly all, all may be drawn.
            let beyond = (low - share).max(share - high.max(99.0 * f64::from(*high >= 98.0)));
            let middle = (0.5 * (low + high) / 100.0).clamp(0.02, 0.98);
            let error = 100.0 * (middle * (1.0 - middle) / each as f64).sqrt();
            if beyond > FARTHEST * error + 1.0 {
                far.push(format!(
                    "{} {} {}: {share:.0} of 100 {class}",
                    row.instrument, row.positions, row.player
                ));
            }
        }
        let words: Vec<String> = (0..3)
            .map(|k| {
                let (low, high) = row.shares[k];
                format!("{} {:3.0} ({low}-{high})", CLASSES[k], shares[k])
            })
            .collect();
        support::tell(&format!(
            "{:12} {:6} {:30} {:65} nothing {:2} of {each} {}",
            row.instrument,
            row.positions,
            row.player,
            words.join("  "),
            told.nothing,
            if fits { "" } else { "<- outside" },
        ));
    }
    support::tell(&format!(
        "{within} of {} rows within their ranges, {each} people each",
        rows.len()
    ));
    assert!(far.is_empty(), "far outside: {}", far.join("; "));
}
