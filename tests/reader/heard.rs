//! A phrase that was heard, the reply that it must agree with, and the ways in which it may.

use serde_json::Value;

use crate::figure::{Figure, KILOGRAM_N, POUND_N, THOU_M};
use crate::text::Place;
use crate::vocabulary::{
    ALIKE, DECIDED_BY, FAMILIES, LIKELY, Ladder, MATERIALS, PROPERTIES, Property, SURE, WISHES,
};

/// An objection, or none.
pub(crate) type Agrees = Result<(), String>;

/// What was read so far.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct Tally {
    /// Figures compared with the reply.
    pub(crate) figures: usize,
    /// Comparative words compared with it.
    pub(crate) comparatives: usize,
    /// Other words on a scale: likely, much steeper, in the middle of what is usual.
    pub(crate) words: usize,
    /// Sentences that say the same to everybody.
    pub(crate) fixed: usize,
}

impl Tally {
    pub(crate) fn add(&mut self, other: Self) {
        self.figures += other.figures;
        self.comparatives += other.comparatives;
        self.words += other.words;
        self.fixed += other.fixed;
    }
}

/// A number of a report in the unit in which it is shown.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Number {
    pub(crate) value: f64,
    pub(crate) low: f64,
    pub(crate) high: f64,
    pub(crate) unknown: bool,
    pub(crate) unit: &'static str,
}

impl Number {
    pub(crate) fn half(&self) -> f64 {
        (self.high - self.low) / 2.0
    }
}

/// A phrase in its place.
pub(crate) struct Heard<'a> {
    /// The reply.
    pub(crate) reply: &'a Value,
    /// Where it stands.
    pub(crate) place: &'a Place,
    /// The string it is about, if it is about one of a set.
    pub(crate) string: Option<&'a Value>,
    /// What that string is called.
    pub(crate) name: String,
    /// The line before it.
    pub(crate) before: &'a str,
    /// What stood in the holes of the phrase.
    pub(crate) holes: Vec<String>,
    /// It is told as a cost.
    pub(crate) cost: bool,
    /// What it is said to rest on.
    pub(crate) rests: Option<&'static str>,
    pub(crate) tally: &'a mut Tally,
}

pub(crate) fn property(key: &str) -> &'static Property {
    PROPERTIES
        .iter()
        .find(|p| p.key == key)
        .unwrap_or_else(|| panic!("the reader does not know {key}"))
}

pub(crate) fn named(name: &str) -> Option<&'static Property> {
    PROPERTIES.iter().find(|p| p.name == name)
}

/// What a key is called in one of the tables; the key itself where it is its own name.
pub(crate) fn called<'a>(table: &[(&'a str, &'a str)], key: &'a str) -> &'a str {
    table.iter().find(|(k, _)| *k == key).map_or(key, |(_, name)| name)
}

pub(crate) fn family(key: &str) -> &str {
    called(&FAMILIES, key)
}

pub(crate) fn material(key: &str) -> &str {
    called(&MATERIALS, key)
}

pub(crate) fn wish(key: &str) -> &str {
    called(&WISHES, key)
}

pub(crate) fn number(report: &Value, key: &str) -> Result<Number, String> {
    let q = &report["numbers"][key];
    let Property { factor, unit, .. } = property(key);
    let at =
        |end: &str| q[end].as_f64().map(|x| x * factor).ok_or(format!("the reply has no {key}"));
    Ok(Number {
        value: at("value")?,
        low: at("low")?,
        high: at("high")?,
        unknown: q["unknown"] == true,
        unit,
    })
}

pub(crate) fn real(value: &Value) -> Result<f64, String> {
    value.as_f64().ok_or_else(|| format!("{value} is no number"))
}

pub(crate) fn text(value: &Value) -> &str {
    value.as_str().unwrap_or_default()
}

/// Whether a whole number of the reply is printed so.
pub(crate) fn counts(value: &Value, printed: &str) -> bool {
    value.as_u64().is_some_and(|n| printed.parse() == Ok(n))
}

pub(crate) fn list(value: &Value) -> &[Value] {
    value.as_array().map_or(&[], Vec::as_slice)
}

/// The word of a ladder for a number.
pub(crate) fn rung(ladder: Ladder, number: f64) -> &'static str {
    ladder
        .iter()
        .find(|(from, _)| number >= *from)
        .map_or(ladder[ladder.len() - 1].1, |(_, word)| word)
}

