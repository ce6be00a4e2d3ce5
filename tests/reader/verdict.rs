//! The verdict and what may be behind a complaint, and what must be true of the reply.

use serde_json::Value;

use crate::heard::{Agrees, Heard, Number, entry, holds, list, property, real, same, text};
use crate::marks::{all, flat, sole};
use crate::reader::Claim;

/// What to do, and why something bothers.
#[rustfmt::skip]
pub(crate) const OF_VERDICT: &[Claim] = &[
    ("leave-nothing", |h| { holds(h.set().is_null())?; answers(h, "leave-it", false)?; let words = h.arg("answer")?; h.line(words) }),
    ("leave-it", |h| { instrument(h)?; answers(h, "leave-it", false) }),
    ("fresh-set", |h| { instrument(h)?; answers(h, "fresh-same", false) }),
    ("fresh-one", |h| { answers(h, "fresh-same", true)?; whose(h) }),
    ("luthier-first", |h| { instrument(h)?; h.tally.words += 1; same("luthier-first", text(&h.reply()["verdict"]["answer"])) }),
    ("change-one", |h| {
        answers(h, "one-string", true)?;
        whose(h)?;
        let i = index(&h.reply()["verdict"]["string"]).ok_or("which string?")?;
        h.is_key("family", "", &h.strings()[i]["report"]["family"])?;
        h.is_key("gauge", "", &h.strings()[i]["shopping"]["gauge_class"])
    }),
    ("change-one-only", |h| { answers(h, "one-string", true)?; whose(h) }),
    ("all-the-same", |h| holds(["leave-it", "fresh-same"].contains(&text(&h.reply()["verdict"]["answer"])))),
    ("after-luthier", |h| holds(h.reply()["verdict"]["answer"] == "luthier-first")),
    ("fact-because-*", |h| holds(list(&h.reply()["verdict"]["because"]).iter().any(|b| b == h.tail("fact-because-")))),
    ("complaint-of", |h| { complaint(h)?; let name = h.arg("name")?; named(h, name, &h.finding.ok_or("which?")?["string"]) }),
    ("bother-*", |h| { found(h, h.tail("bother-"), None) }),
    ("complaint-line", |h| {
        let words = h.arg("complaint")?;
        let told = sole(words).ok_or("which complaint?")?;
        match told.id {
            "complaint-of" => h.of(told, |h| { complaint(h)?; h.skip("name"); Ok(()) })?,
            id => found(h, id.trim_start_matches("bother-"), None)?,
        }
        // The first cause, and what to do about it.
        let first = text(&h.finding.ok_or("which?")?["causes"][0]["cause"]);
        same(&h.key("cause")?, &format!("cause-{first}"))?;
        same(&h.key("advice")?, &format!("cause-{first}.advice"))
    }),
    ("cause-*", |h| {
        let key = h.tail("cause-");
        if let Some(key) = key.strip_suffix(".advice") { return same(key, text(&h.cause.ok_or("of which cause?")?["cause"])); }
        h.cause = Some(entry(&h.finding.ok_or("of which complaint?")?["causes"], "cause", key)?);
        holds(h.cause.is_some_and(|c| c["likely"] != "unlikely"))
    }),
    ("cause-likely", |h| {
        h.tally.words += 1;
        let cause = h.cause.ok_or("which cause?")?;
        h.is_key("likely", "", &cause["likely"])?;
        holds((h.key("on")? == "judged") == (cause["judged"] == true))
    }),
    ("findings-unlikely", |h| {
        h.tally.words += 1;
        h.skip("causes");
        h.skip("sentences");
        let said = h.said.ok_or("nothing was said")?;
        let told: Vec<&str> = all(&said.parts).into_iter().filter_map(|said| said.id.strip_prefix("cause-")).collect();
        let causes = list(&h.finding.ok_or("of which complaint?")?["causes"]).iter();
        let unlikely: Vec<&str> = causes.filter(|c| c["likely"] == "unlikely").map(|c| text(&c["cause"])).collect();
        holds(told == unlikely)
    }),

    // Numbers that speak for or against a cause.
    ("number-whose", |h| {
        let name = h.arg("name")?;
        // Without a set the reply names no strings.
        h.whose = if h.strings().is_empty() { None } else { Some(h.name(name)?) };
        Ok(())
    }),
    ("number-age", |h| {
        let n = own(h, "age_months")?;
        months(h, "age", real(&n["value"])?)?;
        months(h, "limit", n["limit"].as_f64().unwrap_or(real(&n["value"])?))
    }),
    ("number-settling", |h| { let n = caused(h, "settling_d")?; let words = h.arg("days")?; h.days(words, real(&n["limit"])?) }),
    ("number-step", |h| { let n = own(h, "tension_step")?; h.figure("times", real(&n["value"])?) }),
    ("number-tension-low", |h| { holds(h.cause.is_some_and(|c| c["cause"] == "tension-too-low"))?; limited(h, "tension_n") }),
    ("number-tension", |h| { holds(h.cause.is_some_and(|c| c["cause"] != "tension-too-low"))?; limited(h, "tension_n") }),
    ("number-shine-low", |h| { holds(h.cause.is_some_and(|c| c["cause"] == "kind-too-dark"))?; limited(h, "brilliance_hz") }),
    ("number-shine", |h| { holds(h.cause.is_some_and(|c| c["cause"] != "kind-too-dark"))?; limited(h, "brilliance_hz") }),
    ("number-breaking", |h| limited(h, "breaking_share")),
    ("number-moisture", |h| limited(h, "drift_moisture_cent")),
    ("number-body", |h| caused(h, "drift_body_cent").map(drop)),
    ("number-torsion", |h| limited(h, "torsion_impedance_ratio")),
    ("number-speaks", |h| limited(h, "speaks_s")),
    ("number-wolf", |h| caused(h, "wolf").map(drop)),
    ("number-thin", |h| limited(h, "outer_diameter_m")),
];

