//! What the answer says: the set in one sentence, what was assumed, the load, the steps, the counter, the picture.

use protocol::reply::{
    Assumed, Fit, FittedString, Point, Problem, Report, Searched, Set, Shopping, Step,
};

use super::naming::{a, capital, family, letters, list};
use crate::units;

/// Names of the strings of a set: letters, highest first.
#[must_use]
pub fn names(set: &Set) -> Vec<String> {
    letters(set.strings.iter().map(|s| s.note.as_str()))
}

/// Families with the strings that have them, in the order of the set.
fn groups(families: &[&str], names: &[String]) -> Vec<(String, Vec<String>)> {
    let mut groups: Vec<(String, Vec<String>)> = Vec::new();
    for (key, name) in families.iter().zip(names) {
        match groups.iter_mut().find(|(known, _)| known == key) {
            Some((_, members)) => members.push(name.clone()),
            None => groups.push(((*key).to_owned(), vec![name.clone()])),
        }
    }
    groups
}

/// A set's families: `a plain steel E and synthetic A, D and G`.
#[must_use]
pub fn families(keys: &[&str], names: &[String]) -> String {
    let groups = groups(keys, names);
    if let [(only, _)] = groups.as_slice() {
        return format!("{} strings throughout", family(only));
    }
    let parts: Vec<String> = groups
        .iter()
        .map(|(key, members)| {
            let words = format!("{} {}", family(key), list(members));
            if members.len() == 1 { a(&words) } else { words }
        })
        .collect();
    // A list within a list reads more easily with a comma before its last part.
    if parts.len() > 2 {
        let (last, first) = (&parts[parts.len() - 1], &parts[..parts.len() - 1]);
        format!("{}, and {last}", first.join(", "))
    } else {
        list(&parts)
    }
}

/// The gauge classes of a set: `medium gauge`, or which string has which: `with a heavy A and medium D, G and C`.
#[must_use]
pub fn gauges(classes: &[&str], names: &[String]) -> String {
    let groups = groups(classes, names);
    match groups.as_slice() {
        [(only, _)] => format!("{only} gauge"),
        groups => {
            let parts: Vec<String> = groups
                .iter()
                .map(|(class, members)| {
                    let words = format!("{class} {}", list(members));
                    if members.len() == 1 { a(&words) } else { words }
                })
                .collect();
            format!("with {}", list(&parts))
        }
    }
}

/// Gauge classes of the chosen set.
#[must_use]
pub fn chosen_gauges(set: &Set) -> Vec<&str> {
    set.strings.iter().map(|s| s.shopping.gauge_class.as_str()).collect()
}

/// Gauge classes of the runner-up.
#[must_use]
pub fn other_gauges(set: &Set) -> Vec<&str> {
    set.runner_up
        .as_ref()
        .map(|r| r.shopping.iter().map(|s| s.gauge_class.as_str()).collect())
        .unwrap_or_default()
}

/// Families of the chosen set.
#[must_use]
pub fn chosen_families(set: &Set) -> Vec<&str> {
    set.strings.iter().map(|s| s.report.family.as_str()).collect()
}

/// Families of the runner-up.
#[must_use]
pub fn other_families(set: &Set) -> Vec<&str> {
    set.runner_up
        .as_ref()
        .map(|r| r.strings.iter().map(|s| s.family.as_str()).collect())
        .unwrap_or_default()
}

/// Strings in which two sets have different families.
#[must_use]
pub fn differing(one: &[&str], other: &[&str]) -> Vec<usize> {
    one.iter().zip(other).enumerate().filter(|(_, (a, b))| a != b).map(|(i, _)| i).collect()
}

/// The answer in one sentence.
#[must_use]
pub fn answer(fit: &Fit) -> String {
    let Some(set) = &fit.set else { return nothing(fit) };
    let instrument = &fit.problem.instrument_name;
    let names = names(set);
    let chosen = chosen_families(set);
    let other = other_families(set);
    let differ = differing(&chosen, &other);
    if set.close_call
        && let [i] = differ.as_slice()
    {
        // One word for the gauge of all strings of both sets; where they are of several, the sets themselves say so.
        let gauge = match (chosen_gauges(set).as_slice(), other_gauges(set).as_slice()) {
            ([first, rest @ ..], others) if rest.iter().chain(others).all(|g| g == first) => {
                format!(", {first} gauge")
            }
            _ => String::new(),
        };
        return format!("Your {instrument} wants {}{gauge}.", either(&chosen, &other, &names, *i));
    }
    if set.close_call && !differ.is_empty() {
        return format!(
            "Two sets would suit your {instrument} about equally: {}; or {}.",
            families(&chosen, &names),
            families(&other, &names)
        );
    }
    format!(
        "Your {instrument} wants {}, {}.",
        families(&chosen, &names),
        gauges(&chosen_gauges(set), &names)
    )
}

