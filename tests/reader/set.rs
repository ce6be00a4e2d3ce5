//! What the page says of a set and its strings, and what must be true of the reply when it does.

use serde_json::Value;

use crate::heard::{
    Agrees, Heard, Number, entry, holds, list, number, read, real, rung, same, text,
};
use crate::marks::{Part, Said, all, flat, sole};
use crate::reader::Claim;
use crate::words::{LOAD, STEPS};

/// The answer, the load, the counter, the plan, and what counted.
#[rustfmt::skip]
pub(crate) const OF_SET: &[Claim] = &[
    // The answer.
    ("set-answer", |h| { h.instrument()?; h.families("strings", false)?; h.gauges("gauge", false) }),
    ("set-answer-either", |h| { h.instrument()?; h.families("strings", false) }),
    ("set-answer-two", |h| {
        h.tally.words += 1;
        h.instrument()?;
        holds(h.set()["close_call"] == true)?;
        h.families("first", false)?;
        h.families("second", true)
    }),
    ("nothing-load", |h| {
        h.instrument()?;
        holds(h.set().is_null() && list(&h.reply()["obstacles"]).iter().all(|o| o["note"].is_null()))
    }),
    ("nothing-made", |h| {
        h.instrument()?;
        let words = h.arg("strings")?;
        let told = all(words).into_iter().filter(|said| said.id.starts_with("note-")).count();
        holds(h.set().is_null() && told == list(&h.reply()["obstacles"]).iter().filter(|o| !o["note"].is_null()).count())
    }),
    ("lead-level", |h| { h.tally.words += 1; holds(h.set()["close_call"] == true) }),
    ("lead-next", |h| {
        h.tally.words += 1;
        holds(h.set()["close_call"] == false)?;
        h.families("strings", true)?;
        h.lead("by")
    }),
    ("lead-no-*", |h| { h.tally.words += 1; holds(h.set()["runner_up"].is_null()) }),
    ("unproven-by", |h| {
        holds(h.set()["proven"] == false)?;
        // Rounded up: a better set lies no further.
        h.amount("by", (1000.0 * real(&h.set()["optimality_gap"])?).ceil().max(1.0) / 10.0, "%")
    }),
    ("unproven", |h| holds(h.set()["proven"] == false && real(&h.set()["optimality_gap"])? >= 0.5)),
    ("close-by", |h| { h.tally.words += 1; holds(h.set()["close_call"] == true)?; h.lead("by") }),
    ("close-none", |h| holds((real(&h.set()["lead"])? - 1.0).abs() < 0.0005)),
    ("sheet-close", |h| { h.tally.words += 1; holds(h.set()["close_call"] == true)?; h.families("strings", true) }),
    ("sheet-close-ask", counter_of_second),
    ("sheet-close-also", counter_of_second),
    ("sheet-close-rest", |h| {
        // Whatever of it is not asked for otherwise: a string with the same family, outer metal and gauge class.
        let second = &h.set()["runner_up"];
        let (own, shopping) = (list(&second["strings"]), list(&second["shopping"]));
        let alike = |i: usize| own[i].is_null() || ["family", "outer_metal", "gauge_class"].iter()
            .all(|word| shopping[i][*word] == h.strings()[i]["shopping"][*word]);
        holds((0..own.len()).any(alike))
    }),
    ("sheet-instrument", |h| {
        instrument_at_head(h)?;
        h.amount("pitch", real(&h.problem()["a4_hz"])?, "Hz")?;
        h.is_key("set_up", "", &h.problem()["set_up"])
    }),
    ("assumptions", assumptions),
    ("kind-outside", |h| {
        let (family, metal) = (h.key("kind")?, h.key("metal")?);
        let outer = |r: &Value| list(&r["construction"]["windings"]).last().map_or(String::new(), |w| format!("metal-{}", text(&w["metal"])));
        let i = h.whose.ok_or("of which string?")?;
        holds([h.reports(false), h.reports(true)].iter().any(|all| format!("family-{}", text(&all[i]["family"])) == family && outer(all[i]) == metal))
    }),
    ("family-*", a_family),
    ("instrument-*", |h| same(h.tail("instrument-"), text(&h.problem()["instrument"]))),
    ("tuning-*", |h| {
        let known = format!("{}-{}", text(&h.problem()["instrument"]), text(&h.problem()["tuning"]));
        same(h.tail("tuning-"), &known)
    }),
    ("size-inches", |h| { let size = flat(h.arg("number")?).replace(',', "."); same(&format!("{size} in"), text(&h.problem()["size"])) }),

    // The load.
    ("load-title", |h| load(h, "place")),
    ("load-total", |h| {
        h.ranged("total_tension_n")?;
        h.spans("usual", "N", &h.problem()["usual_load_n"], 1.0)
    }),
    ("load-bridge-force", |h| h.ranged("downforce_n")),
    ("load-old", |h| h.amount("limit", real(&h.problem()["most_load_n"])?, "N")),
    ("load-total-bar", |h| {
        h.spread("total_tension_n")?;
        h.spans("usual", "N", &h.problem()["usual_load_n"], 1.0)
    }),
    ("load-bridge-bar", |h| h.spread("downforce_n")),
    ("sheet-load", |h| {
        h.pulls("pull", real(&h.set()["total_tension_n"]["value"])?)?;
        h.pulls("press", real(&h.set()["downforce_n"]["value"])?)?;
        load(h, "place")
    }),
    ("steps-usual", |h| holds(list(&h.set()["steps"]).iter().all(|s| step(s).is_ok_and(|r| rung(STEPS, r) == "step-usual")))),
    ("steps-title", steps),

    // What a string is, and the counter.
    ("family-is-*", |h| same(h.tail("family-is-"), text(&h.report()?["family"]))),
    ("gauge-mm", |h| { h.skip("mm"); h.skip("inch"); h.thick(h.words) }),
    ("card-sometimes", |h| holds(h.string()?["grade"] == "sometimes")),
    ("card-stays", |h| holds(h.string()?["standing"] == "kept")),
    ("card-not-judged", |h| holds(h.string()?["standing"] == "not-judged")),
    ("stays", |h| standing(h, "kept")),
    ("not-judged", |h| standing(h, "not-judged")),
    ("card-known", |h| {
        holds(h.string()?["standing"] == "kept")?;
        h.is_key("kind", "family-is-", &h.report()?["family"])?;
        let words = h.arg("gauge")?;
        h.thick(words)?;
        h.pulls("pull", h.number("tension_n")?.value)
    }),
    ("card-unknown", |h| {
        holds(h.string()?["standing"] == "not-judged")?;
        h.pulls("pull", h.number("tension_n")?.value)
    }),
    ("card-say", |h| { let words = h.arg("string")?; h.counter(words, h.at, false) }),
    ("counter", |h| { let words = h.words; h.counter(words, h.at, false) }),
    ("card-packet", |h| {
        let told = sole(h.arg("packet")?).filter(|said| said.id == "packet").ok_or("is it a packet?")?;
        let shopping = &h.string()?["shopping"];
        h.of(told, |h| {
            let (words, tension) = (h.arg("force")?, &shopping["tension_n"]);
            h.force(words, real(&tension[0])?, real(&tension[1])?)?;
            h.amount("pitch", real(&shopping["pitch_hz"])?, "Hz")?;
            h.amount("length", real(&shopping["sounding_length_m"])? * 1e3, "mm")
        })
    }),
    ("card-today", |h| { h.is_key("family", "", &h.string()?["today"]["family"])?; h.own_name() }),
    ("card-rather", |h| { h.is_key("family", "", &h.string()?["rival"]["family"])?; h.own_letter() }),
    ("card-no-other*", |h| holds(h.string()?["rival"].is_null())),
    ("card-bands", |h| {
        let bands = &h.string()?["bands"];
        let family = &h.report()?["family"];
        if h.is_key("family", "", family).is_err() { h.is_key("Kind", "family-", family)?; }
        h.spans("gauges", "mm", &bands["gauge_m"], 1e3)?;
        h.spans("forces", "N", &bands["tension_n"], 1.0)?;
        h.figure("low", real(&bands["stretch"][0])? * 1e2)?;
        h.figure("high", real(&bands["stretch"][1])? * 1e2)
    }),
    ("portrait-*", portrait),
    ("core-*", |h| { let (words, made) = (h.words, &h.report()?["construction"]); h.core(words, made) }),
    ("winding*", |h| { let (words, made) = (h.words, &h.report()?["construction"]); h.windings(words, made) }),

    // Facts.
    ("fact-pull", |h| h.pulls("force", h.number("tension_n")?.value)),
    ("fact-stretch", |h| { h.tally.comparatives += 1; h.known("stretch")?; h.says("stretch", "stretch") }),
    ("fact-breaking", |h| { h.known("breaking_share")?; h.says("share", "breaking_share") }),
    ("fact-peg", |h| {
        let n = Number { unit: "{cents}", ..h.number("peg_cent_deg")? };
        let words = h.arg("cents")?;
        h.value(words, &n)?;
        holds((h.key("tuner")? == "yes") == (h.string()?["fine_tuner"] == true))
    }),
    ("fact-settling", |h| { h.known("settling_d")?; h.says("days", "settling_d") }),
    ("fact-drift", |h| h.says("cents", "drift_cent")),

    // The plan.
    ("plan-title", fit_before),
    ("sheet-fit", fit_before),
    ("plan-matters", |h| { let words = h.arg("days")?; h.days(words, real(&h.problem()["concert_days"])?) }),
    ("check-*", |h| holds(list(&h.plan()["checks"]).iter().any(|c| c == h.tail("check-")))),
    ("caution-*", |h| {
        // A string's own stands on its card, or behind its name.
        let key = h.tail("caution-");
        let own = h.whose.or(h.at);
        let own = if h.place.within("urgent") { None } else { own };
        let fits = |c: &Value| c["caution"] == key && c["string"].as_u64() == own.map(|i| i as u64);
        holds(h.place.within("sheet-foot") || list(&h.plan()["cautions"]).iter().any(fits))
    }),

    // What counted.
    ("weights-title", |h| {
        let mut weights: Vec<(f64, &str)> = list(&h.problem()["weights"]).iter().filter_map(|w| Some((w["weight"].as_f64()?, w["attribute"].as_str()?))).collect();
        weights.sort_by(|a, b| b.0.total_cmp(&a.0));
        let told: Vec<&str> = all(h.arg("most")?).into_iter().filter_map(|said| said.id.strip_prefix("attribute-")).collect();
        holds(told.len() == 3 && told.iter().zip(weights).all(|(told, (_, key))| *told == key))
    }),
    ("swings-counts", |h| {
        let weights = list(&h.problem()["weights"]);
        let all: f64 = weights.iter().filter_map(|w| w["weight"].as_f64()).sum();
        let key = h.wish;
        h.figure("share", 100.0 * real(&entry(&h.problem()["weights"], "attribute", key)?["weight"])? / all)
    }),
    ("searched", |h| {
        let searched = &h.set()["searched"];
        let told = h.arg("strings")?;
        holds(h.names(told)?.len() == h.strings().len())?;
        for name in ["space", "wound", "inside"] { h.figure(name, real(&searched[name])?)?; }
        Ok(())
    }),

    // Where nothing fits.
    ("nothing-lightest", |h| {
        let obstacle = list(&h.reply()["obstacles"]).iter().find(|o| !o["lightest_n"].is_null()).ok_or("no load in the way")?;
        let (lightest, most) = (real(&obstacle["lightest_n"])?, real(&obstacle["most_n"])?);
        h.pulls("lightest", lightest)?;
        h.pulls("most", most)?;
        holds(lightest > most)
    }),
    ("limit-*", |h| holds(list(&h.reply()["obstacles"]).iter().any(|o| entry(&o["limits"], "limit", h.tail("limit-")).is_ok()))),
    ("relax-*", |h| holds(list(&h.reply()["obstacles"][0]["relax"]).iter().any(|r| r == h.tail("relax-")))),
];

