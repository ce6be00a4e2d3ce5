//! Reads a page against its reply: every sentence that claims something must be known, and must agree.

use serde_json::Value;

use crate::heard::{Agrees, Heard, Tally, names};
use crate::phrases::{LINES, OF_FIT, OF_PAIR, Phrase, UNKNOWN};
use crate::rows::TABLES;
use crate::sure::OF_SURE;
use crate::text::{Passage, Says, passages, sentences};
use crate::verdict::{self, OF_VERDICT};
use crate::vocabulary::{CLAIMS, FIXED, NO_COMPARATIVES, PICTURES};

/// What a reason is said to rest on, at its end.
const RESTS: [&str; 5] = [
    "computed, very likely",
    "computed, likely",
    "computed, a close call",
    "computed",
    "judgement",
];

/// What a page says against its reply, and how much of it was compared.
#[derive(Debug, Default)]
pub(crate) struct Reading {
    /// What was compared.
    pub(crate) tally: Tally,
    /// Where text and reply disagree, or the reader does not know the words.
    pub(crate) objections: Vec<String>,
}

/// Reads a page. A printed report is about one string of its set; its number is given then.
pub(crate) fn read_page(reply: &Value, html: &str, string: Option<usize>) -> Reading {
    let mut reading = Reading::default();
    let names = names(&reply["set"]);
    let passages = passages(html);
    let mut before = "";
    for passage in &passages {
        let page = Page { reply, names: &names, string, before };
        if let Err(objection) = page.agrees(passage, &mut reading.tally) {
            reading.objections.push(objection);
        }
        if let Says::Line(line) = &passage.says {
            before = line;
        }
    }
    reading
}

/// A page, as far as it was read.
struct Page<'a> {
    reply: &'a Value,
    names: &'a [String],
    string: Option<usize>,
    before: &'a str,
}

impl Page<'_> {
    fn agrees(&self, passage: &Passage, tally: &mut Tally) -> Agrees {
        let place = &passage.place;
        if PICTURES.iter().any(|picture| place.within(picture)) {
            return Ok(());
        }
        // A row of the sheet is about the string that it names; a card is about its own.
        let on_sheet = match &passage.says {
            Says::Row(_, cells) if place.within("sheet") => cells.get(1).and_then(|c| c.first()),
            _ => None,
        };
        let called = on_sheet.or(place.string.as_ref());
        let string = self.string.or_else(|| self.names.iter().position(|n| Some(n) == called));
        let mut heard = Heard {
            reply: self.reply,
            place,
            string: string.and_then(|i| self.reply["set"]["strings"].get(i)),
            name: string.and_then(|i| self.names.get(i).cloned()).unwrap_or_default(),
            before: self.before,
            holes: Vec::new(),
            cost: place.within("against"),
            rests: None,
            tally,
        };
        match &passage.says {
            Says::Line(line) => judge_line(&mut heard, line),
            Says::Row(headings, cells) => row_agrees(&mut heard, headings, cells),
        }
    }
}

fn row_agrees(heard: &mut Heard, headings: &[String], cells: &[Vec<String>]) -> Agrees {
    let table = headings.join(" | ");
    let known =
        TABLES.iter().find(|(pattern, _)| *pattern == table || fit(pattern, &table).is_some());
    match known {
        Some((_, check)) if cells.len() > 1 => {
            // What a cell says in small letters under its first line, or in place of a picture, is running text.
            for line in cells[0].iter().skip(1).chain(cells[0].iter().filter(|l| is_line(l))) {
                judge_line(heard, line)?;
            }
            check(heard, cells).map_err(|objection| {
                let said: Vec<String> = cells.iter().map(|cell| cell.join(" / ")).collect();
                format!("row “{}”: {objection}", said.join(" | "))
            })
        }
        _ => cells.iter().flatten().try_for_each(|line| judge_line(heard, line)),
    }
}

fn is_line(line: &str) -> bool {
    LINES.iter().any(|(phrase, _)| fit(phrase, line).is_some())
}

/// Judges a line: as a whole, or sentence by sentence.
pub(crate) fn judge_line(heard: &mut Heard, line: &str) -> Agrees {
    for (phrase, check) in LINES {
        if let Some(holes) = fit(phrase, line) {
            heard.holes = holes;
            return check(heard).map_err(|objection| format!("“{line}”: {objection}"));
        }
    }
    let mut line = line;
    if heard.place.within("finding") {
        line = verdict::likelihood(heard, line)?;
    }
    if heard.place.within("case") {
        for rests in RESTS {
            if let Some(reason) = line.strip_suffix(rests) {
                (line, heard.rests) = (reason.trim_end(), Some(rests));
                break;
            }
        }
    }
    sentences(line).iter().try_for_each(|sentence| judge(heard, sentence))
}

