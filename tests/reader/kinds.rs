//! What the page says of kinds of set: the chosen one, the others, and those that are not possible.

use serde_json::Value;

use crate::claims::Check;
use crate::heard::{Agrees, Heard, direction, entry, holds, list, same, text};
use crate::marks::{all, flat, sole};
use crate::words::BEHIND;

/// Names of kinds, and what is said under them.
#[rustfmt::skip]
pub(crate) const OF_KINDS: &[(&str, Check)] = &[
    ("set-kind-*", a_kind),
    ("kind-chosen", |h| {
        let name = h.said.and_then(|said| sole(said.place("kind")?)).map_or("", |said| said.id);
        same(name.trim_start_matches("set-kind-"), text(&h.set()["kind"]))
    }),
    ("kind-second", |h| {
        let kind = h.arg("kind")?;
        h.line(kind)
    }),
    ("glance-against", |h| {
        let kind = h.arg("kind")?;
        h.line(kind)?;
        weighed(h)
    }),
    ("glance-parts", weighed),
    ("glance-as-now", |h| {
        let known: Vec<&Value> =
            h.strings().iter().filter(|string| !string["today"].is_null()).collect();
        let is_same = |string: &&Value| string["report"]["family"] == string["today"]["family"];
        holds(!known.is_empty() && known.iter().all(is_same))?;
        holds((0..h.strings().len()).all(|i| compared(h, i, "reasons").is_empty()))
    }),
    ("glance-no-reason", |h| holds((0..h.strings().len()).all(|i| compared(h, i, "reasons").is_empty()))),
    ("glance-weakest", |h| {
        let what = h.key("what")?;
        let words = h.arg("strings")?;
        let is = |cost: &Value| {
            cost["judged"] == false && cost["comparison"].is_null()
                && what == format!("attribute-{}", text(&cost["attribute"]))
        };
        holds(h.names(words)?.into_iter().all(|i| list(&h.strings()[i]["costs"]).iter().any(is)))
    }),
    ("glance-or-kind", |h| {
        let kind = h.arg("kind")?;
        h.line(kind)
    }),
    ("glance-rather", |h| {
        // The second has it in a string, or the first has it against the second's.
        let kinds = list(&h.set()["other_kinds"]);
        let second: Vec<&str> =
            h.reports(true).into_iter().map(|report| text(&report["family"])).collect();
        let is = |kind: &&Value| list(&kind["families"]).iter().map(text).eq(second.iter().copied());
        let differences = list(&kinds.iter().find(is).ok_or("against what?")?["differences"]);
        let word = sole(h.arg("word")?).map_or("", |said| said.id);
        h.tally.words += 1;
        holds(differences.iter().any(|d| direction(word, text(&d["property"])).is_ok_and(|more| more.is_some())))
    }),
    ("kind-usual", |h| {
        let (usual, words) = (h.real("kind.usual_of_hundred")?, h.arg("number")?);
        holds(usual >= 1.0)?;
        // More than ten of a hundred are told to five.
        h.reads(words, if usual < 10.0 { usual } else { 5.0 * (usual / 5.0).round() })
    }),
    ("kind-differs", differs),
    ("kind-lead", |h| {
        let how = h.key("how")?;
        h.on(BEHIND, &how, h.real("kind.lead")?)
    }),
    ("kind-lead-by", |h| {
        let how = h.key("how")?;
        h.on(BEHIND, &how, h.real("kind.lead")?)?;
        let (words, behind) = (h.arg("by")?, (h.real("kind.lead")? - 1.0) * 100.0);
        // The most that it can be is rounded up: to tenths where the sets are about level, else to whole ones.
        let steps = if how == "level" { 10.0 } else { 1.0 };
        let proven = h.at("kind.proven")? == true;
        h.in_unit(words, if proven { behind } else { (behind * steps).ceil() / steps }, "%")
    }),
    ("kinds-more", |h| {
        let left = list(&h.set()["other_kinds"]).len() - h.kinds_told.len();
        match h.said.and_then(|said| said.choice("count")) {
            Some("one") => { h.skip("count"); holds(left == 1) }
            _ => { let words = h.arg("count")?; h.reads(words, left as f64) }
        }
    }),
    ("kind-ruled-out", |h| {
        let (ruled_out, words) = (ruled_out(h)?, h.arg("name")?);
        holds(ruled_out["string"].as_u64() == Some(h.name(words)? as u64))?;
        let known = text(&ruled_out["limit"]);
        match h.key("limit")?.as_str() {
            "nobody-makes-it" => same("nobody-makes-it", known),
            _ => {
                let why = h.arg("why")?;
                same(sole(why).map_or("", |said| said.id), &format!("limit-{known}"))
            }
        }
    }),
    ("kind-too-heavy", |h| holds(ruled_out(h)?["string"].is_null())),
];

/// The kind that is not possible, of which the message has the name.
fn ruled_out<'a>(h: &Heard<'a>) -> Result<&'a Value, String> {
    let name = h.said.and_then(|said| sole(said.place("kind")?)).map_or("", |said| said.id);
    entry(&h.set()["ruled_out"], "kind", name.trim_start_matches("set-kind-"))
}

