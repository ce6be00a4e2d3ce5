//! What the answer says: the set in one sentence, what was assumed, the load, the steps, the counter.

use protocol::reply::{Assumed, Fit, FittedString, Problem, Report, Searched, Set, Shopping, Step};

use super::naming::{capital, letters, list};
use super::questions::{size_name, tuning_name};
use super::{drift, say, speech};
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
        return say!("families-one", family = only);
    }
    let parts: Vec<String> = groups.iter().map(family_part).collect();
    // A list within a list reads more easily with a comma before its last part.
    if parts.len() > 2 {
        let (last, first) = (&parts[parts.len() - 1], &parts[..parts.len() - 1]);
        say!("list-of-lists", first = first.join(", "), last = last)
    } else {
        list(&parts)
    }
}

/// A family with the strings that have it: `a plain steel E`, `synthetic D and G`.
fn family_part((key, members): &(String, Vec<String>)) -> String {
    say!("families-part", count = members.len(), family = key, strings = list(members))
}

/// The gauge classes of a set: `medium gauge`, or which string has which: `with a heavy A and medium D, G and C`.
#[must_use]
pub fn gauges(classes: &[&str], names: &[String]) -> String {
    let groups = groups(classes, names);
    match groups.as_slice() {
        [(only, _)] => say!("gauges-one", gauge = only),
        groups => {
            let part = |(class, members): &(String, Vec<String>)| {
                let strings = list(members);
                say!("gauges-part", count = members.len(), gauge = class, strings = strings)
            };
            let parts: Vec<String> = groups.iter().map(part).collect();
            say!("gauges-with", parts = list(&parts))
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
    set.second().iter().map(|s| s.family.as_str()).collect()
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
    let instrument = &fit.problem.instrument;
    let names = names(set);
    let chosen = chosen_families(set);
    let other = other_families(set);
    let differ = differing(&chosen, &other);
    if set.close_call
        && let [i] = differ.as_slice()
    {
        let either = either(&chosen, &other, &names, *i);
        return say!("set-answer", instrument = instrument, strings = either);
    }
    if set.close_call && !differ.is_empty() {
        return say!("set-answer-two", instrument = instrument);
    }
    say!("set-answer", instrument = instrument, strings = families(&chosen, &names))
}

/// What two sets share, and the one string in which either will do.
fn either(chosen: &[&str], other: &[&str], names: &[String], at: usize) -> String {
    let shared: Vec<usize> = (0..chosen.len()).filter(|i| *i != at).collect();
    let keys: Vec<&str> = shared.iter().map(|i| chosen[*i]).collect();
    let shared_names: Vec<String> = shared.iter().map(|i| names[*i].clone()).collect();
    let choice = say!(
        "either-string",
        one = one_string(chosen[at]),
        other = one_string(other[at]),
        string = &names[at],
    );
    let groups = groups(&keys, &shared_names);
    let parts: Vec<String> = groups.iter().map(family_part).collect();
    if parts.is_empty() {
        choice
    } else {
        say!("list-of-lists", first = parts.join(", "), last = choice)
    }
}

/// A family as one string: `a plain steel`, to which a note may follow.
fn one_string(key: &str) -> String {
    say!("one-string", family = key)
}

fn nothing(fit: &Fit) -> String {
    let instrument = &fit.problem.instrument;
    let names: Vec<String> =
        fit.obstacles.iter().filter_map(|o| o.note.as_deref()).map(super::naming::letter).collect();
    if names.is_empty() {
        say!("nothing-load", instrument = instrument)
    } else {
        say!("nothing-made", instrument = instrument, strings = list(&names))
    }
}

/// How much was looked at.
#[must_use]
pub fn searched(searched: &Searched, names: &[String]) -> String {
    // Counts of constructions are far below 2^53.
    let number = |n: u64| units::fixed(n as f64, 0);
    say!(
        "searched",
        space = number(searched.space),
        strings = list(names),
        wound = number(searched.wound),
        inside = number(searched.inside),
    )
}

/// How much better the best is than the next.
#[must_use]
pub fn lead(set: &Set) -> String {
    let names = names(set);
    match (set.lead, set.close_call, set.runner_up.is_some()) {
        (_, true, true) => say!("lead-level").to_owned(),
        (Some(lead), false, true) => say!(
            "lead-next",
            strings = families(&other_families(set), &names),
            by = units::with_unit(&units::fixed((lead - 1.0) * 100.0, 0), "%"),
        ),
        _ if set.strings.iter().any(|string| string.standing != "new") => {
            say!("lead-no-string").to_owned()
        }
        _ => say!("lead-no-set").to_owned(),
    }
}

/// The gap to the upper bound from which on a number says nothing.
const WIDE_GAP: f64 = 0.5;

/// That the set is not proven to be the best, and how far from it it can be; nothing of a proven one.
#[must_use]
pub fn unproven(set: &Set) -> Option<String> {
    if set.proven {
        return None;
    }
    if set.optimality_gap > WIDE_GAP {
        return Some(say!("unproven").to_owned());
    }
    // Rounded up, so that no better set can lie beyond.
    let by = units::fixed((set.optimality_gap * 1000.0).ceil().max(1.0) / 10.0, 1);
    Some(say!("unproven-by", by = units::with_unit(&by, "%")))
}

/// By how little the first of two sets leads in a close call.
#[must_use]
pub fn close(lead: f64) -> String {
    let by = units::fixed((lead - 1.0) * 100.0, 1);
    if by == units::fixed(0.0, 1) {
        say!("close-none").to_owned()
    } else {
        say!("close-by", by = units::with_unit(&by, "%"))
    }
}

/// One thing that was taken for granted, as part of a sentence.
#[must_use]
pub fn assumed(one: &Assumed, problem: &Problem) -> String {
    let value = &one.value;
    // What the model calls by a name of its own is called here as everywhere on the page.
    match one.field.as_str() {
        "instrument" => say!("assumed-instrument", instrument = &problem.instrument),
        "size" => say!("assumed-size", size = size_name(value)),
        "tuning" => {
            let tuning = tuning_name(&problem.instrument, &problem.tuning);
            say!("assumed-tuning", tuning = tuning)
        }
        "set_up" => say!("assumed-set-up", set_up = value),
        "a4_hz" => say!("assumed-a4", pitch = units::hertz(problem.a4_hz)),
        "sounding_length_m" => {
            let number = value.trim_end_matches(|c: char| !c.is_ascii_digit());
            say!("assumed-length", number = number)
        }
        field => speech::of("assumed", &format!("{field}-{value}"))
            .map_or_else(|| format!("{field} {value}"), str::to_owned),
    }
}

/// Everything that was taken for granted, in one sentence; none if nothing was.
#[must_use]
pub fn assumptions(problem: &Problem) -> Option<String> {
    let parts: Vec<String> = problem.assumed.iter().map(|one| assumed(one, problem)).collect();
    if parts.is_empty() { None } else { Some(say!("assumptions", parts = list(&parts))) }
}

/// Where a load lies against the usual range.
#[must_use]
pub fn load_place(value: f64, (low, high): (f64, f64)) -> &'static str {
    let place = (value - low) / (high - low);
    if place < 0.0 {
        say!("load-below")
    } else if place < 1.0 / 3.0 {
        say!("load-lower")
    } else if place <= 2.0 / 3.0 {
        say!("load-middle")
    } else if place <= 1.0 {
        say!("load-upper")
    } else {
        say!("load-above")
    }
}

/// The title of the picture of the load: its takeaway.
#[must_use]
pub fn load_title(set: &Set, problem: &Problem) -> String {
    say!("load-title", place = load_place(set.total_tension_n.value, problem.usual_load_n))
}

/// How a step between neighbours compares with the usual one.
fn step_key(step: &Step) -> &'static str {
    let ratio = step.tension_ratio / step.usual_ratio;
    if ratio > 1.25 {
        "much-steeper"
    } else if ratio > 1.05 {
        "steeper"
    } else if ratio < 0.8 {
        "much-flatter"
    } else if ratio < 0.95 {
        "flatter"
    } else {
        "usual"
    }
}

