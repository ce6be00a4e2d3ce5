//! Why a string, how sure a set is and what would change it, and how two strings compare: what must be true.

use serde_json::Value;

use crate::claims::Check;
use crate::heard::{
    Agrees, Heard, Number, decided_by, direction, entry, holds, list, named, number, real, same,
    text,
};
use crate::marks::{Part, Said, all, sole};
use crate::words::{ALIKE, LIKELY, RATHER, UNDECIDED, is_move};

/// What rests on numbers fitted to the simulation, and how well they rank strings to which they were not: over all, and
/// over those of one place. From the model's book, *Answer*.
const FITTED: [(&str, f64, f64); 3] =
    [("response", 0.99, 0.84), ("bow-room", 0.92, 0.85), ("ring", 0.99, 0.99)];

/// The least that is noticed of each property, in per cent (the ground rules: a level 1 dB, a centroid 7.5 %, damping
/// 5 %; the others as the model's book has them).
const LEAST: [(&str, f64); 8] = [
    ("impedance_kg_s", 12.2),
    ("brilliance_hz", 7.5),
    ("lateral_stiffness_n_m", 5.0),
    ("breaking_share", 5.0),
    ("rings_on_s", 5.0),
    ("stretch", 10.0),
    ("speaks_s", 10.0),
    ("peg_cent_deg", 10.0),
];

/// Reasons and costs, and what they rest on.
#[rustfmt::skip]
pub(crate) const OF_REASONS: &[(&str, Check)] = &[
    ("sheet-but", |h| { h.cost = true; Ok(()) }),
    ("attribute-*", |h| { h.wish = h.tail("attribute-"); Ok(()) }),
    ("compared-brightness", |h| {
        // Nobody hears above 20 kHz.
        let heard = h.real("comparison.this")?.min(h.real("comparison.other")?) <= 2e4;
        holds((h.key("heard")? == "yes") == heard)
    }),
    ("compared-bow-room", |h| {
        h.compared("bow-room", "bow_room_db")?;
        let (apart, words) = (h.real("comparison.this")? - h.real("comparison.other")?, h.arg("apart")?);
        h.reads(words, apart.abs())?;
        same(&h.key("by")?, if apart > 0.0 { "more" } else { "less" })
    }),
    ("judged-availability", |h| holds(h.string()?["grade"] == if h.cost { "sometimes" } else { "everyday" })),
    ("judged-buying", |h| h.judged("availability")),
    ("judged-other", |h| { let wish = h.wish_in("attribute")?; h.judged(&wish) }),
    ("weakest-of", |h| {
        let wish = h.wish_in("attribute")?;
        h.weakest(&wish)?;
        let (key, words) = (named(h.arg("property")?)?.key, h.arg("number")?);
        let number = h.number(key)?;
        h.told(words, &number)
    }),
    ("weakest", |h| { let wish = h.wish_in("attribute")?; h.weakest(&wish) }),
    ("computed-*", |h| {
        holds(h.at("reason.judged")? == false)?;
        let chance = h.real("comparison.chance_above")?.max(h.real("comparison.chance_below")?);
        h.on(LIKELY, h.tail("computed-"), chance)
    }),

    // At another depth.
    ("reason-plain", |h| h.plainly(false)),
    ("reason-plain-wanted", |h| h.plainly(true)),
    ("reason-plain-weakest", |h| { let wish = h.wish_in("what")?; h.weakest(&wish) }),
    ("reason-noticed", noticed),
    ("reason-noticed-cents", |h| {
        holds(is_move(text(h.at("comparison.property")?)))?;
        let apart = h.real("comparison.this")?.abs() - h.real("comparison.other")?.abs();
        let (by, least) = (sole(h.arg("by")?).ok_or("by how much?")?, h.arg("least")?);
        h.reads(least, 5.0)?;
        same(by.id, if apart > 0.0 { "reason-cents-more" } else { "reason-cents-less" })?;
        h.reads(by.place("cents").unwrap_or_default(), apart.abs())
    }),
    ("reason-carries", |h| {
        let wish = h.wish_in("what")?;
        same(&wish, text(h.at("reason.attribute")?))?;
        let weight = &entry(&h.string()?["attributes"], "attribute", &wish)?["weight"];
        for (place, value) in [("gain", h.at("reason.gain")?), ("weight", weight)] {
            let words = h.arg(place)?;
            h.reads(words, real(value)?)?;
        }
        Ok(())
    }),
    ("reason-ranks", |h| {
        let wish = text(h.at("reason.attribute")?);
        let (_, all, place) = *FITTED.iter().find(|f| f.0 == wish).ok_or("no fitted number ranks so")?;
        for (name, value) in [("count", 300.0), ("all", all), ("place", place)] {
            let words = h.arg(name)?;
            h.reads(words, value)?;
        }
        Ok(())
    }),
];