/// The name of a kind: which strings it has of steel above the others. As a heading it is what the lines under it are about.
fn a_kind(h: &mut Heard) -> Agrees {
    let key = h.tail("set-kind-");
    let top = match h.said.and_then(|said| said.place("top")) {
        Some(_) => {
            let words = h.arg("top")?;
            h.names(words)?
        }
        None => Vec::new(),
    };
    if let Some(steel) = h.said.and_then(|said| said.choice("steel")) {
        h.skip("steel");
        holds((steel == "top") != top.is_empty())?;
    }
    let families: Vec<&str> = if h.place.within("ruled-out") {
        return entry(&h.set()["ruled_out"], "kind", key).map(drop);
    } else if h.place.within("other-kind") {
        let kind = entry(&h.set()["other_kinds"], "kind", key)?;
        h.kind = Some(kind);
        holds(!h.kinds_told.contains(&key))?;
        h.kinds_told.push(key);
        list(&kind["families"]).iter().map(text).collect()
    } else if h.place.within("points") || flat(&h.place.heading) == "{set-second}" {
        let kind = entry(&h.set()["other_kinds"], "kind", key)?;
        h.kind = Some(kind);
        let families: Vec<&str> = list(&kind["families"]).iter().map(text).collect();
        let second: Vec<&str> =
            h.reports(true).into_iter().map(|report| text(&report["family"])).collect();
        holds(families == second)?;
        families
    } else {
        same(key, text(&h.set()["kind"]))?;
        h.reports(false).into_iter().map(|report| text(&report["family"])).collect()
    };
    // A string that stays may be of any family, and so may one of which a family was asked for: it has that in every kind.
    let asked = |i: usize| {
        let own = &h.strings()[i]["report"]["family"];
        list(&h.set()["other_kinds"]).iter().all(|kind| kind["families"][i] == *own)
    };
    let stays = |i: usize| h.strings()[i]["standing"] != "new";
    let steel = |i: usize| families[i].ends_with("steel") || stays(i) || asked(i);
    holds(top.into_iter().all(steel))
}

/// The comparisons with the second set under the reasons or the costs of a string: none where both sets have one family.
fn compared<'a>(h: &Heard<'a>, i: usize, which: &str) -> Vec<&'a Value> {
    let family = |second: bool| h.reports(second).get(i).map(|report| text(&report["family"]));
    let other = h.set()["runner_up"].is_null() || family(true) != family(false);
    let all = list(&h.strings()[i][which]).iter().filter(|_| other);
    all.filter(|r| r["judged"] == false)
        .map(|r| &r["comparison"])
        .filter(|c| !c.is_null())
        .collect()
}

/// Words for more and less, each of all strings that have it as a reason or, against the set, as a cost.
fn weighed(h: &mut Heard) -> Agrees {
    let turned = h.place.within("for-second");
    let which = if turned || h.place.within("against") { "costs" } else { "reasons" };
    let parts = all(h.arg("parts")?);
    let parts: Vec<_> =
        parts.into_iter().filter(|said| said.id.starts_with("kind-differs-")).collect();
    for said in &parts {
        let strings = match said.id {
            "kind-differs-all" => (0..h.strings().len()).collect(),
            _ => h.names(said.place("strings").unwrap_or_default())?,
        };
        let words = all(said.place("words").unwrap_or_default());
        for word in words.into_iter().filter(|word| !word.id.starts_with("list-")) {
            h.tally.words += 1;
            let is = |c: &&Value| {
                let above = (c["verdict"] == "above") != turned;
                direction(word.id, text(&c["property"])) == Ok(Some(above))
            };
            let all = 0..h.strings().len();
            let so: Vec<usize> = all.filter(|i| compared(h, *i, which).iter().any(is)).collect();
            if so != strings {
                return Err(format!("{} is not so", word.id));
            }
        }
    }
    holds(!parts.is_empty())
}

/// Every property in which a kind differs, with the strings, and no other.
fn differs(h: &mut Heard) -> Agrees {
    let known = list(&h.kind.ok_or("of which kind?")?["differences"]);
    let of = |d: &Value, side: &str| -> Vec<usize> {
        list(&d[side]).iter().filter_map(Value::as_u64).map(|i| i as usize).collect()
    };
    let mut left: Vec<(&Value, bool)> =
        known.iter().flat_map(|d| [(d, true), (d, false)]).collect();
    left.retain(|(d, more)| !of(d, if *more { "above" } else { "below" }).is_empty());
    let every: Vec<usize> = (0..h.strings().len()).collect();
    let parts = all(h.arg("parts")?);
    for said in parts.into_iter().filter(|said| said.id.starts_with("kind-differs-")) {
        let strings = match said.id {
            "kind-differs-all" => every.clone(),
            _ => h.names(said.place("strings").unwrap_or_default())?,
        };
        let words = all(said.place("words").unwrap_or_default());
        for word in words.into_iter().filter(|word| word.id.starts_with("property-")) {
            h.tally.words += 1;
            let is = |(d, more): &(&Value, bool)| {
                direction(word.id, text(&d["property"])) == Ok(Some(*more))
                    && of(d, if *more { "above" } else { "below" }) == strings
            };
            let at = left.iter().position(is).ok_or_else(|| format!("{} is not so", word.id))?;
            left.remove(at);
        }
    }
    holds(left.is_empty())
}

impl Heard<'_> {
    /// The kinds that the page should have told, and did not.
    pub(crate) fn kinds_left_out(&self) -> Vec<String> {
        let kinds = list(&self.set()["other_kinds"]).iter().map(|kind| text(&kind["kind"]));
        kinds
            .filter(|kind| !self.kinds_told.contains(kind))
            .map(|kind| format!("the kind {kind} is not told"))
            .collect()
    }
}
