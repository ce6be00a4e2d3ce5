//! What the trade says of two strings side by side, against what is computed of them: the link from number to word.
//!
//! The statements of odd number may be fitted to, those of even number are held out; the rule stands in the file, which
//! is older than the link. A string is the most usual one of its family, gauge class and metal at its place.

use strings::construction::{Construction, Family};
use strings::draw::Draw;
use strings::fit::answers::{Answers, GaugeClass, StringAnswer, Today};
use strings::fit::{compare, problem, today};
use strings::instrument::{self, Kind};
use strings::material;
use strings::report::{self, Property};
use strings::setting::Setting;

const STATEMENTS: &str = include_str!("statements.tsv");

/// The word of each statement, the number it rests on, and whether more of the number is more of the word.
const WORDS: [(&str, Property, bool); 4] = [
    ("brighter", Property::Brilliance, true),
    ("sooner", Property::Speaks, false),
    ("forgiving", Property::BowRoom, true),
    ("longer", Property::Loss, false),
];

/// Held-out statements with which the numbers do not agree, by their number in the file, and why that stands.
const MISSES: &[(usize, &str)] = &[(32, TWISTS), (36, TWISTS), (40, TWISTS)];

const TWISTS: &str = "a strand or bundle under a heavy winding is taken to twist easily; how freely its wires slide in twisting was never measured";

/// One statement: what is computed of the first against the second, in just-noticeable differences, on the word's side.
struct Statement {
    number: usize,
    word: usize,
    line: &'static str,
    /// None where a string of the two is not made here.
    by: Option<f64>,
    /// How much longer the first rings at the bridge, in just-noticeable differences.
    at_the_bridge: Option<f64>,
    /// What the page says of the two in this word: 1 as the trade, −1 the contrary, 0 nothing.
    said: i8,
}

/// The string that is meant by a family, a gauge class and a metal; none where it is not made here.
fn string(kind: &'static Kind, string: usize, who: &str) -> Option<(Construction, Setting)> {
    let mut now = Today::default();
    for word in who.split(' ') {
        if let Some(family) = Family::parse(word) {
            now.family = Some(family);
        } else if let Some(class) = GaugeClass::parse(word) {
            now.gauge_class = Some(class);
        } else {
            now.outer_metal = Some(material::metal_of(word).unwrap());
        }
    }
    let mut strings = vec![StringAnswer::default(); string + 1];
    strings[string].today = now;
    let problem = problem::pose(&Answers { instrument: Some(kind), strings, ..Answers::default() });
    let found = today::known(&problem);
    Some((found[string].as_ref()?.construction, problem.strings[string].setting))
}

fn statements() -> Vec<Statement> {
    let lines = STATEMENTS.lines().filter(|line| !line.starts_with('#'));
    lines
        .enumerate()
        .map(|(i, line)| {
            let parts: Vec<&str> = line.split('\t').collect();
            let kind = *instrument::ALL.iter().find(|k| k.key == parts[0]).unwrap();
            let string_number: usize = parts[1].parse().unwrap();
            let word = WORDS.iter().position(|(word, ..)| *word == parts[2]).unwrap();
            let (_, property, more) = WORDS[word];
            let of = |who| string(kind, string_number, who);
            let two = of(parts[3]).zip(of(parts[4]));
            let sign = if more { 1.0 } else { -1.0 };
            let by = |property| {
                let value = |(construction, setting): &(Construction, Setting)| {
                    report::values(construction, setting, &Draw::CENTRAL).get(property)
                };
                two.as_ref().map(|(a, b)| compare::steps(property, value(a), value(b)))
            };
            let said = two.as_ref().map_or(0, |(a, b)| {
                let both = compare::paired(&a.0, &b.0, &a.1, &[property]);
                let sign = both[0].verdict().sign();
                if more { sign } else { -sign }
            });
            Statement {
                number: i + 1,
                word,
                line,
                by: by(property).map(|steps| sign * steps),
                at_the_bridge: by(Property::RingsOn),
                said,
            }
        })
        .collect()
}

