//! What to do, and why something bothers, as sentences.

use protocol::reply::{CauseNumber, Finding, Fit, Quantity};

use strings::instrument::Kind;

use super::naming::{after_colon, capital, letters};
use super::questions::bother_label;
use super::set;
use super::{say, speech};
use crate::units;

/// The names of the strings of a fit, highest first; where there is no set, those of the tuning.
fn names(fit: &Fit) -> Vec<String> {
    match &fit.set {
        Some(set) => letters(set.strings.iter().map(|string| string.note.as_str())),
        None => {
            let problem = &fit.problem;
            let tuning =
                Kind::of(&problem.instrument).and_then(|kind| kind.tuning(&problem.tuning));
            letters(tuning.iter().flat_map(|tuning| tuning.strings).map(|(note, _)| *note))
        }
    }
}

/// The answer in one sentence: what to do, which is often less than a new set.
#[must_use]
pub fn answer(fit: &Fit) -> String {
    let instrument = &fit.problem.instrument;
    let names = names(fit);
    let at = fit.verdict.string.and_then(|i| Some((i, names.get(i)?)));
    match (fit.verdict.answer.as_str(), at) {
        ("leave-it", _) if fit.set.is_none() => say!("leave-nothing", answer = set::answer(fit)),
        ("leave-it", _) => say!("leave-it", instrument = instrument),
        ("fresh-same", Some((_, name))) => say!("fresh-one", name = name),
        ("fresh-same", None) => say!("fresh-set", instrument = instrument),
        ("luthier-first", _) => say!("luthier-first", instrument = instrument),
        ("one-string", Some((i, name))) => match fit.set.as_ref().and_then(|s| s.strings.get(i)) {
            Some(string) => say!(
                "change-one",
                family = &string.report.family,
                name = name,
                gauge = &string.shopping.gauge_class,
            ),
            None => say!("change-one-only", name = name),
        },
        _ => set::answer(fit),
    }
}

/// What stands over the set where the answer is not to buy it; none where it is.
#[must_use]
pub fn all_the_same(fit: &Fit) -> Option<&'static str> {
    match fit.verdict.answer.as_str() {
        "leave-it" | "fresh-same" => Some(say!("all-the-same")),
        "luthier-first" => Some(say!("after-luthier")),
        _ => None,
    }
}

/// A fact that led to the answer, where it is no cause of a complaint: those are told with the complaint.
#[must_use]
pub fn because(key: &str) -> Option<&'static str> {
    speech::of("fact-because", key)
}

/// A complaint as a heading: what, and on which string.
#[must_use]
pub fn complaint(finding: &Finding, fit: &Fit) -> String {
    let label = bother_label(&finding.bother);
    match finding.string.and_then(|i| names(fit).get(i).cloned()) {
        Some(name) => say!("complaint-of", complaint = label, name = name),
        None => label.to_owned(),
    }
}

/// A cause: what it is, and what to do about it.
#[must_use]
pub fn cause(key: &str) -> (&str, &str) {
    let advice = speech::of("cause", &format!("{key}.advice")).unwrap_or_default();
    (speech::of_or_key("cause", key), advice)
}

/// The word beside a cause: how likely it is, and on what that rests.
#[must_use]
pub fn likely(likely: &str, judged: bool) -> String {
    let on = if judged { "judged" } else { "checked" };
    say!("cause-likely", likely = likely, on = on)
}

/// A number of today's string, as one would say it.
#[must_use]
pub fn number(n: &CauseNumber, cause: &str) -> String {
    let limit = n.limit.unwrap_or(n.value);
    let (low, high) = (n.low.unwrap_or(n.value), n.high.unwrap_or(n.value));
    let quantity =
        Quantity { value: n.value, low, high, evidence: String::new(), source: String::new() };
    let value = units::plainly(&n.property, &quantity);
    let scale = units::scale(&n.property);
    let limit_of = |figures: i32| {
        units::with_unit(&units::significant(limit * scale.factor, figures), scale.unit)
    };
    match (n.property.as_str(), cause) {
        ("age_months", _) => say!("number-age", age = months(n.value), limit = months(limit)),
        ("settling_d", _) => say!("number-settling", value = value, days = units::days(limit)),
        ("tension_step", _) => say!("number-step", times = units::fixed(n.value, 2)),
        ("tension_n", "tension-too-low") => {
            say!("number-tension-low", value = value, limit = limit_of(2))
        }
        ("tension_n", _) => say!("number-tension", value = value, limit = limit_of(2)),
        ("brilliance_hz", "kind-too-dark") => {
            say!("number-shine-low", value = value, limit = limit_of(2))
        }
        ("brilliance_hz", _) => say!("number-shine", value = value, limit = limit_of(2)),
        ("breaking_share", _) => say!("number-breaking", value = value, limit = limit_of(2)),
        ("season_moisture_cent", _) => say!("number-moisture", value = value, limit = limit_of(1)),
        ("ratchet_cent", _) => say!("number-ratchet", value = value),
        ("season_body_cent", _) => say!("number-body", value = value),
        ("torsion_impedance_ratio", _) => {
            say!("number-torsion", value = value, limit = limit_of(2))
        }
        ("speaks_s", _) => say!("number-speaks", value = value, limit = limit_of(2)),
        ("wolf", _) => say!("number-wolf", value = value),
        ("outer_diameter_m", _) => say!("number-thin", value = value, limit = limit_of(1)),
        (other, _) => {
            say!("number-of", property = super::property::name(other), value = value)
        }
    }
}

/// Whose number it is, where the complaint is about the whole set.
#[must_use]
pub fn whose(n: &CauseNumber, finding: &Finding, fit: &Fit) -> String {
    // An age is as a rule that of the whole set.
    let one_of = finding.string.is_none() && n.property != "age_months";
    let name = names(fit).get(n.string).cloned().filter(|_| one_of);
    name.map_or_else(String::new, |name| format!("{} ", say!("number-whose", name = name)))
}

fn months(months: f64) -> String {
    let text = units::fixed(months, i32::from(months < 1.95));
    let nought = format!("{}0", units::point());
    let text = text.strip_suffix(&nought).unwrap_or(&text).to_owned();
    let count = if text == "1" { 1.0 } else { 2.0 };
    say!("months", count = count, number = text)
}

/// What becomes of a string that is not new; none for a new one.
#[must_use]
pub fn standing(key: &str) -> Option<&'static str> {
    match key {
        "kept" => Some(say!("stays")),
        "not-judged" => Some(say!("not-judged")),
        _ => None,
    }
}

/// The complaints, each in one line with what to look at first.
#[must_use]
pub fn first_causes(fit: &Fit) -> Vec<String> {
    let line = |finding: &Finding| {
        let first = finding.causes.first()?;
        let (what, advice) = cause(&first.cause);
        Some(say!(
            "complaint-line",
            complaint = complaint(finding, fit),
            cause = after_colon(what),
            advice = advice,
        ))
    };
    fit.verdict.findings.iter().filter_map(line).collect()
}

/// Facts that led to the answer, as sentences. That a set was asked for by wishes goes without saying beside the set.
#[must_use]
pub fn reasons(fit: &Fit) -> Vec<String> {
    let goes_without = |key: &str| key == "wishes" && fit.verdict.answer == "whole-set";
    let told = fit.verdict.because.iter().filter(|key| !goes_without(key));
    told.filter_map(|key| because(key)).map(capital).collect()
}