/// What two sets share, and the one string in which either will do.
fn either(chosen: &[&str], other: &[&str], names: &[String], at: usize) -> String {
    let shared: Vec<usize> = (0..chosen.len()).filter(|i| *i != at).collect();
    let keys: Vec<&str> = shared.iter().map(|i| chosen[*i]).collect();
    let shared_names: Vec<String> = shared.iter().map(|i| names[*i].clone()).collect();
    let choice =
        format!("either {} or {} {}", a(family(chosen[at])), a(family(other[at])), names[at]);
    let groups = groups(&keys, &shared_names);
    let parts: Vec<String> = groups
        .iter()
        .map(|(key, members)| {
            let words = format!("{} {}", family(key), list(members));
            if members.len() == 1 { a(&words) } else { words }
        })
        .collect();
    if parts.is_empty() { choice } else { format!("{}, and {choice}", parts.join(", ")) }
}

fn nothing(fit: &Fit) -> String {
    let instrument = &fit.problem.instrument_name;
    let names: Vec<String> =
        fit.obstacles.iter().filter_map(|o| o.note.as_deref()).map(super::naming::letter).collect();
    if names.is_empty() {
        format!("Nothing fits: every set for this {instrument} pulls harder than it should.")
    } else {
        format!(
            "Nothing fits: no string that is made meets every wish for the {} of this {instrument}.",
            list(&names)
        )
    }
}

/// How much was looked at.
#[must_use]
pub fn searched(searched: &Searched, names: &[String]) -> String {
    // Counts of constructions are far below 2^53.
    let number = |n: u64| units::fixed(n as f64, 0);
    format!(
        "{} strings could be made for the {}. Limits and bounds left {} to be wound and weighed; {} of them would do.",
        number(searched.space),
        list(names),
        number(searched.wound),
        number(searched.inside)
    )
}

/// How much better the best is than the next.
#[must_use]
pub fn lead(set: &Set) -> String {
    let names = names(set);
    match (set.lead, set.close_call, set.runner_up.is_some()) {
        (_, true, true) => "These two come out about level. Choose either.".to_owned(),
        (Some(lead), false, true) => format!(
            "The next best set, {}, comes out {} behind.",
            families(&other_families(set), &names),
            units::with_unit(&units::fixed((lead - 1.0) * 100.0, 0), "%")
        ),
        _ if set.strings.iter().any(|string| string.standing != "new") => {
            "No other kind of string would do here.".to_owned()
        }
        _ => "No other kind of set would do here.".to_owned(),
    }
}

/// By how little the first of two sets leads in a close call.
#[must_use]
pub fn close(lead: f64) -> String {
    let by = units::fixed((lead - 1.0) * 100.0, 1);
    if by == "0.0" {
        "On the scale below neither set leads the other.".to_owned()
    } else {
        format!(
            "On the scale below the first set leads the second by {}, which is no difference to speak of.",
            units::with_unit(&by, "%")
        )
    }
}

/// One thing that was taken for granted, as part of a sentence.
#[must_use]
pub fn assumed(one: &Assumed) -> String {
    let value = &one.value;
    match (one.field.as_str(), value.as_str()) {
        ("instrument", _) => a(value),
        ("size", _) => format!("the size {value}"),
        ("tuning", _) => format!("the tuning {value}"),
        ("set_up", _) => format!("a {value} set-up"),
        ("a4_hz", _) => format!("a′ at {value}"),
        ("room", "steady") => "a steady room".to_owned(),
        ("room", "seasonal") => "a room that changes with the seasons".to_owned(),
        ("room", "damp") => "a damp room".to_owned(),
        ("room", "dry") => "a dry room".to_owned(),
        ("room", "travelling") => "a travelling life".to_owned(),
        ("pegs", "friction") => "plain wooden pegs".to_owned(),
        ("pegs", "geared") => "geared pegs".to_owned(),
        ("pegs", "machine") => "machine heads".to_owned(),
        ("tuners", "none") => "no fine tuners".to_owned(),
        ("tuners", "top") => "a fine tuner on the top string".to_owned(),
        ("tuners", "all") => "a fine tuner on every string".to_owned(),
        ("sounding_length_m", _) => format!("a sounding length of about {value}"),
        (field, _) => format!("{field} {value}"),
    }
}