/// Judges a sentence by the first phrase that fits it.
pub(crate) fn judge(heard: &mut Heard, sentence: &str) -> Agrees {
    if FIXED.contains(&sentence) {
        heard.tally.fixed += 1;
        return Ok(());
    }
    let phrases: [&[Phrase]; 3] = if heard.reply["reply"] == "compare" {
        [OF_PAIR, &[], &[]]
    } else {
        [OF_VERDICT, OF_SURE, OF_FIT]
    };
    for (phrase, check) in phrases.into_iter().flatten() {
        let Some(holes) = fit(phrase, sentence) else { continue };
        heard.holes = holes;
        match check(heard) {
            Ok(()) => return Ok(()),
            Err(objection) if objection == UNKNOWN => {}
            Err(objection) => return Err(format!("“{sentence}”: {objection}")),
        }
    }
    match claim(sentence) {
        Some(claim) => Err(format!("“{sentence}”: {UNKNOWN}, and “{claim}” claims something")),
        None => Ok(()),
    }
}

/// What in a sentence claims something: a figure, a comparative, a word on a scale.
fn claim(sentence: &str) -> Option<String> {
    if let Some(figure) = sentence.chars().find(char::is_ascii_digit) {
        return Some(figure.to_string());
    }
    let small = sentence.to_lowercase();
    let word = small.split(|c: char| !c.is_alphabetic()).find(|word| {
        CLAIMS.contains(word)
            || (word.len() > 3 && word.ends_with("er") && !NO_COMPARATIVES.contains(word))
    });
    word.map(str::to_owned).or_else(|| {
        CLAIMS.iter().find(|c| c.contains(' ') && small.contains(**c)).map(|c| (*c).to_owned())
    })
}

/// What stands in the holes of a phrase, if it fits a text.
pub(crate) fn fit(phrase: &str, text: &str) -> Option<Vec<String>> {
    // Most phrases differ in their ends already.
    let tail = phrase.rsplit_once('}').map_or(phrase, |(_, tail)| tail);
    let mut holes = Vec::new();
    (text.ends_with(tail) && fill(phrase, text, &mut holes))
        .then(|| holes.into_iter().rev().map(str::to_owned).collect())
}

/// Fits a phrase and puts what stands in its holes into a list, the last first.
fn fill<'t>(phrase: &str, text: &'t str, holes: &mut Vec<&'t str>) -> bool {
    let Some((literal, hole, rest)) = next_hole(phrase) else { return phrase == text };
    let Some(after) = text.strip_prefix(literal) else { return false };
    let mut ends_at = |end: usize| {
        let fits = end > 0 && fill(rest, &after[end..], holes);
        if fits {
            holes.push(&after[..end]);
        }
        fits
    };
    let one = figure_end(after);
    match hole {
        '#' => one.is_some_and(ends_at),
        '-' => {
            let other = |one: usize| {
                after[one..]
                    .strip_prefix(" to ")
                    .and_then(figure_end)
                    .map(|end| one + " to ".len() + end)
            };
            one.and_then(other).is_some_and(&mut ends_at) || one.is_some_and(ends_at)
        }
        _ => match rest.split('{').next() {
            None | Some("") if rest.is_empty() => ends_at(after.len()),
            None | Some("") => after.char_indices().any(|(end, _)| ends_at(end)),
            Some(next) => after.match_indices(next).any(|(end, _)| ends_at(end)),
        },
    }
}

fn next_hole(phrase: &str) -> Option<(&str, char, &str)> {
    let (literal, rest) = phrase.split_once('{')?;
    let hole = rest.chars().next()?;
    Some((literal, hole, &rest[2..]))
}

/// Where a figure ends with which a text begins.
fn figure_end(text: &str) -> Option<usize> {
    let unsigned = text.trim_start_matches(['-', '−']);
    let sign = text.len() - unsigned.len();
    let whole = unsigned.find(|c: char| !c.is_ascii_digit()).unwrap_or(unsigned.len());
    if whole == 0 {
        return None;
    }
    let places = unsigned[whole..]
        .strip_prefix('.')
        .map_or(0, |rest| rest.find(|c: char| !c.is_ascii_digit()).unwrap_or(rest.len()));
    Some(sign + whole + if places > 0 { places + 1 } else { 0 })
}

#[test]
fn a_phrase_fits_what_it_says() {
    let holes = |phrase, text| fit(phrase, text).map(|h| h.join("|"));
    assert_eq!(holes("a {#} N ({#} kg)", "a 5.20 N (0.5 kg)").as_deref(), Some("5.20|0.5"));
    assert_eq!(holes("{~}: {-} N.", "Pull: at: 5 to 7 N.").as_deref(), Some("Pull: at|5 to 7"));
    assert_eq!(holes("{~}: {-} N.", "Pull: 5 to 7 N.").as_deref(), Some("Pull|5 to 7"));
    assert_eq!(holes("{~}: {-} N.", "Pull: 7 N.").as_deref(), Some("Pull|7"));
    assert_eq!(holes("{~} it {~}.", "Does it fit it.").as_deref(), Some("Does|fit it"));
    assert_eq!(holes("{#}", "7 N"), None);
}

#[test]
fn what_claims_something_is_seen() {
    for (sentence, seen) in [
        ("It sounds zestier than before.", true),
        ("It is no more than that.", true),
        ("It has 3 strings.", true),
        ("That is likely.", true),
        ("Ask a luthier, or a player, about the power of the weather.", false),
    ] {
        assert_eq!(claim(sentence).is_some(), seen, "{sentence}: {:?}", claim(sentence));
    }
}