impl<'a> Heard<'a> {
    fn instrument(&mut self) -> Agrees {
        self.is_key("instrument", "", &self.problem()["instrument"])
    }

    /// The name in a message is that of the string that it is about, by itself or with its article.
    pub(crate) fn own_name(&mut self) -> Agrees {
        let words = self.arg("name")?;
        holds(Some(self.name(words)?) == self.at.or(self.whose))
    }

    /// The same where only its letter is said.
    fn own_letter(&mut self) -> Agrees {
        let words = self.arg("name")?;
        let own = self.at.ok_or("of which string?")?;
        let letter = text(&self.strings()[own]["note"]).chars().next();
        let told = all(words).into_iter().filter_map(|said| said.id.strip_prefix("note-")).last();
        holds(told.and_then(|id| id.chars().next()) == letter)
    }

    /// Each string of a set is said to be of its family.
    fn families(&mut self, place: &'static str, second: bool) -> Agrees {
        let words = self.arg(place)?;
        self.families_of(words, second)
    }

    pub(crate) fn families_of(&mut self, words: &[Part], second: bool) -> Agrees {
        let mut told = Vec::new();
        for said in all(words) {
            let family = || said.choice("family").unwrap_or_default();
            let strings = said.place("strings").or(said.place("string")).unwrap_or_default();
            match said.id {
                "families-one" => told.extend((0..self.strings().len()).map(|i| (i, family()))),
                "families-part" => {
                    told.extend(self.names(strings)?.into_iter().map(|i| (i, family())))
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
        told.sort_unstable();
        let known: Vec<_> =
            self.reports(second).into_iter().map(|r| text(&r["family"])).enumerate().collect();
        if told == known { Ok(()) } else { Err(format!("{told:?} are not {known:?}")) }
    }

    /// Each string of a set is said to be of its class of gauges.
    fn gauges(&mut self, place: &'static str, second: bool) -> Agrees {
        let words = self.arg(place)?;
        self.gauges_of(words, second)
    }

    pub(crate) fn gauges_of(&mut self, words: &[Part], second: bool) -> Agrees {
        let mut told = Vec::new();
        for said in all(words) {
            let class = said
                .choice("gauge")
                .map_or_else(|| flat(said.place("gauge").unwrap_or_default()), str::to_owned);
            match said.id {
                "gauges-one" => told.extend((0..self.strings().len()).map(|i| (i, class.clone()))),
                "gauges-part" => {
                    let strings = self.names(said.place("strings").unwrap_or_default())?;
                    told.extend(strings.into_iter().map(|i| (i, class.clone())));
                }
                _ => {}
            }
        }
        told.sort();
        let own = |i: usize| match second {
            true => &self.set()["runner_up"]["shopping"][i],
            false => &self.strings()[i]["shopping"],
        };
        let known: Vec<_> = (0..self.strings().len())
            .map(|i| (i, text(&own(i)["gauge_class"]).to_owned()))
            .collect();
        if told == known { Ok(()) } else { Err(format!("{told:?} are not {known:?}")) }
    }

    /// By how much the first set leads, in per cent.
    fn lead(&mut self, place: &'static str) -> Agrees {
        self.amount(place, (real(&self.set()["lead"])? - 1.0) * 100.0, "%")
    }

    /// A force with its range.
    fn ranged(&mut self, key: &str) -> Agrees {
        self.pulls("force", real(&self.set()[key]["value"])?)?;
        self.spread(key)
    }

    fn spread(&mut self, key: &str) -> Agrees {
        let (sum, words) = (&self.set()[key], self.arg("range")?);
        self.range(words, "N", real(&sum["low"])?, real(&sum["high"])?, 0.0)
    }

    /// The words for a number that is known, or for one that is not.
    fn known(&mut self, key: &str) -> Agrees {
        let unknown = self.number(key)?.unknown;
        holds((self.key("known")? == "no") == unknown)
    }

    /// The words for the counter: an instrument with its size, a string, a gauge where it is bought by one.
    pub(crate) fn counter(&mut self, words: &'a [Part], at: Option<usize>, second: bool) -> Agrees {
        let told =
            sole(words).filter(|said| said.id == "counter").ok_or("is it for the counter?")?;
        let at = at.ok_or("for which string?")?;
        let report = self.reports(second)[at];
        let shopping = if second {
            &self.set()["runner_up"]["shopping"][at]
        } else {
            &self.strings()[at]["shopping"]
        };
        self.of(told, |h| {
            h.instrument()?;
            let size = text(&h.problem()["size"]);
            let full = h.key("full")? == "yes";
            holds(full == (size == "4/4"))?;
            if !full {
                let said = h.arg("size")?;
                let inches = sole(said)
                    .and_then(|said| said.place("number"))
                    .map(|n| format!("{} in", flat(n).replace(',', ".")));
                same(&inches.unwrap_or_else(|| flat(said)), size)?;
            }
            let name = h.arg("name")?;
            holds(h.name(name)? == at)?;
            h.is_key("class", "", &shopping["gauge_class"])?;
            h.is_key("end", "", &shopping["end"])?;
            holds((h.key("long")? == "yes") == (shopping["extension"] == true))?;
            h.tally.comparatives += usize::from(shopping["extension"] == true);
            let core = sole(h.arg("core")?).ok_or("of which core?")?;
            h.of(core, |h| {
                h.is_key("family", "", &report["family"])?;
                h.skip("material");
                let material = core.place("material").and_then(sole).map(|said| said.id);
                holds(material.is_none_or(|id| {
                    id == format!("material-{}", text(&report["construction"]["core"]["material"]))
                }))
            })?;
            let wound = h.arg("wound")?;
            let metal = sole(wound).and_then(|said| sole(said.place("metal")?)).map(|said| said.id);
            let known = shopping["outer_metal"]
                .as_str()
                .map(|metal| format!("metal-{}", metal.replace(' ', "-")));
            holds(metal == known.as_deref())?;
            let gauge = h.arg("gauge")?;
            let by_gauge =
                matches!(text(&report["family"]), "plain-gut" | "plain-steel" | "monofilament");
            match all(gauge).first() {
                Some(_) => {
                    holds(by_gauge)?;
                    h.gauge(&gauge[1..], real(&report["construction"]["core"]["diameter_m"])?)
                }
                None => holds(!by_gauge && flat(gauge).is_empty()),
            }
        })
    }

    /// How a core is made.
    pub(crate) fn core(&mut self, words: &'a [Part], construction: &Value) -> Agrees {
        let core = &construction["core"];
        let across = real(&core["diameter_m"])? * 1e3;
        let told = sole(words).ok_or("which core?")?;
        let build = match told.id {
            "core-strand" => "strand",
            "core-bundle" => "multifilament",
            "core-twisted" => "twisted",
            _ => "solid",
        };
        let builds = ["strand", "multifilament", "twisted"];
        holds(
            core["build"] == build || (build == "solid" && !builds.contains(&text(&core["build"]))),
        )?;
        self.of(told, |h| {
            h.is_key("material", "material-", &core["material"])?;
            h.amount("across", across, "mm")?;
            match build {
                "strand" => {
                    // A wire in the middle and rounds of wires about it: how many of them lie across the whole.
                    let (layout, wide) = match text(&core["layout"]) {
                        "1x19" => ("nineteen", 5.0),
                        "7x7" => ("rope", 9.0),
                        _ => ("seven", 3.0),
                    };
                    same(&h.key("layout")?, layout)?;
                    h.amount("wire", across / wide, "mm")
                }
                "multifilament" => {
                    let filament = real(&core["filament_m"])? * 1e3;
                    let count = real(&core["fill"])? * (across / filament) * (across / filament);
                    h.amount("filament", filament, "mm")?;
                    // To two digits.
                    let digits = [1e4, 1e3, 1e2].into_iter().find(|from| count >= *from);
                    let words = h.arg("count")?;
                    h.tally.figures += 1;
                    holds(read(words)?.is_to(count, 1.2 * digits.map_or(1.0, |from| from / 10.0)))
                }
                "twisted" => {
                    let twist = real(&core["twist_deg"])?;
                    same(&h.key("twist")?, if twist >= 35.0 { "high" } else { "low" })?;
                    h.figure("degrees", twist)
                }
                _ => same(
                    &h.key("what")?,
                    if text(&core["material"]).contains("steel") { "wire" } else { "filament" },
                ),
            }
        })
    }

    /// What is wound round it, from the inside out.
    pub(crate) fn windings(&mut self, words: &'a [Part], construction: &Value) -> Agrees {
        let told: Vec<&Said> = all(words).into_iter().filter(|said| said.id == "winding").collect();
        let windings = list(&construction["windings"]);
        holds(
            told.len() == windings.len() && (told.is_empty() == (flat(words) == "{winding-none}")),
        )?;
        for (said, winding) in told.into_iter().zip(windings) {
            self.of(said, |h| {
                h.is_key("metal", "metal-", &winding["metal"])?;
                holds((h.key("form")? == "round") == (winding["form"] == "round"))?;
                h.amount("thickness", real(&winding["thickness_m"])? * 1e3, "mm")
            })?;
        }
        // Which of them were told is compared above; the message that joins them has nothing else.
        self.skip("inner");
        self.skip("outer");
        Ok(())
    }
}

/// What to ask for where the second set differs.
fn counter_of_second(h: &mut Heard) -> Agrees {
    holds(h.set()["close_call"] == true)?;
    let words = h.arg("asks")?;
    let name = sole(words).and_then(|said| said.place("name")).ok_or("for which string?")?;
    let at = h.name(name)?;
    holds(!h.set()["runner_up"]["strings"][at].is_null())?;
    h.counter(words, Some(at), true)
}

/// The instrument, its size and tuning at the head of a paper.
fn instrument_at_head(h: &mut Heard) -> Agrees {
    h.is_key("instrument", "instrument-", &h.problem()["instrument"])?;
    let words = h.arg("size")?;
    let inches = sole(words)
        .and_then(|said| said.place("number"))
        .map(|n| format!("{} in", flat(n).replace(',', ".")));
    same(&inches.unwrap_or_else(|| flat(words)), text(&h.problem()["size"]))?;
    let of = format!("tuning-{}-", text(&h.problem()["instrument"]));
    h.is_key("tuning", &of, &h.problem()["tuning"])
}

/// A family by itself: that of the card's string, or of one of those that the part is about.
fn a_family(h: &mut Heard) -> Agrees {
    let key = h.tail("family-");
    let is = |of: &Value| of["family"] == key;
    if h.place.within("legend") {
        return holds(list(&h.string()?["picture"]).iter().any(is));
    }
    if h.at.is_some() {
        return holds(is(h.report()?));
    }
    let i = h.whose.ok_or("of which string?")?;
    holds([h.reports(false), h.reports(true)].iter().any(|all| is(all[i])))
}

fn standing(h: &mut Heard, key: &str) -> Agrees {
    let own = h.at.or(h.whose).ok_or("of which string?")?;
    holds(h.strings()[own]["standing"] == key)
}

fn load(h: &mut Heard, place: &'static str) -> Agrees {
    let usual = &h.problem()["usual_load_n"];
    let (low, high) = (real(&usual[0])?, real(&usual[1])?);
    let at = (real(&h.set()["total_tension_n"]["value"])? - low) / (high - low);
    let said = h.key(place)?;
    h.on(LOAD, &said, at)
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
        h.tally.comparatives += 1;
        match told.iter().find(|(upper, _)| *upper == i) {
            Some((_, word)) => h.on(STEPS, word, ratio)?,
            None => holds(rung(STEPS, ratio) == "step-usual")?,
        }
    }
    holds(!told.is_empty() && told.iter().all(|(_, word)| word != "step-usual"))
}

/// What was taken for granted: every thing, and no other.
fn assumptions(h: &mut Heard) -> Agrees {
    let told: Vec<&Said> =
        all(h.arg("parts")?).into_iter().filter(|said| said.id.starts_with("assumed-")).collect();
    let known = list(&h.problem()["assumed"]);
    holds(told.len() == known.len())?;
    for (said, one) in told.into_iter().zip(known) {
        let (field, value) = (text(&one["field"]), text(&one["value"]));
        let figure = value.split(['\u{a0}', ' ']).next().unwrap_or_default();
        h.of(said, |h| match said.id {
            "assumed-instrument" => h.instrument(),
            "assumed-size" => {
                let words = h.arg("size")?;
                let inches = sole(words)
                    .and_then(|said| said.place("number"))
                    .map(|n| flat(n).replace(',', "."));
                same(&inches.unwrap_or_else(|| flat(words)), value.trim_end_matches(" in"))
            }
            "assumed-tuning" => {
                let of = format!("tuning-{}-", text(&h.problem()["instrument"]));
                h.is_key("tuning", &of, &h.problem()["tuning"])
            }
            "assumed-set-up" => h.is_key("set_up", "", &h.problem()["set_up"]),
            "assumed-a4" => h.amount("pitch", real(&h.problem()["a4_hz"])?, "Hz"),
            "assumed-length" => {
                same(&flat(h.arg("number")?), figure)?;
                // The strings say how long they sound; an extension makes the lowest longer.
                match h.strings().first() {
                    Some(string) => h.figure(
                        "number",
                        real(&string["report"]["setting"]["sounding_length_m"])? * 1e3,
                    ),
                    None => Ok(()),
                }
            }
            id => same(id, &format!("assumed-{field}-{value}")),
        })?;
    }
    Ok(())
}

fn fit_before(h: &mut Heard) -> Agrees {
    let days = &h.plan()["fit_before_d"];
    for (place, i) in [("likely", 0), ("safe", 1)] {
        let words = h.arg(place)?;
        h.enough_days(words, real(&days[i])?)?;
    }
    Ok(())
}

/// A portrait: the outside of the string, and how it is made.
fn portrait(h: &mut Heard) -> Agrees {
    let name = h.arg("name")?;
    let at = h.name(name)?;
    h.skip("note");
    let mut reports = vec![h.reports(false)[at]];
    // In a picture of two sets the reader does not see which of them this is: one of both must agree.
    if h.place.within("level") {
        reports.push(h.reports(true)[at]);
    }
    let mut objection = String::new();
    for report in reports {
        let made = &report["construction"];
        let across = number(report, "outer_diameter_m")?.value;
        let agrees = h.amount("across", across, "mm").and_then(|()| {
            let core = h.arg("core")?;
            h.core(core, made)?;
            if h.tail("portrait-") == "plain" {
                return holds(list(&made["windings"]).is_empty());
            }
            let wound = h.arg("wound")?;
            h.windings(wound, made)
        });
        match agrees {
            Ok(()) => return Ok(()),
            Err(e) => objection = e,
        }
    }
    Err(objection)
}