/// Everything that was taken for granted, in one sentence; none if nothing was.
#[must_use]
pub fn assumptions(problem: &Problem) -> Option<String> {
    let parts: Vec<String> = problem.assumed.iter().map(assumed).collect();
    if parts.is_empty() { None } else { Some(format!("We took for granted: {}.", list(&parts))) }
}

/// Where a load lies against the usual range.
#[must_use]
pub fn load_place(value: f64, (low, high): (f64, f64)) -> &'static str {
    let place = (value - low) / (high - low);
    if place < 0.0 {
        "below what is usual"
    } else if place < 1.0 / 3.0 {
        "in the lower part of what is usual"
    } else if place <= 2.0 / 3.0 {
        "in the middle of what is usual"
    } else if place <= 1.0 {
        "in the upper part of what is usual"
    } else {
        "above what is usual"
    }
}

/// The title of the picture of the load: its takeaway.
#[must_use]
pub fn load_title(set: &Set, problem: &Problem) -> String {
    format!("The load is {}", load_place(set.total_tension_n.value, problem.usual_load_n))
}

/// How a step between neighbours compares with the usual one.
#[must_use]
pub fn step(step: &Step) -> &'static str {
    let ratio = step.tension_ratio / step.usual_ratio;
    if ratio > 1.25 {
        "much steeper than usual"
    } else if ratio > 1.05 {
        "a little steeper than usual"
    } else if ratio < 0.8 {
        "much flatter than usual"
    } else if ratio < 0.95 {
        "a little flatter than usual"
    } else {
        "as usual"
    }
}

/// The title of the table of steps: its takeaway.
#[must_use]
pub fn steps_title(steps: &[Step], names: &[String]) -> String {
    let odd: Vec<String> = steps
        .iter()
        .enumerate()
        .filter(|(_, s)| step(s) != "as usual")
        .map(|(i, s)| {
            format!(
                "from {} to {} the tension falls {}",
                names[i],
                names[i + 1],
                step(s).replace("than usual", "").trim()
            )
        })
        .collect();
    if odd.is_empty() {
        "The steps from string to string are the usual ones".to_owned()
    } else {
        capital(&format!("{} than usual", list(&odd)))
    }
}

/// The words to say at the counter.
#[must_use]
pub fn counter(shopping: &Shopping, name: &str, problem: &Problem, report: &Report) -> String {
    let instrument = &problem.instrument_name;
    let size = if problem.size == "4/4" { String::new() } else { format!("{} ", problem.size) };
    let core = match shopping.family.as_str() {
        "plain-gut" => "plain gut".to_owned(),
        "wound-gut" => "gut core".to_owned(),
        "plain-steel" => "plain steel".to_owned(),
        "wound-steel" => "steel core".to_owned(),
        "stranded-steel" => "rope or strand steel core".to_owned(),
        "synthetic" => format!(
            "synthetic core ({})",
            super::naming::core_material(&report.construction.core.material)
        ),
        "monofilament" => "one thick synthetic filament".to_owned(),
        other => other.to_owned(),
    };
    let wound = shopping
        .outer_metal
        .as_ref()
        .map(|metal| format!(", wound with {metal} outside"))
        .unwrap_or_default();
    // Plain strings are bought by their gauge.
    let gauge = match shopping.family.as_str() {
        "plain-gut" | "plain-steel" | "monofilament" => {
            format!(", {}", units::gauge(report.construction.core.diameter_m))
        }
        _ => String::new(),
    };
    let end = match shopping.end.as_str() {
        "loop-or-ball" => ", loop or ball end as your fine tuner needs",
        "knot" => ", to be knotted at the tailpiece",
        _ => ", ball end",
    };
    let long = if shopping.extension { ", long enough for the extension" } else { "" };
    let article = a(&format!("{size}{instrument}"));
    format!("{article} {name} string, {core}{wound}{gauge}, {}{end}{long}", shopping.gauge_class)
}

/// What to look for on the packet.
#[must_use]
pub fn packet(shopping: &Shopping) -> String {
    format!(
        "about {} at {} and {} of sounding length",
        units::forces(shopping.tension_n),
        units::hertz(shopping.pitch_hz),
        units::mm(shopping.sounding_length_m, 0)
    )
}