/// How a step between neighbours compares with the usual one, in words.
#[must_use]
pub fn step(step: &Step) -> &'static str {
    speech::of("step", step_key(step)).unwrap_or_default()
}

/// The title of the table of steps: its takeaway.
#[must_use]
pub fn steps_title(steps: &[Step], names: &[String]) -> String {
    let odd: Vec<String> = steps
        .iter()
        .enumerate()
        .map(|(i, step)| (i, step_key(step)))
        .filter(|(_, key)| *key != "usual")
        .map(|(i, key)| say!("steps-odd", upper = &names[i], lower = &names[i + 1], step = key))
        .collect();
    if odd.is_empty() {
        say!("steps-usual").to_owned()
    } else {
        capital(&say!("steps-title", steps = list(&odd)))
    }
}

/// The words to say at the counter.
#[must_use]
pub fn counter(shopping: &Shopping, name: &str, problem: &Problem, report: &Report) -> String {
    let material = super::naming::core_material(&report.construction.core.material);
    let core = say!("counter-core", family = &shopping.family, material = material);
    let wound = shopping
        .outer_metal
        .as_ref()
        .map(|metal| say!("counter-wound", metal = super::naming::metal(metal)))
        .unwrap_or_default();
    // Plain strings are bought by their gauge.
    let gauge = match shopping.family.as_str() {
        "plain-gut" | "plain-steel" | "monofilament" => {
            format!(", {}", units::gauge(report.construction.core.diameter_m))
        }
        _ => String::new(),
    };
    say!(
        "counter",
        instrument = &problem.instrument,
        full = if problem.size == "4/4" { "yes" } else { "no" },
        size = size_name(&problem.size),
        name = name,
        core = core,
        wound = wound,
        gauge = gauge,
        class = &shopping.gauge_class,
        end = &shopping.end,
        long = if shopping.extension { "yes" } else { "no" },
    )
}

