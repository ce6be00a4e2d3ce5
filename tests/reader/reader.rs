//! Reads a page against its reply: every message that claims something must be known, and must agree.

use serde_json::Value;

use crate::charts;
use crate::claims::claim;
use crate::heard::{Agrees, Heard, Tally, cites, entry, holds, is, list, real, same, text};
use crate::marks::{Part, Said, all, flat, plain, sole};
use crate::rows::TABLES;
use crate::text::{Cell, Passage, Says, passages};
use crate::words::PICTURES;

/// What a page says against its reply, and how much of it was compared.
#[derive(Debug, Default)]
pub(crate) struct Reading {
    /// What was compared.
    pub(crate) tally: Tally,
    /// Where page and reply disagree, or the reader does not know what is said.
    pub(crate) objections: Vec<String>,
}

/// Reads a page. A printed report is about one string of its set; its number is given then.
pub(crate) fn read_page(reply: &Value, html: &str, string: Option<usize>) -> Reading {
    let passages = passages(html);
    let mut heard = Heard { reply: Some(reply), ..Heard::default() };
    let mut objections = Vec::new();
    for passage in passages.iter().filter(|p| !PICTURES.iter().any(|class| p.place.within(class))) {
        if let Err(objection) = heard.passage(passage, string) {
            objections.push(objection);
        }
    }
    if string.is_none() {
        objections.extend((0..heard.strings().len()).filter_map(|i| heard.leaves_out(i)));
        objections.extend(heard.kinds_left_out());
    }
    Reading { tally: heard.tally, objections }
}

impl<'a> Heard<'a> {
    fn passage(&mut self, passage: &'a Passage, string: Option<usize>) -> Agrees {
        self.place = passage.place.clone();
        let place = &self.place;
        self.cost = place.within("against");
        // A name stands in a line of its own beside a portrait.
        if !place.within("portraits") {
            self.whose = None;
        }
        self.at = None;
        self.at = match (&passage.says, &place.string) {
            (Says::Row(_, cells), _) if place.within("sheet-set") => {
                Some(self.name(&cells[1].concat())?)
            }
            (_, Some(name)) => Some(self.name(name)?),
            _ => string,
        };
        match &passage.says {
            Says::Line(words) => self.line(words),
            Says::Row(headings, cells) => self.row(headings, cells),
        }
    }

    /// What a card should have told, and did not: every cost, and every reason against another kind.
    fn leaves_out(&self, i: usize) -> Option<String> {
        let string = &self.strings()[i];
        let of = |cost: bool, key: &str| {
            list(&string[key]).iter().map(move |r| (cost, text(&r["attribute"])))
        };
        let reasons = of(false, "reasons").filter(|_| !string["rival"].is_null());
        let mut all = reasons.chain(of(true, "costs")).filter(|_| string["standing"] == "new");
        let missed = all.find(|(cost, wish)| !self.told.contains(&(i, *cost, wish)));
        missed.map(|(cost, wish)| format!("string {i} does not tell its {wish}, cost: {cost}"))
    }

    fn row(&mut self, headings: &[Vec<Part>], cells: &'a [Cell]) -> Agrees {
        let table = headings.iter().map(|words| flat(words)).collect::<Vec<_>>().join(" ");
        let known = TABLES.iter().find(|(heads, _)| {
            table
                .strip_prefix(heads)
                .or_else(|| table.strip_prefix("{group-")?.split_once("} ")?.1.strip_prefix(heads))
                .is_some()
        });
        match known {
            Some((_, check)) if cells.len() > 1 => check(self, cells).map_err(|why| {
                let said: Vec<String> = cells.iter().flatten().map(|words| plain(words)).collect();
                format!("row “{}”: {why}", said.join(" | "))
            }),
            _ => cells.iter().flatten().try_for_each(|words| self.line(words)),
        }
    }

    /// Judges words message by message; nothing may stand between them but what their place allows.
    pub(crate) fn line(&mut self, words: &'a [Part]) -> Agrees {
        let agrees = match self.special(words) {
            Some(agrees) => agrees,
            None => words.iter().try_for_each(|part| match part {
                Part::Said(said) => self.judge(said, std::slice::from_ref(part)),
                Part::Text(text) if text.chars().any(char::is_alphanumeric) => {
                    Err(format!("“{text}” is no message"))
                }
                _ => Ok(()),
            }),
        };
        agrees.map_err(|why| {
            if why.starts_with('“') { why } else { format!("“{}”: {why}", plain(words)) }
        })
    }