/// The strings of a set by their letters: where two share one, the higher and the lower.
pub(crate) fn names(set: &Value) -> Vec<String> {
    let letters: Vec<String> = list(&set["strings"])
        .iter()
        .map(|s| {
            let note = text(&s["note"]);
            let end = note.find(|c: char| c == '-' || c.is_ascii_digit()).unwrap_or(note.len());
            note[..end].replace('#', "♯").replace('b', "♭")
        })
        .collect();
    (0..letters.len())
        .map(|i| {
            let above = letters[..i].contains(&letters[i]);
            let below = letters[i + 1..].contains(&letters[i]);
            let which =
                ["", "high ", "low ", "middle "][usize::from(below) + 2 * usize::from(above)];
            format!("{which}{}", letters[i])
        })
        .collect()
}

pub(crate) fn capital(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map(|c| c.to_uppercase().chain(letters).collect()).unwrap_or_default()
}

pub(crate) fn small(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map(|c| c.to_lowercase().chain(letters).collect()).unwrap_or_default()
}

impl<'a> Heard<'a> {
    pub(crate) fn set(&self) -> &'a Value {
        &self.reply["set"]
    }

    pub(crate) fn problem(&self) -> &'a Value {
        &self.reply["problem"]
    }

    pub(crate) fn of_string(&self) -> Result<&'a Value, String> {
        self.string.ok_or_else(|| "of which string?".to_owned())
    }

    pub(crate) fn report(&self) -> Result<&'a Value, String> {
        Ok(&self.of_string()?["report"])
    }

    pub(crate) fn number(&self, key: &str) -> Result<Number, String> {
        number(self.report()?, key)
    }

    pub(crate) fn hole(&self, i: usize) -> &str {
        &self.holes[i]
    }

    pub(crate) fn figure(&self, i: usize) -> Result<Figure, String> {
        read(self.hole(i))
    }

    /// The figure in a hole is this value rounded to its digits.
    pub(crate) fn is(&mut self, i: usize, value: f64) -> Agrees {
        let printed = self.hole(i).to_owned();
        self.reads(&printed, value)
    }

    /// The same for a figure that stands in no hole.
    pub(crate) fn reads(&mut self, printed: &str, value: f64) -> Agrees {
        self.tally.figures += 1;
        if read(printed)?.is(value) { Ok(()) } else { Err(format!("{printed} is not {value}")) }
    }

    pub(crate) fn is_number(&mut self, i: usize, value: Result<f64, String>) -> Agrees {
        self.is(i, value?)
    }

    /// The range in a hole, `5 to 7` or one figure where its ends are printed alike, is this one.
    pub(crate) fn spans(&mut self, i: usize, low: f64, high: f64) -> Agrees {
        let printed = self.hole(i).to_owned();
        self.range(&printed, low, high, 0.0)
    }

    /// The same for a range in no hole, with the half range that decides its digits.
    pub(crate) fn range(&mut self, printed: &str, low: f64, high: f64, half: f64) -> Agrees {
        let (a, b) = printed.split_once(" to ").unwrap_or((printed, printed));
        self.tally.figures += 2;
        if low > 1e-9 && read(a)?.printed() < 1e-9 {
            return Err(format!("{printed} begins at nought, the reply at {low}"));
        }
        if read(a)?.is_of(low, half) && read(b)?.is_of(high, half) {
            Ok(())
        } else {
            Err(format!("{printed} is not {low} to {high}"))
        }
    }

    /// Three figures from a hole on are a force in newtons, kilograms and pounds.
    pub(crate) fn force(&mut self, i: usize, newtons: f64) -> Agrees {
        self.is(i, newtons)?;
        self.is(i + 1, newtons / KILOGRAM_N)?;
        self.is(i + 2, newtons / POUND_N)
    }

    /// Two figures from a hole on are a length in millimetres and in thousandths of an inch.
    pub(crate) fn gauge(&mut self, i: usize, metres: f64) -> Agrees {
        self.is(i, metres * 1e3)?;
        self.is(i + 1, metres / THOU_M)
    }

    /// A text is a value with its unit, or what it is unknown within; then perhaps its range.
    pub(crate) fn value(&mut self, said: &str, n: &Number) -> Agrees {
        let said = said.trim_end_matches('.');
        if let Some(range) = said.strip_prefix("unknown within ") {
            if !n.unknown {
                return Err(format!("{said}: the reply knows it"));
            }
            return self.range(unit_off(range, n.unit)?, n.low, n.high, n.half());
        }
        if n.unknown {
            return Err(format!("{said}: the reply calls it unknown"));
        }
        let (value, range) =
            said.split_once(", within ").map_or((said, None), |(v, r)| (v, Some(r)));
        let value = unit_off(value, n.unit)?;
        self.tally.figures += 1;
        if !read(value)?.is_of(n.value, n.half()) {
            return Err(format!("{value} is not {}", n.value));
        }
        match range {
            Some(range) => self.range(unit_off(range, n.unit)?, n.low, n.high, n.half()),
            None => Ok(()),
        }
    }

    /// A text is a property of a report with its unit.
    pub(crate) fn property(&mut self, said: &str, report: &Value, key: &str) -> Agrees {
        self.value(said, &number(report, key)?)
    }

    /// Days as one says them.
    pub(crate) fn days(&mut self, said: &str, days: f64) -> Agrees {
        self.tally.figures += 1;
        let fits = match said {
            "less than a day" => days < 0.75,
            "a day" => (0.75..1.5).contains(&days),
            _ => days >= 1.5 && read(unit_off(said, "days")?)?.is(days),
        };
        if fits { Ok(()) } else { Err(format!("{said} is not {days} days")) }
    }

    /// Whole days that are enough: rounded up, and at least one.
    pub(crate) fn enough_days(&mut self, said: &str, days: f64) -> Agrees {
        self.tally.figures += 1;
        let printed = if said == "1 day" { 1.0 } else { read(unit_off(said, "days")?)?.printed() };
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

    pub(crate) fn likely(&mut self, said: &str, chance: f64) -> Agrees {
        self.on(LIKELY, said, chance)
    }

    /// A word tells how the first of two compares: more, less, or alike.
    pub(crate) fn word(&mut self, said: &str, comparison: &Value, key: &str) -> Agrees {
        let Property { more, less, .. } = property(key);
        self.tally.comparatives += 1;
        let (this, other) = (real(&comparison["this"])?, real(&comparison["other"])?);
        let (above, below) =
            (real(&comparison["chance_above"])?, real(&comparison["chance_below"])?);
        let fits = if said == *more {
            comparison["verdict"] == "above" && this > other && above >= SURE - 1e-9
        } else if said == *less {
            comparison["verdict"] == "below" && this < other && below >= SURE - 1e-9
        } else if said == ALIKE {
            above < SURE && below < SURE
        } else {
            return Err(format!("“{said}” is no word for {key}"));
        };
        if fits {
            Ok(())
        } else {
            Err(format!("“{said}”, but of {key} the reply says {comparison}"))
        }
    }

    /// The reasons or costs of the string.
    pub(crate) fn weighed(&self) -> Result<&'a [Value], String> {
        Ok(list(&self.of_string()?[if self.cost { "costs" } else { "reasons" }]))
    }

    /// The one of them that is about a wish.
    pub(crate) fn reason(&self, wish: &str) -> Result<&'a Value, String> {
        self.weighed()?
            .iter()
            .find(|r| r["attribute"] == wish)
            .ok_or_else(|| format!("the reply weighs no {wish} here"))
    }

    /// A reason that compares: the word in its hole, the two figures in theirs, what it rests on.
    pub(crate) fn compares(
        &mut self,
        wish: &str,
        key: &str,
        word: usize,
        this: usize,
        other: usize,
    ) -> Agrees {
        let comparison = &self.compared(wish, key, word)?["comparison"];
        let factor = property(key).factor;
        self.is(this, real(&comparison["this"])? * factor)?;
        self.is(other, real(&comparison["other"])? * factor)
    }

    /// A reason that compares, by its word and what it rests on; its figures are left to the caller.
    pub(crate) fn compared(
        &mut self,
        wish: &str,
        key: &str,
        word: usize,
    ) -> Result<&'a Value, String> {
        let reason = self.reason(wish)?;
        let comparison = &reason["comparison"];
        if comparison["property"] != key {
            return Err(format!("{wish} rests on {}", comparison["property"]));
        }
        self.word(&small(self.hole(word)), comparison, key)?;
        self.better(reason, !self.cost)?;
        self.computed(comparison)?;
        Ok(reason)
    }

    /// What a comparison is said to rest on, where that is said: how likely the draws make it.
    pub(crate) fn computed(&mut self, comparison: &Value) -> Agrees {
        let chance = real(&comparison["chance_above"])?.max(real(&comparison["chance_below"])?);
        if let Some(rests) = self.rests {
            match rests.strip_prefix("computed, ") {
                Some(said) => self.likely(said, chance)?,
                None => return Err(format!("it is computed, not {rests}")),
            }
        }
        Ok(())
    }

    /// A judgement: worth more to this string, or to its rival.
    pub(crate) fn judges(&mut self, wish: &str, better: bool) -> Result<&'a Value, String> {
        let reason = self.reason(wish)?;
        self.tally.comparatives += 1;
        self.better(reason, better)?;
        if reason["judged"] != true || self.rests.is_some_and(|rests| rests != "judgement") {
            return Err("is it a judgement?".to_owned());
        }
        Ok(reason)
    }

    pub(crate) fn better(&self, reason: &Value, better: bool) -> Agrees {
        let (worth, rival) = (real(&reason["worth"])?, real(&reason["rival_worth"])?);
        if (worth > rival) == better && (worth < rival) != better {
            Ok(())
        } else {
            Err(format!("worth {worth} against {rival}"))
        }
    }

    /// Nearer to what is wanted, or further from it.
    pub(crate) fn wanted(&mut self, wish: &str, hole: usize) -> Agrees {
        let reason = self.reason(wish)?;
        self.tally.comparatives += 1;
        match self.hole(hole) {
            "nearer to" => self.better(reason, true),
            "further from" => self.better(reason, false),
            other => Err(format!("{other} what is wanted?")),
        }
    }

    /// How the first of two compares in a property, on the compare page: by paired draws where there are any, else by the ranges.
    pub(crate) fn verdict(&mut self, said: &str, key: &str) -> Agrees {
        let (one, other) = (number(&self.reply["this"], key)?, number(&self.reply["other"], key)?);
        let apart = one.low > other.high || other.low > one.high;
        let unknown = one.unknown || other.unknown;
        let same = (one.value - other.value).abs() <= 1e-9 * one.value.abs().max(other.value.abs());
        let by = called(&DECIDED_BY, key);
        let drawn = list(&self.reply["comparisons"]).iter().find(|c| c["property"] == by);
        let checked =
            |fits: bool| if fits { Ok(()) } else { Err(format!("{key}: {one:?} and {other:?}")) };
        match said {
            "cannot be told: it is unknown" => return checked(unknown && !apart),
            "the same" => return checked(drawn.is_none() && same),
            "the ranges overlap" => return checked(drawn.is_none() && !apart && !unknown),
            _ if unknown && !apart => return Err(format!("“{said}” of the unknown {key}")),
            _ => {}
        }
        let Some(comparison) = drawn else {
            self.tally.comparatives += 1;
            let Property { more, less, .. } = property(key);
            let fits =
                (said == *more && one.low > other.high) || (said == *less && one.high < other.low);
            return checked(fits);
        };
        let bare = ["very likely ", "likely ", "a close call "]
            .iter()
            .find_map(|scale| Some((scale.trim_end(), said.strip_prefix(scale)?)));
        match bare {
            None if said == ALIKE => self.word(said, comparison, key),
            None => Err(format!("“{said}”: how likely?")),
            Some((scale, word)) => {
                self.word(word, comparison, key)?;
                let chance =
                    real(&comparison["chance_above"])?.max(real(&comparison["chance_below"])?);
                self.likely(scale, chance)
            }
        }
    }
}

/// A figure, or what is wrong with it.
pub(crate) fn read(printed: &str) -> Result<Figure, String> {
    Figure::read(printed).ok_or_else(|| format!("“{printed}” is no figure"))
}

fn unit_off<'t>(said: &'t str, unit: &str) -> Result<&'t str, String> {
    if unit.is_empty() {
        return Ok(said);
    }
    said.strip_suffix(unit)
        .and_then(|rest| rest.strip_suffix(' '))
        .ok_or_else(|| format!("“{said}” is not in {unit}"))
}
