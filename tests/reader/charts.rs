//! What stands over and under the charts of a string and on its report, and what must be true of the reply.

use serde_json::Value;

use crate::claims::Check;
use crate::heard::{
    Agrees, Heard, Number, entry, holds, is, list, named, read, real, rung, same, text,
};
use crate::marks::{Part, Said, all, flat, sole};
use crate::reader::after;
use crate::words::{LIKELY, PROPERTIES};

/// The balance, the days, the partials, the doubts and the report.
#[rustfmt::skip]
pub(crate) const OF_CHARTS: &[(&str, Check)] = &[
    ("picture-free", |h| balance(h, "free", "loosest", "cost", true)),
    ("picture-costs", |h| balance(h, "steadiest", "loosest", "fall", false)),
    ("picture-overlap", overlap),
    ("very-likely", under_the_days),
    ("likely", under_the_days),
    ("close-call", under_the_days),
    ("unlikely", under_the_days),
    ("very-unlikely", under_the_days),
    ("partials-one", |h| {
        let (goes, count) = (h.key("goes")?, h.arg("count")?);
        let partials = list(&h.report()?["partials"]);
        h.reads(count, partials.len() as f64)?;
        holds(partials.iter().all(|p| format!("goes-{}", text(&p["most"])) == goes))
    }),
    ("partials-many", |h| {
        let (goes, all, most) = (h.key("goes")?, h.arg("all")?, h.arg("count")?);
        let partials = list(&h.report()?["partials"]);
        let count = |key: &str| partials.iter().filter(|p| p["most"] == key).count();
        let told = count(goes.trim_start_matches("goes-"));
        h.reads(all, partials.len() as f64)?;
        h.reads(most, told as f64)?;
        holds(["bridge", "air", "bending", "string"].iter().all(|key| count(key) <= told))
    }),
    ("partials-few", runs),
    ("takes-*", |h| holds(list(&h.report()?["partials"]).iter().any(|p| p["most"] == h.tail("takes-")))),
    ("doubt-in-short", doubt),
    ("doubt-sentence", doubt),
    ("setting", |h| {
        // What is nought is not said.
        let there = |place| h.said.and_then(|said| said.place(place)).is_some_and(|words| !all(words).is_empty());
        let is = |field| h.at(field).is_ok_and(|x| x.as_f64().is_some_and(|x| x > 1e-12));
        holds(there("doubt") == is("setting.sounding_length_doubt_m") && there("behind") == is("setting.afterlength_m"))
    }),
    ("report-sources", |h| {
        let numbered = |(i, key): (usize, &&str)| format!("{} {key}", i + 1);
        let works: Vec<String> = sources(h.report()?).iter().enumerate().map(numbered).collect();
        same(&flat(h.arg("works")?), &works.join(", "))
    }),
];

/// Two strings of the picture whose steadiness differs by what is said.
fn balance(
    h: &mut Heard,
    from: &'static str,
    to: &'static str,
    fall: &'static str,
    free: bool,
) -> Agrees {
    let (from, to, fall) = (h.arg(from)?, h.arg(to)?, h.arg(fall)?);
    let of = |p: &Value, key: &str| p[key].as_f64().unwrap_or(f64::NAN) * 100.0;
    let points: Vec<(f64, f64)> = list(&h.string()?["picture"])
        .iter()
        .map(|p| (of(p, "stretch"), of(p, "steadiness")))
        .collect();
    let most = points.iter().map(|p| p.1).fold(0.0, f64::max);
    let widest = points.iter().map(|p| p.0).fold(0.0, f64::max);
    let begins = |p: &(f64, f64)| p.1 >= most - if free { 5.0 + 1e-9 } else { 1e-9 };
    let ends = |a: &(f64, f64), b: &(f64, f64)| {
        is(to, b.0) && b.0 >= widest - 1e-9 && b.0 > a.0 && is(fall, a.1 - b.1)
    };
    holds(flat(from).ends_with('%') && flat(to).ends_with('%'))?;
    holds(points.iter().any(|a| is(from, a.0) && begins(a) && points.iter().any(|b| ends(a, b))))
}

/// The families whose strings overlap in steadiness, each with another; of fewer than three strings nothing is said.
fn overlap(h: &mut Heard) -> Agrees {
    let mut spans: Vec<(&str, Vec<f64>)> = Vec::new();
    for point in list(&h.string()?["picture"]) {
        let (family, steadiness) = (text(&point["family"]), real(&point["steadiness"])?);
        match spans.iter_mut().find(|(known, _)| *known == family) {
            Some((_, all)) => all.push(steadiness),
            None => spans.push((family, vec![steadiness])),
        }
    }
    spans.retain(|(_, all)| all.len() >= 3);
    let below = |one: &[f64], other: &[f64]| one.iter().any(|x| other.iter().any(|y| x < y));
    let over = |(one, all): &&(&str, Vec<f64>)| {
        spans.iter().any(|(other, its)| other != one && below(all, its) && below(its, all))
    };
    let known = spans.iter().filter(over).map(|(family, _)| *family);
    let told = all(h.arg("kinds")?).into_iter().filter_map(|said| said.id.strip_prefix("family-"));
    holds(told.eq(known))
}

impl Heard<'_> {
    /// The first day on which the chance is so large.
    pub(crate) fn settled(&mut self, words: &[Part], chance: f64) -> Agrees {
        let told = sole(words).filter(|said| said.id == "on-day").ok_or("on which day?")?;
        let mut nights = list(&self.report()?["nights"]).iter();
        let first = nights.find(|n| n["chance"].as_f64().is_some_and(|c| c >= chance));
        let day = real(&first.ok_or("on no day")?["day"])?;
        match told.place("day") {
            Some(words) => self.reads(words, day),
            None => holds(told.choice("day") == Some("1") && day < 1.5),
        }
    }

    /// How many days there are, on none of which the chance is so large.
    pub(crate) fn never(&mut self, words: &[Part], chance: f64) -> Agrees {
        let nights = list(&self.report()?["nights"]);
        self.reads(words, nights.len() as f64)?;
        holds(nights.iter().all(|n| n["chance"].as_f64().is_some_and(|c| c < chance)))
    }
}

