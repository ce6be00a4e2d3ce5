//! What was said, the reply with which it must agree, and the ways in which it may.

use serde_json::Value;

use crate::figure::{Figure, KILOGRAM_N, POUND_N, THOU_M};
use crate::marks::{Part, Said, all, flat, sole};
use crate::text::Place;
use crate::words::{
    ALIKE, DECIDED_BY, LIKELY, Ladder, PROPERTIES, Property, RATHER, SURE, UNDECIDED, is_move,
};

/// An objection, or none.
pub(crate) type Agrees = Result<(), String>;

/// What was read so far.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct Tally {
    /// Figures compared with the reply.
    pub(crate) figures: usize,
    /// Words compared with it: more or less, likely, what a string is called.
    pub(crate) words: usize,
}

impl Tally {
    pub(crate) fn add(&mut self, other: Self) {
        self.figures += other.figures;
        self.words += other.words;
    }
}

/// A number of a report in the unit in which it is shown.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Number {
    pub(crate) value: f64,
    pub(crate) low: f64,
    pub(crate) high: f64,
    pub(crate) unit: &'static str,
}

impl Number {
    pub(crate) fn half(&self) -> f64 {
        (self.high - self.low) / 2.0
    }

    /// Whether its range is over a factor of three, or on both sides of nought: then no sentence tells it without.
    pub(crate) fn is_wide(&self) -> bool {
        let (one, other) = (self.low.abs(), self.high.abs());
        self.low * self.high < 0.0 || one.max(other) > 3.0 * one.min(other)
    }

    /// Of a move of the pitch its size, whichever way it goes.
    pub(crate) fn size(&self) -> Self {
        let (one, other) = (self.low.abs(), self.high.abs());
        let low = if self.low < 0.0 && self.high > 0.0 { 0.0 } else { one.min(other) };
        Self { value: self.value.abs(), low, high: one.max(other), ..*self }
    }
}

/// A message in its place, and what was said before it.
#[derive(Debug, Default)]
pub(crate) struct Heard<'a> {
    /// The reply.
    pub(crate) reply: Option<&'a Value>,
    /// Where it stands.
    pub(crate) place: Place,
    /// The string it is about, if it is about one of a set.
    pub(crate) at: Option<usize>,
    /// The string that was named last.
    pub(crate) whose: Option<usize>,
    /// The side of a pair that was named last.
    pub(crate) side: &'static str,
    /// The partial that was numbered last.
    pub(crate) partial: Option<&'a Value>,
    /// Of which string the words under its days are read, and how many of them were.
    pub(crate) under_days: (Option<usize>, usize),
    /// It is told as a cost.
    pub(crate) cost: bool,
    /// The reason that was told last.
    pub(crate) reason: Option<&'a Value>,
    /// Every reason and cost that a card told: of which string, whether as a cost, and of which wish.
    pub(crate) told: Vec<(usize, bool, &'a str)>,
    /// The complaint and the cause that were told last.
    pub(crate) finding: Option<&'a Value>,
    pub(crate) cause: Option<&'a Value>,
    /// What the picture that was told last has against stretch.
    pub(crate) aspect: &'static str,
    /// The other kind of set that is told, and every one that was.
    pub(crate) kind: Option<&'a Value>,
    pub(crate) kinds_told: Vec<&'a str>,
    /// The answer of which it is told what it turns.
    pub(crate) point: Option<&'a Value>,
    /// The wish that was named last.
    pub(crate) wish: &'a str,
    /// The second set is told, and not the chosen one.
    pub(crate) second: bool,
    /// The report that is told, where it is not that of the string.
    pub(crate) made: Option<&'a Value>,
    /// The message, and as the words that it is.
    pub(crate) said: Option<&'a Said>,
    pub(crate) words: &'a [Part],
    /// Its places and choices that have been read.
    pub(crate) read: Vec<&'static str>,
    pub(crate) tally: Tally,
}

