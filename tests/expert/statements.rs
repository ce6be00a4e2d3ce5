//! What the trade says of two strings side by side, against what is computed of them: the link from number to word.
//!
//! The statements of odd number may be fitted to, those of even number are held out; the rule stands in the file, which
//! is older than the link. A string is the most usual one of its family, gauge class and metal at its place.

use strings::construction::Family;
use strings::draw::Draw;
use strings::fit::answers::{Answers, GaugeClass, StringAnswer, Today};
use strings::fit::{compare, problem, today};
use strings::instrument::{self, Kind};
use strings::material;
use strings::report::{self, Property};

const STATEMENTS: &str = include_str!("statements.tsv");

/// The word of each statement, the number it rests on, and whether more of the number is more of the word.
const WORDS: [(&str, Property, bool); 4] = [
    ("brighter", Property::Brilliance, true),
    ("sooner", Property::Speaks, false),
    ("forgiving", Property::BowRoom, true),
    ("longer", Property::RingsOn, true),
];

/// Held-out statements with which the numbers do not agree, by their number in the file, and why that stands.
const MISSES: &[(usize, &str)] = &[
    (28, TWISTS),
    (36, TWISTS),
    (38, "the two are alike, within a hundredth of a decibel"),
    (40, TWISTS),
    (42, GIVES),
    (44, GIVES),
    (46, GIVES),
    (48, GIVES),
];

const TWISTS: &str = "a strand or bundle under a heavy winding is taken to twist easily; how freely its wires slide in twisting was never measured";
const GIVES: &str = "the heavier steel string gives its energy to the bridge sooner than the lighter gut; what gut loses in itself is small beside that on the generic body";

/// One statement: what is computed of the first against the second, in just-noticeable differences, on the word's side.
struct Statement {
    number: usize,
    word: usize,
    line: &'static str,
    /// None where a string of the two is not made here.
    by: Option<f64>,
}

fn value(kind: &'static Kind, string: usize, who: &str, property: Property) -> Option<f64> {
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
    let found = today::all(&problem);
    let construction = found[string].as_ref()?.string.construction;
    let values = report::values(&construction, &problem.strings[string].setting, &Draw::CENTRAL);
    Some(values.get(property))
}

fn statements() -> Vec<Statement> {
    let lines = STATEMENTS.lines().filter(|line| !line.starts_with('#'));
    lines
        .enumerate()
        .map(|(i, line)| {
            let parts: Vec<&str> = line.split('\t').collect();
            let kind = *instrument::ALL.iter().find(|k| k.key == parts[0]).unwrap();
            let string: usize = parts[1].parse().unwrap();
            let word = WORDS.iter().position(|(word, ..)| *word == parts[2]).unwrap();
            let (_, property, more) = WORDS[word];
            let of = |who| value(kind, string, who, property);
            let by = of(parts[3]).zip(of(parts[4])).map(|(first, second)| {
                let steps = compare::steps(property, first, second);
                if more { steps } else { -steps }
            });
            Statement { number: i + 1, word, line, by }
        })
        .collect()
}

/// The slope, not below zero, at which the trade's saying so is likeliest for these differences: the odds that it
/// says "more" go with e to the slope times the difference in just-noticeable ones.
#[allow(clippy::disallowed_methods, reason = "a test's own sum may differ in the last bit")]
fn slope(differences: &[f64]) -> f64 {
    // The likelihood of a logistic law has one top; its slope falls all the way, so halving finds it.
    let rises =
        |slope: f64| differences.iter().map(|d| d / (1.0 + (slope * d).exp())).sum::<f64>() > 0.0;
    let (mut low, mut high) = (0.0, 50.0);
    if !rises(low) {
        return 0.0;
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
        if (slope - stated).abs() > 0.01 * stated.max(0.05) {
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
