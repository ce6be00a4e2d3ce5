//! What would someone say who has fitted strings for decades? `situations.json` says what the trade would do and
//! would never do in twenty fittings, without having seen our replies; here each goes through the door and every
//! expectation is checked.
//!
//! A miss is not tuned away: it stands in [`MISSES`] with its reason, and comes off when it has become a hit.
#![allow(clippy::unwrap_used, reason = "in a test, a panic is how a failure is told")]

mod clientele;
mod practice;
mod statements;
mod steady;

use protocol::reply::{Finding, Fit, FittedString, Reply, Report};
use protocol::request::{Answers, FitRequest, Request};
use serde_json::Value;

const SITUATIONS: &str = include_str!("situations.json");

/// Where we do otherwise than the trade: the situation by the beginning of its name, what was expected, and why we
/// let it stand.
const MISSES: &[(&str, &str, &str)] = &[];

/// One expectation of one situation, and whether it was met.
struct Checked {
    situation: String,
    what: String,
    met: bool,
    got: String,
}

fn words(value: &Value) -> Vec<&str> {
    value.as_array().map(|all| all.iter().filter_map(Value::as_str).collect()).unwrap_or_default()
}

fn fit_of(answers: &Value) -> Fit {
    let answers = Answers::read(answers).unwrap();
    match protocol::handle(&Request::Fit(Box::new(FitRequest { answers }))) {
        Reply::Fit(fit) => *fit,
        other => panic!("refused: {other:?}"),
    }
}

/// The string that would be on the instrument afterwards: a fresh one of the same kind is what is there today.
fn afterwards<'a>(fit: &Fit, string: &'a FittedString, i: usize) -> &'a Report {
    let fresh = fit.verdict.answer == "fresh-same" && fit.verdict.string.is_none_or(|at| at == i);
    string.today.as_ref().filter(|_| fresh).unwrap_or(&string.report)
}