impl<'a> Heard<'a> {
    /// The wish that a place names.
    fn wish_in(&mut self, place: &'static str) -> Result<String, String> {
        Ok(self.key(place)?.trim_start_matches("attribute-").to_owned())
    }

    /// A reason that compares, by its word.
    pub(crate) fn compared(&mut self, wish: &str, key: &str) -> Agrees {
        let reason = self.reason(wish)?;
        same(text(&reason["comparison"]["property"]), key)?;
        let words = self.arg("word")?;
        self.word(words, &reason["comparison"], key)?;
        self.better(reason, !self.cost)
    }

    /// Nearer to what is wanted, or further from it.
    pub(crate) fn wanted(&mut self) -> Agrees {
        let said = self.key("wanted")?;
        let reason = self.reason.ok_or("no reason")?;
        self.better(reason, said == "nearer-to-wanted")?;
        holds(said == "nearer-to-wanted" || said == "further-from-wanted")
    }

    /// A judgement: worth more to this string, or as a cost to its rival.
    pub(crate) fn judged(&mut self, wish: &str) -> Agrees {
        same(&self.key("cost")?, if self.cost { "yes" } else { "no" })?;
        let reason = self.reason(wish)?;
        holds(reason["judged"] == true)?;
        self.better(reason, !self.cost)
    }

    pub(crate) fn weakest(&mut self, wish: &str) -> Agrees {
        let reason = self.reason(wish)?;
        holds(reason["judged"] == false && reason["comparison"].is_null())
    }

    /// A reason in plain words: one of the string's comparisons says that word.
    fn plainly(&mut self, is_wanted: bool) -> Agrees {
        let words = self.arg("word")?;
        let said = sole(words).map_or("", |said| said.id);
        let told = |r: &&Value| {
            direction(said, text(&r["comparison"]["property"])).is_ok_and(|more| more.is_some())
        };
        let reason = self.weighed()?.iter().find(told).ok_or("no reason has that word")?;
        self.tell(reason);
        let comparison = &reason["comparison"];
        self.word(words, comparison, text(&comparison["property"]))?;
        let two_sided =
            ["feel", "elasticity", "power", "brightness"].contains(&text(&reason["attribute"]));
        holds((two_sided && !self.cost) == is_wanted)?;
        self.better(reason, !self.cost)
    }
}

/// By how much two strings differ, and what of that is noticed at all.
fn noticed(h: &mut Heard) -> Agrees {
    let c = h.at("comparison")?;
    let ratio = real(&c["this"])? / real(&c["other"])?;
    let least = LEAST.iter().find(|(key, _)| c["property"] == *key).ok_or("nothing to notice")?.1;
    let words = h.arg("least")?;
    h.reads(words, least)?;
    let by = sole(h.arg("by")?).ok_or("by how much?")?;
    let (more, place, value) = match by.id {
        "reason-more" => (true, "percent", (ratio - 1.0) * 100.0),
        "reason-less" => (false, "percent", (1.0 - ratio) * 100.0),
        "reason-times" => (true, "times", ratio),
        "reason-times-other" => (false, "times", 1.0 / ratio),
        other => return Err(format!("{other} says nothing of that")),
    };
    holds((ratio > 1.0) == more)?;
    h.reads(by.place(place).unwrap_or_default(), value)
}