/// What to look for on the packet.
#[must_use]
pub fn packet(shopping: &Shopping) -> String {
    say!(
        "packet",
        force = units::forces(shopping.tension_n),
        pitch = units::hertz(shopping.pitch_hz),
        length = units::mm(shopping.sounding_length_m, 0),
    )
}

/// The few numbers of a string that a player can use, as sentences.
#[must_use]
pub fn plain_facts(string: &FittedString) -> Vec<String> {
    let n = |key: &str| string.report.numbers.get(key);
    let mut facts = Vec::new();
    if let Some(q) = n("tension_n") {
        facts.push(say!("fact-pull", force = units::force(q.value)));
    }
    let plain = |key: &str| n(key).map(|q| units::plainly(key, q));
    if let Some(stretch) = plain("stretch") {
        facts.push(say!("fact-stretch", stretch = stretch));
    }
    if let Some(share) = plain("breaking_share") {
        facts.push(say!("fact-breaking", share = share));
    }
    if let Some(peg) = plain("peg_cent_deg") {
        let cents = peg.replace(units::scale("peg_cent_deg").unit, say!("cents"));
        let tuner = if string.fine_tuner { "yes" } else { "no" };
        facts.push(say!("fact-peg", cents = cents, tuner = tuner));
    }
    if let Some(days) = plain("settling_d") {
        facts.push(say!("fact-settling", days = days));
    }
    let untuned = &string.report.setting.untuned;
    let moves = |by: &str| {
        let key = drift::met(untuned, by);
        n(&key).map(|q| drift::moves(&key, q))
    };
    if let Some(moves) = moves("warmth") {
        facts.push(say!("fact-warmth", untuned = untuned, moves = moves));
    }
    if let Some(moves) = moves("damp") {
        facts.push(say!("fact-damp", untuned = untuned, moves = moves));
    }
    facts
}
