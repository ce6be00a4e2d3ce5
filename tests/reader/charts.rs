//! What stands over and under the charts of a string and on its report, and what must be true of the reply.

use serde_json::Value;

use crate::claims::Check;
use crate::heard::{
    Agrees, Heard, Number, cites, entry, holds, list, named, read, real, rung, same, text,
};
use crate::marks::{Part, Said, all, flat, sole};
use crate::reader::after;
use crate::words::{LIKELY, PROPERTIES};

/// The balance, the days, the partials, the doubts and the report.
#[rustfmt::skip]
pub(crate) const OF_CHARTS: &[(&str, Check)] = &[
    ("picture-few", |h| {
        let points = points(h)?;
        let (least, most) = ends(&points);
        holds(points.len() < 4 || most < 1.5 * least)
    }),
    ("picture-costs", |h| balance(h, |stiff, elastic, _| elastic.beyond(stiff))),
    ("picture-gains", |h| balance(h, |stiff, elastic, _| stiff.beyond(elastic))),
    ("picture-level", |h| balance(h, |stiff, elastic, _| !elastic.beyond(stiff) && !stiff.beyond(elastic))),
    ("picture-between", |h| balance(h, |stiff, elastic, least| stiff.beyond(least) && elastic.beyond(least))),
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
        swing(h)?;
        // What is nought is not said.
        let there = |place| h.said.and_then(|said| said.place(place)).is_some_and(|words| !all(words).is_empty());
        let is = |field| h.at(field).is_ok_and(|x| x.as_f64().is_some_and(|x| x > 1e-12));
        holds(there("doubt") == is("setting.sounding_length_doubt_m") && there("behind") == is("setting.afterlength_m"))
    }),
    ("report-sources", |h| {
        let numbered = |(i, key): (usize, &&str)| format!("{} {key}", i + 1);
        let works: Vec<String> = sources(h.report()?).iter().enumerate().map(numbered).collect();
        cites(&flat(h.arg("works")?), &works.concat())
    }),
];

/// How much warmer and damper it gets while the string goes untuned.
fn swing(h: &mut Heard) -> Agrees {
    let untuned = h.key("untuned")?;
    same(text(h.at("setting.untuned")?), &untuned)?;
    let of = if untuned == "season" { String::new() } else { format!("{untuned}_") };
    for (place, swing, factor, unit) in
        [("warmer", "temperature_swing_k", 1.0, "K"), ("damper", "humidity_swing", 1e2, "%")]
    {
        let known = real(&h.report()?["setting"][format!("{of}{swing}")])?;
        let words = h.arg(place)?;
        h.in_unit(words, known * factor, unit)?;
    }
    Ok(())
}

/// A string of a picture: its stretch in per cent, and what it costs in the picture's respect.
#[derive(Clone, Copy)]
struct Mark {
    stretch: f64,
    cost: f64,
    in_days: bool,
}

impl Mark {
    /// Whether it costs noticeably more than another: 5 cents, or days, the first counted, by half that are also said otherwise.
    fn beyond(&self, other: &Self) -> bool {
        let said = |days: f64| if days < 0.75 { 0.0 } else { days.round() };
        match self.in_days {
            true => {
                1.0 + self.cost > 1.5 * (1.0 + other.cost) && said(self.cost) > said(other.cost)
            }
            false => self.cost - other.cost > 5.0,
        }
    }
}

/// What each aspect of the pictures has in the reply.
const ASPECTS: [(&str, &str); 3] =
    [("settling", "settling_d"), ("warmth", "warmth_cent"), ("damp", "damp_cent")];

/// The strings of the picture that is told; which it is, stays for what follows.
fn points(h: &mut Heard) -> Result<Vec<Mark>, String> {
    let said = h.key("aspect")?;
    let told = ASPECTS.iter().position(|a| a.0 == h.aspect);
    // They come in this order; the drawing's label says the same again.
    let next = if h.place.within("takeaway") {
        told.map_or(0, |i| (i + 1) % 3)
    } else {
        told.unwrap_or(0)
    };
    let (aspect, key) = ASPECTS[next];
    same(&said, aspect)?;
    h.aspect = aspect;
    list(&h.string()?["picture"])
        .iter()
        .map(|p| {
            let (stretch, cost) = (real(&p["stretch"])? * 100.0, real(&p[key])?);
            Ok(Mark { stretch, cost, in_days: aspect == "settling" })
        })
        .collect()
}

/// The least stretch and the most.
fn ends(points: &[Mark]) -> (f64, f64) {
    let all = points.iter().map(|p| p.stretch);
    (all.clone().fold(f64::MAX, f64::min), all.fold(0.0, f64::max))
}

/// The best strings of the stiffest and of the most elastic quarter (by the logarithm of stretch), and of all: what is
/// told of them is so, and their numbers are.
fn balance(h: &mut Heard, is_so: impl Fn(&Mark, &Mark, &Mark) -> bool) -> Agrees {
    let points = points(h)?;
    let (least, most) = ends(&points);
    holds(points.len() >= 4 && most >= 1.5 * least)?;
    let quarter = (most / least).sqrt().sqrt();
    let best = |from: f64, to: f64| {
        let inside = points.iter().filter(|p| p.stretch >= from && p.stretch <= to);
        inside.min_by(|a, b| a.cost.total_cmp(&b.cost)).copied().ok_or("no string is there")
    };
    let near = 1e-9;
    let stiff = best(0.0, least * quarter * (1.0 + near))?;
    let elastic = best(most / quarter * (1.0 - near), f64::MAX)?;
    let all = best(0.0, f64::MAX)?;
    holds(is_so(&stiff, &elastic, &all))?;
    let between = stiff.beyond(&all) && elastic.beyond(&all);
    let told = h.tail("picture-") == "between";
    holds(between == told)?;
    let mut marks = vec![("stiff", "from", stiff), ("elastic", "to", elastic)];
    marks.extend(told.then_some(("least", "at", all)));
    for (cost, stretch, mark) in marks {
        let (cost, stretch) = (h.arg(cost)?, h.arg(stretch)?);
        match mark.in_days {
            true => h.days(cost, mark.cost)?,
            false => h.cents(cost, mark.cost)?,
        }
        h.in_unit(stretch, mark.stretch, "%")?;
    }
    Ok(())
}

/// The families whose strings overlap in the picture, each with another; of fewer than three strings nothing is said.
fn overlap(h: &mut Heard) -> Agrees {
    let mut spans: Vec<(&str, Vec<f64>)> = Vec::new();
    let (_, key) = *ASPECTS.iter().find(|a| a.0 == h.aspect).ok_or("in which picture?")?;
    for point in list(&h.string()?["picture"]) {
        let (family, cost) = (text(&point["family"]), real(&point[key])?);
        match spans.iter_mut().find(|(known, _)| *known == family) {
            Some((_, all)) => all.push(cost),
            None => spans.push((family, vec![cost])),
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
    h.told(&after(cell), &n)
}

/// The lost cents of a day.
pub(crate) fn lost(day: &Value) -> Result<(Number, f64), String> {
    let lost = &day["lost_cent"];
    let (value, low, high) = (real(&lost["value"])?, real(&lost["low"])?, real(&lost["high"])?);
    Ok((Number { value, low, high, unit: "{cents}" }, real(&day["chance"])?))
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