/// A word under the picture of the days.
fn under_the_days(h: &mut Heard) -> Agrees {
    holds(h.place.within("nights"))?;
    let chances = list(&h.report()?["nights"]).iter().filter_map(|night| night["chance"].as_f64());
    let mut words: Vec<&str> = chances.map(|chance| rung(LIKELY, chance)).collect();
    words.dedup();
    let (of, read) = h.under_days;
    let next = if of == h.at { read } else { 0 };
    h.under_days = (h.at, next + 1);
    same(h.tail(""), words.get(next).copied().unwrap_or("no word"))
}

/// Neighbouring partials that lose most to the same: all partials, each once.
fn runs(h: &mut Heard) -> Agrees {
    let partials = list(&h.report()?["partials"]);
    let mut next = 1.0;
    for part in all(h.arg("parts")?).into_iter().filter(|said| said.id == "partials-part") {
        let goes = part
            .place("goes")
            .and_then(sole)
            .map_or("", |said| said.id.trim_start_matches("goes-"));
        let which = part.place("which").unwrap_or_default();
        let ends: Option<&Said> = sole(which);
        let end = |place| read(ends.and_then(|range| range.place(place)).unwrap_or(which));
        let (from, to) = (end("low")?.printed(), end("high")?.printed());
        holds((from - next).abs() < 0.5)?;
        for p in partials.iter().filter(|p| p["n"].as_f64().is_some_and(|n| n >= from && n <= to)) {
            h.tally.figures += 1;
            holds(p["most"] == goes)?;
        }
        next = to + 1.0;
    }
    holds((next - 1.0 - partials.len() as f64).abs() < 0.5)
}

/// What most of the doubt about a property comes from.
fn doubt(h: &mut Heard) -> Agrees {
    let about = sole(h.arg("about")?).ok_or("about what?")?;
    let key = about.id.trim_start_matches("about-").trim_start_matches("property-");
    let doubts = list(&h.report()?["doubts"][key]);
    let said = h.said.ok_or("nothing was said")?;
    let mut told = vec![(h.arg("Cause|cause")?, h.arg("share")?)];
    if said.id == "doubt-sentence" {
        let more = all(h.arg("more")?).into_iter().filter(|said| said.id == "doubt-share");
        told.extend(more.filter_map(|said| Some((said.place("cause")?, said.place("share")?))));
        let remedy = all(h.arg("remedy")?);
        let which = text(&doubts.first().ok_or("there is no doubt")?["which"]);
        holds(remedy.is_empty() || remedy[0].id == format!("remedy-{which}"))?;
    }
    holds(told.len() <= doubts.len())?;
    for ((cause, share), doubt) in told.into_iter().zip(doubts) {
        let (which, owner, cause) =
            (text(&doubt["which"]), text(&doubt["owner"]), sole(cause).ok_or("which cause?")?);
        match owner {
            "" => same(cause.id, &format!("general-{which}"))?,
            _ => {
                same(cause.id, &format!("doubt-{which}"))?;
                let of = cause.place("material").and_then(sole).map_or("", |said| said.id);
                holds(of == format!("material-{owner}.of") || of == format!("metal-{owner}"))?;
            }
        }
        let size = real(&doubt["share"])?;
        match flat(share).as_str() {
            "{nearly-all}" => holds(size >= 0.995)?,
            _ => h.in_unit(share, size * 100.0, "%")?,
        }
    }
    Ok(())
}

/// A partial is meant from here on.
pub(crate) fn partial<'a>(h: &mut Heard<'a>, n: &str) -> Agrees {
    h.partial =
        list(&h.report()?["partials"]).iter().find(|p| n.parse().is_ok_and(|n: u64| p["n"] == n));
    h.tally.figures += 1;
    holds(h.partial.is_some())
}

/// The number behind the name of a property in the table of wishes.
pub(crate) fn under(h: &mut Heard, cell: &[Part], own: &Value) -> Agrees {
    let Some(key) = own["property"].as_str() else { return same(&flat(cell), "{card-judgement}") };
    holds(named(&cell[..1])?.key == key)?;
    let n = h.number(key)?;
    h.value(&after(cell), &n)
}

/// The lost cents of a day; they are unknown where the high end is over three times the low one.
pub(crate) fn lost(day: &Value) -> Result<(Number, f64), String> {
    let lost = &day["lost_cent"];
    let (value, low, high) = (real(&lost["value"])?, real(&lost["low"])?, real(&lost["high"])?);
    let unknown = high > 3.0 * low && high > 0.0;
    Ok((Number { value, low, high, unknown, unit: "{cents}" }, real(&day["chance"])?))
}

/// The wish of a row.
pub(crate) fn wish<'a>(of: &'a Value, words: &[Part]) -> Result<&'a Value, String> {
    let key = sole(words).map_or("", |said| said.id).trim_start_matches("attribute-");
    entry(of, "attribute", key)
}

/// The sources of a report, in the order in which its numbers name them.
pub(crate) fn sources(report: &Value) -> Vec<&str> {
    let mut sources = Vec::new();
    for source in PROPERTIES.iter().filter_map(|p| report["numbers"][p.key]["source"].as_str()) {
        if !sources.contains(&source) {
            sources.push(source);
        }
    }
    sources
}
