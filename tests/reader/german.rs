//! Does the page say the same in German? It is drawn in both languages, and the figures must be the same.

use std::collections::BTreeMap;
use std::env;
use std::rc::Rc;

use app::depth::Depth;
use app::hooks::Sureness;
use app::words::speech;
use catalogue::{GERMAN, Language};
use protocol::reply::{Compare, Reply};
use protocol::request::{CompareRequest, FitRequest, Request};
use support::Seeded;

use crate::anybody::{anybody, tables};
use crate::cases::{fit, reply, sure};
use crate::rendered::Easel;

/// For how many people the page is drawn when nobody asks for more.
const PEOPLE: usize = 60;
/// Of so many people, one is told how sure the set is.
const SURE_EACH: usize = 5;

/// English words that no German text has.
const ENGLISH: [&str; 14] = [
    "the", "and", "of", "with", "string", "strings", "it", "is", "than", "to", "for", "from",
    "but", "cents",
];

/// What is said on a page: its text, and the labels of its pictures.
fn said(html: &str) -> String {
    let mut said = String::new();
    for part in html.split('<') {
        let (tag, text) = part.split_once('>').unwrap_or(("", part));
        for name in ["aria-label=\"", "title=\""] {
            if let Some((_, rest)) = tag.split_once(name) {
                said.push_str(rest.split('"').next().unwrap_or_default());
                said.push('\n');
            }
        }
        said.push_str(text);
        said.push('\n');
    }
    said.replace("&quot;", "\"").replace("&amp;", "&").replace("&#x27;", "'")
}

/// Every figure of a text and how often it stands there, written with a point.
fn figures(text: &str, point: char) -> BTreeMap<String, i64> {
    let mut found = BTreeMap::new();
    // Thousands are set apart by a narrow space.
    let letters: Vec<char> = text.replace('\u{202f}', "").chars().collect();
    let digit = |i: usize| letters.get(i).is_some_and(char::is_ascii_digit);
    let mut i = 0;
    while i < letters.len() {
        if !digit(i) {
            i += 1;
            continue;
        }
        let from = i;
        while digit(i) || (letters.get(i) == Some(&point) && digit(i + 1)) {
            i += 1;
        }
        // A note's octave is part of its name, and German names strings by it where English says high and low.
        if from == 0 || !letters[from - 1].is_alphabetic() {
            let figure: String = letters[from..i].iter().collect();
            *found.entry(figure.replace(point, ".")).or_insert(0) += 1;
        }
    }
    found
}

/// Draws a page in both languages and compares.
fn compare(what: &str, draw: &dyn Fn() -> String) -> Vec<String> {
    speech::speak(Language::English);
    let english = said(&draw());
    speech::learn(Language::German, GERMAN);
    speech::speak(Language::German);
    let german = said(&draw());
    speech::speak(Language::English);
    let mut objections = Vec::new();
    let (one, other) = (figures(&english, '.'), figures(&german, ','));
    assert!(one.len() > 2, "{what} has no figures: {english}");
    for figure in one.keys().chain(other.keys()) {
        let count = |of: &BTreeMap<String, i64>| of.get(figure).copied().unwrap_or(0);
        if count(&one) != count(&other) {
            objections.push(format!(
                "{what}: {figure} stands {} times in English and {} times in German",
                count(&one),
                count(&other)
            ));
        }
    }
    for line in german.lines() {
        let words = line.split(|c: char| !c.is_alphabetic());
        if words.into_iter().any(|word| ENGLISH.contains(&word)) {
            objections.push(format!("{what}, in German: “{line}”"));
        }
    }
    objections
}

#[test]
fn german_has_the_same_figures_and_no_english_words() {
    let wanted = env::var("ROPEWALK_GERMAN").ok().map_or(PEOPLE, |text| text.parse().unwrap());
    let tables = tables();
    let mut seeded = Seeded::new(52_000);
    let easel = Easel::new();
    let mut objections = Vec::new();
    let mut pages = 0;
    for n in 0..wanted {
        let answers = anybody(&mut seeded, &tables);
        let request = FitRequest { answers };
        let (_, found) = fit(request.clone());
        // How sure a set is takes as long as several sets to find out.
        let sureness = match &found.set {
            Some(_) if n % SURE_EACH == 0 => Sureness::Known(sure(request).1),
            _ => Sureness::Asked,
        };
        let depth = Depth::ALL[n % Depth::ALL.len()];
        objections.extend(compare("the set", &|| easel.set(&found, sureness.clone(), depth)));
        pages += 1;
        let Some(set) = &found.set else { continue };
        let at = seeded.below(set.strings.len());
        objections.extend(compare("a report", &|| easel.report(&found, at)));
        let string = &set.strings[at];
        let other = string.rival.as_ref().unwrap_or(&set.strings[0].report);
        let request = Request::Compare(Box::new(CompareRequest {
            this: string.report.construction.clone(),
            other: other.construction.clone(),
            setting: string.report.setting.clone(),
        }));
        if let (_, Reply::Compare(pair)) = reply(&request) {
            let pair: Rc<Compare> = Rc::new(*pair);
            objections.extend(compare("a pair", &|| easel.pair(&pair)));
        }
        pages += 2;
    }
    objections.sort();
    objections.dedup();
    assert!(
        objections.is_empty(),
        "{} objections; the first:\n{}",
        objections.len(),
        objections[..objections.len().min(25)].join("\n")
    );
    support::tell(&format!("{pages} pages say the same figures in English and German"));
}
