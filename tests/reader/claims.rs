//! What each message claims, as the table `messages.tsv` has it: which values of the reply fill its places.
//!
//! A claim is a row of clauses:
//!
//! | clause | what must be so |
//! |---|---|
//! | `set.close_call`, `not set.proven` | the value there is true; is false, empty or missing |
//! | `string.grade = often\|sometimes`, `≠`, `>`, `<` | the value compares so |
//! | `limit N problem.most_load_n` | the figure in the place `limit`, in newtons, is that value; for other units see [`unit`] |
//! | `usual range N problem.usual_load_n` | so are both figures of a range |
//! | `stretch number stretch` | the place has that number of the string's report, with its range if that is wide |
//! | `moves met warmth` | the place tells how warmth moves the string while it goes untuned |
//! | `family is string.rival.family` | the place or the choice has the message or the key of that value; `id` is the message itself |
//! | `tuner yes string.fine_tuner` | the choice is `yes` where the value is true |
//!
//! A place that no clause reads is read by itself: it may hold messages, but no bare word or figure. `material?` need
//! not be there; of `family|Kind` one is.

use std::collections::HashMap;
use std::sync::OnceLock;

use catalogue::{Catalogue, ENGLISH};
use serde_json::Value;

use crate::charts::OF_CHARTS;
use crate::heard::{Agrees, Heard, Number, holds, list, property, real, same, text};
use crate::kinds::OF_KINDS;
use crate::marks::{Part, all, flat, sole};
use crate::names::OF_NAMES;
use crate::set::OF_SET;
use crate::verdict::OF_VERDICT;
use crate::why::{OF_PAIR, OF_REASONS, OF_SURE};
use crate::words::{LIKELY, LOAD};

/// What must be true of the reply when a message is said, where clauses do not say all of it.
pub(crate) type Check = fn(&mut Heard) -> Agrees;

/// What a message claims.
#[derive(Default)]
pub(crate) struct Claim {
    /// Clauses, word by word.
    pub(crate) clauses: Vec<Vec<&'static str>>,
    /// What no clause can say.
    pub(crate) check: Option<Check>,
}

/// The rows of the table: messages, what they claim, and words that stand in them in English and in German.
pub(crate) fn rows() -> impl Iterator<Item = [&'static str; 4]> {
    let rows = include_str!("messages.tsv").lines();
    rows.filter(|line| !line.is_empty() && !line.starts_with('#')).map(|line| {
        let mut columns = line.split('\t');
        std::array::from_fn(|_| columns.next().unwrap_or_default())
    })
}

/// What a message claims; none if the reader does not know it.
pub(crate) fn claim(id: &str) -> Option<&'static Claim> {
    static CLAIMS: OnceLock<HashMap<&'static str, Claim>> = OnceLock::new();
    CLAIMS.get_or_init(claims).get(id)
}

/// The claims of every message of the catalogue: by its name, else by the longest beginning that a row has.
fn claims() -> HashMap<&'static str, Claim> {
    let mut told: HashMap<&str, &str> = HashMap::new();
    for [ids, clauses, ..] in rows().filter(|row| !row[1].is_empty()) {
        told.extend(ids.split(' ').map(|id| (id, clauses)));
    }
    let checks: HashMap<&str, Check> =
        [OF_NAMES, OF_SET, OF_KINDS, OF_CHARTS, OF_REASONS, OF_SURE, OF_PAIR, OF_VERDICT]
            .concat()
            .into_iter()
            .collect();
    let catalogue = Catalogue::of(ENGLISH);
    let claim = |id: &'static str| {
        let end = id.find('.').map(|dot| format!("*{}", &id[dot..]));
        let shared = (1..=id.len()).rev().filter(|end| id.is_char_boundary(*end));
        let shared = shared.map(|end| format!("{}*", &id[..end]));
        let key = std::iter::once(id.to_owned())
            .chain(end)
            .chain(shared)
            .find(|key| told.contains_key(key.as_str()) || checks.contains_key(key.as_str()))?;
        let clauses = told.get(key.as_str()).filter(|clauses| **clauses != "-");
        let clauses = clauses.into_iter().flat_map(|clauses| clauses.split("; "));
        let clauses = clauses.map(|clause| clause.split(' ').collect()).collect();
        Some((id, Claim { clauses, check: checks.get(key.as_str()).copied() }))
    };
    catalogue.names().filter_map(claim).collect()
}

/// A unit of the table: as it is printed, and by what the value of the reply is multiplied.
fn unit(name: &'static str) -> (&'static str, f64) {
    match name {
        "x" => ("", 1.0),
        "of-100" => ("", 100.0),
        "%" => ("%", 100.0),
        "%/2" => ("%", 50.0),
        "K/2" => ("K", 0.5),
        "mm" => ("mm", 1e3),
        "g/s" => ("g/s", 1e3),
        "kHz" => ("kHz", 1e-3),
        "N/mm" => ("N/mm", 1e-3),
        "unit-days" => ("{unit-days}", 1.0),
        "cents" => ("{cents}", 1.0),
        "N" | "Hz" | "s" | "kg/s" | "°C" => (name, 1.0),
        _ => panic!("messages.tsv has a clause that the reader does not know: {name}"),
    }
}