/// How sure a set is, and what would change it.
#[rustfmt::skip]
pub(crate) const OF_SURE: &[(&str, Check)] = &[
    ("sure-equal", |h| holds(h.real("sure.next.share.share")? >= h.real("sure.chosen.share")?)),
    ("sure-string", |h| {
        for (place, share) in [("word", "certain.family.share"), ("gauge_word", "certain.gauge_class.share")] {
            let said = h.key(place)?;
            h.on(&LIKELY[..3], said.trim_start_matches("sure-word-"), h.real(share)?.max(0.35))?;
        }
        Ok(())
    }),
    ("sure-string-share", |h| {
        let others = list(h.at("certain.families")?).iter().skip(1);
        holds(others.into_iter().all(|f| real(&f["share"]).is_ok_and(|s| s < 0.005)))
    }),
    ("sure-string-other", |h| {
        let own = text(h.at("report.family")?);
        let other = list(h.at("certain.families")?).iter().find(|f| text(&f["key"]) != own).ok_or("no other kind")?;
        same(&h.key("other")?, &format!("family-{}", text(&other["key"])))?;
        let words = h.arg("other_share")?;
        h.reads(words, real(&other["share"])? * 100.0)
    }),
    ("turn-then", turn),
    ("turn-steps", |h| {
        let by = h.real("point.turns_at")? - h.real("point.from")?;
        holds((by > 0.0) == h.key("more")?.ends_with("-high.more"))?;
        // A step is half a point of the scale; at its end there may be less than one left.
        let steps = (by.abs() / 0.5).round().max(1.0);
        match h.said.and_then(|said| said.choice("steps")) {
            Some("one") => { h.skip("steps"); holds(steps < 1.5) }
            _ => { let words = h.arg("steps")?; h.reads(words, steps) }
        }
    }),
    ("turn-weight-up", |h| { h.skip("weight"); holds(h.real("point.turns_at")? > h.real("point.from")?) }),
    ("turn-weight-down", |h| { h.skip("weight"); holds(h.real("point.turns_at")? < h.real("point.from")?) }),
    ("turn-answer", |h| {
        choice(h, "from")?;
        choice(h, "to")
    }),
    ("turn-answer-new", |h| { holds(!h.at("point.from")?.is_string())?; choice(h, "to") }),
];

/// What changes, and what the strings would be then.
fn turn(h: &mut Heard) -> Agrees {
    let change = h.arg("change")?;
    let of = |words| sole(words).ok_or("what changes?");
    let said = of(change)?.place("change").map_or_else(|| of(change), of)?;
    let told = |place| said.place(place).and_then(sole).map_or("", |said| said.id);
    let answer = match said.id {
        "turn-steps" => {
            let wish = told("more").trim_end_matches("-high.more").trim_end_matches("-low.more");
            wish.replace("wish-", "wishes.")
        }
        "turn-weight-up" | "turn-weight-down" => told("weight").replace("weight-", "weights."),
        "turn-pitch" => "a4_hz".to_owned(),
        "turn-days" => "concert_days".to_owned(),
        "turn-so" | "turn-not-so" => told("fact").replace("flag-", ""),
        _ => told("name").replace("question-", "").replace(".name", ""),
    };
    let point = entry(&h.sure()["turning_points"], "answer", &answer)?;
    h.point = Some(point);
    h.line(change)?;
    consequence(h, &point["strings"])
}