/// The few numbers of a string that a player can use, as sentences.
#[must_use]
pub fn plain_facts(string: &FittedString) -> Vec<String> {
    let n = |key: &str| string.report.numbers.get(key);
    let mut facts = Vec::new();
    if let Some(q) = n("tension_n") {
        facts.push(format!("In tune it pulls with {}.", units::force(q.value)));
    }
    let plain = |key: &str| n(key).map(|q| (units::plainly(key, q), q.unknown));
    if let Some((stretch, unknown)) = plain("stretch") {
        facts.push(if unknown {
            format!("How much it stretches is {stretch}.")
        } else {
            format!("It is {stretch} longer in tune than slack.")
        });
    }
    if let Some((share, unknown)) = plain("breaking_share") {
        facts.push(if unknown {
            format!("How near it is to breaking is {share}.")
        } else {
            format!("In tune it uses {share} of the strength of its core.")
        });
    }
    if let Some((peg, _)) = plain("peg_cent_deg") {
        let cents = peg.replace("cents/degree", "cents");
        let served = if string.fine_tuner { "; it has a fine tuner" } else { "" };
        facts.push(format!("A degree of peg moves it by {cents}{served}."));
    }
    if let Some((days, unknown)) = plain("settling_d") {
        facts.push(if unknown {
            format!("Days until it has settled: {days}.")
        } else {
            format!("It has settled after {days}.")
        });
    }
    if let Some((cents, _)) = plain("drift_cent") {
        facts.push(format!("How far its pitch wanders as this room changes: {cents}."));
    }
    facts
}

/// The part of the picture that costs next to no steadiness: within so much of the steadiest.
const NEARLY_FREE: f64 = 0.05;

/// The points that no other beats in both: the steadiest first.
#[must_use]
pub fn frontier(points: &[Point]) -> Vec<&Point> {
    let beaten = |p: &Point| {
        points.iter().any(|q| {
            q.stretch >= p.stretch
                && q.steadiness >= p.steadiness
                && (q.stretch > p.stretch || q.steadiness > p.steadiness)
        })
    };
    let mut best: Vec<&Point> = points.iter().filter(|p| !beaten(p)).collect();
    best.sort_by(|a, b| b.steadiness.total_cmp(&a.steadiness));
    best
}

/// The title of the picture of elasticity and steadiness: its takeaway.
#[must_use]
pub fn picture_title(points: &[Point], name: &str) -> String {
    let best = frontier(points);
    let (Some(steadiest), Some(loosest)) = (best.first(), best.last()) else {
        return format!("Nothing to compare for the {name}");
    };
    if points.len() < 4 {
        return format!(
            "For the {name} so few kinds of string would do that there is little to weigh"
        );
    }
    let fall = steadiest.steadiness - loosest.steadiness;
    if fall < NEARLY_FREE {
        return format!(
            "For the {name} there is no balance to strike: the most elastic string is as steady as any"
        );
    }
    let stretch = |p: &Point| units::with_unit(&units::significant(p.stretch * 100.0, 2), "%");
    let free = best
        .iter()
        .filter(|p| p.steadiness >= steadiest.steadiness - NEARLY_FREE)
        .max_by(|a, b| a.stretch.total_cmp(&b.stretch));
    match free {
        // Only a step worth taking is called free, and only if there is more to be had beyond it.
        Some(free)
            if free.stretch > 1.2 * steadiest.stretch && free.stretch < 0.8 * loosest.stretch =>
        {
            format!(
                "For the {name}, stretch up to {} costs next to no steadiness; from there to {} it costs {} of 100",
                stretch(free),
                stretch(loosest),
                units::of_hundred(free.steadiness - loosest.steadiness)
            )
        }
        _ => format!(
            "For the {name}, more stretch costs steadiness: from {} to {} it falls by {} of 100",
            stretch(steadiest),
            stretch(loosest),
            units::of_hundred(fall)
        ),
    }
}

/// Which families lie over each other in steadiness, as a sentence; none if none do.
#[must_use]
pub fn overlap(points: &[Point]) -> Option<String> {
    let mut spans: Vec<(&str, f64, f64, usize)> = Vec::new();
    for p in points {
        match spans.iter_mut().find(|s| s.0 == p.family) {
            Some(s) => *s = (s.0, s.1.min(p.steadiness), s.2.max(p.steadiness), s.3 + 1),
            None => spans.push((&p.family, p.steadiness, p.steadiness, 1)),
        }
    }
    let spans: Vec<_> = spans.into_iter().filter(|s| s.3 >= 3).collect();
    let over: Vec<&str> = spans
        .iter()
        .filter(|one| {
            spans.iter().any(|other| other.0 != one.0 && one.1 < other.2 && other.1 < one.2)
        })
        .map(|s| family(s.0))
        .collect();
    if over.len() < 2 {
        None
    } else {
        Some(format!(
            "{} strings overlap in steadiness: the kind alone does not decide it.",
            capital(&list(&over))
        ))
    }
}
