//! What the page says of a set and its strings, where no clause of `messages.tsv` can say what must be so.

use serde_json::Value;

use crate::claims::Check;
use crate::heard::{Agrees, Heard, entry, holds, list, read, real, rung, same, text};
use crate::marks::{Part, Said, all, flat, sole};
use crate::words::STEPS;

/// The answer, the load, the counter, the plan, and what counted.
#[rustfmt::skip]
pub(crate) const OF_SET: &[(&str, Check)] = &[
    ("nothing-load", |h| holds(list(&h.reply()["obstacles"]).iter().all(|o| o["note"].is_null()))),
    ("nothing-made", |h| {
        let told = all(h.arg("strings")?).into_iter().filter(|said| said.id.starts_with("note-")).count();
        holds(told == list(&h.reply()["obstacles"]).iter().filter(|o| !o["note"].is_null()).count())
    }),
    // Rounded up: a better set lies no further.
    ("unproven-by", |h| {
        let by = (1000.0 * h.real("set.optimality_gap")?).ceil().max(1.0) / 10.0;
        let words = h.arg("by")?;
        h.in_unit(words, by, "%")
    }),
    ("unproven", |h| holds(h.real("set.optimality_gap")? >= 0.5)),
    ("close-none", |h| holds((h.real("set.lead")? - 1.0).abs() < 0.0005)),
    ("sheet-close-ask", counter_of_second),
    ("sheet-close-also", counter_of_second),
    ("sheet-close-rest", |h| {
        // Whatever of it is not asked for otherwise: a string with the same family, outer metal and gauge class.
        let second = h.at("set.runner_up")?;
        let (own, shopping) = (list(&second["strings"]), list(&second["shopping"]));
        let alike = |i: usize| own[i].is_null() || ["family", "outer_metal", "gauge_class"].iter()
            .all(|word| shopping[i][*word] == h.strings()[i]["shopping"][*word]);
        holds((0..own.len()).any(alike))
    }),
    ("kind-outside", |h| {
        let (family, metal) = (h.key("kind")?, h.key("metal")?);
        let outer = |r: &Value| list(&r["construction"]["windings"]).last().map_or(String::new(), |w| metal_id(&w["metal"]));
        let i = h.whose.ok_or("of which string?")?;
        holds([h.reports(false), h.reports(true)].iter().any(|all| format!("family-{}", text(&all[i]["family"])) == family && outer(all[i]) == metal))
    }),
    ("family-*", a_family),
    ("assumptions", |h| {
        let told = all(h.said.and_then(|said| said.place("parts")).unwrap_or_default());
        let told: Vec<&str> = told.into_iter().filter_map(|said| said.id.strip_prefix("assumed-")).collect();
        let known = list(&h.problem()["assumed"]);
        // A message is named as the question is, if not with its unit; its answer stands behind that.
        let is = |(told, one): (&&str, &Value)| told.starts_with(text(&one["field"]).trim_start_matches("sounding_").split('_').next().unwrap_or_default());
        holds(told.len() == known.len() && told.iter().zip(known).all(is))
    }),
    ("assumed-length", |h| {
        let said = flat(h.arg("number")?);
        // The strings say how long they sound; an extension makes the lowest longer.
        if let Some(string) = h.strings().first() {
            let words = h.arg("number")?;
            h.reads(words, real(&string["report"]["setting"]["sounding_length_m"])? * 1e3)?;
        }
        let known = list(&h.problem()["assumed"]).iter().map(|one| text(&one["value"]));
        holds(known.filter_map(|value| value.split(['\u{a0}', ' ']).next()).any(|number| number == said))
    }),
    ("when-by", |h| {
        let (last, safe) = (h.arg("last")?, h.arg("safe")?);
        h.date(last, 0)?;
        h.date(safe, 1)
    }),
    ("when-at-once", |h| {
        let last = h.arg("last")?;
        holds(h.days_left(1)? < 0)?;
        h.date(last, 0)
    }),
    ("when-too-late", |h| holds(h.days_left(0)? < 0)),
    ("assumed-*", |h| {
        let is = |one: &Value| format!("{}-{}", text(&one["field"]), text(&one["value"])) == h.tail("assumed-");
        holds(list(&h.problem()["assumed"]).iter().any(is))
    }),
    ("steps-usual", |h| holds(list(&h.set()["steps"]).iter().all(|s| step(s).is_ok_and(|r| rung(STEPS, r) == "step-usual")))),
    ("steps-title", steps),
    ("counter", |h| {
        holds((h.key("full")? == "yes") == (h.problem()["size"] == "4/4"))?;
        let there = |place| h.said.and_then(|said| said.place(place)).is_some_and(|words| !all(words).is_empty());
        // Only plain strings are bought by a gauge.
        let by_gauge = ["plain-gut", "plain-steel", "monofilament"].contains(&text(&h.report()?["family"]));
        holds(there("wound") == h.shopping()?["outer_metal"].is_string() && there("gauge") == by_gauge)
    }),
    ("portrait-plain", portrait),
    ("portrait-wound", portrait),
    ("core-strand", |h| {
        // A wire in the middle and rounds of wires about it: how many of them lie across the whole.
        let core = &h.report()?["construction"]["core"];
        let (layout, wide) = match text(&core["layout"]) {
            "1x19" => ("nineteen", 5.0),
            "7x7" => ("rope", 9.0),
            _ => ("seven", 3.0),
        };
        same(&h.key("layout")?, layout)?;
        let words = h.arg("wire")?;
        h.in_unit(words, real(&core["diameter_m"])? * 1e3 / wide, "mm")
    }),
    ("core-bundle", |h| {
        let core = &h.report()?["construction"]["core"];
        let across = real(&core["diameter_m"])? / real(&core["filament_m"])?;
        let count = real(&core["fill"])? * across * across;
        // To two digits.
        let digits = [1e4, 1e3, 1e2].into_iter().find(|from| count >= *from);
        h.tally.figures += 1;
        holds(read(h.arg("count")?)?.is_to(count, 1.2 * digits.map_or(1.0, |from| from / 10.0)))
    }),
    ("core-twisted", |h| same(&h.key("twist")?, if h.real("report.construction.core.twist_deg")? >= 35.0 { "high" } else { "low" })),
    ("core-single", |h| {
        let steel = text(h.at("report.construction.core.material")?).contains("steel");
        same(&h.key("what")?, if steel { "wire" } else { "filament" })
    }),
    ("winding*", windings),

    // The plan, and what counted.
    ("caution-*", |h| {
        // A string's own stands on its card, or behind its name.
        let own = h.whose.or(h.at).filter(|_| !h.place.within("urgent")).map(|i| i as u64);
        let fits = |c: &Value| c["caution"] == h.tail("caution-") && c["string"].as_u64() == own;
        holds(h.place.within("sheet-foot") || list(&h.plan()["cautions"]).iter().any(fits))
    }),
    ("weights-title", |h| {
        let mut weights: Vec<(f64, &str)> = list(&h.problem()["weights"]).iter().filter_map(|w| Some((w["weight"].as_f64()?, w["attribute"].as_str()?))).collect();
        weights.sort_by(|a, b| b.0.total_cmp(&a.0));
        let told: Vec<&str> = all(h.arg("most")?).into_iter().filter_map(|said| said.id.strip_prefix("attribute-")).collect();
        holds(told.len() == 3 && told.iter().zip(weights).all(|(told, (_, key))| *told == key))
    }),
    ("swings-counts", |h| {
        let all: f64 = list(&h.problem()["weights"]).iter().filter_map(|w| w["weight"].as_f64()).sum();
        let (own, words) = (real(&entry(&h.problem()["weights"], "attribute", h.wish)?["weight"])?, h.arg("share")?);
        h.reads(words, 100.0 * own / all)
    }),
    ("searched", |h| { let told = h.arg("strings")?; holds(h.names(told)?.len() == h.strings().len()) }),

    // Where nothing fits.
    ("nothing-lightest", |h| {
        let obstacle = list(&h.reply()["obstacles"]).iter().find(|o| !o["lightest_n"].is_null()).ok_or("no load in the way")?;
        let (lightest, most) = (real(&obstacle["lightest_n"])?, real(&obstacle["most_n"])?);
        for (place, newtons) in [("lightest", lightest), ("most", most)] {
            let words = h.arg(place)?;
            h.force(words, newtons, newtons)?;
        }
        holds(lightest > most)
    }),
    ("limit-*", |h| holds(list(&h.reply()["obstacles"]).iter().any(|o| entry(&o["limits"], "limit", h.tail("limit-")).is_ok()))),
];

