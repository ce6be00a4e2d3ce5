//! Why a string, how sure a set is and what would change it, and how two strings compare: what must be true.

use serde_json::Value;

use crate::heard::{
    Agrees, Heard, Number, decided_by, direction, entry, holds, list, named, number, property,
    read, real, same, text,
};
use crate::marks::{Part, Said, all, flat, sole};
use crate::reader::Claim;
use crate::words::LIKELY;

/// What rests on numbers fitted to the simulation, and how well they rank strings to which they were not: over all, and
/// over those of one place. From the model's book, *Answer*.
const FITTED: [(&str, f64, f64); 3] =
    [("response", 0.99, 0.83), ("bow-room", 0.92, 0.85), ("ring", 0.99, 0.99)];

/// The least that is noticed of each property, in per cent (the ground rules: a level 1 dB, a centroid 7.5 %, damping
/// 5 %; the others as the model's book has them).
const LEAST: [(&str, f64); 9] = [
    ("impedance_kg_s", 12.2),
    ("brilliance_hz", 7.5),
    ("lateral_stiffness_n_m", 5.0),
    ("breaking_share", 5.0),
    ("rings_on_s", 5.0),
    ("stretch", 10.0),
    ("speaks_s", 10.0),
    ("peg_cent_deg", 10.0),
    ("settling_d", 30.0),
];

