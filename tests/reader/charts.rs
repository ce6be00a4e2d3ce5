//! What stands over and under the charts of a string and on its report, and what must be true of the reply.

use serde_json::Value;

use crate::heard::{Agrees, Heard, Number, entry, holds, list, named, read, real, same, text};
use crate::marks::{Part, Said, all, flat, sole};
use crate::reader::{Claim, after};
use crate::why::is;
use crate::words::{LIKELY, PROPERTIES};

/// The balance, the days, the partials, the doubts and the report.
#[rustfmt::skip]
pub(crate) const OF_CHARTS: &[Claim] = &[
    // The balance of elasticity and steadiness.
    ("picture-free", |h| balance(h, "free", "loosest", "cost", true)),
    ("picture-costs", |h| { h.tally.comparatives += 1; balance(h, "steadiest", "loosest", "fall", false) }),
    ("picture-*", |h| h.own_name()),
    ("picture-overlap", overlap),
    ("balance-was", |h| {
        h.own_name()?;
        let today = &h.string()?["today_point"];
        h.is_key("family", "", &today["family"])?;
        h.amount("stretch", real(&today["stretch"])? * 100.0, "%")?;
        h.figure("steadiness", real(&today["steadiness"])? * 100.0)
    }),

    // Days.
    ("days-very", |h| { h.own_name()?; settled(h, "day", &[0.85, 0.65]) }),
    ("days-both", |h| { h.own_name()?; settled(h, "day", &[0.65])?; settled(h, "later", &[0.85]) }),
    ("days-likely", |h| { h.own_name()?; settled(h, "day", &[0.65])?; never(h, 0.85) }),
    ("days-unlikely", |h| {
        h.own_name()?;
        never(h, 0.65)?;
        let words = h.arg("likely")?;
        let last = list(&h.report()?["nights"]).last().ok_or("no days")?;
        h.likely(words, real(&last["chance"])?)
    }),
    ("very-likely", under_the_days),
    ("likely", under_the_days),
    ("close-call", under_the_days),
    ("unlikely", under_the_days),
    ("very-unlikely", under_the_days),

    // Partials.
    ("partials-one", |h| {
        h.own_name()?;
        let partials = list(&h.report()?["partials"]);
        h.figure("count", partials.len() as f64)?;
        let goes = h.key("goes")?;
        holds(partials.iter().all(|p| format!("goes-{}", text(&p["most"])) == goes))
    }),
    ("partials-many", |h| {
        h.own_name()?;
        let partials = list(&h.report()?["partials"]);
        h.figure("all", partials.len() as f64)?;
        let goes = h.key("goes")?;
        let count = |key: &str| partials.iter().filter(|p| p["most"] == key).count();
        let most = count(goes.trim_start_matches("goes-"));
        holds(["bridge", "air", "bending", "string"].iter().all(|key| count(key) <= most))?;
        h.figure("count", most as f64)
    }),
    ("partials-few", runs),
    ("partials-ring", |h| h.says("ring", "ring_s")),
    ("takes-*", |h| holds(list(&h.report()?["partials"]).iter().any(|p| p["most"] == h.tail("takes-")))),
    ("loses-*", |h| same(h.tail("loses-"), text(&h.partial.ok_or("of which partial?")?["most"]))),

    // Doubts.
    ("caveat-*", |h| holds(list(&h.report()?["caveats"]).iter().any(|c| c == h.tail("caveat-")))),
    ("doubt-in-short", doubt),
    ("doubt-sentence", doubt),

    // The report.
    ("report-title", |h| {
        h.own_name()?;
        h.is_key("Kind", "family-", &h.report()?["family"])?;
        h.is_key("instrument", "", &h.problem()["instrument"])?;
        let gauge = h.arg("gauge")?;
        h.thick(gauge)?;
        let size = h.arg("size")?;
        let inches = sole(size).and_then(|said| said.place("number")).map(|n| format!("{} in", flat(n).replace(',', ".")));
        same(&inches.unwrap_or_else(|| flat(size)), text(&h.problem()["size"]))
    }),
    ("setting", setting),
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
    h.own_name()?;
    let (from, to, fall) = (h.arg(from)?, h.arg(to)?, h.arg(fall)?);
    h.tally.figures += 3;
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

/// The families whose strings overlap in steadiness: each with another.
fn overlap(h: &mut Heard) -> Agrees {
    h.tally.words += 1;
    let points = list(&h.string()?["picture"]);
    let span = |key: &str| {
        let own =
            points.iter().filter(|p| p["family"] == key).filter_map(|p| p["steadiness"].as_f64());
        own.fold((f64::MAX, f64::MIN), |(low, high), s| (low.min(s), high.max(s)))
    };
    let told = all(h.arg("kinds")?);
    let told: Vec<&str> =
        told.into_iter().filter_map(|said| said.id.strip_prefix("family-")).collect();
    let over = |one: &str| {
        let (low, high) = span(one);
        points
            .iter()
            .filter_map(|p| p["family"].as_str())
            .any(|other| other != one && low < span(other).1 && span(other).0 < high)
    };
    holds(told.len() > 1 && told.iter().all(|one| over(one)))
}

/// The first day on which the chance is so large.
fn settled(h: &mut Heard, place: &'static str, chances: &[f64]) -> Agrees {
    let told = sole(h.arg(place)?).filter(|said| said.id == "on-day").ok_or("on which day?")?;
    let nights = list(&h.report()?["nights"]);
    for chance in chances {
        h.tally.words += 1;
        let first = nights.iter().find(|n| n["chance"].as_f64().is_some_and(|c| c >= *chance));
        let day = real(&first.ok_or("on no day")?["day"])?;
        match told.place("day") {
            Some(words) => h.reads(words, day)?,
            None => holds(told.choice("day") == Some("1") && day < 1.5)?,
        }
    }
    Ok(())
}

/// On none of the days the chance is so large.
fn never(h: &mut Heard, chance: f64) -> Agrees {
    let nights = list(&h.report()?["nights"]);
    h.figure("days", nights.len() as f64)?;
    holds(nights.iter().all(|n| n["chance"].as_f64().is_some_and(|c| c < chance)))
}

/// A word under the picture of the days.
fn under_the_days(h: &mut Heard) -> Agrees {
    holds(h.place.within("nights"))?;
    h.tally.words += 1;
    let (nights, said) = (list(&h.report()?["nights"]), h.tail(""));
    let is = |n: &Value| {
        n["chance"].as_f64().is_some_and(|chance| crate::heard::rung(LIKELY, chance) == said)
    };
    holds(nights.iter().any(is))
}

/// Neighbouring partials that lose most to the same: all partials, each once.
fn runs(h: &mut Heard) -> Agrees {
    h.own_name()?;
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
    h.skip("Cause");
    h.skip("cause");
    let said = h.said.ok_or("nothing was said")?;
    let causes = said.place("Cause").or(said.place("cause"));
    let mut told = vec![(causes.unwrap_or_default(), h.arg("share")?)];
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

/// Where a string works, piece by piece.
fn setting(h: &mut Heard) -> Agrees {
    /// A place of the sentence, the field in it, by what it is multiplied, and its unit.
    const PIECES: [(&str, &str, f64, &str); 13] = [
        ("length", "sounding_length_m", 1e3, "mm"),
        ("nut", "nut_to_peg_m", 1e3, "mm"),
        ("pitch", "pitch_hz", 1.0, "Hz"),
        ("angle", "angle_over_bridge_deg", 1.0, ""),
        ("peg", "peg_diameter_m", 1e3, "mm"),
        ("gear", "gear_ratio", 1.0, ""),
        ("height", "string_height_m", 1e3, "mm"),
        ("edge", "nut_radius_m", 1e3, "mm"),
        ("peak", "peak_resistance_kg_s", 1.0, ""),
        ("bridge", "bridge_resistance_kg_s", 1.0, "kg/s"),
        ("warmth", "temperature_c", 1.0, "°C"),
        ("swing", "temperature_swing_k", 0.5, "K"),
        ("damp", "humidity", 1e2, "%"),
    ];
    let setting = &h.report()?["setting"];
    for (place, field, factor, unit) in PIECES {
        h.amount(place, real(&setting[field])? * factor, unit)?;
    }
    h.amount("change", real(&setting["humidity_swing"])? * 50.0, "%")?;
    for (place, inner, field) in
        [("doubt", "doubt", "sounding_length_doubt_m"), ("behind", "length", "afterlength_m")]
    {
        let words = h.arg(place)?;
        match all(words).first() {
            Some(said) => h.in_unit(
                said.place(inner).unwrap_or_default(),
                real(&setting[field])? * 1e3,
                "mm",
            )?,
            None => holds(setting[field].as_f64().is_none_or(|x| x < 1e-12))?,
        }
    }
    Ok(())
}

/// A partial is meant from here on.
pub(crate) fn partial<'a>(h: &mut Heard<'a>, n: &str) -> Agrees {
    h.partial = list(&h.report()?["partials"]).iter().find(|p| p["n"].to_string() == n);
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