/// The slope, not below zero, at which the trade's saying so is likeliest for these differences: the odds that it
/// says "more" go with e to the slope times the difference in just-noticeable ones. Infinite where all agree: then no
/// slope is too steep.
#[allow(clippy::disallowed_methods, reason = "a test's own sum may differ in the last bit")]
fn slope(differences: &[f64]) -> f64 {
    // The likelihood of a logistic law has one top; its slope falls all the way, so halving finds it.
    let rises =
        |slope: f64| differences.iter().map(|d| d / (1.0 + (slope * d).exp())).sum::<f64>() > 0.0;
    let (mut low, mut high) = (0.0, 50.0);
    if !rises(low) {
        return 0.0;
    }
    if differences.iter().all(|d| *d > 0.0) {
        return f64::INFINITY;
    }
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if rises(middle) { low = middle } else { high = middle }
    }
    low
}

#[test]
fn the_link_from_number_to_word_is_that_of_the_odd_statements() {
    let statements = statements();
    assert!(statements.len() >= 24);
    let mut wrong = Vec::new();
    let (mut agree, mut computed, mut unknown) = (0, 0, 0);
    for (word, (name, property, _)) in WORDS.iter().enumerate() {
        let own =
            |odd: usize| statements.iter().filter(move |s| s.word == word && s.number % 2 == odd);
        let fitted: Vec<f64> = own(1).filter_map(|s| s.by).collect();
        let slope = slope(&fitted);
        let held_out: Vec<(usize, f64)> =
            own(0).filter_map(|s| s.by.map(|by| (s.number, by))).collect();
        let agreed = held_out.iter().filter(|(_, by)| *by > 0.0).count();
        let fitted_agree = fitted.iter().filter(|by| **by > 0.0).count();
        agree += agreed;
        computed += held_out.len();
        unknown += own(0).filter(|s| s.by.is_none()).count();
        support::tell(&format!(
            "{name}: slope {slope:.3}, fitted to {} statements of which {fitted_agree} agree; of {} held out {agreed} agree",
            fitted.len(),
            held_out.len()
        ));
        let stated = compare::link(*property).slope;
        let differ = if stated.is_finite() {
            (slope - stated).abs() > 0.01 * stated.max(0.05)
        } else {
            slope.is_finite()
        };
        if differ {
            wrong.push(format!("{name}: the model says {stated}, the statements {slope}"));
        }
        for s in own(0) {
            let missed = s.by.is_some_and(|by| by <= 0.0);
            let listed = MISSES.iter().any(|(number, _)| *number == s.number);
            if missed != listed {
                wrong.push(format!("{} {:?} {}", s.number, s.by, s.line));
            }
        }
    }
    support::tell(&format!(
        "{agree} of {computed} held-out statements of the trade agree with the numbers; {unknown} are of strings not made here"
    ));
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn no_word_contradicts_a_statement_of_the_trade() {
    let statements = statements();
    let contrary: Vec<_> = statements.iter().filter(|s| s.said < 0).map(|s| s.line).collect();
    let said = statements.iter().filter(|s| s.said > 0).count();
    support::tell(&format!("of {} statements the page says {said}", statements.len()));
    assert!(contrary.is_empty(), "{contrary:#?}");
    assert!(said >= statements.len() / 4, "{said}: the page says next to nothing");
}

#[test]
fn at_the_bridge_no_string_rings_longer_as_the_trade_has_it() {
    // So that word is never said of that number. The day one comes out right, the link is to be fitted again.
    let statements = statements();
    let longer = || statements.iter().filter(|s| WORDS[s.word].0 == "longer");
    assert!(longer().count() == 8 && longer().all(|s| s.at_the_bridge.is_some_and(|by| by < 0.0)));
    assert!(compare::link(Property::RingsOn).steps().is_infinite());
}