/// Reasons and costs, and what they rest on.
#[rustfmt::skip]
pub(crate) const OF_REASONS: &[Claim] = &[
    ("card-alike", |h| holds(list(&h.string()?["reasons"]).is_empty())),
    ("sheet-but", |h| { h.cost = true; Ok(()) }),
    ("attribute-*", |h| { h.wish = h.tail("attribute-"); Ok(()) }),
    ("compared-elasticity", |h| h.compares("elasticity", "stretch", "%")),
    ("compared-settling", |h| h.compares("settling", "settling_d", "{unit-days}")),
    ("compared-drift", |h| h.compares("drift", "drift_cent", "{cents}")),
    ("compared-response", |h| h.compares("response", "speaks_s", "s")),
    ("compared-ring", |h| h.compares("ring", "rings_on_s", "s")),
    ("compared-tuning", |h| h.compares("tuning", "peg_cent_deg", "{cents}")),
    ("compared-durability", |h| h.compares("durability", "breaking_share", "%")),
    ("compared-feel", |h| { h.compares("feel", "lateral_stiffness_n_m", "N/mm")?; h.wanted() }),
    ("compared-power", |h| { h.compares("power", "impedance_kg_s", "g/s")?; h.wanted() }),
    ("compared-brightness", |h| {
        h.compares("brightness", "brilliance_hz", "kHz")?;
        let comparison = &h.reason.ok_or("no reason")?["comparison"];
        // Nobody hears above 20 kHz.
        let heard = real(&comparison["this"])?.min(real(&comparison["other"])?) <= 2e4;
        holds((h.key("heard")? == "yes") == heard)?;
        h.wanted()
    }),
    ("compared-bow-room", |h| {
        let comparison = &h.compared("bow-room", "bow_room_db")?["comparison"];
        let apart = real(&comparison["this"])? - real(&comparison["other"])?;
        h.figure("apart", apart.abs())?;
        same(&h.key("by")?, if apart > 0.0 { "more" } else { "less" })
    }),
    ("judged-availability", |h| {
        let cost = h.judged("availability")?;
        holds(h.string()?["grade"] == if cost { "sometimes" } else { "everyday" })
    }),
    ("judged-price", |h| h.judged("price").map(drop)),
    ("judged-fitters", |h| {
        h.judged("fitters-judgement")?;
        let reason = h.reason.ok_or("no reason")?;
        h.figure("own", real(&reason["worth"])? * 100.0)?;
        h.figure("other", real(&reason["rival_worth"])? * 100.0)
    }),
    ("judged-fitters-alone", |h| {
        let worth = real(&h.reason("fitters-judgement")?["worth"])?;
        h.figure("own", worth * 100.0)
    }),
    ("judged-other", |h| {
        let key = h.key("attribute")?;
        h.judged(key.trim_start_matches("attribute-")).map(drop)
    }),
    ("weakest-durability", |h| { h.weakest("durability")?; h.says("number", "breaking_share") }),
    ("weakest-elasticity", |h| { h.weakest("elasticity")?; h.says("number", "stretch") }),
    ("weakest-of", |h| {
        let key = h.key("attribute")?;
        h.weakest(key.trim_start_matches("attribute-"))?;
        let name = h.arg("property")?;
        h.says("number", named(name)?.key)
    }),
    ("weakest", |h| { let key = h.key("attribute")?; h.weakest(key.trim_start_matches("attribute-")) }),
    ("judgement", |h| holds(h.reason.ok_or("what is a judgement?")?["judged"] == true)),
    ("computed", |h| {
        let reason = h.reason.ok_or("what is computed?")?;
        holds(reason["judged"] == false && reason["comparison"].is_null())
    }),
    ("computed-*", |h| {
        let reason = h.reason.ok_or("what is computed?")?;
        holds(reason["judged"] == false)?;
        let c = &reason["comparison"];
        h.on(LIKELY, h.tail("computed-"), real(&c["chance_above"])?.max(real(&c["chance_below"])?))
    }),

    // At another depth.
    ("reason-plain", |h| h.plainly(None)),
    ("reason-plain-wanted", |h| h.plainly(Some(true))),
    ("reason-plain-unwanted", |h| h.plainly(Some(false))),
    ("reason-plain-fitters", |h| {
        let cost = h.key("side")? == "against";
        let reason = h.reason("fitters-judgement")?;
        h.tally.comparatives += 1;
        holds(cost == h.cost && reason["judged"] == true)?;
        h.better(reason, !cost)
    }),
    ("reason-plain-fitters-alone", |h| {
        h.tally.comparatives += 1;
        let reason = h.reason("fitters-judgement")?;
        holds(real(&reason["worth"])? < real(&reason["rival_worth"])?)
    }),
    ("reason-plain-weakest", |h| { let key = h.key("what")?; h.weakest(key.trim_start_matches("attribute-")) }),
    ("reason-noticed", noticed),
    ("reason-noticed-cents", |h| {
        let c = &h.reason("drift")?["comparison"];
        let apart = real(&c["this"])? - real(&c["other"])?;
        h.figure("least", 5.0)?;
        let by = sole(h.arg("by")?).ok_or("by how much?")?;
        h.tally.comparatives += 1;
        same(by.id, if apart > 0.0 { "reason-cents-more" } else { "reason-cents-less" })?;
        h.of(by, |h| h.figure("cents", apart.abs()))
    }),
    ("reason-carries", |h| {
        let key = h.key("what")?;
        let key = key.trim_start_matches("attribute-");
        h.figure("gain", real(&h.reason.filter(|r| r["attribute"] == key).ok_or("of another reason")?["gain"])?)?;
        h.figure("weight", real(&entry(&h.string()?["attributes"], "attribute", key)?["weight"])?)
    }),
    ("reason-ranks", |h| {
        let key = text(&h.reason.ok_or("no reason")?["attribute"]);
        let (_, all, place) = FITTED.iter().find(|f| f.0 == key).ok_or("no fitted number ranks so")?;
        h.figure("count", 300.0)?;
        h.figure("all", *all)?;
        h.figure("place", *place)
    }),
];