/// The message of a metal.
pub(crate) fn metal_id(metal: &Value) -> String {
    format!("metal-{}", text(metal).replace(' ', "-"))
}

/// The months from the day on which the pages are drawn, and their days.
const MONTHS: [(u8, i64); 10] =
    [(3, 31), (4, 30), (5, 31), (6, 30), (7, 31), (8, 31), (9, 30), (10, 31), (11, 30), (12, 31)];

impl Heard<'_> {
    /// How many days from today the last day is on which to fit the set: likely, and to be safe.
    fn days_left(&self, which: usize) -> Result<i64, String> {
        let wait = real(&self.plan()["fit_before_d"][which])?.ceil().max(1.0);
        Ok((self.real("problem.concert_days")? - wait).floor() as i64)
    }

    /// Words are the date of that day.
    fn date(&mut self, words: &[Part], which: usize) -> Agrees {
        let left = self.days_left(which)?;
        holds(left >= 0)?;
        // The pages are drawn on the first of March, a Monday.
        let (weekday, mut day) = (left % 7, left + 1);
        let Some((month, _)) = MONTHS.iter().find(|(_, days)| {
            let is_within = day <= *days;
            if !is_within {
                day -= days;
            }
            is_within
        }) else {
            return Err("the reader's calendar is too short".to_owned());
        };
        let said = sole(words).filter(|said| said.id == "date-named").ok_or("which day?")?;
        let place = |name| flat(said.place(name).unwrap_or_default());
        self.tally.figures += 1;
        same(&place("weekday"), &format!("{{weekday-{weekday}}}"))?;
        same(&place("day"), &day.to_string())?;
        same(&place("month"), &format!("{{month-{month}}}"))
    }

    /// Each string of a set is said to be of its family.
    pub(crate) fn families_of(&self, words: &[Part], second: bool) -> Agrees {
        let mut told = Vec::new();
        for said in all(words) {
            let family = said.choice("family").unwrap_or_default();
            let strings = said.place("strings").or(said.place("string")).unwrap_or_default();
            match said.id {
                "families-one" => told.extend((0..self.strings().len()).map(|i| (i, family))),
                "families-part" => {
                    told.extend(self.names(strings)?.into_iter().map(|i| (i, family)));
                }
                "either-string" => {
                    let at = self.name(strings)?;
                    let either = |place| {
                        said.place(place).and_then(sole).and_then(|one| one.choice("family"))
                    };
                    let other = text(&self.reports(true)[at]["family"]);
                    holds(self.set()["close_call"] == true && either("other") == Some(other))?;
                    told.push((at, either("one").unwrap_or_default()));
                }
                _ => {}
            }
        }
        let known = self.reports(second).into_iter().map(|report| text(&report["family"]));
        each(told.into_iter().map(|(i, family)| (i, family.to_owned())).collect(), known)
    }

    /// Each string of a set is said to be of its class of gauges.
    pub(crate) fn gauges_of(&self, words: &[Part], second: bool) -> Agrees {
        let mut told = Vec::new();
        for said in all(words) {
            // One language puts the word in a place, the other chooses by it.
            let class = said.choice("gauge").map(str::to_owned);
            let class = class.unwrap_or_else(|| flat(said.place("gauge").unwrap_or_default()));
            match said.id {
                "gauges-one" => told.extend((0..self.strings().len()).map(|i| (i, class.clone()))),
                "gauges-part" => {
                    let strings = self.names(said.place("strings").unwrap_or_default())?;
                    told.extend(strings.into_iter().map(|i| (i, class.clone())));
                }
                _ => {}
            }
        }
        let own = |i: usize| match second {
            true => &self.set()["runner_up"]["shopping"][i],
            false => &self.strings()[i]["shopping"],
        };
        each(told, (0..self.strings().len()).map(|i| text(&own(i)["gauge_class"])))
    }
}