/// The answer in a place is the one from or at which the set turns.
fn choice(h: &mut Heard, place: &'static str) -> Agrees {
    h.skip("name");
    let key = if place == "to" { "turns_at" } else { "from" };
    let point = h.point.ok_or("what turns?")?;
    same(&h.key(place)?, &format!("choice-{}-{}", text(&point["answer"]), text(&point[key])))
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

/// The numbers that are drawn on the compare page, and by what the pitch is moved while the strings go untuned.
const DRAWN: [&str; 5] = ["tension_n", "stretch", "speaks_s", "brilliance_hz", "settling_d"];
const MOVED_BY: [&str; 2] = ["warmth", "damp"];

/// How the first of two compares in the number under which it is said.
fn under_the_bars(h: &mut Heard) -> Agrees {
    let key = named(&h.place.heading.clone())?.key;
    let words = h.arg("verdict")?;
    h.verdict(words, key)
}

/// Two strings side by side.
#[rustfmt::skip]
pub(crate) const OF_PAIR: &[(&str, Check)] = &[
    ("compare-none", |h| { h.tally.words += 1; h.drawn().iter().try_for_each(|key| h.alike(key)) }),
    ("compare-against", |h| {
        let (one, other) = (h.key("one")?, h.key("other")?);
        let families = ["this", "other"].map(|side| format!("family-{}", text(&h.reply()[side]["family"])));
        let places = ["compare-the-first".to_owned(), "compare-the-second".to_owned()];
        holds([one, other] == if families[0] == families[1] { places } else { families })?;
        let mut told: Vec<&Said> = all(h.arg("apart")?);
        for key in h.drawn() {
            let own = told.iter().position(|said| direction(said.id, &key).is_ok_and(|more| more.is_some()));
            match own {
                Some(i) => { let said = told.remove(i); h.apart(said.id, &key)? }
                None => h.alike(&key)?,
            }
        }
        holds(told.is_empty())
    }),
    ("compare-first", |h| { h.side = "this"; Ok(()) }),
    ("compare-second", |h| { h.side = "other"; Ok(()) }),
    ("compare-verdict", under_the_bars),
    ("compare-both", |h| { let words = h.arg("verdict")?; holds(sole(words).is_some_and(|said| said.id != "compare-apart"))?; under_the_bars(h) }),
];

impl<'a> Heard<'a> {
    /// The numbers that are drawn of the pair.
    fn drawn(&self) -> Vec<String> {
        let untuned = text(&self.reply()["this"]["setting"]["untuned"]);
        let moved = MOVED_BY.iter().map(|by| format!("{untuned}_{by}_cent"));
        DRAWN.iter().map(|key| (*key).to_owned()).chain(moved).collect()
    }

    /// The two numbers of a pair, moves of the pitch by their sizes, and the comparison of their draws.
    fn two(&self, key: &str) -> Result<(Number, Number, Option<&'a Value>), String> {
        let sized = |side: &str| {
            let n = number(&self.reply()[side], key)?;
            Ok::<_, String>(if is_move(key) { n.size() } else { n })
        };
        let drawn = entry(&self.reply()["comparisons"], "property", decided_by(key)).ok();
        Ok((sized("this")?, sized("other")?, drawn))
    }

    /// A word for more or less, of the draws where there are any, else of the ranges.
    fn apart(&mut self, said: &str, key: &str) -> Agrees {
        let (one, other, drawn) = self.two(key)?;
        self.tally.words += 1;
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
        let (one, other, drawn) = self.two(key)?;
        holds(match drawn {
            Some(c) => c["verdict"] != "above" && c["verdict"] != "below",
            None => one.low <= other.high && other.low <= one.high,
        })
    }

    /// How the first of two compares in a property: by paired draws where there are any, else by the ranges.
    pub(crate) fn verdict(&mut self, words: &'a [Part], key: &str) -> Agrees {
        let (one, other, drawn) = self.two(key)?;
        let apart = one.low > other.high || other.low > one.high;
        let equal =
            (one.value - other.value).abs() <= 1e-9 * one.value.abs().max(other.value.abs());
        let told = sole(words).ok_or("how does it compare?")?;
        match told.id {
            "compare-same" => holds(drawn.is_none() && equal),
            "compare-overlap" => holds(drawn.is_none() && !apart && !equal),
            ALIKE | UNDECIDED | RATHER => {
                self.word(words, drawn.ok_or("nothing was drawn")?, decided_by(key))
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
        self.told(words, &n)
    }
}