impl<'a> Heard<'a> {
    /// A reason that compares, by its word; its figures are left to the caller.
    fn compared(&mut self, wish: &str, key: &str) -> Result<&'a Value, String> {
        let reason = self.reason(wish)?;
        let comparison = &reason["comparison"];
        same(text(&comparison["property"]), key)?;
        let words = self.arg("word")?;
        self.word(words, comparison, key)?;
        self.better(reason, !self.cost)?;
        Ok(reason)
    }

    /// A reason that compares: its word and its two figures.
    fn compares(&mut self, wish: &str, key: &str, unit: &str) -> Agrees {
        let comparison = &self.compared(wish, key)?["comparison"];
        let factor = property(key).factor;
        self.amount("this", real(&comparison["this"])? * factor, unit)?;
        self.amount("other", real(&comparison["other"])? * factor, unit)
    }

    /// Nearer to what is wanted, or further from it.
    fn wanted(&mut self) -> Agrees {
        self.tally.comparatives += 1;
        let said = self.key("wanted")?;
        let reason = self.reason.ok_or("no reason")?;
        self.better(reason, said == "nearer-to-wanted")?;
        holds(said == "nearer-to-wanted" || said == "further-from-wanted")
    }

    /// A judgement: worth more to this string, or to its rival. Tells whether it is said as a cost.
    fn judged(&mut self, wish: &str) -> Result<bool, String> {
        let cost = self.key("cost")? == "yes";
        let reason = self.reason(wish)?;
        self.tally.comparatives += 1;
        holds(cost == self.cost && reason["judged"] == true)?;
        self.better(reason, !cost)?;
        Ok(cost)
    }

    fn weakest(&mut self, wish: &str) -> Agrees {
        let reason = self.reason(wish)?;
        holds(reason["judged"] == false && reason["comparison"].is_null())
    }

    /// A reason in plain words: one of the string's comparisons says that word.
    fn plainly(&mut self, wanted: Option<bool>) -> Agrees {
        let words = self.arg("word")?;
        let said = sole(words).map_or("", |said| said.id);
        let told = |r: &&Value| {
            direction(said, text(&r["comparison"]["property"])).is_ok_and(|more| more.is_some())
        };
        let reason = self.weighed()?.iter().find(told).ok_or("no reason has that word")?;
        self.tell(reason);
        let comparison = &reason["comparison"];
        self.word(words, comparison, text(&comparison["property"]))?;
        let two_sided = ["feel", "power", "brightness"].contains(&text(&reason["attribute"]));
        holds(two_sided == wanted.is_some())?;
        self.better(reason, wanted.unwrap_or(!self.cost))
    }
}

/// By how much two strings differ, and what of that is noticed at all.
fn noticed(h: &mut Heard) -> Agrees {
    let c = &h.reason.ok_or("no reason")?["comparison"];
    let ratio = real(&c["this"])? / real(&c["other"])?;
    let (_, least) =
        LEAST.iter().find(|(key, _)| c["property"] == *key).ok_or("nothing to notice")?;
    h.figure("least", *least)?;
    let by = sole(h.arg("by")?).ok_or("by how much?")?;
    h.tally.comparatives += 1;
    h.of(by, |h| match by.id {
        "reason-more" => {
            holds(ratio > 1.0)?;
            h.figure("percent", (ratio - 1.0) * 100.0)
        }
        "reason-less" => {
            holds(ratio < 1.0)?;
            h.figure("percent", (1.0 - ratio) * 100.0)
        }
        "reason-times" => {
            holds(ratio > 1.0)?;
            h.figure("times", ratio)
        }
        "reason-times-other" => {
            holds(ratio < 1.0)?;
            h.figure("times", 1.0 / ratio)
        }
        other => Err(format!("{other} says nothing of that")),
    })
}