/// Of each string is said what is so, and once.
fn each<'k>(mut told: Vec<(usize, String)>, known: impl Iterator<Item = &'k str>) -> Agrees {
    told.sort_unstable();
    let known: Vec<_> = known.map(str::to_owned).enumerate().collect();
    if told == known { Ok(()) } else { Err(format!("{told:?} are not {known:?}")) }
}

/// What to ask for where the second set differs.
fn counter_of_second(h: &mut Heard) -> Agrees {
    holds(h.set()["close_call"] == true)?;
    let words = h.arg("asks")?;
    let name = sole(words).and_then(|said| said.place("name")).ok_or("for which string?")?;
    let at = h.name(name)?;
    holds(!h.set()["runner_up"]["strings"][at].is_null())?;
    let outer = (h.at.replace(at), std::mem::replace(&mut h.second, true));
    let agrees = h.line(words);
    (h.at, h.second) = outer;
    agrees
}

/// What is wound round a core, from the inside out.
fn windings(h: &mut Heard) -> Agrees {
    let words = h.words;
    let told: Vec<&Said> = all(words).into_iter().filter(|said| said.id == "winding").collect();
    let windings = list(h.at("report.construction.windings")?);
    holds(told.len() == windings.len() && told.is_empty() == (flat(words) == "{winding-none}"))?;
    for (said, winding) in told.into_iter().zip(windings) {
        h.of(said, |h| {
            same(&h.key("metal")?, &metal_id(&winding["metal"]))?;
            holds((h.key("form")? == "round") == (winding["form"] == "round"))?;
            let words = h.arg("thickness")?;
            h.in_unit(words, real(&winding["thickness_m"])? * 1e3, "mm")
        })?;
    }
    // A message that joins several has nothing else; one that is alone was read above.
    ["inner", "outer", "metal", "form", "thickness"].into_iter().for_each(|place| h.skip(place));
    Ok(())
}