/// What a text that has no value is compared with.
static NOTHING: Value = Value::Null;

pub(crate) fn holds(fits: bool) -> Agrees {
    if fits { Ok(()) } else { Err("it is not so in the reply".to_owned()) }
}

/// Whether what is said is what the reply has.
pub(crate) fn same(said: &str, known: &str) -> Agrees {
    if said == known { Ok(()) } else { Err(format!("“{said}” is not “{known}”")) }
}

/// Whether a work is cited by what its key has: the same names and year in the same order.
pub(crate) fn cites(said: &str, key: &str) -> Agrees {
    let bare = |text: &str| text.to_lowercase().replace(|c: char| !c.is_alphanumeric(), "");
    if bare(said) == bare(key) { Ok(()) } else { Err(format!("“{said}” does not cite {key}")) }
}

pub(crate) fn property(key: &str) -> &'static Property {
    let known = PROPERTIES.iter().find(|p| p.key == key);
    known.unwrap_or_else(|| panic!("the reader does not know {key}"))
}

/// The property of which words are the name.
pub(crate) fn named(words: &[Part]) -> Result<&'static Property, String> {
    let key = sole(words).and_then(|said| said.id.strip_prefix("property-"));
    let known = key.and_then(|key| PROPERTIES.iter().find(|p| p.key == key));
    known.ok_or_else(|| format!("{} is no property", flat(words)))
}

pub(crate) fn number(report: &Value, key: &str) -> Result<Number, String> {
    let q = &report["numbers"][key];
    let Property { factor, unit, .. } = property(key);
    let at =
        |end: &str| q[end].as_f64().map(|x| x * factor).ok_or(format!("the reply has no {key}"));
    Ok(Number { value: at("value")?, low: at("low")?, high: at("high")?, unit })
}

pub(crate) fn real(value: &Value) -> Result<f64, String> {
    value.as_f64().ok_or_else(|| format!("{value} is no number"))
}

pub(crate) fn text(value: &Value) -> &str {
    value.as_str().unwrap_or_default()
}

pub(crate) fn list(value: &Value) -> &[Value] {
    value.as_array().map_or(&[], Vec::as_slice)
}

/// The entry of a list that has this key.
pub(crate) fn entry<'a>(of: &'a Value, name: &str, key: &str) -> Result<&'a Value, String> {
    let found = list(of).iter().find(|one| one[name] == key);
    found.ok_or_else(|| format!("the reply has no {key}"))
}

/// A figure, or what is wrong with it.
pub(crate) fn read(words: &[Part]) -> Result<Figure, String> {
    let printed = flat(words);
    Figure::read(&printed).ok_or_else(|| format!("“{printed}” is no figure"))
}

/// Whether words are a figure for this value, perhaps in per cent.
pub(crate) fn is(words: &[Part], value: f64) -> bool {
    let said = flat(words);
    Figure::read(said.trim_end_matches('%').trim_end()).is_some_and(|figure| figure.is(value))
}

/// Words without the unit that must stand behind them.
fn unit_off(said: &str, unit: &str) -> Result<Vec<Part>, String> {
    // One of them is said as one.
    if [("{days-safe}", "{unit-days}"), ("{cents-one}", "{cents}")].contains(&(said, unit)) {
        return Ok(vec![Part::Text("1".to_owned())]);
    }
    let bare = if unit.is_empty() { Some(said) } else { said.strip_suffix(unit) };
    let bare = bare.ok_or_else(|| format!("“{said}” is not in {unit}"))?;
    Ok(vec![Part::Text(bare.trim_end().to_owned())])
}

/// The word of a ladder for a number.
pub(crate) fn rung(ladder: Ladder, number: f64) -> &'static str {
    let found = ladder.iter().find(|(from, _)| number >= *from);
    found.map_or(ladder[ladder.len() - 1].1, |(_, word)| word)
}