/// What may stand before a key of the reply in the name of a message.
const BEFORE_KEYS: [&str; 15] = [
    "",
    "family-",
    "family-is-",
    "material-",
    "metal-",
    "gauge-",
    "instrument-",
    "attribute-",
    "cause-",
    "check-",
    "caveat-",
    "relax-",
    "fact-because-",
    "loses-",
    "bother-",
];

/// Whether a message's name or the key of a choice is that of a value.
fn is_key(said: &str, known: &str, instrument: &str) -> bool {
    let before = said.trim_end_matches(".listed").strip_suffix(known.replace(' ', "-").as_str());
    before.is_some_and(|before| {
        BEFORE_KEYS.contains(&before) || before == format!("tuning-{instrument}-")
    })
}

impl<'a> Heard<'a> {
    /// A value of the reply. A path begins with a member of the reply or with what is being read; `last` is the end of
    /// a list, `own` the string's place in it.
    pub(crate) fn at(&self, path: &str) -> Result<&'a Value, String> {
        let (root, rest) = path.split_once('.').unwrap_or((path, ""));
        let root = match root {
            "string" => self.string()?,
            "report" => self.report()?,
            "setting" => &self.report()?["setting"],
            "shopping" => self.shopping()?,
            "plan" => self.plan(),
            "sure" => self.sure(),
            "certain" => &self.sure()["strings"][self.own()?],
            "reason" => self.reason.ok_or("no reason was told")?,
            "comparison" => &self.reason.ok_or("no reason was told")?["comparison"],
            "cause" => self.cause.ok_or("no cause was told")?,
            "point" => self.point.ok_or("nothing turns")?,
            "kind" => self.kind.ok_or("of which kind?")?,
            "partial" => self.partial.ok_or("of which partial?")?,
            other => &self.reply()[other],
        };
        rest.split('.').filter(|key| !key.is_empty()).try_fold(root, |value, key| {
            let found = match key {
                "last" => list(value).last(),
                "own" => value.get(self.own()?),
                key => key.parse().map_or_else(|_| value.get(key), |i: usize| value.get(i)),
            };
            found.ok_or_else(|| format!("the reply has no {path}"))
        })
    }

    pub(crate) fn real(&self, path: &str) -> Result<f64, String> {
        real(self.at(path)?)
    }

    /// Both ends of a range in the reply, or one number twice.
    fn ends(&self, path: &str) -> Result<(f64, f64), String> {
        let ends = self.at(path)?;
        match ends {
            Value::Array(ends) => Ok((real(&ends[0])?, real(&ends[1])?)),
            Value::Object(ends) => Ok((real(&ends["low"])?, real(&ends["high"])?)),
            _ => Ok((real(ends)?, real(ends)?)),
        }
    }

    /// What a clause says is so.
    pub(crate) fn clause(&mut self, clause: &[&'static str]) -> Agrees {
        match *clause {
            ["skip", place] => self.skip(place),
            [path] => holds(self.at(path)? == true)?,
            ["not", path] => holds(match self.at(path)? {
                Value::Array(list) => list.is_empty(),
                value => value.is_null() || value == false,
            })?,
            [path, "=", known] => holds(known.split('|').any(|known| self.value_is(path, known)))?,
            [path, "≠", known] => holds(!self.value_is(path, known))?,
            [path, ">", known] => holds(self.real(path)? > known.parse().unwrap())?,
            [path, "<", known] => holds(self.real(path)? < known.parse().unwrap())?,
            ["tells", wish] => self.reason(wish).map(drop)?,
            ["judged", wish] => self.judged(wish).map(drop)?,
            ["weakest", wish] => self.weakest(wish)?,
            ["moved", wish] => {
                self.compared(wish, self.met(wish)?)?;
                self.clause(&["this", "size", "comparison.this"])?;
                self.clause(&["other", "size", "comparison.other"])?;
            }
            ["compares", wish, key, unit] => {
                self.compared(wish, key)?;
                self.clause(&["this", unit, "comparison.this"])?;
                self.clause(&["other", unit, "comparison.other"])?;
            }
            ["on", path, word] => self.on(LIKELY, word, self.real(path)?)?,
            [place, ..] if place.ends_with('?') => {
                let place = &place[..place.len() - 1];
                if self.said.is_some_and(|said| said.place(place).is_some()) {
                    self.clause(&[&[place], &clause[1..]].concat())?;
                }
            }
            [place, what, ref of @ ..] => self.place(place, what, of)?,
            [] => {}
        }
        Ok(())
    }

    fn value_is(&self, path: &str, known: &str) -> bool {
        self.at(path).is_ok_and(|value| match value {
            Value::String(value) => value == known,
            value => value.as_f64() == known.parse().ok() && value.is_number(),
        })
    }

    /// What a clause says of a place is so.
    fn place(&mut self, place: &'static str, what: &'static str, of: &[&'static str]) -> Agrees {
        match (what, of) {
            ("is", [path]) => return self.is(place, path),
            ("yes", [path]) => {
                let yes = self.key(place)? == "yes";
                return holds(yes == (self.at(path)? == true));
            }
            ("load", []) => {
                let (low, high) = self.ends("problem.usual_load_n")?;
                let at = (self.real("set.total_tension_n.value")? - low) / (high - low);
                let said = self.key(place)?;
                return self.on(LOAD, &said, at);
            }
            ("wanted", []) => return self.wanted(),
            _ => {}
        }
        let words = self.arg(place)?;
        self.words(words, what, of)
    }

    /// Words name the strings, the families and the gauges that they should, or hold the figures.
    fn words(&mut self, words: &'a [Part], what: &'static str, of: &[&'static str]) -> Agrees {
        match (what, of) {
            ("name", []) => holds(Some(self.name(words)?) == self.at.or(self.whose)),
            ("whose", []) => {
                self.whose = Some(self.name(words)?);
                Ok(())
            }
            ("letter", []) => self.own_letter(words),
            // Without a set the reply names no strings.
            ("string", _) if self.strings().is_empty() => Ok(()),
            ("string", [path]) => {
                self.whose = Some(self.name(words)?);
                holds(self.at(path)?.as_u64() == self.whose.map(|i| i as u64))
            }
            ("size", []) => self.size(words),
            ("families", [which]) => self.families_of(words, *which == "second"),
            ("gauges", [which]) => self.gauges_of(words, *which == "second"),
            ("kinds", [path]) => {
                let mut told: Vec<&str> =
                    all(words).into_iter().filter_map(|said| said.choice("family")).collect();
                let mut known: Vec<&str> = list(self.at(path)?).iter().map(text).collect();
                for keys in [&mut told, &mut known] {
                    keys.sort_unstable();
                    keys.dedup();
                }
                holds(told == known)
            }
            _ => self.figures(words, what, of),
        }
    }

    /// Words hold the figures that they should.
    fn figures(&mut self, words: &'a [Part], what: &'static str, of: &[&'static str]) -> Agrees {
        match (what, of) {
            ("lead", []) => self.in_unit(words, (self.real("set.lead")? - 1.0) * 100.0, "%"),
            ("force", [path]) => {
                self.ends(path).and_then(|(low, high)| self.force(words, low, high))
            }
            ("gauge", [path]) => self.gauge(words, self.real(path)?),
            ("inch", [path]) => self.inch(words, self.real(path)?),
            ("cents-said", [path]) => self.cents(words, self.real(path)?),
            ("days", [path]) => self.days(words, self.real(path)?),
            ("enough", [path]) => self.enough_days(words, self.real(path)?),
            ("likely", [path]) => self.likely(words, self.real(path)?),
            ("settled", [chance]) => self.settled(words, chance.parse().unwrap()),
            ("never", [chance]) => self.never(words, chance.parse().unwrap()),
            ("as", [known]) => self.reads(words, known.parse().unwrap()),
            ("range", [unit_name, path]) => {
                let ((unit, factor), (low, high)) = (unit(unit_name), self.ends(path)?);
                self.range(words, unit, low * factor, high * factor, 0.0)
            }
            ("number", [key, unit @ ..]) => {
                let known = self.number(key)?;
                self.told(words, &Number { unit: unit.first().unwrap_or(&known.unit), ..known })
            }
            ("met", [by]) => {
                let known = self.number(self.met(by)?)?;
                self.moves(words, &known)
            }
            ("size", [path]) => self.in_unit(words, self.real(path)?.abs(), "{cents}"),
            ("caused", [key]) => self.caused(words, key),
            ("limited", [key]) => {
                self.caused(words, key)?;
                let (words, p) = (self.arg("limit")?, property(key));
                self.in_unit(words, self.limit(key)? * p.factor, p.unit)
            }
            ("days-of", [key]) => self.days(words, self.limit(key)?),
            ("only", [key]) => self.reads(words, real(&self.caused_by(key)?["value"])?),
            (_, [path]) => {
                let (unit, factor) = unit(what);
                self.in_unit(words, self.real(path)? * factor, unit)
            }
            _ => panic!("messages.tsv has a clause that the reader does not know: {what}"),
        }
    }

    /// The message or the key in a place is that of a value; in a list, of one of its values.
    fn is(&mut self, place: &'static str, path: &str) -> Agrees {
        let said = match place {
            "id" => self.tail("").to_owned(),
            _ => self.key(place)?,
        };
        self.tally.words += 1;
        let (value, instrument) = (self.at(path)?, text(&self.problem()["instrument"]));
        let known = if value.is_array() { list(value) } else { std::slice::from_ref(value) };
        let is = |known: &Value| is_key(&said, text(known), instrument);
        if known.iter().any(is) { Ok(()) } else { Err(format!("“{said}” is not {value}")) }
    }

    /// The size of the instrument, of which some are said in inches.
    pub(crate) fn size(&self, words: &[Part]) -> Agrees {
        let inches = sole(words).and_then(|said| said.place("number"));
        let said = flat(inches.unwrap_or(words)).replace(',', ".");
        same(&said, text(&self.problem()["size"]).trim_end_matches(" in"))
    }
}