fn check(situation: &Value) -> Vec<Checked> {
    let name = situation["name"].as_str().unwrap();
    let fit = fit_of(&situation["answers"]);
    let mut all: Vec<Checked> = Vec::new();
    let mut expect = |what: String, met: bool, got: String| {
        all.push(Checked { situation: name.to_owned(), what, met, got });
    };
    let verdict = &fit.verdict;
    let said =
        format!("{} {:?} because {}", verdict.answer, verdict.string, verdict.because.join(", "));
    let allowed = words(&situation["verdict"]);
    if !allowed.is_empty() {
        let met = allowed.contains(&verdict.answer.as_str());
        expect(format!("verdict {}", allowed.join(" or ")), met, said.clone());
    }
    if let Some(string) = situation["verdict_string"].as_u64() {
        let met = verdict.string.is_none_or(|at| at as u64 == string);
        expect(format!("verdict about string {string}"), met, said.clone());
    }
    let forbidden = words(&situation["verdict_forbidden"]);
    if !forbidden.is_empty() {
        let met = !forbidden.contains(&verdict.answer.as_str());
        expect(format!("verdict not {}", forbidden.join(", ")), met, said);
    }
    for first in situation["causes_first"].as_array().into_iter().flatten() {
        let string = first["string"].as_u64();
        let bother = first["bother"].as_str().unwrap();
        let of = |f: &&Finding| f.bother == bother && f.string.map(|i| i as u64) == string;
        let found = verdict.findings.iter().find(of);
        let causes = words(&first["causes"]);
        let cause = found.and_then(|f| f.causes.first()).map_or("none", |c| c.cause.as_str());
        let met = causes.contains(&cause);
        expect(format!("{bother}: first cause {}", causes.join(" or ")), met, cause.to_owned());
    }
    let nothing = &situation["nothing"];
    if nothing.as_str() != Some("allowed") {
        let met = fit.set.is_none() == (*nothing == Value::Bool(true));
        let expected = if *nothing == Value::Bool(true) { "nothing fits" } else { "a set fits" };
        expect(
            expected.to_owned(),
            met,
            if fit.set.is_some() { "a set" } else { "nothing" }.to_owned(),
        );
    }
    let relax = words(&situation["relax_any"]);
    if !relax.is_empty() && fit.set.is_none() {
        let given: Vec<&String> = fit.obstacles.iter().flat_map(|o| &o.relax).collect();
        let met = given.iter().any(|r| relax.contains(&r.as_str()));
        expect(format!("relax {}", relax.join(" or ")), met, format!("{given:?}"));
    }
    let Some(set) = &fit.set else { return all };
    for expected in situation["strings"].as_array().into_iter().flatten() {
        // The index of a string is a small number.
        let i = usize::try_from(expected["string"].as_u64().unwrap()).unwrap();
        let string = &set.strings[i];
        let after = afterwards(&fit, string, i);
        let family = after.family.as_str();
        let families = words(&expected["families"]);
        if !families.is_empty() {
            let met = families.contains(&family);
            expect(format!("string {i} is {}", families.join(" or ")), met, family.to_owned());
        }
        let never = words(&expected["forbidden"]);
        if !never.is_empty() {
            let met = !never.contains(&family);
            expect(format!("string {i} is not {}", never.join(", ")), met, family.to_owned());
        }
        let metals = words(&expected["metals_forbidden"]);
        if !metals.is_empty() {
            let metal = after.construction.windings.last().map_or("none", |w| w.metal.as_str());
            let met = !metals.contains(&metal);
            expect(format!("string {i} is not under {}", metals.join(", ")), met, metal.to_owned());
        }
        if expected["tension"] == "lower-than-usual-middle" {
            let (low, high) = string.usual_tension_n;
            let tension = after.numbers["tension_n"].value;
            let met = tension <= (low + high) / 2.0;
            expect(
                format!("string {i} pulls less than the middle"),
                met,
                format!("{tension:.1} N"),
            );
        }
        let classes = words(&expected["gauge_class"]);
        if !classes.is_empty() {
            let class = &string.shopping.gauge_class;
            let met = classes.contains(&class.as_str());
            expect(format!("string {i} is {}", classes.join(" or ")), met, class.clone());
        }
    }
    let cautions: Vec<&str> = set.plan.cautions.iter().map(|c| c.caution.as_str()).collect();
    for caution in words(&situation["cautions"]) {
        let met = cautions.contains(&caution);
        expect(format!("caution {caution}"), met, cautions.join(", "));
    }
    for given in words(&situation["checks"]) {
        let met = set.plan.checks.iter().any(|c| c == given);
        expect(format!("check {given}"), met, set.plan.checks.join(", "));
    }
    for with in situation["allowed_with_caution"].as_array().into_iter().flatten() {
        let families = words(&with["families"]);
        let has = set.strings.iter().any(|s| families.contains(&s.report.family.as_str()));
        let needed = words(&with["cautions"]);
        let met = !has || needed.iter().any(|caution| cautions.contains(caution));
        expect(format!("{} only with a caution", families.join(", ")), met, cautions.join(", "));
    }
    all
}

#[test]
fn the_trade_would_say_so_too() {
    let file: Value = serde_json::from_str(SITUATIONS).unwrap();
    let situations = file["situations"].as_array().unwrap();
    assert_eq!(situations.len(), 20);
    let checked: Vec<Checked> = situations.iter().flat_map(check).collect();
    let is_listed = |c: &Checked| {
        MISSES.iter().any(|(name, what, _)| c.situation.starts_with(name) && c.what == *what)
    };
    let (mut wrong, mut clean) = (Vec::new(), situations.len());
    for situation in situations {
        let name = situation["name"].as_str().unwrap();
        let missed = checked.iter().any(|c| c.situation == name && !c.met);
        clean -= usize::from(missed);
    }
    for c in &checked {
        match (c.met, is_listed(c)) {
            (false, false) => {
                wrong.push(format!("{}: expected {}; got {}", c.situation, c.what, c.got));
            }
            (true, true) => {
                wrong.push(format!("{}: {} is met now: take it off the list", c.situation, c.what));
            }
            _ => {}
        }
    }
    for (name, what, _) in MISSES {
        if !checked.iter().any(|c| c.situation.starts_with(name) && c.what == *what) {
            wrong.push(format!("{name}: {what} is on the list, but nobody expects it"));
        }
    }
    let met = checked.iter().filter(|c| c.met).count();
    support::tell(&format!(
        "{met} of {} expectations of the trade met, {clean} of {} situations without a miss",
        checked.len(),
        situations.len()
    ));
    assert!(wrong.is_empty(), "{} surprises:\n{}", wrong.len(), wrong.join("\n"));
}