    fn judge(&mut self, said: &'a Said, words: &'a [Part]) -> Agrees {
        let id = said.id;
        let claim = claim(id)
            .ok_or_else(|| format!("“{}”: the reader does not know {id}", plain(words)))?;
        let outer = std::mem::replace(&mut self.words, words);
        let agrees = self.of(said, |h| {
            claim.clauses.iter().try_for_each(|clause| h.clause(clause))?;
            claim.check.map_or(Ok(()), |check| check(h))
        });
        self.words = outer;
        agrees.map_err(|why| format!("“{}” ({id}): {why}", plain(words)))
    }

    /// Lines that say something beside their messages: figures alone, or two messages that are one.
    fn special(&mut self, words: &'a [Part]) -> Option<Agrees> {
        let first = words.iter().position(|part| matches!(part, Part::Said(_)));
        let id = first.and_then(|i| sole(&words[i..=i])).map_or("", |said| said.id);
        let said = flat(words);
        let figure = said.starts_with(|c: char| c.is_ascii_digit());
        Some(match id {
            _ if self.place.within("context") => self.context(words),
            _ if self.place.within("range-bar") && figure => {
                let mut usual = list(&self.problem()["usual_load_n"]).iter();
                holds(usual.any(|end| end.as_f64().is_some_and(|end| is(words, end))))
            }
            "compare-first" | "compare-second" if words.len() > 1 => {
                self.side = if id == "compare-first" { "this" } else { "other" };
                self.of_side(&after(words))
            }
            "loses-bridge" | "loses-air" | "loses-bending" | "loses-string" if figure => {
                self.ring(words)
            }
            "" if self.place.within("partials") && figure => charts::partial(self, &said),
            _ if self.place.within("formula") => self.formula(words),
            _ if id.starts_with("limit-") && words.len() > 1 => {
                let key = &id["limit-".len()..];
                let counts = list(&self.reply()["obstacles"])
                    .iter()
                    .filter_map(|o| entry(&o["limits"], "limit", key).ok());
                let count = after(words);
                holds(counts.filter_map(|l| l["count"].as_f64()).any(|n| is(&count, n)))
            }
            _ => return None,
        })
    }

    /// The instrument with its size, tuning and pitch over the page.
    fn context(&mut self, words: &'a [Part]) -> Agrees {
        let problem = self.problem();
        let of = |key: &str| text(&problem[key]);
        let inches = all(words).into_iter().find(|said| said.id == "size-inches");
        let size = inches.map_or(of("size").to_owned(), |_| "{size-inches}".to_owned());
        let tuning = format!("{{tuning-{}-{}}}", of("instrument"), of("tuning"));
        let said = flat(words);
        let head = format!("{{instrument-{}}} {size}, {tuning}, ", of("instrument"));
        let pitch = said.strip_prefix(&head).ok_or_else(|| format!("“{said}” is not “{head}”"))?;
        if let Some(said) = inches {
            self.judge(said, std::slice::from_ref(&words[2]))?;
        }
        self.in_unit(&[Part::Text(pitch.to_owned())], real(&problem["a4_hz"])?, "Hz")
    }

    /// The words at the end of a partial's bar.
    fn ring(&mut self, words: &'a [Part]) -> Agrees {
        let ring = real(&self.partial.ok_or("of which partial?")?["ring_s"])?;
        let said = flat(&words[..1]);
        self.in_unit(&[Part::Text(said.trim_end_matches([',', ' ']).to_owned())], ring, "s")?;
        words[1..].iter().try_for_each(|part| self.line(std::slice::from_ref(part)))
    }

    /// The formula of the number under a reason, and its source.
    fn formula(&mut self, words: &'a [Part]) -> Agrees {
        let reason = self.reason.ok_or("of which reason?")?;
        let worth = entry(&self.string()?["attributes"], "attribute", text(&reason["attribute"]))?;
        let key = text(&worth["property"]);
        let source = text(&self.report()?["numbers"][key]["source"]);
        let flat = flat(words);
        let (formula, said) = flat.split_once(" · ").ok_or("no source")?;
        same(formula, &format!("{{property-{key}.formula}}"))?;
        cites(said, source)
    }
}

/// What stands behind the first message of a line, without the colon or the space between.
pub(crate) fn after(words: &[Part]) -> Vec<Part> {
    let mut rest = words[1..].to_vec();
    if let Some(Part::Text(text)) = rest.first_mut() {
        *text = text.trim_start_matches([':', ' ']).to_owned();
    }
    rest
}
