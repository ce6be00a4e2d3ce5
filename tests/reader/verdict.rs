//! The verdict and what may be behind a complaint, and what must be true of the reply.

use serde_json::Value;

use crate::claims::Check;
use crate::heard::{Agrees, Heard, Number, entry, holds, list, property, real, same, text};
use crate::marks::{Part, all, flat, sole};

/// Why something bothers.
#[rustfmt::skip]
pub(crate) const OF_VERDICT: &[(&str, Check)] = &[
    ("complaint-of", |h| {
        let (key, name) = (h.key("complaint")?, h.arg("name")?);
        // Without a set the reply names no strings.
        let string = if h.strings().is_empty() { None } else { Some(h.name(name)?) };
        let of = |f: &Value| string.map_or(!f["string"].is_null(), |string| f["string"] == string);
        found(h, key.trim_start_matches("bother-"), of)
    }),
    ("bother-*", |h| found(h, h.tail("bother-"), |f| f["string"].is_null())),
    ("complaint-line", |h| {
        let words = h.arg("complaint")?;
        h.line(words)?;
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
        let judged = h.cause.ok_or("which cause?")?["judged"] == true;
        same(&h.key("on")?, if judged { "judged" } else { "checked" })
    }),
    ("findings-unlikely", |h| {
        let told = all(h.arg("causes|sentences")?).into_iter().filter_map(|said| said.id.strip_prefix("cause-"));
        let causes = list(&h.finding.ok_or("of which complaint?")?["causes"]).iter();
        let unlikely = causes.filter(|c| c["likely"] == "unlikely").map(|c| text(&c["cause"]));
        holds(told.eq(unlikely))
    }),

    // Numbers that speak for or against a cause.
    ("number-whose", |h| {
        let name = h.arg("name")?;
        // Without a set the reply names no strings.
        h.whose = if h.strings().is_empty() { None } else { Some(h.name(name)?) };
        Ok(())
    }),
    ("number-age", |h| {
        for (place, months) in [("age", real(&h.caused_by("age_months")?["value"])?), ("limit", h.limit("age_months")?)] {
            let told = sole(h.arg(place)?).filter(|said| said.id == "months").ok_or("how many months?")?;
            h.of(told, |h| {
                let words = h.arg("number")?;
                holds((h.key("count")? == "one") == (flat(words) == "1"))?;
                h.reads(words, months)
            })?;
        }
        Ok(())
    }),
];

/// The complaint is one of the reply: the next after the one that was told last.
fn found(h: &mut Heard, bother: &str, of: impl Fn(&Value) -> bool) -> Agrees {
    let findings = list(&h.reply()["verdict"]["findings"]);
    let last = h.finding.and_then(|last| findings.iter().position(|f| std::ptr::eq(f, last)));
    let (told, left) = findings.split_at(last.map_or(0, |i| i + 1));
    h.finding = left.iter().chain(told).find(|f| f["bother"] == bother && of(f));
    (h.cause, h.whose) = (None, None);
    holds(h.finding.is_some())
}

impl<'a> Heard<'a> {
    /// The number of the cause that is of this property; of the string that was named, if one was.
    pub(crate) fn caused_by(&self, key: &str) -> Result<&'a Value, String> {
        let numbers = list(&self.cause.ok_or("of which cause?")?["numbers"]);
        let of = |n: &Value| self.whose.is_none_or(|whose| n["string"] == whose);
        let found = numbers.iter().find(|n| n["property"] == key && of(n));
        found.ok_or_else(|| format!("the cause rests on no {key}"))
    }

    /// What that number is compared with.
    pub(crate) fn limit(&self, key: &str) -> Result<f64, String> {
        let n = self.caused_by(key)?;
        n["limit"].as_f64().map_or_else(|| real(&n["value"]), Ok)
    }

    /// Words are that number with its range.
    pub(crate) fn caused(&mut self, words: &[Part], key: &str) -> Agrees {
        let (n, p) = (self.caused_by(key)?, property(key));
        let value = real(&n["value"])? * p.factor;
        let at = |end: &str| n[end].as_f64().map_or(value, |end| end * p.factor);
        let (low, high) = (at("low"), at("high"));
        self.told(words, &Number { value, low, high, unit: p.unit })
    }
}