/// How sure a set is, and what would change it.
#[rustfmt::skip]
pub(crate) const OF_SURE: &[Claim] = &[
    ("sure-very-likely", |h| h.chosen(false, "very-likely")),
    ("sure-likely", |h| h.chosen(false, "likely")),
    ("sure-level-very-likely", |h| h.chosen(true, "very-likely")),
    ("sure-level-likely", |h| h.chosen(true, "likely")),
    ("sure-close-call", |h| { h.tally.words += 1; holds(real(&h.sure()["chosen"]["share"])? < 0.65) }),
    ("sure-equal", |h| {
        h.tally.words += 1;
        let (chosen, next) = (real(&h.sure()["chosen"]["share"])?, &h.sure()["next"]);
        holds(h.set()["close_call"] == false && chosen < 0.65 && real(&next["share"]["share"])? >= chosen)?;
        h.kinds("families", &next["families"])
    }),
    ("sure-leads", |h| holds(h.set()["close_call"] == false && real(&h.sure()["chosen"]["share"])? < 0.65)),
    ("sure-chosen", |h| {
        h.figure("share", hundred(&h.sure()["chosen"]["share"])?)?;
        h.figure("error", hundred(&h.sure()["chosen"]["error"])?)
    }),
    ("sure-second", |h| {
        holds(h.set()["close_call"] == true)?;
        h.figure("share", hundred(&h.sure()["second"]["share"])?)
    }),
    ("sure-next", |h| {
        h.kinds("families", &h.sure()["next"]["families"])?;
        h.figure("share", hundred(&h.sure()["next"]["share"]["share"])?)
    }),
    ("sure-string", |h| {
        let of = h.sure_string()?;
        for (place, what) in [("word", "family"), ("gauge_word", "gauge_class")] {
            let said = h.key(place)?;
            h.on(&LIKELY[..3], said.trim_start_matches("sure-word-"), real(&of[what]["share"])?.max(0.35))?;
        }
        Ok(())
    }),
    ("sure-string-share", |h| {
        let of = h.sure_string()?;
        h.figure("share", hundred(&of["family"]["share"])?)?;
        holds(list(&of["families"]).iter().skip(1).all(|f| real(&f["share"]).is_ok_and(|s| s < 0.005)))?;
        h.figure("gauge_share", hundred(&of["gauge_class"]["share"])?)
    }),
    ("sure-string-other", |h| {
        let of = h.sure_string()?;
        let own = h.key("family")?;
        let other = list(&of["families"]).iter().find(|f| format!("family-{}", text(&f["key"])) != own).ok_or("no other kind")?;
        h.is_key("other", "family-", &other["key"])?;
        h.figure("share", hundred(&of["family"]["share"])?)?;
        h.figure("other_share", hundred(&other["share"])?)?;
        h.figure("gauge_share", hundred(&of["gauge_class"]["share"])?)
    }),
    ("sure-bench-worlds", |h| h.figure("worlds", real(&h.sure()["worlds"])?)),
    ("turn-none", |h| {
        h.figure("tried", real(&h.sure()["tried"])?)?;
        holds(h.sure()["turned"] == 0 && list(&h.sure()["turning_points"]).is_empty())
    }),
    ("turn-unsure", |h| holds(h.sure()["turned"] != 0 && list(&h.sure()["turning_points"]).is_empty())),
    ("turn-then", turn),
];

fn hundred(share: &Value) -> Result<f64, String> {
    real(share).map(|share| share * 100.0)
}

impl<'a> Heard<'a> {
    /// How likely the set is said to be the best.
    fn chosen(&mut self, level: bool, said: &str) -> Agrees {
        holds(self.set()["close_call"] == level)?;
        self.on(LIKELY, said, real(&self.sure()["chosen"]["share"])?)
    }

    /// The families of a list, string by string.
    fn kinds(&mut self, place: &'static str, keys: &Value) -> Agrees {
        let words = self.arg(place)?;
        let told: Vec<&str> =
            all(words).into_iter().filter_map(|said| said.choice("family")).collect();
        let known: Vec<&str> = list(keys).iter().map(text).collect();
        holds(
            told.iter().all(|key| known.contains(key))
                && known.iter().all(|key| told.contains(key)),
        )
    }

    /// How sure the string is that a sentence names, with its family and gauge.
    fn sure_string(&mut self) -> Result<&'a Value, String> {
        let name = self.arg("name")?;
        let i = self.name(name)?;
        let string = &self.strings()[i];
        self.is_key("family", "family-", &string["report"]["family"])?;
        self.is_key("gauge", "gauge-", &string["shopping"]["gauge_class"])?;
        Ok(&self.sure()["strings"][i])
    }
}