impl<'a> Heard<'a> {
    pub(crate) fn reply(&self) -> &'a Value {
        self.reply.unwrap_or(&NOTHING)
    }

    pub(crate) fn set(&self) -> &'a Value {
        &self.reply()["set"]
    }

    pub(crate) fn problem(&self) -> &'a Value {
        &self.reply()["problem"]
    }

    pub(crate) fn plan(&self) -> &'a Value {
        &self.set()["plan"]
    }

    pub(crate) fn sure(&self) -> &'a Value {
        &self.reply()["certainty"]
    }

    pub(crate) fn strings(&self) -> &'a [Value] {
        list(&self.set()["strings"])
    }

    /// The string that is told: that of the part of the page, else the one that was named last.
    pub(crate) fn own(&self) -> Result<usize, String> {
        self.at.or(self.whose).ok_or_else(|| "of which string?".to_owned())
    }

    pub(crate) fn string(&self) -> Result<&'a Value, String> {
        self.strings().get(self.own()?).ok_or_else(|| "of which string?".to_owned())
    }

    pub(crate) fn report(&self) -> Result<&'a Value, String> {
        match self.made {
            Some(report) => Ok(report),
            None if self.second => Ok(self.reports(true)[self.own()?]),
            None => Ok(&self.string()?["report"]),
        }
    }

    /// What to ask for in a shop.
    pub(crate) fn shopping(&self) -> Result<&'a Value, String> {
        match self.second {
            true => Ok(&self.set()["runner_up"]["shopping"][self.own()?]),
            false => Ok(&self.string()?["shopping"]),
        }
    }

    pub(crate) fn number(&self, key: &str) -> Result<Number, String> {
        number(self.report()?, key)
    }

    /// The reports of the chosen strings, or those of the second set: where it has none of its own, the chosen ones.
    pub(crate) fn reports(&self, second: bool) -> Vec<&'a Value> {
        let own = list(&self.set()["runner_up"]["strings"]);
        let report = |(i, string): (usize, &'a Value)| match own.get(i) {
            Some(other) if second && !other.is_null() => other,
            _ => &string["report"],
        };
        self.strings().iter().enumerate().map(report).collect()
    }

    /// The end of the message's name after what it shares with others.
    pub(crate) fn tail(&self, of: &str) -> &'a str {
        self.said.map_or("", |said| said.id.strip_prefix(of).unwrap_or(said.id))
    }

    /// Takes a place or a choice of the message for read.
    pub(crate) fn skip(&mut self, name: &'static str) {
        self.read.push(name);
    }

    /// Checks a message by itself; what the check does not read of it must agree by itself.
    pub(crate) fn of(&mut self, told: &'a Said, check: impl FnOnce(&mut Self) -> Agrees) -> Agrees {
        let outer = (self.said.replace(told), std::mem::take(&mut self.read));
        let agrees = check(self).and_then(|()| {
            told.parts.iter().try_for_each(|part| match part {
                Part::Place(name, _) | Part::Choice(name, _) if self.read.contains(name) => Ok(()),
                Part::Choice(by, _) => {
                    Err(format!("nobody reads by what {} chooses: {by}", told.id))
                }
                Part::Place(_, inside) => self.line(inside),
                _ => Ok(()),
            })
        });
        (self.said, self.read) = outer;
        agrees
    }

    /// What stands in a place of the message, or in the one that it has of two.
    pub(crate) fn arg(&mut self, name: &'static str) -> Result<&'a [Part], String> {
        let said = self.said.ok_or("nothing was said")?;
        let found = name.split('|').find_map(|name| Some((name, said.place(name)?)));
        let (name, words) = found.ok_or_else(|| format!("{} does not say its {name}", said.id))?;
        self.skip(name);
        Ok(words)
    }

    /// The key by which the message chose its words, or that of the message in a place.
    pub(crate) fn key(&mut self, name: &'static str) -> Result<String, String> {
        let chosen = |name| Some((name, self.said?.choice(name)?));
        if let Some((name, key)) = name.split('|').find_map(chosen) {
            self.skip(name);
            return Ok(key.to_owned());
        }
        let words = self.arg(name)?;
        Ok(sole(words).map_or_else(|| flat(words), |said| said.id.to_owned()))
    }

    /// A figure is this value rounded to its digits.
    pub(crate) fn reads(&mut self, words: &[Part], value: f64) -> Agrees {
        self.tally.figures += 1;
        if read(words)?.is(value) { Ok(()) } else { Err(format!("{} is not {value}", flat(words))) }
    }

    /// The figure in words, with its unit, is this value rounded to its digits.
    pub(crate) fn in_unit(&mut self, words: &[Part], value: f64, unit: &str) -> Agrees {
        self.reads(&unit_off(&flat(words), unit)?, value)
    }

    /// A range, or one figure where its ends are printed alike, is this one; half of it decides its digits.
    pub(crate) fn range(
        &mut self,
        words: &[Part],
        unit: &str,
        low: f64,
        high: f64,
        half: f64,
    ) -> Agrees {
        let bare = unit_off(&flat(words), unit)?;
        let ends = match all(words).first() {
            Some(said) if flat(&bare) == "{range-of}" => (said.place("low"), said.place("high")),
            _ => (Some(&bare[..]), Some(&bare[..])),
        };
        let (Some(a), Some(b)) = ends else { return Err("a range without its ends".to_owned()) };
        let (a, b) = (read(a)?, read(b)?);
        self.tally.figures += 2;
        let nought = low > 1e-9 && a.printed() < 1e-9;
        if !nought && a.is_of(low, half) && b.is_of(high, half) {
            Ok(())
        } else {
            Err(format!("{a:?} to {b:?} is not {low} to {high}"))
        }
    }

    /// A force in newtons, kilograms and pounds, or a range of them.
    pub(crate) fn force(&mut self, words: &[Part], low: f64, high: f64) -> Agrees {
        let said = sole(words).filter(|said| said.id == "force").ok_or("is it a force?")?;
        let units =
            [("own", "N", 1.0), ("one", "{unit-kg}", KILOGRAM_N), ("other", "{unit-lb}", POUND_N)];
        for (name, unit, newtons) in units {
            let words = said.place(name).ok_or("a force in three units")?;
            self.range(words, unit, low / newtons, high / newtons, 0.0)?;
        }
        Ok(())
    }

    /// A length in millimetres and in thousandths of an inch.
    pub(crate) fn gauge(&mut self, words: &[Part], metres: f64) -> Agrees {
        let said = sole(words).filter(|said| said.id == "gauge-mm").ok_or("is it a gauge?")?;
        self.in_unit(said.place("mm").unwrap_or_default(), metres * 1e3, "mm")?;
        self.inch(said.place("inch").unwrap_or_default(), metres)
    }

    pub(crate) fn inch(&mut self, words: &[Part], metres: f64) -> Agrees {
        self.in_unit(words, metres / THOU_M, "{unit-thousandths}")
    }

    /// A number in a sentence: what the pitch does, where it is a move of it; a wide range stands with its value.
    pub(crate) fn told(&mut self, words: &[Part], n: &Number) -> Agrees {
        match sole(words).map_or("", |said| said.id) {
            "value-about" => holds(n.is_wide())?,
            "moves-falls" | "moves-rises" | "moves-hardly" | "moves-hardly-within" => {
                return self.moves(words, n);
            }
            "value-within" => {}
            _ if n.is_wide() => {
                return Err(format!("{}: its range is wide, and is not said", flat(words)));
            }
            _ => {}
        }
        self.value(words, n)
    }

    /// What the pitch does: falls or rises by so much, or hardly moves, which is less than a cent.
    pub(crate) fn moves(&mut self, words: &[Part], n: &Number) -> Agrees {
        let said = sole(words).ok_or("how does it move?")?;
        self.tally.words += 1;
        let either_way = n.low < 0.0 && n.high > 0.0;
        match said.id {
            "moves-hardly" => holds(n.value.abs() < 1.0 && n.size().high <= 1.0),
            "moves-hardly-within" => {
                holds(n.value.abs() < 1.0 && n.size().high > 1.0)?;
                self.range(said.place("range").unwrap_or_default(), n.unit, n.low, n.high, n.half())
            }
            id => {
                let way = if n.value < 0.0 { "moves-falls" } else { "moves-rises" };
                same(id, way)?;
                holds(n.value.abs() >= 1.0)?;
                let size = n.size();
                // A range on both sides of nought keeps its signs.
                let ends = if either_way { (n.low, n.high) } else { (size.low, size.high) };
                let number = Number { value: size.value, low: ends.0, high: ends.1, unit: n.unit };
                self.told(said.place("cents").unwrap_or_default(), &number)
            }
        }
    }

    /// A value with its unit; then perhaps its range.
    pub(crate) fn value(&mut self, words: &[Part], n: &Number) -> Agrees {
        let told = sole(words);
        match told.map(|said| (said.id, said)) {
            Some(("value-within" | "value-about", said)) => {
                self.value(said.place("value").unwrap_or_default(), n)?;
                let range = said.place("range").unwrap_or_default();
                let unit = if flat(range).ends_with(n.unit) { n.unit } else { "" };
                self.range(range, unit, n.low, n.high, n.half())
            }
            _ => {
                self.tally.figures += 1;
                let bare = unit_off(&flat(words), n.unit)?;
                let fits = read(&bare)?.is_of(n.value, n.half());
                if fits { Ok(()) } else { Err(format!("{} is not {}", flat(&bare), n.value)) }
            }
        }
    }

    /// Days as one says them.
    pub(crate) fn days(&mut self, words: &[Part], days: f64) -> Agrees {
        match flat(words).as_str() {
            "{days-less}" => holds(days < 0.75),
            "{days-one}" => holds((0.75..1.5).contains(&days)),
            _ if days < 1.5 => Err(format!("{} is not {days} days", flat(words))),
            _ => self.in_unit(words, days, "{unit-days}"),
        }
    }

    /// A size in cents as one says it.
    pub(crate) fn cents(&mut self, words: &[Part], cents: f64) -> Agrees {
        match flat(words).as_str() {
            "{cents-less}" => holds(cents < 1.0),
            _ if cents < 1.0 => Err(format!("{} is not {cents} cents", flat(words))),
            _ => self.in_unit(words, cents, "{cents}"),
        }
    }

    /// Whole days that are enough: rounded up, and at least one.
    pub(crate) fn enough_days(&mut self, words: &[Part], days: f64) -> Agrees {
        let said = flat(words);
        let printed = read(&unit_off(&said, "{unit-days}")?)?.printed();
        self.tally.figures += 1;
        let fits = printed >= days - 1e-9 && (printed < days + 1.0 || printed <= 1.0);
        if fits {
            Ok(())
        } else {
            Err(format!("{said} is not enough, or too much, for {days} days"))
        }
    }

    /// A word of a ladder is that for this number.
    pub(crate) fn on(&mut self, ladder: Ladder, said: &str, number: f64) -> Agrees {
        self.tally.words += 1;
        // A number on the very edge may be on either side of it after one more multiplication.
        let near = 1e-9 * number.abs().max(1.0);
        if [number, number - near, number + near].iter().any(|n| rung(ladder, *n) == said) {
            Ok(())
        } else {
            Err(format!("“{said}” is said of {number}, which is “{}”", rung(ladder, number)))
        }
    }

    /// The word in a place is that of a chance.
    pub(crate) fn likely(&mut self, words: &[Part], chance: f64) -> Agrees {
        let said = sole(words).map_or("", |said| said.id);
        self.on(LIKELY, said, chance)
    }

    /// The property that warmth or damp moves in the time that the string goes untuned.
    pub(crate) fn met(&self, by: &str) -> Result<&'static str, String> {
        let untuned = text(&self.report()?["setting"]["untuned"]);
        Ok(property(&format!("{untuned}_{by}_cent")).key)
    }

    /// A word tells how the first of two compares: more, less, alike, or not to be told.
    pub(crate) fn word(&mut self, words: &[Part], comparison: &Value, key: &str) -> Agrees {
        self.tally.words += 1;
        let said = sole(words);
        let rather = said.filter(|said| said.id == RATHER);
        let said = rather.and_then(|said| sole(said.place("word")?)).or(said);
        let said = said.map_or("", |said| said.id);
        let size = |x: f64| if is_move(key) { x.abs() } else { x };
        let (this, other) = (size(real(&comparison["this"])?), size(real(&comparison["other"])?));
        let (above, below) =
            (real(&comparison["chance_above"])?, real(&comparison["chance_below"])?);
        let (verdict, sure) = (text(&comparison["verdict"]), SURE - 1e-9);
        let alike = 1.0 - above - below;
        let at_all = real(&comparison["chance_at_all"])?;
        let noticed = above.max(below).max(alike) >= SURE;
        let fits = match direction(said, key)? {
            Some(more) if rather.is_some() => {
                let chance = if more { at_all } else { 1.0 - at_all };
                let is = if more { "rather-above" } else { "rather-below" };
                verdict == is && (this > other) == more && chance >= sure && !noticed
            }
            Some(true) => verdict == "above" && this > other && above >= sure,
            Some(false) => verdict == "below" && this < other && below >= sure,
            None if said == ALIKE => verdict == ALIKE && alike >= sure,
            None => {
                let decided = if this > other { at_all } else { 1.0 - at_all } >= SURE;
                verdict == UNDECIDED && !noticed && !decided
            }
        };
        if fits { Ok(()) } else { Err(format!("“{said}”, but the reply says {comparison}")) }
    }

    /// The reasons or costs of the string.
    pub(crate) fn weighed(&self) -> Result<&'a [Value], String> {
        Ok(list(&self.string()?[if self.cost { "costs" } else { "reasons" }]))
    }

    /// The one of them that is about a wish. What it is said to rest on follows it.
    pub(crate) fn reason(&mut self, wish: &str) -> Result<&'a Value, String> {
        let reason = self.weighed()?.iter().find(|r| r["attribute"] == wish);
        let reason = reason.ok_or_else(|| format!("the reply weighs no {wish} here"))?;
        self.tell(reason);
        Ok(reason)
    }

    /// A reason is told: what follows is about it.
    pub(crate) fn tell(&mut self, reason: &'a Value) {
        self.reason = Some(reason);
        if let Some(at) = self.at.filter(|_| self.place.within("case")) {
            let told = (at, self.cost, text(&reason["attribute"]));
            if !self.told.contains(&told) {
                self.told.push(told);
            }
        }
    }

    /// Worth more to this string, or to its rival.
    pub(crate) fn better(&self, reason: &Value, better: bool) -> Agrees {
        let (worth, rival) = (real(&reason["worth"])?, real(&reason["rival_worth"])?);
        let fits = (worth > rival) == better && (worth < rival) != better;
        if fits { Ok(()) } else { Err(format!("worth {worth} against {rival}")) }
    }
}

/// Whether a message is the word for more of a property; none if it says that two are alike, or that it can't be told.
pub(crate) fn direction(said: &str, key: &str) -> Result<Option<bool>, String> {
    if said == ALIKE || said == UNDECIDED {
        return Ok(None);
    }
    match said.strip_prefix("property-").and_then(|said| said.strip_prefix(key)) {
        Some(".more") => Ok(Some(true)),
        Some(".less") => Ok(Some(false)),
        _ => Err(format!("{said} is no word for {key}")),
    }
}

/// The property whose comparison decides how another is called.
pub(crate) fn decided_by(key: &str) -> &str {
    DECIDED_BY.iter().find(|(k, _)| *k == key).map_or(key, |(_, by)| by)
}