/// A portrait: the outside of the string, and how it is made.
fn portrait(h: &mut Heard) -> Agrees {
    let name = h.arg("name")?;
    let at = h.name(name)?;
    let mut reports = vec![h.reports(false)[at]];
    // In a picture of two sets the reader does not see which of them this is: one of both must agree.
    if h.place.within("level") {
        reports.push(h.reports(true)[at]);
    }
    let (across, core) = (h.arg("across")?, h.arg("core")?);
    let plain = h.tail("portrait-") == "plain";
    let wound = if plain { None } else { Some(h.arg("wound")?) };
    let mut agrees = Ok(());
    for report in reports {
        h.made = Some(report);
        let whole = crate::heard::number(report, "outer_diameter_m")?.value;
        agrees =
            h.in_unit(across, whole, "mm").and_then(|()| h.line(core)).and_then(|()| match wound {
                Some(wound) => h.line(wound),
                None => holds(list(&report["construction"]["windings"]).is_empty()),
            });
        if agrees.is_ok() {
            break;
        }
    }
    h.made = None;
    agrees
}

/// A family by itself: that of the card's string, or of one of those that the part is about.
fn a_family(h: &mut Heard) -> Agrees {
    let is = |of: &Value| of["family"] == h.tail("family-");
    if h.place.within("legend") {
        let marked = h.place.within(h.tail(""));
        return holds(marked && list(&h.string()?["picture"]).iter().any(is));
    }
    if h.at.is_some() {
        return holds(is(h.report()?));
    }
    let i = h.whose.ok_or("of which string?")?;
    holds([h.reports(false), h.reports(true)].iter().any(|all| is(all[i])))
}

/// The step of tension over the usual one.
pub(crate) fn step(step: &Value) -> Result<f64, String> {
    Ok(real(&step["tension_ratio"])? / real(&step["usual_ratio"])?)
}

/// Every step that is not the usual one, and no other.
fn steps(h: &mut Heard) -> Agrees {
    let mut told = Vec::new();
    for said in all(h.arg("steps")?).into_iter().filter(|said| said.id == "steps-odd") {
        let end = |place| h.name(said.place(place).unwrap_or_default());
        let (upper, lower) = (end("upper")?, end("lower")?);
        holds(upper + 1 == lower)?;
        told.push((upper, format!("step-{}", said.choice("step").unwrap_or_default())));
    }
    for (i, s) in list(&h.set()["steps"]).iter().enumerate() {
        let ratio = step(s)?;
        match told.iter().find(|(upper, _)| *upper == i) {
            Some((_, word)) => h.on(STEPS, word, ratio)?,
            None => holds(rung(STEPS, ratio) == "step-usual")?,
        }
    }
    holds(!told.is_empty() && told.iter().all(|(_, word)| word != "step-usual"))
}