fn instrument(h: &mut Heard) -> Agrees {
    h.is_key("instrument", "", &h.problem()["instrument"])
}

fn index(of: &Value) -> Option<usize> {
    of.as_u64().and_then(|i| usize::try_from(i).ok())
}

fn answers(h: &mut Heard, answer: &str, one: bool) -> Agrees {
    h.tally.words += 1;
    let verdict = &h.reply()["verdict"];
    holds(verdict["answer"] == answer && (verdict["string"].is_null() != one))
}

/// The string that the verdict is about.
fn whose(h: &mut Heard) -> Agrees {
    let name = h.arg("name")?;
    named(h, name, &h.reply()["verdict"]["string"])
}

fn named(h: &Heard, name: &[crate::marks::Part], string: &Value) -> Agrees {
    // Without a set the reply names no strings.
    holds(h.strings().is_empty() || Some(h.name(name)?) == index(string))
}

fn complaint(h: &mut Heard) -> Agrees {
    let (said, key) = (h.said.ok_or("nothing was said")?, h.key("complaint")?);
    let name = said.place("name").filter(|_| !h.strings().is_empty());
    let string = name.map(|name| h.name(name)).transpose()?;
    found(h, key.trim_start_matches("bother-"), string)
}

/// The complaint is one of the reply.
fn found(h: &mut Heard, bother: &str, string: Option<usize>) -> Agrees {
    let is =
        |f: &&Value| f["bother"] == bother && (string.is_none() || index(&f["string"]) == string);
    h.finding = list(&h.reply()["verdict"]["findings"]).iter().find(is);
    (h.cause, h.whose) = (None, None);
    holds(h.finding.is_some())
}

/// The numbers of the cause that are of this property; of the string that was named, if one was.
fn own<'a>(h: &Heard<'a>, key: &str) -> Result<&'a Value, String> {
    let numbers = list(&h.cause.ok_or("of which cause?")?["numbers"]);
    let is =
        |n: &&Value| n["property"] == key && (h.whose.is_none() || index(&n["string"]) == h.whose);
    numbers.iter().find(is).ok_or_else(|| format!("the cause rests on no {key}"))
}

/// A number of a cause with its range.
fn caused<'a>(h: &mut Heard<'a>, key: &str) -> Result<&'a Value, String> {
    let (n, p) = (own(h, key)?, property(key));
    let at = |end: &str| n[end].as_f64().or_else(|| n["value"].as_f64()).unwrap_or(f64::NAN);
    let (low, high) = (at("low"), at("high"));
    let number = Number {
        value: at("value") * p.factor,
        low: low * p.factor,
        high: high * p.factor,
        unknown: low <= 0.0 && high > 0.0 || high > 3.0 * low,
        unit: p.unit,
    };
    let words = h.arg("value")?;
    h.value(words, &number)?;
    Ok(n)
}

/// The same, with the limit that it passes.
fn limited(h: &mut Heard, key: &str) -> Agrees {
    let n = caused(h, key)?;
    let p = property(key);
    h.amount("limit", n["limit"].as_f64().unwrap_or(real(&n["value"])?) * p.factor, p.unit)
}

fn months(h: &mut Heard, place: &'static str, months: f64) -> Agrees {
    let told = sole(h.arg(place)?).filter(|said| said.id == "months").ok_or("how many months?")?;
    h.of(told, |h| {
        let one = h.key("count")? == "one";
        holds(one == (flat(h.arg("number")?) == "1"))?;
        h.figure("number", months)
    })
}