/// What changes, and what the strings would be then.
fn turn(h: &mut Heard) -> Agrees {
    let mut change = sole(h.arg("change")?).ok_or("what changes?")?;
    let outer = change;
    if let Some(inner) = change.place("change") {
        change = sole(inner).ok_or("what changes?")?;
    }
    let points = list(&h.sure()["turning_points"]);
    let of = |answer: &str| {
        points.iter().find(|p| p["answer"] == answer).ok_or(format!("{answer} turns nothing"))
    };
    let point = match change.id {
        "turn-steps" => {
            let more = change.place("more").and_then(sole).map_or("", |said| said.id);
            let (wish, up) = match more.strip_suffix("-high.more") {
                Some(wish) => (wish, true),
                None => (more.trim_end_matches("-low.more"), false),
            };
            let point = of(&format!("wishes.{}", wish.trim_start_matches("wish-")))?;
            let by = real(&point["turns_at"])? - real(&point["from"])?;
            h.tally.comparatives += 1;
            holds((by > 0.0) == up)?;
            // A step is half a point of the scale; at its end there may be less than one left.
            let steps = (by.abs() / 0.5).round().max(1.0);
            match change.place("steps") {
                Some(words) => h.reads(words, steps)?,
                None => holds(change.choice("steps") == Some("one") && steps < 1.5)?,
            }
            point
        }
        "turn-weight-up" | "turn-weight-down" => {
            let weight = change.place("weight").and_then(sole).map_or("", |said| said.id);
            let point = of(&weight.replace("weight-", "weights."))?;
            h.tally.comparatives += 1;
            holds(
                (real(&point["turns_at"])? > real(&point["from"])?)
                    == (change.id == "turn-weight-up"),
            )?;
            point
        }
        "turn-pitch" => {
            let point = of("a4_hz")?;
            h.of(change, |h| {
                h.amount("to", real(&point["turns_at"])?, "Hz")?;
                h.amount("from", real(&point["from"])?, "Hz")
            })?;
            point
        }
        "turn-days" => {
            let point = of("concert_days")?;
            h.days(change.place("days").unwrap_or_default(), real(&point["turns_at"])?)?;
            point
        }
        "turn-so" | "turn-not-so" => {
            let fact = change.place("fact").and_then(sole).map_or("", |said| said.id);
            let point = of(fact.trim_start_matches("flag-"))?;
            holds(point["turns_at"] == (change.id == "turn-so"))?;
            point
        }
        "turn-answer" | "turn-answer-new" => {
            let end = |place| change.place(place).and_then(sole).map_or("", |said| said.id);
            let key = end("name").trim_start_matches("question-").trim_end_matches(".name");
            let point = of(key)?;
            let is = |place, value: &Value| end(place) == format!("choice-{key}-{}", text(value));
            holds(
                is("to", &point["turns_at"])
                    && (change.id == "turn-answer-new" || is("from", &point["from"])),
            )?;
            holds((change.id == "turn-answer") == point["from"].is_string())?;
            point
        }
        other => return Err(format!("{other} changes nothing that the reader knows")),
    };
    if outer.id != change.id {
        h.of(outer, |h| {
            h.skip("change");
            h.figure("from", real(&point["from"])?)?;
            h.figure("to", real(&point["turns_at"])?)?;
            match outer.place("holds") {
                Some(_) => h.figure("holds", real(&point["holds_at"])?),
                None => holds(point["holds_at"] == point["from"]),
            }
        })?;
    }
    consequence(h, &point["strings"])
}

/// What the strings would be: each with all that changes in it.
fn consequence(h: &mut Heard, strings: &Value) -> Agrees {
    let mut left = list(strings).len();
    for said in all(h.arg("then")?).into_iter().filter(|said| said.id.starts_with("turn-")) {
        let told = |place| said.place(place).and_then(sole).map_or("", |said| said.id);
        for i in h.names(said.place("names").unwrap_or_default())? {
            let turned =
                list(strings).iter().find(|t| t["string"] == i).ok_or("it stays as it is")?;
            h.tally.words += 1;
            let turns = |key: &str| {
                let then = &turned[format!("{key}_then")];
                if turned[key] == *then { String::new() } else { text(then).to_owned() }
            };
            same(told("family").trim_start_matches("family-"), &turns("family"))?;
            same(
                told("gauge").trim_start_matches("gauge-").trim_end_matches(".listed"),
                &turns("gauge_class"),
            )?;
            left = left.checked_sub(1).ok_or("a string too many")?;
        }
    }
    if left == 0 { Ok(()) } else { Err(format!("{left} more strings would change")) }
}

/// The six numbers that are drawn on the compare page.
const SIX: [&str; 6] =
    ["tension_n", "stretch", "speaks_s", "brilliance_hz", "settling_d", "drift_cent"];

/// Two strings side by side.
#[rustfmt::skip]
pub(crate) const OF_PAIR: &[Claim] = &[
    ("no-difference", |h| { h.tally.words += 1; SIX.into_iter().try_for_each(|key| h.alike(key)) }),
    ("compare-against", |h| {
        let (one, other) = (h.key("one")?, h.key("other")?);
        let families = ["this", "other"].map(|side| format!("family-{}", text(&h.reply()[side]["family"])));
        let places = ["compare-the-first".to_owned(), "compare-the-second".to_owned()];
        holds([one, other] == if families[0] == families[1] { places } else { families })?;
        let mut told: Vec<&Said> = all(h.arg("apart")?);
        for key in SIX {
            let own = told.iter().position(|said| direction(said.id, key).is_ok_and(|more| more.is_some()));
            match own {
                Some(i) => { let said = told.remove(i); h.apart(said.id, key)? }
                None => h.alike(key)?,
            }
        }
        holds(told.is_empty())
    }),
    ("compare-first", |h| { h.side = "this"; Ok(()) }),
    ("compare-second", |h| { h.side = "other"; Ok(()) }),
    ("compare-verdict", |h| {
        let key = named(&h.place.heading.clone())?.key;
        let words = h.arg("verdict")?;
        h.verdict(words, key)
    }),
];

impl<'a> Heard<'a> {
    /// The two numbers of a pair, the comparison of their draws, and whether one of them is unknown and not apart.
    fn two(&self, key: &str) -> Result<(Number, Number, Option<&'a Value>, bool), String> {
        let (one, other) =
            (number(&self.reply()["this"], key)?, number(&self.reply()["other"], key)?);
        let apart = one.low > other.high || other.low > one.high;
        let drawn = entry(&self.reply()["comparisons"], "property", decided_by(key)).ok();
        Ok((one, other, drawn, (one.unknown || other.unknown) && !apart))
    }

    /// A word for more or less, of the draws where there are any, else of the ranges.
    fn apart(&mut self, said: &str, key: &str) -> Agrees {
        let (one, other, drawn, unknown) = self.two(key)?;
        holds(!unknown)?;
        self.tally.comparatives += 1;
        let more = direction(said, key)?;
        match drawn {
            Some(comparison) => {
                let chance = real(
                    &comparison[if more == Some(true) { "chance_above" } else { "chance_below" }],
                )?;
                holds(
                    comparison["verdict"] == if more == Some(true) { "above" } else { "below" }
                        && chance >= 0.8 - 1e-9,
                )?;
                holds((one.value > other.value) == (more == Some(true)))
            }
            None => {
                holds(if more == Some(true) { one.low > other.high } else { one.high < other.low })
            }
        }
    }

    /// No word for more or less may be said of a property.
    fn alike(&mut self, key: &str) -> Agrees {
        let (one, other, drawn, unknown) = self.two(key)?;
        holds(
            unknown
                || match drawn {
                    Some(c) => real(&c["chance_above"])? < 0.8 && real(&c["chance_below"])? < 0.8,
                    None => one.low <= other.high && other.low <= one.high,
                },
        )
    }

    /// How the first of two compares in a property: by paired draws where there are any, else by the ranges.
    pub(crate) fn verdict(&mut self, words: &'a [Part], key: &str) -> Agrees {
        let (one, other, drawn, unknown) = self.two(key)?;
        let apart = one.low > other.high || other.low > one.high;
        let equal =
            (one.value - other.value).abs() <= 1e-9 * one.value.abs().max(other.value.abs());
        let told = sole(words).ok_or("how does it compare?")?;
        match told.id {
            "compare-cannot" => holds(unknown),
            "compare-same" => holds(drawn.is_none() && equal && !unknown),
            "compare-overlap" => holds(drawn.is_none() && !apart && !unknown),
            "no-difference" => {
                holds(drawn.is_some())?;
                self.alike(key)
            }
            "compare-apart" => self.of(told, |h| {
                let c = drawn.ok_or("nothing was drawn")?;
                let likely = h.arg("likely")?;
                h.likely(likely, real(&c["chance_above"])?.max(real(&c["chance_below"])?))?;
                let word = sole(h.arg("word")?).map_or("", |said| said.id);
                h.apart(word, key)
            }),
            word => {
                holds(drawn.is_none())?;
                self.apart(word, key)
            }
        }
    }

    /// A number with its unit behind the name of a side.
    pub(crate) fn of_side(&mut self, words: &[Part]) -> Agrees {
        let n = number(&self.reply()[self.side], named(&self.place.heading.clone())?.key)?;
        self.value(words, &n)
    }
}

/// A point of the balance of elasticity and steadiness, as far as a figure may stand for it.
pub(crate) fn is(words: &[Part], value: f64) -> bool {
    let bare = flat(words);
    let bare = [Part::Text(bare.trim_end_matches('%').trim_end().to_owned())];
    read(&bare).is_ok_and(|figure| figure.is(value))
}
